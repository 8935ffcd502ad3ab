// Ruling lines that hang together. Rules drawn as many pieces (one a cell, or
// dashes) are joined first; then every set of rules that touch is a network: a
// candidate for a ruled table, or a drawing.
//
// Coordinates: page points, top left, y down.
#pragma once

#include <vector>

#include "model/page_layout.h"

namespace standin::tables {

// A straight piece: `at` is y for a horizontal one, x for a vertical one.
struct Segment {
    model::Points at = 0;
    model::Points from = 0;
    model::Points to = 0;
    [[nodiscard]] model::Points length() const { return to - from; }
};

struct Network {
    std::vector<Segment> horizontal;  // by `at`, then `from`
    std::vector<Segment> vertical;
    model::Rect box;
};

struct RuleNetworks {
    std::vector<Network> networks;         // with rules of both directions, small boxes first
    std::vector<Segment> looseHorizontal;  // touched by no vertical rule, by `at`
    std::vector<Segment> looseVertical;    // touched by no horizontal rule, by `at`
};

// Never more than kMostRules rules are looked at (the longest ones).
inline constexpr std::size_t kMostRules = 3000;

[[nodiscard]] RuleNetworks findRuleNetworks(model::PageLayout const& page);

}  // namespace standin::tables
