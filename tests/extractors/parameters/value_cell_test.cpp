#include "extractors/parameters/value_cell.h"

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

struct Case {
    char const* text;
    Slot slot;
    char const* columnUnit;
    char const* min;
    char const* typ;
    char const* max;
    char const* unit;
};

TEST(ValueCell, PutsTextsWhereTheLabelRulesWantThem) {
    for (Case const& c : {
             Case{"-0.3 to 12", Slot::Single, "V", "-0.3", "", "12", "V"},
             Case{"−0.3 to 12 V", Slot::Single, "", "-0.3", "", "12", "V"},
             Case{"-0.3V～8V", Slot::Single, "", "-0.3", "", "8", "V"},
             Case{"VSS-0.3 ~ VSS+10", Slot::Single, "V", "VSS-0.3", "", "VSS+10", "V"},
             Case{"-40~+85", Slot::Single, "°C", "-40", "", "+85", "°C"},
             Case{"-40-85", Slot::Single, "°C", "-40", "", "85", "°C"},
             Case{"–40–+125°C", Slot::Single, "", "-40", "", "+125", "°C"},
             Case{"2.0…4.5", Slot::Single, "V", "2.0", "", "4.5", "V"},
             Case{"von 2,0 bis 4,5", Slot::Single, "V", "2,0", "", "4,5", "V"},
             Case{"±3~±22", Slot::Single, "V", "±3", "", "±22", "V"},
             Case{"- 30 to + 100", Slot::Single, "°C", "-30", "", "+100", "°C"},
             Case{"±20", Slot::Single, "V", "", "", "±20", "V"},
             Case{"150", Slot::Single, "°C", "", "", "150", "°C"},
             Case{"5 000", Slot::Single, "V", "", "", "5000", "V"},
             Case{"4.25±0.05", Slot::Single, "V", "", "4.25±0.05", "", "V"},
             Case{"4.28 V ±1 %", Slot::Typ, "", "", "4.28±1%", "", "V"},
             Case{"4.28V±1%", Slot::Single, "", "", "4.28±1%", "", "V"},
             Case{"100 ±30 %", Slot::Typ, "ms", "", "100±30%", "", ""},
             Case{"1.0 s ±30%", Slot::Max, "", "", "", "1.0±30%", "s"},
             Case{"±50 %", Slot::Max, "µs", "", "", "±50%", ""},
             Case{"50 ±5 %", Slot::Typ, "%", "", "50 ±5", "", "%"},
             Case{"50 ±5 %", Slot::Typ, "", "", "50 ±5", "", "%"},
             Case{"±2 %", Slot::Max, "", "", "", "±2", "%"},
             Case{"130ms", Slot::Typ, "", "", "130", "", "ms"},
             Case{"1.2 s", Slot::Max, "", "", "", "1.2", "s"},
             Case{"VDD+0.3", Slot::Max, "V", "", "", "VDD+0.3", "V"},
             Case{"VXX + 150mV", Slot::Min, "V", "VXX + 150mV", "", "", "V"},
             Case{"0.7VDD", Slot::Min, "V", "0.7VDD", "", "", "V"},
             Case{"—", Slot::Min, "V", "", "", "", ""},
             Case{"", Slot::Single, "V", "", "", "", ""},
             Case{"Continuous", Slot::Single, "", "", "", "Continuous", ""},
             Case{"NA", Slot::Max, "°C/W", "", "", "NA", "°C/W"},
             Case{"10⁻⁷", Slot::Max, "A", "", "", "10^-7", "A"},
             Case{"0. 1", Slot::Typ, "V", "", "0.1", "", "V"},
             Case{"＋１００", Slot::Max, "nA", "", "", "+100", "nA"},
             Case{"-0.3V to (VCC + 0.3V)", Slot::Single, "", "-0.3", "", "VCC + 0.3", "V"},
             Case{"(V1) to (V2 + 0.3)", Slot::Single, "V", "V1", "", "V2 + 0.3", "V"},
             Case{"0 to VDD VDC", Slot::Single, "", "0", "", "VDD", "VDC"},
             Case{"1 kΩ‖10 pF", Slot::Typ, "", "", "1 kΩ‖10 pF", "", ""},
             Case{"2 || 4", Slot::Typ, "MΩ || pF", "", "2 || 4", "", ""},
             Case{"<0.2", Slot::Max, "V", "", "", "<0.2", "V"},
         }) {
        ValueCell const cell = readValueCell(c.text, c.slot, c.columnUnit);
        EXPECT_EQ(cell.min, c.min) << c.text;
        EXPECT_EQ(cell.typ, c.typ) << c.text;
        EXPECT_EQ(cell.max, c.max) << c.text;
        if (!cell.unit.empty()) {
            EXPECT_EQ(cell.unit, c.unit) << c.text;
        }
    }
}

TEST(ValueCell, APackageInFrontIsALabel) {
    ValueCell const cell = readValueCell("DIP8: 500", Slot::Single, "mW");
    EXPECT_EQ(cell.label, "DIP8");
    EXPECT_EQ(cell.max, "500");
}

TEST(ValueCell, ARangeOfTwoUnitsKeepsThem) {
    ValueCell const cell = readValueCell("100 ms to 1.2 s", Slot::Single);
    EXPECT_TRUE(cell.mixedUnits);
    EXPECT_EQ(cell.min, "100 ms");
    EXPECT_EQ(cell.max, "1.2 s");
    EXPECT_EQ(cell.unit, "");
}

TEST(ValueCell, ADigitOfASymbolTakesNoUnit) {
    std::string text = "VT1 V";
    EXPECT_EQ(takeUnitTail(text), "");
    EXPECT_EQ(text, "VT1 V");
}

TEST(ValueCell, SurvivesLongAndBrokenText) {
    std::string const prose(4000, 'x');
    EXPECT_EQ(readValueCell(prose, Slot::Single).form, ValueForm::Words);
    EXPECT_EQ(readValueCell("\xff\xfe-1 to \xc3", Slot::Single).min, "");
}

TEST(ValueCell, ADashBetweenANumberAndAnExpressionPartsARange) {
    ValueCell const range = readValueCell("-0.3 – VDD+0.3", Slot::Single);
    EXPECT_EQ(range.min, "-0.3");
    EXPECT_EQ(range.max, "VDD+0.3");
    ValueCell const difference = readValueCell("VDD - 0.3", Slot::Single);
    EXPECT_EQ(difference.max, "VDD - 0.3");
}

}  // namespace
}  // namespace standin::parameters
