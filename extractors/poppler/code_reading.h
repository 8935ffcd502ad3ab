// What the codes of a font without any table of characters may mean, judged by
// the widths of its glyphs. Private to extractors/poppler/; no Poppler.
//
// Such fonts number their glyphs: by the character (65 is A), by the usual
// order of glyphs in a font file (36 is A), or as in the Symbol font (109 is a
// mu). The widths of letters tell which: an "m" is wide, an "i" narrow, a mu in
// between. Where they do not tell, nothing is guessed: digits are all equally
// wide, so a handful of digits stays unknown.
//
//     CodeReading reading = bestReading(widths, Proportions::Absolute);
//     char32_t c = characterOf(reading, 65);
#pragma once

#include <cstdint>
#include <span>

namespace standin::poppler {

struct CodeWidth {
    std::uint32_t code = 0;
    double width = 0;  // in ems, or in any unit if the proportions are relative
};

enum class CodeReading : std::uint8_t {
    Unknown,
    Characters,        // the code is the character
    GlyphOrder,        // the code is the place in the usual order of glyphs
    FoldedGlyphOrder,  // the same, but what lies below the letters is counted down from 256
    SymbolFont,        // the three of the Symbol font
    SymbolGlyphOrder,
    FoldedSymbolGlyphOrder,
};

// Relative: the unit of the widths is not known (Type 3 fonts).
enum class Proportions : std::uint8_t { Absolute, Relative };

// How badly `widths` fit a reading: mean relative deviation from the nearest of
// the usual text faces; 1 where there is not enough to judge by.
[[nodiscard]] double misfit(CodeReading reading, std::span<CodeWidth const> widths, Proportions proportions);

// The one reading that fits, while the others do not; else Unknown.
[[nodiscard]] CodeReading bestReading(std::span<CodeWidth const> widths, Proportions proportions);

// 0 where the reading has no character for the code.
[[nodiscard]] char32_t characterOf(CodeReading reading, std::uint32_t code);

}  // namespace standin::poppler
