// Two revisions of one sheet: what the newer one's revision history says was changed is
// set against what was found. Private to this folder.
//
//     setAgainstHistory(comparison, sheets, called);
//     // history: "Drain current 32 A (was 40 A)"; found: drain current, gate threshold
//     //   -> one finding more: the history does not mention the gate threshold
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "risk/sheet_view.h"

namespace standin::risk {

// `comparison` is judged, `called` holds the cautions of each finding (the two stay
// parallel). Nothing happens unless the sheets are revisions of one sheet
// (compare/succession.h). Else findings of kind Document are added:
//  - one for all findings above editorial that no statement of the history covers; it
//    names their ids, and each of them says so in its explanation; of findings that are told
//    under the first of their like, that one speaks for all, unless the history covers some;
//  - one for each statement that no finding answers.
// All are notes: what differs has a finding of its own that says how grave it is.
void setAgainstHistory(model::Comparison& comparison, SheetView const& sheets, std::vector<std::vector<std::string>>& called);

}  // namespace standin::risk
