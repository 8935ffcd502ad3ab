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
inline constexpr std::string_view kAllPairs = "All parameters";
inline constexpr std::string_view kNothingFound = "No difference found in what was compared.";
inline constexpr std::string_view kNotPrinted = "not printed";

// What a reader sees for an enum value: plain words, not the JSON token.
[[nodiscard]] std::string_view severityHeading(model::Severity severity);
[[nodiscard]] std::string_view severityMeaning(model::Severity severity);
[[nodiscard]] std::string_view levelText(model::VerdictLevel level);
[[nodiscard]] std::string_view kindText(model::FindingKind kind);
[[nodiscard]] std::string_view relationText(model::Relation relation);
[[nodiscard]] std::string_view judgementText(model::Judgement judgement);

}  // namespace standin::report::texts
