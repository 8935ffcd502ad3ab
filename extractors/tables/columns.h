// Column boundaries told by white space: gutters that stay free over nearly all
// printed lines, and column titles that stand side by side.
#pragma once

#include <span>
#include <vector>

#include "extractors/tables/pieces.h"

namespace standin::tables {

// Inside a ruled column only a gutter between titles or between values counts;
// in an open area every gutter does.
enum class Gutters : std::uint8_t { InsideRuledColumn, OpenArea };

// Pieces of one baseline; indices into the pieces given.
struct PrintedLine {
    model::Points baseline = 0;
    std::vector<std::uint32_t> pieces;  // left to right
};

// Groups pieces whose baselines are within `tolerance`, top to bottom.
[[nodiscard]] std::vector<PrintedLine> groupByBaseline(std::span<Piece const> pieces, model::Points tolerance);

// Cuts a piece whose words are nothing but column titles ("Min. Typ. Max. Unit", set close together) between the
// titles; any other piece is added as it is.
void cutAtTitles(model::PageLayout const& page, Piece const& piece, std::vector<Piece>& out);

// One value printed over the middle of the columns of several variants, in an open area.
struct SharedValue {
    std::uint32_t firstWord = 0;
    model::Points from = 0;  // middles of the first and the last variant's title
    model::Points to = 0;
};

struct Cuts {
    std::vector<model::Points> xs;  // left to right; none: one column
    std::vector<SharedValue> shared;
};

// x positions between x0 and x1 that cut the area into columns. `fontHeight` is the prevailing font size of the pieces.
[[nodiscard]] Cuts findCuts(model::PageLayout const& page, std::span<Piece const> pieces, model::Points x0, model::Points x1, model::Points fontHeight, Gutters gutters);

}  // namespace standin::tables
