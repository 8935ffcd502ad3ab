#include "extractors/pins/pin_drawing.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;
using Lines = std::vector<std::string>;

Lines shown(std::vector<model::Pin> const& pins) {
    Lines lines;
    for (auto const& pin : pins) lines.push_back(pin.number + " " + pin.name + (pin.package.empty() ? "" : " [" + pin.package + "]"));
    return lines;
}

// Numbers inside an outline, names outside.
PageBuilder sixPins() {
    PageBuilder page;
    page.line(60, 100, "DO").line(110, 100, "1").line(150, 100, "6").line(170, 100, "VSS");
    page.line(60, 120, "VM").line(110, 120, "2").line(150, 120, "5").line(170, 120, "VDD");
    page.line(60, 140, "CO").line(110, 140, "3").line(150, 140, "4").line(170, 140, "NC");
    return page;
}

TEST(PinDrawing, TwoSidesWithNamesOutside) {
    auto page = sixPins();
    page.line(110, 160, "SOT-23-6");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 DO [SOT-23-6]", "2 VM [SOT-23-6]", "3 CO [SOT-23-6]", "4 NC [SOT-23-6]", "5 VDD [SOT-23-6]", "6 VSS [SOT-23-6]"}));
}

TEST(PinDrawing, SeveralVersionsAreToldApartByTheLineBelow) {
    auto page = sixPins();
    page.line(100, 158, "QX1 (top view)");
    page.line(60, 200, "IN").line(110, 200, "1").line(150, 200, "4").line(170, 200, "OUT");
    page.line(60, 220, "EN").line(110, 220, "2").line(150, 220, "3").line(170, 220, "VSS");
    page.line(100, 238, "QX2 (top view)");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 2U);
    EXPECT_EQ(drawings[0].front().package, "QX1");
    EXPECT_EQ(drawings[1].front().package, "QX2");
}

TEST(PinDrawing, ADrawingWithoutNamesTakesNoSideOfItsNeighbour) {
    PageBuilder page;
    for (int row = 0; row < 4; ++row) {
        float const y = 100 + 20 * static_cast<float>(row);
        page.line(60, y, std::to_string(row + 1)).line(100, y, std::to_string(8 - row));
        page.line(200, y, "A" + std::string(1, static_cast<char>('A' + row))).line(240, y, std::to_string(row + 1));
        page.line(290, y, std::to_string(8 - row)).line(310, y, "B" + std::string(1, static_cast<char>('A' + row)));
    }
    auto const drawn = pinsOfDrawings(page.page());
    ASSERT_EQ(drawn.packages.size(), 1U);
    EXPECT_EQ(shown(drawn.packages[0]), (Lines{"1 AA", "2 AB", "3 AC", "4 AD", "5 BD", "6 BC", "7 BB", "8 BA"}));
    EXPECT_EQ(drawn.unread.size(), 1U);
}

TEST(PinDrawing, TwoSidesWithNamesInside) {
    PageBuilder page;
    page.line(60, 100, "1").line(80, 100, "IN").line(130, 100, "OUT").line(160, 100, "4");
    page.line(60, 120, "2").line(80, 120, "EN").line(130, 120, "GND").line(160, 120, "3");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 IN", "2 EN", "3 GND", "4 OUT"}));
}

