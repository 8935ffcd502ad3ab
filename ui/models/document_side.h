// What belongs to one of the two documents.
#pragma once

#include "ui/worker/read_pair.h"

namespace standin::ui {

[[nodiscard]] inline model::Datasheet const& sheetOf(ReadPair const& pair, DocumentSide side) {
    return side == DocumentSide::Reference ? pair.reference : pair.candidate;
}

[[nodiscard]] inline std::optional<model::Side> const& sideOf(model::Finding const& finding, DocumentSide side) {
    return side == DocumentSide::Reference ? finding.reference : finding.candidate;
}

[[nodiscard]] inline std::string const& pathOf(PairRequest const& request, DocumentSide side) {
    return side == DocumentSide::Reference ? request.reference : request.candidate;
}

}  // namespace standin::ui
