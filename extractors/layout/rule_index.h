// Rules merged, and the vertical ones (in a frame) found quickly by place.
//
//     layout.rules = mergeRules(content.rules, bodySize);
//     RuleIndex const bars(layout.rules, frame);
//     if (bars.between(x0, x1, top, bottom)) ...
#pragma once

#include <span>
#include <vector>

#include "extractors/layout/frame.h"
#include "model/page_content.h"

namespace standin::layout {

// One rule where collinear pieces touch, overlap or are dashes of one line, and
// where two lines stand so close that a reader sees one double line. Distances
// follow `fontSize` (points). Order: horizontal from top to bottom, then vertical
// from left to right. O(n log n).
[[nodiscard]] std::vector<model::Rule> mergeRules(std::span<model::Rule const> rules, model::Points fontSize);

class RuleIndex {
public:
    RuleIndex(std::span<model::Rule const> rules, Frame frame);

    // A rule that crosses the reading direction between x0 and x1 and covers at
    // least 0.6 of the range top … bottom (frame coordinates).
    [[nodiscard]] bool between(model::Points x0, model::Points x1, model::Points top, model::Points bottom) const;
    [[nodiscard]] bool empty() const { return m_bars.empty(); }

private:
    struct Bar {
        model::Points x, top, bottom;
    };
    std::vector<Bar> m_bars;  // by x
    model::Points m_bandTop = 0;
    std::vector<Bar> m_inBands;             // band after band by y, each by x
    std::vector<std::size_t> m_bandStarts;  // and the end; empty without bars
};

}  // namespace standin::layout
