// The reader behind readRows(): cells of a row by what they hold (table_rows.cpp),
// heading lines (row_headings.cpp), names (row_names.cpp) and lines of values
// (row_values.cpp). Only
// these include it; everybody else calls readRows().
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "extractors/parameters/column_plan.h"
#include "extractors/parameters/name_parts.h"
#include "extractors/parameters/table_rows.h"
#include "extractors/parameters/table_text.h"
#include "extractors/parameters/value_cell.h"

namespace standin::parameters {

constexpr float kIndent = 0.45F;    // font heights that count as indented
constexpr float kUsualSize = 9.0F;  // where no font size is known

[[nodiscard]] constexpr bool isValueRole(ColumnRole role) { return role == ColumnRole::Min || role == ColumnRole::Typ || role == ColumnRole::Max || role == ColumnRole::Value; }

// The cells of one row by what they hold.
struct RowCells {
    std::vector<int> names, symbols, conditions, parts, packages, units, notes, values, all;
};

// Lives for one call of readRows(); borrows everything it is given.
class RowReader {
public:
    RowReader(model::Table const& table, TableText const& text, model::PageLayout const* page, Segment const& segment, ColumnPlan const& plan, std::string const& tableCondition,
              RowContext& context)
        : m_table(table), m_text(text), m_page(page), m_segment(segment), m_plan(plan), m_tableCondition(tableCondition), m_context(context) {}

    std::vector<PrintedRow> read();

private:
    void findWrappedNames();
    [[nodiscard]] RowCells printedCells(int row) const;
    [[nodiscard]] RowCells cellsOf(int row) const;
    [[nodiscard]] int conditionInTheMiddle(int row, RowCells const& cells) const;
    [[nodiscard]] bool statesInEachLine(int column, int first, int last) const;
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
    [[nodiscard]] std::string underConditionAbove(std::string const& condition, bool sameParameter);
    void addCondition(std::string const& text);
    void startPart(std::string const& part);
    [[nodiscard]] int nameCellOf(RowCells const& cells) const;
    void popHeadings(model::Points left, model::Points indent);
    void decideSymbolPlace();
    static void takeSelected(std::string& name, std::string& variant);
    [[nodiscard]] std::optional<model::Points> splitAtChild(int row, RowCells const& cells, std::string& name);
    [[nodiscard]] std::string symbolOfHeading(std::string& carriedPrefix) const;
    void takeTrailingChild(int row, std::string& name, std::string& variant, std::string& condition) const;
    [[nodiscard]] bool continuesName(int row) const;
    [[nodiscard]] std::string caseBelow(int row) const;
    [[nodiscard]] std::string splitName(int row, RowCells const& cells, std::string& name);
    [[nodiscard]] std::string takeSharedCondition(int row, RowCells const& cells) const;
    static std::optional<Slot> takeLimit(std::string& name);
    [[nodiscard]] std::string takeNameUnit(std::string& name) const;
    [[nodiscard]] int valueAt(int row, int column) const;
    [[nodiscard]] bool startsValue(int row, ValueGroup const& group) const;
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
    int m_nameCell = -1;           // the cell that names the parameter at hand
    bool m_conditionUsed = false;  // values stood below the last condition line
    std::string m_conditionAbove;  // of the row above, where it states no temperature
    std::string m_nameCondition;   // stated in the name, holds for the cases below it too
    std::string m_nameUnit;        // printed behind the name
    std::optional<Slot> m_nameLimit;  // "Output current, IOL Min.": what single values are
    bool m_symbolsUsual = false;   // most named rows have a symbol
    std::vector<int> m_wrapFirst;  // by row of the segment: first row of the name that is wrapped beside its values, or -1
    std::vector<int> m_wrapLast;
};

}  // namespace standin::parameters
