// Forms of a text that compare equal where a reader sees the same text.
//
//     foldForComparison("4.28\u00A0V \u2013 4.30\uFF36")  ->  "4.28 V - 4.30V"
//     foldKey("Over-charge Detection Voltages")           ->  "overchargedetectionvoltage"
#pragma once

#include <string>
#include <string_view>

namespace standin::text {

// Unicode NFC. Invalid bytes become U+FFFD. ASCII comes back at once.
[[nodiscard]] std::string toNfc(std::string_view utf8);

// One spelling for what is drawn alike: ligatures opened, soft hyphens and
// hyphens at line breaks closed, quotes, spaces, micro, ohm, degree, minus and
// dashes, range marks, comparison signs, square units and widths made one,
// Cyrillic look-alikes in Latin surroundings made Latin, runs of white space one
// space, zero-width characters and trademark signs dropped. Superscripts stay
// superscripts ("4.25¹" is not "4.251") and letter case stays ("mΩ" is not "MΩ").
[[nodiscard]] std::string foldForComparison(std::string_view utf8);

// For matching names and headings: foldForComparison, then lower case, without
// spaces, hyphens, underscores, brackets and punctuation, plural endings and
// British or American spellings made one. Never for units or values.
[[nodiscard]] std::string foldKey(std::string_view utf8);

// Lower case of all scripts that have it.
[[nodiscard]] std::string lowerCase(std::string_view utf8);

// One word (lower case) in the spelling used for comparing: "colour" and
// "color", "behaviour" and "behavior", "-ise" and "-ize" made one.
[[nodiscard]] std::string unifiedSpelling(std::string_view lowerCaseWord);

// The word without a plural ending ("voltages" -> "voltage"); short words,
// "-ss", "-us" and "-is" stay.
[[nodiscard]] std::string_view singular(std::string_view lowerCaseWord);

}  // namespace standin::text
