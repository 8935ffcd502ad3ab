// Findings about parameters.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "compare/conditions.h"
#include "compare/drafts.h"
#include "compare/parameter_pairing.h"
#include "compare/relation.h"
#include "compare/sheet_pair.h"
#include "model/comparison.h"

namespace standin::compare {

struct ParameterFindings {
    std::vector<Draft> drafts;
    std::vector<model::Pair> pairs;  // all, equal ones and those of versions in one sheet only included; Finding::pair is an index into it
};

// One draft for each pair whose values or conditions differ and for each parameter
// that only one sheet has. Values that are equal while only a condition printed
// once for several of them differs: the first is the finding, the others follow.
[[nodiscard]] ParameterFindings findParameterDifferences(SheetPair const& sheets, ParameterPairing const& pairing, ConditionMemo& conditions);

// Where a difference below the printed resolution does no harm. A single limit decides,
// whichever column it is printed in.
[[nodiscard]] BoundPrecision precisionFor(SheetPair const& sheets, model::Parameter const& reference, model::Parameter const& candidate);

// Where two conditions differ: the words between their common beginning and their
// common end, with the word before, so that a unit keeps its number.
[[nodiscard]] std::pair<std::string, std::string> changedPart(std::string_view before, std::string_view after);

// Two makers: a line of the features or the description that repeats the values of a row that
// differs ("RDS(ON) < 60 mΩ" against "RDS(ON) < 65 mΩ") follows from that row, if both lines are
// the same but for these values. One that says more stays a finding.
void linkRestatements(std::vector<Draft>& drafts, SheetPair const& sheets);

}  // namespace standin::compare
