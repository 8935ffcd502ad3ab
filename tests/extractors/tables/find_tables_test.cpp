#include "extractors/tables/find_tables.h"

#include <gtest/gtest.h>

#include "extractors/tables/page_builder.h"

namespace standin::tables {
namespace {

using test::head;
using test::isSound;
using test::kXs;
using test::PageBuilder;
using test::spanAt;
using test::textAt;

using Span = std::pair<int, int>;

TEST(FindTables, readsARuledGrid) {
    PageBuilder page;
    page.text(40, 80, "Electrical data").text(40, 92, "(Ta = 25 C unless otherwise noted)");
    page.grid(kXs, {100, 114, 128, 142});
    head(page, 110);
    page.text(44, 124, "Trip voltage").text(164, 124, "VTR").text(324, 124, "4.20").text(364, 124, "4.25").text(404, 124, "4.30").text(444, 124, "V");
    page.text(44, 138, "Idle current").text(164, 138, "IID").text(204, 138, "VB = 3 V").text(404, 138, "6.0").text(444, 138, "uA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    EXPECT_EQ(t.rows, 3);
    EXPECT_EQ(t.columns, 7);
    EXPECT_EQ(t.headRows, 1);
    EXPECT_EQ(textAt(t, 1, 4), "4.25");
    EXPECT_EQ(textAt(t, 2, 3), "<none>");
    EXPECT_EQ(textAt(t, 2, 5), "6.0");
    EXPECT_EQ(t.lead, "(Ta = 25 C unless otherwise noted)");
    EXPECT_TRUE(t.evidence.ruledRows && t.evidence.ruledColumns && t.evidence.headWords);
    EXPECT_GT(t.confidence, 0.9);
}

TEST(FindTables, missingRulesMakeMergedCells) {
    PageBuilder page;
    for (float const y : {100.0F, 114.0F, 142.0F}) page.horizontal(y, 40, 480);
    page.horizontal(128, 200, 440);  // neither under the name nor the unit
    for (float const x : kXs) page.vertical(x, 100, 142);
    head(page, 110);
    page.text(44, 131, "Trip voltage").text(164, 131, "VTR").text(204, 124, "case one").text(364, 124, "1").text(204, 138, "case two").text(364, 138, "2").text(444, 131, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    ASSERT_EQ(t.rows, 3);
    EXPECT_EQ(spanAt(t, 1, 0), Span(2, 1));
    EXPECT_EQ(spanAt(t, 1, 6), Span(2, 1));
    EXPECT_EQ(textAt(t, 1, 2), "case one");
    EXPECT_EQ(textAt(t, 2, 4), "2");
}

TEST(FindTables, valueLinesInOneRuledCellAreRows) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 150, 164, 178});
    head(page, 110);
    page.text(44, 123, "Load step").text(164, 123, "DVO").text(204, 123, "I = 10 mA").text(204, 134, "V < 5 V").text(204, 145, "V > 5 V");
    page.text(364, 134, "18").text(364, 145, "0.4").text(404, 134, "25").text(404, 145, "0.5").text(444, 134, "mV").text(444, 145, "%");
    page.text(44, 160, "Bias").text(364, 160, "3").text(444, 160, "V").text(44, 174, "Noise").text(364, 174, "4").text(444, 174, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    ASSERT_EQ(t.rows, 5);
    EXPECT_EQ(spanAt(t, 1, 0), Span(2, 1));
    EXPECT_EQ(textAt(t, 1, 2), "I = 10 mA V < 5 V");
    EXPECT_EQ(textAt(t, 2, 2), "V > 5 V");
    EXPECT_EQ(textAt(t, 1, 4), "18");
    EXPECT_EQ(textAt(t, 2, 5), "0.5");
    EXPECT_EQ(textAt(t, 2, 6), "%");
}

// The bar is half as wide as its narrow column, so its length alone does not tell.
TEST(FindTables, barsOverWordsPartNoRows) {
    PageBuilder page;
    page.grid({40, 74, 200, 260, 320}, {100, 114, 150, 164, 178});
    page.text(44, 174, "DA").text(78, 174, "Setup time").text(204, 174, "7").text(264, 174, "ns");
    page.text(44, 110, "Pin").text(78, 110, "Parameter").text(204, 110, "Max").text(264, 110, "Unit");
    page.text(44, 124, "RESET1").text(78, 124, "Width of it").text(204, 124, "80").text(264, 134, "ns").text(204, 134, "16").text(204, 144, "14");
    page.horizontal(117.5F, 44, 68).horizontal(117.5F, 78, 102);
    page.text(44, 160, "CK").text(78, 160, "Hold time").text(204, 160, "5").text(264, 160, "ns");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 6);
    EXPECT_EQ(textAt(t, 1, 2), "80");
    EXPECT_EQ(textAt(t, 2, 2), "16");
    EXPECT_EQ(textAt(t, 3, 2), "14");
}

TEST(FindTables, wrappedConditionIsOneRow) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 150, 164});
    head(page, 110);
    page.text(44, 134, "Load step").text(204, 123, "first line of").text(204, 134, "a condition").text(204, 145, "in three lines").text(364, 134, "18").text(444, 134, "mV");
    page.text(44, 160, "Bias").text(364, 160, "3").text(444, 160, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 3);
    EXPECT_EQ(textAt(tables[0], 1, 2), "first line of a condition in three lines");
    ASSERT_EQ(tables[0].cells.size(), 7U + 4U + 3U);
}

TEST(FindTables, expressionOverTwoLinesIsOneValue) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 140, 154});
    head(page, 110);
    page.text(44, 128, "Output").text(364, 123, "VBT -").text(364, 134, "0.1").text(444, 128, "V").text(44, 150, "Bias").text(364, 150, "3").text(444, 150, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 3);
    EXPECT_EQ(textAt(tables[0], 1, 4), "VBT - 0.1");
}

