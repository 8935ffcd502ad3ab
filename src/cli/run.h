// The commands of the program, from its arguments to its exit status. This
// folder sits on top: it may include every other one but ui/.
#pragma once

namespace standin::cli {

// Exit status, as POSIX diff has it.
inline constexpr int kNothingFound = 0;  // nothing at or above --fail-on
inline constexpr int kFindings = 1;
inline constexpr int kTrouble = 2;  // usage, unreadable input, a write that failed

// Runs one command line. Writes to standard output and standard error and to
// the files that it names; all or none of them.
[[nodiscard]] int run(int argc, char const* const* argv);

}  // namespace standin::cli
