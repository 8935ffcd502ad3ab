// The program `standin`. Whatever still throws (a fault of ours, no memory)
// ends here, on one line.
#include <cstdio>
#include <exception>

#include <malloc.h>

#include "cli/run.h"

namespace {

// Pages come and go by the megabyte while a document is read; giving each back to
// the system and asking for it again costs more than keeping it to the end.
void keepMemory() {
    constexpr int kKept = 128 << 20;
    mallopt(M_MMAP_THRESHOLD, kKept);
    mallopt(M_TRIM_THRESHOLD, kKept);
    mallopt(M_TOP_PAD, 1 << 20);
}

}  // namespace

int main(int argc, char** argv) {
    keepMemory();
    try {
        return standin::cli::run(argc, argv);
    } catch (std::exception const& fault) {
        std::fputs("standin: internal fault: ", stderr);
        std::fputs(fault.what(), stderr);
        std::fputs("\n", stderr);
        return standin::cli::kTrouble;
    }
}
