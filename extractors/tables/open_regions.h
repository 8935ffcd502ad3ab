// Regions of a page that are tables without column rules: told by a line of
// column titles, by lines whose pieces stand in columns, or by leaders.
#pragma once

#include <vector>

#include "extractors/tables/build_table.h"
#include "extractors/tables/rule_network.h"

namespace standin::tables {

// Top to bottom. `tables` are the ruled tables, `taken` their words.
[[nodiscard]] std::vector<Region> findOpenRegions(model::PageLayout const& page, RuleNetworks const& rules,
                                                  std::vector<model::Table> const& tables, std::vector<char> const& taken);

}  // namespace standin::tables
