// 1. Column titles and the content tell which columns hold values.
// 2. Each band becomes rows (rows.h); bands of titles become rows of the head.
// 3. Merged areas span the rows of their bands, unless their lines stand beside rows of their own.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/table_builder.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <string>

#include "extractors/tables/head_words.h"
#include "extractors/tables/part_rows.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::Points;

namespace {

// In font heights.
constexpr float kOwnLines = 1.5F;  // lines at least this far apart are no wrapped text

constexpr float kInTheMiddle = 0.3F;   // from the middle of its rows to a symbol that holds for all of them
constexpr float kSymbolsApart = 2.2F;  // symbols at least this far apart stand for several parameters
constexpr float kLeafPitch = 2.6F;  // from titles to the titles below them

constexpr int kMostHeadBands = 4;
constexpr std::size_t kMostHeadLines = 5;
constexpr int kMostSharedRows = 60;

}  // namespace

// Head bands, titles of the columns, and the last head line of an open body.
void TableBuilder::findHead() {
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
    findLeafTitles();
    spreadRuledGroups();
    // Under variants, unlike under Min, Typ and Max, a missing rule means a value for all of them.
    for (auto& p : m_placed) {
        auto const& a = area(p.area);
        int const low = m_firstColumn[static_cast<std::size_t>(a.column0)];
        int const high = m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1;
        if (!p.weaklyPlaced) continue;
        bool const leaves = std::all_of(m_columns.titles.begin() + low, m_columns.titles.begin() + high + 1, isValueTitle);
        bool const alone = std::count_if(m_inArea[static_cast<std::size_t>(p.area)].begin(), m_inArea[static_cast<std::size_t>(p.area)].end(),
                                         [&](auto j) { return std::abs(m_placed[j].piece.baseline - p.piece.baseline) <= kSameLine * m_font; }) == 1;
        if (leaves || !alone) continue;
        p.column0 = low;
        p.column1 = high;
    }
}

// Without column rules: a line right below the titles whose pieces stand in columns that have no title yet, and
// nowhere else, holds the titles of those columns ("-40 °C | 25 °C | 85 °C" under "Limits").
void TableBuilder::findLeafTitles() {
    if (!m_headWords || m_region.ruledColumns) return;
    Points next = -1;
    for (auto const& p : m_placed) {
        Points const y = p.piece.baseline;
        if (y > m_headBottom + kSameLine * m_font && (next < 0 || y < next)) next = y;
    }
    if (next < 0 || next - m_headBottom > kLeafPitch * m_font) return;
    int pieces = 0;
    int untitled = 0;
    for (auto const& p : m_placed) {
        if (std::abs(p.piece.baseline - next) > kSameLine * m_font) continue;
        auto const title = m_columns.titles[static_cast<std::size_t>(p.column0)];
        bool const package = title == ColumnTitle::Pin && p.shape != Shape::Number && p.shape != Shape::Dash;  // "SOP-8" under "Pin"
        // what stands under "Min" is a limit, and the line one of values
        if (p.column0 != p.column1 || (title != ColumnTitle::None && title != ColumnTitle::Value && !package)) return;
        ++pieces;
        untitled += title == ColumnTitle::None || package ? 1 : 0;
    }
    if (pieces < 2 || untitled * 2 < pieces) return;
    // a first line of values has a name somewhere above or beside it: told by what stands below in the same columns
    int below = 0;
    int numbers = 0;
    for (auto const& p : m_placed) {
        bool const under =
            std::any_of(m_placed.begin(), m_placed.end(), [&](auto const& q) { return std::abs(q.piece.baseline - next) <= kSameLine * m_font && q.column0 == p.column0; });
        if (!under || p.piece.baseline <= next + kSameLine * m_font) continue;
        ++below;
        numbers += isValueLike(p.shape) ? 1 : 0;
    }
    if (below < pieces || numbers * 10 < below * 7) return;
    m_leafTitles = next;
    m_headBottom = next;
    for (auto const& p : m_placed) {
        auto& title = m_columns.titles[static_cast<std::size_t>(p.column0)];
        if (std::abs(p.piece.baseline - next) > kSameLine * m_font || title != ColumnTitle::None) continue;
        title = columnTitle(textOf(m_page, p.piece));
    }
}

