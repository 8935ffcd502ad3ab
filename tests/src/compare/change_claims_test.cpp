#include "compare/change_claims.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

ChangeClaim read(std::string_view statement) {
    static ClaimReader const reader(words().historyWords(),
                                    {"1 Features", "3 Description", "6.2 Feature description", "8.5 Electrical characteristics (TA = 25 °C)", "7 Lamp driver"});
    return reader.read(statement);
}

TEST(ChangeClaims, SubjectAndValuesOfEachWayToSayThem) {
    struct Case {
        std::string_view statement;
        TokenKeys subject, from, to;
    };
    for (auto const& [statement, subject, from, to] : {
             Case{"Pulsed drain current 32 A (was 40 A).", {"pulsed", "drain", "current"}, {"40 A"}, {"32 A"}},
             Case{"Changed VQF max value from 4.24 V to 4.23 V", {"vqf"}, {"4.24 V"}, {"4.23 V"}},
             Case{"Changed lamp current 5 mA to 7 mA", {"lamp", "current"}, {"0.005 A"}, {"0.007 A"}},
             Case{"Lamp current: 7 mA instead of 5 mA", {"lamp", "current"}, {"0.005 A"}, {"0.007 A"}},
             Case{"On-resistance at VGS=4.5 V, maximum 32 mΩ (was 27 mΩ)", {"resistance", "vgs", "4.5 V"}, {"0.027 Ω"}, {"0.032 Ω"}},
             Case{"过充电检测电压由4.28 V改为4.25 V", keysOf(claimTokens("过充电检测电压")), {"4.28 V"}, {"4.25 V"}},
             Case{"Schwellenspannung von 1,2 V auf 1,4 V geändert", {"schwellenspannung"}, {"1.2 V"}, {"1.4 V"}},
             Case{"Added beam delay", {"beam", "delay"}, {}, {}},
         }) {
        auto const claim = read(statement);
        EXPECT_EQ(claim.from, from) << statement;
        EXPECT_EQ(claim.to, to) << statement;
        EXPECT_EQ(claim.subject, subject) << statement;
        EXPECT_FALSE(claim.unspecific) << statement;
    }
}

TEST(ChangeClaims, HeadingsArePlacesAndNoSubject) {
    auto const claim = read("Changed the Electrical Characteristics table");
    EXPECT_EQ(claim.places, std::vector<std::string>{titleKey("Electrical characteristics")});
    EXPECT_TRUE(claim.subject.empty());
    EXPECT_FALSE(claim.unspecific);
    EXPECT_EQ(read("Added a delay to Features").places, std::vector<std::string>{titleKey("Features")});
}

TEST(ChangeClaims, AWordThatIsAHeadingElsewhereIsNoPlace) {
    EXPECT_TRUE(read("Changed description of the QL pin").places.empty());
    EXPECT_EQ(read("Changed Feature Description section").places, std::vector<std::string>{titleKey("Feature description")});
}

TEST(ChangeClaims, AHeadingThatNamesWhatWasChangedIsItsSubject) {
    auto const claim = read("Lamp driver current 5 mA (was 7 mA)");
    EXPECT_TRUE(claim.places.empty());
    EXPECT_EQ(claim.subject, (TokenKeys{"lamp", "driver", "current"}));
    EXPECT_EQ(read("Changed current in the Lamp Driver section").subject, TokenKeys{"current"});
    EXPECT_EQ(read("Added Feature Description, Lamp Driver and Features sections").places.size(), 3U);
}

TEST(ChangeClaims, AddedAndRemovedAreTold) {
    EXPECT_EQ(read("Added Features section").change, ClaimedChange::Added);
    EXPECT_EQ(read("Beam delay removed").change, ClaimedChange::Removed);
    EXPECT_EQ(read("Changed Features").change, ClaimedChange::Changed);
}

TEST(ChangeClaims, WhatNamesNothingIsUnspecific) {
    for (std::string_view const statement : {"Spelling.", "Editorial changes", "Datasheet updated to new format", "Typing error: note on table 2", "Minor text changes", "文字修改",
                                             "redaktionelle Änderungen", "Исправлены опечатки"}) {
        EXPECT_TRUE(read(statement).unspecific) << statement;
    }
}

TEST(ChangeClaims, EditorialWordsBesideASubjectDoNotHideIt) { EXPECT_FALSE(read("New format, lamp current raised").unspecific); }

}  // namespace
}  // namespace standin::compare
