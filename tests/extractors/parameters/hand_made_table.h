// Tables written down in tests: rows of cells as text, spans marked in front.
//
//     handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"},
//               {"Supply current", "IDD", "", "3.0", "6.0", "µA"}}, 1)
//
// A cell ">3 text" spans three columns, "v2 text" two rows; "" is blank, and so
// is what a span covers.
#pragma once

#include <cstdlib>
#include <string>
#include <vector>

#include "model/table.h"

namespace standin::parameters {

inline model::Table handMade(std::vector<std::vector<std::string>> const& rows, int headRows) {
    model::Table table;
    table.id = "t1";
    table.page = 1;
    table.rows = static_cast<int>(rows.size());
    table.headRows = headRows;
    table.confidence = 0.95;
    table.evidence.ruledRows = true;
    table.evidence.ruledColumns = true;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        table.columns = std::max(table.columns, static_cast<int>(rows[r].size()));
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            std::string text = rows[r][c];
            if (text.empty()) continue;
            model::Cell cell;
            cell.row = static_cast<int>(r);
            cell.column = static_cast<int>(c);
            while (text.size() > 2 && (text[0] == '>' || text[0] == 'v') && text[1] >= '2' && text[1] <= '9' && text[2] == ' ') {
                (text[0] == '>' ? cell.columnSpan : cell.rowSpan) = text[1] - '0';
                text.erase(0, 3);
            }
            cell.text = text;
            cell.header = static_cast<int>(r) < headRows;
            auto const x = static_cast<float>(c) * 80;
            auto const y = static_cast<float>(r) * 12;
            // leading dots stand for indentation, one font height each
            float indent = 0;
            while (!cell.text.empty() && cell.text[0] == '.' && cell.text.size() > 1 && cell.text[1] != '.') {
                indent += 9;
                cell.text.erase(0, 1);
            }
            cell.box = {x + indent, y, x + 80, y + 10};
            table.cells.push_back(std::move(cell));
        }
    }
    table.box = {0, 0, static_cast<float>(table.columns) * 80, static_cast<float>(rows.size()) * 12};
    return table;
}

}  // namespace standin::parameters
