// Tested by tests/src/record/merge_test.cpp.
#include "record/merge.h"

#include <algorithm>
#include <map>
#include <unordered_set>

#include "record/state.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;

namespace {

// The last decision on each finding among the entries of one side alone.
std::map<std::string, Decided const*> lastDecisions(Record const& record, Ancestry::Row const& side, Ancestry::Row const& other) {
    std::map<std::string, Decided const*> last;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        if (!isIn(side, i) || isIn(other, i)) continue;
        if (auto const* decided = decisionIn(record.entries[i])) last[decided->finding] = decided;
    }
    return last;
}

bool contains(Record const& record, std::string const& hash) { return indexOf(record, hash) != record.entries.size(); }

}  // namespace

std::vector<std::string> conflictsBetween(Record const& record, std::string const& hashA, std::string const& hashB) {
    Ancestry const ancestry(record);
    auto const& a = ancestry.of(indexOf(record, hashA));
    auto const& b = ancestry.of(indexOf(record, hashB));
    auto const decidedA = lastDecisions(record, a, b);
    auto const decidedB = lastDecisions(record, b, a);
    std::vector<std::string> conflicts;
    for (auto const& [finding, decided] : decidedA) {
        auto const other = decidedB.find(finding);
        if (other == decidedB.end()) continue;
        bool const same = other->second->disposition == decided->disposition && other->second->condition == decided->condition;
        if (!same) conflicts.push_back(finding);
    }
    return conflicts;
}

Result<Record> mergeRecords(Record const& a, Record const& b, Moment const& moment) {
    if (a.root() != b.root()) return tl::unexpected(Error{ErrorKind::Usage, "the two records do not share their beginning; only copies of one record can be merged", {}, 0});
    if (contains(a, b.head().hash)) return a;
    if (contains(b, a.head().hash)) return b;
    Record merged;
    merged.entries = a.entries;
    std::unordered_set<std::string> known;
    for (auto const& entry : a.entries) known.insert(entry.hash);
    for (auto const& entry : b.entries) {
        if (!known.contains(entry.hash)) merged.entries.push_back(entry);
    }
    // The order of the two names does not depend on which copy came first.
    std::vector<std::string> parents{a.head().hash, b.head().hash};
    std::sort(parents.begin(), parents.end());
    auto const sequence = std::max(a.head().sequence, b.head().sequence) + 1;
    auto entry = signedEntry({parents, sequence, moment.at, Body{Merged{conflictsBetween(merged, parents[0], parents[1])}}}, moment.key);
    if (!entry) return tl::unexpected(entry.error());
    return withEntry(std::move(merged), *std::move(entry), moment.key);
}

}  // namespace standin::record