TEST(FindTables, groupTitlesSpanTheirLeaves) {
    PageBuilder page;
    std::vector<float> const xs{40, 160, 200, 240, 280, 320, 360};
    for (float const y : {100.0F, 128.0F, 142.0F, 156.0F}) page.horizontal(y, 40, 360);
    page.horizontal(114, 160, 320);
    for (float const x : {40.0F, 160.0F, 240.0F, 320.0F, 360.0F}) page.vertical(x, 100, 156);
    for (float const x : {200.0F, 280.0F}) page.vertical(x, 114, 156);
    page.text(44, 118, "Parameter").text(184, 110, "Mark A").text(264, 110, "Mark B").text(324, 118, "Unit");
    page.text(164, 124, "Min").text(204, 124, "Max").text(244, 124, "Min").text(284, 124, "Max");
    page.text(44, 138, "Delay").text(164, 138, "1").text(204, 138, "2").text(244, 138, "3").text(284, 138, "4").text(324, 138, "ms");
    page.text(44, 152, "Pause").text(204, 152, "6").text(284, 152, "8").text(324, 152, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    EXPECT_EQ(t.headRows, 2);
    EXPECT_EQ(spanAt(t, 0, 0), Span(2, 1));
    EXPECT_EQ(spanAt(t, 0, 1), Span(1, 2));
    EXPECT_EQ(textAt(t, 0, 3), "Mark B");
    EXPECT_EQ(textAt(t, 3, 4), "8");
}

TEST(FindTables, unruledLeavesInsideARuledGroup) {
    PageBuilder page;
    std::vector<float> const xs{40, 160, 280, 320};
    page.grid(xs, {100, 114, 128, 142, 156});
    page.text(44, 124, "Parameter").text(190, 110, "Mark A").text(284, 124, "Unit");
    page.text(164, 124, "Min").text(204, 124, "Typ").text(244, 124, "Max");
    page.text(44, 138, "Delay").text(204, 138, "2").text(244, 138, "3").text(284, 138, "ms");
    page.text(44, 152, "Pause").text(164, 152, "5").text(284, 152, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    EXPECT_EQ(t.columns, 5);
    EXPECT_EQ(textAt(t, t.rows - 2, 2), "2");
    EXPECT_EQ(textAt(t, t.rows - 2, 3), "3");
    EXPECT_EQ(textAt(t, t.rows - 1, 1), "5");
    EXPECT_EQ(spanAt(t, 0, 1), Span(1, 3));
}

TEST(FindTables, headingLineSpansAllColumns) {
    PageBuilder page;
    for (float const y : {100.0F, 114.0F, 128.0F, 142.0F}) page.horizontal(y, 40, 480);
    for (float const x : kXs) page.vertical(x, 100, 114).vertical(x, 128, 142);
    page.vertical(40, 100, 142).vertical(480, 100, 142);
    head(page, 110);
    page.text(44, 124, "Detection").text(44, 138, "Delay").text(364, 138, "2").text(444, 138, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(spanAt(tables[0], 1, 0), Span(1, 7));
    EXPECT_EQ(textAt(tables[0], 2, 4), "2");
}

TEST(FindTables, borderlessTableByTitlesAndGutters) {
    PageBuilder page;
    head(page, 110);
    page.text(44, 124, "Trip voltage").text(164, 124, "VTR").text(204, 124, "any").text(324, 124, "4.20").text(404, 124, "4.30").text(444, 124, "V");
    page.text(44, 138, "Idle current").text(164, 138, "IID").text(204, 138, "asleep").text(404, 138, "6.0").text(444, 138, "uA");
    page.text(204, 152, "awake").text(404, 152, "9.0").text(444, 152, "uA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    EXPECT_TRUE(isSound(t));
    EXPECT_EQ(t.columns, 7);
    EXPECT_EQ(t.headRows, 1);
    EXPECT_EQ(textAt(t, 2, 5), "6.0");
    EXPECT_EQ(textAt(t, 2, 4), "<none>");
    EXPECT_EQ(spanAt(t, 2, 0), Span(2, 1));  // the name goes on for the last row
    EXPECT_FALSE(t.evidence.ruledColumns);
}

TEST(FindTables, leaderListIsATableButContentsAreNot) {
    PageBuilder list;
    list.text(44, 100, "Supply voltage ...").text(200, 100, "18 V").text(44, 112, "Storage temperature ...").text(200, 112, "150 C");
    list.text(44, 124, "Lead temperature ...").text(200, 124, "260 C");
    auto const tables = findTables(list.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_TRUE(tables[0].evidence.leaders);
    EXPECT_EQ(textAt(tables[0], 0, 0), "Supply voltage");
    EXPECT_EQ(tables[0].cells[0].leader, "...");
    EXPECT_EQ(tables[0].cells[1].leader, "");
    PageBuilder contents;
    contents.text(44, 100, "Features ...").text(200, 100, "1").text(44, 112, "Ratings ...").text(200, 112, "3").text(44, 124, "Package ...").text(200, 124, "9");
    EXPECT_TRUE(findTables(contents.layout()).empty());
}

TEST(FindTables, twoListsSideBySideAreTwoTables) {
    PageBuilder page;
    for (int i = 0; i < 6; ++i) {
        auto const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, "Left quantity here").text(220, y, std::to_string(10 + i) + " V").text(320, y, "Right quantity there").text(500, y, std::to_string(70 + i) + " A");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 2U);
    EXPECT_EQ(textAt(tables[0], 2, 1), "12 V");
    EXPECT_EQ(textAt(tables[1], 2, 1), "72 A");
}

TEST(FindTables, partsTablesWhereAHeadRepeats) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 128, 142, 156, 170});
    head(page, 110);
    page.text(44, 124, "Delay").text(364, 124, "1").text(444, 124, "ms").text(44, 138, "Pause").text(364, 138, "2").text(444, 138, "ms");
    head(page, 152);
    page.text(44, 166, "Limit").text(404, 166, "3").text(444, 166, "A");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 2U);
    EXPECT_EQ(tables[0].rows, 3);
    EXPECT_EQ(textAt(tables[1], 1, 5), "3");
}

TEST(FindTables, symbolColumnWithoutARule) {
    PageBuilder page;
    page.grid({40, 320, 400, 480}, {100, 114, 128, 142, 156});
    page.text(324, 110, "Max").text(404, 110, "Unit");
    page.text(44, 124, "VIN").text(100, 124, "Input level").text(324, 124, "5").text(404, 124, "V");
    page.text(44, 138, "IQ").text(100, 138, "Idle current").text(324, 138, "6").text(404, 138, "uA");
    page.text(44, 152, "TJ").text(100, 152, "Junction heat").text(324, 152, "7").text(404, 152, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 4);
    EXPECT_EQ(textAt(tables[0], 2, 0), "IQ");
    EXPECT_EQ(textAt(tables[0], 2, 1), "Idle current");
}

TEST(FindTables, figuresAndFramesAreNoTables) {
    PageBuilder graph;  // a grid of lines with a few labels at its edge
    graph.grid({100, 140, 180, 220, 260}, {100, 130, 160, 190});
    graph.text(90, 196, "0").text(135, 200, "10").text(175, 200, "20").text(150, 150, "25 C");
    EXPECT_TRUE(findTables(graph.layout()).empty());
    PageBuilder frame;  // a box around running text
    frame.grid({40, 560}, {40, 760});
    for (int i = 0; i < 20; ++i) frame.text(60, 100 + 12 * static_cast<float>(i), "one line of running text that says nothing in columns");
    EXPECT_TRUE(findTables(frame.layout()).empty());
    EXPECT_TRUE(findTables(model::PageLayout{}).empty());
}

TEST(FindTables, hiddenAndSlantedWordsAreInNoCell) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 128});
    head(page, 110);
    page.text(44, 124, "Delay").text(364, 124, "1").text(404, 124, "99").text(444, 124, "ms").text(210, 124, "DRAFT");
    auto& words = page.layout().words;
    words[words.size() - 1].direction = model::Direction::Slanted;
    words[words.size() - 3].hidden = true;  // the 99
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 5), "<none>");
    EXPECT_EQ(textAt(tables[0], 1, 2), "<none>");
}

TEST(FindTables, captionAndConditionsAbove) {
    PageBuilder page;
    page.text(40, 76, "Table 5. Switching data (VB = 3 V,").text(40, 88, "Ta = 25 C unless otherwise noted)");
    page.grid(kXs, {100, 114, 128});
    head(page, 110);
    page.text(44, 124, "Delay").text(364, 124, "1").text(444, 124, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].caption, "Table 5. Switching data (VB = 3 V, Ta = 25 C unless otherwise noted)");
    EXPECT_EQ(tables[0].lead, "(VB = 3 V, Ta = 25 C unless otherwise noted)");
}

TEST(FindTables, everyWordStandsInOneCellAtMost) {
    PageBuilder page;
    page.grid(kXs, {100, 114, 150, 164, 178});
    head(page, 110);
    for (int i = 0; i < 3; ++i) page.text(44, 123 + 11 * static_cast<float>(i), "Name part").text(364, 123 + 11 * static_cast<float>(i), "5").text(404, 128, "7 8");
    page.text(44, 160, "Last").text(444, 160, "V");
    auto const tables = findTables(page.layout());
    std::vector<int> owners(page.layout().words.size(), 0);
    for (auto const& table : tables) {
        EXPECT_TRUE(isSound(table));
        for (auto const& cell : table.cells) {
            for (auto const word : cell.words) ++owners.at(word);
            for (auto const start : cell.lineStarts) EXPECT_TRUE(start > 0 && start < cell.words.size());
        }
    }
    for (int const n : owners) EXPECT_LE(n, 1);
}

TEST(FindTables, ConditionsOfOneMergedCellGoToARowEach) {
    PageBuilder page;
    for (float const y : {100.0F, 114.0F, 142.0F, 156.0F, 170.0F}) page.horizontal(y, 40, 480);
    page.horizontal(128, 320, 480);  // rows of values; the conditions share a cell and stand in its middle
    for (float const x : kXs) page.vertical(x, 100, 170);
    head(page, 110);
    page.text(44, 131, "Drain current")
        .text(164, 131, "ID")
        .text(204, 127, "TA = 25 C")
        .text(204, 136, "TA = 70 C")
        .text(404, 119, "5.8")
        .text(404, 139, "4.9")
        .text(444, 131, "A");
    page.text(44, 152, "Pulsed current").text(164, 152, "IDM").text(404, 152, "30").text(444, 152, "A");
    page.text(44, 166, "Storage").text(164, 166, "TS").text(404, 166, "90").text(444, 166, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 2), "TA = 25 C");
    EXPECT_EQ(textAt(tables[0], 2, 2), "TA = 70 C");
}

TEST(FindTables, ALineOfValuesIsNoHeadWhateverItsWordsReadLike) {
    PageBuilder page;  // the symbol "IO" and "Max" behind a name are titles elsewhere
    page.text(40, 100, "Symbol").text(90, 100, "Parameter").text(300, 100, "DIP").text(340, 100, "SOP").text(400, 100, "Unit");
    page.text(40, 114, "RJC").text(90, 114, "Junction to case").text(240, 114, "Max").text(300, 114, "4").text(340, 114, "3").text(400, 114, "K/W");
    page.text(40, 128, "IO").text(90, 128, "Output current").text(240, 128, "Max").text(300, 128, "35").text(340, 128, "50").text(400, 128, "mA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 1);
    EXPECT_EQ(tables[0].rows, 3);
    EXPECT_EQ(textAt(tables[0], 1, 0), "RJC");
    EXPECT_EQ(textAt(tables[0], 2, 0), "IO");
}

TEST(FindTables, TemperaturesBetweenTitlesAndLimitsAreHead) {
    PageBuilder page;
    page.text(40, 100, "Symbol").text(90, 100, "Parameter").text(400, 100, "Unit");
    page.text(250, 108, "25 C").text(330, 108, "85 C");
    page.text(240, 116, "Min").text(270, 116, "Max").text(320, 116, "Min").text(350, 116, "Max");
    page.text(40, 130, "VIH").text(90, 130, "Input level").text(240, 130, "3.5").text(320, 130, "3.4").text(400, 130, "V");
    page.text(40, 142, "VIL").text(90, 142, "Input level").text(270, 142, "1.5").text(350, 142, "1.4").text(400, 142, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], tables[0].headRows, 0), "VIH");
}

