#include "compare/conditions.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

using model::ConditionRelation;

struct Case {
    ConditionTexts reference;
    ConditionTexts candidate;
    ConditionRelation relation;
};

Case const kCases[] = {
    {{"", ""}, {"", ""}, ConditionRelation::Same},
    {{"VDD=3.5V", "Ta=25°C"}, {"VDD = 3.5 V, TA = 25 °C", ""}, ConditionRelation::Same},
    {{"VDD=3.5V", ""}, {"VCC=3500mV", ""}, ConditionRelation::Same},
    {{"VDD=3.5V", ""}, {"VDD=3.9V", ""}, ConditionRelation::Unordered},
    {{"VDD=3.5V to 4.5V", ""}, {"VDD=4.0V", ""}, ConditionRelation::Milder},
    {{"VDD=4.0V", ""}, {"VDD=3.5V to 4.5V", ""}, ConditionRelation::Harsher},
    {{"", "Ta=25°C"}, {"", "Ta=-20 to 60°C"}, ConditionRelation::Harsher},
    {{"", ""}, {"", "Ta=25°C"}, ConditionRelation::Same},
    {{"", ""}, {"VDD=3.5V", ""}, ConditionRelation::OneUnstated},
    {{"", "Ta=25°C unless otherwise specified"}, {"", "(Ta=25°C, unless otherwise noted)"}, ConditionRelation::Same},
    {{"", "Ta=25°C unless otherwise specified"}, {"", "Ta=85°C unless otherwise specified"}, ConditionRelation::Unordered},
    {{"VDD=3V", "VDD=4V"}, {"VDD=3V", "VDD=5V"}, ConditionRelation::Same},
    {{"no load", ""}, {"with load", ""}, ConditionRelation::Unordered},
    {{"no load", ""}, {"No load", ""}, ConditionRelation::Same},
    // Both supplies in two statements or in one; a frequency by either symbol.
    {{"", "VCC = 15 V, VEE = -15 V"}, {"", "VCC = ±15V"}, ConditionRelation::Same},
    {{"", "VCC = 15 V, VEE = -12 V"}, {"", "VCC = ±15V"}, ConditionRelation::Harsher},
    {{"VCC = 15 V", "VEE = -15 V"}, {"VCC = 15 V", ""}, ConditionRelation::OneUnstated},
    {{"f=1 kHz", ""}, {"fO=1kHz", ""}, ConditionRelation::Same},
    // A load by its magnitude.
    {{"|IOUT| = 20 µA", ""}, {"IO = -20 μA", ""}, ConditionRelation::Same},
    {{"|IOUT| ≤ 20 µA", ""}, {"IO = -20 μA", ""}, ConditionRelation::Milder},
    {{"|IOUT| ≤ 20 µA", ""}, {"IO = -4 mA", ""}, ConditionRelation::Unordered},
    // Levels that an input knows are understood.
    {{"VIN = VIH or VIL, IO = 4 mA", ""}, {"IO = 4 mA", ""}, ConditionRelation::Same},
    {{"VI = VIL or VIH; IO = 4 mA", ""}, {"IO = 4 mA", ""}, ConditionRelation::Same},
    {{"VI = VIH or VIL; IO = 4 mA", ""}, {"VI = VCC or GND, IO = 4 mA", ""}, ConditionRelation::Unordered},
    {{"VI = VCC or GND, IO = 4 mA", ""}, {"IO = 4 mA", ""}, ConditionRelation::OneUnstated},
    {{"VI = VIH or VIL; IO = 4 mA", ""}, {"VI = 5 V, IO = 4 mA", ""}, ConditionRelation::OneUnstated},
    {{"VI = VIH + 1 V, IO = 4 mA", ""}, {"IO = 4 mA", ""}, ConditionRelation::OneUnstated},
    // Brackets hold conditions of their own, but for notes.
    {{"IO = 1 A (10 s)", ""}, {"IO = 1 A (1 s)", ""}, ConditionRelation::Unordered},
    {{"IO = 1 A (t = 10 s)", ""}, {"IO = 1 A, t = 10 s", ""}, ConditionRelation::Same},
    {{"IO = 1 A (TA = 25°C, VDD = 4 V)", ""}, {"IO = 1 A, VDD = 5 V", ""}, ConditionRelation::Unordered},
    {{"IO = 1 A (Note 2)", ""}, {"IO = 1 A (1)", ""}, ConditionRelation::Same},
    {{"IO = 1 A (no load)", ""}, {"IO = 1 A (with load)", ""}, ConditionRelation::Unordered},
    // The line is not for the temperature of the title.
    {{"TA = Tlow to Thigh", "TA = 25°C"}, {"", "TA = 25°C"}, ConditionRelation::OneUnstated},
    // The unit stands in the head of the column.
    {{"VCC=4.5", ""}, {"VCC=4.5 V", ""}, ConditionRelation::Same},
    {{"TJ=125", ""}, {"TJ=125°C", ""}, ConditionRelation::Same},
    {{"VCC=4.5", ""}, {"VCC=5.5 V", ""}, ConditionRelation::Unordered},
    {{"", "GND=0V, Ta=25°C"}, {"", ""}, ConditionRelation::Same},
    {{"", "GND=0V, Ta=25°C"}, {"", "GND=7V, Ta=25°C"}, ConditionRelation::OneUnstated},
    // Which thousand of the unit is meant is printed in one only.
    {{"IO=20 µA", ""}, {"IO=20", ""}, ConditionRelation::OneUnstated},
    {{"RL=1", ""}, {"RL=1 MΩ", ""}, ConditionRelation::OneUnstated},
    {{"IO=10 mA (Note 1)", ""}, {"IO=10 A", ""}, ConditionRelation::Unordered},
    {{"VDD=3.5 V (Note 1)", ""}, {"VDD=3.5 mV", ""}, ConditionRelation::Unordered},
    {{"IO=20 µA", ""}, {"IO=25", ""}, ConditionRelation::Unordered},
    {{"|IO| < 1.0 µA", ""}, {"|IO| = <1", ""}, ConditionRelation::OneUnstated},
    // A heading within the table says it anew.
    {{"", "VCC=5V, VCC=30V"}, {"VCC=30V", ""}, ConditionRelation::Same},
    {{"", "IO=0.5A, VI=9V, 10mA ≤ IO ≤ IMAX"}, {"IO=10mA to IMAX", "IO=0.5A, VI=9V"}, ConditionRelation::OneUnstated},
    // Beside a remark on typical values the range of the table goes on holding.
    {{"", "TA=-40°C to 85°C, unless otherwise noted. Typical values are at TA=25°C"}, {"", "TA=25°C"}, ConditionRelation::Milder},
    {{"", "VDD≥2.7V, VDD≤5.5V"}, {"", "VDD≥4.5V, VDD≤5.5V"}, ConditionRelation::Milder},
    // What Tlow and Thigh are stands in the table.
    {{"TA=Tlow to Thigh", "TA=-40°C to 125°C"}, {"TA=Tlow to Thigh", "TA=0°C to 70°C"}, ConditionRelation::Milder},
    // Words of the line settle what the table says of the same quantity.
    {{"10mA ≤ IO ≤ IMAX", "IO=0.5A, VI=9V"}, {"10mA ≤ IO ≤ IMAX", "VI=9V"}, ConditionRelation::Same},
    // One list of values, however it is put.
    {{"VO=0.5V or 4.5V, VDD=5V", ""}, {"VO = 4.50/0.5 VDD = 5", ""}, ConditionRelation::Same},
    {{"VO=0.5V or 4.5V", ""}, {"VO=0.5V or 4.6V", ""}, ConditionRelation::Unordered},
    // 25 °C for a whole table is no heat, of whatever; the case is not the ambient.
    {{"", "TC = 25 °C unless otherwise specified"}, {"", "Tj = 25 °C unless otherwise specified"}, ConditionRelation::Same},
    {{"", "TC = 25 °C unless otherwise specified"}, {"", ""}, ConditionRelation::Same},
    {{"", "TC = 25 °C unless otherwise specified"}, {"Tmb = 25 °C", ""}, ConditionRelation::Same},
    {{"TC = 25 °C", ""}, {"", ""}, ConditionRelation::OneUnstated},
    {{"", "TC = 25 °C"}, {"", "TA = 25 °C"}, ConditionRelation::OneUnstated},
    {{"", "Tj = 25 °C"}, {"Tj = 125 °C", ""}, ConditionRelation::Unordered},
    {{"", "VCC = ±15 V, TA = 25 °C"}, {"", "V+/V- = ±15 V"}, ConditionRelation::Same},
    // A title in front of what holds for the table.
    {{"", "Electrical characteristics (VDD = 3.5 V, Ta = 25 °C, unless otherwise noted)"}, {"", "VDD=3.5V"}, ConditionRelation::Same},
    {{"", "Electrical characteristics (VDD = 3.5 V, unless otherwise noted)"}, {"", "CHARACTERISTICS (VDD = 4.0 V)"}, ConditionRelation::Unordered},
    {{"", "Absolute Maximum Ratings Ta = 25 °C"}, {"", "Ta=-20 to 60°C"}, ConditionRelation::Harsher},
    {{"", "Electrical characteristics VI - VO = 5 V"}, {"", "VIN-VOUT=6V"}, ConditionRelation::Unordered},
    {{"", "Ratings (Note 2)"}, {"", ""}, ConditionRelation::Same},
    {{"", "电气特性 (VDD = 3.5 V)"}, {"", "VDD=4V"}, ConditionRelation::Unordered},
    {{"", "Absolute Maximum Ratings Ta = 25 °C"}, {"", "ABSOLUTE MAXIMUM RATINGS (Ta = 25 °C)"}, ConditionRelation::Same},
    // What the part does is no title.
    {{"", "Fast mode VDD = 5 V"}, {"", "Standard mode VDD = 5 V"}, ConditionRelation::OneUnstated},
    {{"", "Output open VDD = 5 V"}, {"", "Output loaded VDD = 5 V"}, ConditionRelation::OneUnstated},
    {{"", "Fast mode (VDD = 5 V)"}, {"", "Standard mode (VDD = 5 V)"}, ConditionRelation::Unordered},
    {{"", "Characteristics Fast mode VDD = 5 V"}, {"", "Characteristics Standard mode VDD = 5 V"}, ConditionRelation::OneUnstated},
    {{"", "Characteristics Fast mode (VDD = 5 V)"}, {"", "Characteristics Standard mode (VDD = 5 V)"}, ConditionRelation::Unordered},
    {{"", "V(XY) = 5 V"}, {"", "V(XY) = 6 V"}, ConditionRelation::Unordered},
    {{"", "V(XY) = 5 V"}, {"V(XY) = 5 V", ""}, ConditionRelation::Same},
    {{"", "Fast mode (VDD = 5 V)"}, {"", "Fast mode (VDD = 6 V)"}, ConditionRelation::Unordered},
    {{"", "Fast mode VDD = 5 V"}, {"", "Fast mode VDD = 6 V"}, ConditionRelation::Unordered},
    {{"", "Voltages are referenced to the case (VDD = 5 V)"}, {"", "VDD = 5 V"}, ConditionRelation::Same},
    {{"", "Fast mode characteristics (VDD = 5 V)"}, {"", "Standard mode characteristics (VDD = 5 V)"}, ConditionRelation::Unordered},
    {{"", "Fast mode characteristics VDD = 5 V"}, {"", "Standard mode characteristics VDD = 5 V"}, ConditionRelation::OneUnstated},
    // Two supplies are not one.
    {{"VCC = 15 V", ""}, {"±VCC = 15 V", ""}, ConditionRelation::Harsher},
    {{"V+ = 15 V", ""}, {"V+/V- = 15 V", ""}, ConditionRelation::Harsher},
    {{"±VS = 15 V", ""}, {"VS = ±15 V", ""}, ConditionRelation::Same},
    {{"VCC± = 15 V", ""}, {"V+/V- = ±15 V", ""}, ConditionRelation::Same},
    {{"±VS = 15 V", ""}, {"±VS = 5 V", ""}, ConditionRelation::Milder},
    {{"±VS = 5 to 15 V", ""}, {"VS = 5 to 15 V", ""}, ConditionRelation::OneUnstated},
    // Bounds that are no numbers, however they are put.
    {{"4V ≤ VIN - VO ≤ 30V 5mA ≤ IO ≤ IMAX PD ≤ PMAX", ""}, {"Vi - Vo = 4 to 30 V Io = 5 mA to IMAX PD < PMAX", ""}, ConditionRelation::Same},
    {{"4V ≤ VIN - VO ≤ 30V, PD ≤ PMAX", ""}, {"Vi - Vo = 3 to 30 V, PD < PMAX", ""}, ConditionRelation::Harsher},
    {{"PD ≤ PMAX", ""}, {"PD ≥ PMAX", ""}, ConditionRelation::Unordered},
    {{"IO = 5 mA to IMAX", ""}, {"IO = 5 mA to IPEAK", ""}, ConditionRelation::Unordered},
    {{"VI=0/5", ""}, {"VI=0/10", ""}, ConditionRelation::Unordered},
    {{"VCC=2 to 6", ""}, {"VCC=4.5 V", ""}, ConditionRelation::Milder},
};

