#include "compare/telling_words.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(TellingWords, AreThoseThatNotEveryRowOfTheParameterHas) {
    TellingWords words;
    words.add(1, "pulse-width", "pulse width\nVCC = 2 V\nCK HIGH or LOW");
    words.add(2, "pulse-width", "pulse width\nVCC = 2 V\nRST LOW");
    words.add(3, "hold-time", "hold time\nVCC = 2 V\nD to CK");
    EXPECT_EQ(words.telling(1).size(), 3U);  // CK, HIGH, or
    EXPECT_EQ(words.telling(2).size(), 1U);  // RST
    EXPECT_TRUE(words.telling(3).empty());   // the only one of its kin
    EXPECT_TRUE(words.telling(4).empty());
}

// A text that is printed once for several rows: its words are those of each of them.
TEST(TellingWords, AreThoseOfTheCommonTextToo) {
    TellingWords words;
    words.add(1, "pulse-width", "pulse width", "CK HIGH, fast mode");
    words.add(2, "pulse-width", "pulse width", "CK HIGH, fast mode");
    words.add(3, "pulse-width", "pulse width HIGH", "RST");
    TellingWords joined;
    joined.add(1, "pulse-width", "pulse width CK HIGH, fast mode");
    joined.add(3, "pulse-width", "pulse width HIGH RST");
    EXPECT_EQ(words.of(1), joined.of(1));
    EXPECT_EQ(words.of(2), joined.of(1));
    EXPECT_EQ(words.of(3), joined.of(3));
    EXPECT_EQ(words.telling(2).size(), 3U);  // CK, fast, mode
    EXPECT_EQ(words.telling(3).size(), 1U);  // RST
}

TEST(TellingWords, MeetWhereverTheyStand) {
    TellingWords reference;
    reference.add(1, "pulse-width", "pulse width\n\nCK HIGH or LOW");
    reference.add(2, "pulse-width", "pulse width\n\nRST LOW");
    TellingWords candidate;
    candidate.add(1, "pulse-width", "CK pulse width HIGH or LOW");
    candidate.add(2, "pulse-width", "master reset RST pulse width LOW");
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 1), 1.0);
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 2), 0.0);
    EXPECT_EQ(tellingLikeness(reference, 2, candidate, 1), 0.0);
    EXPECT_GT(tellingLikeness(reference, 2, candidate, 2), 0.4);
}

// Makers write "clocked" and "clock", and call the clock of a shift register SCK or SHCP.
TEST(TellingWords, MeetInAnyFormAndUnderAnyNameOfASignal) {
    TellingWords reference;
    reference.add(1, "setup-time", "from SER to SCK, decode out lines");
    reference.add(2, "setup-time", "from SCK to RCK, carry out line");
    TellingWords candidate;
    candidate.add(1, "setup-time", "setup", "SHCP to STCP, carry output");
    candidate.add(2, "setup-time", "setup", "DS to SHCP, decoded output");
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 2), 1.0);
    EXPECT_EQ(tellingLikeness(reference, 2, candidate, 1), 1.0);
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 1), 0.0);
}

// What no row of the other sheet says is that maker's way of writing.
TEST(TellingWords, OfOneSheetAloneTellNothing) {
    TellingWords reference;
    reference.add(1, "theta-ja", "free air operation");
    reference.add(2, "theta-ja", "QX17S mounted on a board with the least mounting pad");
    TellingWords candidate;
    candidate.add(1, "theta-ja", "ZQ78 housing, in free air");
    candidate.add(2, "theta-ja", "ZQ404 housing, pcb mounted, smallest footprint");
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 1), 1.0);
    EXPECT_GT(tellingLikeness(reference, 2, candidate, 2), 0.9);
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 2), 0.0);
}

// Quantities are compared as values.
TEST(TellingWords, AreNoSymbolsAndUnitsOfQuantities) {
    TellingWords words;
    words.add(1, "psrr", "f = 120 Hz, without CADJ");
    words.add(2, "psrr", "CADJ = 10 µF");
    EXPECT_EQ(words.telling(1).size(), 2U);  // without, CADJ
    EXPECT_TRUE(words.telling(2).empty());
}

TEST(TellingWords, TellNothingWhereEachSheetHasOneRow) {
    TellingWords reference;
    reference.add(1, "delay", "delay time");
    TellingWords candidate;
    candidate.add(1, "delay", "response delay");
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 1), 0.0);
}

}  // namespace
}  // namespace standin::compare