TEST(FindTables, UnitsInOneAreaGoToTheRowsAroundThem) {
    PageBuilder page;
    for (float const y : {100.0F, 114.0F, 128.0F, 142.0F, 156.0F, 170.0F, 184.0F}) page.horizontal(y, 40, y > 120 && y < 170 ? 440 : 480);
    for (float const x : kXs) page.vertical(x, 100, 184);
    head(page, 110);
    char const* const names[] = {"Delay", "Rise", "Fall", "Forward current", "Forward voltage"};
    for (int i = 0; i < 5; ++i) {
        float const y = 124 + 14 * static_cast<float>(i);
        page.text(44, y, names[i]).text(404, y, "5");
    }
    page.text(444, 138, "ns").text(444, 166, "A").text(444, 180, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 6), "ns");
    EXPECT_EQ(spanAt(tables[0], 1, 6), Span(3, 1));
    EXPECT_EQ(textAt(tables[0], 4, 6), "A");
    EXPECT_EQ(textAt(tables[0], 5, 6), "V");
}

TEST(FindTables, AGutterInTheMiddleOfThePageDoesNotPartOneTable) {
    PageBuilder page;  // names and symbols left of the middle, conditions and values right of it
    page.text(60, 100, "Parameter")
        .text(240, 100, "Symbol")
        .text(310, 100, "Test Conditions")
        .text(430, 100, "Min")
        .text(460, 100, "Typ")
        .text(490, 100, "Max")
        .text(520, 100, "Unit");
    for (int i = 0; i < 7; ++i) {
        float const y = 114 + 12 * static_cast<float>(i);
        page.text(60, y, "Offset voltage part").text(240, y, "VOS").text(310, y, "VS = 3 V").text(430, y, "1").text(460, y, "2").text(490, y, "3").text(520, y, "mV");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 7);
    EXPECT_EQ(tables[0].rows, 8);
}

TEST(FindTables, NamesCentredOnTheirLinesOfValuesWithoutRules) {
    PageBuilder page;
    head(page, 100);
    auto values = [&](float y, char const* condition, char const* typ) { page.text(204, y, condition).text(364, y, typ); };
    values(112, "VI = 7 V", "3");
    page.text(44, 118, "Line regulation").text(164, 118, "VLR").text(444, 118, "mV");
    values(124, "VI = 8 V", "1");
    values(136, "IO = 1 A", "2");
    page.text(44, 136, "Dropout").text(164, 136, "VD").text(444, 136, "V");
    values(148, "VG = 4 V", "18");
    values(160, "VG = 2 V", "23");
    page.text(44, 160, "Resistance").text(164, 160, "RON").text(444, 160, "mR");
    values(172, "VG = 1 V", "35");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    for (int column : {0, 1, 6}) {
        EXPECT_EQ(spanAt(tables[0], 1, column), Span(2, 1)) << column;
        EXPECT_EQ(spanAt(tables[0], 3, column), Span(1, 1)) << column;
        EXPECT_EQ(spanAt(tables[0], 4, column), Span(3, 1)) << column;
    }
    EXPECT_EQ(textAt(tables[0], 4, 0), "Resistance");
}

TEST(FindTables, UnitsTellThatNamesAreCentredOnTheirLines) {
    auto const spansOf = [](char const* unitBelowFirst) {
        PageBuilder page;  // the second line reads like one of "Supply voltage", but for its unit
        head(page, 100);
        page.text(44, 112, "Supply voltage").text(364, 112, "5").text(444, 112, "V");
        page.text(204, 124, "charging").text(364, 124, "150").text(444, 124, unitBelowFirst);
        page.text(44, 136, "Supply current").text(204, 136, "standby").text(364, 136, "55").text(444, 136, "uA");
        page.text(204, 148, "shutdown").text(364, 148, "50").text(444, 148, "uA");
        auto const tables = findTables(page.layout());
        return tables.size() != 1 ? Span(0, 0) : Span(spanAt(tables[0], 1, 0).first, spanAt(tables[0], 2, 0).first);
    };
    EXPECT_EQ(spansOf("uA"), Span(1, 3));
    EXPECT_EQ(spansOf("V"), Span(2, 0));
}

TEST(FindTables, ConditionsRightOfTheMiddleBelongToTheTable) {
    PageBuilder page;
    page.text(60, 100, "Parameter").text(190, 100, "Symbol").text(240, 100, "Min").text(275, 100, "Max").text(330, 100, "Unit").text(363, 100, "Test conditions");
    for (int i = 0; i < 7; ++i) {
        float const y = 114 + 12 * static_cast<float>(i);
        page.text(60, y, "Output voltage part").text(190, y, "VOUT").text(240, y, "1").text(275, y, "3").text(330, y, "mV").text(363, y, "IO = 3 mA");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 6);
}

