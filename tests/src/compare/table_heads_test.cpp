#include "compare/table_heads.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(DifferInColumns, AColumnMoreIsNoOtherColumn) {
    struct Case {
        char const* reference;
        char const* candidate;
        bool columns;
    };
    Case const cases[] = {
        {"Part | VCU [V] | Marking", "Part | VCU [V] | Delay [s] | Package", true},
        {"Part | VCU [V]", "Part | VCU [V] | VDL [V]", true},
        {"Part (1) | VCU | VOUT(REG) | MARKING", "Part(1) | VCU | VOUT(REG) | TS METHOD | PACKAGE", true},
        {"SOT-23-6 | [VCU] (V) | [VDL] (V)", "Model | Package | Detection voltage [VCU] (V) | Release voltage [VDL] (V) | 0V charge function", true},
        // Another column.
        {"Part | VCU [V]", "Part | VCU [mV]", false},
        {"Part | VCU [V] | Marking", "Part | VCU [mV] | Marking | Package", false},
        {"Part | VCU | Marking", "Part | VCL | Marking | Package", false},
        {"Part | [VCU] (V)", "Part | Package | Voltage [VDCU] (V)", false},
        {"Part | VCU | Marking", "Part | VCU | Package", false},
        {"Name | Min | Unit", "Name | Max | Unit", false},
        {"Name | Value | Unit", "Name | Min | Max | Unit", false},
        {"Name | Min. | Typ. | Max. | Unit", "Name | Min. | Max. | Unit", false},
        {"参数 | 最小值 | 典型值 | 单位", "参数 | 最小值 | 单位", false},
        {"Bezeichnung | Mindestwert | Richtwert | Einheit", "Bezeichnung | Richtwert | Einheit", false},
        {"Name | Delay | V", "Name | Delay | Package | mV", false},
        {"Part | Overcharge voltage | Package", "Part | Overdischarge voltage | Package | Marking", false},
        {"Part | Detection delay | Marking", "Part | Release delay | Marking | Package", false},
        {"Part | Delay at 25 °C", "Part | Delay at 85 °C | Package", false},
        {"Part | Minimum delay", "Part | Maximum delay | Package", false},
        {"Part | VCU [V]", "Part | VCU [V]", false},
        {"", "", false},
    };
    for (auto const& c : cases) {
        EXPECT_EQ(differInColumns(c.reference, c.candidate), c.columns) << c.reference << " / " << c.candidate;
        EXPECT_EQ(differInColumns(c.candidate, c.reference), c.columns) << "exchanged: " << c.reference << " / " << c.candidate;
    }
}

model::Datasheet sheetOf(std::vector<std::vector<std::string>> const& rows) {
    model::Datasheet sheet;
    model::Table table;
    table.id = "t1";
    table.page = 1;
    table.headRows = 1;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            model::Cell cell;
            cell.row = static_cast<int>(r);
            cell.column = static_cast<int>(c);
            cell.text = rows[r][c];
            auto const x = static_cast<float>(c) * 50.0F;
            auto const y = static_cast<float>(r) * 20.0F;
            cell.box = {x, y, x + 50.0F, y + 20.0F};
            table.cells.push_back(cell);
        }
    }
    sheet.tables.push_back(table);
    return sheet;
}

TEST(NamesColumns, SymbolsAndUnitsBelowTheHead) {
    PrintedRows const rows(sheetOf({{"Part", "Detection", "Release"}, {"voltage", "voltage"}, {"SOT-23", "[VCU] (V)", "[VCL] (V)"}, {"QX7-A", "4.25", "4.05"}, {"[V]", "x"}}));
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_TRUE(namesColumns(rows, 0));
    EXPECT_FALSE(namesColumns(rows, 1));
    EXPECT_TRUE(namesColumns(rows, 2));
    EXPECT_FALSE(namesColumns(rows, 3));
}

TEST(NamesColumns, NoRowThatStatesAValue) {
    for (char const* value : {"±15", "≤ 15", "(15)", ".5", "TA = 25 °C", "VDD > 5 V"}) {
        PrintedRows const rows(sheetOf({{"Name", "Value", "Unit"}, {"Lamp voltage", value, "V"}}));
        EXPECT_FALSE(namesColumns(rows, 1)) << value;
    }
    PrintedRows const rows(sheetOf({{"Name", "Value", "Unit"}, {"Lamp voltage", ".....", "V"}}));
    EXPECT_TRUE(namesColumns(rows, 1));
}

TEST(NamesColumns, NoRowThatWasReadNorOneBelowIt) {
    auto sheet = sheetOf({{"Name", "Value"}, {"Delay (s)", "Long"}, {"Voltage (V)", "High"}});
    model::OrderingLine line;
    line.page = 1;
    line.box = {0, 20, 100, 40};
    sheet.ordering.push_back(line);
    PrintedRows const rows(sheet);
    EXPECT_FALSE(namesColumns(rows, 1));
    EXPECT_FALSE(namesColumns(rows, 2));
}

}  // namespace
}  // namespace standin::compare
