#include "model/crew.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <stdexcept>
#include <thread>
#include <vector>

#include <gtest/gtest.h>

namespace standin::model {
namespace {

TEST(Crew, EveryPieceIsDoneOnce) {
    for (std::size_t const count : {0U, 1U, 2U, 7U, 400U}) {
        std::vector<int> calls(count, 0);
        inPieces(count, [&](std::size_t piece) { ++calls[piece]; });
        EXPECT_EQ(calls, std::vector<int>(count, 1)) << count;
    }
}

TEST(Crew, PartsMakeUpTheWhole) {
    for (std::size_t const count : {0U, 1U, 63U, 64U, 65U, 1001U}) {
        std::vector<int> calls(count, 0);
        inParts(count, [&](std::size_t first, std::size_t last) {
            for (std::size_t i = first; i < last; ++i) ++calls[i];
        });
        EXPECT_EQ(calls, std::vector<int>(count, 1)) << count;
    }
}

TEST(Crew, FewAreDoneByOneCall) {
    std::atomic<int> calls{0};
    auto const count = [&calls](std::size_t, std::size_t) { ++calls; };
    inParts(9, count, 10);
    EXPECT_EQ(calls, 1);
    inParts(10, count, 10);
    EXPECT_GT(calls, 2);
}

// Each of the two waits for the other to have begun: one thread alone would wait forever.
TEST(Crew, TwoWorkAtTheSameTime) {
    std::atomic<int> begun{0};
    auto const meet = [&begun] {
        ++begun;
        while (begun < 2) std::this_thread::yield();
    };
    together(meet, meet);
    EXPECT_EQ(begun, 2);
}

TEST(Crew, CallsInsideOfCallsAreAllDone) {
    std::vector<std::vector<int>> calls(9, std::vector<int>(100, 0));
    inPieces(calls.size(), [&](std::size_t outer) {
        inParts(calls[outer].size(), [&](std::size_t first, std::size_t last) {
            for (std::size_t i = first; i < last; ++i) together([&] { ++calls[outer][i]; }, [] {});
        });
    });
    for (auto const& inner : calls) EXPECT_EQ(inner, std::vector<int>(100, 1));
}

TEST(Crew, ManyCallersShareIt) {
    std::vector<std::atomic<int>> sums(6);
    std::vector<std::thread> callers;
    for (auto& sum : sums) {
        callers.emplace_back([&sum] {
            for (int round = 0; round < 50; ++round) inPieces(5, [&sum](std::size_t piece) { sum += static_cast<int>(piece); });
        });
    }
    for (auto& caller : callers) caller.join();
    for (auto const& sum : sums) EXPECT_EQ(sum, 500);
}

// The one piece goes on until the other caller is done; who waits for it may not take from
// that one, whose pieces could be long.
TEST(Crew, WhoWaitsTakesNothingOfAnotherCaller) {
    std::atomic<int> begun{0};
    std::atomic<bool> waits{false};
    std::atomic<bool> otherDone{false};
    std::thread::id waiting;
    std::thread caller([&] {
        waiting = std::this_thread::get_id();
        inPieces(2, [&](std::size_t) {
            ++begun;
            while (begun < 2) std::this_thread::yield();
            bool const here = std::this_thread::get_id() == waiting;
            if (here) waits = true;
            while (!here && !otherDone) std::this_thread::yield();
        });
    });
    while (!waits) std::this_thread::yield();
    std::vector<std::thread::id> done(2000);
    inPieces(done.size(), [&](std::size_t piece) {
        done[piece] = std::this_thread::get_id();
        std::this_thread::yield();
    });
    otherDone = true;
    caller.join();
    EXPECT_EQ(std::count(done.begin(), done.end(), waiting), 0);
}

// The innermost two can only meet where who waits for the outer ones takes one of them.
TEST(Crew, WhoWaitsTakesWhatIsWithinItsOwn) {
    auto const caller = std::this_thread::get_id();
    auto const meet = [](std::atomic<int>& begun) {
        ++begun;
        while (begun < 2) std::this_thread::yield();
    };
    std::array<std::atomic<int>, 3> begun{};
    inPieces(2, [&](std::size_t) {
        meet(begun[0]);
        if (std::this_thread::get_id() == caller) return;
        inPieces(2, [&](std::size_t) {
            meet(begun[1]);
            if (std::this_thread::get_id() == caller) return;
            inPieces(2, [&](std::size_t) { meet(begun[2]); });
        });
    });
    EXPECT_EQ(begun[2], 2);
}

TEST(Crew, WhatAPieceThrowsComesOutAfterTheOthersHaveEnded) {
    for (std::size_t const bad : {0U, 3U, 6U}) {
        std::atomic<int> ended{0};
        auto const work = [&](std::size_t piece) {
            if (piece == bad) throw std::runtime_error("bad");
            ++ended;
        };
        EXPECT_THROW(inPieces(7, work), std::runtime_error) << bad;
        EXPECT_EQ(ended, 6) << bad;
    }
    std::atomic<int> after{0};
    inPieces(4, [&after](std::size_t) { ++after; });
    EXPECT_EQ(after, 4) << "the crew goes on";
}

}  // namespace
}  // namespace standin::model