TEST(FindTables, TitlesSetCloseTogetherStandInColumnsOfTheirOwn) {
    PageBuilder page;  // 8 points high: word spaces are 2.4, the gaps between columns 4.5
    page.text(40, 100, "Parameter")
        .text(130, 100, "Symbol")
        .text(158.5F, 100, "Test Conditions")
        .text(240, 100, "Min.")
        .text(260.5F, 100, "Typ.")
        .text(281, 100, "Max.")
        .text(301.5F, 100, "Unit");
    char const* const names[] = {"Output level", "Input level", "Bias level"};
    for (int i = 0; i < 3; ++i) {
        float const y = 112 + 12 * static_cast<float>(i);
        page.text(40, y, names[i]).text(130, y, "VOL").text(158.5F, y, "IO = 10 mA").text(240, y, "4.9").text(260.5F, y, "5.0").text(281, y, "5.1").text(297.5F, y, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 7);
    EXPECT_EQ(textAt(tables[0], 1, 1), "VOL");
    EXPECT_EQ(textAt(tables[0], 1, 5), "5.1");
    EXPECT_EQ(textAt(tables[0], 1, 6), "V");
}

TEST(FindTables, TitlesBelowATitleOverAllOfThemWithoutRules) {
    PageBuilder page;
    page.text(40, 100, "Parameter").text(140, 100, "Symbol").text(260, 100, "Limits").text(360, 100, "Unit");
    page.text(200, 112, "-40").text(264, 112, "25").text(310, 112, "85");
    page.text(40, 124, "High level").text(140, 124, "VIH").text(200, 124, "3.5").text(264, 124, "3.5").text(310, 124, "3.4").text(360, 124, "V");
    page.text(40, 136, "Low level").text(140, 136, "VIL").text(200, 136, "1.5").text(264, 136, "1.5").text(310, 136, "1.4").text(360, 136, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(tables[0].rows, 4);
    EXPECT_EQ(textAt(tables[0], 1, 2), "-40");
    EXPECT_EQ(textAt(tables[0], 2, 0), "High level");
}

TEST(FindTables, AUnitTitleBesideGroupTitlesHasAColumnOfItsOwn) {
    PageBuilder page;  // "Max" and "Unit" stand on two lines, 4 points apart
    page.text(40, 100, "Parameter").text(120, 100, "XQ1C").text(212, 100, "XQ1I").text(284, 100, "Unit");
    for (int g = 0; g < 2; ++g) {
        float const x = 105 + 92 * static_cast<float>(g);
        page.text(x, 112, "Min").text(x + 40, 112, "Typ").text(x + 71, 112, "Max");
    }
    for (int i = 0; i < 3; ++i) {
        float const y = 124 + 12 * static_cast<float>(i);
        page.text(40, y, "Level");
        for (int g = 0; g < 2; ++g) {
            float const x = 105 + 92 * static_cast<float>(g);
            page.text(x, y, "1.0").text(x + 40, y, "2.0").text(x + 71, y, "7.0");
        }
        page.text(284, y, "mV");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 8);
    EXPECT_EQ(textAt(tables[0], tables[0].headRows, 7), "mV");
}

TEST(FindTables, SymbolAndParameterSetApartAreTwoTitles) {
    PageBuilder page;  // "Symbol Parameter" with a word space between is one
    page.text(40, 100, "Symbol").text(68, 100, "Parameter").text(200, 100, "Min").text(240, 100, "Max").text(280, 100, "Unit");
    for (int i = 0; i < 3; ++i) {
        float const y = 112 + 12 * static_cast<float>(i);
        page.text(40, y, "VO").text(68, y, "Output level").text(200, y, "4.9").text(240, y, "5.1").text(280, y, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 5);
}

TEST(FindTables, ALineOfSupplyAndLimitIsNoHead) {
    PageBuilder page;  // names centred on their lines, "VCC" is no known title
    page.horizontal(90, 38, 420).horizontal(104, 38, 420).horizontal(142, 38, 420).horizontal(180, 38, 420);
    page.text(40, 100, "Symbol").text(90, 100, "Parameter").text(220, 100, "VCC").text(270, 100, "Min").text(320, 100, "Max").text(380, 100, "Unit");
    for (int i = 0; i < 2; ++i) {
        float const y = 114 + 38 * static_cast<float>(i);
        page.text(220, y, "2.0").text(270, y, "1.5").text(220, y + 12, "4.5").text(270, y + 12, "3.1").text(220, y + 24, "6.0").text(270, y + 24, "4.2");
        page.text(40, y + 12, "VIH").text(90, y + 12, "Input level").text(380, y + 12, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 1);
    EXPECT_EQ(textAt(tables[0], 1, 2), "2.0");
    EXPECT_EQ(spanAt(tables[0], 1, 0), Span(3, 1));
}

TEST(FindTables, ASymbolWithItsLimitIsNotTwoTitles) {
    PageBuilder page;
    page.text(50, 100, "Parameter").text(220, 100, "Symbol").text(290, 100, "Conditions").text(420, 100, "Ratings").text(510, 100, "Unit");
    page.text(50, 114, "Maximum supply voltage").text(220, 114, "VCC max").text(440, 114, "18").text(510, 114, "V");
    page.text(50, 128, "Allowable power dissipation").text(220, 128, "Pd max").text(290, 128, "Ta = 70").text(440, 128, "0.9").text(510, 128, "W");
    page.text(50, 142, "Output current").text(220, 142, "IO max").text(440, 142, "1.5").text(510, 142, "A");
    page.text(50, 156, "Operating temperature").text(220, 156, "Topr").text(430, 156, "-20 to +75").text(510, 156, "C");
    page.text(50, 170, "Storage temperature").text(220, 170, "Tstg").text(430, 170, "-40 to +125").text(510, 170, "C");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].rows, 6);
}

TEST(FindTables, TemperaturesAboveTheTitlesAreHead) {
    PageBuilder page;  // "Symbol" and "Unit" stand between the lines of the two-line head
    page.text(250, 100, "25 °C").text(320, 100, "-40 °C to 85 °C");
    page.text(40, 106, "Symbol").text(90, 106, "Parameter").text(420, 106, "Unit");
    page.text(240, 112, "Min").text(270, 112, "Max").text(330, 112, "Min").text(360, 112, "Max");
    page.text(40, 126, "VIH").text(90, 126, "Input level").text(240, 126, "3.5").text(330, 126, "3.4").text(420, 126, "V");
    page.text(40, 138, "VIL").text(90, 138, "Input level").text(270, 138, "1.5").text(360, 138, "1.4").text(420, 138, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(textAt(tables[0], 0, 2), "25 °C");
    EXPECT_EQ(spanAt(tables[0], 0, 4), Span(1, 2));
}

TEST(FindTables, ATitleSetOffItsColumnBelongsToIt) {
    PageBuilder page;  // titles centred over wide columns whose texts stand left
    page.text(80, 100, "Parameter").text(210, 100, "Symbol").text(280, 100, "Min").text(320, 100, "Max");
    for (int i = 0; i < 3; ++i) {
        float const y = 112 + 12 * static_cast<float>(i);
        page.text(40, y, "Level").text(170, y, "VH").text(280, y, "1.0").text(320, y, "2.0");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 4);
    EXPECT_EQ(textAt(tables[0], 0, 1), "Symbol");
    EXPECT_EQ(textAt(tables[0], 1, 1), "VH");
}

TEST(FindTables, AWrappedTitleThatNoListKnowsBelongsToTheColumnItIsSetOff) {
    PageBuilder page;  // "To" over "(output)", centred, is no title of the lists; its column holds one letter, set left
    page.text(120, 100, "From").text(190, 100, "To").text(260, 100, "Min").text(300, 100, "Max").text(340, 100, "Unit");
    page.text(40, 104, "Parameter");
    page.text(112, 108, "(input)").text(180, 108, "(output)").text(262, 108, "Min").text(302, 108, "Max");
    for (int i = 0; i < 3; ++i) {
        float const y = 122 + 12 * static_cast<float>(i);
        page.text(40, y, "tPLH").text(112, y, "A or B").text(164, y, "Y").text(260, y, "1.0").text(300, y, "2.0").text(340, y, "ns");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 6);
    EXPECT_EQ(textAt(tables[0], 0, 2), "To (output)");
    EXPECT_EQ(textAt(tables[0], tables[0].headRows, 2), "Y");
}

TEST(FindTables, TitlesOverTheGapBehindTheFirstAreHead) {
    PageBuilder page;  // "Test" over "figure" reads like a heading of the page
    page.text(140, 102, "Test", true).text(290, 100, "Grade 1", true).text(370, 100, "Grade 2", true);
    model::Block heading;
    heading.role = model::BlockRole::Heading;
    heading.lineCount = 1;
    page.layout().blocks.push_back(heading);
    page.text(40, 107, "Parameter", true).text(190, 107, "Conditions", true).text(430, 107, "Unit", true);
    page.text(136, 112, "figure", true);
    page.text(270, 114, "Min", true).text(310, 114, "Max", true).text(350, 114, "Min", true).text(390, 114, "Max", true);
    for (int i = 0; i < 3; ++i) {
        float const y = 128 + 12 * static_cast<float>(i);
        page.text(40, y, "Input level").text(136, y, "Fig. 3").text(190, y, "IC = 2 mA").text(270, y, "1.0").text(310, y, "2.0").text(350, y, "1.1").text(390, y, "2.1");
        page.text(430, y, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 0, 3), "Grade 1");
    EXPECT_EQ(spanAt(tables[0], 0, 3), Span(1, 2));
}

TEST(FindTables, ShortListsWithLeadersSideBySideAreTwoTables) {
    PageBuilder page;
    for (int i = 0; i < 3; ++i) {
        auto const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, "Left quantity ...").text(250, y, std::to_string(10 + i) + " V");
        page.text(300, y, "Right quantity ...").text(520, y, std::to_string(70 + i) + " A");
    }
    auto& words = page.layout().words;  // the dots fill the gaps
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i].dotLeader) words[i].box.x1 = words[i + 1].box.x0 - 3;
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 2U);
    EXPECT_EQ(textAt(tables[0], 2, 1), "12 V");
    EXPECT_EQ(textAt(tables[1], 2, 0), "Right quantity");
    EXPECT_EQ(textAt(tables[1], 2, 1), "72 A");
}

TEST(FindTables, TheEndOfABracketBelowTheCaptionBelongsToIt) {
    PageBuilder page;
    page.text(40, 76, "Table 5. Switching data of XQ7 (VB = 3 V, Ta = 25 C unless otherwise").text(40, 86, "specified)");
    page.grid(kXs, {100, 114, 128});
    head(page, 110);
    page.text(44, 124, "Delay").text(364, 124, "1").text(444, 124, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].lead, "(VB = 3 V, Ta = 25 C unless otherwise specified)");
}

TEST(FindTables, AConditionCentredOnItsLinesOfValuesHoldsForAll) {
    PageBuilder page;
    page.grid(kXs, {90, 104, 142, 156, 170});
    head(page, 100);
    page.text(44, 166, "Start voltage").text(364, 166, "0.9").text(444, 166, "V");
    page.text(44, 126, "Output level").text(164, 126, "VOH").text(204, 126, "IO = 1 mA").text(444, 126, "V");
    page.text(324, 114, "1.9").text(324, 126, "4.4").text(324, 138, "5.9");
    page.text(44, 152, "Hysteresis").text(364, 152, "0.2").text(444, 152, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(spanAt(tables[0], 1, 2), Span(3, 1));
}

TEST(FindTables, ARuleInsideAConditionPartsNoOtherCell) {
    PageBuilder page;  // the top rule of "CL = 9 pF" runs between the first line of values and the others
    for (float const y : {90.0F, 104.0F, 146.0F, 160.0F, 174.0F}) page.horizontal(y, 40, 480);
    page.horizontal(118, 260, 320);
    for (float const x : kXs) page.vertical(x, 90, 174);
    page.vertical(260, 104, 146);
    head(page, 100);
    page.text(44, 114, "Carry out").text(164, 114, "tPLH");
    char const* const typ[] = {"240", "85", "70"};
    char const* const supply[] = {"VD = 5 V", "VD = 9 V", "VD = 12 V"};
    for (int i = 0; i < 3; ++i) {
        float const y = 114 + 12 * static_cast<float>(i);
        page.text(204, y, supply[i]).text(364, y, typ[i]).text(444, y, "ns");
    }
    page.text(264, 130, "CL = 9 pF");
    page.text(44, 156, "Setup").text(364, 156, "12").text(444, 156, "ns").text(44, 170, "Hold").text(364, 170, "13").text(444, 170, "ns");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 6);
    int const last = tables[0].columns - 1;
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(textAt(tables[0], 1 + i, 2), supply[i]);
        EXPECT_EQ(textAt(tables[0], 1 + i, last - 2), typ[i]);
        EXPECT_EQ(textAt(tables[0], 1 + i, last), "ns");
    }
    EXPECT_EQ(spanAt(tables[0], 1, 0), Span(3, 1));
}

