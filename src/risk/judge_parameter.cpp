// The intervals are put on one axis on which the hazard lies upward or downward
// (magnitudes where the sign is a direction), then their bounds are compared one
// by one. Relations that say that there is nothing to compare go straight to the table.
// Tested by tests/src/risk/judge_parameter_test.cpp.
#include "risk/judge_parameter.h"

#include <algorithm>
#include <utility>

namespace standin::risk {

namespace {

using model::ConditionRelation;
using model::HazardSide;
using model::Judgement;
using model::Relation;
using quantity::Decimal;
using vocabulary::Bound;
using vocabulary::Role;

struct Bounds {
    std::optional<Decimal> lo, typ, hi;
    bool loOpen = false;
    bool hiOpen = false;
    [[nodiscard]] bool limited() const { return lo.has_value() || hi.has_value(); }
    [[nodiscard]] bool empty() const { return !limited() && !typ; }
};

std::optional<Decimal> decimalOf(std::optional<std::string> const& text) { return text ? Decimal::parse(*text) : std::nullopt; }

Bounds boundsOf(model::Parameter const* parameter) {
    Bounds bounds;
    if (parameter != nullptr && parameter->interval) {
        auto const& interval = *parameter->interval;
        bounds.lo = decimalOf(interval.lo);
        bounds.typ = decimalOf(interval.typ);
        bounds.hi = decimalOf(interval.hi);
        bounds.loOpen = interval.loOpen;
        bounds.hiOpen = interval.hiOpen;
    }
    return bounds;
}

bool allNegative(Bounds const& bounds) {
    auto const negative = [](std::optional<Decimal> const& value) { return !value || value->sign() <= 0; };
    return !bounds.empty() && negative(bounds.lo) && negative(bounds.typ) && negative(bounds.hi);
}

// Absolute values: -0.13 … -0.07 becomes 0.07 … 0.13.
Bounds magnitudes(Bounds const& bounds) {
    Bounds turned;
    if (bounds.typ) {
        turned.typ = bounds.typ->magnitude();
    }
    if (allNegative(bounds)) {
        turned.lo = bounds.hi ? std::optional(bounds.hi->magnitude()) : std::nullopt;
        turned.hi = bounds.lo ? std::optional(bounds.lo->magnitude()) : std::nullopt;
        turned.loOpen = bounds.hiOpen;
        turned.hiOpen = bounds.loOpen;
        return turned;
    }
    if (bounds.lo && bounds.hi && bounds.lo->sign() < 0) {
        turned.hi = std::max(bounds.lo->magnitude(), bounds.hi->magnitude());
        return turned;
    }
    return bounds;
}

// A rating printed as one negative number ("-30" for a P-channel part) is a magnitude.
bool loneNegativeMaximum(Bounds const& bounds) { return !bounds.lo && bounds.hi && bounds.hi->sign() < 0; }

std::string asciiOf(std::string_view unit) {
    std::string kept;
    for (char const c : unit) {
        if (c != ' ' && static_cast<unsigned char>(c) < 0x80U) kept += c;
    }
    return kept;
}

// "100 m" for "100 mΩ", "5 A" for "5 µA": fonts without Unicode lose such signs. The
// numbers have to agree, else the unit may be another one.
bool lacksOnlyASign(model::Parameter const* reference, model::Parameter const* candidate) {
    if (reference == nullptr || candidate == nullptr || reference->unit == candidate->unit) return false;
    std::string const r = asciiOf(reference->unit);
    std::string const c = asciiOf(candidate->unit);
    bool const lost = (r == reference->unit && c.size() < candidate->unit.size()) || (c == candidate->unit && r.size() < reference->unit.size());
    auto const same = [](std::optional<model::Value> const& a, std::optional<model::Value> const& b) { return a.has_value() == b.has_value() && (!a || a->text == b->text); };
    return lost && r == c && same(reference->min, candidate->min) && same(reference->typ, candidate->typ) && same(reference->max, candidate->max);
}

class Judging {
public:
    Judging(Facts const& facts, model::Parameter const* reference, model::Parameter const* candidate, Terms const& terms)
        : m_facts(facts),
          m_terms(terms),
          m_r(boundsOf(reference)),
          m_c(boundsOf(candidate)),
          m_signLost(facts.relation == Relation::UnitConflict && lacksOnlyASign(reference, candidate)) {
        bool const relative = (reference != nullptr && reference->interval && !reference->interval->relativeTo.empty()) ||
                              (candidate != nullptr && candidate->interval && !candidate->interval->relativeTo.empty());
        if (!relative) {
            turn();
        }
        putOnDecidingSide();
    }

