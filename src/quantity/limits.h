// Worst-case arithmetic on stated limits: minimum, typical and maximum in exact
// decimals, each of which may be missing.
//
//     Limits const voltage = {.lo = d("0.125"), .typ = d("0.150"), .hi = d("0.175")};
//     Limits const resistance = {.lo = {}, .typ = d("0.040"), .hi = d("0.050")};
//     divide(voltage, resistance)     // lo 2.5, typ 3.75, hi missing
//
// Rules: inputs count as independent; a missing bound stays missing and is never
// replaced by a typical value or by zero; typical values give a typical value
// only; results are rounded outward (lo down, hi up), the typical to the nearest.
// A quantity of which every stated value is positive counts as positive, also
// where its lower bound is missing (a resistance with a maximum only).
#pragma once

#include <optional>

#include "quantity/decimal.h"

namespace standin::quantity {

struct Limits {
    std::optional<Decimal> lo, typ, hi;
    [[nodiscard]] bool empty() const { return !lo && !typ && !hi; }
    [[nodiscard]] bool limited() const { return lo || hi; }
    bool operator==(Limits const&) const = default;
};

// An exactly known value.
[[nodiscard]] Limits exactly(Decimal value);

[[nodiscard]] Limits add(Limits const& a, Limits const& b);
[[nodiscard]] Limits subtract(Limits const& a, Limits const& b);
[[nodiscard]] Limits multiply(Limits const& a, Limits const& b);
// What the divisor's zero makes unbounded is missing; a divisor that reaches to
// both sides of zero leaves nothing but a typical value.
[[nodiscard]] Limits divide(Limits const& a, Limits const& b);
[[nodiscard]] Limits negate(Limits const& a);
// Absolute values: [-0.12, -0.08] becomes [0.08, 0.12].
[[nodiscard]] Limits magnitude(Limits const& a);
// One value squared, not the product of two independent ones.
[[nodiscard]] Limits square(Limits const& a);
// ± the largest magnitude, about a typical value of zero; missing where a bound is.
[[nodiscard]] Limits plusMinus(Limits const& a);

// The smallest limits that hold both; a bound that one of them leaves open is
// missing, the typical value is the first one's.
[[nodiscard]] Limits enclosing(Limits const& a, Limits const& b);

// To at most `digits` significant digits, outward.
[[nodiscard]] Limits roundedOutward(Limits const& a, int digits);

}  // namespace standin::quantity
