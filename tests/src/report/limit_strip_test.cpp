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

TEST(LimitStrip, LimitsOfTheCellStandAsFlagsOnTheSameAxis) {
    Interval const reference{"4.20", "4.25", "4.30", false, false, "V", "", ""};
    Interval const candidate{"4.25", "4.30", "4.35", false, false, "V", "", ""};
    std::vector<CellLimit> const limits{{"4.28", "V", CellSide::Most}, {"4.15", "V", CellSide::Least}, {"3", "A", CellSide::Most}};
    auto const strip = limitStrip(reference, candidate, HazardSide::Higher, limits);
    ASSERT_TRUE(strip.has_value());
    ASSERT_EQ(strip->flags.size(), 2U) << "amperes are on another axis";
    EXPECT_GT(strip->flags[0].at, *strip->candidate.lo);
    EXPECT_LT(strip->flags[0].at, *strip->candidate.typ);
    EXPECT_LT(strip->flags[1].at, *strip->reference.lo) << "and the axis reaches to it";
    EXPECT_GT(strip->flags[1].at, 0);
    EXPECT_EQ(cellLimitsText(limits), "for the cell at most 4.28 V, at least 4.15 V, at most 3 A");

    Interval const toSupply{"-24", std::nullopt, "0.3", false, false, "V", "VCC", ""};
    auto const relative = limitStrip(toSupply, toSupply, HazardSide::Lower, limits);
    ASSERT_TRUE(relative.has_value());
    EXPECT_TRUE(relative->flags.empty()) << "a limit to ground says nothing of a value to the supply";
}

TEST(LimitStrip, SaysWhereTheLimitItselfDoesNotHold) {
    model::Comparison comparison;
    model::CellCheck check;
    check.check = "overcharge-upper";
    check.bounds = model::CheckBounds{"detection voltage", "4.18", "4.28", "V", true, false};
    comparison.cell = {check};
    auto const limits = cellLimits(comparison, "overcharge-detect-voltage");
    ASSERT_EQ(limits.size(), 2U);
    EXPECT_EQ(cellLimitsText(limits), "for the cell above 4.18 V, at most 4.28 V");
    EXPECT_EQ(cellLimitsText(std::vector<CellLimit>{{"0.1", "A", CellSide::Most, true}}), "for the cell below 0.1 A");
}

TEST(LimitStrip, AFlagPointsToTheSideThatHolds) {
    Interval const volt{"1", std::nullopt, "2", false, false, "V", "", ""};
    for (auto const side : {CellSide::Least, CellSide::Most}) {
        std::vector<CellLimit> const limits{{"1.5", "V", side}};
        auto const strip = limitStrip(volt, volt, HazardSide::None, limits);
        ASSERT_TRUE(strip.has_value());
        std::vector<StripShape> cloth;
        for (auto const& shape : shapesOf(*strip)) {
            if (shape.part == StripPart::Flag) cloth.push_back(shape);
        }
        ASSERT_EQ(cloth.size(), 1U);
        EXPECT_TRUE(isClosed(StripPart::Flag));
        double const pole = cloth[0].points[0].x;
        double const tip = cloth[0].points[1].x;
        EXPECT_EQ(tip > pole, side == CellSide::Least);
    }
}

TEST(LimitStrip, TheCellsLimitsComeFromTheChecksOfTheParameter) {
    model::Comparison comparison;
    model::CellCheck check;
    check.check = "overcharge-upper";
    check.bounds = model::CheckBounds{.quantity = "voltage", .min = {}, .max = "4.28", .unit = "V"};
    comparison.cell.push_back(check);
    check.check = "overdischarge-lower";
    check.bounds = model::CheckBounds{.quantity = "voltage", .min = "2.5", .max = {}, .unit = "V"};
    comparison.cell.push_back(check);
    check.check = "class-match";
    check.bounds.reset();
    comparison.cell.push_back(check);
    EXPECT_EQ(cellLimits(comparison, "overcharge-detect-voltage"), (std::vector<CellLimit>{{"4.28", "V", CellSide::Most}}));
    EXPECT_EQ(cellLimits(comparison, "overdischarge-detect-voltage"), (std::vector<CellLimit>{{"2.5", "V", CellSide::Least}}));
    EXPECT_TRUE(cellLimits(comparison, "").empty());
    EXPECT_TRUE(cellLimits(comparison, "dropout-voltage").empty());
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

Interval volts(std::optional<std::string> lo, std::optional<std::string> typ, std::optional<std::string> hi) {
    return {std::move(lo), std::move(typ), std::move(hi), false, false, "V", "", ""};
}

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
