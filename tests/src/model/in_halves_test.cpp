#include "model/in_halves.h"

#include <atomic>
#include <stdexcept>
#include <vector>

#include <gtest/gtest.h>

namespace standin::model {
namespace {

TEST(InHalves, CallsForEveryIndexOnce) {
    for (std::size_t const count : {0U, 1U, 63U, 64U, 65U, 1001U}) {
        std::vector<int> calls(count, 0);
        inHalves(count, [&](std::size_t first, std::size_t last) {
            for (std::size_t i = first; i < last; ++i) ++calls[i];
        });
        EXPECT_EQ(calls, std::vector<int>(count, 1)) << count;
    }
}

TEST(InHalves, FewAreDoneByOneCall) {
    std::atomic<int> calls{0};
    auto const count = [&calls](std::size_t, std::size_t) { ++calls; };
    inHalves(9, count, 10);
    EXPECT_EQ(calls, 1);
    inHalves(10, count, 10);
    EXPECT_EQ(calls, 3);
}

TEST(InHalves, PassesOnWhatEitherHalfThrows) {
    for (std::size_t const bad : {3U, 97U}) {
        auto const work = [bad](std::size_t first, std::size_t last) {
            if (first <= bad && bad < last) throw std::runtime_error("bad");
        };
        EXPECT_THROW(inHalves(100, work), std::runtime_error) << bad;
    }
}

}  // namespace
}  // namespace standin::model
