// A number in front is a mark only where nothing else fits: a value, a count or a pin may
// stand there too, and to take one of those for a mark would hide a difference. "9.3.1" tells by
// its form, "8.5" and "3" by the sheet, which has a section of that title, "1." and "(2)" by what
// stands behind them.
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
        {"pin",      "pins",     "terminal", "terminals", "lead",    "leads",   "pad",     "pads",    "channel",  "channels",  "cell",  "cells",  "battery", "batteries", "times",  "parts", "pieces",
         "package",  "packages", "output",   "outputs",   "input",   "inputs",  "switch",  "switches", "phase",   "phases",    "bit",   "bits",   "line",    "lines",     "wire",   "wires", "amplifier",
         "amplifiers", "regulator", "regulators", "comparator", "comparators", "transistor", "transistors", "resistor", "resistors", "capacitor", "capacitors"});
    return std::find(kCounted.begin(), kCounted.end(), lower) != kCounted.end();
}

// What a terminal may be called in words.
bool namesATerminal(std::string_view word) {
    static constexpr auto kTerminals =
        std::to_array<std::string_view>({"ground", "input", "output", "supply", "gate",   "drain",  "source",   "base",     "emitter",  "collector", "anode", "cathode",
                                         "enable", "reset", "sense",  "clock",  "select", "charge", "positive", "negative", "shutdown", "feedback",  "data",  "control"});
    return std::find(kTerminals.begin(), kTerminals.end(), text::asciiLower(word)) != kTerminals.end();
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
    if (!word || symbol || namesAPin(*first, names) || isCounted(lower) || namesATerminal(lower)) return false;
    // "In", "At" and "As" begin a sentence, though some are units of an odd spelling.
    return lower == "in" || lower == "at" || lower == "as" || !quantity::parseUnit(*first);
}

std::string_view firstWord(std::string_view text) { return text.substr(0, text.find_first_of(" -/,(")); }

// Begins with an article or the like: no list of pins does.
bool beginsASentence(std::string_view listed) {
    static constexpr auto kBeginnings = std::to_array<std::string_view>({"a", "an", "the", "this", "these", "if", "when", "for", "in", "at", "as", "it", "all", "each", "do", "where"});
    return std::find(kBeginnings.begin(), kBeginnings.end(), text::asciiLower(firstWord(listed))) != kBeginnings.end();
}

// "1) The cell …", "(b) The cell …", "[2] The cell …", "1. The cell …": what is listed.
Marked inList(std::string_view printed, SheetNames const& names) {
    bool const round = printed.front() == '(';
    bool const square = printed.front() == '[';
    std::size_t const begin = round || square ? 1 : 0;
    std::size_t const end = printed.find_first_of(square ? "]" : round ? ")" : ").");
    if (end == std::string_view::npos || end <= begin || end - begin > 2 || end + 1 >= printed.size()) return unmarked(printed);
    bool const point = printed[end] == '.';
    std::string_view const mark = printed.substr(begin, end - begin);
    bool const number = std::all_of(mark.begin(), mark.end(), text::isAsciiDigit);
    bool const letter = mark.size() == 1 && text::isAsciiLetter(mark.front()) && !point;
    std::string_view const listed = text::trimmed(printed.substr(end + 1));
    if (!(number || letter) || !readsAsListed(listed, names)) return unmarked(printed);
    if (point && (printed[end + 1] != ' ' || !beginsASentence(listed))) return unmarked(printed);
    return {Marked::Kind::InList, mark, listed};
}

