// Places on a page. One coordinate system everywhere outside the Poppler door:
// points (1/72 inch), origin at the top left of the page as displayed (crop box
// and rotation applied), x to the right, y down.
//
//     Rect cell{100, 50, 160, 62};
//     if (cell.contains(word.box.centre())) { ... }
#pragma once

#include <algorithm>

namespace standin::model {

using Points = float;  // a length or coordinate, 1/72 inch

struct Point {
    Points x = 0;
    Points y = 0;
    bool operator==(Point const&) const = default;
};

// Closed rectangle with x0 <= x1 and y0 <= y1. The default is empty.
struct Rect {
    Points x0 = 0;
    Points y0 = 0;
    Points x1 = 0;
    Points y1 = 0;

    bool operator==(Rect const&) const = default;

    [[nodiscard]] Points width() const { return x1 - x0; }
    [[nodiscard]] Points height() const { return y1 - y0; }
    [[nodiscard]] Points area() const { return width() * height(); }
    [[nodiscard]] bool empty() const { return x1 <= x0 || y1 <= y0; }
    [[nodiscard]] Point centre() const { return {(x0 + x1) / 2, (y0 + y1) / 2}; }
    [[nodiscard]] bool contains(Point p) const { return p.x >= x0 && p.x <= x1 && p.y >= y0 && p.y <= y1; }
    [[nodiscard]] bool contains(Rect const& r) const { return r.x0 >= x0 && r.x1 <= x1 && r.y0 >= y0 && r.y1 <= y1; }
    [[nodiscard]] bool intersects(Rect const& r) const { return r.x0 < x1 && x0 < r.x1 && r.y0 < y1 && y0 < r.y1; }
    [[nodiscard]] Rect grown(Points by) const { return {x0 - by, y0 - by, x1 + by, y1 + by}; }
};

// Smallest rectangle around both; an all-zero rectangle counts as "nothing yet".
[[nodiscard]] inline Rect united(Rect const& a, Rect const& b) {
    if (a == Rect{}) return b;
    if (b == Rect{}) return a;
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

// Common part; empty() where the two do not meet.
[[nodiscard]] inline Rect intersection(Rect const& a, Rect const& b) {
    return {std::max(a.x0, b.x0), std::max(a.y0, b.y0), std::min(a.x1, b.x1), std::min(a.y1, b.y1)};
}

// Length of the common part of two one-dimensional ranges; negative: the gap.
[[nodiscard]] inline Points overlap(Points a0, Points a1, Points b0, Points b1) {
    return std::min(a1, b1) - std::max(a0, b0);
}

}  // namespace standin::model
