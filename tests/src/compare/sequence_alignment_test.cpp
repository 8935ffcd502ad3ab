#include "compare/sequence_alignment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <random>

namespace standin::compare {
namespace {

std::vector<Key> keysOf(std::string const& letters) {
    std::vector<Key> keys;
    for (char const letter : letters) keys.push_back(static_cast<Key>(letter));
    return keys;
}

std::string partners(std::string const& reference, std::string const& candidate, Likeness const& likeness = {}) {
    auto const pairs = alignSequences(keysOf(reference), keysOf(candidate), likeness);
    std::string text;
    for (auto const pair : pairs) text += std::to_string(pair.reference) + "-" + std::to_string(pair.candidate) + " ";
    return text;
}

TEST(SequenceAlignment, PairsEqualEntriesInOrder) {
    EXPECT_EQ(partners("abc", "abc"), "0-0 1-1 2-2 ");
    EXPECT_EQ(partners("abc", "xabc"), "0-1 1-2 2-3 ");
    EXPECT_EQ(partners("abcd", "acd"), "0-0 2-1 3-2 ");
    EXPECT_EQ(partners("", "abc"), "");
    EXPECT_EQ(partners("aaaa", "aaaa"), "0-0 1-1 2-2 3-3 ");
}

TEST(SequenceAlignment, LeavesTheTwinToItsTwin) {
    // "b" was changed into another "a": the second of the reference is its origin.
    Likeness const alike = [](int, int) { return 0.8; };
    EXPECT_EQ(partners("xaby", "xaay", alike), "0-0 1-1 2-2 3-3 ");
    EXPECT_EQ(partners("xbay", "xaay", alike), "0-0 1-1 2-2 3-3 ");
}

TEST(SequenceAlignment, PairsSimilarEntriesInGaps) {
    Likeness const alike = [](int i, int j) { return i == j ? 0.9 : 0.0; };
    EXPECT_EQ(partners("a1b", "a2b", alike), "0-0 1-1 2-2 ");
    Likeness const foreign = [](int, int) { return 0.3; };
    EXPECT_EQ(partners("a1b", "a2b", foreign), "0-0 2-2 ");
}

// Whichever list comes first: ties are broken by place and text, not by side.
TEST(SequenceAlignment, ExchangedListsGiveTheSamePairs) {
    EXPECT_EQ(partners("ab", "ba").size(), partners("ba", "ab").size());
    std::mt19937 random(7);
    for (int round = 0; round < 3000; ++round) {
        auto list = [&] {
            std::vector<Key> keys(1 + random() % 7);
            for (auto& key : keys) key = random() % 9;
            return keys;
        };
        auto const a = list();
        auto const b = list();
        auto const like = [](std::vector<Key> const& own, std::vector<Key> const& other) {
            return Likeness([&](int i, int j) { return (own[static_cast<std::size_t>(i)] + other[static_cast<std::size_t>(j)]) % 3 == 0 ? 0.7 : 0.5; });
        };
        auto const pairs = alignSequences(a, b, like(a, b), {.threshold = 0.6});
        auto exchanged = alignSequences(b, a, like(b, a), {.threshold = 0.6});
        std::vector<IndexPair> turned;
        for (auto const pair : exchanged) turned.push_back({pair.candidate, pair.reference});
        std::sort(turned.begin(), turned.end(), [](IndexPair x, IndexPair y) { return x.reference < y.reference; });
        ASSERT_EQ(pairs.size(), turned.size()) << round;
        for (std::size_t k = 0; k < pairs.size(); ++k) EXPECT_TRUE(pairs[k].reference == turned[k].reference && pairs[k].candidate == turned[k].candidate) << round;
    }
}

TEST(SequenceAlignment, FindsWhatMoved) {
    auto const reference = keysOf("abcde");
    auto const candidate = keysOf("deabc");
    auto pairs = alignSequences(reference, candidate, {});
    pairMoved(reference, candidate, pairs);
    auto const partner = partnersOfReference(pairs, 5);
    EXPECT_EQ(partner, (std::vector<int>{2, 3, 4, 0, 1}));
}

TEST(SequenceAlignment, IsOneToOneAndAscending) {
    std::mt19937 random(3);
    for (int round = 0; round < 300; ++round) {
        auto list = [&] {
            std::vector<Key> keys(random() % 60);
            for (auto& key : keys) key = random() % 9;
            return keys;
        };
        auto const a = list();
        auto const b = list();
        auto const pairs = alignSequences(a, b, [](int i, int j) { return (i + j) % 3 == 0 ? 0.7 : 0.2; });
        for (std::size_t p = 1; p < pairs.size(); ++p) {
            EXPECT_LT(pairs[p - 1].reference, pairs[p].reference);
            EXPECT_LT(pairs[p - 1].candidate, pairs[p].candidate);
        }
    }
}

TEST(SequenceAlignment, StaysBoundedOnRepetitiveLists) {
    std::vector<Key> a(40000);
    std::vector<Key> b(40000);
    for (std::size_t i = 0; i < a.size(); ++i) {
        a[i] = i % 7;
        b[i] = (i * 3) % 7;
    }
    auto const start = std::chrono::steady_clock::now();
    auto const pairs = alignSequences(a, b, [](int, int) { return 0.4; });
    EXPECT_FALSE(pairs.empty());
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(2));
}

}  // namespace
}  // namespace standin::compare
