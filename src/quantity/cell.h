// Value cells of a specification row -> the interval that is judged.
//
//     auto parsed = parseCell({.min = "4.255", .typ = "4.280", .max = "4.305", .unit = "V"});
//     parsed.interval->hi;    // "4.305"
//
// Rules: corpus-independent reading rules for numbers and units (decimal comma,
// dash, ranges, tolerances, bounds, nodes, factors). Every guess leaves a note.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "model/datasheet.h"
#include "quantity/decimal.h"
#include "quantity/numbers.h"
#include "quantity/unit.h"

namespace standin::quantity {

// What is known beside the text itself.
struct ValueContext {
    std::string_view unit = {};      // as printed in the row's unit column; a unit in the cell precedes it
    std::string_view expected = {};  // coherent unit expected from the parameter (dimension), empty: unknown
    bool allCapitals = false;   // whole unit column in capitals
    CommaReading comma = CommaReading::Auto;
    // Values of nodes in coherent units, for formulas: {"VCU", 4.28}.
    std::span<std::pair<std::string_view, Decimal> const> known = {};
    std::optional<Decimal> capacity = {};  // of the cell in C, for "0.5C" rates
};

// One printed value.
struct ParsedValue {
    enum class Kind { None, Number, Range, Tolerance, AtMost, AtLeast, Words };  // None: blank or dash; Words: "Unlimited"
    Kind kind = Kind::None;
    std::optional<Decimal> lo, typ, hi;  // coherent
    bool loOpen = false;
    bool hiOpen = false;
    bool approximate = false;  // "approx.", "typ"
    std::string unit;          // coherent; empty: no unit known
    std::string unitPrinted;   // the unit found in the cell, empty: none
    std::string relativeTo;    // node
    std::string factorOf;      // node of a ratio "0.7×VDD" (also in relativeTo)
    std::vector<std::string> notes;
    bool unitConflict = false;  // dimension is not the expected one
};

[[nodiscard]] ParsedValue parseValue(std::string_view printed, ValueContext const& context = {});

struct CellTexts {
    std::string_view min = {};  // empty: blank
    std::string_view typ = {};
    std::string_view max = {};
    std::string_view unit = {};      // as printed; empty: none
    std::string_view expected = {};  // coherent unit expected from the parameter; empty: unknown
    bool allCapitals = false;
    CommaReading comma = CommaReading::Auto;
    std::span<std::pair<std::string_view, Decimal> const> known = {};
};

struct ParsedCell {
    std::optional<model::Interval> interval;          // none where no cell holds a number
    std::optional<std::string> minValue, typValue, maxValue;  // for model::Value::value
    std::vector<std::string> notes;
    bool unitConflict = false;
};

[[nodiscard]] ParsedCell parseCell(CellTexts const& texts);

// A single value cell (ratings) taken apart as the row's min, typ and max texts:
// "-0.3 to 12" -> min "-0.3", max "12"; "4.25±0.05" -> typ; "±20" and a single
// value -> max; a unit in the cell goes to `unit` ("130ms" -> max "130", unit
// "ms"). Dashes become "-", gaps inside numbers are closed, a lone dash is empty.
struct SplitCell {
    std::string min, typ, max, unit;
    bool operator==(SplitCell const&) const = default;
};
[[nodiscard]] SplitCell splitValueCell(std::string_view printed);

}  // namespace standin::quantity
