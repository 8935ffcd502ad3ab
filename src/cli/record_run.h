// The commands `standin record …`, from their arguments to the exit status.
#pragma once

#include "cli/run.h"

namespace standin::cli {

// `argv[0]` is "record". Exit status: 0 done, or the record holds; 1 (check
// only) lapsed or open; 2 trouble, or the record does not hold together.
[[nodiscard]] int runRecord(int argc, char const* const* argv, Program const& program);

}  // namespace standin::cli
