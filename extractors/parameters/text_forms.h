// Written forms of cell text: how a label is to be written, how a word is to be
// compared, and the small UTF-8 helpers that both need.
//
// This folder (parameters/) turns specification tables into parameters. It may
// include model/, quantity/, text/, vocabulary/ and the standard library.
//
//     tidied("−40 to 85 ℃")   -> "-40 to 85 °C"
//     folded("Test Ｃondition") -> "test condition"
//     closedNumbers("- 30 to + 1 000") -> "-30 to +1000"
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace standin::parameters {

// Code points of UTF-8 text; a broken byte becomes U+FFFD.
[[nodiscard]] std::u32string decoded(std::string_view utf8);
[[nodiscard]] std::string encoded(std::u32string_view codes);
void append(std::string& utf8, char32_t code);

[[nodiscard]] bool isCjk(char32_t code);
[[nodiscard]] bool isDigit(char32_t code);
[[nodiscard]] bool isLatinLetter(char32_t code);  // A-Z, a-z
[[nodiscard]] bool isGreek(char32_t code);

// Without white space at both ends (ASCII, no-break and ideographic space).
[[nodiscard]] std::string trimmed(std::string_view text);

// As a label is written: every dash or minus "-", degree signs "°" ("℃" is
// "°C"), one space for any run of white space, none at the ends, tilde and
// square unit forms unified; words otherwise as printed.
[[nodiscard]] std::string tidied(std::string_view text);

// A cheap test: true only where tidied() gives the text as it is.
[[nodiscard]] bool isTidy(std::string_view text);

// For comparing words: tidied, full-width forms narrow, lower case (Latin,
// Greek, Cyrillic), quotes plain.
[[nodiscard]] std::string folded(std::string_view text);

// Spaces drawn inside a number are closed: "5 000" -> "5000", "0. 1" -> "0.1",
// "- 30" -> "-30" at the start or after a range word. Takes tidied text.
[[nodiscard]] std::string closedNumbers(std::string_view text);

// Superscript digits as "^": "10⁻⁷" -> "10^-7".
[[nodiscard]] std::string plainExponents(std::string_view text);

// True for text that stands for "no value": nothing, dashes, dots, "/".
[[nodiscard]] bool saysNothing(std::string_view text);

// Text joined with one space between, none where a side is empty; no space
// between two CJK characters.
[[nodiscard]] std::string joined(std::string_view left, std::string_view right);

// Words of text at ASCII spaces.
[[nodiscard]] std::vector<std::string> splitAtSpaces(std::string_view text);

[[nodiscard]] bool contains(std::string_view text, std::string_view part);

}  // namespace standin::parameters
