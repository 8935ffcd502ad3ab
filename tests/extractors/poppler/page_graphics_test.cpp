#include "extractors/poppler/page_graphics.h"

#include <gtest/gtest.h>

namespace standin::poppler {
namespace {

using model::PageContent;
using model::Rect;

constexpr Rect kPage = {0, 0, 600, 800};

PagePath rectangle(Rect const& box) { return {{{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}, {box.x0, box.y0}}, {0}}; }

Paint black(std::uint32_t glyphsBefore = 0) { return {0, Opacity::Opaque, kPage, glyphsBefore}; }
Paint white(std::uint32_t glyphsBefore = 0) { return {0xFFFFFF, Opacity::Opaque, kPage, glyphsBefore}; }

TEST(PageGraphics, ABoxWithAHoleIsFourRules) {
    PageGraphics graphics;
    PagePath path = rectangle({10, 10, 110, 60});
    PagePath const hole = rectangle({10.5F, 10.5F, 109.5F, 59.5F});
    path.starts.push_back(path.points.size());
    path.points.insert(path.points.end(), hole.points.begin(), hole.points.end());
    graphics.fill(path, black());
    PageContent page;
    graphics.finish(page);
    EXPECT_EQ(page.rules.size(), 4U);
    EXPECT_TRUE(page.fills.empty());
}

TEST(PageGraphics, AWideStrokeIsAFill) {
    PageGraphics graphics;
    graphics.stroke({{{10, 50}, {110, 50}}, {0}}, {20, 20, Dashes::None, Caps::Butt}, black());
    PageContent page;
    graphics.finish(page);
    EXPECT_TRUE(page.rules.empty());
    ASSERT_EQ(page.fills.size(), 1U);
    EXPECT_EQ(page.fills[0].box, (Rect{10, 40, 110, 60}));
}

TEST(PageGraphics, ARoundedBoxHasItsStraightSides) {
    PageGraphics graphics;
    PagePath path;
    path.starts.push_back(0);
    path.points = {{20, 10}, {100, 10}, {105, 10, true}, {110, 15, true}, {110, 20, true}, {110, 50}, {110, 55, true}, {105, 60, true}, {100, 60, true}, {20, 60},
                   {15, 60, true}, {10, 55, true}, {10, 50, true}, {10, 20}, {10, 15, true}, {15, 10, true}, {20, 10, true}};
    graphics.stroke(path, {1, 1, Dashes::None, Caps::Butt}, black());
    PageContent page;
    graphics.finish(page);
    EXPECT_EQ(page.rules.size(), 4U);
    EXPECT_EQ(page.drawings.size(), 1U);
}

TEST(PageGraphics, OneCoveredSideIsOneRule) {
    PageGraphics graphics;
    graphics.fill(rectangle({10, 10, 110, 60}), black());
    graphics.fill(rectangle({10, 10, 110, 59}), white());
    PageContent page;
    graphics.finish(page);
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_EQ(page.rules[0].box, (Rect{10, 59, 110, 60}));
}

TEST(PageGraphics, RulesUnderLaterPaintAreGone) {
    PageGraphics graphics;
    graphics.stroke({{{20, 50}, {100, 50}}, {0}}, {1, 1, Dashes::None, Caps::Butt}, black());
    graphics.fill(rectangle({10, 10, 110, 80}), white());
    graphics.stroke({{{20, 60}, {100, 60}}, {0}}, {1, 1, Dashes::None, Caps::Butt}, black());
    PageContent page;
    graphics.finish(page);
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_FLOAT_EQ(page.rules[0].box.centre().y, 60);
}

// Of several areas each hides what lay there before it, and no other rule between them.
TEST(PageGraphics, EachAreaHidesTheRulesBeforeIt) {
    PageGraphics graphics;
    auto const line = [&](model::Points y) { graphics.fill(rectangle({20, y, 90, y + 1}), black()); };
    line(50);
    line(150);
    line(250);
    graphics.fill(rectangle({10, 40, 110, 60}), white());
    line(51);
    line(350);
    graphics.fill(rectangle({10, 340, 110, 360}), white());
    graphics.fill(rectangle({10, 240, 110, 260}), {0xFFFFFF, Opacity::SeeThrough, kPage, 0});
    PageContent page;
    graphics.finish(page);
    std::vector<model::Points> left;
    for (model::Rule const& rule : page.rules) left.push_back(rule.box.y0);
    EXPECT_EQ(left, (std::vector<model::Points>{150, 250, 51}));
}

TEST(PageGraphics, ProjectingCapsLengthenALine) {
    PageGraphics graphics;
    graphics.stroke({{{20, 50}, {100, 50}}, {0}}, {2, 2, Dashes::None, Caps::Projecting}, black());
    PageContent page;
    graphics.finish(page);
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_EQ(page.rules[0].box, (Rect{19, 49, 101, 51}));
}

// Many lines over many areas: bounded work.
TEST(PageGraphics, CopesWithVeryManyThings) {
    PageGraphics graphics;
    for (int i = 0; i < 60000; ++i) {
        auto const x = static_cast<float>(i % 300);
        auto const y = static_cast<float>(i / 300);
        graphics.fill(rectangle({x, y, x + 5, y + 5}), i % 2 == 0 ? black(100000) : white(100000));
        graphics.stroke({{{x, y}, {x + 3, y}}, {0}}, {1, 1, Dashes::None, Caps::Butt}, white());
    }
    PageContent page;
    page.glyphs.resize(20000);
    graphics.finish(page);
    EXPECT_FALSE(page.fills.empty());
}

TEST(PageGraphics, IsEmptyAfterFinishing) {
    PageGraphics graphics;
    graphics.fill(rectangle({10, 10, 110, 60}), black());
    PageContent first;
    graphics.finish(first);
    PageContent second;
    graphics.finish(second);
    EXPECT_EQ(first.fills.size(), 1U);
    EXPECT_TRUE(second.fills.empty());
    EXPECT_EQ(graphics.count(), 0U);
}

}  // namespace
}  // namespace standin::poppler
