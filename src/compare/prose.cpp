// Sentences are paired by wording_pairing.h and their differences classed by
// wording_classes.h; a pair gives one finding, whatever number of words changed.
//
// Tested by tests/src/compare/wording_pairing_test.cpp and align_test.cpp.
#include "compare/prose.h"

#include <algorithm>

#include "compare/wording_classes.h"
#include "compare/wording_pairing.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;
using model::Sentence;

model::Side sideOfSentence(Sentence const& sentence) {
    return sentence.places.empty() ? sideOf(0, {}, sentence.text) : sideOf(sentence.places.front().page, sentence.places.front().box, sentence.text);
}

std::vector<model::Place> placesOf(std::vector<Sentence> const& sentences, int first, int count) {
    std::vector<model::Place> places;
    for (int i = first; i < first + count; ++i) {
        auto const& more = sentences[static_cast<std::size_t>(i)].places;
        places.insert(places.end(), more.begin(), more.end());
    }
    return places;
}

}  // namespace

Wording wordingOf(SheetPair const& sheets, std::string const& reference, std::string const& candidate) {
    auto outcome = classify(reference, candidate, sheets.wording);
    return {outcome.relation, std::move(outcome.classes)};
}

std::vector<model::WordingClass> classesAlone(SheetPair const& sheets, std::string const& printed, InSheet sheet) {
    return classifyAlone(printed, sheet == InSheet::Reference ? sheets.wording.reference : sheets.wording.candidate, sheets.wording.language);
}

ProseFindings findProseDifferences(SheetPair const& sheets) {
    ProseFindings result;
    if (!sheets.sameLanguage) return result;
    auto const& reference = sheets.reference.text;
    auto const& candidate = sheets.candidate.text;
    auto const countsItsPage = [](model::Datasheet const& sheet, Sentence const& sentence) {
        return !sentence.places.empty() && isOwnPageNumber(sentence.text, sentence.places.front().page, sheet.document.pages);
    };
    for (WordingPair const& pair : pairSentences(reference, candidate, sheets.oneText() ? Origin::OneText : Origin::TwoTexts)) {
        for (int i = 0; i < pair.referenceCount; ++i) {
            for (int j = 0; j < pair.candidateCount; ++j) result.pairs.push_back({pair.reference + i, pair.candidate + j});
        }
        if (pair.equal) continue;
        auto const& r = reference[static_cast<std::size_t>(pair.reference)];
        auto const& c = candidate[static_cast<std::size_t>(pair.candidate)];
        if (countsItsPage(sheets.reference, r) && countsItsPage(sheets.candidate, c)) continue;
        model::Side referenceSide = sideOfSentence(r);
        model::Side candidateSide = sideOfSentence(c);
        referenceSide.text = joinedText(reference, pair.reference, pair.referenceCount);
        candidateSide.text = joinedText(candidate, pair.candidate, pair.candidateCount);
        Wording wording = wordingOf(sheets, referenceSide.text, candidateSide.text);
        if (wording.relation == Relation::Same) continue;
        Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, wording.relation, std::move(referenceSide), std::move(candidateSide));
        draft.finding.classes = std::move(wording.classes);
        draft.finding.section = r.section;
        draft.referencePlaces = placesOf(reference, pair.reference, pair.referenceCount);
        draft.candidatePlaces = placesOf(candidate, pair.candidate, pair.candidateCount);
        draft.numberBearers = std::max(pair.referenceCount, pair.candidateCount);
        result.drafts.push_back(std::move(draft));
    }
    auto addOnly = [&](std::vector<Sentence> const& sentences, std::vector<int> const& partners, Relation relation) {
        bool const inReference = relation == Relation::OnlyReference;
        result.drafts.reserve(result.drafts.size() + static_cast<std::size_t>(std::count(partners.begin(), partners.end(), -1)));
        for (std::size_t i = 0; i < sentences.size(); ++i) {
            if (partners[i] >= 0) continue;
            std::optional<model::Side> side = sideOfSentence(sentences[i]);
            Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, relation, inReference ? side : std::nullopt, inReference ? std::nullopt : side);
            draft.finding.section = sentences[i].section;
            draft.finding.classes = classesAlone(sheets, sentences[i].text, inReference ? InSheet::Reference : InSheet::Candidate);
            draft.weak = countsItsPage(inReference ? sheets.reference : sheets.candidate, sentences[i]);
            (inReference ? draft.referencePlaces : draft.candidatePlaces) = sentences[i].places;
            result.drafts.push_back(std::move(draft));
        }
    };
    addOnly(reference, partnersOfReference(result.pairs, reference.size()), Relation::OnlyReference);
    addOnly(candidate, partnersOfCandidate(result.pairs, candidate.size()), Relation::OnlyCandidate);
    return result;
}

}  // namespace standin::compare
