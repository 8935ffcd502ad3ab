// Which codes a ToUnicode map has. What it maps them to, Poppler tells; that a
// code is missing, it hides. Private to extractors/poppler/; no Poppler.
#pragma once

#include <array>
#include <string_view>

namespace standin::poppler {

// One-byte codes named in the bfchar and bfrange sections of `map`. Linear;
// what is malformed is skipped.
[[nodiscard]] std::array<bool, 256> codesOfMap(std::string_view map);

}  // namespace standin::poppler
