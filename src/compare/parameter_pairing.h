// Which parameter of the candidate is which of the reference's.
#pragma once

#include <vector>

#include "compare/conditions.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

struct ParameterPair {
    int reference = 0;  // index into Datasheet::parameters
    int candidate = 0;
    double confidence = 0;  // 0 … 1
    bool doubtful = false;  // another pairing is nearly as good
};

struct ParameterPairing {
    std::vector<ParameterPair> pairs;  // by reference index
    std::vector<int> onlyReference;
    std::vector<int> onlyCandidate;
    // Rows of orderable versions other than the chosen one, and where none is chosen, of
    // those that the other sheet does not cover: listed, not compared.
    std::vector<int> otherVariantReference;
    std::vector<int> otherVariantCandidate;
};

// One-to-one. Rows that say the same are paired with their twins in order. What is
// left is assigned over all at once by vocabulary id, symbol, name, dimension,
// condition, variant and the place in rows that correspond; a rating is never
// paired with a characteristic, nor two parameters that the vocabulary tells
// apart, unless both stand in the same printed row.
[[nodiscard]] ParameterPairing pairParameters(SheetPair const& sheets, ConditionMemo& conditions);

}  // namespace standin::compare
