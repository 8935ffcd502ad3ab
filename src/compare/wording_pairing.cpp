// Five passes, each over what the passes before left:
//   1. equal keys in order, then equal keys anywhere;
//   2. one sentence equal to two or more neighbours written together;
//   3. nearly equal token lists anywhere (an index of rare tokens, bounded);
//   4. likely partners inside the gap between two pairs, a lone one against a
//      lone one with less likeness;
//   5. likely partners anywhere.
// At the end a pair takes in an unpaired neighbour where that makes it more alike.
// Tested by tests/src/compare/wording_pairing_test.cpp.
#include "compare/wording_pairing.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <unordered_map>

#include "compare/sequence_alignment.h"
#include "compare/similarity_pairing.h"
#include "compare/text_keys.h"

namespace standin::compare {

namespace {

constexpr double kNearlyEqual = 0.85;
constexpr double kLikelyInGap = 0.5;
constexpr double kLikelyAlone = 0.25;   // the only one left between two pairs, on both sides
constexpr double kLikelyAnywhere = 0.6;
constexpr double kLikelyOfTwoTexts = 0.55;  // in a gap between pairs of two makers' texts
constexpr std::size_t kShortText = 4;   // tokens; shorter texts are weighed letter by letter as well
constexpr int kMostJoined = 8;          // sentences that one sentence is compared with
constexpr double kGain = 0.08;          // by which a wider pair has to be more alike
constexpr std::size_t kOpening = 10;    // bytes by which the start of a divided sentence is found
constexpr std::size_t kMostStarts = 8;  // places tried for one opening

class Side {
public:
    explicit Side(KeyedSentences const& sheet)
        : m_sentences(sheet.sentences),
          m_tokens(sheet.sentences.size()),
          m_partner(sheet.sentences.size(), -1),
          m_plain(sheet.sentences.size()),
          m_letters(sheet.sentences.size()),
          m_keys(sheet.keys) {}

    [[nodiscard]] int size() const { return static_cast<int>(m_sentences.size()); }
    [[nodiscard]] std::span<Key const> keys() const { return m_keys; }
    [[nodiscard]] Key key(int i) const { return m_keys[at(i)]; }
    [[nodiscard]] std::string const& text(int i) const { return m_sentences[at(i)].text; }

    std::vector<Key> const& tokens(int i) {
        auto& list = m_tokens[at(i)];
        if (list.empty()) list = tokensOf(text(i));
        return list;
    }
    LetterPairs const& letters(int i) {
        auto& pairs = m_letters[at(i)];
        if (!pairs) pairs.emplace(text(i));
        return *pairs;
    }
    std::string const& plain(int i) {
        auto& spelled = m_plain[at(i)];
        if (spelled.empty()) {
            spelled = spaceless(text(i));
            // A list set with bullets and one set without read the same.
            constexpr std::string_view kBullet = "•";
            for (std::size_t at = spelled.find(kBullet); at != std::string::npos; at = spelled.find(kBullet, at)) spelled.erase(at, kBullet.size());
        }
        return spelled;
    }

    [[nodiscard]] bool isFree(int i) const { return i >= 0 && i < size() && m_partner[at(i)] < 0; }
    [[nodiscard]] int partner(int i) const { return m_partner[at(i)]; }
    void take(int i, int partner) { m_partner[at(i)] = partner; }
    [[nodiscard]] std::vector<int> freeOnes() const {
        std::vector<int> list;
        for (int i = 0; i < size(); ++i) {
            if (isFree(i)) list.push_back(i);
        }
        return list;
    }

private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    std::span<model::Sentence const> m_sentences;
    std::vector<std::vector<Key>> m_tokens;
    std::vector<int> m_partner;  // index of the pair, or -1
    std::vector<std::string> m_plain;
    std::vector<std::optional<LetterPairs>> m_letters;
    std::span<Key const> m_keys;
};

class SentencePairing {
public:
    SentencePairing(KeyedSentences const& reference, KeyedSentences const& candidate, Origin origin) : m_reference(reference), m_candidate(candidate), m_origin(origin) {}

