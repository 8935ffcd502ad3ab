// The report as one HTML file: no network, no scripts, prints well. Foreign
// text is escaped and its control characters are shown by number.
#pragma once

#include <span>
#include <string>

#include "model/comparison.h"
#include "report/cuttings.h"
#include "risk/bench_tests.h"

namespace standin::report {

// Opens with both documents and the verdict, then hazard findings with both
// values, conditions and pages, the rest by severity, bench tests, sections,
// coverage, all parameter pairs, general statements. Findings of severity hazard and function, and
// figures, carry page cuttings as far as `cuttings` has them.
[[nodiscard]] std::string htmlReport(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate, Cuttings& cuttings, std::span<risk::BenchTest const> tests = {});

}  // namespace standin::report
