// The row of a sheet that an entry of corrections means. Private to this folder.
#pragma once

#include <string>
#include <string_view>

#include "extractors/corrections/correction_file.h"
#include "model/datasheet.h"

namespace standin::corrections {

// What the sheet says in a field; empty: nothing.
[[nodiscard]] std::string textOf(model::Parameter const& parameter, Field field);

// Equal but for blanks, letter case, width and the kind of dashes and quotes.
[[nodiscard]] bool sameText(std::string_view a, std::string_view b);

enum class Found { One, None, Several };

struct FoundRow {
    Found found = Found::None;
    std::size_t index = 0;  // into Datasheet::parameters, where one was found
};

// For entries of Set and Remove. Linear in the parameters.
[[nodiscard]] FoundRow findRow(model::Datasheet const& sheet, Entry const& entry);

// A row that says all that an entry of Add says.
[[nodiscard]] FoundRow findAdded(model::Datasheet const& sheet, Entry const& entry);

}  // namespace standin::corrections
