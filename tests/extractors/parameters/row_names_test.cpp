#include "extractors/parameters/table_rows.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

// Cells whose text holds " / " are printed in several lines.
std::vector<PrintedRow> rowsOf(model::Table table) {
    std::vector<std::vector<CellLine>> lines(table.cells.size());
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        std::string& words = table.cells[i].text;
        model::Points baseline = static_cast<model::Points>(100 + 20 * table.cells[i].row);
        for (std::size_t at = words.find(" / "); at != std::string::npos; at = words.find(" / ")) {
            lines[i].push_back({words.substr(0, at), baseline});
            words = words.substr(0, at) + "\x01" + words.substr(at + 3);
            baseline += 10;
        }
        std::size_t last = words.rfind('\x01');
        if (last != std::string::npos) lines[i].push_back({words.substr(last + 1), baseline});
        for (std::size_t k = 1; k < lines[i].size() && k + 1 < lines[i].size(); ++k) lines[i][k].text = lines[i][k].text.substr(lines[i][k].text.rfind('\x01') + 1);
        for (char& c : words) c = c == '\x01' ? ' ' : c;
    }
    TableText text(table, nullptr);
    for (std::size_t i = 0; i < lines.size(); ++i) text.cells[i].lines = lines[i];
    auto const segments = segmentsOf(table, text);
    ColumnPlan const plan = planColumns(table, text, segments.front(), nullptr);
    RowContext context;
    return readRows(table, text, nullptr, segments.front(), plan, "Ta=25°C", context);
}

std::string line(PrintedRow const& row) {
    auto const text = [](std::optional<model::Value> const& value) { return value ? value->text : "~"; };
    return row.symbol + "|" + row.name + "|" + row.condition + "|" + row.variant + "|" + text(row.typ) + "|" + text(row.max) + "|" + row.unit;
}

