#include "report/limit_strip.h"

#include <gtest/gtest.h>

namespace standin::report {
namespace {

using model::HazardSide;
using model::Interval;

TEST(LimitStrip, BothIntervalsShareOneAxis) {
    auto const strip = limitStrip({"0", "5", "10", false, false, "V", "", ""}, {"0", std::nullopt, "5", false, false, "V", "", ""}, HazardSide::Higher);
    ASSERT_TRUE(strip.has_value());
    EXPECT_DOUBLE_EQ(*strip->reference.lo, *strip->candidate.lo);
    EXPECT_DOUBLE_EQ(*strip->reference.typ, *strip->candidate.hi);
    EXPECT_LT(*strip->candidate.hi, *strip->reference.hi);
    EXPECT_FALSE(strip->candidate.typ.has_value());
    EXPECT_GE(*strip->reference.lo, 0);
    EXPECT_LE(*strip->reference.hi, 1);
}

TEST(LimitStrip, NothingIsDrawnWhereTheTwoHaveNoCommonAxis) {
    Interval const volt{"1", std::nullopt, "2", false, false, "V", "", ""};
    EXPECT_FALSE(limitStrip(volt, {"1", std::nullopt, "2", false, false, "A", "", ""}, HazardSide::None));
    EXPECT_FALSE(limitStrip(volt, {"1", std::nullopt, "2", false, false, "V", "VDD", ""}, HazardSide::None));
    EXPECT_FALSE(limitStrip(volt, {std::nullopt, std::nullopt, std::nullopt, false, false, "V", "", ""}, HazardSide::None));
}

TEST(LimitStrip, EqualSingleValuesDoNotDivideByZero) {
    Interval const one{std::nullopt, "3", std::nullopt, false, false, "s", "", ""};
    auto const strip = limitStrip(one, one, HazardSide::None);
    ASSERT_TRUE(strip.has_value());
    EXPECT_DOUBLE_EQ(*strip->reference.typ, 0.5);
    auto const svg = limitStripSvg(*strip, "a <b>");
    EXPECT_EQ(svg.find("nan"), std::string::npos);
    EXPECT_NE(svg.find("aria-label=\"a &lt;b&gt;\""), std::string::npos);
}

}  // namespace
}  // namespace standin::report
