#include "extractors/parameters/column_plan.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

using enum ColumnRole;

ColumnPlan planOf(model::Table const& table, ColumnPlan const* carried = nullptr) {
    TableText const text(table, nullptr);
    return planColumns(table, text, segmentsOf(table, text).front(), carried);
}

TEST(ColumnPlan, ReadsAUsualHead) {
    auto const plan = planOf(handMade({{"Parameter", "Symbol", "Conditions", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "VDD=3V", "", "3.0", "6.0", "µA"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Name, Symbol, Condition, Min, Typ, Max, Unit}));
    ASSERT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(plan.groups[0].typ, 4);
    EXPECT_EQ(plan.groups[0].unit, 6);
    EXPECT_EQ(plan.groups[0].variant, "");
}

TEST(ColumnPlan, FindsAHeadThatWasNotMarked) {
    auto const table = handMade({{"Symbol", "Parameter", "Min", "Max", "Unit"}, {"IDD", "Supply current", "1", "2", "µA"}}, 0);
    TableText const text(table, nullptr);
    EXPECT_EQ(segmentsOf(table, text).front().bodyFirst, 1);
}

TEST(ColumnPlan, SplitsOneTitleOverItsColumns) {
    auto const plan = planOf(handMade({{"Symbol", "Parameter", ">3 MIN TYP MAX", "", "", "UNI TS"}, {"VDD", "Supply", "1", "2", "3", "V"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Symbol, Name, Min, Typ, Max, Unit}));
}

// Rules of some rows cut the minimum column in two.
TEST(ColumnPlan, TwoColumnsUnderOneTitleAreOne) {
    auto const plan =
        planOf(handMade({{"Symbol", "Parameter", ">2 Min", "", "Typ", "Unit"}, {"fC", "Frequency", "1.0", "", "2", "MHz"}, {"tP", "Pulse width", "", "50", "60", "ns"}}, 1));
    ASSERT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(plan.groups[0].min, 2);
    EXPECT_EQ(plan.twins[2], 3);
    EXPECT_EQ(plan.groups[0].typ, 4);
}

TEST(ColumnPlan, SplitsTitlesThatRunTogether) {
    auto const plan = planOf(handMade({{"符号", "参数", ">3 最小值典型值 最大值", "", "", "单位"}, {"VDD", "电源电压", "1", "2", "3", "V"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Symbol, Name, Min, Typ, Max, Unit}));
}

TEST(ColumnPlan, AmountsAndTemperaturesInFrontOfValuesAreConditions) {
    auto const plan = planOf(handMade({{"Symbol", "Parameter", "|IO| (µA)", "Min", "Max", "Unit"}, {"VOH", "High output", "<1", "4.9", "5", "V"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Symbol, Name, Condition, Min, Max, Unit}));
    EXPECT_EQ(plan.conditionOf[2], "|IO|");
    auto const other = planOf(handMade({{"Параметр", "Обозначение", "мин.", "макс.", "Температура, Tj,°C"}, {"Выходное напряжение, В", "Uo", "4.8", "5.2", "25±10"}}, 1));
    EXPECT_EQ(other.roles, (std::vector{Name, Symbol, Min, Max, Condition}));
}

TEST(ColumnPlan, AValueBesideAMinimumIsTheOtherLimit) {
    auto const plan = planOf(handMade({{"Symbol", "Parameter", "Min", "Value", "Unit"}, {"TSTG", "Storage temperature", "-40", "150", "°C"}}, 1));
    ASSERT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(plan.groups[0].min, 2);
    EXPECT_EQ(plan.groups[0].max, 3);
}

TEST(ColumnPlan, ALimitBesideATypicalValueBelongsToIt) {
    auto const plan = planOf(handMade({{"Symbol", "Parameter", "Conditions", "Typ", "Guaranteed Limit", "Units"}, {"tD", "Delay, D to Q", "CL = 45 pF", "12", "20", "ns"}}, 1));
    ASSERT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(plan.groups[0].typ, 3);
    EXPECT_EQ(plan.groups[0].single, 4);
}

TEST(ColumnPlan, GroupsByTheTitleAbove) {
    auto const plan = planOf(handMade({{"v2 Parameter", ">3 XQ124", "", "", ">3 XQ324", "", "", "v2 Unit"},
                                       {"", "Min", "Typ", "Max", "Min", "Typ", "Max", ""},
                                       {"Offset voltage", "", "1", "2", "", "2", "3", "mV"}},
                                      2));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[0].variant, "XQ124");
    EXPECT_EQ(plan.groups[1].variant, "XQ324");
    EXPECT_EQ(plan.groups[1].min, 4);
    EXPECT_EQ(plan.groups[1].unit, 7);
}

TEST(ColumnPlan, OneNeutralGroupIsNoVariant) {
    auto const plan = planOf(handMade({{"v2 Parameter", ">2 Limits", "", "v2 Unit"}, {"", "Min", "Max", ""}, {"Offset voltage", "1", "2", "mV"}}, 2));
    ASSERT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(plan.groups[0].variant, "");
}

TEST(ColumnPlan, ATitleOverAllValuesTellsNothingApart) {
    auto const plan = planOf(
        handMade({{"v3 Thermal metric", ">2 XQ99", "", "v3 Unit"}, {"", "SOT-23", "DFN-8", ""}, {"", "3 PINS", "8 PINS", ""}, {"Junction to ambient", "220", "80", "°C/W"}}, 1));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[0].variant, "SOT-23 3 PINS");
}

TEST(ColumnPlan, TellsSymbolsUnderOneParameterTitle) {
    auto const plan =
        planOf(handMade({{">2 Parameter", "", "Min", "Max", "Unit"}, {"VUV", "Undervoltage lock-out", "3", "4", "V"}, {"tREC", "Recovery time after a fault", "", "2", "ms"}}, 1));
    EXPECT_EQ(plan.roles[0], Symbol);
    EXPECT_EQ(plan.roles[1], Name);
}

TEST(ColumnPlan, TheOnlyIdentifyingColumnMayHoldSymbols) {
    auto const plan = planOf(handMade({{"Parameter", "Rating", "Unit"}, {"VDD", "-0.3 to 7", "V"}, {"TSTG", "-55 to 125", "°C"}}, 1));
    EXPECT_EQ(plan.roles[0], Symbol);
    EXPECT_TRUE(plan.symbolIsOnlyName);
}

TEST(ColumnPlan, RatingHeadsNamesWhereAnotherColumnHoldsValues) {
    auto const plan = planOf(handMade({{"Rating", "Symbol", "Value", "Unit"}, {"Supply voltage", "VDD", "7", "V"}, {"Junction temperature", "TJ", "150", "°C"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Name, Symbol, Value, Unit}));
}

TEST(ColumnPlan, RatingHeadsNamesBesideColumnsOfVariants) {
    auto const plan =
        planOf(handMade({{"Rating", "HBM", "MM", "Unit"}, {"ESD protection at any pin", "2000", "200", "V"}, {"ESD protection at the supply", "1000", "100", "V"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Name, Value, Value, Unit}));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[1].variant, "MM");
}

TEST(ColumnPlan, AColumnHeadedByASymbolHoldsAConditionLimitsJoinTheTypical) {
    auto const plan = planOf(handMade({{"v2 Symbol", "v2 Parameter", "v2 VCC", ">2 TA = 25 °C", "", "TA = -40 to 85 °C", "v2 Units"},
                                       {"", "", "", "Typ", ">2 Guaranteed limits", "", ""},
                                       {"VIH", "High-level input voltage", "2.0 V", "1.2", "1.5", "1.5", "V"},
                                       {"VIL", "Low-level input voltage", "4.5 V", "2.1", "1.35", "1.35", "V"}},
                                      2));
    EXPECT_EQ(plan.roles[2], Condition);
    EXPECT_EQ(plan.conditionOf[2], "VCC");
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[0].typ, 3);
    EXPECT_EQ(plan.groups[0].single, 4);
    EXPECT_EQ(plan.groups[0].variant, "TA = 25 °C");
    EXPECT_EQ(plan.groups[1].variant, "TA = -40 to 85 °C");
}

TEST(ColumnPlan, AContinuationTakesOverThePlan) {
    auto const first = planOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "", "3.0", "6.0", "µA"}}, 1));
    auto const plan = planOf(handMade({{"Standby current", "ISB", "", "0.1", "0.2", "µA"}}, 0), &first);
    EXPECT_TRUE(plan.carried);
    EXPECT_EQ(plan.roles[3], Typ);
}

