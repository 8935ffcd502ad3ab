// Adds to the facts of src/compare/ what they mean: judgement, level, severity,
// hazard side, title, explanation and caution of each finding, the order of the
// findings, cautions, general statements and the verdict.
//
//     auto comparison = assess(compare::align(reference, candidate, {}, vocabulary), reference, candidate, vocabulary);
//     comparison.verdict.level      // VerdictLevel::BenchTest
#pragma once

#include <string>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "risk/work_out.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

class SheetView;

struct AssessOptions {
    Surroundings around;  // the cell and the circuit, where given
    std::string referenceVariant;  // as printed; empty: none chosen
    std::string candidateVariant;
};

// `compared` must come from the same two sheets; the reference's is empty where
// compared.kind is CandidateAlone. Pure; never fails; linear in the
// findings and pairs but for sorting.
[[nodiscard]] model::Comparison assess(model::Comparison compared, model::Datasheet const& reference, model::Datasheet const& candidate,
                                       vocabulary::Vocabulary const& vocabulary, AssessOptions const& options = {});
// The same, with what was looked up in the two sheets before.
[[nodiscard]] model::Comparison assess(model::Comparison compared, SheetView const& sheets, AssessOptions const& options);

}  // namespace standin::risk
