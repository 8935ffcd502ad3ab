// Classes of code points that decide where words end. Inline: called for every glyph.
#pragma once

#include <cstdint>

namespace standin::layout {

[[nodiscard]] inline bool isSpace(char32_t c) {
    if (c < 0x80) return c == U' ' || c == U'\t' || c == U'\n' || c == U'\r';
    return c == 0xA0 || c == 0x3000 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F || c == 0x205F || c == 0x1680;
}

// Drawn without ink and without meaning: zero-width spaces and joiners, byte order marks.
[[nodiscard]] inline bool isZeroWidth(char32_t c) { return c >= 0x200B && (c == 0x200B || c == 0x200C || c == 0x200D || c == 0x2060 || c == 0xFEFF); }

[[nodiscard]] inline bool isDigit(char32_t c) { return c >= U'0' && c <= U'9'; }
[[nodiscard]] inline bool isAsciiUpper(char32_t c) { return c >= U'A' && c <= U'Z'; }
[[nodiscard]] inline bool isAsciiLower(char32_t c) { return c >= U'a' && c <= U'z'; }
[[nodiscard]] inline bool isAsciiLetter(char32_t c) { return isAsciiUpper(c) || isAsciiLower(c); }

// A letter for the purpose of telling words from values (Latin, Greek, Cyrillic, CJK).
[[nodiscard]] inline bool isLetterLike(char32_t c) {
    return isAsciiLetter(c) || (c >= 0xC0 && c <= 0x24F && c != 0xD7 && c != 0xF7) || (c >= 0x370 && c <= 0x52F) || (c >= 0x3040 && c <= 0x9FFF);
}

// Han, kana and their punctuation: written without spaces. Wide forms of ASCII
// characters and square units ("㎃", "℃") go with the Latin text around them.
[[nodiscard]] inline bool isCjkText(char32_t c) {
    if (c < 0x2E80) return false;
    return (c <= 0x2FDF) || (c >= 0x3001 && c <= 0x30FF) || (c >= 0x3105 && c <= 0x31FF) || (c >= 0x3400 && c <= 0x4DBF) ||
           (c >= 0x4E00 && c <= 0x9FFF) || (c >= 0xAC00 && c <= 0xD7AF) || (c >= 0xF900 && c <= 0xFAFF) || (c >= 0x20000 && c <= 0x2FA1F);
}

// Wide punctuation: belongs to the writing of the text around it.
[[nodiscard]] inline bool isWidePunctuation(char32_t c) {
    return c >= 0x3001 && (c == 0xFF0C || c == 0xFF1A || c == 0xFF1B || c == 0xFF08 || c == 0xFF09 || c == 0xFF01 || c == 0xFF1F || c == 0x3001 || c == 0x3002);
}

// Ends a sentence of CJK text: the next sentence is a word of its own.
[[nodiscard]] inline bool isSentenceEnd(char32_t c) { return c >= 0x3002 && (c == 0x3002 || c == 0xFF01 || c == 0xFF1F || c == 0xFF1B); }

[[nodiscard]] inline bool isLeaderDot(char32_t c) {
    if (c < 0x80) return c == U'.';
    return c == 0xB7 || c == 0x2026 || c == 0x2024 || c == 0x22C5 || c == 0x30FB || c == 0xFF65;
}

// Characters whose word needs normalising to NFC: combining marks and singletons.
[[nodiscard]] inline bool needsComposition(char32_t c) {
    if (c < 0x300) return false;
    return (c <= 0x36F) || c == 0x3099 || c == 0x309A || c == 0x2126 || c == 0x212A || c == 0x212B || (c >= 0xF900 && c <= 0xFAFF) || (c >= 0x1100 && c <= 0x11FF) ||
           (c >= 0x591 && c <= 0x6FF);
}

[[nodiscard]] inline bool isCombining(char32_t c) { return c >= 0x300 && (c <= 0x36F || c == 0x3099 || c == 0x309A); }

// No Unicode that a reader could use.
[[nodiscard]] inline bool isUnknown(char32_t c) {
    if (c >= 0x20 && c < 0x7F) return false;
    return c == 0xFFFD || c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0xE000 && c <= 0xF8FF) || c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF);
}

// Bullets of list entries, as drawn by text and symbol fonts. Private use: what
// symbol fonts without a map leave.
[[nodiscard]] inline bool isBullet(char32_t c) {
    switch (c) {
        case 0x2022: case 0x2023: case 0x25A0: case 0x25A1: case 0x25AA: case 0x25AB: case 0x25B2: case 0x25B6: case 0x25B8: case 0x25BA:
        case 0x25C6: case 0x25C7: case 0x25CB: case 0x25CF: case 0x25E6: case 0x2605: case 0x2606: case 0x2713: case 0x2714: case 0x2726:
        case 0x2794: case 0x27A2: case 0x27A4: case 0x29BF: case 0xB7: case 0x2219: case 0x22C5: case 0x30FB: case 0xFF65: case 0x2756: case 0x2666:
        case 0xA7: case 0xF0B7: case 0xF0A7: case 0xF06C: case 0xF06E: case 0xF0D8: case 0xF0FC: case 0xF075: case 0x2043: case 0x2B27:
            return true;
        default: return false;
    }
}

}  // namespace standin::layout
