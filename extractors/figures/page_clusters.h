// Where drawings stand together on a page. Private to this folder.
//
//     for (Cluster const& cluster : clustersOf(page, tableBoxes)) ... cluster.box
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "model/page_layout.h"

namespace standin::figures {

// Images, drawings and rules that touch or nearly touch.
struct Cluster {
    model::Rect box;
    int images = 0;
    int drawings = 0;
    int horizontal = 0;  // rules
    int vertical = 0;
    double imageArea = 0;
    model::Points longestHorizontal = 0;
    model::Points longestVertical = 0;
    std::uint64_t shape = 0;  // of everything in it, relative to its box; the same when the file is saved again
};

// All clusters of the page apart from what stands in `tables` and what is no
// drawing: page frames, separators, backgrounds. Top to bottom, then left to
// right. Linear in the things drawn, bounded by the page's area.
[[nodiscard]] std::vector<Cluster> clustersOf(model::PageLayout const& page, std::span<model::Rect const> tables);

}  // namespace standin::figures
