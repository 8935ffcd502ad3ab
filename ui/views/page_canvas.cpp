// Pictures of whole pages are kept up to a bound, those looked at last; wishes are
// told anew after each move, so that pages that were scrolled past are never drawn.
//
// Tested by tests/ui/views/pages_view_test.cpp.
#include "ui/views/page_canvas.h"

#include <algorithm>
#include <cmath>

#include <QApplication>
#include <QClipboard>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/appearance.h"

namespace standin::ui {

namespace {

constexpr std::size_t kMostBytes = std::size_t{40} << 20;  // of pictures a document; what is in view is kept all the same
constexpr double kMostPixels = 6e6;                        // of one picture; a larger page is stretched
constexpr int kBurstMs = 25;
constexpr double kZoomStep = 1.2;
constexpr int kDragPixels = 4;
constexpr double kThick = 2.5;
constexpr double kAround = 2;          // most pixels between a place and its frame
constexpr double kAroundPoints = 1.5;  // and of the page, so that frames of lines keep apart in a small picture
constexpr double kBarWidth = 2;
constexpr int kBarAlpha = 120;

}  // namespace

PageCanvas::PageCanvas(PageDrawer& drawer, DocumentSide side, QWidget* parent) : QAbstractScrollArea(parent), m_drawer(drawer), m_side(side) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // so that fitting the width does not chase it
    viewport()->setCursor(Qt::IBeamCursor);
    setAccessibleName(tr("Pages of the %1").arg(sideWord(side)));
    m_wish.setSingleShot(true);
    m_wish.setInterval(kBurstMs);
    connect(&m_wish, &QTimer::timeout, this, &PageCanvas::wish);
    connect(&drawer, &PageDrawer::opened, this, [this](DocumentSide opened) {
        if (opened == m_side) takePages();
    });
    connect(&drawer, &PageDrawer::drawn, this, &PageCanvas::takePicture);
    connect(&drawer, &PageDrawer::failed, this, [this](DocumentSide failed, int page) {
        if (failed != m_side) return;
        m_failed.insert(page);
        viewport()->update();
    });
    takePages();
}

PageCanvas::~PageCanvas() { m_drawer.want(this, {}); }

void PageCanvas::setPlaces(ReadPlaces places) {
    m_places = std::move(places);
    m_chosen.clear();
    m_kept.clear();
    m_failed.clear();
    takePages();
}

void PageCanvas::setMarks(std::vector<PageMark> marks) {
    m_marks = std::move(marks);
    viewport()->update();
}

void PageCanvas::takePages() {
    // The pages of a document that is read again come back; what was in view stays.
    if (auto const& boxes = m_drawer.pageBoxes(m_side); !boxes.empty()) m_stack.setPages(boxes);
    refit();
    m_wish.start();
}

void PageCanvas::setFit(Fit fit) {
    m_fit = fit;
    refit();
}

void PageCanvas::refit() {
    int const page = currentPage();
    double const inPage = page > 0 ? (offset().y() - m_stack.rectOf(page).top()) / m_stack.zoom() : 0;
    auto const room = viewport()->size();
    double const before = m_stack.zoom();
    if (m_fit == Fit::Width) m_stack.setZoom(m_stack.zoomForWidth(room.width()));
    if (m_fit == Fit::Page && page > 0) m_stack.setZoom(m_stack.zoomForPage(page, room));
    arrangeScrolling();
    if (page > 0 && before != m_stack.zoom()) {
        verticalScrollBar()->setValue(static_cast<int>(m_fit == Fit::Page ? m_stack.rectOf(page).top() - 8 : m_stack.rectOf(page).top() + inPage * m_stack.zoom()));
        Q_EMIT zoomChanged(m_stack.zoom());
    }
    viewport()->update();
    m_wish.start();
}

void PageCanvas::arrangeScrolling() {
    auto const room = viewport()->size();
    m_stack.setRoom(room.width());
    auto const size = m_stack.size();
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::lround(size.width())) - room.width()));
    horizontalScrollBar()->setPageStep(room.width());
    horizontalScrollBar()->setSingleStep(fontMetrics().height() * 2);
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(size.height())) - room.height()));
    verticalScrollBar()->setPageStep(room.height() * 9 / 10);
    verticalScrollBar()->setSingleStep(fontMetrics().height() * 3);
}

