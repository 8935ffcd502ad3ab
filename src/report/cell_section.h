// The parts of a report that show the cell checks and the worked-out quantities,
// for the terminal and for the page. Private to report/.
#pragma once

#include <string>

#include "model/comparison.h"

namespace standin::report {

// Violated checks first, then open ones, then those that hold; nothing where no
// cell was given.
void appendCellChecks(std::string& out, model::Comparison const& comparison);
[[nodiscard]] std::string cellChecksHtml(model::Comparison const& comparison);

// Every quantity with its formula, both results, inputs with their pages and notes.
void appendDerived(std::string& out, model::Comparison const& comparison);
[[nodiscard]] std::string derivedHtml(model::Comparison const& comparison);

// "13 hold, 2 violated, 2 open" of one part.
[[nodiscard]] std::string checkCounts(model::Comparison const& comparison, std::optional<model::CheckResult> model::CellCheck::*part);

}  // namespace standin::report