ConditionRelation related(ConditionTexts reference, ConditionTexts candidate) {
    ConditionMemo memo;
    return relateConditions(reference, candidate, memo);
}

TEST(Conditions, AreToldSameHarsherMilderOrUnordered) {
    for (auto const& c : kCases) {
        EXPECT_EQ(related(c.reference, c.candidate), c.relation) << c.reference.own << " / " << c.reference.table << " : " << c.candidate.own << " / " << c.candidate.table;
    }
}

// The prose of two languages is listed as not compared; its words are no second difference.
TEST(Conditions, WordsInTwoWritingsAreNoDifferenceButTheirQuantitiesAre) {
    EXPECT_EQ(related({"Circuit working", ""}, {"电路工作", ""}), ConditionRelation::Same);
    EXPECT_EQ(related({"Circuit working", ""}, {"Circuit idle", ""}), ConditionRelation::Unordered);
    EXPECT_EQ(related({"Circuit working, VDD=3V", ""}, {"电路工作, VDD=4V", ""}), ConditionRelation::Unordered);
    EXPECT_EQ(related({"Circuit working, VDD=3V", ""}, {"电路工作", ""}), ConditionRelation::OneUnstated);
    EXPECT_EQ(related({"except as stated VBT=4.0V RPG=1.5K, charging", ""}, {"除说明外 VBT=4.0V RPG=1.5K，充电模式", ""}), ConditionRelation::Same);
    EXPECT_EQ(related({"except as stated VBT=4.0V", ""}, {"除说明外 VBT=4.2V", ""}), ConditionRelation::Unordered);
    EXPECT_EQ(related({"", "A=85°C, VDD=5V"}, {"", "否则仅指 TA=85°C, VDD=5V"}), ConditionRelation::Same);
    EXPECT_EQ(related({"", "A=85°C, VDD=5V"}, {"", "否则仅指 TA=25°C, VDD=5V"}), ConditionRelation::Unordered);
}

