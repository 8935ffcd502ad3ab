// Records that earlier versions wrote stay readable, byte for byte. The files in
// tests/golden/record/ are never made anew: a new form gets a new file beside them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "model/file.h"
#include "record/record_html.h"
#include "record/record_text.h"
#include "record/state.h"
#include "record/store.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;

std::string const kFolder = STANDIN_SOURCE "/tests/golden/record/";

TEST(GoldenRecord, OfVersion010HoldsAndSaysTheSame) {
    auto const path = kFolder + "version-0.1.0.record";
    auto const record = loadRecord(path);
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(toText(*record), *model::readFile(path, kLongestRecord));
    EXPECT_EQ(record->opened().identification.number, "S-17");
    EXPECT_EQ(record->opened().method.program, "0.1.0");

    auto const overview = stateOf(*record);
    EXPECT_TRUE(overview.open.empty());
    EXPECT_EQ(overview.state, RecordState::Rejected);
    int hazards = 0;
    for (auto const& line : overview.lines) hazards += line.severity == model::Severity::Hazard ? 1 : 0;
    EXPECT_GT(hazards, 0);
    int kinds[6] = {};
    for (auto const& entry : record->entries) ++kinds[entry.body.index()];
    for (std::size_t kind : {0U, 1U, 3U, 4U, 5U}) EXPECT_GT(kinds[kind], 0) << "no entry of kind " << kind;

    EXPECT_THAT(recordText(*record), HasSubstr("R. Ashdown"));
    EXPECT_THAT(recordHtml(*record), HasSubstr("Record: rejected"));
}

TEST(GoldenRecord, ASupersededOneHoldsAndSaysWhoHasToBeTold) {
    auto const path = kFolder + "version-0.1.0-superseded.record";
    auto const record = loadRecord(path);
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(toText(*record), *model::readFile(path, kLongestRecord));
    auto const overview = stateOf(*record);
    EXPECT_EQ(overview.state, RecordState::Superseded);
    EXPECT_EQ(overview.distributions.size(), 3U);
    EXPECT_EQ(overview.notTold, std::vector<std::string>{"Incoming inspection"});
    EXPECT_THAT(recordHtml(*record), HasSubstr("by the record S-21"));
}

// Results held against what the cell asks for, which stands beside what is printed.
TEST(GoldenRecord, OneWithTheLimitsOfACellHolds) {
    auto const path = kFolder + "version-0.1.0-cell.record";
    auto const record = loadRecord(path);
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(toText(*record), *model::readFile(path, kLongestRecord));
    auto const& outside = std::get<BenchResult>(record->entries[1].body);
    EXPECT_EQ(outside.check, "short-energy");
    EXPECT_EQ(outside.outcome, Outcome::Outside);
    auto const& within = std::get<BenchResult>(record->entries[2].body);
    EXPECT_EQ(within.check, "zero-volt-inhibit");
    EXPECT_EQ(within.outcome, Outcome::Within);
    EXPECT_THAT(recordHtml(*record), HasSubstr("max 0.06 J (cell and circuit)"));
}

TEST(GoldenRecord, AFollowerOfVersion010Holds) {
    auto const record = loadRecord(kFolder + "version-0.1.0-next.record");
    ASSERT_TRUE(record) << record.error().message;
    ASSERT_TRUE(record->opened().predecessor);
    int carried = 0;
    for (auto const& entry : record->entries) carried += std::holds_alternative<Carried>(entry.body) ? 1 : 0;
    EXPECT_GT(carried, 0);
}

}  // namespace
}  // namespace standin::record
