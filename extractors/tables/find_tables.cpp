// Ruled regions first (small networks before the frames around them), then what
// white space tells in the rest of the page; last the captions and leads.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/find_tables.h"

#include <algorithm>
#include <string>

#include "extractors/tables/build_table.h"
#include "extractors/tables/open_regions.h"
#include "extractors/tables/rule_network.h"
#include "extractors/tables/ruled_regions.h"
#include "extractors/tables/surroundings.h"

namespace standin::tables {

using model::PageLayout;
using model::Table;

namespace {

void judge(Table& table) {
    double confidence = 0.5;
    auto const& e = table.evidence;
    if (e.ruledColumns && e.ruledRows) {
        confidence += 0.3;
        table.reasons.emplace_back("rules part rows and columns");
    } else if (e.ruledColumns) {
        confidence += 0.2;
        table.reasons.emplace_back("rules part columns");
    } else if (e.ruledRows) {
        confidence += 0.15;
        table.reasons.emplace_back("rules part rows");
    }
    if (e.headWords) {
        confidence += 0.15;
        table.reasons.emplace_back("known column titles");
    }
    if (e.aligned) table.reasons.emplace_back("columns stand apart by white space");
    if (e.leaders) table.reasons.emplace_back("leaders join names and values");
    table.confidence = std::min(confidence, 0.98);
}

}  // namespace

std::vector<Table> findTables(PageLayout const& page) {
    std::vector<Table> tables;
    if (page.words.empty()) return tables;
    std::vector<char> taken(page.words.size(), 0);
    auto const rules = findRuleNetworks(page);
    auto accept = [&](Region const& region) {
        auto table = buildTable(page, region, taken);
        if (!table) return;
        judge(*table);
        tables.push_back(std::move(*table));
    };
    for (auto const& region : findRuledRegions(page, rules)) accept(region);
    for (auto const& region : findOpenRegions(page, rules, tables, taken)) accept(region);
    std::sort(tables.begin(), tables.end(), [](Table const& a, Table const& b) { return a.box.y0 != b.box.y0 ? a.box.y0 < b.box.y0 : a.box.x0 < b.box.x0; });
    readSurroundings(page, tables, taken);
    return tables;
}

}  // namespace standin::tables
