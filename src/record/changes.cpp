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
    auto const lines = stateOf(record).lines;
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
    if (auto const allowed = mayDecide(line, decided); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{std::move(decided)}, moment);
}

Result<Record> withSignature(Record record, Role role, std::string note, Moment const& moment) {
    if (auto const allowed = maySign(record, stateOf(record), role, moment.key.person()); !allowed) return tl::unexpected(allowed.error());
    return withEntry(std::move(record), Body{Signed{role, std::move(note)}}, moment);
}

Result<Record> withResult(Record record, BenchResult result, Moment const& moment) {
    auto const& findings = record.opened().comparison.findings;
    if (!result.finding.empty()) {
        auto const known = std::find_if(findings.begin(), findings.end(), [&](model::Finding const& finding) { return finding.id.starts_with(result.finding); });
        if (known != findings.end()) result.finding = known->id;
    }
    auto judged = judgeResult(record.opened().tests, std::move(result));
    if (!judged) return tl::unexpected(judged.error());
    return withEntry(std::move(record), Body{*std::move(judged)}, moment);
}

}  // namespace standin::record
