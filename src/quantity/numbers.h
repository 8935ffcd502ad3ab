// Numbers inside any text: the count that coverage rests on, and quantities in
// prose.
//
//     findNumbers("VDD=-0.3 to 6.0V, type A12")  ->  "-0.3" "6.0" "12"
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/decimal.h"
#include "quantity/unit.h"

namespace standin::quantity {

// Bytes [begin, end) of the text.
struct NumberSpan {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool operator==(NumberSpan const&) const = default;
};

// Every maximal run of digits with its sign, points, commas and exponent, also
// inside codes; full-width digits count. A sign belongs to the number when no
// letter, digit or closing bracket touches it from the left ("SOT-23" holds 23,
// "1-2" holds 1 and 2). Linear, no allocation per number besides the list.
[[nodiscard]] std::vector<NumberSpan> findNumbers(std::string_view utf8);
// The same count without the list.
[[nodiscard]] std::size_t countNumbers(std::string_view utf8);

// How a comma in a number is meant; decided per document by the caller.
enum class CommaReading { Auto, Decimal, Thousands };

struct ParsedNumber {
    Decimal value;
    std::string note;  // "comma read as decimal", or empty
};

// One printed number: sign (any minus or dash), digits (any width), thousands
// groups, decimal comma, exponent ("2×10⁻³", "2E-3"), "4R7" forms are not read
// here. The whole text has to be the number.
[[nodiscard]] std::optional<ParsedNumber> parseNumber(std::string_view utf8, CommaReading comma = CommaReading::Auto);

// A number with the unit behind it, in prose.
struct QuantitySpan {
    std::size_t begin = 0;  // of the number
    std::size_t end = 0;    // behind the unit, or behind the number where none follows
    Decimal value;          // in unit.coherent
    std::optional<Unit> unit;
};

// Every number of findNumbers that stands alone (not inside a code), with its unit.
[[nodiscard]] std::vector<QuantitySpan> findQuantities(std::string_view utf8);

}  // namespace standin::quantity
