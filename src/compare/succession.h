// Whether two sheets are revisions of one, and what the later one's history says that
// the earlier one could not. Facts only; what was found is set against it in risk/.
//
//     if (auto const succession = successionOf(reference, candidate, vocabulary.historyWords()))
//         for (auto const& entry : succession->entries) …   // C, D: what changed since B
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "compare/revision_history.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

enum class NewerSheet : std::uint8_t { Reference, Candidate };

struct Succession {
    NewerSheet newer = NewerSheet::Candidate;
    std::string from, to;               // revisions as printed
    std::vector<HistoryEntry> entries;  // after `from`, up to `to`
    bool complete = true;               // false: the history begins after `from`
};

// Whether the two are revisions of one sheet: they share a part number and much of what
// they print, the later one has a history, and its entries go beyond the other's revision.
// The maker's name plays no part. None where they are not, or are the same revision.
[[nodiscard]] std::optional<Succession> successionOf(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::HistoryWords const& words);

}  // namespace standin::compare
