// The shapes of severity: triangle, square, circle, line, dots. Each stands with
// its word; none depends on colour.
#pragma once

#include <QPainter>
#include <QRectF>

#include "model/comparison.h"

namespace standin::ui {

enum class MarkFill { Outline, Solid };

// Draws the shape of `severity` into `area` (logical pixels) with the painter's
// pen colour `ink`.
void drawSeverityMark(QPainter& painter, QRectF const& area, model::Severity severity, QColor const& ink, MarkFill fill = MarkFill::Outline);

}  // namespace standin::ui
