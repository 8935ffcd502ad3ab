// Whether a number in front is a mark is told by its form ("9.3.1"), by what stands
// behind it (words that read as a title or a sentence, no unit, no pin, nothing that is
// counted), or by the sheet, which has a section of that title.
//
// Tested by tests/src/compare/printed_marks_test.cpp and wording_classes_test.cpp.
#include "compare/printed_marks.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "compare/node_names.h"
#include "compare/wording_phrases.h"
#include "quantity/unit.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

constexpr auto kOperators = std::to_array<std::string_view>({"×", "·", "*", "/", "+", " - ", "−"});

constexpr std::size_t kLongestTitle = 80;

Marked unmarked(std::string_view printed) { return {Marked::Kind::None, {}, printed}; }

bool hasName(std::vector<std::string> const& names, std::string_view name) { return std::find(names.begin(), names.end(), name) != names.end(); }

// A name that a number in front of it or behind it may be the pin of.
bool namesAPin(std::string_view word, SheetNames const& names) {
    std::string const lower = text::asciiLower(word);
    return isCommonPinName(lower) || hasName(names.pins, lower) || nodeKey(word) != lower || !terminalKey(word).empty();
}

bool isCounted(std::string_view lower) {
    static constexpr auto kCounted = std::to_array<std::string_view>(
        {"pin", "pins", "terminal", "terminals", "lead", "leads", "pad", "pads", "channel", "channels", "cell", "cells", "battery", "batteries", "times", "parts", "pieces"});
    return std::find(kCounted.begin(), kCounted.end(), lower) != kCounted.end();
}

// Begins as a sentence does: no unit, no name of a pin, nothing that is counted.
bool readsAsListed(std::string_view listed, SheetNames const& names) {
    constexpr std::size_t kFewestWords = 3;
    if (text::asciiLower(listed.substr(0, 6)) == "where:" || text::asciiLower(listed) == "where") return true;  // behind an equation
    if (listed.empty() || !text::isAsciiUpper(listed.front())) return false;
    auto const words = text::words(listed);
    auto const first = std::find_if(words.begin(), words.end(), [](std::string_view word) { return !isFiller(text::asciiLower(word), PhraseLanguage::English); });
    if (words.size() < kFewestWords || first == words.end() || first->size() < 2) return false;
    if (*first == "IC" && first != words.begin()) return true;  // "The IC …"; without the article a current
    bool const word = text::isAsciiLetter(first->front()) && std::all_of(first->begin() + 1, first->end(), text::isAsciiLower);
    bool const symbol = first->front() == 'V' && std::string_view("aeiou").find((*first)[1]) == std::string_view::npos;
    std::string const lower = text::asciiLower(*first);
    if (!word || symbol || namesAPin(*first, names) || isCounted(lower)) return false;
    // "In", "At" and "As" begin a sentence, though some are units of an odd spelling.
    return lower == "in" || lower == "at" || lower == "as" || !quantity::parseUnit(*first);
}

// What a terminal may be called in one word.
bool namesATerminal(std::string_view title) {
    static constexpr auto kTerminals =
        std::to_array<std::string_view>({"ground", "input", "output", "supply", "gate", "drain", "source", "base", "emitter", "collector", "anode", "cathode"});
    return std::find(kTerminals.begin(), kTerminals.end(), text::asciiLower(title)) != kTerminals.end();
}

// "[1] …": what a footnote says.
Marked footnote(std::string_view printed) {
    std::size_t const end = printed.find("] ");
    if (printed.front() != '[' || end == std::string_view::npos || end < 2 || end > 3) return unmarked(printed);
    std::string_view const mark = printed.substr(1, end - 1);
    if (!std::all_of(mark.begin(), mark.end(), text::isAsciiDigit)) return unmarked(printed);
    return {Marked::Kind::InList, mark, text::trimmed(printed.substr(end + 1))};
}

// "1) The cell …", "(b) The cell …", "1. The cell …": what is listed.
Marked inList(std::string_view printed, SheetNames const& names) {
    bool const opened = !printed.empty() && printed.front() == '(';
    std::size_t const begin = opened ? 1 : 0;
    std::size_t const end = printed.find_first_of(opened ? ")" : ").");
    if (end == std::string_view::npos || end <= begin || end - begin > 2 || end + 1 >= printed.size()) return unmarked(printed);
    bool const point = printed[end] == '.';
    if (point && printed[end + 1] != ' ') return unmarked(printed);
    std::string_view const mark = printed.substr(begin, end - begin);
    bool const number = std::all_of(mark.begin(), mark.end(), text::isAsciiDigit);
    bool const letter = mark.size() == 1 && text::isAsciiLetter(mark.front()) && !point;
    std::string_view const listed = text::trimmed(printed.substr(end + 1));
    bool const reads = (number || letter) && readsAsListed(listed, names);
    return reads ? Marked{Marked::Kind::InList, mark, listed} : unmarked(printed);
}

// Letters and signs between words; what is in brackets may be anything.
bool isPlainTitle(std::string_view title) {
    int depth = 0;
    for (char const c : title) {
        if (c == '(') ++depth;
        else if (c == ')') --depth;
        else if (depth == 0 && !text::isAsciiLetter(c) && std::string_view(" -/,").find(c) == std::string_view::npos) return false;
    }
    return true;
}

