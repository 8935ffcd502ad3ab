// Pieces of the same rows and columns make a cell. Cells that overlap are united
// until none do (each round lessens their number). A row or column in which no
// cell of its own stands is dropped and the cells over it shrink.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/grid.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::Cell;
using model::PageLayout;
using model::Points;
using model::Rect;
using model::Table;

namespace {

// In font heights.
constexpr float kSameLine = 0.45F;
constexpr float kSymbolGap = 0.6F;  // from a symbol to the name right of it

struct DraftCell {
    int row0, row1, column0, column1;
    std::vector<std::uint32_t> pieces;  // indices into GridDraft::pieces
};

std::vector<DraftCell> gather(GridDraft const& draft) {
    auto const place = [&](std::uint32_t i) {
        auto const& p = draft.pieces[i];
        return std::tie(p.row0, p.column0, p.row1, p.column1);
    };
    std::vector<std::uint32_t> order(draft.pieces.size());
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return place(a) != place(b) ? place(a) < place(b) : a < b; });
    std::vector<DraftCell> cells;
    cells.reserve(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        auto const& p = draft.pieces[order[i]];
        if (i == 0 || place(order[i]) != place(order[i - 1])) cells.push_back({p.row0, p.row1, p.column0, p.column1, {}});
        cells.back().pieces.push_back(order[i]);
    }
    return cells;
}

// False while something had to be united.
bool uniteOnce(std::vector<DraftCell>& cells, int rows, int columns) {
    std::vector<int> owner(static_cast<std::size_t>(rows) * static_cast<std::size_t>(columns), -1);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        for (int r = cells[i].row0; r <= cells[i].row1; ++r) {
            for (int c = cells[i].column0; c <= cells[i].column1; ++c) {
                int& at = owner[static_cast<std::size_t>(r * columns + c)];
                if (at < 0) {
                    at = static_cast<int>(i);
                    continue;
                }
                auto& other = cells[static_cast<std::size_t>(at)];
                other.row0 = std::min(other.row0, cells[i].row0);
                other.row1 = std::max(other.row1, cells[i].row1);
                other.column0 = std::min(other.column0, cells[i].column0);
                other.column1 = std::max(other.column1, cells[i].column1);
                other.pieces.insert(other.pieces.end(), cells[i].pieces.begin(), cells[i].pieces.end());
                cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(i));
                return false;
            }
        }
    }
    return true;
}

// A symbol left of a name of several lines, set at the middle of them: it is read first. `order`: the pieces from the top.
void putSymbolFirst(PageLayout const& page, GridDraft const& draft, std::vector<std::uint32_t>& order) {
    if (order.size() < 3) return;
    auto const pieceOf = [&](std::uint32_t i) -> Piece const& { return draft.pieces[i].piece; };
    auto const leftmost = std::min_element(order.begin(), order.end(), [&](auto a, auto b) { return pieceOf(a).box.x0 < pieceOf(b).box.x0; });
    Piece const& symbol = pieceOf(*leftmost);
    bool const alone = std::all_of(order.begin(), order.end(), [&](auto i) {
        bool const apart = std::abs(pieceOf(i).baseline - symbol.baseline) > kSameLine * draft.fontHeight;
        return i == *leftmost || (apart && pieceOf(i).box.x0 > symbol.box.x1 + kSymbolGap * draft.fontHeight);
    });
    bool const between = leftmost != order.begin() && leftmost + 1 != order.end();
    if (!alone || !between || textOf(page, symbol).find(' ') != std::string::npos) return;
    std::rotate(order.begin(), leftmost, leftmost + 1);
}

// The dots that lead on from the last word of a cell.
std::string leaderBehind(PageLayout const& page, std::uint32_t word) {
    std::string leader;
    auto const& last = page.words[word];
    for (std::size_t w = word + std::size_t{1}; w < page.words.size(); ++w) {
        auto const& next = page.words[w];
        if (!next.dotLeader || std::abs(next.baseline - last.baseline) > kSameLine * last.size) break;
        leader += next.text;
    }
    return leader;
}

// Sorts the pieces of the cell.
Cell makeCell(PageLayout const& page, GridDraft const& draft, DraftCell& from) {
    Cell cell;
    cell.row = from.row0;
    cell.column = from.column0;
    cell.rowSpan = from.row1 - from.row0 + 1;
    cell.columnSpan = from.column1 - from.column0 + 1;
    auto& order = from.pieces;
    std::sort(order.begin(), order.end(), [&](auto a, auto b) {
        auto const& p = draft.pieces[a].piece;
        auto const& q = draft.pieces[b].piece;
        return p.baseline != q.baseline ? p.baseline < q.baseline : p.box.x0 < q.box.x0;
    });
    putSymbolFirst(page, draft, order);
    // Lines: pieces near one baseline, left to right.
    for (std::size_t begin = 0; begin < order.size();) {
        std::size_t end = begin + 1;
        while (end < order.size() &&
               std::abs(draft.pieces[order[end]].piece.baseline - draft.pieces[order[begin]].piece.baseline) <= kSameLine * draft.fontHeight) {
            ++end;
        }
        std::sort(order.begin() + static_cast<std::ptrdiff_t>(begin), order.begin() + static_cast<std::ptrdiff_t>(end),
                  [&](auto a, auto b) { return draft.pieces[a].piece.box.x0 < draft.pieces[b].piece.box.x0; });
        if (!cell.words.empty()) cell.lineStarts.push_back(static_cast<std::uint32_t>(cell.words.size()));
        for (std::size_t i = begin; i < end; ++i) {
            auto const& piece = draft.pieces[order[i]].piece;
            auto const text = textOf(page, piece);
            if (!text.empty()) {
                if (!cell.text.empty()) cell.text += ' ';
                cell.text += text;
            }
            for (std::uint32_t w = piece.first; w < piece.first + piece.count; ++w) {
                if (isTableWord(page.words[w])) cell.words.push_back(w);
            }
            cell.box = united(cell.box, piece.box);
        }
        begin = end;
    }
    for (auto const i : from.pieces) {
        if (!draft.pieces[i].ruledBox.empty()) cell.box = united(cell.box, draft.pieces[i].ruledBox);
    }
    if (!cell.words.empty()) cell.leader = leaderBehind(page, cell.words.back());
    return cell;
}

