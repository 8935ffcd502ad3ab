// Pins of a package drawing: numbers in a row along an outline, names beside
// them. Private to this folder.
#pragma once

#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// Every drawing of the page whose numbers count from 1 without a gap and have a
// name each. Two columns (dual in line), one column or one row; numbers that are
// printed for the corner pins only are filled in where the names stand evenly
// between. `package` is the package name printed nearest to the drawing, or
// empty. At most a few hundred numbers of a page are looked at.
[[nodiscard]] std::vector<std::vector<model::Pin>> pinsOfDrawings(model::PageLayout const& page);

}  // namespace standin::pins
