// Joins pieces of ruling lines: pieces that touch become one rule, and rows of
// short pieces at even distances become one dashed rule. Private to
// extractors/poppler/.
#pragma once

#include <vector>

#include "model/page_content.h"

namespace standin::poppler {

// Only pieces of one colour, on one line, of like thickness are joined. The
// order is that of the first piece of each rule. O(n log n).
void mergeRules(std::vector<model::Rule>& rules);

}  // namespace standin::poppler