TEST(ColumnPlan, WithoutTitlesContentDecides) {
    auto const plan = planOf(handMade({{"Supply voltage range", "VDD", "1.5", "3.0", "5.5", "V"}, {"Supply current on load", "IDD", "1", "2", "3", "mA"}}, 0));
    EXPECT_FALSE(plan.headed);
    EXPECT_EQ(plan.roles, (std::vector{Name, Symbol, Min, Typ, Max, Unit}));
}

TEST(ColumnPlan, TransposedTablesHaveParametersAsColumns) {
    auto const plan = planOf(handMade({{"v2 Package", "v2 RθJA", ">2 Power rating", ""}, {"", "", "TA ≤ 25°C", "TA = 85°C"}, {"DFN-8", "40 °C/W", "2 W", "225 mW"}}, 2));
    ASSERT_TRUE(plan.transposed);
    ASSERT_EQ(plan.groups.size(), 3U);
    EXPECT_EQ(plan.groups[0].symbol, "RθJA");
    EXPECT_EQ(plan.groups[1].name, "Power rating");
    EXPECT_EQ(plan.groups[2].variant, "TA = 85°C");
}

TEST(ColumnPlan, ARepeatedHeadOpensASegment) {
    auto const table = handMade({{"Parameter", "Min", "Max", "Unit"}, {"Supply current", "1", "2", "A"}, {"Parameter", "Typ", "Max", "Unit"}, {"Rise time", "1", "2", "ns"}}, 1);
    TableText const text(table, nullptr);
    auto const segments = segmentsOf(table, text);
    ASSERT_EQ(segments.size(), 2U);
    EXPECT_EQ(segments[1].bodyFirst, 3);
}

