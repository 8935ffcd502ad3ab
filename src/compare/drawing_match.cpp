// Both pictures become maps of ink. They are laid over each other in two ways, by
// the edges of their ink (a figure that moved or was set larger) and by their
// corners (one whose surroundings stick in at an edge); the better one counts.
// Then small windows are searched for ink without a counterpart: a share of the
// whole would let a small change in a large figure pass.
//
// Tested by tests/src/compare/drawing_match_test.cpp.
#include "compare/drawing_match.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace standin::compare {

using model::Picture;

namespace {

constexpr double kScale = 2;           // pixels a point
constexpr int kInk = 110;              // darkness from which a pixel is ink, of 255
constexpr int kTrace = 40;             // darkness that answers ink of the other
constexpr int kNear = 1;               // pixels around in which an answer counts: half a point
constexpr int kCell = 6;               // pixels; a window is two cells wide and high, so windows overlap
constexpr int kMostUnanswered = 7;     // pixels in one window
constexpr double kLargestStretch = 1.25;  // another size than that is another drawing

// Darkness of each pixel, 0 … 255.
struct InkMap {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> dark;

    [[nodiscard]] int at(int x, int y) const {
        if (x < 0 || y < 0 || x >= width || y >= height) return 0;
        return dark[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
    }
};

// Part of a map, in pixels; x1 and y1 lie outside.
struct Field {
    int x0, y0, x1, y1;
    [[nodiscard]] int width() const { return x1 - x0; }
    [[nodiscard]] int height() const { return y1 - y0; }
};

InkMap inkOf(Picture const& picture) {
    InkMap map{picture.width, picture.height, {}};
    map.dark.reserve(picture.rgb.size() / 3);
    for (std::size_t i = 0; i + 2 < picture.rgb.size(); i += 3) {
        int const light = (2 * picture.rgb[i] + 5 * picture.rgb[i + 1] + picture.rgb[i + 2]) / 8;
        map.dark.push_back(static_cast<std::uint8_t>(255 - light));
    }
    return map;
}

std::optional<Field> inkField(InkMap const& map) {
    Field field{map.width, map.height, 0, 0};
    for (int y = 0; y < map.height; ++y) {
        for (int x = 0; x < map.width; ++x) {
            if (map.at(x, y) < kInk) continue;
            field = {std::min(field.x0, x), std::min(field.y0, y), std::max(field.x1, x + 1), std::max(field.y1, y + 1)};
        }
    }
    if (field.x1 <= field.x0) return std::nullopt;
    return field;
}

// The darkest pixel around the place of `to` that lies where (x, y) lies in `from`.
int answer(InkMap const& other, Field const& from, Field const& to, int x, int y) {
    int const otherX = to.x0 + (x - from.x0) * to.width() / std::max(1, from.width());
    int const otherY = to.y0 + (y - from.y0) * to.height() / std::max(1, from.height());
    int darkest = 0;
    for (int dy = -kNear; dy <= kNear; ++dy) {
        for (int dx = -kNear; dx <= kNear; ++dx) darkest = std::max(darkest, other.at(otherX + dx, otherY + dy));
    }
    return darkest;
}

// The most ink of `map` in one window that `other` has nowhere near.
int unanswered(InkMap const& map, InkMap const& other, Field const& from, Field const& to) {
    auto const columns = static_cast<std::size_t>(map.width / kCell + 2);
    auto const rows = static_cast<std::size_t>(map.height / kCell + 2);
    std::vector<int> cells(columns * rows, 0);
    for (int y = 0; y < map.height; ++y) {
        for (int x = 0; x < map.width; ++x) {
            if (map.at(x, y) < kInk || answer(other, from, to, x, y) >= kTrace) continue;
            ++cells[static_cast<std::size_t>(y / kCell) * columns + static_cast<std::size_t>(x / kCell)];
        }
    }
    int most = 0;
    for (std::size_t row = 0; row + 1 < rows; ++row) {
        for (std::size_t i = row * columns; i + 1 < (row + 1) * columns; ++i) most = std::max(most, cells[i] + cells[i + 1] + cells[i + columns] + cells[i + columns + 1]);
    }
    return most;
}

bool sameWhenLaidSo(InkMap const& r, InkMap const& c, Field const& fieldR, Field const& fieldC) {
    return unanswered(r, c, fieldR, fieldC) <= kMostUnanswered && unanswered(c, r, fieldC, fieldR) <= kMostUnanswered;
}

bool similarSize(Field const& a, Field const& b) {
    auto const stretch = [](int p, int q) { return static_cast<double>(std::max(p, q)) / std::max(1, std::min(p, q)); };
    // Two thin lines differ by a pixel.
    auto const alike = [&](int p, int q) { return std::abs(p - q) <= 4 || stretch(p, q) <= kLargestStretch; };
    return alike(a.width(), b.width()) && alike(a.height(), b.height());
}

// White where letters stand: two typefaces are no two drawings.
void blank(Picture& picture, std::vector<model::Rect> const& lettering) {
    constexpr model::Points kAround = 1;
    for (auto const& letters : lettering) {
        auto const box = letters.grown(kAround);
        int const left = std::clamp(picture.column(box.x0), 0, picture.width);
        int const right = std::clamp(picture.column(box.x1), left, picture.width);
        for (int row = std::max(0, picture.row(box.y0)); row < std::min(picture.height, picture.row(box.y1)); ++row) {
            auto const start = picture.rgb.begin() + (static_cast<std::ptrdiff_t>(row) * picture.width + left) * 3;
            std::fill_n(start, static_cast<std::ptrdiff_t>(right - left) * 3, std::uint8_t{255});
        }
    }
}

}  // namespace

DrawingMatch matchPictures(Picture const& reference, Picture const& candidate) {
    auto const r = inkOf(reference);
    auto const c = inkOf(candidate);
    auto const fieldR = inkField(r);
    auto const fieldC = inkField(c);
    if (!fieldR && !fieldC) return DrawingMatch::Same;
    if (!fieldR || !fieldC) return DrawingMatch::Different;
    if (similarSize(*fieldR, *fieldC) && sameWhenLaidSo(r, c, *fieldR, *fieldC)) return DrawingMatch::Same;
    Field const common{0, 0, std::min(r.width, c.width), std::min(r.height, c.height)};
    return sameWhenLaidSo(r, c, common, common) ? DrawingMatch::Same : DrawingMatch::Different;
}

DrawingMatch matchDrawings(DrawingPlace const& reference, DrawingPlace const& candidate) {
    if (reference.pictures == nullptr || candidate.pictures == nullptr) return DrawingMatch::Unknown;
    auto r = reference.pictures->render(reference.page, reference.box, kScale);
    auto c = candidate.pictures->render(candidate.page, candidate.box, kScale);
    if (!r || !c) return DrawingMatch::Unknown;
    blank(*r, reference.lettering);
    blank(*c, candidate.lettering);
    return matchPictures(*r, *c);
}

}  // namespace standin::compare
