// Rows that name the columns of a table.
//
//     differInColumns("Part | VCU [V] | Marking", "Part | VCU [V] | Delay [s] | Package")  ->  true
//     differInColumns("Part | VCU [V]", "Part | VCU [mV]")                                 ->  false
#pragma once

#include <string_view>

#include "compare/printed_rows.h"

namespace standin::compare {

// Both are heads, cells joined by " | ", and what they differ in are columns that one of them has more: every column of the
// shorter one is in both as it is, but for what names the line ("Part", "Marking"), and no limit is in one alone. A column that stands for
// another ("VCU [V]" for "VCU [mV]", "Max" for "Min", "VCL" for "VCU") is another difference.
[[nodiscard]] bool differInColumns(std::string_view reference, std::string_view candidate);

// A head of the table, or a row of words and units right below its head, before the first row that was read.
[[nodiscard]] bool namesColumns(PrintedRows const& rows, int index);

}  // namespace standin::compare
