// From judged findings to the verdict and the cautions.
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "risk/sheet_view.h"

namespace standin::risk {

// One caution a cause: each id once, with the findings it was called for, in the
// order of DOMAIN-like importance: that of their gravest finding.
// `called`: caution ids of each finding, by index.
[[nodiscard]] std::vector<model::Caution> collectCautions(std::vector<model::Finding> const& findings, std::vector<std::vector<std::string>> const& called,
                                                          vocabulary::Vocabulary const& vocabulary);

// Level: the highest of the findings, at least small-differences where one stands
// above editorial; incomplete while anything that could matter was not read or not comparable.
// `typicalOnly`: parameters without a limit in the candidate.
[[nodiscard]] model::Verdict verdictOf(model::Comparison const& comparison, SheetView const& sheets);

}  // namespace standin::risk
