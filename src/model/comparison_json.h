// A comparison as JSON and back (schema standin.comparison/1, src/report/schemas/).
#pragma once

#include <string>
#include <string_view>

#include "model/comparison.h"
#include "model/result.h"

namespace standin::model {

// UTF-8, two spaces of indent, a final newline; the same value gives the same
// bytes. Bytes that are no UTF-8 are written as U+FFFD.
[[nodiscard]] std::string toJson(Comparison const& comparison);

// What toJson() wrote; a missing or mistyped field gives its default. Errors
// (Usage): no JSON, nested too deeply, another schema. `file` is named in them.
[[nodiscard]] Result<Comparison> comparisonFromJson(std::string_view json, std::string const& file);

}  // namespace standin::model
