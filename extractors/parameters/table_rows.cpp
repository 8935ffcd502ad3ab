#include "extractors/parameters/table_rows.h"

// Row by row: collect the cells that cover the row by role, decide whether the
// row is a heading, then give each value group with content one PrintedRow.
// Indented lines under a line without values hang under it. Tested by
// tests/extractors/parameters/table_rows_test.cpp.

#include <algorithm>
#include <cmath>
#include <optional>

#include "extractors/parameters/name_parts.h"
#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/parameters/value_cell.h"

namespace standin::parameters {

namespace {

using enum ColumnRole;

constexpr float kIndent = 0.45F;       // font heights that count as indented
constexpr float kUsualSize = 9.0F;     // where no font size is known
constexpr std::size_t kMostHeadings = 6;

// "o C/W" (a raised o for the degree sign), gaps and brackets: as a unit is printed.
std::string tidyUnit(std::string const& printed) {
    std::string unit = withoutBrackets(printed);
    for (std::string_view raised : {"o C", "oC", "O C", "ºC", "0C"}) {
        if (unit.starts_with(raised)) unit = "°C" + unit.substr(raised.size());
        std::string const behind = "/" + std::string(raised);
        if (unit.ends_with(behind)) unit = unit.substr(0, unit.size() - raised.size()) + "°C";
    }
    return unit;
}

bool isValueRole(ColumnRole role) { return role == Min || role == Typ || role == Max || role == Value; }

// The cells of one row by what they hold.
struct RowCells {
    std::vector<int> names, symbols, conditions, parts, packages, units, notes, values, all;
};

class RowReader {
public:
    RowReader(model::Table const& table, TableText const& text, model::PageLayout const* page, Segment const& segment, ColumnPlan const& plan,
              std::string const& tableCondition, RowContext& context)
        : m_table(table), m_text(text), m_page(page), m_segment(segment), m_plan(plan), m_tableCondition(tableCondition), m_context(context) {}

    std::vector<PrintedRow> read();

private:
    [[nodiscard]] RowCells cellsOf(int row) const;
    [[nodiscard]] CellText const& textOf(int index) const { return m_text.cells[static_cast<std::size_t>(index)]; }
    [[nodiscard]] model::Cell const& cellOf(int index) const { return m_table.cells[static_cast<std::size_t>(index)]; }
    [[nodiscard]] bool hasValues(int row, RowCells const& cells) const;
    [[nodiscard]] std::optional<model::Points> nameLeft(RowCells const& cells) const;
    [[nodiscard]] model::Points indentOf(RowCells const& cells) const;
    void readHeading(int row, RowCells const& cells);
    void readValues(int row, RowCells const& cells);
    [[nodiscard]] std::string prefix() const;
    [[nodiscard]] model::Rect wordsBox(int index) const;
    [[nodiscard]] bool selectsByColumn(int index) const;
    void addCondition(std::string const& text);
    [[nodiscard]] int nameCellOf(RowCells const& cells) const;
    void popHeadings(model::Points left, model::Points indent);
    void decideSymbolPlace();
    static void takeSelected(std::string& name, std::string& variant);
    void takeTrailingChild(int row, std::string& name, std::string& variant, std::string& condition) const;
    void putValues(PrintedRow& row, ValueGroup const& group, int tableRow, std::string const& columnUnit);
    [[nodiscard]] Slot slotOfSpan(int index, ValueGroup const& group) const;

