// Tested through tests/src/model/datasheet_json_test.cpp.
#include "model/json_parts.h"

#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace standin::model::json_parts {

namespace {

// Our own files nest five deep; more is either broken or hostile.
constexpr int kDeepestNesting = 32;

// Beyond these a coordinate is not one of a page.
constexpr double kLargestCoordinate = 1e7;

double rounded(Points value) {
    double const v = value;
    if (!std::isfinite(v)) return 0;
    return std::round(v * 100) / 100;
}

}  // namespace

Json boxJson(Rect const& box) { return Json::array({rounded(box.x0), rounded(box.y0), rounded(box.x1), rounded(box.y1)}); }

Json textOrNull(std::string const& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json numberJson(std::string const& decimal) {
    double value = 0;
    auto const [end, error] = std::from_chars(decimal.data(), decimal.data() + decimal.size(), value);
    if (error != std::errc{} || end != decimal.data() + decimal.size() || !std::isfinite(value)) return nullptr;
    return value;
}

Json placedTextsJson(std::vector<PlacedText> const& texts) {
    Json array = Json::array();
    for (auto const& text : texts) array.push_back({{"text", text.text}, {"page", text.page}, {"box", boxJson(text.box)}});
    return array;
}

Json documentJson(DocumentInfo const& document) {
    return {{"file", document.file},
            {"sha256", document.sha256},
            {"bytes", document.bytes},
            {"pages", document.pages},
            {"producer", textOrNull(document.producer)},
            {"creator", textOrNull(document.creator)},
            {"title", textOrNull(document.title)},
            {"text_layer", nameOf(document.textLayer)},
            {"languages", document.languages},
            {"part_numbers", document.partNumbers},
            {"maker", textOrNull(document.maker)},
            {"revision", textOrNull(document.revision)},
            {"date", textOrNull(document.date)},
            {"warnings", document.warnings}};
}

Json coverageJson(Coverage const& coverage) {
    return {{"numbers", coverage.numbers},
            {"in_parameters", coverage.inParameters},
            {"in_tables", coverage.inTables},
            {"in_text", coverage.inText},
            {"in_figures", coverage.inFigures},
            {"in_furniture", coverage.inFurniture},
            {"unaccounted", placedTextsJson(coverage.unaccounted)},
            {"sentences", coverage.sentences},
            {"pages_without_text", coverage.pagesWithoutText},
            {"unread_tables", coverage.unreadTables},
            {"unread_figures", coverage.unreadFigures}};
}

std::string dumped(Json const& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

Result<Json> parsed(std::string_view text, std::string const& file) {
    bool tooDeep = false;
    auto const keep = [&tooDeep](int depth, Json::parse_event_t, Json&) {
        if (depth > kDeepestNesting) tooDeep = true;
        return depth <= kDeepestNesting;
    };
    Json json = Json::parse(text.begin(), text.end(), keep, /*allow_exceptions=*/false);
    if (tooDeep || json.is_discarded() || !json.is_object()) {
        return tl::unexpected(Error{ErrorKind::Unsupported, "is not a JSON file that Standin wrote; give the PDF or read it again", file});
    }
    return json;
}

namespace {

// Walks CBOR without building anything and stops at what is nested too deep:
// the library's own reader recurses for each level.
struct DepthGuard : nlohmann::json_sax<Json> {
    int depth = 0;
    bool enter() { return ++depth <= kDeepestNesting; }
    bool leave() { --depth; return true; }
    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t) override { return true; }
    bool number_unsigned(number_unsigned_t) override { return true; }
    bool number_float(number_float_t, string_t const&) override { return true; }
    bool string(string_t&) override { return true; }
    bool binary(binary_t&) override { return true; }
    bool start_object(std::size_t) override { return enter(); }
    bool key(string_t&) override { return true; }
    bool end_object() override { return leave(); }
    bool start_array(std::size_t) override { return enter(); }
    bool end_array() override { return leave(); }
    bool parse_error(std::size_t, std::string const&, Json::exception const&) override { return false; }
};

}  // namespace

Result<Json> parsedCbor(std::vector<std::uint8_t> const& cbor, std::string const& file) {
    DepthGuard guard;
    Json json(Json::value_t::discarded);
    if (Json::sax_parse(cbor, &guard, Json::input_format_t::cbor)) json = Json::from_cbor(cbor, /*strict=*/true, /*allow_exceptions=*/false);
    if (json.is_discarded() || !json.is_object()) {
        return tl::unexpected(Error{ErrorKind::Unsupported, "is not CBOR that Standin wrote", file});
    }
    return json;
}

namespace {

Json const* member(Json const& object, char const* key) {
    if (!object.is_object()) return nullptr;
    auto const found = object.find(key);
    return found == object.end() ? nullptr : &*found;
}

}  // namespace

std::string textOf(Json const& object, char const* key) {
    auto const* value = member(object, key);
    return value != nullptr && value->is_string() ? value->get<std::string>() : std::string{};
}

int intOf(Json const& object, char const* key, int fallback) {
    auto const* value = member(object, key);
    if (value == nullptr || !value->is_number_integer()) return fallback;
    auto const wide = value->get<std::int64_t>();
    return wide >= INT32_MIN && wide <= INT32_MAX ? static_cast<int>(wide) : fallback;
}

double doubleOf(Json const& object, char const* key) {
    auto const* value = member(object, key);
    return value != nullptr && value->is_number() ? value->get<double>() : 0.0;
}

bool boolOf(Json const& object, char const* key) {
    auto const* value = member(object, key);
    return value != nullptr && value->is_boolean() && value->get<bool>();
}

Rect boxOf(Json const& object, char const* key) {
    auto const& array = arrayOf(object, key);
    if (array.size() != 4) return {};
    Points corner[4] = {};
    for (std::size_t i = 0; i < 4; ++i) {
        double const v = array[i].is_number() ? array[i].get<double>() : 0.0;
        corner[i] = static_cast<Points>(std::abs(v) < kLargestCoordinate ? v : 0.0);
    }
    return {corner[0], corner[1], corner[2], corner[3]};
}

Json const& arrayOf(Json const& object, char const* key) {
    static Json const empty = Json::array();
    auto const* value = member(object, key);
    return value != nullptr && value->is_array() ? *value : empty;
}

std::vector<std::string> textsOf(Json const& object, char const* key) {
    std::vector<std::string> texts;
    for (auto const& entry : arrayOf(object, key)) {
        if (entry.is_string()) texts.push_back(entry.get<std::string>());
    }
    return texts;
}

std::vector<int> intsOf(Json const& object, char const* key) {
    std::vector<int> numbers;
    for (auto const& entry : arrayOf(object, key)) {
        if (entry.is_number_integer()) numbers.push_back(entry.get<int>());
    }
    return numbers;
}

std::vector<PlacedText> placedTextsOf(Json const& object, char const* key) {
    std::vector<PlacedText> texts;
    for (auto const& entry : arrayOf(object, key)) texts.push_back({textOf(entry, "text"), intOf(entry, "page"), boxOf(entry)});
    return texts;
}

DocumentInfo documentOf(Json const& object) {
    DocumentInfo document;
    document.file = textOf(object, "file");
    document.sha256 = textOf(object, "sha256");
    document.bytes = static_cast<std::uint64_t>(std::max(0.0, doubleOf(object, "bytes")));
    document.pages = intOf(object, "pages");
    document.producer = textOf(object, "producer");
    document.creator = textOf(object, "creator");
    document.title = textOf(object, "title");
    document.textLayer = enumOf(object, "text_layer", TextLayer::Full);
    document.languages = textsOf(object, "languages");
    document.partNumbers = textsOf(object, "part_numbers");
    document.maker = textOf(object, "maker");
    document.revision = textOf(object, "revision");
    document.date = textOf(object, "date");
    document.warnings = textsOf(object, "warnings");
    return document;
}

Coverage coverageOf(Json const& object) {
    Coverage coverage;
    coverage.numbers = intOf(object, "numbers");
    coverage.inParameters = intOf(object, "in_parameters");
    coverage.inTables = intOf(object, "in_tables");
    coverage.inText = intOf(object, "in_text");
    coverage.inFigures = intOf(object, "in_figures");
    coverage.inFurniture = intOf(object, "in_furniture");
    coverage.unaccounted = placedTextsOf(object, "unaccounted");
    coverage.sentences = intOf(object, "sentences");
    coverage.pagesWithoutText = intsOf(object, "pages_without_text");
    coverage.unreadTables = textsOf(object, "unread_tables");
    coverage.unreadFigures = textsOf(object, "unread_figures");
    return coverage;
}

}  // namespace standin::model::json_parts
