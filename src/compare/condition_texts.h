// Texts that state the condition of a whole table (a caption, a heading row, a sentence),
// among the findings.
#pragma once

#include <vector>

#include "compare/conditions.h"
#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// Condition differences that come from a change that another draft shows (a
// heading row, a caption, a sentence with the condition of a whole table) are hung
// under that draft. Called when all drafts are together.
void linkTableConditions(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo);

// Two makers: a caption that states the conditions of a table ("VCC = 5 V, TA = 25 °C unless
// otherwise noted") against that of the other sheet follows from a row of these two tables
// whose own finding says that they differ; called before linkTableConditions. Any other stays a finding.
void linkConditionTexts(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo);

// Two makers: such a text against that of the other sheet, where both state the same quantities
// ("VCC± = ±15 V, TA = 25 °C" against "V+/V- = ±15 V, Ta = 25 °C"), is the same put otherwise. It
// stays a finding, for a reader to confirm; called when the texts have their classes.
void settleConditionTexts(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo);

}  // namespace standin::compare
