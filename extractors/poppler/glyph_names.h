// Characters by glyph name, and the standard encodings of symbol fonts.
// Private to extractors/poppler/; no Poppler in the interface.
//
//     charactersOfGlyphName("uni03A9")  -> {U+03A9}
//     charactersOfGlyphName("f_i")      -> {'f', 'i'}
//     charactersOfGlyphName("g42")      -> {}
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace standin::poppler {

// Characters that a glyph name stands for; empty if the name tells nothing:
// numbered names (g12, c0050, glyph7) are no names. A variant suffix (".alt",
// "mu1") is ignored. Needs ensureLibrary().
[[nodiscard]] std::u32string charactersOfGlyphName(std::string_view name);

enum class SymbolFamily : std::uint8_t { None, Symbol, Wingdings };

// By the font's name without subset prefix.
[[nodiscard]] SymbolFamily symbolFamily(std::string_view fontName);

// The sign that a byte stands for in a symbol font; 0 if none is known.
[[nodiscard]] char32_t symbolCharacter(SymbolFamily family, std::uint32_t byte);

// The character that a letter of the private area means by an old convention of
// font makers (old-style digits, small capitals, pieces of brackets); the code
// itself where there is none.
[[nodiscard]] char32_t withoutPrivateUse(char32_t code);

// The number in a numbered name ("C0065" is 65, "G41" is 0x41 if hexadecimal);
// -1 where the name is no such name.
enum class NumberBase : std::uint8_t { Decimal, Hexadecimal };
[[nodiscard]] int numberOfGlyphName(std::string_view name, NumberBase base);

// A letter of a private area or a control code is no character that a reader
// could compare.
[[nodiscard]] bool meansNothing(char32_t code);

}  // namespace standin::poppler