TEST(PinDrawing, OneColumnAndOneRow) {
    PageBuilder column;
    column.line(60, 100, "3").line(80, 100, "VIN").line(60, 120, "2").line(80, 120, "VOUT").line(60, 140, "1").line(80, 140, "GND");
    auto drawings = pinsOfDrawings(column.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 VOUT", "3 VIN"}));
    PageBuilder row;
    row.line(62, 100, "1").line(102, 100, "2").line(142, 100, "3").line(57, 130, "GND").line(97, 130, "OUT").line(139, 130, "IN");
    drawings = pinsOfDrawings(row.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 OUT", "3 IN"}));
}

TEST(PinDrawing, CornerNumbersOnly) {
    PageBuilder page;
    page.line(60, 100, "GND").line(110, 100, "1").line(150, 100, "8").line(170, 100, "NC");
    page.line(55, 120, "VOUT").line(170, 120, "VOUT").line(55, 140, "VOUT").line(170, 140, "VOUT");
    page.line(60, 160, "VIN").line(110, 160, "4").line(150, 160, "5").line(170, 160, "NC");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 VOUT", "3 VOUT", "4 VIN", "5 NC", "6 VOUT", "7 VOUT", "8 NC"}));
}

TEST(PinDrawing, ANameBetweenTwoNumbersIsBothNumbersName) {
    PageBuilder page;
    page.line(60, 100, "OUT A").line(120, 100, "1").line(160, 100, "6").line(180, 100, "VCC");
    page.line(120, 120, "2").line(160, 120, "5").line(180, 130, "Inputs B").line(60, 130, "Inputs A");
    page.line(120, 140, "3").line(160, 140, "4");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(drawings[0][1].name, "Inputs A");
    EXPECT_EQ(drawings[0][2].name, "Inputs A");
}

TEST(PinDrawing, ABraceMayStandNearerToOneOfItsNumbers) {
    PageBuilder page;
    page.line(60, 100, "OUT A").line(120, 100, "1").line(160, 100, "6").line(180, 100, "VCC");
    page.line(60, 125, "Inputs A").line(120, 120, "2").line(160, 120, "5").line(180, 120, "NC");
    page.line(120, 140, "3").line(160, 140, "4").line(180, 140, "VEE");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 OUT A", "2 Inputs A", "3 Inputs A", "4 VEE", "5 NC", "6 VCC"}));
}

TEST(PinDrawing, LetteringOfBlocksBetweenTheNumbersNamesNoPin) {
    // one row, its names below; blocks of the part above, not at the numbers
    PageBuilder page;
    float const numbers[] = {127, 167, 205, 246, 278, 310, 368, 420};
    char const* const names[] = {"D1", "D2", "D3", "D4", "GND", "D5", "OUT", "IN"};
    for (int i = 0; i < 8; ++i) page.line(numbers[i], 276, std::to_string(i + 1)).line(numbers[i] - 3, 294, names[i]);
    page.line(147, 244, "A1").line(188, 244, "A2").line(226, 244, "A3").line(262, 244, "A4");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 D1", "2 D2", "3 D3", "4 D4", "5 GND", "6 D5", "7 OUT", "8 IN"}));
}

TEST(PinDrawing, SignsOfAmplifiersAreNoNames) {
    auto const gate = [](PageBuilder& page) { page.line(122, 108, "-").line(122, 118, "+").line(138, 112, "+"); };
    PageBuilder page;
    page.line(60, 100, "OUT A").line(110, 100, "1").line(150, 100, "6").line(170, 100, "VCC");
    page.line(60, 120, "IN A").line(110, 120, "2").line(150, 120, "5").line(170, 120, "OUT B");
    page.line(60, 140, "VEE").line(110, 140, "3").line(150, 140, "4").line(170, 140, "IN B");
    gate(page);
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 OUT A", "2 IN A", "3 VEE", "4 IN B", "5 OUT B", "6 VCC"}));
    // without the names of one side nothing is read: what stands across is no name of it
    PageBuilder bare;
    bare.line(110, 100, "1").line(150, 100, "6").line(170, 100, "VCC");
    bare.line(110, 120, "2").line(150, 120, "5").line(170, 120, "OUT B");
    bare.line(110, 140, "3").line(150, 140, "4").line(170, 140, "IN B");
    gate(bare);
    auto const drawn = pinsOfDrawings(bare.page());
    EXPECT_TRUE(drawn.packages.empty());
    ASSERT_EQ(drawn.unread.size(), 1U);
    EXPECT_EQ(drawn.unread[0].leads, 6);
    EXPECT_EQ(drawn.unread[0].box, (model::Rect{110, 100, 155, 150}));
}

TEST(PinDrawing, ARaisedSignBelongsToItsName) {
    PageBuilder page;
    page.line(60, 100, "OUT").line(110, 100, "1").line(150, 100, "6").line(170, 100, "VCC").line(187, 97, "+");
    page.line(60, 120, "VCC").line(77, 117, "-").line(110, 120, "2").line(150, 120, "5").line(170, 120, "EN");
    page.line(60, 140, "IN").line(110, 140, "3").line(150, 140, "4").line(170, 140, "REF");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 OUT", "2 VCC-", "3 IN", "4 REF", "5 EN", "6 VCC+"}));
}

// Four sides, four numbers each; names of the rows are turned.
PageBuilder sixteenPins() {
    PageBuilder page;
    char const* const left[] = {"TS", "BAT", "CE", "EN"};
    char const* const right[] = {"ILIM", "OUT", "PG", "CHG"};
    for (int i = 0; i < 4; ++i) {
        float const y = 120 + 16.0F * static_cast<float>(i);
        page.line(70, y, left[i]).line(104, y, std::to_string(i + 1)).line(186, y, std::to_string(12 - i)).line(210, y, right[i]);
    }
    char const* const top[] = {"ISET", "TD", "TMR", "IN"};
    char const* const bottom[] = {"EP", "VSS", "SYS", "NTC"};
    for (int i = 0; i < 4; ++i) {
        float const x = 120 + 16.0F * static_cast<float>(i);
        page.turned(x, 78, top[i]).line(x, 104, std::to_string(16 - i)).line(x, 186, std::to_string(i + 5)).turned(x, 212, bottom[i]);
    }
    return page;
}

TEST(PinDrawing, FourSides) {
    auto const page = sixteenPins();
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]),
              (Lines{"1 TS", "2 BAT", "3 CE", "4 EN", "5 EP", "6 VSS", "7 SYS", "8 NTC", "9 CHG", "10 PG", "11 OUT", "12 ILIM", "13 IN", "14 TMR", "15 TD", "16 ISET"}));
}

TEST(PinDrawing, AxesAndTablesOfNumbersAreNone) {
    PageBuilder axis;
    for (int i = 0; i < 6; ++i) axis.line(60 + 30.0F * static_cast<float>(i), 300, std::to_string(i + 1));
    EXPECT_TRUE(pinsOfDrawings(axis.page()).packages.empty());
    PageBuilder many;
    for (int i = 0; i < 2000; ++i) many.line(10.0F * static_cast<float>(i % 50), 10.0F * static_cast<float>(i / 50), std::to_string(i % 9 + 1));
    EXPECT_TRUE(pinsOfDrawings(many.page()).packages.empty());
}

TEST(PinDrawing, NumbersOfGatesInsideThePackageAreNoPackage) {
    auto page = sixPins();
    page.line(125, 104, "1").line(135, 104, "4").line(125, 134, "2").line(135, 134, "3");
    auto const drawings = pinsOfDrawings(page.page()).packages;
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(drawings[0].size(), 6U);
}

}  // namespace
