// Where pages stand when they are shown one below the other: zoom, turn, and the
// way between points of a page and pixels of the stack. No widgets.
//
//     PageStack stack;
//     stack.setPages(boxes);
//     stack.setZoom(stack.zoomForWidth(700));
//     auto const frame = stack.toStack(3, place.box);
#pragma once

#include <optional>
#include <vector>

#include <QRectF>

#include "model/geometry.h"

namespace standin::ui {

inline constexpr double kSmallestZoom = 0.1;  // pixels a point
inline constexpr double kLargestZoom = 6;

struct PagePoint {
    int page = 0;  // from 1
    model::Point point;
};

class PageStack {
public:
    // In points; a page whose box is empty (it cannot be read) gets room as A4.
    void setPages(std::vector<model::Rect> boxes);
    void setZoom(double pixelsPerPoint);
    // By 90 degrees clockwise from how the page is displayed.
    void turn() { m_quarters = (m_quarters + 1) % 4; arrange(); }
    // Pages narrower than this stand in its middle.
    void setRoom(double width);

    [[nodiscard]] int pageCount() const { return static_cast<int>(m_boxes.size()); }
    [[nodiscard]] double zoom() const { return m_zoom; }
    [[nodiscard]] int quarters() const { return m_quarters; }
    [[nodiscard]] model::Rect const& boxOf(int page) const { return m_boxes[static_cast<std::size_t>(page - 1)]; }
    [[nodiscard]] QSizeF size() const { return m_size; }
    [[nodiscard]] QRectF rectOf(int page) const { return m_rects[static_cast<std::size_t>(page - 1)]; }
    // The page at a height, the nearest one between pages; 0: there are none.
    [[nodiscard]] int pageAt(double y) const;

    [[nodiscard]] QRectF toStack(int page, model::Rect const& box) const;
    // The point of a page under a pixel; none beside the pages.
    [[nodiscard]] std::optional<PagePoint> toPage(QPointF pixel) const;
    // The nearest point of a page, for a frame that is dragged beyond it.
    [[nodiscard]] model::Point nearestOn(int page, QPointF pixel) const;

    // So that the widest page fits, or page `page` as a whole.
    [[nodiscard]] double zoomForWidth(double width) const;
    [[nodiscard]] double zoomForPage(int page, QSizeF room) const;

private:
    void arrange();
    // Width and height of a page in points as it is turned.
    [[nodiscard]] QSizeF turnedSize(int page) const;

    std::vector<model::Rect> m_boxes;
    std::vector<QRectF> m_rects;
    QSizeF m_size;
    double m_zoom = 1;
    double m_room = 0;
    int m_quarters = 0;
};

}  // namespace standin::ui
