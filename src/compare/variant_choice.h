// Which rows of a sheet hold for the version of the part that was chosen.
#pragma once

#include <string_view>

namespace standin::compare {

// `printed`: the version, or versions, that a row is printed for; `chosen`: the
// ordered one. False where either is empty, and where one holds the other: a row
// for "XQ20A, XQ20B" holds for "XQ20B", one for "XQ20" holds for "XQ20-B5". Of "XQ20-A" and "XQ20-B", "XQ20-28" and
// "XQ20-33" neither holds for the other; further letters behind a hyphen ("-TR") may be how the part is packed.
[[nodiscard]] bool isOtherVariant(std::string_view printed, std::string_view chosen);

}  // namespace standin::compare
