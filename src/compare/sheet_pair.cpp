// Rows are paired in order with their twins, then wherever they moved, then the
// rows that no other stage compares by what they say.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/sheet_pair.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "compare/device_codes.h"
#include "compare/similarity_pairing.h"
#include "compare/wording_pairing.h"
#include "text/leaders.h"

namespace standin::compare {

namespace {

constexpr double kRowThreshold = 0.5;
constexpr double kMovedRowThreshold = 0.65;
constexpr double kOneTextShare = 0.3;  // of rows or sentences that are equal in both sheets
constexpr model::Points kSamePlace = 1.5F;
constexpr std::size_t kFewTokens = 4;
constexpr double kMostByLetters = 0.9;  // likeness of rows of few tokens

bool samePlace(PrintedRow const& a, PrintedRow const& b) {
    return a.page == b.page && std::abs(a.box.x0 - b.box.x0) < kSamePlace && std::abs(a.box.y0 - b.box.y0) < kSamePlace && std::abs(a.box.y1 - b.box.y1) < kSamePlace;
}

// Every text of a page with its rounded place, as one key.
std::map<int, std::vector<Key>> placedTexts(model::Datasheet const& sheet, PrintedRows const& rows, std::vector<Key> const& textKeys) {
    std::map<int, std::vector<Key>> texts;
    auto add = [&](int page, model::Rect const& box, Key text) {
        auto const rounded = [](model::Points value) { return static_cast<Key>(std::lround(value / 2)); };
        texts[page].push_back(combined(text, combined(rounded(box.x0), rounded(box.y0))));
    };
    for (auto const& row : rows.all()) add(row.page, row.box, row.key);
    for (std::size_t i = 0; i < sheet.text.size(); ++i) {
        auto const& places = sheet.text[i].places;
        if (!places.empty()) add(places.front().page, places.front().box, textKeys[i]);
    }
    for (auto const& furniture : sheet.furniture) {
        Key const key = keyOf(furniture.text);
        for (auto const& place : furniture.places) add(place.page, place.box, key);
    }
    for (auto const& figure : sheet.figures) add(figure.page, figure.box, keyOf(figure.caption));
    return texts;
}

constexpr double kInPlaceShare = 0.5;    // of a page's texts
constexpr std::size_t kFewestTexts = 4;  // a page with fewer is as the other pages are

// By page: the texts of both sheets are mostly at the same places.
std::map<int, bool> findPagesInPlace(SheetPair const& sheets) {
    auto const& reference = sheets.reference;
    auto const& candidate = sheets.candidate;
    auto a = placedTexts(reference, sheets.referenceRows, sheets.referenceTextKeys);
    auto b = placedTexts(candidate, sheets.candidateRows, sheets.candidateTextKeys);
    std::map<int, bool> inPlace;
    std::vector<int> scanty;
    int yes = 0;
    int no = 0;
    for (int page = 1; page <= std::min(reference.document.pages, candidate.document.pages); ++page) {
        auto& r = a[page];
        auto& c = b[page];
        if (std::min(r.size(), c.size()) < kFewestTexts) {
            scanty.push_back(page);
            continue;
        }
        std::sort(r.begin(), r.end());
        std::sort(c.begin(), c.end());
        inPlace[page] = similarity(r, c) >= kInPlaceShare;
        ++(inPlace[page] ? yes : no);
    }
    bool const others = yes > no || (yes + no == 0 && reference.document.pages == candidate.document.pages);
    for (int const page : scanty) inPlace[page] = others;
    return inPlace;
}

std::string_view firstCell(PrintedRow const& row) {
    std::string_view const text = row.text;
    return text.substr(0, text::leaderBefore(text, std::min(text.find(" | "), text.size())));
}

std::vector<std::string> firstCells(PrintedRows const& rows) {
    std::vector<std::string> cells;
    for (PrintedRow const& row : rows.all()) cells.emplace_back(firstCell(row));
    return cells;
}

std::vector<IndexPair> pairRows(PrintedRows const& reference, PrintedRows const& candidate, std::map<int, bool> const& pagesInPlace) {
    auto const referenceKeys = reference.keys();
    auto const candidateKeys = candidate.keys();
    DeviceCodes const devices(firstCells(reference), firstCells(candidate));
    Likeness const likeness = [&](int i, int j) {
        auto const& a = reference[i];
        auto const& b = candidate[j];
        if (devices.areOthers(firstCell(a), firstCell(b))) return 0.0;
        double alike = similarity(reference.tokens(i), candidate.tokens(j));
        if (alike < kMostByLetters && std::min(reference.tokens(i).size(), candidate.tokens(j).size()) <= kFewTokens) {
            alike = std::max(alike, kMostByLetters * letterSimilarity(a.text, b.text));
        }
        auto const page = pagesInPlace.find(a.page);
        if (page != pagesInPlace.end() && page->second && samePlace(a, b)) return std::min(1.0, std::max(alike, kRowThreshold) + 0.1);
        if (a.head != b.head) alike -= 0.2;
        return alike;
    };
    auto pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = kRowThreshold});
    pairMoved(referenceKeys, candidateKeys, pairs);
    auto const ofReference = partnersOfReference(pairs, reference.size());
    auto const ofCandidate = partnersOfCandidate(pairs, candidate.size());
    auto unread = [](PrintedRows const& rows, std::vector<int> const& partners) {
        std::vector<int> free;
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (partners[r] < 0 && !rows[static_cast<int>(r)].read) free.push_back(static_cast<int>(r));
        }
        return free;
    };
    auto const freeReference = unread(reference, ofReference);
    auto const freeCandidate = unread(candidate, ofCandidate);
    if (!freeReference.empty() && !freeCandidate.empty()) {
        auto const edges = pairSimilar(
            freeReference, [&](int i) -> std::vector<Key> const& { return reference.tokens(i); }, freeCandidate,
            [&](int j) -> std::vector<Key> const& { return candidate.tokens(j); }, {.threshold = kMovedRowThreshold});
        for (Edge const& edge : edges) {
            if (!devices.areOthers(firstCell(reference[edge.reference]), firstCell(candidate[edge.candidate]))) pairs.push_back({edge.reference, edge.candidate});
        }
    }
    std::sort(pairs.begin(), pairs.end(), [](IndexPair a, IndexPair b) { return a.reference < b.reference; });
    return pairs;
}

