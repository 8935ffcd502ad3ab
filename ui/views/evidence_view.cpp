// Tested by tests/ui/views/evidence_view_test.cpp.
#include "ui/views/evidence_view.h"

#include <algorithm>
#include <cmath>

#include <QPainter>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/appearance.h"

namespace standin::ui {

namespace {

constexpr model::Points kBeside = 14;    // of the page that a cutting shows left and right of the place, at least
constexpr model::Points kAbove = 10;     // and above and below
constexpr double kLargest = 2;           // logical pixels a point: larger letters tell no more
constexpr double kSmallest = 0.75;       // below, only the beginning of the place is shown
constexpr double kFrame = 2;
constexpr int kBurstMs = 25;

}  // namespace

PageCutting::PageCutting(PageDrawer& drawer, DocumentSide side, QWidget* parent) : QWidget(parent), m_drawer(drawer), m_side(side) {
    setMinimumHeight(fontMetrics().height() * 3);
    setAccessibleName(tr("Cutting of the %1").arg(sideWord(side)));
    m_later.setSingleShot(true);
    m_later.setInterval(kBurstMs);
    connect(&m_later, &QTimer::timeout, this, &PageCutting::wish);
    connect(&drawer, &PageDrawer::drawn, this, [this](PictureWish const& wish, PicturePointer const& picture) {
        if (wish != m_wish || m_page == 0) return;
        m_image = QImage(picture->rgb.data(), picture->width, picture->height, picture->width * 3, QImage::Format_RGB888).convertToFormat(QImage::Format_RGB32);
        m_drawn = wish;
        m_shown = picture->box;
        update();
    });
    connect(&drawer, &PageDrawer::failed, this, [this](DocumentSide failed, int page) {
        if (failed != m_side || (page != 0 && page != m_page)) return;
        m_failed = true;
        update();
    });
    connect(&drawer, &PageDrawer::opened, this, [this](DocumentSide opened) {
        if (opened == m_side) m_later.start();
    });
}

PageCutting::~PageCutting() { m_drawer.want(this, {}); }

void PageCutting::setPlace(int page, model::Rect const& box, QString const& text) {
    m_page = page;
    m_box = box;
    m_text = text;
    m_failed = !m_drawer.trouble(m_side).empty();
    setAccessibleDescription(text);
    m_image = {};
    m_drawn = {};
    m_later.start();
    update();
}

// As much of the page as the widget has room for, the place in its middle.
void PageCutting::wish() {
    auto const& pages = m_drawer.pageBoxes(m_side);
    bool const can = isVisible() && m_page >= 1 && static_cast<std::size_t>(m_page) <= pages.size() && !m_failed && width() > 0 && height() > 0;
    if (!can) {
        m_drawer.want(this, {});
        return;
    }
    auto const& page = pages[static_cast<std::size_t>(m_page - 1)];
    auto const box = m_box.empty() ? page : m_box;
    double const byWidth = width() / static_cast<double>(box.width() + 2 * kBeside);
    double const byHeight = height() / static_cast<double>(box.height() + 2 * kAbove);
    double const scale = std::clamp(std::min(byWidth, byHeight), kSmallest, kLargest);
    auto const wide = static_cast<model::Points>(width() / scale);
    auto const high = static_cast<model::Points>(height() / scale);
    // A place that is larger than the room is shown from its beginning.
    auto const start = [](model::Points from, model::Points length, model::Points room, model::Points least, model::Points most, model::Points before) {
        auto const wished = length + 2 * before <= room ? from - (room - length) / 2 : from - before;
        return std::clamp(wished, std::min(least, most - room), std::max(least, most - room));
    };
    model::Rect part;
    part.x0 = start(box.x0, box.width(), wide, page.x0, page.x1, kBeside);
    part.y0 = start(box.y0, box.height(), high, page.y0, page.y1, kAbove);
    part.x1 = part.x0 + wide;
    part.y1 = part.y0 + high;
    PictureWish const now{m_side, m_page, model::intersection(part, page), scale * devicePixelRatioF()};
    if (now == m_drawn) return;
    m_wish = now;
    m_drawer.want(this, {now});
}

QRectF PageCutting::frame() const {
    if (m_image.isNull() || m_box.empty() || m_shown.empty()) return {};
    double const scale = m_drawn.pixelsPerPoint / devicePixelRatioF();
    return QRectF((m_box.x0 - m_shown.x0) * scale, (m_box.y0 - m_shown.y0) * scale, m_box.width() * scale, m_box.height() * scale).adjusted(-kFrame, -kFrame, kFrame, kFrame);
}

void PageCutting::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    auto const& colours = coloursFor(*this);
    if (m_page == 0 || m_failed) {
        painter.setPen(m_page == 0 ? colours.soft : colours.ink);
        painter.drawText(rect().adjusted(6, 2, -6, -2), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_text);
        return;
    }
    if (m_image.isNull()) {  // for the moment until it is drawn
        painter.fillRect(rect(), Qt::white);
        return;
    }
    double const scale = m_drawn.pixelsPerPoint / devicePixelRatioF();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(QRectF(0, 0, m_shown.width() * scale, m_shown.height() * scale), m_image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursFor(QPalette(Qt::white, Qt::white)).of(m_side), kFrame));
    painter.drawRoundedRect(frame(), 2, 2);
}

void PageCutting::resizeEvent(QResizeEvent*) { m_later.start(); }

void PageCutting::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_later.start();
}

void PageCutting::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_drawer.want(this, {});
}

EvidenceView::EvidenceView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    for (auto const side : kSides) {
        auto& made = m_sides[indexOf(side)];
        made.panel = new Panel;
        made.panel->setSide(side);
        made.head = new CutLabel;
        made.head->setFont(fontOf(TextSize::Small, QFont::DemiBold));
        made.cutting = new PageCutting(session.drawer(), side);
        auto* inner = new QVBoxLayout(made.panel);
        inner->setContentsMargins(12, 4, 4, 4);
        inner->setSpacing(2);
        inner->addWidget(made.head);
        inner->addWidget(made.cutting, 1);
        layout->addWidget(made.panel, 1);
    }
    connect(&m_session, &Session::currentFindingChanged, this, &EvidenceView::refresh);
    refresh();
}

void EvidenceView::refresh() {
    auto const* finding = m_session.currentFinding();
    for (auto const side : kSides) {
        auto const& shown = m_sides[indexOf(side)];
        auto const* place = finding != nullptr && sideOf(*finding, side) ? &*sideOf(*finding, side) : nullptr;
        if (place == nullptr) {
            shown.head->setText(sideWord(side));
            shown.cutting->setPlace(0, {}, finding == nullptr ? QString{} : tr("Nothing of it stands in the %1.").arg(sideWord(side)));
        } else {
            shown.head->setText(place->page > 0 ? tr("%1, page %2").arg(sideWord(side)).arg(place->page) : sideWord(side));
            shown.cutting->setPlace(place->page, place->box, shownText(place->text));
        }
    }
}

}  // namespace standin::ui
