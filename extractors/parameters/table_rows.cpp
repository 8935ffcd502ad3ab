#include "extractors/parameters/table_rows.h"

// Row by row: collect the cells that cover the row by role, decide whether the
// row is a heading, then give each value group with content one PrintedRow.
// Indented lines under a line without values hang under it. Tested by
// tests/extractors/parameters/table_rows_test.cpp.

#include <algorithm>

#include "extractors/parameters/row_reader.h"
#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"

namespace standin::parameters {

using enum ColumnRole;

RowCells RowReader::printedCells(int row) const {
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
            // "Junction temperature" below pins and symbols in the one identifying column
            case Symbol: (m_plan.symbolIsOnlyName && hasOrdinaryWord(textOf(index).text) ? out.names : out.symbols).push_back(index); break;
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

// One condition in each of the lines, in a column.
bool RowReader::statesInEachLine(int column, int first, int last) const {
    for (int row = first; row <= last; ++row) {
        int const index = m_text.at(row, column);
        if (index < 0 || cellOf(index).row != row || cellOf(index).rowSpan != 1 || !hasRelation(textOf(index).text)) return false;
    }
    return true;
}

// "VDD = 5 V", "10 V", "15 V" beside one name, and "CL = 15 pF" in the next column beside the middle one: it is printed
// once for the three, and centred. The cell for the lines above and below it; -1: none.
int RowReader::conditionInTheMiddle(int row, RowCells const& cells) const {
    for (int const name : cells.names) {
        int const span = cellOf(name).rowSpan;
        int const first = cellOf(name).row;
        int const middle = first + span / 2;
        if (span < 3 || span % 2 == 0 || middle == row) continue;
        for (int column = 1; column < m_text.columns; ++column) {
            int const index = m_text.at(middle, column);
            bool const conditions = m_plan.roles[static_cast<std::size_t>(column)] == Condition && m_plan.roles[static_cast<std::size_t>(column - 1)] == Condition;
            if (!conditions || index < 0 || cellOf(index).column != column || cellOf(index).rowSpan != 1 || !hasRelation(textOf(index).text)) continue;
            if (!statesInEachLine(column - 1, first, first + span - 1)) continue;
            bool alone = true;
            for (int other = first; other < first + span && alone; ++other) {
                int const beside = m_text.at(other, column);
                alone = other == middle || beside < 0 || cellOf(beside).column < column || textOf(beside).text.empty();
            }
            if (alone) return index;
        }
    }
    return -1;
}

// With the name and symbol of a name that is wrapped beside several lines of values.
RowCells RowReader::cellsOf(int row) const {
    RowCells cells = printedCells(row);
    if (int const shared = conditionInTheMiddle(row, cells); shared >= 0) cells.conditions.push_back(shared);
    int const first = row < static_cast<int>(m_wrapFirst.size()) ? m_wrapFirst[static_cast<std::size_t>(row)] : -1;
    if (first < 0) return cells;
    cells.names.clear();
    for (int r = first; r <= m_wrapLast[static_cast<std::size_t>(row)]; ++r) {
        RowCells const line = printedCells(r);
        cells.names.insert(cells.names.end(), line.names.begin(), line.names.end());
        if (cells.symbols.empty()) cells.symbols = line.symbols;
    }
    return cells;
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

model::Rect RowReader::wordsBox(int index) const {
    model::Cell const& cell = cellOf(index);
    if (m_page == nullptr || cell.words.empty()) return cell.box;
    model::Rect box;
    for (std::uint32_t word : cell.words) {
        if (word < m_page->words.size()) box = model::united(box, m_page->words[word].box);
    }
    return box;
}

int RowReader::nameCellOf(RowCells const& cells) const { return !cells.names.empty() ? cells.names.back() : !cells.symbols.empty() ? cells.symbols.back() : -1; }

void RowReader::decideSymbolPlace() {
    if (m_plan.has(Symbol)) return;
    int names = 0;
    int behind = 0;
    int inFront = 0;
    for (int row = m_segment.bodyFirst; row < m_segment.bodyEnd; ++row) {
        RowCells const cells = cellsOf(row);
        if (cells.names.empty() || cellOf(cells.names.front()).row != row || !hasValues(row, cells)) continue;
        std::string name = textOf(cells.names.front()).text;
        if (isPartLike(name)) continue;  // a case of the name above
        ++names;
        (void)takeCondition(name);
        (void)takeNameUnit(name);
        (void)takeLimit(name);
        SymbolPlace const place = symbolPlace(name);
        if (place == SymbolPlace::Behind || place == SymbolPlace::BehindSet) ++behind;
        if (place == SymbolPlace::InFront) ++inFront;
    }
    if (behind * 2 > names) m_symbolPlace = SymbolPlace::Behind;
    if (inFront * 2 > names) m_symbolPlace = SymbolPlace::InFront;
}

std::vector<PrintedRow> RowReader::read() {
    findWrappedNames();
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
std::vector<PrintedRow> readRows(model::Table const& table, TableText const& text, model::PageLayout const* page, Segment const& segment, ColumnPlan const& plan,
                                 std::string const& tableCondition, RowContext& context) {
    return RowReader(table, text, page, segment, plan, tableCondition, context).read();
}

}  // namespace standin::parameters
