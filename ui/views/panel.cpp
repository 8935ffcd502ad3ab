// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/panel.h"

#include <QApplication>
#include <QPainter>
#include <QStyle>

#include "ui/views/appearance.h"

namespace standin::ui {

namespace {

constexpr int kSideBar = 5;  // logical pixels
constexpr int kCorner = 4;

}  // namespace

Panel::Panel(QWidget* parent) : QFrame(parent) {}

void Panel::setSide(DocumentSide side) {
    m_side = side;
    update();
}

void Panel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    auto const& colours = coloursFor(*this);
    painter.setPen(QPen(m_side ? colours.of(*m_side) : colours.edge, 1));
    painter.setBrush(colours.paper);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), kCorner, kCorner);
    if (m_side) painter.fillRect(QRect(0, kCorner / 2, kSideBar, height() - kCorner), colours.of(*m_side));
}

CutLabel::CutLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

QSize CutLabel::minimumSizeHint() const { return {fontMetrics().height() * 2, QLabel::minimumSizeHint().height()}; }

QFont CutLabel::fitting() const {
    QFont face = font();
    if (!m_smallest) return face;
    while (face.pointSizeF() > m_smallest->pointSizeF() && QFontMetrics(face).horizontalAdvance(text()) > width()) face.setPointSizeF(face.pointSizeF() - 0.5);
    return face;
}

void CutLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QFont const face = fitting();
    painter.setFont(face);
    painter.setPen(palette().color(foregroundRole()));
    painter.drawText(rect(), static_cast<int>(alignment()), QFontMetrics(face).elidedText(text(), Qt::ElideRight, width()));
}

void CutLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    setToolTip(QFontMetrics(fitting()).horizontalAdvance(text()) > width() ? text().toHtmlEscaped() : QString{});
}

QFont fontOf(TextSize size, QFont::Weight weight) {
    QFont font = QApplication::font();
    double const points = font.pointSizeF() > 0 ? font.pointSizeF() : 10;
    switch (size) {
        case TextSize::Small: font.setPointSizeF(points * 0.9); break;
        case TextSize::Normal: break;
        case TextSize::Large: font.setPointSizeF(points * 1.2); break;
        case TextSize::Huge: font.setPointSizeF(points * 1.6); break;
    }
    font.setWeight(weight);
    return font;
}

void makeSoft(QWidget& widget) { widget.setForegroundRole(QPalette::PlaceholderText); }

}  // namespace standin::ui
