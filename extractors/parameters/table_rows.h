// The printed lines of a specification table, one for each line of values and
// column group, with everything that is printed once for several lines carried
// to each of them.
#pragma once

#include <string>
#include <vector>

#include "extractors/parameters/column_plan.h"
#include "extractors/parameters/table_text.h"
#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::parameters {

// One printed line of values. Strings are empty where nothing is printed.
struct PrintedRow {
    std::string name;
    std::string symbol;
    std::string condition;
    std::string tableCondition;
    std::string variant;
    std::optional<model::Value> min, typ, max;  // text, printed and box are set
    std::string unit;
    std::vector<std::string> marks;   // footnotes
    std::vector<int> cells;           // indices into Table::cells
    std::vector<std::string> doubts;  // why it may be misread
    bool words = false;               // a value is words
    bool expression = false;
    model::Rect box;
    std::string printed;
};

// What goes on from line to line, and over a page break to the next table.
struct RowContext {
    struct Heading {
        model::Points left = 0;
        std::string text;
    };
    std::string groupName;
    model::Points groupLeft = 0;
    bool groupBold = false;
    std::string groupVariant;
    std::string headingCondition;    // a heading line that is a condition
    std::string parameterCondition;  // a condition line above the values of one parameter
    std::vector<Heading> headings;   // by indentation
    std::string lastName;            // without its prefix
    std::string lastSymbol;
    std::string lastUnit;
    std::string lastPrefix;
    model::Points lastLeft = 0;
    // Of a line without values on top of a continued table: it ends the last
    // line of the page before.
    bool atTop = false;
    std::string lateName;
    std::string lateCondition;
};

// Reads body rows of one segment. `page` may be null. `tableCondition`: what is
// stated for the whole table.
[[nodiscard]] std::vector<PrintedRow> readRows(model::Table const& table, TableText const& text, model::PageLayout const* page, Segment const& segment,
                                               ColumnPlan const& plan, std::string const& tableCondition, RowContext& context);

}  // namespace standin::parameters
