// What may be entered into a record (DOMAIN 10.2), asked before an entry is made
// and again of every entry when a record is checked.
//
//     if (auto allowed = mayDecide(line, decided); !allowed) …  // Usage, one line
#pragma once

#include <string_view>

#include "model/result.h"
#include "record/record.h"
#include "record/state.h"

namespace standin::record {

// A reason is required; accepted-with-condition needs its condition; a hazard for
// which only a typical value is stated is not accepted as it is; a line of level 4
// closes only by rejected or with new evidence.
[[nodiscard]] model::Result<void> mayDecide(Line const& line, Decided const& decided);

// An approver is another person than the author, and every line is closed or one
// is rejected. Author and reviewer may sign at any time.
[[nodiscard]] model::Result<void> maySign(Record const& record, Overview const& state, Role role, Person const& by);

// A reason is required; a record does not take its own place.
[[nodiscard]] model::Result<void> maySupersede(Record const& record, Superseded const& superseded);

// Recipient and what was given are required; the day, where one is stated, is a date.
[[nodiscard]] model::Result<void> mayDistribute(Distributed const& distributed);

// Nothing is decided, measured or signed in a record that is superseded, and it is
// superseded once; it may still be given to somebody.
[[nodiscard]] model::Result<void> mayGoOn(Record const& record, Overview const& state);

// Entries that break a rule, or say what does not follow from the entries before
// them. Error (Damaged) names the first of them.
[[nodiscard]] model::Result<void> obeysRules(Record const& record);

}  // namespace standin::record
