#include "record/changes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

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

}  // namespace
}  // namespace standin::record
