#include "extractors/tables/part_rows.h"

#include <gtest/gtest.h>

namespace standin::tables {
namespace {

using Firsts = std::vector<int>;
using Ys = std::vector<model::Points>;

TEST(PartRows, LeavesEachTextNearestToTheMiddleOfItsRows) {
    auto const parted = partRows(Ys{10, 20, 30, 40, 50}, Ys{20, 45});
    ASSERT_TRUE(parted);
    EXPECT_EQ(parted->firsts, (Firsts{0, 3}));
    EXPECT_FLOAT_EQ(parted->off, 0);
}

TEST(PartRows, KeepsToItsLimits) {
    EXPECT_FALSE(partRows(Ys{10, 20, 30}, Ys{40}, {.mostOff = 5})) << "20 points from the middle";
    EXPECT_FALSE(partRows(Ys{10, 20, 30}, Ys{20}, {.mostRows = 2}));
    EXPECT_FALSE(partRows(Ys{10}, Ys{10, 12})) << "a row each";
    EXPECT_FALSE(partRows(Ys(1001, 0), Ys{0})) << "no table of one page";
    auto const off = partRows(Ys{10, 20, 30}, Ys{22});
    ASSERT_TRUE(off);
    EXPECT_FLOAT_EQ(off->off, 2);
}

}  // namespace
}  // namespace standin::tables
