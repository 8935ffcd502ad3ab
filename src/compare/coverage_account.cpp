// Gaps are taken from each sheet's own account; a gap that both sheets have is one
// finding with both sides.
//
// Tested by tests/src/compare/coverage_account_test.cpp.
#include "compare/coverage_account.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include <fmt/format.h>

#include "compare/ordered_version.h"
#include "compare/text_keys.h"
#include "compare/variant_words.h"
#include "quantity/numbers.h"
#include "text/fold.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;

constexpr std::size_t kShownText = 300;  // bytes of a list of what was not read
// Below these a row or a table is more likely misread than not worth a look.
constexpr double kDoubtedTable = 0.6;

std::string joined(std::vector<std::string> const& list) {
    std::string text;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (text.size() > kShownText) return text + fmt::format(" and {} more", list.size() - i);
        if (!text.empty()) text += ", ";
        text += list[i];
    }
    return text;
}

std::optional<model::Side> listSide(std::vector<std::string> const& list, int page, model::Rect const& box) {
    if (list.empty()) return std::nullopt;
    return sideOf(page, box, joined(list));
}

enum class Matters { Yes, No };

void add(std::vector<Draft>& drafts, std::string_view cause, Relation relation, Matters matters, std::optional<model::Side> reference,
         std::optional<model::Side> candidate) {
    if (!reference && !candidate) return;
    Draft draft = makeDraft(FindingKind::Coverage, Rank::Coverage, relation, std::move(reference), std::move(candidate));
    draft.finding.title = cause;
    draft.finding.open = matters == Matters::Yes;
    drafts.push_back(std::move(draft));
}

std::optional<model::Side> unaccountedSide(model::Coverage const& coverage) {
    std::vector<std::string> list;
    for (auto const& piece : coverage.unaccounted) list.push_back(piece.text);
    return list.empty() ? std::nullopt : listSide(list, coverage.unaccounted.front().page, coverage.unaccounted.front().box);
}

std::optional<model::Side> pagesSide(model::Datasheet const& sheet) {
    std::vector<std::string> list;
    for (int const page : sheet.coverage.pagesWithoutText) list.push_back(fmt::format("page {}", page));
    bool const unread = sheet.document.textLayer == model::TextLayer::None && sheet.coverage.recognised.empty();
    if (list.empty() && unread) list.emplace_back("all pages");
    return listSide(list, sheet.coverage.pagesWithoutText.empty() ? 1 : sheet.coverage.pagesWithoutText.front(), {});
}

std::optional<model::Side> tablesSide(model::Datasheet const& sheet) {
    std::vector<std::string> list;
    int page = 0;
    model::Rect box;
    for (auto const& id : sheet.coverage.unreadTables) {
        auto const found = std::find_if(sheet.tables.begin(), sheet.tables.end(), [&](auto const& table) { return table.id == id; });
        if (found == sheet.tables.end()) {
            list.push_back(id);
            continue;
        }
        list.push_back(found->caption.empty() ? fmt::format("table on page {}", found->page) : fmt::format("{} (page {})", found->caption, found->page));
        if (page == 0) {
            page = found->page;
            box = found->box;
        }
    }
    return listSide(list, page, box);
}

std::optional<model::Side> figuresSide(model::Datasheet const& sheet) {
    std::vector<std::string> list;
    int page = 0;
    model::Rect box;
    for (auto const& id : sheet.coverage.unreadFigures) {
        auto const found = std::find_if(sheet.figures.begin(), sheet.figures.end(), [&](auto const& figure) { return figure.id == id; });
        if (found == sheet.figures.end()) {
            list.push_back(id);
            continue;
        }
        list.push_back(found->caption.empty() ? fmt::format("figure on page {}", found->page) : fmt::format("{} (page {})", found->caption, found->page));
        if (page == 0) {
            page = found->page;
            box = found->box;
        }
    }
    return listSide(list, page, box);
}

std::optional<model::Side> placesSide(std::vector<model::PlacedText> const& places) {
    std::vector<std::string> list;
    for (auto const& place : places) list.push_back(fmt::format("{} (page {})", place.text, place.page));
    return list.empty() ? std::nullopt : listSide(list, places.front().page, places.front().box);
}

