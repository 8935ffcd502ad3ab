// Lines: runs on one baseline, with the sub- and superscripts that belong to
// them, from left to right. A line here goes over the whole width of the page;
// words and column gaps come later.
//
//     for (RunLine const& line : buildLines(content, found, Layer::Visible))
//         for (std::uint32_t run : line.runs) found.runs[run] ...
#pragma once

#include <cstdint>
#include <vector>

#include "extractors/layout/glyph_runs.h"

namespace standin::layout {

struct RunLine {
    model::Points baseline = 0;  // in the frame
    std::vector<std::uint32_t> runs;  // indices into GlyphRuns::runs, by start
};

enum class Layer : std::uint8_t { Visible, Hidden };

// The lines of one layer from top to bottom. Marks `script` and `doubled` of the
// runs; a run drawn again at the same place is left out. O(n log n).
[[nodiscard]] std::vector<RunLine> buildLines(model::PageContent const& content, GlyphRuns& found, Layer layer);

}  // namespace standin::layout
