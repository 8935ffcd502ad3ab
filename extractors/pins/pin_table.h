// Pins of one pin table. Private to this folder.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "model/datasheet.h"
#include "model/table.h"

namespace standin::pins {

enum class PinColumn : std::uint8_t { Other, Number, Name, Function, Type };

struct PinColumns {
    std::vector<PinColumn> roles;        // one a column
    std::vector<std::string> packages;   // one a column; of number columns only, else empty
    [[nodiscard]] bool has(PinColumn role) const;
};

// What each column holds, by its title and its content.
[[nodiscard]] PinColumns pinColumnsOf(model::Table const& table);

// One entry for each printed number, row by row; pins of a table without numbers
// have an empty number. Lines that go on with a function are joined to it.
[[nodiscard]] std::vector<model::Pin> pinsOfTable(model::Table const& table, PinColumns const& columns);

// True where the head or the caption says "pin", in any of the languages known.
[[nodiscard]] bool saysPins(model::Table const& table);

// True where numbers repeat with other names in one package, states ("L") without a
// number repeat, or numbers begin at 0: a table of logic states or the like, not of pins.
[[nodiscard]] bool contradictsItself(std::span<model::Pin const> pins);

}  // namespace standin::pins
