// A font is described once per document and kept by its object number. For an
// 8-bit font the order of trust is: its ToUnicode map where it has the code and
// says something printable; the standard encoding of a symbol font; the glyph
// name; the font program. For a CID font: its ToUnicode map, or the published
// map of its character collection; the font program. Otherwise the character is
// unknown.
//
// Tested by tests/extractors/poppler/page_text_test.cpp.
#include "extractors/poppler/font_table.h"

#include <algorithm>
#include <cmath>
#include <cstring>

#include "extractors/poppler/code_reading.h"
#include "extractors/poppler/font_program.h"
#include "extractors/poppler/glyph_names.h"

namespace standin::poppler {

namespace {

// Bounds for a font's own idea of its height; many state nonsense.
constexpr double kHighestAscent = 1.05;
constexpr double kLowestAscent = 0.5;
constexpr double kDeepestDescent = -0.4;
constexpr double kShallowestDescent = -0.1;
constexpr double kFlattestBox = 0.3;  // of the widest glyph; a flatter box of a Type 3 font says nothing
constexpr std::size_t kMaxDecoded = 70000;
constexpr int kBoldWeight = 6;  // GfxFont::W600

// In units of the text; 0 where no width is stated.
double widestGlyph(Gfx8BitFont const& font) {
    double widest = 0;
    for (int code = 0; code < 256; ++code) widest = std::max(widest, std::abs(font.getWidth(static_cast<unsigned char>(code))));
    return widest;
}

std::string withoutSubsetPrefix(std::string name) {
    auto const isUpper = [](char c) { return c >= 'A' && c <= 'Z'; };
    if (name.size() > 7 && name[6] == '+' && std::all_of(name.begin(), name.begin() + 6, isUpper)) name.erase(0, 7);
    return name;
}

bool containsWord(std::string const& name, std::initializer_list<char const*> words) {
    return std::any_of(words.begin(), words.end(), [&](char const* word) { return name.find(word) != std::string::npos; });
}

std::string printableName(std::string const& raw) {
    std::string out;
    for (char c : raw.substr(0, 120)) out += (c > 0x20 && c < 0x7f) ? c : '?';
    return out;
}

Decoded unknown() { return {}; }

// Splits the letters that stand for several letters.
void append(Decoded& out, char32_t code) {
    static constexpr char const* kLigatures[] = {"ff", "fi", "fl", "ffi", "ffl", "st", "st"};
    if (code >= 0xFB00 && code <= 0xFB06) {
        for (char const* c = kLigatures[code - 0xFB00]; *c != '\0'; ++c) append(out, static_cast<char32_t>(*c));
        return;
    }
    if (out.count < Decoded::kMost) out.codes[out.count++] = code;
}

Decoded decodedOf(std::u32string const& text) {
    if (text.empty()) return unknown();
    Decoded out;
    out.count = 0;
    for (char32_t code : text) append(out, code);
    return out;
}

// Control codes that programs write for a gap.
char32_t spaced(char32_t code) { return code == 0x09 || code == 0x0A || code == 0x0D ? U' ' : code; }

}  // namespace

FontEntry::FontEntry(GfxFont& font, XRef* xref) : m_cid(font.isCIDFont()) {
    describe(font);
    measure(font);
    if (m_cid) {
        // Without a ToUnicode map and without a published collection, Poppler
        // gives back the code itself.
        auto const* collection = static_cast<GfxCIDFont&>(font).getCollection();
        bool const nameless = collection == nullptr || collection->toStr() == "Adobe-Identity";
        m_trusted = font.hasToUnicodeCMap() || !nameless;
    } else {
        auto& simple = static_cast<Gfx8BitFont&>(font);
        for (int code = 0; code < 256; ++code) {
            if (char const* name = simple.getCharName(code)) m_names[static_cast<std::size_t>(code)] = name;
        }
        m_encoded = simple.getHasEncoding() && !m_font.type3;
        if (font.hasToUnicodeCMap()) m_inToUnicode = codesOfToUnicode(font, xref);
    }
    readProgram(font, xref);
}

void FontEntry::describe(GfxFont& font) {
    m_font.name = font.getName() ? printableName(withoutSubsetPrefix(*font.getName())) : std::string{};
    m_font.type3 = font.getType() == fontType3;
    Ref embedded;
    m_font.embedded = m_font.type3 || font.getEmbeddedFontID(&embedded);
    m_font.bold = font.isBold() || static_cast<int>(font.getWeight()) >= kBoldWeight ||
                  containsWord(m_font.name, {"Bold", "bold", "BOLD", "Black", "Heavy", "Demi"});
    m_font.italic = font.isItalic() || containsWord(m_font.name, {"Italic", "italic", "ITALIC", "Oblique", "oblique"});
    m_font.monospaced = font.isFixedWidth() || containsWord(m_font.name, {"Courier", "Mono", "Consolas", "Typewriter"});
    m_font.symbolic = symbolFamily(m_font.name) != SymbolFamily::None || containsWord(m_font.name, {"Dingbats", "Wingdings", "Webdings", "Symbol"});
}

void FontEntry::measure(GfxFont& font) {
    double const ascent = font.getAscent();
    double const descent = font.getDescent();
    if (m_font.type3) {
        double const* matrix = font.getFontMatrix();
        double const* box = font.getFontBBox();
        double const unit = std::abs(matrix[3]) > 0 ? std::abs(matrix[3]) : std::abs(matrix[1]);
        double const height = (box[3] - box[1]) * unit;
        // Bitmap fonts often come with a box that says nothing ("0 0 1 -1"): then the widest glyph tells the size.
        double const widest = widestGlyph(static_cast<Gfx8BitFont const&>(font));  // Poppler has applied the font's matrix
        bool const known = std::isfinite(widest) && widest > 0.01 && widest < 100;
        bool const boxed = std::isfinite(height) && height > 0 && height < 1000;
        if (boxed && !(known && height < kFlattestBox * widest)) {
            m_scale = height;
            m_ascent = std::clamp(box[3] / (box[3] - box[1]), 0.0, 1.0);
            m_descent = m_ascent - 1;
        } else if (known) {
            m_scale = widest;
        } else if (std::isfinite(unit) && unit > 0 && unit < 10) {
            m_scale = unit * 1000;
        }
        return;
    }
    if (std::isfinite(ascent) && ascent != 0) m_ascent = std::clamp(ascent, kLowestAscent, kHighestAscent);
    if (std::isfinite(descent) && descent != 0) m_descent = std::clamp(-std::abs(descent), kDeepestDescent, kShallowestDescent);
}

void FontEntry::readProgram(GfxFont& font, XRef* xref) {
    if (m_cid) {
        if (m_trusted) return;
        m_program = charactersOfProgram(font, symbolFamily(m_font.name), xref);
        if (m_program.empty()) judgeCodes(font, xref);
        return;
    }
    auto& simple = static_cast<Gfx8BitFont&>(font);
    m_trueType = font.getType() == fontTrueType || font.getType() == fontTrueTypeOT;
    if (m_trueType) {
        m_namesAreGuesses = !font.hasToUnicodeCMap() && !simple.getHasEncoding();
        if (m_namesAreGuesses) {
            m_program = charactersOfProgram(font, symbolFamily(m_font.name), xref);
            if (m_program.empty()) judgeCodes(font, xref);
        }
        return;
    }
    m_blankWithoutName = std::any_of(m_names.begin(), m_names.end(), [](std::string const& name) { return !name.empty() && name != ".notdef"; });
    judgeNumberedNames(simple);
}

// Glyphs named by numbers: if the widths tell what the numbers mean, so be it.
void FontEntry::judgeNumberedNames(Gfx8BitFont& font) {
    struct Attempt {
        std::vector<CodeWidth> widths;
        std::vector<std::pair<std::uint32_t, std::uint32_t>> numbers;  // code, number
        CodeReading reading = CodeReading::Unknown;
        double misfit = 1;
    };
    Attempt best;
    Proportions const proportions = m_font.type3 ? Proportions::Relative : Proportions::Absolute;
    for (NumberBase base : {NumberBase::Decimal, NumberBase::Hexadecimal}) {
        Attempt attempt;
        for (std::uint32_t code = 0; code < 256; ++code) {
            int const number = numberOfGlyphName(m_names[code], base);
            if (number < 0 || !charactersOfGlyphName(m_names[code]).empty()) continue;
            attempt.numbers.emplace_back(code, static_cast<std::uint32_t>(number));
            attempt.widths.push_back({static_cast<std::uint32_t>(number), font.getWidth(static_cast<unsigned char>(code))});
        }
        attempt.reading = bestReading(attempt.widths, proportions);
        attempt.misfit = misfit(attempt.reading, attempt.widths, proportions);
        if (attempt.misfit < best.misfit) best = std::move(attempt);
        // Spaces of a given width are named by their character.
        for (std::uint32_t code = 0; code < 256 && base == NumberBase::Decimal; ++code) {
            int const number = numberOfGlyphName(m_names[code], base);
            if (m_names[code].substr(0, 1) == "C" && number >= 0x2000 && number <= 0x200A) m_program.emplace(code, static_cast<char32_t>(number));
        }
    }
    for (auto const& [code, number] : best.numbers) {
        if (char32_t const c = characterOf(best.reading, number); c != 0) m_program.emplace(code, c);
    }
}

// Codes without names: the same, by the code itself.
void FontEntry::judgeCodes(GfxFont& font, XRef* xref) {
    std::vector<CodeWidth> widths;
    if (m_cid) {
        widths = widthsOfComposite(font, xref);
    } else {
        for (int code = 1; code < 256; ++code) {
            double const width = static_cast<Gfx8BitFont&>(font).getWidth(static_cast<unsigned char>(code));
            if (width > 0) widths.push_back({static_cast<std::uint32_t>(code), width});
        }
    }
    CodeReading const reading = bestReading(widths, Proportions::Absolute);
    if (reading == CodeReading::Unknown) {
        // Letters at the places of letters are the usual thing; a font that
        // starts below the space has numbered its glyphs.
        if (!m_cid && !widths.empty() && widths.front().code < 0x20) m_namesAreNumbers = true;
        return;
    }
    for (std::uint32_t code = 0; code < 256; ++code) {
        if (char32_t const c = characterOf(reading, code); c != 0) m_program.emplace(code, c);
    }
    m_namesAreNumbers = reading != CodeReading::Characters;
}

Decoded FontEntry::resolveByName(CharCode code, Unicode const* unicode, int length) const {
    if (auto const found = m_program.find(code); found != m_program.end()) return decodedOf({found->second});
    std::string const& name = m_names[code];
    // A TrueType symbol font is often given a text encoding, whose names mean
    // nothing; in other fonts a name that means something is right.
    SymbolFamily const family = symbolFamily(m_font.name);
    if (family != SymbolFamily::None && (m_trueType || charactersOfGlyphName(name).empty())) {
        if (char32_t const sign = symbolCharacter(family, code); sign != 0) return decodedOf({sign});
    }
    if (name.empty() || name == ".notdef") return m_blankWithoutName ? decodedOf({U' '}) : unknown();
    if (m_namesAreGuesses && m_namesAreNumbers) return unknown();
    std::u32string const named = charactersOfGlyphName(name);
    if (!named.empty() && !meansNothing(named[0])) return decodedOf(named);
    // The names of ornaments are numbers, but well-known ones.
    bool const ornaments = m_font.name.find("Dingbats") != std::string::npos;
    if (ornaments && length == 1 && !meansNothing(static_cast<char32_t>(unicode[0]))) return decodedOf({static_cast<char32_t>(unicode[0])});
    return unknown();
}

Decoded FontEntry::resolve(CharCode code, Unicode const* unicode, int length) {
    bool const mapped = m_cid ? m_trusted : code < 256 && m_inToUnicode[code];
    if (mapped && length > 0) {
        Decoded out;
        out.count = 0;
        SymbolFamily const family = symbolFamily(m_font.name);
        bool nothing = true;
        for (int i = 0; i < length; ++i) {
            char32_t c = spaced(static_cast<char32_t>(unicode[i]));
            if (c >= 0xF000 && c <= 0xF0FF && family != SymbolFamily::None) {
                if (char32_t const sign = symbolCharacter(family, c & 0xFFU); sign != 0) c = sign;
            }
            // The Symbol font has no Latin letters: a map that tells one gives the byte.
            bool const latin = (c >= U'A' && c <= U'Z') || (c >= U'a' && c <= U'z');
            if (latin && family == SymbolFamily::Symbol) c = symbolCharacter(family, c);
            c = withoutPrivateUse(c);
            if (meansNothing(c)) c = model::kUnknownCharacter;
            if (c != model::kUnknownCharacter) nothing = false;
            append(out, c);
        }
        if (!m_cid) contradict(out, code);
        if (!nothing) return out;
    }
    if (m_cid) {
        auto const found = m_program.find(code);
        return found == m_program.end() ? unknown() : decodedOf({found->second});
    }
    return resolveByName(code, unicode, length);
}

// A glyph is drawn by its name. If that is a digit and the map says another one,
// the map is wrong about what is printed.
void FontEntry::contradict(Decoded& text, CharCode code) const {
    if (!m_encoded || text.count != 1 || text.codes[0] < U'0' || text.codes[0] > U'9') return;
    std::u32string const named = charactersOfGlyphName(m_names[code]);
    if (named.size() != 1 || named[0] < U'0' || named[0] > U'9' || named[0] == text.codes[0]) return;
    text.codes[0] = named[0];
    text.contradicted = true;
}

Decoded const& FontEntry::decodeOther(CharCode code, Unicode const* unicode, int length) {
    if (!m_cid) {
        auto& slot = m_decoded8[code & 0xFFU];
        slot = std::make_unique<Decoded>(resolve(code & 0xFFU, unicode, length));
        return *slot;
    }
    // The common case of a CID font needs no table.
    if (m_trusted && !m_font.symbolic && length == 1 && unicode[0] >= 0x20 && unicode[0] < 0xE000 && (unicode[0] < 0x7F || unicode[0] >= 0xA0)) {
        m_direct.codes[0] = static_cast<char32_t>(unicode[0]);
        m_direct.count = 1;
        return m_direct;
    }
    auto found = m_decoded.find(code);
    if (found == m_decoded.end()) {
        if (m_decoded.size() >= kMaxDecoded) m_decoded.clear();
        found = m_decoded.emplace(code, resolve(code, unicode, length)).first;
    }
    return found->second;
}

FontEntry& FontTable::entry(GfxFont& font) {
    Ref const id = *font.getID();
    std::uint64_t const key = static_cast<std::uint64_t>(static_cast<std::uint32_t>(id.num)) << 32U | static_cast<std::uint32_t>(id.gen);
    auto& slot = m_entries[key];
    if (!slot) slot = std::make_unique<FontEntry>(font, m_xref);
    return *slot;
}

}  // namespace standin::poppler
