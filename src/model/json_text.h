// Writes JSON as text. Private to model/.
//
//     std::string const text = jsonText(json);
//
//     JsonText out;
//     out.beginObject().member("page", 3).member("text", text).endObject();
//     out.take();
//
// Both give the same text as the library's dump(2, ' ', false, replace): two spaces
// of indent for each level, bytes that are no UTF-8 replaced by U+FFFD. In a quarter of
// the time, since plain text is copied as a whole, not letter by letter; written piece
// by piece, no tree is made of it first.
#pragma once

#include <array>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

namespace standin::model {

class JsonText {
public:
    JsonText() = default;
    // For more elements of the array or object that is open in `whole`, in another thread;
    // then whole.append(part).
    [[nodiscard]] static JsonText partOf(JsonText const& whole);

    JsonText& beginObject() { return begin('{'); }
    JsonText& endObject() { return end('}'); }
    JsonText& beginArray() { return begin('['); }
    JsonText& endArray() { return end(']'); }
    JsonText& key(std::string_view name);  // of printable ASCII without quotes and backslashes

    JsonText& value(nlohmann::ordered_json const& json);  // linear; recurses for each level
    JsonText& value(std::string_view text);
    JsonText& value(std::string const& text) { return value(std::string_view(text)); }
    JsonText& value(char const* text) { return value(std::string_view(text)); }
    JsonText& value(std::nullptr_t);
    JsonText& value(double number);
    JsonText& value(std::vector<std::string> const& texts);
    JsonText& value(std::array<double, 4> const& numbers);
    template <std::integral Integer>
    JsonText& value(Integer number) {
        if constexpr (std::same_as<Integer, bool>) return bare(number ? "true" : "false");
        else if constexpr (std::signed_integral<Integer>) return integer(static_cast<std::int64_t>(number));
        else return integer(static_cast<std::uint64_t>(number));
    }

    template <class Value>
    JsonText& member(std::string_view name, Value const& of) {
        return key(name).value(of);
    }
    // Null where it is empty.
    JsonText& textOrNull(std::string_view name, std::string_view text) { return text.empty() ? member(name, nullptr) : member(name, text); }

    // The elements of a part, after those that are there.
    JsonText& append(JsonText const& part);
    [[nodiscard]] std::string take();

private:
    JsonText& begin(char bracket);
    JsonText& end(char bracket);
    JsonText& bare(std::string_view text);
    JsonText& integer(std::int64_t number);
    JsonText& integer(std::uint64_t number);
    void startValue();
    void separate();
    void write(std::string_view text);
    char* room(std::size_t bytes);  // behind what is written, for as many more
    void put(std::string_view piece);

    std::string m_text;        // longer than what is written, so that a piece is a mere copy
    std::size_t m_length = 0;  // of what is written
    std::size_t m_depth = 0;
    bool m_first = true;   // nothing stands in the innermost bracket yet
    bool m_placed = true;  // what is written next needs no comma: it is the root or follows a key
};

[[nodiscard]] std::string jsonText(nlohmann::ordered_json const& json);

}  // namespace standin::model
