// The one entry point of comparison, for the command line and the desk:
// alignment (src/compare/) and judging (assess.h) in one call.
//
//     auto comparison = compareDatasheets(reference, candidate, {}, vocabulary);
//     if (!comparison) …  // a variant that the sheet does not have
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/comparison.h"
#include "model/result.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

struct CompareOptions {
    std::string referenceVariant;  // an orderable version as printed; empty: none chosen
    std::string candidateVariant;
};

// Pure: the same values give the same comparison. Error: Usage where a chosen
// variant does not occur in its sheet; the message lists those that do.
[[nodiscard]] model::Result<model::Comparison> compareDatasheets(model::Datasheet const& reference, model::Datasheet const& candidate,
                                                                 CompareOptions const& options, vocabulary::Vocabulary const& vocabulary);

// The versions that a sheet covers: ordering codes and the variants of
// parameters, as printed, in document order, each once.
[[nodiscard]] std::vector<std::string> knownVariants(model::Datasheet const& datasheet);

// The known version that `wanted` means: as printed, or the same after folding
// case, blanks and hyphens.
[[nodiscard]] std::optional<std::string> findVariant(std::vector<std::string> const& known, std::string const& wanted);

}  // namespace standin::risk
