#include "record/merge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "record/rules.h"
#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::ElementsAre;
using ::testing::SizeIs;
using ::testing::UnorderedElementsAre;

Line const& lineFor(Overview const& overview, char digit) { return overview.lines[*lineOf(overview.lines, id(digit))]; }

TEST(Merge, NamesBothHeadsAndKeepsEverything) {
    auto const a = with(sampleRecord(), Body{decision('6', Disposition::Accepted)}, at(1, ashdown()));
    auto const root = Record{{a.entries.front()}, {}};
    auto const b = with(root, Body{decision('1', Disposition::BenchTest)}, at(2, belmonte()));
    auto const merged = mergeRecords(a, b, at(3, corvin()));
    ASSERT_TRUE(merged) << merged.error().message;
    ASSERT_THAT(merged->entries, SizeIs(4));
    EXPECT_THAT(merged->head().parents, UnorderedElementsAre(a.head().hash, b.head().hash));
    EXPECT_EQ(merged->head().sequence, 3);
    EXPECT_TRUE(std::get<Merged>(merged->head().body).conflicts.empty());
    auto const again = parseRecord(toText(*merged));
    ASSERT_TRUE(again) << again.error().message;
    EXPECT_TRUE(obeysRules(*again));
    auto const overview = stateOf(*again);
    EXPECT_EQ(lineFor(overview, '6').standing, Standing::Closed);
    EXPECT_EQ(lineFor(overview, '1').standing, Standing::Waiting);
    EXPECT_EQ(mergeRecords(b, a, at(3, corvin()))->head().parents, merged->head().parents);
}

TEST(Merge, DifferentDecisionsAreBothKeptAndTheFindingIsOpen) {
    auto const start = with(sampleRecord(), Body{decision('6', Disposition::Accepted)}, at(1, ashdown()));
    auto const a = with(start, Body{decision('6', Disposition::NotApplicable)}, at(2, ashdown()));
    auto const b = with(start, Body{decision('6', Disposition::Rejected)}, at(2, belmonte()));
    auto const merged = *mergeRecords(a, b, at(3, corvin()));
    EXPECT_THAT(std::get<Merged>(merged.head().body).conflicts, ElementsAre(id('6')));
    auto const overview = stateOf(merged);
    EXPECT_EQ(lineFor(overview, '6').standing, Standing::Open);
    EXPECT_TRUE(lineFor(overview, '6').conflict);
    EXPECT_THAT(lineFor(overview, '6').decisions, SizeIs(3));
    auto const decided = with(merged, Body{decision('6', Disposition::Accepted)}, at(4, ashdown()));
    EXPECT_EQ(lineFor(stateOf(decided), '6').standing, Standing::Closed);
    EXPECT_TRUE(obeysRules(*parseRecord(toText(decided))));
}

// Each of two people decided the same on his own copy: that is two persons.
TEST(Merge, EqualDecisionsOfTwoPersonsCount) {
    auto const start = sampleRecord();
    auto const a = with(start, Body{decision('1', Disposition::Rejected)}, at(1, ashdown()));
    auto const b = with(start, Body{decision('1', Disposition::Rejected)}, at(1, belmonte()));
    auto const merged = *mergeRecords(a, b, at(2, corvin()));
    EXPECT_EQ(lineFor(stateOf(merged), '1').standing, Standing::Rejected);
}

TEST(Merge, AnApprovalDoesNotCoverWhatTheOtherCopyEntered) {
    auto const closed = closedRecord();
    auto const a = with(closed, Body{Signed{Role::Approver, ""}}, at(20, corvin()));
    auto const b = with(closed, Body{decision('6', Disposition::BenchTest)}, at(20, ashdown()));
    auto const merged = *mergeRecords(a, b, at(21, ashdown()));
    auto const overview = stateOf(merged);
    EXPECT_EQ(overview.state, RecordState::InReview);
    EXPECT_TRUE(overview.signatures.front().lapsed);
    EXPECT_TRUE(obeysRules(merged));
}

TEST(Merge, ACopyThatOnlyGrewIsTheResult) {
    auto const a = sampleRecord();
    auto const b = with(a, Body{decision('6', Disposition::Accepted)}, at(1, ashdown()));
    EXPECT_EQ(toText(*mergeRecords(a, b, at(2, corvin()))), toText(b));
    EXPECT_EQ(toText(*mergeRecords(b, a, at(2, corvin()))), toText(b));
}

TEST(Merge, RecordsOfAnotherBeginningAreRefused) {
    auto const other = *openRecord(sampleOpened(), at(1, belmonte()));
    EXPECT_FALSE(mergeRecords(sampleRecord(), other, at(2, corvin())));
}

TEST(Merge, ConflictsThatAreNotThereAreNoticed) {
    auto const start = sampleRecord();
    auto const a = with(start, Body{decision('6', Disposition::Accepted)}, at(1, ashdown()));
    auto const b = with(start, Body{decision('6', Disposition::Rejected)}, at(1, belmonte()));
    auto both = a;
    both.entries.push_back(b.head());
    auto entry = signedEntry({{a.head().hash, b.head().hash}, 3, "2031-05-04T10:00:00Z", Body{Merged{{}}}}, corvin());
    auto const hidden = *withEntry(both, *entry, corvin());
    ASSERT_TRUE(parseRecord(toText(hidden)));
    EXPECT_FALSE(obeysRules(hidden));
}

}  // namespace
}  // namespace standin::record
