// What a piece of cell text looks like: a symbol, a unit, a condition, a part
// number, a package name. Judged by form only, never by a list of makers or
// parts. All functions take tidied text (text_forms.h).
//
//     isSymbolLike("RDS(on)")        true      isSymbolLike("Supply voltage")  false
//     isUnitLike("nV/√Hz")           true      isConditionLike("VDD = 3 V")    true
//     isPartLike("XX8205B, XX8206")  true      isPackageLike("SOT-23-6")       true
#pragma once

#include <string>
#include <string_view>

namespace standin::parameters {

// A letter symbol or a short list of them: "VCU", "TJ, TSTG", "VI - VO", "ΔVO/ΔT".
[[nodiscard]] bool isSymbolLike(std::string_view text);

// A unit as printed in a unit column or behind a number; spaces don't matter.
[[nodiscard]] bool isUnitLike(std::string_view text);

// States under what something holds: a relation ("=", "≤" …) or a set phrase.
[[nodiscard]] bool isConditionLike(std::string_view text);

// Holds a relation sign that is not the first character.
[[nodiscard]] bool hasRelation(std::string_view text);

// One or several orderable parts ("XX358A", "'72, '73", "for C version"), nothing else.
[[nodiscard]] bool isPartLike(std::string_view text);

[[nodiscard]] bool isPackageLike(std::string_view text);

// A number with at most a sign, "±", comparison, percent or tolerance around it.
[[nodiscard]] bool isNumberLike(std::string_view text);

// Digits among the characters, full-width ones too.
[[nodiscard]] bool hasDigit(std::string_view text);

// A word or two of ordinary language that reads as a name (letters, a lower-case run).
[[nodiscard]] bool hasOrdinaryWord(std::string_view text);

}  // namespace standin::parameters
