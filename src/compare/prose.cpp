// Sentences are paired by wording_pairing.h and their differences classed by
// wording_classes.h; a pair gives one finding, whatever number of words changed.
//
// Tested by tests/src/compare/wording_pairing_test.cpp and align_test.cpp.
#include "compare/prose.h"

#include <algorithm>

#include "compare/wording_classes.h"
#include "compare/wording_pairing.h"
#include "model/crew.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;
using model::Sentence;

model::Side sideOfSentence(Sentence const& sentence) {
    auto side = sentence.places.empty() ? sideOf(0, {}, sentence.text) : sideOf(sentence.places.front().page, sentence.places.front().box, sentence.text);
    side.recognised = sentence.recognised;
    return side;
}

bool anyRecognised(std::vector<Sentence> const& sentences, int first, int count) {
    return std::any_of(sentences.begin() + first, sentences.begin() + first + count, [](Sentence const& sentence) { return sentence.recognised; });
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

namespace {

class Prose {
public:
    explicit Prose(SheetPair const& sheets) : m_sheets(sheets), m_reference(sheets.reference.text), m_candidate(sheets.candidate.text) {}

    ProseFindings run() {
        Origin const origin = m_sheets.oneText() ? Origin::OneText : Origin::TwoTexts;
        for (WordingPair const& pair : pairSentences({m_reference, m_sheets.referenceTextKeys}, {m_candidate, m_sheets.candidateTextKeys}, origin)) take(pair);
        takeAlone(m_reference, partnersOfReference(m_result.pairs, m_reference.size()), InSheet::Reference);
        takeAlone(m_candidate, partnersOfCandidate(m_result.pairs, m_candidate.size()), InSheet::Candidate);
        auto& drafts = m_result.drafts;
        // A difference is classed by itself, and that is most of the work.
        model::inParts(drafts.size(), [&](std::size_t first, std::size_t last) {
            for (std::size_t i = first; i < last; ++i) giveClasses(drafts[i]);
        });
        std::erase_if(drafts, [](Draft const& draft) { return draft.finding.relation == Relation::Same; });
        return std::move(m_result);
    }

private:
    // Leader dots alone.
    static bool saysNothing(std::string_view text) {
        auto const says = [](char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c); };
        return std::none_of(text.begin(), text.end(), says) && spaceless(text).empty();
    }

    static bool countsItsPage(model::Datasheet const& sheet, Sentence const& sentence) {
        return !sentence.places.empty() && isOwnPageNumber(sentence.text, sentence.places.front().page, sheet.document.pages);
    }

    void take(WordingPair const& pair) {
        for (int i = 0; i < pair.referenceCount; ++i) {
            for (int j = 0; j < pair.candidateCount; ++j) m_result.pairs.push_back({pair.reference + i, pair.candidate + j});
        }
        if (pair.equal) return;
        auto const& r = m_reference[static_cast<std::size_t>(pair.reference)];
        auto const& c = m_candidate[static_cast<std::size_t>(pair.candidate)];
        if (countsItsPage(m_sheets.reference, r) && countsItsPage(m_sheets.candidate, c)) return;
        model::Side referenceSide = sideOfSentence(r);
        model::Side candidateSide = sideOfSentence(c);
        referenceSide.text = joinedText(m_reference, pair.reference, pair.referenceCount);
        candidateSide.text = joinedText(m_candidate, pair.candidate, pair.candidateCount);
        referenceSide.recognised = anyRecognised(m_reference, pair.reference, pair.referenceCount);
        candidateSide.recognised = anyRecognised(m_candidate, pair.candidate, pair.candidateCount);
        Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, Relation::Reworded, std::move(referenceSide), std::move(candidateSide));
        draft.finding.section = r.section;
        draft.referencePlaces = placesOf(m_reference, pair.reference, pair.referenceCount);
        draft.candidatePlaces = placesOf(m_candidate, pair.candidate, pair.candidateCount);
        draft.numberBearers = std::max(pair.referenceCount, pair.candidateCount);
        m_result.drafts.push_back(std::move(draft));
    }

    void takeAlone(std::vector<Sentence> const& sentences, std::vector<int> const& partners, InSheet sheet) {
        bool const inReference = sheet == InSheet::Reference;
        m_result.drafts.reserve(m_result.drafts.size() + static_cast<std::size_t>(std::count(partners.begin(), partners.end(), -1)));
        for (std::size_t i = 0; i < sentences.size(); ++i) {
            if (partners[i] >= 0) continue;
            std::optional<model::Side> side = sideOfSentence(sentences[i]);
            Draft draft = makeDraft(FindingKind::Wording, Rank::Wording, inReference ? Relation::OnlyReference : Relation::OnlyCandidate, inReference ? side : std::nullopt,
                                    inReference ? std::nullopt : side);
            draft.finding.section = sentences[i].section;
            draft.weak = countsItsPage(inReference ? m_sheets.reference : m_sheets.candidate, sentences[i]) || saysNothing(sentences[i].text);
            (inReference ? draft.referencePlaces : draft.candidatePlaces) = sentences[i].places;
            m_result.drafts.push_back(std::move(draft));
        }
    }

    void giveClasses(Draft& draft) const {
        auto& finding = draft.finding;
        if (finding.reference && finding.candidate) {
            Wording wording = wordingOf(m_sheets, finding.reference->text, finding.candidate->text);
            finding.relation = wording.relation;
            finding.classes = std::move(wording.classes);
        } else {
            bool const inReference = finding.reference.has_value();
            finding.classes = classesAlone(m_sheets, (inReference ? finding.reference : finding.candidate)->text, inReference ? InSheet::Reference : InSheet::Candidate);
        }
    }

    SheetPair const& m_sheets;
    std::vector<Sentence> const& m_reference;
    std::vector<Sentence> const& m_candidate;
    ProseFindings m_result;
};

}  // namespace

ProseFindings findProseDifferences(SheetPair const& sheets) { return sheets.sameLanguage ? Prose(sheets).run() : ProseFindings{}; }

}  // namespace standin::compare
