// Tested by tests/ui/models/page_stack_test.cpp.
#include "ui/models/page_stack.h"

#include <algorithm>
#include <cmath>

namespace standin::ui {

namespace {

constexpr double kGap = 10;     // pixels between pages
constexpr double kMargin = 8;   // around all of them
constexpr model::Rect kUsualPage{0, 0, 595, 842};

}  // namespace

void PageStack::setPages(std::vector<model::Rect> boxes) {
    m_boxes = std::move(boxes);
    for (auto& box : m_boxes) {
        if (box.empty()) box = kUsualPage;
    }
    arrange();
}

void PageStack::setZoom(double pixelsPerPoint) {
    m_zoom = std::clamp(pixelsPerPoint, kSmallestZoom, kLargestZoom);
    arrange();
}

void PageStack::setRoom(double width) {
    if (width == m_room) return;
    m_room = width;
    arrange();
}

QSizeF PageStack::turnedSize(int page) const {
    QSizeF const size(boxOf(page).width(), boxOf(page).height());
    return m_quarters % 2 == 0 ? size : size.transposed();
}

void PageStack::arrange() {
    m_rects.clear();
    double widest = 0;
    for (int page = 1; page <= pageCount(); ++page) widest = std::max(widest, turnedSize(page).width() * m_zoom);
    double const width = std::max(widest + 2 * kMargin, m_room);
    double y = kMargin;
    for (int page = 1; page <= pageCount(); ++page) {
        auto const size = turnedSize(page) * m_zoom;
        m_rects.emplace_back(std::floor((width - size.width()) / 2), y, size.width(), size.height());
        y = std::ceil(y + size.height() + kGap);
    }
    m_size = m_rects.empty() ? QSizeF{} : QSizeF(width, y - kGap + kMargin);
}

int PageStack::pageAt(double y) const {
    auto const found = std::upper_bound(m_rects.begin(), m_rects.end(), y, [](double height, QRectF const& rect) { return height < rect.bottom() + kGap / 2; });
    auto const index = found - m_rects.begin();
    return std::min(static_cast<int>(index) + 1, pageCount());
}

QRectF PageStack::toStack(int page, model::Rect const& box) const {
    auto const& whole = boxOf(page);
    auto const rect = rectOf(page);
    double const left = (box.x0 - whole.x0) * m_zoom;
    double const top = (box.y0 - whole.y0) * m_zoom;
    double const right = (box.x1 - whole.x0) * m_zoom;
    double const bottom = (box.y1 - whole.y0) * m_zoom;
    switch (m_quarters) {
        case 1: return {rect.right() - bottom, rect.top() + left, bottom - top, right - left};
        case 2: return {rect.right() - right, rect.bottom() - bottom, right - left, bottom - top};
        case 3: return {rect.left() + top, rect.bottom() - right, bottom - top, right - left};
        default: return {rect.left() + left, rect.top() + top, right - left, bottom - top};
    }
}

std::optional<PagePoint> PageStack::toPage(QPointF pixel) const {
    int const page = pageAt(pixel.y());
    if (page < 1 || !rectOf(page).contains(pixel)) return std::nullopt;
    return PagePoint{page, nearestOn(page, pixel)};
}

model::Point PageStack::nearestOn(int page, QPointF pixel) const {
    auto const& whole = boxOf(page);
    auto const rect = rectOf(page);
    double const x = std::clamp(pixel.x(), rect.left(), rect.right()) - rect.left();
    double const y = std::clamp(pixel.y(), rect.top(), rect.bottom()) - rect.top();
    double across = x;
    double down = y;
    switch (m_quarters) {
        case 1: across = y; down = rect.width() - x; break;
        case 2: across = rect.width() - x; down = rect.height() - y; break;
        case 3: across = rect.height() - y; down = x; break;
        default: break;
    }
    return {whole.x0 + static_cast<model::Points>(across / m_zoom), whole.y0 + static_cast<model::Points>(down / m_zoom)};
}

double PageStack::zoomForWidth(double width) const {
    double widest = 0;
    for (int page = 1; page <= pageCount(); ++page) widest = std::max(widest, turnedSize(page).width());
    return widest > 0 ? std::clamp((width - 2 * kMargin) / widest, kSmallestZoom, kLargestZoom) : m_zoom;
}

double PageStack::zoomForPage(int page, QSizeF room) const {
    if (page < 1 || page > pageCount()) return m_zoom;
    auto const size = turnedSize(page);
    return std::clamp(std::min((room.width() - 2 * kMargin) / size.width(), (room.height() - 2 * kMargin) / size.height()), kSmallestZoom, kLargestZoom);
}

}  // namespace standin::ui
