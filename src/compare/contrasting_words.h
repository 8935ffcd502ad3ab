// Words that exclude each other: where one sentence says "permanent" and the other
// "temporary", their meaning is another one. Data; no word of it is a phrase of
// wording_phrases.h.
#pragma once

#include <optional>
#include <string_view>

#include "model/comparison.h"

namespace standin::compare {

// The class of a change from one word to the other, which are lower case and English; none
// where they do not exclude each other. Exchanging them gives the same.
[[nodiscard]] std::optional<model::WordingClass> contrastOf(std::string_view word, std::string_view other);

// Is there any word that it excludes? Cheap, to be asked before pairs of words are.
[[nodiscard]] bool hasContrast(std::string_view word);

}  // namespace standin::compare
