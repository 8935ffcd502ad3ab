// Stable names of findings.
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"

namespace standin::compare {

// Gives every finding its id: the first 12 hex digits of SHA-256 over kind,
// canonical, variant, both conditions and both texts, and an ordinal among equals
// (in the order given). Never the page or the order, so that an id survives
// another page size.
void nameFindings(std::vector<model::Finding>& findings);

}  // namespace standin::compare
