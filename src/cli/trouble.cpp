// Tested by tests/src/cli/run_test.cpp and record_run_test.cpp.
#include "cli/trouble.h"

#include <cstdio>

#include <fmt/format.h>

#include "cli/run.h"
#include "text/visible.h"

namespace standin::cli {

int trouble(model::Error const& error) {
    fmt::print(stderr, "standin: {}\n", text::visible(model::describe(error)));
    return kTrouble;
}

}  // namespace standin::cli
