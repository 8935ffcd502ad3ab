// In an embedded TrueType program the Unicode character table is read backwards
// (glyph -> lowest character), and combined with the way from code to glyph.
//
// Tested by tests/extractors/poppler/page_text_test.cpp.
#include "extractors/poppler/font_program.h"

#include <cstdlib>
#include <memory>
#include <string>

#include <Dict.h>
#include <Object.h>
#include <Stream.h>
#include <XRef.h>
#include <fofi/FoFiTrueType.h>

#include "extractors/poppler/kept_objects.h"
#include "extractors/poppler/to_unicode_map.h"

namespace standin::poppler {

namespace {

constexpr std::size_t kLargestMap = 1U << 20U;
constexpr char32_t kLastOfPlane = 0xFFFF;
constexpr int kLastGeneration = 65535;
constexpr std::size_t kMostWidths = 4096;
constexpr std::uint32_t kSymbolArea = 0xF000;

}  // namespace

// A font written directly into the resources has no object of its own to be
// looked up again: Poppler gives it a made-up number.
static Object dictionaryOf(GfxFont const& font, XRef* xref) {
    Ref const id = *font.getID();
    bool const real = id.num >= 0 && id.num < xref->getNumObjects() && id.gen >= 0 && id.gen <= kLastGeneration;
    return real ? xref->fetch(id) : Object(objNull);
}

std::array<bool, 256> codesOfToUnicode(GfxFont const& font, XRef* xref) {
    std::array<bool, 256> codes{};
    Object const dictionary = dictionaryOf(font, xref);
    if (!dictionary.isDict()) {
        codes.fill(true);
        return codes;
    }
    Object map = dictionary.dictLookup("ToUnicode");
    if (!map.isStream()) {
        codes.fill(true);
        return codes;
    }
    std::string text;
    map.streamReset();
    for (int c = map.streamGetChar(); c != EOF && text.size() < kLargestMap; c = map.streamGetChar()) text += static_cast<char>(c);
    map.streamClose();
    return codesOfMap(text);
}

std::vector<CodeWidth> widthsOfComposite(GfxFont const& font, XRef* xref) {
    std::vector<CodeWidth> widths;
    Object const dictionary = dictionaryOf(font, xref);
    if (!dictionary.isDict()) return widths;
    Object const descendants = dictionary.dictLookup("DescendantFonts");
    if (!descendants.isArray() || descendants.arrayGetLength() < 1) return widths;
    Object const descendant = descendants.arrayGet(0);
    if (!descendant.isDict()) return widths;
    Object const list = descendant.dictLookup("W");
    if (!list.isArray()) return widths;
    auto const add = [&widths](int code, Object const& width) {
        if (code >= 0 && width.isNum() && widths.size() < kMostWidths) widths.push_back({static_cast<std::uint32_t>(code), width.getNum() / 1000});
    };
    // Either "first [w w w]" or "first last w".
    int i = 0;
    while (i + 1 < list.arrayGetLength() && widths.size() < kMostWidths) {
        Object const first = list.arrayGet(i);
        Object const second = list.arrayGet(i + 1);
        if (!first.isInt()) break;
        if (second.isArray()) {
            for (int k = 0; k < second.arrayGetLength() && widths.size() < kMostWidths; ++k) add(first.getInt() + k, second.arrayGet(k));
            i += 2;
        } else if (second.isInt() && i + 2 < list.arrayGetLength()) {
            Object const width = list.arrayGet(i + 2);
            for (int code = first.getInt(); code <= second.getInt() && widths.size() < kMostWidths; ++code) add(code, width);
            i += 3;
        } else {
            break;
        }
    }
    return widths;
}

std::unordered_map<std::uint32_t, char32_t> charactersOfProgram(GfxFont& font, SymbolFamily family, XRef* xref) {
    std::unordered_map<std::uint32_t, char32_t> characters;
    bool const trueType = font.getType() == fontTrueType || font.getType() == fontTrueTypeOT || font.getType() == fontCIDType2 || font.getType() == fontCIDType2OT;
    if (!trueType) return characters;
    Ref embedded;
    if (!font.getEmbeddedFontID(&embedded)) return characters;
    forgetKept(*xref, embedded);  // only its beginning is
    auto const bytes = font.readEmbFontFile(xref);
    if (!bytes || bytes->empty()) return characters;
    auto const program = FoFiTrueType::make(bytes->data(), static_cast<int>(bytes->size()));
    if (!program) return characters;
    int table = program->findCmap(3, 1);
    for (int encoding = 4; table < 0 && encoding >= 0; --encoding) table = program->findCmap(0, encoding);
    std::unordered_map<int, char32_t> characterOfGlyph;
    if (int const symbols = program->findCmap(3, 0); table < 0 && symbols >= 0 && family != SymbolFamily::None) {
        for (std::uint32_t byte = 0x20; byte < 0x100; ++byte) {
            int const glyph = program->mapCodeToGID(symbols, kSymbolArea + byte);
            char32_t const sign = symbolCharacter(family, byte);
            if (glyph > 0 && sign != 0) characterOfGlyph.emplace(glyph, sign);
        }
    }
    for (char32_t code = 0x20; table >= 0 && code <= kLastOfPlane; ++code) {
        if (code >= 0xD800 && code < 0xF900) continue;
        int const glyph = program->mapCodeToGID(table, code);
        if (glyph > 0) characterOfGlyph.emplace(glyph, code);
    }
    if (font.isCIDFont()) {
        auto& composite = static_cast<GfxCIDFont&>(font);
        int const* glyphOfCid = composite.getCIDToGID();
        if (glyphOfCid == nullptr) {
            for (auto const& [glyph, code] : characterOfGlyph) characters.emplace(static_cast<std::uint32_t>(glyph), code);
        } else {
            for (unsigned cid = 0; cid < composite.getCIDToGIDLen(); ++cid) {
                if (auto const found = characterOfGlyph.find(glyphOfCid[cid]); found != characterOfGlyph.end()) characters.emplace(cid, found->second);
            }
        }
        return characters;
    }
    std::unique_ptr<int, void (*)(void*)> const glyphOfCode(static_cast<Gfx8BitFont&>(font).getCodeToGIDMap(program.get()), std::free);
    if (!glyphOfCode) return characters;
    for (std::uint32_t code = 0; code < 256; ++code) {
        if (auto const found = characterOfGlyph.find(glyphOfCode.get()[code]); found != characterOfGlyph.end()) characters.emplace(code, found->second);
    }
    return characters;
}

}  // namespace standin::poppler
