// Puts the pages of the PDF report on paper.
#pragma once

#include <string>

#include "model/result.h"

class QPrinter;

namespace standin::ui {

// Draws every page of `pdf` (bytes of the PDF report), scaled to fit. Errors:
// Unsupported where the bytes cannot be drawn, Unreadable where the printer
// cannot be started.
[[nodiscard]] model::Result<void> printPages(std::string pdf, QPrinter& printer);

}  // namespace standin::ui
