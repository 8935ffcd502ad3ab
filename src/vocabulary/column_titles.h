// What the titles of table columns are called in the languages of the trade:
// English, German, French, Spanish, Italian, Russian, Chinese, Japanese, Korean.
// One list for whoever asks; the list is data, in column_titles.cpp.
//
//     columnTitleOf(columnTitleKey("test conditions"))  -> Conditions
//     columnTitleOf(columnTitleKey("最小值"))            -> Min
//     columnTitleOf(columnTitleKey("xx358a"))           -> None: with a digit it is a variant's or a value
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace standin::vocabulary {

enum class ColumnTitle : std::uint8_t {
    None,
    // of specifications
    Parameter,
    Symbol,
    Conditions,
    Min,
    Typ,
    Max,
    Value,
    Unit,
    Note,
    TestCircuit,  // the circuit, figure or waveform of a measurement
    ItemNumber,   // numbers and groups of lines
    // of other tables
    Pin,
    Name,
    PinType,
    Description,
    Type,
    Package,
    PartNumber,
    Marking,
    Date,
    Revision,
};

// Characters that tell titles apart: small Latin, Cyrillic and CJK letters, "/",
// "#" and "№". Others (spaces, full stops, hyphens, marks) do not.
[[nodiscard]] bool isInColumnTitleKey(char32_t lowered);

// `lowered` (UTF-8, lower case) without what does not tell titles apart; empty
// where it holds a digit.
[[nodiscard]] std::string columnTitleKey(std::string_view lowered);

// None where the list has no such key.
[[nodiscard]] ColumnTitle columnTitleOf(std::string_view key);

}  // namespace standin::vocabulary
