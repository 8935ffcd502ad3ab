// Tested by tests/src/report/texts_test.cpp (no forbidden words, none missing).
#include "report/texts.h"

namespace standin::report::texts {

using namespace model;

std::string_view severityHeading(Severity severity) {
    switch (severity) {
        case Severity::Hazard: return "Hazard";
        case Severity::Function: return "Function";
        case Severity::Margin: return "Margin";
        case Severity::Note: return "Note";
        case Severity::Editorial: return "Editorial";
    }
    return {};
}

std::string_view severityMeaning(Severity severity) {
    switch (severity) {
        case Severity::Hazard: return "could contribute to fire, venting or burns, or defeat a protective function";
        case Severity::Function: return "the circuit may not work, may trip, may not recover";
        case Severity::Margin: return "works, with another margin, heat, run time or accuracy";
        case Severity::Note: return "worth knowing";
        case Severity::Editorial: return "no change of meaning";
    }
    return {};
}

std::string_view severityMark(Severity severity) {
    switch (severity) {
        case Severity::Hazard: return "▲";
        case Severity::Function: return "■";
        case Severity::Margin: return "●";
        case Severity::Note: return "▬";
        case Severity::Editorial: return "·";
    }
    return {};
}

std::string_view levelText(VerdictLevel level) {
    switch (level) {
        case VerdictLevel::NoDifference: return "No difference found in the compared parameters";
        case VerdictLevel::SmallDifferences: return "Small differences, none on a hazard side";
        case VerdictLevel::ConfirmFunction: return "Function needs confirming in your circuit";
        case VerdictLevel::BenchTest: return "Bench test before use";
        case VerdictLevel::DoNotSubstitute: return "Do not substitute on this evidence";
    }
    return {};
}

std::string_view kindText(FindingKind kind) {
    switch (kind) {
        case FindingKind::Parameter: return "parameter";
        case FindingKind::Table: return "table";
        case FindingKind::Wording: return "wording";
        case FindingKind::Pin: return "pin";
        case FindingKind::Package: return "package";
        case FindingKind::Ordering: return "ordering";
        case FindingKind::Feature: return "feature";
        case FindingKind::Figure: return "figure";
        case FindingKind::Section: return "section";
        case FindingKind::Document: return "document";
        case FindingKind::Derived: return "derived quantity";
        case FindingKind::Cell: return "cell limit";
        case FindingKind::Coverage: return "not compared";
    }
    return {};
}

std::string_view relationText(Relation relation) {
    switch (relation) {
        case Relation::Same: return "same";
        case Relation::Inside: return "inside the reference's limits";
        case Relation::Wider: return "wider on both sides";
        case Relation::ReachesHigher: return "reaches higher";
        case Relation::ReachesLower: return "reaches lower";
        case Relation::ClearAbove: return "clear above";
        case Relation::ClearBelow: return "clear below";
        case Relation::OneSided: return "a limit is stated in one sheet only";
        case Relation::TypEqual: return "typical value equal, limits missing";
        case Relation::TypDiffers: return "typical value differs";
        case Relation::ConditionsDiffer: return "conditions differ";
        case Relation::NotComparable: return "not comparable";
        case Relation::OnlyReference: return "in the reference only";
        case Relation::OnlyCandidate: return "in the candidate only";
        case Relation::UnitConflict: return "units in conflict";
        case Relation::ConflictInDocument: return "the sheet contradicts itself";
        case Relation::Unread: return "could not be read";
        case Relation::Reworded: return "worded otherwise";
        case Relation::MeaningChanged: return "meaning changed";
        case Relation::ModeSame: return "same mode";
        case Relation::ModeDiffers: return "mode differs";
        case Relation::ModeUnstated: return "mode not stated";
        case Relation::Moved: return "moved";
    }
    return {};
}

std::string_view outcomeMark(CheckOutcome outcome) {
    switch (outcome) {
        case CheckOutcome::Holds: return "✓";
        case CheckOutcome::Violated: return "▲";
        case CheckOutcome::Open: return "?";
    }
    return {};
}

std::string_view judgementText(Judgement judgement) {
    switch (judgement) {
        case Judgement::Complies: return "complies";
        case Judgement::NuisanceSide: return "nuisance side";
        case Judgement::HazardSide: return "hazard side";
        case Judgement::Worse: return "worse";
        case Judgement::Better: return "better";
        case Judgement::Open: return "open";
    }
    return {};
}

}  // namespace standin::report::texts
