// One datasheet as text for a terminal: what was understood, in 80 columns.
#pragma once

#include <string>

#include "model/datasheet.h"

namespace standin::report {

// Identification, sections, parameters, pins, packages, ordering, features,
// coverage and warnings.
[[nodiscard]] std::string datasheetText(model::Datasheet const& datasheet);

}  // namespace standin::report