TEST(FindTables, AListBeginsWithTheLineThatItsFirstRowIsIndentedUnder) {
    PageBuilder page;
    page.text(44, 100, "Junction temperature");
    page.text(54, 111, "(K package)").text(250, 111, "150 C").text(54, 122, "(T package)").text(250, 122, "140 C");
    page.text(44, 133, "Storage temperature").text(250, 133, "160 C").text(44, 144, "Input voltage").text(250, 144, "35 V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 0);
    EXPECT_EQ(textAt(tables[0], 0, 0), "Junction temperature");
    EXPECT_EQ(textAt(tables[0], 1, 0), "(K package)");
}

TEST(FindTables, ATitleHalfALineHigherIsHeadAndSymbolsCentredUnderNames) {
    PageBuilder page;  // "VDD" over "V" stands on both sides of the line of titles, bold as a heading
    page.text(210, 95, "VDD", true).text(240, 100, "SYMBOL", true).text(300, 100, "TYP.", true).text(340, 100, "MAX.", true).text(212, 105, "V", true);
    model::Block heading;
    heading.role = model::BlockRole::Heading;
    heading.firstLine = 0;
    heading.lineCount = 1;
    page.layout().blocks.push_back(heading);
    page.horizontal(86, 40, 390).horizontal(109, 40, 390).horizontal(230, 40, 390);
    char const* const names[] = {"Delay of the output", "Set-up of the input", "Hold of the input"};
    char const* const symbols[] = {"tPHL", "tSU", "tH"};
    for (int n = 0; n < 3; ++n) {
        float const y = 118 + 39 * static_cast<float>(n);
        page.text(44, y, names[n]).text(240, y + 13, symbols[n]);
        for (int i = 0; i < 3; ++i) {
            float const at = y + 13 * static_cast<float>(i);
            page.text(212, at, std::to_string(5 + 5 * i)).text(302, at, "60").text(342, at, "120").text(372, at, "ns");
        }
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 0, 1), "VDD V");
    for (int n = 0; n < 3; ++n) {
        EXPECT_EQ(textAt(tables[0], 1 + 3 * n, 0), names[n]);
        EXPECT_EQ(textAt(tables[0], 1 + 3 * n, 2), symbols[n]);
        EXPECT_EQ(spanAt(tables[0], 1 + 3 * n, 0), Span(3, 1));
        EXPECT_EQ(spanAt(tables[0], 1 + 3 * n, 2), Span(3, 1));
    }
}

TEST(FindTables, ValuesSetOffTheirRowStayInIt) {
    for (bool const ruled : {false, true}) {
        PageBuilder page;  // "1.6" 2.2 points above the row, "2.5" 2 points below it
        head(page, 100);
        for (int i = 0; i < 3; ++i) {
            float const y = 114 + 14 * static_cast<float>(i);
            page.text(44, y, "Threshold").text(164, y, "VT").text(324, y + 1.2F, "1.0").text(364, y - 2.2F, "1.6").text(404, y + 2, "2.5").text(444, y - 1, "V");
            if (ruled) page.horizontal(y + 5, 40, 480);
        }
        auto const tables = findTables(page.layout());
        ASSERT_EQ(tables.size(), 1U) << ruled;
        EXPECT_EQ(tables[0].rows, 4) << ruled;
        EXPECT_EQ(textAt(tables[0], 2, 4), "1.6") << ruled;
        EXPECT_EQ(textAt(tables[0], 2, 5), "2.5") << ruled;
    }
}

TEST(FindTables, ATitleOverLevelsSpansThem) {
    PageBuilder page;
    page.text(262, 88, "Typical at VDD", true);
    model::Block heading;  // bold and alone on its line
    heading.role = model::BlockRole::Heading;
    heading.lineCount = 1;
    page.layout().blocks.push_back(heading);
    page.text(40, 100, "Characteristic", true)
        .text(180, 100, "Symbol", true)
        .text(240, 100, "5 V", true)
        .text(290, 100, "10 V", true)
        .text(340, 100, "15 V", true)
        .text(390, 100, "Unit", true);
    for (int i = 0; i < 3; ++i) {
        float const y = 113 + 13 * static_cast<float>(i);
        page.text(40, y, "Delay time").text(180, y, "tPD").text(240, y, "120").text(290, y, "55").text(340, y, "40").text(390, y, "ns");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(textAt(tables[0], 0, 2), "Typical at VDD");
    EXPECT_EQ(spanAt(tables[0], 0, 2), Span(1, 3));
    EXPECT_EQ(textAt(tables[0], 1, 3), "10 V");
}

TEST(FindTables, TheWidestStripMayLieInsideOneSide) {
    PageBuilder page;  // short names left: more white between them and their values than between the two lists
    for (int i = 0; i < 6; ++i) {
        auto const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, "Left one").text(286, y, std::to_string(10 + i) + " V").text(314, y, "Right quantity there").text(480, y, std::to_string(70 + i) + " A");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 2U);
    EXPECT_EQ(textAt(tables[0], 2, 1), "12 V");
    EXPECT_EQ(textAt(tables[1], 2, 0), "Right quantity there");
}

TEST(FindTables, ANarrowGutterBetweenNamesAndValuesIsSeen) {
    PageBuilder page;  // the longest name ends 3.7 points in front of the widest value
    page.text(44.6F, 100, "Junction").text(183, 100, "150 C");
    page.text(44.6F, 112, "Storage temperature of it").text(143.5F, 112, "-65 C to +150 C");
    page.text(44.6F, 124, "Lead").text(183, 124, "260 C").text(44.6F, 136, "Supply").text(191, 136, "18 V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 2);
    EXPECT_EQ(textAt(tables[0], 1, 0), "Storage temperature of it");
}

TEST(FindTables, TitlesToTheLeftOfValuesSetToTheRight) {
    PageBuilder page;  // each value ends right in front of the next title
    page.text(40, 100, "Parameter").text(140, 100, "Symbol").text(200, 100, "Min").text(250, 100, "Typ").text(300, 100, "Max").text(350, 100, "Unit");
    for (int i = 0; i < 3; ++i) {
        float const y = 112 + 12 * static_cast<float>(i);
        page.text(40, y, "Frequency").text(140, y, "fOSC").text(237.5F, y, "450").text(287.5F, y, "500").text(337.5F, y, "550").text(390, y, "kHz");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].columns, 6);
    EXPECT_EQ(textAt(tables[0], 0, 2), "Min");
    EXPECT_EQ(textAt(tables[0], 1, 2), "450");
    EXPECT_EQ(textAt(tables[0], 0, 5), "Unit");
    EXPECT_EQ(textAt(tables[0], 1, 5), "kHz");
}

