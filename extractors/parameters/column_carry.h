// Columns of a table without a head that goes on below another: what they mean
// is told by the columns that stand above them. Empty columns may be missing in
// either part, so places decide, not counts.
#pragma once

#include <optional>

#include "extractors/parameters/column_plan.h"
#include "model/table.h"

namespace standin::parameters {

// `plan`: of `above`. Nothing where the two don't stand below each other with the
// same sides, or where a column has none above it.
[[nodiscard]] std::optional<ColumnPlan> planFromAbove(model::Table const& table, model::Table const& above, ColumnPlan const& plan);

}  // namespace standin::parameters
