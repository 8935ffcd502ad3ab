// Leader dots: four or more in a row, drawn from a name to what stands at the end
// of its line ("Storage temperature ........ 150 °C"). They say nothing.
//
//     leadersReplaced("A……… 5 V", " ")   // "A  5 V"
#pragma once

#include <string>
#include <string_view>

namespace standin::text {

// Every run of leader dots (full stops, ellipses) replaced.
[[nodiscard]] std::string leadersReplaced(std::string text, std::string_view by);

// Where a run of leader dots that ends at byte `end` begins, or `end` where none does.
[[nodiscard]] std::size_t leaderBefore(std::string_view text, std::size_t end);

}  // namespace standin::text
