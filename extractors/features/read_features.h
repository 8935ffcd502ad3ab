// Non-numeric features (modes) with the words that state them: "0 V charging:
// inhibited", "power-down function: yes".
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::features {

// Every feature that the vocabulary knows for `family` and that a sentence, an
// ordering line or a table cell states; one entry for each differing state, so
// that a sheet which contradicts itself shows. Document order.
[[nodiscard]] std::vector<model::Feature> readFeatures(std::span<model::Sentence const> text, std::span<model::Table const> tables,
                                                       std::span<model::OrderingLine const> ordering, std::string_view family,
                                                       vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::features
