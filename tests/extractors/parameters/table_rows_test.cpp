#include "extractors/parameters/table_rows.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

std::vector<PrintedRow> rowsOf(model::Table const& table) {
    TableText const text(table, nullptr);
    auto const segments = segmentsOf(table, text);
    ColumnPlan const plan = planColumns(table, text, segments.front(), nullptr);
    RowContext context;
    return readRows(table, text, nullptr, segments.front(), plan, "Ta=25°C", context);
}

std::string text(std::optional<model::Value> const& value) { return value ? value->text : "~"; }

std::string line(PrintedRow const& row) {
    return row.symbol + "|" + row.name + "|" + row.condition + "|" + row.variant + "|" + text(row.min) + "|" + text(row.typ) + "|" + text(row.max) + "|" + row.unit;
}

TEST(TableRows, OneLineAParameter) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Min", "Typ", "Max", "Unit"},
                                       {"Supply current", "IDD", "VDD=3.9V", "-", "3.0", "6.0", "µA"},
                                       {"Release voltage", "VR", "", "4.00", "4.05", "4.10", "V"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "IDD|Supply current|VDD=3.9V||~|3.0|6.0|µA");
    EXPECT_EQ(line(rows[1]), "VR|Release voltage|||4.00|4.05|4.10|V");
    EXPECT_EQ(rows[0].tableCondition, "Ta=25°C");
}

TEST(TableRows, DelaysFromAnInputToAnOutput) {
    auto const rows = rowsOf(handMade({{"Parameter", "From (input)", "To (output)", "VCC", "Typ", "Max", "Unit"},
                                       {"tPLH", "A or B", "Y", "3.0 V", "9.1", "14", "ns"},
                                       {"tPHL", "A or B", "Y", "5.0 V", "5.2", "8.5", "ns"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "tPLH||from A or B to Y VCC = 3.0 V||~|9.1|14|ns");
}

TEST(TableRows, FromAndToOverNumbersAreLimits) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "From", "To", "Unit"}, {"Supply voltage", "VDD", "2.0", "5.5", "V"}, {"Temperature", "TA", "-40", "85", "°C"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "VDD|Supply voltage|||2.0|~|5.5|V");
    EXPECT_EQ(line(rows[1]), "TA|Temperature|||-40|~|85|°C");
}

TEST(TableRows, AConditionIndentedBelowALineIsOfThatLine) {
    model::Table table = handMade({{"Parameter", "Min", "Typ", "Max", "Unit"},
                                   {"INPUT", "", "", "", ""},
                                   {".Offset voltage", "", "0.8", "2.0", "mV"},
                                   {".TMIN to TMAX", "", "", "3.5", "mV"},
                                   {".Bias current", "", "3", "7", "nA"}},
                                  1);
    for (model::Cell& cell : table.cells) {
        if (cell.text == "TMIN to TMAX") cell.box.x0 += 9;
    }
    auto const rows = rowsOf(table);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[1]), "|INPUT Offset voltage|TMIN to TMAX||~|~|3.5|mV");
    EXPECT_EQ(rows[2].name, "INPUT Bias current");
}

TEST(TableRows, AMarkBesideThePackageIsOfItsValues) {
    auto const rows = rowsOf(handMade({{"Package", "RθJA", "RθJC"}, {"QFN (Note 2)", "39.5 °C/W", "2.4 °C/W"}}, 1));
    ASSERT_FALSE(rows.empty());
    EXPECT_FALSE(rows[0].marks.empty());
}