TEST(Conditions, MirrorWhenExchanged) {
    for (auto const& c : kCases) {
        ConditionRelation const back = related(c.candidate, c.reference);
        ConditionRelation expected = c.relation;
        if (c.relation == ConditionRelation::Harsher) expected = ConditionRelation::Milder;
        if (c.relation == ConditionRelation::Milder) expected = ConditionRelation::Harsher;
        EXPECT_EQ(back, expected) << c.reference.own << " : " << c.candidate.own;
    }
}

TEST(Conditions, OnlyOneQuantityWithTwoValuesContradicts) {
    auto contradictory = [](std::string const& reference, std::string const& candidate) {
        ConditionMemo memo;
        return contradict(stateConditions({reference, ""}, memo), stateConditions({candidate, ""}, memo));
    };
    EXPECT_TRUE(contradictory("VDD=3V", "VCC=5V"));
    EXPECT_TRUE(contradictory("VDD=3V, no load", "no load, VDD=4V"));
    EXPECT_FALSE(contradictory("VDD=3V", "VDD=2V to 4V"));
    EXPECT_FALSE(contradictory("VDD=3V", "RL=5kΩ"));
    EXPECT_FALSE(contradictory("no load", "output loaded"));
}

// One text alone, the same text for a table, and both in the other order are four statements.
TEST(Conditions, WhatIsUnmetIsCounted) {
    ConditionMemo memo;
    auto const unmet = [&](ConditionTexts r, ConditionTexts c) { return unmetQuantities(memo.stated(r), memo.stated(c)); };
    EXPECT_EQ(unmet({"VDS=5V, ID=1mA", "TC=25°C"}, {"VDS=5V, ID=1mA", "Tj=25°C"}), 0);
    EXPECT_EQ(unmet({"VDS=5V, ID=1mA", "TC=25°C"}, {"VDS=5V, ID=2mA", "Tj=25°C"}), 1);
    EXPECT_EQ(unmet({"VDS=5V, ID=1mA", "TC=25°C"}, {"VDS=5V, ID=2mA, Tj=175°C", ""}), 2);
    EXPECT_EQ(unmet({"VDS=5V", ""}, {"", ""}), 1);
}