// "page 3 (41 words), page 7 (2 words)"; the place is that of the first line.
std::optional<model::Side> recognisedSide(model::Coverage const& coverage) {
    std::map<int, std::size_t> words;
    for (auto const& line : coverage.recognised) words[line.page] += 1 + static_cast<std::size_t>(std::count(line.text.begin(), line.text.end(), ' '));
    std::vector<std::string> list;
    for (auto const& [page, count] : words) list.push_back(fmt::format("page {} ({} {})", page, count, count == 1 ? "word" : "words"));
    return list.empty() ? std::nullopt : listSide(list, coverage.recognised.front().page, coverage.recognised.front().box);
}

std::optional<model::Side> letteringSide(model::Coverage const& coverage) {
    std::map<int, std::size_t> places;
    for (auto const& place : coverage.unrecognised) ++places[place.page];
    std::vector<std::string> list;
    for (auto const& [page, count] : places) list.push_back(fmt::format("page {} ({} {})", page, count, count == 1 ? "place" : "places"));
    return list.empty() ? std::nullopt : listSide(list, coverage.unrecognised.front().page, coverage.unrecognised.front().box);
}

// Rows that may be misread, and tables without parameters whose grid may be wrong:
// they were compared as they were read.
std::optional<model::Side> doubtsSide(model::Datasheet const& sheet) {
    std::vector<std::string> list;
    int page = 0;
    model::Rect box;
    auto const note = [&](std::string what, int where, model::Rect const& place) {
        if (list.empty()) {
            page = where;
            box = place;
        }
        list.push_back(std::move(what));
    };
    for (auto const& parameter : sheet.parameters) {
        if (!isDoubted(parameter)) continue;
        auto const& name = parameter.name.empty() ? parameter.symbol : parameter.name;
        note(fmt::format("{} (page {})", name.empty() ? parameter.printed : name, parameter.page), parameter.page, parameter.box);
    }
    for (auto const& table : sheet.tables) {
        if (table.kind == model::TableKind::Specification || table.confidence <= 0 || table.confidence >= kDoubtedTable) continue;
        note(table.caption.empty() ? fmt::format("table on page {}", table.page) : fmt::format("{} (page {})", table.caption, table.page), table.page, table.box);
    }
    return listSide(list, page, box);
}

// What a person put right and the sheet does not show.
std::optional<model::Side> correctionsSide(model::DocumentInfo const& document) {
    using model::CorrectionOutcome;
    std::vector<std::string> list;
    model::Correction const* first = nullptr;
    for (auto const& correction : document.corrections) {
        if (correction.outcome != CorrectionOutcome::NotFound && correction.outcome != CorrectionOutcome::Ambiguous) continue;
        if (first == nullptr) first = &correction;
        list.push_back(correction.row.empty() ? correction.field : fmt::format("{} ({})", correction.row, correction.field));
    }
    return first == nullptr ? std::nullopt : listSide(list, first->page, first->box);
}

// A column in millimetres beside one in inches, or at another temperature, is no version of a part.
bool isOrderable(std::string const& variant) {
    std::string const key = text::foldKey(variant);
    auto const names = [&key](std::string_view word) { return key.find(word) != std::string::npos; };
    if (names("millimet") || names("inch") || names("dimension")) return false;
    VariantWords const words = variantWords(variant);
    bool const temperature = variant.find("°C") != std::string::npos || variant.find("℃") != std::string::npos;
    return !temperature || !words.codes.empty();
}

std::vector<std::string> variantsOf(model::Datasheet const& sheet, std::vector<int> unpaired, std::vector<int> const& otherVariants) {
    unpaired.insert(unpaired.end(), otherVariants.begin(), otherVariants.end());
    std::map<std::string, bool> known;  // many rows are of one variant
    auto const isOfOrderable = [&known](model::Parameter const& p) {
        if (p.variant.empty() || p.kind == model::ParameterKind::Mechanical) return false;
        auto const [entry, isNew] = known.try_emplace(p.variant, false);
        if (isNew) entry->second = isOrderable(p.variant);
        return entry->second;
    };
    std::set<std::string> all;
    for (auto const& p : sheet.parameters) {
        if (isOfOrderable(p)) all.insert(p.variant);
    }
    bool const concerned = std::any_of(unpaired.begin(), unpaired.end(), [&](int i) { return isOfOrderable(sheet.parameters[static_cast<std::size_t>(i)]); });
    return all.size() > 1 && concerned ? std::vector<std::string>(all.begin(), all.end()) : std::vector<std::string>{};
}

