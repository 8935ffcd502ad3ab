// How the candidate's value lies to the reference's: a fact about two intervals
// in exact decimals. What it means is judged in risk/.
//
//     relateIntervals({.lo = "4.255", .hi = "4.305", .unit = "V"}, {.lo = "4.255", .hi = "4.355", .unit = "V"})
//        -> Relation::ReachesHigher
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

// Whether a difference below half a unit of the coarser sheet's last printed
// digit counts on a bound ("4.3" against "4.325").
enum class Precision : std::uint8_t { AsPrinted, Exact };

struct BoundPrecision {
    Precision lower = Precision::Exact;
    Precision upper = Precision::Exact;
};

// Same, Inside, Wider, ReachesHigher, ReachesLower, ClearAbove, ClearBelow,
// OneSided, TypEqual, TypDiffers, NotComparable (other node, ratio against
// value) or UnitConflict (other dimension, or a factor of about 1000 or
// 1 000 000 in every common value: a lost or misprinted prefix is suspected).
// An excluded bound ("<0.2") is tighter than the same bound included. Exchange
// mirrors it, except that a bound passed on one side only with the other equal
// (ReachesHigher) is Inside from the other side.
[[nodiscard]] model::Relation relateIntervals(model::Interval const& reference, model::Interval const& candidate, BoundPrecision precision = {});

// The same for two parameters: by their intervals, and by the printed texts where
// they have none ("Unlimited") or where the intervals do not tell printed values
// apart. Different texts are never Same unless their values are equal.
[[nodiscard]] model::Relation relateValues(model::Parameter const& reference, model::Parameter const& candidate, BoundPrecision precision = {});

// One maker prints the limit of what the part needs (a cap of the vocabulary) or gives (a floor) under
// Max ("Minimum set-up time", "Minimum output voltage, high"), the other under Min; so the guaranteed clock frequency ("Maximum
// frequency", a floor). Then both as if printed under Min; none where this is not so: `role` is
// empty without an entry, and the name has to begin with the word ("at minimum load" is a condition).
struct OneColumn {
    model::Parameter reference, candidate;
};
[[nodiscard]] std::optional<OneColumn> inOneColumn(model::Parameter const& reference, model::Parameter const& candidate, std::optional<vocabulary::Role> role);

// One name says that the value is of one of several ("per FET", "each amplifier"), the other
// that it is of all together ("two FETs in series", "total"): no number of theirs compares.
[[nodiscard]] bool countApart(std::string_view reference, std::string_view candidate);

// One is a span from peak to peak, the other an amplitude of either sign ("±VO", "±12"): 24 is no more than ±12.
[[nodiscard]] bool spanApart(model::Parameter const& reference, model::Parameter const& candidate);

// No difference was found: Same, or TypEqual where neither sheet gives limits. Equal
// typical values with limits in one sheet only leave the other sheet's limits open.
[[nodiscard]] bool isEqual(model::Relation relation, model::Parameter const& reference, model::Parameter const& candidate);

}  // namespace standin::compare