// For the levels of an output; what else is measured under a load may be worse at a lighter one.
TEST(Conditions, ALoadAsABoundIsTheFullLoad) {
    ConditionMemo memo;
    auto const asFullLoad = [&](char const* reference, char const* candidate) {
        return relateStated(memo.stated({reference, {}}), memo.stated({candidate, {}}), LoadBounds::AsFullLoad);
    };
    auto const inBound = [&](char const* reference, char const* candidate) { return differInLoadBound(memo.stated({reference, {}}), memo.stated({candidate, {}})); };
    EXPECT_EQ(asFullLoad("|IOUT| ≤ 20 µA, VCC = 5 V", "IO = -20 µA, VCC = 5 V"), ConditionRelation::Same);
    EXPECT_EQ(asFullLoad("IO = 20 µA", "IO ≤ 20 µA"), ConditionRelation::Same);
    EXPECT_EQ(asFullLoad("RL ≥ 2 kΩ", "RL = 2 kΩ"), ConditionRelation::Same);
    EXPECT_EQ(asFullLoad("RL ≤ 2 kΩ", "RL = 2 kΩ"), ConditionRelation::Milder) << "the lightest";
    EXPECT_EQ(asFullLoad("IO ≥ 20 µA", "IO = 20 µA"), ConditionRelation::Milder) << "the lightest";
    EXPECT_EQ(asFullLoad("IO ≤ 20 µA", "IO = 10 µA"), ConditionRelation::Milder);
    EXPECT_EQ(asFullLoad("VCC ≤ 5 V", "VCC = 5 V"), ConditionRelation::Milder) << "no load";
    EXPECT_EQ(asFullLoad("IO ≤ 20 µA, VCC = 5 V", "IO = 20 µA, VCC = 3 V"), ConditionRelation::Unordered);
    EXPECT_TRUE(inBound("RL ≥ 2 kΩ", "RL = 2 kΩ"));
    EXPECT_FALSE(inBound("RL = 2 kΩ", "RL = 2 kΩ"));
    EXPECT_FALSE(inBound("IO ≤ 20 µA", "IO = 10 µA"));
}

