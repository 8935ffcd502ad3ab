#include "compare/drafts.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

using model::FindingKind;
using model::Relation;

model::Rect rowBox(float y) { return {50, y, 500, y + 12}; }

Draft twoSided(FindingKind kind, Rank rank, float y, std::string before, std::string after) {
    return makeDraft(kind, rank, Relation::Reworded, sideOf(1, rowBox(y), std::move(before)), sideOf(1, rowBox(y), std::move(after)));
}

TEST(Drafts, LeaveOneFindingForOnePlace) {
    std::vector<Draft> drafts{twoSided(FindingKind::Table, Rank::Table, 100, "Delay | 10 | ms", "Delay | 12 | ms"),
                              twoSided(FindingKind::Parameter, Rank::Parameter, 100, "Delay | 10 | ms", "Delay | 12 | ms"),
                              twoSided(FindingKind::Table, Rank::Table, 112, "Other | 1", "Other | 2")};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings[0].kind, FindingKind::Parameter);
    EXPECT_EQ(findings[1].kind, FindingKind::Table);
}

TEST(Drafts, ShowLeaderDotsInPlaceOfAJoint) {
    std::vector<Draft> drafts{twoSided(FindingKind::Table, Rank::Table, 100, "Delay ........ | 10 | ms", "Delay ........ | 12 | ms")};
    auto const findings = finish(drafts);
    EXPECT_EQ(findings.at(0).reference->text, "Delay ........ 10 | ms");
    EXPECT_EQ(findings.at(0).candidate->text, "Delay ........ 12 | ms");
}

TEST(Drafts, HangASentenceUnderTheFeatureItStates) {
    std::vector<Draft> drafts{twoSided(FindingKind::Wording, Rank::Wording, 100, "It is permitted.", "It is prohibited."),
                              twoSided(FindingKind::Feature, Rank::Feature, 100, "It is permitted.", "It is prohibited.")};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 2U);
    auto const& wording = findings[0].kind == FindingKind::Wording ? findings[0] : findings[1];
    auto const& feature = findings[0].kind == FindingKind::Wording ? findings[1] : findings[0];
    EXPECT_EQ(wording.consequenceOf, feature.id);
    EXPECT_TRUE(feature.consequenceOf.empty());
}

TEST(Drafts, CompleteAReadingThatSawOneSideOnly) {
    Draft only = makeDraft(FindingKind::Parameter, Rank::Parameter, Relation::OnlyReference, sideOf(1, rowBox(100), "Delay | 10 | ms"), std::nullopt);
    std::vector<Draft> drafts{twoSided(FindingKind::Table, Rank::Table, 100, "Delay | 10 | ms", "Delay | l0 | ms"), only};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].kind, FindingKind::Parameter);
    EXPECT_EQ(findings[0].relation, Relation::NotComparable);
    EXPECT_EQ(findings[0].candidate->text, "Delay | l0 | ms");
}

TEST(Drafts, LetteringAtItsPlaceIsNoPinOfTheOtherSheet) {
    Draft pin = makeDraft(FindingKind::Pin, Rank::Pin, Relation::OnlyReference, sideOf(1, rowBox(100), "4 | OUT | Output"), std::nullopt);
    std::vector<Draft> drafts{twoSided(FindingKind::Figure, Rank::Figure, 100, "OUT", "Lamp 1"), pin};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 2U);
    auto const& found = findings[0].kind == FindingKind::Pin ? findings[0] : findings[1];
    EXPECT_EQ(found.kind, FindingKind::Pin);
    EXPECT_FALSE(found.candidate);
}

TEST(Drafts, ARowOfAnotherPinStandsBesideWhatThePinSays) {
    std::vector<Draft> drafts{twoSided(FindingKind::Pin, Rank::Pin, 100, "5 | MODE2 | Chart 3", "5 | MODE2 | Chart 8"),
                              twoSided(FindingKind::Table, Rank::Table, 100, "MODE1 | 6 | in, 5 V as MODE2", "MODE2 | 5 | in")};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].reference->text, "5 | MODE2 | Chart 3 / MODE1 | 6 | in, 5 V as MODE2");
    EXPECT_EQ(findings[0].candidate->text, "5 | MODE2 | Chart 8 / MODE2 | 5 | in");
    // A line of its row leaves out what it does.
    std::vector<Draft> part{twoSided(FindingKind::Pin, Rank::Pin, 100, "5 | MODE2 | Chart 3", "5 | MODE2 | Chart 8"),
                            twoSided(FindingKind::Table, Rank::Table, 100, "MODE2 | 5 | in", "MODE2 | 5 | out")};
    absorb(part);
    EXPECT_EQ(finish(part).at(0).candidate->text, "5 | MODE2 | Chart 8 / MODE2 | 5 | out");
    // Its own row prints it all.
    std::vector<Draft> own{twoSided(FindingKind::Pin, Rank::Pin, 100, "5 | MODE2 | Chart 3", "5 | MODE2 | Chart 8"),
                           twoSided(FindingKind::Table, Rank::Table, 100, "MODE2 | 5 | in | Chart 3", "MODE2 | 5 | out | Chart 8")};
    absorb(own);
    EXPECT_EQ(finish(own).at(0).candidate->text, "MODE2 | 5 | out | Chart 8");
}

TEST(Drafts, ShowWhatTheHigherReadingDoesNot) {
    Draft parameter = twoSided(FindingKind::Parameter, Rank::Parameter, 100, "10", "10");
    std::vector<Draft> drafts{parameter, twoSided(FindingKind::Table, Rank::Table, 100, "Delay on | 10", "Delay off | 10")};
    absorb(drafts);
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].candidate->text, "Delay off | 10");
}

TEST(Drafts, KeepTextsShort) {
    std::vector<Draft> drafts{twoSided(FindingKind::Wording, Rank::Wording, 100, std::string(2000, 'a') + " 1", std::string(2000, 'a') + " 2")};
    auto const findings = finish(drafts);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_LT(findings[0].reference->text.size(), 600U);
    EXPECT_EQ(findings[0].reference->text.back(), '1');
    EXPECT_EQ(findings[0].candidate->text.back(), '2');
}

}  // namespace
}  // namespace standin::compare
