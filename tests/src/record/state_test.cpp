#include "record/state.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::SizeIs;

Line const& lineFor(Overview const& overview, char digit) { return overview.lines[*lineOf(overview.lines, id(digit))]; }

TEST(State, LinesAreFindingsWithWhatFollows) {
    auto const overview = stateOf(sampleRecord());
    ASSERT_THAT(overview.lines, SizeIs(6));
    auto const& line = lineFor(overview, '4');
    EXPECT_THAT(line.consequences, ElementsAre(id('5')));
    EXPECT_EQ(line.severity, model::Severity::Hazard);  // as grave as its gravest
    EXPECT_EQ(line.level, 3);
    EXPECT_EQ(&lineFor(overview, '5'), &line);
    EXPECT_TRUE(lineFor(overview, '3').typicalOnly);
    EXPECT_FALSE(lineFor(overview, '1').typicalOnly);
    EXPECT_FALSE(lineFor(overview, '7').mustClose);
    EXPECT_THAT(overview.open, SizeIs(5));
    EXPECT_EQ(overview.state, RecordState::Draft);
}

struct Step {
    SigningKey const* key;
    Disposition disposition;
};

TEST(State, HowDecisionsStand) {
    struct Case {
        char finding;
        std::vector<Step> steps;
        Standing standing;
    };
    Case const cases[] = {
        {'1', {}, Standing::Open},
        {'6', {{&ashdown(), Disposition::Accepted}}, Standing::Closed},
        {'6', {{&ashdown(), Disposition::Rejected}}, Standing::Rejected},
        {'6', {{&ashdown(), Disposition::BenchTest}}, Standing::Waiting},
        {'6', {{&ashdown(), Disposition::SupplierStatement}}, Standing::Waiting},
        {'6', {{&ashdown(), Disposition::Accepted}, {&ashdown(), Disposition::Open}}, Standing::Open},
        {'1', {{&ashdown(), Disposition::Accepted}}, Standing::SecondPerson},
        {'1', {{&ashdown(), Disposition::Accepted}, {&ashdown(), Disposition::Accepted}}, Standing::SecondPerson},
        {'1', {{&ashdown(), Disposition::Accepted}, {&belmonte(), Disposition::Accepted}}, Standing::Closed},
        {'1', {{&ashdown(), Disposition::Accepted}, {&belmonte(), Disposition::NotApplicable}}, Standing::SecondPerson},
        {'1', {{&ashdown(), Disposition::Accepted}, {&belmonte(), Disposition::Rejected}, {&corvin(), Disposition::Rejected}}, Standing::Rejected},
        {'1', {{&ashdown(), Disposition::Accepted}, {&belmonte(), Disposition::BenchTest}, {&belmonte(), Disposition::Accepted}}, Standing::SecondPerson},
        {'4', {{&ashdown(), Disposition::Accepted}}, Standing::SecondPerson},  // for its consequence
    };
    for (auto const& [finding, steps, standing] : cases) {
        auto record = sampleRecord();
        int minute = 1;
        for (auto const& step : steps) record = with(std::move(record), Body{decision(finding, step.disposition)}, at(minute++, *step.key));
        auto const overview = stateOf(record);
        EXPECT_EQ(lineFor(overview, finding).standing, standing) << finding << " after " << steps.size();
        EXPECT_THAT(lineFor(overview, finding).decisions, SizeIs(steps.size()));
    }
}

// Two keys in one person's name are one person.
TEST(State, TwoKeysOfOneNameAreNotTwoPersons) {
    auto const again = std::move(*SigningKey::create("R. Ashdown"));
    auto record = with(sampleRecord(), Body{decision('1', Disposition::Accepted)}, at(1, ashdown()));
    record = with(std::move(record), Body{decision('1', Disposition::Accepted)}, at(2, again));
    EXPECT_EQ(lineFor(stateOf(record), '1').standing, Standing::SecondPerson);
}

TEST(State, AnotherConditionIsAnotherDecision) {
    auto record = with(sampleRecord(), Body{decision('1', Disposition::AcceptedWithCondition)}, at(1, ashdown()));
    auto other = decision('1', Disposition::AcceptedWithCondition);
    other.condition = "Charger firmware 4.";
    record = with(std::move(record), Body{other}, at(2, belmonte()));
    EXPECT_EQ(lineFor(stateOf(record), '1').standing, Standing::SecondPerson);
}

