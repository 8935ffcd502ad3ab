// What a short printed text looks like: a value, a dash, words. Only the form
// is judged; what a number means is not read here.
#pragma once

#include <cstdint>
#include <string_view>

namespace standin::tables {

enum class Shape : std::uint8_t {
    Empty,
    Dash,        // stands for "no value"
    Number,      // "4.25", "±20", "-0.3 to 12", "130 ms", "<0.2"
    Expression,  // relative to a symbol: "VDD-0.3"
    Words
};

[[nodiscard]] Shape shapeOf(std::string_view text);

// A number, an expression or a dash: what stands in a value column.
[[nodiscard]] inline bool isValueLike(Shape shape) {
    return shape == Shape::Number || shape == Shape::Expression || shape == Shape::Dash;
}

// The text ends with a sign, a bracket or a word ("to") that wants a sequel.
[[nodiscard]] bool endsOpen(std::string_view text);

// A list or a condition goes on behind it.
[[nodiscard]] inline bool stopsAtComma(std::string_view text) { return text.ends_with(',') || text.ends_with(';'); }

// More brackets open in it than close.
[[nodiscard]] bool opensBracket(std::string_view text);

// The text starts with what can only go on from a line before: "× 0.8", ") V", "to 12".
[[nodiscard]] bool startsOpen(std::string_view text);

// States conditions: a relation, or "unless otherwise …" in one of the languages read.
[[nodiscard]] bool statesConditions(std::string_view text);

}  // namespace standin::tables
