#include "compare/printed_rows.h"

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using support::RowText;
using support::SheetBuilder;

TEST(PrintedRows, JoinCellsAndKnowTheirParameters) {
    SheetBuilder builder;
    builder.specification("Ta=25°C", {{.name = "Delay", .symbol = "tD", .max = "10", .unit = "ms"}, {.name = "Current", .symbol = "ID", .max = "3", .unit = "µA"}});
    model::Datasheet const sheet = builder.build();
    PrintedRows const rows(sheet);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_TRUE(rows[0].head);
    EXPECT_FALSE(rows[0].read);
    EXPECT_EQ(rows[1].text, "Delay | tD | 10 | ms");
    EXPECT_TRUE(rows[1].read);
    EXPECT_EQ(rows.ofParameter(0), 1);
    EXPECT_EQ(rows.ofParameter(1), 2);
    EXPECT_EQ(rows.at(1, rows[2].box), 2);
    EXPECT_EQ(rows.at(2, rows[2].box), -1);
}

TEST(PrintedRows, GiveAMergedCellToTheRowItBeginsIn) {
    model::Datasheet sheet;
    model::Table table;
    table.id = "t1";
    table.page = 1;
    auto cell = [&](int row, int column, int span, std::string text) {
        model::Cell c;
        c.row = row;
        c.column = column;
        c.rowSpan = span;
        c.text = std::move(text);
        c.box = {100.0F * static_cast<float>(column), 20.0F * static_cast<float>(row), 100.0F * static_cast<float>(column + 1), 20.0F * static_cast<float>(row + span)};
        table.cells.push_back(std::move(c));
    };
    cell(0, 0, 2, "Delay");
    cell(0, 1, 1, "10");
    cell(1, 1, 1, "20");
    sheet.tables.push_back(table);
    PrintedRows const rows(sheet);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].text, "Delay | 10");
    EXPECT_EQ(rows[1].text, "20");
    EXPECT_EQ(rows[0].box.y1, 20);
}

TEST(PrintedRows, ShowTheDotsThatLeadFromACell) {
    model::Datasheet sheet;
    model::Table table;
    table.page = 1;
    table.cells = {{.text = "Storage temperature", .leader = "........", .words = {}, .lineStarts = {}, .box = {0, 0, 50, 10}},
                   {.column = 1, .text = "150 °C", .words = {}, .lineStarts = {}, .box = {50, 0, 100, 10}}};
    sheet.tables.push_back(table);
    PrintedRows const rows(sheet);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].text, "Storage temperature ........ | 150 °C");
    EXPECT_EQ(rows[0].key, keyOf("Storage temperature 150 °C"));
}

TEST(PrintedRows, TwoRowsPrintAlikeUnlessAPrintedFieldDiffers) {
    auto const row = [](RowText const& text) { return SheetBuilder("QX17").specification("", {text}).build().parameters.front(); };
    RowText const text{.name = "Delay", .symbol = "tD", .condition = "VDD=3V", .min = "8", .typ = "10", .max = "12", .unit = "ms"};
    auto const other = [&](std::string RowText::*field) {
        RowText changed = text;
        changed.*field = "9";
        return printAlike(row(text), row(changed));
    };
    EXPECT_TRUE(printAlike(row(text), row(text)));
    for (auto field : {&RowText::name, &RowText::symbol, &RowText::condition, &RowText::min, &RowText::typ, &RowText::max, &RowText::unit}) EXPECT_FALSE(other(field));
    EXPECT_TRUE(other(&RowText::variant)) << "the callers weigh the version";
}

}  // namespace
}  // namespace standin::compare
