#include "extractors/parameters/rating_lists.h"

// Tested by tests/extractors/parameters/rating_lists_test.cpp.

#include "extractors/parameters/text_forms.h"

namespace standin::parameters {

ListEntry readListEntry(std::string_view line) { return {.name = tidied(line), .symbol = {}, .condition = {}, .value = {}}; }

std::vector<model::Parameter> readRatingLists(std::span<model::PageLayout>, std::span<model::Table const>, std::span<model::Section const>) { return {}; }

}  // namespace standin::parameters
