// What was compared and what was not: findings of kind Coverage, and the count.
#pragma once

#include <string_view>
#include <vector>

#include "compare/drafts.h"
#include "compare/parameter_pairing.h"
#include "compare/sheet_pair.h"
#include "model/comparison.h"

namespace standin::compare {

// Why something is listed as not compared. Finding::title of a coverage finding
// holds one of these words until risk/ puts a sentence there.
inline constexpr std::string_view kNumbersUnaccounted = "numbers-unaccounted";
inline constexpr std::string_view kPagesWithoutText = "pages-without-text";
inline constexpr std::string_view kTablesUnread = "tables-unread";
inline constexpr std::string_view kFiguresUnread = "figures-unread";
inline constexpr std::string_view kPinsUnread = "pins-unread";
inline constexpr std::string_view kRecognised = "recognised";
inline constexpr std::string_view kLetteringUnread = "lettering-unread";
inline constexpr std::string_view kSignsDrawn = "signs-drawn";
inline constexpr std::string_view kProseInTwoLanguages = "prose-in-two-languages";
inline constexpr std::string_view kVariantsNotChosen = "variants-not-chosen";
inline constexpr std::string_view kPinsInOneSheet = "pins-in-one-sheet";
inline constexpr std::string_view kDoubtfulPairing = "doubtful-pairing";
inline constexpr std::string_view kReadWithDoubt = "read-with-doubt";
inline constexpr std::string_view kNoParameters = "no-parameters";
inline constexpr std::string_view kCorrectionsNotApplied = "corrections-not-applied";
inline constexpr std::string_view kConflictInBoth = "conflict-in-both";

// The row may be misread: its confidence is below what a reader would rely on.
[[nodiscard]] bool isDoubted(model::Parameter const& row);

// One draft a cause, with the sides it concerns. A doubt that could hide a
// difference that matters sets Finding::open.
[[nodiscard]] std::vector<Draft> findCoverageGaps(SheetPair const& sheets, ParameterPairing const& pairing);

// Numbers and sentences of both sheets: compared + listed + unaccounted is their
// total. Listed is what findings show as standing in one sheet only, rows of
// variants that were not chosen, and prose in two languages.
[[nodiscard]] model::ComparisonCoverage account(SheetPair const& sheets, ParameterPairing const& pairing, std::vector<Draft> const& drafts);

}  // namespace standin::compare
