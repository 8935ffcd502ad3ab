// Units and conditions that stand once, in the middle of several named rows, where no
// rule says which: "pF" beside the second of three capacitances, "ns" between the
// second and the third of four times. Private to this folder.
#pragma once

#include <span>
#include <vector>

#include "extractors/tables/rows.h"

namespace standin::tables {

// Spreads them over their rows (`baselines`, one each). Only where every row is named and some unit stands between
// two rows, so that none can be that of one row alone; then the lines of one condition in the middle of the rows
// of a unit hold for those too. True where something was spread.
bool spreadCentredUnits(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::span<model::Points const> baselines, model::Points fontHeight);

}  // namespace standin::tables
