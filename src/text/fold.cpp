#include "text/fold.h"

#include <array>
#include <cstdint>
#include <optional>
#include <utility>

#include <unicode/bytestream.h>
#include <unicode/casemap.h>
#include <unicode/normalizer2.h>
#include <unicode/stringpiece.h>

#include "text/dashes.h"
#include "text/script.h"
#include "text/utf8.h"

// NFC by ICU, skipped for ASCII and for what a quick check finds normal. The
// folding is one pass over code points with an explicit table: the compatibility
// forms of Unicode would damage superscripts ("4.25¹"), ordinal degree signs and
// trademark signs, so only what is listed here is mapped. Spaces, line-break
// hyphens and digraphs ("+/-", "<=") are decided while appending.
// Tested by tests/src/text/fold_test.cpp.

namespace standin::text {

namespace {

std::string normalised(std::string_view utf8, icu::Normalizer2 const* normalizer) {
    std::string clean = cleaned(utf8);
    if (normalizer == nullptr) return clean;
    UErrorCode status = U_ZERO_ERROR;
    icu::StringPiece const piece(clean.data(), static_cast<std::int32_t>(clean.size()));
    if (normalizer->isNormalizedUTF8(piece, status) != 0 && U_SUCCESS(status) != 0) return clean;
    std::string result;
    icu::StringByteSink<std::string> sink(&result);
    status = U_ZERO_ERROR;
    normalizer->normalizeUTF8(0, piece, sink, nullptr, status);
    return U_SUCCESS(status) != 0 ? result : clean;
}

icu::Normalizer2 const* nfc() {
    UErrorCode status = U_ZERO_ERROR;
    icu::Normalizer2 const* instance = icu::Normalizer2::getNFCInstance(status);
    return U_SUCCESS(status) != 0 ? instance : nullptr;
}

icu::Normalizer2 const* nfkc() {
    UErrorCode status = U_ZERO_ERROR;
    icu::Normalizer2 const* instance = icu::Normalizer2::getNFKCInstance(status);
    return U_SUCCESS(status) != 0 ? instance : nullptr;
}

// Characters that NFC neither changes nor joins with a neighbour: a text of them
// alone is normal, which spares ICU two passes. A cautious list of what datasheets
// print; combining marks, jamo and compatibility ideographs are not in it.
bool isInertInNfc(char32_t code) {
    if (code < 0x300) return true;
    if (code < 0x2010) return (code >= 0x391 && code <= 0x3C9) || (code >= 0x400 && code <= 0x482);
    if (code < 0x2070) return code <= 0x2060;
    return (code <= 0x20BF) || (code >= 0x2100 && code <= 0x2125) || (code >= 0x2190 && code <= 0x2328) || (code >= 0x2460 && code <= 0x2775) ||
           (code >= 0x3000 && code <= 0x3029) || (code >= 0x3041 && code <= 0x3096) || (code >= 0x30A1 && code <= 0x30FE) ||
           (code >= 0x3380 && code <= 0x33DF) || (code >= 0x4E00 && code <= 0x9FA5) || (code >= 0xE000 && code <= 0xF8FF) ||
           (code >= 0xFF01 && code <= 0xFF5E) || code == kReplacementCharacter;
}

// NFC forms of these are what the table below makes of them anyway.
bool foldsLikeItsNfc(char32_t code) { return code == 0x2126 || code == 0x212A || code == 0x212B; }

enum class Singletons : std::uint8_t { Kept, Normalised };

// A valid text of inert characters; `singletons`: whether ohm, kelvin and angstrom signs may stay in it.
bool isNormalAlready(std::string_view utf8, Singletons singletons) {
    for (std::size_t at = 0; at < utf8.size();) {
        if (static_cast<unsigned char>(utf8[at]) < 0x80) {
            ++at;
            continue;
        }
        std::size_t const begin = at;
        char32_t const code = decodeNext(utf8, at);
        if (code == kReplacementCharacter && at == begin + 1) return false;
        if (!isInertInNfc(code) && !(singletons == Singletons::Kept && foldsLikeItsNfc(code))) return false;
    }
    return true;
}

// Square units of the block U+3380 … U+33DF that datasheets use.
constexpr std::array<std::pair<char32_t, char const*>, 42> kSquares{{
    {0x3380, "pA"}, {0x3381, "nA"}, {0x3382, "µA"}, {0x3383, "mA"}, {0x3384, "kA"}, {0x3388, "cal"}, {0x338A, "pF"},
    {0x338B, "nF"}, {0x338C, "µF"}, {0x338D, "µg"}, {0x338E, "mg"}, {0x338F, "kg"}, {0x3390, "Hz"}, {0x3391, "kHz"},
    {0x3392, "MHz"}, {0x3393, "GHz"}, {0x3394, "THz"}, {0x3396, "mL"}, {0x339A, "nm"}, {0x339B, "µm"}, {0x339C, "mm"},
    {0x339D, "cm"}, {0x339E, "km"}, {0x33A1, "m²"}, {0x33A9, "Pa"}, {0x33AA, "kPa"}, {0x33AB, "MPa"}, {0x33B0, "ps"},
    {0x33B1, "ns"}, {0x33B2, "µs"}, {0x33B3, "ms"}, {0x33B4, "pV"}, {0x33B5, "nV"}, {0x33B6, "µV"}, {0x33B7, "mV"},
    {0x33B8, "kV"}, {0x33BB, "nW"}, {0x33BC, "µW"}, {0x33BD, "mW"}, {0x33BE, "kW"}, {0x33C0, "kΩ"}, {0x33C1, "MΩ"},
}};

// What replaces a single code point; nullopt: it stays. An empty text drops it.
std::optional<std::string_view> replacement(char32_t code) {
    if (isDash(code)) return "-";
    switch (code) {
        case 0x00B5: case 0x03BC: return "µ";
        case 0x2126: return "Ω";
        case 0x2127: return "S";
        case 0x212A: return "K";
        case 0x212B: return "Å";
        case 0x2103: return "°C";
        case 0x2109: return "°F";
        case 0x00BA: case 0x02DA: case 0x2218: return "°";
        case 0xFE58:
        case 0xFE63: return "-";
        case 0xFF5E: case 0x301C: case 0x223C: case 0x02DC: case 0x2053: return "~";
        case 0x2026: case 0x22EF: return "...";
        case 0x2025: return "..";
        case 0x2266: case 0x2A7D: return "≤";
        case 0x2267: case 0x2A7E: return "≥";
        case 0x2018: case 0x2019: case 0x201A: case 0x201B: case 0x2032: case 0x00B4: case 0x02BC: return "'";
        case 0x201C: case 0x201D: case 0x201E: case 0x201F: case 0x2033: case 0x00AB: case 0x00BB: return "\"";
        case 0x2206: return "Δ";
        case 0x03D1: case 0x0398: return "θ";
        case 0x2715: case 0x2716: case 0x22C5: case 0x2217: return "×";
        case 0x2022: case 0x25CF: case 0x25A0: case 0x25AA: case 0x25E6: case 0x2023: case 0x30FB: return "•";
        case 0x2030: return "‰";
        case 0x00BD: return "0.5";
        case 0x00BC: return "0.25";
        case 0x00BE: return "0.75";
        case 0xFB00: return "ff";
        case 0xFB01: return "fi";
        case 0xFB02: return "fl";
        case 0xFB03: return "ffi";
        case 0xFB04: return "ffl";
        case 0xFB05: case 0xFB06: return "st";
        case 0x2122: case 0x00AE: case 0x00A9: return "";
        case 0xFFE5: return "¥";
        case 0x3002: return std::nullopt;
        default: break;
    }
    if ((code >= 0x200B && code <= 0x200F) || (code >= 0x202A && code <= 0x202E) || (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF ||
        (code >= 0xFE00 && code <= 0xFE0F))
        return "";
    if (code >= 0x3380 && code <= 0x33DF) {
        for (auto const& [square, spelled] : kSquares) {
            if (square == code) return spelled;
        }
    }
    return std::nullopt;
}

bool isSpace(char32_t code) {
    return code == U' ' || (code >= 9 && code <= 13) || code == 0x85 || code == 0xA0 || code == 0x1680 || (code >= 0x2000 && code <= 0x200A) ||
           code == 0x2028 || code == 0x2029 || code == 0x202F || code == 0x205F || code == 0x3000;
}

// Cyrillic letters drawn like Latin ones; 0: no such letter.
char latinLookAlike(char32_t code) {
    switch (code) {
        case 0x0410: return 'A';
        case 0x0412: return 'B';
        case 0x0421: return 'C';
        case 0x0415: return 'E';
        case 0x041D: return 'H';
        case 0x041A: return 'K';
        case 0x041C: return 'M';
        case 0x041E: return 'O';
        case 0x0420: return 'P';
        case 0x0422: return 'T';
        case 0x0425: return 'X';
        case 0x0430: return 'a';
        case 0x0435: return 'e';
        case 0x043E: return 'o';
        case 0x0440: return 'p';
        case 0x0441: return 'c';
        case 0x0445: return 'x';
        case 0x0443: return 'y';
        case 0x0455: return 's';
        default: return 0;
    }
}

// Words that mix Latin letters or degree signs with Cyrillic look-alikes and
// hold no other Cyrillic letter become Latin.
std::string withoutLookAlikes(std::string_view utf8) {
    std::string result;
    result.reserve(utf8.size());
    for (std::size_t at = 0; at < utf8.size();) {
        if (utf8[at] == ' ') {
            result.push_back(' ');
            ++at;
            continue;
        }
        std::size_t end = utf8.find(' ', at);
        if (end == std::string_view::npos) end = utf8.size();
        std::string_view const word = utf8.substr(at, end - at);
        bool latin = false;
        bool alike = false;
        bool cyrillic = false;
        for (std::size_t i = 0; i < word.size();) {
            char32_t const code = decodeNext(word, i);
            if (code == 0xB0 || (code < 0x80 && isAsciiLetter(static_cast<char>(code)))) latin = true;
            if (writingOf(code) == Writing::Cyrillic) (latinLookAlike(code) != 0 ? alike : cyrillic) = true;
        }
        if (latin && alike && !cyrillic) {
            for (std::size_t i = 0; i < word.size();) {
                char32_t const code = decodeNext(word, i);
                char const plain = latinLookAlike(code);
                append(result, plain != 0 ? static_cast<char32_t>(plain) : code);
            }
        } else {
            result.append(word);
        }
        at = end;
    }
    return result;
}

// How a byte counts when asking whether a text needs folding at all.
enum class ByteKind : std::uint8_t { Plain, Space, EqualSign, Hyphen, Special };

constexpr std::array<ByteKind, 256> kByteKinds = [] {
    std::array<ByteKind, 256> kinds{};
    for (std::size_t i = 0; i < kinds.size(); ++i) kinds[i] = i < 0x20 || i >= 0x7F ? ByteKind::Special : ByteKind::Plain;
    kinds[' '] = ByteKind::Space;
    kinds['='] = ByteKind::EqualSign;
    kinds['-'] = ByteKind::Hyphen;
    return kinds;
}();

ByteKind kindOf(char c) { return kByteKinds[static_cast<unsigned char>(c)]; }

bool needsNoFolding(std::string_view utf8) {
    for (std::size_t at = 0; at < utf8.size(); ++at) {
        ByteKind const kind = kindOf(utf8[at]);
        if (kind == ByteKind::Plain) continue;
        char const previous = at > 0 ? utf8[at - 1] : ' ';
        if (kind == ByteKind::Special) return false;
        if (kind == ByteKind::Space && previous == ' ') return false;
        if (kind == ByteKind::EqualSign && (previous == '<' || previous == '>')) return false;
        if (kind == ByteKind::Hyphen && (previous == '/' || previous == '+')) return false;
    }
    return utf8.empty() || utf8.back() != ' ';
}

// End of the plain characters from `at` on, single spaces between them included.
std::size_t endOfPlainRun(std::string_view utf8, std::size_t at) {
    while (at < utf8.size()) {
        if (kindOf(utf8[at]) == ByteKind::Plain) {
            ++at;
        } else if (utf8[at] == ' ' && at + 1 < utf8.size() && kindOf(utf8[at + 1]) == ByteKind::Plain) {
            at += 2;
        } else {
            break;
        }
    }
    return at;
}

void replaceTail(std::string& result, std::string_view tail, std::string_view by) {
    result.resize(result.size() - tail.size());
    result.append(by);
}

bool endsWith(std::string_view text, std::string_view tail) {
    return text.size() >= tail.size() && text.substr(text.size() - tail.size()) == tail;
}

// Letters that stay as they are, which put() would find out one by one.
bool isKeptHan(char32_t code) { return code >= 0x4E00 && code <= 0x9FA5; }
bool isKeptCyrillic(char32_t code) { return code >= 0x410 && code <= 0x44F; }

class Folder {
public:
    std::string fold(std::string_view utf8) {
        m_result.reserve(utf8.size() + 8);
        for (std::size_t at = 0; at < utf8.size();) {
            if (!m_pendingSpace && kindOf(utf8[at]) == ByteKind::Plain) {  // nothing to decide up to the end of the run
                std::size_t const end = endOfPlainRun(utf8, at);
                m_result.append(utf8.substr(at, end - at));
                m_softHyphen = m_lastCjk = false;
                at = end;
                continue;
            }
            std::size_t const begin = at;
            char32_t const code = decodeNext(utf8, at);
            if (!m_pendingSpace && isKeptHan(code)) {
                for (std::size_t next = at; next < utf8.size() && isKeptHan(decodeNext(utf8, next));) at = next;
                m_result.append(utf8, begin, at - begin);
                m_softHyphen = false;
                m_lastCjk = true;
                continue;
            }
            if (!m_pendingSpace && isKeptCyrillic(code)) {
                for (std::size_t next = at; next < utf8.size() && isKeptCyrillic(decodeNext(utf8, next));) at = next;
                m_result.append(utf8, begin, at - begin);
                m_softHyphen = m_lastCjk = false;
                m_cyrillic = true;
                continue;
            }
            if (isSpace(code)) {
                m_pendingSpace = true;
                if (code == U'\n' || code == U'\r' || code == 0x2028) m_pendingBreak = true;
                continue;
            }
            if (code == 0xAD) {
                foldSoftHyphen(utf8, at);
                continue;
            }
            if (code < 0x20 || code == 0x7F) continue;
            if (code < 0x80) {
                put(utf8.substr(begin, 1), code);
                continue;
            }
            if (code >= 0xFF61 && code <= 0xFF9F) m_halfWidthKana = true;
            if (code >= 0x300 && code <= 0x36F) m_combining = true;
            if (auto const by = replacement(code)) {
                if (by->empty()) continue;
                put(*by, code);
            } else if (code >= 0xFF01 && code <= 0xFF5E) {
                char const narrow = static_cast<char>(code - 0xFEE0);
                put(std::string_view(&narrow, 1), code);
            } else {
                put(utf8.substr(begin, at - begin), code);
            }
        }
        if (m_cyrillic) m_result = withoutLookAlikes(m_result);
        if (m_halfWidthKana) m_result = normalised(m_result, nfkc());
        if (m_combining) m_result = normalised(m_result, nfc());  // a dropped character may have kept a mark from its letter
        return std::move(m_result);
    }

private:
    void foldSoftHyphen(std::string_view utf8, std::size_t at) {
        bool const beforeDigit = at < utf8.size() && isAsciiDigit(utf8[at]);
        bool const afterLetter = !m_pendingSpace && !m_result.empty() && !isAsciiDigit(m_result.back()) && m_result.back() != '(';
        if (beforeDigit && !afterLetter) put("-", U'-');
        if (afterLetter) m_softHyphen = true;
    }

    void put(std::string_view piece, char32_t code) {
        bool const ascii = code < 0x80;
        if (!ascii && writingOf(code) == Writing::Cyrillic) m_cyrillic = true;
        bool const cjk = !ascii && isCjk(code);
        if (m_softHyphen && m_pendingSpace) m_pendingSpace = false;  // a word broken at its soft hyphen
        if (m_pendingSpace && !m_result.empty()) {
            bool const joined = m_pendingBreak && endsWith(m_result, "-") && m_result.size() >= 2 && isAsciiLower(m_result[m_result.size() - 2]) &&
                                code < 0x80 && isAsciiLower(static_cast<char>(code));
            bool const degree = code == U'C' && endsWith(m_result, "°");
            if (joined) {
                m_result.pop_back();
            } else if (!degree && !(cjk && m_lastCjk)) {
                m_result.push_back(' ');
            }
        }
        m_pendingSpace = m_pendingBreak = m_softHyphen = false;
        m_result.append(piece);
        m_lastCjk = cjk;
        if (m_result.back() != '=' && m_result.back() != '-') return;
        if (endsWith(m_result, "<=")) replaceTail(m_result, "<=", "≤");
        else if (endsWith(m_result, ">=")) replaceTail(m_result, ">=", "≥");
        else if (endsWith(m_result, "+/-")) replaceTail(m_result, "+/-", "±");
        else if (endsWith(m_result, "+-") && !(m_result.size() > 2 && isAsciiLetter(m_result[m_result.size() - 3]))) replaceTail(m_result, "+-", "±");  // not "V+-1.5"
    }

    std::string m_result;
    bool m_pendingSpace = false;
    bool m_pendingBreak = false;
    bool m_softHyphen = false;
    bool m_lastCjk = false;
    bool m_cyrillic = false;
    bool m_halfWidthKana = false;
    bool m_combining = false;
};

}  // namespace

std::string toNfc(std::string_view utf8) {
    if (isNormalAlready(utf8, Singletons::Normalised)) return std::string(utf8);
    return normalised(utf8, nfc());
}

std::string foldForComparison(std::string_view utf8) {
    if (needsNoFolding(utf8)) return std::string(utf8);
    if (isNormalAlready(utf8, Singletons::Kept)) return Folder().fold(utf8);
    return Folder().fold(normalised(utf8, nfc()));
}

namespace {

// Lower case of a character that neither its neighbours nor a language changes, of the
// ranges that datasheets print; 0: ICU has to decide.
char32_t plainLower(char32_t code) {
    if (code < 0x80) return isAsciiUpper(static_cast<char>(code)) ? code + 0x20 : code;
    if (code < 0x100) return code >= 0xC0 && code <= 0xDE && code != 0xD7 ? code + 0x20 : code;
    if (code >= 0x3B1 && code <= 0x3C9) return code;
    if (code >= 0x391 && code <= 0x3A9 && code != 0x3A2 && code != 0x3A3) return code + 0x20;  // a sigma depends on its place
    if (code >= 0x410 && code <= 0x42F) return code + 0x20;
    if (code >= 0x430 && code <= 0x45F) return code;
    bool const caseless = (code >= 0x2000 && code <= 0x20CF) || (code >= 0x2190 && code <= 0x24B5) || (code >= 0x3000 && code <= 0x9FFF) || (code >= 0xFF5B && code <= 0xFFEF) ||
                          code == kReplacementCharacter;
    return caseless ? code : 0;
}

}  // namespace

std::string lowerCase(std::string_view utf8) {
    if (isAscii(utf8)) return asciiLower(utf8);
    std::string result;
    result.reserve(utf8.size());
    bool plain = true;
    for (std::size_t at = 0; at < utf8.size() && plain;) {
        char32_t const lower = plainLower(decodeNext(utf8, at));
        plain = lower != 0;
        append(result, lower);
    }
    if (plain) return result;
    result.clear();
    icu::StringByteSink<std::string> sink(&result);
    UErrorCode status = U_ZERO_ERROR;
    std::string const clean = cleaned(utf8);
    icu::CaseMap::utf8ToLower("", 0, icu::StringPiece(clean.data(), static_cast<std::int32_t>(clean.size())), sink, nullptr, status);
    return U_SUCCESS(status) != 0 ? result : asciiLower(clean);
}

std::string_view singular(std::string_view word) {
    if (word.size() < 4 || word.back() != 's') return word;
    for (std::string_view const ending : {"ss", "us", "is", "ous"}) {
        if (endsWith(word, ending)) return word;
    }
    if (endsWith(word, "sses") || endsWith(word, "xes") || endsWith(word, "ches") || endsWith(word, "shes")) return word.substr(0, word.size() - 2);
    return word.substr(0, word.size() - 1);
}

namespace {

struct SpellingHints {
    bool stem = false;  // holds three letters without which no stem of two spellings is there
    bool ise = false;   // holds "is"
};

// Most words hold none of them: one pass instead of a search for every stem.
SpellingHints spellingHints(std::string_view word) {
    SpellingHints hints;
    for (std::size_t i = 1; i < word.size(); ++i) {
        char const before = word[i - 1];
        char const next = i + 1 < word.size() ? word[i + 1] : '\0';
        switch (word[i]) {
            case 'u': hints.stem = hints.stem || (before == 'o' && (next == 'r' || next == 'l')) || (before == 'g' && next == 'e') || (before == 'i' && next == 'm'); break;
            case 'r': hints.stem = hints.stem || ((before == 't' || before == 'b') && next == 'e'); break;
            case 'm': hints.stem = hints.stem || (before == 'm' && (next == 'e' || next == 'a')); break;
            case 'c': hints.stem = hints.stem || (before == 'n' && (next == 'e' || next == 'i')); break;
            case 'l': hints.stem = hints.stem || (before == 'l' && (next == 'e' || next == 'i')); break;
            case 'e': hints.stem = hints.stem || (before == 'r' && next == 'y'); break;
            case 's': hints.ise = hints.ise || before == 'i'; break;
            default: break;
        }
    }
    return hints;
}

}  // namespace

std::string unifiedSpelling(std::string_view word) {
    // Whole stems that differ between British and American sheets; the first spelling becomes the second.
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 24> kStems{{
        {"colour", "color"}, {"behaviour", "behavior"}, {"favour", "favor"}, {"neighbour", "neighbor"}, {"centre", "center"},
        {"metre", "meter"}, {"fibre", "fiber"}, {"analogue", "analog"}, {"catalogue", "catalog"}, {"programme", "program"},
        {"licence", "license"}, {"defence", "defense"}, {"labelled", "labeled"}, {"cancelled", "canceled"}, {"modelling", "modeling"},
        {"travelling", "traveling"}, {"grey", "gray"}, {"aluminium", "aluminum"}, {"mould", "mold"}, {"programmable", "programable"},
        {"tolerancing", "tolerance"}, {"honour", "honor"}, {"vapour", "vapor"}, {"signalling", "signaling"},
    }};
    std::string result(word);
    SpellingHints const hints = spellingHints(result);
    if (!hints.stem && !hints.ise) return result;
    if (result.size() < 4 || !isAscii(result)) return result;
    for (auto const& [british, american] : kStems) {
        if (!hints.stem) break;
        std::size_t const at = result.find(british);
        if (at != std::string::npos) result.replace(at, british.size(), american);
    }
    // "-ise", "-ising", "-ised", "-isation" of words long enough not to be "rise" or "noise".
    static constexpr std::array<std::string_view, 12> kIse{"initialise", "optimise", "minimise", "maximise", "stabilise", "normalise",
                                                           "characterise", "recognise", "utilise", "summarise", "polarise", "neutralise"};
    for (std::string_view const stem : kIse) {
        if (!hints.ise) break;
        std::string_view const root = stem.substr(0, stem.size() - 2);
        if (result.compare(0, root.size(), root) == 0 && result.size() > root.size() && result[root.size()] == 's') result[root.size()] = 'z';
    }
    return result;
}

namespace {

// ASCII characters that a key keeps: lower-case letters, digits and the signs of amounts.
constexpr std::array<bool, 256> kKeptInKeys = [] {
    std::array<bool, 256> kept{};
    for (char const c : std::string_view("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+%<>=")) kept[static_cast<unsigned char>(c)] = true;
    return kept;
}();

bool isAsciiByte(char c) { return static_cast<unsigned char>(c) < 0x80; }
bool isKeptInKeys(char c) { return kKeptInKeys[static_cast<unsigned char>(c)]; }

void appendToKey(std::string& key, std::string_view word) {
    SpellingHints const hints = spellingHints(word);
    if (hints.stem || hints.ise) key.append(singular(unifiedSpelling(word)));
    else key.append(singular(word));
}

}  // namespace

std::string foldKey(std::string_view utf8) {
    std::string const lower = needsNoFolding(utf8) ? asciiLower(utf8) : lowerCase(foldForComparison(utf8));
    std::string key;
    key.reserve(lower.size());
    std::string word;  // begun, with a character beyond ASCII
    auto const flush = [&] {
        if (word.empty()) return;
        appendToKey(key, word);
        word.clear();
    };
    for (std::size_t at = 0; at < lower.size();) {
        std::size_t end = at;
        while (end < lower.size() && isKeptInKeys(lower[end])) ++end;
        if (end > at) {
            bool const whole = word.empty() && (end == lower.size() || isAsciiByte(lower[end]));
            std::string_view const run = std::string_view(lower).substr(at, end - at);
            if (whole) appendToKey(key, run);
            else word.append(run);
            at = end;
            continue;
        }
        std::size_t const begin = at;
        char32_t const code = decodeNext(lower, at);
        if (code < 0x80) {
            flush();
            continue;
        }
        if (code == 0x2022 || code == 0x3001 || code == 0x3002 || code == 0xB7 || (code >= 0x3008 && code <= 0x3011)) continue;
        word.append(lower, begin, at - begin);
    }
    flush();
    return key;
}

}  // namespace standin::text
