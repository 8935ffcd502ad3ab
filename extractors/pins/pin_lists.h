// Pins listed beside a drawing: "1. GATE  2. SOURCE  3. DRAIN". Private to this folder.
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// Numbered lists of at least three pins that count up from 1, in figures, in
// sections about pins or packages, or below a line that says "pin". Lists of
// features and notes are told apart by that and by the look of their entries.
[[nodiscard]] std::vector<model::Pin> pinsOfLists(model::PageLayout const& page, std::span<model::Section const> sections);

// Pins described one a paragraph: "PROG (Pin 2): Charge current setting …",
// "Pin 3: GND". At least three, with most of the numbers up to the largest.
[[nodiscard]] std::vector<model::Pin> pinsOfDescriptions(model::PageLayout const& page);

}  // namespace standin::pins
