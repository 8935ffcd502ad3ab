// A comparison as JSON (schema standin.comparison/1, src/report/schemas/).
#pragma once

#include <string>

#include "model/comparison.h"

namespace standin::model {

// UTF-8, two spaces of indent, a final newline; the same value gives the same
// bytes. Bytes that are no UTF-8 are written as U+FFFD.
[[nodiscard]] std::string toJson(Comparison const& comparison);

}  // namespace standin::model
