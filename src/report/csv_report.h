// Comma-separated values (RFC 4180, UTF-8 with a byte order mark is not
// written, CRLF line ends). No cell starts a formula in a spreadsheet.
#pragma once

#include <string>

#include "model/comparison.h"

namespace standin::report {

// All parameter pairs, equal ones included, one a line.
[[nodiscard]] std::string pairsCsv(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate);

// All parameters of one sheet, one a line.
[[nodiscard]] std::string parametersCsv(model::Datasheet const& datasheet);

}  // namespace standin::report
