#include "report/limit_strip.h"

#include <utility>

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

std::vector<StripShape> shapesFor(Interval const& reference, Interval const& candidate, HazardSide side) {
    auto const strip = limitStrip(reference, candidate, side);
    return strip ? shapesOf(*strip) : std::vector<StripShape>{};
}

std::vector<StripShape> only(std::vector<StripShape> const& shapes, StripPart part) {
    std::vector<StripShape> found;
    for (auto const& shape : shapes) {
        if (shape.part == part) found.push_back(shape);
    }
    return found;
}

Interval volts(std::optional<std::string> lo, std::optional<std::string> typ, std::optional<std::string> hi) { return {std::move(lo), std::move(typ), std::move(hi), false, false, "V", "", ""}; }

TEST(StripShapes, StayInTheField) {
    for (auto const& candidate : {volts("1", "2", "3"), volts(std::nullopt, "2", std::nullopt), volts("7", std::nullopt, std::nullopt), volts(std::nullopt, std::nullopt, "-4")}) {
        for (auto const& shape : shapesFor(volts("1", "2", "3"), candidate, HazardSide::Both)) {
            for (auto const& point : shape.points) {
                EXPECT_GE(point.x, 0);
                EXPECT_LE(point.x, kStripWidth);
                EXPECT_GE(point.y, 0);
                EXPECT_LE(point.y, kStripHeight);
            }
        }
    }
}

TEST(StripShapes, ABoundThatIsNotStatedIsAPaleEnd) {
    struct Case {
        char const* what;
        Interval candidate;
        std::size_t solid, pale;
    };
    for (auto const& c : {Case{"both bounds", volts("1", "2", "3"), 1, 0}, Case{"no upper bound", volts("1", "2", std::nullopt), 1, 1},
                          Case{"typical only", volts(std::nullopt, "2", std::nullopt), 0, 2}, Case{"lower bound only", volts("1", std::nullopt, std::nullopt), 1, 1}}) {
        auto const shapes = shapesFor(volts("1", "2", "3"), c.candidate, HazardSide::None);
        EXPECT_EQ(only(shapes, StripPart::Candidate).size(), c.solid) << c.what;
        EXPECT_EQ(only(shapes, StripPart::CandidateOpen).size(), c.pale) << c.what;
    }
    // The reference has a bracket only where it states a bound.
    EXPECT_EQ(only(shapesFor(volts("1", std::nullopt, "3"), volts("1", "2", "3"), HazardSide::None), StripPart::Reference).size(), 2U);
    EXPECT_EQ(only(shapesFor(volts("1", std::nullopt, std::nullopt), volts("1", "2", "3"), HazardSide::None), StripPart::Reference).size(), 1U);
}

TEST(StripShapes, MarkTheHazardousSide) {
    auto const arrows = [](HazardSide side) { return only(shapesFor(volts("1", "2", "3"), volts("1", "2", "4"), side), StripPart::HazardSide); };
    EXPECT_TRUE(arrows(HazardSide::None).empty());
    EXPECT_EQ(arrows(HazardSide::Both).size(), 2U);
    ASSERT_EQ(arrows(HazardSide::Higher).size(), 1U);
    EXPECT_GT(arrows(HazardSide::Higher)[0].points[0].x, kStripWidth / 2);
    ASSERT_EQ(arrows(HazardSide::Lower).size(), 1U);
    EXPECT_LT(arrows(HazardSide::Lower)[0].points[0].x, kStripWidth / 2);
}

TEST(StripShapes, AHigherReachShowsToTheRight) {
    auto const shapes = shapesFor(volts("4.245", "4.275", "4.305"), volts("4.245", "4.275", "4.340"), HazardSide::Higher);
    auto const bar = only(shapes, StripPart::Candidate);
    auto const span = only(shapes, StripPart::ReferenceSpan);
    ASSERT_EQ(bar.size(), 1U);
    ASSERT_EQ(span.size(), 1U);
    EXPECT_DOUBLE_EQ(bar[0].points[0].x, span[0].points[0].x);
    EXPECT_GT(bar[0].points[1].x, span[0].points[1].x + 20);
}

}  // namespace
}  // namespace standin::report
