// A table as found on one page: a grid of cells with spans. Made by
// extractors/tables/, read by extractors/parameters/, pins/, ordering/ ….
//
// Rows and columns count from 0. Every grid position is covered by at most one
// cell; positions without a cell are blank. A table continued over pages is one
// Table a page; `continues` names the one before.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "model/geometry.h"

namespace standin::model {

struct Cell {
    int row = 0;
    int column = 0;
    int rowSpan = 1;
    int columnSpan = 1;
    std::string text;      // its words in reading order, lines joined by one space
    std::string leader = {};  // the dots, as printed, that lead from it to the next cell; mostly empty
    std::vector<std::uint32_t> words;  // indices into PageLayout::words of the table's page
    std::vector<std::uint32_t> lineStarts;  // indices into `words` where a new printed line begins (never 0)
    bool header = false;   // part of the head (column titles)
    Rect box;              // the cell's area where ruled, else the box of its words
    bool operator==(Cell const&) const = default;
};

enum class TableKind : std::uint8_t { Specification, Pins, Ordering, Package, Revision, Other };

// How the grid was found; several may hold.
struct TableEvidence {
    bool ruledRows = false;     // horizontal rules separate rows
    bool ruledColumns = false;  // vertical rules separate columns
    bool aligned = false;       // columns stand apart by white gaps
    bool headWords = false;     // a head row with known column titles
    bool leaders = false;       // dot leaders join names and values
    bool operator==(TableEvidence const&) const = default;
};

struct Table {
    std::string id;         // "t1", "t2" … in document order; given when all pages are joined
    std::string section;    // id of the section it stands in, or empty
    int page = 0;
    Rect box;
    TableKind kind = TableKind::Other;
    std::string continues;  // id of the table it goes on from, or empty
    std::string caption;    // "Table 5. Electrical characteristics", or empty
    std::string lead;       // the sentence or heading line right above that states conditions, or empty
    int rows = 0;
    int columns = 0;
    int headRows = 0;       // rows 0 … headRows-1 are the head; 0 where none is printed (continuation without a repeated head)
    std::vector<Cell> cells;  // by row, then column
    TableEvidence evidence;
    double confidence = 0;  // 0 … 1, how sure the grid is
    std::vector<std::string> reasons;  // why it is believed, or not, in plain words
    bool operator==(Table const&) const = default;
};

}  // namespace standin::model
