// Findings about table rows as printed.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/parameter_pairing.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// Row pairs whose texts differ, and rows that only one sheet prints. Rows that
// became parameters, pins or ordering lines are left to those stages where the
// sheets are two makers' own texts; in two states of one text every difference of
// a row is a draft (absorb() leaves one finding a row). Also captions and lead
// lines of corresponding tables. A row whose paired parameters only have another
// symbol of one vocabulary id is classed as Style, other units of equal values as Edit.
[[nodiscard]] std::vector<Draft> findRowDifferences(SheetPair const& sheets, ParameterPairing const& pairing, ConditionMemo& memo);

// One-sided rows of one table that are still there at the end are joined, as many
// as can be shown in one finding.
void joinOneSidedRows(std::vector<Draft>& drafts);

}  // namespace standin::compare
