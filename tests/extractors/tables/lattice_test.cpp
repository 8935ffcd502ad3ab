#include "extractors/tables/lattice.h"

#include <gtest/gtest.h>

namespace standin::tables {
namespace {

Network gridOf(std::vector<float> const& xs, std::vector<float> const& ys) {
    Network n;
    for (float const y : ys) n.horizontal.push_back({y, xs.front(), xs.back()});
    for (float const x : xs) n.vertical.push_back({x, ys.front(), ys.back()});
    n.box = {xs.front(), ys.front(), xs.back(), ys.back()};
    return n;
}

TEST(Lattice, readsAFullGrid) {
    auto const lattice = makeLattice(gridOf({0, 50, 100}, {0, 10, 20, 30}), 2);
    EXPECT_EQ(lattice.columns(), 2);
    EXPECT_EQ(lattice.rows(), 3);
    EXPECT_EQ(lattice.areas.size(), 6U);
    EXPECT_EQ(lattice.rowAt(15), 1);
    EXPECT_EQ(lattice.columnAt(-1), -1);
}

TEST(Lattice, missingSegmentsMergeAreas) {
    auto network = gridOf({0, 50, 100}, {0, 10, 20, 30});
    network.horizontal[1] = {10, 50, 100};  // rows 0 and 1 of the first column are one cell
    auto const lattice = makeLattice(network, 2);
    ASSERT_EQ(lattice.areas.size(), 5U);
    EXPECT_EQ(lattice.areas[0].row0, 0);
    EXPECT_EQ(lattice.areas[0].row1, 1);
    EXPECT_EQ(lattice.areas[0].column1, 0);
    EXPECT_FALSE(lattice.areas[0].irregular);
}

TEST(Lattice, doubleRulesAreOneLine) {
    auto network = gridOf({0, 50, 100}, {0, 10, 20});
    network.horizontal.push_back({11.5F, 0, 100});
    EXPECT_EQ(makeLattice(network, 2).rows(), 2);
}

// A bar over a word ("not reset") inside a cell.
TEST(Lattice, shortRulesInsideACellPartNothing) {
    auto network = gridOf({0, 50, 100}, {0, 10, 20});
    network.horizontal.push_back({5, 10, 22});
    EXPECT_EQ(makeLattice(network, 2).rows(), 2);
}

TEST(Lattice, cutsOutlinesThatAreNoRectangles) {
    auto network = gridOf({0, 50, 100}, {0, 10, 20});
    network.horizontal[1] = {10, 50, 100};
    network.vertical[1] = {50, 0, 10};  // an L: left column and the lower row
    auto const lattice = makeLattice(network, 2);
    int irregular = 0;
    for (auto const& a : lattice.areas) irregular += a.irregular ? 1 : 0;
    EXPECT_EQ(irregular, 2);
}

TEST(Lattice, refusesMoreLinesThanATableHas) {
    std::vector<float> xs;
    for (int i = 0; i < 200; ++i) xs.push_back(static_cast<float>(i * 5));
    EXPECT_TRUE(makeLattice(gridOf(xs, {0, 10}), 2).xs.empty());
}

}  // namespace
}  // namespace standin::tables