TEST(TableRows, SymbolsWithoutATitleHoldTheirCondition) {
    auto const rows = rowsOf(handMade({{"", "Parameter", "Max.", "Units"},
                                       {"ID @ TC = 25°C", "Continuous drain current", "38", "A"},
                                       {"ID @ TC = 100°C", "Continuous drain current", "27", "A"},
                                       {"IDM", "Pulsed drain current", "150", "A"},
                                       {"", "Linear derating factor", "0.63", "W/°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(line(rows[0]), "ID|Continuous drain current|TC = 25°C||~|~|38|A");
    EXPECT_EQ(line(rows[1]), "ID|Continuous drain current|TC = 100°C||~|~|27|A");
    EXPECT_EQ(line(rows[2]), "IDM|Pulsed drain current|||~|~|150|A");
    EXPECT_EQ(line(rows[3]), "|Linear derating factor|||~|~|0.63|W/°C");
}

TEST(TableRows, MergedNamesAndUnitsAreRepeated) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Typ", "Max", "Unit"},
                                       {"v2 On-resistance", "v2 RDS(on)", "VGS=4.5V", "22", "28", "v2 mΩ"},
                                       {"", "", "VGS=2.5V", "30", "38", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[1]), "RDS(on)|On-resistance|VGS=2.5V||~|30|38|mΩ");
}

TEST(TableRows, NamesPrintedOnceAreCarriedWithoutRules) {
    auto table = handMade({{"Parameter", "Symbol", "Conditions", "Typ", "Max", "Unit"}, {"On-resistance", "RDS(on)", "VGS=4.5V", "22", "28", "mΩ"}, {"", "", "VGS=2.5V", "30", "38", ""}}, 1);
    table.evidence = {.ruledRows = false, .ruledColumns = false, .aligned = true, .headWords = true, .leaders = false};
    auto const rows = rowsOf(table);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[1]), "RDS(on)|On-resistance|VGS=2.5V||~|30|38|mΩ");
    EXPECT_FALSE(rows[1].doubts.empty());
}

TEST(TableRows, AConditionBesideTheMiddleLineHoldsForAllLinesOfTheName) {
    auto const table = [](char const* first, char const* middle) {
        return handMade({{"Parameter", "Symbol", ">2 Conditions", "", "Typ", "Max", "Unit"},
                         {"v3 Lamp delay", "v3 tLA", "VDD = 5V", first, "240", "480", "v3 ns"},
                         {"", "", "VDD = 10V", middle, "85", "170", ""},
                         {"", "", "VDD = 15V", "", "70", "140", ""},
                         {"v2 Bell delay", "v2 tBE", "VDD = 5V", "CL = 15 pF", "20", "40", "v2 ns"},
                         {"", "", "VDD = 10V", "", "10", "20", ""}},
                        1);
    };
    auto const rows = rowsOf(table("", "CL = 15 pF"));
    ASSERT_EQ(rows.size(), 5U);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_NE(rows[i].condition.find("CL = 15 pF"), std::string::npos) << line(rows[i]);
    EXPECT_EQ(line(rows[0]), "tLA|Lamp delay|VDD = 5V CL = 15 pF||~|240|480|ns");
    EXPECT_EQ(rows[4].condition, "VDD = 10V") << "two lines have no middle";
    auto const above = rowsOf(table("CL = 15 pF", ""));
    EXPECT_EQ(above[1].condition, "VDD = 10V") << "it is the first line's";
    auto const two = rowsOf(table("CL = 50 pF", "CL = 15 pF"));
    EXPECT_EQ(two[2].condition, "VDD = 15V");
}

TEST(TableRows, ATemperatureBelowAConditionOfTheSameParameterIsUnderIt) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Typ", "Max", "Unit"},
                                       {"v3 Leakage current", "v3 IDSS", "VDS=20V, VGS=0V", "", "1", "v3 µA"},
                                       {"", "", "TJ=85°C", "", "30", ""},
                                       {"", "", "TJ=125°C", "", "90", ""},
                                       {"v2 Drain current", "v2 ID", "TA=25°C", "", "6", "v2 A"},
                                       {"", "", "TA=70°C", "", "4", ""},
                                       {"Gate current", "IGSS", "VGS=10V", "", "9", "nA"},
                                       {"On-resistance", "RON", "TJ=25°C", "", "5", "mΩ"}},
                                      1));
    ASSERT_EQ(rows.size(), 7U);
    EXPECT_EQ(rows[1].condition, "VDS=20V, VGS=0V TJ=85°C");
    EXPECT_EQ(rows[2].condition, "VDS=20V, VGS=0V TJ=125°C");
    EXPECT_EQ(rows[4].condition, "TA=70°C");
    EXPECT_EQ(rows[6].condition, "TJ=25°C");
}