// A row at a bound is told from a row at another: measured at the bound, as far as the sheet says.
TEST(Conditions, AValueMeetsItsBound) {
    ConditionMemo memo;
    auto const stated = [&](char const* printed) -> StatedConditions const& { return memo.stated({printed, ""}); };
    auto const& bound = stated("|IOUT| ≤ 20 µA");
    EXPECT_EQ(agreeingQuantities(bound, stated("IO = -20 µA")), 1);
    EXPECT_EQ(agreeingQuantities(stated("IO = 20 µA"), bound), 1);
    EXPECT_EQ(agreeingQuantities(bound, stated("IO = 5 µA")), 0);
    EXPECT_EQ(agreeingQuantities(bound, stated("IO = 4 mA")), 0);
    EXPECT_EQ(unmetQuantities(bound, stated("IO = 20 µA")), 0);
    auto const likeness = [&](char const* printed) { return conditionLikeness(relateStated(bound, stated(printed)), bound, stated(printed)); };
    EXPECT_GT(likeness("IO = 20 µA"), likeness("IO = 5 µA"));
    EXPECT_LT(likeness("IO = 20 µA"), likeness("|IO| ≤ 20 µA"));
    EXPECT_EQ(relateStated(bound, stated("IO = 20 µA")), ConditionRelation::Milder) << "what it promises is less";
}

