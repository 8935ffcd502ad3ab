// Which row the lines of a band go to, as the tables of whole pages show it.

#include "extractors/tables/rows.h"

#include <gtest/gtest.h>

#include "extractors/tables/find_tables.h"
#include "extractors/tables/page_builder.h"

namespace standin::tables {
namespace {

using test::head;
using test::kXs;
using test::PageBuilder;
using test::spanAt;
using test::textAt;

using Span = std::pair<int, int>;

// Cases that hang under a name are set closer or wider than their values: they go together in order.
TEST(Rows, IndentedCasesGoWithTheirValuesInOrder) {
    PageBuilder page;
    page.grid({40, 200, 260, 340, 400}, {90, 104, 118, 184, 198, 212});
    page.text(44, 100, "Rating").text(204, 100, "Symbol").text(264, 100, "Value").text(344, 100, "Unit");
    page.text(44, 114, "Supply").text(204, 114, "VS").text(264, 114, "7").text(344, 114, "V");
    page.text(44, 127, "Ambient temperature").text(204, 127, "TA").text(344, 127, "C");
    for (int i = 0; i < 4; ++i) {
        page.text(90, 139 + 11.5F * static_cast<float>(i), "XQ23" + std::to_string(i)).text(264, 138 + 9.0F * static_cast<float>(i), "8" + std::to_string(i));
    }
    page.text(44, 194, "Storage").text(204, 194, "TS").text(264, 194, "90").text(344, 194, "C");
    page.text(44, 208, "Junction").text(204, 208, "TJ").text(264, 208, "150").text(344, 208, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 8);
    EXPECT_EQ(textAt(t, 2, 0), "Ambient temperature XQ230");
    for (int i = 1; i < 4; ++i) EXPECT_EQ(textAt(t, 2 + i, 0), "XQ23" + std::to_string(i));
    for (int i = 0; i < 4; ++i) EXPECT_EQ(textAt(t, 2 + i, 2), "8" + std::to_string(i));
}

// The symbol is set in the middle of the lines of values and holds for all, whatever the name is broken into.
TEST(Rows, ASymbolInTheMiddleOfItsLinesOfValuesHoldsForAll) {
    PageBuilder page;
    page.grid({40, 160, 200, 260, 320, 380, 420}, {90, 104, 152, 190});
    page.text(164, 100, "VDD").text(204, 100, "Symbol").text(264, 100, "Typ").text(324, 100, "Max").text(384, 100, "Unit");
    page.text(60, 114, "Output transition").text(76, 125, "times").text(76, 136, "HIGH to LOW").text(204, 136, "tTHL");
    page.text(76, 172, "LOW to HIGH").text(204, 172, "tTLH");
    for (int i = 0; i < 3; ++i) {
        auto const y = static_cast<float>(i) * 11;
        page.text(170, 125 + y, std::to_string(5 * (i + 1))).text(264, 125 + y, "6" + std::to_string(i)).text(324, 125 + y, "9" + std::to_string(i)).text(384, 125 + y, "ns");
        page.text(170, 161 + y, std::to_string(5 * (i + 1))).text(264, 161 + y, "7" + std::to_string(i)).text(324, 161 + y, "8" + std::to_string(i)).text(384, 161 + y, "ns");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 7);
    EXPECT_EQ(textAt(t, 1, 0), "Output transition times HIGH to LOW");
    EXPECT_EQ(spanAt(t, 1, 0), Span(3, 1));
    EXPECT_EQ(textAt(t, 1, 2), "tTHL");
    EXPECT_EQ(spanAt(t, 1, 2), Span(3, 1));
}

TEST(Rows, SymbolsOfValuesWithUnitsOfTheirOwnGoWithThemInOrder) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 150, 164, 178});
    head(page, 110);
    page.text(44, 128, "Trigger").text(164, 123, "IGX").text(164, 132, "VGX").text(204, 123, "V = 12 V");
    page.text(324, 128, "20").text(404, 128, "50").text(444, 128, "uA").text(404, 144, "0.8").text(444, 144, "V");
    page.text(44, 160, "Bias").text(164, 160, "IB").text(364, 160, "3").text(444, 160, "A").text(44, 174, "Noise").text(164, 174, "VN").text(364, 174, "4").text(444, 174, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 5);
    EXPECT_EQ(textAt(tables[0], 1, 1), "IGX");
    EXPECT_EQ(textAt(tables[0], 2, 1), "VGX");
}

