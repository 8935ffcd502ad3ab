// The English texts of worked-out quantities and cell checks; as texts.h.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "quantity/limits.h"
#include "risk/judge_parameter.h"

namespace standin::risk::texts {

// "circuit.load_current" -> "load_current of the circuit file"; parameter ids -> "overcharge detect voltage".
[[nodiscard]] std::string inputName(std::string_view name);
[[nodiscard]] std::string inputList(std::vector<model::Input> const& inputs);
[[nodiscard]] std::string boundOpen(std::string_view bound, std::vector<std::string> const& names);
[[nodiscard]] std::string estimateOnly(std::vector<std::string> const& names);
[[nodiscard]] std::string notGiven(std::string_view name);
[[nodiscard]] std::string outerBound();
[[nodiscard]] std::string scopeNote(bool overTemperature);
[[nodiscard]] std::string derivedExplanation(model::Finding const& finding, ParameterJudgement const& judged, std::string_view formula, std::string_view effect, std::string_view check);

// "2.5 A to 5.47 A", "at most 4.3 V", "typically 40 mΩ"; four digits, outward.
[[nodiscard]] std::string range(quantity::Limits const& limits, std::string_view unit);
[[nodiscard]] std::string upper(quantity::Decimal value, std::string_view unit);  // rounded up
[[nodiscard]] std::string lower(quantity::Decimal value, std::string_view unit);  // rounded down

// The title and explanation of a check's finding. `check`: one action, or empty.
[[nodiscard]] std::string checkTitle(model::CellCheck const& check);
[[nodiscard]] std::string checkExplanation(model::CellCheck const& check, std::string_view violation, std::string_view action);
// "overcharge cut-off above the cell's limit": "{} the cell file gives no protection_max"
[[nodiscard]] std::string givesNo(std::string_view file, std::string_view member, std::string_view bound = {});
[[nodiscard]] std::string sheetStates(std::string_view what, std::string_view why);

// Of parts that are no protection ICs. `family`: its title.
[[nodiscard]] std::string checksNotMade(std::string_view family);
[[nodiscard]] std::string checksNotMadeExplanation();

// The verdict of a candidate that was checked alone.
[[nodiscard]] std::string checkLevelText(model::VerdictLevel level);
[[nodiscard]] std::string notStatedInSheet(std::string_view what);
struct CheckCounts {
    int holds = 0, violated = 0, open = 0;
};
[[nodiscard]] std::string checkSentence(model::VerdictLevel level, CheckCounts const& counts, std::string_view first);

}  // namespace standin::risk::texts
