// What one sheet states twice, with other numbers.
#pragma once

#include <vector>

#include "compare/conditions.h"
#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// A parameter that the vocabulary knows, printed in two tables of one sheet under the
// same name or symbol, condition and version, with values that disagree: one draft that
// names both places, on the side of that sheet only. A conflict that both sheets share
// alike is no difference but a coverage finding. Rows that one table repeats are its
// versions or conditions, never a conflict.
[[nodiscard]] std::vector<Draft> findParameterConflicts(SheetPair const& sheets, ConditionMemo& memo);

// A conflict that arises from a changed parameter follows from that parameter's finding.
void linkConflicts(std::vector<Draft>& drafts);

}  // namespace standin::compare
