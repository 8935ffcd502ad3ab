// What a column title says its column holds. The titles of all languages are
// data: vocabulary/column_titles.h.
//
//     columnRoleOf("Test Conditions")  -> Condition
//     columnRoleOf("最小值 Min.")        -> Min
//     columnRoleOf("XX358A")           -> Unknown   (a variant's title)
#pragma once

#include <cstdint>
#include <string_view>

namespace standin::parameters {

enum class ColumnRole : std::uint8_t {
    Unknown,
    Name,
    Symbol,
    Condition,
    Min,
    Typ,
    Max,
    Value,    // the only value column, or one of several headed by variants
    Unit,
    Note,
    Part,     // names the part a line is for
    Pin,      // pin numbers
    PinName,
    Package,
    Ignored,  // test circuit numbers, figures, item numbers
};

// Unknown where no word of the title is known. Footnote marks, brackets with a
// unit and punctuation in the title don't matter.
[[nodiscard]] ColumnRole columnRoleOf(std::string_view title);

// "from" and "to" of the titles "From (input)" and "To (output)", else empty.
[[nodiscard]] std::string_view wayOf(std::string_view title);

// Titles that group value columns and say nothing else: "Limits", "Value", "Rating".
[[nodiscard]] bool isNeutralGroupTitle(std::string_view title);

}  // namespace standin::parameters
