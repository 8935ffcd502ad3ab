// Files of corrections (schema standin.corrections/1): what a person wrote about
// rows that the program misread.
//
// An entry names the document by its hash, the page, and the row by what stands
// there: its texts as the program reads them, its place, or both. Nothing in it
// depends on ids or on the order of rows, so it outlives the version of the
// program that it was written for.
//
//     {"schema": "standin.corrections/1", "corrections": [
//       {"document": "5d0c41e97b22", "page": 4,
//        "row": {"symbol": "VCU", "condition": "TA = 25 °C"}, "box": [70, 310, 520, 324],
//        "set": {"max": "4.305"},
//        "by": "I. Brandt", "date": "2031-05-02", "why": "a stain on the 3"}]}
//
// Instead of "set" an entry has "not_a_parameter": true (the row is taken out and
// stays as text), or "add": {"name": …} (a row that was not read).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/result.h"

namespace standin::corrections {

// What can be said of a row. Printed is the whole row and names it only.
enum class Field : std::uint8_t { Kind, Name, Symbol, Condition, TableCondition, Variant, Min, Typ, Max, Unit, Printed };

// "name", "table_condition" …, as in the file and in the outputs.
[[nodiscard]] std::string_view nameOf(Field field);

struct FieldText {
    Field field = Field::Name;
    std::string text;  // empty: nothing is printed there
    bool operator==(FieldText const&) const = default;
};

enum class Action : std::uint8_t { Set, Remove, Add };

struct Entry {
    std::string file;      // as given by the user
    int number = 0;        // in the file, from 1
    std::string document;  // first digits, at least 12, of the SHA-256 in lower case
    int page = 0;
    std::vector<FieldText> row;
    std::optional<model::Rect> box;  // points from the top left of the page
    Action action = Action::Set;
    std::vector<FieldText> texts;  // of Set and Add
    std::string by, date, why;
};

// Errors (Usage) name the file, the entry and the member: unknown members and
// members of a wrong type are errors, never passed over.
[[nodiscard]] model::Result<std::vector<Entry>> parseCorrections(std::string_view json, std::string const& file);

}  // namespace standin::corrections
