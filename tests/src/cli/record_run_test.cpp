// The whole life of a record, in process, over the demo pair.
#include "cli/record_run.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "cli/record_run.h"
#include "cli/run.h"
#include "record/state.h"
#include "record/store.h"
#include "support/command_line.h"
#include "support/temporary_folder.h"

namespace standin::cli {
namespace {

namespace fs = std::filesystem;
using testing::Ended;
using ::testing::HasSubstr;
using ::testing::Not;

std::string data(char const* name) { return std::string(STANDIN_TESTDATA) + "/protection/" + name; }

std::string contentOf(std::string const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

Ended runWith(std::vector<std::string> words) {
    words.insert(words.begin(), "record");
    return testing::runCommand(words, {.record = runRecord});
}

class RecordRun : public ::testing::Test {
protected:
    void SetUp() override {
        for (auto const& [file, name] : {std::pair{"a.key", "R. Ashdown"}, std::pair{"b.key", "T. Belmonte"}, std::pair{"c.key", "L. Corvin"}}) {
            ASSERT_EQ(runWith({"key", "--new", path(file), "--name", name}).status, 0);
        }
    }

    [[nodiscard]] std::string path(char const* name) const { return m_folder.file(name); }
    [[nodiscard]] Ended open(char const* name, std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"open", data("reference.pdf"), data("candidate.pdf"), "-o", path(name), "--key", path("a.key"), "--number", "S-17"};
        words.insert(words.end(), more.begin(), more.end());
        return runWith(words);
    }
    [[nodiscard]] record::Overview state(char const* name) const { return record::stateOf(*record::loadRecord(path(name))); }
    // Rejects the first hazard by two persons and accepts all else that can be.
    void decideHazard(char const* name, std::string const& finding) const {
        ASSERT_EQ(runWith({"decide", path(name), finding, "--disposition", "rejected", "--reason", "Not for this product.", "--key", path("a.key")}).status, 0);
        ASSERT_EQ(runWith({"decide", path(name), finding, "--confirm", "--reason", "Seen, agreed.", "--key", path("b.key")}).status, 0);
    }

    testing::TemporaryFolder m_folder;
};

TEST_F(RecordRun, RecognitionWantsItsPartOfTheProgram) {
    auto const without = open("r", {"--ocr", "eng"});
    EXPECT_EQ(without.status, 2);
    EXPECT_THAT(without.errors, HasSubstr("--ocr"));
    auto const empty = open("r", {"--ocr", ""});
    EXPECT_EQ(empty.status, 2);
    EXPECT_THAT(empty.errors, HasSubstr("wants language codes"));
    EXPECT_FALSE(fs::exists(path("r")));
}

TEST_F(RecordRun, FromComparisonToSignedRecord) {
    auto const opened = open("r");
    ASSERT_EQ(opened.status, 0) << opened.errors;
    auto const lines = state("r").lines;
    ASSERT_EQ(lines.front().severity, model::Severity::Hazard);
    EXPECT_EQ(runWith({"check", path("r")}).status, 1);

    auto const notes = runWith({"decide", path("r"), "--every-note", "--disposition", "accepted", "--reason", "Read and of no effect.", "--key", path("a.key")});
    EXPECT_EQ(notes.status, 0) << notes.errors;
    auto const early = runWith({"sign", path("r"), "--role", "approver", "--key", path("c.key")});
    EXPECT_EQ(early.status, 2);
    EXPECT_THAT(early.errors, HasSubstr("open"));

    decideHazard("r", lines.front().finding);
    EXPECT_EQ(runWith({"sign", path("r"), "--role", "author", "--key", path("a.key")}).status, 0);
    EXPECT_EQ(runWith({"sign", path("r"), "--role", "approver", "--key", path("a.key")}).status, 2);
    auto const approved = runWith({"sign", path("r"), "--role", "approver", "--key", path("c.key"), "--note", "Refused."});
    EXPECT_EQ(approved.status, 0) << approved.errors;

    auto const check = runWith({"check", path("r"), "--reference", data("reference.pdf"), "--candidate", data("candidate.pdf")});
    EXPECT_EQ(check.status, 0) << check.output;
    EXPECT_THAT(check.output, HasSubstr("holds, rejected"));
    EXPECT_THAT(runWith({"show", path("r")}).output, HasSubstr("T. Belmonte"));
    EXPECT_EQ(runWith({"report", path("r"), "--html", path("r.html")}).status, 0);
    EXPECT_THAT(contentOf(path("r.html")), HasSubstr("Record: rejected"));
    // Only the program with the PDF writer writes one.
    EXPECT_EQ(runWith({"report", path("r"), "--pdf", path("r.pdf")}).status, 2);
}

TEST_F(RecordRun, RulesAreTold) {
    ASSERT_EQ(open("r").status, 0);
    auto const lines = state("r").lines;
    auto const grave = std::find_if(lines.begin(), lines.end(), [](record::Line const& line) { return line.level == 4; });
    ASSERT_NE(grave, lines.end());
    auto const before = contentOf(path("r"));
    EXPECT_THAT(runWith({"decide", path("r"), grave->finding, "--disposition", "accepted", "--key", path("a.key")}).errors, HasSubstr("reason"));
    EXPECT_THAT(runWith({"decide", path("r"), grave->finding, "--disposition", "accepted", "--reason", "r", "--key", path("a.key")}).errors, HasSubstr("level 4"));
    EXPECT_THAT(runWith({"decide", path("r"), grave->finding, "--confirm", "--reason", "r", "--key", path("a.key")}).errors, HasSubstr("no decision to confirm"));
    EXPECT_THAT(runWith({"decide", path("r"), "ffffffff", "--disposition", "rejected", "--reason", "r", "--key", path("a.key")}).errors, HasSubstr("has no finding"));
    EXPECT_THAT(runWith({"decide", path("r"), grave->finding, "--disposition", "rejected", "--reason", "r", "--evidence", path("missing"), "--key", path("a.key")}).errors, HasSubstr("missing"));
    EXPECT_EQ(contentOf(path("r")), before);
    EXPECT_EQ(runWith({"decide", path("r"), grave->finding, "--disposition", "accepted", "--reason", "r", "--evidence", data("reference.pdf"), "--key", path("a.key")}).status, 0);
}

TEST_F(RecordRun, TamperedRecordsAreNamed) {
    ASSERT_EQ(open("r").status, 0);
    auto content = contentOf(path("r"));
    auto const head = std::string(record::loadRecord(path("r"))->head().hash);
    EXPECT_EQ(runWith({"check", path("r"), "--head", head}).status, 1);
    EXPECT_EQ(runWith({"check", path("r"), "--head", std::string(64, '0')}).status, 2);
    content[content.find("S-17")] = 'T';
    std::ofstream(path("r"), std::ios::binary) << content;
    auto const check = runWith({"check", path("r")});
    EXPECT_EQ(check.status, 2);
    EXPECT_THAT(check.errors, HasSubstr("line 1: was changed after it was signed"));
    EXPECT_EQ(runWith({"show", path("r")}).status, 2);
    EXPECT_EQ(runWith({"sign", path("r"), "--role", "author", "--key", path("a.key")}).status, 2);
}

TEST_F(RecordRun, AChangedSheetLapsesDecisions) {
    ASSERT_EQ(open("r").status, 0);
    auto const finding = state("r").lines.front().finding;
    decideHazard("r", finding);
    // The reference in place of the candidate: every finding is gone.
    auto const check = runWith({"check", path("r"), "--reference", data("reference.pdf"), "--candidate", data("reference.pdf")});
    EXPECT_EQ(check.status, 1);
    EXPECT_THAT(check.output, HasSubstr("the candidate changed"));
    EXPECT_THAT(check.output, HasSubstr("lapsed: " + finding));
    EXPECT_THAT(check.output, HasSubstr("changed or is gone"));
    auto const one = runWith({"check", path("r"), "--candidate", data("reference.pdf")});
    EXPECT_EQ(one.status, 1);
    EXPECT_THAT(one.output, HasSubstr("lapsed: " + finding));
}

TEST_F(RecordRun, AChangedSheetMayBeProtectedByAPassword) {
    ASSERT_EQ(open("r").status, 0);
    auto const finding = state("r").lines.front().finding;
    decideHazard("r", finding);
    auto const locked = std::string(STANDIN_TESTDATA) + "/features/encrypted-user-password";
    std::vector<std::string> words{"check", path("r"), "--reference", data("reference.pdf"), "--candidate", locked + ".pdf"};
    auto const without = runWith(words);
    EXPECT_EQ(without.status, 2);
    EXPECT_THAT(without.errors, HasSubstr("password"));
    words.insert(words.end(), {"--password-file", locked + ".txt"});
    auto const with = runWith(words);
    EXPECT_EQ(with.status, 1) << with.errors;
    EXPECT_THAT(with.output, HasSubstr("the candidate changed"));
    EXPECT_THAT(with.output, HasSubstr("lapsed: " + finding));
}

TEST_F(RecordRun, ANewRevisionCarriesWhatIsUnchanged) {
    ASSERT_EQ(open("r").status, 0);
    auto const finding = state("r").lines.front().finding;
    decideHazard("r", finding);
    auto const again = open("s", {"--from", path("r")});
    ASSERT_EQ(again.status, 0) << again.errors;
    EXPECT_THAT(again.output, HasSubstr("carried: " + finding));
    EXPECT_EQ(state("s").lines.front().standing, record::Standing::Rejected);
    EXPECT_THAT(runWith({"show", path("s")}).output, HasSubstr("(carried)"));
    auto const other = runWith({"open", data("reference.pdf"), data("reference.pdf"), "-o", path("t"), "--key", path("a.key"), "--from", path("r")});
    EXPECT_EQ(other.status, 0);
    EXPECT_THAT(other.output, HasSubstr("not carried: " + finding));
}

TEST_F(RecordRun, TwoCopiesBecomeOne) {
    ASSERT_EQ(open("r").status, 0);
    auto const lines = state("r").lines;
    auto const note = std::find_if(lines.begin(), lines.end(), [](record::Line const& line) { return line.severity == model::Severity::Note; });
    ASSERT_NE(note, lines.end());
    fs::copy(path("r"), path("s"));
    ASSERT_EQ(runWith({"decide", path("r"), note->finding, "--disposition", "accepted", "--reason", "r", "--key", path("a.key")}).status, 0);
    ASSERT_EQ(runWith({"decide", path("s"), note->finding, "--disposition", "rejected", "--reason", "r", "--key", path("b.key")}).status, 0);
    auto const merged = runWith({"merge", path("r"), path("s"), "-o", path("m"), "--key", path("c.key")});
    EXPECT_EQ(merged.status, 0) << merged.errors;
    EXPECT_THAT(merged.output, HasSubstr("open again: " + note->finding));
    EXPECT_EQ(runWith({"merge", path("r"), path("s"), "-o", path("m"), "--key", path("c.key")}).status, 2);  // never over a record
}

TEST_F(RecordRun, ASupersededRecordSaysWhoHasToLearnOfIt) {
    ASSERT_EQ(open("r").status, 0);
    auto const finding = state("r").lines.front().finding;
    auto const given = runWith({"distribute", path("r"), "--to", "Purchasing", "--to", "Stores", "--change", "CN-204", "--key", path("a.key")});
    ASSERT_EQ(given.status, 0) << given.errors;
    EXPECT_THAT(given.output, HasSubstr("a copy of the record to Purchasing, Stores; the record is draft"));
    EXPECT_EQ(runWith({"supersede", path("r"), "--by", path("r"), "--reason", "r", "--key", path("a.key")}).status, 2);
    EXPECT_EQ(runWith({"supersede", path("r"), "--by", path("missing"), "--reason", "r", "--key", path("a.key")}).status, 2);
    ASSERT_EQ(open("s", {"--from", path("r")}).status, 0);
    auto const ended = runWith({"supersede", path("r"), "--by", path("s"), "--reason", "A new revision of the sheet.", "--key", path("a.key")});
    ASSERT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("which is draft"));
    EXPECT_THAT(ended.output, HasSubstr("Purchasing, Stores hold what"));

