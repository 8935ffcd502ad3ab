// Versions that only the title of a table names ("Electrical characteristics of QX7805",
// then one of QX7806), or a line of its own above it ("(2) QX7806"): rows printed for one
// version, though no column says so.
#pragma once

#include <string>
#include <vector>

#include "model/datasheet.h"

namespace standin::compare {

// For each parameter of the sheet the version that its table's title names, or its
// section's where the title names none; empty: none, or every table has the same.
[[nodiscard]] std::vector<std::string> versionsInTitles(model::Datasheet const& sheet);

// Puts them in front of what the columns say. False: there are none, nothing changed.
bool takeVersionsFromTitles(model::Datasheet& sheet);

}  // namespace standin::compare
