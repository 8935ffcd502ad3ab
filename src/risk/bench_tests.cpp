// A finding goes to the first test that names its parameter or feature, else its
// kind, else its caution, else (numbers only) to the fallback.
// Tested by tests/src/risk/bench_tests_test.cpp.
#include "risk/bench_tests.h"

#include <algorithm>

#include "model/names.h"
#include "risk/cell_checks.h"

namespace standin::risk {

using namespace model;
using vocabulary::BenchTestEntry;

namespace {

bool names(std::vector<std::string> const& list, std::string_view word) { return !word.empty() && std::find(list.begin(), list.end(), word) != list.end(); }

bool isNumeric(FindingKind kind) { return kind == FindingKind::Parameter || kind == FindingKind::Derived || kind == FindingKind::Cell; }

// The index of the test for a finding; the size of the list: none.
std::size_t testFor(Finding const& finding, std::span<BenchTestEntry const> entries) {
    auto const first = [&](auto&& calledBy) { return static_cast<std::size_t>(std::find_if(entries.begin(), entries.end(), calledBy) - entries.begin()); };
    auto index = first([&](BenchTestEntry const& entry) { return names(entry.parameters, finding.canonical) || names(entry.features, finding.canonical); });
    if (index == entries.size()) index = first([&](BenchTestEntry const& entry) { return names(entry.kinds, nameOf(finding.kind)); });
    if (index == entries.size()) index = first([&](BenchTestEntry const& entry) { return names(entry.cautions, finding.caution); });
    // What is worked out follows from values that have their own findings.
    if (index == entries.size() && finding.kind == FindingKind::Parameter) index = first([](BenchTestEntry const& entry) { return entry.fallback; });
    return index;
}

void addLimit(Finding const& finding, BenchTestEntry const& entry, std::vector<BenchLimit>& limits) {
    auto const& side = entry.candidateLimits ? finding.candidate : finding.reference;
    if (!isNumeric(finding.kind) || !side || (side->min.empty() && side->max.empty())) return;
    limits.push_back({finding.id, finding.title, entry.candidateLimits ? "candidate" : "reference", side->condition, side->min, side->max, side->unit});
}

// The finding of `test` that a check without one of its own belongs to: that on
// what it checks, else the first.
std::string const& findingFor(BenchTest const& test, std::string_view canonical, Comparison const& comparison) {
    for (auto const& finding : comparison.findings) {
        if (finding.canonical == canonical && names(test.findings, finding.id)) return *std::find(test.findings.begin(), test.findings.end(), finding.id);
    }
    return test.findings.front();
}

void addCheckLimit(CellCheck const& check, Comparison const& comparison, std::span<BenchTestEntry const> entries, std::vector<BenchTest>& tests) {
    if (!check.bounds) return;
    auto const& bounds = *check.bounds;
    auto const add = [&](BenchTest& test, std::string const& finding) {
        test.limits.push_back({finding, check.title, "cell and circuit", bounds.quantity, bounds.min, bounds.max, bounds.unit, check.check, bounds.aboveMin, bounds.belowMax});
    };
    auto const own = std::find_if(tests.begin(), tests.end(), [&](BenchTest const& test) { return names(test.findings, check.finding); });
    if (own != tests.end()) return add(*own, check.finding);
    auto const canonical = checkedBy(check);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (tests[i].findings.empty() || (!names(entries[i].parameters, canonical) && !names(entries[i].features, canonical))) continue;
        return add(tests[i], findingFor(tests[i], canonical, comparison));
    }
}

}  // namespace

bool needsBenchTest(Finding const& finding) {
    switch (finding.kind) {
        case FindingKind::Parameter:
        case FindingKind::Feature:
        case FindingKind::Pin:
        case FindingKind::Package:
        case FindingKind::Derived:
        case FindingKind::Cell: return finding.level >= 2 || (finding.open && finding.severity >= Severity::Margin);
        case FindingKind::Table:
        case FindingKind::Wording: return finding.level >= 2;
        case FindingKind::Ordering:
        case FindingKind::Figure:
        case FindingKind::Section:
        case FindingKind::Document:
        case FindingKind::Coverage: return false;
    }
    return false;
}

std::vector<BenchTest> benchTests(Comparison const& comparison, vocabulary::Vocabulary const& vocabulary) {
    auto const entries = vocabulary.benchTests();
    std::vector<BenchTest> tests(entries.size());
    for (auto const& finding : comparison.findings) {
        if (!needsBenchTest(finding)) continue;
        auto const index = testFor(finding, entries);
        if (index == entries.size()) continue;
        tests[index].findings.push_back(finding.id);
        addLimit(finding, entries[index], tests[index].limits);
    }
    for (auto const& check : comparison.cell) addCheckLimit(check, comparison, entries, tests);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        auto const& entry = entries[i];
        tests[i].id = entry.id;
        tests[i].title = entry.title;
        tests[i].procedure = entry.procedure;
        tests[i].setup = entry.setup;
        tests[i].limitsFrom = entry.limits;
    }
    std::erase_if(tests, [](BenchTest const& test) { return test.findings.empty(); });
    return tests;
}

}  // namespace standin::risk
