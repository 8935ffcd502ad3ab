// The program `standin`. Whatever still throws (a fault of ours, no memory)
// ends here, on one line.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <exception>

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

#include "cli/run.h"

namespace {

// Pages come and go by the megabyte while a document is read; giving each back to
// the system and asking for it again costs more than keeping it to the end.
void keepMemory() {
    constexpr int kKept = 128 << 20;
    mallopt(M_MMAP_THRESHOLD, kKept);
    mallopt(M_TRIM_THRESHOLD, kKept);
    // Large pages under the main heap: a fault each 2 MB instead of each 4 KB. Only
    // what is touched takes memory.
    constexpr std::uintptr_t kHeap = 64 << 20;
    constexpr std::uintptr_t kLargePage = 2 << 20;
    mallopt(M_TOP_PAD, static_cast<int>(kHeap));
    std::free(std::malloc(kLargePage));
    auto const end = reinterpret_cast<std::uintptr_t>(sbrk(0)) / kLargePage * kLargePage;
    if (end > kHeap) madvise(reinterpret_cast<void*>(end - kHeap + kLargePage), kHeap - kLargePage, MADV_HUGEPAGE);
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
