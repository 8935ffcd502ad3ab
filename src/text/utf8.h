// UTF-8 in and out, without ICU. This folder (text/) is the only user of ICU,
// and only in its .cpp files; it may include model/ and nothing else.
//
//     for (std::size_t at = 0; at < line.size();) {
//         char32_t const code = text::decodeNext(line, at);
//         ...
//     }
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace standin::text {

inline constexpr char32_t kReplacementCharacter = U'\uFFFD';

// The code point at byte `at`, which moves behind it. A byte that starts no
// valid sequence gives kReplacementCharacter and moves by one: every call makes
// progress. Precondition: at < utf8.size().
[[nodiscard]] char32_t decodeSequence(std::string_view utf8, std::size_t& at);  // the same for any first byte
[[nodiscard]] inline char32_t decodeNext(std::string_view utf8, std::size_t& at) {
    auto const first = static_cast<unsigned char>(utf8[at]);
    if (first >= 0x80) return decodeSequence(utf8, at);
    ++at;
    return first;
}

// The code point that ends before byte `at`, which moves to its start.
// Precondition: at > 0.
[[nodiscard]] char32_t decodePrevious(std::string_view utf8, std::size_t& at);

// Appends the UTF-8 form; surrogates and values above U+10FFFF become U+FFFD.
void appendSequence(std::string& utf8, char32_t code);  // the same for any code point
inline void append(std::string& utf8, char32_t code) {
    if (code < 0x80) {
        utf8.push_back(static_cast<char>(code));
    } else {
        appendSequence(utf8, code);
    }
}

[[nodiscard]] std::u32string toUtf32(std::string_view utf8);
[[nodiscard]] std::string toUtf8(std::u32string_view codes);

[[nodiscard]] bool isAscii(std::string_view utf8);

// The same text with every invalid byte replaced by U+FFFD; valid UTF-8 comes
// back unchanged. JSON writers need it.
[[nodiscard]] std::string cleaned(std::string_view utf8);

[[nodiscard]] std::size_t codePointCount(std::string_view utf8);

// ASCII only, locale-free; bytes above 127 stay as they are.
[[nodiscard]] std::string asciiLower(std::string_view utf8);
[[nodiscard]] constexpr bool isAsciiDigit(char c) { return c >= '0' && c <= '9'; }
[[nodiscard]] constexpr bool isAsciiUpper(char c) { return c >= 'A' && c <= 'Z'; }
[[nodiscard]] constexpr bool isAsciiLower(char c) { return c >= 'a' && c <= 'z'; }
[[nodiscard]] constexpr bool isAsciiLetter(char c) { return isAsciiUpper(c) || isAsciiLower(c); }

// Without white space (ASCII, NBSP, ideographic, thin …) at both ends.
[[nodiscard]] std::string_view trimmed(std::string_view utf8);

}  // namespace standin::text
