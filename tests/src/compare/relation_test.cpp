#include "compare/relation.h"

#include <gtest/gtest.h>

#include <random>

#include "quantity/cell.h"

namespace standin::compare {
namespace {

using model::Interval;
using model::Parameter;
using model::Relation;
using vocabulary::Role;

struct Cells {
    char const* min;
    char const* typ;
    char const* max;
    char const* unit;
};

Parameter parameterOf(Cells const& cells) {
    Parameter p;
    quantity::CellTexts texts;
    texts.min = cells.min;
    texts.typ = cells.typ;
    texts.max = cells.max;
    texts.unit = cells.unit;
    auto const parsed = quantity::parseCell(texts);
    p.interval = parsed.interval;
    p.unit = cells.unit;
    auto value = [](char const* text, std::optional<std::string> const& number) -> std::optional<model::Value> {
        if (*text == '\0') return std::nullopt;
        return model::Value{text, text, number, {}};
    };
    p.min = value(cells.min, parsed.minValue);
    p.typ = value(cells.typ, parsed.typValue);
    p.max = value(cells.max, parsed.maxValue);
    return p;
}

struct Case {
    Cells reference;
    Cells candidate;
    Relation relation;
};

Case const kCases[] = {
    {{"4.2", "", "4.3", "V"}, {"4.2", "", "4.3", "V"}, Relation::Same},
    {{"4.2", "", "4.3", "V"}, {"4200", "", "4300", "mV"}, Relation::Same},
    {{"4.20", "", "4.30", "V"}, {"4.2", "", "4.3", "V"}, Relation::Same},
    {{"4.2", "", "4.3", "V"}, {"4.22", "", "4.28", "V"}, Relation::Inside},
    {{"4.2", "", "4.3", "V"}, {"4.2", "", "4.28", "V"}, Relation::Inside},
    {{"4.2", "", "4.3", "V"}, {"4.1", "", "4.4", "V"}, Relation::Wider},
    {{"4.2", "", "4.3", "V"}, {"4.2", "", "4.4", "V"}, Relation::ReachesHigher},
    {{"4.2", "", "4.3", "V"}, {"4.25", "", "4.4", "V"}, Relation::ReachesHigher},
    {{"4.2", "", "4.3", "V"}, {"4.1", "", "4.25", "V"}, Relation::ReachesLower},
    {{"4.2", "", "4.3", "V"}, {"4.3", "", "4.4", "V"}, Relation::ReachesHigher},
    {{"4.2", "", "4.3", "V"}, {"4.31", "", "4.4", "V"}, Relation::ClearAbove},
    {{"4.2", "", "4.3", "V"}, {"4.0", "", "4.19", "V"}, Relation::ClearBelow},
    {{"4.2", "", "4.3", "V"}, {"", "", "4.3", "V"}, Relation::OneSided},
    {{"", "", "6", "µA"}, {"", "", "7", "µA"}, Relation::ReachesHigher},
    {{"", "", "6", "µA"}, {"", "", "5", "µA"}, Relation::Inside},
    {{"", "", "0.1", "µA"}, {"", "0.1 max", "", "µA"}, Relation::Same},
    {{"", "", "0.1", "µA"}, {"", "100 max", "", "nA"}, Relation::Same},
    {{"", "", "0.1", "µA"}, {"", "0.2 max", "", "µA"}, Relation::ReachesHigher},
    {{"300", "", "", "mA"}, {"250", "", "", "mA"}, Relation::ReachesLower},
    {{"", "3.0", "", "V"}, {"", "3", "", "V"}, Relation::TypEqual},
    {{"", "3.0", "", "V"}, {"", "3.1", "", "V"}, Relation::TypDiffers},
    {{"4.2", "4.25", "4.3", "V"}, {"4.2", "4.26", "4.3", "V"}, Relation::TypDiffers},
    {{"4.2", "4.25", "4.3", "V"}, {"", "4.25", "", "V"}, Relation::TypEqual},
    {{"4.2", "", "4.3", "V"}, {"", "4.25", "", "V"}, Relation::OneSided},
    {{"", "", "VDD+0.3", "V"}, {"", "", "VCC+0.3", "V"}, Relation::Same},
    {{"", "", "VDD+0.3", "V"}, {"", "", "VDD+0.5", "V"}, Relation::ReachesHigher},
    {{"", "", "VDD+0.3", "V"}, {"", "", "VSS+0.3", "V"}, Relation::NotComparable},
    {{"", "3.0", "6.0", "µA"}, {"", "3.0", "6.0", "mA"}, Relation::UnitConflict},
    {{"", "3.0", "6.0", "µA"}, {"", "3.0", "6.0", "V"}, Relation::UnitConflict},
    {{"", "Unlimited", "", ""}, {"", "Unlimited", "", ""}, Relation::Same},
    {{"", "Unlimited", "", ""}, {"", "Limited", "", ""}, Relation::NotComparable},
};

TEST(Relation, FollowsTheTableOfOutcomes) {
    for (auto const& c : kCases) {
        EXPECT_EQ(relateValues(parameterOf(c.reference), parameterOf(c.candidate)), c.relation)
            << c.reference.min << "|" << c.reference.typ << "|" << c.reference.max << c.reference.unit << " : " << c.candidate.min << "|" << c.candidate.typ << "|"
            << c.candidate.max << c.candidate.unit;
    }
}

TEST(Relation, LeavesLimitsOfOneSheetOpenThoughTheTypicalValuesAgree) {
    Parameter const limited = parameterOf({"4.2", "4.25", "4.3", "V"});
    Parameter const typical = parameterOf({"", "4.25", "", "V"});
    EXPECT_FALSE(isEqual(relateValues(limited, typical), limited, typical));
    EXPECT_TRUE(isEqual(relateValues(typical, typical), typical, typical));
}

TEST(Relation, LetsDifferencesBelowThePrintedDigitsPassOnlyWhereAsked) {
    Parameter const coarse = parameterOf({"", "", "4.3", "V"});
    Parameter const fine = parameterOf({"", "", "4.325", "V"});
    EXPECT_EQ(relateValues(coarse, fine), Relation::ReachesHigher);
    EXPECT_EQ(relateValues(coarse, fine, {Precision::AsPrinted, Precision::AsPrinted}), Relation::Same);
}

TEST(Relation, CountsAnExcludedBoundAsTighter) {
    Interval closed;
    closed.hi = "0.2";
    closed.unit = "V";
    Interval open = closed;
    open.hiOpen = true;
    EXPECT_EQ(relateIntervals(closed, open), Relation::Inside);
    EXPECT_EQ(relateIntervals(open, closed), Relation::ReachesHigher);
}

// What the relation is from the other side; a bound passed on one side only while
// the other is equal is seen as Inside from there.
bool mirrors(Relation forward, Relation backward) {
    switch (forward) {
        case Relation::Wider: return backward == Relation::Inside;
        case Relation::Inside: return backward == Relation::Wider || backward == Relation::ReachesHigher || backward == Relation::ReachesLower;
        case Relation::ReachesHigher: return backward == Relation::ReachesLower || backward == Relation::Inside;
        case Relation::ReachesLower: return backward == Relation::ReachesHigher || backward == Relation::Inside;
        case Relation::ClearAbove: return backward == Relation::ClearBelow;
        case Relation::ClearBelow: return backward == Relation::ClearAbove;
        default: return forward == backward;
    }
}

TEST(Relation, ANeededLeastValueStandsUnderMinOrMax) {
    auto const row = [](std::string const& name, std::string const& min, std::string const& max) {
        model::Parameter p;
        p.name = name;
        p.unit = "ns";
        p.interval = Interval{};
        p.interval->unit = "s";
        if (!min.empty()) p.min = model::Value{.text = min, .printed = min, .value = min, .box = {}};
        if (!max.empty()) p.max = model::Value{.text = max, .printed = max, .value = max, .box = {}};
        if (!min.empty()) p.interval->lo = min;
        if (!max.empty()) p.interval->hi = max;
        return p;
    };
    auto const relation = [&](model::Parameter const& r, model::Parameter const& c, std::optional<Role> role) {
        auto const one = inOneColumn(r, c, role);
        return one ? relateValues(one->reference, one->candidate) : relateValues(r, c);
    };
    EXPECT_EQ(relation(row("Minimum set-up time", "", "20"), row("set-up time", "20", ""), Role::Cap), Relation::Same);
    EXPECT_EQ(relation(row("set-up time", "20", ""), row("Minimum set-up time", "", "25"), Role::Cap), Relation::Inside);
    EXPECT_EQ(relation(row("Maximum frequency", "", "20"), row("frequency", "18", ""), Role::Floor), Relation::ReachesLower);
    EXPECT_EQ(relation(row("Minimum output voltage, high", "", "5.2"), row("output voltage, high", "5.2", ""), Role::Floor), Relation::Same);
    EXPECT_EQ(relation(row("output voltage, high", "5.2", ""), row("Minimum output voltage, high", "", "4.4"), Role::Floor), Relation::ReachesLower);
    EXPECT_EQ(relation(row("Maximum current", "", "20"), row("current", "20", ""), Role::Cap), Relation::OneSided);
    EXPECT_EQ(relation(row("set-up time", "", "20"), row("set-up time", "20", ""), Role::Cap), Relation::OneSided);
    // The word is a condition, or what the row needs is not known.
    EXPECT_EQ(relation(row("Dropout voltage at minimum input voltage", "", "1.2"), row("Dropout voltage", "1.0", ""), Role::Cap), Relation::OneSided);
    EXPECT_EQ(relation(row("Frequency at maximum supply", "", "20"), row("frequency", "20", ""), Role::Floor), Relation::OneSided);
    EXPECT_EQ(relation(row("Minimum output voltage", "", "5.2"), row("Output voltage", "5.2", ""), std::nullopt), Relation::OneSided);
    EXPECT_EQ(relation(row("Minimum output voltage", "", "5.2"), row("Output voltage", "5.2", ""), Role::Window), Relation::OneSided);
    EXPECT_EQ(relation(row("Miniature pulse", "", "20"), row("Pulse", "20", ""), Role::Cap), Relation::OneSided);
    EXPECT_EQ(relation(row("最小建立时间", "", "20"), row("set-up time", "20", ""), Role::Cap), Relation::Same);
}

TEST(Relation, OneOfSeveralIsNotAllTogether) {
    EXPECT_TRUE(countApart("On-resistance per FET", "On-resistance (two FETs in series)"));
    EXPECT_TRUE(countApart("Total supply current", "Supply current (per amplifier)"));
    EXPECT_TRUE(countApart("Supply current, each comparator", "Supply current of both comparators"));
    EXPECT_TRUE(countApart("单个MOSFET导通电阻", "两个MOSFET总导通电阻"));
    EXPECT_FALSE(countApart("On-resistance", "Total on-resistance")) << "one does not say";
    EXPECT_FALSE(countApart("Total on-resistance of each FET", "Total on-resistance")) << "says both";
    EXPECT_FALSE(countApart("Overall accuracy", "Accuracy per channel")) << "another word";
    EXPECT_FALSE(countApart("", "Total"));
}

TEST(Relation, ASpanIsNoAmplitude) {
    auto const swing = [](char const* name, char const* symbol) {
        model::Parameter p;
        p.name = name;
        p.symbol = symbol;
        return p;
    };
    EXPECT_TRUE(spanApart(swing("Output swing (Peak-to-Peak)", "VO"), swing("Output swing", "±VO")));
    EXPECT_TRUE(spanApart(swing("Output swing", "±VO"), swing("Peak to peak output swing", "VO")));
    EXPECT_FALSE(spanApart(swing("Output swing", "VO"), swing("Output swing", "±VO")));
    EXPECT_FALSE(spanApart(swing("Output swing, peak-to-peak", "VO"), swing("Output swing, peak-to-peak", "VOPP")));
}

TEST(Relation, IsMirroredByExchange) {
    std::mt19937 random(7);
    auto draw = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    for (int round = 0; round < 3000; ++round) {
        auto interval = [&] {
            Interval i;
            i.unit = draw(12) == 0 ? "A" : "V";
            int const lo = draw(8);
            int const hi = lo + draw(6);
            if (draw(4) != 0) i.lo = std::to_string(lo);
            if (draw(4) != 0) i.hi = std::to_string(hi);
            if (draw(2) != 0) i.typ = std::to_string(lo + (hi - lo) / 2);
            i.loOpen = draw(5) == 0;
            i.hiOpen = draw(5) == 0;
            return i;
        };
        Interval const a = interval();
        Interval const b = interval();
        EXPECT_TRUE(mirrors(relateIntervals(a, b), relateIntervals(b, a)));
    }
}

TEST(Relation, NeverCallsDifferentPrintedNumbersTheSame) {
    std::mt19937 random(11);
    char const* const forms[] = {"{}", "-{}", "{}.5", "VDD+{}", "VSS-0.{}", "0.{}VDD", "±{}", "<{}"};
    for (int round = 0; round < 2000; ++round) {
        std::string const form = forms[random() % std::size(forms)];
        auto filled = [&](int digit) {
            std::string text = form;
            return text.replace(text.find("{}"), 2, std::to_string(digit));
        };
        int const a = 1 + static_cast<int>(random() % 9);
        int const b = 1 + (a + static_cast<int>(random() % 8)) % 9;
        std::string const before = filled(a);
        std::string const after = filled(b);
        Parameter const r = parameterOf({"", "", before.c_str(), "V"});
        Parameter const c = parameterOf({"", "", after.c_str(), "V"});
        EXPECT_EQ(isEqual(relateValues(r, c), r, c), a == b) << before << " " << after;
    }
}

}  // namespace
}  // namespace standin::compare
