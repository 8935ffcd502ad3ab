// The best one-to-one assignment over all, not the best for each in turn.
//
//     auto pairs = assign({{0, 0, 0.9}, {0, 1, 0.8}, {1, 0, 0.85}});   // 0-1 and 1-0: 1.65 beats 0.9
#pragma once

#include <span>
#include <vector>

namespace standin::compare {

struct Edge {
    int reference = 0;
    int candidate = 0;
    double weight = 0;  // > 0; higher is better
    bool operator==(Edge const&) const = default;
};

// Edges of the assignment with the greatest total weight, in ascending order of
// `reference`. Every group of connected edges is solved exactly up to
// `kLargestGroup` entries a side (cubic in the group); a larger group takes the
// heaviest edges first. Equal weights are decided by lower indices, and alike when the
// two sides are exchanged.
inline constexpr int kLargestGroup = 48;
[[nodiscard]] std::vector<Edge> assign(std::span<Edge const> edges);

}  // namespace standin::compare
