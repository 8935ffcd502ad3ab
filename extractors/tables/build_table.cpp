// 1. The words of each printed line are parted at rules into pieces.
// 2. White gutters part ruled columns further where they must (columns.h).
// 3. Column titles and the content tell which columns hold values.
// 4. Each band becomes rows (rows.h); merged areas span the rows of their bands.
// 5. Cells are made, overlapping ones united, empty rows and columns dropped.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/build_table.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "extractors/tables/columns.h"
#include "extractors/tables/grid.h"
#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/rows.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Rect;
using model::Table;

namespace {

// In font heights.
constexpr float kColumnGap = 0.72F;    // a gap at a column boundary that parts two cells
constexpr float kMergedGap = 1.0F;     // the same inside an area that rules make one
constexpr float kSameLine = 0.45F;
constexpr float kLineSlack = 0.5F;     // a text may reach this far over the going on of a rule
constexpr float kOwnLines = 1.5F;      // lines at least this far apart are no wrapped text
constexpr float kOverflow = 0.35F;     // share of the next column that a long text may cover

constexpr int kMostHeadBands = 4;
constexpr std::size_t kMostHeadLines = 5;

enum class Boundaries : std::uint8_t { All, Soft };

class Builder {
public:
    Builder(PageLayout const& page, Region const& region, std::vector<char>& taken)
        : m_page(page), m_region(region), m_lattice(region.lattice), m_taken(taken), m_headBottom(region.headBottom) {}

