#include "extractors/figures/page_clusters.h"

#include <gtest/gtest.h>

namespace {

namespace model = standin::model;
using standin::figures::clustersOf;

model::PageLayout page() {
    model::PageLayout result;
    result.page = 1;
    result.width = 600;
    result.height = 800;
    result.bodySize = 10;
    return result;
}

model::Rule horizontal(float x0, float x1, float y) { return {model::Rule::Axis::Horizontal, {x0, y, x1, y + 0.5F}, 0, false}; }
model::Rule vertical(float y0, float y1, float x) { return {model::Rule::Axis::Vertical, {x, y0, x + 0.5F, y1}, 0, false}; }

void addBox(model::PageLayout& layout, model::Rect box) {
    layout.rules.push_back(horizontal(box.x0, box.x1, box.y0));
    layout.rules.push_back(horizontal(box.x0, box.x1, box.y1));
    layout.rules.push_back(vertical(box.y0, box.y1, box.x0));
    layout.rules.push_back(vertical(box.y0, box.y1, box.x1));
}

TEST(PageClusters, WhatTouchesIsOneWhatStandsApartIsAnother) {
    auto layout = page();
    layout.drawings = {{{100, 100, 140, 120}, 1}, {{143, 100, 160, 120}, 2}, {{300, 100, 340, 120}, 3}};
    auto const clusters = clustersOf(layout, {});
    ASSERT_EQ(clusters.size(), 2U);
    EXPECT_EQ(clusters[0].drawings, 2);
    EXPECT_EQ(clusters[0].box, (model::Rect{100, 100, 160, 120}));
    EXPECT_EQ(clusters[1].drawings, 1);
}

// Arms that are joined further down only, and what touches at a corner.
TEST(PageClusters, WhatIsJoinedAnywhereIsOne) {
    auto layout = page();
    layout.drawings = {{{100, 100, 105, 200}, 1}, {{150, 100, 155, 200}, 2}, {{200, 100, 205, 200}, 3},
                       {{100, 205, 205, 210}, 4}, {{300, 300, 308, 308}, 5}, {{309, 309, 316, 316}, 6},  // down to the right
                       {{500, 400, 508, 408}, 7}, {{490, 410, 498, 416}, 8},                             // down to the left
                       {{595, 500, 600, 505}, 9}, {{0, 505, 5, 512}, 10}};                               // at both ends of the page
    auto const clusters = clustersOf(layout, {});
    ASSERT_EQ(clusters.size(), 5U);
    EXPECT_EQ(clusters[0].box, (model::Rect{100, 100, 205, 210}));
    EXPECT_EQ(clusters[0].drawings, 4);
    EXPECT_EQ(clusters[1].drawings, 2);
    EXPECT_EQ(clusters[2].drawings, 2);
    EXPECT_EQ(clusters[3].drawings, 1);
    EXPECT_EQ(clusters[4].drawings, 1);
}

TEST(PageClusters, FramesAndSeparatorsJoinNothing) {
    auto layout = page();
    addBox(layout, {20, 20, 580, 780});                  // the page's frame
    layout.rules.push_back(horizontal(50, 550, 200));    // a separator
    layout.drawings = {{{100, 190, 140, 199}, 1}, {{100, 500, 140, 520}, 2}};
    auto const clusters = clustersOf(layout, {});
    ASSERT_EQ(clusters.size(), 2U);
    EXPECT_EQ(clusters[0].horizontal, 0);
}

TEST(PageClusters, AWideBoxIsKept) {
    auto layout = page();
    addBox(layout, {50, 200, 550, 400});
    auto const clusters = clustersOf(layout, {});
    ASSERT_EQ(clusters.size(), 1U);
    EXPECT_EQ(clusters[0].horizontal, 2);
    EXPECT_EQ(clusters[0].vertical, 2);
}

TEST(PageClusters, TablesAreLeftOut) {
    auto layout = page();
    addBox(layout, {100, 200, 300, 400});
    std::vector<model::Rect> const tables{{95, 195, 305, 405}};
    EXPECT_TRUE(clustersOf(layout, tables).empty());
}

TEST(PageClusters, TheShapeDoesNotDependOnPlaceOrOrder) {
    auto one = page();
    one.drawings = {{{100, 100, 140, 120}, 1}, {{143, 100, 160, 130}, 2}};
    auto moved = page();
    moved.drawings = {{{243, 300, 260, 330}, 2}, {{200, 300, 240, 320}, 1}};
    auto other = page();
    other.drawings = {{{100, 100, 140, 120}, 1}, {{143, 100, 160, 130}, 5}};
    EXPECT_EQ(clustersOf(one, {})[0].shape, clustersOf(moved, {})[0].shape);
    EXPECT_NE(clustersOf(one, {})[0].shape, clustersOf(other, {})[0].shape);
}

TEST(PageClusters, HostileSizes) {
    auto layout = page();
    layout.width = 1e7F;
    layout.height = 1;
    layout.bodySize = 0.001F;
    layout.drawings = {{{-1e9F, -1e9F, 1e9F, 1e9F}, 1}, {{5, 0, 6, 1}, 2}, {{2e8F, 0, 3e8F, 1}, 3}};
    EXPECT_LE(clustersOf(layout, {}).size(), 2U);
}

}  // namespace
