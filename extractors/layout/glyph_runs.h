// Runs: glyphs drawn one after the other without a gap, in one font, size and
// colour. The unit from which lines and words are made.
//
//     GlyphRuns const found = findRuns(content, model::Direction::Right, bars);
//     for (GlyphRun const& run : found.runs)
//         for (std::uint32_t i = run.first; i < run.first + run.count; ++i) content.glyphs[found.glyphs[i]].code;
#pragma once

#include <cstdint>
#include <vector>

#include "extractors/layout/frame.h"
#include "extractors/layout/rule_index.h"
#include "model/page_content.h"
#include "model/page_layout.h"

namespace standin::layout {

struct GlyphRun {
    model::Rect flow;            // in the frame of its direction
    model::Points baseline = 0;  // y in the frame
    model::Points size = 0;
    std::uint32_t first = 0;     // into GlyphRuns::glyphs
    std::uint32_t count = 0;
    std::uint32_t order = 0;     // number in drawing order
    std::uint32_t colour = 0;
    std::uint16_t font = 0;
    model::Script script = model::Script::Normal;  // set when lines are made
    bool hidden = false;
    bool spaceBefore = false;  // white space drawn before it
    bool spaceAfter = false;   // white space drawn behind it
    bool doubled = false;      // drawn more than once: fake bold
    bool leader = false;       // leader dots only
    bool cjk = false;
    bool neutral = false;      // wide punctuation only: neither CJK nor not
};

struct GlyphRuns {
    std::vector<GlyphRun> runs;
    std::vector<std::uint32_t> glyphs;  // indices into PageContent::glyphs
    bool spacesDrawn = false;  // words are parted by white space glyphs, not by movement only
};

// The runs of one direction in drawing order. Glyphs outside the page, white
// space, zero-width characters and second drawings of the same glyph are left out.
// A run never goes on over one of `bars` (made for the frame of that direction).
[[nodiscard]] GlyphRuns findRuns(model::PageContent const& content, model::Direction direction, RuleIndex const& bars);

}  // namespace standin::layout