    model::Table const& m_table;
    TableText const& m_text;
    model::PageLayout const* m_page;
    Segment const& m_segment;
    ColumnPlan const& m_plan;
    std::string const& m_tableCondition;
    RowContext& m_context;
    std::vector<PrintedRow> m_out;
    SymbolPlace m_symbolPlace = SymbolPlace::None;
    // Units printed once for several lines of one parameter.
    std::size_t m_parameterStart = 0;
    int m_nameCell = -1;            // the cell that names the parameter at hand
    bool m_conditionUsed = false;   // values stood below the last condition line
};

RowCells RowReader::cellsOf(int row) const {
    RowCells out;
    int last = -1;
    for (int column = 0; column < m_text.columns; ++column) {
        int const index = m_text.at(row, column);
        if (index < 0 || index == last) continue;
        last = index;
        if (textOf(index).text.empty()) continue;
        out.all.push_back(index);
        switch (m_plan.roles[static_cast<std::size_t>(cellOf(index).column)]) {
            case Name:
            case PinName:
            case Unknown: out.names.push_back(index); break;
            case Symbol: out.symbols.push_back(index); break;
            case Condition: out.conditions.push_back(index); break;
            case Part: out.parts.push_back(index); break;
            case Package: out.packages.push_back(index); break;
            case Unit: out.units.push_back(index); break;
            case Note: out.notes.push_back(index); break;
            case Min:
            case Typ:
            case Max:
            case Value: out.values.push_back(index); break;
            case Pin:
            case Ignored: break;
        }
    }
    return out;
}

bool RowReader::hasValues(int row, RowCells const& cells) const {
    for (int index : cells.values) {
        if (cellOf(index).row == row && !saysNothing(textOf(index).text)) return true;
    }
    return false;
}

std::optional<model::Points> RowReader::nameLeft(RowCells const& cells) const {
    for (int index : cells.names) return textOf(index).left;
    return std::nullopt;
}

model::Points RowReader::indentOf(RowCells const& cells) const {
    for (int index : cells.names) {
        if (textOf(index).size > 0) return textOf(index).size * kIndent;
    }
    return kUsualSize * kIndent;
}

std::string RowReader::prefix() const {
    std::string out = m_context.groupName;
    for (RowContext::Heading const& heading : m_context.headings) out = joined(out, heading.text);
    return out;
}

model::Rect RowReader::wordsBox(int index) const {
    model::Cell const& cell = cellOf(index);
    if (m_page == nullptr || cell.words.empty()) return cell.box;
    model::Rect box;
    for (std::uint32_t word : cell.words) {
        if (word < m_page->words.size()) box = model::united(box, m_page->words[word].box);
    }
    return box;
}

void RowReader::popHeadings(model::Points left, model::Points indent) {
    while (!m_context.headings.empty() && m_context.headings.back().left >= left - indent) m_context.headings.pop_back();
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
            } else {
                m_context.headingCondition = text;
            }
            return;
        }
        if (role == Condition && !whole) {
            addCondition(text);
            return;
        }
        if (isPartLike(text) && !isPackageLike(text)) {
            m_context.groupVariant = text;
            m_context.groupName.clear();
            m_context.headings.clear();
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
        if (indented && !whole && m_context.headings.size() < kMostHeadings) {
            m_context.headings.push_back({left, words});
        } else {
            m_context.headings.clear();
            m_context.groupName = words;
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

// "1234A", "1234B" below each other in a sub-column of the conditions: digits in
// common, another letter behind. One alone could be an amount.
bool RowReader::selectsByColumn(int index) const {
    auto split = [](std::string const& text) {
        std::size_t digits = 0;
        while (digits < text.size() && text[digits] >= '0' && text[digits] <= '9') ++digits;
        bool const fits = digits >= 3 && text.size() > digits && text.size() <= digits + 2;
        for (std::size_t i = digits; i < text.size(); ++i) {
            if (text[i] < 'A' || text[i] > 'Z') return std::string{};
        }
        return fits ? text.substr(0, digits) : std::string{};
    };
    std::string const own = split(textOf(index).text);
    if (own.empty()) return false;
    for (int row = m_segment.bodyFirst; row < m_segment.bodyEnd; ++row) {
        int const other = m_text.at(row, cellOf(index).column);
        if (other >= 0 && other != index && split(textOf(other).text) == own && textOf(other).text != textOf(index).text) return true;
    }
    return false;
}

void RowReader::addCondition(std::string const& text) {
    m_context.parameterCondition = m_conditionUsed ? text : joined(m_context.parameterCondition, text);
    m_conditionUsed = false;
}

int RowReader::nameCellOf(RowCells const& cells) const { return !cells.names.empty() ? cells.names.back() : !cells.symbols.empty() ? cells.symbols.back() : -1; }

// Which column a cell that spans several value columns belongs to.
Slot RowReader::slotOfSpan(int index, ValueGroup const& group) const {
    model::Cell const& cell = cellOf(index);
    auto covered = [&](int column) { return column >= cell.column && column < cell.column + cell.columnSpan; };
    int const count = (group.min >= 0 && covered(group.min) ? 1 : 0) + (group.typ >= 0 && covered(group.typ) ? 1 : 0) + (group.max >= 0 && covered(group.max) ? 1 : 0);
    if (count >= 2) return Slot::Single;
    int const columns = (group.min >= 0 ? 1 : 0) + (group.typ >= 0 ? 1 : 0) + (group.max >= 0 ? 1 : 0);
    // the only value column holds whole ranges; so does a range in a maximum column
    if (group.max >= 0 && covered(group.max) && (columns == 1 || readValueCell(textOf(index).text, Slot::Single).form == ValueForm::Range)) return Slot::Single;
    if (group.min >= 0 && covered(group.min) && columns == 1 && readValueCell(textOf(index).text, Slot::Single).form == ValueForm::Range) return Slot::Single;
    if (group.min >= 0 && covered(group.min)) return Slot::Min;
    if (group.typ >= 0 && covered(group.typ)) return Slot::Typ;
    if (group.max >= 0 && covered(group.max)) return Slot::Max;
    return Slot::Single;
}

void RowReader::putValues(PrintedRow& out, ValueGroup const& group, int tableRow, std::string const& columnUnit) {
    std::vector<int> cells;
    for (int column : {group.min, group.typ, group.max, group.single}) {
        int const index = column >= 0 ? m_text.at(tableRow, column) : -1;
        if (index >= 0 && std::ranges::find(cells, index) == cells.end()) cells.push_back(index);
    }
    std::vector<std::string> units;
    struct Read {
        int index;
        Slot slot;
        ValueCell value;
    };
    std::vector<Read> reads;
    for (int index : cells) {
        std::string const& words = textOf(index).text;
        if (saysNothing(words)) continue;
        Slot slot = slotOfSpan(index, group);
        if (slot == Slot::Single && group.single < 0 && cellOf(index).columnSpan == 1 && group.min >= 0 && index != m_text.at(tableRow, group.min)) {
            int const minimum = m_text.at(tableRow, group.min);
            if (minimum >= 0 && !saysNothing(textOf(minimum).text)) slot = Slot::Max;
        }
        ValueCell value = readValueCell(words, slot, columnUnit);
        if (value.form == ValueForm::Nothing) continue;
        if (!value.unit.empty()) units.push_back(value.unit);
        reads.push_back({index, slot, std::move(value)});
    }
    bool mixed = false;
    for (Read const& read : reads) mixed = mixed || read.value.mixedUnits;
    for (std::size_t i = 1; i < units.size(); ++i) mixed = mixed || folded(units[i]) != folded(units[0]);
    for (Read& read : reads) {
        model::Rect const box = wordsBox(read.index);
        auto put = [&](std::optional<model::Value>& slot, std::string text) {
            if (text.empty()) return;
            if (mixed && !read.value.mixedUnits && !read.value.unit.empty()) text += read.value.unit;
            model::Value value;
            value.text = std::move(text);
            value.printed = cellOf(read.index).text.empty() ? textOf(read.index).text : cellOf(read.index).text;
            value.box = box;
            slot = std::move(value);
        };
        put(out.min, read.value.min);
        put(out.typ, read.value.typ);
        put(out.max, read.value.max);
        out.words = out.words || read.value.form == ValueForm::Words;
        out.expression = out.expression || read.value.form == ValueForm::Expression;
        if (!read.value.label.empty()) out.variant = read.value.label;
        bool const lone = group.single < 0 && ((group.min >= 0) + (group.typ >= 0) + (group.max >= 0)) == 1;
        if (read.slot == Slot::Single && group.single < 0 && !lone) out.doubts.emplace_back("a value spans several value columns");
        for (std::string const& mark : textOf(read.index).marks) out.marks.push_back(mark);
        out.cells.push_back(read.index);
        out.box = model::united(out.box, box);
    }
    if (mixed) {
        out.unit.clear();
        out.doubts.emplace_back("several units in one line");
    } else if (!units.empty()) {
        out.unit = units.front();
    } else {
        out.unit = columnUnit;
    }
}

// "Ambient temperature XX224" above lines "XX324", "XX2902": the first of several
// selecting lines may have run into the name.
void RowReader::takeTrailingChild(int row, std::string& name, std::string& variant, std::string& condition) const {
    if (row + 1 >= m_segment.bodyEnd || name.empty()) return;
    RowCells const below = cellsOf(row + 1);
    if (below.names.empty() || cellOf(below.names.front()).row != row + 1 || !hasValues(row + 1, below)) return;
    std::string const next = withoutBrackets(textOf(below.names.front()).text);
    auto isCase = [](std::string const& text) { return folded(text).starts_with("case ") && isPackageLike(text); };
    bool const parts = isPartLike(next) && !isPackageLike(next);
    if (!parts && !isCase(next)) return;
    std::vector<std::string> const words = splitAtSpaces(name);
    for (std::size_t count = std::min<std::size_t>(words.size() - 1, 6); count >= 1; --count) {
        std::string tail;
        for (std::size_t i = words.size() - count; i < words.size(); ++i) tail = joined(tail, words[i]);
        bool const fits = parts ? isPartLike(tail) && !isPackageLike(tail) : isCase(tail);
        if (!fits) continue;
        if (parts) {
            variant = joined(variant, tail);
        } else {
            condition = joined(condition, tail);
        }
        name = trimmed(std::string_view(name).substr(0, name.size() - tail.size()));
        while (!name.empty() && name.back() == ',') name.pop_back();
        return;
    }
}

// "Leakage current (VO = 50 V) All types": what stands behind a condition in
// brackets selects the part.
void RowReader::takeSelected(std::string& name, std::string& variant) {
    std::size_t const close = name.rfind(')');
    if (close == std::string::npos || close + 1 >= name.size()) return;
    std::size_t const open = name.find('(');
    std::string const tail = trimmed(std::string_view(name).substr(close + 1));
    if (open == std::string::npos || !hasRelation(name.substr(open, close - open)) || !isPartLike(tail)) return;
    variant = joined(variant, tail);
    name.resize(close + 1);
}

void RowReader::readValues(int row, RowCells const& cells) {
    // name
    std::string name;
    std::string subVariant;
    std::vector<std::string> marks;
    bool ownName = false;
    bool first = true;
    std::string rowCondition;
    for (int index : cells.names) {
        CellText const& cell = textOf(index);
        marks.insert(marks.end(), cell.marks.begin(), cell.marks.end());
        ownName = ownName || cellOf(index).row == row || cellOf(index).rowSpan > 1;
        if (!first && isPartLike(withoutBrackets(cell.text)) && !isPackageLike(cell.text)) {
            subVariant = joined(subVariant, withoutBrackets(cell.text));
        } else if (!first && isConditionLike(cell.text)) {
            rowCondition = joined(rowCondition, withoutBrackets(cell.text));
        } else {
            name = joined(name, cell.text);
        }
        first = false;
    }
    std::string symbol;
    for (int index : cells.symbols) {
        symbol = joined(symbol, textOf(index).text);
        marks.insert(marks.end(), textOf(index).marks.begin(), textOf(index).marks.end());
    }
    while (!symbol.empty() && (symbol.back() == ',' || symbol.back() == ';' || symbol.back() == ':')) symbol.pop_back();
    if (saysNothing(symbol)) symbol.clear();
    if (saysNothing(name)) name.clear();

    model::Points const left = nameLeft(cells).value_or(m_context.lastLeft);
    model::Points const indent = indentOf(cells);
    if (!name.empty()) popHeadings(left, indent);

    // condition in its own column
    std::string condition;
    std::size_t conditionCells = 0;
    for (int index : cells.conditions) {
        CellText const& cell = textOf(index);
        marks.insert(marks.end(), cell.marks.begin(), cell.marks.end());
        if (saysNothing(cell.text)) continue;
        if (selectsByColumn(index)) {
            subVariant = joined(subVariant, withoutBrackets(cell.text));
            continue;
        }
        // a sub-column of the conditions that selects the part
        int const column = cellOf(index).column;
        bool const further = cells.conditions.size() > 1 || (column > 0 && m_plan.roles[static_cast<std::size_t>(column - 1)] == Condition);
        if (further && isPartLike(withoutBrackets(cell.text)) && !isPackageLike(cell.text)) {
            subVariant = joined(subVariant, withoutBrackets(cell.text));
            continue;
        }
        std::string const& heading = m_plan.conditionOf[static_cast<std::size_t>(cellOf(index).column)];
        condition = joined(condition, heading.empty() || hasRelation(cell.text) ? cell.text : heading + " = " + cell.text);
        ++conditionCells;
    }
    for (int index : cells.packages) condition = joined(condition, textOf(index).text);
    for (int index : cells.parts) subVariant = joined(subVariant, textOf(index).text);

    takeTrailingChild(row, name, subVariant, rowCondition);
    takeSelected(name, subVariant);
    bool const carriesOn = name.empty() && symbol.empty();
    std::string carriedPrefix;
    bool child = false;
    if (carriesOn) {
        name = m_context.lastName;
        symbol = m_context.lastSymbol;
        carriedPrefix = m_context.lastPrefix;
    } else if (!name.empty()) {
        std::string const bare = withoutBrackets(name);
        bool const hangs = !m_context.lastName.empty() || !m_context.headings.empty();
        bool const wholeCondition = hasRelation(bare) && !hasOrdinaryWord(bare.substr(0, bare.find_first_of("=<>")));
        bool const casePackage = folded(bare).starts_with("case ") && isPackageLike(bare);
        if (hangs && (wholeCondition || casePackage)) {
            rowCondition = joined(bare, rowCondition);
            child = true;
        } else if (hangs && isPartLike(bare) && !isPackageLike(bare)) {
            subVariant = joined(bare, subVariant);
            child = true;
        }
        if (child) {
            if (!m_context.headings.empty()) {
                name = m_context.headings.back().text;
                std::string before = m_context.groupName;
                for (std::size_t i = 0; i + 1 < m_context.headings.size(); ++i) before = joined(before, m_context.headings[i].text);
                carriedPrefix = before;
                std::string const fromHeading = takeCondition(name);
                rowCondition = joined(fromHeading, rowCondition);
            } else {
                name = m_context.lastName;
                carriedPrefix = m_context.lastPrefix;
            }
            if (symbol.empty()) symbol = m_context.lastSymbol;
        }
    } else if (!m_table.evidence.ruledRows && cells.names.empty()) {
        // a further symbol of the parameter above
        carriedPrefix = m_context.lastPrefix;
        name = m_context.lastName;
    }
    bool const fresh = !carriesOn && !child;
    bool const further = fresh && nameCellOf(cells) >= 0 && nameCellOf(cells) == m_nameCell;  // a merged name goes on
    m_nameCell = nameCellOf(cells) >= 0 ? nameCellOf(cells) : m_nameCell;
    if (further) carriedPrefix = prefix();
    if (fresh && !further) {
        m_context.parameterCondition.clear();
        m_parameterStart = m_out.size();
        carriedPrefix = prefix();
    }

    std::string ownSymbol = symbol;
    if (fresh && !name.empty()) {
        rowCondition = joined(takeCondition(name), rowCondition);
        if (ownSymbol.empty() && !m_plan.has(Symbol)) {
            SymbolPlace const place = symbolPlace(name);
            if (place == SymbolPlace::BehindSet || (place != SymbolPlace::None && place == m_symbolPlace)) ownSymbol = takeSymbol(name, place);
        }
    }
    condition = joined(rowCondition, condition);

    if (!name.empty() || !ownSymbol.empty()) {
        m_context.lastName = name;
        m_context.lastSymbol = ownSymbol;
        m_context.lastPrefix = carriedPrefix;
        if (!child) m_context.lastLeft = left;
    }

    m_conditionUsed = true;
    for (ValueGroup const& group : m_plan.groups) {
        bool any = false;
        bool starts = false;
        for (int column : {group.min, group.typ, group.max, group.single}) {
            int const index = column >= 0 ? m_text.at(row, column) : -1;
            if (index < 0 || saysNothing(textOf(index).text)) continue;
            any = true;
            starts = starts || cellOf(index).row == row;
        }
        if (!any || !starts) continue;
        PrintedRow out;
        std::string unit;
        int const unitCell = group.unit >= 0 ? m_text.at(row, group.unit) : -1;
        if (unitCell >= 0 && !saysNothing(textOf(unitCell).text)) {
            unit = tidyUnit(textOf(unitCell).text);
            out.cells.push_back(unitCell);
            marks.insert(marks.end(), textOf(unitCell).marks.begin(), textOf(unitCell).marks.end());
        }
        if (unit.empty()) unit = group.unitInTitle;
        putValues(out, group, row, unit);
        if (out.unit.empty() && !carriesOn && !child) m_context.lastUnit.clear();
        if (!out.min && !out.typ && !out.max) continue;

        std::string variant = !subVariant.empty() ? subVariant : m_context.groupVariant;
        bool const alone = !subVariant.empty() && isPartLike(group.variant);
        if (!alone) variant = joined(variant, group.variant);
        out.variant = out.variant.empty() ? variant : joined(variant, out.variant);

        if (m_plan.transposed) {
            out.name = group.name;
            out.symbol = group.symbol;
            out.condition = joined(name, condition);
        } else {
            out.name = joined(carriedPrefix, name);
            out.symbol = ownSymbol;
            out.condition = condition;
        }
        if (out.condition.empty() && out.name.empty() && out.symbol.empty()) out.doubts.emplace_back("no name and no symbol");
        out.tableCondition = joined(joined(joined(m_tableCondition, m_context.headingCondition), group.condition), m_context.parameterCondition);
        out.marks.insert(out.marks.end(), marks.begin(), marks.end());
        for (int index : cells.all) {
            if (std::ranges::find(out.cells, index) == out.cells.end() && !isValueRole(m_plan.roles[static_cast<std::size_t>(cellOf(index).column)])) out.cells.push_back(index);
        }
        for (int index : cells.all) {
            out.printed += (out.printed.empty() ? "" : " | ") + (cellOf(index).text.empty() ? textOf(index).text : cellOf(index).text);
            if (cellOf(index).row == row && cellOf(index).rowSpan == 1) out.box = model::united(out.box, wordsBox(index));
        }
        if (carriesOn && !m_table.evidence.ruledRows) out.doubts.emplace_back("name carried from the line above");
        m_out.push_back(std::move(out));
    }
    // a unit printed once for several lines of one parameter
    if (!m_out.empty() && m_parameterStart < m_out.size()) {
        std::string only;
        for (std::size_t i = m_parameterStart; i < m_out.size(); ++i) {
            if (!m_out[i].unit.empty()) only = m_out[i].unit;
        }
        if (only.empty()) only = m_context.lastUnit;
        for (std::size_t i = m_parameterStart; i < m_out.size() && !only.empty(); ++i) {
            if (m_out[i].unit.empty() && !m_out[i].words) m_out[i].unit = only;
        }
    }
}

void RowReader::decideSymbolPlace() {
    if (m_plan.has(Symbol)) return;
    int names = 0;
    int behind = 0;
    int inFront = 0;
    for (int row = m_segment.bodyFirst; row < m_segment.bodyEnd; ++row) {
        RowCells const cells = cellsOf(row);
        if (cells.names.empty() || cellOf(cells.names.front()).row != row || !hasValues(row, cells)) continue;
        ++names;
        std::string name = textOf(cells.names.front()).text;
        (void)takeCondition(name);
        SymbolPlace const place = symbolPlace(name);
        if (place == SymbolPlace::Behind || place == SymbolPlace::BehindSet) ++behind;
        if (place == SymbolPlace::InFront) ++inFront;
    }
    if (behind * 2 > names) m_symbolPlace = SymbolPlace::Behind;
    if (inFront * 2 > names) m_symbolPlace = SymbolPlace::InFront;
}

std::vector<PrintedRow> RowReader::read() {
    decideSymbolPlace();
    for (int row = m_segment.bodyFirst; row < m_segment.bodyEnd; ++row) {
        RowCells const cells = cellsOf(row);
        if (hasValues(row, cells)) {
            readValues(row, cells);
        } else {
            readHeading(row, cells);
        }
    }
    return std::move(m_out);
}

}  // namespace

std::vector<PrintedRow> readRows(model::Table const& table, TableText const& text, model::PageLayout const* page, Segment const& segment, ColumnPlan const& plan,
                                 std::string const& tableCondition, RowContext& context) {
    return RowReader(table, text, page, segment, plan, tableCondition, context).read();
}

}  // namespace standin::parameters
