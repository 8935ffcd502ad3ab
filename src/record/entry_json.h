// Bodies of entries as JSON and back. Private to record/.
#pragma once

#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "model/result.h"
#include "record/entry.h"

namespace standin::record {

[[nodiscard]] nlohmann::json bodyJson(Body const& body);

// Error (Damaged): another kind, a member that is missing or of a wrong type.
[[nodiscard]] model::Result<Body> bodyOf(std::string_view kind, nlohmann::json const& json);

// One line, members sorted, bad UTF-8 replaced.
[[nodiscard]] std::string canonical(nlohmann::json const& json);

}  // namespace standin::record
