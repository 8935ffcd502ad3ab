// Findings about figures: captions, lettering, drawings.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

struct FigureFindings {
    std::vector<Draft> drafts;
    std::vector<IndexPair> pairs;  // indices into Datasheet::figures
};

// Corresponding figures whose caption, lettering or drawing differ give one draft
// each (more where the changed lettering does not fit in one); figures of one sheet
// only are one-sided drafts.
[[nodiscard]] FigureFindings findFigureDifferences(SheetPair const& sheets);

}  // namespace standin::compare
