// Tested by tests/src/risk/cell_findings_test.cpp.
#include "risk/cell_findings.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "compare/finding_id.h"
#include "risk/cell_checks.h"
#include "risk/cell_texts.h"
#include "risk/levels.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

using model::CellCheck;
using model::CheckOutcome;
using model::Finding;
using model::FindingKind;
using model::Judgement;
using model::Relation;
using model::Severity;

// What is missing in the user's own files is for him to add: it leaves the verdict
// incomplete and says nothing against the part.
Level levelOfCheck(PartCheck const& candidate, Severity severity) {
    switch (candidate.result.outcome) {
        case CheckOutcome::Violated: return {candidate.level, false};
        case CheckOutcome::Holds: return {1, false};
        case CheckOutcome::Open: break;
    }
    if (candidate.missing == MissingIn::Files) return {1, true};
    Level level = levelOf(Outcome::HazardBoundOpen, severity);
    level.open = true;
    return level;
}

model::Side sideOf(PartCheck const& check) {
    model::Side side;
    side.text = check.result.value;
    if (!check.result.why.empty()) side.text += (side.text.empty() ? "" : ": ") + check.result.why;
    if (side.text.empty()) side.text = "nothing to set against it";
    for (auto const& input : check.result.inputs) {
        if (input.page == 0) continue;
        side.page = input.page;
        side.box = input.box;
        break;
    }
    return side;
}

class CheckFindings {
public:
    CheckFindings(model::Comparison& comparison, SheetView const& sheets) : m_comparison(comparison), m_sheets(sheets) {}

    void add(CheckEntry const& entry, std::optional<PartCheck> const& reference, PartCheck const& candidate) {
        CellCheck check;
        check.check = entry.id;
        check.title = entry.title;
        check.limit = candidate.limit;
        check.bounds = candidate.bounds;
        if (reference) check.reference = reference->result;
        check.candidate = candidate.result;
        Level const level = levelOfCheck(candidate, entry.severity);
        check.level = candidate.result.outcome == CheckOutcome::Holds ? 0 : level.level;
        m_comparison.cell.push_back(check);
        bool const referenceFails = reference && reference->result.outcome == CheckOutcome::Violated;
        if (candidate.result.outcome == CheckOutcome::Holds && !referenceFails) return;

        Finding finding;
        finding.kind = FindingKind::Cell;
        finding.canonical = entry.id;
        finding.level = level.level;
        finding.open = level.open;
        finding.severity = severityAt(level.level, entry.severity);
        std::vector<std::string> called;
        switch (candidate.result.outcome) {
            case CheckOutcome::Violated:
                finding.judgement = entry.severity == Severity::Hazard ? Judgement::HazardSide : Judgement::NuisanceSide;
                finding.hazardSide = entry.severity == Severity::Hazard ? model::HazardSide::Unknown : model::HazardSide::None;
                break;
            case CheckOutcome::Open:
                finding.judgement = Judgement::Open;
                if (candidate.missing == MissingIn::Files) finding.severity = Severity::Note;
                break;
            case CheckOutcome::Holds:
                finding.judgement = Judgement::Better;
                finding.severity = Severity::Note;
                break;
        }
        bool const asks = finding.judgement != Judgement::Better && !(candidate.result.outcome == CheckOutcome::Open && candidate.missing == MissingIn::Files);
        if (asks && !entry.caution.empty()) {
            called.emplace_back(entry.caution);
            finding.caution = entry.caution;
        }
        finding.candidate = sideOf(candidate);
        if (reference) finding.reference = sideOf(*reference);
        bool const alike = reference && reference->result.outcome == candidate.result.outcome;
        finding.relation = !reference ? Relation::OnlyCandidate : alike ? Relation::Same : Relation::ModeDiffers;
        std::string action;
        if (auto const* caution = m_sheets.vocabulary().caution(finding.caution)) action = caution->check;
        finding.title = texts::checkTitle(check);
        finding.explanation = texts::checkExplanation(check, entry.violation, action);
        for (auto const& input : candidate.result.inputs) {
            if (!input.parameter.empty()) finding.affects.push_back("c:" + input.parameter);
        }
        if (reference && !alike && candidate.result.outcome == CheckOutcome::Violated) hangUnderCause(finding, entry);
        m_findings.push_back(std::move(finding));
        m_called.push_back(std::move(called));
        m_checkOfFinding.push_back(m_comparison.cell.size() - 1);
    }

    void finish(std::vector<std::vector<std::string>>& called) {
        compare::nameFindings(m_findings);
        for (std::size_t i = 0; i < m_findings.size(); ++i) m_comparison.cell[m_checkOfFinding[i]].finding = m_findings[i].id;
        std::move(m_findings.begin(), m_findings.end(), std::back_inserter(m_comparison.findings));
        std::move(m_called.begin(), m_called.end(), std::back_inserter(called));
    }

private:
    // The printed change that makes the candidate fare worse than the reference.
    void hangUnderCause(Finding& finding, CheckEntry const& entry) {
        Finding* cause = nullptr;
        for (auto& other : m_comparison.findings) {
            bool const about = other.canonical == entry.canonical && (other.kind == FindingKind::Parameter || other.kind == FindingKind::Feature);
            if (about && other.consequenceOf.empty() && (cause == nullptr || other.level > cause->level)) cause = &other;
        }
        if (cause == nullptr) return;
        finding.consequenceOf = cause->id;
        // Beyond the cell's own limit: the change weighs as much as what follows from it.
        cause->level = std::max(cause->level, finding.level);
        cause->severity = std::max(cause->severity, finding.severity);
    }

    model::Comparison& m_comparison;
    SheetView const& m_sheets;
    std::vector<Finding> m_findings;
    std::vector<std::vector<std::string>> m_called;
    std::vector<std::size_t> m_checkOfFinding;
};

constexpr std::string_view kProtection = "lithium-protection";

// Thresholds of another kind of part have nothing to do with these checks.
void addNotMade(model::Comparison& comparison, std::string const& family, std::vector<std::vector<std::string>>& called) {
    std::vector<Finding> findings(1);
    Finding& finding = findings.front();
    finding.kind = FindingKind::Cell;
    finding.relation = Relation::NotComparable;
    finding.canonical = "not-made";
    finding.level = 1;
    finding.open = true;
    finding.severity = Severity::Note;
    finding.title = texts::checksNotMade(family);
    finding.explanation = texts::checksNotMadeExplanation();
    compare::nameFindings(findings);
    comparison.findings.push_back(std::move(findings.front()));
    called.emplace_back();
}

}  // namespace

void addCellChecks(model::Comparison& comparison, SheetView const& sheets, BothValues const& values, Surroundings const& around,
                   std::vector<std::vector<std::string>>& called) {
    if (around.cell == nullptr) return;
    comparison.cellName = around.cell->name();
    if (!sheets.family().empty() && sheets.family() != kProtection) {
        addNotMade(comparison, sheets.vocabulary().familyTitle(sheets.family()), called);
        return;
    }
    auto const candidate = checkPart(*values.candidate, around, sheets.vocabulary());
    auto const reference = values.reference == nullptr ? std::vector<PartCheck>{} : checkPart(*values.reference, around, sheets.vocabulary());
    auto const entries = checkEntries();
    CheckFindings findings(comparison, sheets);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        findings.add(entries[i], reference.empty() ? std::nullopt : std::optional(reference[i]), candidate[i]);
    }
    findings.finish(called);
}

}  // namespace standin::risk
