// Groups by union-find; small groups by the Hungarian method with potentials on
// a square matrix of costs (absent edges cost 0 gain), larger ones greedily. What
// is equally good is decided by a preference that is the same whichever sheet
// comes first, so that an exchange of the two gives the same pairs.
//
// Tested by tests/src/compare/assignment_test.cpp.
#include "compare/assignment.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <map>
#include <numeric>
#include <unordered_map>

namespace standin::compare {

namespace {

class UnionFind {
public:
    explicit UnionFind(std::size_t count) : m_parent(count) { std::iota(m_parent.begin(), m_parent.end(), 0); }
    int find(int x) {
        while (m_parent[static_cast<std::size_t>(x)] != x) {
            auto& parent = m_parent[static_cast<std::size_t>(x)];
            parent = m_parent[static_cast<std::size_t>(parent)];
            x = parent;
        }
        return x;
    }
    void unite(int a, int b) { m_parent[static_cast<std::size_t>(find(a))] = find(b); }

private:
    std::vector<int> m_parent;
};

std::vector<int> indicesOf(std::vector<Edge> const& edges, int Edge::* member) {
    std::vector<int> list;
    list.reserve(edges.size());
    for (Edge const& edge : edges) list.push_back(edge.*member);
    std::sort(list.begin(), list.end());
    list.erase(std::unique(list.begin(), list.end()), list.end());
    return list;
}

int positionOf(std::vector<int> const& sorted, int value) {
    return static_cast<int>(std::lower_bound(sorted.begin(), sorted.end(), value) - sorted.begin());
}

// Far below any difference of weights that means something. Lower places come first, and
// two pairs rather in order than crossed; the roots keep the sums of different choices apart.
double preference(std::size_t row, std::size_t column) {
    constexpr double kUnit = 1e-9;
    constexpr double kPlaces = 1 + kLargestGroup;
    auto const root = [](std::size_t place) { return std::sqrt(kPlaces - std::min(static_cast<double>(place), kPlaces - 1)); };
    return kUnit * root(row) * root(column);
}

// Hungarian method, minimising negative weights; n ≤ kLargestGroup.
void solveExactly(std::vector<Edge> const& group, std::vector<int> const& rows, std::vector<int> const& columns, std::vector<Edge>& chosen) {
    auto const n = std::max(rows.size(), columns.size());
    std::vector<double> weight(n * n, 0.0);
    std::vector<double> given(n * n, 0.0);
    for (Edge const& edge : group) {
        auto const row = static_cast<std::size_t>(positionOf(rows, edge.reference));
        auto const column = static_cast<std::size_t>(positionOf(columns, edge.candidate));
        auto const at = row * n + column;
        given[at] = std::max(given[at], edge.weight);
        weight[at] = given[at] + preference(row, column);
    }
    constexpr double kInfinite = std::numeric_limits<double>::infinity();
    std::vector<double> rowPotential(n + 1, 0.0);
    std::vector<double> columnPotential(n + 1, 0.0);
    std::vector<std::size_t> rowOf(n + 1, 0);
    std::vector<std::size_t> way(n + 1, 0);
    for (std::size_t i = 1; i <= n; ++i) {
        rowOf[0] = i;
        std::size_t column = 0;
        std::vector<double> least(n + 1, kInfinite);
        std::vector<char> used(n + 1, 0);
        do {
            used[column] = 1;
            std::size_t const row = rowOf[column];
            double delta = kInfinite;
            std::size_t next = 0;
            for (std::size_t j = 1; j <= n; ++j) {
                if (used[j] != 0) continue;
                double const cost = -weight[(row - 1) * n + (j - 1)] - rowPotential[row] - columnPotential[j];
                if (cost < least[j]) {
                    least[j] = cost;
                    way[j] = column;
                }
                if (least[j] < delta) {
                    delta = least[j];
                    next = j;
                }
            }
            for (std::size_t j = 0; j <= n; ++j) {
                if (used[j] != 0) {
                    rowPotential[rowOf[j]] += delta;
                    columnPotential[j] -= delta;
                } else {
                    least[j] -= delta;
                }
            }
            column = next;
        } while (rowOf[column] != 0);
        do {
            std::size_t const previous = way[column];
            rowOf[column] = rowOf[previous];
            column = previous;
        } while (column != 0);
    }
    for (std::size_t j = 1; j <= n; ++j) {
        std::size_t const i = rowOf[j] - 1;
        if (i >= rows.size() || j - 1 >= columns.size()) continue;
        double const value = given[i * n + (j - 1)];
        if (value > 0) chosen.push_back({rows[i], columns[j - 1], value});
    }
}

void solveGreedily(std::vector<Edge> group, std::vector<int> const& rows, std::vector<int> const& columns, std::vector<Edge>& chosen) {
    std::sort(group.begin(), group.end(), [&](Edge const& a, Edge const& b) {
        if (a.weight != b.weight) return a.weight > b.weight;
        // Two edges that are equal by sum and difference have no end in common.
        int const sumA = positionOf(rows, a.reference) + positionOf(columns, a.candidate);
        int const sumB = positionOf(rows, b.reference) + positionOf(columns, b.candidate);
        if (sumA != sumB) return sumA < sumB;
        int const apartA = std::abs(positionOf(rows, a.reference) - positionOf(columns, a.candidate));
        int const apartB = std::abs(positionOf(rows, b.reference) - positionOf(columns, b.candidate));
        return apartA != apartB ? apartA < apartB : a.reference < b.reference;
    });
    std::vector<char> rowTaken(rows.size(), 0);
    std::vector<char> columnTaken(columns.size(), 0);
    for (Edge const& edge : group) {
        auto& row = rowTaken[static_cast<std::size_t>(positionOf(rows, edge.reference))];
        auto& column = columnTaken[static_cast<std::size_t>(positionOf(columns, edge.candidate))];
        if (row != 0 || column != 0) continue;
        row = column = 1;
        chosen.push_back(edge);
    }
}

}  // namespace

std::vector<Edge> assign(std::span<Edge const> edges) {
    std::vector<Edge> const all(edges.begin(), edges.end());
    auto const references = indicesOf(all, &Edge::reference);
    auto const candidates = indicesOf(all, &Edge::candidate);
    UnionFind groups(references.size() + candidates.size());
    for (Edge const& edge : all) {
        groups.unite(positionOf(references, edge.reference), static_cast<int>(references.size()) + positionOf(candidates, edge.candidate));
    }
    std::map<int, std::vector<Edge>> byGroup;
    for (Edge const& edge : all) byGroup[groups.find(positionOf(references, edge.reference))].push_back(edge);
    std::vector<Edge> chosen;
    for (auto const& [name, group] : byGroup) {
        auto const rows = indicesOf(group, &Edge::reference);
        auto const columns = indicesOf(group, &Edge::candidate);
        if (rows.size() > static_cast<std::size_t>(kLargestGroup) || columns.size() > static_cast<std::size_t>(kLargestGroup)) {
            solveGreedily(group, rows, columns, chosen);
        } else {
            solveExactly(group, rows, columns, chosen);
        }
    }
    std::sort(chosen.begin(), chosen.end(), [](Edge const& a, Edge const& b) { return a.reference < b.reference; });
    return chosen;
}

}  // namespace standin::compare
