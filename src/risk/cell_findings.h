// The cell checks of both parts, and the findings that they give.
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "risk/derived.h"
#include "risk/sheet_view.h"
#include "risk/work_out.h"

namespace standin::risk {

// Fills comparison.cell and appends a finding for each check that the candidate
// violates or leaves open, or that only the reference violates. Where reference
// and candidate fare differently, and the parameter concerned has a finding, the
// check hangs under it, and that finding weighs at least as much as the check.
// `called` is parallel to the findings, before and after. Nothing is sorted.
void addCellChecks(model::Comparison& comparison, SheetView const& sheets, BothValues const& values, Surroundings const& around,
                   std::vector<std::vector<std::string>>& called);

}  // namespace standin::risk
