// A table on paper: rows that stay whole, the head again on each page. Private
// to report/pdf/.
//
//     PaperTable table(paper, {{"reference", 2}, {"candidate", 2}, {"findings", 1}});
//     table.row({paragraph("3 Ratings"), paragraph("4 Ratings"), paragraph("2")});
#pragma once

#include <string>
#include <vector>

#include "report/pdf/paper.h"

namespace standin::report {

struct PaperColumn {
    std::string head;
    double share = 1;  // of the width, against the other columns
    Ink ink = inks::kText;
};

class PaperTable {
public:
    PaperTable(Paper& paper, std::vector<PaperColumn> columns);

    // As many cells as columns. A row higher than a page is cut off at its end,
    // so give clipped texts.
    void row(std::vector<Paragraph> const& cells);

private:
    [[nodiscard]] double widthOf(std::size_t column) const;
    [[nodiscard]] double heightOf(std::vector<Paragraph> const& cells) const;
    void head();
    void draw(std::vector<Paragraph> const& cells);

    Paper& m_paper;
    std::vector<PaperColumn> m_columns;
    std::vector<Paragraph> m_head;
    double m_shares = 0;
    int m_page = 0;  // that has the head
};

}  // namespace standin::report
