#include "report/text_report.h"

#include <gtest/gtest.h>

#include <array>

#include "sample_comparison.h"
#include "text/visible.h"

namespace standin::report {
namespace {

std::string sampleText() {
    auto const sample = sampleComparison();
    return textReport(sample.comparison, sample.reference, sample.candidate);
}

TEST(TextReport, EveryLineFitsIntoEightyColumns) {
    auto const text = sampleText();
    std::size_t begin = 0;
    int lines = 0;
    while (begin < text.size()) {
        auto const end = text.find('\n', begin);
        ASSERT_NE(end, std::string::npos);
        EXPECT_LE(text::columnWidth(text.substr(begin, end - begin)), 80) << text.substr(begin, end - begin);
        begin = end + 1;
        ++lines;
    }
    EXPECT_GT(lines, 20);
}

TEST(TextReport, VerdictComesFirstHazardBeforeFunction) {
    auto const text = sampleText();
    auto const verdict = text.find("Bench test before use");
    auto const caution = text.find("CAUTIONS");
    auto const hazard = text.find("HAZARD (1)");
    auto const function = text.find("FUNCTION (1)");
    ASSERT_NE(hazard, std::string::npos);
    EXPECT_LT(verdict, caution);
    EXPECT_LT(caution, hazard);
    EXPECT_LT(hazard, function);
}

TEST(TextReport, HazardsComeBeforeCellChecks) {
    auto sample = sampleComparison();
    sample.comparison.cellName = "a cell of ours";
    sample.comparison.cell.push_back({.check = "drain", .title = "Storage time", .limit = "", .bounds = {}, .reference = {}, .candidate = {}, .level = 1, .finding = ""});
    auto const positions = [&] {
        auto const text = textReport(sample.comparison, sample.reference, sample.candidate);
        return std::array{text.find("HAZARD (1)"), text.find("CELL CHECKS"), text.find("FUNCTION (1)")};
    };
    auto const all = positions();
    ASSERT_NE(all[1], std::string::npos);
    EXPECT_LT(all[0], all[1]);
    EXPECT_LT(all[1], all[2]);
    std::erase_if(sample.comparison.findings, [](auto const& finding) { return finding.severity == model::Severity::Hazard; });
    auto const without = positions();
    ASSERT_NE(without[1], std::string::npos);
    EXPECT_LT(without[1], without[2]);
}

TEST(TextReport, ShowsBothValuesConditionsAndPages) {
    auto const text = sampleText();
    EXPECT_NE(text.find("page 3: 4.245 / 4.275 / 4.305 V"), std::string::npos);
    EXPECT_NE(text.find("page 1: 4.245 / 4.275 / 4.340 V"), std::string::npos);
    EXPECT_NE(text.find("(Ta = 25 °C)"), std::string::npos);
    EXPECT_NE(text.find("page 2 of the candidate has no text layer"), std::string::npos);
}

TEST(TextReport, ConsequencesHangUnderTheirCauseAndEditorialOnesAreCounted) {
    auto const text = sampleText();
    EXPECT_NE(text.find("follows: Hysteresis is larger (candidate page 2)"), std::string::npos);
    EXPECT_NE(text.find("1 hazard, 1 function, 0 margin, 0 note, 1 editorial"), std::string::npos);
    EXPECT_EQ(text.find("Spelling of colour"), std::string::npos);
}

TEST(TextReport, AChapterOfOneSheetListsItsFirstEntriesAndCountsTheRest) {
    auto sample = sampleComparison();
    auto entry = [](std::string id, std::string text, std::string cause) {
        model::Finding finding;
        finding.id = std::move(id);
        finding.kind = cause.empty() ? model::FindingKind::Section : model::FindingKind::Wording;
        finding.relation = model::Relation::OnlyReference;
        finding.severity = model::Severity::Note;
        finding.title = text;
        finding.consequenceOf = std::move(cause);
        finding.reference = model::Side{};
        finding.reference->page = 4;
        finding.reference->text = std::move(text);
        return finding;
    };
    sample.comparison.findings.push_back(entry("aa0000000000", "Mounting notes", ""));
    for (int i = 1; i <= 6; ++i) sample.comparison.findings.push_back(entry("bb000000000" + std::to_string(i), "Strap number " + std::to_string(i), "aa0000000000"));
    auto const text = textReport(sample.comparison, sample.reference, sample.candidate);
    EXPECT_NE(text.find("lists: Strap number 4 (reference page 4)"), std::string::npos) << text;
    EXPECT_EQ(text.find("Strap number 5"), std::string::npos);
    EXPECT_NE(text.find("lists: 2 more"), std::string::npos);
}

TEST(TextReport, ListsBenchTestsAfterTheFindings) {
    auto const sample = sampleComparison();
    risk::BenchTest test;
    test.title = "Overcharge threshold";
    test.procedure = "Step the supply up.";
    test.setup = "four-wire";
    test.findings = {"aaaaaaaaaaaa", "cccccccccccc"};
    auto const text = textReport(sample.comparison, sample.reference, sample.candidate, std::vector{test});
    auto const place = text.find("1. Overcharge threshold (2 findings): Step the supply up.");
    ASSERT_NE(place, std::string::npos) << text;
    EXPECT_GT(place, text.find("HAZARD"));
    EXPECT_NE(text.find("Set-up: four-wire"), std::string::npos);
    EXPECT_EQ(textReport(sample.comparison, sample.reference, sample.candidate).find("BENCH TESTS"), std::string::npos);
}

}  // namespace
}  // namespace standin::report
