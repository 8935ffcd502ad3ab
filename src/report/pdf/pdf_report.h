// The report as a PDF on A4 paper, for the file and for signing. report/pdf/
// includes report/, risk/, model/ and text/.
#pragma once

#include <span>
#include <string>

#include "model/comparison.h"
#include "report/cuttings.h"
#include "risk/bench_tests.h"

namespace standin::report {

// Opens with both documents, the verdict, the coverage line, the cautions and the
// cell checks, then hazard findings with both values, conditions, pages, limit
// strips and page cuttings, the rest by severity, worked-out quantities, bench
// tests, sections, what was and was not compared, all parameter pairs, general
// statements. Running heads, page numbers, an outline. The same input and the same
// fonts give the same bytes; no time is written down. Empty where the file could
// not be made (no memory).
[[nodiscard]] std::string pdfReport(model::Comparison const& comparison, model::Datasheet const& reference, model::Datasheet const& candidate, Cuttings& cuttings,
                                    std::span<risk::BenchTest const> benchTests);

}  // namespace standin::report
