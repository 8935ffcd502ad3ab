#include "model/memory.h"

#include <cstdint>
#include <memory>
#include <numeric>
#include <thread>
#include <vector>

#include <gtest/gtest.h>

namespace standin::model {
namespace {

int sumOfNumbers(int count) {
    std::vector<int> numbers(static_cast<std::size_t>(count));
    std::iota(numbers.begin(), numbers.end(), 1);
    return std::accumulate(numbers.begin(), numbers.end(), 0);
}

// The advice must leave what is allocated before, after and beside it alone.
TEST(Memory, AdviceChangesNoResult) {
    std::vector<int> before(50'000, 7);
    keepMemory();
    int beside = 0;
    std::thread thread([&beside] {
        useLargePages();
        beside = sumOfNumbers(60'000);
    });
    int const here = sumOfNumbers(40'000);
    thread.join();
    useLargePages();  // in the main thread too
    EXPECT_EQ(here, 800'020'000);
    EXPECT_EQ(beside, 1'800'030'000);
    EXPECT_EQ(std::accumulate(before.begin(), before.end(), 0), 350'000);
}

#if defined(__GLIBC__) && !defined(__SANITIZE_ADDRESS__)

constexpr std::uintptr_t kLargePage = 2 << 20;
constexpr std::uintptr_t kHeap = 64 << 20;

std::uintptr_t beginningOfBlock() {
    auto const block = std::make_unique<char[]>(100'000);
    return reinterpret_cast<std::uintptr_t>(block.get());
}

// Beside glibc's notes of 16 bytes, what a thread allocates lies in large pages.
TEST(Memory, ThreadAllocatesFromItsFirstLargePageOn) {
    keepMemory();
    std::uintptr_t first = 0;
    std::uintptr_t again = 0;
    std::thread([&first] {
        useLargePages();
        first = beginningOfBlock();
    }).join();
    std::thread([&again] {  // the heap of the thread that ended
        useLargePages();
        again = beginningOfBlock();
    }).join();
    EXPECT_GE(first % kHeap, kLargePage - 64);
    EXPECT_LT(first % kHeap, kLargePage + 64);
    EXPECT_EQ(first, again);
}

#endif

}  // namespace
}  // namespace standin::model
