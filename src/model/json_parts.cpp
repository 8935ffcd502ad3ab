// Tested through tests/src/model/datasheet_json_test.cpp.
#include "model/json_parts.h"

#include <charconv>
#include <cmath>

#include <fmt/format.h>

#include "model/json_text.h"

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

Members::Members() : m_object(Json::object()) {
    constexpr std::size_t kUsual = 24;  // the largest of our objects
    static_cast<Json::object_t::Container&>(m_object.get_ref<Json::object_t&>()).reserve(kUsual);
}

void Members::append(char const* key, Json value) {
    static_cast<Json::object_t::Container&>(m_object.get_ref<Json::object_t&>()).emplace_back(key, std::move(value));
}

Members& Members::add(char const* key, Json value) & {
    append(key, std::move(value));
    return *this;
}

Members&& Members::add(char const* key, Json value) && {
    append(key, std::move(value));
    return std::move(*this);
}

std::array<double, 4> cornersOf(Rect const& box) { return {rounded(box.x0), rounded(box.y0), rounded(box.x1), rounded(box.y1)}; }

Json boxJson(Rect const& box) {
    auto const corners = cornersOf(box);
    return Json::array_t(corners.begin(), corners.end());
}

Json textOrNull(std::string const& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json numberJson(std::string const& decimal) {
    double value = 0;
    auto const [end, error] = std::from_chars(decimal.data(), decimal.data() + decimal.size(), value);
    if (error != std::errc{} || end != decimal.data() + decimal.size() || !std::isfinite(value)) return nullptr;
    return value;
}

Json placedTextsJson(std::vector<PlacedText> const& texts) {
    Json array = Json::array();
    for (auto const& text : texts) array.push_back(Members().add("text", text.text).add("page", text.page).add("box", boxJson(text.box)).take());
    return array;
}

namespace {

Json placesJson(std::vector<Place> const& places) {
    Json array = Json::array();
    for (auto const& place : places) array.push_back(Members().add("page", place.page).add("box", boxJson(place.box)).take());
    return array;
}

Json correctionsJson(std::vector<Correction> const& corrections) {
    Json array = Json::array();
    for (auto const& c : corrections) {
        array.push_back(Members()
                            .add("id", c.id)
                            .add("outcome", nameOf(c.outcome))
                            .add("parameter", textOrNull(c.parameter))
                            .add("page", c.page)
                            .add("box", boxJson(c.box))
                            .add("row", c.row)
                            .add("field", c.field)
                            .add("read", textOrNull(c.read))
                            .add("corrected", textOrNull(c.corrected))
                            .add("by", c.by)
                            .add("date", c.date)
                            .add("why", c.why)
                            .take());
    }
    return array;
}

std::vector<Correction> correctionsOf(Json const& object) {
    std::vector<Correction> corrections;
    for (auto const& c : arrayOf(object, "corrections")) {
        corrections.push_back({textOf(c, "id"), enumOf(c, "outcome", CorrectionOutcome::Applied), textOf(c, "parameter"), intOf(c, "page"), boxOf(c), textOf(c, "row"), textOf(c, "field"),
                               textOf(c, "read"), textOf(c, "corrected"), textOf(c, "by"), textOf(c, "date"), textOf(c, "why")});
    }
    return corrections;
}

}  // namespace

Json documentJson(DocumentInfo const& document) {
    return Members()
        .add("file", document.file)
        .add("sha256", document.sha256)
        .add("bytes", document.bytes)
        .add("pages", document.pages)
        .add("producer", textOrNull(document.producer))
        .add("creator", textOrNull(document.creator))
        .add("title", textOrNull(document.title))
        .add("text_layer", nameOf(document.textLayer))
        .add("languages", document.languages)
        .add("part_numbers", document.partNumbers)
        .add("maker", textOrNull(document.maker))
        .add("revision", textOrNull(document.revision))
        .add("date", textOrNull(document.date))
        .add("warnings", document.warnings)
        .add("corrections", correctionsJson(document.corrections))
        .take();
}

Json coverageJson(Coverage const& coverage) {
    Members members;
    members.add("numbers", coverage.numbers)
        .add("in_parameters", coverage.inParameters)
        .add("in_tables", coverage.inTables)
        .add("in_text", coverage.inText)
        .add("in_figures", coverage.inFigures)
        .add("in_furniture", coverage.inFurniture)
        .add("unaccounted", placedTextsJson(coverage.unaccounted))
        .add("sentences", coverage.sentences)
        .add("pages_without_text", coverage.pagesWithoutText)
        .add("unread_tables", coverage.unreadTables)
        .add("unread_figures", coverage.unreadFigures)
        .add("unread_pins", placedTextsJson(coverage.unreadPins));
    // Left out where there are none: records of earlier versions keep their bytes.
    if (!coverage.recognised.empty()) members.add("recognised", placedTextsJson(coverage.recognised));
    if (!coverage.unrecognised.empty()) members.add("unrecognised", placesJson(coverage.unrecognised));
    if (!coverage.drawnSigns.empty()) members.add("drawn_signs", placedTextsJson(coverage.drawnSigns));
    return members.take();
}

std::string dumped(Json const& json) { return jsonText(json) + "\n"; }

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
    document.corrections = correctionsOf(object);
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
    coverage.unreadPins = placedTextsOf(object, "unread_pins");
    coverage.recognised = placedTextsOf(object, "recognised");
    for (auto const& place : arrayOf(object, "unrecognised")) coverage.unrecognised.push_back({intOf(place, "page"), boxOf(place)});
    coverage.drawnSigns = placedTextsOf(object, "drawn_signs");
    return coverage;
}

}  // namespace standin::model::json_parts