void PageCanvas::setZoom(double pixelsPerPoint) {
    m_fit = Fit::Free;
    if (m_stack.pageCount() == 0) return;
    auto const middle = QPointF(viewport()->width(), viewport()->height()) / 2;
    auto const at = offset() + middle;
    int const page = m_stack.pageAt(at.y());
    auto const point = m_stack.nearestOn(page, at);
    m_stack.setZoom(pixelsPerPoint);
    arrangeScrolling();
    auto const now = m_stack.toStack(page, {point.x, point.y, point.x, point.y}).topLeft() - middle;
    horizontalScrollBar()->setValue(static_cast<int>(now.x()));
    verticalScrollBar()->setValue(static_cast<int>(now.y()));
    viewport()->update();
    Q_EMIT zoomChanged(m_stack.zoom());
    m_wish.start();
}

void PageCanvas::turn() {
    int const page = currentPage();
    m_stack.turn();
    refit();
    if (page > 0) goToPage(page);
}

QPointF PageCanvas::offset() const { return {static_cast<double>(horizontalScrollBar()->value()), static_cast<double>(verticalScrollBar()->value())}; }

int PageCanvas::currentPage() const { return m_stack.pageAt(offset().y() + viewport()->height() / 3.0); }

void PageCanvas::goToPage(int page) {
    if (page < 1 || page > m_stack.pageCount()) return;
    verticalScrollBar()->setValue(static_cast<int>(m_stack.rectOf(page).top()) - 8);
}

void PageCanvas::showPlace(int page, model::Rect const& box) {
    if (page < 1 || page > m_stack.pageCount()) return;
    auto const place = m_stack.toStack(page, box);
    auto const room = QSizeF(viewport()->size());
    auto const view = QRectF(offset(), room);
    if (view.contains(place)) return;
    auto const start = [](double from, double length, double space) { return static_cast<int>(length < space ? from + (length - space) / 2 : from - 8); };
    verticalScrollBar()->setValue(start(place.top(), place.height(), room.height()));
    if (place.left() < view.left() || place.right() > view.right()) horizontalScrollBar()->setValue(start(place.left(), place.width(), room.width()));
}

void PageCanvas::choose(std::vector<std::size_t> places) {
    m_chosen = std::move(places);
    viewport()->update();
}

std::size_t PageCanvas::pictureBytes() const {
    std::size_t bytes = 0;
    for (auto const& kept : m_kept) bytes += static_cast<std::size_t>(kept.image.sizeInBytes());
    return bytes;
}

bool PageCanvas::isSharp(int page) const {
    auto const* picture = bestPicture(page);
    return picture != nullptr && picture->scale == pictureScale(page);
}

QRect PageCanvas::placeOnViewport(int page, model::Rect const& box) const { return m_stack.toStack(page, box).translated(-offset()).toRect(); }

double PageCanvas::pictureScale(int page) const {
    double const scale = m_stack.zoom() * devicePixelRatioF();
    auto const& box = m_stack.boxOf(page);
    double const pixels = static_cast<double>(box.area()) * scale * scale;
    return pixels > kMostPixels ? scale * std::sqrt(kMostPixels / pixels) : scale;
}

PageCanvas::Kept const* PageCanvas::bestPicture(int page) const {
    Kept const* best = nullptr;
    double const wanted = pictureScale(page);
    for (auto const& kept : m_kept) {
        if (kept.page != page) continue;
        if (best == nullptr || std::abs(kept.scale - wanted) < std::abs(best->scale - wanted)) best = &kept;
    }
    return best;
}

std::pair<int, int> PageCanvas::visiblePages() const {
    if (m_stack.pageCount() == 0) return {1, 0};
    double const top = offset().y();
    return {m_stack.pageAt(top), m_stack.pageAt(top + viewport()->height())};
}

