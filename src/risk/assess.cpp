// Each finding by its kind (judge_parameter, judge_text), then the order, the
// cautions and the verdict.
// Tested by tests/src/risk/assess_test.cpp.
#include "risk/assess.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "compare/conditions.h"
#include "compare/coverage_account.h"
#include "compare/ordered_version.h"
#include "compare/pin_findings.h"
#include "compare/relation.h"
#include "model/crew.h"
#include "risk/cell_findings.h"
#include "risk/claimed_changes.h"
#include "risk/derived.h"
#include "risk/finding_groups.h"
#include "risk/judge_parameter.h"
#include "risk/judge_text.h"
#include "risk/recognised_places.h"
#include "risk/sheet_view.h"
#include "risk/texts.h"
#include "risk/verdict.h"

namespace standin::risk {

namespace {

using model::Finding;
using model::FindingKind;
using model::HazardSide;
using model::Judgement;
using model::Relation;
using model::Severity;
using vocabulary::ParameterEntry;

// Cautions whose text says that the candidate is the worse one.
bool onlyWhenWorse(std::string_view caution) {
    constexpr std::array<std::string_view, 7> kCautions = {"C-OC", "C-OD", "C-CI", "C-DRN", "C-CHG", "C-AMR", "C-TOL"};
    return std::find(kCautions.begin(), kCautions.end(), caution) != kCautions.end();
}

std::string nameOf(ParameterEntry const* entry, model::Parameter const* parameter) {
    if (entry != nullptr) return entry->title;
    if (parameter == nullptr) return "Parameter";
    if (parameter->name.empty()) return parameter->symbol.empty() ? "Parameter" : texts::shortened(parameter->symbol, 60);
    return texts::shortened(parameter->name, 60);
}

class Assessing {
public:
    Assessing(model::Comparison compared, SheetView const& sheets, AssessOptions const& options) : m_comparison(std::move(compared)), m_sheets(sheets), m_options(options) {}

    model::Comparison run() {
        judgePairs();
        m_called.resize(m_comparison.findings.size());
        // A finding is judged by itself; it writes to the pair it came from and to nothing else.
        model::inParts(m_comparison.findings.size(), [this](std::size_t first, std::size_t last) {
            for (std::size_t i = first; i < last; ++i) judgeFinding(m_comparison.findings[i], m_called[i]);
        });
        limitConsequences();
        groupFindings(m_comparison.findings, m_called, m_sheets);
        addWorkedOut();
        setAgainstHistory(m_comparison, m_sheets, m_called);
        sortFindings();
        m_comparison.cautions = collectCautions(m_comparison.findings, m_called, m_sheets.vocabulary());
        m_comparison.statements = m_sheets.vocabulary().generalStatements();
        m_comparison.verdict = verdictOf(m_comparison, m_sheets);
        return std::move(m_comparison);
    }

private:
    std::pair<model::Parameter const*, model::Parameter const*> parametersOf(Finding const& finding) const {
        std::string_view reference;
        std::string_view candidate;
        if (finding.pair >= 0 && static_cast<std::size_t>(finding.pair) < m_comparison.pairs.size()) {
            auto const& pair = m_comparison.pairs[static_cast<std::size_t>(finding.pair)];
            reference = pair.reference;
            candidate = pair.candidate;
        }
        for (std::string_view affected : finding.affects) {
            if (affected.substr(0, 2) == "r:" && reference.empty()) reference = affected.substr(2);
            if (affected.substr(0, 2) == "c:" && candidate.empty()) candidate = affected.substr(2);
        }
        return {m_sheets.referenceParameter(reference), m_sheets.candidateParameter(candidate)};
    }

    ParameterEntry const* entryOf(std::string const& canonical) const { return canonical.empty() ? nullptr : m_sheets.vocabulary().find(canonical, m_sheets.family()); }

