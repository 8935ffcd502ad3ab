// Tested by tests/src/record/changes_test.cpp.
#include "record/changes.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include <fmt/format.h>

#include "record/bench_result.h"
#include "record/rules.h"
#include "record/state.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;

Result<Record> withDecision(Record record, Decided decided, Stance stance, Moment const& moment) {
    auto const state = stateOf(record);
    auto const& lines = state.lines;
    auto const index = lineOf(lines, decided.finding);
    if (!index) return tl::unexpected(index.error());
    auto const& line = lines[*index];
    if (stance == Stance::Confirm) {
        if (line.inForce.empty()) return tl::unexpected(Error{ErrorKind::Usage, fmt::format("finding {}: there is no decision to confirm", line.finding), {}, 0});
        auto confirmed = *decisionIn(record.entries[line.inForce.back()]);
        confirmed.reason = std::move(decided.reason);
        std::move(decided.evidence.begin(), decided.evidence.end(), std::back_inserter(confirmed.evidence));
        decided = std::move(confirmed);
    }
    decided.finding = line.finding;
    if (auto const open = mayGoOn(record, state); !open) return tl::unexpected(open.error());
    if (auto const allowed = mayDecide(line, decided); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{std::move(decided)}, moment);
}

Result<Record> withSignature(Record record, Role role, std::string note, Moment const& moment) {
    auto const state = stateOf(record);
    if (auto const open = mayGoOn(record, state); !open) return tl::unexpected(open.error());
    if (auto const allowed = maySign(record, state, role, moment.key.person()); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{Signed{role, std::move(note)}}, moment);
}

Result<Record> withResult(Record record, BenchResult result, Moment const& moment) {
    if (auto const open = mayGoOn(record, stateOf(record)); !open) return tl::unexpected(open.error());
    auto const& findings = record.opened().comparison.findings;
    if (!result.finding.empty()) {
        auto const known = std::find_if(findings.begin(), findings.end(), [&](model::Finding const& finding) { return finding.id.starts_with(result.finding); });
        if (known != findings.end()) result.finding = known->id;
    }
    auto judged = judgeResult(record.opened().tests, std::move(result));
    if (!judged) return tl::unexpected(judged.error());
    return withEntry(std::move(record), Body{*std::move(judged)}, moment);
}

Result<Record> withSupersession(Record record, Record const& by, std::string reason, Moment const& moment) {
    if (!stateOf(by).supersessions.empty()) return tl::unexpected(Error{ErrorKind::Usage, "the record that is to take its place is superseded itself", {}, 0});
    auto const& identification = by.opened().identification;
    Superseded superseded{identification.number, identification.title, by.root(), by.head().hash, std::move(reason)};
    if (auto const open = mayGoOn(record, stateOf(record)); !open) return tl::unexpected(open.error());
    if (auto const allowed = maySupersede(record, superseded); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{std::move(superseded)}, moment);
}

Result<Record> withDistribution(Record record, Distributed distributed, Moment const& moment) {
    if (auto const allowed = mayDistribute(distributed); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{std::move(distributed)}, moment);
}

}  // namespace standin::record
