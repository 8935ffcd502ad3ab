// An inverted index from token to candidates, one sorted list; each reference entry looks
// at the postings of its rarest tokens, counts votes and compares the best voted.
//
// Tested by tests/src/compare/similarity_pairing_test.cpp.
#include "compare/similarity_pairing.h"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <vector>

namespace standin::compare {

namespace {

constexpr std::size_t kMostPostings = 24;    // a token met more often tells nothing
constexpr std::size_t kMostCompared = 12;    // candidates looked at for one entry
constexpr std::size_t kSmallLists = 12;      // below this every pair is compared

struct Posting {
    Key token = 0;
    std::size_t place = 0;  // in `candidate`
};
using Postings = std::vector<Posting>;  // by token, then by place

Postings postingsOf(std::span<int const> candidate, TokensOf const& candidateTokens) {
    Postings postings;
    for (std::size_t place = 0; place < candidate.size(); ++place) {
        Key last = 0;
        for (Key const token : candidateTokens(candidate[place])) {
            if (token == last) continue;
            last = token;
            postings.push_back({token, place});
        }
    }
    std::sort(postings.begin(), postings.end(), [](Posting const& a, Posting const& b) { return std::tie(a.token, a.place) < std::tie(b.token, b.place); });
    return postings;
}

// Tokens that more than so many entries have, sorted.
std::vector<Key> commonTokens(std::span<int const> entries, TokensOf const& tokensOf) {
    std::vector<Key> common;
    if (entries.size() <= kMostPostings) return common;
    std::vector<Key> all;
    for (int const entry : entries) {
        std::vector<Key> const& tokens = tokensOf(entry);
        std::unique_copy(tokens.begin(), tokens.end(), std::back_inserter(all));
    }
    std::sort(all.begin(), all.end());
    for (std::size_t last = kMostPostings; last < all.size(); ++last) {
        if (all[last] == all[last - kMostPostings] && (common.empty() || common.back() != all[last])) common.push_back(all[last]);
    }
    return common;
}

// Tokens that tell nothing in one of the lists tell nothing in either.
void dropCommon(Postings& postings, std::vector<Key> const& others) {
    auto kept = postings.begin();
    auto other = others.begin();
    for (auto begin = postings.cbegin(); begin != postings.cend();) {
        auto const end = std::find_if(begin, postings.cend(), [&](Posting const& posting) { return posting.token != begin->token; });
        while (other != others.end() && *other < begin->token) ++other;
        bool const common = static_cast<std::size_t>(end - begin) > kMostPostings || (other != others.end() && *other == begin->token);
        if (!common) kept = std::copy(begin, end, kept);
        begin = end;
    }
    postings.erase(kept, postings.end());
}

// Calls visit(place) for the postings of each of the tokens, which are sorted.
template <class Visit>
void forEachPosting(Postings const& postings, std::vector<Key> const& tokens, Visit const& visit) {
    auto begin = postings.begin();
    Key last = 0;
    for (Key const token : tokens) {
        if (token == last) continue;
        last = token;
        begin = std::lower_bound(begin, postings.end(), token, [](Posting const& posting, Key key) { return posting.token < key; });
        for (; begin != postings.end() && begin->token == token; ++begin) visit(begin->place);
    }
}

}  // namespace

std::vector<Edge> pairSimilar(std::span<int const> reference, TokensOf const& referenceTokens, std::span<int const> candidate,
                              TokensOf const& candidateTokens, SimilaritySettings const& settings) {
    std::vector<Edge> edges;
    auto consider = [&](int r, int c) {
        auto const& a = referenceTokens(r);
        auto const& b = candidateTokens(c);
        if (mostSimilarity(a.size(), b.size()) < settings.threshold) return;
        double const alike = similarity(a, b);
        if (alike < settings.threshold) return;
        edges.push_back({r, c, alike + (settings.bonus ? settings.bonus(r, c) : 0.0)});
    };
    if (reference.size() <= kSmallLists && candidate.size() <= kSmallLists) {
        for (int const r : reference) {
            for (int const c : candidate) consider(r, c);
        }
        return assign(edges);
    }
    Postings postings = postingsOf(candidate, candidateTokens);
    dropCommon(postings, commonTokens(reference, referenceTokens));
    std::vector<int> votes(candidate.size(), 0);
    std::vector<std::size_t> voted;  // places with votes
    for (int const r : reference) {
        voted.clear();
        forEachPosting(postings, referenceTokens(r), [&](std::size_t place) {
            if (votes[place]++ == 0) voted.push_back(place);
        });
        auto const compared = static_cast<std::ptrdiff_t>(std::min(voted.size(), kMostCompared));
        std::partial_sort(voted.begin(), voted.begin() + compared, voted.end(),
                          [&](std::size_t a, std::size_t b) { return votes[a] != votes[b] ? votes[a] > votes[b] : candidate[a] < candidate[b]; });
        for (auto place = voted.begin(); place != voted.begin() + compared; ++place) consider(r, candidate[*place]);
        for (std::size_t const place : voted) votes[place] = 0;
    }
    return assign(edges);
}

}  // namespace standin::compare
