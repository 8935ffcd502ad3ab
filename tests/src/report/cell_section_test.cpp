#include "report/cell_section.h"

#include <gtest/gtest.h>

#include "sample_comparison.h"

namespace standin::report {
namespace {

using namespace model;

Comparison withChecks() {
    auto comparison = sampleComparison().comparison;
    comparison.cellName = "a cell <of ours>";
    comparison.circuitName = "a board";
    CheckResult const holds{.value = "at most 4.306 V", .outcome = CheckOutcome::Holds, .why = "", .inputs = {}};
    CheckResult const violated{.value = "at most 4.341 V", .outcome = CheckOutcome::Violated, .why = "above the limit by 41 mV", .inputs = {}};
    CheckResult const open{.value = "", .outcome = CheckOutcome::Open, .why = "the circuit file gives no storage_time", .inputs = {}};
    comparison.cell = {{.check = "class-match", .title = "Fits the class", .limit = "", .bounds = {}, .reference = holds, .candidate = holds, .level = 0, .finding = ""},
                       {.check = "drain", .title = "Storage time", .limit = "", .bounds = {}, .reference = open, .candidate = open, .level = 1, .finding = "bbbbbbbbbbbb"},
                       {.check = "overcharge-upper", .title = "Overcharge cut-off", .limit = "no more than 4.300 V", .bounds = {}, .reference = holds, .candidate = violated, .level = 4, .finding = "aaaaaaaaaaaa"}};
    Derived derived;
    derived.canonical = "discharge-trip-current";
    derived.title = "Trip current";
    derived.formula = "I = V / R";
    derived.reference = WorkedValue{.min = "2.5", .typ = "3.75", .max = "5.469", .unit = "A", .inputs = {{.name = "discharge-overcurrent-1-voltage", .parameter = "p1", .page = 3, .box = {}, .text = "0.125 / 0.150 / 0.175 V"}, {.name = "circuit.fet_on_resistance", .parameter = "", .page = 0, .box = {}, .text = "40 mΩ"}}, .notes = {"At 25 °C."}};
    derived.candidate = WorkedValue{.min = "2.5", .typ = "3.75", .max = "", .unit = "A", .inputs = {}, .notes = {"At 25 °C.", "The upper bound is missing."}};
    comparison.derived = {derived};
    return comparison;
}

TEST(CellSection, GravestFirstInText) {
    std::string out;
    appendCellChecks(out, withChecks());
    EXPECT_NE(out.find("Reference  2 hold, 0 violated, 1 open"), std::string::npos) << out;
    EXPECT_NE(out.find("Candidate  1 hold, 1 violated, 1 open"), std::string::npos) << out;
    auto const violated = out.find("VIOLATED");
    auto const open = out.find("open      Storage time");
    auto const holds = out.find("holds     Fits the class");
    ASSERT_NE(violated, std::string::npos) << out;
    EXPECT_LT(violated, open);
    EXPECT_LT(open, holds);
    EXPECT_NE(out.find("asked for  no more than 4.300 V"), std::string::npos) << out;
    EXPECT_NE(out.find("reference  holds, at most 4.306 V"), std::string::npos) << out;
    EXPECT_NE(out.find("both       the circuit file gives no storage_time"), std::string::npos) << out;
    for (std::size_t begin = 0; begin < out.size(); begin = out.find('\n', begin) + 1) EXPECT_LE(out.find('\n', begin) - begin, 84U) << "80 columns, and a dash or two of several bytes";
}

TEST(CellSection, NothingWithoutACell) {
    std::string out;
    auto const comparison = sampleComparison().comparison;
    appendCellChecks(out, comparison);
    appendDerived(out, comparison);
    EXPECT_EQ(out, "");
    EXPECT_EQ(cellChecksHtml(comparison), "");
    EXPECT_EQ(derivedHtml(comparison), "");
}

TEST(CellSection, HtmlEscapesAndLinks) {
    auto const html = cellChecksHtml(withChecks());
    EXPECT_NE(html.find("a cell &lt;of ours&gt;"), std::string::npos);
    EXPECT_NE(html.find("<a href=\"#f-aaaaaaaaaaaa\">Overcharge cut-off</a>"), std::string::npos);
    EXPECT_NE(html.find("▲ violated"), std::string::npos);
}

TEST(CellSection, LinksLeadToTheCardThatIsThere) {
    auto comparison = withChecks();
    Finding finding;
    finding.id = "bbbbbbbbbbbb";
    finding.kind = FindingKind::Cell;
    finding.consequenceOf = "aaaaaaaaaaaa";
    comparison.findings.push_back(finding);
    EXPECT_NE(cellChecksHtml(comparison).find("<a href=\"#f-aaaaaaaaaaaa\">Storage time</a>"), std::string::npos);
}

TEST(CellSection, ACandidateAloneHasNoReferenceColumn) {
    auto comparison = withChecks();
    comparison.kind = ComparisonKind::CandidateAlone;
    for (auto& check : comparison.cell) check.reference.reset();
    comparison.derived[0].reference.reset();
    EXPECT_EQ(cellChecksHtml(comparison).find("reference"), std::string::npos);
    EXPECT_EQ(derivedHtml(comparison).find("reference"), std::string::npos);
    std::string out;
    appendCellChecks(out, comparison);
    appendDerived(out, comparison);
    EXPECT_EQ(out.find("eference"), std::string::npos) << out;
}

TEST(CellSection, WorkedOutShowsFormulaInputsAndNotes) {
    std::string out;
    appendDerived(out, withChecks());
    EXPECT_NE(out.find("WORKED OUT (1)"), std::string::npos) << out;
    EXPECT_NE(out.find("I = V / R"), std::string::npos);
    EXPECT_NE(out.find("reference  2.5 A / 3.75 A / 5.469 A"), std::string::npos) << out;
    EXPECT_NE(out.find("candidate  2.5 A / 3.75 A / –"), std::string::npos) << out;
    EXPECT_NE(out.find("Candidate: The upper bound is missing."), std::string::npos) << out;
    auto const html = derivedHtml(withChecks());
    EXPECT_NE(html.find("(page 3)"), std::string::npos);
    EXPECT_NE(html.find("fet_on_resistance of the circuit file 40 mΩ"), std::string::npos);
}

}  // namespace
}  // namespace standin::report
