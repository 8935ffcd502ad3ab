// The ToUnicode map is read only as far as to know which codes it has. In an
// embedded TrueType program the Unicode character table is read backwards
// (glyph -> lowest character), and combined with the way from code to glyph.
//
// Tested by tests/extractors/poppler/font_program_test.cpp.
#include "extractors/poppler/font_program.h"

#include <charconv>
#include <cstdlib>
#include <memory>
#include <string>

#include <Dict.h>
#include <Object.h>
#include <Stream.h>
#include <XRef.h>
#include <fofi/FoFiTrueType.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kLargestMap = 1U << 20U;
constexpr char32_t kLastOfPlane = 0xFFFF;
constexpr int kLastGeneration = 65535;

bool isSpace(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == '\0'; }

// Splits a map into "<hex>", "[", "]" and words.
class MapWords {
public:
    explicit MapWords(std::string_view text) : m_rest(text) {}

    std::string_view next() {
        while (!m_rest.empty() && isSpace(m_rest.front())) m_rest.remove_prefix(1);
        if (m_rest.empty()) return {};
        std::size_t length = 1;
        char const first = m_rest.front();
        if (first == '%') {
            while (!m_rest.empty() && m_rest.front() != '\n' && m_rest.front() != '\r') m_rest.remove_prefix(1);
            return next();
        }
        if (first == '<') {
            length = m_rest.find('>');
            length = length == std::string_view::npos ? m_rest.size() : length + 1;
        } else if (first != '[' && first != ']') {
            while (length < m_rest.size() && !isSpace(m_rest[length]) && m_rest[length] != '<' && m_rest[length] != '[' && m_rest[length] != ']') ++length;
        }
        std::string_view const word = m_rest.substr(0, length);
        m_rest.remove_prefix(length);
        return word;
    }

private:
    std::string_view m_rest;
};

// Value of "<41>"; -1 if it is none or beyond a byte.
int byteOf(std::string_view word) {
    if (word.size() < 3 || word.front() != '<') return -1;
    std::string_view const digits = word.substr(1, word.size() - 2);
    unsigned value = 0;
    auto const result = std::from_chars(digits.data(), digits.data() + digits.size(), value, 16);
    return result.ec == std::errc{} && result.ptr == digits.data() + digits.size() && value < 256 ? static_cast<int>(value) : -1;
}

}  // namespace

std::array<bool, 256> codesOfMap(std::string_view map) {
    std::array<bool, 256> codes{};
    MapWords words(map);
    for (std::string_view word = words.next(); !word.empty(); word = words.next()) {
        if (word == "beginbfchar") {
            while (true) {
                std::string_view const code = words.next();
                if (code.empty() || code.front() != '<') break;
                (void)words.next();
                if (int const byte = byteOf(code); byte >= 0) codes[static_cast<std::size_t>(byte)] = true;
            }
        } else if (word == "beginbfrange") {
            while (true) {
                std::string_view const first = words.next();
                if (first.empty() || first.front() != '<') break;
                int const from = byteOf(first);
                int const to = byteOf(words.next());
                if (words.next() == "[") {
                    for (std::string_view entry = words.next(); !entry.empty() && entry != "]";) entry = words.next();
                }
                for (int byte = from; from >= 0 && byte <= to; ++byte) codes[static_cast<std::size_t>(byte)] = true;
            }
        }
    }
    return codes;
}

std::array<bool, 256> codesOfToUnicode(GfxFont const& font, XRef* xref) {
    std::array<bool, 256> codes{};
    // A font written directly into the resources has no object of its own to be
    // looked up again: Poppler gives it a made-up number.
    Ref const id = *font.getID();
    Object const dictionary = id.num >= 0 && id.num < xref->getNumObjects() && id.gen >= 0 && id.gen <= kLastGeneration ? xref->fetch(id) : Object(objNull);
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

std::unordered_map<std::uint32_t, char32_t> charactersOfProgram(GfxFont& font, XRef* xref) {
    std::unordered_map<std::uint32_t, char32_t> characters;
    bool const trueType = font.getType() == fontTrueType || font.getType() == fontTrueTypeOT || font.getType() == fontCIDType2 || font.getType() == fontCIDType2OT;
    if (!trueType) return characters;
    auto const bytes = font.readEmbFontFile(xref);
    if (!bytes || bytes->empty()) return characters;
    auto const program = FoFiTrueType::make(bytes->data(), static_cast<int>(bytes->size()));
    if (!program) return characters;
    int table = program->findCmap(3, 1);
    for (int encoding = 4; table < 0 && encoding >= 0; --encoding) table = program->findCmap(0, encoding);
    if (table < 0) return characters;
    std::unordered_map<int, char32_t> characterOfGlyph;
    for (char32_t code = 0x20; code <= kLastOfPlane; ++code) {
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
