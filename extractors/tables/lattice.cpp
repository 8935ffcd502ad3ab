// Lines nearer than `merge` become one lattice line. A lattice edge is drawn
// where rules cover at least half of it; row lines without a drawn edge that parts
// rows are dropped. Faces without an edge between them are
// united; what comes out is cut into rectangles, widest first.
// Tested by tests/extractors/tables/lattice_test.cpp.
#include "extractors/tables/lattice.h"

#include <algorithm>
#include <cmath>

namespace standin::tables {

using model::Points;
using model::Rect;

namespace {

constexpr float kDrawnShare = 0.5F;  // of an edge's length
constexpr float kSliver = 0.15F;     // of the lattice's width: a rule in one column no wider parts no rows
constexpr std::ptrdiff_t kManyColumns = 5;

std::vector<Points> clusterLines(std::vector<Segment> const& segments, Points low, Points high, Points merge) {
    struct Line { Points at; Points weight; };
    std::vector<Line> all;
    all.reserve(segments.size() + 2);
    for (auto const& s : segments) all.push_back({s.at, s.length()});
    all.push_back({low, 0.1F});
    all.push_back({high, 0.1F});
    std::sort(all.begin(), all.end(), [](Line const& a, Line const& b) { return a.at < b.at; });
    std::vector<Points> lines;
    for (std::size_t begin = 0; begin < all.size();) {
        std::size_t end = begin;
        double sum = 0;
        double weight = 0;
        while (end < all.size() && all[end].at - all[begin].at <= merge) {
            sum += static_cast<double>(all[end].at) * static_cast<double>(all[end].weight);
            weight += static_cast<double>(all[end].weight);
            ++end;
        }
        lines.push_back(static_cast<Points>(sum / weight));
        begin = end;
    }
    return lines;
}

// For each lattice line, how much of each gap between `stops` is covered.
std::vector<char> drawnEdges(std::vector<Segment> const& segments, std::vector<Points> const& lines,
                             std::vector<Points> const& stops, Points merge) {
    std::size_t const gaps = stops.size() - 1;
    std::vector<Points> covered(lines.size() * gaps, 0);
    for (auto const& s : segments) {
        auto line = static_cast<std::size_t>(std::lower_bound(lines.begin(), lines.end(), s.at - merge) - lines.begin());
        std::size_t best = lines.size();
        for (; line < lines.size() && lines[line] <= s.at + merge; ++line) {
            if (best == lines.size() || std::abs(lines[line] - s.at) < std::abs(lines[best] - s.at)) best = line;
        }
        if (best == lines.size()) continue;
        auto gap = static_cast<std::size_t>(std::upper_bound(stops.begin(), stops.end(), s.from) - stops.begin());
        gap = gap == 0 ? 0 : gap - 1;
        for (; gap < gaps && stops[gap] < s.to; ++gap) {
            Points const part = model::overlap(s.from, s.to, stops[gap], stops[gap + 1]);
            // Double rules would count twice: take the longest, not the sum, of pieces that overlap.
            Points& sum = covered[best * gaps + gap];
            sum = std::max(sum, std::min(sum + part, stops[gap + 1] - stops[gap]));
        }
    }
    std::vector<char> drawn(covered.size(), 0);
    for (std::size_t i = 0; i < covered.size(); ++i) {
        Points const length = stops[i % gaps + 1] - stops[i % gaps];
        drawn[i] = covered[i] >= length * kDrawnShare ? 1 : 0;
    }
    return drawn;
}

// Without the row lines on which no edge is drawn (a bar over a word, an underline
// inside a cell), or a single one in a narrow column behind the first (a box around one condition).
std::vector<Points> partingLines(std::vector<Segment> const& segments, std::vector<Points> const& lines, std::vector<Points> const& stops, Points merge) {
    auto const drawn = drawnEdges(segments, lines, stops, merge);
    auto const gaps = static_cast<std::ptrdiff_t>(stops.size()) - 1;
    std::vector<Points> kept;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto const first = drawn.begin() + static_cast<std::ptrdiff_t>(i) * gaps;
        auto const count = std::count(first, first + gaps, char{1});
        auto const column = std::find(first, first + gaps, char{1}) - first;
        bool const outer = i == 0 || i + 1 == lines.size();
        bool const sliver = count == 1 && column > 0 && gaps >= kManyColumns &&
                            stops[static_cast<std::size_t>(column) + 1] - stops[static_cast<std::size_t>(column)] < kSliver * (stops.back() - stops.front());
        if (outer || (count > 0 && !sliver)) kept.push_back(lines[i]);
    }
    return kept;
}

}  // namespace

