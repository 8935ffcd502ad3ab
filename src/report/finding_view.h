// What all reports show of a comparison, worked out once: groups by severity,
// values as printed, counts. Private to report/.
#pragma once

#include <array>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/comparison.h"
#include "risk/bench_tests.h"

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

// Stands behind what is no print.
inline constexpr std::string_view kRecognisedMark = " [recognised from a picture]";

// Pages with lettering of pictures that was not made out, and how often.
[[nodiscard]] std::map<int, std::size_t> unrecognisedByPage(model::Coverage const& coverage);

// "4.245 / 4.275 / 4.305 V" with a dash for what is not printed; for sides
// without values the text as printed. Marked where it was recognised from a picture.
[[nodiscard]] std::string valuesOf(model::Side const& side);

// The verdict's sentence without the words of its level in front, which stand
// right above it.
[[nodiscard]] std::string verdictDetail(model::Verdict const& verdict);
// The same, and the words of the level, also for a candidate that was checked alone.
[[nodiscard]] std::string verdictDetail(model::Comparison const& comparison);
[[nodiscard]] std::string verdictLevel(model::Comparison const& comparison);

// What is printed in each sheet, by owner, and what was not read.
struct CoverageRow {
    std::string_view what;
    std::size_t reference = 0;
    std::size_t candidate = 0;
};
[[nodiscard]] std::vector<CoverageRow> coverageRows(model::ComparisonCoverage const& coverage);

// One line for each thing of a sheet that was not read, with its page: numbers
// that nothing accounts for, pages without text, tables and figures.
[[nodiscard]] std::vector<std::string> notReadLines(model::Datasheet const& sheet);

// "3 Ratings (page 4)" of a section, or a dash where the sheet has no such section.
[[nodiscard]] std::string sectionTitle(model::Datasheet const& sheet, std::string const& id);

// "Release voltage: min 4.05, max 4.15 V (reference); Ta = 25 °C" of a bench test.
[[nodiscard]] std::string limitText(risk::BenchLimit const& limit);

// Stands in one sheet only?
[[nodiscard]] bool isOneSided(model::Finding const& finding);

// " (reference page 3, candidate page 4)", or empty where no page is known.
[[nodiscard]] std::string placesOf(model::Finding const& finding);

// "TW4104 rev 1.4, Maker, 6 pages"
[[nodiscard]] std::string titleOf(model::DocumentInfo const& document);

// The parameters of a sheet by id. Pointers into `datasheet`.
[[nodiscard]] std::unordered_map<std::string_view, model::Parameter const*> parametersById(model::Datasheet const& datasheet);

// The parameters of both sheets by id, and those that a pair or a finding is
// about; null where it has none.
struct SheetParameters {
    std::unordered_map<std::string_view, model::Parameter const*> reference;
    std::unordered_map<std::string_view, model::Parameter const*> candidate;
};
struct ComparedParameters {
    model::Parameter const* reference = nullptr;
    model::Parameter const* candidate = nullptr;
};
[[nodiscard]] ComparedParameters parametersOf(model::Pair const& pair, SheetParameters const& sheets);
[[nodiscard]] ComparedParameters parametersOf(model::Finding const& finding, model::Comparison const& comparison, SheetParameters const& sheets);

// "Ta = 25 °C; VDD = 3.5 V": condition and table condition, empty where neither.
[[nodiscard]] std::string conditionOf(model::Parameter const& parameter);

// "4.245 / 4.275 / 4.305 V" of a parameter. Marked where it was recognised from a picture.
[[nodiscard]] std::string valuesOf(model::Parameter const& parameter);

// `text` whole, or as many whole characters of it as fit into `longest` bytes and
// " …".
[[nodiscard]] std::string clipped(std::string text, std::size_t longest);

}  // namespace standin::report
