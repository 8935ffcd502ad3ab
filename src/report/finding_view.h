// What all reports show of a comparison, worked out once: groups by severity,
// values as printed, counts. Private to report/.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/comparison.h"

namespace standin::report {

inline constexpr std::array kSeverities{model::Severity::Hazard, model::Severity::Function, model::Severity::Margin, model::Severity::Note,
                                        model::Severity::Editorial};

// Main findings and what follows from each, in the comparison's order.
struct FindingGroup {
    model::Finding const* main = nullptr;
    std::vector<model::Finding const*> consequences;
};

struct SeverityGroup {
    model::Severity severity = model::Severity::Note;
    std::vector<FindingGroup> findings;  // main ones of this severity
};

// Gravest first; empty groups are left out. Findings whose main finding is
// missing count as main ones, so that none is lost. Pointers into `comparison`.
[[nodiscard]] std::vector<SeverityGroup> groupBySeverity(model::Comparison const& comparison);

// "4 hazard, 7 function, 9 margin, 12 note, 3 editorial"; main findings only.
[[nodiscard]] std::string countsLine(model::Comparison const& comparison);

// "1204 numbers and sentences compared, 31 listed as not compared, 0 unaccounted for"
[[nodiscard]] std::string coverageLine(model::Comparison const& comparison);

// "4.245 / 4.275 / 4.305 V" with a dash for what is not printed; for sides
// without values the text as printed.
[[nodiscard]] std::string valuesOf(model::Side const& side);

// The verdict's sentence without the words of its level in front, which stand
// right above it.
[[nodiscard]] std::string verdictDetail(model::Verdict const& verdict);

// " (reference page 3, candidate page 4)", or empty where no page is known.
[[nodiscard]] std::string placesOf(model::Finding const& finding);

// "TW4104 rev 1.4, Maker, 6 pages"
[[nodiscard]] std::string titleOf(model::DocumentInfo const& document);

// The parameters of a sheet by id. Pointers into `datasheet`.
[[nodiscard]] std::unordered_map<std::string_view, model::Parameter const*> parametersById(model::Datasheet const& datasheet);

// "Ta = 25 °C; VDD = 3.5 V": condition and table condition, empty where neither.
[[nodiscard]] std::string conditionOf(model::Parameter const& parameter);

// "4.245 / 4.275 / 4.305 V" of a parameter.
[[nodiscard]] std::string valuesOf(model::Parameter const& parameter);

}  // namespace standin::report
