#include "extractors/parameters/turned_table.h"

#include <gtest/gtest.h>

#include "extractors/parameters/read_parameters.h"
#include "hand_made_table.h"

namespace standin::parameters {
namespace {

model::Table lying() {
    return handMade({{"Parameter", "Input threshold voltage", "Response time"},
                     {"Symbol", "VIT", "tRSP"},
                     {"Condition", ">2 VDD=3.0 V"},
                     {"Min", "1.10", "4.5"},
                     {"Typ", "1.20", ""},
                     {"Max", "1.30", "7.5"},
                     {"Unit", "V", "ms"}},
                    1);
}

bool isTurned(model::Table const& table) { return setUpright(table, TableText(table, nullptr)).has_value(); }

TEST(TurnedTable, ColumnsBecomeRows) {
    auto const table = lying();
    auto const upright = setUpright(table, TableText(table, nullptr));
    ASSERT_TRUE(upright);
    EXPECT_EQ(upright->rows, 3);
    EXPECT_EQ(upright->columns, 7);
    EXPECT_EQ(upright->headRows, 1);
    TableText const text(*upright, nullptr);
    EXPECT_EQ(text.cells[static_cast<std::size_t>(text.at(2, 1))].text, "tRSP");
    EXPECT_EQ(text.at(1, 2), text.at(2, 2));
}

TEST(TurnedTable, EachColumnIsAParameter) {
    std::vector<model::Table> tables{lying()};
    auto const reading = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(reading.parameters.size(), 2U);
    auto const& threshold = reading.parameters[0];
    EXPECT_EQ(threshold.name, "Input threshold voltage");
    EXPECT_EQ(threshold.symbol, "VIT");
    EXPECT_EQ(threshold.condition, "VDD=3.0 V");
    ASSERT_TRUE(threshold.min && threshold.typ && threshold.max);
    EXPECT_EQ(threshold.min->text, "1.10");
    EXPECT_EQ(threshold.typ->text, "1.20");
    EXPECT_EQ(threshold.max->text, "1.30");
    EXPECT_EQ(threshold.unit, "V");
    auto const& time = reading.parameters[1];
    EXPECT_EQ(time.symbol, "tRSP");
    EXPECT_FALSE(time.typ);
    EXPECT_EQ(time.max->text, "7.5");
    EXPECT_EQ(time.unit, "ms");
    EXPECT_EQ(tables.front().kind, model::TableKind::Specification);
}

TEST(TurnedTable, AnUprightTableStays) {
    EXPECT_FALSE(isTurned(handMade({{"Parameter", "Symbol", "Min", "Max", "Unit"}, {"Supply current", "IDD", "1", "2", "A"}, {"Rise time", "tR", "1", "2", "ns"}}, 1)));
    // lines named by their limit, over and over
    EXPECT_FALSE(isTurned(handMade({{"Parameter", "25 °C", "85 °C"}, {"Min", "1", "2"}, {"Max", "3", "4"}, {"Min", "5", "6"}, {"Max", "7", "8"}}, 1)));
    // one parameter only
    EXPECT_FALSE(isTurned(handMade({{"Parameter", "Supply current"}, {"Min", "1"}, {"Max", "3"}, {"Unit", "A"}}, 1)));
    // a line that holds something else
    EXPECT_FALSE(isTurned(handMade({{"Parameter", "A", "B"}, {"Min", "1", "2"}, {"Max", "3", "4"}, {"Gain", "5", "6"}, {"Unit", "V", "V"}}, 1)));
}

}  // namespace
}  // namespace standin::parameters
