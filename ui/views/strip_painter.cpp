// Positions 0 … 1 of report::LimitStrip over the axis; the room left and right of
// it is for the arrows. Tested by tests/ui/views/appearance_test.cpp.
#include "ui/views/strip_painter.h"

#include <algorithm>

#include <QPainterPath>

namespace standin::ui {

namespace {

constexpr double kArrowRoom = 14;  // logical pixels on each side of the axis
constexpr double kFade = 0.08;     // of the axis: how far an unstated bound is drawn
constexpr double kFlagLength = 7, kFlagHeight = 6;

struct Extent {
    double left, right;
};

// Where the drawn extent ends: the bound, or a little beyond what else is stated.
Extent extentOf(report::StripInterval const& interval) {
    double low = 1;
    double high = 0;
    for (auto const& position : {interval.lo, interval.typ, interval.hi}) {
        if (!position) continue;
        low = std::min(low, *position);
        high = std::max(high, *position);
    }
    return {interval.lo ? *interval.lo : std::max(0.0, low - kFade), interval.hi ? *interval.hi : std::min(1.0, high + kFade)};
}

}  // namespace

void drawLimitStrip(QPainter& painter, QRectF const& area, report::LimitStrip const& strip, Colours const& colours) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QRectF const axis = area.adjusted(kArrowRoom, 0.5, -kArrowRoom, -0.5);
    auto const x = [&](double position) { return axis.left() + axis.width() * position; };
    painter.setPen(QPen(colours.edge, 1));
    painter.setBrush(colours.ground);
    painter.drawRect(axis);

    double const top = axis.top() + axis.height() * 0.12;
    double const bottom = axis.top() + axis.height() * 0.48;
    double const middle = (top + bottom) / 2;
    auto const reference = extentOf(strip.reference);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.reference, 1, Qt::DotLine));
    painter.drawLine(QPointF(x(reference.left), middle), QPointF(x(reference.right), middle));
    painter.setPen(QPen(colours.reference, 2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    auto const bracket = [&](double at, double inwards) {
        QPainterPath path(QPointF(at + inwards, top));
        path.lineTo(at, top);
        path.lineTo(at, bottom);
        path.lineTo(at + inwards, bottom);
        painter.drawPath(path);
    };
    if (strip.reference.lo) bracket(x(reference.left), 5);
    if (strip.reference.hi) bracket(x(reference.right), -5);
    if (strip.reference.typ) painter.drawLine(QPointF(x(*strip.reference.typ), top), QPointF(x(*strip.reference.typ), bottom));

    auto const candidate = extentOf(strip.candidate);
    QRectF bar(x(candidate.left), axis.top() + axis.height() * 0.60, std::max(2.0, x(candidate.right) - x(candidate.left)), axis.height() * 0.27);
    double const solidLeft = strip.candidate.lo ? bar.left() : x(candidate.left + kFade);
    double const solidRight = strip.candidate.hi ? bar.right() : x(candidate.right - kFade);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush(colours.candidate, Qt::BDiagPattern));
    painter.drawRect(bar);
    painter.setBrush(colours.candidate);
    if (solidRight > solidLeft || (strip.candidate.lo && strip.candidate.hi)) painter.drawRect(QRectF(solidLeft, bar.top(), std::max(2.0, solidRight - solidLeft), bar.height()));
    if (strip.candidate.typ) {
        painter.setPen(QPen(colours.ground, 3));
        double const at = x(*strip.candidate.typ);
        painter.drawLine(QPointF(at, bar.top() - 1), QPointF(at, bar.bottom() + 1));
        painter.setPen(QPen(colours.candidate, 1.2));
        painter.drawLine(QPointF(at, bar.top() - 3), QPointF(at, bar.bottom() + 3));
    }

    for (auto const& flag : strip.flags) {
        double const at = x(flag.at);
        double const tip = flag.side == report::CellSide::Most ? at - kFlagLength : at + kFlagLength;
        painter.setPen(QPen(colours.ink, 1));
        painter.drawLine(QPointF(at, axis.top()), QPointF(at, axis.bottom()));
        QPainterPath cloth(QPointF(at, axis.top()));
        cloth.lineTo(tip, axis.top() + kFlagHeight / 2);
        cloth.lineTo(at, axis.top() + kFlagHeight);
        cloth.closeSubpath();
        painter.fillPath(cloth, colours.ink);
    }

    auto const arrow = [&](double at, double direction) {
        QPainterPath path(QPointF(at, axis.center().y() - 6));
        path.lineTo(at + 9 * direction, axis.center().y());
        path.lineTo(at, axis.center().y() + 6);
        path.closeSubpath();
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours.ink);
        painter.drawPath(path);
    };
    using model::HazardSide;
    if (strip.hazardSide == HazardSide::Higher || strip.hazardSide == HazardSide::Both) arrow(axis.right() + 3, 1);
    if (strip.hazardSide == HazardSide::Lower || strip.hazardSide == HazardSide::Both) arrow(axis.left() - 3, -1);
    painter.restore();
}

}  // namespace standin::ui
