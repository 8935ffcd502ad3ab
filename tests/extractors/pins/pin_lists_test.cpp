#include "extractors/pins/pin_lists.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;
using Lines = std::vector<std::string>;

// "1 GATE"; "PQ1: 1 GATE" where the list is called something.
Lines shown(std::vector<std::vector<model::Pin>> const& lists) {
    Lines lines;
    for (auto const& pins : lists) {
        for (auto const& pin : pins) lines.push_back((pin.package.empty() ? "" : pin.package + ": ") + pin.number + " " + pin.name);
    }
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

TEST(PinLists, OtherSignsBehindTheNumber) {
    PageBuilder page;
    page.drawing({100, 100, 160, 140}).line(100, 150, "1-Gate; 2-Source; 3-Drain");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 Gate", "2 Source", "3 Drain"}));
    PageBuilder apart;
    apart.drawing({100, 100, 160, 140}).line(100, 150, "1 - A").line(100, 162, "2 = K").line(100, 174, "3 : G");
    EXPECT_EQ(shown(pinsOfLists(apart.page(), {})), (Lines{"1 A", "2 K", "3 G"}));
    PageBuilder cells;
    cells.drawing({100, 100, 160, 140}).line(100, 150, "1-Cell, 2-Cell, 3-Cell");
    EXPECT_TRUE(shown(pinsOfLists(cells.page(), {})).empty()) << "one name for all tells nothing";
}

TEST(PinLists, AWordForPinsInFront) {
    PageBuilder page;
    page.line(100, 150, "Вывод 1. Uin").line(136, 162, "2. Ground").line(136, 174, "3. Uout");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 Uin", "2 Ground", "3 Uout"}));
    PageBuilder one;
    one.line(100, 150, "PIN 1. BASE 2. EMITTER 3. COLLECTOR");
    EXPECT_EQ(shown(pinsOfLists(one.page(), {})), (Lines{"1 BASE", "2 EMITTER", "3 COLLECTOR"}));
}

TEST(PinLists, SideBySideOnTheSameLines) {
    // two versions, each beside its drawing, in the frames that part them
    PageBuilder page;
    page.frame({50, 80, 300, 220}).frame({300, 80, 550, 220});
    page.drawing({80, 110, 180, 180}).drawing({320, 110, 420, 180});
    page.line(55, 85, "PQ1").line(305, 85, "PQ2");
    page.line(200, 150, "1 Anode").line(450, 150, "1 3 Anode");
    page.line(200, 162, "2 Cathode").line(450, 162, "2 4 Cathode");
    page.line(200, 174, "3 Emitter").line(450, 174, "5 7 Emitter");
    page.line(200, 186, "4 Collector").line(450, 186, "6 8 Collector");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"PQ1: 1 Anode", "PQ1: 2 Cathode", "PQ1: 3 Emitter", "PQ1: 4 Collector", "PQ2: 1 Anode", "PQ2: 2 Cathode", "PQ2: 3 Anode",
                                                          "PQ2: 4 Cathode", "PQ2: 5 Emitter", "PQ2: 6 Collector", "PQ2: 7 Emitter", "PQ2: 8 Collector"}));
}

TEST(PinLists, AListThatGoesOnInTheNextColumn) {
    PageBuilder page;
    page.drawing({100, 80, 400, 140}).line(100, 150, "1 3 Anode").line(250, 150, "5 7 Emitter").line(100, 162, "2 4 Cathode").line(250, 162, "6 8 Collector");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 Anode", "2 Cathode", "3 Anode", "4 Cathode", "5 Emitter", "6 Collector", "7 Emitter", "8 Collector"}));
    PageBuilder dotted;
    dotted.drawing({100, 80, 400, 140}).line(100, 150, "1. VIN").line(250, 150, "3. VOUT").line(100, 162, "2. GND").line(250, 162, "4. FB");
    EXPECT_EQ(shown(pinsOfLists(dotted.page(), {})), (Lines{"1 VIN", "2 GND", "3 VOUT", "4 FB"}));
}

TEST(PinLists, ListsOfFeaturesAndNotesAreNone) {
    PageBuilder page;
    page.line(100, 150, "1. Low Noise").line(100, 162, "2. High Gain").line(100, 174, "3. Small Size");
    EXPECT_TRUE(pinsOfLists(page.page(), {}).empty());
    PageBuilder notes;
    notes.drawing({100, 100, 160, 140}).line(100, 150, "1. measured at the pins of the part on a board").line(100, 162, "2. OUT").line(100, 174, "3. IN");
    EXPECT_TRUE(pinsOfLists(notes.page(), {}).empty());
}

TEST(PinLists, StylesOfAPackageAreOfAnyPart) {
    PageBuilder page;
    page.drawing({100, 40, 160, 80}).line(100, 100, "STYLE 1:").line(100, 112, "PIN 1. BASE").line(124, 124, "2. EMITTER").line(124, 136, "3. COLLECTOR");
    EXPECT_TRUE(shown(pinsOfLists(page.page(), {})).empty());
}

TEST(PinLists, BelowAHeadingAboutPins) {
    PageBuilder page;
    page.line(100, 130, "PIN FUNCTION").line(100, 150, "1. IN").line(100, 162, "2. GND").line(100, 174, "3. OUT");
    EXPECT_EQ(shown(pinsOfLists(page.page(), {})), (Lines{"1 IN", "2 GND", "3 OUT"}));
}

}  // namespace
