// What each column of a specification table holds, and which value columns
// belong together.
//
//     CellKinds kinds;  // for all tables of a sheet
//     ColumnPlan plan = planColumns(table, text, {0, table.headRows, table.rows}, nullptr, kinds);
//     plan.roles[3]           -> ColumnRole::Min
//     plan.groups[1].variant  -> "XX358A"      (one group a variant, package or range)
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "extractors/parameters/head_words.h"
#include "extractors/parameters/table_text.h"
#include "model/table.h"

namespace standin::parameters {

// Rows of one head and the body under it. A table may hold several (repeated heads).
struct Segment {
    int headFirst = 0;
    int bodyFirst = 0;
    int bodyEnd = 0;  // one past the last
};

// Value columns that are filled together; -1: there is none.
struct ValueGroup {
    std::string variant;    // heading, where several groups stand side by side
    std::string condition;  // heading of the only group that states a condition
    std::string name;       // transposed tables: the column is the parameter
    std::string symbol;
    int min = -1;
    int typ = -1;
    int max = -1;
    int single = -1;
    int unit = -1;          // its unit column
    std::string unitInTitle;  // "Max (mA)"
};

struct ColumnPlan {
    std::vector<ColumnRole> roles;
    std::vector<std::string> titles;   // lowest title of each column, empty: none
    std::vector<std::string> conditionOf;  // symbol that heads a column of its values ("VCC", "TA"), "from" or "to"; empty: none
    std::vector<int> twins;            // a further column under the very same title, or -1: a value stands in either
    std::vector<ValueGroup> groups;
    bool headed = false;               // titles were found in this table or the one it continues
    bool carried = false;              // … in the one it continues
    bool transposed = false;           // parameters are columns
    bool symbolIsOnlyName = false;     // the one identifying column holds symbols
    std::vector<std::string> reasons;  // what was guessed
    // Titles printed (not guessed) per role.
    bool minTitle = false, typTitle = false, maxTitle = false, valueTitle = false, unitTitle = false, nameTitle = false, symbolTitle = false;

    [[nodiscard]] bool has(ColumnRole role) const;
    [[nodiscard]] int count(ColumnRole role) const;
};

// What the texts of cells look like. Tables repeat them ("V", "1.0", "TA = 25 °C"): each
// is judged once for all tables that share this.
class CellKinds {
public:
    struct Kind {
        bool value = false;
        bool unit = false;
        bool symbol = false;
        bool condition = false;
        bool part = false;
        bool words = false;
    };
    [[nodiscard]] Kind const& of(std::string const& text);

private:
    std::unordered_map<std::string, Kind> m_kinds;
};

// Head and body rows of the table, top to bottom; never empty for a table with rows.
[[nodiscard]] std::vector<Segment> segmentsOf(model::Table const& table, TableText const& text);

// `carried`: the plan of the table that this one continues, or of the segment
// above, used where the segment has no head; may be null.
[[nodiscard]] ColumnPlan planColumns(model::Table const& table, TableText const& text, Segment const& segment, ColumnPlan const* carried, CellKinds& kinds);
// Of a table by itself.
[[nodiscard]] ColumnPlan planColumns(model::Table const& table, TableText const& text, Segment const& segment, ColumnPlan const* carried);

}  // namespace standin::parameters
