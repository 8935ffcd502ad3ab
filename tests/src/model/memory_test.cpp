#include "model/memory.h"

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

}  // namespace
}  // namespace standin::model
