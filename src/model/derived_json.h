// Worked-out quantities and cell checks as JSON and back; the members `derived`
// and `cell` of a comparison. Private to model/.
#pragma once

#include <nlohmann/json.hpp>

#include "model/comparison.h"

namespace standin::model::json_parts {

[[nodiscard]] nlohmann::ordered_json derivedJson(std::vector<Derived> const& derived);
[[nodiscard]] nlohmann::ordered_json cellJson(std::vector<CellCheck> const& checks);

// A missing or mistyped field gives the default.
[[nodiscard]] std::vector<Derived> derivedOf(nlohmann::ordered_json const& array);
[[nodiscard]] std::vector<CellCheck> cellOf(nlohmann::ordered_json const& array);

}  // namespace standin::model::json_parts
