// A cell belongs to the row it begins in. A parameter belongs to the row of the
// cell that holds its first value, found by the middle of the value's box.
//
// Tested by tests/src/compare/printed_rows_test.cpp.
#include "compare/printed_rows.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string_view>
#include <unordered_map>

namespace standin::compare {

namespace {

constexpr int kMostRows = 100000;  // of one table; a hostile table ends there

model::Rect placeOf(model::Parameter const& parameter) {
    for (auto const* value : {&parameter.min, &parameter.typ, &parameter.max}) {
        if (*value && !((*value)->box == model::Rect{})) return (*value)->box;
    }
    return parameter.box;
}

float distanceTo(model::Rect const& row, float y) { return y < row.y0 ? row.y0 - y : (y > row.y1 ? y - row.y1 : 0); }

}  // namespace

PrintedRows::PrintedRows(model::Datasheet const& sheet) {
    m_ofTable.reserve(sheet.tables.size());
    for (std::size_t t = 0; t < sheet.tables.size(); ++t) addTable(sheet.tables[t], static_cast<int>(t));
    m_tokens.resize(m_rows.size());
    for (std::size_t r = 0; r < m_rows.size(); ++r) m_ofPage[m_rows[r].page].push_back(static_cast<int>(r));
    attachParameters(sheet);
    for (auto const& pin : sheet.pins) markRead(pin.page, pin.box);
    for (auto const& line : sheet.ordering) markRead(line.page, line.box);
}

void PrintedRows::addTable(model::Table const& table, int index) {
    int const first = static_cast<int>(m_rows.size());
    int rowCount = 0;
    for (auto const& cell : table.cells) rowCount = std::max(rowCount, cell.row + 1);
    rowCount = std::min(rowCount, kMostRows);
    std::vector<PrintedRow> rows(static_cast<std::size_t>(std::max(rowCount, 0)));
    std::vector<std::string> joined(rows.size());
    std::vector<char> hasOwnBox(rows.size(), 0);
    for (auto const& cell : table.cells) {
        if (cell.row < 0 || cell.row >= rowCount) continue;
        auto& row = rows[static_cast<std::size_t>(cell.row)];
        auto& own = hasOwnBox[static_cast<std::size_t>(cell.row)];
        if (cell.rowSpan <= 1) {
            row.box = own != 0 ? model::united(row.box, cell.box) : cell.box;
            own = 1;
        } else if (own == 0) {
            row.box = model::united(row.box, cell.box);
        }
        if (cell.text.empty()) continue;
        row.head = row.head || cell.header;
        if (!row.text.empty()) {
            row.text += " | ";
            joined[static_cast<std::size_t>(cell.row)] += ' ';
        }
        row.text += cell.text;
        if (!cell.leader.empty()) row.text += ' ' + cell.leader;
        joined[static_cast<std::size_t>(cell.row)] += cell.text;
    }
    for (std::size_t r = 0; r < rows.size(); ++r) {
        if (rows[r].text.empty()) continue;
        rows[r].table = index;
        rows[r].row = static_cast<int>(r);
        rows[r].page = table.page;
        rows[r].key = keyOf(joined[r]);
        if (static_cast<int>(r) < table.headRows) rows[r].head = true;
        m_rows.push_back(std::move(rows[r]));
    }
    m_ofTable.emplace_back(first, static_cast<int>(m_rows.size()));
}

void PrintedRows::attachParameters(model::Datasheet const& sheet) {
    std::unordered_map<std::string, std::size_t> tableOf;
    for (std::size_t t = 0; t < sheet.tables.size(); ++t) tableOf.emplace(sheet.tables[t].id, t);
    m_ofParameter.assign(sheet.parameters.size(), -1);
    for (std::size_t p = 0; p < sheet.parameters.size(); ++p) {
        auto const& parameter = sheet.parameters[p];
        auto const found = parameter.table.empty() ? tableOf.end() : tableOf.find(parameter.table);
        if (found == tableOf.end()) continue;
        auto const [begin, end] = m_ofTable[found->second];
        float const y = placeOf(parameter).centre().y;
        int nearest = -1;
        float least = std::numeric_limits<float>::max();
        for (int r = begin; r < end; ++r) {
            float const distance = distanceTo(m_rows[static_cast<std::size_t>(r)].box, y);
            if (distance < least) {
                least = distance;
                nearest = r;
            }
        }
        if (nearest < 0) continue;
        m_ofParameter[p] = nearest;
        m_rows[static_cast<std::size_t>(nearest)].parameters.push_back(static_cast<int>(p));
        m_rows[static_cast<std::size_t>(nearest)].read = true;
    }
}

int PrintedRows::at(int page, model::Rect const& box) const {
    auto const found = m_ofPage.find(page);
    if (found == m_ofPage.end()) return -1;
    model::Point const centre = box.centre();
    for (int const r : found->second) {
        if (m_rows[static_cast<std::size_t>(r)].box.grown(0.5F).contains(centre)) return r;
    }
    return -1;
}

void PrintedRows::markRead(int page, model::Rect const& box) {
    int const row = at(page, box);
    if (row >= 0) m_rows[static_cast<std::size_t>(row)].read = true;
}

std::vector<Key> const& PrintedRows::tokens(int index) const {
    auto const& row = m_rows[static_cast<std::size_t>(index)];
    auto& list = m_tokens[static_cast<std::size_t>(index)];
    if (list.empty() && !row.text.empty()) list = tokensOf(row.text);
    return list;
}

std::vector<Key> PrintedRows::keys() const {
    std::vector<Key> keys;
    keys.reserve(m_rows.size());
    for (auto const& row : m_rows) keys.push_back(row.key);
    return keys;
}

bool printAlike(model::Parameter const& a, model::Parameter const& b) {
    auto const text = [](std::optional<model::Value> const& value) { return value ? std::string_view(value->text) : std::string_view(); };
    return a.name == b.name && a.symbol == b.symbol && a.condition == b.condition && a.unit == b.unit && text(a.min) == text(b.min) && text(a.typ) == text(b.typ) &&
           text(a.max) == text(b.max);
}

}  // namespace standin::compare
