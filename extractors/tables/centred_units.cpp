// The units are parted among the rows by their distance from the middles (part_rows.h).
// Tested by tests/extractors/tables/rows_test.cpp.
#include "extractors/tables/centred_units.h"

#include <algorithm>
#include <cmath>

#include "extractors/tables/flowing_condition.h"
#include "extractors/tables/head_words.h"
#include "extractors/tables/part_rows.h"

namespace standin::tables {

using model::Points;

namespace {

// In font heights.
constexpr float kOff = 0.45F;      // from the middle of its rows
constexpr float kBetween = 0.3F;   // from any row to what stands between two
constexpr float kOneText = 1.45F;  // between the lines of one condition
constexpr int kMostRows = 12;

std::vector<PlacedPiece*> ofColumn(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, ColumnTitle title) {
    std::vector<PlacedPiece*> own;
    for (auto* p : pieces) {
        if (columns.titles[static_cast<std::size_t>(p->column0)] == title && p->column0 == p->column1) own.push_back(p);
    }
    std::sort(own.begin(), own.end(), [](auto const* a, auto const* b) { return a->piece.baseline < b->piece.baseline; });
    return own;
}

bool standsBetween(std::span<Points const> baselines, Points y, Points fontHeight) {
    return std::none_of(baselines.begin(), baselines.end(), [&](Points row) { return std::abs(row - y) <= kBetween * fontHeight; });
}

// One text of fewer lines than rows, in the middle of rows `first` to `last`.
bool isCentredText(std::vector<PlacedPiece*> const& lines, std::span<Points const> baselines, int first, int last, Points fontHeight) {
    if (lines.empty() || static_cast<int>(lines.size()) > last - first || lines[0]->column0 != lines.back()->column0) return false;
    for (std::size_t i = 1; i < lines.size(); ++i) {
        Points const pitch = lines[i]->piece.baseline - lines[i - 1]->piece.baseline;
        if (pitch > kOneText * fontHeight || pitch < kBetween * fontHeight) return false;
    }
    Points const middle = (baselines[static_cast<std::size_t>(first)] + baselines[static_cast<std::size_t>(last)]) / 2;
    return std::abs((lines.front()->piece.baseline + lines.back()->piece.baseline) / 2 - middle) <= kOff * fontHeight;
}

}  // namespace

bool spreadCentredUnits(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::span<Points const> baselines, Points fontHeight) {
    int const rows = static_cast<int>(baselines.size());
    auto const units = ofColumn(pieces, columns, ColumnTitle::Unit);
    if (rows < 2 || units.empty() || static_cast<int>(units.size()) >= rows || units[0]->column0 != units.back()->column0) return false;
    bool const shown = std::any_of(units.begin(), units.end(), [&](auto const* p) { return standsBetween(baselines, p->piece.baseline, fontHeight); });
    if (!shown || !eachIsNamed(pieces, rows)) return false;
    std::vector<Points> middles;
    for (auto const* p : units) middles.push_back(p->piece.baseline);
    auto const parted = partRows(baselines, middles, {.mostOff = kOff * fontHeight, .mostRows = kMostRows});
    if (!parted) return false;
    auto const conditions = ofColumn(pieces, columns, ColumnTitle::Conditions);
    for (std::size_t k = 0; k < units.size(); ++k) {
        int const first = parted->firsts[k];
        int const last = k + 1 < units.size() ? parted->firsts[k + 1] - 1 : rows - 1;
        units[k]->row0 = first;
        units[k]->row1 = last;
        std::vector<PlacedPiece*> lines;
        std::copy_if(conditions.begin(), conditions.end(), std::back_inserter(lines), [&](auto const* p) { return p->row0 >= first && p->row0 <= last; });
        if (!isCentredText(lines, baselines, first, last, fontHeight)) continue;
        for (auto* p : lines) {
            p->row0 = first;
            p->row1 = last;
        }
    }
    return true;
}

}  // namespace standin::tables
