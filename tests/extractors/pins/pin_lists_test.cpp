#include "extractors/pins/pin_lists.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;
using Lines = std::vector<std::string>;

Lines shown(std::vector<model::Pin> const& pins) {
    Lines lines;
    for (auto const& pin : pins) lines.push_back(pin.number + " " + pin.name + (pin.function.empty() ? "" : ": " + pin.function));
    return lines;
}

TEST(PinLists, OneALineBesideADrawing) {
    PageBuilder page;
    page.drawing({100, 100, 160, 140}).line(100, 150, "1. GATE").line(100, 162, "2.SOURCE").line(100, 174, "3. DRAIN");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 GATE", "2 SOURCE", "3 DRAIN"}));
}

TEST(PinLists, SeveralALine) {
    PageBuilder page;
    page.drawing({100, 100, 160, 140}).line(100, 150, "1. Adj 2. Output 3. Input");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 Adj", "2 Output", "3 Input"}));
}

TEST(PinLists, SeveralNumbersBeforeOneName) {
    PageBuilder page;
    page.drawing({100, 100, 160, 140}).line(100, 150, "1 3 Anode").line(100, 162, "2 4 Cathode").line(100, 174, "5 Emitter");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 Anode", "2 Cathode", "3 Anode", "4 Cathode", "5 Emitter"}));
}

TEST(PinLists, ListsOfFeaturesAndNotesAreNone) {
    PageBuilder page;
    page.line(100, 150, "1. Low Noise").line(100, 162, "2. High Gain").line(100, 174, "3. Small Size");
    EXPECT_TRUE(pinsOfLists(page.page(), {}).empty());
    PageBuilder notes;
    notes.drawing({100, 100, 160, 140}).line(100, 150, "1. measured at the pins of the part on a board").line(100, 162, "2. OUT").line(100, 174, "3. IN");
    EXPECT_TRUE(pinsOfLists(notes.page(), {}).empty());
}

TEST(PinLists, BelowAHeadingAboutPins) {
    PageBuilder page;
    page.line(100, 130, "PIN FUNCTION").line(100, 150, "1. IN").line(100, 162, "2. GND").line(100, 174, "3. OUT");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 IN", "2 GND", "3 OUT"}));
}

TEST(PinDescriptions, NameInFrontOrBehind) {
    PageBuilder page;
    page.line(50, 100, "PROG(Pin 1): Sets the charge current").line(50, 120, "TS (Pin2): Thermistor input").line(50, 140, "(Pin3): Status output").line(50, 160, "Pin 4 (VDD): Supply");
    EXPECT_EQ(shown(pinsOfDescriptions(page.page())), (Lines{"1 PROG: Sets the charge current", "2 TS: Thermistor input", "3 : Status output", "4 VDD: Supply"}));
}

TEST(PinDescriptions, MentionsInRunningTextAreNone) {
    PageBuilder page;
    page.line(50, 100, "Connect pin 1 to ground").line(50, 120, "as pin 2 is open").line(50, 140, "while pin 3 is high");
    EXPECT_TRUE(pinsOfDescriptions(page.page()).empty());
}

}  // namespace