void dropEmptyColumns(Table& table) {
    for (int column = table.columns - 1; column >= 0; --column) {
        bool const used = std::any_of(table.cells.begin(), table.cells.end(), [&](Cell const& c) { return c.column == column && c.columnSpan == 1; });
        if (used) continue;
        for (auto& c : table.cells) {
            if (c.column <= column && c.column + c.columnSpan > column) {
                --c.columnSpan;
            } else if (c.column > column) {
                --c.column;
            }
        }
        --table.columns;
    }
}

void dropEmptyRows(Table& table) {
    for (int row = table.rows - 1; row >= 0; --row) {
        bool const used = std::any_of(table.cells.begin(), table.cells.end(), [&](Cell const& c) { return c.row == row && c.rowSpan == 1; });
        if (used) continue;
        for (auto& c : table.cells) {
            if (c.row <= row && c.row + c.rowSpan > row) {
                --c.rowSpan;
            } else if (c.row > row) {
                --c.row;
            }
        }
        --table.rows;
        if (row < table.headRows) --table.headRows;
    }
}

bool allBold(PageLayout const& page, Cell const& cell) {
    return !cell.words.empty() && std::all_of(cell.words.begin(), cell.words.end(), [&](auto w) { return page.words[w].bold; });
}

// A first row without numbers is the head where the rows below hold numbers in
// its columns, or where it alone is bold.
void findUntitledHead(PageLayout const& page, Table& table) {
    if (table.headRows > 0 || table.rows < 2) return;
    int cells = 0;
    int bold = 0;
    int bodyBold = 0;
    int body = 0;
    std::vector<char> titled(static_cast<std::size_t>(table.columns), 0);
    std::vector<int> numbers(static_cast<std::size_t>(table.columns), 0);
    std::vector<int> filled(static_cast<std::size_t>(table.columns), 0);
    for (auto const& cell : table.cells) {
        if (cell.row == 0) {
            ++cells;
            bold += allBold(page, cell) ? 1 : 0;
            auto const shape = shapeOf(cell.text);
            if (shape == Shape::Number || shape == Shape::Dash) return;
            for (int c = cell.column; c < cell.column + cell.columnSpan; ++c) titled[static_cast<std::size_t>(c)] = 1;
            continue;
        }
        ++body;
        bodyBold += allBold(page, cell) ? 1 : 0;
        ++filled[static_cast<std::size_t>(cell.column)];
        if (shapeOf(cell.text) == Shape::Number) ++numbers[static_cast<std::size_t>(cell.column)];
    }
    if (cells < 2 || body < 1) return;
    bool overNumbers = false;
    for (std::size_t c = 0; c < titled.size(); ++c) {
        overNumbers = overNumbers || (titled[c] != 0 && numbers[c] >= 1 && numbers[c] * 10 >= filled[c] * 7);
    }
    bool const stands = bold == cells && bodyBold * 3 <= body;
    if (stands || (overNumbers && cells * 2 >= table.columns)) table.headRows = 1;
}

// A line that stands alone in its row from the left is a heading over all columns.
void widenHeadings(Table& table, GridDraft const& draft) {
    std::vector<int> covering(static_cast<std::size_t>(table.rows), 0);
    for (auto const& c : table.cells) {
        for (int r = c.row; r < c.row + c.rowSpan; ++r) ++covering[static_cast<std::size_t>(r)];
    }
    for (auto& c : table.cells) {
        if (c.rowSpan != 1 || c.row < table.headRows || covering[static_cast<std::size_t>(c.row)] != 1) continue;
        bool const wide = c.columnSpan * 2 >= table.columns;
        if ((draft.openColumns && c.column <= 1) || wide) {
            c.column = 0;
            c.columnSpan = table.columns;
        }
    }
}

}  // namespace

std::optional<Table> finishGrid(PageLayout const& page, GridDraft const& draft) {
    if (draft.rows < 2 || draft.columns < 2 || draft.rows > 2000) return std::nullopt;
    auto cells = gather(draft);
    if (cells.size() > 6000) return std::nullopt;
    while (!uniteOnce(cells, draft.rows, draft.columns)) {
    }
    Table table;
    table.rows = draft.rows;
    table.columns = draft.columns;
    table.headRows = draft.headRows;
    table.cells.reserve(cells.size());
    for (auto& cell : cells) table.cells.push_back(makeCell(page, draft, cell));
    dropEmptyColumns(table);
    dropEmptyRows(table);
    if (table.rows < 2 || table.columns < 2) return std::nullopt;
    findUntitledHead(page, table);
    // What a head cell reaches down to is head.
    for (auto const& cell : table.cells) {
        if (cell.row < table.headRows && cell.row + cell.rowSpan < table.rows) table.headRows = std::max(table.headRows, cell.row + cell.rowSpan);
    }
    widenHeadings(table, draft);
    for (auto& cell : table.cells) {
        cell.header = cell.row < table.headRows;
        table.box = united(table.box, cell.box);
    }
    std::sort(table.cells.begin(), table.cells.end(), [](Cell const& a, Cell const& b) { return a.row != b.row ? a.row < b.row : a.column < b.column; });
    return table;
}

}  // namespace standin::tables
