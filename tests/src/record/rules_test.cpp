#include "record/rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "record/merge.h"
#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;

TEST(MayDecide, EachRule) {
    struct Case {
        char finding;
        Disposition disposition;
        bool evidence;
        char const* refused;  // a part of the message; null: allowed
    };
    Case const cases[] = {
        {'1', Disposition::Accepted, false, nullptr},
        {'1', Disposition::Rejected, false, nullptr},
        {'2', Disposition::Accepted, false, "level 4"},
        {'2', Disposition::AcceptedWithCondition, false, "level 4"},
        {'2', Disposition::NotApplicable, false, "level 4"},
        {'2', Disposition::Accepted, true, nullptr},
        {'2', Disposition::Rejected, false, nullptr},
        {'2', Disposition::BenchTest, false, nullptr},
        {'2', Disposition::SupplierStatement, false, nullptr},
        {'2', Disposition::Open, false, nullptr},
        {'3', Disposition::Accepted, false, "typical value only"},
        {'3', Disposition::Accepted, true, "typical value only"},
        {'3', Disposition::AcceptedWithCondition, false, nullptr},
        {'3', Disposition::BenchTest, false, nullptr},
        {'4', Disposition::Accepted, false, nullptr},
        {'6', Disposition::Accepted, false, nullptr},
        {'7', Disposition::Accepted, false, nullptr},
    };
    auto const lines = stateOf(sampleRecord()).lines;
    for (auto const& [finding, disposition, withEvidence, refused] : cases) {
        auto decided = decision(finding, disposition);
        if (withEvidence) decided.evidence = {evidence()};
        auto const allowed = mayDecide(lines[*lineOf(lines, id(finding))], decided);
        SCOPED_TRACE(std::string(1, finding) + " " + std::string(nameOf(disposition)));
        if (refused == nullptr) {
            EXPECT_TRUE(allowed) << allowed.error().message;
        } else {
            ASSERT_FALSE(allowed);
            EXPECT_THAT(allowed.error().message, HasSubstr(refused));
        }
    }
}

TEST(MayDecide, ReasonAndConditionAreRequired) {
    auto const lines = stateOf(sampleRecord()).lines;
    for (std::string const reason : {"", "  ", "\t"}) {
        EXPECT_FALSE(mayDecide(lines[0], decision('1', Disposition::Accepted, reason)));
        EXPECT_FALSE(mayDecide(lines[0], decision('1', Disposition::Open, reason)));
    }
    auto decided = decision('1', Disposition::AcceptedWithCondition);
    decided.condition = " ";
    EXPECT_FALSE(mayDecide(lines[0], decided));
}

TEST(MaySign, ApproverIsAnotherPersonAndNothingIsOpen) {
    auto const open = sampleRecord();
    EXPECT_TRUE(maySign(open, stateOf(open), Role::Author, ashdown().person()));
    EXPECT_TRUE(maySign(open, stateOf(open), Role::Reviewer, belmonte().person()));
    auto const early = maySign(open, stateOf(open), Role::Approver, corvin().person());
    ASSERT_FALSE(early);
    EXPECT_THAT(early.error().message, HasSubstr("5 lines are open"));

    auto const closed = closedRecord();
    EXPECT_TRUE(maySign(closed, stateOf(closed), Role::Approver, corvin().person()));
    EXPECT_FALSE(maySign(closed, stateOf(closed), Role::Approver, ashdown().person()));
    EXPECT_FALSE(maySign(closed, stateOf(closed), Role::Approver, std::move(*SigningKey::create("R. Ashdown")).person()));
    auto const second = with(closed, Body{Signed{Role::Author, ""}}, at(20, corvin()));
    EXPECT_FALSE(maySign(second, stateOf(second), Role::Approver, corvin().person()));
}

TEST(MaySign, WaitingLinesKeepTheApproverFromSigning) {
    for (auto const disposition : {Disposition::BenchTest, Disposition::SupplierStatement, Disposition::Open}) {
        auto const record = with(closedRecord(), Body{decision('6', disposition)}, at(20, ashdown()));
        EXPECT_FALSE(maySign(record, stateOf(record), Role::Approver, corvin().person()));
    }
}

TEST(MaySupersede, NeedsAReasonAndAnotherRecord) {
    auto const record = sampleRecord();
    auto superseded = supersededBy("S-18");
    EXPECT_TRUE(maySupersede(record, superseded));
    superseded.root = record.root();
    EXPECT_THAT(maySupersede(record, superseded).error().message, HasSubstr("its own place"));
    superseded = supersededBy("S-18");
    superseded.reason = " ";
    EXPECT_THAT(maySupersede(record, superseded).error().message, HasSubstr("a reason is required"));
}

