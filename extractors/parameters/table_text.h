// The text of a table's cells as parameters need it: words joined over line
// breaks, footnote marks taken out and kept beside, and the grid to look cells
// up by place.
//
//     TableText text(table, page);
//     text.at(row, column)           -> index of the covering cell, or -1
//     text.cells[index].text         -> "Supply current"     marks: {"1"}
#pragma once

#include <string>
#include <vector>

#include "model/page_layout.h"
#include "model/table.h"

namespace standin::parameters {

// One printed line of a cell.
struct CellLine {
    std::string text;
    model::Points baseline = 0;
};

struct CellText {
    std::string text;                // tidied, without footnote marks and figure references
    std::vector<std::string> marks;  // "1", "a", "*", "Note 2" … as keys of footnotes
    bool onlyReference = false;      // the cell holds nothing but a reference; `text` keeps it
    model::Points left = 0;          // where its first word starts; the cell's box where no words are known
    model::Points size = 0;          // font size; 0 where not known
    bool bold = false;
    std::vector<CellLine> lines;     // empty where no words are known
};

class TableText {
public:
    // `page` may be null (hand-made tables): then the cells' texts are taken.
    TableText(model::Table const& table, model::PageLayout const* page);

    // Index into cells (the same as Table::cells) of what covers the place, or -1.
    [[nodiscard]] int at(int row, int column) const;

    std::vector<CellText> cells;
    int rows = 0;
    int columns = 0;

private:
    std::vector<int> m_grid;
};

// Takes "(Note 4)", "(1)" where it is raised, "*1", "(Figure 3)", "see Figure 3"
// out of text; what was taken is added to `marks`.
[[nodiscard]] std::string withoutReferences(std::string_view text, std::vector<std::string>& marks);

// True for a raised word that marks a footnote rather than continues a symbol.
[[nodiscard]] bool isFootnoteMark(std::string_view raised);

}  // namespace standin::parameters
