// Shares a loop between two threads.
//
//     inHalves(rows.size(), [&](std::size_t first, std::size_t last) { … rows[first] … });
#pragma once

#include <cstddef>
#include <future>

#include "model/memory.h"

namespace standin::model {

// Calls work(first, last) for both halves of [0, count) at the same time and
// returns when both are done; below `least` it calls once, for all. What `work`
// writes must belong to its own range. What it throws comes out here.
template <class Work>
void inHalves(std::size_t count, Work const& work, std::size_t least = 64) {
    if (count < least) {
        work(std::size_t{0}, count);
        return;
    }
    std::size_t const middle = count / 2;
    auto second = std::async(std::launch::async, [&] {
        useLargePages();
        work(middle, count);
    });
    work(std::size_t{0}, middle);
    second.get();
}

}  // namespace standin::model
