// Splits one band (the area between two row rules, or a whole body without any)
// into rows: one for each printed line of values, with wrapped names and
// conditions attached to the row they belong to, and heading lines of their own.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

// A piece with the columns it stands in (inclusive).
struct PlacedPiece {
    Piece piece;
    Shape shape = Shape::Empty;  // of its text
    int area = -1;     // index into Lattice::areas
    int band = -1;     // where it stands for itself in one band of an area over several
    int column0 = 0;
    int column1 = 0;
    bool wholeArea = false;  // fills its ruled area from side to side
    bool weaklyPlaced = false;  // put into the column it stands in although no rule parts it there
    bool wrapOf = false;        // goes on from words above it, found by valueBaselines
    int row0 = -1;     // rows of the band, set by splitBand
    int row1 = -1;
};

// What is known of the columns.
struct ColumnModel {
    std::vector<model::Points> edges;  // columns + 1
    std::vector<ColumnTitle> titles;
    std::vector<char> holdsValues;
    [[nodiscard]] int count() const { return static_cast<int>(edges.size()) - 1; }
    [[nodiscard]] int firstValueColumn() const;  // count() where none
};

// Ruled: rules part the rows of this table, several value lines in a band share
// its name. Open: nothing but lines of text tells the rows.
enum class BandKind : std::uint8_t { Ruled, Open };

struct BandRows {
    int count = 1;
    std::vector<model::Points> baselines;  // of each row's values (or first line)
};

// Sets row0 and row1 of `pieces` (all of one band, none of it the head).
BandRows splitBand(model::PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, BandKind kind,
                   model::Points fontHeight);

// Baselines of the lines that are values of their own (for choosing BandKind).
// Marks pieces that only wrap words above them.
[[nodiscard]] std::vector<model::Points> valueBaselines(model::PageLayout const& page, std::vector<PlacedPiece*> const& pieces,
                                                        ColumnModel const& columns, model::Points fontHeight);

}  // namespace standin::tables
