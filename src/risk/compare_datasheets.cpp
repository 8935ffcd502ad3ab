// Chosen variants are looked up in what the sheets print, then alignment and
// judging run one after the other.
// Tested by tests/src/risk/compare_datasheets_test.cpp.
#include "risk/compare_datasheets.h"

#include <algorithm>
#include <unordered_set>

#include <fmt/format.h>

#include "compare/align.h"
#include "risk/assess.h"
#include "text/fold.h"

namespace standin::risk {

namespace {

constexpr std::size_t kMostListed = 12;

// The variant as the sheet prints it, or an error that lists those that it has.
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

}  // namespace

std::vector<std::string> knownVariants(model::Datasheet const& datasheet) {
    std::vector<std::string> known;
    std::unordered_set<std::string> seen;
    auto const add = [&](std::string const& variant) {
        if (!variant.empty() && seen.insert(variant).second) known.push_back(variant);
    };
    for (auto const& line : datasheet.ordering) add(line.code);
    for (auto const& parameter : datasheet.parameters) add(parameter.variant);
    return known;
}

std::optional<std::string> findVariant(std::vector<std::string> const& known, std::string const& wanted) {
    if (auto const exact = std::find(known.begin(), known.end(), wanted); exact != known.end()) return *exact;
    std::string const key = text::foldKey(wanted);
    for (auto const& variant : known) {
        if (!key.empty() && text::foldKey(variant) == key) return variant;
    }
    return std::nullopt;
}

model::Result<model::Comparison> compareDatasheets(model::Datasheet const& reference, model::Datasheet const& candidate, CompareOptions const& options,
                                                   vocabulary::Vocabulary const& vocabulary) {
    auto referenceVariant = chosenVariant(reference, options.referenceVariant);
    if (!referenceVariant) return tl::unexpected(referenceVariant.error());
    auto candidateVariant = chosenVariant(candidate, options.candidateVariant);
    if (!candidateVariant) return tl::unexpected(candidateVariant.error());
    compare::AlignOptions const align{.referenceVariant = *referenceVariant, .candidateVariant = *candidateVariant};
    return assess(compare::align(reference, candidate, align, vocabulary), reference, candidate, vocabulary);
}

}  // namespace standin::risk
