// One row an outcome, one column a severity.
// Tested by tests/src/risk/levels_test.cpp.
#include "risk/levels.h"

#include <algorithm>
#include <array>

namespace standin::risk {

namespace {

using Row = std::array<Level, 4>;  // hazard, function, margin, note

constexpr Row row(Level hazard, Level function, Level margin, Level note) {
    return {hazard, function, margin, note};
}

constexpr Level kNone = {0, false};
constexpr Level kOne = {1, false};
constexpr Level kTwo = {2, false};
constexpr Level kThree = {3, false};
constexpr Level kFour = {4, false};
constexpr Level kOpenNone = {0, true};
constexpr Level kOpenOne = {1, true};
constexpr Level kOpenTwo = {2, true};
constexpr Level kOpenThree = {3, true};
constexpr Level kOpenFour = {4, true};

Row rowOf(Outcome outcome) {
    switch (outcome) {
        case Outcome::Equal: return row(kNone, kNone, kNone, kNone);
        case Outcome::Better: return row(kOne, kOne, kOne, kOne);
        case Outcome::NuisanceOverlap: return row(kTwo, kTwo, kOne, kOne);
        case Outcome::HazardOverlap: return row(kThree, kTwo, kOne, kOne);
        case Outcome::WiderBoth: return row(kThree, kTwo, kOne, kOne);
        case Outcome::ClearHazard: return row(kFour, kThree, kTwo, kOne);
        case Outcome::ClearNuisance: return row(kThree, kThree, kTwo, kOne);
        case Outcome::HazardBoundOpen: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::TypicalOnly: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::TypicalOnlyBeyond: return row(kOpenFour, kOpenTwo, kOne, kOne);
        case Outcome::TypicalDiffers: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::TypicalEqual: return row(kOpenNone, kNone, kNone, kNone);
        case Outcome::OnlyReference: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::OnlyCandidate: return row(kOpenOne, kOne, kOne, kOne);
        case Outcome::NeitherEssential: return row(kOpenNone, kNone, kNone, kNone);
        case Outcome::HarsherComplies: return row(kOne, kOne, kOne, kOne);
        case Outcome::ConditionsOpen: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::ModeDiffersGrave: return row(kFour, kTwo, kOne, kOne);
        case Outcome::ModeDiffers: return row(kThree, kTwo, kOne, kOne);
        case Outcome::ModeUnstated: return row(kOpenThree, kOpenTwo, kOne, kOne);
        case Outcome::NotEnclosing: return row(kThree, kThree, kTwo, kOne);
        case Outcome::NotEnclosingCharger: return row(kFour, kThree, kTwo, kOne);
        case Outcome::SignLost: return row(kOpenTwo, kOpenOne, kOpenOne, kOpenOne);
        case Outcome::NotComparable: return row(kOpenThree, kOpenTwo, kOpenOne, kOpenOne);
        case Outcome::Misfit: return row(kFour, kFour, kFour, kFour);
    }
    return row(kOpenThree, kOpenTwo, kOpenOne, kOpenOne);
}

}  // namespace

Level levelOf(Outcome outcome, model::Severity severity) {
    Row const levels = rowOf(outcome);
    switch (severity) {
        case model::Severity::Hazard: return levels[0];
        case model::Severity::Function: return levels[1];
        case model::Severity::Margin: return levels[2];
        default: return levels[3];
    }
}

model::Severity severityAt(int level, model::Severity severity) {
    switch (level) {
        case 0: return model::Severity::Editorial;
        case 1: return std::min(severity, model::Severity::Margin);
        case 2: return std::min(severity, model::Severity::Function);
        default: return severity;
    }
}

Level worse(Level a, Level b) {
    return {std::max(a.level, b.level), a.open || b.open};
}

}  // namespace standin::risk
