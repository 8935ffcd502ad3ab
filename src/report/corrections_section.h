// What people put right in the two sheets, and by whom. Private to report/.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"

namespace standin::report {

// One line for each correction that names the document, used or not:
// `page 4, Overcharge detection voltage VCU: max read as "4.3O5", put right as
// "4.305" by I. Brandt, 2031-05-02: a stain on the 0`
[[nodiscard]] std::vector<std::string> correctionLines(model::DocumentInfo const& document);

// The section of a text report, 80 columns; `documents` are named before their
// lines where there are several. Nothing where nobody corrected anything.
struct NamedDocument {
    std::string_view name;  // "reference"; empty: there is only one
    model::DocumentInfo const* document = nullptr;
};
void appendCorrections(std::string& out, std::vector<NamedDocument> const& documents);
[[nodiscard]] std::string correctionsHtml(std::vector<NamedDocument> const& documents);

}  // namespace standin::report
