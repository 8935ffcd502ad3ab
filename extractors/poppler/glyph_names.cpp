// A name is looked up whole in Poppler's list; then its suffix is cut, its
// parts joined by "_" are looked up one by one, "uniXXXX" and "uXXXXX" are read
// as code points, and a trailing digit of a known name ("mu1") is ignored.
//
// Tested by tests/extractors/poppler/glyph_names_test.cpp.
#include "extractors/poppler/glyph_names.h"

#include <algorithm>
#include <array>
#include <charconv>

#include <GlobalParams.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kLongestName = 64;

// The standard encoding of the Symbol font from byte 0x20 on; 0: unused.
constexpr std::array<char16_t, 224> kSymbol = {
    0x0020, 0x0021, 0x2200, 0x0023, 0x2203, 0x0025, 0x0026, 0x220B, 0x0028, 0x0029, 0x2217, 0x002B, 0x002C, 0x2212, 0x002E, 0x002F,
    0x0030, 0x0031, 0x0032, 0x0033, 0x0034, 0x0035, 0x0036, 0x0037, 0x0038, 0x0039, 0x003A, 0x003B, 0x003C, 0x003D, 0x003E, 0x003F,
    0x2245, 0x0391, 0x0392, 0x03A7, 0x0394, 0x0395, 0x03A6, 0x0393, 0x0397, 0x0399, 0x03D1, 0x039A, 0x039B, 0x039C, 0x039D, 0x039F,
    0x03A0, 0x0398, 0x03A1, 0x03A3, 0x03A4, 0x03A5, 0x03C2, 0x03A9, 0x039E, 0x03A8, 0x0396, 0x005B, 0x2234, 0x005D, 0x22A5, 0x005F,
    0x203E, 0x03B1, 0x03B2, 0x03C7, 0x03B4, 0x03B5, 0x03C6, 0x03B3, 0x03B7, 0x03B9, 0x03D5, 0x03BA, 0x03BB, 0x03BC, 0x03BD, 0x03BF,
    0x03C0, 0x03B8, 0x03C1, 0x03C3, 0x03C4, 0x03C5, 0x03D6, 0x03C9, 0x03BE, 0x03C8, 0x03B6, 0x007B, 0x007C, 0x007D, 0x223C, 0,
    0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,
    0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,      0,
    0x20AC, 0x03D2, 0x2032, 0x2264, 0x2044, 0x221E, 0x0192, 0x2663, 0x2666, 0x2665, 0x2660, 0x2194, 0x2190, 0x2191, 0x2192, 0x2193,
    0x00B0, 0x00B1, 0x2033, 0x2265, 0x00D7, 0x221D, 0x2202, 0x2022, 0x00F7, 0x2260, 0x2261, 0x2248, 0x2026, 0x2223, 0x2014, 0x21B5,
    0x2135, 0x2111, 0x211C, 0x2118, 0x2297, 0x2295, 0x2205, 0x2229, 0x222A, 0x2283, 0x2287, 0x2284, 0x2282, 0x2286, 0x2208, 0x2209,
    0x2220, 0x2207, 0x00AE, 0x00A9, 0x2122, 0x220F, 0x221A, 0x22C5, 0x00AC, 0x2227, 0x2228, 0x21D4, 0x21D0, 0x21D1, 0x21D2, 0x21D3,
    0x25CA, 0x2329, 0x00AE, 0x00A9, 0x2122, 0x2211, 0x239B, 0x239C, 0x239D, 0x23A1, 0x23A2, 0x23A3, 0x23A7, 0x23A8, 0x23A9, 0x23AA,
    0,      0x232A, 0x222B, 0x2320, 0x23AE, 0x2321, 0x239E, 0x239F, 0x23A0, 0x23A4, 0x23A5, 0x23A6, 0x23AB, 0x23AC, 0x23AD, 0};

// List marks, ticks and arrows of the Wingdings fonts: what text uses of them.
struct Sign {
    std::uint8_t byte;
    char16_t code;
};
constexpr Sign kWingdings[] = {{0x6C, 0x25CF}, {0x6E, 0x25A0}, {0x6F, 0x25A1}, {0x71, 0x2751}, {0x75, 0x25C6}, {0x76, 0x2756}, {0x77, 0x25C6},
                               {0x9F, 0x2022}, {0xA1, 0x25CB}, {0xA7, 0x25AA}, {0xA8, 0x25FB}, {0xD8, 0x27A2}, {0xDF, 0x2190}, {0xE0, 0x2192},
                               {0xE8, 0x2794}, {0xF0, 0x21E8}, {0xFB, 0x2717}, {0xFC, 0x2713}, {0xFD, 0x2612}, {0xFE, 0x2611}, {0x20, 0x0020}};

bool isScalar(std::uint32_t code) { return code > 0 && code < 0x110000U && (code < 0xD800U || code > 0xDFFFU); }

bool isUpperHex(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F') || (c >= 'a' && c <= 'f'); });
}

std::uint32_t hexValue(std::string_view text) {
    std::uint32_t value = 0;
    auto const result = std::from_chars(text.data(), text.data() + text.size(), value, 16);
    return result.ec == std::errc{} && result.ptr == text.data() + text.size() ? value : 0;
}

char32_t listed(std::string_view name) {
    std::string const terminated(name);
    Unicode const code = globalParams->mapNameToUnicodeText(terminated.c_str());
    return isScalar(code) ? withoutPrivateUse(static_cast<char32_t>(code)) : 0;
}

