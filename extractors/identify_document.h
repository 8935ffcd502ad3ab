// What a datasheet says of itself: part numbers, maker, revision, date,
// languages. Private to extractors/reading.
#pragma once

#include <span>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::reading {

// Fills languages, partNumbers, maker, revision and date of `info` from the
// title, the running heads and the first and last pages. A field that the sheet
// does not state stays empty. Bounded: at most the first two pages and the last
// are searched.
void identify(model::DocumentInfo& info, std::span<model::PageLayout const> pages);

}  // namespace standin::reading
