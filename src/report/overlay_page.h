// One page of the overlay as SVG. Private to report/.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "model/datasheet.h"
#include "model/page_layout.h"
#include "model/table.h"

namespace standin::report {

// What a cell of a specification table is in a parameter row.
enum class CellRole : std::uint8_t { None, Name, Symbol, Condition, Min, Typ, Max, Unit };

// By the parameter's texts and the boxes of its values; None where the cell stands
// in another row or says nothing that the parameter took up.
[[nodiscard]] CellRole roleIn(model::Parameter const& parameter, model::Cell const& cell);

// The page's <svg>: user units are points. `picture`: a data URI, or empty.
[[nodiscard]] std::string overlaySvg(model::Datasheet const& sheet, model::PageLayout const& page, std::string_view picture);

}  // namespace standin::report
