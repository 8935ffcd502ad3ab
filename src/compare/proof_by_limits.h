// Which of several rows of one parameter is meant, by the limits they print: makers put
// conditions in many ways, but a limit that stands in one row of either sheet only is no chance.
//
//     140 mV, 2.5 %  :  140 mV, 2.5 %   ->  each is proven
//     -, 70 dB min   :  -, 70 dB min    ->  the second by its limit, the first is what is left
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "quantity/decimal.h"

namespace standin::compare {

struct LimitedRow {
    int row = 0;                                              // index of the parameter
    std::string kin;                                          // what rows of one parameter and dimension have in common within a sheet and across; empty: none
    std::array<std::optional<quantity::Decimal>, 3> numbers;  // min, typ, max
};

struct CandidatePair {
    int reference = 0;  // rows
    int candidate = 0;
    bool opposed = false;  // their versions or conditions say that they are two
    bool sure = false;     // for another reason
    // Rows whose conditions fit the partner no worse: lines of two versions, it may be.
    std::vector<int> rivalReferences = {};
    std::vector<int> rivalCandidates = {};
};

enum class Proof : char { None, ByLimit, ByElimination };

// For every pair, in their order. ByLimit: both print one limit (not 0) in one column that no
// other row of the kin prints there, no limit of theirs differs, and every rival that prints
// limits has a partner with a limit of its own. ByElimination: the
// kin has as many rows in either sheet, and all others are sure or proven. Linear in the rows
// but for the rows of one kin, which are compared with each other.
[[nodiscard]] std::vector<Proof> proofs(std::span<LimitedRow const> reference, std::span<LimitedRow const> candidate, std::span<CandidatePair const> pairs);

}  // namespace standin::compare
