// Splits the map into words and looks only at the sections that map codes.
//
// Tested by tests/extractors/poppler/to_unicode_map_test.cpp.
#include "extractors/poppler/to_unicode_map.h"

#include <charconv>

namespace standin::poppler {

namespace {

bool isSpace(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == '\0'; }

// Splits a map into "<hex>", "[", "]" and words.
class MapWords {
public:
    explicit MapWords(std::string_view text) : m_rest(text) {}

    std::string_view next() {
        while (!m_rest.empty() && isSpace(m_rest.front())) m_rest.remove_prefix(1);
        if (m_rest.empty()) return {};
        std::size_t length = 1;
        char const first = m_rest.front();
        if (first == '%') {
            while (!m_rest.empty() && m_rest.front() != '\n' && m_rest.front() != '\r') m_rest.remove_prefix(1);
            return next();
        }
        if (first == '<') {
            length = m_rest.find('>');
            length = length == std::string_view::npos ? m_rest.size() : length + 1;
        } else if (first != '[' && first != ']') {
            while (length < m_rest.size() && !isSpace(m_rest[length]) && m_rest[length] != '<' && m_rest[length] != '[' && m_rest[length] != ']') ++length;
        }
        std::string_view const word = m_rest.substr(0, length);
        m_rest.remove_prefix(length);
        return word;
    }

private:
    std::string_view m_rest;
};

// Value of "<41>"; -1 if it is none or beyond a byte.
int byteOf(std::string_view word) {
    if (word.size() < 3 || word.front() != '<' || word.back() != '>') return -1;
    std::string_view const digits = word.substr(1, word.size() - 2);
    unsigned value = 0;
    auto const result = std::from_chars(digits.data(), digits.data() + digits.size(), value, 16);
    return result.ec == std::errc{} && result.ptr == digits.data() + digits.size() && value < 256 ? static_cast<int>(value) : -1;
}

}  // namespace

std::array<bool, 256> codesOfMap(std::string_view map) {
    std::array<bool, 256> codes{};
    MapWords words(map);
    for (std::string_view word = words.next(); !word.empty(); word = words.next()) {
        if (word == "beginbfchar") {
            while (true) {
                std::string_view const code = words.next();
                if (code.empty() || code.front() != '<') break;
                (void)words.next();
                if (int const byte = byteOf(code); byte >= 0) codes[static_cast<std::size_t>(byte)] = true;
            }
        } else if (word == "beginbfrange") {
            while (true) {
                std::string_view const first = words.next();
                if (first.empty() || first.front() != '<') break;
                int const from = byteOf(first);
                int const to = byteOf(words.next());
                if (words.next() == "[") {
                    for (std::string_view entry = words.next(); !entry.empty() && entry != "]";) entry = words.next();
                }
                for (int byte = from; from >= 0 && byte <= to; ++byte) codes[static_cast<std::size_t>(byte)] = true;
            }
        }
    }
    return codes;
}

}  // namespace standin::poppler