TEST(Conditions, ALineMayDepartFromItsTable) {
    ConditionMemo memo;
    auto const departs = [&](ConditionTexts one, ConditionTexts other) { return departsAlone(memo.stated(one), memo.stated(other)); };
    EXPECT_TRUE(departs({"CL = 150 pF", "CL = 50 pF"}, {"VCC = 2 V", ""}));
    EXPECT_FALSE(departs({"CL = 50 pF", "CL = 50 pF"}, {"VCC = 2 V", ""}));
    EXPECT_FALSE(departs({"VCC = 2 V", "VCC = 2 V to 6 V"}, {"", ""})) << "within the range of the table";
    EXPECT_FALSE(departs({"CL = 150 pF", "CL = 50 pF"}, {"CL = 15 pF", ""})) << "the other sheet says what it holds for";
}

TEST(ConditionMemo, KeepsApartWhatIsStatedWhere) {
    ConditionMemo memo;
    for (ConditionTexts const texts : {ConditionTexts{"VDD=5V", ""}, ConditionTexts{"", "VDD=5V"}, ConditionTexts{"VDD=5V", "Ta=25°C"}, ConditionTexts{"Ta=25°C", "VDD=5V"}}) {
        StatedConditions const& stated = memo.stated(texts);
        EXPECT_EQ(&memo.stated(texts), &stated);
        EXPECT_EQ(stated.own, texts.own);
        EXPECT_EQ(stated.table, texts.table);
        ASSERT_FALSE(stated.parts.empty());
        EXPECT_EQ(stated.parts.front().ofTable, texts.own.empty());
    }
    EXPECT_EQ(memo.stated({"VDD=5V", "Ta=25°C"}).parts.size(), 2U);
    for (std::string const between : {"\x1f", ":", "1"}) {
        std::string const first = "1" + between + "2";
        std::string const last = "2" + between + "3";
        EXPECT_EQ(memo.stated({first, "3"}).own, first);
        EXPECT_EQ(memo.stated({"1", last}).own, "1") << "whatever character is printed";
    }
}

TEST(Conditions, EveryChangedDigitIsSeen) {
    for (std::string const form : {"VDD=#V", "ID=#mA, VGS=4V", "f=#kHz", "Ta=#5°C", "RL=#kΩ", "pulse of #0 µs", "# cells", "VIN=VOUT+#V", "t<#ms", "VO=#/9", "VI=0/# VDD=5"}) {
        auto filled = [&](char digit) {
            std::string text = form;
            text[text.find('#')] = digit;
            return text;
        };
        std::string const before = filled('3');
        std::string const after = filled('7');
        EXPECT_NE(related({before, ""}, {after, ""}), ConditionRelation::Same) << form;
    }
}

TEST(Conditions, WordsOfATableThatDifferSettleNothing) {
    struct {
        char const *reference, *candidate;
        bool same;
    } constexpr kTexts[] = {
        {"VCC = 15 V, VEE = -15 V (unless otherwise noted)", "Ratings (VCC = ±15 V)", true},
        {"TA = 25 °C, VCC = 5 V (Note 3)", "VCC = 5 V (Note 12), TA = 25 °C", true},
        {"TA = Tlow to Thigh, VCC = 5 V", "TA = 25 °C, VCC = 5 V", false},
        {"VCC = 5 V, RL to VCC", "VCC = 5 V, RL to VSS", false},
        {"VCC = 5 V, within 3 s", "VCC = 5 V, within 10 s", false},
        {"VCC = 5 V", "VCC = 6 V", false},
    };
    for (auto const& [reference, candidate, same] : kTexts) {
        ConditionMemo memo;
        EXPECT_EQ(stateTheSameAlone(reference, candidate, memo), same) << reference;
        EXPECT_EQ(stateTheSameAlone(candidate, reference, memo), same) << candidate;
    }
}

}  // namespace
}  // namespace standin::compare
