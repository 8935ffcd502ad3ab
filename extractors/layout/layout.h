// Words, lines, blocks and reading order of one page, and what repeats over
// the pages of a document.
//
// This folder includes model/ and text/ only. Coordinates: geometry.h.
//
//     std::vector<model::PageLayout> pages;
//     for (auto const& content : contents) pages.push_back(layout::layOut(content));
//     layout::markFurniture(pages);
#pragma once

#include <span>

#include "model/page_content.h"
#include "model/page_layout.h"

namespace standin::layout {

// One page. Every glyph inside the page is in exactly one word, apart from the
// second drawing of fake bold, white space, zero-width characters, and hidden
// text where visible text stands (that one is a Note). Hidden text that stands
// alone (an OCR layer over an image) becomes words with `hidden` set.
// Works for any content: there are no errors. O(n log n) in glyphs and rules.
[[nodiscard]] model::PageLayout layOut(model::PageContent const& content);

// Gives running heads and feet, page numbers and watermarks their block role and
// their words Owner::Furniture: what stands at the same place of several pages
// (three, or half of a shorter document) with the same text, page numbers
// apart. In a document of one page only an unmistakable page number ("Page 1 of
// 1") is marked. Splits blocks where only some of their lines repeat.
void markFurniture(std::span<model::PageLayout> pages);

}  // namespace standin::layout
