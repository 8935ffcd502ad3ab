// What a sheet of several versions states for the ordered one. Many print a row once for
// all versions ("VCU-0.025 | VCU | VCU+0.025") and what VCU is in the lines of a selection
// table, beside the modes of each version.
#pragma once

#include <string>
#include <vector>

#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

// The line of the ordering table for `variant`; null where there is none or several.
[[nodiscard]] model::OrderingLine const* lineOfVersion(model::Datasheet const& sheet, std::string const& variant);

// Was the mode read from a line of the ordering table?
[[nodiscard]] bool isOfOrderingLine(model::Feature const& feature, model::Datasheet const& sheet);

// Rows that refer to a column of the ordering table get the values of the chosen version,
// and of the modes that the lines state only its own are left. Without a choice (empty),
// what all lines state alike. False: nothing was there to be done.
bool takeOrderedVersion(model::Datasheet& sheet, std::string const& variant, vocabulary::Vocabulary const& vocabulary);

// Does the sheet have such rows or lines at all? Cheap, to be asked before it is copied.
[[nodiscard]] bool refersToVersions(model::Datasheet const& sheet, std::string const& variant);

// The codes of the lines where they give rows of the sheet other values or modes; empty where
// they agree. What takeOrderedVersion() leaves undecided without a choice.
[[nodiscard]] std::vector<std::string> undecidedVersions(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::compare
