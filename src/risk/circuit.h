// The values around the part on the board, which stand in neither sheet (schema
// standin.circuit/1).
//
//     auto circuit = parseCircuit(json);
//     circuit->find("fet_on_resistance")->limits.hi
#pragma once

#include <span>
#include <string_view>

#include "risk/given_values.h"

namespace standin::risk {

struct Circuit : GivenValues {};

[[nodiscard]] std::span<Member const> circuitMembers();

// Errors: as GivenValues::parse.
[[nodiscard]] model::Result<Circuit> parseCircuit(std::string_view json);

}  // namespace standin::risk