    std::vector<WordingPair> run() {
        pairEqual();
        if (bothLeft()) {
            pairDivided();
            pairAnywhere(kNearlyEqual);
            pairInGaps();
            pairAnywhere(kLikelyAnywhere);
            takeInNeighbours();
        }
        std::sort(m_pairs.begin(), m_pairs.end(), [](WordingPair const& a, WordingPair const& b) { return a.reference < b.reference; });
        return std::move(m_pairs);
    }

private:
    [[nodiscard]] bool bothLeft() const { return !m_reference.freeOnes().empty() && !m_candidate.freeOnes().empty(); }

    void add(WordingPair pair) {
        int const index = static_cast<int>(m_pairs.size());
        for (int i = 0; i < pair.referenceCount; ++i) m_reference.take(pair.reference + i, index);
        for (int j = 0; j < pair.candidateCount; ++j) m_candidate.take(pair.candidate + j, index);
        m_pairs.push_back(pair);
    }

    // 0: it is below the threshold.
    double likeness(int i, int j, double threshold) {
        auto const& a = m_reference.tokens(i);
        auto const& b = m_candidate.tokens(j);
        bool const letters = m_origin == Origin::OneText && std::min(a.size(), b.size()) <= kShortText;
        double const tokens = mostSimilarity(a.size(), b.size()) < threshold ? 0 : similarity(a, b);
        if (!letters) return tokens;
        return std::max(tokens, letterSimilarity(m_reference.letters(i), m_candidate.letters(j)));
    }

    void pairEqual() {
        auto pairs = alignSequences(m_reference.keys(), m_candidate.keys(), Likeness{});
        pairMoved(m_reference.keys(), m_candidate.keys(), pairs);
        for (IndexPair const pair : pairs) {
            if (m_reference.key(pair.reference) == m_candidate.key(pair.candidate)) add({pair.reference, pair.candidate, 1, 1, true});
        }
    }

    // `whole` of one sheet against neighbours of the other that together spell it.
    template <class OnFound>
    static void findDivided(Side& wholes, Side& parts, OnFound&& onFound) {
        std::unordered_map<Key, std::vector<int>> starts;
        for (int const j : parts.freeOnes()) {
            if (!parts.isFree(j + 1)) continue;
            std::string const& plain = parts.plain(j);
            if (plain.empty()) continue;
            auto& list = starts[hashOf(std::string_view(plain).substr(0, kOpening))];
            if (list.size() < kMostStarts) list.push_back(j);
        }
        if (starts.empty()) return;
        for (int const i : wholes.freeOnes()) {
            std::string_view const plain = wholes.plain(i);
            if (plain.size() < 2) continue;
            for (std::size_t const opening : {std::min(kOpening, plain.size())}) {
                auto const found = starts.find(hashOf(plain.substr(0, opening)));
                if (found == starts.end()) continue;
                for (int const j : found->second) {
                    int const count = spelledBy(plain, parts, j);
                    if (count < 2) continue;
                    onFound(i, j, count);
                    break;
                }
            }
        }
    }

    static int spelledBy(std::string_view plain, Side& parts, int first) {
        for (int count = 0; count < kMostJoined; ++count) {
            if (plain.empty()) return count;
            if (!parts.isFree(first + count)) return 0;
            std::string const& part = parts.plain(first + count);
            if (part.empty() || plain.substr(0, part.size()) != part) return 0;
            plain.remove_prefix(part.size());
        }
        return plain.empty() ? kMostJoined : 0;
    }

    void pairDivided() {
        findDivided(m_reference, m_candidate, [&](int i, int j, int count) { add({i, j, 1, count, true}); });
        findDivided(m_candidate, m_reference, [&](int j, int i, int count) { add({i, j, count, 1, true}); });
    }

    void pairAnywhere(double threshold) {
        auto const left = m_reference.freeOnes();
        auto const right = m_candidate.freeOnes();
        if (left.empty() || right.empty()) return;
        // Among nearly equals the one that stands at the same relative place wins.
        double const ofReference = 1.0 / std::max(1, m_reference.size());
        double const ofCandidate = 1.0 / std::max(1, m_candidate.size());
        auto const nearness = [&](int i, int j) { return 0.05 * (1.0 - std::min(1.0, std::abs(i * ofReference - j * ofCandidate))); };
        auto const edges = pairSimilar(
            left, [&](int i) -> std::vector<Key> const& { return m_reference.tokens(i); }, right, [&](int j) -> std::vector<Key> const& { return m_candidate.tokens(j); },
            {.threshold = threshold, .bonus = nearness});
        for (Edge const& edge : edges) add({edge.reference, edge.candidate, 1, 1, false});
    }

