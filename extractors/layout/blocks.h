// Blocks: consecutive lines that belong together, with their role.
// Works on a PageLayout whose words and lines are set and in reading order.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "model/page_layout.h"

namespace standin::layout {

// What is known of a line beyond model::TextLine while blocks are made.
struct LinePlace {
    std::uint32_t row = 0;    // lines of one row stand on one baseline of the page
    std::uint32_t group = 0;  // lines of different groups never share a block
    int column = 0;
    model::Rect flow;
    model::Points baseline = 0;  // in the frame
};

// Appends blocks over layout.lines[firstLine …]; places[i] belongs to line firstLine + i.
// `horizontals`: rules along the reading direction in frame coordinates, sorted by y0.
void buildBlocks(model::PageLayout& layout, std::uint32_t firstLine, std::span<LinePlace const> places, std::span<model::Rect const> horizontals);

}  // namespace standin::layout
