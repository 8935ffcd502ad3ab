// Tables that lie on their side: each column is a parameter, and the first column
// says what stands in each line.
//
//     Parameter | Threshold | Delay
//     Min       |    1.10   |  4.5
//     Max       |    1.30   |  7.5
//     Unit      |     V     |  ms
#pragma once

#include <optional>

#include "extractors/parameters/table_text.h"
#include "model/table.h"

namespace standin::parameters {

// The table set upright, rows for columns, its cells in the same order; nothing
// where it stands upright already or does not say clearly that it does not.
[[nodiscard]] std::optional<model::Table> setUpright(model::Table const& table, TableText const& text);

}  // namespace standin::parameters