    Terms termsFor(ParameterEntry const* entry, model::Parameter const* r, model::Parameter const* c, std::string const& printed, std::string& caution) const {
        model::Parameter const* any = r != nullptr ? r : c;
        Terms terms = termsOf(entry, any != nullptr ? any->kind : model::ParameterKind::Other);
        if (entry != nullptr) {
            caution = entry->caution;
            for (auto const& word : entry->hazardWhen) {
                if (m_sheets.vocabulary().names(printed, word)) terms.severity = Severity::Hazard;
            }
            return terms;
        }
        // Not in the vocabulary: by what its name is about. Its condition only says how it was measured.
        auto const topics = m_sheets.vocabulary().topics(namesOf(r, c), m_sheets.family());
        if (!topics.empty() && terms.severity >= Severity::Function && topics.front().severity > terms.severity) {
            terms.severity = topics.front().severity;
        }
        if (!topics.empty()) caution = topics.front().caution;
        return terms;
    }

    void judgeFinding(Finding& finding, std::vector<std::string>& called) {
        if (finding.kind == FindingKind::Parameter) judge(finding, called);
        else judgeOther(finding, called);
        finding.severity = severityAt(finding.level, finding.severity);
        if (finding.kind == FindingKind::Coverage) finding.severity = std::max(finding.severity, Severity::Note);
    }

    static std::string namesOf(model::Parameter const* r, model::Parameter const* c) {
        std::string names = r != nullptr ? r->name : std::string();
        if (c != nullptr && (r == nullptr || c->name != r->name)) names += " " + c->name;
        return names;
    }

    static std::string printedOf(model::Parameter const* parameter) { return parameter == nullptr ? std::string() : parameter->name + " " + parameter->condition; }

    // By what comparison took for one column (compare/relation.h).
    static ParameterJudgement judgeInOneColumn(Facts const& facts, model::Parameter const* r, model::Parameter const* c, Terms const& terms) {
        if (r == nullptr || c == nullptr || facts.relation == Relation::OneSided) return judgeParameter(facts, r, c, terms);
        auto const one = compare::inOneColumn(*r, *c, terms.known ? std::optional(terms.role) : std::nullopt);
        return one ? judgeParameter(facts, &one->reference, &one->candidate, terms) : judgeParameter(facts, r, c, terms);
    }

    void judgePairs() {
        for (auto& pair : m_comparison.pairs) {
            auto const* r = m_sheets.referenceParameter(pair.reference);
            auto const* c = m_sheets.candidateParameter(pair.candidate);
            std::string caution;
            auto const* entry = entryOf(pair.canonical);
            Terms const terms = termsFor(entry, r, c, entry != nullptr && entry->hazardWhen.empty() ? std::string() : printedOf(r != nullptr ? r : c), caution);
            auto const judged = judgeInOneColumn({.relation = pair.relation, .conditions = model::ConditionRelation::Same}, r, c, terms);
            pair.judgement = judged.judgement;
            if (pair.relation == Relation::Same || pair.relation == Relation::ModeSame) pair.judgement = Judgement::Complies;
            if (pair.relation == Relation::TypEqual) pair.judgement = judged.level.open ? Judgement::Open : Judgement::Complies;
        }
    }

    // "No hysteresis" turns a release voltage into a hazard: it lies no longer below the detection.
    bool releaseReachesDetection(model::Parameter const* release) const {
        if (release == nullptr || !release->interval || !release->interval->hi) return false;
        auto const high = quantity::Decimal::parse(*release->interval->hi);
        for (auto const& parameter : m_sheets.candidate().parameters) {
            if (parameter.canonical != "overcharge-detect-voltage" || parameter.variant != release->variant) continue;
            if (!parameter.interval || !parameter.interval->lo || !high) continue;
            auto const low = quantity::Decimal::parse(*parameter.interval->lo);
            if (low && *high >= *low) return true;
        }
        return false;
    }

