// Whole commands, in process, over the demo data: exit status, outputs, and the
// one line that trouble gives.
#include "cli/run.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <vector>

#include <gtest/gtest.h>

#include "model/datasheet_json.h"
#include "report/pdf/pdf_report.h"
#include "support/command_line.h"
#include "support/temporary_folder.h"

namespace standin::cli {
namespace {

namespace fs = std::filesystem;
using testing::Ended;

std::string data(char const* name) { return std::string(STANDIN_TESTDATA) + "/" + name; }

std::string contentOf(fs::path const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

Ended runWith(std::vector<std::string> const& words) { return testing::runCommand(words, {.pdf = report::pdfReport}); }

class RunTest : public ::testing::Test {
protected:
    [[nodiscard]] std::string path(char const* name) const { return m_folder.file(name); }
    testing::TemporaryFolder m_folder;
};

TEST_F(RunTest, CompareWithFindingsEndsWithOneAndPrintsTheSummary) {
    auto const ended = runWith({"compare", data("protection/reference.pdf"), data("protection/candidate.pdf")});
    EXPECT_EQ(ended.status, kFindings);
    EXPECT_NE(ended.output.find("VERDICT"), std::string::npos);
    EXPECT_EQ(ended.errors, "");
}

TEST_F(RunTest, FailOnDecidesTheExitStatus) {
    auto const pair = {data("mosfet/revision-b.pdf"), data("mosfet/revision-b.pdf")};
    std::vector<std::string> words{"compare"};
    words.insert(words.end(), pair);
    words.insert(words.end(), {"--fail-on", "hazard"});
    EXPECT_EQ(runWith(words).status, kNothingFound);
}

TEST_F(RunTest, TheSameInputsGiveTheSameBytes) {
    std::vector<std::string> outputs;
    for (int i = 0; i < 2; ++i) {
        auto const ended = runWith({"compare", data("regulator/reference.pdf"), data("regulator/candidate.pdf"), "--json", path("c.json"), "--html", path("c.html"), "--csv", path("c.csv"),
                                    "--text", path("c.txt")});
        EXPECT_EQ(ended.status, kFindings);
        EXPECT_EQ(ended.output, "");
        outputs.push_back(contentOf(path("c.json")) + contentOf(path("c.html")) + contentOf(path("c.csv")) + contentOf(path("c.txt")));
    }
    EXPECT_GT(outputs[0].size(), 1000U);
    EXPECT_EQ(outputs[0], outputs[1]);
}

TEST_F(RunTest, ASheetReadBeforeComparesLikeItsPdf) {
    EXPECT_EQ(runWith({"read", data("regulator/candidate.pdf"), "--json", path("candidate.json")}).status, kNothingFound);
    auto const direct = runWith({"compare", data("regulator/reference.pdf"), data("regulator/candidate.pdf"), "--json", "-"});
    auto const again = runWith({"compare", data("regulator/reference.pdf"), path("candidate.json"), "--json", "-"});
    EXPECT_EQ(direct.status, again.status);
    EXPECT_EQ(direct.output, again.output);
}

TEST_F(RunTest, PagesLimitWhatIsRead) {
    auto const all = runWith({"read", data("protection/reference.pdf")});
    auto const one = runWith({"read", data("protection/reference.pdf"), "--pages", "1-1"});
    EXPECT_EQ(one.status, kNothingFound);
    EXPECT_LT(one.output.size(), all.output.size());
    EXPECT_EQ(runWith({"read", data("protection/reference.pdf"), "--pages", "90-99"}).status, kTrouble);
}

TEST_F(RunTest, PasswordComesFromAFile) {
    auto const file = data("features/encrypted-user-password.pdf");
    auto const without = runWith({"read", file});
    EXPECT_EQ(without.status, kTrouble);
    EXPECT_NE(without.errors.find("password"), std::string::npos);
    EXPECT_EQ(runWith({"read", file, "--password-file", data("features/encrypted-user-password.txt")}).status, kNothingFound);
    std::ofstream(path("wrong.txt")) << "not this one\n";
    EXPECT_EQ(runWith({"read", file, "--password-file", path("wrong.txt")}).status, kTrouble);
}

TEST_F(RunTest, TroubleIsOneLineWithTheFileAndLeavesNoOutput) {
    std::vector<std::string> const inputs{data("features/not-a-pdf.pdf"), data("features/empty.pdf"), path("missing.pdf"), m_folder.path().string()};
    for (auto const& input : inputs) {
        SCOPED_TRACE(input);
        auto const ended = runWith({"compare", input, data("mosfet/revision-b.pdf"), "--json", path("out.json")});
        EXPECT_EQ(ended.status, kTrouble);
        EXPECT_EQ(ended.errors.find("standin: " + input + ": "), 0U) << ended.errors;
        EXPECT_EQ(std::count(ended.errors.begin(), ended.errors.end(), '\n'), 1);
        EXPECT_FALSE(fs::exists(path("out.json")));
    }
}

TEST_F(RunTest, ATruncatedSheetIsReadOrRefusedButNeverSilent) {
    auto const ended = runWith({"read", data("features/truncated.pdf")});
    if (ended.status == kTrouble) EXPECT_NE(ended.errors, "");
    else EXPECT_NE(ended.output.find("Warning"), std::string::npos);
}

TEST_F(RunTest, APageWithoutTextMakesTheComparisonIncomplete) {
    auto const ended = runWith({"compare", data("features/image-only.pdf"), data("features/image-only.pdf"), "--json", "-"});
    EXPECT_EQ(ended.status, kFindings);
    EXPECT_NE(ended.output.find("\"incomplete\": true"), std::string::npos);
    EXPECT_EQ(ended.output.find("\"level\": \"no-difference\""), std::string::npos);
}

TEST_F(RunTest, AnUnknownVariantNamesTheKnownOnes) {
    auto const ended = runWith({"compare", data("protection/reference.pdf"), data("protection/candidate.pdf"), "--reference-variant", "NO-SUCH"});
    EXPECT_EQ(ended.status, kTrouble);
    EXPECT_NE(ended.errors.find("NO-SUCH"), std::string::npos);
}

TEST_F(RunTest, CorrectionsAreAppliedAndTold) {
    auto const ended = runWith({"compare", data("protection/reference.pdf"), data("protection/candidate.pdf"), "--corrections", data("protection/corrections.json")});
    EXPECT_EQ(ended.status, kFindings);
    EXPECT_NE(ended.output.find("VALUES PUT RIGHT BY PEOPLE (3)"), std::string::npos);
    EXPECT_NE(ended.output.find("4.318"), std::string::npos);
    EXPECT_NE(ended.output.find("Ida Brandt"), std::string::npos);
    auto const read = runWith({"read", data("protection/candidate.pdf"), "--corrections", data("protection/corrections.json")});
    EXPECT_EQ(read.status, kNothingFound);
    EXPECT_NE(read.output.find("Overcharge hysteresis voltage"), std::string::npos);
    auto const other = runWith({"read", data("protection/reference.pdf"), "--corrections", data("protection/corrections.json"), "--json", "-"});
    EXPECT_NE(other.output.find("3 corrections are for another document"), std::string::npos);
}

TEST_F(RunTest, ContradictingOrBrokenCorrectionsAreTrouble) {
    std::ofstream(path("broken.json")) << R"({"schema": "standin.corrections/1", "corrections": [{"page": 1}]})";
    auto const broken = runWith({"read", data("protection/candidate.pdf"), "--corrections", path("broken.json")});
    EXPECT_EQ(broken.status, kTrouble);
    EXPECT_NE(broken.errors.find("broken.json: correction 1: "), std::string::npos) << broken.errors;
    std::ofstream(path("second.json")) << R"({"schema": "standin.corrections/1", "corrections": [{"document": "bddd10df3add", "page": 3, "row": {"symbol": "PD"}, "set": {"max": "350"},
                                              "by": "T. Okoro", "date": "2031-05-03", "why": "another print"}]})";
    auto const contradicting = runWith({"read", data("protection/candidate.pdf"), "--corrections", data("protection/corrections.json"), "--corrections", path("second.json")});
    EXPECT_EQ(contradicting.status, kTrouble);
    EXPECT_NE(contradicting.errors.find("second.json: correction 1 contradicts correction 2 of "), std::string::npos) << contradicting.errors;
}

