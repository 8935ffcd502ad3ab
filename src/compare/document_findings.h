// Findings about what stands around the content: headings, running heads and page
// numbers, document properties.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"
#include "model/comparison.h"

namespace standin::compare {

struct SectionFindings {
    std::vector<Draft> drafts;
    std::vector<model::SectionPair> pairs;  // in the reference's order, then what only the candidate has
};

// Sections paired by kind and title whatever their order. Headings that differ are
// drafts where the sheets are states of one text; sections that only one sheet has
// are drafts always. SectionPair::similarity is that of the titles and kinds; the
// counts of findings are filled in at the end.
[[nodiscard]] SectionFindings pairSections(SheetPair const& sheets);

// Running heads, page numbers and watermarks, page by page.
[[nodiscard]] std::vector<Draft> findFurnitureDifferences(SheetPair const& sheets);

// Title, revision, date, part numbers and maker: at most one draft.
[[nodiscard]] std::vector<Draft> findPropertyDifferences(SheetPair const& sheets);

}  // namespace standin::compare
