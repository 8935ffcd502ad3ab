// What a sentence, a title or an equation is numbered with, which says nothing of its
// meaning. Private to this folder.
//
//     withoutMark("8.5 Electrical characteristics", names)  // {Heading, "8.5", "Electrical characteristics"}
//     withoutMark("3.3 V supply", names)                    // {None, "", "3.3 V supply"}
#pragma once

#include <cstdint>
#include <string_view>

#include "compare/wording_tokens.h"

namespace standin::compare {

// Views of what was asked about.
struct Marked {
    enum class Kind : std::uint8_t { None, InList, Heading, Caption };
    Kind kind = Kind::None;
    std::string_view mark;  // "1", "b", "8.5", "Table 2"; empty: none
    std::string_view text;  // what stands behind it; all, where there is no mark
};

// A number that may be a value, a count or a pin is no mark.
[[nodiscard]] Marked withoutMark(std::string_view printed, SheetNames const& names);

// "V = I × R (3)": an equation without its number.
[[nodiscard]] std::string_view withoutEquationNumber(std::string_view printed, SheetNames const& names);

}  // namespace standin::compare
