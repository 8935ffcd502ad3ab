// 1. The words of each printed line are parted at rules into pieces.
// 2. White gutters part ruled columns further where they must (columns.h).
// 3. The pieces are put into columns and areas.
// 4. Titles, value columns and rows are found (build_rows.cpp).
// 5. Cells are made, overlapping ones united, empty rows and columns dropped.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/build_table.h"

#include <algorithm>
#include <cmath>

#include "extractors/tables/columns.h"
#include "extractors/tables/grid.h"
#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/table_builder.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Table;

namespace {

// In font heights.
constexpr float kWordSpace = 0.5F;     // at most, between words of one text
constexpr float kColumnGap = 0.72F;    // a gap at a column boundary that parts two cells
constexpr float kOpenGap = 0.42F;      // the same where no rule parts columns
constexpr float kMergedGap = 1.0F;     // the same inside an area that rules make one
constexpr float kLineSlack = 0.5F;     // a text may reach this far over the going on of a rule
constexpr float kOverflow = 0.35F;     // share of the next column that a long text may cover

}  // namespace

std::optional<Table> TableBuilder::build() {
    if (m_lattice.xs.size() < 2 || m_lattice.ys.size() < 2) return std::nullopt;
    collectPieces();
    if (m_pieces.size() < 4) return std::nullopt;
    findColumns();
    if (m_columns.count() < 2) return std::nullopt;
    placePieces();
    findHead();
    findValueColumns();
    splitBands();
    return makeTable();
}

void TableBuilder::collectPieces() {
    std::vector<Points> sizes;
    for (auto const lineIndex : m_region.lines) {
        auto const& line = m_page.lines[lineIndex];
        std::uint32_t start = line.firstWord;
        std::uint32_t const end = line.firstWord + line.wordCount;
        int current = -1;
        auto flush = [&](std::uint32_t until) {
            if (until <= start || current < 0) return;
            auto const piece = makePiece(m_page, line, start, until - start);
            if (piece.count == 0) return;
            m_pieces.push_back(piece);
            m_areaOfPiece.push_back(current);
            sizes.push_back(piece.size);
        };
        bool const turned = line.direction != model::Direction::Right;
        int const whole = turned ? areaAt(line.box.centre()) : -1;
        for (std::uint32_t i = line.firstWord; i < end; ++i) {
            auto const& word = m_page.words[i];
            if (word.dotLeader) m_leaders = true;
            bool const usable = isTableWord(word) && m_taken[i] == 0 && !word.dotLeader;
            int at = !usable ? -1 : turned ? whole : areaAt(word.box.centre());
            if (at >= 0 && current >= 0 && at != current && goesOnOverColumn(m_page.words[i - 1], word)) at = current;
            if (at != current) {
                flush(i);
                start = i;
                current = at;
            }
        }
        flush(end);
    }
    if (!sizes.empty()) {
        auto const middle = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
        std::nth_element(sizes.begin(), middle, sizes.end());
        m_font = std::clamp(*middle, 3.0F, 30.0F);
    }
}

// A word space behind the word before, with no rule between: a heading over columns whose rules leave it out.
bool TableBuilder::goesOnOverColumn(model::Word const& before, model::Word const& word) const {
    if (!m_region.ruledColumns || word.box.x0 - before.box.x1 > kWordSpace * word.size) return false;
    Points const y = word.baseline - 0.3F * word.size;
    return std::none_of(m_page.rules.begin(), m_page.rules.end(), [&](auto const& rule) {
        return rule.axis == model::Rule::Axis::Vertical && rule.box.x0 > before.box.x0 && rule.box.x0 < word.box.x1 && rule.box.y0 <= y && rule.box.y1 >= y;
    });
}

int TableBuilder::areaAt(model::Point p) const {
    int const row = m_lattice.rowAt(p.y);
    int const column = m_lattice.columnAt(p.x);
    if (row < 0 || column < 0) return -1;
    return m_lattice.areaOf[static_cast<std::size_t>(row * m_lattice.columns() + column)];
}

