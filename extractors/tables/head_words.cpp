// The text is brought to a key (lower case, no spaces, points and bracketed
// additions) and looked up; a bilingual title is looked up by its two halves.
// Tested by tests/extractors/tables/head_words_test.cpp.
#include "extractors/tables/head_words.h"

#include <string>

#include "text/script.h"
#include "text/utf8.h"

namespace standin::tables {

namespace {

using vocabulary::columnTitleOf;

constexpr std::size_t kLongestTitle = 60;  // bytes

char32_t lowered(char32_t c) {
    if (c < 0x80) return c >= U'A' && c <= U'Z' ? c + 32 : c;
    if (c >= U'\u0410' && c <= U'\u042F') return c + 32;
    if (c >= U'\u00C0' && c <= U'\u00DE' && c != U'\u00D7') return c + 32;
    if (c >= U'\uFF21' && c <= U'\uFF3A') return c - U'\uFF21' + U'a';
    if (c >= U'\uFF41' && c <= U'\uFF5A') return c - U'\uFF41' + U'a';
    return c;
}

void makeLower(std::string& key) {
    for (char& c : key) c = text::isAsciiUpper(c) ? static_cast<char>(c + ('a' - 'A')) : c;
}

}  // namespace

ColumnTitle columnTitle(std::string_view text) {
    if (text.empty() || text.size() > kLongestTitle) return ColumnTitle::None;
    std::string key;
    std::string latin;  // of a key that holds CJK as well
    std::string wide;
    int depth = 0;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && text::isAsciiLetter(text[end])) ++end;
        if (end > at) {  // most of all text
            std::string_view const letters = text.substr(at, end - at);
            at = end;
            if (depth > 0) continue;
            key += letters;
            if (!wide.empty()) latin += letters;
            continue;
        }
        char32_t const c = lowered(text::decodeNext(text, at));
        if (c == U' ') continue;
        if (c == U'(' || c == U'[' || c == U'\uFF08' || c == U'\u3010') {
            ++depth;
            continue;
        }
        if (c == U')' || c == U']' || c == U'\uFF09' || c == U'\u3011') {
            depth = depth > 0 ? depth - 1 : 0;
            continue;
        }
        if (depth > 0) continue;
        if (c >= U'0' && c <= U'9') return ColumnTitle::None;  // "4 PINS" is a value
        if (!vocabulary::isInColumnTitleKey(c)) continue;
        bool const cjk = text::isCjk(c);
        if (cjk && wide.empty()) latin = key;
        text::append(key, c);
        if (cjk) {
            text::append(wide, c);
        } else if (!wide.empty()) {
            text::append(latin, c);
        }
    }
    makeLower(key);
    if (auto const title = columnTitleOf(key); title != ColumnTitle::None) return title;
    if (latin.empty() || wide.empty()) return ColumnTitle::None;
    if (auto const title = columnTitleOf(wide); title != ColumnTitle::None) return title;
    makeLower(latin);
    return columnTitleOf(latin);
}

}  // namespace standin::tables
