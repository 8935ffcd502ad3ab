// Two copies of one record, written on apart, become one again.
//
//     auto merged = mergeRecords(a, b, {at, key});
//     // its last entry names both heads; findings decided differently are open again
#pragma once

#include <string>
#include <vector>

#include "model/result.h"
#include "record/record.h"

namespace standin::record {

// All entries of both, each once, and an entry that names both heads. Where one
// copy holds everything of the other it is given back unchanged. Error (Usage):
// they do not share their beginning.
[[nodiscard]] model::Result<Record> mergeRecords(Record const& a, Record const& b, Moment const& moment);

// Findings on which decisions were made on both ways to the two entries since
// they parted, and the last ones differ; sorted. Both entries must be in `record`.
[[nodiscard]] std::vector<std::string> conflictsBetween(Record const& record, std::string const& hashA, std::string const& hashB);

}  // namespace standin::record
