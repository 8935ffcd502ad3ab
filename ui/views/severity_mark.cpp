// Tested by tests/ui/views/appearance_test.cpp.
#include "ui/views/severity_mark.h"

#include <algorithm>

#include <QPainterPath>

namespace standin::ui {

void drawSeverityMark(QPainter& painter, QRectF const& area, model::Severity severity, QColor const& ink, MarkFill fill) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    double const side = std::min(area.width(), area.height());
    double const stroke = std::max(1.4, side / 11);
    QRectF box(area.center().x() - side / 2, area.center().y() - side / 2, side, side);
    box.adjust(stroke, stroke, -stroke, -stroke);
    painter.setPen(QPen(ink, stroke, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
    painter.setBrush(fill == MarkFill::Solid ? QBrush(ink) : QBrush(Qt::NoBrush));
    switch (severity) {
        case model::Severity::Hazard: {
            QPainterPath triangle(QPointF(box.center().x(), box.top()));
            triangle.lineTo(box.bottomRight());
            triangle.lineTo(box.bottomLeft());
            triangle.closeSubpath();
            painter.drawPath(triangle);
            break;
        }
        case model::Severity::Function: painter.drawRect(box.adjusted(stroke / 2, stroke / 2, -stroke / 2, -stroke / 2)); break;
        case model::Severity::Margin: painter.drawEllipse(box); break;
        case model::Severity::Note: painter.drawLine(box.bottomLeft(), box.bottomRight()); break;
        case model::Severity::Editorial:
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink);
            for (double const at : {0.1, 0.5, 0.9}) painter.drawEllipse(QPointF(box.left() + box.width() * at, box.bottom()), stroke, stroke);
            break;
    }
    painter.restore();
}

}  // namespace standin::ui
