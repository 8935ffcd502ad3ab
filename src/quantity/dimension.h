// Dimensions of coherent units, so that a formula can refuse what does not fit.
//
//     auto ohm = dimensionOf("Ω");                     // V·A⁻¹
//     dimensionOf("V")->dimension / dimensionOf("A")->dimension == ohm->dimension
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "quantity/decimal.h"

namespace standin::quantity {

// Powers of volt, ampere, second, metre and kelvin.
struct Dimension {
    std::int8_t volt = 0, ampere = 0, second = 0, metre = 0, kelvin = 0;
    bool operator==(Dimension const&) const = default;
};

[[nodiscard]] Dimension operator*(Dimension a, Dimension b);
[[nodiscard]] Dimension operator/(Dimension a, Dimension b);

struct DimensionedUnit {
    Dimension dimension;
    Decimal factor = 1;  // one of the unit in coherent units: 2629800 for "month"
};

// Of a unit that results are shown in: the coherent ones ("V", "K/W", "A²·s",
// "1"), "month" and "mAh". Temperatures count as kelvins. Nullopt: not known, or
// a qualified unit ("V rms") that does not take part in arithmetic.
[[nodiscard]] std::optional<DimensionedUnit> dimensionOf(std::string_view unit);

}  // namespace standin::quantity
