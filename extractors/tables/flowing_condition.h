// A condition that is printed once beside several parameters, one line of it beside
// each: "VDD = 50 V; RD = 2 Ω;" beside the turn-on delay, "VGS = 10 V" beside the
// rise time. Private to this folder.
#pragma once

#include <vector>

#include "extractors/tables/rows.h"

namespace standin::tables {

// Spreads it over all rows of its band. Only where the first line stops at a comma or
// semicolon, every row is named and nothing is stated twice; else nothing is changed.
void spreadFlowingCondition(model::PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int rows);

}  // namespace standin::tables