TEST(FindTables, AGroupTitleForEachSetOfLimits) {
    PageBuilder page;  // set left over its columns; the lines of titles far apart
    page.text(40, 100, "Parameter").text(140, 100, "Symbol").text(200, 100, "XQ10").text(320, 100, "XQ10A").text(440, 100, "Unit");
    for (int g = 0; g < 2; ++g) {
        float const x = 200 + 120 * static_cast<float>(g);
        page.text(x, 116, "Min").text(x + 40, 116, "Typ").text(x + 80, 116, "Max");
    }
    for (int i = 0; i < 3; ++i) {
        float const y = 132 + 14 * static_cast<float>(i);
        page.text(40, y, "Frequency").text(140, y, "fOSC").text(440, y, "kHz");
        for (int k = 0; k < 6; ++k) page.text(200 + 40 * static_cast<float>(k), y, std::to_string(450 + k));
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(spanAt(tables[0], 0, 2), Span(1, 3));
    EXPECT_EQ(textAt(tables[0], 0, 5), "XQ10A");
    EXPECT_EQ(spanAt(tables[0], 0, 5), Span(1, 3));
}

TEST(FindTables, ABoldHeadingOverNarrowColumnsIsALineOfItsOwn) {
    PageBuilder page;  // over the symbols and into the names, above a name centred on two lines of values
    page.text(40, 100, "Symbol").text(80, 100, "Parameter").text(200, 100, "Min").text(240, 100, "Max").text(290, 100, "Unit");
    page.text(40, 114, "DC characteristics", true);
    page.text(200, 127, "21").text(240, 127, "28");
    page.text(40, 133, "RON").text(80, 133, "Resistance").text(290, 133, "mR");
    page.text(200, 139, "29").text(240, 139, "40");
    page.text(40, 152, "fOSC").text(80, 152, "Frequency").text(200, 152, "450").text(240, 152, "550").text(290, 152, "kHz");
    page.text(40, 165, "VREF").text(80, 165, "Reference").text(200, 165, "1.1").text(240, 165, "1.3").text(290, 165, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 5);
    EXPECT_EQ(textAt(tables[0], 1, 0), "DC characteristics");
    EXPECT_EQ(textAt(tables[0], 2, 0), "RON");
    EXPECT_EQ(spanAt(tables[0], 2, 0), Span(2, 1));
}

TEST(FindTables, ABoldHeadingOnTopOfABandIsALineOfItsOwn) {
    PageBuilder page;
    page.grid(kXs, {90, 104, 142, 156, 170});
    head(page, 100);
    page.text(44, 114, "Supply section", true);
    page.text(44, 126, "Input level").text(164, 126, "VIO").text(204, 126, "TA = 25 C").text(324, 126, "1.9").text(444, 126, "V");
    page.text(204, 138, "TA = 85 C").text(324, 138, "4.4");
    page.text(44, 152, "Hysteresis").text(364, 152, "0.2").text(444, 152, "V").text(44, 166, "Start").text(364, 166, "0.3").text(444, 166, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 0), "Supply section");
    EXPECT_EQ(textAt(tables[0], 2, 0), "Input level");
    EXPECT_EQ(spanAt(tables[0], 2, 0), Span(2, 1));
    EXPECT_EQ(textAt(tables[0], 3, 2), "TA = 85 C");
}

TEST(FindTables, AFactorAboveItsSupplyIsOneValue) {
    PageBuilder page;  // "0.7" over "VDD", centred on the line of the name and of the dashes
    page.grid(kXs, {90, 104, 130, 144, 158});
    head(page, 100);
    page.text(44, 118, "Input high level").text(164, 118, "VIH").text(364, 118, "-").text(404, 118, "-").text(444, 118, "V");
    page.text(324, 112.5F, "0.7").text(324, 123.5F, "VDD");
    page.text(44, 140, "Hysteresis").text(364, 140, "0.2").text(444, 140, "V").text(44, 154, "Start").text(364, 154, "0.3").text(444, 154, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].rows, 4);
    EXPECT_EQ(textAt(tables[0], 1, 3), "0.7 VDD");
}

TEST(FindTables, AHeadingGoesOnOverColumnRulesThatLeaveItOut) {
    PageBuilder page;  // column rules only, broken at the heading
    for (float const x : {36.0F, 74.0F, 196.0F, 236.0F, 280.0F, 320.0F}) page.vertical(x, 90, 104).vertical(x, 118, 158);
    page.vertical(36, 104, 118).vertical(320, 104, 118);
    page.horizontal(90, 36, 320).horizontal(104, 36, 320).horizontal(158, 36, 320);
    page.text(40, 100, "Symbol").text(80, 100, "Parameter").text(200, 100, "Min").text(240, 100, "Max").text(290, 100, "Unit");
    page.text(40, 114, "DC characteristics", true);
    page.text(40, 128, "VIO").text(80, 128, "Offset level").text(240, 128, "5").text(290, 128, "mV");
    page.text(40, 140, "fOSC").text(80, 140, "Frequency").text(200, 140, "450").text(240, 140, "550").text(290, 140, "kHz");
    page.text(40, 152, "VREF").text(80, 152, "Reference").text(200, 152, "1.1").text(240, 152, "1.3").text(290, 152, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 1, 0), "DC characteristics");
    EXPECT_EQ(textAt(tables[0], 2, 0), "VIO");
}

TEST(FindTables, ASymbolWithASmallLetterBeginsARow) {
    PageBuilder page;  // names above the lines of their conditions and values
    page.text(40, 100, "Symbol").text(80, 100, "Parameter").text(200, 100, "Min").text(240, 100, "Max").text(290, 100, "Unit");
    char const* const symbols[] = {"VREF", "en", "tSTART"};
    for (int i = 0; i < 3; ++i) {
        float const y = 114 + 23 * static_cast<float>(i);
        page.text(40, y, symbols[i]).text(80, y, "Parameter of it").text(290, y, "V");
        page.text(86, y + 10, "VI = 5 V").text(200, y + 10, "1.1").text(240, y + 10, "1.3");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 4);
    for (int i = 0; i < 3; ++i) EXPECT_EQ(textAt(tables[0], 1 + i, 0), symbols[i]);
}

TEST(FindTables, SymbolsBehindTheConditionsMakeNoSecondTable) {
    PageBuilder page;  // nothing but white around the middle of the page
    page.text(44, 100, "Parameter").text(330, 100, "Conditions").text(410, 100, "Symbol").text(450, 100, "Min").text(490, 100, "Max").text(530, 100, "Unit");
    for (int i = 0; i < 6; ++i) {
        float const y = 112 + 12 * static_cast<float>(i);
        page.text(44, y, "Level of output").text(330, y, "VI = 5 V").text(410, y, "VOL").text(450, y, "1.1").text(490, y, "1.3").text(530, y, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 6);
    EXPECT_EQ(textAt(tables[0], 1, 0), "Level of output");
}

TEST(FindTables, SymbolsFarApartInABandAreParametersOfTheirOwn) {
    PageBuilder page;  // no rule between the first three
    page.grid(kXs, {90, 104, 170, 184, 198});
    head(page, 100);
    for (int i = 0; i < 3; ++i) {
        float const y = 114 + 22 * static_cast<float>(i);
        page.text(44, y, "Name of it").text(164, y, i == 0 ? "fOSC" : i == 1 ? "IDD" : "VREF").text(444, y, "V");
        page.text(44, y + 10, "VD = 3 V").text(324, y + 10, "1.9").text(404, y + 10, "2.9");
    }
    page.text(44, 180, "Hysteresis")
        .text(164, 180, "VH")
        .text(364, 180, "0.2")
        .text(444, 180, "V")
        .text(44, 194, "Start")
        .text(164, 194, "VS")
        .text(364, 194, "0.3")
        .text(444, 194, "V");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    ASSERT_EQ(tables[0].rows, 6);
    EXPECT_EQ(textAt(tables[0], 1, 1), "fOSC");
    EXPECT_EQ(textAt(tables[0], 2, 1), "IDD");
    EXPECT_EQ(textAt(tables[0], 3, 1), "VREF");
}

TEST(FindTables, ATableGoesOnBelowItsLastRuleInTheSameColumns) {
    PageBuilder page;  // a rule below the first parameter, none at the bottom
    page.horizontal(90, 40, 420).horizontal(104, 40, 420).horizontal(134, 40, 420);
    page.text(44, 100, "Parameter").text(164, 100, "Symbol").text(244, 100, "Min").text(284, 100, "Max").text(330, 100, "Unit");
    for (int i = 0; i < 5; ++i) {
        float const y = 116 + 14 * static_cast<float>(i);
        page.text(44, y, "Level of output").text(164, y, "VOL").text(244, y, "1.1").text(284, y, "1.3").text(330, y, "V");
    }
    page.text(44, 190, "Stresses above these limits").text(244, 190, "may be harmful to the device");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].rows, 6);
    EXPECT_EQ(textAt(tables[0], 5, 2), "1.1");
}

