// A record as text of 80 columns, for the terminal. Foreign text is made visible.
#pragma once

#include <string>

#include "record/record.h"

namespace standin::record {

// Identification, state, lines by severity with their decisions, bench tests with
// results, signatures, history.
[[nodiscard]] std::string recordText(Record const& record);

}  // namespace standin::record
