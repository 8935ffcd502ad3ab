// Both sides are worked out in the same scope, related and judged like a printed
// parameter. A finding never weighs more than the one it follows from: what is
// printed was judged there already.
// Tested by tests/src/risk/derived_test.cpp.
#include "risk/derived.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include <fmt/format.h>

#include "compare/finding_id.h"
#include "compare/relation.h"
#include "risk/cell_texts.h"
#include "risk/judge_parameter.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;
using quantity::Decimal;

model::Parameter asParameter(WorkedOut const& result, std::string const& unit) {
    auto const value = shown(result, unit);
    auto const text = [](std::string const& bound) { return bound.empty() ? std::nullopt : std::optional(bound); };
    model::Parameter made;
    made.interval = model::Interval{.lo = text(value.min), .typ = text(value.typ), .hi = text(value.max), .loOpen = false, .hiOpen = false, .unit = unit, .relativeTo = {}, .factor = {}};
    return made;
}

model::Side sideOf(model::WorkedValue const& value) {
    model::Side side;
    side.text = texts::inputList(value.inputs);
    side.min = value.min;
    side.typ = value.typ;
    side.max = value.max;
    side.unit = value.unit;
    for (auto const& input : value.inputs) {
        if (input.page == 0) continue;
        side.page = input.page;
        side.box = input.box;
        break;
    }
    return side;
}

// The gravest finding about a parameter that went in.
Finding const* causeOf(std::vector<Finding> const& findings, model::Derived const& derived) {
    Finding const* cause = nullptr;
    auto const takes = [](std::optional<model::WorkedValue> const& side, std::string const& canonical) {
        return side && std::any_of(side->inputs.begin(), side->inputs.end(), [&](auto const& input) { return input.name == canonical; });
    };
    for (auto const& finding : findings) {
        if (finding.kind != FindingKind::Parameter || !finding.consequenceOf.empty() || finding.canonical.empty()) continue;
        if (!takes(derived.reference, finding.canonical) && !takes(derived.candidate, finding.canonical)) continue;
        if (cause == nullptr || finding.level > cause->level) cause = &finding;
    }
    return cause;
}

bool fallsShort(vocabulary::DerivedEntry const& entry, std::optional<model::WorkedValue> const& value) {
    if (entry.least.empty() || !value || value->min.empty()) return false;
    auto const least = Decimal::parse(entry.least);
    auto const stated = Decimal::parse(value->min);
    return least && stated && *stated < *least;
}

class Deriving {
public:
    Deriving(model::Comparison& comparison, SheetView const& sheets, BothValues const& values, Surroundings const& around)
        : m_comparison(comparison), m_sheets(sheets), m_values(values), m_around(around) {}

    void run(std::vector<std::vector<std::string>>& called) {
        for (auto const& entry : m_sheets.vocabulary().derived()) {
            if (entry.family != "generic" && entry.family != m_sheets.family()) continue;
            add(entry);
        }
        compare::nameFindings(m_findings);
        std::move(m_findings.begin(), m_findings.end(), std::back_inserter(m_comparison.findings));
        std::move(m_called.begin(), m_called.end(), std::back_inserter(called));
    }

private:
    void add(vocabulary::DerivedEntry const& entry) {
        Scope scope = scopeFor(entry, *m_values.candidate);
        if (m_values.reference != nullptr && scopeFor(entry, *m_values.reference) == Scope::Room) scope = Scope::Room;
        auto const candidate = workOut(entry, *m_values.candidate, m_around, scope);
        auto const reference = m_values.reference == nullptr ? WorkedOut{} : workOut(entry, *m_values.reference, m_around, scope);
        // What one sheet prints itself stands beside what the other gives only when worked out.
        if (!candidate.computed() && !reference.computed()) return;
        auto const stands = [](WorkedOut const& side) { return !side.limits.empty() && side.fromSheet; };

        model::Derived derived;
        derived.canonical = entry.id;
        derived.title = entry.title;
        derived.formula = entry.formula;
        derived.notes = entry.notes;
        if (stands(reference)) derived.reference = shown(reference, entry.unit);
        if (stands(candidate)) derived.candidate = shown(candidate, entry.unit);
        for (auto* side : {&derived.reference, &derived.candidate}) {
            if (fallsShort(entry, *side)) (*side)->notes.push_back(entry.shortfall);
        }
        if (derived.reference && derived.candidate) relate(entry, derived, asParameter(reference, entry.unit), asParameter(candidate, entry.unit));
        else derived.relation = derived.reference ? Relation::OnlyReference : Relation::OnlyCandidate;
        m_comparison.derived.push_back(std::move(derived));
    }

