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
#include "model/page_picture.h"
#include "model/result.h"
#include "risk/cell_profile.h"
#include "risk/circuit.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

struct CompareOptions {
    std::string referenceVariant;  // an orderable version as printed; empty: none chosen
    std::string candidateVariant;
    std::optional<CellProfile> cell = {};  // checked against both parts
    std::optional<Circuit> circuit = {};   // values that stand in neither sheet
    // Pictures of both, to see whether drawings that are stored otherwise look
    // otherwise. Borrowed; may be null.
    model::PagePictures* referencePictures = nullptr;
    model::PagePictures* candidatePictures = nullptr;
};

// Pure: the same values give the same comparison. Error: Usage where a chosen
// variant does not occur in its sheet; the message lists those that do.
[[nodiscard]] model::Result<model::Comparison> compareDatasheets(model::Datasheet const& reference, model::Datasheet const& candidate,
                                                                 CompareOptions const& options, vocabulary::Vocabulary const& vocabulary);

// The candidate against options.cell alone, for a part without a sheet to set it
// against: derived quantities, cell checks, verdict; every parameter is listed as
// a pair of its own. Error: as above, and Usage without a cell.
[[nodiscard]] model::Result<model::Comparison> checkCandidate(model::Datasheet const& candidate, CompareOptions const& options,
                                                              vocabulary::Vocabulary const& vocabulary);

// The versions that a sheet covers: ordering codes and the variants of
// parameters, as printed, in document order, each once.
[[nodiscard]] std::vector<std::string> knownVariants(model::Datasheet const& datasheet);

// The version as the sheet prints it; empty where none is wanted. Error: Usage where
// the sheet does not have it; the message lists those that it has.
[[nodiscard]] model::Result<std::string> chosenVariant(model::Datasheet const& sheet, std::string const& wanted);

// The known version that `wanted` means: as printed, or the same after folding
// case, blanks and hyphens.
[[nodiscard]] std::optional<std::string> findVariant(std::vector<std::string> const& known, std::string const& wanted);

}  // namespace standin::risk