// A lone title in a ruled area that white space parts further down stands over all of it.
void TableBuilder::spreadRuledGroups() {
    if (!m_region.ruledColumns) return;
    for (std::size_t index = 0; index < m_lattice.areas.size(); ++index) {
        auto const& a = m_lattice.areas[index];
        int const low = m_firstColumn[static_cast<std::size_t>(a.column0)];
        int const high = m_firstColumn[static_cast<std::size_t>(a.column1) + 1] - 1;
        if (a.row0 >= m_headBands || low == high) continue;
        for (auto const i : m_inArea[index]) {
            auto& p = m_placed[i];
            bool const alone = std::none_of(m_inArea[index].begin(), m_inArea[index].end(),
                                            [&](auto j) { return i != j && std::abs(m_placed[j].piece.baseline - p.piece.baseline) <= kSameLine * m_font; });
            if (!alone || isValueTitle(columnTitle(textOf(m_page, p.piece)))) continue;
            p.column0 = low;
            p.column1 = high;
        }
    }
}

// Baseline of the last of the first lines that may be head: below titles, a line of numbers is none, whatever
// its words read like (the symbol "IO", "Max" behind a name).
Points TableBuilder::lastTitleLine(std::vector<std::uint32_t> const& members) const {
    struct Line {
        Points baseline = 0;
        int titles = 0;
        int limits = 0;
        int numbers = 0;
    };
    std::vector<Line> lines;
    for (auto const i : members) {
        auto const& piece = m_placed[i].piece;
        if (lines.empty() || piece.baseline - lines.back().baseline > kSameLine * m_font) {
            if (lines.size() == kMostHeadLines) break;
            lines.push_back({.baseline = piece.baseline});
        }
        auto const title = columnTitle(textOf(m_page, piece));
        lines.back().titles += title != ColumnTitle::None ? 1 : 0;
        lines.back().limits += isValueTitle(title) ? 1 : 0;
        lines.back().numbers += m_placed[i].shape == Shape::Number ? 1 : 0;
    }
    std::size_t last = lines.size();
    while (last > 0 && lines[last - 1].limits < 2) --last;  // temperatures may stand over "Min" and "Max"
    int titles = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (i >= last && titles >= 2 && lines[i].numbers > 0 && lines[i].numbers >= lines[i].titles) return lines[i - 1].baseline;
        titles += lines[i].titles;
    }
    return lines.back().baseline;
}

