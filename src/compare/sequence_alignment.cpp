// Equal entries at both ends are taken off; then entries whose key occurs once
// in each list are anchors where they stand in the same order (longest rising
// run of their positions); each gap between anchors is treated again in the
// same way, and a gap without anchors is solved by dynamic programming over
// likeness, so that in "A B" against "B' B" the B pairs with B and A with B'. What is
// equally good is decided by place and text, never by which list comes first.
//
// Tested by tests/src/compare/sequence_alignment_test.cpp.
#include "compare/sequence_alignment.h"

#include <algorithm>
#include <cstdint>
#include <unordered_map>

namespace standin::compare {

namespace {

constexpr int kDeepestRecursion = 12;
constexpr Key kTextOrders = 65521;

// A place among texts that the two lists agree about.
Key textOrder(Key reference, Key candidate) {
    auto const mixed = [](Key key) {
        key = (key ^ (key >> 29U)) * 0x9E3779B97F4A7C15ULL;
        return key ^ (key >> 32U);
    };
    return (mixed(reference) + mixed(candidate)) % kTextOrders;
}

// Far below any difference of likeness that means something: early places come first, and what is equal then is
// decided by the texts, so that an exchange of the two lists gives the same pairs.
double preference(long long i, long long j, Key reference, Key candidate) {
    constexpr double kByPlace = 1e-7;
    constexpr double kByText = 1e-9;
    double const text = static_cast<double>(textOrder(reference, candidate)) / static_cast<double>(kTextOrders);
    return (kByPlace + kByText * text) / static_cast<double>(1 + i + j);
}

constexpr double kEqualWeight = 1.5;  // equal keys outweigh any two merely similar ones next to them

class Aligner {
public:
    Aligner(std::span<Key const> reference, std::span<Key const> candidate, Likeness const& likeness, AlignmentSettings settings)
        : m_reference(reference), m_candidate(candidate), m_likeness(likeness), m_settings(settings) {}

    std::vector<IndexPair> run() {
        align(0, static_cast<int>(m_reference.size()), 0, static_cast<int>(m_candidate.size()), 0);
        std::sort(m_pairs.begin(), m_pairs.end(), [](IndexPair a, IndexPair b) { return a.reference < b.reference; });
        return std::move(m_pairs);
    }

private:
    [[nodiscard]] bool equal(int i, int j) const {
        return m_reference[static_cast<std::size_t>(i)] == m_candidate[static_cast<std::size_t>(j)];
    }

    void align(int a0, int a1, int b0, int b1, int depth) {
        while (a0 < a1 && b0 < b1 && equal(a0, b0)) m_pairs.push_back({a0++, b0++});
        while (a0 < a1 && b0 < b1 && equal(a1 - 1, b1 - 1)) m_pairs.push_back({--a1, --b1});
        if (a0 >= a1 || b0 >= b1) return;
        std::vector<IndexPair> const anchors = depth < kDeepestRecursion ? findAnchors(a0, a1, b0, b1) : std::vector<IndexPair>{};
        if (anchors.empty()) {
            solveGap(a0, a1, b0, b1);
            return;
        }
        int a = a0;
        int b = b0;
        for (IndexPair const anchor : anchors) {
            align(a, anchor.reference, b, anchor.candidate, depth + 1);
            m_pairs.push_back(anchor);
            a = anchor.reference + 1;
            b = anchor.candidate + 1;
        }
        align(a, a1, b, b1, depth + 1);
    }

    // Keys that occur once on each side, in the longest common order.
    [[nodiscard]] std::vector<IndexPair> findAnchors(int a0, int a1, int b0, int b1) const {
        struct Seen {
            int inReference = 0, inCandidate = 0, at = 0;
        };
        std::unordered_map<Key, Seen> seen;
        seen.reserve(static_cast<std::size_t>(a1 - a0 + b1 - b0));
        for (int i = a0; i < a1; ++i) ++seen[m_reference[static_cast<std::size_t>(i)]].inReference;
        for (int j = b0; j < b1; ++j) {
            auto& entry = seen[m_candidate[static_cast<std::size_t>(j)]];
            ++entry.inCandidate;
            entry.at = j;
        }
        std::vector<IndexPair> unique;
        for (int i = a0; i < a1; ++i) {
            auto const& entry = seen[m_reference[static_cast<std::size_t>(i)]];
            if (entry.inReference == 1 && entry.inCandidate == 1) unique.push_back({i, entry.at});
        }
        return longestRising(unique);
    }

    // Of several that are equally long the one whose texts come out highest: the same whichever list comes first.
    [[nodiscard]] std::vector<IndexPair> longestRising(std::vector<IndexPair> const& pairs) const {
        if (std::is_sorted(pairs.begin(), pairs.end(), [](IndexPair a, IndexPair b) { return a.candidate < b.candidate; })) return pairs;
        struct Run {
            int length = 0;
            std::uint64_t texts = 0;
            int last = -1;  // index of the pair that ends it
        };
        auto const isBetter = [](Run const& a, Run const& b) { return a.length != b.length ? a.length > b.length : a.texts > b.texts; };
        std::vector<int> places(pairs.size());
        std::transform(pairs.begin(), pairs.end(), places.begin(), [](IndexPair pair) { return pair.candidate; });
        std::sort(places.begin(), places.end());
        std::vector<Run> bestUpTo(pairs.size() + 1);  // a tree of sums by place, of which each is the best run
        std::vector<int> before(pairs.size(), -1);
        Run best;
        for (std::size_t p = 0; p < pairs.size(); ++p) {
            auto const place = static_cast<std::size_t>(std::lower_bound(places.begin(), places.end(), pairs[p].candidate) - places.begin());
            Run run;
            for (std::size_t at = place; at > 0; at &= at - 1) {
                if (isBetter(bestUpTo[at], run)) run = bestUpTo[at];
            }
            before[p] = run.last;
            run = {run.length + 1, run.texts + textOrder(m_reference[static_cast<std::size_t>(pairs[p].reference)], 0), static_cast<int>(p)};
            if (isBetter(run, best)) best = run;
            for (std::size_t at = place + 1; at < bestUpTo.size(); at += at & (~at + 1)) {
                if (isBetter(run, bestUpTo[at])) bestUpTo[at] = run;
            }
        }
        std::vector<IndexPair> run;
        for (int p = best.last; p >= 0; p = before[static_cast<std::size_t>(p)]) run.push_back(pairs[static_cast<std::size_t>(p)]);
        std::reverse(run.begin(), run.end());
        return run;
    }