TEST(RowNames, ConditionLinesBelowANameAreItsCondition) {
    auto const rows = rowsOf(handMade({{"Characteristic", "Symbol", "Typ", "Max", "Unit"},
                                       {"Sink current / VX (-) ≥ 1.0 V, VX(+) = 0, / VO ≤ 1.5 V", "IS", "6", "16", "mA"},
                                       {"Response time (large signal) / VX = logic swing, / RL = 5.1 kΩ", "tR", "1", "2", "µs"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "IS|Sink current|VX (-) ≥ 1.0 V, VX(+) = 0, VO ≤ 1.5 V||6|16|mA");
    EXPECT_EQ(line(rows[1]), "tR|Response time (large signal)|VX = logic swing, RL = 5.1 kΩ||1|2|µs");
}

TEST(RowNames, TheFirstOfSeveralCasesLeavesItsConditionsToAll) {
    auto const rows = rowsOf(handMade({{"Characteristic", "Symbol", "Typ", "Max", "Unit"},
                                       {"Offset voltage (RS = 50 Ω) / VO = 1.4 V / TA = 25 °C", "VIO", "2", "5", "mV"},
                                       {"TA = -20 to 60 °C", "", "", "9", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "VIO|Offset voltage|TA = 25 °C||2|5|mV");
    EXPECT_EQ(line(rows[1]), "VIO|Offset voltage|TA = -20 to 60 °C||~|9|mV");
    EXPECT_EQ(rows[0].tableCondition, "Ta=25°C RS = 50 Ω VO = 1.4 V");
    EXPECT_EQ(rows[1].tableCondition, rows[0].tableCondition);
}

TEST(RowNames, ConditionsOfANameHoldForThePartsBelowIt) {
    auto const rows =
        rowsOf(handMade({{"Characteristic", "Symbol", "Typ", "Max", "Unit"}, {"Bias current (VCM = 0) XQ81C", "IIB", "30", "400", "pA"}, {"XQ81AC", "", "30", "200", ""}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "IIB|Bias current|VCM = 0|XQ81C|30|400|pA");
    EXPECT_EQ(line(rows[1]), "IIB|Bias current|VCM = 0|XQ81AC|30|200|pA");
}

TEST(RowNames, AListOfPartsIsNoNameWithAPartBehindIt) {
    auto const rows = rowsOf(handMade(
        {{"Rating", "Symbol", "Typ", "Max", "Unit"}, {"Ambient temperature", "TA", "1", "2", "°C"}, {".XQ29, XQ29E", "", "3", "4", ""}, {".XQ29V, XC29", "", "5", "6", ""}}, 1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].variant, "XQ29, XQ29E");
    EXPECT_EQ(rows[2].variant, "XQ29V, XC29");
}

TEST(RowNames, AHeadingOfAPartAboveItsConditionIsBoth) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Conditions", "Typ", "Max", "Unit"},
                                       {">6 Stabiliser of 5 V (QX7805) / VI = 10 V, IO = 500 mA"},
                                       {"VO", "Output voltage", "TJ = 25 °C", "5.0", "5.2", "V"},
                                       {">6 Stabiliser of 6 V (QX7806) / VI = 11 V, IO = 500 mA"},
                                       {"VO", "Output voltage", "TJ = 25 °C", "6.0", "6.2", "V"}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "VO|Output voltage|TJ = 25 °C|Stabiliser of 5 V (QX7805)|5.0|5.2|V");
    EXPECT_EQ(line(rows[1]), "VO|Output voltage|TJ = 25 °C|Stabiliser of 6 V (QX7806)|6.0|6.2|V");
    EXPECT_EQ(rows[1].tableCondition, "Ta=25°C VI = 11 V, IO = 500 mA");
}

TEST(RowNames, ASymbolBehindANameIsThatOfThePartsBelowIt) {
    auto const rows = rowsOf(handMade({{"Parameter", "Unit", "Min", "Max"},
                                       {"Input voltage Vi", "V", "", ""},
                                       {".QX7805", "", "7", "25"},
                                       {".QX7806", "", "8", "25"},
                                       {".QX7808", "", "10", "25"},
                                       {"Crystal temperature, Tj", "°C", "0", "125"},
                                       {"Total power, Ptotmax", "W", "", "15"}},
                                      1));
    ASSERT_EQ(rows.size(), 5U);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(rows[i].name + "|" + rows[i].symbol, "Input voltage|Vi");
    EXPECT_EQ(rows[4].name + "|" + rows[4].symbol, "Total power|Ptotmax");
}

TEST(RowNames, ACellThatSelectsThePartIsNoCondition) {
    auto const rows = rowsOf(handMade({{">2 Parameter", "", "Symbol", "Value", "Unit"},
                                       {"v2 Peak voltage", "QX0405-6", "v2 VDR", "600", "V"},
                                       {"", "QX0405-8", "", "800", "V"},
                                       {"v2 Surge current", "tP = 8.3 ms", "v2 ITM", "33", "A"},
                                       {"", "tP = 10 ms", "", "30", "A"},
                                       {"v2 Junction temperature", "for QX78", "v2 TJ", "150", "°C"},
                                       {"", "for QX78C", "", "125", "°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 6U);
    EXPECT_EQ(line(rows[1]), "VDR|Peak voltage||QX0405-8|~|800|V");
    EXPECT_EQ(line(rows[5]), "TJ|Junction temperature||for QX78C|~|125|°C");
    auto const quoted = rowsOf(handMade({{"Symbol", "Parameter", "Test conditions", "Typ", "Max", "Unit"},
                                         {"v2 VREG", "v2 Charge voltage", "('72, '73)", "4.2", "4.23", "v2 V"},
                                         {"", "", "('79)", "4.1", "4.14", ""},
                                         {"VRI", "Detection", "VB rising", "1.8", "2", "V"}},
                                        1));
    ASSERT_EQ(quoted.size(), 3U);
    EXPECT_EQ(line(quoted[1]), "VREG|Charge voltage||'79|4.1|4.14|V");
}

TEST(RowNames, APartOfTheLineAndOneOfTheColumnAreBothKept) {
    auto const rows = rowsOf(handMade({{"v2 Characteristic", "v2 Symbol", ">2 XQ84I, XQ84AI", "", ">2 XQ84C", "", "v2 Unit"},
                                       {"", "", "Typ", "Max", "Typ", "Max", ""},
                                       {"Offset voltage XQ84", "VIO", "3", "10", "3", "12", "mV"},
                                       {"XQ84A", "", "3", "6", "", "", ""}},
                                      2));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].variant, "XQ84 XQ84I, XQ84AI");
    EXPECT_EQ(rows[1].variant, "XQ84 XQ84C");
    EXPECT_EQ(rows[2].variant, "XQ84A");
}

TEST(RowNames, SymbolsAboveEachOtherAreAQuotientWhereTheUpperIsAChange) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Typ", "Max", "Unit"},
                                       {"Temperature stability", "ΔVO / VO", "1", "", "%"},
                                       {"Drift", "ΔVO / ΔT", "0.6", "", "mV/°C"},
                                       {"Delay", "tPHL / tPLH", "9", "12", "ns"},
                                       {"Load regulation", "ΔVO/ / ΔIO", "9", "12", "mV/A"}},
                                      1));
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[3].symbol, "ΔVO/ ΔIO");
    EXPECT_EQ(rows[0].symbol, "ΔVO/VO");
    EXPECT_EQ(rows[1].symbol, "ΔVO/ΔT");
    EXPECT_EQ(rows[2].symbol, "tPHL tPLH");
}

TEST(RowNames, ChangesOfOneQuantityBesideSeveralRowsAreNoQuotient) {
    auto const rows = rowsOf(handMade({{"Parameter", "Symbol", "Conditions", "Typ", "Unit"},
                                       {"v2 Regulation", "v2 ΔVLINE / ΔVLOAD", "VI = 7 V", "3", "mV"},
                                       {"", "", "IO = 1 A", "15", "mV"},
                                       {"v2 Drift", "v2 ΔVO / ΔT", "VI = 7 V", "3", "mV/K"},
                                       {"", "", "IO = 1 A", "4", "mV/K"}},
                                      1));
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].symbol, "ΔVLINE ΔVLOAD");
    EXPECT_EQ(rows[2].symbol, "ΔVO/ΔT");
}

TEST(RowNames, ANewSymbolIsNoCaseOfTheNameAbove) {
    auto const rows = rowsOf(handMade({{"Characteristic", "Symbol", "Typ", "Max", "Unit"}, {"Bandwidth", "BW", "4", "", "MHz"}, {"VO=1V, RL = 2 kΩ", "IQ", "13", "", "mA"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[1]), "IQ||VO=1V, RL = 2 kΩ||13|~|mA");
}

TEST(RowNames, ANameWrappedBesideItsValuesIsOneName) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Conditions", "Typ", "Max", "Unit"},
                                       {"RON", "Drain-source on-state", "VG = 10 V", "49", "77", "mΩ"},
                                       {"", "resistance", "TJ = 175 °C", "132", "193", "mΩ"},
                                       {"gF", "Transconductance", "VD = 25 V", "8", "15", "S"}},
                                      1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[0]), "RON|Drain-source on-state resistance|VG = 10 V||49|77|mΩ");
    EXPECT_EQ(line(rows[1]), "RON|Drain-source on-state resistance|VG = 10 V TJ = 175 °C||132|193|mΩ");
    EXPECT_EQ(rows[2].name, "Transconductance");
}

