// Tested by tests/src/risk/assess_test.cpp.
#include "risk/verdict.h"

#include <algorithm>
#include <set>

#include "compare/coverage_account.h"
#include "risk/cell_texts.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;
using model::VerdictLevel;

VerdictLevel levelOfNumber(int level) {
    switch (level) {
        case 0: return VerdictLevel::NoDifference;
        case 1: return VerdictLevel::SmallDifferences;
        case 2: return VerdictLevel::ConfirmFunction;
        case 3: return VerdictLevel::BenchTest;
        default: return VerdictLevel::DoNotSubstitute;
    }
}

texts::Counts countParameters(model::Comparison const& comparison) {
    texts::Counts counts;
    for (auto const& pair : comparison.pairs) {
        ++counts.all;
        bool const unreadable = pair.relation == Relation::NotComparable || pair.relation == Relation::UnitConflict || pair.relation == Relation::Unread;
        if (!pair.reference.empty() && !pair.candidate.empty() && !unreadable) ++counts.compared;
    }
    return counts;
}

texts::CheckCounts countChecks(model::Comparison const& comparison) {
    texts::CheckCounts counts;
    for (auto const& check : comparison.cell) {
        switch (check.candidate ? check.candidate->outcome : model::CheckOutcome::Open) {
            case model::CheckOutcome::Holds: ++counts.holds; break;
            case model::CheckOutcome::Violated: ++counts.violated; break;
            case model::CheckOutcome::Open: ++counts.open; break;
        }
    }
    return counts;
}

// Groups of which a pair of sheets of the family must state one parameter.
std::vector<std::string> missingEssentials(SheetView const& sheets) {
    std::vector<std::string> missing;
    if (sheets.family().empty()) return missing;
    std::set<std::string> stated;
    for (auto const* sheet : {&sheets.reference(), &sheets.candidate()}) {
        for (auto const& parameter : sheet->parameters) {
            if (parameter.canonical.empty()) continue;
            if (auto const* entry = sheets.vocabulary().find(parameter.canonical, sheets.family())) stated.insert(entry->essential);
        }
    }
    for (auto const* entry : sheets.vocabulary().parameters()) {
        bool const wanted = !entry->essential.empty() && entry->family == sheets.family() && stated.count(entry->essential) == 0;
        if (wanted && std::find(missing.begin(), missing.end(), entry->essential) == missing.end()) missing.push_back(entry->essential);
    }
    return missing;
}

bool isValue(Finding const& finding) {
    if (finding.kind == FindingKind::Cell) return true;
    return (finding.kind == FindingKind::Parameter || finding.kind == FindingKind::Feature) && finding.reference && finding.candidate;
}

void addSide(std::vector<std::string>& reasons, std::string_view name, model::Datasheet const& sheet) {
    if (!sheet.coverage.pagesWithoutText.empty()) reasons.push_back(texts::pagesWithoutText(name, sheet.coverage.pagesWithoutText));
    if (!sheet.coverage.recognised.empty()) reasons.push_back(texts::recognised(name));
    if (!sheet.coverage.drawnSigns.empty()) reasons.push_back(texts::drawnSigns(name, sheet.coverage.drawnSigns.size()));
    if (!sheet.coverage.unreadTables.empty()) reasons.push_back(texts::unreadTables(name, sheet.coverage.unreadTables.size()));
    if (sheet.parameters.empty()) reasons.push_back(texts::noParameters(name));
}

bool hasGaps(model::Coverage const& coverage) {
    return !coverage.pagesWithoutText.empty() || !coverage.unreadTables.empty() || !coverage.recognised.empty() || !coverage.drawnSigns.empty();
}

}  // namespace

std::vector<model::Caution> collectCautions(std::vector<Finding> const& findings, std::vector<std::vector<std::string>> const& called, vocabulary::Vocabulary const& vocabulary) {
    std::vector<model::Caution> cautions;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        for (auto const& id : called[i]) {
            auto found = std::find_if(cautions.begin(), cautions.end(), [&](auto const& known) { return known.id == id; });
            if (found == cautions.end()) {
                std::string const& text = vocabulary.cautionText(id);
                if (text.empty()) continue;
                cautions.push_back({.id = id, .text = text, .findings = {}});
                found = cautions.end() - 1;
            }
            found->findings.push_back(findings[i].id);
        }
    }
    return cautions;
}

model::Verdict verdictOf(model::Comparison const& comparison, SheetView const& sheets) {
    model::Verdict verdict;
    int level = 0;
    int open = 0;
    int typicalOnly = 0;
    int coverageFindings = 0;
    for (auto const& finding : comparison.findings) {
        level = std::max(level, finding.level);
        if (finding.severity > Severity::Editorial) level = std::max(level, 1);
        if (!finding.open) continue;
        if (finding.kind == FindingKind::Coverage) ++coverageFindings;
        else if (finding.consequenceOf.empty()) ++open;
        if (finding.kind == FindingKind::Parameter && finding.caution == "C-TYP") ++typicalOnly;
    }

    auto& reasons = verdict.incompleteReasons;
    if (comparison.hasReference()) addSide(reasons, "reference", sheets.reference());
    addSide(reasons, "candidate", sheets.candidate());
    auto const unaccounted = static_cast<int>(sheets.reference().coverage.unaccounted.size() + sheets.candidate().coverage.unaccounted.size());
    if (unaccounted > 0 || comparison.coverage.unaccounted > 0) reasons.push_back(texts::unaccountedNumbers(std::max(unaccounted, comparison.coverage.unaccounted)));
    for (auto const& what : missingEssentials(sheets)) reasons.push_back(comparison.hasReference() ? texts::statedInNeither(what) : texts::notStatedInSheet(what));
    // Equal typical values without limits of something hazardous: nothing differs, nothing is promised.
    int equalWithoutLimits = 0;
    for (auto const& pair : comparison.pairs) {
        if (pair.relation == Relation::TypEqual && pair.judgement == model::Judgement::Open) ++equalWithoutLimits;
    }
    if (equalWithoutLimits + typicalOnly > 0) reasons.push_back(texts::typicalOnly(equalWithoutLimits + typicalOnly));
    if (open > 0) reasons.push_back(texts::openFindings(open));
    if (coverageFindings > 0) reasons.push_back(texts::coverageFindings(coverageFindings));

    verdict.incomplete = !reasons.empty();
    bool const unread = hasGaps(sheets.reference().coverage) || hasGaps(sheets.candidate().coverage);
    if (level == 0 && (unaccounted > 0 || comparison.coverage.unaccounted > 0 || unread)) {
        level = 1;  // "no difference" is never said over what was not read
    }
    verdict.level = levelOfNumber(level);
    Finding const* first = nullptr;
    for (auto const& finding : comparison.findings) {
        bool const decides = finding.level == level || (level == 1 && finding.severity > Severity::Editorial);
        if (level == 0 || !decides) continue;
        // A value says what happens better than the sentence about it.
        if (first == nullptr || (!isValue(*first) && isValue(finding))) first = &finding;
        verdict.reasons.push_back(finding.id);
    }
    if (!comparison.hasReference()) {
        verdict.sentence = texts::checkSentence(verdict.level, countChecks(comparison), first == nullptr ? std::string_view() : std::string_view(first->title));
        return verdict;
    }
    verdict.sentence = texts::verdictSentence(verdict.level, countParameters(comparison), first == nullptr ? std::string_view() : std::string_view(first->title),
                                              std::max(0, static_cast<int>(verdict.reasons.size()) - 1), verdict.incomplete);
    return verdict;
}

}  // namespace standin::risk
