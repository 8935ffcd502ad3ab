// glibc grows the main thread's heap by sbrk and gives each further thread a heap
// of its own, aligned to its largest size. Both are told to grow at once by as much
// as they may, and the address range is marked for pages of 2 MB: a fault for each
// of those instead of one for each 4 KB. Only what is touched takes memory.
//
// A large page comes only where nothing was touched before the advice, and glibc
// writes where a heap begins. So a block that is never written nor given back fills
// the heap up to the first boundary of large pages, and what follows lies beyond it.
// Tested by tests/src/model/memory_test.cpp.
#include "model/memory.h"

#include <cstdint>
#include <cstdlib>  // tells which C library it is

#if defined(__GLIBC__) && !defined(__SANITIZE_ADDRESS__)

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

namespace standin::model {

namespace {

constexpr int kKept = 128 << 20;
constexpr std::uintptr_t kLargePage = 2 << 20;
constexpr std::uintptr_t kHeap = 64 << 20;  // HEAP_MAX_SIZE of glibc on machines of 64 bit
constexpr std::uintptr_t kSmallPage = 4 << 10;
constexpr std::uintptr_t kFresh = 16 << 10;  // what glibc and the start of a thread take of a heap
constexpr std::size_t kProbe = 8 << 10;      // longer than what glibc keeps in lists for reuse

bool memoryKept = false;  // else a long block would not come from the heap

std::uintptr_t roundUp(std::uintptr_t address) { return (address + kLargePage - 1) / kLargePage * kLargePage; }

// Where this thread's next block would begin.
std::uintptr_t nextBlock() {
    void* volatile probe = std::malloc(kProbe);  // volatile: not to be left out
    auto const address = reinterpret_cast<std::uintptr_t>(probe);
    std::free(probe);
    return address;
}

// Fills the heap from `next` to a little before `boundary`; false where the two are too
// far apart to belong to one heap.
bool skipTo(std::uintptr_t boundary, std::uintptr_t next) {
    constexpr std::uintptr_t kNotes = 64;  // glibc writes beside a block
    if (next + kNotes >= boundary || boundary - next > 2 * kLargePage) return false;
    void* volatile skipped = std::malloc(boundary - next - kNotes);
    return skipped != nullptr;
}

void advise(std::uintptr_t from, std::uintptr_t to) {
    if (from < to) madvise(reinterpret_cast<void*>(from), to - from, MADV_HUGEPAGE);
}

}  // namespace

void keepMemory() {
    memoryKept = true;
    mallopt(M_MMAP_THRESHOLD, kKept);
    mallopt(M_TRIM_THRESHOLD, kKept);
    mallopt(M_TOP_PAD, static_cast<int>(kHeap));
    auto const boundary = roundUp(reinterpret_cast<std::uintptr_t>(sbrk(0)) + kSmallPage);
    if (skipTo(boundary, nextBlock())) advise(boundary, reinterpret_cast<std::uintptr_t>(sbrk(0)) / kSmallPage * kSmallPage);
}

void useLargePages() {
    if (!memoryKept) return;
    auto const next = nextBlock();
    auto const heap = next / kHeap * kHeap;
    if (next - heap < kFresh && skipTo(heap + kLargePage, next)) advise(heap + kLargePage, heap + kHeap);
}

}  // namespace standin::model

#else

namespace standin::model {
void keepMemory() {}
void useLargePages() {}
}  // namespace standin::model

#endif
