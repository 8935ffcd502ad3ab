// A condition that is printed once beside several parameters, one line of it beside
// each: "VDD = 50 V; RD = 2 Ω;" beside the turn-on delay, "VGS = 10 V" beside the
// rise time. Private to this folder.
#pragma once

#include <vector>

#include "extractors/tables/rows.h"

namespace standin::tables {

// Spreads it over the rows of its band that share a unit, and over one of another unit where the
// line in front stops at a comma or semicolon. Only where its lines stop so, every row is named and nothing is stated twice; else nothing is changed.
void spreadFlowingCondition(model::PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int rows);

// Every one of the rows begins with a symbol or name of its own.
[[nodiscard]] bool eachIsNamed(std::vector<PlacedPiece*> const& pieces, int rows);

}  // namespace standin::tables
