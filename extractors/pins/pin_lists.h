// Pins listed beside a drawing: "1. GATE  2. SOURCE  3. DRAIN". Private to this folder.
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// Numbered lists of at least three pins that count up from 1, in figures, in
// sections about pins or packages, or below a line that says "pin"; each list by
// itself, down the page. Lists of features and notes are told apart by that and by
// the look of their entries. `package` is what the list is called: the package name
// nearest to it or the caption of its frame, or empty.
[[nodiscard]] std::vector<std::vector<model::Pin>> pinsOfLists(model::PageLayout const& page, std::span<model::Section const> sections);

}  // namespace standin::pins
