// Tested by tests/src/compare/succession_test.cpp.
#include "compare/succession.h"

#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <unordered_set>

#include "compare/revision_order.h"
#include "compare/text_keys.h"
#include "text/fold.h"

namespace standin::compare {

namespace {

constexpr std::size_t kTellingText = 16;  // bytes, folded
constexpr double kOneSheet = 0.3;         // share of what the shorter sheet prints that the other prints too

bool sharePartNumber(model::Datasheet const& a, model::Datasheet const& b) {
    std::set<std::string> known;
    for (auto const& part : a.document.partNumbers) known.insert(text::foldKey(part));
    return std::any_of(b.document.partNumbers.begin(), b.document.partNumbers.end(), [&](auto const& part) { return known.count(text::foldKey(part)) > 0; });
}

// Calls take(key) for what is printed, sentences and rows, until that returns true; short ones
// say the same in any sheet.
template <class Take>
void forEachPrintedKey(model::Datasheet const& sheet, Take const& take) {
    auto const taken = [&take](std::string_view text) {
        std::string const key = text::foldKey(text);
        return key.size() >= kTellingText && take(hashOf(key));
    };
    for (auto const& sentence : sheet.text) {
        if (taken(sentence.text)) return;
    }
    for (auto const& table : sheet.tables) {
        std::map<int, std::string> rows;
        for (auto const& cell : table.cells) rows[cell.row] += cell.text;
        for (auto const& [row, text] : rows) {
            if (taken(text)) return;
        }
    }
}

// Two makers may give their parts one number; then little else is printed alike.
bool shareTheirText(model::Datasheet const& a, model::Datasheet const& b) {
    std::unordered_set<Key> left;
    std::unordered_set<Key> right;
    forEachPrintedKey(a, [&left](Key key) {
        left.insert(key);
        return false;
    });
    std::size_t common = 0;
    auto const isEnough = [&](std::size_t shorter) { return common > 0 && static_cast<double>(common) >= kOneSheet * static_cast<double>(shorter); };
    forEachPrintedKey(b, [&](Key key) {
        if (right.insert(key).second && left.count(key) > 0) ++common;
        return isEnough(left.size());  // whatever else the other prints
    });
    return isEnough(std::min(left.size(), right.size()));
}

// The latest revision that a sheet states: in its history, or of itself.
std::string latestOf(model::Datasheet const& sheet, std::vector<HistoryEntry> const& history) {
    std::string latest;
    auto const take = [&latest](std::string const& revision) {
        if (latest.empty() || compareRevisions(revision, latest).value_or(0) > 0) latest = revision;
    };
    for (auto const& entry : history) take(entry.revision);
    if (!sheet.document.revision.empty()) take(sheet.document.revision);
    return latest;
}

int latestDate(model::Datasheet const& sheet, std::vector<HistoryEntry> const& history) {
    int latest = dateNumber(sheet.document.date);
    for (auto const& entry : history) latest = std::max(latest, entry.date);
    return latest;
}

}  // namespace

std::optional<Succession> successionOf(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::HistoryWords const& words) {
    if (!sharePartNumber(reference, candidate) || !shareTheirText(reference, candidate)) return std::nullopt;
    auto const [ofReference, ofCandidate] = readHistories(reference, candidate, words);
    if (ofReference.empty() && ofCandidate.empty()) return std::nullopt;
    std::string const before = latestOf(reference, ofReference);
    std::string const after = latestOf(candidate, ofCandidate);
    auto const order = compareRevisions(before, after);
    int const dateBefore = latestDate(reference, ofReference);
    int const dateAfter = latestDate(candidate, ofCandidate);
    int const later = order ? *order : dateBefore == 0 || dateAfter == 0 ? 0 : dateBefore < dateAfter ? -1 : dateBefore > dateAfter ? 1 : 0;
    if (later == 0) return std::nullopt;

    Succession succession;
    succession.newer = later < 0 ? NewerSheet::Candidate : NewerSheet::Reference;
    succession.from = later < 0 ? before : after;
    succession.to = later < 0 ? after : before;
    int const known = later < 0 ? dateBefore : dateAfter;
    succession.complete = false;
    for (auto const& entry : later < 0 ? ofCandidate : ofReference) {
        auto const beyond = order ? compareRevisions(entry.revision, succession.from) : std::optional<int>(entry.date > known ? 1 : -1);
        if (beyond && *beyond > 0) succession.entries.push_back(entry);
        bool const reaches = (beyond && *beyond <= 0) || (!entry.earlier.empty() && compareRevisions(entry.earlier, succession.from).value_or(1) <= 0);
        succession.complete = succession.complete || reaches;
    }
    if (succession.entries.empty()) return std::nullopt;
    return succession;
}

}  // namespace standin::compare