TEST(ColumnPlan, ALimitOverTheVariantsIsTheirs) {
    auto const plan = planOf(handMade({{"v2 Symbol", "v2 Parameter", ">2 TYP.", "", "v2 Unit"}, {"", "", "XA", "XB", ""}, {"CI", "Input capacitance", "3.5", "3.4", "pF"}}, 2));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[0].typ, 2);
    EXPECT_EQ(plan.groups[0].single, -1);
    EXPECT_EQ(plan.groups[1].typ, 3);
    EXPECT_EQ(plan.groups[1].variant, "XB");
}

TEST(ColumnPlan, FiguresThatAreReferredToAreNoValues) {
    auto const plan = planOf(handMade(
        {{"v2 Symbol", "v2 Parameter", "v2 Max", "v2 Unit", ">2 Test condition", ""}, {"", "", "", "", "VCC (V)", "Curves"}, {"tW", "Pulse width", "20", "ns", "4.5", "Fig.7"}},
        2));
    EXPECT_EQ(plan.groups.size(), 1U);
    EXPECT_EQ(columnRoleOf("WAVEFORMS"), Ignored);
}

TEST(ColumnPlan, PartsBesideANameAreNoSymbols) {
    auto const plan = planOf(handMade({{"", "", "MIN", "MAX", "UNIT"},
                                       {"VCC+ Supply voltage", "", "5", "15", "V"},
                                       {"v2 TA Operating temperature", "XQ5534, XQ5534A", "0", "70", "v2 °C"},
                                       {"", "XR5534, XR5534A", "-40", "85", ""}},
                                      1));
    EXPECT_EQ(plan.roles, (std::vector{Name, Name, Min, Max, Unit}));
}

TEST(ColumnPlan, UnitsUnderALimitThatNoLineStates) {
    auto const plan = planOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max"}, {"Hold time", "tH", "90", "45", "ns"}, {"Clock rate", "fC", "6", "12", "MHz"}}, 1));
    EXPECT_EQ(plan.roles, (std::vector{Name, Symbol, Min, Typ, Unit}));
    auto const numbers = planOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max"}, {"Hold time", "tH", "90", "45", "1"}, {"Clock rate", "fC", "6", "12", "1"}}, 1));
    EXPECT_EQ(numbers.roles[4], Max);
}

TEST(ColumnPlan, ARowOfTitlesWithALabelStatesACondition) {
    auto const plan = planOf(handMade({{">2 Output voltage", "", ">2 5V", "", ">2 9V", "", "v3 Units"},
                                       {">2 Input voltage (unless otherwise noted)", "", ">2 10V", "", ">2 14V", "", ""},
                                       {"Symbol", "Parameter", "Min", "Max", "Min", "Max", ""},
                                       {"VO", "Output voltage", "4.8", "5.2", "8.7", "9.3", "V"}},
                                      3));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[1].variant, "9V");
    EXPECT_EQ(plan.groups[1].condition, "Input voltage (unless otherwise noted) 14V");
}

TEST(ColumnPlan, AStandardModeIsNoTypicalValue) {
    auto const plan = planOf(handMade({{"v2 Symbol", "v2 Parameter", ">2 Standard mode", "", ">2 Fast mode", "", "v2 Unit"},
                                       {"", "", "Min", "Max", "Min", "Max", ""},
                                       {"fSCL", "Clock frequency", "0", "90", "0", "390", "kHz"}},
                                      2));
    ASSERT_EQ(plan.groups.size(), 2U);
    EXPECT_EQ(plan.groups[0].variant, "Standard mode");
    EXPECT_EQ(plan.groups[1].variant, "Fast mode");
}

TEST(ColumnPlan, WhatCellsLookLikeIsTheSameWhenAskedAgain) {
    CellKinds kinds;
    for (int time = 0; time < 2; ++time) {
        EXPECT_TRUE(kinds.of("4.5").value);
        EXPECT_TRUE(kinds.of("mV").unit);
        EXPECT_TRUE(kinds.of("VDD").symbol);
        EXPECT_TRUE(kinds.of("TA = 25 °C").condition);
        EXPECT_TRUE(kinds.of("XX358A").part);
        EXPECT_TRUE(kinds.of("Hold time").words);
        EXPECT_FALSE(kinds.of("Hold time").value);
    }
}

}  // namespace
}  // namespace standin::parameters
