// glibc grows the main thread's heap by sbrk and gives each further thread a heap
// of its own, aligned to its largest size. Both are told to grow at once by as much
// as they may, and the address range is marked for pages of 2 MB: a fault for each
// of those instead of one for each 4 KB. Only what is touched takes memory.
// Tested by tests/src/model/memory_test.cpp.
#include "model/memory.h"

#include <cstdint>
#include <cstdlib>  // tells which C library it is
#include <memory>

#if defined(__GLIBC__)

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

namespace standin::model {

namespace {

constexpr int kKept = 128 << 20;
constexpr std::uintptr_t kLargePage = 2 << 20;
constexpr std::uintptr_t kHeap = 64 << 20;  // HEAP_MAX_SIZE of glibc on machines of 64 bit
constexpr std::size_t kOnTheHeap = 256 << 10;

struct Free {
    void operator()(void* block) const { std::free(block); }
};
using Block = std::unique_ptr<void, Free>;

void advise(std::uintptr_t from, std::uintptr_t to) {
    from = (from + kLargePage - 1) / kLargePage * kLargePage;
    to = to / kLargePage * kLargePage;
    if (from < to) madvise(reinterpret_cast<void*>(from), to - from, MADV_HUGEPAGE);
}

}  // namespace

void keepMemory() {
    mallopt(M_MMAP_THRESHOLD, kKept);
    mallopt(M_TRIM_THRESHOLD, kKept);
    mallopt(M_TOP_PAD, static_cast<int>(kHeap));
    Block const grown(std::malloc(kOnTheHeap));
    auto const end = reinterpret_cast<std::uintptr_t>(sbrk(0));
    if (end > kHeap) advise(end - kHeap, end);
}

void useLargePages() {
    Block const block(std::malloc(kOnTheHeap));
    auto const address = reinterpret_cast<std::uintptr_t>(block.get());
    auto const start = address / kHeap * kHeap;
    if (block) advise(start, start + kHeap);
}

}  // namespace standin::model

#else

namespace standin::model {
void keepMemory() {}
void useLargePages() {}
}  // namespace standin::model

#endif