    ParameterJudgement run() {
        ParameterJudgement result;
        result.hazardSide = hazardSide();
        result.outcome = decide();
        result.level = levelOf(result.outcome, m_terms.severity);
        result.judgement = judgementOf(result.outcome);
        result.distance = m_distance;
        result.typicalOnly = m_typicalOnly;
        result.turned = m_turned;
        return result;
    }

private:
    // Onto an axis where the larger magnitude is "higher".
    void turn() {
        bool const bySign = m_terms.bound == Bound::Magnitude;
        bool const polar = m_terms.polar && allNegative(m_r) && allNegative(m_c);
        bool const rating = m_terms.role == Role::Withstand && m_terms.polar && loneNegativeMaximum(m_r) && loneNegativeMaximum(m_c);
        if (bySign || polar || rating) {
            m_bothTurned = allNegative(m_r) && allNegative(m_c);
            m_turned = allNegative(m_r) || allNegative(m_c);
            bool const chain = rating && !bySign;
            m_r = magnitudes(m_r);
            m_c = magnitudes(m_c);
            if (chain || (polar && m_terms.role == Role::Withstand)) {
                // |-30| stands as a maximum again.
                for (Bounds* bounds : {&m_r, &m_c}) {
                    if (!bounds->hi && bounds->lo) {
                        std::swap(bounds->lo, bounds->hi);
                        std::swap(bounds->loOpen, bounds->hiOpen);
                    }
                }
            }
        }
    }

    // The one limit of what the part needs is printed under Min ("set-up time min 20 ns"),
    // that of what it tolerates under Max ("VIL max 0.8 V"), that of a current that flows out under either ("IOH min
    // -0.4 mA"): it decides all the same. Not where both bounds govern, nor where no entry of the vocabulary says what the row is.
    void putOnDecidingSide() {
        if (!m_terms.known) return;
        bool const turned = m_terms.bound == Bound::Magnitude && m_bothTurned;
        bool const needs = m_terms.role == Role::Cap && (m_terms.bound == Bound::Max || turned) && m_r.lo && m_c.lo && !m_r.hi && !m_c.hi;
        bool const tolerates = m_terms.role == Role::Floor && (m_terms.bound == Bound::Min || turned) && m_r.hi && m_c.hi && !m_r.lo && !m_c.lo;
        if (!needs && !tolerates) return;
        for (Bounds* bounds : {&m_r, &m_c}) {
            std::swap(bounds->lo, bounds->hi);
            std::swap(bounds->loOpen, bounds->hiOpen);
        }
    }

    [[nodiscard]] bool hazardUp() const { return m_terms.bound == Bound::Max || m_terms.bound == Bound::Both || m_terms.bound == Bound::Magnitude; }
    [[nodiscard]] bool hazardDown() const { return m_terms.bound == Bound::Min || m_terms.bound == Bound::Both; }

    [[nodiscard]] HazardSide hazardSide() const {
        if (m_terms.severity < model::Severity::Function) {
            return HazardSide::None;
        }
        switch (m_terms.role) {
            case Role::Cap: return m_terms.bound == Bound::Both ? HazardSide::Both : HazardSide::Higher;
            case Role::Floor: return HazardSide::Lower;
            case Role::Mode: return HazardSide::None;
            case Role::Withstand:
            case Role::OperatingRange: {
                bool const lower = m_r.lo.has_value() || m_c.lo.has_value();
                bool const upper = m_r.hi.has_value() || m_c.hi.has_value();
                return lower && upper ? HazardSide::Both : lower ? HazardSide::Higher : upper ? HazardSide::Lower : HazardSide::Unknown;
            }
            default: break;
        }
        switch (m_terms.bound) {
            case Bound::Max: return HazardSide::Higher;
            case Bound::Min: return HazardSide::Lower;
            case Bound::Magnitude: return m_turned ? HazardSide::Lower : HazardSide::Higher;
            case Bound::Both: return HazardSide::Both;
            case Bound::None: return HazardSide::None;
        }
        return HazardSide::Unknown;
    }