// Titles among the first lines of a band; gives how many, and sets m_headBottom.
int TableBuilder::readTitles(std::vector<std::uint32_t> const& members, int band) {
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
    Points const bottom = lastTitleLine(members);
    std::size_t lineCount = 1;
    Points previous = m_placed[members[0]].piece.baseline;
    for (std::size_t i = 0; i < members.size(); ++i) {
        auto const& p = m_placed[members[i]];
        if (p.piece.baseline - previous > kSameLine * m_font) {
            ++lineCount;
            // Title lines of an open body stand close together.
            if (found >= 2 && p.piece.baseline - previous > 1.9F * m_font) break;
            previous = p.piece.baseline;
        }
        if (lineCount > kMostHeadLines || p.piece.baseline > bottom + kSameLine * m_font) break;
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

bool TableBuilder::isHeadPiece(PlacedPiece const& p) const {
    auto const& a = area(p.area);
    if (a.row0 < m_headBands && bandIsWholeHead(a.row0)) return true;
    return m_headBottom >= 0 && p.piece.baseline <= m_headBottom + kSameLine * m_font;
}

// A head band whose lines below the titles hold no values is head as a whole.
bool TableBuilder::bandIsWholeHead(int band) const {
    return band < m_headBands && m_wholeHead.size() > static_cast<std::size_t>(band) && m_wholeHead[static_cast<std::size_t>(band)] != 0;
}

void TableBuilder::findValueColumns() {
    m_wholeHead.assign(static_cast<std::size_t>(m_lattice.rows()), 0);
    for (int band = 0; band < m_headBands; ++band) {
        int values = 0;
        int below = 0;
        for (auto const& p : m_placed) {
            if (area(p.area).row0 != band || p.piece.baseline <= m_headBottom + kSameLine * m_font) continue;
            ++below;
            if (isValueLike(p.shape)) ++values;
        }
        m_wholeHead[static_cast<std::size_t>(band)] = values == 0 && (m_region.ruledColumns || below <= m_columns.count()) ? 1 : 0;
    }
    std::vector<int> all(static_cast<std::size_t>(m_columns.count()), 0);
    std::vector<int> values(static_cast<std::size_t>(m_columns.count()), 0);
    for (auto const& p : m_placed) {
        if (p.column0 != p.column1 || isHeadPiece(p)) continue;
        ++all[static_cast<std::size_t>(p.column0)];
        if (p.shape == Shape::Number || p.shape == Shape::Expression) ++values[static_cast<std::size_t>(p.column0)];
        if (p.shape == Shape::Dash) --all[static_cast<std::size_t>(p.column0)];
    }
    // "Rating" heads names where another column holds the values.
    if (std::count_if(m_columns.titles.begin(), m_columns.titles.end(), isValueTitle) > 1 && m_columns.titles[0] == ColumnTitle::Value && all[0] > 0 && values[0] * 3 < all[0]) {
        m_columns.titles[0] = ColumnTitle::Parameter;
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

// Baselines of the printed lines in an area.
std::vector<Points> TableBuilder::linesOf(std::size_t areaIndex) const {
    std::vector<Points> ys;
    for (auto const i : m_inArea[areaIndex]) ys.push_back(m_placed[i].piece.baseline);
    std::sort(ys.begin(), ys.end());
    ys.erase(std::unique(ys.begin(), ys.end(), [&](Points p, Points q) { return q - p <= kSameLine * m_font; }), ys.end());
    return ys;
}

// The band that a piece is a part of; -1: several.
int TableBuilder::bandOf(PlacedPiece const& p) const {
    auto const& a = area(p.area);
    return p.band >= 0 || a.row0 == a.row1 ? std::max(p.band, a.row0) : -1;
}

// A rule inside one cell (of a condition, say) makes a band line that the values pass by. An area over several bands
// with several lines of values is no merged cell: each line stands in its band, and so do as many units beside them.
void TableBuilder::releaseValueLines() {
    auto const release = [&](std::size_t index) {
        auto const& a = m_lattice.areas[index];
        for (auto const i : m_inArea[index]) m_placed[i].band = std::clamp(m_lattice.rowAt(m_placed[i].piece.baseline - 0.3F * m_font), a.row0, a.row1);
    };
    std::vector<std::size_t> released;
    for (std::size_t index = 0; index < m_lattice.areas.size(); ++index) {
        auto const& a = m_lattice.areas[index];
        auto const& members = m_inArea[index];
        if (a.row0 == a.row1 || a.row0 < m_headBands || members.size() < 2) continue;
        if (m_columns.holdsValues[static_cast<std::size_t>(m_firstColumn[static_cast<std::size_t>(a.column0)])] == 0) continue;
        bool const numbers = std::all_of(members.begin(), members.end(), [&](auto i) {
            auto const shape = m_placed[i].shape;
            return shape == Shape::Number || shape == Shape::Dash || textOf(m_page, m_placed[i].piece).find("\u2264") != std::string::npos;  // "(8 ≤ VIN ≤ 18)"
        });
        if (!numbers || static_cast<int>(linesOf(index).size()) <= a.row1 - a.row0 + 1) continue;
        released.push_back(index);
    }
    for (auto const index : released) release(index);
    for (std::size_t index = 0; index < m_lattice.areas.size() && !released.empty(); ++index) {
        auto const& a = m_lattice.areas[index];
        if (m_columns.titles[static_cast<std::size_t>(m_firstColumn[static_cast<std::size_t>(a.column0)])] != ColumnTitle::Unit) continue;
        bool const beside = std::any_of(released.begin(), released.end(), [&](auto other) {
            auto const& b = m_lattice.areas[other];
            return a.row0 == b.row0 && a.row1 == b.row1 && linesOf(index).size() == linesOf(other).size();
        });
        if (beside) release(index);
    }
}

void TableBuilder::splitBands() {
    int const bands = m_lattice.rows();
    releaseValueLines();
    m_rowOfBand.push_back(0);
    std::vector<std::vector<PlacedPiece*>> ofBand(static_cast<std::size_t>(bands));
    std::vector<std::vector<PlacedPiece*>> headOfBand(static_cast<std::size_t>(bands));
    for (auto& p : m_placed) {
        int const band = bandOf(p);
        if (band < 0) continue;
        (isHeadPiece(p) ? headOfBand : ofBand)[static_cast<std::size_t>(band)].push_back(&p);
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
        int const band = bandOf(p);
        int const first = m_rowOfBand[static_cast<std::size_t>(band >= 0 ? band : a.row0)];
        if (band >= 0) {
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
bool TableBuilder::holdsOneName(std::vector<PlacedPiece*> const& pieces, int firstValue) const {
    std::vector<std::vector<Points>> lines(static_cast<std::size_t>(firstValue));
    for (auto const* p : pieces) {
        auto const title = m_columns.titles[static_cast<std::size_t>(p->column0)];
        if (p->column0 >= firstValue || title == ColumnTitle::Conditions || title == ColumnTitle::Unit) continue;
        auto& ys = lines[static_cast<std::size_t>(p->column0)];
        if (std::none_of(ys.begin(), ys.end(), [&](Points y) { return std::abs(y - p->piece.baseline) <= kSameLine * m_font; })) ys.push_back(p->piece.baseline);
    }
    return std::any_of(lines.begin(), lines.end(), [](auto const& ys) { return ys.size() == 1; });
}

// The symbol, in a line or two set close, stands in the middle of three lines of values or more: it holds for all.
bool TableBuilder::holdsCentredSymbol(std::vector<PlacedPiece*> const& pieces, std::vector<Points> const& anchors) const {
    if (anchors.size() < 3) return false;
    std::vector<Points> ys;
    for (auto const* p : pieces) {
        if (p->column0 == p->column1 && m_columns.titles[static_cast<std::size_t>(p->column0)] == ColumnTitle::Symbol) ys.push_back(p->piece.baseline);
    }
    if (ys.empty()) return false;
    auto const [top, bottom] = std::minmax_element(ys.begin(), ys.end());
    if (*bottom - *top > kOwnLines * m_font) return false;
    return std::abs((*top + *bottom) - (anchors.front() + anchors.back())) <= 2 * kInTheMiddle * m_font;
}

// Several symbols further apart than lines of one text: several parameters without a rule between.
bool TableBuilder::holdsSymbolsApart(std::vector<PlacedPiece*> const& pieces, int firstValue) const {
    std::vector<Points> ys;
    for (auto const* p : pieces) {
        if (p->column0 < firstValue && m_columns.titles[static_cast<std::size_t>(p->column0)] == ColumnTitle::Symbol) ys.push_back(p->piece.baseline);
    }
    std::sort(ys.begin(), ys.end());
    return std::adjacent_find(ys.begin(), ys.end(), [&](Points a, Points b) { return b - a >= kSymbolsApart * m_font; }) != ys.end();
}

BandKind TableBuilder::kindOf(std::vector<PlacedPiece*> const& pieces, int bodyBands) const {
    auto const anchors = valueBaselines(m_page, pieces, m_columns, m_font);
    int const firstValue = m_columns.firstValueColumn();
    if (firstValue == m_columns.count()) {
        if (m_region.ruledColumns && m_region.ruledRows && bodyBands > 2) return BandKind::Ruled;
        return bodyBands <= 2 || !m_region.ruledRows ? BandKind::Open : BandKind::Ruled;
    }
    if (anchors.size() < 2) return m_region.ruledColumns || (m_region.ruledRows && bodyBands > 2) ? BandKind::Ruled : BandKind::Open;
    if (anchors.size() == 2 && bodyBands > 2) return BandKind::Ruled;
    if (anchors.size() > 2 && holdsSymbolsApart(pieces, firstValue)) return BandKind::Open;
    if (bodyBands > 2 && holdsOneName(pieces, firstValue)) return BandKind::Ruled;
    if (bodyBands > 1 && m_region.ruledRows && holdsCentredSymbol(pieces, anchors)) return BandKind::Ruled;
    int named = 0;
    for (Points const y : anchors) {
        bool name = false;
        for (auto const* p : pieces) {
            if (p->column0 >= firstValue || std::abs(p->piece.baseline - y) > kSameLine * m_font) continue;
            auto const title = m_columns.titles[static_cast<std::size_t>(p->column0)];
            if (title == ColumnTitle::Conditions) continue;
            name = name || (!isValueLike(p->shape) && !statesConditions(textOf(m_page, p->piece)));  // "4.5 V" is a level
        }
        named += name ? 1 : 0;
    }
    if (named * 10 >= static_cast<int>(anchors.size()) * 6) return BandKind::Open;
    return bodyBands <= 2 ? BandKind::Open : BandKind::Ruled;
}

// Rows of a head band. Titles that stand over several columns (groups) have
// the rows above the leaf titles.
int TableBuilder::splitHead(std::vector<PlacedPiece*>& pieces) {
    std::sort(pieces.begin(), pieces.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    std::vector<std::vector<PlacedPiece*>> lines;
    for (auto* p : pieces) {
        if (lines.empty() || p->piece.baseline - lines.back()[0]->piece.baseline > kSameLine * m_font) lines.emplace_back();
        lines.back().push_back(p);
    }
    bool const limits = std::count_if(lines.back().begin(), lines.back().end(), [&](PlacedPiece* p) { return isValueTitle(columnTitle(textOf(m_page, p->piece))); }) >= 2;
    if (lines.size() > 1 && !limits && m_leafTitles >= 0 && std::abs(lines.back()[0]->piece.baseline - m_leafTitles) <= kSameLine * m_font) {
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (auto* p : lines[i]) p->row0 = p->row1 = i + 1 == lines.size() ? 1 : 0;
        }
        return 2;
    }
    std::size_t leaf = 0;  // the line with most value titles
    int most = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        int values = 0;
        for (auto* p : lines[i]) values += isLeafTitle(*p) ? 1 : 0;
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
            bool const isLeaf = i >= leaf && (isValueTitle(m_columns.titles[static_cast<std::size_t>(p->column0)]) || isLeafTitle(*p));
            p->row0 = isLeaf ? 1 : 0;
            p->row1 = group ? 0 : 1;
        }
    }
    return 2;
}

bool TableBuilder::standsOverLeaves(PlacedPiece const& p, std::vector<PlacedPiece*> const& leaves) const {
    return std::any_of(leaves.begin(), leaves.end(), [&](PlacedPiece* l) { return l != &p && l->column0 <= p.column1 && l->column1 >= p.column0 && isLeafTitle(*l); });
}

// "Min" and "Max"; where no column has such a title, also the "5 V" and "10 V" over columns of values.
bool TableBuilder::isLeafTitle(PlacedPiece const& p) const {
    auto const text = textOf(m_page, p.piece);
    if (isValueTitle(columnTitle(text))) return true;
    auto const column = static_cast<std::size_t>(p.column0);
    bool const level = m_columns.titles[column] == ColumnTitle::None && m_columns.holdsValues[column] != 0 && p.shape == Shape::Number;
    return level && std::none_of(m_columns.titles.begin(), m_columns.titles.end(), isValueTitle);
}

// "Min Typ Max Min Typ Max": which set each leaf belongs to, where every set begins with the first title.
std::vector<std::size_t> TableBuilder::repeatedSets(std::vector<PlacedPiece*>& leaves) const {
    std::sort(leaves.begin(), leaves.end(), [](auto* a, auto* b) { return a->piece.box.x0 < b->piece.box.x0; });
    std::vector<std::size_t> sets;
    std::vector<ColumnTitle> seen;
    for (auto const* l : leaves) {
        auto const title = columnTitle(textOf(m_page, l->piece));
        if (!isValueTitle(title)) return {};
        bool const again = std::find(seen.begin(), seen.end(), title) != seen.end();
        if (again) seen.clear();
        sets.push_back(sets.empty() ? 0 : sets.back() + (again ? 1 : 0));
        seen.push_back(title);
    }
    return sets;
}

// Group titles centred over several leaves get the columns up to half way to their neighbours.
void TableBuilder::spreadGroups(std::vector<std::vector<PlacedPiece*>>& lines, std::size_t leaf) {
    for (std::size_t i = 0; i < leaf; ++i) {
        std::vector<PlacedPiece*> groups;
        for (auto* p : lines[i]) {
            if (standsOverLeaves(*p, lines[leaf])) groups.push_back(p);
        }
        std::sort(groups.begin(), groups.end(), [](auto* a, auto* b) { return a->piece.box.x0 < b->piece.box.x0; });
        std::vector<PlacedPiece*> leaves;
        for (auto* l : lines[leaf]) {
            if (isLeafTitle(*l)) leaves.push_back(l);
        }
        if (groups.empty() || leaves.empty()) continue;
        std::vector<std::pair<int, int>> reach(groups.size(), {m_columns.count(), -1});
        auto const sets = repeatedSets(leaves);
        for (std::size_t k = 0; k < leaves.size(); ++k) {
            auto* const l = leaves[k];
            std::size_t best = 0;
            for (std::size_t g = 1; g < groups.size(); ++g) {
                auto const distance = [&](std::size_t at) { return std::abs(groups[at]->piece.box.centre().x - l->piece.box.centre().x); };
                if (distance(g) < distance(best)) best = g;
            }
            if (!sets.empty() && sets.back() + 1 == groups.size()) best = sets[k];  // a title for each "Min Typ Max"
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
bool TableBuilder::spacedOut(std::vector<Points> const& ys) const {
    for (std::size_t i = 1; i < ys.size(); ++i) {
        if (ys[i] - ys[i - 1] < kOwnLines * m_font) return false;
    }
    return true;
}

// Names that do not go on from each other, or conditions on one and the same thing.
bool TableBuilder::namesOfTheirOwn(std::vector<std::uint32_t> const& members) const {
    bool const conditions = std::any_of(members.begin(), members.end(), [&](auto i) { return statesConditions(textOf(m_page, m_placed[i].piece)); });
    if (conditions) return sameVariable(linesOfText(members));
    return std::none_of(members.begin(), members.end(), [&](auto i) {
        auto const text = textOf(m_page, m_placed[i].piece);
        return text.empty() || (text[0] >= 'a' && text[0] <= 'z') || text[0] == '(';
    });
}

// "TA = 25 C" above "TA = 70 C"; a name may stand in front of the first ("Drain current TA = 25 C").
bool TableBuilder::sameVariable(std::vector<std::string> const& lines) {
    std::string first;
    std::string variable;
    for (auto const& line : lines) {
        auto const sign = line.find('=');
        if (sign == std::string::npos || sign == 0) return false;
        auto const left = line.substr(0, sign);
        if (first.empty()) {
            first = left;
            continue;
        }
        if (variable.empty()) variable = left;
        if (left != variable) return false;
    }
    return first == variable || (!variable.empty() && first.ends_with(' ' + variable));
}

// The printed lines of the pieces, from the top.
std::vector<std::string> TableBuilder::linesOfText(std::vector<std::uint32_t> members) const {
    std::sort(members.begin(), members.end(), [&](auto a, auto b) { return m_placed[a].piece.baseline < m_placed[b].piece.baseline; });
    std::vector<std::vector<Piece const*>> lines;
    for (auto const i : members) {
        auto const& piece = m_placed[i].piece;
        if (lines.empty() || piece.baseline - lines.back().front()->baseline > kSameLine * m_font) lines.emplace_back();
        lines.back().push_back(&piece);
    }
    std::vector<std::string> out;
    for (auto& line : lines) {
        std::sort(line.begin(), line.end(), [](auto* a, auto* b) { return a->box.x0 < b->box.x0; });
        std::string& text = out.emplace_back();
        for (auto const* piece : line) text += (text.empty() ? "" : " ") + textOf(m_page, *piece);
    }
    return out;
}

// Units in one area ("ns" beside four rows, "A" beside the next): each for the rows around it.
bool TableBuilder::shareOutUnits(std::vector<std::uint32_t> members, int first, int last, std::vector<Points> const& baselines) {
    std::sort(members.begin(), members.end(), [&](auto a, auto b) { return m_placed[a].piece.baseline < m_placed[b].piece.baseline; });
    auto const count = static_cast<int>(members.size());
    int const rows = last - first + 1;
    if (count < 2 || count > rows || rows > kMostSharedRows) return false;
    std::vector<Points> ys;
    for (auto const i : members) ys.push_back(m_placed[i].piece.baseline);
    if (!spacedOut(ys)) return false;
    auto const parted = partRows(std::span(baselines).subspan(static_cast<std::size_t>(first), static_cast<std::size_t>(rows)), ys);
    if (!parted || parted->off > 0.8F * m_font * static_cast<Points>(count)) return false;
    for (std::size_t k = 0; k < members.size(); ++k) {
        auto& p = m_placed[members[k]];
        p.row0 = first + parted->firsts[k];
        p.row1 = k + 1 < members.size() ? first + parted->firsts[k + 1] - 1 : last;
    }
    return true;
}

// An area over several bands whose lines stand each beside a row of its own is no merged cell.
void TableBuilder::shareOut(std::size_t index, std::vector<Points> const& baselines) {
    auto& members = m_inArea[index];
    if (members.size() < 2 || m_placed[members.front()].band >= 0) return;
    auto const& a = m_lattice.areas[index];
    int const first = m_rowOfBand[static_cast<std::size_t>(a.row0)];
    int const last = m_rowOfBand[static_cast<std::size_t>(a.row1) + 1] - 1;
    if (first < m_headRows) return;
    std::vector<Points> const ys = linesOf(index);
    bool const values = std::all_of(members.begin(), members.end(), [&](auto i) { return isValueLike(m_placed[i].shape); });
    auto rowBeside = [&](Points y) {
        // Values count by the band they stand in where it is one row; words need text beside.
        int const band = m_lattice.rowAt(y - 0.3F * m_font);
        if (values && band >= a.row0 && band <= a.row1 && m_rowOfBand[static_cast<std::size_t>(band) + 1] - m_rowOfBand[static_cast<std::size_t>(band)] == 1) {
            return m_rowOfBand[static_cast<std::size_t>(band)];
        }
        for (int row = first; row <= last; ++row) {
            if (std::abs(baselines[static_cast<std::size_t>(row)] - y) <= 0.6F * m_font) return row;
        }
        return -1;
    };
    // "TA = 25 °C" above "TA = 70 °C" beside two rows: a condition each, wherever exactly they stand.
    if (ys.size() >= 2 && static_cast<int>(ys.size()) == last - first + 1 && sameVariable(linesOfText(members))) {
        for (auto const i : members) {
            auto const at = std::upper_bound(ys.begin(), ys.end(), m_placed[i].piece.baseline) - 1;
            m_placed[i].row0 = m_placed[i].row1 = first + static_cast<int>(at - ys.begin());
        }
        return;
    }
    int const column = m_firstColumn[static_cast<std::size_t>(a.column0)];
    if (a.column0 == a.column1 && m_columns.titles[static_cast<std::size_t>(column)] == ColumnTitle::Unit && shareOutUnits(members, first, last, baselines)) return;
    if (ys.size() < 2 || std::any_of(ys.begin(), ys.end(), [&](Points y) { return rowBeside(y) < 0; })) return;
    bool const oneEach = static_cast<int>(ys.size()) == last - first + 1;
    for (std::size_t i = 1; i < ys.size(); ++i) {
        if (rowBeside(ys[i]) == rowBeside(ys[i - 1])) return;
    }
    if (!values && !(oneEach && (spacedOut(ys) ? namesOfTheirOwn(members) : sameVariable(linesOfText(members))))) return;
    for (auto const i : members) m_placed[i].row0 = m_placed[i].row1 = rowBeside(m_placed[i].piece.baseline);
}
}  // namespace standin::tables
