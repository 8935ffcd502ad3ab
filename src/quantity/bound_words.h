// Words and signs that make a number a bound ("max", "≥", "以下") or an estimate
// ("approx."); used by cell.cpp only.
#pragma once

#include <string_view>

namespace standin::quantity {

// AtMost and AtLeast include the number, Below and Above do not.
enum class BoundWord { None, AtMost, AtLeast, Below, Above, About };

// Takes the word or sign off the front or back of the folded `text` and says what
// it means; None and `text` unchanged where there is none, or nothing else is left.
[[nodiscard]] BoundWord takeBoundWord(std::string_view& text);

}  // namespace standin::quantity
