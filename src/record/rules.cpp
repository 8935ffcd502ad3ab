// Tested by tests/src/record/rules_test.cpp.
#include "record/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "record/bench_result.h"
#include "record/merge.h"
#include "record/moment.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;
using model::Severity;

namespace {

constexpr int kGravestLevel = 4;
constexpr std::size_t kShownHash = 16;  // digits

auto refuse(std::string message) { return tl::unexpected(Error{ErrorKind::Usage, std::move(message), {}, 0}); }

bool isBlank(std::string_view text) { return text.find_first_not_of(" \t") == std::string_view::npos; }

bool closes(Disposition disposition) {
    return disposition == Disposition::Accepted || disposition == Disposition::AcceptedWithCondition || disposition == Disposition::NotApplicable || disposition == Disposition::Rejected;
}

// The entries before one of them: what was known when it was made.
Overview stateBefore(Record const& record, std::size_t index) {
    if (index == 0) return {};
    auto const& parents = record.entries[index].parents;
    return stateAt(record, indexOf(record, parents.front()));
}

Result<void> decisionHolds(std::vector<Line> const& lines, Decided const& decided) {
    auto const line = lineOf(lines, decided.finding);
    if (!line) return tl::unexpected(line.error());
    if (lines[*line].finding != decided.finding) return refuse("decides on a finding that the record does not have");
    return mayDecide(lines[*line], decided);
}

// A decision is carried on the signature of the person who made it; which record
// it comes from is said by the opening.
Result<void> carriedHolds(Record const& record) {
    if (!record.opened().predecessor) return refuse("carries a decision although the record follows no other");
    return {};
}

Result<void> goesOn(Superseded const& superseded) {
    return refuse(fmt::format("is superseded by the record {}; go on there", superseded.number.empty() ? superseded.root.substr(0, kShownHash) : superseded.number));
}

// Entries that a superseded record still takes: a merge changes nothing by itself.
bool isTakenAfterTheEnd(Body const& body) { return std::holds_alternative<Distributed>(body) || std::holds_alternative<Merged>(body); }

// Nothing was entered after the record was superseded, as far as its author knew.
Result<void> endHolds(Record const& record, Ancestry const& ancestry, std::size_t index) {
    if (isTakenAfterTheEnd(record.entries[index].body)) return {};
    for (std::size_t i = 0; i < index; ++i) {
        auto const* superseded = std::get_if<Superseded>(&record.entries[i].body);
        if (superseded != nullptr && isIn(ancestry.of(index), i)) return goesOn(*superseded);
    }
    return {};
}

}  // namespace

Result<void> mayDecide(Line const& line, Decided const& decided) {
    if (isBlank(decided.reason)) return refuse("a reason is required");
    if (decided.disposition == Disposition::AcceptedWithCondition && isBlank(decided.condition)) {
        return refuse("accepted-with-condition needs its condition: what it is, how it is verified, where it is written");
    }
    if (decided.disposition == Disposition::Accepted && line.typicalOnly) {
        return refuse(fmt::format("finding {}: the candidate states a typical value only, which promises no limit; a hazard cannot be accepted as it is", line.finding));
    }
    if (line.level >= kGravestLevel && closes(decided.disposition) && decided.disposition != Disposition::Rejected && decided.evidence.empty()) {
        return refuse(fmt::format("finding {}: a line of level 4 closes only by rejected or by new evidence, a file", line.finding));
    }
    return {};
}

Result<void> maySign(Record const& record, Overview const& state, Role role, Person const& by) {
    if (role != Role::Approver) return {};
    if (!twoPersons(by, record.entries.front().by)) return refuse("the approver must be another person than the author who opened the record");
    for (auto const& signature : state.signatures) {
        auto const& entry = record.entries[signature.entry];
        if (std::get<Signed>(entry.body).role == Role::Author && !twoPersons(by, entry.by)) return refuse("the approver must be another person than the author");
    }
    bool const rejected = std::any_of(state.lines.begin(), state.lines.end(), [](Line const& line) { return line.standing == Standing::Rejected; });
    if (!state.open.empty() && !rejected) {
        return refuse(fmt::format("{} {} open, so it cannot be signed as approver; the first: {}", state.open.size(), state.open.size() == 1 ? "line is" : "lines are", state.open.front()));
    }
    return {};
}

Result<void> maySupersede(Record const& record, Superseded const& superseded) {
    if (isBlank(superseded.reason)) return refuse("a reason is required");
    if (superseded.root == record.root()) return refuse("cannot take its own place; name the record that does");
    return {};
}

Result<void> mayDistribute(Distributed const& distributed) {
    if (isBlank(distributed.to)) return refuse("a distribution needs its recipient");
    if (isBlank(distributed.what)) return refuse("a distribution needs what was given");
    if (!distributed.on.empty() && !isDate(distributed.on)) return refuse(fmt::format("'{}' is no date like 2031-05-04", distributed.on));
    return {};
}

Result<void> mayGoOn(Record const& record, Overview const& state) {
    if (state.supersessions.empty()) return {};
    return goesOn(std::get<Superseded>(record.entries[state.supersessions.back()].body));
}

Result<void> obeysRules(Record const& record) {
    auto const lines = stateAt(record, 0).lines;
    Ancestry const ancestry(record);
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        auto const& entry = record.entries[i];
        Result<void> holds;
        if (auto const* decided = decisionIn(entry)) holds = decisionHolds(lines, *decided);
        if (std::holds_alternative<Carried>(entry.body) && holds) holds = carriedHolds(record);
        if (auto const* result = std::get_if<BenchResult>(&entry.body)) {
            auto const judged = judgeResult(record.opened().tests, *result);
            if (!judged) holds = tl::unexpected(judged.error());
            else if (judged->outcome != result->outcome) holds = refuse("judges a result otherwise than its limits do");
        }
        if (auto const* signature = std::get_if<Signed>(&entry.body); signature != nullptr && signature->role == Role::Approver) holds = maySign(record, stateBefore(record, i), signature->role, entry.by);
        if (auto const* merged = std::get_if<Merged>(&entry.body); merged != nullptr && merged->conflicts != conflictsBetween(record, entry.parents[0], entry.parents[1])) {
            holds = refuse("names other conflicts than its two copies have");
        }
        if (auto const* superseded = std::get_if<Superseded>(&entry.body)) holds = maySupersede(record, *superseded);
        if (auto const* distributed = std::get_if<Distributed>(&entry.body)) holds = mayDistribute(*distributed);
        if (holds) holds = endHolds(record, ancestry, i);
        if (!holds) {
            return tl::unexpected(Error{ErrorKind::Damaged, fmt::format("line {} ({} by {}, {}): {}", i + 1, kindOf(entry.body), entry.by.name, entry.at, holds.error().message), {}, 0});
        }
    }
    return {};
}

}  // namespace standin::record
