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

}  // namespace standin::reading
