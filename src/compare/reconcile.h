// What one stage found in the reference only and another in the candidate only may
// be one and the same printed thing, read differently in the two sheets (a row of
// a table here, a list entry there).
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// One-sided drafts with equal texts are dropped on both sides; those at the same
// place of one text, or nearly equal, become one two-sided draft. Weak drafts that
// find no other half are dropped.
void reconcileOneSided(std::vector<Draft>& drafts, SheetPair const& sheets);

// A difference of document properties that a running head, a heading or a sentence
// shows too follows from that one.
void linkProperties(std::vector<Draft>& drafts, SheetPair const& sheets);

}  // namespace standin::compare