void TableBuilder::findColumns() {
    std::vector<std::vector<Piece>> inColumn(static_cast<std::size_t>(m_lattice.columns()));
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        auto const& a = area(m_areaOfPiece[i]);
        if (a.column0 == a.column1) inColumn[static_cast<std::size_t>(a.column0)].push_back(m_pieces[i]);
    }
    m_columns.edges.push_back(m_lattice.xs.front());
    for (int c = 0; c < m_lattice.columns(); ++c) {
        auto const i = static_cast<std::size_t>(c);
        m_firstColumn.push_back(m_columns.count());
        auto const mode = m_region.ruledColumns ? Gutters::InsideRuledColumn : Gutters::OpenArea;
        auto const cuts = findCuts(m_page, inColumn[i], m_lattice.xs[i], m_lattice.xs[i + 1], m_font, mode);
        m_columns.edges.insert(m_columns.edges.end(), cuts.xs.begin(), cuts.xs.end());
        m_shared.insert(m_shared.end(), cuts.shared.begin(), cuts.shared.end());
        m_columns.edges.push_back(m_lattice.xs[i + 1]);
    }
    m_firstColumn.push_back(m_columns.count());
    m_columns.titles.assign(static_cast<std::size_t>(m_columns.count()), ColumnTitle::None);
    m_columns.holdsValues.assign(static_cast<std::size_t>(m_columns.count()), 0);
}

int TableBuilder::columnAt(Points x) const {
    auto const it = std::upper_bound(m_columns.edges.begin(), m_columns.edges.end(), x);
    int const i = static_cast<int>(it - m_columns.edges.begin()) - 1;
    return std::clamp(i, 0, m_columns.count() - 1);
}

// Columns that a piece stands in: the one of its middle, and neighbours that it really covers.
void TableBuilder::setColumns(PlacedPiece& placed, int low, int high) const {
    auto const& box = placed.piece.box;
    int first = std::clamp(columnAt(box.x0), low, high);
    int last = std::clamp(columnAt(box.x1), low, high);
    auto covers = [&](int column) {
        auto const i = static_cast<std::size_t>(column);
        Points const part = model::overlap(box.x0, box.x1, m_columns.edges[i], m_columns.edges[i + 1]);
        return part > kOverflow * (m_columns.edges[i + 1] - m_columns.edges[i]) && part > 0.6F * m_font;
    };
    int const middle = std::clamp(columnAt(box.centre().x), first, last);
    while (first < middle && !covers(first)) ++first;
    while (last > middle && !covers(last)) --last;
    placed.column0 = first;
    placed.column1 = last;
}

// Column lines that rules leave out in some rows, but that white space goes on with.
void TableBuilder::findSoftLines() {
    auto const lines = m_lattice.xs.size();
    m_softLine.assign(lines, 0);
    m_weakLine.assign(lines, 0);
    if (!m_region.ruledColumns) return;
    std::vector<int> parted(lines, 0);
    std::vector<int> crossed(lines, 0);
    std::vector<std::vector<Piece>> runsOf(m_lattice.areas.size());
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        auto const& a = area(m_areaOfPiece[i]);
        bool const everything = a.column0 == 0 && a.column1 == m_lattice.columns() - 1;
        if (a.column0 == a.column1 || everything || m_pieces[i].turned) continue;
        cutAtGaps(m_page, m_pieces[i], kColumnGap * m_font, runsOf[static_cast<std::size_t>(m_areaOfPiece[i])]);
    }
    for (std::size_t index = 0; index < runsOf.size(); ++index) {
        auto const& runs = runsOf[index];
        auto const& a = m_lattice.areas[index];
        for (auto const& line : groupByBaseline(runs, kSameLine * m_font)) {
            for (int column = a.column0 + 1; column <= a.column1; ++column) {
                auto const k = static_cast<std::size_t>(column);
                Points const x = m_lattice.xs[k];
                for (std::size_t r = 0; r < line.pieces.size(); ++r) {
                    auto const& box = runs[line.pieces[r]].box;
                    if (box.x0 < x - kLineSlack * m_font && box.x1 > x + kLineSlack * m_font) ++crossed[k];
                    if (r > 0 && runs[line.pieces[r - 1]].box.x1 <= x + kLineSlack * m_font && box.x0 >= x - kLineSlack * m_font) ++parted[k];
                }
            }
        }
    }
    for (int k = 1; k < m_lattice.columns(); ++k) {
        int drawn = 0;
        for (int row = 0; row < m_lattice.rows(); ++row) {
            drawn += m_lattice.areaOf[static_cast<std::size_t>(row * m_lattice.columns() + k)] !=
                             m_lattice.areaOf[static_cast<std::size_t>(row * m_lattice.columns() + k - 1)]
                         ? 1
                         : 0;
        }
        m_weakLine[static_cast<std::size_t>(k)] = drawn * 2 < m_lattice.rows() ? 1 : 0;
    }
    for (std::size_t k = 1; k + 1 < lines; ++k) m_softLine[k] = parted[k] >= 2 && crossed[k] * 8 <= parted[k] ? 1 : 0;
}

