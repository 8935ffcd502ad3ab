// Every fixed text of the reports, in one place so that it can be translated.
// report/ includes model/, risk/, vocabulary/ and text/; it only writes down
// what it is given.
#pragma once

#include <string_view>

#include "model/comparison.h"

namespace standin::report::texts {

inline constexpr std::string_view kTitle = "Substitution-risk summary";
inline constexpr std::string_view kReference = "Reference";
inline constexpr std::string_view kCandidate = "Candidate";
inline constexpr std::string_view kVerdict = "Verdict";
inline constexpr std::string_view kIncomplete = "Incomplete";
inline constexpr std::string_view kCautions = "Cautions";
inline constexpr std::string_view kCoverage = "Coverage";
inline constexpr std::string_view kStatements = "What this summary is, and is not";
inline constexpr std::string_view kCheckTitle = "Check against the cell";
inline constexpr std::string_view kCellChecks = "Cell checks";
inline constexpr std::string_view kUnnamedCell = "a cell without a name";
inline constexpr std::string_view kWorkedOut = "Worked out";
inline constexpr std::string_view kWorkedOutMeaning = "What no sheet prints: lowest / typical / highest, rounded outward; a dash where a limit is missing.";
inline constexpr std::string_view kWorkedOutRest = "Formula, inputs and notes of each: HTML and JSON reports.";
inline constexpr std::string_view kAllPairs = "All parameters";
inline constexpr std::string_view kNothingFound = "No difference found in what was compared.";
inline constexpr std::string_view kSections = "Sections";
inline constexpr std::string_view kBenchTests = "Bench tests";
inline constexpr std::string_view kBenchTestsMeaning =
    "What the open findings ask for. Typical-like samples do not prove limits: state the number of samples and lots, report the extremes, use calibrated instruments.";
inline constexpr std::string_view kSetUp = "Set-up";
inline constexpr std::string_view kLimitsFrom = "Limits from";
inline constexpr std::string_view kCorrections = "Values put right by people";
inline constexpr std::string_view kNotReadIn = "Not read in";
inline constexpr std::string_view kFoot = "This summary covers printed documents only; it is not a test and not an approval.";
inline constexpr std::string_view kNothingViolated = "Nothing to say against it was found in the checks that could be made.";
inline constexpr std::string_view kNotPrinted = "not printed";
inline constexpr std::string_view kListedElsewhere = "all in the HTML report and in JSON";
inline constexpr std::string_view kNoMoreCuttings = "Further page cuttings were left out to keep this report small; look at the pages named.";

// What a reader sees for an enum value: plain words, not the JSON token.
[[nodiscard]] std::string_view severityHeading(model::Severity severity);
[[nodiscard]] std::string_view severityMeaning(model::Severity severity);
[[nodiscard]] std::string_view severityMark(model::Severity severity);  // a sign: told by shape as well as by word
[[nodiscard]] std::string_view levelText(model::VerdictLevel level);
[[nodiscard]] std::string_view kindText(model::FindingKind kind);
[[nodiscard]] std::string_view relationText(model::Relation relation);
// Told by shape as well as by word.
[[nodiscard]] std::string_view outcomeMark(model::CheckOutcome outcome);
[[nodiscard]] std::string_view judgementText(model::Judgement judgement);

}  // namespace standin::report::texts
