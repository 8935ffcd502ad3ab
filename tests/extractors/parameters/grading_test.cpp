#include "extractors/parameters/grading.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

model::Value value(char const* text) { return {text, text, std::nullopt, {}}; }

model::Parameter sure() {
    model::Parameter parameter;
    parameter.name = "Supply current";
    parameter.symbol = "IDD";
    parameter.typ = value("3.0");
    parameter.max = value("6.0");
    parameter.unit = "µA";
    return parameter;
}

model::Table ruled() {
    model::Table table;
    table.confidence = 0.95;
    table.evidence.ruledRows = true;
    table.evidence.ruledColumns = true;
    return table;
}

ColumnPlan plan() {
    ColumnPlan plan;
    plan.headed = true;
    plan.roles = {ColumnRole::Name, ColumnRole::Symbol, ColumnRole::Typ, ColumnRole::Max, ColumnRole::Unit};
    plan.titles = {"Parameter", "Symbol", "Typ.", "Max.", "Unit"};
    ValueGroup group;
    group.typ = 2;
    group.max = 3;
    plan.groups = {group};
    return plan;
}

TEST(Confidence, IsHighWhereNothingSpeaksAgainstTheRow) {
    auto const confidence = confidenceOf(sure(), {}, plan(), ruled());
    EXPECT_GE(confidence.score, 0.95);
    EXPECT_TRUE(confidence.reasons.empty());
}

TEST(Confidence, FallsBelowNineTenthsForWhatOftenGoesWithAMisreading) {
    struct Case {
        char const* reason;
        void (*spoil)(model::Parameter&, PrintedRow&, ColumnPlan&, model::Table&);
    };
    Case const cases[] = {
        {"the grid of the table is uncertain", [](auto&, auto&, auto&, auto& t) { t.confidence = 0.4; }},
        {"no column titles", [](auto&, auto&, auto& c, auto&) { c.headed = false; }},
        {"a value spans several value columns", [](auto&, auto& r, auto&, auto&) { r.doubts = {"a value spans several value columns"}; }},
        {"words in a value column", [](auto&, auto& r, auto&, auto&) { r.words = true; }},
        {"the symbol does not read as one", [](auto& p, auto&, auto&, auto&) { p.symbol = "Source"; }},
        {"no unit", [](auto& p, auto&, auto&, auto&) { p.unit.clear(); }},
        {"the unit is not known", [](auto& p, auto&, auto&, auto&) { p.unit = "per day"; }},
        {"no name and no symbol", [](auto& p, auto&, auto&, auto&) { p.name = p.symbol = ""; }},
        {"minimum above maximum", [](auto& p, auto&, auto&, auto&) { p.min = value("9"); }},
        {"typical value outside of the limits", [](auto& p, auto&, auto&, auto&) { p.min = value("1"); p.typ = value("7"); }},
    };
    for (auto const& c : cases) {
        auto parameter = sure();
        PrintedRow row;
        auto columns = plan();
        auto table = ruled();
        c.spoil(parameter, row, columns, table);
        auto const confidence = confidenceOf(parameter, row, columns, table);
        EXPECT_LT(confidence.score, 0.9) << c.reason;
        EXPECT_NE(std::find(confidence.reasons.begin(), confidence.reasons.end(), c.reason), confidence.reasons.end()) << c.reason;
    }
}

// What is common in well-printed sheets gives a reason and no more.
TEST(Confidence, StaysHighForWhatIsCommon) {
    auto unprinted = sure();
    unprinted.symbol.clear();
    auto demanded = sure();
    demanded.min = value("5.0");
    demanded.max.reset();
    for (auto const& parameter : {unprinted, demanded}) {
        auto const confidence = confidenceOf(parameter, {}, plan(), ruled());
        EXPECT_GE(confidence.score, 0.9);
        EXPECT_EQ(confidence.reasons.size(), 1U);
    }
    for (char const* symbol : {"tdis", "fosc", "Istby"}) {
        auto parameter = sure();
        parameter.symbol = symbol;
        EXPECT_TRUE(confidenceOf(parameter, {}, plan(), ruled()).reasons.empty()) << symbol;
    }
}

TEST(Grade, IsNominalWhereTheColumnSaysSo) {
    auto columns = plan();
    EXPECT_FALSE(headedNominal(columns));
    for (char const* title : {"Nom.", "NOM", "Nominal value", "标称值"}) {
        columns.titles[2] = title;
        EXPECT_TRUE(headedNominal(columns)) << title;
    }
    auto parameter = sure();
    parameter.max.reset();
    EXPECT_EQ(gradeOf(parameter, headedNominal(columns)), model::Grade::N);
    columns.groups[0].typ = -1;
    EXPECT_FALSE(headedNominal(columns));
}

TEST(Grade, IsByDesignWhereConditionOrNoteSaysSo) {
    ByDesign byDesign;
    auto parameter = sure();
    EXPECT_NE(gradeOf(parameter, false, byDesign), model::Grade::GD);
    parameter.notes = {"Pulse test.", "Guaranteed by Design, not production tested."};
    for (int row = 0; row < 2; ++row) EXPECT_EQ(gradeOf(parameter, false, byDesign), model::Grade::GD);  // the second row meets known notes
    parameter.notes.pop_back();
    EXPECT_NE(gradeOf(parameter, false, byDesign), model::Grade::GD);
    parameter.tableCondition = "设计保证";
    EXPECT_EQ(gradeOf(parameter, false, byDesign), model::Grade::GD);
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::GD);
}

TEST(Confidence, FallsWhereASignOfTheRowIsADrawing) {
    std::vector<model::Parameter> rows{sure(), sure(), sure()};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].page = 2;
        rows[i].confidence = {0.96, {}};
        rows[i].box = {50, 100 + 20 * static_cast<float>(i), 300, 112 + 20 * static_cast<float>(i)};
    }
    rows[2].page = 3;
    std::vector<model::PlacedText> const signs{{"before \"8\"", 2, {120, 121, 126, 130}}, {"behind \"R\"", 2, {120, 141, 126, 150}}};
    doubtRowsWithDrawnSigns(rows, signs, {});
    EXPECT_EQ(rows[0].confidence.score, 0.96);
    EXPECT_LT(rows[1].confidence.score, 0.7);
    EXPECT_EQ(rows[1].confidence.reasons, (std::vector<std::string>{"a sign in the row is a drawing and was not read"}));
    EXPECT_EQ(rows[2].confidence.score, 0.96);

    // the unit of two rows, drawn at the edge of their table
    std::vector<model::Parameter> unitless{sure(), sure(), sure()};
    for (std::size_t i = 0; i < unitless.size(); ++i) {
        unitless[i].page = 2;
        unitless[i].table = "t1";
        unitless[i].confidence = {0.96, {}};
        unitless[i].box = {50, 100 + 16 * static_cast<float>(i), 300, 110 + 16 * static_cast<float>(i)};
        if (i < 2) unitless[i].unit.clear();
    }
    model::Table table;
    table.id = "t1";
    table.box = {50, 90, 380, 150};
    std::vector<model::PlacedText> const unit{{"alone in a cell of a table", 2, {360, 109, 368, 117}}};
    doubtRowsWithDrawnSigns(unitless, unit, std::span{&table, 1});
    EXPECT_LT(unitless[0].confidence.score, 0.7);
    EXPECT_LT(unitless[1].confidence.score, 0.7);
    EXPECT_EQ(unitless[2].confidence.score, 0.96);
}

}  // namespace
}  // namespace standin::parameters
