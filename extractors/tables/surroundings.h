// What is printed right above a table and belongs to it: its caption and the
// line that states conditions for all of it.
#pragma once

#include <vector>

#include "model/page_layout.h"
#include "model/table.h"

namespace standin::tables {

// Sets `caption` and `lead` of every table. `taken`: words that stand in tables.
void readSurroundings(model::PageLayout const& page, std::vector<model::Table>& tables, std::vector<char> const& taken);

}  // namespace standin::tables
