// The limit strip on screen: the same geometry as in the reports.
#pragma once

#include <QPainter>
#include <QRectF>

#include "report/limit_strip.h"
#include "ui/views/appearance.h"

namespace standin::ui {

// Draws `strip` into `area` (logical pixels): the reference as an open bracket
// above, the candidate as a solid bar below, typical values as ticks, an unstated
// bound as a hatched end, the cell's limits as flags that point to the side that
// holds, an arrow at the hazardous side.
void drawLimitStrip(QPainter& painter, QRectF const& area, report::LimitStrip const& strip, Colours const& colours);

}  // namespace standin::ui
