#include "compare/pin_handling.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

constexpr auto kNone = HandlingChange::None;
constexpr auto kDiffers = HandlingChange::Differs;
constexpr auto kOtherNode = HandlingChange::OtherNode;

struct Case {
    char const *reference, *candidate;
    HandlingChange change;
};

constexpr Case kCases[] = {
    {"TEST | Test pin. Tie to VSS.", "TEST | For tests of the maker; leave open", kDiffers},
    {"NC | May be connected to VSS", "NC | Do not connect", kDiffers},
    {"NC | May be connected to VSS", "NC | Connect to VSS or leave open", kNone},
    {"NC | No connection inside", "NC | Not connected", kNone},
    {"NC | No connection inside", "NC | Leave open", kNone},  // the one says nothing of the board
    {"EP | Exposed pad, connect to VSS", "Exposed pad | Tied to VM on the board", kOtherNode},
    {"EP | Exposed pad, connect to GND", "PAD | Solder to VSS", kNone},
    {"EP | Exposed pad, connect to VSS", "EP | Exposed pad, leave open", kDiffers},
    {"EP | Exposed pad, tie to ground", "EP | Exposed pad, tie to VDD", kOtherNode},
    {"NC | Connect to VSS or VDD", "NC | Connect to VDD", kDiffers},
    {"NC | Do not leave open", "NC | Leave open", kDiffers},
    {"NC | Never tie to VSS", "NC | Tie to VSS", kDiffers},
    {"NC | Connect to VSS; do not leave open", "NC | Tied to GND on the board", kNone},
    {"CTL | Control input, active high", "CTL | Enables the lamp (active-low)", kDiffers},
    {"CTL | Control input, active high", "CTL | Control input", kNone},
    {"CO | Output for the lamp, N-channel open drain", "CO | CMOS output for the lamp", kDiffers},
    {"CO | Output for the lamp", "CO | CMOS output for the lamp", kNone},
    {"VDD | Supply, tied to the cell over 330 Ω", "VDD | Leave no wire open; connected to the lamp", kNone},  // a function of its own
    {"NC | 悬空", "NC | 接到VSS", kDiffers},
    {"NC | ", "NC", kNone},
    {"", "", kNone},
};

TEST(PinHandling, WhatTheBoardHasToDo) {
    for (auto const& [reference, candidate, change] : kCases) {
        EXPECT_EQ(relateHandling(reference, candidate), change) << reference << " / " << candidate;
        EXPECT_EQ(relateHandling(candidate, reference), change) << "exchanged: " << reference;
        EXPECT_EQ(relateHandling(reference, reference), kNone) << reference;
    }
}

TEST(PinHandling, PadsAreNoLeads) {
    for (char const* pad : {"EP", "Exposed Pad", "thermal-pad", "Tab"}) EXPECT_TRUE(isPad(pad)) << pad;
    for (char const* lead : {"VSS", "NC", "PADDLE", ""}) EXPECT_FALSE(isPad(lead)) << lead;
}

}  // namespace
}  // namespace standin::compare
