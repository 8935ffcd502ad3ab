// Which parameter of the vocabulary a row means.
#pragma once

#include <span>
#include <string>

#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::parameters {

// The vocabulary's id for the parameter by its name, symbol, unit, kind and
// magnitude, or empty. `family`: the sheet's, or empty; `symbols`: every symbol of
// the sheet, once.
[[nodiscard]] std::string canonicalOf(model::Parameter const& parameter, std::string const& family, std::span<std::string const> symbols,
                                      vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::parameters
