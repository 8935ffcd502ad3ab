// The account of every number and sentence of a document. Private to
// extractors/reading.
#pragma once

#include <span>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::reading {

// Counts the numbers of all words by their owner. Hidden words count too.
// numbers == inParameters + inTables + inText + inFigures + inFurniture +
// unaccounted.size(), always.
[[nodiscard]] model::Coverage accountFor(std::span<model::PageLayout const> pages, model::Datasheet const& datasheet);

// Pages on which something is drawn and next to no text is stored: nothing of them
// was read but what was recognised.
[[nodiscard]] std::vector<int> pagesWithoutTextLayer(std::span<model::PageLayout const> pages);

}  // namespace standin::reading