    // Runs of unpaired sentences in the reference whose neighbours are paired to
    // sentences around a run of unpaired ones in the candidate.
    void pairInGaps() {
        // Whichever sheet comes first: a gap that two runs lie beside goes to the one in front of both.
        for (Neighbours const wanted : {Neighbours::Both, Neighbours::Before, Neighbours::Behind}) pairInGaps(wanted);
    }

    enum class Neighbours : std::uint8_t { Both, Before, Behind };

    void pairInGaps(Neighbours wanted) {
        int i = 0;
        while (i < m_reference.size()) {
            if (!m_reference.isFree(i)) {
                ++i;
                continue;
            }
            int const a0 = i;
            while (i < m_reference.size() && m_reference.isFree(i)) ++i;
            int const a1 = i;
            // The gap behind the partner of the sentence before, or in front of the partner of the one behind.
            int const b0 = behind(a0 - 1);
            int const b1 = inFront(a1);
            bool const before = wanted != Neighbours::Behind && gapEnd(b0) > b0;
            if (before && (wanted == Neighbours::Before || gapEnd(b0) == b1)) pairGap(a0, a1, b0, gapEnd(b0), wanted);
            // Neither lies in front of something that was left already.
            bool const lastChoice = wanted == Neighbours::Behind && gapEnd(b0) == b0 && !m_reference.isFree(behindOfCandidate(gapStart(b1) - 1));
            if (lastChoice && b1 > gapStart(b1)) pairGap(a0, a1, gapStart(b1), b1, wanted);
        }
    }

    [[nodiscard]] int behind(int i) const {
        if (i < 0) return 0;
        WordingPair const& pair = m_pairs[static_cast<std::size_t>(m_reference.partner(i))];
        return pair.candidate + pair.candidateCount;
    }
    [[nodiscard]] int behindOfCandidate(int j) const {
        if (j < 0) return 0;
        WordingPair const& pair = m_pairs[static_cast<std::size_t>(m_candidate.partner(j))];
        return pair.reference + pair.referenceCount;
    }
    [[nodiscard]] int inFront(int i) const {
        if (i >= m_reference.size()) return m_candidate.size();
        return m_pairs[static_cast<std::size_t>(m_reference.partner(i))].candidate;
    }
    [[nodiscard]] int gapEnd(int j) const {
        while (m_candidate.isFree(j)) ++j;
        return j;
    }
    [[nodiscard]] int gapStart(int j) const {
        while (m_candidate.isFree(j - 1)) --j;
        return j;
    }

    void pairGap(int a0, int a1, int b0, int b1, Neighbours neighbours) {
        auto const left = m_reference.keys().subspan(static_cast<std::size_t>(a0), static_cast<std::size_t>(a1 - a0));
        auto const right = m_candidate.keys().subspan(static_cast<std::size_t>(b0), static_cast<std::size_t>(b1 - b0));
        bool const lone = left.size() == 1 && right.size() == 1;
        if (!lone && (left.size() == 1 || right.size() == 1) && left.size() + right.size() <= static_cast<std::size_t>(kMostJoined) + 1 && pairJoined(a0, a1, b0, b1)) return;
        double const threshold = m_origin == Origin::TwoTexts ? kLikelyOfTwoTexts : (lone && neighbours == Neighbours::Both ? kLikelyAlone : kLikelyInGap);
        auto const pairs = alignSequences(left, right, [&](int i, int j) { return likeness(a0 + i, b0 + j, threshold); }, {.threshold = threshold});
        for (IndexPair const pair : pairs) add({a0 + pair.reference, b0 + pair.candidate, 1, 1, false});
    }