TEST(Rows, TheSymbolBesideANameOnTopIsThatOfItsFirstCase) {
    PageBuilder page;
    page.grid({40, 200, 260, 340, 400}, {90, 104, 118, 158, 172, 186});
    page.text(44, 100, "Rating").text(204, 100, "Symbol").text(264, 100, "Value").text(344, 100, "Unit");
    page.text(44, 114, "Supply").text(204, 114, "VS").text(264, 114, "7").text(344, 114, "V");
    page.text(44, 128, "Power dissipation").text(60, 140, "Plastic package").text(60, 152, "Derate above 25 C").text(204, 128, "PD").text(204, 152, "1/RJA");
    page.text(264, 140, "1.0").text(264, 152, "8.0").text(344, 140, "W").text(344, 152, "mW/C");
    page.text(44, 168, "Storage").text(204, 168, "TS").text(264, 168, "90").text(344, 168, "C");
    page.text(44, 182, "Junction").text(204, 182, "TJ").text(264, 182, "150").text(344, 182, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 6);
    EXPECT_EQ(textAt(tables[0], 2, 1), "PD");
    EXPECT_EQ(textAt(tables[0], 3, 1), "1/RJA");
}

TEST(Rows, ConditionsBehindANameOfTwoRowsGoToARowEach) {
    PageBuilder page;
    for (float const y : {90.0F, 104.0F, 118.0F, 146.0F, 160.0F}) page.horizontal(y, 40, 400);
    page.horizontal(132, 260, 400);
    for (float const x : {40.0F, 200.0F, 260.0F, 340.0F, 400.0F}) page.vertical(x, 90, 160);
    page.text(44, 100, "Parameter").text(204, 100, "Symbol").text(264, 100, "Rating").text(344, 100, "Unit");
    page.text(44, 114, "Supply").text(204, 114, "VS").text(264, 114, "7").text(344, 114, "V");
    page.text(44, 127, "Power dissipation").text(140, 127, "TA = 25 C").text(140, 140, "TA = 70 C").text(204, 135, "PD");
    page.text(264, 128, "2.0").text(264, 142, "1.6").text(344, 128, "W").text(344, 142, "W");
    page.text(44, 156, "Storage").text(204, 156, "TS").text(264, 156, "90").text(344, 156, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 2, 0), "Power dissipation TA = 25 C");
    EXPECT_EQ(textAt(tables[0], 3, 0), "TA = 70 C");
    EXPECT_EQ(spanAt(tables[0], 2, 1), Span(2, 1));
}

