#include "extractors/parameters/column_carry.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

using enum ColumnRole;

// Columns 40 points wide at the places given; 12 points a row from `top`.
model::Table placed(model::Table table, std::vector<int> const& places, model::Points top) {
    for (model::Cell& cell : table.cells) {
        auto const x0 = static_cast<model::Points>(40 * places[static_cast<std::size_t>(cell.column)]);
        auto const x1 = static_cast<model::Points>(40 * places[static_cast<std::size_t>(cell.column + cell.columnSpan - 1)] + 40);
        auto const y0 = top + static_cast<model::Points>(12 * cell.row);
        cell.box = {x0, y0, x1, y0 + 12};
    }
    table.page = 1;
    table.box = {0, top, 240, top + static_cast<model::Points>(12 * table.rows)};
    return table;
}

ColumnPlan planOf(model::Table const& table) {
    TableText const text(table, nullptr);
    return planColumns(table, text, segmentsOf(table, text).front(), nullptr);
}

model::Table upper() {
    return placed(handMade({{"Symbol", "Parameter", "Min", "Typ", "Max", "Unit"}, {"VDD", "Supply", "1", "2", "3", "V"}}, 1), {0, 1, 2, 3, 4, 5}, 100);
}

TEST(ColumnCarry, PlacesTellTheColumnsOfAPartThatLacksOne) {
    // no minimum is printed in the lower part, so its column is not there
    auto const lower = placed(handMade({{"RG", "Gate resistance", "1.8", "2.5", "Ω"}}, 0), {0, 1, 3, 4, 5}, 140);
    auto const plan = planFromAbove(lower, upper(), planOf(upper()));
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->roles, (std::vector{Symbol, Name, Typ, Max, Unit}));
    ASSERT_EQ(plan->groups.size(), 1U);
    EXPECT_EQ(plan->groups[0].min, -1);
    EXPECT_EQ(plan->groups[0].typ, 2);
    EXPECT_EQ(plan->groups[0].max, 3);
    EXPECT_EQ(plan->groups[0].unit, 4);
}

TEST(ColumnCarry, NothingForTablesThatDoNotGoOn) {
    auto const plan = planOf(upper());
    auto const row = handMade({{"RG", "Gate resistance", "1.8", "2.5", "Ω"}}, 0);
    EXPECT_FALSE(planFromAbove(placed(row, {0, 1, 3, 4, 5}, 300), upper(), plan).has_value());  // too far below
    auto narrow = placed(row, {0, 1, 3, 4, 5}, 140);
    narrow.box.x1 = 200;
    EXPECT_FALSE(planFromAbove(narrow, upper(), plan).has_value());
    EXPECT_FALSE(planFromAbove(placed(row, {0, 1, 3, 3, 5}, 140), upper(), plan).has_value());  // two under one
}

}  // namespace
}  // namespace standin::parameters
