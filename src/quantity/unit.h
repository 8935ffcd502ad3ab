// Units as printed -> coherent SI unit, factor and offset. The coherent unit's
// text ("V", "A", "Ω", "s", "degC", "K/W", "V/s", "1") is also the id of the
// dimension: two values are comparable when it is the same.
//
//     auto unit = parseUnit("mS", {.expected = "s"});
//     unit->coherent;                     // "s"
//     toCoherent(*Decimal::parse("144"), *unit);   // 0.144
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/decimal.h"

namespace standin::quantity {

struct Unit {
    std::string coherent;  // "V", "degC", "1" …
    Decimal factor = 1;    // value in coherent = printed × factor + offset
    Decimal offset = 0;    // only kelvin and Fahrenheit points have one
    std::string qualifier; // "p-p", "rms", "pk" (then coherent carries it too: "V p-p"), "%": printed as percent
    std::string note;      // how a doubtful spelling was read ("capital M read as milli"), or empty
    bool operator==(Unit const&) const = default;
};

struct UnitContext {
    std::string_view expected = {};  // coherent unit expected from the parameter, empty where unknown
    bool allCapitals = false;   // the whole unit column is in capitals
};

// The unit that is the whole of `printed` (spaces at its ends allowed): symbols,
// prefixes, compounds with "/" "·" "√Hz" "^", words ("volts", "msec", "毫安").
// Nullopt where it is none.
[[nodiscard]] std::optional<Unit> parseUnit(std::string_view printed, UnitContext const& context = {});

// The longest unit at the start of `text`, at most `kLongestUnit` bytes, that is
// not followed by a letter or digit; `length` receives its bytes. For prose and
// conditions: words that are units by accident ("A" the article, "in", "min")
// are units only directly behind a number, which the caller sees to.
inline constexpr std::size_t kLongestUnit = 24;
[[nodiscard]] std::optional<Unit> parseUnitPrefix(std::string_view text, UnitContext const& context, std::size_t& length);

[[nodiscard]] Decimal toCoherent(Decimal printed, Unit const& unit);

// Same dimension: the same coherent text, where a plain temperature difference
// (K) and a temperature (degC) are told apart.
[[nodiscard]] bool sameDimension(Unit const& a, Unit const& b);

// 10^(dB/20) to 12 digits; for ratios of amplitudes (PSRR, AOL in dB).
[[nodiscard]] Decimal amplitudeRatio(Decimal decibel);

}  // namespace standin::quantity
