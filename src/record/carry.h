// A new revision of a sheet: decisions whose findings are unchanged go over into
// the new record, marked as carried and still under their own signatures.
#pragma once

#include <string>
#include <vector>

#include "model/result.h"
#include "record/record.h"

namespace standin::record {

struct NotCarried {
    std::string finding;
    std::string title;
    std::string why;
};

struct CarriedOver {
    Record record;
    std::vector<std::string> carried;  // findings
    std::vector<NotCarried> lapsed;    // decided lines of the earlier record that were left behind
};

// Opens a record that follows `earlier`. A line's decisions in force are carried
// where a finding with the same id was found again, no graver than before, and
// the rules allow the decision on it. Refused where `earlier` is superseded: its
// decisions go on in the record that took its place.
[[nodiscard]] model::Result<CarriedOver> openFrom(Record const& earlier, Opened opened, Moment const& moment);

// Opens a record that follows `earlier`, or the first one where that is null.
[[nodiscard]] model::Result<CarriedOver> openAfter(Record const* earlier, Opened opened, Moment const& moment);

// A sentence for each line that was carried, then for each that was left behind.
[[nodiscard]] std::vector<std::string> toldOf(CarriedOver const& made);

// What would become of the decisions of `record` if its sheets were compared
// again with this outcome; empty: every decided finding is found unchanged.
[[nodiscard]] std::vector<NotCarried> lapsedIn(Record const& record, model::Comparison const& now);

}  // namespace standin::record
