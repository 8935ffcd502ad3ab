// Names, symbols and units of an open band that stand in the middle of several rows of
// values, and symbols in the middle of the rows of their name. Private to this folder.
#pragma once

#include <vector>

#include "extractors/tables/rows.h"

namespace standin::tables {

// Spreads them over their rows. `pieces` have their rows, `baselines` is one each, `anchored` tells which of them are
// rows of values. Gives, by column, whether it was spread; names that stand on the first of their rows are left as they are.
[[nodiscard]] std::vector<char> spreadNames(model::PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns,
                                            std::vector<model::Points> const& baselines, std::vector<char> const& anchored, model::Points fontHeight);

}  // namespace standin::tables