// A drawing in front of the names sets them off like an indent.
TEST(TableRows, BoldHeadingsAtOneEdgeAreSideBySide) {
    auto const table = handMade({{"Parameter", "Symbol", "Max", "Unit"},
                                 {"MODE pin", "", "", ""},
                                 {"Bias current", "IM", "100", "nA"},
                                 {"DONE pin", "", "", ""},
                                 {".Sink current", "ID", "18", "mA"},
                                 {".Leakage current", "IL", "1", "µA"}},
                                1);
    TableText words(table, nullptr);
    for (CellText& cell : words.cells) cell.bold = cell.text.ends_with(" pin");
    auto const segments = segmentsOf(table, words);
    ColumnPlan const plan = planColumns(table, words, segments.front(), nullptr);
    RowContext context;
    auto const rows = readRows(table, words, nullptr, segments.front(), plan, "", context);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].name, "MODE pin Bias current");
    EXPECT_EQ(rows[1].name, "DONE pin Sink current");
    EXPECT_EQ(rows[2].name, "DONE pin Leakage current");
}

TEST(TableRows, PlainLimitsBelowTheirTypicalValuesAreDoubted) {
    auto const rows = rowsOf(handMade({{"v2 Symbol", "v2 Parameter", ">2 TA = 25 °C", "", "TA = -40 to 85 °C", "v2 Units"},
                                       {"", "", "Typ", ">2 Guaranteed limits", "", ""},
                                       {"VOH", "High-level output", "2.0", "1.9", "1.8", "V"},
                                       {"VOL", "Low-level output", "0", "0.1", "0.1", "V"},
                                       {"VIH", "Minimum high-level input", "", "3.15", "3.15", "V"}},
                                      2));
    ASSERT_EQ(rows.size(), 6U);
    for (std::size_t i : {0U, 1U, 4U, 5U}) EXPECT_EQ(rows[i].doubts.size(), 1U) << i;
    for (std::size_t i : {2U, 3U}) EXPECT_TRUE(rows[i].doubts.empty()) << i;
}

TEST(TableRows, AValueOverTheUnitColumnIsNoUnit) {
    auto const rows =
        rowsOf(handMade({{"Symbol", "Parameter", "Min", "Max", "Unit"}, {"VIN", "Input voltage", "-0.5", "5.5", "V"}, {"PD", "Power dissipation", ">3 Internally limited"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].unit, "");
    EXPECT_EQ(text(rows[1].max), "Internally limited");
}

TEST(TableRows, HeadingLinesPrefixNamesConditionsGoToTheTable) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Min", "Max", "Unit"},
                                       {">5 DETECTION VOLTAGE"},
                                       {"Overcharge", "VOC", "4.2", "4.3", "V"},
                                       {">5 Ta = -20 to 60 °C, VDD = 3 V"},
                                       {"Overdischarge", "VOD", "2.2", "2.4", "V"},
                                       {">5 XQ74B"},
                                       {"Delay time", "tD", "1", "2", "s"}},
                                      1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].name, "DETECTION VOLTAGE Overcharge");
    EXPECT_EQ(rows[0].tableCondition, "Ta=25°C");
    EXPECT_EQ(rows[1].name, "DETECTION VOLTAGE Overdischarge");
    EXPECT_EQ(rows[1].tableCondition, "Ta=25°C Ta = -20 to 60 °C, VDD = 3 V");
    EXPECT_EQ(rows[2].variant, "XQ74B");
    EXPECT_EQ(rows[2].name, "Delay time");
}

TEST(TableRows, AHeadingOfAPartAndItsSupplyIsBoth) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Min", "Max", "Unit"},
                                       {">6 QX20"},
                                       {"Delay time", "tD", "CK to Q", "1", "2", "ns"},
                                       {">6 QX20T; VCC = 4.5 V to 5.5 V"},
                                       {"Delay time", "tD", "CK to Q", "3", "4", "ns"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "tD|Delay time|CK to Q|QX20|1|~|2|ns");
    EXPECT_EQ(line(rows[1]), "tD|Delay time|CK to Q|QX20T|3|~|4|ns");
    EXPECT_EQ(rows[1].tableCondition, "Ta=25°C VCC = 4.5 V to 5.5 V");
}

TEST(TableRows, ColumnsUnderTestConditionHoldConditionsAndNoValues) {
    auto const rows = rowsOf(handMade({{"v2 Parameter", "v2 Symbol", ">2 Limits", "", "v2 Unit", ">2 Test condition", ""},
                                       {"", "", "Min", "Max", "", "VCC (V)", "Waveforms"},
                                       {"Delay time", "tD", "1", "2", "ns", "4.5", "Fig.7"}},
                                      2));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(line(rows[0]), "tD|Delay time|VCC = 4.5||1|~|2|ns");
}

