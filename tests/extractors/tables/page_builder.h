// Makes PageLayouts by hand for the tests of this folder.
//
//     PageBuilder page;
//     page.text(50, 100, "Supply voltage").text(200, 100, "3.0");
//     page.grid({40, 180, 260}, {90, 104, 118});
//     auto tables = findTables(page.layout());
//
// Letters are half as wide as they are high; every text() is one line of words.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "model/page_layout.h"
#include "model/table.h"

namespace standin::tables::test {

class PageBuilder {
public:
    explicit PageBuilder(int page = 1, model::Points size = 8) : m_size(size) {
        m_layout.page = page;
        m_layout.width = 600;
        m_layout.height = 800;
        m_layout.bodySize = size;
    }

    // A line of words that starts at x; "..." alone is a run of leader dots.
    PageBuilder& text(model::Points x, model::Points baseline, std::string_view words, bool bold = false) {
        model::TextLine line;
        line.firstWord = static_cast<std::uint32_t>(m_layout.words.size());
        line.baseline = baseline;
        line.size = m_size;
        line.bold = bold;
        std::size_t at = 0;
        while (at < words.size()) {
            auto end = words.find(' ', at);
            if (end == std::string_view::npos) end = words.size();
            model::Word word;
            word.text = std::string(words.substr(at, end - at));
            auto const width = 0.5F * m_size * static_cast<model::Points>(word.text.size());
            word.box = {x, baseline - 0.75F * m_size, x + width, baseline + 0.25F * m_size};
            word.baseline = baseline;
            word.size = m_size;
            word.bold = bold;
            word.dotLeader = word.text == "...";
            m_layout.words.push_back(word);
            line.box = united(line.box, word.box);
            x += width + 0.3F * m_size;
            at = end + 1;
        }
        line.wordCount = static_cast<std::uint32_t>(m_layout.words.size()) - line.firstWord;
        m_layout.lines.push_back(line);
        return *this;
    }

    PageBuilder& horizontal(model::Points y, model::Points from, model::Points to) {
        m_layout.rules.push_back({model::Rule::Axis::Horizontal, {from, y, to, y}, 0, false});
        return *this;
    }
    PageBuilder& vertical(model::Points x, model::Points from, model::Points to) {
        m_layout.rules.push_back({model::Rule::Axis::Vertical, {x, from, x, to}, 0, false});
        return *this;
    }
    // Every line of a full grid.
    PageBuilder& grid(std::vector<model::Points> const& xs, std::vector<model::Points> const& ys) {
        for (auto const y : ys) horizontal(y, xs.front(), xs.back());
        for (auto const x : xs) vertical(x, ys.front(), ys.back());
        return *this;
    }

    [[nodiscard]] model::PageLayout& layout() { return m_layout; }

private:
    model::Points m_size;
    model::PageLayout m_layout;
};

// Text of the cell that begins at a place; "<none>" where none does.
inline std::string textAt(model::Table const& table, int row, int column) {
    for (auto const& cell : table.cells) {
        if (cell.row == row && cell.column == column) return cell.text;
    }
    return "<none>";
}

inline std::pair<int, int> spanAt(model::Table const& table, int row, int column) {
    for (auto const& cell : table.cells) {
        if (cell.row == row && cell.column == column) return {cell.rowSpan, cell.columnSpan};
    }
    return {0, 0};
}

// No grid position is covered twice, and no cell reaches outside.
inline bool isSound(model::Table const& table) {
    std::vector<int> covered(static_cast<std::size_t>(table.rows * table.columns), 0);
    for (auto const& cell : table.cells) {
        if (cell.row < 0 || cell.column < 0 || cell.rowSpan < 1 || cell.columnSpan < 1) return false;
        if (cell.row + cell.rowSpan > table.rows || cell.column + cell.columnSpan > table.columns) return false;
        for (int r = cell.row; r < cell.row + cell.rowSpan; ++r) {
            for (int c = cell.column; c < cell.column + cell.columnSpan; ++c) {
                if (++covered[static_cast<std::size_t>(r * table.columns + c)] > 1) return false;
            }
        }
    }
    return true;
}

// Column lines of a specification table: name, symbol, conditions, min, typ, max, unit.
inline std::vector<float> const kXs{40, 160, 200, 320, 360, 400, 440, 480};

inline PageBuilder& head(PageBuilder& page, float baseline) {
    return page.text(44, baseline, "Parameter")
        .text(164, baseline, "Symbol")
        .text(204, baseline, "Conditions")
        .text(324, baseline, "Min")
        .text(364, baseline, "Typ")
        .text(404, baseline, "Max")
        .text(444, baseline, "Unit");
}

}  // namespace standin::tables::test
