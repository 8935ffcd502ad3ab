#include "record/carry.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "record/rules.h"
#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

Line const& lineFor(Overview const& overview, char digit) { return overview.lines[*lineOf(overview.lines, id(digit))]; }

// The candidate's next revision: finding 1 graver, 4 gone, 6 as before.
Opened nextRevision() {
    auto opened = sampleOpened();
    opened.comparison.candidate.sha256 = std::string(64, 'c');
    auto& findings = opened.comparison.findings;
    findings[0].level = 4;
    std::erase_if(findings, [](model::Finding const& finding) { return finding.id == id('4') || finding.id == id('5'); });
    return opened;
}

TEST(Carry, UnchangedFindingsKeepTheirDecisions) {
    auto const earlier = closedRecord();
    auto const made = openFrom(earlier, nextRevision(), at(30, corvin()));
    ASSERT_TRUE(made) << made.error().message;
    EXPECT_THAT(made->carried, ElementsAre(id('2'), id('3'), id('6')));
    ASSERT_THAT(made->lapsed, SizeIs(2));
    EXPECT_EQ(made->lapsed[0].finding, id('1'));
    EXPECT_EQ(made->lapsed[1].finding, id('4'));

    auto const record = parseRecord(toText(made->record));
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_TRUE(obeysRules(*record));
    EXPECT_EQ(record->opened().predecessor->head, earlier.head().hash);
    auto const overview = stateOf(*record);
    EXPECT_EQ(lineFor(overview, '1').standing, Standing::Open);
    EXPECT_EQ(lineFor(overview, '3').standing, Standing::Closed);  // two persons, as in the earlier record
    EXPECT_EQ(lineFor(overview, '6').standing, Standing::Closed);
    for (auto const index : lineFor(overview, '3').inForce) {
        auto const& entry = record->entries[index];
        ASSERT_TRUE(std::holds_alternative<Carried>(entry.body));  // visibly
        EXPECT_EQ(entry.by, corvin().person());
        EXPECT_TRUE(decidedBy(entry) == ashdown().person() || decidedBy(entry) == belmonte().person());
    }
}

TEST(Carry, ARecordMayFollowAnotherOrNone) {
    auto const earlier = closedRecord();
    auto const made = openAfter(&earlier, nextRevision(), at(30, corvin()));
    ASSERT_TRUE(made) << made.error().message;
    auto const told = toldOf(*made);
    ASSERT_THAT(told, SizeIs(5));
    EXPECT_EQ(told[0], "carried: " + id('2'));
    EXPECT_EQ(told[3], "not carried: " + id('1') + " " + made->lapsed[0].title + ": " + made->lapsed[0].why);

    auto const first = openAfter(nullptr, sampleOpened(), at(30, corvin()));
    ASSERT_TRUE(first) << first.error().message;
    EXPECT_FALSE(first->record.opened().predecessor);
    EXPECT_THAT(toldOf(*first), IsEmpty());
}

TEST(Carry, TheSameComparisonLosesNothing) {
    auto const made = openFrom(closedRecord(), sampleOpened(), at(30, corvin()));
    EXPECT_THAT(made->lapsed, IsEmpty());
    EXPECT_THAT(stateOf(made->record).open, IsEmpty());
}

TEST(Carry, TwiceCarriedIsStillTheFirstSignature) {
    auto const once = openFrom(closedRecord(), sampleOpened(), at(30, corvin()));
    auto const twice = openFrom(once->record, nextRevision(), at(40, corvin()));
    auto const overview = stateOf(twice->record);
    auto const index = lineFor(overview, '6').inForce.front();
    EXPECT_EQ(std::get<Carried>(twice->record.entries[index].body).line, closedRecord().entries.back().line);
}

// A decision that the rules would not allow on what was found now is left behind.
TEST(Carry, RulesHoldForWhatIsCarried) {
    auto opened = sampleOpened();
    auto& side = *opened.comparison.findings[0].candidate;
    side.min.clear();
    side.max.clear();
    side.typ = "4.28";
    auto const earlier = with(sampleRecord(), Body{decision('1', Disposition::Accepted)}, at(1, ashdown()));
    auto const made = openFrom(earlier, opened, at(30, corvin()));
    EXPECT_THAT(made->carried, Not(Contains(id('1'))));
    EXPECT_THAT(made->lapsed, SizeIs(1));
}

TEST(Carry, ADecisionForgedIntoACarriedEntryIsNoticed) {
    auto line = closedRecord().entries[1].line;
    line.replace(line.find("charger"), 7, "adapter");
    EXPECT_FALSE(withEntry(sampleRecord(), Body{Carried{line, {}, {}, {}}}, at(1, ashdown())));
}

TEST(LapsedIn, SaysWhatChanged) {
    EXPECT_THAT(lapsedIn(closedRecord(), sampleOpened().comparison), IsEmpty());
    EXPECT_THAT(lapsedIn(closedRecord(), nextRevision().comparison), SizeIs(2));
}

}  // namespace
}  // namespace standin::record
