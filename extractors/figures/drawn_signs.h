// Signs among printed text that are drawings, not characters: "±", "µ", "Ω", "≤" that a
// page maker turned into outlines. What stands beside them reads otherwise without them.
//
//     auto signs = drawnSigns(pages, tables, figures);
//     signs[0].text   ->   "before \"8\""   (printed: ±8)
#pragma once

#include <cstddef>
#include <span>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::figures {

inline constexpr std::string_view kAloneInCell = "alone in a cell of a table";
inline constexpr std::size_t kMostDrawnSigns = 200;

// One entry a sign, with its place, page by page; what it stands beside is said in words. A
// sign is a drawing no larger than a character that stands on a line of text, or in a table of
// specifications where no cell has text, outside of `figures`; or a short stroke in front of digits. A mark in front
// of a line outside of tables (a bullet), what stands in running heads, and a drawing over a word
// are none. Where a page has too many drawings, or more than kMostDrawnSigns signs, an entry
// without a place says so.
[[nodiscard]] std::vector<model::PlacedText> drawnSigns(std::span<model::PageLayout const> pages, std::span<model::Table const> tables, std::span<model::Figure const> figures);

}  // namespace standin::figures
