// The record as one HTML file: no network, no scripts, prints well; the same
// look as the report of a comparison. Foreign text is escaped.
#pragma once

#include <string>

#include "record/record.h"

namespace standin::record {

// State and verdict, identification, open points, a deviation row for each
// finding with its decisions, bench tests with limits and fields for results,
// approvals, scope and what asks for a new review, method, history.
[[nodiscard]] std::string recordHtml(Record const& record);

}  // namespace standin::record
