// Lines of at most 80 terminal columns with a hanging indent. Private to report/.
#pragma once

#include <string>
#include <string_view>

namespace standin::report {

inline constexpr int kColumns = 80;

// Appends `text` to `out`: `first` opens the first line, the next ones start
// under its end. Breaks at blanks, and between CJK characters; what is longer
// than a line is broken where it must be. Foreign text is made visible first.
void appendWrapped(std::string& out, std::string_view first, std::string_view text);

}  // namespace standin::report
