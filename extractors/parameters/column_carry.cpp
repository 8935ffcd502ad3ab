#include "extractors/parameters/column_carry.h"

// Each column is as wide as its cells that stand in it alone; its middle looks
// for the column above. Tested by tests/extractors/parameters/column_carry_test.cpp.

#include <algorithm>
#include <cmath>
#include <vector>

namespace standin::parameters {

namespace {

constexpr model::Points kSameSide = 4;  // points
constexpr model::Points kNear = 45;     // points between the two parts: a heading line or two

struct Reach {
    model::Points from = 0;
    model::Points to = 0;
    bool known = false;
};

std::vector<Reach> reachesOf(model::Table const& table) {
    std::vector<Reach> out(static_cast<std::size_t>(std::max(table.columns, 0)));
    for (model::Cell const& cell : table.cells) {
        if (cell.columnSpan != 1 || cell.column < 0 || cell.column >= table.columns) continue;
        Reach& reach = out[static_cast<std::size_t>(cell.column)];
        reach.from = reach.known ? std::min(reach.from, cell.box.x0) : cell.box.x0;
        reach.to = reach.known ? std::max(reach.to, cell.box.x1) : cell.box.x1;
        reach.known = true;
    }
    return out;
}

}  // namespace

std::optional<ColumnPlan> planFromAbove(model::Table const& table, model::Table const& above, ColumnPlan const& plan) {
    if (plan.roles.size() != static_cast<std::size_t>(std::max(above.columns, 0)) || !plan.headed || plan.transposed) return std::nullopt;
    if (above.page != table.page || table.box.y0 < above.box.y1 - kSameSide || table.box.y0 - above.box.y1 > kNear) return std::nullopt;
    if (std::abs(table.box.x0 - above.box.x0) > kSameSide || std::abs(table.box.x1 - above.box.x1) > kSameSide) return std::nullopt;
    std::vector<Reach> const upper = reachesOf(above);
    std::vector<Reach> const lower = reachesOf(table);
    ColumnPlan out;
    std::vector<int> columnOf(upper.size(), -1);  // of `above` -> of `table`
    for (std::size_t c = 0; c < lower.size(); ++c) {
        if (!lower[c].known) return std::nullopt;
        model::Points const middle = (lower[c].from + lower[c].to) / 2;
        auto const found = std::find_if(upper.begin(), upper.end(), [&](Reach const& reach) { return reach.known && middle >= reach.from && middle <= reach.to; });
        if (found == upper.end()) return std::nullopt;
        std::size_t const at = static_cast<std::size_t>(found - upper.begin());
        if (columnOf[at] >= 0) return std::nullopt;
        columnOf[at] = static_cast<int>(c);
        out.roles.push_back(plan.roles[at]);
        out.titles.push_back(plan.titles[at]);
        out.conditionOf.push_back(plan.conditionOf[at]);
    }
    auto moved = [&](int column) { return column >= 0 && static_cast<std::size_t>(column) < columnOf.size() ? columnOf[static_cast<std::size_t>(column)] : -1; };
    for (ValueGroup group : plan.groups) {
        for (int* column : {&group.min, &group.typ, &group.max, &group.single, &group.unit}) *column = moved(*column);
        if (group.min >= 0 || group.typ >= 0 || group.max >= 0 || group.single >= 0) out.groups.push_back(std::move(group));
    }
    if (out.groups.empty()) return std::nullopt;
    out.twins.assign(out.roles.size(), -1);
    for (std::size_t c = 0; c < plan.twins.size() && c < columnOf.size(); ++c) {
        if (columnOf[c] >= 0 && plan.twins[c] >= 0) out.twins[static_cast<std::size_t>(columnOf[c])] = moved(plan.twins[c]);
    }
    out.headed = true;
    out.carried = true;
    out.symbolIsOnlyName = plan.symbolIsOnlyName;
    out.reasons = plan.reasons;
    out.reasons.emplace_back("column titles taken from the part above");
    out.minTitle = plan.minTitle;
    out.typTitle = plan.typTitle;
    out.maxTitle = plan.maxTitle;
    out.valueTitle = plan.valueTitle;
    out.unitTitle = plan.unitTitle;
    out.nameTitle = plan.nameTitle;
    out.symbolTitle = plan.symbolTitle;
    return out;
}

}  // namespace standin::parameters
