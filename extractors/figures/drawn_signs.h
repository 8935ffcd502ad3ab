// Signs among printed text that are drawings, not characters: "±", "µ", "Ω", "≤" that a
// page maker turned into outlines. What stands beside them reads otherwise without them.
//
//     auto signs = drawnSigns(pages, tables, figures);
//     signs[0].text   ->   "before \"8\""   (printed: ±8)
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::figures {

// One entry a sign, with its place, page by page from top to bottom; what it stands beside is
// said in words. A sign is a drawing no larger than a character that stands on a line of text or in
// a cell of a table, outside of `figures`. A mark in front of a line outside of tables
// (a bullet), what stands in running heads, and a drawing over a word are none. At most kMostDrawnSigns entries a page.
[[nodiscard]] std::vector<model::PlacedText> drawnSigns(std::span<model::PageLayout const> pages, std::span<model::Table const> tables, std::span<model::Figure const> figures);

inline constexpr std::size_t kMostDrawnSigns = 200;

}  // namespace standin::figures
