// Texts of two lists paired by what they say, wherever they stand.
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "compare/assignment.h"
#include "compare/text_keys.h"

namespace standin::compare {

// Index of an entry -> its sorted tokens.
using TokensOf = std::function<std::vector<Key> const&(int)>;

struct SimilaritySettings {
    double threshold = 0.6;
    // Added to the similarity of entries that should win among nearly equals
    // (same page, same section); null: none.
    std::function<double(int, int)> bonus = {};
};

// One-to-one pairs of the given entries whose token similarity reaches the
// threshold, best total first. Only tokens that occur in few entries lead to a
// comparison, and each entry is compared with a bounded number of others, so the
// time stays linear on repetitive sheets.
[[nodiscard]] std::vector<Edge> pairSimilar(std::span<int const> reference, TokensOf const& referenceTokens, std::span<int const> candidate,
                                            TokensOf const& candidateTokens, SimilaritySettings const& settings);

}  // namespace standin::compare
