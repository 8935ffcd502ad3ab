#include "extractors/pins/pin_table.h"

#include <initializer_list>

#include <gtest/gtest.h>

namespace {

namespace model = standin::model;
using namespace standin::pins;

model::Table table(int headRows, std::initializer_list<std::initializer_list<char const*>> rows) {
    model::Table result;
    result.page = 3;
    result.kind = model::TableKind::Pins;
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

// "1 VDD Supply [SOT-23-6]" a pin.
std::vector<std::string> read(model::Table const& sheet) {
    std::vector<std::string> lines;
    for (auto const& pin : pinsOfTable(sheet, pinColumnsOf(sheet))) {
        EXPECT_EQ(pin.page, 3);
        lines.push_back(pin.number + " | " + pin.name + " | " + pin.function + (pin.package.empty() ? "" : " [" + pin.package + "]"));
    }
    return lines;
}
using Lines = std::vector<std::string>;

TEST(PinTable, NumberNameFunctionInAnyOrder) {
    EXPECT_EQ(read(table(1, {{"Pin No.", "Symbol", "Description"}, {"1", "DO", "Gate of the discharge FET"}, {"2, 3", "VM", "Pack minus"}})),
              (Lines{"1 | DO | Gate of the discharge FET", "2 | VM | Pack minus", "3 | VM | Pack minus"}));
    EXPECT_EQ(read(table(1, {{"Name", "I/O", "No.", "Function"}, {"VDD", "P", "5", "Supply"}, {"VSS", "P", "6", "Ground"}})),
              (Lines{"5 | VDD | Supply", "6 | VSS | Ground"}));
    EXPECT_EQ(read(table(1, {{"Pin", "Pin name", "Pin function"}, {"1", "CO", "Charge gate"}})), (Lines{"1 | CO | Charge gate"}));
    EXPECT_EQ(read(table(1, {{"\u5f15\u811a\u53f7", "\u7b26\u53f7", "\u529f\u80fd\u8bf4\u660e"}, {"1", "DO", "\u653e\u7535\u63a7\u5236"}})), (Lines{"1 | DO | \u653e\u7535\u63a7\u5236"}));
}

TEST(PinTable, ADrawingThatLooksLikeATableIsNone) {
    EXPECT_TRUE(read(table(0, {{"VIN", "1", "6", "READY"}, {"VSS", "2", "5", "SENSE"}, {"HOLD", "3", "4", "VOUT"}})).empty());
    // Pins side by side that count on are a table.
    EXPECT_FALSE(read(table(0, {{"1", "VIN", "4", "VOUT"}, {"2", "VSS", "5", "SENSE"}, {"3", "HOLD", "6", "READY"}})).empty());
}

TEST(PinTable, PinHeadsNamesWhereNoNumbersStandBelow) {
    EXPECT_EQ(read(table(1, {{"Pin", "Description"}, {"VDD", "Supply of the circuit"}, {"EN", "Enables the output"}})),
              (Lines{" | VDD | Supply of the circuit", " | EN | Enables the output"}));
}

TEST(PinTable, PackagesSideBySide) {
    auto sheet = table(2, {{"Pin number", "", "Name", "Function"}, {"SOT-23-5", "SOT-89-3", "", ""}, {"1", "2", "OUT", "Output"}, {"3", "3", "IN", "Input"}, {"4", "-", "EN", "Enable"}});
    sheet.cells[0].columnSpan = 2;
    EXPECT_EQ(read(sheet), (Lines{"1 | OUT | Output [SOT-23-5]", "2 | OUT | Output [SOT-89-3]", "3 | IN | Input", "4 | EN | Enable [SOT-23-5]"}));
}

TEST(PinTable, AGroupTitleIsNoPartOfAPackage) {
    EXPECT_EQ(read(table(1, {{"Name", "Pin SOIC", "VQFN", "Description"}, {"IN", "1", "5, 6", "Supply"}})),
              (Lines{"1 | IN | Supply [SOIC]", "5 | IN | Supply [VQFN]", "6 | IN | Supply [VQFN]"}));
}

TEST(PinTable, PinsSideBySide) {
    EXPECT_EQ(read(table(1, {{"No.", "Name", "No.", "Name"}, {"1", "A", "8", "H"}, {"2", "B", "7", "G"}})), (Lines{"1 | A | ", "8 | H | ", "2 | B | ", "7 | G | "}));
}

TEST(PinTable, NamesListedBesideTheirNumbers) {
    EXPECT_EQ(read(table(1, {{"Symbol", "Pin", "Description"}, {"Q0, Q1, Q2", "15, 1, 2", "output"}, {"GND", "8", "ground"}})),
              (Lines{"15 | Q0 | output", "1 | Q1 | output", "2 | Q2 | output", "8 | GND | ground"}));
}

TEST(PinTable, AFunctionGoesOnInTheNextLine) {
    EXPECT_EQ(read(table(1, {{"No.", "Name", "Description"}, {"1", "TD", "Delay capacitor;"}, {"", "", "leave open if unused"}, {"2", "EN", "Enable"}})),
              (Lines{"1 | TD | Delay capacitor; leave open if unused", "2 | EN | Enable"}));
}

TEST(PinTable, APadWithoutANumberIsAPin) {
    EXPECT_EQ(read(table(1, {{"No.", "Name", "Description"}, {"1", "IN", "Input"}, {"2", "OUT", "Output"}, {"\u2013", "Thermal pad", "Solder to ground"}})),
              (Lines{"1 | IN | Input", "2 | OUT | Output", " | Thermal pad | Solder to ground"}));
}

TEST(PinTable, APadWithoutANumberIsAPinOfEveryPackage) {
    auto sheet = table(2, {{"Name", "Pin number", "", "Function"}, {"", "A1", "A2", ""}, {"IN", "1", "2", "Input"}, {"OUT", "3", "-", "Output"}, {"Thermal pad", "-", "-", "Solder to ground"}});
    sheet.cells[1].columnSpan = 2;
    EXPECT_EQ(read(sheet), (Lines{"1 | IN | Input [A1]", "2 | IN | Input [A2]", "3 | OUT | Output [A1]", " | Thermal pad | Solder to ground"}));
}

TEST(PinTable, RaisedMarksAreNotOfTheName) {
    EXPECT_EQ(read(table(1, {{"Pin", "Description"}, {"1", "gate"}, {"2", "drain\u00b9"}, {"3", "source"}})), (Lines{"1 | gate | ", "2 | drain | ", "3 | source | "}));
}

TEST(PinTable, HeadingLinesArePackages) {
    auto sheet = table(1, {{"No.", "Name"}, {"SOT-89", ""}, {"1", "GND"}});
    sheet.cells[2].columnSpan = 2;
    EXPECT_EQ(read(sheet), (Lines{"1 | GND |  [SOT-89]"}));
}

TEST(PinTable, ALogicTableIsNoPinTable) {
    auto const states = table(1, {{"EN2", "Mode"}, {"0", "100 mA"}, {"1", "500 mA"}, {"1", "Standby"}});
    EXPECT_TRUE(contradictsItself(pinsOfTable(states, pinColumnsOf(states))));
    auto const pins = table(1, {{"No.", "Name"}, {"1", "IN"}, {"2", "OUT"}});
    EXPECT_FALSE(contradictsItself(pinsOfTable(pins, pinColumnsOf(pins))));
    auto const levels = table(1, {{"", "CK", "Operation"}, {"H", "X", "lamps go dark"}, {"L", "L", "counts"}, {"L", "H", "holds"}, {"L", "X", "holds"}});
    EXPECT_TRUE(contradictsItself(pinsOfTable(levels, pinColumnsOf(levels))));
    auto const grounds =
        table(1, {{"Pin name", "Function"}, {"VDD", "Supply"}, {"GND", "Ground of the lamp"}, {"OUT", "Lamp"}, {"GND", "Ground of the bell"}, {"VDD", "Supply of the bell"}});
    EXPECT_FALSE(contradictsItself(pinsOfTable(grounds, pinColumnsOf(grounds))));
}

TEST(PinTable, EmptyAndBrokenTables) {
    EXPECT_TRUE(read(model::Table{}).empty());
    auto sheet = table(1, {{"No.", "Name"}, {"1", "IN"}});
    sheet.cells[2].row = -5;
    sheet.cells[3].columnSpan = 1'000'000;
    sheet.rows = 2;
    EXPECT_NO_THROW((void)pinsOfTable(sheet, pinColumnsOf(sheet)));
    sheet.rows = 1'000'000;
    EXPECT_TRUE(pinsOfTable(sheet, pinColumnsOf(sheet)).empty());
}

TEST(PinTable, PackagesNamedBesidePinNumber) {
    EXPECT_EQ(read(table(1, {{"SSOP20 Pin No.", "SOP16 Pin No.", "Pin Name", "Pin Type"}, {"19", "16", "VCC", "POWER"}, {"20", "NONE", "NOS#", "IN"}, {"8", "1", "GND", "POWER"}})),
              (Lines{"19 | VCC |  [SSOP20]", "16 | VCC |  [SOP16]", "20 | NOS# |  [SSOP20]", "8 | GND |  [SSOP20]", "1 | GND |  [SOP16]"}));
}

}  // namespace
