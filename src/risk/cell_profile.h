// The limits of the cell that a part protects, out of the cell maker's
// specification (schema standin.cell/1).
//
//     auto cell = parseCellProfile(json);
//     if (!cell) { … cell.error().message names the member … }
//     cell->find("protection_max")->limits.hi
#pragma once

#include <span>
#include <string_view>

#include "risk/given_values.h"

namespace standin::risk {

struct CellProfile : GivenValues {};

[[nodiscard]] std::span<Member const> cellMembers();

// Errors: as GivenValues::parse.
[[nodiscard]] model::Result<CellProfile> parseCellProfile(std::string_view json);

}  // namespace standin::risk
