// Sentences are paired in order by equal text, then wherever they moved, then by
// likeness.
//
// Tested by tests/src/compare/prose_test.cpp.
#include "compare/prose.h"

#include <algorithm>

#include "compare/similarity_pairing.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;
using model::Sentence;

constexpr double kSentenceThreshold = 0.55;

struct Tokens {
    explicit Tokens(std::vector<Sentence> const& sentences) : m_sentences(sentences), m_tokens(sentences.size()) {}
    std::vector<Key> const& operator()(int index) {
        auto& list = m_tokens[static_cast<std::size_t>(index)];
        if (list.empty()) list = tokensOf(m_sentences[static_cast<std::size_t>(index)].text);
        return list;
    }

private:
    std::vector<Sentence> const& m_sentences;
    std::vector<std::vector<Key>> m_tokens;
};

model::Side sideOfSentence(Sentence const& sentence) {
    return sentence.places.empty() ? sideOf(0, {}, sentence.text) : sideOf(sentence.places.front().page, sentence.places.front().box, sentence.text);
}

std::vector<IndexPair> pairSentencesByText(SheetPair const& sheets) {
    auto const& reference = sheets.reference.text;
    auto const& candidate = sheets.candidate.text;
    std::vector<Key> referenceKeys;
    std::vector<Key> candidateKeys;
    for (auto const& sentence : reference) referenceKeys.push_back(keyOf(sentence.text));
    for (auto const& sentence : candidate) candidateKeys.push_back(keyOf(sentence.text));
    Tokens referenceTokens(reference);
    Tokens candidateTokens(candidate);
    Likeness const likeness = [&](int i, int j) {
        double const tokens = similarity(referenceTokens(i), candidateTokens(j));
        if (std::min(referenceTokens(i).size(), candidateTokens(j).size()) > 4) return tokens;
        return std::max(tokens, letterSimilarity(reference[static_cast<std::size_t>(i)].text, candidate[static_cast<std::size_t>(j)].text));
    };
    auto pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = kSentenceThreshold});
    pairMoved(referenceKeys, candidateKeys, pairs);
    auto const ofReference = partnersOfReference(pairs, reference.size());
    auto const ofCandidate = partnersOfCandidate(pairs, candidate.size());
    std::vector<int> freeReference;
    std::vector<int> freeCandidate;
    for (std::size_t i = 0; i < reference.size(); ++i) {
        if (ofReference[i] < 0) freeReference.push_back(static_cast<int>(i));
    }
    for (std::size_t j = 0; j < candidate.size(); ++j) {
        if (ofCandidate[j] < 0) freeCandidate.push_back(static_cast<int>(j));
    }
    auto const edges = pairSimilar(
        freeReference, [&](int i) -> std::vector<Key> const& { return referenceTokens(i); }, freeCandidate,
        [&](int j) -> std::vector<Key> const& { return candidateTokens(j); }, {.threshold = kSentenceThreshold});
    for (Edge const& edge : edges) pairs.push_back({edge.reference, edge.candidate});
    return pairs;
}

}  // namespace

Wording wordingOf(SheetPair const& /*sheets*/, std::string const& reference, std::string const& candidate) {
    if (keyOf(reference) == keyOf(candidate)) return {Relation::Same, {}};
    return {Relation::Reworded, {}};
}

ProseFindings findProseDifferences(SheetPair const& sheets) {
    ProseFindings result;
    if (!sheets.sameLanguage) return result;
    auto const& reference = sheets.reference.text;
    auto const& candidate = sheets.candidate.text;
    result.pairs = pairSentencesByText(sheets);
    for (auto const pair : result.pairs) {
        auto const& r = reference[static_cast<std::size_t>(pair.reference)];
        auto const& c = candidate[static_cast<std::size_t>(pair.candidate)];
        if (r.text == c.text) continue;
        Wording wording = wordingOf(sheets, r.text, c.text);
        if (wording.relation == Relation::Same) continue;
        Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, wording.relation, sideOfSentence(r), sideOfSentence(c));
        draft.finding.classes = std::move(wording.classes);
        draft.finding.section = r.section;
        draft.referencePlaces = r.places;
        draft.candidatePlaces = c.places;
        result.drafts.push_back(std::move(draft));
    }
    auto addOnly = [&](std::vector<Sentence> const& sentences, std::vector<int> const& partners, Relation relation) {
        for (std::size_t i = 0; i < sentences.size(); ++i) {
            if (partners[i] >= 0) continue;
            bool const inReference = relation == Relation::OnlyReference;
            std::optional<model::Side> side = sideOfSentence(sentences[i]);
            Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, relation, inReference ? side : std::nullopt, inReference ? std::nullopt : side);
            draft.finding.section = sentences[i].section;
            (inReference ? draft.referencePlaces : draft.candidatePlaces) = sentences[i].places;
            result.drafts.push_back(std::move(draft));
        }
    };
    addOnly(reference, partnersOfReference(result.pairs, reference.size()), Relation::OnlyReference);
    addOnly(candidate, partnersOfCandidate(result.pairs, candidate.size()), Relation::OnlyCandidate);
    return result;
}

}  // namespace standin::compare