    void judge(Finding& finding, std::vector<std::string>& called) {
        auto const [r, c] = parametersOf(finding);
        auto const* entry = entryOf(finding.canonical);
        std::string caution;
        Terms terms = termsFor(entry, r, c, printedOf(r) + " " + printedOf(c), caution);
        if (entry != nullptr && entry->id == "overcharge-release-voltage" && releaseReachesDetection(c)) terms.severity = Severity::Hazard;
        bool const turned = compare::saysOnlyDirection(finding) || compare::saysOnlyLoadBound(finding);
        if (turned) terms.severity = Severity::Note;
        auto const judged =
            judgeInOneColumn({.relation = turned ? Relation::Same : finding.relation, .conditions = turned ? model::ConditionRelation::Same : finding.conditions}, r, c, terms);
        finding.judgement = judged.judgement;
        finding.hazardSide = entry == nullptr && terms.severity >= Severity::Function && terms.role == vocabulary::Role::Window ? HazardSide::Unknown : judged.hazardSide;
        // What is reported as a difference is at least level 1, whatever decided.
        Level const level = worse(judged.level, {1, false});
        finding.level = level.level;
        finding.open = level.open;
        finding.severity = terms.severity;
        if (finding.pair >= 0 && static_cast<std::size_t>(finding.pair) < m_comparison.pairs.size()) {
            m_comparison.pairs[static_cast<std::size_t>(finding.pair)].judgement = judged.judgement;
        }

        bool const worse = judged.judgement == Judgement::HazardSide || judged.judgement == Judgement::Worse || judged.judgement == Judgement::Open;
        bool const shown = !caution.empty() && (worse || (judged.judgement == Judgement::NuisanceSide && !onlyWhenWorse(caution)));
        bool const doubtful = finding.relation == Relation::UnitConflict || finding.relation == Relation::ConflictInDocument || finding.relation == Relation::Unread;
        bool const typical = judged.typicalOnly || finding.relation == Relation::TypDiffers || finding.relation == Relation::TypEqual;
        bool const belongs = finding.relation != Relation::OnlyCandidate;
        if (shown && belongs) called.push_back(caution);
        if (doubtful) called.emplace_back("C-READ");
        if (typical && judged.outcome != Outcome::Better && judged.outcome != Outcome::OnlyCandidate) called.emplace_back("C-TYP");
        std::string const doubts = doubtsOf(r, c);
        if (!doubts.empty() && !doubtful) called.emplace_back("C-READ");
        if (!called.empty()) finding.caution = called.front();

        std::string check;
        if (auto const* known = m_sheets.vocabulary().caution(finding.caution)) check = known->check;
        std::string const name = nameOf(entry, r != nullptr ? r : c);
        std::string const unit = entry != nullptr && !entry->unit.empty() ? entry->unit
                                 : r != nullptr && r->interval            ? r->interval->unit
                                 : c != nullptr && c->interval            ? c->interval->unit
                                                                          : std::string();
        finding.title =
            texts::capitalised(texts::parameterTitle(name, finding, judged, terms.role, r != nullptr && r->interval && !r->interval->unit.empty() ? r->interval->unit : unit));
        finding.explanation = texts::parameterExplanation(finding, judged, effectOf(entry, judged, terms), check) + doubts;
    }

    // Which of the rows may be misread, and why; a blank before each sentence.
    static std::string doubtsOf(model::Parameter const* r, model::Parameter const* c) {
        std::string doubts;
        for (auto const& [side, row] : {std::pair("reference", r), std::pair("candidate", c)}) {
            if (row != nullptr && compare::isDoubted(*row)) doubts += " " + texts::mayBeMisread(side, row->confidence.reasons);
        }
        return doubts;
    }

    static std::string effectOf(ParameterEntry const* entry, ParameterJudgement const& judged, Terms const& terms) {
        if (entry == nullptr || judged.outcome == Outcome::Better || judged.outcome == Outcome::HarsherComplies) return {};
        bool const range = terms.role == vocabulary::Role::Withstand || terms.role == vocabulary::Role::OperatingRange;
        if (range) return entry->lower.empty() ? entry->higher : entry->lower;
        if (judged.outcome == Outcome::HazardBoundOpen || judged.outcome == Outcome::OnlyReference || judged.outcome == Outcome::NotComparable ||
            judged.outcome == Outcome::SignLost || judged.outcome == Outcome::ConditionsOpen) {
            return terms.bound == vocabulary::Bound::Min ? entry->lower : entry->higher;
        }
        if (!judged.distance) return {};
        return judged.distance->higher ? entry->higher : entry->lower;
    }

    // Lines of the ordering tables beside those of the two chosen versions.
    bool isOfOtherVersions(Finding const& finding) const {
        if (finding.kind != FindingKind::Ordering || !finding.reference || !finding.candidate) return false;
        auto const* r = compare::lineOfVersion(m_sheets.reference(), m_options.referenceVariant);
        auto const* c = compare::lineOfVersion(m_sheets.candidate(), m_options.candidateVariant);
        if (r == nullptr || c == nullptr) return false;
        return compare::orderingLineAt(m_sheets.reference().ordering, *finding.reference) != r || compare::orderingLineAt(m_sheets.candidate().ordering, *finding.candidate) != c;
    }

