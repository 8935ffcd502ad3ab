// One value cell as corpus rules want it written: which text goes to minimum,
// typical and maximum, and which unit was printed inside the cell.
//
//     readValueCell("−0.3 to 12 V", Slot::Single)  -> min "-0.3", max "12", unit "V"
//     readValueCell("±20", Slot::Single)           -> max "±20"
//     readValueCell("4.25±0.05", Slot::Single)     -> typ "4.25±0.05"
//     readValueCell("130ms", Slot::Typ)            -> typ "130", unit "ms"
//     readValueCell("—", Slot::Min)                -> nothing
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace standin::parameters {

// The column a cell stands in. Single: the only value column of the table.
enum class Slot : std::uint8_t { Min, Typ, Max, Single };

enum class ValueForm : std::uint8_t { Nothing, Number, Range, Expression, Words };

struct ValueCell {
    ValueForm form = ValueForm::Nothing;
    std::string min, typ, max;  // texts in label form; empty: none
    std::string unit;           // printed inside the cell, or empty
    std::string label;          // a package or part printed in front: "DIP8: 500"
    bool mixedUnits = false;    // a range whose ends have different units; they stay in the texts
    bool operator==(ValueCell const&) const = default;
};

// Takes the cell's words without footnote marks. `columnUnit`: the unit printed
// for the line, or empty; inside an expression another unit stays in the text.
[[nodiscard]] ValueCell readValueCell(std::string_view text, Slot slot, std::string_view columnUnit = {});

// "0.7VDD" and the like: an expression relative to a symbol, or one symbol alone.
[[nodiscard]] bool isExpression(std::string_view text);

// The unit at the end of "130ms", "-0.3 V", "VSS-0.3V"; splits it off `text`.
[[nodiscard]] std::string takeUnitTail(std::string& text);

}  // namespace standin::parameters