int Lattice::rowAt(Points y) const {
    auto const it = std::upper_bound(ys.begin(), ys.end(), y);
    if (it == ys.begin() || it == ys.end()) return -1;
    return static_cast<int>(it - ys.begin()) - 1;
}

int Lattice::columnAt(Points x) const {
    auto const it = std::upper_bound(xs.begin(), xs.end(), x);
    if (it == xs.begin() || it == xs.end()) return -1;
    return static_cast<int>(it - xs.begin()) - 1;
}

Rect Lattice::box(RuledArea const& area) const {
    return {xs[static_cast<std::size_t>(area.column0)], ys[static_cast<std::size_t>(area.row0)],
            xs[static_cast<std::size_t>(area.column1) + 1], ys[static_cast<std::size_t>(area.row1) + 1]};
}

Lattice makeLattice(Network const& network, Points merge) {
    Lattice lattice;
    auto xs = clusterLines(network.vertical, network.box.x0, network.box.x1, merge);
    auto ys = clusterLines(network.horizontal, network.box.y0, network.box.y1, merge);
    if (xs.size() < 2 || ys.size() < 2 || xs.size() > kMostColumnLines || ys.size() > kMostRowLines) return lattice;
    ys = partingLines(network.horizontal, ys, xs, merge);
    lattice.xs = std::move(xs);
    lattice.ys = std::move(ys);
    int const rows = lattice.rows();
    int const columns = lattice.columns();
    auto const vertical = drawnEdges(network.vertical, lattice.xs, lattice.ys, merge);
    auto const horizontal = drawnEdges(network.horizontal, lattice.ys, lattice.xs, merge);
    auto right = [&](int row, int column) {  // edge to the right of a face
        return vertical[static_cast<std::size_t>(column + 1) * static_cast<std::size_t>(rows) + static_cast<std::size_t>(row)] != 0;
    };
    auto below = [&](int row, int column) {
        return horizontal[static_cast<std::size_t>(row + 1) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(column)] != 0;
    };
    auto face = [columns](int row, int column) { return static_cast<std::size_t>(row * columns + column); };

    std::vector<int> group(static_cast<std::size_t>(rows * columns), -1);
    std::vector<int> sizes;
    std::vector<std::pair<int, int>> stack;
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            if (group[face(row, column)] >= 0) continue;
            int const id = static_cast<int>(sizes.size());
            sizes.push_back(0);
            stack.emplace_back(row, column);
            group[face(row, column)] = id;
            while (!stack.empty()) {
                auto const [r, c] = stack.back();
                stack.pop_back();
                ++sizes.back();
                auto go = [&](int toRow, int toColumn) {
                    if (group[face(toRow, toColumn)] >= 0) return;
                    group[face(toRow, toColumn)] = id;
                    stack.emplace_back(toRow, toColumn);
                };
                if (c + 1 < columns && !right(r, c)) go(r, c + 1);
                if (c > 0 && !right(r, c - 1)) go(r, c - 1);
                if (r + 1 < rows && !below(r, c)) go(r + 1, c);
                if (r > 0 && !below(r - 1, c)) go(r - 1, c);
            }
        }
    }

    lattice.areaOf.assign(static_cast<std::size_t>(rows * columns), -1);
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            if (lattice.areaOf[face(row, column)] >= 0) continue;
            int const id = group[face(row, column)];
            auto free = [&](int r, int c) { return group[face(r, c)] == id && lattice.areaOf[face(r, c)] < 0; };
            int last = column;
            while (last + 1 < columns && free(row, last + 1) && !right(row, last)) ++last;
            int bottom = row;
            for (bool whole = true; whole && bottom + 1 < rows;) {
                for (int c = column; c <= last && whole; ++c) whole = free(bottom + 1, c) && !below(bottom, c);
                for (int c = column; c < last && whole; ++c) whole = !right(bottom + 1, c);
                if (whole) ++bottom;
            }
            int const index = static_cast<int>(lattice.areas.size());
            bool const irregular = (bottom - row + 1) * (last - column + 1) != sizes[static_cast<std::size_t>(id)];
            lattice.areas.push_back({row, bottom, column, last, irregular});
            for (int r = row; r <= bottom; ++r) {
                for (int c = column; c <= last; ++c) lattice.areaOf[face(r, c)] = index;
            }
        }
    }
    return lattice;
}

}  // namespace standin::tables