// Share of the smaller list that has an equal in the other.
double equalShare(std::vector<Key> a, std::vector<Key> b) {
    if (a.empty() || b.empty()) return 0;
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    std::vector<Key> common;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(common));
    return static_cast<double>(common.size()) / static_cast<double>(std::min(a.size(), b.size()));
}

// Column titles are the same in many makers' tables.
std::vector<Key> bodyKeys(PrintedRows const& rows) {
    std::vector<Key> keys;
    for (auto const& row : rows.all()) {
        if (!row.head) keys.push_back(row.key);
    }
    return keys;
}

std::string primaryLanguage(model::Datasheet const& sheet) {
    if (sheet.document.languages.empty()) return {};
    std::string const& tag = sheet.document.languages.front();
    return tag.substr(0, tag.find('-'));
}

}  // namespace

SheetPair::SheetPair(model::Datasheet const& referenceSheet, model::Datasheet const& candidateSheet, AlignOptions const& alignOptions, vocabulary::Vocabulary const& words)
    : reference(referenceSheet),
      candidate(candidateSheet),
      options(alignOptions),
      vocabulary(words),
      referenceRows(referenceSheet),
      candidateRows(candidateSheet),
      referenceTextKeys(sentenceKeys(referenceSheet.text)),
      candidateTextKeys(sentenceKeys(candidateSheet.text)),
      pagesInPlace(findPagesInPlace(*this)),
      rowPairs(pairRows(referenceRows, candidateRows, pagesInPlace)),
      wording(referenceSheet, candidateSheet) {
    rowPartnerOfReference = partnersOfReference(rowPairs, referenceRows.size());
    rowPartnerOfCandidate = partnersOfCandidate(rowPairs, candidateRows.size());
    auto const rows = equalShare(bodyKeys(referenceRows), bodyKeys(candidateRows));
    auto const sentences = equalShare(referenceTextKeys, candidateTextKeys);
    bool const fewSentences = std::min(reference.text.size(), candidate.text.size()) < kFewTokens;
    if (sentences >= kOneTextShare || (rows >= kOneTextShare && fewSentences) || (rows >= 0.5 && sentences >= 0.1)) kinship = Kinship::OneText;
    if (reference == candidate) kinship = Kinship::OneText;
    std::string const a = primaryLanguage(reference);
    std::string const b = primaryLanguage(candidate);
    sameLanguage = a.empty() || b.empty() || a == b;
}

}  // namespace standin::compare
