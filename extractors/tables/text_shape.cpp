// Counts kinds of characters in one pass over the UTF-8 text.
// Tested by tests/extractors/tables/text_shape_test.cpp.
#include "extractors/tables/text_shape.h"

#include <algorithm>
#include <array>
#include <string>

#include "text/dashes.h"
#include "text/utf8.h"

namespace standin::tables {

namespace {

bool isDash(char32_t c) { return text::isDash(c) || c == U'\u30FC' || c == U'\u4E00' || c == U'\uFE63'; }

bool isRangeMark(char32_t c) { return c == U'~' || c == U'\uFF5E' || c == U'\u223C' || c == U'\u301C' || c == U'\u2026'; }

bool isOperator(char32_t c) {
    return c == U'+' || isDash(c) || c == U'\u00D7' || c == U'*' || c == U'/' || c == U'\u00F7' || c == U'\u00B1' || c == U'\u22C5';
}

bool isComparison(char32_t c) { return c == U'<' || c == U'>' || c == U'\u2264' || c == U'\u2265' || c == U'\u2266' || c == U'\u2267'; }

bool isSpace(char32_t c) { return c == U' ' || c == U'\u00A0' || c == U'\u3000' || (c >= U'\u2000' && c <= U'\u200B'); }

bool isDigit(char32_t c) { return (c >= U'0' && c <= U'9') || (c >= U'\uFF10' && c <= U'\uFF19'); }

constexpr std::size_t kLongestValue = 34;   // characters
constexpr std::size_t kLongestExpression = 22;
constexpr std::size_t kLongestQuotient = 8;
constexpr std::size_t kLongestLabel = 14;   // bytes
constexpr int kLongestUnitWord = 5;         // lower-case letters in a run: "ohms", "cycle"

// Words that stand in value columns.
bool isValueWord(std::string_view text) {
    static constexpr std::array<std::string_view, 12> kWords{"continuous", "unlimited", "indefinite", "infinite", "internally limited", "not limited",
                                                             "unbegrenzt", "continuously", "连续", "无限制", "内部限制", "連続"};
    if (text.size() > 24) return false;
    auto const lower = text::asciiLower(text::trimmed(text));
    return std::find(kWords.begin(), kWords.end(), lower) != kWords.end();
}

}  // namespace

Shape shapeOf(std::string_view text) {
    int digits = 0, letters = 0, dashes = 0, marks = 0, wide = 0, lowerRun = 0, longestRun = 0, operators = 0, slashes = 0, comparisons = 0;
    bool equals = false;
    bool startsNumeric = false;
    bool any = false;
    bool bracket = false;
    std::size_t count = 0;
    std::size_t at = 0;
    while (at < text.size()) {
        if (char const plain = text[at]; text::isAsciiLetter(plain)) {  // most of a table is letters: they count as nothing else
            ++at;
            ++count;
            ++letters;
            any = true;
            lowerRun = text::isAsciiLower(plain) ? lowerRun + 1 : 0;
            longestRun = lowerRun > longestRun ? lowerRun : longestRun;
            continue;
        }
        char32_t const c = text::decodeNext(text, at);
        if (isSpace(c)) {
            lowerRun = 0;
            continue;
        }
        if (!any) {
            startsNumeric = isDigit(c) || isOperator(c) || isRangeMark(c) || isComparison(c) || c == U'.' || c == U'\u2248';
            bracket = c == U'(';
            any = true;
        }
        ++count;
        if (isDigit(c)) ++digits;
        if (isDash(c)) ++dashes;
        if (c == U'*' || c == U'/' || c == U'.' || c == U'\u2026') ++marks;
        if (isOperator(c)) ++operators;
        if (c == U'/') ++slashes;
        if (isComparison(c)) ++comparisons;
        if (c == U'=' || c == U'\uFF1D' || c == U':' || c == U'\uFF1A') equals = true;
        if (c > 0x2E80 && !isDash(c) && c != U'\u2103' && c < 0xFF00) ++wide;
        lowerRun = 0;
    }
    if (!any) return Shape::Empty;
    if (digits == 0 && isValueWord(text)) return Shape::Expression;
    if (equals) {
        // "DIP8: 500": a value with its label.
        auto const colon = text.find(':');
        if (colon == std::string_view::npos || colon > kLongestLabel || text.find('=') != std::string_view::npos) return Shape::Words;
        auto const rest = text.substr(colon + 1);
        return rest.find(':') == std::string_view::npos && shapeOf(rest) == Shape::Number ? Shape::Number : Shape::Words;
    }
    if (digits == 0 && letters == 0 && wide == 0 && dashes + marks == static_cast<int>(count) && count <= 4) return Shape::Dash;
    if (count > kLongestValue || equals || wide > 1 || longestRun > kLongestUnitWord) return Shape::Words;
    if (digits == 0) return count <= 3 && (text == "NA" || text == "N/A" || text == "n.a." || text == "n/a") ? Shape::Dash : Shape::Words;
    if (bracket) return letters == 0 && digits > 1 ? Shape::Number : Shape::Words;
    if (startsNumeric) return letters <= 14 ? Shape::Number : Shape::Words;
    if (comparisons > 0) return Shape::Words;
    // A slash alone parts names as often as it divides: "VDD/2", but "AB12/AB13".
    bool const slashed = operators == slashes;
    if (operators > 0 && longestRun <= 3 && count <= (slashed ? kLongestQuotient : kLongestExpression)) return Shape::Expression;
    return Shape::Words;
}

bool endsOpen(std::string_view text) {
    text = text::trimmed(text);
    if (text.empty()) return false;
    std::size_t at = text.size();
    char32_t const last = text::decodePrevious(text, at);
    if (isOperator(last) && text.size() > 1) return text::trimmed(text.substr(0, at)).size() > 0 && shapeOf(text) != Shape::Dash;
    if (isRangeMark(last) || isComparison(last) || last == U'(' || last == U',' || last == U'=') return true;
    static constexpr std::array<std::string_view, 4> kWords{" to", " and", " or", " bis"};
    for (auto word : kWords) {
        if (text.size() > word.size() && text.substr(text.size() - word.size()) == word) return true;
    }
    return false;
}

bool opensBracket(std::string_view text) { return std::count(text.begin(), text.end(), '(') > std::count(text.begin(), text.end(), ')'); }

bool startsOpen(std::string_view text) {
    text = text::trimmed(text);
    if (text.empty()) return false;
    std::size_t at = 0;
    char32_t const first = text::decodeNext(text, at);
    if (first == U')' || first == U'\u00D7' || first == U'*' || first == U'/' || first == U'+' || isRangeMark(first)) {
        return shapeOf(text) != Shape::Dash && !(first == U'+' && at < text.size() && isDigit(static_cast<unsigned char>(text[at])));
    }
    return text.substr(0, 3) == "to " || text.substr(0, 4) == "bis ";
}

bool statesConditions(std::string_view text) {
    if (text.find('=') != std::string_view::npos || text.find("\u2264") != std::string_view::npos ||
        text.find("\uFF1D") != std::string_view::npos) {
        return true;
    }
    static constexpr std::array<std::string_view, 16> kPhrases{  // in lower case
        "unless", "otherwise", "noted", "\u00B0c", "\u2103", "\u00BAc", "除非", "另外", "另行", "条件", "指定", "特記", "sofern", "soweit", "если не",
        "respect to"};
    auto const lower = text::asciiLower(text);
    for (auto phrase : kPhrases) {
        if (lower.find(phrase) != std::string::npos) return true;
    }
    return false;
}

}  // namespace standin::tables
