// Pictures of pages: the small interface through which reports and desk get
// them without knowing what draws them (extractors/poppler/page_picture.h).
//
// Defines: Picture, PagePictures.
//
//     Result<Picture> cutting = pictures.render(side.page, side.box.grown(6), 2.0);
//     // The place of a box on the picture:
//     int const left = cutting->column(side.box.x0);
//
// Threads: one PagePictures belongs to one thread at a time; several, also of
// the same document, may draw at the same time in different threads.
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

#include "model/geometry.h"
#include "model/result.h"

namespace standin::model {

// Part of a page as pixels: rows from the top, each `width` pixels of three
// bytes red, green, blue, without gaps. The page is drawn on white.
struct Picture {
    int width = 0;
    int height = 0;
    Rect box;  // what it shows, in points of the page: what was asked for, less what lies outside the page
    std::vector<std::uint8_t> rgb;

    bool operator==(Picture const&) const = default;

    // Where a place of the page lies on the picture, in pixels; outside 0 …
    // width and 0 … height for a place that the picture does not show.
    [[nodiscard]] int column(Points x) const { return static_cast<int>(std::lround((x - box.x0) * static_cast<Points>(width) / box.width())); }
    [[nodiscard]] int row(Points y) const { return static_cast<int>(std::lround((y - box.y0) * static_cast<Points>(height) / box.height())); }
};

// The pages of one document.
class PagePictures {
public:
    PagePictures() = default;
    PagePictures(PagePictures const&) = delete;
    PagePictures& operator=(PagePictures const&) = delete;
    virtual ~PagePictures() = default;

    // At least 1.
    [[nodiscard]] virtual int pageCount() const = 0;

    // The page as displayed, from (0, 0) to its width and height in points.
    // Errors: Usage for a page that does not exist, Damaged for one that cannot
    // be read.
    [[nodiscard]] virtual Result<Rect> pageBox(int page) const = 0;

    // Draws the part `box` (points of the page as displayed) of page `page`
    // (from 1), about `pixelsPerPoint` pixels a point. The edges are moved
    // outwards to whole pixels and what lies outside the page is cut off. Bounded:
    // a picture that would have too many pixels is drawn smaller, and a page that
    // draws without end is left as far as it got. Errors: Usage for a page that
    // does not exist, a box that is empty or wholly outside the page, a scale
    // that is no positive number; Damaged for a page that cannot be read.
    [[nodiscard]] virtual Result<Picture> render(int page, Rect const& box, double pixelsPerPoint) = 0;
};

}  // namespace standin::model
