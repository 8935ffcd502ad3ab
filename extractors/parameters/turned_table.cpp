// The titles of a head, each once, from top to bottom of the first column: two of
// minimum, typical and maximum among them, and one that names or has the unit. An
// upright table whose lines are named "Min", "Typ", "Max" repeats them for each parameter.
// Tested by tests/extractors/parameters/turned_table_test.cpp.
#include "extractors/parameters/turned_table.h"

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include "extractors/parameters/head_words.h"

namespace standin::parameters {

namespace {

using enum ColumnRole;

constexpr int kFewestParameters = 2;
constexpr int kFewestLimits = 2;

// What each line holds; empty where a line of values says nothing known, or two the same.
std::vector<ColumnRole> rolesOfLines(TableText const& text) {
    std::vector<ColumnRole> roles;
    for (int row = 0; row < text.rows; ++row) {
        int const index = text.at(row, 0);
        std::string_view const title = index < 0 ? std::string_view() : text.cells[static_cast<std::size_t>(index)].text;
        ColumnRole const role = columnRoleOf(title);
        if (role == Unknown && (row > 0 || !title.empty())) return {};
        if (role != Unknown && std::ranges::find(roles, role) != roles.end()) return {};
        roles.push_back(role);
    }
    return roles;
}

bool liesOnItsSide(TableText const& text) {
    if (text.columns <= kFewestParameters) return false;
    auto const roles = rolesOfLines(text);
    auto const has = [&](ColumnRole role) { return std::ranges::find(roles, role) != roles.end(); };
    return has(Min) + has(Typ) + has(Max) >= kFewestLimits && (has(Unit) || has(Symbol) || has(Name));
}

}  // namespace

std::optional<model::Table> setUpright(model::Table const& table, TableText const& text) {
    if (!liesOnItsSide(text)) return std::nullopt;
    model::Table upright = table;
    std::swap(upright.rows, upright.columns);
    std::swap(upright.evidence.ruledRows, upright.evidence.ruledColumns);
    upright.headRows = 1;
    for (auto& cell : upright.cells) {
        std::swap(cell.row, cell.column);
        std::swap(cell.rowSpan, cell.columnSpan);
        cell.header = cell.row == 0;
    }
    return upright;
}

}  // namespace standin::parameters
