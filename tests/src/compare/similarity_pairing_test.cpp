#include "compare/similarity_pairing.h"

#include <gtest/gtest.h>

#include <chrono>
#include <numeric>

namespace standin::compare {
namespace {

std::vector<Edge> paired(std::vector<std::string> const& reference, std::vector<std::string> const& candidate, double threshold = 0.6) {
    std::vector<std::vector<Key>> a;
    std::vector<std::vector<Key>> b;
    for (auto const& text : reference) a.push_back(tokensOf(text));
    for (auto const& text : candidate) b.push_back(tokensOf(text));
    std::vector<int> i(reference.size());
    std::vector<int> j(candidate.size());
    std::iota(i.begin(), i.end(), 0);
    std::iota(j.begin(), j.end(), 0);
    SimilaritySettings settings;
    settings.threshold = threshold;
    return pairSimilar(i, [&](int k) -> std::vector<Key> const& { return a[static_cast<std::size_t>(k)]; }, j,
                       [&](int k) -> std::vector<Key> const& { return b[static_cast<std::size_t>(k)]; }, settings);
}

TEST(SimilarityPairing, FindsTheMostAlikeWhereverItStands) {
    auto const pairs = paired({"The output is high in state one", "A capacitor is fitted near the pin"}, {"A capacitor is fitted close to the pin", "The output is low in state one"});
    ASSERT_EQ(pairs.size(), 2U);
    EXPECT_EQ(pairs[0].candidate, 1);
    EXPECT_EQ(pairs[1].candidate, 0);
}

TEST(SimilarityPairing, LeavesStrangersApart) { EXPECT_TRUE(paired({"one two three"}, {"four five six"}).empty()); }

// A word that half of one list has leads to no pair from the other list either.
TEST(SimilarityPairing, ExchangedListsGiveTheSamePairs) {
    std::vector<std::string> reference{"lamps"};
    std::vector<std::string> candidate{"lamps bells"};
    for (int i = 0; i < 30; ++i) {
        reference.push_back("lamps fan" + std::to_string(i) + " of hall" + std::to_string(i));
        candidate.push_back("doors" + std::to_string(i) + " of room" + std::to_string(i));
    }
    auto const pairs = paired(reference, candidate);
    auto const turned = paired(candidate, reference);
    EXPECT_EQ(pairs.size(), turned.size());
}

TEST(SimilarityPairing, StaysBoundedOnRepetitiveTexts) {
    std::vector<std::string> reference;
    std::vector<std::string> candidate;
    for (int i = 0; i < 3000; ++i) {
        reference.push_back("the same words in every line " + std::to_string(i));
        candidate.push_back("the same words in every line " + std::to_string(i + 1));
    }
    auto const start = std::chrono::steady_clock::now();
    auto const pairs = paired(reference, candidate);
    EXPECT_GE(pairs.size(), 2990U);
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(3));
}

}  // namespace
}  // namespace standin::compare
