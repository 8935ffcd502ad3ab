// The files of --cell and --circuit.
#pragma once

#include <optional>
#include <string>

#include "model/result.h"
#include "risk/cell_profile.h"
#include "risk/circuit.h"

namespace standin::cli {

// Nothing where `path` is empty. Errors name the file, and the member that is wrong.
[[nodiscard]] model::Result<std::optional<risk::CellProfile>> loadCell(std::string const& path);
[[nodiscard]] model::Result<std::optional<risk::Circuit>> loadCircuit(std::string const& path);

}  // namespace standin::cli
