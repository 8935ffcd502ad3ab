// Quantities that neither sheet prints, worked out for both parts, and the
// findings that follow where they differ.
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "risk/sheet_view.h"
#include "risk/work_out.h"

namespace standin::risk {

// The stated values of both sheets; `reference` is null where the candidate stands alone.
struct BothValues {
    StatedValues const* reference = nullptr;
    StatedValues const* candidate = nullptr;
};

// Fills comparison.derived and appends a finding for each quantity that differs,
// as a consequence of the parameter that moves it. `called` receives the caution
// ids of each new finding. Findings must be judged already; nothing is sorted.
void addDerived(model::Comparison& comparison, SheetView const& sheets, BothValues const& values, Surroundings const& around,
                std::vector<std::vector<std::string>>& called);

}  // namespace standin::risk
