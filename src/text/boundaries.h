// Words and sentences. Boundaries are views into the text given; every byte that
// is not white space is in exactly one word.
//
//     words("VDD=3.5V at 25 °C")  ->  "VDD" "=" "3.5V" "at" "25" "°C"
//     splitSentences("Max. 4.3 V. See Fig. 3.", "en")  ->  2 sentences
#pragma once

#include <string_view>
#include <vector>

namespace standin::text {

// Words as a reader counts them, in order; a number stays whole with its sign,
// point, comma and exponent and with a unit that touches it; pin names such as
// "V-", "P+" and codes such as "RDS(on)", "SOT-23-6" stay whole; CJK text is
// split by dictionary. Other signs are words of their own.
[[nodiscard]] std::vector<std::string_view> words(std::string_view utf8);

// Sentences in order, white space at their ends taken off. `language` is BCP 47
// (empty: English rules). No break inside a number, after an abbreviation
// ("approx.", "typ.", "Fig.", "No." …) or inside brackets opened shortly before;
// CJK full stops always break. A newline is white space.
[[nodiscard]] std::vector<std::string_view> splitSentences(std::string_view utf8, std::string_view language);

}  // namespace standin::text
