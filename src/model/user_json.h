// JSON files that people write for the program: bounded and strict, so that a
// slip of the pen is told and not passed over.
//
//     auto const json = parseUserJson(text, "standin.corrections/1", "mine.json");
//     if (!json) …  // Usage, with the file's name
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "model/result.h"

namespace standin::model {

// The object whose member `schema` is the given word. Errors (Usage): no valid
// JSON, nested deeper than 32, no object, another schema, or a member that
// stands twice in one object.
[[nodiscard]] Result<nlohmann::json> parseUserJson(std::string_view text, std::string_view schema, std::string const& file);

}  // namespace standin::model
