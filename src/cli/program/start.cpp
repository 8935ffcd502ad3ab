// Tested by tests/src/cli/program_test.cpp.
#include "cli/program/start.h"

#include <cstdio>
#include <exception>

#include "model/memory.h"

namespace standin::cli {

namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr Ending kEnding = Ending::Return;  // what is not given back is to be seen
#else
constexpr Ending kEnding = Ending::Leave;
#endif

}  // namespace

int start(int argc, char** argv, Program program) {
    model::keepMemory();
    try {
        program.ending = kEnding;
        return run(argc, argv, program);
    } catch (std::exception const& fault) {
        std::fputs("standin: internal fault: ", stderr);
        std::fputs(fault.what(), stderr);
        std::fputs("\n", stderr);
        return kTrouble;
    }
}

}  // namespace standin::cli
