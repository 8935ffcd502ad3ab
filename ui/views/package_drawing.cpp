// Tested by tests/ui/views/appearance_test.cpp.
#include "ui/views/package_drawing.h"

#include <algorithm>

#include <QPainter>

#include "ui/models/words.h"
#include "ui/views/appearance.h"
#include "ui/views/panel.h"

namespace standin::ui {

namespace {

constexpr int kFewestForFourSides = 12;

std::vector<PinRow const*> pinsOf(PinsModel const& model, DocumentSide side) {
    std::vector<PinRow const*> pins;
    for (auto const& row : model.rows()) {
        if (!(side == DocumentSide::Reference ? row.referenceName : row.candidateName).isEmpty()) pins.push_back(&row);
    }
    return pins;
}

}  // namespace

PinSides pinSides(int pins, QString const& name) {
    if (pins <= 0) return {};
    bool const fourSides = pins >= kFewestForFourSides && (name.contains(QLatin1String("QFN"), Qt::CaseInsensitive) || name.contains(QLatin1String("QFP"), Qt::CaseInsensitive));
    if (fourSides) {
        int const quarter = pins / 4;
        return {quarter, quarter, quarter, pins - 3 * quarter};
    }
    int const left = (pins + 1) / 2;
    return {left, 0, pins - left, 0};
}

PackageDrawing::PackageDrawing(PinsModel const& pins, DocumentSide side, QWidget* parent) : QWidget(parent), m_pins(pins), m_side(side) {
    setAccessibleName(tr("%1: package with its pins, as in the table below").arg(sideWord(side)));
    connect(&pins, &QAbstractItemModel::modelReset, this, [this] {
        updateGeometry();
        update();
    });
}

QSize PackageDrawing::sizeHint() const {
    int const line = QFontMetrics(font()).lineSpacing();
    auto const names = m_pins.packages(m_side);
    int const chosen = m_pins.chosenPackage(m_side);
    auto const sides = pinSides(static_cast<int>(pinsOf(m_pins, m_side).size()), chosen < names.size() ? names[chosen] : QString{});
    return {line * 18, line * (3 + std::clamp(std::max({sides.left, sides.right, 3}), 3, 12) * 3 / 2 + (sides.bottom > 0 ? 8 : 0))};
}

QSize PackageDrawing::minimumSizeHint() const { return {QFontMetrics(font()).lineSpacing() * 12, QFontMetrics(font()).lineSpacing() * 8}; }

void PackageDrawing::paintEvent(QPaintEvent*) {
    auto const pins = pinsOf(m_pins, m_side);
    auto const& colours = coloursFor(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QFontMetrics const metrics(font());
    int const line = metrics.lineSpacing();
    auto const names = m_pins.packages(m_side);
    int const chosen = m_pins.chosenPackage(m_side);
    QString const package = chosen < names.size() ? names[chosen] : QString{};
    painter.setPen(colours.of(m_side));
    painter.setFont(fontOf(TextSize::Small, QFont::Bold));
    painter.drawText(QRect(0, 0, width(), line), Qt::AlignCenter, QStringLiteral("%1  %2").arg(sideWord(m_side), package));
    if (pins.empty()) {
        painter.setPen(colours.soft);
        painter.setFont(font());
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, tr("No pins were read."));
        return;
    }
    auto const sides = pinSides(static_cast<int>(pins.size()), package);
    double const label = std::min(width() * 0.34, line * 8.0);
    double const over = sides.top > 0 ? line * 4.0 : 0;
    QRectF const body(label, line * 1.5 + over, width() - 2 * label, height() - line * 2.0 - 2 * over);
    painter.setPen(QPen(colours.of(m_side), 2));
    painter.setBrush(colours.paper);
    painter.drawRect(body);
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(body.left() + line * 0.5, body.top() + line * 0.5), line * 0.18, line * 0.18);  // pin 1

    enum class Edge { Left, Bottom, Right, Top };
    auto const draw = [&](PinRow const& pin, Edge edge, double at) {
        QFont const face = fontOf(TextSize::Small, pin.differs ? QFont::Bold : QFont::Normal);
        QFontMetrics const faceMetrics(face);
        QString name = m_side == DocumentSide::Reference ? pin.referenceName : pin.candidateName;
        if (pin.differs) name += QStringLiteral(" ≠");
        painter.setPen(QPen(colours.of(m_side), pin.differs ? 3 : 1.4));
        double const leg = line * 0.5;
        bool const upright = edge == Edge::Bottom || edge == Edge::Top;
        painter.save();
        if (edge == Edge::Left) painter.translate(body.left(), at);
        if (edge == Edge::Right) painter.translate(body.right(), at);
        if (edge == Edge::Bottom) painter.translate(at, body.bottom());
        if (edge == Edge::Top) painter.translate(at, body.top());
        if (upright) painter.rotate(-90);
        // Now the outside lies to the left for Left and Bottom, to the right for Right and Top.
        bool const toLeft = edge == Edge::Left || edge == Edge::Bottom;
        double const sign = toLeft ? -1 : 1;
        painter.drawLine(QPointF(0, 0), QPointF(sign * leg, 0));
        painter.setFont(face);
        painter.setPen(pin.differs ? colours.ink : colours.of(m_side));
        double const room = (upright ? over : label) - leg - 4;
        QRectF const outside(toLeft ? -leg - 3 - room : leg + 3, -line / 2.0, room, line);
        painter.drawText(outside, (toLeft ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter, faceMetrics.elidedText(name, Qt::ElideRight, static_cast<int>(room)));
        painter.setPen(colours.soft);
        painter.setFont(fontOf(TextSize::Small));
        QRectF const inside(toLeft ? 4 : -4 - line * 3.0, -line / 2.0, line * 3.0, line);
        painter.drawText(inside, (toLeft ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter, pin.number);
        painter.restore();
    };
    std::size_t next = 0;
    auto const spread = [](double from, double length, int count, int i) { return from + length * (i + 0.5) / count; };
    for (int i = 0; i < sides.left; ++i) draw(*pins[next++], Edge::Left, spread(body.top(), body.height(), sides.left, i));
    for (int i = 0; i < sides.bottom; ++i) draw(*pins[next++], Edge::Bottom, spread(body.left(), body.width(), sides.bottom, i));
    for (int i = 0; i < sides.right; ++i) draw(*pins[next++], Edge::Right, spread(body.bottom(), -body.height(), sides.right, i));
    for (int i = 0; i < sides.top; ++i) draw(*pins[next++], Edge::Top, spread(body.right(), -body.width(), sides.top, i));
}

}  // namespace standin::ui
