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
    auto const drawings = pinsOfDrawings(page.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 DO [SOT-23-6]", "2 VM [SOT-23-6]", "3 CO [SOT-23-6]", "4 NC [SOT-23-6]", "5 VDD [SOT-23-6]", "6 VSS [SOT-23-6]"}));
}

TEST(PinDrawing, TwoSidesWithNamesInside) {
    PageBuilder page;
    page.line(60, 100, "1").line(80, 100, "IN").line(130, 100, "OUT").line(160, 100, "4");
    page.line(60, 120, "2").line(80, 120, "EN").line(130, 120, "GND").line(160, 120, "3");
    auto const drawings = pinsOfDrawings(page.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 IN", "2 EN", "3 GND", "4 OUT"}));
}

TEST(PinDrawing, OneColumnAndOneRow) {
    PageBuilder column;
    column.line(60, 100, "3").line(80, 100, "VIN").line(60, 120, "2").line(80, 120, "VOUT").line(60, 140, "1").line(80, 140, "GND");
    auto drawings = pinsOfDrawings(column.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 VOUT", "3 VIN"}));
    PageBuilder row;
    row.line(62, 100, "1").line(102, 100, "2").line(142, 100, "3").line(57, 130, "GND").line(97, 130, "OUT").line(139, 130, "IN");
    drawings = pinsOfDrawings(row.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 OUT", "3 IN"}));
}

TEST(PinDrawing, CornerNumbersOnly) {
    PageBuilder page;
    page.line(60, 100, "GND").line(110, 100, "1").line(150, 100, "8").line(170, 100, "NC");
    page.line(55, 120, "VOUT").line(170, 120, "VOUT").line(55, 140, "VOUT").line(170, 140, "VOUT");
    page.line(60, 160, "VIN").line(110, 160, "4").line(150, 160, "5").line(170, 160, "NC");
    auto const drawings = pinsOfDrawings(page.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(shown(drawings[0]), (Lines{"1 GND", "2 VOUT", "3 VOUT", "4 VIN", "5 NC", "6 VOUT", "7 VOUT", "8 NC"}));
}

TEST(PinDrawing, ANameBetweenTwoNumbersIsBothNumbersName) {
    PageBuilder page;
    page.line(60, 100, "OUT A").line(120, 100, "1").line(160, 100, "6").line(180, 100, "VCC");
    page.line(120, 120, "2").line(160, 120, "5").line(180, 130, "Inputs B").line(60, 130, "Inputs A");
    page.line(120, 140, "3").line(160, 140, "4");
    auto const drawings = pinsOfDrawings(page.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(drawings[0][1].name, "Inputs A");
    EXPECT_EQ(drawings[0][2].name, "Inputs A");
}

TEST(PinDrawing, AxesAndTablesOfNumbersAreNone) {
    PageBuilder axis;
    for (int i = 0; i < 6; ++i) axis.line(60 + 30.0F * static_cast<float>(i), 300, std::to_string(i + 1));
    EXPECT_TRUE(pinsOfDrawings(axis.page()).empty());
    PageBuilder many;
    for (int i = 0; i < 2000; ++i) many.line(10.0F * static_cast<float>(i % 50), 10.0F * static_cast<float>(i / 50), std::to_string(i % 9 + 1));
    EXPECT_TRUE(pinsOfDrawings(many.page()).empty());
}

TEST(PinDrawing, NumbersOfGatesInsideThePackageAreNoPackage) {
    auto page = sixPins();
    page.line(125, 104, "1").line(135, 104, "4").line(125, 134, "2").line(135, 134, "3");
    auto const drawings = pinsOfDrawings(page.page());
    ASSERT_EQ(drawings.size(), 1U);
    EXPECT_EQ(drawings[0].size(), 6U);
}

}  // namespace