    EXPECT_THAT(runWith({"decide", path("r"), finding, "--disposition", "rejected", "--reason", "r", "--key", path("a.key")}).errors, HasSubstr("superseded by the record S-17"));
    auto const check = runWith({"check", path("r")});
    EXPECT_EQ(check.status, 1);
    EXPECT_THAT(check.output, HasSubstr("lapsed: superseded by the record S-17"));
    EXPECT_THAT(check.output, HasSubstr("open: Purchasing, Stores"));
    EXPECT_THAT(check.output, Not(HasSubstr("approver")));
    auto const told = runWith({"distribute", path("r"), "--to", "Purchasing", "--what", "a note that it is superseded", "--key", path("b.key")});
    EXPECT_THAT(told.output, HasSubstr("Stores holds what"));
}

TEST_F(RecordRun, BenchResultsAreJudged) {
    ASSERT_EQ(open("r").status, 0);
    auto const record = *record::loadRecord(path("r"));
    for (auto const& test : record.opened().tests) {
        for (auto const& limit : test.limits) {
            if (limit.max.empty() || limit.max.find_first_not_of("0123456789.") != std::string::npos) continue;
            auto const within = runWith({"result", path("r"), test.id, "--finding", limit.finding, "--value", limit.max, "--unit", limit.unit, "--key", path("a.key")});
            EXPECT_EQ(within.status, 0) << within.errors;
            EXPECT_THAT(within.output, HasSubstr("within"));
            EXPECT_THAT(runWith({"result", path("r"), test.id, "--finding", limit.finding, "--value", limit.max + "9", "--unit", limit.unit, "--key", path("a.key")}).output, HasSubstr("outside"));
            EXPECT_EQ(runWith({"result", path("r"), "no-such-test", "--value", "1", "--key", path("a.key")}).status, 2);
            return;
        }
    }
    FAIL() << "the demo pair has no bench test with a plain limit";
}

TEST_F(RecordRun, KeysAreShownAndLocked) {
    std::ofstream(path("pass")) << "four quiet herons\n";
    ASSERT_EQ(runWith({"key", "--new", path("d.key"), "--name", "M. Dray", "--passphrase-file", path("pass")}).status, 0);
    EXPECT_THAT(runWith({"key", path("d.key"), "--passphrase-file", path("pass")}).output, HasSubstr("M. Dray"));
    std::ofstream(path("wrong")) << "five quiet herons\n";
    EXPECT_EQ(runWith({"key", path("d.key"), "--passphrase-file", path("wrong")}).status, 2);
    EXPECT_EQ(runWith({"key", "--new", path("d.key"), "--name", "M. Dray"}).status, 2);
    auto const lockedOpen = runWith({"open", data("reference.pdf"), data("candidate.pdf"), "-o", path("r"), "--key", path("d.key"), "--passphrase-file", path("pass")});
    EXPECT_EQ(lockedOpen.status, 0) << lockedOpen.errors;
    EXPECT_THAT(runWith({"show", path("r")}).output, HasSubstr("M. Dray"));
}

TEST_F(RecordRun, AGivenTimeGivesTheSameBytes) {
    setenv("SOURCE_DATE_EPOCH", "1935741600", 1);
    EXPECT_EQ(open("r").status, 0);
    EXPECT_EQ(open("s").status, 0);
    unsetenv("SOURCE_DATE_EPOCH");
    EXPECT_EQ(contentOf(path("r")), contentOf(path("s")));
    EXPECT_THAT(contentOf(path("r")), HasSubstr("2031-05-05T10:00:00Z"));
    EXPECT_EQ(open("r").status, 2);  // never over a record
}

TEST_F(RecordRun, ARecordLapsesAtItsEnd) {
    ASSERT_EQ(open("r", {"--valid-until", "2031-01-31"}).status, 0);
    setenv("SOURCE_DATE_EPOCH", "1935741600", 1);
    EXPECT_THAT(runWith({"check", path("r")}).output, HasSubstr("lapsed: valid until 2031-01-31"));
    setenv("SOURCE_DATE_EPOCH", "951782400", 1);
    EXPECT_THAT(runWith({"check", path("r")}).output, Not(HasSubstr("lapsed: valid until")));
    unsetenv("SOURCE_DATE_EPOCH");
}

}  // namespace
}  // namespace standin::cli
