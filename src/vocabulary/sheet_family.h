// The part family of a datasheet that has been read.
#pragma once

#include <string>

#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::vocabulary {

// By the names and symbols of all parameters, the title and the first sentences.
// Empty: undecided.
[[nodiscard]] std::string familyOf(model::Datasheet const& sheet, Vocabulary const& vocabulary);

}  // namespace standin::vocabulary