TEST(Rows, ALineBehindACommaStaysWithTheLineAbove) {
    PageBuilder page;
    page.grid({40, 200, 260, 320, 380, 420}, {90, 104, 118, 172, 186});
    page.text(44, 100, "Characteristic").text(204, 100, "Symbol").text(264, 100, "Min").text(324, 100, "Typ").text(384, 100, "Unit");
    page.text(44, 114, "Offset").text(204, 114, "VIO").text(324, 114, "7").text(384, 114, "mV");
    page.text(44, 127, "Voltage gain").text(50, 137, "RL = 2.0 k,").text(50, 147, "VS = 15 V, for").text(50, 157, "large swing").text(50, 167, "TA = all");
    page.text(204, 127, "AVOL").text(264, 137, "50").text(324, 137, "100").text(264, 167, "25").text(384, 127, "V/mV");
    page.text(44, 182, "Bias").text(204, 182, "IB").text(324, 182, "90").text(384, 182, "nA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 2, 0), "Voltage gain RL = 2.0 k, VS = 15 V, for large swing");
    EXPECT_EQ(textAt(tables[0], 3, 0), "TA = all");
}

// A name with its conditions, two lines of values 24 apart from `first` on, and two plain rows.
model::Table conditionsBeside(std::vector<std::pair<float, char const*>> const& conditions, float first) {
    PageBuilder page;
    page.grid(kXs, {90, 104, 160, 174, 188});
    head(page, 100).text(44, 130, "Supply current").text(164, 130, "IDD");
    for (auto const& [y, text] : conditions) page.text(204, y, text);
    for (int i = 0; i < 2; ++i) {
        float const y = first + 24 * static_cast<float>(i);
        page.text(364, y, "3" + std::to_string(i)).text(404, y, "6" + std::to_string(i)).text(444, y, "uA");
    }
    page.text(44, 170, "Delay").text(164, 170, "tD").text(364, 170, "3").text(444, 170, "s").text(44, 184, "Noise").text(164, 184, "VN").text(364, 184, "4").text(444, 184, "V");
    auto const tables = findTables(page.layout());
    return tables.size() == 1 ? tables[0] : model::Table{};
}

TEST(Rows, ConditionsInTheMiddleOfTheirRowsGoWithThem) {
    for (auto const& lines : {std::vector<std::pair<float, char const*>>{{114, "at no load,"}, {124, "VDD = 3 V"}, {138, "at full load,"}, {148, "VDD = 4 V"}},
                              std::vector<std::pair<float, char const*>>{{114, "active mode with"}, {124, "outputs open"}, {138, "shutdown mode with"}, {148, "outputs open"}},
                              std::vector<std::pair<float, char const*>>{{114, "VDD = 3 V"}, {124, "outputs open"}, {143, "VDD = 5 V"}}}) {
        SCOPED_TRACE(lines[0].second);
        auto const t = conditionsBeside(lines, 119);
        ASSERT_EQ(t.rows, 5);
        EXPECT_EQ(textAt(t, 1, 2), std::string(lines[0].second) + " " + lines[1].second);
        EXPECT_EQ(textAt(t, 2, 2), std::string(lines[2].second) + (lines.size() > 3 ? std::string(" ") + lines[3].second : ""));
    }
}

TEST(Rows, ConditionsInSmallLettersEndBesideTheirValues) {
    auto const t = conditionsBeside({{114, "active mode with"}, {124, "outputs open"}, {138, "shutdown mode with"}, {148, "outputs open"}}, 124);
    ASSERT_EQ(t.rows, 5);
    EXPECT_EQ(textAt(t, 1, 2), "active mode with outputs open");
    EXPECT_EQ(textAt(t, 2, 2), "shutdown mode with outputs open");
}

// Where each row has its condition the lines that hang under a name are the rest of it.
TEST(Rows, ANameThatGoesOnIndentedIsThatOfAllItsConditions) {
    PageBuilder page;
    page.grid(kXs, {90, 104, 160, 174, 188});
    head(page, 100);
    page.text(44, 114, "Quiescent current").text(60, 125, "Per Channel With").text(60, 136, "No Load At Output").text(60, 147, "All Inputs Low").text(164, 130, "IQ");
    for (int i = 0; i < 3; ++i) {
        float const y = 119 + 12 * static_cast<float>(i);
        page.text(204, y, "VDD = " + std::to_string(3 + i) + " V").text(364, y, "3" + std::to_string(i)).text(444, y, "uA");
    }
    page.text(44, 170, "Delay").text(164, 170, "tD").text(364, 170, "3").text(444, 170, "s").text(44, 184, "Noise").text(164, 184, "VN").text(364, 184, "4").text(444, 184, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 6);
    EXPECT_EQ(textAt(tables[0], 1, 0), "Quiescent current Per Channel With No Load At Output All Inputs Low");
    EXPECT_EQ(spanAt(tables[0], 1, 0), Span(3, 1));
}

TEST(Rows, ASymbolBesideTheMiddleOfANameIsReadInFrontOfIt) {
    PageBuilder page;
    page.grid({40, 200, 300, 360, 420}, {90, 104, 118, 146, 160});
    page.horizontal(132, 200, 420);
    page.text(304, 100, "MIN").text(364, 100, "MAX");
    page.text(44, 114, "VI").text(80, 114, "Input voltage").text(204, 114, "IN").text(304, 114, "4").text(364, 114, "6");
    page.text(44, 132, "IO").text(80, 128, "Output current").text(80, 136, "(continuous)").text(204, 127, "OUT").text(364, 127, "5").text(204, 141, "BAT").text(364, 141, "7");
    page.text(44, 156, "TJ").text(80, 156, "Temperature").text(204, 156, "chip").text(364, 156, "90");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 2, 0), "IO Output current (continuous)");
}