TEST(RowNames, NamesOfTheirOwnUnderOneSymbolStayApart) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Typ", "Max", "Unit"},
                                       {"v2 tR", "Rise time", "20", "", "ns"},
                                       {"", "Overshoot factor", "15", "", "%"},
                                       {"v2 PD", "Power dissipation a package", "", "200", "v2 mW"},
                                       {"", "Power dissipation an output", "", "100", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[1].name, "Overshoot factor");
    EXPECT_EQ(rows[3].name, "Power dissipation an output");
}

TEST(RowNames, LinesUnderAMergedSymbolCarryTheName) {
    auto const rows = rowsOf(handMade(
        {{"Symbol", "Parameter", "Conditions", "Typ", "Max", "Unit"}, {"v2 VOL", "Low output voltage", "VS = 5 V", "0", "0.1", "V"}, {"", "", "VS = 9 V", "0", "0.2", "V"}}, 1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[1]), "VOL|Low output voltage|VS = 9 V||0|0.2|V");
}

TEST(RowNames, AUnitBehindTheNameServesWhereNoColumnHoldsUnits) {
    auto const rows = rowsOf(handMade({{"Параметр", "Обозначение", "мин.", "макс."}, {"Выходное напряжение, В", "Uo", "4.8", "5.2"}}, 1));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].name, "Выходное напряжение");
    EXPECT_EQ(rows[0].unit, "В");
}

