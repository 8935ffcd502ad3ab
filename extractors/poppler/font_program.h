// What a font's own parts tell of its codes: the ToUnicode map's list of codes,
// and the character tables inside an embedded font program. Private to
// extractors/poppler/; includes Poppler.
#pragma once

#include <array>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include <GfxFont.h>

#include "extractors/poppler/code_reading.h"
#include "extractors/poppler/glyph_names.h"

namespace standin::poppler {

// Which of the 256 codes of an 8-bit font its ToUnicode map has. Poppler merges
// the map with its own guesses, so that the font no longer tells.
[[nodiscard]] std::array<bool, 256> codesOfToUnicode(GfxFont const& font, XRef* xref);

// Code -> character by the character table of an embedded TrueType program
// (Unicode, or the private one of symbol fonts); empty if it has none.
[[nodiscard]] std::unordered_map<std::uint32_t, char32_t> charactersOfProgram(GfxFont& font, SymbolFamily family, XRef* xref);

// The widths that a composite font lists, in ems.
[[nodiscard]] std::vector<CodeWidth> widthsOfComposite(GfxFont const& font, XRef* xref);

}  // namespace standin::poppler
