// Known column titles in English, Chinese, Japanese, German and Russian.
#pragma once

#include <cstdint>
#include <string_view>

namespace standin::tables {

enum class ColumnTitle : std::uint8_t {
    None,
    Parameter, Symbol, Conditions, Min, Typ, Max, Value, Unit, Note, TestCircuit,  // specifications
    Pin, Name, Description, Type, Package, PartNumber, Marking, Date, Revision     // other tables
};

// The title that `text` (one cell's words, lines joined) is, whatever its case,
// spacing, full stops and bracketed additions ("Voltage" is none; "Min." and
// "最小值 Min" are Min).
[[nodiscard]] ColumnTitle columnTitle(std::string_view text);

// Columns under these titles hold values.
[[nodiscard]] inline bool isValueTitle(ColumnTitle title) {
    return title == ColumnTitle::Min || title == ColumnTitle::Typ || title == ColumnTitle::Max || title == ColumnTitle::Value;
}

}  // namespace standin::tables
