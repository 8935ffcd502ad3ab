// The two datasheets of a comparison with what every stage needs to know of both:
// their printed rows paired, and whether they are texts of one origin.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "compare/align.h"
#include "compare/printed_rows.h"
#include "compare/sequence_alignment.h"
#include "compare/wording_classes.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

// Revisions, copies and cloned sheets share most of their text: there every
// difference of wording is a finding. Two makers' own sheets name and arrange
// things differently without meaning anything by it.
enum class Kinship : std::uint8_t { OneText, TwoTexts };

struct SheetPair {
    SheetPair(model::Datasheet const& reference, model::Datasheet const& candidate, AlignOptions const& options,
              vocabulary::Vocabulary const& vocabulary);

    model::Datasheet const& reference;
    model::Datasheet const& candidate;
    AlignOptions const& options;
    vocabulary::Vocabulary const& vocabulary;
    PrintedRows referenceRows;
    PrintedRows candidateRows;
    std::vector<Key> referenceTextKeys;  // of the sentences
    std::vector<Key> candidateTextKeys;
    std::map<int, bool> pagesInPlace;  // see inPlace()
    std::vector<IndexPair> rowPairs;
    std::vector<int> rowPartnerOfReference;  // by row; -1: none
    std::vector<int> rowPartnerOfCandidate;
    Kinship kinship = Kinship::TwoTexts;
    bool sameLanguage = true;
    WordingContext wording;  // what both sheets call themselves, for classing texts

    // The page of that number has most of its texts at the same places in both sheets,
    // so that what stands at one place there corresponds (copies, small revisions).
    [[nodiscard]] bool inPlace(int page) const {
        auto const found = pagesInPlace.find(page);
        return found != pagesInPlace.end() && found->second;
    }
    [[nodiscard]] bool oneText() const { return kinship == Kinship::OneText; }
};

}  // namespace standin::compare
