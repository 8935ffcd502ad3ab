// Findings about parameters.
#pragma once

#include <vector>

#include "compare/conditions.h"
#include "compare/drafts.h"
#include "compare/parameter_pairing.h"
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

// Condition differences that come from a change that another draft shows (a
// heading row, a caption, a sentence with the condition of a whole table) are hung
// under that draft. Called when all drafts are together.
void linkTableConditions(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo);

// Two makers: a line of the features or the description that repeats the values of a row that
// differs ("RDS(ON) < 60 mΩ" against "RDS(ON) < 65 mΩ") follows from that row, if both lines are
// the same but for these values. One that says more stays a finding.
void linkRestatements(std::vector<Draft>& drafts, SheetPair const& sheets);

// Two makers: a caption that states the conditions of a table ("VCC = 5 V, TA = 25 °C unless
// otherwise noted") against that of the other sheet follows from a row of these two tables
// whose own finding says that they differ; called before linkTableConditions. Any other stays a finding.
void linkConditionTexts(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo);

}  // namespace standin::compare
