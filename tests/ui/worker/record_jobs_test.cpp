#include "ui/worker/record_jobs.h"

#include <fstream>

#include <gtest/gtest.h>

#include "model/comparison_json.h"
#include "ui/support/desk_test.h"
#include "ui/worker/pair_worker.h"

namespace standin::ui {
namespace {

using testing::demoRequest;

class RecordJobs : public ::testing::Test {
protected:
    void SetUp() override {
        auto const read = readAndCompare(demoRequest(), {});
        ASSERT_TRUE(read);
        pair = *read;
        ASSERT_TRUE(makeKeyFile(path("author.key"), "R. Ashdown", ""));
        ASSERT_TRUE(makeKeyFile(path("second.key"), "T. Belmonte", "larch and lime"));
    }
    [[nodiscard]] std::string path(char const* name) const { return folder.filePath(name).toStdString(); }
    [[nodiscard]] Signer author() const { return {path("author.key"), ""}; }
    [[nodiscard]] Signer second() const { return {path("second.key"), "larch and lime"}; }
    [[nodiscard]] NewRecord wanted() const { return {path("a.record"), "", {"S-17", "", "", "", "", "", {}}}; }

    QTemporaryDir folder;
    PairPointer pair;
};

TEST_F(RecordJobs, OpensWhatTheDeskShows) {
    auto const opened = openRecordOf(*pair, wanted(), author());
    ASSERT_TRUE(opened) << opened.error().message;
    EXPECT_EQ(model::toJson(opened->record->record.opened().comparison), model::toJson(pair->comparison));
    EXPECT_EQ(opened->record->record.opened().tests, pair->tests);
    EXPECT_FALSE(opened->record->record.opened().sampleRules.empty());
    EXPECT_EQ(opened->record->record.opened().identification.number, "S-17");
    EXPECT_EQ(readRecord(path("a.record"))->record->record.head().hash, opened->record->record.head().hash);
    EXPECT_FALSE(openRecordOf(*pair, wanted(), author())) << "a record is never replaced";
}

TEST_F(RecordJobs, RefusesAPairThatIsNoLongerWhatIsShown) {
    auto other = *pair;
    other.comparison.reference.sha256[0] ^= 1;
    auto const opened = openRecordOf(other, wanted(), author());
    ASSERT_FALSE(opened);
    EXPECT_NE(opened.error().message.find("read the pair again"), std::string::npos);
    EXPECT_FALSE(readRecord(path("a.record")));
}

TEST_F(RecordJobs, AWrongPassphraseEntersNothing) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    EXPECT_TRUE(signRecord(path("a.record"), record::Role::Reviewer, "", second()));
    auto const locked = signRecord(path("a.record"), record::Role::Reviewer, "", {path("second.key"), "oak"});
    ASSERT_FALSE(locked);
    EXPECT_NE(locked.error().message.find("the passphrase does not open it"), std::string::npos);
    EXPECT_EQ(locked.error().message.find("--"), std::string::npos) << "a window has no options";
    EXPECT_FALSE(signRecord(path("a.record"), record::Role::Reviewer, "", {}));
    EXPECT_EQ(readRecord(path("a.record"))->record->record.entries.size(), 2U);
}

TEST_F(RecordJobs, EvidenceIsKeptByItsHash) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    std::ofstream(path("bench.txt")) << "measured\n";
    NewDecision decision;
    decision.decided.finding = pair->comparison.findings.front().id;
    decision.decided.disposition = record::Disposition::BenchTest;
    decision.decided.reason = "Only a test tells.";
    decision.evidence = {path("bench.txt")};
    auto const decided = decideInRecord(path("a.record"), decision, author());
    ASSERT_TRUE(decided) << decided.error().message;
    auto const& evidence = record::decisionIn(decided->record->record.head())->evidence;
    ASSERT_EQ(evidence.size(), 1U);
    EXPECT_EQ(evidence.front().sha256.size(), 64U);
    decision.evidence = {path("missing.txt")};
    EXPECT_FALSE(decideInRecord(path("a.record"), decision, author()));
}

