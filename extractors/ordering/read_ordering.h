// Orderable parts out of ordering and selection tables, one a line.
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"

namespace standin::ordering {

// Lines of every table of kind Ordering, in document order. Titles that repeat
// within a line are numbered ("Package (2)").
[[nodiscard]] std::vector<model::OrderingLine> readOrdering(std::span<model::Table const> tables);

}  // namespace standin::ordering