void TableBuilder::placePieces() {
    m_inArea.resize(m_lattice.areas.size());
    findSoftLines();
    std::vector<Piece> parts;
    std::vector<Piece> finer;
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        int const index = m_areaOfPiece[i];
        auto const& a = area(index);
        int const low = m_firstColumn[static_cast<std::size_t>(a.column0)];
        int const high = m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1;
        parts.clear();
        bool const everything = a.column0 == 0 && a.column1 == m_lattice.columns() - 1;
        bool soft = false;
        bool weak = false;
        for (int line = a.column0 + 1; line <= a.column1 && !everything; ++line) {
            soft = soft || m_softLine[static_cast<std::size_t>(line)] != 0;
            weak = weak || m_weakLine[static_cast<std::size_t>(line)] != 0;
        }
        bool whole = low == high;
        bool weakly = false;
        if (low == high || m_pieces[i].turned) {
            parts.push_back(m_pieces[i]);
        } else if (a.column0 == a.column1) {
            cutAtColumns(m_pieces[i], low, high, kColumnGap, Boundaries::All, parts);
        } else {
            if (soft) {
                cutAtColumns(m_pieces[i], low, high, kColumnGap, Boundaries::Soft, parts);
            } else {
                parts.push_back(m_pieces[i]);
                whole = true;
            }
            finer.clear();
            for (auto const& part : parts) cutAtColumns(part, low, high, kMergedGap, Boundaries::All, finer);
            if (finer.size() > parts.size() && standAlone(finer)) {
                parts = finer;
                whole = false;
            } else if (weak && parts.size() == 1 && isValueLike(shapeOf(textOf(m_page, parts[0])))) {
                // Where most rows lack the rule, a value stands in the column it is printed in.
                whole = false;
                weakly = true;
            }
        }
        for (auto const& part : parts) {
            PlacedPiece placed;
            placed.piece = part;
            placed.shape = shapeOf(textOf(m_page, part));
            placed.area = index;
            placed.column0 = low;
            placed.column1 = high;
            if (!whole) setColumns(placed, low, high);
            auto const shared = std::find_if(m_shared.begin(), m_shared.end(), [&](auto const& s) { return s.firstWord == part.first; });
            if (shared != m_shared.end()) {
                placed.column0 = columnAt(shared->from);
                placed.column1 = columnAt(shared->to);
            }
            // words that go on over a column line
            Points const right = m_lattice.xs[static_cast<std::size_t>(a.column1) + 1];
            if (m_region.ruledColumns && !m_pieces[i].turned && part.box.x1 > right + 0.6F * m_font) placed.column1 = std::max(placed.column1, columnAt(part.box.x1));
            placed.wholeArea = whole;
            placed.weaklyPlaced = weakly;
            m_inArea[static_cast<std::size_t>(index)].push_back(static_cast<std::uint32_t>(m_placed.size()));
            m_placed.push_back(placed);
        }
    }
    settleNeighbours();
}

// A boundary between final columns that is no lattice line, or a soft one.
bool TableBuilder::isSoft(int edge) const {
    auto const it = std::find(m_firstColumn.begin(), m_firstColumn.end(), edge);
    return it == m_firstColumn.end() || m_softLine[static_cast<std::size_t>(it - m_firstColumn.begin())] != 0;
}

