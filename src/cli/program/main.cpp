// The program `standin`. Whatever still throws (a fault of ours, no memory)
// ends here, on one line.
#include <cstdio>
#include <exception>

#include "cli/run.h"

int main(int argc, char** argv) {
    try {
        return standin::cli::run(argc, argv);
    } catch (std::exception const& fault) {
        std::fputs("standin: internal fault: ", stderr);
        std::fputs(fault.what(), stderr);
        std::fputs("\n", stderr);
        return standin::cli::kTrouble;
    }
}
