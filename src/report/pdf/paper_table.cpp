// Tested by tests/src/report/pdf/paper_test.cpp.
#include "report/pdf/paper_table.h"

#include <algorithm>
#include <utility>

namespace standin::report {

namespace {

constexpr double kGap = 6;       // between columns
constexpr double kAboveCell = 2;
constexpr double kBelowCell = 2;

}  // namespace

PaperTable::PaperTable(Paper& paper, std::vector<PaperColumn> columns) : m_paper(paper), m_columns(std::move(columns)) {
    for (auto const& column : m_columns) {
        m_shares += column.share;
        m_head.push_back(paragraph(column.head, TextSize::Small, column.ink, Weight::Bold));
    }
}

double PaperTable::widthOf(std::size_t column) const {
    double const whole = m_paper.width() - kGap * static_cast<double>(m_columns.size() - 1);
    return whole * m_columns[column].share / m_shares;
}

double PaperTable::heightOf(std::vector<Paragraph> const& cells) const {
    double height = 0;
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i) height = std::max(height, m_paper.heightOf(cells[i], widthOf(i)));
    return height + kAboveCell + kBelowCell;
}

void PaperTable::head() {
    m_page = m_paper.page();
    draw(m_head);
}

void PaperTable::row(std::vector<Paragraph> const& cells) {
    double const height = heightOf(cells);
    m_paper.keep(m_page == m_paper.page() ? height : height + heightOf(m_head));
    if (m_page != m_paper.page()) head();
    draw(cells);
}

void PaperTable::draw(std::vector<Paragraph> const& cells) {
    double const top = m_paper.y();
    double const bottom = top + std::min(heightOf(cells), m_paper.room());
    double x = m_paper.left();
    int const page = m_paper.page();
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i) {
        m_paper.moveTo(top + kAboveCell);
        m_paper.write(cells[i], x, widthOf(i));
        if (m_paper.page() != page) return;  // higher than a page
        x += widthOf(i) + kGap;
    }
    m_paper.moveTo(bottom);
    m_paper.line({m_paper.left(), bottom}, {m_paper.left() + m_paper.width(), bottom}, inks::kEdge, 0.5);
}

}  // namespace standin::report
