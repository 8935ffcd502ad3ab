// `standin record check`: whether a record holds, and what is open or lapsed.
#pragma once

#include <functional>
#include <string>

#include "cli/record_arguments.h"
#include "model/result.h"

namespace standin::cli {

// Takes one line of what there is to say.
using Tell = std::function<void(std::string const& line)>;

// Says what is open and what lapsed. True: the record holds. Errors: those of
// reading it, the first line that does not hold among them (Damaged).
[[nodiscard]] model::Result<bool> checkRecord(RecordCommand const& command, Tell const& say);

}  // namespace standin::cli