    void judgeOther(Finding& finding, std::vector<std::string>& called) {
        std::string const cause = finding.title;
        if (finding.kind == FindingKind::Coverage) {
            finding.title = texts::coverageCause(cause);
            finding.explanation = texts::coverageCauseExplanation(cause);
            called.emplace_back(cause == compare::kVariantsNotChosen ? "C-VAR" : "C-READ");
        }
        auto judged = judgeText(finding, m_sheets);
        if (isOfOtherVersions(finding)) {
            judged.level = {std::min(judged.level.level, 1), false};
            judged.severity = std::min(judged.severity, Severity::Note);
            judged.caution.clear();
        }
        finding.level = judged.level.level;
        finding.open = judged.level.open;
        finding.severity = judged.severity;
        finding.judgement = judged.judgement;
        finding.title = texts::capitalised(judged.title);
        finding.explanation = judged.explanation;
        if (!judged.caution.empty()) called.push_back(judged.caution);
        if (!called.empty()) finding.caution = called.front();
        bool const hazardous = finding.severity == Severity::Hazard && finding.level >= 3;
        finding.hazardSide = hazardous ? HazardSide::Unknown : HazardSide::None;
    }

    // A text that follows from a feature or a parameter says what that one was
    // judged by more exactly: it weighs no more.
    void limitConsequences() {
        std::unordered_map<std::string_view, Finding const*> exact;
        for (auto const& finding : m_comparison.findings) {
            if (finding.kind == FindingKind::Feature || finding.kind == FindingKind::Parameter) exact.emplace(finding.id, &finding);
        }
        for (auto& finding : m_comparison.findings) {
            if (finding.consequenceOf.empty() || finding.kind == FindingKind::Feature || finding.kind == FindingKind::Parameter) continue;
            auto const cause = exact.find(finding.consequenceOf);
            if (cause == exact.end()) continue;
            finding.severity = std::min(finding.severity, cause->second->severity);
            finding.level = std::min(finding.level, cause->second->level);
        }
    }

    void addWorkedOut() {
        StatedValues const reference(m_sheets.reference(), m_options.referenceVariant, m_sheets.vocabulary());
        StatedValues const candidate(m_sheets.candidate(), m_options.candidateVariant, m_sheets.vocabulary());
        BothValues const values{.reference = m_comparison.hasReference() ? &reference : nullptr, .candidate = &candidate};
        addDerived(m_comparison, m_sheets, values, m_options.around, m_called);
        addCellChecks(m_comparison, m_sheets, values, m_options.around, m_called);
        if (m_options.around.circuit != nullptr) m_comparison.circuitName = m_options.around.circuit->name();
    }

    // By severity; within it the order of alignment: reference, then candidate.
    void sortFindings() {
        std::vector<std::size_t> order(m_comparison.findings.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) { return m_comparison.findings[a].severity > m_comparison.findings[b].severity; });
        std::vector<Finding> findings;
        std::vector<std::vector<std::string>> called;
        findings.reserve(order.size());
        called.reserve(order.size());
        for (std::size_t const index : order) {
            findings.push_back(std::move(m_comparison.findings[index]));
            called.push_back(std::move(m_called[index]));
        }
        m_comparison.findings = std::move(findings);
        m_called = std::move(called);
    }

    model::Comparison m_comparison;
    SheetView const& m_sheets;
    AssessOptions const& m_options;
    std::vector<std::vector<std::string>> m_called;  // caution ids of each finding
};

}  // namespace

model::Comparison assess(model::Comparison compared, model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary,
                         AssessOptions const& options) {
    return assess(std::move(compared), SheetView(reference, candidate, vocabulary), options);
}

model::Comparison assess(model::Comparison compared, SheetView const& sheets, AssessOptions const& options) {
    auto assessed = Assessing(std::move(compared), sheets, options).run();
    markRecognised(assessed, sheets.reference(), sheets.candidate());
    return assessed;
}

}  // namespace standin::risk
