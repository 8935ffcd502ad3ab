// Ratings given as a list rather than as a table: bullets, "name: value" lines
// and dot leaders ("Storage temperature ........ -40 to 125 °C").
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::parameters {

// One line taken apart; `value` empty: it states none.
struct ListEntry {
    std::string name;
    std::string symbol;
    std::string condition;
    std::string value;
};
[[nodiscard]] ListEntry readListEntry(std::string_view line);

// Reads lines of ratings and operating-conditions sections that stand outside of
// tables; marks their words Owner::Parameter.
[[nodiscard]] std::vector<model::Parameter> readRatingLists(std::span<model::PageLayout> pages, std::span<model::Table const> tables,
                                                            std::span<model::Section const> sections);

}  // namespace standin::parameters
