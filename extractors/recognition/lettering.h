// Tells lettering from drawing among the connected pieces of ink of a picture, and
// puts its pieces together to lines. Pure: pixels in, pixels out.
//
//     auto const lettering = findLettering(pieces, rules, {.pixelsPerPoint = 300.0 / 72});
//     for (auto const& line : lettering.lines) …
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace standin::recognition {

// Pixels; right and bottom are excluded.
struct PixelBox {
    int left = 0, top = 0, right = 0, bottom = 0;

    bool operator==(PixelBox const&) const = default;
    [[nodiscard]] int width() const { return right - left; }
    [[nodiscard]] int height() const { return bottom - top; }
};

[[nodiscard]] PixelBox united(PixelBox const& a, PixelBox const& b);

enum class Frames : std::uint8_t {
    AroundLetters,  // a piece around a letter is a frame ("[1]" in a pin drawing)
    PartOfLetters,  // or part of a character (Chinese, Japanese, Korean)
};

struct LetteringOptions {
    double pixelsPerPoint = 1;
    Frames frames = Frames::AroundLetters;
};

// Pieces that stand on one line without a wide gap: a line of text, a cell, a
// lettering of a drawing.
struct LetteringLine {
    std::vector<std::size_t> pieces;  // indices, ascending
    PixelBox box;
    int baseline = 0;   // the row that most of its letters stand on
    int capHeight = 0;  // from the top of its highest letters to the baseline
};

struct Lettering {
    std::vector<LetteringLine> lines;  // from the top, then from the left
    // What may be lettering and cannot be read, for it stands in no line: letters of turned text,
    // dashes level with a line and away from its letters, letters higher than a headline's.
    std::vector<PixelBox> leftOut;
};

// `rules` are long straight lines, which part lines where
// they are vertical. O(n²) at worst for n pieces side by side, O(n log n) on pages of text.
[[nodiscard]] Lettering findLettering(std::span<PixelBox const> pieces, std::span<PixelBox const> rules, LetteringOptions const& options);

}  // namespace standin::recognition