TEST_F(RunTest, TheOverlayShowsEveryPage) {
    auto const ended = runWith({"read", data("protection/candidate.pdf"), "--overlay", path("overlay.html"), "--json", path("sheet.json")});
    EXPECT_EQ(ended.status, kNothingFound) << ended.errors;
    EXPECT_EQ(ended.output, "");
    auto const html = contentOf(path("overlay.html"));
    EXPECT_NE(html.find("<svg viewBox"), std::string::npos);
    EXPECT_NE(html.find("href=\"data:image/png;base64,"), std::string::npos);
    EXPECT_NE(html.find("class=\"role max\""), std::string::npos);
    auto const fromJson = runWith({"read", path("sheet.json"), "--overlay", path("none.html")});
    EXPECT_EQ(fromJson.status, kTrouble);
    EXPECT_FALSE(fs::exists(path("none.html")));
}

// Rows that several versions share stay; a version that the sheet lacks is trouble.
TEST_F(RunTest, ReadKeepsTheRowsOfTheChosenVersion) {
    model::Datasheet sheet;
    sheet.document.file = "invented.pdf";
    for (auto const* variant : {"", "XQ20A", "XQ20B", "XQ20A, XQ20B"}) {
        model::Parameter parameter;
        parameter.name = "Delay of " + std::string(*variant == '\0' ? "all" : variant);
        parameter.variant = variant;
        parameter.page = 1;
        sheet.parameters.push_back(parameter);
    }
    sheet.ordering = {{"XQ20A", {}, "", 1, {}}, {"XQ20B", {}, "", 1, {}}};
    std::ofstream(path("sheet.json")) << model::toJson(sheet);
    auto const ended = runWith({"read", path("sheet.json"), "--variant", "xq20-b"});
    EXPECT_EQ(ended.status, kNothingFound) << ended.errors;
    EXPECT_NE(ended.output.find("Delay of all"), std::string::npos);
    EXPECT_NE(ended.output.find("Delay of XQ20A, XQ20B"), std::string::npos);
    EXPECT_EQ(ended.output.find("[XQ20A]"), std::string::npos);
    EXPECT_NE(ended.output.find("ORDERING (1)"), std::string::npos);
    EXPECT_NE(runWith({"read", path("sheet.json")}).output.find("ORDERING (2)"), std::string::npos);
    auto const unknown = runWith({"read", path("sheet.json"), "--variant", "ZZ"});
    EXPECT_EQ(unknown.status, kTrouble);
    EXPECT_NE(unknown.errors.find("XQ20A"), std::string::npos);
}

TEST_F(RunTest, AUsersVocabularyIsAddedOrRefused) {
    std::ofstream(path("bad.json")) << "{\"schema\": \"something/1\"}";
    auto const ended = runWith({"compare", data("mosfet/revision-b.pdf"), data("mosfet/revision-c.pdf"), "--vocabulary", path("bad.json")});
    EXPECT_EQ(ended.status, kTrouble);
    EXPECT_NE(ended.errors.find("bad.json"), std::string::npos);
}

}  // namespace
}  // namespace standin::cli
