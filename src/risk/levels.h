// The table that turns the outcome of one comparison into a level, by the
// severity of what was compared. src/risk/ includes model/, quantity/, text/,
// vocabulary/ and compare/.
//
//     levelOf(Outcome::ClearHazard, Severity::Hazard)  ->  {4, false}
//     severityAt(3, Severity::Hazard)                  ->  Severity::Hazard
#pragma once

#include <cstdint>

#include "model/comparison.h"

namespace standin::risk {

enum class Outcome : std::uint8_t {
    Equal,               // same limits, same mode: no finding
    Better,              // inside, encloses, lower cap, higher floor; another typical value within the same limits
    NuisanceOverlap,     // reaches beyond on the nuisance side only
    HazardOverlap,       // reaches beyond on the hazard side; a higher cap, a lower floor
    WiderBoth,
    ClearHazard,         // no overlap, on the hazard side
    ClearNuisance,
    HazardBoundOpen,     // the candidate does not state the bound that governs safety
    TypicalOnly,         // no limits in the candidate
    TypicalOnlyBeyond,   // and its typical value lies beyond the reference's limit
    TypicalDiffers,      // limits in neither
    TypicalEqual,        // limits in neither, typical values equal: no finding
    OnlyReference,
    OnlyCandidate,       // or limits in the candidate only
    NeitherEssential,    // stated in neither, of the groups that must be stated
    HarsherComplies,     // conditions differ, the candidate's are harsher and it complies
    ConditionsOpen,      // conditions differ, milder or not ordered
    ModeDiffersGrave,    // a mode that is never acceptable as like for like
    ModeDiffers,
    ModeUnstated,
    NotEnclosing,        // a rating or operating range that is narrower
    NotEnclosingCharger, // on a pin that a charger stresses
    SignLost,            // one number, and units that differ by a sign that fonts lose ("m" for "mΩ")
    NotComparable,       // not comparable, unit conflict, conflict in a document, unread
    Misfit,              // pin function on a connected pin, package
};

struct Level {
    int level = 0;      // 0 … 4
    bool open = false;  // the "?" of the table: not enough information to say
    bool operator==(Level const&) const = default;
};

// Severity: of the parameter; Editorial counts as Note.
[[nodiscard]] Level levelOf(Outcome outcome, model::Severity severity);

// A finding of level 3 or 4 has its parameter's severity, level 2 at most
// function, level 1 at most margin, level 0 is editorial.
[[nodiscard]] model::Severity severityAt(int level, model::Severity severity);

// The more serious of two.
[[nodiscard]] Level worse(Level a, Level b);

}  // namespace standin::risk
