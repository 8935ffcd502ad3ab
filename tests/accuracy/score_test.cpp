// The measure itself: what compares equal and what a row needs to be right.

#include "score.h"

#include <gtest/gtest.h>

namespace standin::accuracy {
namespace {

model::Parameter row(std::string symbol, std::string typ, std::string unit) {
    model::Parameter parameter;
    parameter.page = 2;
    parameter.symbol = std::move(symbol);
    parameter.typ = model::Value{.text = std::move(typ), .printed = {}, .value = {}, .box = {}};
    parameter.unit = std::move(unit);
    parameter.confidence.score = 0.95;
    return parameter;
}

TEST(Score, NumbersCompareByValueAndExpressionsByText) {
    EXPECT_EQ(numberForm("4.250"), numberForm("4.25"));
    EXPECT_EQ(numberForm("+125"), numberForm("125"));
    EXPECT_EQ(numberForm("1,000"), numberForm("1000"));
    EXPECT_EQ(numberForm("VDD - 0.3"), numberForm("vdd-0.3"));
    EXPECT_NE(numberForm("4.25"), numberForm("4.26"));
    EXPECT_EQ(numberForm("—"), "");
}

TEST(Score, UnitsAndSymbolsCompareWithoutSpacesAndMarks) {
    EXPECT_EQ(unitForm("μ A"), unitForm("uA"));
    EXPECT_EQ(unitForm("kΩ"), unitForm("kohms"));
    EXPECT_NE(unitForm("mV"), unitForm("MV"));
    EXPECT_EQ(symbolForm("R_DS(on)"), symbolForm("RDS(ON)"));
}

TEST(Score, LikenessIsOneForEqualAndZeroForForeignWords) {
    EXPECT_DOUBLE_EQ(likeness("Supply current", "Supply  current"), 1.0);
    EXPECT_DOUBLE_EQ(likeness("", ""), 1.0);
    EXPECT_DOUBLE_EQ(likeness("abc", "xyz"), 0.0);
}

TEST(Score, ARowIsRightOnlyWithItsSymbol) {
    Label label;
    label.pages = {2};
    label.rows.push_back({.page = 2, .symbol = "VXA", .name = {}, .condition = {}, .variant = {}, .min = {}, .typ = "3.0", .max = {}, .unit = "V"});
    label.rows.push_back({.page = 2, .symbol = "VXB", .name = {}, .condition = {}, .variant = {}, .min = {}, .typ = "4.0", .max = {}, .unit = "V"});
    model::Datasheet sheet;
    sheet.parameters = {row("VXA", "3", "V"), row("VXC", "4.0", "V"), row("VXD", "5.0", "V")};
    Score const score = scoreReading(label, sheet);
    EXPECT_EQ(score.strict.right, 1);
    EXPECT_EQ(score.loose.right, 2);
    EXPECT_EQ(score.strict.read, 3);
    EXPECT_EQ(score.sure, 3);
    EXPECT_EQ(score.sureRight, 1);
    EXPECT_NEAR(score.strict.f1(), 0.4, 1e-9);
}

TEST(Score, RowsOfPagesThatAreNotLabelledDoNotCount) {
    Label label;
    label.pages = {1};
    model::Datasheet sheet;
    sheet.parameters = {row("VXA", "3", "V")};
    EXPECT_EQ(scoreReading(label, sheet).strict.read, 0);
}

TEST(Score, ReadsALabelFile) {
    auto const label = parseLabel(R"({"pdf": "a.pdf", "labelled_pages": [2], "rows": [{"page": 2, "symbol": null, "name": "Supply", "min": "1", "unit": "V"}], "pins": [{"number": "1", "name": "VDD"}]})");
    ASSERT_TRUE(label);
    EXPECT_EQ(label->rows.at(0).name, "Supply");
    EXPECT_EQ(label->rows.at(0).symbol, "");
    EXPECT_EQ(label->pins.at(0).name, "VDD");
    EXPECT_FALSE(parseLabel("[1]"));
}

}  // namespace
}  // namespace standin::accuracy