TEST(TableRows, TheTemperatureOverAllValueColumnsStaysWithItsNumbers) {
    auto const rows = rowsOf(handMade({{"v3 Parameter", "v3 Symbol", ">4 Tamb (°C)", "", "", "", "v3 Unit"},
                                       {"", "", ">2 +25", "", ">2 -40 to +85", "", ""},
                                       {"", "", "Min", "Max", "Min", "Max", ""},
                                       {"Delay time", "tD", "1", "2", "3", "4", "ns"}},
                                      3));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].variant, "Tamb (°C) +25");
    EXPECT_EQ(rows[1].variant, "Tamb (°C) -40 to +85");
}

TEST(TableRows, MergedGroupNamesStandInFront) {
    auto const rows = rowsOf(handMade({{">2 Parameter", "", "Symbol", "Rating", "Unit"},
                                       {"v2 Input", "Forward current", "IF", "50", "mA"},
                                       {"", "Reverse voltage", "VR", "6", "V"},
                                       {">2 Operating temperature", "", "Topr", "-30 to +100", "°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].name, "Input Reverse voltage");
    EXPECT_EQ(line(rows[2]), "Topr|Operating temperature|||-30|~|+100|°C");
}

TEST(TableRows, IndentedLinesHangUnderTheLineAbove) {
    auto const rows = rowsOf(handMade({{"Rating", "Symbol", "Value", "Unit"},
                                       {"Power dissipation", "", "", ""},
                                       {".Molded body", "PD", "500", "mW"},
                                       {".(TA = 85 °C)", "PD", "300", "mW"},
                                       {"Continuous drain current", "ID", "28", "A"},
                                       {".TC = 100 °C", "", "20", "A"},
                                       {"Ambient temperature", "TA", "", "°C"},
                                       {".XQ224", "", "-25 to +85", "°C"},
                                       {".XQ324, XQ324A", "", "0 to +70", "°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 6U);
    EXPECT_EQ(line(rows[0]), "PD|Power dissipation Molded body|||~|~|500|mW");
    EXPECT_EQ(line(rows[1]), "PD|Power dissipation|TA = 85 °C||~|~|300|mW");
    EXPECT_EQ(line(rows[3]), "ID|Continuous drain current|TC = 100 °C||~|~|20|A");
    EXPECT_EQ(rows[4].variant, "XQ224");
    EXPECT_EQ(rows[5].variant, "XQ324, XQ324A");
    EXPECT_EQ(rows[5].name, "Ambient temperature");
}

TEST(TableRows, EachColumnGroupWithValuesIsARow) {
    auto const rows = rowsOf(handMade({{"v2 Parameter", ">2 XQ12", "", ">2 XQ34", "", "v2 Unit"},
                                       {"", "Typ", "Max", "Typ", "Max", ""},
                                       {"Offset voltage", "1", "2", "", "3", "mV"},
                                       {"Input capacitance", "5", "", "", "", "pF"}},
                                      2));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[1]), "|Offset voltage||XQ34|~|~|3|mV");
    EXPECT_EQ(line(rows[2]), "|Input capacitance||XQ12|~|5|~|pF");
}

TEST(TableRows, SingleValueColumnsAndUnitsInCells) {
    auto const rows = rowsOf(handMade({{"Parameter", "Maximum", "Units"}, {"Storage temperature", "-55 to 150", "°C"}, {"Gate voltage", "±12", "V"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "|Storage temperature|||-55|~|150|°C");
    EXPECT_EQ(line(rows[1]), "|Gate voltage|||~|~|±12|V");
    auto const lone = rowsOf(handMade({{"Parameter", "Value"}, {"Supply voltage, VDD", "-0.3 V to 7 V"}, {"Short circuit", "Continuous"}}, 1));
    ASSERT_EQ(lone.size(), 2U);
    EXPECT_EQ(line(lone[0]), "VDD|Supply voltage|||-0.3|~|7|V");
    EXPECT_EQ(text(lone[1].max), "Continuous");
}

TEST(TableRows, SeveralUnitsInOneLineStayInTheCells) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Min", "Max"}, {"Delay", "tD", "100ms", "1.2s"}}, 1));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(line(rows[0]), "tD|Delay|||100ms|~|1.2s|");
}

TEST(TableRows, ConditionLinesAboveValuesGoToTheTable) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Typ", "Unit"},
                                       {"v3 Ripple rejection", "v3 RR", "VO = 10 V, f = 120 Hz", "", "v3 dB"},
                                       {"", "", "without CX", "60", ""},
                                       {"", "", "CX = 10 µF", "75", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].condition, "without CX");
    EXPECT_EQ(rows[0].tableCondition, "Ta=25°C VO = 10 V, f = 120 Hz");
    EXPECT_EQ(rows[1].tableCondition, "Ta=25°C VO = 10 V, f = 120 Hz");
}

TEST(TableRows, NumbersWithLettersBelowEachOtherSelectThePart) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", ">2 Conditions", "", "Typ", "Unit"},
                                       {"v2 RON", "v2 On-resistance", "9135A", "VGS = 4.5 V", "22", "mΩ"},
                                       {"", "", "9135B", "VGS = 4.5 V", "24", "mΩ"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].variant, "9135A");
    EXPECT_EQ(rows[1].variant, "9135B");
    EXPECT_EQ(rows[1].condition, "VGS = 4.5 V");
}

TEST(TableRows, ConditionsOfTitledColumnsAndInBracketsBehindNames) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "VCC", "Min", "Max", "Units"}, {"VIH", "Input voltage", "4.5 V", "3.15", "", "V"}, {"VIH", "Input voltage", "6.0 V", "4.2", "", "V"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].condition, "VCC = 6.0 V");
    auto const named = rowsOf(handMade({{"Characteristic", "Symbol", "Max", "Unit"}, {"Leakage current (VO = 50 V) All types", "IX", "100", "µA"}}, 1));
    ASSERT_EQ(named.size(), 1U);
    EXPECT_EQ(line(named[0]), "IX|Leakage current|VO = 50 V|All types|~|~|100|µA");
}

TEST(TableRows, ASubCellOfConditionsSelectsThePart) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", ">2 Test conditions", "", "Typ", "Unit"},
                                       {"v2 VOVP", "v2 Overvoltage threshold", "VIN: 5 V → 7 V", "('72, '73)", "6.6", "v2 V"},
                                       {"", "", "VIN: 5 V → 11 V", "('74)", "10.5", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].variant, "'72, '73");
    EXPECT_EQ(rows[1].variant, "'74");
    EXPECT_EQ(rows[1].condition, "VIN: 5 V → 11 V");
}