TEST(Rows, AConditionThatGoesOnFromLineToLineHoldsForItsBand) {
    PageBuilder page;
    for (float const y : {90.0F, 104.0F, 148.0F, 192.0F, 226.0F}) page.horizontal(y, 40, 500);
    for (float const x : {40.0F, 90.0F, 200.0F, 320.0F, 380.0F, 440.0F, 500.0F}) page.vertical(x, 90, 226);
    page.text(44, 100, "SYMBOL").text(94, 100, "PARAMETER").text(204, 100, "CONDITIONS").text(324, 100, "TYP").text(384, 100, "MAX").text(444, 100, "UNIT");
    auto row = [&](float y, char const* symbol, char const* name, char const* condition, char const* value) {
        page.text(44, y, symbol).text(94, y, name).text(324, y, value).text(384, y, "9").text(444, y, "ns");
        if (condition[0] != '\0') page.text(204, y, condition);
    };
    row(114, "tdon", "Turn-on delay", "VDD = 50 V; RD = 2 R;", "8");
    row(124, "tr", "Rise time", "VGS = 10 V; RG = 5 R", "39");
    row(134, "tdoff", "Turn-off delay", "Resistive load", "26");
    row(144, "tf", "Fall time", "", "24");
    row(158, "QG", "Gate charge", "ID = 17 A, VDD = 80 V", "8");
    row(168, "IDSS", "Leakage", "VDS = 80 V;", "39");
    row(178, "ID", "Current", "VDS = 10 V", "26");
    row(188, "IG", "Gate current", "", "24");
    row(202, "IB", "Bias current", "RS = 50 R", "7");
    row(212, "AV", "Gain", "RL = 2 k", "8");
    row(222, "IQ", "Supply current", "no load", "9");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 2), "VDD = 50 V; RD = 2 R; VGS = 10 V; RG = 5 R Resistive load");
    EXPECT_EQ(spanAt(tables[0], 1, 2), Span(4, 1));
    EXPECT_EQ(textAt(tables[0], 5, 2), "ID = 17 A, VDD = 80 V");
    EXPECT_EQ(textAt(tables[0], 6, 2), "VDS = 80 V;");
    EXPECT_EQ(textAt(tables[0], 9, 2), "RS = 50 R");
}

// The conditions of a table without rules between its rows, and the spans they get.
TEST(Rows, AConditionGoesOnToAnotherUnitBehindACommaOnly) {
    struct Case {
        std::vector<std::pair<char const*, char const*>> rows;  // condition and unit
        Span first;
        Span third;
    };
    for (auto const& c : {Case{{{"VDD = 25 V, ID = 1 A,", "ns"}, {"RG = 6 R", "ns"}, {"f = 1 MHz", "pF"}, {"VGS = 10 V", "nC"}}, Span(2, 1), Span(1, 1)},
                          Case{{{"VDD = 25 V,", "ns"}, {"RG = 6 R", "ns"}, {"VDS = 15 V,", "pF"}, {"f = 1 MHz", "pF"}}, Span(2, 1), Span(2, 1)},
                          Case{{{"VDD = 25 V,", "ns"}, {"RG = 6 R", "ns"}, {"IF = 15 A", "ns"}, {"f = 1 MHz", "pF"}}, Span(1, 1), Span(1, 1)},
                          Case{{{"VDD = 25 V,", "ns"}, {"RG = 6 R", "nC"}, {"IF = 15 A;", "ns"}, {"VR = 25 V", "nC"}}, Span(2, 1), Span(2, 1)}}) {
        SCOPED_TRACE(c.rows[2].first);
        PageBuilder page;
        for (float const y : {90.0F, 104.0F, 150.0F}) page.horizontal(y, 40, 500);
        for (float const x : {40.0F, 90.0F, 200.0F, 320.0F, 380.0F, 440.0F, 500.0F}) page.vertical(x, 90, 150);
        page.text(44, 100, "SYMBOL").text(94, 100, "PARAMETER").text(204, 100, "CONDITIONS").text(324, 100, "TYP").text(384, 100, "MAX").text(444, 100, "UNIT");
        for (int i = 0; i < 4; ++i) {
            auto const y = 114 + 10 * static_cast<float>(i);
            auto const number = std::to_string(i);
            page.text(44, y, "X" + number).text(94, y, "Quantity " + number).text(204, y, c.rows[static_cast<std::size_t>(i)].first);
            page.text(324, y, "8" + number).text(384, y, "9" + number).text(444, y, c.rows[static_cast<std::size_t>(i)].second);
        }
        auto const tables = findTables(page.layout());
        ASSERT_EQ(tables.size(), 1U);
        ASSERT_EQ(tables[0].rows, 5);
        EXPECT_EQ(spanAt(tables[0], 1, 2), c.first);
        EXPECT_EQ(spanAt(tables[0], 3, 2), c.third);
    }
}