// "→": one state follows another. U+FFFD: a sign that the font does not tell.
std::string withoutArrows(std::string_view title) {
    std::string plain(title);
    for (std::string_view const arrow : {"→", "⇒", "➔", "\uFFFD"}) {
        for (std::size_t at = plain.find(arrow); at != std::string::npos; at = plain.find(arrow, at)) plain.replace(at, arrow.size(), "-");
    }
    return plain;
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

bool hasDigits(std::string_view title) { return title.find_first_of("0123456789") != std::string_view::npos; }

// The sheet's section of that title, number and all, or of a title of several lines whose first one it is ("4. Charge" may be
// a pin beside "4. Charge of the mast"); empty: none.
std::string_view sectionTitle(std::string_view printed, SheetNames const& names) {
    constexpr std::string_view kContinued = " (continued)";
    std::string_view const plain = text::asciiLower(printed).ends_with(kContinued) ? printed.substr(0, printed.size() - kContinued.size()) : printed;
    bool const severalWords = std::count(printed.begin(), printed.end(), ' ') >= 2;
    for (std::string const& title : names.titles) {
        if (title == printed || title == plain || (severalWords && title.size() > printed.size() && title.starts_with(printed) && title[printed.size()] == ' ')) return title;
    }
    return {};
}

// Words in front of which stands no value of a unit, no pin and, unless the number has a point
// in it, no count.
bool readsAsTitle(std::string_view title, bool whole, SheetNames const& names) {
    constexpr std::size_t kShortestWord = 4;  // shorter ones may be units or symbols
    std::string_view const first = firstWord(title);
    std::string const lower = text::asciiLower(first);
    bool const counts = lower == "times" || (whole && isCounted(lower));
    return first.size() >= kShortestWord && isPlainTitle(title) && !quantity::parseUnit(first) && !namesAPin(first, names) && !counts;
}

// "Charge detection after an empty cell": more words than a pin is named by.
bool hasManyWords(std::string_view title) {
    static constexpr auto kSmall = std::to_array<std::string_view>({"a", "an", "and", "after", "at", "before", "by", "for", "from", "in", "into", "of", "on", "or", "the", "to", "with"});
    constexpr std::ptrdiff_t kMany = 3;
    auto const words = text::words(title);
    return std::count_if(words.begin(), words.end(),
                         [](std::string_view word) { return text::isAsciiLetter(word.front()) && std::find(kSmall.begin(), kSmall.end(), word) == kSmall.end(); }) >= kMany;
}

// "Charge detection after …", "Reset before …", "Shutdown during …": what happens when, which no pin is named by. "Input of the
// lamp after …", "Charge input after …" say what a pin does.
bool saysWhen(std::string_view title) {
    static constexpr auto kHappens = std::to_array<std::string_view>({"charge", "reset", "shutdown"});
    static constexpr auto kPins = std::to_array<std::string_view>({"input", "output", "pin", "terminal", "gate", "drain", "source", "ground", "supply"});
    auto const isOneOf = [](auto const& list, std::string_view word) { return std::find(list.begin(), list.end(), text::asciiLower(word)) != list.end(); };
    auto const words = text::words(title);
    if (words.empty() || !isOneOf(kHappens, words.front())) return false;
    bool const pin = std::any_of(words.begin(), words.end(), [&](std::string_view word) { return isOneOf(kPins, word); });
    return !pin && std::any_of(words.begin(), words.end(), [&](std::string_view word) { return isOneOf(std::to_array<std::string_view>({"after", "before", "during"}), word); });
}

// "4." in front: "2. VSS", "2. Ground" and "2. Cell Minus Sense Input" are pins, unless the sheet has a section of that
// title; `section` is its title or empty.
bool readsAsChapter(std::string_view title, std::string_view section, SheetNames const& names) {
    std::string_view const first = firstWord(title);
    if (hasDigits(title) || !isPlainTitle(withoutArrows(title)) || namesAPin(first, names)) return false;
    return hasManyWords(section) || (hasManyWords(title) && saysWhen(title)) || (!isCounted(text::asciiLower(first)) && !namesATerminal(first));
}

// "9.3.1": no date and no version, whose parts may begin with 0 or have more digits.
bool isDeepNumber(std::string_view mark) {
    std::size_t parts = 0;
    while (!mark.empty()) {
        std::string_view const part = mark.substr(0, mark.find('.'));
        if (part.empty() || part.size() > 2 || part.front() == '0') return false;
        ++parts;
        mark.remove_prefix(std::min(mark.size(), part.size() + 1));
    }
    return parts >= 3;
}

// "4. Ordering information", "4.1.2 Ratings"; "8.5 Ratings" and "3 Description" of the sheet's sections.
Marked heading(std::string_view printed, SheetNames const& names) {
    std::size_t const end = printed.find_first_not_of("0123456789.");
    if (end == 0 || end == std::string_view::npos || printed[end] != ' ' || printed.front() == '.') return unmarked(printed);
    std::string_view mark = printed.substr(0, end);
    std::string_view const title = text::trimmed(printed.substr(end));
    if (title.empty() || title.size() > kLongestTitle || !text::isAsciiLetter(title.front())) return unmarked(printed);
    bool const point = mark.back() == '.';
    if (point) mark.remove_suffix(1);
    bool const whole = mark.find('.') == std::string_view::npos;
    std::string_view const section = sectionTitle(printed, names);
    bool reads = false;
    if (isDeepNumber(mark)) reads = !hasDigits(title) || !section.empty();
    else reads = (point && readsAsChapter(title, section, names)) || (!section.empty() && readsAsTitle(title, whole, names));
    return reads ? Marked{Marked::Kind::Heading, mark, title} : unmarked(printed);
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
