#include "extractors/layout/rule_index.h"

#include <vector>

#include <gtest/gtest.h>

namespace standin::layout {
namespace {

using model::Rect;
using model::Rule;

Rule horizontal(float x0, float x1, float y, bool dashed = false) { return {Rule::Axis::Horizontal, {x0, y, x1, y}, 0, dashed}; }
Rule vertical(float x, float y0, float y1) { return {Rule::Axis::Vertical, {x, y0, x, y1}, 0, false}; }

struct MergeCase {
    char const* what;
    std::vector<Rule> rules;
    std::vector<Rect> merged;
};

TEST(RuleIndex, PiecesOfOneLineBecomeOneRule) {
    std::vector<MergeCase> const cases{
        {"touching", {horizontal(10, 50, 100), horizontal(50, 90, 100)}, {{10, 100, 90, 100}}},
        {"overlapping, in any order", {horizontal(40, 90, 100), horizontal(10, 50, 100.2F)}, {{10, 100, 90, 100.2F}}},
        {"a real gap stays", {horizontal(10, 50, 100), horizontal(60, 90, 100)}, {{10, 100, 50, 100}, {60, 100, 90, 100}}},
        {"dashes", {horizontal(10, 14, 100, true), horizontal(17, 21, 100, true), horizontal(24, 28, 100, true)}, {{10, 100, 28, 100}}},
        {"double line", {horizontal(10, 90, 100), horizontal(10, 90, 102)}, {{10, 100, 90, 102}}},
        {"two lines of a narrow row", {horizontal(10, 90, 100), horizontal(10, 90, 108)}, {{10, 100, 90, 100}, {10, 108, 90, 108}}},
        {"a short line beside a long one", {horizontal(10, 90, 100), horizontal(10, 30, 102)}, {{10, 100, 90, 100}, {10, 102, 30, 102}}},
        {"vertical", {vertical(10, 50, 80), vertical(10, 20, 50)}, {{10, 20, 10, 80}}},
    };
    for (MergeCase const& c : cases) {
        SCOPED_TRACE(c.what);
        std::vector<Rect> boxes;
        for (Rule const& rule : mergeRules(c.rules, 10)) boxes.push_back(rule.box);
        EXPECT_EQ(boxes, c.merged);
    }
}

TEST(RuleIndex, FindsABarBetweenTwoPlaces) {
    std::vector<Rule> const rules{vertical(100, 50, 300), vertical(200, 50, 55), horizontal(0, 400, 60)};
    RuleIndex const bars(rules, Frame{});
    EXPECT_TRUE(bars.between(90, 110, 70, 80));
    EXPECT_FALSE(bars.between(101, 150, 70, 80));
    EXPECT_FALSE(bars.between(90, 110, 400, 410)) << "below the bar";
    EXPECT_FALSE(bars.between(190, 210, 50, 60)) << "covers too little of the height";
}

TEST(RuleIndex, InASidewaysFrameHorizontalRulesAreBars) {
    std::vector<Rule> const rules{horizontal(50, 300, 100)};
    RuleIndex const bars(rules, Frame{model::Direction::Down});
    // Down: along is y, across is -x.
    EXPECT_TRUE(bars.between(90, 110, -80, -70));
    EXPECT_FALSE(RuleIndex(rules, Frame{}).between(90, 110, 70, 80));
}

}  // namespace
}  // namespace standin::layout
