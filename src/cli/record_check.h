// `standin record check`, and what it shares with the other commands of a record.
#pragma once

#include <string>

#include "cli/record_arguments.h"
#include "model/result.h"

namespace standin::cli {

// A line on standard output, foreign text made visible.
void say(std::string const& line);

// SHA-256 of a file of any kind.
[[nodiscard]] model::Result<std::string> hashOf(std::string const& path);

// Says what is open and what lapsed. True: the record holds. Errors: those of
// reading it, the first line that does not hold among them (Damaged).
[[nodiscard]] model::Result<bool> checkRecord(RecordCommand const& command);

}  // namespace standin::cli
