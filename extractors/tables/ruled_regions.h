// Regions of a page that ruling lines mark as tables.
#pragma once

#include <vector>

#include "extractors/tables/build_table.h"
#include "extractors/tables/rule_network.h"

namespace standin::tables {

// Regions whose rules part rows and columns, small networks first. A network
// that holds several tables (a frame around a page, tables that touch) gives
// one region each; drawings, diagrams and empty boxes give none.
[[nodiscard]] std::vector<Region> findRuledRegions(model::PageLayout const& page, RuleNetworks const& rules);

}  // namespace standin::tables
