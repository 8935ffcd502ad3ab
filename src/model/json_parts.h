// Pieces shared by datasheet_json.cpp and comparison_json.cpp: writing and
// reading of boxes, optional texts, documents and coverage. Private to model/.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "model/datasheet.h"
#include "model/names.h"
#include "model/result.h"

namespace standin::model::json_parts {

using Json = nlohmann::ordered_json;

// An object whose members are appended in order. An initializer list copies every
// value twice, which showed in the time of a whole comparison.
//
//     Members().add("page", 3).add("text", text).take()
class Members {
public:
    Members();
    Members& add(char const* key, Json value) &;
    Members&& add(char const* key, Json value) &&;
    [[nodiscard]] Json take() { return std::move(m_object); }

private:
    void append(char const* key, Json value);
    Json m_object;
};

// Writing.
[[nodiscard]] std::array<double, 4> cornersOf(Rect const& box);  // x0, y0, x1, y1, rounded to 1/100 point
[[nodiscard]] Json boxJson(Rect const& box);               // of these corners
[[nodiscard]] Json textOrNull(std::string const& text);    // empty: null
[[nodiscard]] Json numberJson(std::string const& decimal); // as written, no binary noise
[[nodiscard]] Json placedTextsJson(std::vector<PlacedText> const& texts);
[[nodiscard]] Json documentJson(DocumentInfo const& document);
[[nodiscard]] Json coverageJson(Coverage const& coverage);
[[nodiscard]] std::string dumped(Json const& json);  // two spaces of indent, a final newline, bad UTF-8 replaced

// Parses text with a bounded depth; an error names what is wrong.
[[nodiscard]] Result<Json> parsed(std::string_view text, std::string const& file);
[[nodiscard]] Result<Json> parsedCbor(std::vector<std::uint8_t> const& cbor, std::string const& file);

// Reading: a missing or mistyped field gives the default.
[[nodiscard]] std::string textOf(Json const& object, char const* key);
[[nodiscard]] int intOf(Json const& object, char const* key, int fallback = 0);
[[nodiscard]] double doubleOf(Json const& object, char const* key);
[[nodiscard]] bool boolOf(Json const& object, char const* key);
[[nodiscard]] Rect boxOf(Json const& object, char const* key = "box");
[[nodiscard]] Json const& arrayOf(Json const& object, char const* key);  // an empty array where missing
[[nodiscard]] std::vector<std::string> textsOf(Json const& object, char const* key);
[[nodiscard]] std::vector<int> intsOf(Json const& object, char const* key);
[[nodiscard]] std::vector<PlacedText> placedTextsOf(Json const& object, char const* key);
[[nodiscard]] DocumentInfo documentOf(Json const& object);
[[nodiscard]] Coverage coverageOf(Json const& object);

template <class Enum>
[[nodiscard]] Enum enumOf(Json const& object, char const* key, Enum fallback) {
    return fromName<Enum>(textOf(object, key)).value_or(fallback);
}

}  // namespace standin::model::json_parts
