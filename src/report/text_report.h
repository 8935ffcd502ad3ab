// The summary for a terminal: readable in 80 columns, no control characters of
// foreign text, no colour.
#pragma once

#include <span>
#include <string>

#include "model/comparison.h"
#include "risk/bench_tests.h"

namespace standin::report {

// Opens with both documents and the verdict, then counts and coverage, cautions,
// findings from hazard down (editorial ones counted only), bench tests, general statements.
[[nodiscard]] std::string textReport(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate,
                                     std::span<risk::BenchTest const> tests = {});

}  // namespace standin::report
