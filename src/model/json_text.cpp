// Text that needs no care is appended at once; what has control characters or
// is no UTF-8 is left to the library. Tested by tests/src/model/json_text_test.cpp.
#include "model/json_text.h"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <string_view>
#include <utility>

namespace standin::model {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kIndent = 2;
constexpr std::string_view kColon = ": ";

bool isContinuation(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80; }

// Bytes of the well-formed character of two to four bytes at the front of
// `text`, or 0.
std::size_t wideCharacter(std::string_view text) {
    auto const first = static_cast<unsigned char>(text[0]);
    std::size_t const length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length) return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if (!isContinuation(text[i])) return 0;
    }
    auto const second = static_cast<unsigned char>(text[1]);
    bool const overlong = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
    bool const outside = (first == 0xED && second >= 0xA0) || (first == 0xF4 && second >= 0x90);
    return overlong || outside ? 0 : length;
}

// Looks at every byte, so that the compiler can take many at once.
bool isPlainAscii(std::string_view text) {
    std::uint8_t bad = 0;
    for (char const byte : text) {
        auto const c = static_cast<std::uint8_t>(byte);
        bad |= static_cast<std::uint8_t>((c < 0x20) | (c >= 0x80) | (c == '"') | (c == '\\'));
    }
    return bad == 0;
}

// Whether `text` may stand between quotes as it is.
bool isPlain(std::string_view text) {
    if (isPlainAscii(text)) return true;
    for (std::size_t i = 0; i < text.size();) {
        auto const c = static_cast<unsigned char>(text[i]);
        if (c < 0x20 || c == '"' || c == '\\') return false;
        std::size_t const length = c < 0x80 ? 1 : wideCharacter(text.substr(i));
        if (length == 0) return false;
        i += length;
    }
    return true;
}

}  // namespace

JsonText JsonText::partOf(JsonText const& whole) {
    JsonText part;
    part.m_depth = whole.m_depth;
    part.m_placed = false;
    return part;
}

JsonText& JsonText::value(Json const& json) {
    switch (json.type()) {
        case Json::value_t::object:
            beginObject();
            for (auto const& [name, of] : json.get_ref<Json::object_t const&>()) {
                value(name);  // any text
                m_text += kColon;
                m_placed = true;
                value(of);
            }
            return endObject();
        case Json::value_t::array:
            beginArray();
            for (auto const& element : json.get_ref<Json::array_t const&>()) value(element);
            return endArray();
        case Json::value_t::string: return value(json.get_ref<std::string const&>());
        case Json::value_t::boolean: return value(json.get<bool>());
        case Json::value_t::number_integer: return value(json.get<std::int64_t>());
        case Json::value_t::number_unsigned: return value(json.get<std::uint64_t>());
        case Json::value_t::number_float: return value(json.get<double>());
        case Json::value_t::null: return value(nullptr);
        default: return bare(json.dump());
    }
}

JsonText& JsonText::key(std::string_view name) {
    assert(isPlainAscii(name));
    separate();
    m_text += '"';
    m_text += name;
    m_text += '"';
    m_text += kColon;
    m_placed = true;
    return *this;
}

JsonText& JsonText::value(std::string_view text) {
    startValue();
    write(text);
    return *this;
}

JsonText& JsonText::value(std::nullptr_t) { return bare("null"); }

JsonText& JsonText::value(double number) {
    if (!std::isfinite(number)) return bare("null");
    std::array<char, 64> digits{};
    char const* const last = nlohmann::detail::to_chars(digits.data(), digits.data() + digits.size(), number);
    return bare({digits.data(), static_cast<std::size_t>(last - digits.data())});
}

JsonText& JsonText::value(std::vector<std::string> const& texts) {
    beginArray();
    for (auto const& text : texts) value(text);
    return endArray();
}

JsonText& JsonText::value(std::array<double, 4> const& numbers) {
    beginArray();
    for (double const number : numbers) value(number);
    return endArray();
}

JsonText& JsonText::append(JsonText const& part) {
    if (part.m_text.empty()) return *this;
    if (!m_first) m_text += ',';
    m_text += part.m_text;
    m_first = false;
    return *this;
}

JsonText& JsonText::begin(char bracket) {
    startValue();
    m_text += bracket;
    m_depth += kIndent;
    m_first = true;
    return *this;
}

JsonText& JsonText::end(char bracket) {
    m_depth -= kIndent;
    if (!m_first) {
        m_text += '\n';
        m_text.append(m_depth, ' ');
    }
    m_text += bracket;
    m_first = false;
    return *this;
}

JsonText& JsonText::bare(std::string_view text) {
    startValue();
    m_text += text;
    return *this;
}

JsonText& JsonText::integer(std::int64_t number) {
    std::array<char, 24> digits{};
    auto const* const last = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    return bare({digits.data(), static_cast<std::size_t>(last - digits.data())});
}

JsonText& JsonText::integer(std::uint64_t number) {
    std::array<char, 24> digits{};
    auto const* const last = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    return bare({digits.data(), static_cast<std::size_t>(last - digits.data())});
}

void JsonText::startValue() {
    if (m_placed) m_placed = false;
    else separate();
}

// Before an element or a key.
void JsonText::separate() {
    static constexpr std::string_view kBreak = ",\n                                ";
    std::size_t const begin = m_first ? 1 : 0;
    std::size_t const length = 2 - begin + m_depth;
    m_first = false;
    m_text += kBreak.substr(begin, length);
    if (m_depth + 2 > kBreak.size()) m_text.append(m_depth + 2 - kBreak.size(), ' ');
}

void JsonText::write(std::string_view text) {
    if (!isPlain(text)) {
        m_text += Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
        return;
    }
    m_text += '"';
    m_text += text;
    m_text += '"';
}

std::string jsonText(Json const& json) { return JsonText().value(json).take(); }

}  // namespace standin::model
