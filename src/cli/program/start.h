// How both programs start. `standin` is the one that users call; it hands a command
// line that asks for a PDF or a record to `standin-full` beside it, which is the
// same program with the PDF writers, the record commands and their libraries.
#pragma once

#include "cli/run.h"

namespace standin::cli {

// Runs the command line; whatever still throws (a fault of ours, no memory) ends
// here, on one line. The exit status.
[[nodiscard]] int start(int argc, char** argv, Program program);

}  // namespace standin::cli
