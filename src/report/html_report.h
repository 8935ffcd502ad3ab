// The report as one HTML file: no network, no scripts, prints well. Foreign
// text is escaped and its control characters are shown by number.
#pragma once

#include <string>

#include "model/comparison.h"

namespace standin::report {

// Opens with both documents and the verdict, then hazard findings with both
// values, conditions and pages, the rest by severity, coverage, all parameter
// pairs, general statements.
[[nodiscard]] std::string htmlReport(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate);

}  // namespace standin::report