TEST(RowNames, WhatStandsBeforeTheVariedConditionHoldsForBoth) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Conditions", "Typ", "Max", "Unit"},
                                       {"v2 RL", "v2 Load regulation", "TA = 25 °C, 10 mA ≤ IO ≤ 1 A / VO = 5 V", "9", "25", "v2 mV"},
                                       {"", "", "VO = 9 V", "20", "70", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "RL|Load regulation|VO = 5 V||9|25|mV");
    EXPECT_EQ(line(rows[1]), "RL|Load regulation|VO = 9 V||20|70|mV");
    EXPECT_EQ(rows[1].tableCondition, "Ta=25°C TA = 25 °C, 10 mA ≤ IO ≤ 1 A");
}

TEST(RowNames, AConditionOfTwoLinesIsNotParted) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Conditions", "Typ", "Max", "Unit"},
                                       {"v2 RON", "v2 On-resistance", "VG = 4.5 V, / ID = 5 A", "22", "28", "v2 mΩ"},
                                       {"", "", "VG = 2.5 V, ID = 4 A", "30", "38", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(line(rows[0]), "RON|On-resistance|VG = 4.5 V, ID = 5 A||22|28|mΩ");
}

// A list without rules: a name and a value a line, its words where they are printed.
class NameList {
public:
    NameList() {
        m_table.id = "t1";
        m_table.page = m_page.page = 1;
        m_table.columns = 2;
    }
    NameList& line(float x, std::string const& name, std::string const& value) {
        int const row = m_table.rows++;
        put(row, 0, x, name);
        if (!value.empty()) put(row, 1, 400, value);
        return *this;
    }
    [[nodiscard]] std::vector<PrintedRow> rows() const {
        TableText const text(m_table, &m_page);
        auto const segments = segmentsOf(m_table, text);
        RowContext context;
        return readRows(m_table, text, &m_page, segments.front(), planColumns(m_table, text, segments.front(), nullptr), "", context);
    }

private:
    void put(int row, int column, float x, std::string const& words) {
        model::Cell cell;
        cell.row = row;
        cell.column = column;
        cell.text = words;
        auto const y = static_cast<float>(row) * 12;
        std::size_t at = 0;
        while (at < words.size()) {
            std::size_t const end = std::min(words.find(' ', at), words.size());
            model::Word word;
            word.text = words.substr(at, end - at);
            word.size = 9;
            word.spaceBefore = at > 0;
            word.box = {x, y, x + 5 * static_cast<float>(word.text.size()), y + 9};
            word.baseline = y + 7;
            cell.words.push_back(static_cast<std::uint32_t>(m_page.words.size()));
            cell.box = model::united(cell.box, word.box);
            x = word.box.x1 + 4;
            m_page.words.push_back(word);
            at = end + 1;
        }
        m_table.cells.push_back(cell);
    }
    model::Table m_table;
    model::PageLayout m_page;
};

TEST(RowNames, TheFirstCaseMayStandBehindItsHeading) {
    // where "D package" starts
    auto const rows =
        NameList().line(40, "Thermal impedance, θJA: D package", "97 °C/W").line(40 + 122, "P package", "85 °C/W").line(40, "Storage temperature, Tstg", "150 °C").rows();
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[0]), "θJA|Thermal impedance D package|||~|97|°C/W");
    EXPECT_EQ(line(rows[1]), "θJA|Thermal impedance P package|||~|85|°C/W");
    EXPECT_EQ(line(rows[2]), "Tstg|Storage temperature|||~|150|°C");
}

TEST(RowNames, CasesHaveTheSymbolOfTheirHeadingAndTheNextNameHasItsOwn) {
    auto const rows =
        NameList().line(40, "Power dissipation (PD)", "").line(52, "Dual in line", "700 mW").line(52, "Small outline", "500 mW").line(40, "Lead temperature (TL)", "260 °C").rows();
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(line(rows[0]), "PD|Power dissipation Dual in line|||~|700|mW");
    EXPECT_EQ(line(rows[1]), "PD|Power dissipation Small outline|||~|500|mW");
    EXPECT_EQ(line(rows[2]), "TL|Lead temperature|||~|260|°C");
}

