// Member by member; what is not known is refused. Tested by
// tests/extractors/corrections/correction_file_test.cpp.
#include "extractors/corrections/correction_file.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "model/names.h"
#include "model/user_json.h"

namespace standin::corrections {

namespace {

using nlohmann::json;

constexpr std::size_t kFewestHashDigits = 12;
constexpr std::size_t kHashDigits = 64;
constexpr double kLargestCoordinate = 20000;  // points; a page is at most 14400

constexpr std::array<std::string_view, 11> kFieldNames{"kind", "name", "symbol", "condition", "table_condition", "variant", "min", "typ", "max", "unit", "printed"};
static_assert(kFieldNames.size() == static_cast<std::size_t>(Field::Printed) + 1);

// What is wrong, thrown inside this file only and turned into a Result at its border.
struct Wrong {
    std::string message;
};

void allowOnly(json const& object, std::initializer_list<std::string_view> known) {
    for (auto const& [key, value] : object.items()) {
        if (std::find(known.begin(), known.end(), key) == known.end()) throw Wrong{fmt::format("\"{}\" is not known here", key)};
    }
}

std::string neededText(json const& object, char const* key) {
    auto const found = object.find(key);
    if (found == object.end() || !found->is_string() || found->get_ref<std::string const&>().empty()) throw Wrong{fmt::format("\"{}\" is needed, a text", key)};
    return found->get<std::string>();
}

std::string documentOf(json const& object) {
    auto const hash = neededText(object, "document");
    bool const hex = std::all_of(hash.begin(), hash.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
    if (!hex || hash.size() < kFewestHashDigits || hash.size() > kHashDigits) {
        throw Wrong{fmt::format("\"document\" takes the SHA-256 of the PDF in lower case, {} digits of it at least", kFewestHashDigits)};
    }
    return hash;
}

std::string dateOf(json const& object) {
    auto const date = neededText(object, "date");
    bool good = date.size() == 10;
    for (std::size_t i = 0; good && i < date.size(); ++i) good = i == 4 || i == 7 ? date[i] == '-' : date[i] >= '0' && date[i] <= '9';
    if (!good) throw Wrong{"\"date\" is written YYYY-MM-DD"};
    return date;
}

int pageOf(json const& object) {
    auto const found = object.find("page");
    if (found == object.end() || !found->is_number_integer() || found->get<std::int64_t>() < 1 || found->get<std::int64_t>() > INT32_MAX) {
        throw Wrong{"\"page\" is needed, counted from 1"};
    }
    return found->get<int>();
}

model::Rect boxOf(json const& box) {
    std::array<double, 4> corners{};
    bool good = box.is_array() && box.size() == corners.size();
    for (std::size_t i = 0; good && i < corners.size(); ++i) {
        good = box[i].is_number();
        if (good) corners[i] = box[i].get<double>();
        good = good && std::abs(corners[i]) < kLargestCoordinate;
    }
    if (!good || corners[2] < corners[0] || corners[3] < corners[1]) throw Wrong{"\"box\" takes [x0, y0, x1, y1] in points from the top left of the page"};
    return {static_cast<model::Points>(corners[0]), static_cast<model::Points>(corners[1]), static_cast<model::Points>(corners[2]), static_cast<model::Points>(corners[3])};
}

// What a list of texts is for: to find a row, or to say what stands in it.
enum class Use { Finds, Says };

std::vector<FieldText> textsOf(json const& object, char const* where, Use use) {
    if (!object.is_object() || object.empty()) throw Wrong{fmt::format("\"{}\" takes the row's texts, for example {{\"max\": \"4.305\"}}", where)};
    std::vector<FieldText> texts;
    for (auto const& [key, value] : object.items()) {
        auto const found = std::find(kFieldNames.begin(), kFieldNames.end(), key);
        auto const field = static_cast<Field>(found - kFieldNames.begin());
        bool const known = found != kFieldNames.end() && field != (use == Use::Finds ? Field::Kind : Field::Printed);
        if (!known) throw Wrong{fmt::format("\"{}\" is not known in \"{}\"", key, where)};
        if (!value.is_string() && !value.is_null()) throw Wrong{fmt::format("\"{}\" in \"{}\" takes a text, or null for nothing printed", key, where)};
        std::string text = value.is_string() ? value.get<std::string>() : std::string();
        if (field == Field::Kind && !model::fromName<model::ParameterKind>(text)) throw Wrong{fmt::format("\"kind\" in \"{}\" does not know \"{}\"", where, text)};
        texts.push_back({field, std::move(text)});
    }
    return texts;
}

bool holdsText(std::vector<FieldText> const& texts, std::initializer_list<Field> fields) {
    return std::any_of(texts.begin(), texts.end(), [&](auto const& t) { return !t.text.empty() && std::find(fields.begin(), fields.end(), t.field) != fields.end(); });
}

void readAction(json const& object, Entry& entry) {
    auto const set = object.find("set");
    auto const add = object.find("add");
    auto const remove = object.find("not_a_parameter");
    if ((set != object.end()) + (add != object.end()) + (remove != object.end()) != 1) throw Wrong{"one of \"set\", \"add\" and \"not_a_parameter\" is needed"};
    if (remove != object.end()) {
        if (!remove->is_boolean() || !remove->get<bool>()) throw Wrong{"\"not_a_parameter\" takes true"};
        entry.action = Action::Remove;
    } else if (add != object.end()) {
        entry.action = Action::Add;
        entry.texts = textsOf(*add, "add", Use::Says);
        bool const named = holdsText(entry.texts, {Field::Name, Field::Symbol});
        if (!named || !holdsText(entry.texts, {Field::Min, Field::Typ, Field::Max})) throw Wrong{"\"add\" needs a name or a symbol, and a value"};
    } else {
        entry.texts = textsOf(*set, "set", Use::Says);
    }
}

Entry entryOf(json const& object) {
    if (!object.is_object()) throw Wrong{"an object is needed"};
    allowOnly(object, {"document", "page", "row", "box", "set", "add", "not_a_parameter", "by", "date", "why"});
    Entry entry;
    entry.document = documentOf(object);
    entry.page = pageOf(object);
    if (auto const row = object.find("row"); row != object.end()) entry.row = textsOf(*row, "row", Use::Finds);
    if (auto const box = object.find("box"); box != object.end()) entry.box = boxOf(*box);
    readAction(object, entry);
    if (entry.action == Action::Add && !entry.row.empty()) throw Wrong{"\"row\" names a row that was read; leave it out beside \"add\""};
    if (entry.action != Action::Add && entry.row.empty() && !entry.box) throw Wrong{"\"row\" or \"box\" is needed to find the row"};
    entry.by = neededText(object, "by");
    entry.date = dateOf(object);
    entry.why = neededText(object, "why");
    return entry;
}

}  // namespace

std::string_view nameOf(Field field) { return kFieldNames[static_cast<std::size_t>(field)]; }

model::Result<std::vector<Entry>> parseCorrections(std::string_view text, std::string const& file) {
    auto const parsed = model::parseUserJson(text, "standin.corrections/1", file);
    if (!parsed) return tl::unexpected(parsed.error());
    std::vector<Entry> entries;
    int number = 0;  // of the entry at hand
    try {
        allowOnly(*parsed, {"schema", "corrections"});
        auto const list = parsed->find("corrections");
        if (list == parsed->end() || !list->is_array()) throw Wrong{"\"corrections\" is needed, a list"};
        for (auto const& object : *list) {
            ++number;
            entries.push_back(entryOf(object));
            entries.back().file = file;
            entries.back().number = number;
        }
    } catch (Wrong const& wrong) {
        return tl::unexpected(model::Error{model::ErrorKind::Usage, number > 0 ? fmt::format("correction {}: {}", number, wrong.message) : wrong.message, file});
    }
    return entries;
}

}  // namespace standin::corrections
