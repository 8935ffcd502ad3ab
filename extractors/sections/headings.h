// What a heading says its section is about, from the words that sheets use in
// several languages. Data in headings.cpp; this folder includes model/,
// text/, quantity/ and vocabulary/ only.
//
//     headingKind("7.3 Absolute Maximum Ratings (Note 1)", Look::Heading)  ->  SectionKind::Ratings
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "model/datasheet.h"

namespace standin::sections {

// Plain: set like running text; only an exact heading counts then.
enum class Look : std::uint8_t { Plain, Heading };

// The kind of a heading line; none where it names no known section.
// Numbering, bullets, trailing colons, "(continued)" and what stands in brackets
// behind are put aside; of two languages on one line either may match. With
// Look::Heading a known heading inside a longer one counts too, the longest first.
[[nodiscard]] std::optional<model::SectionKind> headingKind(std::string_view title, Look look);

// Title without numbering, bullets, colons and "(continued)" at its ends.
[[nodiscard]] std::string_view strippedTitle(std::string_view title);

// Depth of the numbering in front ("7.3" is 2); 0: none.
[[nodiscard]] int numberingDepth(std::string_view title);

// The title says that a section from before goes on.
[[nodiscard]] bool isContinuation(std::string_view title);

}  // namespace standin::sections