// Cuts at gaps that lie on a column boundary.
void TableBuilder::cutAtColumns(Piece const& piece, int low, int high, float gap, Boundaries boundaries, std::vector<Piece>& parts) const {
    std::vector<Piece> runs;
    cutAtGaps(m_page, piece, 0.3F * m_font, runs);
    std::vector<Piece> out;
    for (auto const& run : runs) {
        bool join = !out.empty();
        if (join) {
            Points const from = out.back().box.x1;
            Points const to = run.box.x0;
            int const column = columnAt(run.box.centre().x);
            int const before = columnAt(out.back().box.centre().x);
            bool boundary = false;
            for (int c = low; c < high; ++c) {
                if (boundaries == Boundaries::Soft && !isSoft(c + 1)) continue;
                Points const edge = m_columns.edges[static_cast<std::size_t>(c) + 1];
                boundary = boundary || (edge >= from - 0.3F * m_font && edge <= to + 0.3F * m_font);
            }
            // without column rules a gap on a boundary need only be wider than a word space
            bool const wide = to - from >= (m_region.ruledColumns ? gap : kOpenGap) * m_font && (column != before || m_region.ruledColumns || to - from >= gap * m_font);
            bool const values = to - from >= 0.45F * m_font && column != before && isValueLike(shapeOf(textOf(m_page, out.back()))) &&
                                isValueLike(shapeOf(textOf(m_page, run)));
            join = !(boundary && (wide || values));
        }
        if (join) {
            auto& last = out.back();
            last.count = run.first + run.count - last.first;
            last.box = united(last.box, run.box);
            last.bold = last.bold && run.bold;
        } else {
            out.push_back(run);
        }
    }
    parts.insert(parts.end(), out.begin(), out.end());
}

// Parts of a line in a merged area are cells of their own only when each could be one.
bool TableBuilder::standAlone(std::vector<Piece> const& parts) const {
    if (parts.size() < 2) return false;
    return std::all_of(parts.begin(), parts.end(), [&](Piece const& p) {
        auto const text = textOf(m_page, p);
        return isValueLike(shapeOf(text)) || columnTitle(text) != ColumnTitle::None;
    });
}

// A piece that reaches into a column where another piece of its line stands does not cover it.
void TableBuilder::settleNeighbours() {
    for (auto const& members : m_inArea) {
        for (auto const i : members) {
            auto& left = m_placed[i];
            if (left.column0 == left.column1 || left.wholeArea) continue;
            for (auto const j : members) {
                auto const& other = m_placed[j];
                if (i == j || std::abs(other.piece.baseline - left.piece.baseline) > kSameLine * m_font) continue;
                if (other.piece.box.x0 > left.piece.box.x0) {
                    left.column1 = std::max(left.column0, std::min(left.column1, other.column0 - 1));
                } else {
                    left.column0 = std::min(left.column1, std::max(left.column0, other.column1 + 1));
                }
            }
        }
    }
}

std::optional<Table> TableBuilder::makeTable() {
    GridDraft draft;
    draft.rows = m_rowOfBand.back();
    draft.columns = m_columns.count();
    draft.fontHeight = m_font;
    for (auto const& p : m_placed) {
        auto const& a = area(p.area);
        DraftPiece piece;
        piece.piece = p.piece;
        piece.row0 = p.row0;
        piece.row1 = p.row1;
        piece.column0 = p.column0;
        piece.column1 = p.column1;
        bool const wholeRows = m_rowOfBand[static_cast<std::size_t>(a.row0)] == p.row0 && m_rowOfBand[static_cast<std::size_t>(a.row1) + 1] - 1 == p.row1;
        bool const wholeColumns = m_firstColumn[static_cast<std::size_t>(a.column0)] == p.column0 &&
                                  m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1 == p.column1;
        if (m_region.ruledColumns && wholeRows && wholeColumns) piece.ruledBox = m_lattice.box(a);
        draft.pieces.push_back(piece);
    }
    draft.headRows = m_headRows;
    draft.openColumns = !m_region.ruledColumns;
    auto table = finishGrid(m_page, draft);
    if (!table) return std::nullopt;
    table->page = m_page.page;
    if (m_region.ruledColumns) {
        table->box = united(table->box, {m_lattice.xs.front(), m_lattice.ys.front(), m_lattice.xs.back(), m_lattice.ys.back()});
    }
    table->evidence.ruledColumns = m_region.ruledColumns;
    table->evidence.ruledRows = m_region.ruledRows;
    table->evidence.aligned = m_columns.count() > m_lattice.columns();
    table->evidence.headWords = m_headWords;
    table->evidence.leaders = m_leaders;
    for (auto const& cell : table->cells) {
        for (auto const word : cell.words) m_taken[word] = 1;
    }
    return table;
}
std::optional<Table> buildTable(PageLayout const& page, Region const& region, std::vector<char>& taken) {
    return TableBuilder(page, region, taken).build();
}

}  // namespace standin::tables
