// Findings about non-numeric features (modes): what the part does, not how much.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// One feature stated differently: ModeDiffers, once for the feature; further places
// of the same sheet that say the changed state follow from it. Stated in one sheet
// only: ModeUnstated, with that side. A second, contradicting statement inside one
// sheet: ConflictInDocument.
[[nodiscard]] std::vector<Draft> findFeatureDifferences(SheetPair const& sheets);

}  // namespace standin::compare
