// Text that needs no care is appended at once; what has control characters or
// is no UTF-8 is left to the library. Tested by tests/src/model/json_text_test.cpp.
#include "model/json_text.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstring>
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

constexpr std::uint64_t eightOf(unsigned char byte) { return 0x0101010101010101U * byte; }

// Not 0 where one of eight bytes is a control character, a quote, a backslash or not ASCII.
std::uint64_t troubleIn(std::uint64_t bytes) {
    auto const isZero = [](std::uint64_t each) { return (each - eightOf(1)) & ~each; };  // top bit of the first such byte
    std::uint64_t const trouble = (bytes - eightOf(0x20)) | bytes | isZero(bytes ^ eightOf('"')) | isZero(bytes ^ eightOf('\\'));
    return trouble & eightOf(0x80);
}

// Whether `text` may stand between quotes as it is.
bool isPlain(std::string_view text) {
    constexpr std::size_t kEight = 8;
    for (std::size_t i = 0; i < text.size();) {
        if (std::uint64_t bytes = 0; i + kEight <= text.size()) {
            std::memcpy(&bytes, text.data() + i, kEight);
            if (troubleIn(bytes) == 0) {
                i += kEight;
                continue;
            }
        }
        auto const c = static_cast<unsigned char>(text[i]);
        if (c < 0x20 || c == '"' || c == '\\') return false;
        std::size_t const length = c < 0x80 ? 1 : wideCharacter(text.substr(i));
        if (length == 0) return false;
        i += length;
    }
    return true;
}

// A number of two decimals at most, as places on a page are, without a search for the
// shortest digits. Null: it is another number.
char* writeHundredths(char* at, double number) {
    constexpr double kLarge = 1e7;
    double const magnitude = std::fabs(number);
    if (magnitude >= kLarge) return nullptr;
    auto const hundredths = static_cast<std::uint32_t>(magnitude * 100 + 0.5);
    if (hundredths / 100.0 != magnitude) return nullptr;
    if (std::signbit(number)) *at++ = '-';
    constexpr int kLongest = 7;  // digits before the point
    at = std::to_chars(at, at + kLongest, hundredths / 100).ptr;
    *at++ = '.';
    *at++ = static_cast<char>('0' + hundredths / 10 % 10);
    if (hundredths % 10 != 0) *at++ = static_cast<char>('0' + hundredths % 10);
    return at;
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
                put(kColon);
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
    assert(isPlain(name));
    separate();
    constexpr std::string_view kEnd = "\": ";
    char* at = room(name.size() + 1 + kEnd.size());
    *at++ = '"';
    at = std::copy(name.begin(), name.end(), at);
    std::copy(kEnd.begin(), kEnd.end(), at);
    m_length += name.size() + 1 + kEnd.size();
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
    if (char const* const end = writeHundredths(digits.data(), number)) return bare({digits.data(), end});
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
    if (part.m_length == 0) return *this;
    if (!m_first) put(",");
    put(std::string_view(part.m_text).substr(0, part.m_length));
    m_first = false;
    return *this;
}

std::string JsonText::take() {
    m_text.resize(m_length);
    return std::move(m_text);
}

JsonText& JsonText::begin(char bracket) {
    startValue();
    put({&bracket, 1});
    m_depth += kIndent;
    m_first = true;
    return *this;
}

JsonText& JsonText::end(char bracket) {
    m_depth -= kIndent;
    if (!m_first) {
        char* const at = room(m_depth + 1);
        *at = '\n';
        std::fill_n(at + 1, m_depth, ' ');
        m_length += m_depth + 1;
    }
    put({&bracket, 1});
    m_first = false;
    return *this;
}

JsonText& JsonText::bare(std::string_view text) {
    startValue();
    put(text);
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
    constexpr std::size_t kCopied = kBreak.size() - 1;  // always as much, which is a few instructions
    std::size_t const begin = m_first ? 1 : 0;
    std::size_t const length = 2 - begin + m_depth;
    m_first = false;
    char* const at = room(length + kCopied);
    std::copy_n(kBreak.data() + begin, kCopied, at);
    if (length > kCopied) std::fill(at + kCopied, at + length, ' ');
    m_length += length;
}

void JsonText::write(std::string_view text) {
    if (!isPlain(text)) {
        put(Json(text).dump(-1, ' ', false, Json::error_handler_t::replace));
        return;
    }
    char* at = room(text.size() + 2);
    *at++ = '"';
    at = std::copy(text.begin(), text.end(), at);
    *at = '"';
    m_length += text.size() + 2;
}

char* JsonText::room(std::size_t bytes) {
    constexpr std::size_t kAhead = 1024;  // what is made ready at once stays in the cache until it is written
    if (m_text.size() - m_length < bytes) m_text.resize(m_length + bytes + kAhead);
    return m_text.data() + m_length;
}

void JsonText::put(std::string_view piece) {
    std::copy(piece.begin(), piece.end(), room(piece.size()));
    m_length += piece.size();
}

std::string jsonText(Json const& json) { return JsonText().value(json).take(); }

}  // namespace standin::model