TEST(FindTables, RulesThatLeaveOutACellPartNoBand) {
    PageBuilder page;  // rules between the rows, but not through the name and the unit that hold for two of them
    for (float const y : {90.0F, 104.0F, 118.0F, 146.0F, 160.0F}) page.horizontal(y, 40, 480);
    page.horizontal(132, 160, 420);
    page.text(44, 100, "Parameter").text(164, 100, "Pin").text(244, 100, "Min").text(324, 100, "Max").text(434, 100, "Unit");
    page.text(44, 114, "Supply voltage").text(164, 114, "VDD").text(244, 114, "1.8").text(324, 114, "5.5").text(434, 114, "V");
    page.text(44, 135, "Input voltage").text(164, 128, "Enable").text(244, 128, "-0.3").text(324, 128, "7.0").text(434, 135, "V");
    page.text(164, 142, "Reset").text(244, 142, "-0.2").text(324, 142, "3.6");
    page.text(44, 156, "Output current").text(164, 156, "OUT").text(244, 156, "0").text(324, 156, "20").text(434, 156, "mA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 5);
    EXPECT_EQ(textAt(t, 2, 0), "Input voltage");
    EXPECT_EQ(spanAt(t, 2, 0), Span(2, 1));
    EXPECT_EQ(spanAt(t, 2, 4), Span(2, 1));
    EXPECT_EQ(textAt(t, 3, 1), "Reset");
}

TEST(FindTables, RowsSetWideApartBelowTheirTitlesAreOneTable) {
    PageBuilder page;  // no rules; 30 points from row to row in print of 8
    page.text(44, 100, "Parameter").text(164, 100, "Symbol").text(244, 100, "Min").text(284, 100, "Max").text(330, 100, "Unit");
    for (int i = 0; i < 4; ++i) {
        float const y = 130 + 30 * static_cast<float>(i);
        page.text(44, y, "Level of output").text(164, y, "VOL").text(244, y, "1.1").text(284, y, "1.3").text(330, y, "V");
    }
    page.text(44, 250, "Stresses above these limits").text(244, 250, "may be harmful");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].rows, 5);
    EXPECT_EQ(textAt(tables[0], 4, 2), "1.1");
}

TEST(FindTables, AParagraphBesideAListIsNoColumnOfNames) {
    PageBuilder page;
    char const* const prose[] = {"The device switches loads in small tools and", "keeps its losses low over the whole range", "of gate voltages. It comes in a flat case and",
                                 "may be soldered on both sides."};
    char const* const symbols[] = {"VDS", "ID", "RDS(ON)", "QG"};
    char const* const values[] = {"30V", "4A", "50mΩ", "9nC"};
    for (int i = 0; i < 4; ++i) {
        float const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, prose[i]).text(330, y, symbols[i]).text(460, y, values[i]);
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 2);
    EXPECT_EQ(textAt(tables[0], 0, 0), "VDS");
    EXPECT_EQ(textAt(tables[0], 3, 1), "9nC");
}

// Names that begin with a small letter, the first of them long.
TEST(FindTables, NamesInSmallLettersAreNoParagraph) {
    PageBuilder page;
    char const* const names[] = {"input voltage at which the output goes low", "input current", "output voltage", "supply current", "delay time"};
    char const* const symbols[] = {"VIL", "IIN", "VOUT", "IDD", "tD"};
    char const* const values[] = {"0.8", "1.2", "4.4", "3.0", "20"};
    char const* const units[] = {"V", "uA", "V", "mA", "ms"};
    for (int i = 0; i < 5; ++i) {
        float const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, names[i]).text(330, y, symbols[i]).text(400, y, values[i]).text(460, y, units[i]);
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 4);
    EXPECT_EQ(textAt(tables[0], 1, 0), "input current");
    EXPECT_EQ(textAt(tables[0], 4, 0), "delay time");
}

// Long names below titles: what the column holds is said.
TEST(FindTables, LongNamesBelowTheirTitleAreNoParagraph) {
    PageBuilder page;
    page.text(44, 88, "Parameter").text(330, 88, "Symbol").text(400, 88, "Min").text(430, 88, "Max").text(460, 88, "Unit");
    char const* const names[] = {"Input voltage at which the output goes low", "input current while the output is low at last", "output voltage with the load of the lamp", "supply current while nothing is lit at all"};
    char const* const symbols[] = {"VIL", "IIN", "VOUT", "IDD"};
    char const* const units[] = {"V", "uA", "V", "mA"};
    for (int i = 0; i < 4; ++i) {
        float const y = 100 + 12 * static_cast<float>(i);
        page.text(44, y, names[i]).text(330, y, symbols[i]).text(400, y, "1.1").text(430, y, "1.3").text(460, y, units[i]);
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].columns, 5);
    EXPECT_EQ(textAt(tables[0], 2, 0), names[1]);
}

// A short rule right above one over the whole width: a line under a value, the edge of a shaded row.
TEST(FindTables, ARuleCloseToAWholeOneHidesItNot) {
    PageBuilder page;
    for (float const y : {90.0F, 104.0F, 118.0F, 134.0F, 186.0F, 200.0F}) page.horizontal(y, 40, 480);
    page.horizontal(132.5F, 120, 440);
    page.text(44, 100, "Parameter").text(164, 100, "Pin").text(244, 100, "Min").text(324, 100, "Max").text(434, 100, "Unit");
    page.text(44, 114, "Supply voltage").text(164, 114, "VDD").text(244, 114, "1.8").text(324, 114, "5.5").text(434, 114, "V");
    page.text(44, 128, "Input voltage").text(164, 128, "EN").text(244, 128, "-0.3").text(324, 128, "7.0").text(434, 128, "V");
    page.text(44, 144, "Output current").text(44, 156, "of the driver").text(44, 168, "at the").text(44, 180, "output");
    page.text(164, 180, "OUT").text(244, 180, "0").text(324, 180, "20").text(434, 180, "mA");
    page.text(44, 196, "Delay").text(164, 196, "OUT").text(244, 196, "1").text(324, 196, "3").text(434, 196, "ms");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    auto const& t = tables[0];
    ASSERT_EQ(t.rows, 5);
    EXPECT_EQ(textAt(t, 2, 0), "Input voltage");
    EXPECT_EQ(textAt(t, 3, 0), "Output current of the driver at the output");
}

TEST(FindTables, TheRuleBelowTheTitlesEndsNoTable) {
    PageBuilder page;  // values centred below titles that are set to the left
    page.horizontal(90, 40, 560).horizontal(104, 40, 560);
    page.text(44, 100, "Symbol").text(104, 100, "Parameter").text(244, 100, "Min").text(294, 100, "Typ").text(344, 100, "Max").text(394, 100, "Unit").text(444, 100, "Condition");
    for (int i = 0; i < 6; ++i) {
        float const y = 116 + 14 * static_cast<float>(i);
        page.text(44, y, "VOL").text(104, y, "Level of output").text(256, y, "11").text(306, y, "12").text(356, y, "13").text(418, y, "mV").text(444, y, "IO = 2 mA");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].rows, 7);
    EXPECT_EQ(textAt(tables[0], 6, 2), "11");
}

TEST(FindTables, RowsOfConditionsGoOnBelowTheLastRule) {
    PageBuilder page;  // a rule below the first parameter only; then names alone, and conditions with values below them
    page.horizontal(90, 40, 420).horizontal(120, 40, 420).horizontal(134, 40, 420);
    page.text(44, 104, "Symbol").text(104, 104, "Characteristic").text(394, 104, "Unit");
    page.text(244, 114, "Min").text(294, 114, "Typ").text(344, 114, "Max");
    page.text(44, 130, "VREF").text(104, 130, "Reference voltage").text(244, 130, "1.1").text(294, 130, "1.2").text(344, 130, "1.3").text(394, 130, "V");
    page.text(44, 144, "IDD").text(104, 144, "Supply current").text(394, 144, "mA");
    for (int i = 0; i < 3; ++i) {
        float const y = 154 + 10 * static_cast<float>(i);
        page.text(110, y, "VDD = 3 V").text(244, y, "--").text(294, y, "3.0").text(344, y, "6.5");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], tables[0].rows - 1, 3), "3.0");
    EXPECT_EQ(textAt(tables[0], tables[0].rows - 1, 4), "6.5");
}