    Outcome decide() {
        if (m_signLost) return Outcome::SignLost;
        switch (m_facts.relation) {
            case Relation::OnlyReference: return Outcome::OnlyReference;
            case Relation::OnlyCandidate: return Outcome::OnlyCandidate;
            case Relation::NotComparable:
            case Relation::UnitConflict:
            case Relation::ConflictInDocument:
            case Relation::Unread: return Outcome::NotComparable;
            case Relation::ModeSame: return Outcome::Equal;
            case Relation::ModeDiffers: return Outcome::ModeDiffers;
            case Relation::ModeUnstated: return Outcome::ModeUnstated;
            default: break;
        }
        Outcome const values = decideValues();
        if (m_facts.relation != Relation::ConditionsDiffer && m_facts.conditions != ConditionRelation::Milder && m_facts.conditions != ConditionRelation::Unordered) {
            return values;
        }
        if (m_facts.conditions == ConditionRelation::Harsher && (values == Outcome::Equal || values == Outcome::Better)) {
            return Outcome::HarsherComplies;
        }
        bool const worseAlready = levelOf(values, m_terms.severity).level > levelOf(Outcome::ConditionsOpen, m_terms.severity).level;
        return worseAlready ? values : Outcome::ConditionsOpen;
    }

    Outcome decideValues() {
        if (m_r.empty() || m_c.empty()) {
            return byRelation();
        }
        if (!m_c.limited() && m_r.limited()) {
            m_typicalOnly = true;
            setDistance(Bounding::Typical, m_r.typ, m_c.typ);
            bool const above = m_r.hi && *m_c.typ > *m_r.hi;
            bool const below = m_r.lo && *m_c.typ < *m_r.lo;
            return (above && hazardUp()) || (below && hazardDown()) || (rangeRole() && (above || below) && !enclosesTypical()) ? Outcome::TypicalOnlyBeyond : Outcome::TypicalOnly;
        }
        if (!m_c.limited()) {
            m_typicalOnly = true;
            setDistance(Bounding::Typical, m_r.typ, m_c.typ);
            return m_r.typ && *m_r.typ == *m_c.typ ? Outcome::TypicalEqual : Outcome::TypicalDiffers;
        }
        if (!m_r.limited()) {
            m_typicalOnly = true;
            return Outcome::OnlyCandidate;
        }
        switch (m_terms.role) {
            case Role::Cap: return m_terms.bound == Bound::Both ? window() : cap();
            case Role::Floor: return floor();
            case Role::Withstand:
            case Role::OperatingRange: return enclosing();
            default: return window();
        }
    }

    [[nodiscard]] bool rangeRole() const { return m_terms.role == Role::Withstand || m_terms.role == Role::OperatingRange; }
    [[nodiscard]] bool enclosesTypical() const { return m_r.hi && m_c.typ && !m_r.lo && *m_c.typ >= *m_r.hi; }

    // Only the fact is known.
    Outcome byRelation() const {
        bool const range = rangeRole();
        switch (m_facts.relation) {
            case Relation::Same: return Outcome::Equal;
            case Relation::TypEqual: return Outcome::TypicalEqual;
            case Relation::TypDiffers: return Outcome::TypicalDiffers;
            case Relation::OneSided: return Outcome::HazardBoundOpen;
            case Relation::Inside: return range ? notEnclosing() : Outcome::Better;
            case Relation::Wider: return range ? Outcome::Better : Outcome::WiderBoth;
            case Relation::ReachesHigher: return range ? Outcome::Better : hazardUp() || m_terms.role == Role::Cap ? Outcome::HazardOverlap : Outcome::NuisanceOverlap;
            case Relation::ReachesLower: return range ? notEnclosing() : hazardDown() || m_terms.role == Role::Floor ? Outcome::HazardOverlap : Outcome::NuisanceOverlap;
            case Relation::ClearAbove: return range ? Outcome::Better : hazardUp() ? Outcome::ClearHazard : Outcome::ClearNuisance;
            case Relation::ClearBelow: return range ? notEnclosing() : hazardDown() ? Outcome::ClearHazard : Outcome::ClearNuisance;
            case Relation::ConditionsDiffer: return Outcome::ConditionsOpen;
            default: return Outcome::NotComparable;
        }
    }

    [[nodiscard]] Outcome notEnclosing() const { return m_terms.chargerPin ? Outcome::NotEnclosingCharger : Outcome::NotEnclosing; }

