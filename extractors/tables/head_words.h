// Known titles (vocabulary/column_titles.h) among the cells of a page.
#pragma once

#include <string_view>

#include "vocabulary/column_titles.h"

namespace standin::tables {

using vocabulary::ColumnTitle;

// The title that `text` (one cell's words, lines joined) is, whatever its case,
// spacing, full stops and bracketed additions ("Voltage" is none; "Min." and
// "最小值 Min" are Min).
[[nodiscard]] ColumnTitle columnTitle(std::string_view text);

// Columns under these titles hold values.
[[nodiscard]] inline bool isValueTitle(ColumnTitle title) {
    return title == ColumnTitle::Min || title == ColumnTitle::Typ || title == ColumnTitle::Max || title == ColumnTitle::Value;
}

}  // namespace standin::tables
