// Bench results held against the limits of their test.
//
//     auto judged = judgeResult(opened.tests, result);
//     judged->outcome     // Outcome::Within
#pragma once

#include <string>
#include <vector>

#include "model/result.h"
#include "record/entry.h"

namespace standin::record {

// The result with its finding, check and outcome filled in. The limit is that of the
// named finding and cell check; what is left open must leave one to choose, and the
// printed limit of a finding goes before those of checks. Values are
// compared exactly, after their units were brought together; a limit that is not
// a plain number (relative to a supply, say) judges nothing. Errors (Usage): an
// unknown test, a finding without a limit in this test, several limits to choose
// from, a value that is no number, a unit that does not fit.
[[nodiscard]] model::Result<BenchResult> judgeResult(std::vector<risk::BenchTest> const& tests, BenchResult result);

}  // namespace standin::record
