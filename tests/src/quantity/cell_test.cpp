#include "quantity/cell.h"

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

TEST(Cell, threeColumnsMakeOneInterval) {
    ParsedCell const cell = parseCell({.min = "4.255", .typ = "4.280", .max = "4.305", .unit = "V", .expected = "V"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->lo, "4.255");
    EXPECT_EQ(cell.interval->typ, "4.280");
    EXPECT_EQ(cell.interval->hi, "4.305");
    EXPECT_EQ(cell.interval->unit, "V");
    EXPECT_EQ(cell.typValue, "4.280");
    EXPECT_TRUE(cell.notes.empty());
}

TEST(Cell, unitOfTheColumnIsScaled) {
    ParsedCell const cell = parseCell({.typ = "144", .max = "188", .unit = "mS", .expected = "s"});
    ASSERT_TRUE(cell.interval);
    EXPECT_FALSE(cell.interval->lo);
    EXPECT_EQ(cell.interval->typ, "0.144");
    EXPECT_EQ(cell.interval->hi, "0.188");
    EXPECT_EQ(cell.interval->unit, "s");
}

TEST(Cell, blankCellsGiveNoInterval) {
    EXPECT_FALSE(parseCell({.min = "-", .typ = "", .max = "—", .unit = "V"}).interval);
}

TEST(Cell, absoluteAndNodeBoundsKeepBothReferences) {
    ParsedCell const cell = parseCell({.min = "-0.3", .max = "VDD+0.3", .unit = "V", .expected = "V"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->lo, "-0.3");
    EXPECT_EQ(cell.interval->hi, "0.3");
    EXPECT_EQ(cell.interval->relativeTo, ",VDD");
    EXPECT_FALSE(cell.notes.empty());
}

TEST(Cell, supplyPinsWithASignAreNodes) {
    for (char const* printed : {"V+-1.5", "V+ - 1.5"}) {
        ParsedValue const value = parseValue(printed, {.unit = "V", .expected = "V"});
        ASSERT_TRUE(value.typ) << printed;
        EXPECT_EQ(value.typ->toString(), "-1.5");
        EXPECT_EQ(value.relativeTo, "V+");
    }
    EXPECT_EQ(parseValue("VDD-0.3", {.unit = "V"}).relativeTo, "VDD");
}

TEST(Cell, powersOfTenAreNumbers) {
    EXPECT_EQ(parseCell({.max = "10⁻⁷", .unit = "A"}).interval->hi, "0.0000001");
    EXPECT_EQ(parseCell({.min = "10^11", .unit = "Ω"}).interval->lo, "100000000000");
}

TEST(Cell, ratioOfANodeHasAFactor) {
    ParsedCell const cell = parseCell({.min = "0.7×VDD", .unit = "V", .expected = "V"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->relativeTo, "VDD");
    EXPECT_EQ(cell.interval->factor, "0.7");
    EXPECT_EQ(cell.interval->lo, "0.7");
    EXPECT_FALSE(cell.unitConflict);
}

TEST(Cell, toleranceInTheTypicalColumnGivesBothBounds) {
    ParsedCell const cell = parseCell({.typ = "4.25±0.05", .unit = "V"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->lo, "4.20");
    EXPECT_EQ(cell.interval->hi, "4.30");
}

TEST(Cell, aShareOfTheTypicalValueGivesBothBounds) {
    for (auto const& texts : {CellTexts{.typ = "4.28±1%", .unit = "V"}, CellTexts{.typ = "4.28", .max = "±1%", .unit = "V"}, CellTexts{.min = "±1%", .typ = "4.28", .unit = "V"}}) {
        ParsedCell const cell = parseCell(texts);
        ASSERT_TRUE(cell.interval);
        EXPECT_EQ(cell.interval->lo, "4.2372") << texts.typ;
        EXPECT_EQ(cell.interval->hi, "4.3228") << texts.typ;
        EXPECT_EQ(cell.interval->unit, "V");
        EXPECT_FALSE(cell.unitConflict);
    }
    EXPECT_EQ(parseCell({.typ = "280", .max = "±50%", .unit = "µs"}).interval->hi, "0.00042000");
    EXPECT_EQ(parseCell({.typ = "50", .max = "±5", .unit = "%"}).interval->hi, "0.05") << "a bound of its own";
}

TEST(Cell, magnitudeInTheMaximumColumnGivesBothBounds) {
    ParsedCell const cell = parseCell({.max = "±20", .unit = "V"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->lo, "-20");
    EXPECT_EQ(cell.interval->hi, "20");
}

TEST(Cell, unitsInsideTheCellsPrecedeTheColumn) {
    ParsedCell const cell = parseCell({.min = "100m", .max = "1.2s", .unit = "", .expected = "s"});
    ASSERT_TRUE(cell.interval);
    EXPECT_EQ(cell.interval->lo, "0.100");
    EXPECT_EQ(cell.interval->hi, "1.2");
}

TEST(Cell, wrongDimensionIsAConflict) {
    EXPECT_TRUE(parseCell({.typ = "3.0", .unit = "V", .expected = "A"}).unitConflict);
}

struct Split {
    char const* printed;
    SplitCell parts;
};

TEST(Cell, aSingleValueCellIsTakenApart) {
    for (Split const& row : std::initializer_list<Split>{
             {"-0.3 to 12", {"-0.3", "", "12", ""}},
             {"VSS-0.3 ~ VSS+10", {"VSS-0.3", "", "VSS+10", ""}},
             {"VSS − 0.3 to VDD + 0.3", {"VSS-0.3", "", "VDD+0.3", ""}},
             {"130ms", {"", "", "130", "ms"}},
             {"±20", {"", "", "±20", ""}},
             {"4.25±0.05", {"", "4.25±0.05", "", ""}},
             {"4.25 ± 0.05 V", {"", "4.25±0.05", "", "V"}},
             {"−40～85℃", {"-40", "", "85", "°C"}},
             {"-55 ~ +150", {"-55", "", "+150", ""}},
             {"250", {"", "", "250", ""}},
             {"4. 280", {"", "", "4. 280", ""}},
             {"Unlimited", {"", "", "Unlimited", ""}},
             {"—", {"", "", "", ""}},
             {"2 kV (HBM)", {"", "", "2", "kV"}},
             {"1 000 000", {"", "", "1000000", ""}},
         }) {
        SplitCell const parts = splitValueCell(row.printed);
        EXPECT_EQ(parts, row.parts) << row.printed << " -> min " << parts.min << " typ " << parts.typ << " max " << parts.max << " unit " << parts.unit;
    }
}

}  // namespace
}  // namespace standin::quantity
