// Which of two revisions is the later one.
//
//     compareRevisions("1.9", "1.10")  ->  -1
//     dateNumber("30 March 2022")      ->  20220330
#pragma once

#include <optional>
#include <string_view>

namespace standin::compare {

// 20220330 of "30 March 2022", "2022-03-30", "20220330", "30.03.2022"; 20220300 where
// no day is printed; 0: no date. Only the start of a long text is looked at.
[[nodiscard]] int dateNumber(std::string_view printed);

// Less than, equal to or greater than 0: "B" < "C" < "AA", "1.9" < "1.10", "*" before
// all. None where they are not of one kind.
[[nodiscard]] std::optional<int> compareRevisions(std::string_view a, std::string_view b);

}  // namespace standin::compare
