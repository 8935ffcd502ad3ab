// Turns one region of a page, with the lattice of its rules, into a Table.
//
// A fully ruled region brings its lattice; a region without column rules brings
// a lattice of one column (its row rules, if any, are the bands), and the
// columns come from white space.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "extractors/tables/lattice.h"
#include "model/page_layout.h"
#include "model/table.h"

namespace standin::tables {

struct Region {
    Lattice lattice;
    std::vector<std::uint32_t> lines;  // indices into PageLayout::lines; those outside the lattice are passed over
    bool ruledColumns = false;
    bool ruledRows = false;
    model::Points headBottom = -1;  // baseline of the last line known to be head; -1: not known
};

// Nothing where the region does not hold at least two rows and two columns of
// text in a grid. Words that another table owns (`taken`, by word index) are
// passed over; the words of the new table are marked there.
[[nodiscard]] std::optional<model::Table> buildTable(model::PageLayout const& page, Region const& region, std::vector<char>& taken);

}  // namespace standin::tables
