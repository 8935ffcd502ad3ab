#include "extractors/ordering/read_ordering.h"

#include <initializer_list>
#include <utility>

#include <gtest/gtest.h>

namespace {

namespace model = standin::model;
using standin::ordering::readOrdering;
using Attributes = std::vector<std::pair<std::string, std::string>>;

// Rows of texts; the first `headRows` are the head.
model::Table table(int headRows, std::initializer_list<std::initializer_list<char const*>> rows) {
    model::Table result;
    result.id = "t1";
    result.page = 2;
    result.kind = model::TableKind::Ordering;
    result.headRows = headRows;
    for (auto const& row : rows) {
        int column = 0;
        for (auto const* text : row) {
            model::Cell cell;
            cell.row = result.rows;
            cell.column = column++;
            cell.text = text;
            cell.header = result.rows < headRows;
            cell.box = {static_cast<float>(column * 50), static_cast<float>(result.rows * 12), static_cast<float>(column * 50 + 50), static_cast<float>(result.rows * 12 + 12)};
            if (*text != '\0') result.cells.push_back(cell);
        }
        result.columns = std::max(result.columns, column);
        ++result.rows;
    }
    return result;
}

TEST(ReadOrdering, OneLineForEachPart) {
    auto const sheet = table(1, {{"Part number", "Package", "Marking", "Package"}, {"QX71A-T", "SOT-23-6", "71A", "tray"}, {"QX71B-T", "SOT-23-6", "", "reel"}});
    auto const lines = readOrdering(std::span{&sheet, 1});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].code, "QX71A-T");
    EXPECT_EQ(lines[0].attributes, (Attributes{{"Package", "SOT-23-6"}, {"Marking", "71A"}, {"Package (2)", "tray"}}));
    EXPECT_EQ(lines[0].table, "t1");
    EXPECT_EQ(lines[0].page, 2);
    EXPECT_EQ(lines[1].code, "QX71B-T");
    EXPECT_EQ(lines[1].attributes, (Attributes{{"Package", "SOT-23-6"}, {"Package (2)", "reel"}}));
    EXPECT_EQ(lines[1].box, (model::Rect{50, 24, 250, 36}));
}

TEST(ReadOrdering, AMergedCellCountsForEveryLine) {
    auto sheet = table(1, {{"Package", "Order code"}, {"SO-8", "QX71AD"}, {"", "QX71BD"}});
    sheet.cells[2].rowSpan = 2;  // SO-8
    auto const lines = readOrdering(std::span{&sheet, 1});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[1].code, "QX71BD");
    EXPECT_EQ(lines[1].attributes, (Attributes{{"Package", "SO-8"}}));
}

TEST(ReadOrdering, CodesInEveryColumnAreALineEach) {
    auto const sheet = table(1, {{"SOT-223", "DPAK", "Output voltage"}, {"QX17S12", "QX17DT12", "1.2 V"}, {"QX17S18", "QX17DT18", "1.8 V"}});
    auto const lines = readOrdering(std::span{&sheet, 1});
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[1].code, "QX17DT12");
    EXPECT_EQ(lines[1].attributes, (Attributes{{"Output voltage", "1.2 V"}, {"column", "DPAK"}}));
}

TEST(ReadOrdering, ContinuationTakesOverTheTitles) {
    std::vector<model::Table> sheet{table(1, {{"Type", "Delay"}, {"QX71A1", "80 ms"}}), table(0, {{"QX71A2", "96 ms"}})};
    sheet[1].id = "t2";
    sheet[1].continues = "t1";
    auto const lines = readOrdering(sheet);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[1].code, "QX71A2");
    EXPECT_EQ(lines[1].attributes, (Attributes{{"Delay", "96 ms"}}));
}

TEST(ReadOrdering, LineBreaksInTitlesDoNotShow) {
    auto const sheet = table(1, {{"Type", "Over- discharge voltage", "\u68c0\u6d4b\u7535 \u538b", "Delay - typical"}, {"QX71A1", "2.8 V", "x- y", "A - B"}});
    auto const lines = readOrdering(std::span{&sheet, 1});
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].attributes, (Attributes{{"Over-discharge voltage", "2.8 V"}, {"\u68c0\u6d4b\u7535\u538b", "x-y"}, {"Delay - typical", "A - B"}}));
}

TEST(ReadOrdering, OtherTablesAreLeftAlone) {
    auto sheet = table(1, {{"Part number", "Package"}, {"QX71A-T", "SOT-23-6"}});
    sheet.kind = model::TableKind::Other;
    EXPECT_TRUE(readOrdering(std::span{&sheet, 1}).empty());
}

// The title block of a drawing lists no parts.
TEST(ReadOrdering, NothingWithoutTitlesAndCodes) {
    auto const sheet = table(0, {{"DRAWING NUMBER:", "sheet one"}, {"SUBJECT:", "outline of the case"}});
    EXPECT_TRUE(readOrdering(std::span{&sheet, 1}).empty());
}

}  // namespace
