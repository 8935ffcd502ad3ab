// What every command that compares takes: the two sheets and how to read them.
#pragma once

#include "cli/arguments.h"

namespace CLI {
class App;
}

namespace standin::cli {

// Adds REFERENCE, CANDIDATE and the options of reading and comparing to `app`;
// parsing fills `command`, which must outlive it.
void addInputOptions(CLI::App& app, CompareCommand& command);

}  // namespace standin::cli
