// Pins described one a paragraph: "PROG (Pin 2): Charge current setting …",
// "Pin 3: GND", "VOUT（引脚 1）：…". Private to this folder.
#pragma once

#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// At least three pins, with most of the numbers up to the largest; a pin's box is
// its first line. Names that are pictures are empty.
[[nodiscard]] std::vector<model::Pin> pinsOfDescriptions(model::PageLayout const& page);

}  // namespace standin::pins
