// An inverted index from token to candidates; each reference entry looks at the
// postings of its rarest tokens, counts votes and compares the best voted.
//
// Tested by tests/src/compare/similarity_pairing_test.cpp.
#include "compare/similarity_pairing.h"

#include <algorithm>
#include <unordered_map>

namespace standin::compare {

namespace {

constexpr std::size_t kMostPostings = 24;    // a token met more often tells nothing
constexpr std::size_t kMostCompared = 12;    // candidates looked at for one entry
constexpr std::size_t kSmallLists = 12;      // below this every pair is compared

}  // namespace

std::vector<Edge> pairSimilar(std::span<int const> reference, TokensOf const& referenceTokens, std::span<int const> candidate,
                              TokensOf const& candidateTokens, SimilaritySettings const& settings) {
    std::vector<Edge> edges;
    auto consider = [&](int r, int c) {
        double const alike = similarity(referenceTokens(r), candidateTokens(c));
        if (alike < settings.threshold) return;
        edges.push_back({r, c, alike + (settings.bonus ? settings.bonus(r, c) : 0.0)});
    };
    if (reference.size() <= kSmallLists && candidate.size() <= kSmallLists) {
        for (int const r : reference) {
            for (int const c : candidate) consider(r, c);
        }
        return assign(edges);
    }
    std::unordered_map<Key, std::vector<int>> postings;
    for (int const c : candidate) {
        Key last = 0;
        for (Key const token : candidateTokens(c)) {
            if (token == last) continue;
            last = token;
            auto& list = postings[token];
            if (list.size() <= kMostPostings) list.push_back(c);
        }
    }
    std::vector<std::pair<int, int>> votes;  // candidate, votes
    for (int const r : reference) {
        votes.clear();
        std::unordered_map<int, int> count;
        Key last = 0;
        for (Key const token : referenceTokens(r)) {
            if (token == last) continue;
            last = token;
            auto const found = postings.find(token);
            if (found == postings.end() || found->second.size() > kMostPostings) continue;
            for (int const c : found->second) ++count[c];
        }
        votes.assign(count.begin(), count.end());
        std::sort(votes.begin(), votes.end(), [](auto const& a, auto const& b) { return a.second != b.second ? a.second > b.second : a.first < b.first; });
        if (votes.size() > kMostCompared) votes.resize(kMostCompared);
        for (auto const& [c, n] : votes) consider(r, c);
    }
    return assign(edges);
}

}  // namespace standin::compare
