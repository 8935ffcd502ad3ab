// What a sheet prints of its pins and was not read, so that it is listed as not
// compared. Private to this folder.
#pragma once

#include <span>
#include <vector>

#include "extractors/pins/pin_drawing.h"
#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// Pages where drawings of the package are looked for without a heading that says so.
inline constexpr int kPagesBehindTitle = 4;

struct DrawingOfPage {
    int page = 0;
    UnreadDrawing drawing;
};

// Pins whose name is only a picture ("pin 6"); drawings with numbered leads and no
// names, where no package of so many pins was read ("pins 1 to 18"); and, where no
// numbered pin was read at all, what announces pins: headings and captions, one a
// page, or else terminals lettered without numbers ("G, D, S without numbers"). By
// page, in that order.
[[nodiscard]] std::vector<model::PlacedText> unreadPins(std::span<model::Pin const> pins, std::span<DrawingOfPage const> drawings, std::span<model::PageLayout const> pages,
                                                        std::span<model::Section const> sections);

}  // namespace standin::pins
