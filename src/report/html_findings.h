// The findings of the HTML report: one card each, by severity. Private to report/.
#pragma once

#include <string>

#include "report/cuttings.h"
#include "report/finding_view.h"

namespace standin::report {

// Every finding under the heading of its severity; editorial ones folded.
[[nodiscard]] std::string findingsHtml(model::Comparison const& comparison, SheetParameters const& sheets, Cuttings& cuttings);

}  // namespace standin::report
