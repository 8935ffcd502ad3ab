#include "risk/judge_parameter.h"

#include <optional>
#include <string>

#include <gtest/gtest.h>

namespace standin::risk {
namespace {

using model::ConditionRelation;
using model::HazardSide;
using model::Judgement;
using model::Relation;
using model::Severity;
using vocabulary::Bound;
using vocabulary::Role;

model::Parameter parameter(char const* lo, char const* typ, char const* hi, char const* unit = "V", char const* relativeTo = "") {
    auto const text = [](char const* value) { return *value == '\0' ? std::nullopt : std::optional<std::string>(value); };
    model::Parameter made;
    made.interval = model::Interval{.lo = text(lo), .typ = text(typ), .hi = text(hi), .loOpen = false, .hiOpen = false, .unit = unit, .relativeTo = relativeTo, .factor = {}};
    return made;
}

struct Case {
    char const* what;
    Terms terms;
    Relation relation;
    model::Parameter reference, candidate;
    Outcome outcome;
    Judgement judgement;
    int level;
    bool open;
};

Terms terms(Role role, Bound bound, Severity severity) {
    return {.role = role, .bound = bound, .severity = severity, .chargerPin = false, .polar = false, .known = true};
}

TEST(JudgeParameter, ByRoleAndHazardBound) {
    Terms const overcharge = terms(Role::Window, Bound::Max, Severity::Hazard);
    Terms const overdischarge = terms(Role::Window, Bound::Min, Severity::Hazard);
    Terms const chargeCurrent = terms(Role::Window, Bound::Magnitude, Severity::Hazard);
    Terms const drain = terms(Role::Cap, Bound::Max, Severity::Margin);
    Terms const pin = terms(Role::Cap, Bound::Both, Severity::Function);
    Terms const thermal = termsOf(nullptr, model::ParameterKind::Thermal);
    Terms const leak = terms(Role::Cap, Bound::Max, Severity::Hazard);
    Terms const current = terms(Role::Floor, Bound::Min, Severity::Function);
    Terms const sourced = terms(Role::Floor, Bound::Magnitude, Severity::Function);
    Terms const rating = terms(Role::Withstand, Bound::Both, Severity::Hazard);
    Terms charger = rating;
    charger.chargerPin = true;
    Terms pChannel = rating;
    pChannel.polar = true;
    Case const cases[] = {
        {"needed, printed under Min", drain, Relation::Inside, parameter("20", "", ""), parameter("25", "", ""), Outcome::HazardOverlap, Judgement::Worse, 1, false},
        {"tolerated, printed under Max", current, Relation::ReachesLower, parameter("", "", "0.8"), parameter("", "", "0.7"), Outcome::HazardOverlap, Judgement::Worse, 2, false},
        {"tolerated, a typical value more", current, Relation::TypDiffers, parameter("", "", "0.8"), parameter("", "1.2", "0.8"), Outcome::Better, Judgement::Better, 1, false},
        {"needed that flows out, printed under Min", sourced, Relation::ReachesLower, parameter("-0.2", "", ""), parameter("-0.36", "", ""), Outcome::Better, Judgement::Better, 1, false},
        {"needed that flows out, printed under Max", sourced, Relation::ReachesHigher, parameter("", "", "-0.36"), parameter("", "", "-0.2"), Outcome::HazardOverlap, Judgement::Worse, 2, false},
        {"needed that flows out, less under Min", sourced, Relation::Inside, parameter("-0.36", "-1", ""), parameter("-0.2", "-0.6", ""), Outcome::HazardOverlap, Judgement::Worse, 2, false},
        {"both bounds decide: less under Min", pin, Relation::ReachesLower, parameter("5e-6", "", "", "A"), parameter("3e-6", "", "", "A"), Outcome::HazardOverlap, Judgement::Worse, 2, false},
        {"both bounds decide: more under Min", pin, Relation::Inside, parameter("5e-6", "", "", "A"), parameter("8e-6", "", "", "A"), Outcome::Better, Judgement::Better, 1, false},
        {"unknown: what Min means is not known", thermal, Relation::ReachesLower, parameter("150", "", "", "degC"), parameter("125", "", "", "degC"), Outcome::TypicalDiffers, Judgement::Open, 1, false},
        {"same", overcharge, Relation::Same, parameter("4.25", "4.28", "4.31"), parameter("4.25", "4.28", "4.31"), Outcome::Equal, Judgement::Complies, 0, false},
        {"inside", overcharge, Relation::Inside, parameter("4.25", "4.28", "4.31"), parameter("4.26", "4.28", "4.30"), Outcome::Better, Judgement::Complies, 1, false},
        {"higher on the hazard side", overcharge, Relation::ReachesHigher, parameter("4.25", "4.28", "4.31"), parameter("4.26", "4.30", "4.34"), Outcome::HazardOverlap, Judgement::HazardSide, 3, false},
        {"lower on the nuisance side", overcharge, Relation::ReachesLower, parameter("4.25", "4.28", "4.31"), parameter("4.20", "4.25", "4.30"), Outcome::NuisanceOverlap, Judgement::NuisanceSide, 2, false},
        {"wider", overcharge, Relation::Wider, parameter("4.25", "", "4.31"), parameter("4.20", "", "4.35"), Outcome::WiderBoth, Judgement::HazardSide, 3, false},
        {"clear above", overcharge, Relation::ClearAbove, parameter("4.25", "", "4.31"), parameter("4.40", "", "4.45"), Outcome::ClearHazard, Judgement::HazardSide, 4, false},
        {"clear below is nuisance", overcharge, Relation::ClearBelow, parameter("4.25", "", "4.31"), parameter("4.00", "", "4.10"), Outcome::ClearNuisance, Judgement::NuisanceSide, 3, false},
        {"lower overdischarge", overdischarge, Relation::ReachesLower, parameter("2.3", "", "2.5"), parameter("2.2", "", "2.4"), Outcome::HazardOverlap, Judgement::HazardSide, 3, false},
        {"higher overdischarge", overdischarge, Relation::ReachesHigher, parameter("2.3", "", "2.5"), parameter("2.4", "", "2.6"), Outcome::NuisanceOverlap, Judgement::NuisanceSide, 2, false},
        {"larger negative magnitude", chargeCurrent, Relation::ReachesLower, parameter("-0.13", "-0.10", "-0.07"), parameter("-0.15", "-0.10", "-0.07"), Outcome::HazardOverlap, Judgement::HazardSide, 3, false},
        {"smaller negative magnitude", chargeCurrent, Relation::ReachesHigher, parameter("-0.13", "-0.10", "-0.07"), parameter("-0.13", "-0.10", "-0.05"), Outcome::NuisanceOverlap, Judgement::NuisanceSide, 2, false},
        {"magnitudes of another sign convention", chargeCurrent, Relation::ClearAbove, parameter("-0.13", "", "-0.07"), parameter("0.07", "", "0.13"), Outcome::Equal, Judgement::Complies, 0, false},
        {"greater cap", drain, Relation::ReachesHigher, parameter("", "2.5e-6", "4e-6", "A"), parameter("", "2.5e-6", "6e-6", "A"), Outcome::HazardOverlap, Judgement::Worse, 1, false},
        {"smaller cap", drain, Relation::Inside, parameter("", "", "4e-6", "A"), parameter("", "", "3e-6", "A"), Outcome::Better, Judgement::Better, 1, false},
        {"cap not stated", leak, Relation::OneSided, parameter("", "1e-7", "2e-7", "A"), parameter("", "1e-7", "", "A"), Outcome::TypicalOnly, Judgement::Open, 3, true},
        {"lower floor", current, Relation::ReachesLower, parameter("0.25", "", "", "A"), parameter("0.20", "", "", "A"), Outcome::HazardOverlap, Judgement::Worse, 2, false},
        {"higher floor", current, Relation::Inside, parameter("0.25", "", "", "A"), parameter("0.30", "", "", "A"), Outcome::Better, Judgement::Better, 1, false},
        {"rating encloses", rating, Relation::Wider, parameter("-0.3", "", "10"), parameter("-0.3", "", "12"), Outcome::Better, Judgement::Better, 1, false},
        {"rating is narrower", rating, Relation::Inside, parameter("-0.3", "", "12"), parameter("-0.3", "", "10"), Outcome::NotEnclosing, Judgement::Worse, 3, false},
        {"charger side is narrower", charger, Relation::Inside, parameter("-28", "", "0.3", "V", "VDD"), parameter("-12", "", "0.3", "V", "VDD"), Outcome::NotEnclosingCharger, Judgement::Worse, 4, false},
        {"P-channel rating is lower", pChannel, Relation::ReachesHigher, parameter("", "", "-30"), parameter("", "", "-20"), Outcome::NotEnclosing, Judgement::Worse, 3, false},
        {"P-channel rating is higher", pChannel, Relation::ReachesLower, parameter("", "", "-20"), parameter("", "", "-30"), Outcome::Better, Judgement::Better, 1, false},
        {"typical only", overcharge, Relation::TypDiffers, parameter("4.25", "4.28", "4.31"), parameter("", "4.29", ""), Outcome::TypicalOnly, Judgement::Open, 3, true},
        {"typical beyond the limit", overcharge, Relation::TypDiffers, parameter("4.25", "4.28", "4.31"), parameter("", "4.35", ""), Outcome::TypicalOnlyBeyond, Judgement::HazardSide, 4, true},
        {"typical in both", overcharge, Relation::TypDiffers, parameter("", "4.28", ""), parameter("", "4.29", ""), Outcome::TypicalDiffers, Judgement::Open, 3, true},
        {"limits in the candidate only", overcharge, Relation::TypDiffers, parameter("", "4.28", ""), parameter("4.25", "4.28", "4.31"), Outcome::OnlyCandidate, Judgement::Open, 1, true},
        {"hazard bound missing", overcharge, Relation::OneSided, parameter("4.25", "", "4.31"), parameter("4.25", "", ""), Outcome::HazardBoundOpen, Judgement::Open, 3, true},
        {"nuisance bound missing", overcharge, Relation::OneSided, parameter("4.25", "", "4.31"), parameter("", "", "4.31"), Outcome::NuisanceOverlap, Judgement::NuisanceSide, 2, false},
        {"only reference", overcharge, Relation::OnlyReference, parameter("4.25", "", "4.31"), {}, Outcome::OnlyReference, Judgement::Open, 3, true},
        {"only candidate", overcharge, Relation::OnlyCandidate, {}, parameter("4.25", "", "4.31"), Outcome::OnlyCandidate, Judgement::Open, 1, true},
        {"unit conflict", drain, Relation::UnitConflict, parameter("", "", "4"), parameter("", "", "0.004"), Outcome::NotComparable, Judgement::Open, 1, true},
        {"another typical value in the same limits", overcharge, Relation::TypDiffers, parameter("4.25", "4.28", "4.31"), parameter("4.25", "4.29", "4.31"), Outcome::Better, Judgement::Complies, 1, false},
    };
    for (auto const& one : cases) {
        auto const judged = judgeParameter({.relation = one.relation, .conditions = ConditionRelation::Same}, &one.reference, &one.candidate, one.terms);
        EXPECT_EQ(static_cast<int>(judged.outcome), static_cast<int>(one.outcome)) << one.what;
        EXPECT_EQ(static_cast<int>(judged.judgement), static_cast<int>(one.judgement)) << one.what;
        EXPECT_EQ(judged.level.level, one.level) << one.what;
        EXPECT_EQ(judged.level.open, one.open) << one.what;
    }
}

TEST(JudgeParameter, ConditionsThatDiffer) {
    Terms const hazard = terms(Role::Window, Bound::Max, Severity::Hazard);
    auto const r = parameter("4.25", "", "4.31");
    auto const inside = parameter("4.26", "", "4.30");
    auto const clear = parameter("4.40", "", "4.45");
    auto const judge = [&](model::Parameter const& c, ConditionRelation conditions) {
        return judgeParameter({.relation = Relation::ConditionsDiffer, .conditions = conditions}, &r, &c, hazard).level;
    };
    EXPECT_EQ(judge(inside, ConditionRelation::Harsher), (Level{1, false}));
    EXPECT_EQ(judge(inside, ConditionRelation::Milder), (Level{3, true}));
    EXPECT_EQ(judge(inside, ConditionRelation::Unordered), (Level{3, true}));
    EXPECT_EQ(judge(clear, ConditionRelation::Milder).level, 4) << "a clear violation is not made smaller by its condition";
}

TEST(JudgeParameter, DistanceOfTheDecidingBoundIsExact) {
    auto const r = parameter("4.25", "4.275", "4.3");
    auto const c = parameter("4.25", "4.29", "4.335");
    auto const judged = judgeParameter({.relation = Relation::ReachesHigher, .conditions = {}}, &r, &c, terms(Role::Window, Bound::Max, Severity::Hazard));
    ASSERT_TRUE(judged.distance);
    EXPECT_EQ(judged.distance->amount.toShortString(), "0.035");
    EXPECT_TRUE(judged.distance->higher);
    EXPECT_EQ(judged.distance->of, Bounding::Maximum);
    EXPECT_EQ(judged.hazardSide, HazardSide::Higher);
}

TEST(JudgeParameter, TheRelationDecidesWhereIntervalsAreMissing) {
    Terms const hazard = terms(Role::Window, Bound::Max, Severity::Hazard);
    auto const level = [&](Relation relation) { return judgeParameter({.relation = relation, .conditions = {}}, nullptr, nullptr, hazard).level; };
    EXPECT_EQ(level(Relation::ReachesHigher), (Level{3, false}));
    EXPECT_EQ(level(Relation::ReachesLower), (Level{2, false}));
    EXPECT_EQ(level(Relation::ClearAbove), (Level{4, false}));
    EXPECT_EQ(level(Relation::Inside), (Level{1, false}));
    EXPECT_EQ(level(Relation::Unread), (Level{3, true}));
}

TEST(JudgeParameter, TermsWithoutAnEntryComeFromTheKind) {
    EXPECT_EQ(termsOf(nullptr, model::ParameterKind::Rating).role, Role::Withstand);
    EXPECT_EQ(termsOf(nullptr, model::ParameterKind::OperatingCondition).role, Role::OperatingRange);
    EXPECT_EQ(termsOf(nullptr, model::ParameterKind::Thermal).severity, Severity::Margin);
    vocabulary::ParameterEntry breakdown;
    breakdown.role = Role::Floor;
    EXPECT_EQ(termsOf(&breakdown, model::ParameterKind::Rating).role, Role::Withstand);
    EXPECT_EQ(termsOf(&breakdown, model::ParameterKind::Characteristic).role, Role::Floor);
}

// "100 m" for "100 mΩ": the sign was lost, not the unit changed.
TEST(JudgeParameter, AUnitThatLostItsSignWeighsLessWhereTheNumbersAgree) {
    Terms const terms{.role = Role::Cap, .bound = Bound::Max, .severity = model::Severity::Hazard, .chargerPin = false, .polar = false};
    auto outcome = [&](char const* referenceUnit, char const* referenceMaximum, char const* candidateUnit, char const* candidateMaximum) {
        auto reference = parameter("", "", referenceMaximum);
        auto candidate = parameter("", "", candidateMaximum);
        reference.unit = referenceUnit;
        candidate.unit = candidateUnit;
        reference.max = model::Value{referenceMaximum, referenceMaximum, std::nullopt, {}};
        candidate.max = model::Value{candidateMaximum, candidateMaximum, std::nullopt, {}};
        return judgeParameter({.relation = Relation::UnitConflict}, &reference, &candidate, terms).outcome;
    };
    EXPECT_EQ(outcome("mΩ", "100", "m", "100"), Outcome::SignLost);
    EXPECT_EQ(outcome("A", "5", "µA", "5"), Outcome::SignLost);
    EXPECT_EQ(outcome("mΩ", "100", "m", "80"), Outcome::NotComparable);
    EXPECT_EQ(outcome("mΩ", "100", "mV", "100"), Outcome::NotComparable);
    EXPECT_EQ(outcome("mA", "5", "A", "5"), Outcome::NotComparable);
}

}  // namespace
}  // namespace standin::risk
