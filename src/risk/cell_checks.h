// One part against the cell that it protects: the 17 checks of a cell profile.
//
//     auto results = checkPart(values, around, vocabulary);
//     results[0].result.outcome      // CheckOutcome::Violated
//
// A check holds only where the worst case holds; without the value that it needs
// it is open and says what is missing: in the sheet, or in the user's files.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "risk/stated_values.h"
#include "risk/work_out.h"

namespace standin::risk {

struct CheckEntry {
    std::string_view id;         // "overcharge-upper"
    std::string_view title;
    std::string_view canonical;  // the parameter or feature whose finding it follows from
    model::Severity severity = model::Severity::Hazard;
    std::string_view caution;
    std::string_view violation;  // what it could do
};

// In the order of the checks.
[[nodiscard]] std::span<CheckEntry const> checkEntries();

// The parameter or feature of the vocabulary that a check of a comparison is about;
// empty where the check is none of these (a comparison of another version).
[[nodiscard]] std::string_view checkedBy(model::CellCheck const& check);

enum class MissingIn : std::uint8_t { Nothing, Sheet, Files };

struct PartCheck {
    std::string limit;  // in words; empty where nothing asks for anything
    std::optional<model::CheckBounds> bounds;  // in numbers, where a bench can measure the quantity
    model::CheckResult result;
    int level = 0;      // where it is violated, 1 … 4
    MissingIn missing = MissingIn::Nothing;  // where it is open
};

// One entry a check, in the order of checkEntries(). `around.cell` must be given.
[[nodiscard]] std::vector<PartCheck> checkPart(StatedValues const& values, Surroundings const& around, vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::risk
