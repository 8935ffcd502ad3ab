#include "compare/assignment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

namespace standin::compare {
namespace {

double total(std::vector<Edge> const& edges) {
    return std::accumulate(edges.begin(), edges.end(), 0.0, [](double sum, Edge const& edge) { return sum + edge.weight; });
}

TEST(Assignment, TakesTheBestOverAll) {
    std::vector<Edge> const edges{{0, 0, 0.9}, {0, 1, 0.8}, {1, 0, 0.85}};
    auto const chosen = assign(edges);
    ASSERT_EQ(chosen.size(), 2U);
    EXPECT_EQ(chosen[0].candidate, 1);
    EXPECT_EQ(chosen[1].candidate, 0);
}

// Few different weights, so that much is equally good.
TEST(Assignment, GivesTheSamePairsWhenExchanged) {
    std::mt19937 random(9);
    for (int round = 0; round < 300; ++round) {
        int const most = round % 30 == 0 ? 60 : 9;  // beyond kLargestGroup too
        int const n = 1 + static_cast<int>(random() % static_cast<unsigned>(most));
        int const m = 1 + static_cast<int>(random() % static_cast<unsigned>(most));
        std::vector<Edge> edges;
        std::vector<Edge> exchanged;
        for (int i = 0; i < n; ++i) {
            for (int j = 0; j < m; ++j) {
                if (random() % 3 == 0) continue;
                double const weight = 0.5 + 0.25 * static_cast<double>(random() % 2);
                edges.push_back({i, j, weight});
                exchanged.push_back({j, i, weight});
            }
        }
        std::shuffle(exchanged.begin(), exchanged.end(), random);
        auto const forward = assign(edges);
        auto backward = assign(exchanged);
        for (auto& edge : backward) std::swap(edge.reference, edge.candidate);
        std::sort(backward.begin(), backward.end(), [](Edge const& a, Edge const& b) { return a.reference < b.reference; });
        EXPECT_EQ(forward, backward) << round;
    }
}

TEST(Assignment, IsEmptyForNothing) { EXPECT_TRUE(assign({}).empty()); }

TEST(Assignment, AgreesWithTryingEverything) {
    std::mt19937 random(5);
    for (int round = 0; round < 200; ++round) {
        int const n = 1 + static_cast<int>(random() % 5);
        int const m = 1 + static_cast<int>(random() % 5);
        std::vector<std::vector<double>> weight(static_cast<std::size_t>(n), std::vector<double>(static_cast<std::size_t>(m), 0.0));
        std::vector<Edge> edges;
        for (int i = 0; i < n; ++i) {
            for (int j = 0; j < m; ++j) {
                if (random() % 3 == 0) continue;
                double const w = 0.01 * (1 + static_cast<double>(random() % 100));
                weight[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)] = w;
                edges.push_back({i * 10 + 3, j * 7, w});
            }
        }
        std::vector<int> columns(static_cast<std::size_t>(std::max(n, m)));
        std::iota(columns.begin(), columns.end(), 0);
        double best = 0;
        do {
            double sum = 0;
            for (int i = 0; i < n; ++i) {
                int const j = columns[static_cast<std::size_t>(i)];
                if (j < m) sum += weight[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)];
            }
            best = std::max(best, sum);
        } while (std::next_permutation(columns.begin(), columns.end()));
        auto const chosen = assign(edges);
        EXPECT_NEAR(total(chosen), best, 1e-9);
        for (std::size_t a = 0; a < chosen.size(); ++a) {
            for (std::size_t b = a + 1; b < chosen.size(); ++b) {
                EXPECT_NE(chosen[a].reference, chosen[b].reference);
                EXPECT_NE(chosen[a].candidate, chosen[b].candidate);
            }
        }
    }
}

TEST(Assignment, TakesLargeGroupsOneToOne) {
    std::vector<Edge> edges;
    for (int i = 0; i < 120; ++i) {
        for (int j = 0; j < 120; ++j) edges.push_back({i, j, i == j ? 0.9 : 0.5});
    }
    auto const chosen = assign(edges);
    ASSERT_EQ(chosen.size(), 120U);
    for (auto const& edge : chosen) EXPECT_EQ(edge.reference, edge.candidate);
}

}  // namespace
}  // namespace standin::compare
