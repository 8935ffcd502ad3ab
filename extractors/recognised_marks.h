// What rests on recognised words is marked as such. Private to reading.
#pragma once

#include <span>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::reading {

// Lists every recognised line, and every place that was not made out, in the
// coverage; marks pins and sentences; lowers the confidence of parameters below what printed
// rows have and says why.
void markRecognised(std::span<model::PageLayout const> pages, model::Datasheet& sheet);

}  // namespace standin::reading
