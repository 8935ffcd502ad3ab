#include "extractors/parameters/row_reader.h"

// A line of values: its name with what hangs in it, its conditions, and one
// PrintedRow for each value group that is filled. Tested by
// tests/extractors/parameters/table_rows_test.cpp.
#include <algorithm>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "quantity/decimal.h"

namespace standin::parameters {

using enum ColumnRole;

namespace {

// "ΔVO" above "VO" or "ΔTJ" in one cell is a quotient, whatever the bar between is drawn with. Beside several rows
// changes of one quantity ("ΔVLINE" above "ΔVLOAD") are a list.
std::string symbolIn(CellText const& cell, int rows) {
    constexpr std::string_view kDelta = "Δ";
    if (cell.lines.size() != 2) return cell.text;
    std::string const& above = cell.lines[0].text;
    std::string const& below = cell.lines[1].text;
    if (contains(above, "/")) return cell.text;
    bool const part = above.starts_with(kDelta) && std::string_view(above).substr(kDelta.size()) == below;
    bool const change = above.starts_with(kDelta) && below.starts_with(kDelta) && above != below && !contains(above, ",") && isSymbolLike(below);
    bool const list = rows > 1 && change && std::string_view(above).substr(0, kDelta.size() + 1) == std::string_view(below).substr(0, kDelta.size() + 1);
    return part || (change && !list) ? above + "/" + below : cell.text;
}

// Named as a minimum, or typically above its limit: a column of plain limits holds either.
bool limitsFromBelow(PrintedRow const& row) {
    if (!row.max) return false;
    if (folded(row.name).starts_with("minimum ")) return true;
    auto const typ = row.typ ? quantity::Decimal::parse(row.typ->text) : std::nullopt;
    auto const max = quantity::Decimal::parse(row.max->text);
    return typ && max && *typ > *max;
}

}  // namespace

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

// Which column a cell that spans several value columns belongs to.
Slot RowReader::slotOfSpan(int index, ValueGroup const& group) const {
    model::Cell const& cell = cellOf(index);
    auto within = [&](int column) { return column >= cell.column && column < cell.column + cell.columnSpan; };
    auto covered = [&](int column) {
        std::size_t const at = static_cast<std::size_t>(column);
        return within(column) || (at < m_plan.twins.size() && m_plan.twins[at] >= 0 && within(m_plan.twins[at]));
    };
    int const count = (group.min >= 0 && covered(group.min) ? 1 : 0) + (group.typ >= 0 && covered(group.typ) ? 1 : 0) + (group.max >= 0 && covered(group.max) ? 1 : 0);
    if (count >= 2) return Slot::Single;
    int const columns = (group.min >= 0 ? 1 : 0) + (group.typ >= 0 ? 1 : 0) + (group.max >= 0 ? 1 : 0);
    // the only value column holds whole ranges; so does a range in a maximum column
    if (group.max >= 0 && covered(group.max) && (columns == 1 || readValueCell(textOf(index).text, Slot::Single).form == ValueForm::Range)) return Slot::Single;
    if (group.min >= 0 && covered(group.min) && group.max < 0 && readValueCell(textOf(index).text, Slot::Single).form == ValueForm::Range) return Slot::Single;
    if (group.min >= 0 && covered(group.min)) return Slot::Min;
    if (group.typ >= 0 && covered(group.typ)) return Slot::Typ;
    if (group.max >= 0 && covered(group.max)) return Slot::Max;
    return Slot::Single;
}

// The cell of a value column in that row, or of its other half; -1: none.
int RowReader::valueAt(int row, int column) const {
    if (column < 0) return -1;
    int const index = m_text.at(row, column);
    int const twin = static_cast<std::size_t>(column) < m_plan.twins.size() ? m_plan.twins[static_cast<std::size_t>(column)] : -1;
    bool const blank = index < 0 || saysNothing(textOf(index).text);
    return blank && twin >= 0 ? m_text.at(row, twin) : index;
}

// Some value of the group begins in that row.
bool RowReader::startsValue(int row, ValueGroup const& group) const {
    for (int column : {group.min, group.typ, group.max, group.single}) {
        int const index = valueAt(row, column);
        if (index >= 0 && cellOf(index).row == row && !saysNothing(textOf(index).text)) return true;
    }
    return false;
}

void RowReader::putValues(PrintedRow& out, ValueGroup const& group, int tableRow, std::string const& columnUnit) {
    std::vector<int> cells;
    for (int column : {group.min, group.typ, group.max, group.single}) {
        int const index = valueAt(tableRow, column);
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

// "TJ = 125 °C" below "VGS = 10 V, ID = 17 A" of the same parameter: at that temperature, under the same conditions.
std::string RowReader::underConditionAbove(std::string const& condition, bool sameParameter) {
    bool const temperature = sameParameter && statesTemperatureOnly(condition);
    if (temperature && !m_conditionAbove.empty()) return joined(m_conditionAbove, condition);
    bool const states = hasRelation(condition) && !contains(condition, "°") && !statesTemperatureOnly(condition);
    m_conditionAbove = states ? condition : std::string{};
    return condition;
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
        symbol = joined(symbol, symbolIn(textOf(index), cellOf(index).rowSpan));
        marks.insert(marks.end(), textOf(index).marks.begin(), textOf(index).marks.end());
    }
    rowCondition = joined(takeConditionAt(symbol), rowCondition);
    while (!symbol.empty() && (symbol.back() == ',' || symbol.back() == ';' || symbol.back() == ':')) symbol.pop_back();
    if (saysNothing(symbol)) symbol.clear();
    if (saysNothing(name)) name.clear();

    model::Points const indent = indentOf(cells);
    model::Points const left = splitAtChild(row, cells, name).value_or(nameLeft(cells).value_or(m_context.lastLeft));
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
        // one that is headed by the title over the names, and short forms in quotes ("'72, '73")
        bool const ofName = columnRoleOf(m_plan.titles[static_cast<std::size_t>(column)]) == Name;
        if ((further || ofName || cell.text.starts_with("'") || cell.text.starts_with("('")) && isPartLike(withoutBrackets(cell.text)) && !isPackageLike(cell.text)) {
            subVariant = joined(subVariant, withoutBrackets(cell.text));
            continue;
        }
        std::string const& heading = m_plan.conditionOf[static_cast<std::size_t>(cellOf(index).column)];
        bool const way = heading == "from" || heading == "to";
        condition = joined(condition, heading.empty() || hasRelation(cell.text) ? cell.text : heading + (way ? " " : " = ") + cell.text);
        ++conditionCells;
    }
    for (int index : cells.packages) {
        condition = joined(condition, textOf(index).text);
        marks.insert(marks.end(), textOf(index).marks.begin(), textOf(index).marks.end());
    }
    for (int index : cells.parts) {
        subVariant = joined(subVariant, textOf(index).text);
        marks.insert(marks.end(), textOf(index).marks.begin(), textOf(index).marks.end());
    }

    takeTrailingChild(row, name, subVariant, rowCondition);
    takeSelected(name, subVariant);
    bool const symbolStarts = std::ranges::any_of(cells.symbols, [&](int index) { return cellOf(index).row == row; });
    bool const carriesOn = name.empty() && (symbol.empty() || !symbolStarts);
    std::string carriedPrefix;
    bool child = false;
    if (carriesOn) {
        name = m_context.lastName;
        symbol = m_context.lastSymbol;
        carriedPrefix = m_context.lastPrefix;
    } else if (!name.empty()) {
        std::string const bare = withoutBrackets(name);
        // with a symbol of its own it hangs only where it is indented
        bool const otherSymbol = symbolStarts && symbol != m_context.lastSymbol;
        bool const indented = left > m_context.lastLeft + indent;
        bool const hangs = (!otherSymbol || indented) && (!m_context.lastName.empty() || !m_context.headings.empty());
        bool const wholeCondition = startsWithCondition(bare);
        bool const casePackage = folded(bare).starts_with("case ") && isPackageLike(bare);
        if (hangs && (wholeCondition || casePackage)) {
            if (!subVariant.empty() && wholeCondition) m_nameCondition = bare;  // of the parts below it too
            rowCondition = joined(bare, rowCondition);
            child = true;
        } else if (hangs && isPartLike(bare) && !isPackageLike(bare)) {
            subVariant = joined(bare, subVariant);
            rowCondition = joined(m_nameCondition, rowCondition);
            child = true;
        } else if (hangs && indented && symbol.empty() && !m_plan.has(Symbol) && !m_context.lastSymbol.empty() && isStrongSymbol(bare)) {
            symbol = bare;  // "Supply voltage: V+" above an indented "V-"
            child = true;
        } else if (wholeCondition && !symbol.empty()) {
            rowCondition = joined(bare, rowCondition);  // the name is not printed, or not as text
            name.clear();
        }
        if (child) {
            // "TMIN to TMAX" indented below "Offset voltage", which stands below the heading itself
            bool const ofLine = indented && !m_context.headings.empty() && !m_context.lastName.empty() && m_context.lastLeft > m_context.headings.back().left + indent;
            if (!m_context.headings.empty() && !ofLine) {
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
            SymbolPlace const place = symbolPlace(name);
            bool const usual = place != SymbolPlace::None && place == m_symbolPlace;
            if (symbol.empty() && !m_plan.has(Symbol) && (place == SymbolPlace::BehindSet || usual)) symbol = takeSymbol(name, place);
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
    if (fresh) {
        m_nameCondition.clear();
        m_nameUnit.clear();
        m_nameLimit.reset();
    }
    if (fresh && !name.empty()) {
        rowCondition = joined(splitName(row, cells, name), rowCondition);
        m_nameUnit = takeNameUnit(name);
        if (!m_plan.has(Symbol)) m_nameLimit = takeLimit(name);
        if (ownSymbol.empty() && !m_plan.has(Symbol)) {
            // a second column of names ("IN pin") holds no symbols
            std::string lead = cells.names.size() > 1 && name.starts_with(textOf(cells.names.front()).text) ? textOf(cells.names.front()).text : name;
            std::string const rest = trimmed(std::string_view(name).substr(lead.size()));
            SymbolPlace const place = symbolPlace(lead);
            if (place == SymbolPlace::BehindSet || (place != SymbolPlace::None && place == m_symbolPlace)) ownSymbol = takeSymbol(lead, place);
            name = joined(lead, rest);
            // "Temperature | Junction, TJ", but not the pins of "Sink current | CHG, PGOOD"
            if (ownSymbol.empty() && hasOrdinaryWord(rest.substr(0, rest.rfind(','))) && symbolPlace(name) == SymbolPlace::BehindSet) ownSymbol = takeSymbol(name, SymbolPlace::BehindSet);
            if (ownSymbol.empty()) ownSymbol = symbolOfHeading(carriedPrefix);
        }
    }
    if (std::string const shared = takeSharedCondition(row, cells); !shared.empty() && condition.starts_with(shared)) {
        condition = trimmed(std::string_view(condition).substr(shared.size()));
        while (condition.starts_with(",") || condition.starts_with(";")) condition = trimmed(std::string_view(condition).substr(1));
        m_context.parameterCondition = shared;
    }
    condition = joined(rowCondition, condition);
    condition = underConditionAbove(condition, carriesOn || further);

    if (!name.empty() || !ownSymbol.empty()) {
        m_context.lastName = name;
        m_context.lastSymbol = ownSymbol;
        m_context.lastPrefix = carriedPrefix;
        if (!child) m_context.lastLeft = left;
    }

    m_conditionUsed = true;
    std::size_t const firstOfLine = m_out.size();
    auto const filled = std::ranges::count_if(m_plan.groups, [&](ValueGroup const& group) { return startsValue(row, group); });
    for (ValueGroup const& group : m_plan.groups) {
        if (!startsValue(row, group)) continue;
        PrintedRow out;
        std::string unit;
        int const unitCell = group.unit >= 0 ? m_text.at(row, group.unit) : -1;
        bool const spansUnit = unitCell >= 0 && isValueRole(m_plan.roles[static_cast<std::size_t>(cellOf(unitCell).column)]);  // a value over both columns
        if (unitCell >= 0 && !spansUnit && !saysNothing(textOf(unitCell).text)) {
            unit = unitAsWritten(textOf(unitCell).text);
            out.cells.push_back(unitCell);
            marks.insert(marks.end(), textOf(unitCell).marks.begin(), textOf(unitCell).marks.end());
        }
        if (unit.empty()) unit = group.unitInTitle;
        if (unit.empty()) unit = m_nameUnit;
        putValues(out, group, row, unit);
        if (group.single >= 0 && out.max && !out.min && !out.typ) {
            if (m_nameLimit == Slot::Min) std::swap(out.min, out.max);
            if (m_nameLimit == Slot::Typ) std::swap(out.typ, out.max);
        }
        if (out.unit.empty() && !carriesOn && !child) m_context.lastUnit.clear();
        if (!out.min && !out.typ && !out.max) continue;

        std::string variant = !subVariant.empty() ? subVariant : m_context.groupVariant;
        // the part of the line is enough where it has values in one group only
        bool const alone = !subVariant.empty() && isPartLike(group.variant) && filled == 1;
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
            if (!cellOf(index).leader.empty()) out.printed += " " + cellOf(index).leader;
            if (cellOf(index).row == row && cellOf(index).rowSpan == 1) out.box = model::united(out.box, wordsBox(index));
        }
        if (carriesOn && !m_table.evidence.ruledRows) out.doubts.emplace_back("name carried from the line above");
        m_out.push_back(std::move(out));
    }
    bool const plainLimits = std::ranges::any_of(m_plan.groups, [](ValueGroup const& group) { return group.typ >= 0 && group.single >= 0; });
    if (plainLimits && std::any_of(m_out.begin() + static_cast<std::ptrdiff_t>(firstOfLine), m_out.end(), limitsFromBelow)) {
        for (std::size_t i = firstOfLine; i < m_out.size(); ++i) m_out[i].doubts.emplace_back("the limit does not say whether it is a minimum or a maximum");
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

}  // namespace standin::parameters