TEST(RowNames, ALimitBehindTheSymbolOfANameSaysWhatSingleValuesAre) {
    auto const rows = rowsOf(handMade({{"v2 Characteristic", ">2 Limits at", "", ">2 +25", "", "v2 Units"},
                                       {"", "-55", "+85", "Min.", "Typ.", ""},
                                       {"Sink current, IOL Min.", "0.64", "0.42", "0.51", "1", "mA"},
                                       {"Device current, IDD Max.", "5", "150", "", "0.02", "µA"}},
                                      2));
    ASSERT_EQ(rows.size(), 6U);
    EXPECT_EQ(rows[0].symbol, "IOL");
    EXPECT_EQ(rows[0].name, "Sink current");
    EXPECT_TRUE(rows[0].min.has_value() && !rows[0].max.has_value());
    EXPECT_EQ(rows[3].symbol, "IDD");
    EXPECT_TRUE(rows[3].max.has_value() && !rows[3].min.has_value());
}

TEST(RowNames, UnitsInBracketsBehindNamesWhereNoColumnHoldsThem) {
    auto const rows = rowsOf(handMade({{"Parameter", "Typ", "Max"},
                                       {"Supply current [mA]", "1.2", "1.5"},
                                       {"Hold time (ns)", "5", "9"},
                                       {"All other pins (V)", "1", "2"},
                                       {"Drain current (100 °C)", "3.2", "4"},
                                       {"Output voltage (H)", "4", "5"}},
                                      1));
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_EQ(rows[3].unit, "");
    EXPECT_NE((rows[3].name + rows[3].condition).find("100 °C"), std::string::npos) << "a condition is no unit, and stays";
    EXPECT_EQ(rows[4].unit, "");
    EXPECT_EQ(rows[4].name, "Output voltage (H)");
    EXPECT_EQ(line(rows[0]), "|Supply current|||1.2|1.5|mA");
    EXPECT_EQ(line(rows[1]), "|Hold time|||5|9|ns");
    EXPECT_EQ(rows[2].name, "All other pins");
    EXPECT_EQ(rows[2].variant, "");
}

TEST(RowNames, ASymbolInFrontOfTheUnitBehindTheName) {
    auto const rows = rowsOf(
        handMade({{"Parameter", "Min", "Max"}, {"Supply voltage VDD (V)", "-0.3", "6.5"}, {"Output current IO (mA)", "-", "30"}, {"Junction temperature TJ (°C)", "-", "150"}}, 1));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].name, "Output current");
    EXPECT_EQ(rows[1].symbol, "IO");
    EXPECT_EQ(rows[1].unit, "mA");
}

TEST(RowNames, ASecondColumnOfNamesHoldsNoSymbols) {
    auto const rows = rowsOf(handMade({{"", "", "MIN", "MAX", "UNIT"},
                                       {"v2 VI Input voltage", "IN (with respect to VSS)", "-0.3", "28", "V"},
                                       {"", "BAT (with respect to VSS)", "-0.3", "5", "V"},
                                       {"II Input current", "IN", "", "1.6", "A"},
                                       {"Output sink current", "CHG, PGOOD", "", "15", "mA"},
                                       {"TJ Junction temperature", "", "-40", "150", "°C"}},
                                      1));
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_EQ(rows[0].symbol, "VI");
    EXPECT_EQ(rows[0].name, "Input voltage IN (with respect to VSS)");
    EXPECT_EQ(rows[1].symbol, "VI");
    EXPECT_EQ(rows[3].symbol, "");
    EXPECT_EQ(rows[3].name, "Output sink current CHG, PGOOD");
}

TEST(RowNames, PartsBelowACaseOfAPartHaveItsCondition) {
    auto const rows = rowsOf(handMade({{"Symbol", "Parameter", "Typ", "Max", "Unit"},
                                       {"v4 VIO", "Offset voltage (RS = 50 Ω) TA = 25 °C XQ084", "3", "10", "v4 mV"},
                                       {"", "XQ084A", "3", "6", ""},
                                       {"", "Tmin ≤ TA ≤ Tmax XQ084", "", "13", ""},
                                       {"", "XQ084A", "", "7", ""}},
                                      1));
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].name, "Offset voltage");
    EXPECT_EQ(rows[1].condition, "RS = 50 Ω, TA = 25 °C");
    EXPECT_EQ(rows[2].variant, "XQ084");
    EXPECT_EQ(rows[3].condition, "Tmin ≤ TA ≤ Tmax");
    EXPECT_EQ(rows[3].variant, "XQ084A");
}

}  // namespace
}  // namespace standin::parameters
