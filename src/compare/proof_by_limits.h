// Which of several rows of one parameter is meant, by the limits they print: makers put
// conditions in many ways, but a limit that stands in one row of either sheet only is no chance.
//
//     140 mV, 2.5 %  :  140 mV, 2.5 %   ->  each is proven
//     -, 70 dB min   :  -, 70 dB min    ->  the second by its limit, the first is what is left
#pragma once

#include <array>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "quantity/decimal.h"

namespace standin::compare {

// Min, typ, max of rows as far as they are numbers, by index of the parameter.
using RowNumbers = std::unordered_map<int, std::array<std::optional<quantity::Decimal>, 3>>;

struct CandidatePair {
    int reference = 0;  // rows
    int candidate = 0;
    bool opposed = false;  // their versions or conditions say that they are two
    bool sure = false;     // for another reason
    // All rows of either sheet that could be meant by the name: of one parameter, one dimension and no
    // other version than the partner's. With the pair's own; empty: nothing is proven.
    std::vector<int> kinReference = {};
    std::vector<int> kinCandidate = {};
    // Rows whose conditions fit the partner no worse: lines of two versions, it may be.
    std::vector<int> rivalReferences = {};
    std::vector<int> rivalCandidates = {};
};

enum class Proof : char { None, ByLimit, ByElimination };

// For every pair, in their order. ByLimit: both print one limit (not 0) in one column that no
// other row of the kin prints there, no limit of theirs differs, and every rival that prints
// limits has a partner with a limit of its own. ByElimination: the
// kin has as many rows in either sheet, and all others are sure or proven. Linear in the
// pairs and their kin.
[[nodiscard]] std::vector<Proof> proofs(RowNumbers const& reference, RowNumbers const& candidate, std::span<CandidatePair const> pairs);

}  // namespace standin::compare
