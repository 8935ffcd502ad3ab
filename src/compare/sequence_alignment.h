// Two lists of printed things set side by side in order: table rows, parameter
// rows, lettering, headings.
//
//     auto pairs = alignSequences(rowsOfA, rowsOfB, [&](int i, int j) { return similarityOf(i, j); }, {});
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "compare/text_keys.h"

namespace standin::compare {

struct IndexPair {
    int reference = 0;
    int candidate = 0;
    bool operator==(IndexPair const&) const = default;
};

// How alike entry i of the reference and entry j of the candidate are, 0 … 1.
// Called only for entries with different keys.
using Likeness = std::function<double(int, int)>;

struct AlignmentSettings {
    double threshold = 0.5;  // pairs less alike than this stay apart
};

// One-to-one pairs, both indices ascending. Equal keys that stand in the same
// order are paired first, each with its own twin among equals; what is left
// between them is paired by likeness. Time is linear but for gaps, which are
// bounded: a gap of more than `kLargestGap` entries × entries is paired by equal
// keys alone.
inline constexpr long long kLargestGap = 6400;
[[nodiscard]] std::vector<IndexPair> alignSequences(std::span<Key const> reference, std::span<Key const> candidate,
                                                    Likeness const& likeness, AlignmentSettings settings = {});

// Equal keys among the entries that `pairs` does not name, wherever they stand;
// the k-th with the k-th. Appended to `pairs`.
void pairMoved(std::span<Key const> reference, std::span<Key const> candidate, std::vector<IndexPair>& pairs);

// For each entry of one list the index of its partner, or -1.
[[nodiscard]] std::vector<int> partnersOfReference(std::span<IndexPair const> pairs, std::size_t count);
[[nodiscard]] std::vector<int> partnersOfCandidate(std::span<IndexPair const> pairs, std::size_t count);

}  // namespace standin::compare