TEST(Rows, AConditionBesideLevelsOfItsOwnColumnHoldsForAll) {
    PageBuilder page;
    for (float const y : {90.0F, 104.0F, 164.0F, 178.0F}) page.horizontal(y, 40, 480);
    page.horizontal(150, 80, 480);  // the symbol stands for both bands
    for (float const x : {40.0F, 80.0F, 200.0F, 320.0F, 360.0F, 400.0F, 440.0F, 480.0F}) page.vertical(x, 90, 178);
    page.text(44, 100, "Symbol").text(84, 100, "Parameter").text(204, 100, "Conditions").text(324, 100, "VCC").text(364, 100, "Typ").text(404, 100, "Max").text(444, 100, "Units");
    page.text(44, 112, "VOH").text(84, 112, "Minimum high").text(84, 122, "level output").text(204, 112, "VIN = VIH or VIL").text(204, 122, "I = 20 uA").text(444, 132, "V");
    for (int i = 0; i < 3; ++i) {
        auto const y = 122 + 11 * static_cast<float>(i);
        page.text(324, y, std::to_string(2 * i + 2) + ".0 V").text(364, y, std::to_string(2 * i + 1) + ".0").text(404, y, std::to_string(2 * i + 1) + ".9");
    }
    page.text(84, 160, "Other output").text(324, 160, "6.0 V").text(404, 160, "3").text(444, 160, "V");
    page.text(44, 174, "ICC").text(84, 174, "Supply current").text(324, 174, "6.0 V").text(404, 174, "4").text(444, 174, "A");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 6);
    EXPECT_EQ(textAt(tables[0], 1, 2), "VIN = VIH or VIL I = 20 uA");
    EXPECT_EQ(spanAt(tables[0], 1, 2), Span(3, 1));
    EXPECT_EQ(textAt(tables[0], 1, 1), "Minimum high level output");
    EXPECT_EQ(spanAt(tables[0], 1, 1), Span(3, 1));
    EXPECT_EQ(textAt(tables[0], 2, 3), "4.0 V");
}

// Without rules between the rows: a unit and a condition once for several parameters, in the middle of them.
void fourTimesAndTwoCurrents(PageBuilder& page, float unitOfTimes) {
    page.horizontal(90, 40, 480).horizontal(104, 40, 480);
    page.text(44, 100, "Parameter").text(164, 100, "Symbol").text(224, 100, "Conditions").text(344, 100, "Typ").text(384, 100, "Max").text(434, 100, "Unit");
    char const* const names[] = {"Turn-on delay", "Rise", "Turn-off delay", "Fall", "Gate leakage", "Drain leakage"};
    char const* const symbols[] = {"TDON", "TR", "TDOFF", "TF", "IGSS", "IDSS"};
    for (int i = 0; i < 6; ++i) {
        float const y = 116 + 14 * static_cast<float>(i);
        page.text(44, y, names[i]).text(164, y, symbols[i]).text(344, y, std::to_string(11 + i)).text(384, y, std::to_string(21 + i));
    }
    page.text(224, 132, "VDD = 9 V, ID = 1 A").text(224, 142, "RG = 6 Ω").text(434, unitOfTimes, "ns").text(434, 179, "nA");
}

TEST(Rows, AUnitBetweenRowsIsThatOfAllOfThemAndSoIsTheConditionInTheirMiddle) {
    PageBuilder page;
    fourTimesAndTwoCurrents(page, 137);
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 7);
    EXPECT_EQ(textAt(t, 1, 5), "ns");
    EXPECT_EQ(spanAt(t, 1, 5), Span(4, 1));
    EXPECT_EQ(spanAt(t, 1, 2), Span(4, 1));
    EXPECT_EQ(textAt(t, 5, 5), "nA");
    EXPECT_EQ(spanAt(t, 5, 5), Span(2, 1));
}

TEST(Rows, AUnitOffTheMiddleOfItsRowsIsNotSpread) {
    PageBuilder page;
    fourTimesAndTwoCurrents(page, 116);
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(spanAt(tables[0], 1, 5), Span(1, 1));
}

}  // namespace
}  // namespace standin::tables
