// Anchors are the baselines of value pieces that are complete by themselves. In
// a ruled band the other lines go to the anchor on their baseline, or the
// nearest; a single name, symbol or unit spans all rows. In an open band lines
// without values are attached by gap, indentation and what the rows around lack.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/rows.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <utility>

#include "extractors/tables/centred_names.h"
#include "extractors/tables/centred_units.h"
#include "extractors/tables/columns.h"
#include "extractors/tables/flowing_condition.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;

namespace {

// In font heights.
constexpr float kSameLine = 0.5F;   // baselines of one row
constexpr float kEqualGap = 0.18F;  // gaps that differ less are the same
constexpr float kIndent = 0.6F;
constexpr float kWrapPitch = 1.75F;  // lines further apart are not one wrapped text
constexpr float kBetween = 0.3F;     // from the middle of lines to their value
constexpr float kStray = 0.75F;      // from the first piece of a row to one set off its baseline
constexpr float kStrayStep = 0.3F;   // and from the piece before

bool startsLower(std::string const& text) { return !text.empty() && ((text[0] >= 'a' && text[0] <= 'z') || text[0] == '('); }

std::vector<Points> clustered(std::vector<Points> ys, Points tolerance) {
    std::sort(ys.begin(), ys.end());
    std::vector<Points> out;
    for (Points const y : ys) {
        if (out.empty() || y - out.back() > tolerance) out.push_back(y);
    }
    return out;
}

struct ValueAt {
    Points y = 0;
    int column = 0;
};

// One baseline for each row of values. Values of several columns may be set off it by more than two of one column could be.
std::vector<Points> rowsOfValues(std::vector<ValueAt> values, Points fontHeight) {
    std::sort(values.begin(), values.end(), [](ValueAt const& a, ValueAt const& b) { return a.y != b.y ? a.y < b.y : a.column < b.column; });
    std::vector<Points> out;
    std::vector<int> columns;
    Points first = 0;
    Points last = 0;
    for (auto const& [y, column] : values) {
        bool const near = !out.empty() && y - first <= kSameLine * fontHeight;
        bool const stray =
            !out.empty() && y - first <= kStray * fontHeight && y - last <= kStrayStep * fontHeight && std::find(columns.begin(), columns.end(), column) == columns.end();
        if (!near && !stray) {
            out.push_back(y);
            columns.clear();
            first = y;
        } else if (!near) {
            out.back() = (first + y) / 2;
        }
        columns.push_back(column);
        last = y;
    }
    return out;
}

int nearest(std::vector<Points> const& baselines, Points y) {
    int best = 0;
    for (int i = 1; i < static_cast<int>(baselines.size()); ++i) {
        if (std::abs(baselines[static_cast<std::size_t>(i)] - y) < std::abs(baselines[static_cast<std::size_t>(best)] - y)) best = i;
    }
    return best;
}

void intoOneRow(std::vector<PlacedPiece*> const& pieces) {
    for (auto* p : pieces) p->row0 = p->row1 = 0;
}

// Texts of one column that stand centred on three rows of values or more, as a whole.
bool centredOnAll(std::vector<Points> const& lines, std::vector<Points> const& anchors, Points fontHeight) {
    if (lines.empty() || anchors.size() < 3 || lines.size() >= anchors.size()) return false;
    for (std::size_t i = 1; i < lines.size(); ++i) {
        if (lines[i] - lines[i - 1] > kWrapPitch * fontHeight) return false;
    }
    return std::abs((lines.front() + lines.back()) - (anchors.front() + anchors.back())) <= 2 * kBetween * fontHeight;
}

// Baselines of a column's pieces, those of one printed line as one.
std::vector<Points> linesOfColumn(std::vector<PlacedPiece*> const& pieces, int column, Points tolerance) {
    std::vector<Points> ys;
    for (auto const* p : pieces) {
        if (p->column0 == column) ys.push_back(p->piece.baseline);
    }
    return clustered(std::move(ys), tolerance);
}

// The lines stand beside the values, one beside each.
bool oneBesideEach(std::vector<Points> const& lines, std::vector<Points> const& anchors, Points tolerance) {
    bool each = lines.size() == anchors.size();
    for (std::size_t i = 0; i < lines.size() && each; ++i) each = std::abs(lines[i] - anchors[i]) <= tolerance;
    return each;
}

bool conditionEach(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& anchors, Points fontHeight) {
    Points const tolerance = kSameLine * fontHeight;
    for (int column = 0; column < columns.count(); ++column) {
        bool const conditions = columns.titles[static_cast<std::size_t>(column)] == ColumnTitle::Conditions;
        if (conditions && oneBesideEach(linesOfColumn(pieces, column, tolerance), anchors, tolerance)) return true;
    }
    return false;
}

// A name on top and as many lines hanging under it as there are rows of values, set closer or wider than those: one
// each, in order. `own`: from top to bottom.
bool hangInOrder(PageLayout const& page, std::vector<PlacedPiece*> const& own, std::vector<Points> const& anchors, Points fontHeight) {
    if (own.size() != anchors.size() + 1 || anchors.size() < 3 || own[0]->piece.baseline >= anchors[0] - kSameLine * fontHeight) return false;
    Points const left = own[1]->piece.box.x0;
    if (left < own[0]->piece.box.x0 + kIndent * fontHeight) return false;
    for (std::size_t i = 1; i < own.size(); ++i) {
        bool const alone = own[i]->piece.baseline - own[i - 1]->piece.baseline > kSameLine * fontHeight;
        auto const text = textOf(page, own[i]->piece);
        if (!alone || std::abs(own[i]->piece.box.x0 - left) > kBetween * fontHeight || startsLower(text) || stopsAtComma(text)) return false;
    }
    return true;
}

// A symbol for each row of values: the first may stand beside the name on top of the cases, and all of them closer
// or wider than their values where each row has a unit of its own.
bool aSymbolEach(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& lines, std::vector<Points> const& anchors,
                 Points fontHeight) {
    if (lines.size() != anchors.size()) return false;
    Points const tolerance = kSameLine * fontHeight;
    bool beside = lines[0] < anchors[0] - tolerance;
    for (std::size_t i = 1; i < lines.size(); ++i) beside = beside && std::abs(lines[i] - anchors[i]) <= tolerance;
    if (beside) return true;
    std::vector<std::string> units(anchors.size());
    for (auto const* p : pieces) {
        if (columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Unit) continue;
        auto const i = static_cast<std::size_t>(nearest(anchors, p->piece.baseline));
        if (std::abs(anchors[i] - p->piece.baseline) <= tolerance) units[i] += textOf(page, p->piece);
    }
    std::sort(units.begin(), units.end());
    return !units[0].empty() && std::adjacent_find(units.begin(), units.end()) == units.end();
}

// A column between the conditions and the values has a level for each row of values ("VCC": 2.0 V, 4.5 V, 6.0 V).
bool levelEach(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int conditions, std::vector<Points> const& anchors, Points fontHeight) {
    Points const tolerance = kSameLine * fontHeight;
    for (int column = conditions + 1; column < columns.firstValueColumn(); ++column) {
        bool const each = oneBesideEach(linesOfColumn(pieces, column, tolerance), anchors, tolerance);
        bool const levels = std::none_of(pieces.begin(), pieces.end(), [&](auto* p) { return p->column0 == column && !isValueLike(p->shape); });
        if (each && levels) return true;
    }
    return false;
}

// Lines that stand in groups, each in the middle of the row beside it ("VDD = 3 V" above and "no load" below the
// height of the first value): the row of each line, or nothing where the first value stands beside a line.
std::vector<int> rowsOfCentredLines(std::vector<Points> const& lines, std::vector<Points> const& anchors, Points fontHeight) {
    std::vector<int> rows;
    for (std::size_t row = 0; row < anchors.size(); ++row) {
        std::size_t const first = rows.size();
        std::size_t end = first;
        while (end < lines.size() && std::abs((lines[first] + lines[end]) / 2 - anchors[row]) > kBetween * fontHeight) ++end;
        if (end == lines.size() || (row == 0 && end % 2 == 0)) return {};
        rows.resize(end + 1, static_cast<int>(row));
    }
    return rows.size() == lines.size() ? rows : std::vector<int>{};
}

// The row of a line of conditions that stands beside no value. Where the first value stands beside the last of
// the first lines, texts end at their value; where it stands beside the first line, they start there.
int rowOfLooseLine(std::vector<Points> const& anchors, Points y, bool startsAtAnchor, Points tolerance) {
    int const rows = static_cast<int>(anchors.size());
    int row = 0;
    if (startsAtAnchor) {
        while (row + 1 < rows && anchors[static_cast<std::size_t>(row) + 1] <= y + tolerance) ++row;
    } else {
        while (row + 1 < rows && anchors[static_cast<std::size_t>(row)] < y - tolerance) ++row;
    }
    return row;
}

// Lines of conditions, or of whatever else is no name: those beside a value go with it, a text that stops at a
// comma or goes on with a small letter stays with its line above. `own`: from top to bottom.
void splitLines(PageLayout const& page, std::vector<PlacedPiece*> const& own, std::vector<Points> const& lines, std::vector<Points> const& anchors, Points fontHeight) {
    Points const tolerance = kSameLine * fontHeight;
    auto const centred = rowsOfCentredLines(lines, anchors, fontHeight);
    bool const startsAtAnchor = lines[0] >= anchors[0] - tolerance;
    PlacedPiece const* before = nullptr;
    bool looseBefore = false;
    for (auto* p : own) {
        Points const y = p->piece.baseline;
        int row = nearest(anchors, y);
        bool const loose = std::abs(anchors[static_cast<std::size_t>(row)] - y) > tolerance;
        bool const goesOn = before != nullptr && (stopsAtComma(textOf(page, before->piece)) || (looseBefore && startsLower(textOf(page, p->piece))));
        if (!centred.empty()) {
            row = centred[static_cast<std::size_t>(std::upper_bound(lines.begin(), lines.end(), y) - lines.begin()) - 1];
        } else if (loose) {
            row = goesOn ? before->row0 : rowOfLooseLine(anchors, y, startsAtAnchor, tolerance);
        }
        p->row0 = p->row1 = row;
        before = p;
        looseBefore = loose;
    }
}

// Ruled band, at least two anchors.
void splitRuled(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& anchors, Points fontHeight) {
    int const rows = static_cast<int>(anchors.size());
    Points const tolerance = kSameLine * fontHeight;
    bool const centred = columns.firstValueColumn() > 0 && centredOnAll(linesOfColumn(pieces, 0, tolerance), anchors, fontHeight);
    for (int column = 0; column < columns.count(); ++column) {
        std::vector<PlacedPiece*> own;
        for (auto* p : pieces) {
            if (p->column0 == column) own.push_back(p);
        }
        if (own.empty()) continue;
        std::sort(own.begin(), own.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
        std::vector<Points> ys;
        for (auto* p : own) ys.push_back(p->piece.baseline);
        auto const lines = clustered(ys, tolerance);
        auto const title = columns.titles[static_cast<std::size_t>(column)];
        bool const values = columns.holdsValues[static_cast<std::size_t>(column)] != 0;
        bool const isName = !values && column < columns.firstValueColumn() && title != ColumnTitle::Conditions && title != ColumnTitle::Unit && title != ColumnTitle::TestCircuit &&
                            title != ColumnTitle::Note;
        int matches = 0;
        std::vector<char> hit(anchors.size(), 0);
        for (Points const y : lines) {
            auto const i = static_cast<std::size_t>(nearest(anchors, y));
            if (std::abs(anchors[i] - y) <= tolerance && hit[i] == 0) {
                hit[i] = 1;
                ++matches;
            }
        }
        bool const oneEach = matches == rows && static_cast<int>(lines.size()) == rows;
        if (isName && matches < rows && !conditionEach(pieces, columns, anchors, fontHeight) && hangInOrder(page, own, anchors, fontHeight)) {
            for (std::size_t i = 0; i < own.size(); ++i) own[i]->row0 = own[i]->row1 = i == 0 ? 0 : static_cast<int>(i) - 1;
            continue;
        }
        if (title == ColumnTitle::Symbol && matches < rows && aSymbolEach(page, pieces, columns, lines, anchors, fontHeight)) {
            for (auto* p : own) p->row0 = p->row1 = nearest(lines, p->piece.baseline);
            continue;
        }
        if (isName && !oneEach) {
            // A name for all rows; lines that state a condition beside a value go with it.
            bool const leading = lines[0] < anchors[0] - tolerance;  // the name stands above, its cases beside the values
            bool const parts = matches == rows && (leading || std::all_of(own.begin(), own.end(), [&](PlacedPiece* p) {
                                                       auto const i = static_cast<std::size_t>(nearest(anchors, p->piece.baseline));
                                                       bool const beside = std::abs(anchors[i] - p->piece.baseline) <= tolerance;
                                                       return i == 0 || !beside || statesConditions(textOf(page, p->piece));
                                                   }));
            if (!parts) {
                for (auto* p : own) {
                    p->row0 = 0;
                    p->row1 = rows - 1;
                }
                continue;
            }
        }
        if (isName && oneEach) {
            // Wrapped name beside value lines, or a name a line? Symbols and units are short
            // and never wrapped; a name goes on with a small letter or a bracket.
            bool wrapped = false;
            for (std::size_t i = 1; i < own.size(); ++i) wrapped = wrapped || startsLower(textOf(page, own[i]->piece));
            if (wrapped && title != ColumnTitle::Symbol) {
                for (auto* p : own) {
                    p->row0 = 0;
                    p->row1 = rows - 1;
                }
                continue;
            }
        }
        bool const conditionOfAll = title == ColumnTitle::Conditions && ((centred && centredOnAll(lines, anchors, fontHeight)) ||
                                                                         (lines.back() <= anchors[0] + tolerance && levelEach(pieces, columns, column, anchors, fontHeight)));
        if ((lines.size() == 1 && matches == 0) || conditionOfAll) {
            // Centred on all rows.
            for (auto* p : own) {
                p->row0 = 0;
                p->row1 = rows - 1;
            }
            continue;
        }
        if (lines.size() == 1 && title == ColumnTitle::Unit) {
            for (auto* p : own) {
                p->row0 = 0;
                p->row1 = rows - 1;
            }
            continue;
        }
        if (!values) {
            splitLines(page, own, lines, anchors, fontHeight);
            continue;
        }
        for (auto* p : own) p->row0 = p->row1 = nearest(anchors, p->piece.baseline);
    }
}

struct OpenLine {
    Points baseline = 0;
    std::vector<PlacedPiece*> pieces;
    bool anchor = false;
    bool key = false;  // holds a piece of a name or symbol column
    bool bold = true;
    Points keyX = 0;
    int row = -1;
};

// Set a little off the line's last piece, in a column of its own: "2.5" half a line below the "1.6" of its row.
bool strayOf(OpenLine const& line, PlacedPiece const& piece, Points fontHeight) {
    if (piece.piece.baseline - line.baseline > kStray * fontHeight || piece.piece.baseline - line.pieces.back()->piece.baseline > kStrayStep * fontHeight) return false;
    return std::none_of(line.pieces.begin(), line.pieces.end(), [&](PlacedPiece* p) { return p->column0 <= piece.column1 && p->column1 >= piece.column0; });
}

enum class Join : std::uint8_t { Up, Down, Own };

// The line is the beginning of one indented row, and what follows is not indented any more.
bool hasOneChild(std::vector<OpenLine> const& lines, std::size_t i, std::size_t child, Points fontHeight) {
    Points const indent = kIndent * fontHeight;
    if (!lines[child].key || lines[child].keyX <= lines[i].keyX + indent) return false;
    for (std::size_t k = i + 1; k < child; ++k) {
        if (lines[k].key && lines[k].keyX <= lines[i].keyX + indent) return false;
    }
    for (std::size_t k = child + 1; k < lines.size(); ++k) {
        if (lines[k].key) return lines[k].keyX <= lines[i].keyX + indent / 2;
    }
    return true;
}

Join joinOf(PageLayout const& page, std::vector<OpenLine> const& lines, std::size_t i, ColumnModel const& columns, Points fontHeight) {
    auto const& line = lines[i];
    constexpr Points kFar = 1e6F;
    Points const gapUp = i > 0 ? line.baseline - lines[i - 1].baseline : kFar;
    Points const gapDown = i + 1 < lines.size() ? lines[i + 1].baseline - line.baseline : kFar;
    Points const equal = kEqualGap * fontHeight;
    std::size_t below = i + 1;
    while (below < lines.size() && !lines[below].anchor) ++below;
    std::size_t above = i;
    while (above > 0 && !lines[above - 1].anchor) --above;
    bool const hasBelow = below < lines.size();
    bool const hasAbove = above > 0;
    if (!hasBelow && !hasAbove) return Join::Own;
    if (!line.key) {
        if (!hasBelow) return Join::Up;
        if (!hasAbove) return Join::Down;
        return gapUp <= gapDown + equal ? Join::Up : Join::Down;
    }
    bool const alone = line.pieces.size() == 1;
    bool const wide = alone && line.pieces[0]->column1 >= columns.firstValueColumn() && columns.firstValueColumn() < columns.count();
    // bold above names that are not, be they on a line of values or centred between two
    std::size_t named = i + 1;
    while (named < lines.size() && !lines[named].key) ++named;
    bool const heads = alone && line.bold && line.keyX <= line.pieces[0]->piece.box.x0 && named < lines.size() && !lines[named].bold;
    if (hasBelow && !lines[below].key && below == i + 1 && !heads) return Join::Down;
    // a symbol ("tSTART", "en") begins with a small letter by right
    auto const worded = std::find_if(line.pieces.begin(), line.pieces.end(), [&](auto* p) { return columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Symbol; });
    auto const text = worded == line.pieces.end() ? std::string() : textOf(page, (*worded)->piece);
    bool const boldOnly = heads || (line.bold && hasBelow && lines[below].key && !lines[below].bold);
    if (alone && !boldOnly && hasBelow && hasOneChild(lines, i, below, fontHeight)) return Join::Down;
    if (alone && (boldOnly || (wide && !startsLower(text)))) return Join::Own;
    if (hasAbove && gapUp <= kWrapPitch * fontHeight && startsLower(text)) return Join::Up;
    if (gapUp + equal < gapDown && hasAbove && gapUp <= kWrapPitch * fontHeight) {
        return Join::Up;
    }
    if (gapDown + equal < gapUp && hasBelow && gapDown <= kWrapPitch * fontHeight && lines[i + 1].keyX <= line.keyX + kIndent * fontHeight) {
        return Join::Down;
    }
    if (hasAbove && lines[i - 1].key && line.keyX > lines[i - 1].keyX + kIndent * fontHeight && gapUp <= kWrapPitch * fontHeight) return Join::Up;
    if (alone) return Join::Own;
    return hasAbove && gapUp <= gapDown ? Join::Up : Join::Down;
}

BandRows splitOpen(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& anchors, Points fontHeight) {
    Points const tolerance = kSameLine * fontHeight;
    std::vector<PlacedPiece*> sorted = pieces;
    std::stable_sort(sorted.begin(), sorted.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    std::vector<OpenLine> lines;
    int const firstValue = columns.firstValueColumn();
    bool const hasValues = firstValue < columns.count();
    for (auto* p : sorted) {
        bool const onLine = !lines.empty() && (p->piece.baseline - lines.back().baseline <= tolerance || strayOf(lines.back(), *p, fontHeight));
        if (!onLine) {
            lines.emplace_back();
            lines.back().baseline = p->piece.baseline;
        }
        auto& line = lines.back();
        line.pieces.push_back(p);
        auto const title = columns.titles[static_cast<std::size_t>(p->column0)];
        bool const key =
            hasValues ? p->column0 < firstValue && title != ColumnTitle::Conditions && title != ColumnTitle::Unit && title != ColumnTitle::TestCircuit && title != ColumnTitle::Note
                      : p->column0 == 0;
        if (key) {
            line.keyX = line.key ? std::min(line.keyX, p->piece.box.x0) : p->piece.box.x0;
            line.key = true;
            line.bold = line.bold && p->piece.bold;
        }
    }
    for (auto& line : lines) {
        if (!line.key) line.bold = false;
        if (hasValues) {
            line.anchor = std::any_of(anchors.begin(), anchors.end(), [&](Points y) { return std::abs(y - line.baseline) <= tolerance; });
            // Words in a value column beside a name ("internally limited").
            line.anchor = line.anchor || (line.key && std::any_of(line.pieces.begin(), line.pieces.end(),
                                                                  [&](PlacedPiece* p) { return columns.holdsValues[static_cast<std::size_t>(p->column0)] != 0; }));
        } else {
            line.anchor = line.key && line.pieces.size() > 1;
        }
    }
    BandRows rows;
    rows.count = 0;
    std::vector<Join> joins(lines.size(), Join::Own);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!lines[i].anchor) joins[i] = joinOf(page, lines, i, columns, fontHeight);
    }
    for (std::size_t i = 1; i < lines.size(); ++i) {
        bool const afterDown = !lines[i].anchor && joins[i] == Join::Up && !lines[i - 1].anchor && joins[i - 1] == Join::Down;
        if (afterDown) joins[i] = Join::Down;
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        bool const startsRow = lines[i].anchor
                                   ? i == 0 || lines[i - 1].anchor || joins[i - 1] != Join::Down
                                   : joins[i] == Join::Own || (joins[i] == Join::Down && (i == 0 || lines[i - 1].anchor || joins[i - 1] != Join::Down)) || rows.count == 0;
        if (startsRow) {
            ++rows.count;
            rows.baselines.push_back(lines[i].baseline);
        }
        if (lines[i].anchor) rows.baselines.back() = lines[i].baseline;
        lines[i].row = rows.count - 1;
        for (auto* p : lines[i].pieces) p->row0 = p->row1 = lines[i].row;
    }
    std::vector<char> anchored(rows.baselines.size(), 0);
    for (auto const& line : lines) {
        if (line.anchor) anchored[static_cast<std::size_t>(line.row)] = 1;
    }
    std::vector<char> const spread = hasValues ? spreadNames(page, sorted, columns, rows.baselines, anchored, fontHeight) : std::vector<char>(static_cast<std::size_t>(columns.count()), 0);
    // Rows without a name of their own share the one above.
    for (int column = 0; column < std::min(firstValue, columns.count()) && hasValues; ++column) {
        if (spread[static_cast<std::size_t>(column)] != 0) continue;
        auto const title = columns.titles[static_cast<std::size_t>(column)];
        if (title == ColumnTitle::Conditions || title == ColumnTitle::TestCircuit || title == ColumnTitle::Note) continue;
        PlacedPiece* lastName = nullptr;
        std::vector<PlacedPiece*> inRow;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (auto* p : lines[i].pieces) {
                if (p->column0 == column) lastName = p;
            }
            if (lines[i].bold && anchored[static_cast<std::size_t>(lines[i].row)] == 0) lastName = nullptr;  // a heading
            bool const keyless = lines[i].anchor && !lines[i].key && std::none_of(lines.begin(), lines.end(), [&](OpenLine const& o) { return o.row == lines[i].row && o.key; });
            if (!keyless || lastName == nullptr || lastName->column1 != column) continue;
            // All lines of that name's cell grow together.
            int const first = lastName->row0;
            for (auto* p : sorted) {
                if (p->column0 == column && p->row0 == first) p->row1 = lines[i].row;
            }
        }
    }
    return rows;
}

