// Columns and reading order: segments (words without a wide gap between them) are
// put in the order in which a person reads them.
//
//     std::vector<Segment> segments = cutSegments(words, lineStarts);
//     for (Group const& group : orderSegments(segments, horizontals, bodySize))
//         for (std::uint32_t s : group.segments) ...
//
// Frame coordinates throughout.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "extractors/layout/word_builder.h"

namespace standin::layout {

// Neighbouring words of one line.
struct Segment {
    std::uint32_t firstWord = 0;  // into the drafts
    std::uint32_t wordCount = 0;
    std::uint32_t line = 0;       // number of the page-wide line it was cut from
    std::uint32_t letters = 0;    // how many letters it holds
    model::Rect flow;
    model::Points baseline = 0;
    model::Points size = 0;       // of its longest-running font size
    bool bullet = false;          // a lone bullet
    bool bulleted = false;        // starts with a bullet
    bool barBefore = false;       // parted from its left neighbour by a vertical rule
};

// Segments read one after the other, in one column.
struct Group {
    int column = 0;  // 0: the only one, or over the whole width
    std::vector<std::uint32_t> segments;
};

// `lineStarts`: index of the first word of each page-wide line, ascending.
[[nodiscard]] std::vector<Segment> cutSegments(std::span<WordDraft const> words, std::span<std::uint32_t const> lineStarts);

// Text columns are recognised where prose stands on both sides of a white gutter;
// tables stay row by row. `horizontals`: rules along the reading direction.
[[nodiscard]] std::vector<Group> orderSegments(std::span<Segment const> segments, std::span<model::Rect const> horizontals, model::Points bodySize);

}  // namespace standin::layout
