#include "record/changes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "record/carry.h"
#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;

TEST(WithDecision, AsksTheRulesAndNamesTheLineInFull) {
    auto short4 = decision('4', Disposition::Accepted);
    short4.finding = "5555";  // the consequence belongs to the line of 4
    auto const decided = withDecision(sampleRecord(), short4, Stance::Own, at(1, ashdown()));
    ASSERT_TRUE(decided) << decided.error().message;
    ASSERT_EQ(decided->entries.size(), 2U);
    EXPECT_EQ(decisionIn(decided->head())->finding, id('4'));
    auto const refused = withDecision(sampleRecord(), decision('2', Disposition::Accepted), Stance::Own, at(1, ashdown()));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message, HasSubstr("level 4"));
}

TEST(WithDecision, ConfirmsWhatIsInForceWithItsConditionAndItsOwnReason) {
    Decided agreed;
    agreed.finding = id('1');
    agreed.reason = "Agreed.";
    agreed.evidence = {evidence()};
    auto const nothing = withDecision(sampleRecord(), agreed, Stance::Confirm, at(1, belmonte()));
    ASSERT_FALSE(nothing);
    EXPECT_THAT(nothing.error().message, HasSubstr("no decision to confirm"));
    auto first = withDecision(sampleRecord(), decision('1', Disposition::AcceptedWithCondition), Stance::Own, at(1, ashdown()));
    ASSERT_TRUE(first);
    auto const second = withDecision(*std::move(first), agreed, Stance::Confirm, at(2, belmonte()));
    ASSERT_TRUE(second) << second.error().message;
    auto const& confirmed = *decisionIn(second->head());
    EXPECT_EQ(confirmed.disposition, Disposition::AcceptedWithCondition);
    EXPECT_EQ(confirmed.condition, decision('1', Disposition::AcceptedWithCondition).condition);
    EXPECT_EQ(confirmed.reason, "Agreed.");
    EXPECT_EQ(confirmed.evidence, std::vector{evidence()});
    EXPECT_EQ(stateOf(*second).lines[0].standing, Standing::Closed);
}

TEST(WithSignature, AnApproverIsRefusedWhileLinesAreOpen) {
    ASSERT_TRUE(withSignature(sampleRecord(), Role::Author, "", at(1, ashdown())));
    auto const refused = withSignature(sampleRecord(), Role::Approver, "", at(1, belmonte()));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message, HasSubstr("open"));
}

TEST(WithResult, JudgesAndFindsItsFindingByFirstDigits) {
    BenchResult result;
    result.test = "overcharge-threshold";
    result.finding = "1111";
    result.values = {"4.27"};
    result.unit = "V";
    auto const entered = withResult(sampleRecord(), result, at(1, ashdown()));
    ASSERT_TRUE(entered) << entered.error().message;
    auto const& body = std::get<BenchResult>(entered->head().body);
    EXPECT_EQ(body.finding, id('1'));
    EXPECT_EQ(body.outcome, Outcome::Within);
}

TEST(WithSupersession, NamesTheOtherRecordAndEndsThisOne) {
    auto opened = sampleOpened();
    opened.identification.number = "S-18";
    auto const next = with(*openRecord(opened, at(30, ashdown())), Body{decision('1', Disposition::BenchTest)}, at(31, ashdown()));
    auto const ended = withSupersession(closedRecord(), next, "A new revision of the candidate's sheet.", at(40, ashdown()));
    ASSERT_TRUE(ended) << ended.error().message;
    Superseded const expected{"S-18", "Second source of the protection part", next.root(), next.head().hash, "A new revision of the candidate's sheet."};
    EXPECT_EQ(std::get<Superseded>(ended->head().body), expected);
    BenchResult result;
    result.test = "overcharge-threshold";
    result.values = {"4.27"};
    result.unit = "V";
    EXPECT_THAT(withDecision(*ended, decision('6', Disposition::Accepted), Stance::Own, at(41, ashdown())).error().message, HasSubstr("superseded by the record S-18"));
    EXPECT_THAT(withResult(*ended, result, at(41, ashdown())).error().message, HasSubstr("superseded"));
    EXPECT_THAT(openFrom(*ended, sampleOpened(), at(42, corvin())).error().message, HasSubstr("superseded by the record S-18")) << "its decisions go on in that one";
    EXPECT_THAT(withSignature(*ended, Role::Reviewer, "", at(41, ashdown())).error().message, HasSubstr("superseded"));
    EXPECT_THAT(withSupersession(*ended, next, "Once more.", at(41, ashdown())).error().message, HasSubstr("superseded"));
    EXPECT_TRUE(withDistribution(*ended, givenTo("Stores"), at(41, ashdown())));
}

TEST(WithSupersession, ARecordThatIsSupersededTakesNoPlace) {
    auto const gone = with(sampleRecord(), Body{supersededBy("S-19")}, at(1, ashdown()));
    auto opened = sampleOpened();
    opened.identification.number = "S-18";
    auto const refused = withSupersession(*openRecord(opened, at(0, ashdown())), gone, "Why not.", at(2, ashdown()));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message, HasSubstr("superseded itself"));
    EXPECT_FALSE(withSupersession(sampleRecord(), sampleRecord(), "", at(2, ashdown())));
}

TEST(WithDistribution, AsksTheRules) {
    auto const given = withDistribution(sampleRecord(), givenTo("Purchasing"), at(1, ashdown()));
    ASSERT_TRUE(given);
    EXPECT_EQ(std::get<Distributed>(given->head().body), givenTo("Purchasing"));
    EXPECT_FALSE(withDistribution(sampleRecord(), givenTo(""), at(1, ashdown())));
}

}  // namespace
}  // namespace standin::record
