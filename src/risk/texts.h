// Every English text that the judging stage writes, in one place: titles,
// explanations, verdict sentences, reasons of incompleteness. Caution texts,
// consequences and names of parameters come from the vocabulary.
//
// Rules: what differs, which way, what it could do, what to check; "may", "is
// stated", "is not stated"; never a word that vouches for a part.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "risk/judge_parameter.h"

namespace standin::risk::texts {

// 0.035, "V" -> "35 mV"; "1" has no unit; a temperature difference is in K.
[[nodiscard]] std::string amount(quantity::Decimal value, std::string_view unit);

// "min 4.255, typ 4.280, max 4.305 V"; one value alone is given without its column where it is a maximum of a rating.
[[nodiscard]] std::string values(model::Side const& side);

// The first letter made a capital.
[[nodiscard]] std::string capitalised(std::string text);
// At most `longest` bytes, cut between characters, with "…".
[[nodiscard]] std::string shortened(std::string_view text, std::size_t longest);

// "Overcharge detection voltage reaches higher by 35 mV".
[[nodiscard]] std::string parameterTitle(std::string_view name, model::Finding const& finding, ParameterJudgement const& judged, vocabulary::Role role, std::string_view unit);
// One or two sentences. `effect`: what it could do, a fragment of the vocabulary, or empty; `check`: one action, or empty.
[[nodiscard]] std::string parameterExplanation(model::Finding const& finding, ParameterJudgement const& judged, std::string_view effect, std::string_view check);

// "inhibited (elsewhere allowed)": what else the same sheet states, for another version or in contradiction.
[[nodiscard]] std::string statedFeature(std::string_view state, std::vector<std::string> const& elsewhere);
[[nodiscard]] std::string featureTitle(std::string_view name, model::Relation relation, std::string_view referenceState, std::string_view candidateState);
[[nodiscard]] std::string featureExplanation(model::Relation relation, std::string_view referenceMeaning, std::string_view candidateMeaning, std::string_view effect, std::string_view check);

// What changed, as words: "negation added or removed".
[[nodiscard]] std::string_view classText(model::WordingClass wordingClass);
// For wording, tables, figures, ordering, sections, documents. `topic`: what it is about, or empty.
[[nodiscard]] std::string wordingTitle(model::Finding const& finding, std::string_view topic);
[[nodiscard]] std::string wordingExplanation(model::Finding const& finding, std::string_view topic, std::string_view check);

// A chapter whose content stands in one sheet only.
struct ChapterCounts {
    int sentences = 0;
    int rows = 0;  // of tables
    int figures = 0;
    int headings = 0;
};
[[nodiscard]] std::string chapterTitle(std::string_view chapter, model::Relation relation, ChapterCounts const& counts);
[[nodiscard]] std::string chapterExplanation(model::Relation relation);
// To be put behind a title: " (and 4 more rows)", " (and 2 more lines)", " (the same for QX17B and QX17C)".
[[nodiscard]] std::string furtherVersions(std::vector<std::string> const& versions);
[[nodiscard]] std::string furtherRows(std::size_t count);
[[nodiscard]] std::string furtherLines(std::size_t count);

// What the revision history of the newer sheet (`side`: "reference", "candidate") does
// not mention, and what it claims and nothing shows. `from`, `to`: revisions as printed.
[[nodiscard]] std::string unmentionedTitle(std::size_t count);
// `gravest`: titles of those above a note, of which the first are named; `further`: how many are notes. `complete`: the history reaches back to `from`.
[[nodiscard]] std::string unmentionedExplanation(std::string_view side, std::string_view from, std::string_view to, std::vector<std::string> const& gravest, std::size_t further,
                                                 bool complete);
// To be put behind the explanation of each of them.
[[nodiscard]] std::string notMentioned(std::string_view side);
[[nodiscard]] std::string claimTitle(std::string_view statement);
// `page`: where the history says it stands; 0: it does not say.
[[nodiscard]] std::string claimExplanation(std::string_view side, std::string_view revision, int page);

[[nodiscard]] std::string pinTitle(model::Finding const& finding, bool misfit);
[[nodiscard]] std::string pinExplanation(model::Finding const& finding, bool misfit);
[[nodiscard]] std::string packageTitle(model::Finding const& finding);
[[nodiscard]] std::string packageExplanation(model::Finding const& finding);
[[nodiscard]] std::string coverageTitle(model::Finding const& finding);
// Of a cause that alignment names by a word (compare/coverage_account.h).
[[nodiscard]] std::string coverageCause(std::string_view cause);
[[nodiscard]] std::string coverageCauseExplanation(std::string_view cause);
[[nodiscard]] std::string coverageExplanation();

[[nodiscard]] std::string_view levelText(model::VerdictLevel level);

struct Counts {
    int compared = 0;  // parameters with a partner whose values were set against each other
    int all = 0;       // parameters of both sheets, a pair counting once
};
// `first`: the title of the gravest finding, or empty; `others`: findings of the same level beside it.
[[nodiscard]] std::string verdictSentence(model::VerdictLevel level, Counts const& counts, std::string_view first, int others, bool incomplete);

// Reasons of incompleteness.
[[nodiscard]] std::string openFindings(int count);
[[nodiscard]] std::string unaccountedNumbers(int count);
[[nodiscard]] std::string pagesWithoutText(std::string_view side, std::vector<int> const& pages);
[[nodiscard]] std::string recognised(std::string_view side);
[[nodiscard]] std::string drawnSigns(std::string_view side, std::size_t count);
[[nodiscard]] std::string restsOnRecognised();
// "The candidate's row may be misread (a sign in the row is a drawing and was not read). Look at the page."
[[nodiscard]] std::string mayBeMisread(std::string_view side, std::vector<std::string> const& why);
[[nodiscard]] std::string unreadTables(std::string_view side, std::size_t count);
[[nodiscard]] std::string statedInNeither(std::string_view what);
[[nodiscard]] std::string severalVersions(std::string_view side);
[[nodiscard]] std::string noParameters(std::string_view side);
[[nodiscard]] std::string typicalOnly(int count);
[[nodiscard]] std::string coverageFindings(int count);

}  // namespace standin::risk::texts
