// Pins out of pin tables and, where a sheet has none, out of the drawing of the
// package (names beside numbers around an outline).
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

struct PinReading {
    std::vector<model::Pin> pins;
    std::vector<model::PlacedText> unread;  // what is printed of pins and was not read (Coverage::unreadPins)
};

// In the order of the table; one entry for each printed number, `package` set
// where the sheet has several. Reads tables of kind Pins; changes nothing.
[[nodiscard]] PinReading readPins(std::span<model::Table const> tables, std::span<model::PageLayout const> pages, std::span<model::Section const> sections);

}  // namespace standin::pins