TEST(TableRows, NumbersAndLettersInFrontOfNamesAreNoNames) {
    auto const rows = rowsOf(handMade({{"Num", "C", "Characteristic", "Symbol", "Min", "Typical", "Max", "Unit"},
                                       {"1", "P", "Detection voltage (TA = 25 °C)", "VDET", "2.7", "2.8", "2.9", "V"},
                                       {"2", "C", "Hysteresis (TA = 25 °C)", "VHYS", "90", "140", "190", "mV"},
                                       {"3", "T", "Supply current (VDD = 3.6 V)", "IDD", "", "0.9", "2.1", "µA"}},
                                      1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[0]), "VDET|Detection voltage|TA = 25 °C||2.7|2.8|2.9|V");
    EXPECT_EQ(line(rows[2]), "IDD|Supply current|VDD = 3.6 V||~|0.9|2.1|µA");
}

TEST(TableRows, PinsAndNamesUnderRating) {
    auto const rows = rowsOf(handMade({{"Rating", "Value", "Unit"}, {"VIN to GND", "-0.3 to 6.5", "V"}, {"EN, FB to GND", "-0.3 to 5.5", "V"}, {"SW to GND", "-1 to 7", "V"},
                                       {"PG to GND", "-0.3 to 5.5", "V"},
                                       {"Storage temperature", "150", "°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_EQ(line(rows[0]), "VIN to GND||||-0.3|~|6.5|V");
    EXPECT_EQ(line(rows[1]), "EN, FB to GND||||-0.3|~|5.5|V");
    EXPECT_EQ(line(rows[4]), "|Storage temperature|||~|~|150|°C");
}

TEST(TableRows, ASingleValueMaySayWhichLimitItIs) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Value", "Unit"},
                                       {"Delay", "tD", "20 (typ.)", "ms"},
                                       {"Leakage", "ILK", "3 max", "µA"},
                                       {"Insulation", "RI", "90 Min.", "MΩ"},
                                       {"Range", "VR", "1 to 5 max", "V"},
                                       {"Two limits", "VT", "10 (min) 20 (max)", "V"},
                                       {"Output", "VO", "5 V min", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 6U);
    EXPECT_EQ(line(rows[0]), "tD|Delay|||~|20|~|ms");
    EXPECT_EQ(line(rows[1]), "ILK|Leakage|||~|~|3|µA");
    EXPECT_EQ(line(rows[2]), "RI|Insulation|||90|~|~|MΩ");
    EXPECT_EQ(line(rows[3]), "VR|Range|||1|~|5|V");
    EXPECT_EQ(line(rows[4]), "VT|Two limits|||~|~|10 (min) 20 (max)|V") << "what it says of each is kept";
    EXPECT_EQ(line(rows[5]), "VO|Output|||5|~|~|V");
}

TEST(TableRows, MinutesAreNoMinimum) {
    for (char const* const value : {"300 min", "300 min.", "300 (min)"}) {
        auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Value", "Unit"}, {"Safety timer", "tCHG", value, ""}, {"Level", "VL", "3", "V"}}, 1));
        ASSERT_EQ(rows.size(), 2U);
        EXPECT_TRUE(line(rows[0]).starts_with("tCHG|Safety timer|||~|~|300")) << line(rows[0]);
        EXPECT_NE(line(rows[0]).find("min"), std::string::npos) << line(rows[0]);
    }
}

TEST(TableRows, LongDashesOfSymbolFontsAreBlank) {
    auto const rows = rowsOf(handMade({{"Characteristics", "Symbol", "Min", "Typ.", "Max", "Unit"}, {"Output voltage", "VOH", "4.4", "4.7", "⎯", "V"}}, 1));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(line(rows[0]), "VOH|Output voltage|||4.4|4.7|~|V");
}

TEST(TableRows, ASymbolBehindACommaOfASecondColumnOfNames) {
    auto const rows = rowsOf(handMade({{">2 Parameter", "", "Min", "Max", "Unit"}, {"v2 Temperature", "Junction, TJ", "-40", "150", "°C"}, {"", "Storage, Tstg", "-65", "150", "°C"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "TJ|Temperature Junction|||-40|~|150|°C");
    EXPECT_EQ(line(rows[1]), "Tstg|Temperature Storage|||-65|~|150|°C");
}

TEST(TableRows, ALinkBetweenNameUnitAndConditionIsNoName) {
    auto const rows = rowsOf(handMade({{"Наименование параметра", "Обозначение", "Мин.", "Макс."}, {"Обратный ток, мкА, при Uобр = 1 В", "Iобр", "", "5"}}, 1));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(line(rows[0]), "Iобр|Обратный ток|Uобр = 1 В||~|~|5|мкА");
}

TEST(TableRows, ARangeBesideATypicalValueGivesBothLimits) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Min ~ Max", "Typ", "Unit"}, {"Detection voltage", "VDET", "2.7 ~ 2.9", "2.8", "V"}}, 1));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(line(rows[0]), "VDET|Detection voltage|||2.7|2.8|2.9|V");
}

TEST(TableRows, APartALineWithLimitsOfTheSymbolAbove) {
    auto const table = handMade({{"v2 Device", ">3 VDET (V)", "", ""}, {"", "Min", "Typ", "Max"}, {"ZV27", "2.6", "2.7", "2.8"}, {"ZV30", "2.9", "3.0", "3.1"}}, 2);
    auto const rows = rowsOf(table);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "VDET|||ZV27|2.6|2.7|2.8|V");
    EXPECT_EQ(line(rows[1]), "VDET|||ZV30|2.9|3.0|3.1|V");
}

TEST(TableRows, ValuesStandInEitherHalfOfACutColumn) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", ">2 Min", "", "Typ", "Unit"}, {"fC", "Frequency", "1.0", "", "2", "MHz"}, {"tP", "Pulse width", "", "50", "60", "ns"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "fC|Frequency|||1.0|2|~|MHz");
    EXPECT_EQ(line(rows[1]), "tP|Pulse width|||50|60|~|ns");
}

}  // namespace
}  // namespace standin::parameters