TEST_F(RecordJobs, TwoCopiesBecomeOneAgain) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    std::ofstream(path("b.record"), std::ios::binary) << std::ifstream(path("a.record"), std::ios::binary).rdbuf();
    NewDecision decision;
    decision.decided.finding = pair->comparison.findings.front().id;
    decision.decided.reason = "Said here.";
    decision.decided.disposition = record::Disposition::Rejected;
    ASSERT_TRUE(decideInRecord(path("a.record"), decision, author()));
    decision.decided.disposition = record::Disposition::BenchTest;
    ASSERT_TRUE(decideInRecord(path("b.record"), decision, second()));
    auto const merged = mergeRecordFiles(path("a.record"), path("b.record"), path("c.record"), author());
    ASSERT_TRUE(merged) << merged.error().message;
    ASSERT_EQ(merged->told.size(), 1U);
    EXPECT_NE(merged->told.front().find(decision.decided.finding), std::string::npos);
    EXPECT_EQ(merged->record->file, path("c.record"));
}

TEST_F(RecordJobs, AnotherRecordTakesThePlaceAndWhoHoldsACopyIsKnown) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    ASSERT_TRUE(distributeRecord(path("a.record"), {"Purchasing", "a copy of the record", "", ""}, author()));
    EXPECT_FALSE(distributeRecord(path("a.record"), {"", "a copy of the record", "", ""}, author()));
    auto next = wanted();
    next.file = path("b.record");
    next.identification.number = "S-18";
    ASSERT_TRUE(openRecordOf(*pair, next, author()));
    EXPECT_FALSE(supersedeRecord(path("a.record"), path("none.record"), "A new revision.", author()));
    auto const ended = supersedeRecord(path("a.record"), path("b.record"), "A new revision.", author());
    ASSERT_TRUE(ended) << ended.error().message;
    EXPECT_EQ(ended->record->overview.state, record::RecordState::Superseded);
    EXPECT_EQ(ended->record->overview.notTold, std::vector<std::string>{"Purchasing"});
    ASSERT_EQ(ended->told.size(), 1U);
    EXPECT_NE(ended->told.front().find("which is draft"), std::string::npos);
    EXPECT_FALSE(signRecord(path("a.record"), record::Role::Author, "", author()));
}

TEST_F(RecordJobs, AChangedSheetIsOpenedWithThePasswordOfThePair) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    auto const locked = std::string(STANDIN_TESTDATA) + "/features/encrypted-user-password";
    auto sheets = demoRequest();
    sheets.candidate = locked + ".pdf";
    auto const without = checkRecordFile(path("a.record"), &sheets);
    ASSERT_FALSE(without);
    EXPECT_NE(without.error().message.find("password"), std::string::npos);
    std::string password;
    std::ifstream words(locked + ".txt");
    std::getline(words, password);
    sheets.password = password;
    auto const checked = checkRecordFile(path("a.record"), &sheets);
    ASSERT_TRUE(checked) << checked.error().message;
    EXPECT_NE(checked->told.front().find("the candidate changed"), std::string::npos);
}

TEST_F(RecordJobs, ReportsAreThoseOfTheCommandLine) {
    ASSERT_TRUE(openRecordOf(*pair, wanted(), author()));
    ASSERT_TRUE(reportRecord(path("a.record"), path("a.html"), RecordReport::Html));
    ASSERT_TRUE(reportRecord(path("a.record"), path("a.pdf"), RecordReport::Pdf));
    std::ifstream html(path("a.html"));
    std::ifstream pdf(path("a.pdf"));
    std::string line;
    std::getline(html, line);
    EXPECT_EQ(line.substr(0, 9), "<!DOCTYPE");
    std::getline(pdf, line);
    EXPECT_EQ(line.substr(0, 5), "%PDF-");
}

}  // namespace
}  // namespace standin::ui
