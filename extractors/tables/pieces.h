// Pieces: runs of words of one printed line that lie in one area of a table.
// A piece is a range of PageLayout::words, for a line's words are contiguous.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "model/page_layout.h"

namespace standin::tables {

struct Piece {
    std::uint32_t first = 0;  // index into PageLayout::words
    std::uint32_t count = 0;
    model::Rect box;
    model::Points baseline = 0;  // of the line; the middle of the box for turned text
    model::Points size = 0;      // font size of the line
    bool bold = false;           // all words
    bool turned = false;         // not read from left to right
};

// The words [first, first + count) of `line` as a piece, without hidden words at
// either end. An empty piece (count 0) where nothing visible is left.
[[nodiscard]] Piece makePiece(model::PageLayout const& page, model::TextLine const& line, std::uint32_t first, std::uint32_t count);

// Text of a piece: one space where a space is printed; footnote digits set high
// stay superscripts ("4.25¹"); leader dots are left out.
[[nodiscard]] std::string textOf(model::PageLayout const& page, Piece const& piece);

// Text of several pieces, one space between.
[[nodiscard]] std::string textOf(model::PageLayout const& page, std::vector<Piece> const& pieces);

// False for words that are in no table: hidden ones, slanted ones (watermarks) and furniture.
[[nodiscard]] inline bool isTableWord(model::Word const& word) {
    return !word.hidden && word.direction != model::Direction::Slanted && word.owner != model::Owner::Furniture;
}

// Cuts a piece where the white gap between two words is at least `gap`.
void cutAtGaps(model::PageLayout const& page, Piece const& piece, model::Points gap, std::vector<Piece>& out);

}  // namespace standin::tables