    void relate(vocabulary::DerivedEntry const& entry, model::Derived& derived, model::Parameter const& reference, model::Parameter const& candidate) {
        derived.relation = compare::relateIntervals(*reference.interval, *candidate.interval);
        Terms const terms{.role = entry.role, .bound = entry.bound, .severity = entry.severity, .chargerPin = false, .polar = false};
        auto const judged = judgeParameter({.relation = derived.relation, .conditions = model::ConditionRelation::Same}, &reference, &candidate, terms);
        derived.judgement = judged.judgement;
        if (derived.relation == Relation::Same || derived.relation == Relation::TypEqual || compare::isEqual(derived.relation, reference, candidate)) {
            derived.judgement = model::Judgement::Complies;
            return;
        }
        addFinding(entry, derived, judged, terms);
    }

    void addFinding(vocabulary::DerivedEntry const& entry, model::Derived const& derived, ParameterJudgement const& judged, Terms const& terms) {
        Finding finding;
        finding.kind = FindingKind::Derived;
        finding.relation = derived.relation;
        finding.judgement = judged.judgement;
        finding.hazardSide = judged.hazardSide;
        finding.canonical = entry.id;
        finding.reference = sideOf(*derived.reference);
        finding.candidate = sideOf(*derived.candidate);
        for (auto const& input : derived.reference->inputs) {
            if (!input.parameter.empty()) finding.affects.push_back("r:" + input.parameter);
        }
        for (auto const& input : derived.candidate->inputs) {
            if (!input.parameter.empty()) finding.affects.push_back("c:" + input.parameter);
        }
        Level level = worse(judged.level, {1, false});
        bool const newShortfall = fallsShort(entry, derived.candidate) && !fallsShort(entry, derived.reference);
        if (newShortfall) level = worse(level, {2, false});
        finding.open = level.open;
        finding.level = level.level;
        finding.severity = severityAt(level.level, entry.severity);
        // Without a finding of its own for an input the difference is told, but decides nothing.
        auto const* cause = causeOf(m_comparison.findings, derived);
        finding.level = std::min(finding.level, cause == nullptr ? 1 : cause->level);
        finding.severity = std::min(finding.severity, cause == nullptr ? Severity::Note : cause->severity);
        if (cause != nullptr) finding.consequenceOf = cause->id;

        bool const worse = judged.judgement == model::Judgement::HazardSide || judged.judgement == model::Judgement::Worse || judged.judgement == model::Judgement::Open;
        std::string check;
        std::vector<std::string> called;
        if (worse && !entry.caution.empty()) {
            called.push_back(entry.caution);
            finding.caution = entry.caution;
            if (auto const* caution = m_sheets.vocabulary().caution(entry.caution)) check = caution->check;
        }
        std::string const effect = judged.outcome == Outcome::Better || !judged.distance ? std::string() : judged.distance->higher ? entry.higher : entry.lower;
        finding.title = texts::parameterTitle(entry.title, finding, judged, terms.role, entry.unit);
        finding.explanation = texts::derivedExplanation(finding, judged, entry.formula, newShortfall ? entry.shortfall : effect, check);
        m_findings.push_back(std::move(finding));
        m_called.push_back(std::move(called));
    }

    model::Comparison& m_comparison;
    SheetView const& m_sheets;
    BothValues const& m_values;
    Surroundings const& m_around;
    std::vector<Finding> m_findings;
    std::vector<std::vector<std::string>> m_called;
};

}  // namespace

void addDerived(model::Comparison& comparison, SheetView const& sheets, BothValues const& values, Surroundings const& around,
                std::vector<std::vector<std::string>>& called) {
    Deriving(comparison, sheets, values, around).run(called);
}

}  // namespace standin::risk
