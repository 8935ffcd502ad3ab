// Tested by tests/src/report/text_report_test.cpp.
#include "report/text_report.h"

#include <algorithm>

#include <fmt/format.h>

#include "report/corrections_section.h"
#include "report/cell_section.h"
#include "report/finding_view.h"
#include "report/texts.h"
#include "report/wrapped_text.h"

namespace standin::report {

using namespace model;

namespace {

// A sentence longer than this says no more in a summary; the page tells the rest.
constexpr std::size_t kLongestPrintedText = 420;

// Of a finding that lists what one sheet has and the other has not.
constexpr std::size_t kMostListed = 4;

void appendHeading(std::string& out, std::string const& heading) {
    out += '\n';
    out += heading;
    out += '\n';
}

void appendSide(std::string& out, std::string_view label, std::optional<Side> const& side) {
    if (!side) {
        appendWrapped(out, fmt::format("     {}  ", label), fmt::format("– ({})", texts::kNotPrinted));
        return;
    }
    auto text = clipped(valuesOf(*side), kLongestPrintedText);
    if (!side->condition.empty()) text += "   (" + clipped(side->condition, kLongestPrintedText) + ")";
    auto const place = side->page > 0 ? fmt::format("page {}: ", side->page) : std::string{};
    appendWrapped(out, fmt::format("     {}  ", label), place + text);
}

void appendFinding(std::string& out, std::size_t number, FindingGroup const& group, bool alone) {
    auto const& finding = *group.main;
    appendWrapped(out, fmt::format("{:>3}. ", number), finding.title);
    if (!alone) appendSide(out, "reference", finding.reference);
    appendSide(out, "candidate", finding.candidate);
    if (!finding.explanation.empty()) appendWrapped(out, "     ", finding.explanation);
    // What stands in one sheet only is listed whole in HTML and JSON.
    std::size_t const shown = isOneSided(finding) ? std::min(group.consequences.size(), kMostListed) : group.consequences.size();
    std::string_view const label = isOneSided(finding) ? "     lists: " : "     follows: ";
    for (std::size_t i = 0; i < shown; ++i) appendWrapped(out, label, group.consequences[i]->title + placesOf(*group.consequences[i]));
    if (shown < group.consequences.size()) appendWrapped(out, label, fmt::format("{} more ({})", group.consequences.size() - shown, texts::kListedElsewhere));
}

void appendBenchTests(std::string& out, std::span<risk::BenchTest const> tests) {
    if (tests.empty()) return;
    appendHeading(out, fmt::format("BENCH TESTS ({})", tests.size()));
    appendWrapped(out, "", texts::kBenchTestsMeaning);
    std::size_t number = 0;
    for (auto const& test : tests) {
        appendWrapped(out, fmt::format("{:>3}. ", ++number), fmt::format("{} ({} {}): {}", test.title, test.findings.size(), test.findings.size() == 1 ? "finding" : "findings", test.procedure));
        if (!test.setup.empty()) appendWrapped(out, "     ", fmt::format("{}: {}", texts::kSetUp, test.setup));
        if (!test.limitsFrom.empty()) appendWrapped(out, "     ", fmt::format("{}: {}", texts::kLimitsFrom, test.limitsFrom));
        for (auto const& limit : test.limits) appendWrapped(out, "     - ", limitText(limit));
    }
}

}  // namespace

std::string textReport(Comparison const& comparison, Datasheet const&, Datasheet const&, std::span<risk::BenchTest const> tests) {
    std::string out = "STANDIN  ";
    out += comparison.hasReference() ? texts::kTitle : texts::kCheckTitle;
    out += "\n\n";
    if (comparison.hasReference()) appendWrapped(out, "Reference  ", titleOf(comparison.reference) + "  (" + comparison.reference.file + ")");
    appendWrapped(out, "Candidate  ", titleOf(comparison.candidate) + "  (" + comparison.candidate.file + ")");

    auto const& verdict = comparison.verdict;
    out += '\n';
    appendWrapped(out, "VERDICT    ", verdictLevel(comparison));
    if (auto const detail = verdictDetail(comparison); !detail.empty()) appendWrapped(out, "           ", detail);
    if (verdict.incomplete) {
        appendWrapped(out, "INCOMPLETE ", "Not everything that could matter was read or could be compared:");
        for (auto const& reason : verdict.incompleteReasons) appendWrapped(out, "           - ", reason);
    }
    appendWrapped(out, "Findings   ", countsLine(comparison));
    appendWrapped(out, "Coverage   ", coverageLine(comparison));

    if (!comparison.cautions.empty()) {
        appendHeading(out, "CAUTIONS");
        for (auto const& caution : comparison.cautions) appendWrapped(out, fmt::format("{:<7} ", caution.id), caution.text);
    }
    auto const groups = groupBySeverity(comparison);
    // What could hurt comes first.
    bool const hazardsFirst = !groups.empty() && groups.front().severity == Severity::Hazard;
    if (!hazardsFirst) appendCellChecks(out, comparison);
    if (groups.empty()) appendHeading(out, std::string(comparison.hasReference() ? texts::kNothingFound : texts::kNothingViolated));
    for (auto const& group : groups) {
        std::string name(texts::severityHeading(group.severity));
        std::transform(name.begin(), name.end(), name.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
        out += '\n';
        appendWrapped(out, fmt::format("{} ({}) ", name, group.findings.size()), texts::severityMeaning(group.severity));
        if (group.severity == Severity::Editorial) {
            out += "     Listed in the HTML, PDF and JSON reports.\n";
            continue;
        }
        std::size_t number = 0;
        for (auto const& finding : group.findings) appendFinding(out, ++number, finding, !comparison.hasReference());
        if (group.severity == Severity::Hazard) appendCellChecks(out, comparison);
    }
    appendDerived(out, comparison);
    appendBenchTests(out, tests);
    appendCorrections(out, {{"reference", &comparison.reference}, {"candidate", &comparison.candidate}});
    if (!comparison.statements.empty()) {
        std::string heading(texts::kStatements);
        appendHeading(out, heading);
        for (auto const& statement : comparison.statements) appendWrapped(out, " - ", statement);
    }
    return out;
}

}  // namespace standin::report
