// What is known of each font of a document, and the Unicode of its codes.
// Private to extractors/poppler/; includes Poppler.
//
// Poppler's mapping of a code is taken only where something stands behind it: a
// ToUnicode map that has the code, an encoding with a glyph name that means a
// character, or the font program. A bare code is never taken for a character.
//
//     FontTable fonts(xref);
//     FontEntry& font = fonts.entry(*state->getFont());
//     Decoded text = font.decode(code, u, uLen);
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include <GfxFont.h>

#include "model/page_content.h"

namespace standin::poppler {

// The characters of one code: mostly one, several for a ligature, never none.
struct Decoded {
    static constexpr std::size_t kMost = 8;
    std::array<char32_t, kMost> codes{model::kUnknownCharacter};
    std::uint8_t count = 1;
    bool contradicted = false;  // the file says another digit than the one that the glyph's name means
};

class FontEntry {
public:
    FontEntry(GfxFont& font, XRef* xref);

    [[nodiscard]] model::Font const& font() const { return m_font; }

    // Height of the font's box above and (negative) below the baseline, in
    // units of the size.
    [[nodiscard]] double ascent() const { return m_ascent; }
    [[nodiscard]] double descent() const { return m_descent; }

    // Size as a reader takes it, for a text size of 1 (Type 3 fonts have a
    // scale of their own).
    [[nodiscard]] double scale() const { return m_scale; }

    // `unicode`, `length`: what Poppler maps the code to.
    [[nodiscard]] Decoded const& decode(CharCode code, Unicode const* unicode, int length) {
        auto const& known = m_decoded8[code & 0xFFU];  // of an 8-bit font: most of all
        return known ? *known : decodeOther(code, unicode, length);
    }

    int pageStamp = 0;           // page for which pageIndex holds
    std::uint16_t pageIndex = 0;  // in PageContent::fonts

private:
    Decoded const& decodeOther(CharCode code, Unicode const* unicode, int length);
    Decoded resolve(CharCode code, Unicode const* unicode, int length);
    Decoded resolveByName(CharCode code, Unicode const* unicode, int length) const;
    void contradict(Decoded& text, CharCode code) const;
    void judgeNumberedNames(Gfx8BitFont& font);
    void judgeCodes(GfxFont& font, XRef* xref);
    void describe(GfxFont& font);
    void measure(GfxFont& font);
    void readProgram(GfxFont& font, XRef* xref);

    model::Font m_font;
    double m_ascent = 0.75;
    double m_descent = -0.25;
    double m_scale = 1;
    bool m_cid = false;
    bool m_encoded = false;  // the font says itself which glyph belongs to a code
    bool m_trueType = false;
    bool m_trusted = true;  // CID fonts: Poppler's mapping has something behind it
    std::array<std::string, 256> m_names;       // glyph names of an 8-bit font
    std::array<bool, 256> m_inToUnicode{};      // codes that its ToUnicode map has
    bool m_namesAreGuesses = false;  // no encoding: the names are only Poppler's assumption
    bool m_namesAreNumbers = false;  // and that assumption is wrong
    bool m_blankWithoutName = false;  // a code without a glyph name draws nothing
    std::unordered_map<std::uint32_t, char32_t> m_program;  // code -> character, from the font program or judged by widths
    std::unordered_map<std::uint32_t, Decoded> m_decoded;   // CID fonts
    std::array<std::unique_ptr<Decoded>, 256> m_decoded8;   // 8-bit fonts
    Decoded m_direct;
};

class FontTable {
public:
    explicit FontTable(XRef* xref) : m_xref(xref) {}

    // Made on first sight; stays where it is as long as the table lives.
    [[nodiscard]] FontEntry& entry(GfxFont& font);

    // A number for each page read, which no entry has met before.
    [[nodiscard]] int nextStamp() { return ++m_stamp; }

private:
    XRef* m_xref;
    int m_stamp = 0;
    std::unordered_map<std::uint64_t, std::unique_ptr<FontEntry>> m_entries;
};

}  // namespace standin::poppler