// In view first, then the next page and the one before.
void PageCanvas::wish() {
    std::vector<PictureWish> wishes;
    if (isVisible()) {
        auto const [first, last] = visiblePages();
        auto const add = [&](int page) {
            if (page < 1 || page > m_stack.pageCount() || m_failed.count(page) > 0 || isSharp(page)) return;
            wishes.push_back({m_side, page, m_stack.boxOf(page), pictureScale(page)});
        };
        for (int page = first; page <= last; ++page) add(page);
        add(last + 1);
        add(first - 1);
    }
    m_drawer.want(this, std::move(wishes));
    if (int const page = currentPage(); page != m_toldPage) {
        m_toldPage = page;
        Q_EMIT pageChanged(page);
    }
}

void PageCanvas::takePicture(PictureWish const& wish, PicturePointer const& picture) {
    // The drawer serves other views too: those wish for parts of pages or other sizes.
    if (wish.side != m_side || wish.page > m_stack.pageCount() || wish.box != m_stack.boxOf(wish.page)) return;
    QImage const image(picture->rgb.data(), picture->width, picture->height, picture->width * 3, QImage::Format_RGB888);
    m_kept.remove_if([&](auto const& kept) { return kept.page == wish.page; });
    m_kept.push_front({wish.page, wish.pixelsPerPoint, image.convertToFormat(QImage::Format_RGB32)});
    auto const [first, last] = visiblePages();
    for (auto kept = m_kept.end(); pictureBytes() > kMostBytes && kept != m_kept.begin();) {
        --kept;
        if (kept->page < first || kept->page > last) kept = m_kept.erase(kept);
    }
    viewport()->update();
}

void PageCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    auto const& colours = coloursFor(*this);
    painter.fillRect(viewport()->rect(), colours.ground);
    if (auto const& trouble = m_drawer.trouble(m_side); !trouble.empty()) {
        painter.setPen(colours.ink);
        painter.drawText(viewport()->rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, tr("The pages cannot be shown. %1").arg(shownText(trouble)));
        return;
    }
    auto const [first, last] = visiblePages();
    painter.translate(-offset());
    for (int page = first; page <= last; ++page) {
        paintPage(painter, page);
        paintMarks(painter, page);
    }
}

void PageCanvas::paintPage(QPainter& painter, int page) {
    auto const rect = m_stack.rectOf(page);
    auto const& colours = coloursFor(*this);
    painter.fillRect(rect, Qt::white);
    painter.setPen(colours.edge);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect.adjusted(-1, -1, 0, 0));
    if (m_failed.count(page) > 0) {
        painter.setPen(Qt::black);
        painter.drawText(rect.adjusted(16, 16, -16, -16), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, tr("Page %1 cannot be drawn; what was read of it is listed all the same.").arg(page));
        return;
    }
    auto const* picture = bestPicture(page);
    if (picture == nullptr) return;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform, m_stack.quarters() != 0 || !isSharp(page));
    painter.translate(rect.center());
    painter.rotate(90 * m_stack.quarters());
    auto const size = m_stack.quarters() % 2 == 0 ? rect.size() : rect.size().transposed();
    painter.drawImage(QRectF(QPointF(-size.width() / 2, -size.height() / 2), size), picture->image);
    painter.restore();
}

// Always over white paper: the colours of the light appearance.
void PageCanvas::paintMarks(QPainter& painter, int page) {
    auto const& colours = coloursFor(QPalette(Qt::white, Qt::white));
    QColor tint = colours.of(m_side);
    tint.setAlpha(34);
    QColor bar = colours.of(m_side);
    bar.setAlpha(kBarAlpha);
    double const around = std::min(kAround, kAroundPoints * m_stack.zoom());
    for (auto const index : m_chosen) {
        if (m_places[index].page == page) painter.fillRect(m_stack.toStack(page, m_places[index].box), QColor(20, 90, 160, 60));
    }
    for (auto const& mark : m_marks) {
        if (mark.page != page) continue;
        auto const frame = m_stack.toStack(page, mark.box).adjusted(-around, -around, around, around);
        switch (mark.style) {
            case MarkStyle::Finding: painter.setPen(QPen(colours.of(m_side), 1)); break;
            case MarkStyle::Editorial: painter.fillRect(QRectF(frame.left() - kBarWidth, frame.top(), kBarWidth, frame.height()), bar); continue;
            case MarkStyle::Current:
                painter.fillRect(frame, tint);
                painter.setPen(QPen(colours.of(m_side), kThick));
                break;
            case MarkStyle::Pointed: painter.setPen(QPen(Qt::black, 1.5, Qt::DashLine)); break;
        }
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(frame);
    }
}