    std::optional<Table> build() {
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

private:
    PageLayout const& m_page;
    Region const& m_region;
    Lattice const& m_lattice;
    std::vector<char>& m_taken;
    Points m_font = 10;
    std::vector<Piece> m_pieces;
    std::vector<int> m_areaOfPiece;
    ColumnModel m_columns;
    std::vector<char> m_weakLine;    // by lattice column line: drawn in less than half of the bands
    std::vector<char> m_softLine;    // by lattice column line: white space goes on where the rule is missing
    std::vector<int> m_firstColumn;  // first final column of each lattice column, and one past the end
    std::vector<PlacedPiece> m_placed;
    std::vector<std::vector<std::uint32_t>> m_inArea;  // placed pieces of each area
    int m_headBands = 0;           // bands that are head as a whole
    Points m_headBottom = -1;      // baseline of the last head line; that of the region where it knows
    std::vector<int> m_rowOfBand;  // first row of each band, and one past the end
    int m_headRows = 0;
    bool m_leaders = false;
    bool m_headWords = false;

    [[nodiscard]] RuledArea const& area(int index) const { return m_lattice.areas[static_cast<std::size_t>(index)]; }

    void collectPieces() {
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
                int const at = !usable ? -1 : turned ? whole : areaAt(word.box.centre());
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

    [[nodiscard]] int areaAt(model::Point p) const {
        int const row = m_lattice.rowAt(p.y);
        int const column = m_lattice.columnAt(p.x);
        if (row < 0 || column < 0) return -1;
        return m_lattice.areaOf[static_cast<std::size_t>(row * m_lattice.columns() + column)];
    }

    void findColumns() {
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
            m_columns.edges.insert(m_columns.edges.end(), cuts.begin(), cuts.end());
            m_columns.edges.push_back(m_lattice.xs[i + 1]);
        }
        m_firstColumn.push_back(m_columns.count());
        m_columns.titles.assign(static_cast<std::size_t>(m_columns.count()), ColumnTitle::None);
        m_columns.holdsValues.assign(static_cast<std::size_t>(m_columns.count()), 0);
    }

    [[nodiscard]] int columnAt(Points x) const {
        auto const it = std::upper_bound(m_columns.edges.begin(), m_columns.edges.end(), x);
        int const i = static_cast<int>(it - m_columns.edges.begin()) - 1;
        return std::clamp(i, 0, m_columns.count() - 1);
    }

    // Columns that a piece stands in: the one of its middle, and neighbours that it really covers.
    void setColumns(PlacedPiece& placed, int low, int high) const {
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
    void findSoftLines() {
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

    void placePieces() {
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
                placed.area = index;
                placed.column0 = low;
                placed.column1 = high;
                if (!whole) setColumns(placed, low, high);
                placed.wholeArea = whole;
                placed.weaklyPlaced = weakly;
                m_inArea[static_cast<std::size_t>(index)].push_back(static_cast<std::uint32_t>(m_placed.size()));
                m_placed.push_back(placed);
            }
        }
        settleNeighbours();
    }

    // A boundary between final columns that is no lattice line, or a soft one.
    [[nodiscard]] bool isSoft(int edge) const {
        auto const it = std::find(m_firstColumn.begin(), m_firstColumn.end(), edge);
        return it == m_firstColumn.end() || m_softLine[static_cast<std::size_t>(it - m_firstColumn.begin())] != 0;
    }

    // Cuts at gaps that lie on a column boundary.
    void cutAtColumns(Piece const& piece, int low, int high, float gap, Boundaries boundaries, std::vector<Piece>& parts) const {
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
                bool const wide = to - from >= gap * m_font;
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
    [[nodiscard]] bool standAlone(std::vector<Piece> const& parts) const {
        if (parts.size() < 2) return false;
        return std::all_of(parts.begin(), parts.end(), [&](Piece const& p) {
            auto const text = textOf(m_page, p);
            return isValueLike(shapeOf(text)) || columnTitle(text) != ColumnTitle::None;
        });
    }

    // A piece that reaches into a column where another piece of its line stands does not cover it.
    void settleNeighbours() {
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

    // Head bands, titles of the columns, and the last head line of an open body.
    void findHead() {
        int const bands = m_lattice.rows();
        for (int band = 0; band < std::min(bands, kMostHeadBands + 1); ++band) {
            std::vector<std::uint32_t> members;
            for (std::size_t a = 0; a < m_lattice.areas.size(); ++a) {
                if (m_lattice.areas[a].row0 == band) members.insert(members.end(), m_inArea[a].begin(), m_inArea[a].end());
            }
            if (members.empty()) continue;
            std::sort(members.begin(), members.end(), [&](auto a, auto b) { return m_placed[a].piece.baseline < m_placed[b].piece.baseline; });
            int const titles = readTitles(members, band);
            if (titles >= 2 || (titles == 1 && band > 0 && m_headBands == band)) {
                m_headBands = band + 1;
                m_headWords = true;
                continue;
            }
            if (m_headBands > 0 || m_headBottom > m_region.headBottom) break;
        }
        spreadRuledGroups();
        // Under variants, unlike under Min, Typ and Max, a missing rule means a value for all of them.
        for (auto& p : m_placed) {
            auto const& a = area(p.area);
            int const low = m_firstColumn[static_cast<std::size_t>(a.column0)];
            int const high = m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1;
            if (!p.weaklyPlaced) continue;
            bool const leaves = std::all_of(m_columns.titles.begin() + low, m_columns.titles.begin() + high + 1, isValueTitle);
            bool const alone = std::count_if(m_inArea[static_cast<std::size_t>(p.area)].begin(), m_inArea[static_cast<std::size_t>(p.area)].end(), [&](auto j) {
                                   return std::abs(m_placed[j].piece.baseline - p.piece.baseline) <= kSameLine * m_font;
                               }) == 1;
            if (leaves || !alone) continue;
            p.column0 = low;
            p.column1 = high;
        }
    }

    // A lone title in a ruled area that white space parts further down stands over all of it.
    void spreadRuledGroups() {
        if (!m_region.ruledColumns) return;
        for (std::size_t index = 0; index < m_lattice.areas.size(); ++index) {
            auto const& a = m_lattice.areas[index];
            int const low = m_firstColumn[static_cast<std::size_t>(a.column0)];
            int const high = m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1;
            if (a.row0 >= m_headBands || low == high) continue;
            for (auto const i : m_inArea[index]) {
                auto& p = m_placed[i];
                bool const alone = std::none_of(m_inArea[index].begin(), m_inArea[index].end(), [&](auto j) {
                    return i != j && std::abs(m_placed[j].piece.baseline - p.piece.baseline) <= kSameLine * m_font;
                });
                if (!alone || isValueTitle(columnTitle(textOf(m_page, p.piece)))) continue;
                p.column0 = low;
                p.column1 = high;
            }
        }
    }

    // Titles among the first lines of a band; gives how many, and sets m_headBottom.
    int readTitles(std::vector<std::uint32_t> const& members, int band) {
        int found = 0;
        std::vector<std::pair<int, std::string>> texts;  // by column: lines joined
        Points lastTitle = -1;
        std::vector<char> columnDone(static_cast<std::size_t>(m_columns.count()), 0);
        auto take = [&](PlacedPiece const& p, ColumnTitle title) {
            for (int c = p.column0; c <= p.column1; ++c) {
                auto& known = m_columns.titles[static_cast<std::size_t>(c)];
                bool const wide = p.column1 > p.column0;
                if (!wide || known == ColumnTitle::None) known = title;
            }
            if (columnDone[static_cast<std::size_t>(p.column0)] == 0) ++found;
            columnDone[static_cast<std::size_t>(p.column0)] = 1;
            lastTitle = std::max(lastTitle, p.piece.baseline);
        };
        Points const first = m_placed[members[0]].piece.baseline;
        std::size_t lineCount = 1;
        Points previous = first;
        for (std::size_t i = 0; i < members.size(); ++i) {
            auto const& p = m_placed[members[i]];
            if (p.piece.baseline - previous > kSameLine * m_font) {
                ++lineCount;
                // Title lines of an open body stand close together.
                if (found >= 2 && p.piece.baseline - previous > 1.9F * m_font) break;
                previous = p.piece.baseline;
            }
            if (lineCount > kMostHeadLines) break;
            auto text = textOf(m_page, p.piece);
            auto title = columnTitle(text);
            auto const it = std::find_if(texts.begin(), texts.end(), [&](auto const& t) { return t.first == p.column0 * 4096 + p.area; });
            if (it != texts.end()) {
                it->second += ' ' + text;
                auto const joined = columnTitle(it->second);
                if (joined != ColumnTitle::None) title = joined;
            } else {
                texts.emplace_back(p.column0 * 4096 + p.area, text);
            }
            if (title != ColumnTitle::None) take(p, title);
        }
        if (found >= 2) {
            m_headBottom = std::max(m_headBottom, lastTitle);
        } else if (m_headBands < band) {
            // One lucky word is no head.
            if (found > 0 && m_headBands == 0) std::fill(m_columns.titles.begin(), m_columns.titles.end(), ColumnTitle::None);
        }
        return found;
    }

    [[nodiscard]] bool isHeadPiece(PlacedPiece const& p) const {
        auto const& a = area(p.area);
        if (a.row0 < m_headBands && bandIsWholeHead(a.row0)) return true;
        return m_headBottom >= 0 && p.piece.baseline <= m_headBottom + kSameLine * m_font;
    }

    // A head band whose lines below the titles hold no values is head as a whole.
    [[nodiscard]] bool bandIsWholeHead(int band) const {
        return band < m_headBands && m_wholeHead.size() > static_cast<std::size_t>(band) && m_wholeHead[static_cast<std::size_t>(band)] != 0;
    }
    std::vector<char> m_wholeHead;

    void findValueColumns() {
        m_wholeHead.assign(static_cast<std::size_t>(m_lattice.rows()), 0);
        for (int band = 0; band < m_headBands; ++band) {
            int values = 0;
            int below = 0;
            for (auto const& p : m_placed) {
                if (area(p.area).row0 != band || p.piece.baseline <= m_headBottom + kSameLine * m_font) continue;
                ++below;
                if (isValueLike(shapeOf(textOf(m_page, p.piece)))) ++values;
            }
            m_wholeHead[static_cast<std::size_t>(band)] = values == 0 && (m_region.ruledColumns || below <= m_columns.count()) ? 1 : 0;
        }
        std::vector<int> all(static_cast<std::size_t>(m_columns.count()), 0);
        std::vector<int> values(static_cast<std::size_t>(m_columns.count()), 0);
        for (auto const& p : m_placed) {
            if (p.column0 != p.column1 || isHeadPiece(p)) continue;
            ++all[static_cast<std::size_t>(p.column0)];
            auto const shape = shapeOf(textOf(m_page, p.piece));
            if (shape == Shape::Number || shape == Shape::Expression) ++values[static_cast<std::size_t>(p.column0)];
            if (shape == Shape::Dash) --all[static_cast<std::size_t>(p.column0)];
        }
        bool titled = false;
        for (auto const title : m_columns.titles) titled = titled || isValueTitle(title);
        for (std::size_t c = 0; c < all.size(); ++c) {
            auto const title = m_columns.titles[c];
            if (isValueTitle(title)) {
                m_columns.holdsValues[c] = 1;
            } else if (title == ColumnTitle::None && values[c] > 0 && values[c] * 10 >= all[c] * 6 && c > 0) {
                m_columns.holdsValues[c] = 1;
            }
        }
        // Numbers left of titled value columns (test circuits, pins) are no values.
        if (titled) {
            std::size_t firstTitled = 0;
            while (!isValueTitle(m_columns.titles[firstTitled])) ++firstTitled;
            for (std::size_t c = 0; c < firstTitled; ++c) m_columns.holdsValues[c] = 0;
        }
    }

    void splitBands() {
        int const bands = m_lattice.rows();
        m_rowOfBand.push_back(0);
        std::vector<std::vector<PlacedPiece*>> ofBand(static_cast<std::size_t>(bands));
        std::vector<std::vector<PlacedPiece*>> headOfBand(static_cast<std::size_t>(bands));
        for (auto& p : m_placed) {
            auto const& a = area(p.area);
            if (a.row0 != a.row1) continue;
            (isHeadPiece(p) ? headOfBand : ofBand)[static_cast<std::size_t>(a.row0)].push_back(&p);
        }
        std::vector<std::vector<Points>> baselines(static_cast<std::size_t>(bands));
        int bodyBands = 0;
        for (auto const& band : ofBand) bodyBands += band.empty() ? 0 : 1;
        for (int band = 0; band < bands; ++band) {
            auto const i = static_cast<std::size_t>(band);
            int count = 0;
            if (!headOfBand[i].empty()) {
                count = splitHead(headOfBand[i]);
                baselines[i].assign(static_cast<std::size_t>(count), headOfBand[i][0]->piece.baseline);
                m_headRows = m_rowOfBand.back() + count;
            }
            if (!ofBand[i].empty() || count == 0) {
                auto const rows = splitBand(m_page, ofBand[i], m_columns, kindOf(ofBand[i], bodyBands), m_font);
                for (auto* p : ofBand[i]) {
                    p->row0 += count;
                    p->row1 += count;
                }
                count += rows.count;
                baselines[i].insert(baselines[i].end(), rows.baselines.begin(), rows.baselines.end());
            }
            m_rowOfBand.push_back(m_rowOfBand.back() + count);
        }
        // To rows of the table.
        std::vector<Points> all;
        for (auto const& ofOne : baselines) all.insert(all.end(), ofOne.begin(), ofOne.end());
        for (auto& p : m_placed) {
            auto const& a = area(p.area);
            int const first = m_rowOfBand[static_cast<std::size_t>(a.row0)];
            if (a.row0 == a.row1) {
                p.row0 += first;
                p.row1 += first;
            } else {
                p.row0 = first;
                p.row1 = m_rowOfBand[static_cast<std::size_t>(a.row1) + 1] - 1;
            }
        }
        for (std::size_t index = 0; index < m_lattice.areas.size(); ++index) {
            if (m_lattice.areas[index].row0 != m_lattice.areas[index].row1) shareOut(index, all);
        }
    }

    // A column left of the values with a single line: one symbol or name for all.
    [[nodiscard]] bool holdsOneName(std::vector<PlacedPiece*> const& pieces, int firstValue) const {
        std::vector<std::vector<Points>> lines(static_cast<std::size_t>(firstValue));
        for (auto const* p : pieces) {
            auto const title = m_columns.titles[static_cast<std::size_t>(p->column0)];
            if (p->column0 >= firstValue || title == ColumnTitle::Conditions || title == ColumnTitle::Unit) continue;
            auto& ys = lines[static_cast<std::size_t>(p->column0)];
            if (std::none_of(ys.begin(), ys.end(), [&](Points y) { return std::abs(y - p->piece.baseline) <= kSameLine * m_font; })) ys.push_back(p->piece.baseline);
        }
        return std::any_of(lines.begin(), lines.end(), [](auto const& ys) { return ys.size() == 1; });
    }

    [[nodiscard]] BandKind kindOf(std::vector<PlacedPiece*> const& pieces, int bodyBands) const {
        auto const anchors = valueBaselines(m_page, pieces, m_columns, m_font);
        int const firstValue = m_columns.firstValueColumn();
        if (firstValue == m_columns.count()) {
            if (m_region.ruledColumns && m_region.ruledRows && bodyBands > 2) return BandKind::Ruled;
            return bodyBands <= 2 || !m_region.ruledRows ? BandKind::Open : BandKind::Ruled;
        }
        if (anchors.size() < 2) return m_region.ruledColumns || (m_region.ruledRows && bodyBands > 2) ? BandKind::Ruled : BandKind::Open;
        if (anchors.size() == 2 && bodyBands > 2) return BandKind::Ruled;
        if (bodyBands > 2 && holdsOneName(pieces, firstValue)) return BandKind::Ruled;
        int named = 0;
        for (Points const y : anchors) {
            bool name = false;
            for (auto const* p : pieces) {
                if (p->column0 >= firstValue || std::abs(p->piece.baseline - y) > kSameLine * m_font) continue;
                auto const title = m_columns.titles[static_cast<std::size_t>(p->column0)];
                if (title == ColumnTitle::Conditions) continue;
                name = name || !statesConditions(textOf(m_page, p->piece));
            }
            named += name ? 1 : 0;
        }
        if (named * 10 >= static_cast<int>(anchors.size()) * 6) return BandKind::Open;
        return bodyBands <= 2 ? BandKind::Open : BandKind::Ruled;
    }

    // Rows of a head band. Titles that stand over several columns (groups) have
    // the rows above the leaf titles.
    int splitHead(std::vector<PlacedPiece*>& pieces) {
        std::sort(pieces.begin(), pieces.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
        std::vector<std::vector<PlacedPiece*>> lines;
        for (auto* p : pieces) {
            if (lines.empty() || p->piece.baseline - lines.back()[0]->piece.baseline > kSameLine * m_font) lines.emplace_back();
            lines.back().push_back(p);
        }
        std::size_t leaf = 0;  // the line with most value titles
        int most = 0;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            int values = 0;
            for (auto* p : lines[i]) values += isValueTitle(columnTitle(textOf(m_page, p->piece))) ? 1 : 0;
            if (values > 0 && values >= most) {
                most = values;
                leaf = i;
            }
        }
        bool grouped = false;
        for (std::size_t i = 0; i < leaf && most >= 2; ++i) {
            for (auto* p : lines[i]) {
                if (columnTitle(textOf(m_page, p->piece)) == ColumnTitle::None || p->column1 > p->column0) grouped = grouped || standsOverLeaves(*p, lines[leaf]);
            }
        }
        if (!grouped) {
            for (auto* p : pieces) p->row0 = p->row1 = 0;
            return 1;
        }
        spreadGroups(lines, leaf);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (auto* p : lines[i]) {
                bool const group = i < leaf && standsOverLeaves(*p, lines[leaf]);
                bool const isLeaf = i >= leaf && isValueTitle(m_columns.titles[static_cast<std::size_t>(p->column0)]);
                p->row0 = isLeaf ? 1 : 0;
                p->row1 = group ? 0 : 1;
            }
        }
        return 2;
    }

    [[nodiscard]] bool standsOverLeaves(PlacedPiece const& p, std::vector<PlacedPiece*> const& leaves) const {
        return std::any_of(leaves.begin(), leaves.end(), [&](PlacedPiece* l) {
            return l != &p && l->column0 <= p.column1 && l->column1 >= p.column0 && isValueTitle(columnTitle(textOf(m_page, l->piece)));
        });
    }

    // Group titles centred over several leaves get the columns up to half way to their neighbours.
    void spreadGroups(std::vector<std::vector<PlacedPiece*>>& lines, std::size_t leaf) {
        for (std::size_t i = 0; i < leaf; ++i) {
            std::vector<PlacedPiece*> groups;
            for (auto* p : lines[i]) {
                if (standsOverLeaves(*p, lines[leaf])) groups.push_back(p);
            }
            std::sort(groups.begin(), groups.end(), [](auto* a, auto* b) { return a->piece.box.x0 < b->piece.box.x0; });
            std::vector<PlacedPiece*> leaves;
            for (auto* l : lines[leaf]) {
                if (isValueTitle(columnTitle(textOf(m_page, l->piece)))) leaves.push_back(l);
            }
            if (groups.empty() || leaves.empty()) continue;
            std::vector<std::pair<int, int>> reach(groups.size(), {m_columns.count(), -1});
            for (auto* l : leaves) {
                std::size_t best = 0;
                for (std::size_t g = 1; g < groups.size(); ++g) {
                    auto const distance = [&](std::size_t k) { return std::abs(groups[k]->piece.box.centre().x - l->piece.box.centre().x); };
                    if (distance(g) < distance(best)) best = g;
                }
                if (groups[best]->area != l->area && area(groups[best]->area).column0 != area(l->area).column0) continue;
                reach[best].first = std::min(reach[best].first, l->column0);
                reach[best].second = std::max(reach[best].second, l->column1);
            }
            for (std::size_t g = 0; g < groups.size(); ++g) {
                if (reach[g].second < 0) continue;
                groups[g]->column0 = std::min(groups[g]->column0, reach[g].first);
                groups[g]->column1 = std::max(groups[g]->column1, reach[g].second);
            }
        }
    }

    // Further apart than the lines of one text.
    [[nodiscard]] bool spacedOut(std::vector<Points> const& ys) const {
        for (std::size_t i = 1; i < ys.size(); ++i) {
            if (ys[i] - ys[i - 1] < kOwnLines * m_font) return false;
        }
        return true;
    }

    // Names that do not go on from each other, or conditions on one and the same thing.
    [[nodiscard]] bool namesOfTheirOwn(std::vector<std::uint32_t> const& members) const {
        bool const conditions = std::any_of(members.begin(), members.end(), [&](auto i) { return statesConditions(textOf(m_page, m_placed[i].piece)); });
        if (conditions) return sameVariable(members);
        return std::none_of(members.begin(), members.end(), [&](auto i) {
            auto const text = textOf(m_page, m_placed[i].piece);
            return text.empty() || (text[0] >= 'a' && text[0] <= 'z') || text[0] == '(';
        });
    }

    [[nodiscard]] bool sameVariable(std::vector<std::uint32_t> const& members) const {
        std::string variable;
        for (auto const i : members) {
            auto const text = textOf(m_page, m_placed[i].piece);
            auto const sign = text.find('=');
            if (sign == std::string::npos || sign == 0) return false;
            auto const left = text.substr(0, sign);
            if (variable.empty()) variable = left;
            if (left != variable) return false;
        }
        return true;
    }

    // An area over several bands whose lines stand each beside a row of its own is no merged cell.
    void shareOut(std::size_t index, std::vector<Points> const& baselines) {
        auto& members = m_inArea[index];
        if (members.size() < 2) return;
        auto const& a = m_lattice.areas[index];
        int const first = m_rowOfBand[static_cast<std::size_t>(a.row0)];
        int const last = m_rowOfBand[static_cast<std::size_t>(a.row1) + 1] - 1;
        if (first < m_headRows) return;
        std::vector<Points> ys;
        for (auto const i : members) ys.push_back(m_placed[i].piece.baseline);
        std::sort(ys.begin(), ys.end());
        ys.erase(std::unique(ys.begin(), ys.end(), [&](Points p, Points q) { return q - p <= kSameLine * m_font; }), ys.end());
        bool const values = std::all_of(members.begin(), members.end(), [&](auto i) { return isValueLike(shapeOf(textOf(m_page, m_placed[i].piece))); });
        auto rowBeside = [&](Points y) {
            // Values count by the band they stand in where it is one row; words need text beside.
            int const band = m_lattice.rowAt(y - 0.3F * m_font);
            if (values && band >= a.row0 && band <= a.row1 &&
                m_rowOfBand[static_cast<std::size_t>(band) + 1] - m_rowOfBand[static_cast<std::size_t>(band)] == 1) {
                return m_rowOfBand[static_cast<std::size_t>(band)];
            }
            for (int row = first; row <= last; ++row) {
                if (std::abs(baselines[static_cast<std::size_t>(row)] - y) <= 0.6F * m_font) return row;
            }
            return -1;
        };
        if (ys.size() < 2 || std::any_of(ys.begin(), ys.end(), [&](Points y) { return rowBeside(y) < 0; })) return;
        bool const oneEach = static_cast<int>(ys.size()) == last - first + 1;
        for (std::size_t i = 1; i < ys.size(); ++i) {
            if (rowBeside(ys[i]) == rowBeside(ys[i - 1])) return;
        }
        if (!values && !(oneEach && (spacedOut(ys) ? namesOfTheirOwn(members) : sameVariable(members)))) return;
        for (auto const i : members) m_placed[i].row0 = m_placed[i].row1 = rowBeside(m_placed[i].piece.baseline);
    }

    std::optional<Table> makeTable() {
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
};

}  // namespace

std::optional<Table> buildTable(PageLayout const& page, Region const& region, std::vector<char>& taken) {
    return Builder(page, region, taken).build();
}

}  // namespace standin::tables