    // Does the candidate pass the reference's bound? Unknown bounds do not.
    [[nodiscard]] bool passesHigh() const { return m_r.hi && m_c.hi && (*m_c.hi > *m_r.hi || (*m_c.hi == *m_r.hi && m_r.hiOpen && !m_c.hiOpen)); }
    [[nodiscard]] bool passesLow() const { return m_r.lo && m_c.lo && (*m_c.lo < *m_r.lo || (*m_c.lo == *m_r.lo && m_r.loOpen && !m_c.loOpen)); }
    [[nodiscard]] bool equalHigh() const { return m_r.hi && m_c.hi && *m_r.hi == *m_c.hi && m_r.hiOpen == m_c.hiOpen; }
    [[nodiscard]] bool equalLow() const { return m_r.lo && m_c.lo && *m_r.lo == *m_c.lo && m_r.loOpen == m_c.loOpen; }
    [[nodiscard]] bool sameTypical() const { return m_r.typ && m_c.typ ? *m_r.typ == *m_c.typ : m_r.typ.has_value() == m_c.typ.has_value(); }

    void setDistance(Bounding of, std::optional<Decimal> const& r, std::optional<Decimal> const& c) {
        if (r && c && !(*r == *c)) {
            m_distance = Distance{.of = of, .higher = *c > *r, .amount = (*c - *r).magnitude()};
        }
    }

    void setHighDistance() { setDistance(Bounding::Maximum, m_r.hi, m_c.hi); }
    void setLowDistance() { setDistance(Bounding::Minimum, m_r.lo, m_c.lo); }
    void setAnyDistance() {
        setHighDistance();
        if (!m_distance) {
            setLowDistance();
        }
        if (!m_distance) {
            setDistance(Bounding::Typical, m_r.typ, m_c.typ);
        }
    }

    Outcome window() {
        if (m_r.hi && m_c.lo && *m_c.lo > *m_r.hi) {
            m_c.hi ? setHighDistance() : setDistance(Bounding::Minimum, m_r.hi, m_c.lo);
            return hazardUp() ? Outcome::ClearHazard : Outcome::ClearNuisance;
        }
        if (m_r.lo && m_c.hi && *m_c.hi < *m_r.lo) {
            m_c.lo ? setLowDistance() : setDistance(Bounding::Maximum, m_r.lo, m_c.hi);
            return hazardDown() ? Outcome::ClearHazard : Outcome::ClearNuisance;
        }
        bool const high = passesHigh();
        bool const low = passesLow();
        if (high && low) {
            hazardUp() ? setHighDistance() : setLowDistance();
            return Outcome::WiderBoth;
        }
        if ((high && hazardUp()) || (low && hazardDown())) {
            high ? setHighDistance() : setLowDistance();
            return Outcome::HazardOverlap;
        }
        bool const openHazard = (hazardUp() && m_r.hi && !m_c.hi) || (hazardDown() && m_r.lo && !m_c.lo);
        if (openHazard) {
            return Outcome::HazardBoundOpen;
        }
        if (high || low) {
            high ? setHighDistance() : setLowDistance();
            return Outcome::NuisanceOverlap;
        }
        setAnyDistance();
        bool const lost = (m_r.hi && !m_c.hi) || (m_r.lo && !m_c.lo);
        if (lost) {
            return Outcome::NuisanceOverlap;  // the bound that governs nuisance is open
        }
        bool const common = (m_r.hi && m_c.hi) || (m_r.lo && m_c.lo);
        if (!common) {
            return Outcome::OnlyCandidate;
        }
        bool const equal = (equalHigh() || (!m_r.hi && !m_c.hi)) && (equalLow() || (!m_r.lo && !m_c.lo)) && sameTypical();
        return equal ? Outcome::Equal : Outcome::Better;
    }

    Outcome cap() {
        if (m_r.hi && m_c.lo && *m_c.lo > *m_r.hi) {
            setAnyDistance();
            return Outcome::ClearHazard;
        }
        if (passesHigh()) {
            setHighDistance();
            return Outcome::HazardOverlap;
        }
        if (m_r.hi && !m_c.hi) {
            setDistance(Bounding::Typical, m_r.typ, m_c.typ);
            return Outcome::HazardBoundOpen;
        }
        if (!m_r.hi) {
            setAnyDistance();
            return m_c.hi ? Outcome::OnlyCandidate : Outcome::TypicalDiffers;
        }
        setAnyDistance();
        return equalHigh() && sameTypical() && (equalLow() || (!m_r.lo && !m_c.lo)) ? Outcome::Equal : Outcome::Better;
    }