void PageCanvas::resizeEvent(QResizeEvent*) { refit(); }

void PageCanvas::showEvent(QShowEvent* event) {
    QAbstractScrollArea::showEvent(event);
    m_wish.start();
}

void PageCanvas::hideEvent(QHideEvent* event) {
    QAbstractScrollArea::hideEvent(event);
    m_drawer.want(this, {});
}

void PageCanvas::scrollContentsBy(int, int) {
    viewport()->update();
    m_wish.start();
}

void PageCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    m_pressed = event->position() + offset();
    m_dragging = false;
}

void PageCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (!m_pressed) return;
    auto const now = event->position() + offset();
    if (!m_dragging && (now - *m_pressed).manhattanLength() < kDragPixels) return;
    m_dragging = true;
    chooseBetween(*m_pressed, now);
}

void PageCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_pressed) return;
    auto const at = m_stack.pageCount() > 0 ? m_stack.toPage(*m_pressed) : std::nullopt;
    m_pressed.reset();
    if (m_dragging || !at) return;
    choose({});
    Q_EMIT clicked(at->page, at->point);
}

// The frame between two points; over several pages, all that lies between.
void PageCanvas::chooseBetween(QPointF from, QPointF to) {
    if (m_stack.pageCount() == 0) return;
    if (to.y() < from.y()) std::swap(from, to);
    int const first = m_stack.pageAt(from.y());
    int const last = m_stack.pageAt(to.y());
    std::vector<std::size_t> chosen;
    for (int page = first; page <= last; ++page) {
        auto const& whole = m_stack.boxOf(page);
        auto const a = page == first ? m_stack.nearestOn(page, from) : model::Point{whole.x0, whole.y0};
        auto const b = page == last ? m_stack.nearestOn(page, to) : model::Point{whole.x1, whole.y1};
        model::Rect frame{std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
        if (first != last) {
            frame.x0 = whole.x0;
            frame.x1 = whole.x1;
        }
        auto const on = m_places.within(page, frame);
        chosen.insert(chosen.end(), on.begin(), on.end());
    }
    choose(std::move(chosen));
}

void PageCanvas::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier) {
        zoomBy(std::pow(kZoomStep, event->angleDelta().y() / 120.0));
        event->accept();
        return;
    }
    QAbstractScrollArea::wheelEvent(event);
}

void PageCanvas::keyPressEvent(QKeyEvent* event) {
    auto* bar = verticalScrollBar();
    if (event->matches(QKeySequence::Copy)) {
        if (auto const text = chosenText(); !text.isEmpty()) QApplication::clipboard()->setText(text);
        return;
    }
    if (event->matches(QKeySequence::SelectAll)) {
        if (int const page = currentPage(); page > 0) choose(m_places.within(page, m_stack.boxOf(page)));
        return;
    }
    switch (event->key()) {
        case Qt::Key_Home: bar->setValue(bar->minimum()); break;
        case Qt::Key_End: bar->setValue(bar->maximum()); break;
        case Qt::Key_Space: bar->triggerAction(event->modifiers() & Qt::ShiftModifier ? QScrollBar::SliderPageStepSub : QScrollBar::SliderPageStepAdd); break;
        case Qt::Key_N: goToPage(currentPage() + 1); break;
        case Qt::Key_P: goToPage(currentPage() - 1); break;
        case Qt::Key_Plus:
        case Qt::Key_Equal: zoomBy(kZoomStep); break;
        case Qt::Key_Minus: zoomBy(1 / kZoomStep); break;
        case Qt::Key_W: setFit(Fit::Width); break;
        case Qt::Key_G: setFit(Fit::Page); break;
        case Qt::Key_R: turn(); break;
        default: QAbstractScrollArea::keyPressEvent(event);
    }
}

}  // namespace standin::ui
