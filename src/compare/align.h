// From two datasheets to everything that differs between them: facts only. What
// a difference means (judgement, severity, verdict) is added in risk/.
//
//     auto comparison = align(reference, candidate, {}, vocabulary);
//     for (auto const& finding : comparison.findings) …   // kind, relation, classes, sides
//
// Nothing printed is passed over: parameters, rows of other tables, sentences,
// lettering of figures, pins, ordering lines, running heads and headings are each
// set against something in the other sheet or listed as found in one only; what
// could not be read is a finding of kind Coverage.
#pragma once

#include <string>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "model/page_picture.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

struct AlignOptions {
    std::string referenceVariant;  // orderable version, as printed; empty: none chosen
    std::string candidateVariant;
    // For drawings that differ in how they are stored: whether they look different.
    // Borrowed; null: they count as different for the reader to judge.
    model::PagePictures* referencePictures = nullptr;
    model::PagePictures* candidatePictures = nullptr;
};

// Fills documents, findings (kind, relation, classes, canonical, section, variant,
// sides, conditions, affects, pair, id, consequenceOf), pairs, sections and
// coverage. Findings come in document order of the reference, those without a
// reference side last. Pure; never fails; time grows linearly with the sheets but
// for bounded groups of doubtful pairings.
[[nodiscard]] model::Comparison align(model::Datasheet const& reference, model::Datasheet const& candidate, AlignOptions const& options, vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::compare