TEST(MayDistribute, NeedsRecipientAndWhat) {
    EXPECT_TRUE(mayDistribute(givenTo("Purchasing")));
    struct Case {
        Distributed distributed;
        char const* message;
    };
    Case const cases[] = {
        {{" ", "a copy", "", ""}, "recipient"},
        {{"Purchasing", "", "", ""}, "what was given"},
        {{"Purchasing", "a copy", "", "6 May"}, "no date"},
        {{"Purchasing", "a copy", "", "2031-02-30"}, "no date"},
    };
    for (auto const& [distributed, message] : cases) {
        auto const allowed = mayDistribute(distributed);
        ASSERT_FALSE(allowed) << message;
        EXPECT_THAT(allowed.error().message, HasSubstr(message));
    }
}

// Nothing is decided, measured or signed in a record after it was superseded, by any
// program; it may still be given to somebody, and copies are still merged.
TEST(ObeysRules, ASupersededRecordTakesNoMoreWork) {
    auto const ended = with(closedRecord(), Body{supersededBy("S-18")}, at(20, ashdown()));
    BenchResult const result{.test = "overcharge-threshold",
                             .finding = id('1'),
                             .values = {"4.27"},
                             .unit = "V",
                             .condition = {},
                             .samples = 0,
                             .lots = 0,
                             .instrument = {},
                             .note = {},
                             .evidence = {},
                             .outcome = Outcome::Within};
    for (Body const& body : {Body{decision('6', Disposition::Accepted)}, Body{result}, Body{Signed{Role::Reviewer, ""}}, Body{supersededBy("S-19")}}) {
        auto const holds = obeysRules(with(ended, body, at(21, belmonte())));
        ASSERT_FALSE(holds) << kindOf(body);
        EXPECT_THAT(holds.error().message, HasSubstr("superseded by the record S-18"));
    }
    auto const given = with(ended, Body{givenTo("Stores")}, at(21, belmonte()));
    EXPECT_TRUE(obeysRules(given));
    auto const copy = with(closedRecord(), Body{Signed{Role::Reviewer, ""}}, at(20, belmonte()));
    EXPECT_TRUE(obeysRules(copy));
}

TEST(ObeysRules, WorkOnACopyBeforeItLearnedOfTheEndIsMerged) {
    auto const shared = closedRecord();
    auto const ended = with(shared, Body{supersededBy("S-18")}, at(20, ashdown()));
    auto const worked = with(shared, Body{Signed{Role::Reviewer, ""}}, at(21, belmonte()));
    auto const merged = mergeRecords(ended, worked, at(22, corvin()));
    ASSERT_TRUE(merged) << merged.error().message;
    EXPECT_TRUE(obeysRules(*merged));
    EXPECT_EQ(stateOf(*merged).state, RecordState::Superseded);
    EXPECT_FALSE(obeysRules(with(*merged, Body{Signed{Role::Reviewer, ""}}, at(23, corvin()))));
}

// Whoever writes with a program of his own that knows no rules is found out.
TEST(ObeysRules, ForbiddenEntriesAreNamed) {
    EXPECT_TRUE(obeysRules(closedRecord()));
    struct Case {
        Body body;
        SigningKey const* key;
        char const* message;
    };
    BenchResult wrong{.test = "overcharge-threshold", .finding = id('1'), .values = {"4.31"}, .unit = "V", .condition = {}, .samples = 0, .lots = 0, .instrument = {}, .note = {}, .evidence = {}, .outcome = Outcome::Within};
    auto missing = decision('1', Disposition::Accepted);
    missing.finding = "ffffffffffff";
    Carried const carried{closedRecord().entries[1].line, {}, {}, {}};
    Case const cases[] = {
        {Body{decision('1', Disposition::Accepted, "")}, &ashdown(), "a reason is required"},
        {Body{decision('2', Disposition::Accepted)}, &ashdown(), "level 4"},
        {Body{decision('3', Disposition::Accepted)}, &ashdown(), "typical value only"},
        {Body{missing}, &ashdown(), "no finding"},
        {Body{Signed{Role::Approver, ""}}, &corvin(), "lines are open"},
        {Body{Signed{Role::Approver, ""}}, &ashdown(), "another person"},
        {Body{wrong}, &ashdown(), "judges a result otherwise"},
        {Body{carried}, &ashdown(), "follows no other"},
        {Body{Superseded{"S-18", "", std::string(64, 'c'), std::string(64, 'd'), ""}}, &ashdown(), "a reason is required"},
        {Body{Distributed{"", "a copy", "", ""}}, &ashdown(), "needs its recipient"},
    };
    for (auto const& [body, key, message] : cases) {
        auto const record = with(sampleRecord(), body, at(1, *key));
        auto const holds = obeysRules(record);
        ASSERT_FALSE(holds) << message;
        EXPECT_THAT(holds.error().message, HasSubstr(message));
        EXPECT_THAT(holds.error().message, HasSubstr("line 2"));
    }
}

}  // namespace
}  // namespace standin::record
