// Test conditions as printed -> what they say, for telling harsher from milder.
//
//     parseCondition("VIN=3V to 5.5V, Ta=25°C")
//        -> {VIN, [3, 5.5] V}, {Ta, 25 degC}
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"

namespace standin::quantity {

enum class Comparator { Equal, Less, LessOrEqual, Greater, GreaterOrEqual, Between };

struct ConditionPart {
    std::string symbol;  // "Ta", "VDD"; "Ta" where only a temperature is printed; empty: only a value is printed
    Comparator comparator = Comparator::Equal;
    model::Interval interval;  // lo, typ, hi in coherent units; Equal: typ only
    std::string text;          // the part as printed; the only content where it could not be read
    bool understood = false;
    bool operator==(ConditionPart const&) const = default;
};

// Parts are split at commas, semicolons and "and" outside of numbers and brackets.
[[nodiscard]] std::vector<ConditionPart> parseCondition(std::string_view printed);

// "T_A", "TA", "Ta" -> "ta"; "V DD" -> "vdd": for matching symbols.
[[nodiscard]] std::string symbolKey(std::string_view printed);

}  // namespace standin::quantity