TEST(FindTables, AHeadInAFrameOfItsOwnBelongsToTheRowsBelow) {
    PageBuilder page;
    page.grid({40, 80, 240, 300, 360, 420}, {90, 104});
    page.grid({40, 80, 240, 300, 360, 420}, {110, 124, 138, 152});
    page.text(44, 100, "Name").text(84, 100, "Parameter").text(244, 100, "Min.").text(304, 100, "Max.").text(364, 100, "Units");
    page.text(44, 120, "VCC").text(84, 120, "Supply voltage").text(244, 120, "4.0").text(304, 120, "5.3").text(364, 120, "V");
    page.text(44, 134, "VIL").text(84, 134, "Low input").text(244, 134, "-0.5").text(304, 134, "0.7").text(364, 134, "V");
    page.text(44, 148, "ICC").text(84, 148, "Supply current").text(304, 148, "20").text(364, 148, "mA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 1);
    ASSERT_EQ(tables[0].rows, 4);
    EXPECT_EQ(textAt(tables[0], 0, 2), "Min.");
    EXPECT_EQ(textAt(tables[0], 1, 2), "4.0");
}

TEST(FindTables, AFrameAboveATableWithAHeadOfItsOwnIsAnotherTable) {
    PageBuilder page;
    page.grid({40, 80, 240, 300, 360, 420}, {90, 104});
    page.grid({40, 80, 240, 300, 360, 420}, {110, 124, 138, 152});
    page.text(44, 100, "Case").text(84, 100, "SOT-23-6").text(244, 100, "220").text(304, 100, "60").text(364, 100, "0.4");
    page.text(44, 120, "Name").text(84, 120, "Parameter").text(244, 120, "Min.").text(304, 120, "Max.").text(364, 120, "Units");
    page.text(44, 134, "VIL").text(84, 134, "Low input").text(244, 134, "-0.5").text(304, 134, "0.7").text(364, 134, "V");
    page.text(44, 148, "ICC").text(84, 148, "Supply current").text(304, 148, "20").text(364, 148, "mA");
    auto const tables = findTables(page.layout());
    ASSERT_FALSE(tables.empty());
    auto const& t = tables.back();
    EXPECT_EQ(t.rows, 3);
    EXPECT_EQ(t.headRows, 1);
    EXPECT_EQ(textAt(t, 0, 2), "Min.");
}

TEST(FindTables, ACaptionThatReadsLikeTitlesIsNoTitle) {
    PageBuilder page;  // two halves side by side, wide apart
    page.text(44, 82, "Pin function description", true);
    page.text(54, 100, "Pin no").text(124, 100, "Symbol").text(224, 100, "Function").text(324, 100, "Pin no").text(394, 100, "Symbol").text(494, 100, "Function");
    for (int i = 1; i <= 4; ++i) {
        float const y = 100 + 14 * static_cast<float>(i);
        page.text(62, y, std::to_string(i)).text(104, y, "IN" + std::to_string(i)).text(194, y, "Sense input");
        page.text(332, y, std::to_string(9 - i)).text(374, y, "OT" + std::to_string(i)).text(464, y, "Gate output");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 1);
    EXPECT_EQ(tables[0].rows, 5);
    EXPECT_EQ(tables[0].columns, 6);
    EXPECT_EQ(textAt(tables[0], 0, 0), "Pin no");
    EXPECT_EQ(textAt(tables[0], 1, 0), "1");
    EXPECT_EQ(textAt(tables[0], 1, 1), "IN1");
    EXPECT_EQ(textAt(tables[0], 1, 3), "8");
}

TEST(FindTables, APackageUnderPinIsATitle) {
    PageBuilder page;
    page.text(44, 82, "Pin functions", true);
    page.text(124, 99, "Pin", true).text(254, 106, "Name", true).text(404, 106, "Function", true).text(74, 113, "SOP-8", true).text(164, 113, "DFN-10", true);
    for (int i = 1; i <= 4; ++i) {
        float const y = 113 + 14 * static_cast<float>(i);
        page.text(84, y, std::to_string(i)).text(172, y, std::to_string(i + 1)).text(230, y, "IN" + std::to_string(i)).text(320, y, "Sense input");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(textAt(tables[0], 1, 0), "SOP-8");
    EXPECT_EQ(textAt(tables[0], 1, 1), "DFN-10");
    EXPECT_EQ(textAt(tables[0], 2, 0), "1");
}

TEST(FindTables, NamesOfVariantsBesideAWrappedTitleAreOverTheLimits) {
    PageBuilder page;
    page.text(300, 84, "HV2003", true).text(420, 84, "HV2004", true).text(206, 86, "Test", true);
    model::Block heading;  // "Test" alone, bold
    heading.role = model::BlockRole::Heading;
    heading.firstLine = 2;
    heading.lineCount = 1;
    page.layout().blocks.push_back(heading);
    page.text(44, 92, "Parameter", true).text(240, 92, "Conditions", true).text(520, 92, "Unit", true).text(204, 98, "figure", true);
    for (int i = 0; i < 6; ++i) page.text(290 + 36 * static_cast<float>(i), 100, i % 3 == 0 ? "Min" : i % 3 == 1 ? "Typ" : "Max", true);
    for (int i = 0; i < 3; ++i) {
        float const y = 114 + 14 * static_cast<float>(i);
        page.text(44, y, "Saturation")
            .text(208, y, "3")
            .text(240, y, "II = 1 mA")
            .text(330, y, "0.9")
            .text(366, y, "1.1")
            .text(438, y, "0.9")
            .text(474, y, "1.1")
            .text(520, y, "V");
    }
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 2);
    EXPECT_EQ(textAt(tables[0], 0, 3), "HV2003");
    EXPECT_EQ(spanAt(tables[0], 0, 3), Span(1, 3));
    EXPECT_EQ(textAt(tables[0], 0, 6), "HV2004");
}

TEST(FindTables, AValueAloneBetweenWrappedTextsEndsNoTable) {
    PageBuilder page;
    head(page, 100);
    page.text(44, 114, "Offset").text(164, 114, "VOS").text(204, 114, "Ta = 25 C").text(364, 114, "2.0").text(404, 114, "5.0").text(444, 114, "mV");
    page.text(204, 128, "RS = 50,").text(404, 133, "7.0").text(204, 138, "full range").text(44, 152, "Mean coefficient of");
    page.text(44, 162, "the offset voltage").text(164, 162, "TCV").text(204, 162, "full range").text(364, 162, "7.0").text(444, 162, "uV");
    page.text(44, 176, "Bias current").text(164, 176, "IB").text(204, 176, "Ta = 25 C").text(364, 176, "45").text(404, 176, "250").text(444, 176, "nA");
    auto const tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(tables[0].headRows, 1);
    EXPECT_EQ(textAt(tables[0], tables[0].rows - 1, 5), "250");
}

TEST(FindTables, AValueInTheMiddleOfAllVariantsIsForEachOfThem) {
    for (bool const ruled : {false, true}) {
        PageBuilder page;  // four variants: what stands in the middle lies between two columns
        page.text(44, 100, "Parameter").text(164, 100, "Symbol").text(240, 100, "HV1A").text(280, 100, "HV1B").text(320, 100, "HV1D").text(360, 100, "HV1G").text(420, 100, "Unit");
        page.text(44, 114, "Reverse voltage").text(164, 114, "VR").text(244, 114, "50").text(282, 114, "100").text(322, 114, "200").text(362, 114, "400").text(420, 114, "V");
        page.text(44, 128, "RMS voltage").text(164, 128, "VRM").text(244, 128, "35").text(284, 128, "70").text(322, 128, "140").text(362, 128, "280").text(420, 128, "V");
        page.text(44, 142, "Mean current").text(164, 142, "IO").text(303, 142, "1.0").text(420, 142, "A");
        page.text(44, 156, "Junction range").text(164, 156, "TJ").text(287, 156, "-65 to +150").text(420, 156, "C");
        for (int i = 0; ruled && i < 5; ++i) page.horizontal(104 + 14 * static_cast<float>(i), 40, 440);
        auto const tables = findTables(page.layout());
        ASSERT_EQ(tables.size(), 1U) << ruled;
        auto const& t = tables[0];
        EXPECT_TRUE(isSound(t));
        ASSERT_EQ(t.columns, 7) << ruled;
        EXPECT_EQ(textAt(t, 0, 3), "HV1B") << ruled;
        EXPECT_EQ(textAt(t, 3, 2), "1.0") << ruled;
        EXPECT_EQ(spanAt(t, 3, 2), Span(1, 4)) << ruled;
        EXPECT_EQ(spanAt(t, 4, 2), Span(1, 4)) << ruled;
    }
}

// Three columns of values under titles that no list knows; the last row has one in the middle. `gap`: another row has one in the first alone.
PageBuilder threeColumns(std::string const& title, bool gap) {
    PageBuilder page;
    page.text(44, 100, "Rating").text(164, 100, "Symbol").text(420, 100, "Unit");
    for (int i = 0; i < 3; ++i) page.text(240 + 60 * static_cast<float>(i), 100, std::to_string(i + 3) + title);
    page.text(44, 114, "Collector voltage").text(164, 114, "VCE").text(244, 114, "65").text(304, 114, "45").text(364, 114, "30").text(420, 114, "V");
    page.text(44, 128, "Base voltage").text(164, 128, "VCB").text(244, 128, "80").text(420, 128, "V");
    if (!gap) page.text(304, 128, "50").text(364, 128, "30");
    page.text(44, 142, "Emitter voltage").text(164, 142, "VEB").text(304, 142, "60").text(420, 142, "V");
    return page;
}

TEST(FindTables, AValueUnderTheMiddleOfThreeVariantsIsForAllWhereNoneIsLeftOut) {
    auto page = threeColumns("N7", false);
    auto tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 3, 2), "60");
    EXPECT_EQ(spanAt(tables[0], 3, 2), Span(1, 3));
    page = threeColumns("N7", true);  // another line has a value for the first alone
    tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 3, 3), "60");
    page = threeColumns("5\u00B0C", false);  // temperatures
    tables = findTables(page.layout());
    ASSERT_EQ(tables.size(), 1U);
    EXPECT_EQ(textAt(tables[0], 3, 3), "60");
}

}  // namespace
}  // namespace standin::tables
