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
    std::unordered_map<Key, std::vector<std::size_t>> postings;  // places in `candidate`
    for (std::size_t place = 0; place < candidate.size(); ++place) {
        Key last = 0;
        for (Key const token : candidateTokens(candidate[place])) {
            if (token == last) continue;
            last = token;
            auto& list = postings[token];
            if (list.size() <= kMostPostings) list.push_back(place);
        }
    }
    std::vector<int> votes(candidate.size(), 0);
    std::vector<std::size_t> voted;  // places with votes
    for (int const r : reference) {
        voted.clear();
        Key last = 0;
        for (Key const token : referenceTokens(r)) {
            if (token == last) continue;
            last = token;
            auto const found = postings.find(token);
            if (found == postings.end() || found->second.size() > kMostPostings) continue;
            for (std::size_t const place : found->second) {
                if (votes[place]++ == 0) voted.push_back(place);
            }
        }
        std::sort(voted.begin(), voted.end(), [&](std::size_t a, std::size_t b) { return votes[a] != votes[b] ? votes[a] > votes[b] : candidate[a] < candidate[b]; });
        for (std::size_t i = 0; i < voted.size() && i < kMostCompared; ++i) consider(r, candidate[voted[i]]);
        for (std::size_t const place : voted) votes[place] = 0;
    }
    return assign(edges);
}

}  // namespace standin::compare