    Outcome floor() {
        if (m_r.lo && m_c.hi && *m_c.hi < *m_r.lo) {
            setAnyDistance();
            return Outcome::ClearHazard;
        }
        if (passesLow()) {
            setLowDistance();
            return Outcome::HazardOverlap;
        }
        if (m_r.lo && !m_c.lo) {
            setDistance(Bounding::Typical, m_r.typ, m_c.typ);
            return Outcome::HazardBoundOpen;
        }
        if (!m_r.lo) {
            setAnyDistance();
            return m_c.lo ? Outcome::OnlyCandidate : Outcome::TypicalDiffers;
        }
        setLowDistance();
        if (!m_distance) {
            setAnyDistance();
        }
        return equalLow() && sameTypical() && (equalHigh() || (!m_r.hi && !m_c.hi)) ? Outcome::Equal : Outcome::Better;
    }

    Outcome enclosing() {
        bool const shortHigh = m_r.hi && m_c.hi && (*m_c.hi < *m_r.hi || (*m_c.hi == *m_r.hi && m_c.hiOpen && !m_r.hiOpen));
        bool const shortLow = m_r.lo && m_c.lo && (*m_c.lo > *m_r.lo || (*m_c.lo == *m_r.lo && m_c.loOpen && !m_r.loOpen));
        if (shortHigh || shortLow) {
            shortHigh ? setHighDistance() : setLowDistance();
            return notEnclosing();
        }
        if ((m_r.hi && !m_c.hi) || (m_r.lo && !m_c.lo)) {
            return Outcome::HazardBoundOpen;
        }
        setAnyDistance();
        bool const equal = (equalHigh() || (!m_r.hi && !m_c.hi)) && (equalLow() || (!m_r.lo && !m_c.lo)) && sameTypical();
        return equal ? Outcome::Equal : Outcome::Better;
    }

    [[nodiscard]] Judgement judgementOf(Outcome outcome) const {
        bool const valued = m_terms.role == Role::Cap || m_terms.role == Role::Floor || rangeRole();
        switch (outcome) {
            case Outcome::Equal:
            case Outcome::HarsherComplies:
            case Outcome::TypicalEqual: return Judgement::Complies;
            case Outcome::Better: return valued ? Judgement::Better : Judgement::Complies;
            case Outcome::NuisanceOverlap:
            case Outcome::ClearNuisance: return Judgement::NuisanceSide;
            case Outcome::HazardOverlap:
            case Outcome::WiderBoth:
            case Outcome::ClearHazard: return valued ? Judgement::Worse : Judgement::HazardSide;
            case Outcome::NotEnclosing:
            case Outcome::NotEnclosingCharger: return Judgement::Worse;
            case Outcome::TypicalOnlyBeyond: return Judgement::HazardSide;
            default: return Judgement::Open;
        }
    }

    Facts m_facts;
    Terms m_terms;
    Bounds m_r;
    Bounds m_c;
    bool m_signLost = false;
    bool m_turned = false;
    bool m_bothTurned = false;  // both are negative
    bool m_typicalOnly = false;
    std::optional<Distance> m_distance;
};

}  // namespace

Terms termsOf(vocabulary::ParameterEntry const* entry, model::ParameterKind kind) {
    if (entry == nullptr) {
        Terms terms;
        switch (kind) {
            case model::ParameterKind::Rating: terms.role = Role::Withstand; break;
            case model::ParameterKind::OperatingCondition: terms.role = Role::OperatingRange; break;
            case model::ParameterKind::Thermal:
                terms.role = Role::Cap;
                terms.bound = Bound::Max;
                terms.severity = model::Severity::Margin;
                break;
            case model::ParameterKind::Mechanical: terms.severity = model::Severity::Note; break;
            default: break;
        }
        terms.polar = true;
        return terms;
    }
    Terms terms{.role = entry->role, .bound = entry->bound, .severity = entry->severity, .chargerPin = entry->chargerPin, .polar = false, .known = true};
    // A floor printed as a rating ("drain-source voltage, maximum 20 V") is a withstand.
    if (terms.role == Role::Floor && kind == model::ParameterKind::Rating) {
        terms.role = Role::Withstand;
    }
    terms.polar = entry->family != "lithium-protection" && entry->unit != "degC" && entry->unit != "K";
    return terms;
}

ParameterJudgement judgeParameter(Facts const& facts, model::Parameter const* reference, model::Parameter const* candidate, Terms const& terms) {
    return Judging(facts, reference, candidate, terms).run();
}

}  // namespace standin::risk
