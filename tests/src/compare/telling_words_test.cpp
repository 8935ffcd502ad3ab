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

TEST(TellingWords, TellNothingWhereEachSheetHasOneRow) {
    TellingWords reference;
    reference.add(1, "delay", "delay time");
    TellingWords candidate;
    candidate.add(1, "delay", "response delay");
    EXPECT_EQ(tellingLikeness(reference, 1, candidate, 1), 0.0);
}

}  // namespace
}  // namespace standin::compare
