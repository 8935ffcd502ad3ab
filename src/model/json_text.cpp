// Text that needs no care is appended at once; what has control characters or
// is no UTF-8 is left to the library. Tested by tests/src/model/json_text_test.cpp.
#include "model/json_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <string_view>
#include <utility>

namespace standin::model {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kIndent = 2;

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

// Whether `text` may stand between quotes as it is.
bool isPlain(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        auto const c = static_cast<unsigned char>(text[i]);
        if (c < 0x20 || c == '"' || c == '\\') return false;
        std::size_t const length = c < 0x80 ? 1 : wideCharacter(text.substr(i));
        if (length == 0) return false;
        i += length;
    }
    return true;
}

class Writer {
public:
    void write(Json const& json) {
        switch (json.type()) {
            case Json::value_t::object: writeAll(json.get_ref<Json::object_t const&>(), '{', '}'); break;
            case Json::value_t::array: writeAll(json.get_ref<Json::array_t const&>(), '[', ']'); break;
            case Json::value_t::string: writeString(json.get_ref<std::string const&>()); break;
            case Json::value_t::boolean: m_text += json.get<bool>() ? "true" : "false"; break;
            case Json::value_t::number_integer: writeInteger(json.get<std::int64_t>()); break;
            case Json::value_t::number_unsigned: writeInteger(json.get<std::uint64_t>()); break;
            case Json::value_t::number_float: writeFloat(json.get<double>()); break;
            case Json::value_t::null: m_text += "null"; break;
            default: m_text += json.dump(); break;
        }
    }

    std::string take() { return std::move(m_text); }

private:
    template <class Entries>
    void writeAll(Entries const& entries, char opening, char closing) {
        m_text += opening;
        m_depth += kIndent;
        bool first = true;
        for (auto const& entry : entries) {
            if (!first) m_text += ',';
            first = false;
            newLine();
            writeEntry(entry);
        }
        m_depth -= kIndent;
        if (!first) newLine();
        m_text += closing;
    }

    void writeEntry(Json const& entry) { write(entry); }
    void writeEntry(Json::object_t::value_type const& member) {
        writeString(member.first);
        m_text += ": ";
        write(member.second);
    }

    void newLine() {
        m_text += '\n';
        m_text.append(m_depth, ' ');
    }

    void writeString(std::string const& text) {
        if (!isPlain(text)) {
            m_text += Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
            return;
        }
        m_text += '"';
        m_text += text;
        m_text += '"';
    }

    template <class Integer>
    void writeInteger(Integer number) {
        std::array<char, 24> digits{};
        auto const end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
        m_text.append(digits.data(), end);
    }

    void writeFloat(double number) {
        if (!std::isfinite(number)) {
            m_text += "null";
            return;
        }
        std::array<char, 64> digits{};
        char* const end = nlohmann::detail::to_chars(digits.data(), digits.data() + digits.size(), number);
        m_text.append(digits.data(), end);
    }

    std::string m_text;
    std::size_t m_depth = 0;
};

}  // namespace

std::string jsonText(Json const& json) {
    Writer writer;
    writer.write(json);
    return writer.take();
}

}  // namespace standin::model
