// The findings on paper, by severity. Private to report/pdf/.
#pragma once

#include "report/cuttings.h"
#include "report/finding_view.h"
#include "report/pdf/paper.h"

namespace standin::report {

// What a card looks up, and which cutting stands where.
struct PaperFindings {
    model::Comparison const& comparison;
    SheetParameters const& sheets;
    Cuttings& cuttings;
};

// Every finding under the heading of its severity: cards with both sides, limit
// strip, explanation and page cuttings; editorial ones as a table.
void writeFindings(Paper& paper, PaperFindings const& findings);

}  // namespace standin::report
