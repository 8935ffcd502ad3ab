// The program's two threads: the caller's and one more, which is started when it is first
// wanted and kept. Who waits for a piece of work meanwhile does pieces of what was called
// inside of it, so that both are busy as long as there is something to do; never pieces of
// another caller. Calls may stand inside of each other, and in any thread.
//
//     together([&] { prose = compareProse(); }, [&] { rows = compareRows(); });
//     inParts(rows.size(), [&](std::size_t first, std::size_t last) { … rows[first] … });
//
// All return when everything is done. Pieces run at the same time: what one writes belongs
// to it alone. What a piece throws comes out of the call, after the others have ended.
#pragma once

#include <cstddef>
#include <functional>

namespace standin::model {

// Calls work(0) to work(count - 1), each once.
void inPieces(std::size_t count, std::function<void(std::size_t)> const& work);

// Calls both, each once.
void together(std::function<void()> const& first, std::function<void()> const& second);

// Calls work(first, last) for parts that make up [0, count); below `least` once, for all.
void inParts(std::size_t count, std::function<void(std::size_t, std::size_t)> const& work, std::size_t least = 64);

}  // namespace standin::model