std::u32string component(std::string_view name) {
    if (name.empty()) return {};
    if (char32_t const code = listed(name); code != 0) return {code};
    if (name.substr(0, 3) == "uni" && name.size() >= 7 && (name.size() - 3) % 4 == 0 && isUpperHex(name.substr(3))) {
        std::u32string out;
        for (std::size_t i = 3; i < name.size(); i += 4) {
            std::uint32_t const code = hexValue(name.substr(i, 4));
            if (!isScalar(code)) return {};
            out += static_cast<char32_t>(code);
        }
        return out;
    }
    if (name[0] == 'u' && name.size() >= 5 && name.size() <= 7 && isUpperHex(name.substr(1))) {
        std::uint32_t const code = hexValue(name.substr(1));
        return isScalar(code) ? std::u32string{static_cast<char32_t>(code)} : std::u32string{};
    }
    // "mu1", "Omega2": a variant of a named sign. One letter and digits is a
    // number, not a name.
    if (name.size() >= 3 && name.back() >= '0' && name.back() <= '9') {
        std::string_view const stem = name.substr(0, name.size() - 1);
        if (stem.back() < '0' || stem.back() > '9') {
            if (char32_t const code = listed(stem); code != 0) return {code};
        }
    }
    return {};
}

}  // namespace

std::u32string charactersOfGlyphName(std::string_view name) {
    if (name.empty() || name.size() > kLongestName || name == ".notdef") return {};
    if (char32_t const code = listed(name); code != 0) return {code};
    if (std::size_t const dot = name.find('.', 1); dot != std::string_view::npos) name = name.substr(0, dot);
    std::u32string out;
    while (!name.empty()) {
        std::size_t const bar = std::min(name.find('_'), name.size());
        std::u32string const part = component(name.substr(0, bar));
        if (part.empty()) return {};
        out += part;
        name = bar < name.size() ? name.substr(bar + 1) : std::string_view{};
    }
    return out;
}

char32_t withoutPrivateUse(char32_t code) {
    // Pieces of arrows, brackets and roots, U+F8E5 to U+F8FE.
    static constexpr char16_t kPieces[] = {0x203E, 0x23D0, 0x23AF, 0x00AE, 0x00A9, 0x2122, 0x239B, 0x239C, 0x239D, 0x23A1, 0x23A2, 0x23A3, 0x23A7,
                                           0x23A8, 0x23A9, 0x23AA, 0x23AE, 0x239E, 0x239F, 0x23A0, 0x23A4, 0x23A5, 0x23A6, 0x23AB, 0x23AC, 0x23AD};
    if (code >= 0xF8E5 && code <= 0xF8FE) return kPieces[code - 0xF8E5];
    if (code >= 0xF730 && code <= 0xF739) return U'0' + (code - 0xF730);
    if (code >= 0xF761 && code <= 0xF77A) return U'A' + (code - 0xF761);
    if (code == 0xF6D9) return 0x00A9;
    if (code == 0xF6DA) return 0x00AE;
    if (code == 0xF6DB) return 0x2122;
    if (code == 0xF6BE) return 0x0237;
    return code;
}

int numberOfGlyphName(std::string_view name, NumberBase base) {
    auto const isLetter = [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); };
    auto const isDigit = [](char c) { return c >= '0' && c <= '9'; };
    std::string_view digits = name;
    if (base == NumberBase::Hexadecimal) {
        // One letter and two digits.
        if (name.size() != 3 || !isLetter(name[0]) || !isUpperHex(name.substr(1))) return -1;
        return static_cast<int>(hexValue(name.substr(1)));
    }
    while (!digits.empty() && isLetter(digits.front())) digits.remove_prefix(1);
    std::size_t const letters = name.size() - digits.size();
    bool const word = name.substr(0, letters) == "glyph" || name.substr(0, letters) == "cid" || name.substr(0, letters) == "char";
    if (digits.empty() || digits.size() > 5 || (letters > 2 && !word) || !std::all_of(digits.begin(), digits.end(), isDigit)) return -1;
    int number = 0;
    auto const result = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return result.ec == std::errc{} ? number : -1;
}

SymbolFamily symbolFamily(std::string_view fontName) {
    if (fontName.substr(0, 6) == "Symbol" && fontName.substr(0, 7) != "SymbolN") return SymbolFamily::Symbol;
    if (fontName.substr(0, 9) == "Wingdings" && fontName.substr(9, 1) != "2" && fontName.substr(9, 1) != "3") return SymbolFamily::Wingdings;
    return SymbolFamily::None;
}

char32_t symbolCharacter(SymbolFamily family, std::uint32_t byte) {
    if (family == SymbolFamily::Symbol) return byte >= 0x20 && byte < 0x100 ? kSymbol[byte - 0x20] : 0;
    if (family == SymbolFamily::Wingdings) {
        for (Sign const& sign : kWingdings) {
            if (sign.byte == byte) return sign.code;
        }
    }
    return 0;
}

bool meansNothing(char32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || (code >= 0xE000 && code < 0xF900) || code >= 0xF0000 || (code >= 0xD800 && code < 0xE000) || code == 0xFFFD || code == 0xFFFE || code == 0xFFFF;
}

}  // namespace standin::poppler