// Two states of one sheet: their lines stand against each other, code by code.
bool shareACode(model::Datasheet const& reference, model::Datasheet const& candidate) {
    auto const has = [](model::Datasheet const& sheet, std::string const& code) {
        return std::any_of(sheet.ordering.begin(), sheet.ordering.end(), [&](model::OrderingLine const& line) { return spaceless(line.code) == spaceless(code); });
    };
    return std::any_of(reference.ordering.begin(), reference.ordering.end(), [&](model::OrderingLine const& line) { return !line.code.empty() && has(candidate, line.code); });
}

void addVariants(SheetPair const& sheets, ParameterPairing const& pairing, std::vector<Draft>& drafts) {
    std::vector<std::string> reference;
    std::vector<std::string> candidate;
    if (sheets.options.referenceVariant.empty()) reference = variantsOf(sheets.reference, pairing.onlyReference, pairing.otherVariantReference);
    if (sheets.options.candidateVariant.empty()) candidate = variantsOf(sheets.candidate, pairing.onlyCandidate, pairing.otherVariantCandidate);
    if (!shareACode(sheets.reference, sheets.candidate)) {
        if (sheets.options.referenceVariant.empty() && reference.empty()) reference = undecidedVersions(sheets.reference, sheets.vocabulary);
        if (sheets.options.candidateVariant.empty() && candidate.empty()) candidate = undecidedVersions(sheets.candidate, sheets.vocabulary);
    }
    add(drafts, kVariantsNotChosen, Relation::NotComparable, Matters::Yes, listSide(reference, 1, {}), listSide(candidate, 1, {}));
}

void addDoubtfulPairs(SheetPair const& sheets, ParameterPairing const& pairing, std::vector<Draft>& drafts) {
    std::vector<std::string> reference;
    std::vector<std::string> candidate;
    model::Parameter const* firstReference = nullptr;
    model::Parameter const* firstCandidate = nullptr;
    for (auto const& pair : pairing.pairs) {
        if (!pair.doubtful) continue;
        auto const& r = sheets.reference.parameters[static_cast<std::size_t>(pair.reference)];
        auto const& c = sheets.candidate.parameters[static_cast<std::size_t>(pair.candidate)];
        auto name = [](model::Parameter const& p) { return p.name.empty() ? p.symbol : p.name; };
        reference.push_back(name(r));
        candidate.push_back(name(c));
        if (firstReference == nullptr) {
            firstReference = &r;
            firstCandidate = &c;
        }
    }
    if (firstReference == nullptr) return;
    add(drafts, kDoubtfulPairing, Relation::NotComparable, Matters::No, listSide(reference, firstReference->page, firstReference->box),
        listSide(candidate, firstCandidate->page, firstCandidate->box));
}

int numbersOf(std::string_view text) { return static_cast<int>(quantity::countNumbers(text)); }

int numbersOf(model::Parameter const& p) {
    int count = 0;
    for (auto const* value : {&p.min, &p.typ, &p.max}) {
        if (*value) count += numbersOf((*value)->text);
    }
    return count + numbersOf(p.condition) + numbersOf(p.symbol);
}

}  // namespace

bool isDoubted(model::Parameter const& row) {
    constexpr double kDoubted = 0.7;
    return row.confidence.score > 0 && row.confidence.score < kDoubted;
}

