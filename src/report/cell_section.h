// The parts of a report that show the cell checks and the worked-out quantities,
// for the terminal and for the page. Private to report/.
#pragma once

#include <string>
#include <vector>

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

// What the paper shows of the same: the checks in their order, what came of one,
// "1.2 / – / 3.4 months", the notes of a quantity and of both sides, each once.
[[nodiscard]] std::vector<model::CellCheck const*> orderedChecks(model::Comparison const& comparison);
[[nodiscard]] std::string checkText(model::CheckResult const& result);
[[nodiscard]] std::string workedBounds(model::WorkedValue const& value);
[[nodiscard]] std::vector<std::string> workedNotes(model::Derived const& derived);

}  // namespace standin::report