    void solveGap(int a0, int a1, int b0, int b1) {
        long long const n = a1 - a0;
        long long const m = b1 - b0;
        if (n * m > kLargestGap) {
            pairEqualOnly(a0, a1, b0, b1);
            return;
        }
        auto const width = static_cast<std::size_t>(m + 1);
        std::vector<double> best(static_cast<std::size_t>(n + 1) * width, 0.0);
        std::vector<std::uint8_t> step(best.size(), 0);  // 1: pair, 2: leave the reference's, 3: leave the candidate's
        for (long long i = n - 1; i >= 0; --i) {
            for (long long j = m - 1; j >= 0; --j) {
                auto const at = static_cast<std::size_t>(i) * width + static_cast<std::size_t>(j);
                double weight = kEqualWeight;
                if (!equal(a0 + static_cast<int>(i), b0 + static_cast<int>(j))) {
                    weight = m_likeness ? m_likeness(a0 + static_cast<int>(i), b0 + static_cast<int>(j)) : 0.0;
                    if (weight < m_settings.threshold) weight = 0;
                }
                if (weight > 0) weight += preference(i, j, m_reference[static_cast<std::size_t>(a0 + i)], m_candidate[static_cast<std::size_t>(b0 + j)]);
                double const skipReference = best[at + width];
                double const skipCandidate = best[at + 1];
                double const pair = weight > 0 ? weight + best[at + width + 1] : -1;
                best[at] = std::max({pair, skipReference, skipCandidate});
                step[at] = static_cast<std::uint8_t>(best[at] == pair ? 1 : (best[at] == skipReference ? 2 : 3));
            }
        }
        for (long long i = 0, j = 0; i < n && j < m;) {
            switch (step[static_cast<std::size_t>(i) * width + static_cast<std::size_t>(j)]) {
                case 1: m_pairs.push_back({a0 + static_cast<int>(i++), b0 + static_cast<int>(j++)}); break;
                case 2: ++i; break;
                default: ++j; break;
            }
        }
    }

    // In order, each with the next free entry of the same key.
    void pairEqualOnly(int a0, int a1, int b0, int b1) {
        std::unordered_map<Key, std::vector<int>> places;
        for (int j = b1 - 1; j >= b0; --j) places[m_candidate[static_cast<std::size_t>(j)]].push_back(j);
        int next = b0;
        for (int i = a0; i < a1; ++i) {
            auto const found = places.find(m_reference[static_cast<std::size_t>(i)]);
            if (found == places.end()) continue;
            auto& list = found->second;
            while (!list.empty() && list.back() < next) list.pop_back();
            // Looking too far ahead would skip everything in between.
            constexpr int kFarthest = 64;
            if (list.empty() || list.back() - next > kFarthest) continue;
            m_pairs.push_back({i, list.back()});
            next = list.back() + 1;
            list.pop_back();
        }
    }

    std::span<Key const> m_reference;
    std::span<Key const> m_candidate;
    Likeness const& m_likeness;
    AlignmentSettings m_settings;
    std::vector<IndexPair> m_pairs;
};

}  // namespace

std::vector<IndexPair> alignSequences(std::span<Key const> reference, std::span<Key const> candidate, Likeness const& likeness,
                                      AlignmentSettings settings) {
    return Aligner(reference, candidate, likeness, settings).run();
}

std::vector<int> partnersOfReference(std::span<IndexPair const> pairs, std::size_t count) {
    std::vector<int> partners(count, -1);
    for (IndexPair const pair : pairs) partners[static_cast<std::size_t>(pair.reference)] = pair.candidate;
    return partners;
}

std::vector<int> partnersOfCandidate(std::span<IndexPair const> pairs, std::size_t count) {
    std::vector<int> partners(count, -1);
    for (IndexPair const pair : pairs) partners[static_cast<std::size_t>(pair.candidate)] = pair.reference;
    return partners;
}

void pairMoved(std::span<Key const> reference, std::span<Key const> candidate, std::vector<IndexPair>& pairs) {
    auto const ofReference = partnersOfReference(pairs, reference.size());
    auto const ofCandidate = partnersOfCandidate(pairs, candidate.size());
    std::unordered_map<Key, std::vector<int>> free;
    for (std::size_t j = candidate.size(); j-- > 0;) {
        if (ofCandidate[j] < 0) free[candidate[j]].push_back(static_cast<int>(j));
    }
    for (std::size_t i = 0; i < reference.size(); ++i) {
        if (ofReference[i] >= 0) continue;
        auto const found = free.find(reference[i]);
        if (found == free.end() || found->second.empty()) continue;
        pairs.push_back({static_cast<int>(i), found->second.back()});
        found->second.pop_back();
    }
}

}  // namespace standin::compare