// "8.5" in front: "3.3 V supply" is a value.
bool readsAsTitle(std::string_view title, SheetNames const& names) {
    constexpr std::size_t kShortestWord = 4;  // shorter ones may be units or symbols
    if (!text::isAsciiUpper(title.front()) || !isPlainTitle(title)) return false;
    std::string_view const first = title.substr(0, title.find_first_of(" -/,("));
    return first.size() >= kShortestWord && !quantity::parseUnit(first) && !namesAPin(first, names) && !isCounted(text::asciiLower(first));
}

// "4." in front: "2. VSS" and "2. Ground" are pins.
bool readsAsChapter(std::string_view title, SheetNames const& names) {
    std::string_view const first = title.substr(0, title.find(' '));
    bool const words = title.find_first_of("0123456789") == std::string_view::npos && isPlainTitle(title);
    return words && !namesAPin(first, names) && !isCounted(text::asciiLower(first)) && !namesATerminal(title);
}

// "4. Ordering information", "8.5 Ratings", "4.1.2 Ratings", "3 Description".
Marked heading(std::string_view printed, SheetNames const& names) {
    std::size_t const end = printed.find_first_not_of("0123456789.");
    if (end == 0 || end == std::string_view::npos || printed[end] != ' ' || printed.front() == '.') return unmarked(printed);
    std::string_view const mark = printed.substr(0, end);
    std::string_view const title = text::trimmed(printed.substr(end));
    if (title.empty() || title.size() > kLongestTitle || !text::isAsciiLetter(title.front()) || mark.find("..") != std::string_view::npos) return unmarked(printed);
    auto const points = std::count(mark.begin(), mark.end(), '.');
    bool const ends = mark.back() == '.';
    bool reads = points >= 2;
    if (points == 1) reads = ends ? readsAsChapter(title, names) : readsAsTitle(title, names);
    if (!reads && !namesAPin(title, names)) reads = std::find(names.titles.begin(), names.titles.end(), printed) != names.titles.end();
    return reads ? Marked{Marked::Kind::Heading, ends ? mark.substr(0, mark.size() - 1) : mark, title} : unmarked(printed);
}

// "Table 9-1. Status", "Figure 3: Status": a caption by its point or colon; "Fig.3 Status" by
// its missing space.
Marked caption(std::string_view printed) {
    static constexpr auto kLabels = std::to_array<std::string_view>({"table ", "figure ", "fig. ", "fig ", "fig."});
    std::string const lower = text::asciiLower(printed.substr(0, 8));
    auto const label = std::find_if(kLabels.begin(), kLabels.end(), [&lower](std::string_view word) { return lower.starts_with(word); });
    if (label == kLabels.end()) return unmarked(printed);
    std::size_t const end = printed.find_first_not_of("0123456789-", label->size());
    if (end == label->size() || end == std::string_view::npos || end + 2 >= printed.size()) return unmarked(printed);
    bool const pointed = (printed[end] == '.' || printed[end] == ':') && printed[end + 1] == ' ';
    bool const joined = label->back() == '.' && printed[end] == ' ' && text::isAsciiUpper(printed[end + 1]);
    std::string_view const title = text::trimmed(printed.substr(end + 1));
    return title.empty() || !(pointed || joined) ? unmarked(printed) : Marked{Marked::Kind::Caption, printed.substr(0, end), title};
}

// 0: no operator.
std::size_t lastOperatorEnd(std::string_view text) {
    std::size_t end = 0;
    for (std::string_view const sign : kOperators) {
        std::size_t const at = text.rfind(sign);
        if (at != std::string_view::npos) end = std::max(end, at + sign.size());
    }
    return end;
}

}  // namespace

Marked withoutMark(std::string_view printed, SheetNames const& names) {
    if (printed.empty()) return unmarked(printed);
    if (auto const marked = footnote(printed); marked.kind != Marked::Kind::None) return marked;
    if (auto const marked = inList(printed, names); marked.kind != Marked::Kind::None) return marked;
    if (auto const marked = heading(printed, names); marked.kind != Marked::Kind::None) return marked;
    return caption(printed);
}

// "V = I × R (3)": an equation without its number. A number in brackets behind a value, a unit
// or a pin's name says something, and so does one in a sentence.
std::string_view withoutEquationNumber(std::string_view printed, SheetNames const& names) {
    std::size_t const equals = printed.find('=');
    std::size_t const mark = printed.rfind(" (");
    if (equals == std::string_view::npos || mark == std::string_view::npos || mark < equals || printed.back() != ')') return printed;
    std::string_view const number = printed.substr(mark + 2, printed.size() - mark - 3);
    if (number.empty() || number.size() > 2 || !std::all_of(number.begin(), number.end(), text::isAsciiDigit)) return printed;
    std::string_view const left = text::trimmed(printed.substr(0, equals));
    std::string_view const right = text::trimmed(printed.substr(equals + 1, mark - equals - 1));
    std::size_t const operation = lastOperatorEnd(right);
    if (left.find(' ') != std::string_view::npos || operation == 0 || operation == right.size()) return printed;
    std::string_view const last = text::trimmed(right.substr(operation));
    bool const symbol = last.find(' ') == std::string_view::npos && text::isAsciiLetter(last.front()) && (text::isAsciiLetter(last.back()) || text::isAsciiDigit(last.back()));
    return symbol && !quantity::parseUnit(last) && !namesAPin(last, names) ? printed.substr(0, mark) : printed;
}

}  // namespace standin::compare