bool isBareSymbol(std::string const& text) {
    return text.size() >= 2 && text.size() <= 5 && text[0] >= 'A' && text[0] <= 'Z' &&
           std::all_of(text.begin(), text.end(), [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
}

// "0.7" above "VDD" in one cell, centred on its row: nothing else stands beside either of the two lines.
bool wrapsToSymbol(PageLayout const& page, PlacedPiece const& number, PlacedPiece const& symbol, std::vector<PlacedPiece*> const& pieces, Points fontHeight) {
    Points const pitch = symbol.piece.baseline - number.piece.baseline;
    if (pitch <= kSameLine * fontHeight || pitch > kWrapPitch * fontHeight || symbol.area != number.area) return false;
    if (number.shape != Shape::Number || !isBareSymbol(textOf(page, symbol.piece))) return false;
    auto const level = [&](PlacedPiece const& p, PlacedPiece const& with) { return std::abs(p.piece.baseline - with.piece.baseline) <= kBetween * fontHeight; };
    return std::none_of(pieces.begin(), pieces.end(), [&](auto const* p) {
        if (!(level(*p, number) || level(*p, symbol)) || (p->column0 <= number.column1 && p->column1 >= number.column0)) return false;
        // another value that is wrapped in the same way
        bool const twin = level(*p, number) && std::any_of(pieces.begin(), pieces.end(),
                                                           [&](auto const* q) { return q->column0 == p->column0 && level(*q, symbol) && isBareSymbol(textOf(page, q->piece)); });
        return !twin && isValueLike(p->shape);
    });
}

// The line above in its column ends open ("7 to"), or this one begins so.
bool goesOnFrom(PageLayout const& page, PlacedPiece const& above, PlacedPiece const& piece, Points fontHeight) {
    Points const pitch = piece.piece.baseline - above.piece.baseline;
    if (pitch >= kWrapPitch * fontHeight || pitch <= kSameLine * fontHeight) return false;
    auto const before = textOf(page, above.piece);
    if (before.empty()) return false;
    auto const text = textOf(page, piece.piece);
    return endsOpen(before) || startsOpen(text) || (above.shape == Shape::Words && piece.shape == Shape::Number && !text.empty() && !(text[0] >= '0' && text[0] <= '9'));
}

}  // namespace

int ColumnModel::firstValueColumn() const {
    for (int i = 0; i < count(); ++i) {
        if (holdsValues[static_cast<std::size_t>(i)] != 0) return i;
    }
    return count();
}

std::vector<Points> valueBaselines(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, Points fontHeight) {
    std::vector<PlacedPiece*> wide;  // over several columns
    std::copy_if(pieces.begin(), pieces.end(), std::back_inserter(wide), [](auto const* p) { return p->column0 != p->column1; });
    // A value that only goes on from words above it ("(7 to" / "20 V)") is none of its own.
    for (auto* p : pieces) {
        if (!isValueLike(p->shape)) continue;
        for (auto* q : wide) {
            Points const pitch = p->piece.baseline - q->piece.baseline;
            if (q->area != p->area || pitch < kSameLine * fontHeight || pitch > kWrapPitch * fontHeight || q->wrapOf || q->column0 > p->column0 || q->column1 < p->column0)
                continue;
            if (isValueLike(q->shape)) continue;
            auto const above = textOf(page, q->piece);
            if (!(endsOpen(above) || opensBracket(above))) continue;
            p->column0 = q->column0;
            p->column1 = q->column1;
            p->wrapOf = true;
        }
    }
    // The column with most value lines leads; a lone value between two of its lines is centred on both.
    std::vector<std::vector<Points>> ofColumn(static_cast<std::size_t>(std::max(columns.count(), 0)));
    std::vector<PlacedPiece*> own;
    for (int column = 0; column < columns.count(); ++column) {
        if (columns.holdsValues[static_cast<std::size_t>(column)] == 0) continue;
        own.clear();
        for (auto* p : pieces) {
            if (p->column0 == column) own.push_back(p);
        }
        std::sort(own.begin(), own.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
        for (std::size_t k = 0; k < own.size(); ++k) {
            auto* const p = own[k];
            if (!p->wrapOf && isValueLike(p->shape) && !(k > 0 && goesOnFrom(page, *own[k - 1], *p, fontHeight))) {
                bool const wrapped = k + 1 < own.size() && wrapsToSymbol(page, *p, *own[k + 1], pieces, fontHeight);
                ofColumn[static_cast<std::size_t>(column)].push_back(wrapped ? (p->piece.baseline + own[k + 1]->piece.baseline) / 2 : p->piece.baseline);
            }
        }
    }
    Points const tolerance = kSameLine * fontHeight;
    std::size_t lead = 0;
    std::size_t most = 0;
    for (std::size_t i = 0; i < ofColumn.size(); ++i) {
        ofColumn[i] = clustered(std::move(ofColumn[i]), tolerance);
        if (ofColumn[i].size() > most) {
            most = ofColumn[i].size();
            lead = i;
        }
    }
    std::vector<ValueAt> all;
    for (std::size_t i = 0; i < ofColumn.size(); ++i) {
        if (i != lead && ofColumn[i].size() == 1 && most >= 2) {
            auto const& leading = ofColumn[lead];
            Points const y = ofColumn[i][0];
            bool const onOne = std::abs(leading[static_cast<std::size_t>(nearest(leading, y))] - y) <= tolerance;
            if (!onOne && y > leading.front() && y < leading.back()) continue;
        }
        for (Points const y : ofColumn[i]) all.push_back({y, static_cast<int>(i)});
    }
    // Words over several value columns below their values ("(7 to 20 V)") have a row of their own.
    Points lastWords = -1e6F;
    std::sort(wide.begin(), wide.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    for (auto* p : wide) {
        if (columns.holdsValues[static_cast<std::size_t>(p->column0)] == 0 || all.empty()) continue;
        if (p->wrapOf || isValueLike(p->shape)) continue;
        Points const y = p->piece.baseline;
        bool const overValue =
            std::any_of(pieces.begin(), pieces.end(), [&](PlacedPiece* q) { return q->area == p->area && q->piece.baseline < y - tolerance && isValueLike(q->shape); });
        if (!overValue || std::any_of(all.begin(), all.end(), [&](ValueAt const& v) { return std::abs(v.y - y) <= tolerance; })) continue;
        if (y - lastWords > tolerance && y - lastWords < kWrapPitch * fontHeight) continue;
        lastWords = y;
        all.push_back({y, p->column0});
    }
    return rowsOfValues(std::move(all), fontHeight);
}

namespace {

// A bold line alone on top of a band, above names that are not bold: it heads the rows of the band. Null: none.
PlacedPiece* headingOf(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, Points fontHeight) {
    auto const top = std::min_element(pieces.begin(), pieces.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    if (top == pieces.end() || !(*top)->piece.bold || (*top)->column0 >= columns.firstValueColumn() || columns.firstValueColumn() == columns.count()) return nullptr;
    bool names = false;
    for (auto const* p : pieces) {
        if (p == *top) continue;
        if (p->piece.baseline - (*top)->piece.baseline <= kSameLine * fontHeight) return nullptr;
        names = names || (p->column0 <= (*top)->column1 && !p->piece.bold);
        if (p->column0 <= (*top)->column1 && p->piece.bold) return nullptr;
    }
    return names && !statesConditions(textOf(page, (*top)->piece)) ? *top : nullptr;
}

}  // namespace

BandRows splitBand(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, BandKind kind, Points fontHeight) {
    BandRows rows;
    if (auto* heading = kind == BandKind::Ruled && pieces.size() > 1 ? headingOf(page, pieces, columns, fontHeight) : nullptr) {
        std::vector<PlacedPiece*> rest;
        std::copy_if(pieces.begin(), pieces.end(), std::back_inserter(rest), [&](auto* p) { return p != heading; });
        rows = splitBand(page, rest, columns, kind, fontHeight);
        for (auto* p : rest) {
            ++p->row0;
            ++p->row1;
        }
        heading->row0 = heading->row1 = 0;
        ++rows.count;
        rows.baselines.insert(rows.baselines.begin(), heading->piece.baseline);
        return rows;
    }
    if (pieces.empty()) {
        rows.baselines.push_back(0);
        return rows;
    }
    auto const anchors = valueBaselines(page, pieces, columns, fontHeight);
    if (kind == BandKind::Open) {
        rows = splitOpen(page, pieces, columns, anchors, fontHeight);
        if (static_cast<std::size_t>(rows.count) != anchors.size()) return rows;
        if (!spreadCentredUnits(pieces, columns, anchors, fontHeight)) spreadFlowingCondition(page, pieces, columns, rows.count);
        return rows;
    }
    if (anchors.size() <= 1) {
        intoOneRow(pieces);
        rows.baselines.push_back(anchors.empty() ? pieces[0]->piece.baseline : anchors[0]);
        return rows;
    }
    splitRuled(page, pieces, columns, anchors, fontHeight);
    rows.count = static_cast<int>(anchors.size());
    rows.baselines = anchors;
    return rows;
}

}  // namespace standin::tables
