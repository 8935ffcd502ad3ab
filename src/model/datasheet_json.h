// A datasheet as JSON (schema standin.datasheet/1, src/report/schemas/) and as
// CBOR of the same structure, and back. What is written and read again is the
// same value (boxes to 1/100 point).
//
//     std::string json = toJson(sheet);
//     Result<Datasheet> again = datasheetFromJson(json, "sheet.json");
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/result.h"

namespace standin::model {

// UTF-8, two spaces of indent, a final newline. The same value gives the same
// bytes. Bytes that are no UTF-8 are written as U+FFFD.
[[nodiscard]] std::string toJson(Datasheet const& datasheet);
[[nodiscard]] std::vector<std::uint8_t> toCbor(Datasheet const& datasheet);

// Errors: Unsupported where the text is no such JSON or of another schema.
// Fields that are missing or of a wrong type get their default.
[[nodiscard]] Result<Datasheet> datasheetFromJson(std::string_view json, std::string const& file);
[[nodiscard]] Result<Datasheet> datasheetFromCbor(std::vector<std::uint8_t> const& cbor, std::string const& file);

}  // namespace standin::model
