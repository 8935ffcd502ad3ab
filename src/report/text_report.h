// The summary for a terminal: readable in 80 columns, no control characters of
// foreign text, no colour.
#pragma once

#include <string>

#include "model/comparison.h"

namespace standin::report {

// Opens with both documents and the verdict, then counts and coverage, cautions,
// findings from hazard down (editorial ones counted only), general statements.
[[nodiscard]] std::string textReport(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate);

}  // namespace standin::report
