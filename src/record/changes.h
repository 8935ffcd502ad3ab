// What people enter into a record: the rules are asked (rules.h), then the entry
// is added. The command line and the desk change records by these alone.
//
//     updateRecord(file, [&](Record record) { return withSignature(std::move(record), Role::Author, "", moment); });
#pragma once

#include <cstdint>
#include <string>

#include "model/result.h"
#include "record/record.h"

namespace standin::record {

enum class Stance : std::uint8_t { Own, Confirm };

// A decision on the line that `decided.finding` (an id or its first digits)
// belongs to. Stance::Confirm: the decision in force once more; reason and
// further evidence are taken from `decided`. Usage errors: those of lineOf() and
// mayDecide(), nothing to confirm.
[[nodiscard]] model::Result<Record> withDecision(Record record, Decided decided, Stance stance, Moment const& moment);

// Usage errors: those of maySign().
[[nodiscard]] model::Result<Record> withSignature(Record record, Role role, std::string note, Moment const& moment);

// The result held against its limits; its finding may be given by its first
// digits. Usage errors: those of judgeResult().
[[nodiscard]] model::Result<Record> withResult(Record record, BenchResult result, Moment const& moment);

// `by`, which was read and holds, takes the record's place. Usage errors: those of
// maySupersede(), and `by` is superseded itself.
[[nodiscard]] model::Result<Record> withSupersession(Record record, Record const& by, std::string reason, Moment const& moment);

// Usage errors: those of mayDistribute().
[[nodiscard]] model::Result<Record> withDistribution(Record record, Distributed distributed, Moment const& moment);

}  // namespace standin::record