    // A list that one sheet's text runs together: the lone sentence of a gap against
    // the run of the others that is most like it.
    bool pairJoined(int a0, int a1, int b0, int b1) {
        bool const loneReference = a1 - a0 == 1;
        Side& parts = loneReference ? m_candidate : m_reference;
        int const first = loneReference ? b0 : a0;
        int const last = loneReference ? b1 : a1;
        std::vector<Key> const whole = loneReference ? m_reference.tokens(a0) : m_candidate.tokens(b0);
        double bestSingle = 0;
        double best = 0;
        int bestFrom = 0;
        int bestCount = 0;
        for (int from = first; from < last; ++from) {
            std::vector<Key> run;
            for (int to = from; to < last; ++to) {
                run = merged(run, parts.tokens(to));
                double const alike = similarity(whole, run);
                if (to == from) {
                    bestSingle = std::max(bestSingle, alike);
                } else if (alike > best) {
                    best = alike;
                    bestFrom = from;
                    bestCount = to - from + 1;
                }
            }
        }
        if (best < kLikelyAnywhere || best < bestSingle + kGain) return false;
        if (loneReference) add({a0, bestFrom, 1, bestCount, false});
        else add({bestFrom, b0, bestCount, 1, false});
        return true;
    }

    static std::vector<Key> merged(std::vector<Key> const& a, std::vector<Key> const& b) {
        std::vector<Key> all(a.size() + b.size());
        std::merge(a.begin(), a.end(), b.begin(), b.end(), all.begin());
        return all;
    }

    // A sentence that was divided and changed as well.
    void takeInNeighbours() {
        for (std::size_t p = 0; p < m_pairs.size(); ++p) {
            if (m_pairs[p].equal || m_pairs[p].referenceCount + m_pairs[p].candidateCount != 2) continue;
            int const i = m_pairs[p].reference;
            int const j = m_pairs[p].candidate;
            double const alike = similarity(m_reference.tokens(i), m_candidate.tokens(j));
            WordingPair best = m_pairs[p];
            double bestAlike = alike + kGain;
            auto const consider = [&](WordingPair const& wider, double value) {
                if (value <= bestAlike) return;
                best = wider;
                bestAlike = value;
            };
            for (int const step : {-1, 1}) {
                if (m_candidate.isFree(j + step)) {
                    consider({i, std::min(j, j + step), 1, 2, false}, similarity(m_reference.tokens(i), merged(m_candidate.tokens(j), m_candidate.tokens(j + step))));
                }
                if (m_reference.isFree(i + step)) {
                    consider({std::min(i, i + step), j, 2, 1, false}, similarity(merged(m_reference.tokens(i), m_reference.tokens(i + step)), m_candidate.tokens(j)));
                }
            }
            if (best == m_pairs[p]) continue;
            m_pairs[p] = best;
            for (int k = 0; k < best.referenceCount; ++k) m_reference.take(best.reference + k, static_cast<int>(p));
            for (int k = 0; k < best.candidateCount; ++k) m_candidate.take(best.candidate + k, static_cast<int>(p));
        }
    }

    Side m_reference;
    Side m_candidate;
    Origin m_origin;
    std::vector<WordingPair> m_pairs;
};

}  // namespace

std::vector<Key> sentenceKeys(std::span<model::Sentence const> sentences) {
    std::vector<Key> keys;
    keys.reserve(sentences.size());
    for (auto const& sentence : sentences) keys.push_back(keyOf(sentence.text));
    return keys;
}

std::vector<WordingPair> pairSentences(KeyedSentences const& reference, KeyedSentences const& candidate, Origin origin) {
    return SentencePairing(reference, candidate, origin).run();
}

std::vector<WordingPair> pairSentences(std::span<model::Sentence const> reference, std::span<model::Sentence const> candidate, Origin origin) {
    return pairSentences(KeyedSentences{reference, sentenceKeys(reference)}, KeyedSentences{candidate, sentenceKeys(candidate)}, origin);
}

std::string joinedText(std::span<model::Sentence const> sentences, int first, int count) {
    std::string text = sentences[static_cast<std::size_t>(first)].text;
    for (int i = 1; i < count; ++i) text += " " + sentences[static_cast<std::size_t>(first + i)].text;
    return text;
}

}  // namespace standin::compare
