// What files bring into a record: hashes, evidence, and the first entry of a
// comparison with its options.
#pragma once

#include <string>
#include <vector>

#include "cli/compare_pair.h"
#include "model/result.h"
#include "record/entry.h"

namespace standin::cli {

// SHA-256 of a file of any kind.
[[nodiscard]] model::Result<std::string> hashOf(std::string const& path);

// The files by name and hash.
[[nodiscard]] model::Result<std::vector<record::Evidence>> evidenceOf(std::vector<std::string> const& files);

// What a record of this comparison begins with; `command` is what it was made by.
// Errors: those of reading the users' files that took part.
[[nodiscard]] model::Result<record::Opened> openedOf(CompareCommand const& command, record::Identification identification, ComparedPair compared);

}  // namespace standin::cli
