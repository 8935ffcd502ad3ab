#include "quantity/dimension.h"

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

TEST(Dimension, UnitsFitTogether) {
    auto const of = [](char const* unit) { return dimensionOf(unit)->dimension; };
    EXPECT_EQ(of("V") / of("A"), of("Ω"));
    EXPECT_EQ(of("V") * of("A"), of("W"));
    EXPECT_EQ(of("W") * of("K/W"), of("K"));
    EXPECT_EQ(of("Ω") * of("F"), of("s"));
    EXPECT_EQ(of("V/K") / of("V"), of("1/K"));
    EXPECT_EQ(of("A") * of("A") * of("s"), of("A²·s"));
    EXPECT_EQ(of("degC"), of("K"));
    EXPECT_EQ(of("mAh"), of("C"));
    EXPECT_EQ(dimensionOf("mAh")->factor, *Decimal::parse("3.6"));
    EXPECT_EQ(dimensionOf("month")->factor, Decimal(2629800));
}

TEST(Dimension, UnknownUnitsDoNotTakePart) {
    for (char const* unit : {"", "V rms", "dB", "furlong", "V/", "V/A/s", "1/mAh"}) EXPECT_FALSE(dimensionOf(unit)) << unit;
}

}  // namespace
}  // namespace standin::quantity
