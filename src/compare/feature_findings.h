// Findings about non-numeric features (modes): what the part does, not how much.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// One feature stated differently: ModeDiffers, once for the feature; further places
// of the same sheet that say the changed state follow from it. Stated in one sheet
// only: ModeUnstated, with that side. A second, contradicting statement inside one
// sheet: ConflictInDocument.
[[nodiscard]] std::vector<Draft> findFeatureDifferences(SheetPair const& sheets);

// Sentences and ordering lines whose difference is nothing but the changed state of
// a feature that is a finding follow from that finding.
void linkStatements(std::vector<Draft>& drafts, SheetPair const& sheets);

// The same state of the same feature in two cells of an ordering line, whatever the
// words ("Inhibited", "禁止").
[[nodiscard]] bool stateTheSame(SheetPair const& sheets, std::pair<std::string, std::string> const& reference,
                                std::pair<std::string, std::string> const& candidate);

}  // namespace standin::compare
