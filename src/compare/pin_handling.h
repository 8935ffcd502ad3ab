// What the description of a pin asks of the board: leave it open, tie it and to what; the
// active level and form of an output or input.
#pragma once

#include <cstdint>
#include <string_view>

#include "model/datasheet.h"

namespace standin::compare {

// Differs: one says open and the other tied (or either), active high and active low, open
// drain and push-pull. OtherNode: tied to two supplies, which would be shorted over the
// board's copper. What one side does not say is no change. Symmetric.
enum class HandlingChange : std::uint8_t { None, Differs, OtherNode };

// `reference` and `candidate`: the name and description as printed, "NC | May be tied to VSS".
// How it is tied counts for pins without a function of their own only (unconnected, test,
// pads): what else stands at a supply or input is told by its name.
[[nodiscard]] HandlingChange relateHandling(std::string_view reference, std::string_view candidate);

// "EP", "Exposed pad", "Tab": no lead of the package.
[[nodiscard]] bool isPad(std::string_view name);

}  // namespace standin::compare
