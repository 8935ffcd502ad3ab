// Numbers of a page that stand in a row and count up or down by one. Private to
// this folder.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "model/page_layout.h"

namespace standin::pins {

// Columns: chains go down the page. Rows: they go to the right.
enum class Axis : std::uint8_t { Columns, Rows };

// A number or a name with the axes as a chain needs them, in points: `along` the
// chain (down, or to the right), `across` it.
struct Piece {
    model::Points along = 0;  // centre
    model::Points across0 = 0;
    model::Points across1 = 0;
    model::Points height = 0;  // font size
    int value = 0;
    std::string text;
    model::Rect box;
    std::uint32_t word = 0;  // index into PageLayout::words, of its first word
    [[nodiscard]] model::Points across() const { return (across0 + across1) / 2; }
};

struct Chain {
    std::vector<Piece> numbers;  // along the chain, never empty
    int step = 0;                // +1 or -1; 0: a single number
    Axis axis = Axis::Columns;
    bool filled = false;  // some numbers are not printed
    [[nodiscard]] int smallest() const { return step < 0 ? numbers.back().value : numbers.front().value; }
    [[nodiscard]] int largest() const { return step < 0 ? numbers.front().value : numbers.back().value; }
    [[nodiscard]] model::Points across() const { return numbers.front().across(); }
    // From one number to the next; four heights for a single number.
    [[nodiscard]] model::Points pitch() const;
};

[[nodiscard]] Piece pieceOf(model::Rect const& box, model::Points height, Axis axis);

// Chains of the words given, which are plain numbers: longest first, then numbers
// printed for the corner pins only, with those between filled in, then single
// numbers. Each word is in one chain. About cubic in the number of words.
[[nodiscard]] std::vector<Chain> chainsOf(model::PageLayout const& page, std::span<std::uint32_t const> words, Axis axis);

}  // namespace standin::pins
