// `standin record check`: whether a record holds, and what is open or lapsed.
#pragma once

#include <functional>
#include <string>

#include "cli/compare_pair.h"
#include "cli/record_arguments.h"
#include "model/result.h"

namespace standin::cli {

// Takes one line of what there is to say.
using Tell = std::function<void(std::string const& line)>;

// Compares two sheets: comparePair() with the password and the progress of the caller.
using CompareSheets = std::function<model::Result<ComparedPair>(CompareCommand const& command)>;

// Says what is open and what lapsed. True: the record holds. Errors: those of
// reading it, the first line that does not hold among them (Damaged), and those of
// `compare`, which is asked where a sheet changed and both are named.
[[nodiscard]] model::Result<bool> checkRecord(RecordCommand const& command, CompareSheets const& compare, Tell const& say);

}  // namespace standin::cli
