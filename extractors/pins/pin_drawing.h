// Pins of a package drawing: numbers in a row along an outline, names beside
// them. Private to this folder.
#pragma once

#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// A package whose leads are numbered and whose names were not found (drawn, or a
// picture).
struct UnreadDrawing {
    int leads = 0;
    model::Rect box;
};

struct DrawnPins {
    std::vector<std::vector<model::Pin>> packages;  // down the page
    std::vector<UnreadDrawing> unread;
};

// Every drawing of the page whose numbers count from 1 without a gap and have a
// name each. Four sides, two columns or rows (dual in line), one column or one
// row; numbers that are printed for the corner pins only are filled in where the
// names stand evenly between. `package` is the package name printed nearest to the
// drawing, or empty; where that does not tell several drawings apart, the line that
// is printed below each ("FX2 (top view)"). At most a few hundred numbers of a page are looked at.
[[nodiscard]] DrawnPins pinsOfDrawings(model::PageLayout const& page);

}  // namespace standin::pins
