// Of what subject a table is, and of what kind the parameters in it are.
#pragma once

#include <span>
#include <string_view>

#include "extractors/parameters/column_plan.h"
#include "extractors/parameters/table_text.h"
#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::parameters {

// The section a table stands in: by its id, else the last one that starts above it; null: none.
[[nodiscard]] model::Section const* sectionOf(model::Table const& table, std::span<model::Section const> sections);

// By head words, then content, then the section. `section` may be null.
[[nodiscard]] model::TableKind classifyTable(model::Table const& table, TableText const& text, ColumnPlan const& plan, model::Section const* section);

// By caption, the heading right above, lead, head and section; follows the table, not
// the single row. `page` is the table's, or null: then no heading is looked for.
[[nodiscard]] model::ParameterKind parameterKindOf(model::Table const& table, ColumnPlan const& plan, model::Section const* section, model::PageLayout const* page);

// What a heading says, for headings and captions in several languages; Other: nothing.
[[nodiscard]] model::ParameterKind kindSaid(std::string_view heading);

}  // namespace standin::parameters