std::vector<Draft> findCoverageGaps(SheetPair const& sheets, ParameterPairing const& pairing) {
    std::vector<Draft> drafts;
    auto const& r = sheets.reference;
    auto const& c = sheets.candidate;
    add(drafts, kNumbersUnaccounted, Relation::Unread, Matters::Yes, unaccountedSide(r.coverage), unaccountedSide(c.coverage));
    add(drafts, kPagesWithoutText, Relation::Unread, Matters::Yes, pagesSide(r), pagesSide(c));
    add(drafts, kTablesUnread, Relation::Unread, Matters::Yes, tablesSide(r), tablesSide(c));
    add(drafts, kFiguresUnread, Relation::Unread, Matters::No, figuresSide(r), figuresSide(c));
    add(drafts, kRecognised, Relation::Unread, Matters::Yes, recognisedSide(r.coverage), recognisedSide(c.coverage));
    add(drafts, kLetteringUnread, Relation::Unread, Matters::No, letteringSide(r.coverage), letteringSide(c.coverage));
    add(drafts, kPinsUnread, Relation::Unread, Matters::Yes, placesSide(r.coverage.unreadPins), placesSide(c.coverage.unreadPins));
    add(drafts, kSignsDrawn, Relation::Unread, Matters::Yes, placesSide(r.coverage.drawnSigns), placesSide(c.coverage.drawnSigns));
    add(drafts, kReadWithDoubt, Relation::Unread, Matters::Yes, doubtsSide(r), doubtsSide(c));
    add(drafts, kCorrectionsNotApplied, Relation::Unread, Matters::Yes, correctionsSide(r.document), correctionsSide(c.document));
    if (!sheets.sameLanguage) {
        auto language = [](model::Datasheet const& sheet) {
            return sideOf(1, {}, fmt::format("{}: {} sentences", sheet.document.languages.empty() ? std::string() : sheet.document.languages.front(), sheet.text.size()));
        };
        add(drafts, kProseInTwoLanguages, Relation::NotComparable, Matters::Yes, language(r), language(c));
    }
    addVariants(sheets, pairing, drafts);
    addDoubtfulPairs(sheets, pairing, drafts);
    if (r.pins.empty() != c.pins.empty()) {
        auto pins = [](model::Datasheet const& sheet) -> std::optional<model::Side> {
            if (sheet.pins.empty()) return std::nullopt;
            return sideOf(sheet.pins.front().page, sheet.pins.front().box, fmt::format("{} pins", sheet.pins.size()));
        };
        add(drafts, kPinsInOneSheet, Relation::NotComparable, Matters::Yes, pins(r), pins(c));
    }
    if (r.parameters.empty() != c.parameters.empty()) {
        auto none = [](model::Datasheet const& sheet) -> std::optional<model::Side> {
            if (!sheet.parameters.empty()) return std::nullopt;
            return sideOf(1, {}, {});
        };
        add(drafts, kNoParameters, Relation::Unread, Matters::Yes, none(r), none(c));
    }
    return drafts;
}

model::ComparisonCoverage account(SheetPair const& sheets, ParameterPairing const& pairing, std::vector<Draft> const& drafts) {
    model::ComparisonCoverage coverage;
    coverage.reference = sheets.reference.coverage;
    coverage.candidate = sheets.candidate.coverage;
    auto one = [&](model::Datasheet const& sheet, std::vector<int> const& otherVariants, bool isReference) {
        int const total = sheet.coverage.numbers + sheet.coverage.sentences;
        int const unaccounted = std::min(static_cast<int>(sheet.coverage.unaccounted.size()), total);
        int listed = 0;
        for (auto const& draft : drafts) {
            if (draft.dropped || draft.rank == Rank::Coverage || draft.rank == Rank::Package || draft.rank == Rank::Document) continue;
            auto const& mine = isReference ? draft.finding.reference : draft.finding.candidate;
            auto const& other = isReference ? draft.finding.candidate : draft.finding.reference;
            if (!mine || other) continue;
            listed += numbersOf(mine->text) + (draft.rank == Rank::Wording ? draft.numberBearers : 0);
        }
        for (int const index : otherVariants) listed += numbersOf(sheet.parameters[static_cast<std::size_t>(index)]);
        if (!sheets.sameLanguage) listed += sheet.coverage.inText + sheet.coverage.sentences;
        listed = std::clamp(listed, 0, total - unaccounted);
        coverage.listed += listed;
        coverage.unaccounted += unaccounted;
        coverage.compared += total - unaccounted - listed;
    };
    one(sheets.reference, pairing.otherVariantReference, true);
    one(sheets.candidate, pairing.otherVariantCandidate, false);
    return coverage;
}

}  // namespace standin::compare
