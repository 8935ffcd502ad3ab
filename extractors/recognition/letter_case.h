// Small or capital: "v" or "V" alone have one shape and tell by their height among the lines
// around them.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "extractors/recognition/lettering.h"

namespace standin::recognition {

// True for c, o, s, u, v, w, x, z, small or capital.
[[nodiscard]] bool hasOneShape(char letter);

// A line that was read, with letters that tell how high its capitals are.
struct MeasuredLine {
    PixelBox box;
    int baseline = 0;
    int capHeight = 0;
};

// How high capitals are where `letter` stands: of the nearest line on its own row, else
// of the nearest one of about its size; none where there is none near.
[[nodiscard]] std::optional<int> capHeightAt(PixelBox const& letter, std::span<MeasuredLine const> lines);

// A capital is about as high as capitals are there.
[[nodiscard]] bool isCapital(PixelBox const& letter, int capHeight);

}  // namespace standin::recognition
