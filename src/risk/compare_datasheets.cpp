// Chosen variants are looked up in what the sheets print, then alignment and
// judging run one after the other.
// Tested by tests/src/risk/compare_datasheets_test.cpp.
#include "risk/compare_datasheets.h"

#include <algorithm>
#include <optional>
#include <unordered_set>
#include <utility>

#include <fmt/format.h>

#include "compare/align.h"
#include "compare/coverage_account.h"
#include "compare/ordered_version.h"
#include "compare/variant_words.h"
#include "compare/version_titles.h"
#include "model/crew.h"
#include "risk/assess.h"
#include "risk/sheet_view.h"

namespace standin::risk {

namespace {

constexpr std::size_t kMostListed = 12;

// A sheet with the versions that only the titles of its tables name, as a column would, and
// with what its ordering table states for `variant`; the sheet itself where it has neither. It must outlive this.
class WithVersions {
public:
    WithVersions(model::Datasheet const& sheet, std::string const& variant, vocabulary::Vocabulary const& vocabulary) : m_sheet(&sheet) {
        auto const versions = compare::versionsInTitles(sheet);
        bool const titles = std::any_of(versions.begin(), versions.end(), [](std::string const& version) { return !version.empty(); });
        bool const lines = compare::refersToVersions(sheet, variant);
        if (!titles && !lines) return;
        m_named = sheet;
        bool const named = titles && compare::takeVersionsFromTitles(*m_named);
        bool const ordered = lines && compare::takeOrderedVersion(*m_named, variant, vocabulary);
        if (named || ordered) m_sheet = &*m_named;
    }
    WithVersions(WithVersions const&) = delete;
    WithVersions& operator=(WithVersions const&) = delete;
    [[nodiscard]] model::Datasheet const& operator*() const { return *m_sheet; }

private:
    std::optional<model::Datasheet> m_named;
    model::Datasheet const* m_sheet;
};

}  // namespace

std::vector<std::string> knownVariants(model::Datasheet const& datasheet) {
    std::vector<std::string> known;
    std::unordered_set<std::string> seen;
    auto const add = [&](std::string const& variant) {
        if (!variant.empty() && seen.insert(variant).second) known.push_back(variant);
    };
    for (auto const& line : datasheet.ordering) add(line.code);
    for (auto const& version : compare::versionsInTitles(datasheet)) add(version);
    for (auto const& parameter : datasheet.parameters) add(parameter.variant);
    return known;
}

std::optional<std::string> findVariant(std::vector<std::string> const& known, std::string const& wanted) {
    if (auto const exact = std::find(known.begin(), known.end(), wanted); exact != known.end()) return *exact;
    std::string const key = compare::codeKey(wanted);
    for (auto const& variant : known) {
        if (!key.empty() && compare::codeKey(variant) == key) return variant;
    }
    return std::nullopt;
}

model::Result<std::string> chosenVariant(model::Datasheet const& sheet, std::string const& wanted) {
    if (wanted.empty()) return std::string();
    auto const known = knownVariants(sheet);
    if (auto found = findVariant(known, wanted)) return *found;
    std::string list;
    for (std::size_t i = 0; i < known.size() && i < kMostListed; ++i) list += (i == 0 ? "" : ", ") + known[i];
    if (known.size() > kMostListed) list += ", …";
    std::string message = known.empty() ? fmt::format("variant \"{}\" was not found: the sheet prints no variants", wanted)
                                        : fmt::format("variant \"{}\" was not found; the sheet has {}", wanted, list);
    return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = std::move(message), .file = sheet.document.file, .page = 0});
}

AssessOptions assessOptions(CompareOptions const& options, std::string referenceVariant, std::string candidateVariant) {
    AssessOptions made;
    made.around.cell = options.cell ? &*options.cell : nullptr;
    made.around.circuit = options.circuit ? &*options.circuit : nullptr;
    made.referenceVariant = std::move(referenceVariant);
    made.candidateVariant = std::move(candidateVariant);
    return made;
}

// Parameters that a check or a worked-out quantity took in.
int parametersChecked(model::Comparison const& comparison) {
    std::unordered_set<std::string> ids;
    auto const take = [&ids](std::vector<model::Input> const& inputs) {
        for (auto const& input : inputs) {
            if (!input.parameter.empty()) ids.insert(input.parameter);
        }
    };
    for (auto const& check : comparison.cell) {
        if (check.candidate) take(check.candidate->inputs);
    }
    for (auto const& derived : comparison.derived) {
        if (derived.candidate) take(derived.candidate->inputs);
    }
    return static_cast<int>(ids.size());
}

// Something of the candidate's own sheet that was not read; not what only a second
// sheet could be set against.
bool isGapOfOneSheet(model::Finding const& finding) {
    if (finding.kind != model::FindingKind::Coverage || !finding.candidate) return false;
    return finding.title != compare::kProseInTwoLanguages && finding.title != compare::kPinsInOneSheet && finding.title != compare::kDoubtfulPairing;
}

model::Result<model::Comparison> compareDatasheets(model::Datasheet const& reference, model::Datasheet const& candidate, CompareOptions const& options,
                                                   vocabulary::Vocabulary const& vocabulary) {
    auto referenceVariant = chosenVariant(reference, options.referenceVariant);
    if (!referenceVariant) return tl::unexpected(referenceVariant.error());
    auto candidateVariant = chosenVariant(candidate, options.candidateVariant);
    if (!candidateVariant) return tl::unexpected(candidateVariant.error());
    compare::AlignOptions const align{.referenceVariant = *referenceVariant,
                                      .candidateVariant = *candidateVariant,
                                      .referencePictures = options.referencePictures,
                                      .candidatePictures = options.candidatePictures};
    WithVersions const r(reference, *referenceVariant, vocabulary);
    WithVersions const c(candidate, *candidateVariant, vocabulary);
    model::Comparison aligned;
    std::optional<SheetView> sheets;
    model::together([&] { aligned = compare::align(*r, *c, align, vocabulary); }, [&] { sheets.emplace(*r, *c, vocabulary); });
    return assess(std::move(aligned), *sheets, assessOptions(options, *referenceVariant, *candidateVariant));
}

model::Result<model::Comparison> checkCandidate(model::Datasheet const& candidate, CompareOptions const& options, vocabulary::Vocabulary const& vocabulary) {
    if (!options.cell) {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = "a candidate alone is checked against a cell; give its profile", .file = {}, .page = 0});
    }
    auto variant = chosenVariant(candidate, options.candidateVariant);
    if (!variant) return tl::unexpected(variant.error());
    // Alignment against nothing lists every parameter, and what of the sheet was not read.
    model::Datasheet const nothing;
    WithVersions const named(candidate, *variant, vocabulary);
    auto alone = compare::align(nothing, *named, {.referenceVariant = {}, .candidateVariant = *variant}, vocabulary);
    alone.kind = model::ComparisonKind::CandidateAlone;
    std::erase_if(alone.findings, [](model::Finding const& finding) { return !isGapOfOneSheet(finding); });
    for (auto& finding : alone.findings) finding.reference.reset();
    alone.sections.clear();
    auto checked = assess(std::move(alone), nothing, *named, vocabulary, assessOptions(options, {}, *variant));
    checked.coverage.compared = parametersChecked(checked);
    checked.coverage.listed = static_cast<int>(candidate.parameters.size()) - checked.coverage.compared;
    checked.coverage.unaccounted = static_cast<int>(candidate.coverage.unaccounted.size());
    return checked;
}

}  // namespace standin::risk
