// Rows parted among texts that stand beside several of them each: names centred on
// their value lines, units in one area beside many rows. Private to this folder.
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "model/geometry.h"

namespace standin::tables {

struct PartedRows {
    std::vector<int> firsts;  // index of the first row of each text, rising
    model::Points off = 0;    // how far the texts stand from the middles of their rows, in all
};

struct PartLimits {
    model::Points mostOff = std::numeric_limits<model::Points>::max();  // of one text, points
    int mostRows = std::numeric_limits<int>::max();                     // of one text
};

// Of all ways to part the rows (their baselines, rising) in order among the texts
// (their middles, rising), one row each at least, the one that leaves each text
// nearest to the middle of its rows. None where none keeps to the limits, or where
// there are more texts or rows than a page holds. Cubic at most.
[[nodiscard]] std::optional<PartedRows> partRows(std::span<model::Points const> baselines, std::span<model::Points const> middles, PartLimits const& limits = {});

}  // namespace standin::tables