TEST(State, AResultOutsideTheLimitsOpensWhatWasAccepted) {
    auto record = sampleRecord();
    for (auto const* key : {&ashdown(), &belmonte()}) record = with(std::move(record), Body{decision('1', Disposition::Accepted)}, at(1, *key));
    ASSERT_EQ(lineFor(stateOf(record), '1').standing, Standing::Closed);
    BenchResult result;
    result.test = "overcharge-threshold";
    result.finding = id('1');
    result.values = {"4.31"};
    result.unit = "V";
    result.outcome = Outcome::Outside;
    record = with(std::move(record), Body{result}, at(2, ashdown()));
    EXPECT_EQ(lineFor(stateOf(record), '1').standing, Standing::Open);
    EXPECT_THAT(lineFor(stateOf(record), '1').why, HasSubstr("outside the limits"));
    result.outcome = Outcome::Within;
    record = with(std::move(record), Body{result}, at(3, ashdown()));
    EXPECT_EQ(lineFor(stateOf(record), '1').standing, Standing::Closed);
}

TEST(State, ApprovalHoldsUntilSomethingIsEntered) {
    auto record = closedRecord();
    EXPECT_TRUE(stateOf(record).open.empty());
    EXPECT_EQ(stateOf(record).state, RecordState::InReview);
    record = with(std::move(record), Body{Signed{Role::Approver, ""}}, at(20, corvin()));
    EXPECT_EQ(stateOf(record).state, RecordState::ApprovedWithConditions);
    record = with(std::move(record), Body{Signed{Role::Reviewer, ""}}, at(21, belmonte()));
    EXPECT_EQ(stateOf(record).state, RecordState::ApprovedWithConditions);
    record = with(std::move(record), Body{decision('6', Disposition::Accepted)}, at(22, ashdown()));
    auto const overview = stateOf(record);
    EXPECT_EQ(overview.state, RecordState::InReview);
    EXPECT_TRUE(overview.signatures[0].lapsed);
}

TEST(State, ARejectedLineMakesTheRecordRejected) {
    auto record = sampleRecord();
    for (auto const* key : {&ashdown(), &belmonte()}) record = with(std::move(record), Body{decision('2', Disposition::Rejected)}, at(1, *key));
    record = with(std::move(record), Body{Signed{Role::Approver, ""}}, at(2, corvin()));
    EXPECT_EQ(stateOf(record).state, RecordState::Rejected);
}

TEST(State, FindingsAreNamedByTheirFirstDigits) {
    auto const lines = stateOf(sampleRecord()).lines;
    EXPECT_EQ(*lineOf(lines, "1111"), 0U);
    EXPECT_EQ(*lineOf(lines, "555555"), 3U);
    EXPECT_FALSE(lineOf(lines, "111"));
    EXPECT_FALSE(lineOf(lines, "abcd"));
    auto twins = lines;
    twins[1].finding = "111122223333";
    EXPECT_THAT(lineOf(twins, "1111").error().message, HasSubstr("several"));
}

// What was approved stays signed; the record as a whole is at its end.
TEST(State, ASupersededRecordIsThatWhateverWasSigned) {
    auto record = with(closedRecord(), Body{Signed{Role::Approver, ""}}, at(20, corvin()));
    record = with(std::move(record), Body{givenTo("Purchasing")}, at(21, ashdown()));
    EXPECT_EQ(stateOf(record).state, RecordState::ApprovedWithConditions);
    record = with(std::move(record), Body{supersededBy("S-18")}, at(22, ashdown()));
    auto const overview = stateOf(record);
    EXPECT_EQ(overview.state, RecordState::Superseded);
    EXPECT_EQ(nameOf(overview.state), "superseded");
    EXPECT_THAT(overview.supersessions, ElementsAre(record.entries.size() - 1));
    ASSERT_THAT(overview.signatures, SizeIs(1));
    EXPECT_FALSE(overview.signatures[0].lapsed);
}

TEST(State, WhoWasGivenItHasToLearnOfItsEnd) {
    auto record = closedRecord();
    for (auto const* to : {"Purchasing", "Stores", "Purchasing"}) record = with(std::move(record), Body{givenTo(to)}, at(21, ashdown()));
    EXPECT_THAT(stateOf(record).distributions, SizeIs(3));
    EXPECT_THAT(stateOf(record).notTold, SizeIs(0));
    record = with(std::move(record), Body{supersededBy("S-18")}, at(22, ashdown()));
    EXPECT_THAT(stateOf(record).notTold, ElementsAre("Purchasing", "Stores"));
    record = with(std::move(record), Body{givenTo("Purchasing")}, at(23, ashdown()));
    EXPECT_THAT(stateOf(record).notTold, ElementsAre("Stores"));
    record = with(std::move(record), Body{givenTo("Stores")}, at(24, ashdown()));
    EXPECT_THAT(stateOf(record).notTold, SizeIs(0));
}

}  // namespace
}  // namespace standin::record
