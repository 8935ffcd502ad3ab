#include "extractors/pins/unread_pins.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"
#include "extractors/pins/pin_captions.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;
using Lines = std::vector<std::string>;

Lines shown(std::vector<model::PlacedText> const& unread) {
    Lines lines;
    for (auto const& place : unread) lines.push_back(place.text + " on " + std::to_string(place.page));
    return lines;
}

model::Section pinSection(int page, char const* title) {
    model::Section section;
    section.kind = model::SectionKind::Pins;
    section.title = title;
    section.page = page;
    section.box = {50, 100, 150, 112};
    return section;
}

TEST(UnreadPins, NamesThatArePictures) {
    std::vector<model::Pin> const pins{{"1", "VDD", "", "", 2, {}}, {"2", "", "Status", "", 2, {10, 20, 30, 40}}, {"", "Pad", "", "", 2, {}}};
    auto const unread = unreadPins(pins, {}, {}, {});
    EXPECT_EQ(shown(unread), (Lines{"pin 2 on 2"}));
    EXPECT_EQ(unread[0].box, (model::Rect{10, 20, 30, 40}));
}

TEST(UnreadPins, DrawingsWithNumbersOnly) {
    std::vector<DrawingOfPage> const drawings{{3, {18, {1, 2, 3, 4}}}, {3, {4, {}}}};
    EXPECT_EQ(shown(unreadPins({}, drawings, {}, {})), (Lines{"pins 1 to 18 on 3", "pins 1 to 4 on 3"}));
    // a package of so many pins was read elsewhere
    std::vector<model::Pin> const pins{{"1", "A", "", "", 1, {}}, {"2", "K", "", "", 1, {}}, {"3", "E", "", "", 1, {}}, {"4", "C", "", "", 1, {}}};
    EXPECT_EQ(shown(unreadPins(pins, drawings, {}, {})), (Lines{"pins 1 to 18 on 3"}));
}

TEST(UnreadPins, HeadingsAndCaptionsWithoutPins) {
    PageBuilder page;
    page.line(50, 300, "Figure 2: Pin connection (top view)").line(50, 400, "Pin connection");
    std::vector<model::Section> const sections{pinSection(1, "2. Pin information")};
    EXPECT_EQ(shown(unreadPins({}, {}, std::span{&page.page(), 1}, sections)), (Lines{"2. Pin information on 1"}));
    EXPECT_EQ(shown(unreadPins({}, {}, std::span{&page.page(), 1}, {})), (Lines{"Figure 2: Pin connection (top view) on 1"}));
    std::vector<model::Pin> const pins{{"1", "A", "", "", 4, {}}};
    EXPECT_TRUE(unreadPins(pins, {}, std::span{&page.page(), 1}, sections).empty());
    // names without numbers do not say which lead is which
    std::vector<model::Pin> const names{{"", "EN", "Enable", "", 4, {}}};
    EXPECT_EQ(shown(unreadPins(names, {}, std::span{&page.page(), 1}, sections)), (Lines{"2. Pin information on 1"}));
}

TEST(UnreadPins, TerminalsWithoutNumbers) {
    PageBuilder page;
    page.line(100, 100, "D").line(80, 140, "G").line(120, 140, "S").line(50, 200, "A gate and a source");
    auto const unread = unreadPins({}, {}, std::span{&page.page(), 1}, {});
    EXPECT_EQ(shown(unread), (Lines{"G, D, S without numbers on 1"}));
    EXPECT_EQ(unread[0].box, (model::Rect{80, 100, 125, 150}));
    PageBuilder two;
    two.line(100, 100, "D").line(80, 140, "G").line(50, 200, "S 3");
    EXPECT_TRUE(unreadPins({}, {}, std::span{&two.page(), 1}, {}).empty());
}

TEST(UnreadPins, WhatAnnouncesPins) {
    for (auto const* line : {"Pin Configuration", "PIN CONNECTIONS (top view)", "Figure 2: Pin connection (top view)", "Connection Diagrams", "Pinning", "Pin-out", "引脚排列",
                             "3. 管脚定义", "Расположение выводов"}) {
        EXPECT_TRUE(announcesPins(line)) << line;
    }
    for (auto const* line :
         {"Pinhole inspection of the diagram", "The pin functions are described below.", "Block diagram", "Input current of a pin", "PIN 4. NO CONNECTION", "引脚"})
        EXPECT_FALSE(announcesPins(line)) << line;
    PageBuilder contents;
    contents.line(50, 100, "Pin configuration 3");
    EXPECT_TRUE(pinAnnouncements(contents.page()).empty()) << "a list of contents";
}

}  // namespace
