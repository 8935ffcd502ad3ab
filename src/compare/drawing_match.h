// Whether two printed drawings look the same: pictures of both, laid over each
// other.
//
// Defines: DrawingMatch, DrawingPlace.
//
//     matchDrawings({reference, 3, figure.box}, {candidate, 4, other.box});
#pragma once

#include <cstdint>
#include <vector>

#include "model/page_picture.h"

namespace standin::compare {

enum class DrawingMatch : std::uint8_t { Same, Different, Unknown };

struct DrawingPlace {
    model::PagePictures* pictures = nullptr;  // borrowed; null: none
    int page = 0;
    model::Rect box;                     // points of the page
    std::vector<model::Rect> lettering;  // is compared as text; left out of the picture
};

// Draws both places, brings them to one place and size, and looks for ink of one
// that the other has nowhere near. What another producer's rounding moves by half a
// point is the same; a line, a symbol or a letter more, less or elsewhere is not.
// Unknown where one of the two cannot be drawn. Linear in the pixels of both.
[[nodiscard]] DrawingMatch matchDrawings(DrawingPlace const& reference, DrawingPlace const& candidate);

// The same for pictures that are there already.
[[nodiscard]] DrawingMatch matchPictures(model::Picture const& reference, model::Picture const& candidate);

}  // namespace standin::compare
