// Pin numbers and pin names as printed. Private to this folder.
//
//     pinNumbers("1, 3-5")      -> "1" "3" "4" "5"
//     pinNumbers("2, TAB")      -> "2" "TAB"
//     pinNumbers("Exposed Pad") -> "Exposed Pad"
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin::pins {

// The numbers of a cell, ranges worked out; empty where the text is none (a
// dash, words). Array places ("A1", "B2") and names of the pad count.
[[nodiscard]] std::vector<std::string> pinNumbers(std::string_view cell);

// The names of a cell that stands beside `count` numbers: one each where it lists
// as many ("Q0, Q1, Q2", "A1 to A3"), else the whole cell for all of them.
[[nodiscard]] std::vector<std::string> pinNamesFor(std::string_view cell, std::size_t count);

// Value of a text that is a number from 1 to 999 alone, circled digits too.
[[nodiscard]] std::optional<int> plainNumber(std::string_view text);

// The pad or tab that counts as a pin: "EP", "PAD", "TAB", "Thermal pad", "衬底".
[[nodiscard]] bool isPad(std::string_view text);

// Looks like the name of a pin: short, begins with a letter or sign, no
// sentence ("VDD", "Output 1", "V-", "Adj", "N.C.").
[[nodiscard]] bool looksLikePinName(std::string_view text);

// Without raised footnote marks at its end ("drain¹").
[[nodiscard]] std::string withoutMarks(std::string name);

// A dash or blank: the package has no such pin.
[[nodiscard]] bool isBlank(std::string_view cell);

}  // namespace standin::pins
