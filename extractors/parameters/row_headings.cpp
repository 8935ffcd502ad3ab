#include "extractors/parameters/row_reader.h"

// A line without values is a heading, a condition for what follows, or a name
// whose values come below. Indentation tells what hangs under it. Tested by
// tests/extractors/parameters/table_rows_test.cpp.
#include <algorithm>
#include <cmath>
#include <optional>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"

namespace standin::parameters {

using enum ColumnRole;

namespace {

constexpr std::size_t kMostHeadings = 6;

// "QX20T; VCC = 4.5 V to 5.5 V": the part that a heading begins with, in front of its
// condition; empty where it begins with none.
std::string partInFront(std::string const& heading) {
    std::size_t const end = heading.find_first_of(";:,");
    if (end == std::string::npos) return {};
    std::string const part = trimmed(std::string_view(heading).substr(0, end));
    return isPartLike(part) && !isPackageLike(part) && !hasRelation(part) ? part : std::string();
}

// "XX7805" and "5 V regulator (XX7805)".
bool namesPart(std::string const& heading) {
    if (isPartLike(heading)) return !isPackageLike(heading);
    std::size_t const open = heading.rfind('(');
    if (!heading.ends_with(")") || open == 0 || open == std::string::npos) return false;
    std::string const inner = heading.substr(open + 1, heading.size() - open - 2);
    return isPartLike(inner) && !isPackageLike(inner);
}

// A heading that names a part in its first lines and states a condition in those below.
struct PartAndCondition {
    std::string part;
    std::string condition;
};

std::optional<PartAndCondition> partAboveCondition(CellText const& cell) {
    PartAndCondition out;
    for (CellLine const& line : cell.lines) {
        bool const states = !out.condition.empty() || hasRelation(line.text);
        std::string& text = states ? out.condition : out.part;
        text = joined(text, line.text);
    }
    if (out.condition.empty() || !startsWithCondition(out.condition) || !namesPart(out.part)) return std::nullopt;
    return out;
}

}  // namespace

std::string RowReader::prefix() const {
    std::string out = m_context.groupName;
    for (RowContext::Heading const& heading : m_context.headings) out = joined(out, heading.text);
    return out;
}

void RowReader::popHeadings(model::Points left, model::Points indent) {
    while (!m_context.headings.empty() && m_context.headings.back().left >= left - indent) m_context.headings.pop_back();
}

// What follows is for that part.
void RowReader::startPart(std::string const& part) {
    m_context.groupVariant = part;
    m_context.groupName.clear();
    m_context.headings.clear();
}

// A line without values: a heading, a condition for what follows, or a name whose values come below.
void RowReader::readHeading(int row, RowCells const& cells) {
    std::vector<int> starting;
    for (int index : cells.all) {
        if (cellOf(index).row == row && !saysNothing(textOf(index).text)) starting.push_back(index);
    }
    if (starting.empty()) return;
    if (starting.size() == 1) {
        int const index = starting.front();
        model::Cell const& cell = cellOf(index);
        ColumnRole const role = m_plan.roles[static_cast<std::size_t>(cell.column)];
        bool const whole = cell.columnSpan > 1 && cell.column + cell.columnSpan >= m_table.columns - 1;
        std::string const text = withoutBrackets(textOf(index).text);
        if (isValueRole(role) && !whole) return;
        if (cell.rowSpan > 1 && !whole) return;  // covers lines with values and is read there
        if (role == Unit || role == Note) return;
        if (isConditionLike(text)) {
            if (role == Condition && !whole) {
                addCondition(text);
                return;
            }
            if (auto const above = partAboveCondition(textOf(index))) {
                startPart(above->part);
                m_context.headingCondition = withoutBrackets(above->condition);
                return;
            }
            std::string const part = partInFront(text);
            m_context.headingCondition = part.empty() ? text : trimmed(std::string_view(text).substr(text.find_first_of(";:,") + 1));
            if (!part.empty()) m_context.groupVariant = part;
            return;
        }
        if (role == Condition && !whole) {
            addCondition(text);
            return;
        }
        if (isPartLike(text) && !isPackageLike(text)) {
            startPart(text);
            return;
        }
        if (text.size() > 160) return;  // a remark, not a heading
        // "(One amplifier)" goes on with the heading above
        if (textOf(index).text.starts_with("(") && textOf(index).text.ends_with(")") && !m_context.headings.empty()) {
            m_context.headings.back().text = joined(m_context.headings.back().text, textOf(index).text);
            return;
        }
        model::Points const left = textOf(index).left;
        model::Points const indent = (textOf(index).size > 0 ? textOf(index).size : kUsualSize) * kIndent;
        std::optional<model::Points> next;
        for (int below = row + 1; below < m_segment.bodyEnd && !next; ++below) {
            RowCells const cellsBelow = cellsOf(below);
            if (!cellsBelow.names.empty() && cellOf(cellsBelow.names.front()).row == below) next = textOf(cellsBelow.names.front()).left;
        }
        bool const sameColumn = !m_plan.roles.empty() && cell.column == 0;
        bool const indented = next && *next > left + indent && (sameColumn || role == Name) && m_plan.roles[0] != Symbol;
        popHeadings(left, indent);
        std::string const words = textOf(index).text;
        // without rules between rows a line over all columns may name what is indented below it
        bool const sibling = textOf(index).bold && m_context.groupBold && !m_context.groupName.empty() && std::abs(left - m_context.groupLeft) <= indent;
        bool const heads = indented && !sibling && (!whole || !m_table.evidence.ruledRows);
        if (heads && m_context.headings.size() < kMostHeadings) {
            m_context.headings.push_back({left, words});
        } else {
            m_context.headings.clear();
            m_context.groupName = words;
            m_context.groupLeft = left;
            m_context.groupBold = textOf(index).bold;
        }
        m_context.lastName.clear();
        m_context.lastSymbol.clear();
        m_context.parameterCondition.clear();
        return;
    }
    if (m_context.atTop && row == m_segment.bodyFirst) {
        bool only = true;
        std::string lateName;
        std::string lateCondition;
        for (int index : starting) {
            ColumnRole const role = m_plan.roles[static_cast<std::size_t>(cellOf(index).column)];
            only = only && cellOf(index).rowSpan == 1 && (role == Name || role == Condition);
            if (role == Name) lateName = joined(lateName, textOf(index).text);
            if (role == Condition) lateCondition = joined(lateCondition, textOf(index).text);
        }
        if (only && !lateName.empty() && !lateCondition.empty()) {
            m_context.lateName = lateName;
            m_context.lateCondition = lateCondition;
            return;
        }
    }
    // a name line whose values stand below it
    std::string name;
    std::string condition;
    for (int index : starting) {
        if (cellOf(index).rowSpan > 1) continue;
        ColumnRole const role = m_plan.roles[static_cast<std::size_t>(cellOf(index).column)];
        if (role == Name || role == Unknown) name = joined(name, textOf(index).text);
        if (role == Symbol) m_context.lastSymbol = textOf(index).text;
        if (role == Condition) condition = joined(condition, textOf(index).text);
        if (role == Unit) m_context.lastUnit = textOf(index).text;
    }
    if (!name.empty()) {
        popHeadings(textOf(starting.front()).left, indentOf(cells));
        m_nameUnit = takeNameUnit(name);
        m_context.lastName = name;
        m_context.lastPrefix = prefix();
        m_context.parameterCondition.clear();
        m_parameterStart = m_out.size();
    }
    int const key = nameCellOf(cells);
    if (key >= 0 && key != m_nameCell) {
        m_nameCell = key;
        m_parameterStart = m_out.size();
        m_context.parameterCondition.clear();
    }
    if (!condition.empty()) addCondition(condition);
}

void RowReader::addCondition(std::string const& text) {
    m_context.parameterCondition = m_conditionUsed ? text : joined(m_context.parameterCondition, text);
    m_conditionUsed = false;
}

}  // namespace standin::parameters
