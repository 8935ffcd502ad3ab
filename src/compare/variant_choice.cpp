// Tested by tests/src/compare/variant_choice_test.cpp.
#include "compare/variant_choice.h"

#include <algorithm>
#include <array>
#include <string>

#include "compare/variant_words.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

bool isLetterOrDigit(char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c); }

// Somewhere the code ends, with the text or before something that does not go on with it.
template <class GoesOn>
bool holdsEnded(std::string_view text, std::string_view code, GoesOn const& goesOn) {
    for (auto at = text.find(code); at != std::string_view::npos; at = text.find(code, at + 1)) {
        std::size_t const end = at + code.size();
        if (end == text.size() || !goesOn(text[end])) return true;
    }
    return false;
}

// "qx01" is in "qx01a", and not in "qx01+a".
bool holdsCode(std::string_view key, std::string_view code) {
    return holdsEnded(key, code, [](char c) { return c == '+'; });
}

// "-series" and "-xx" name a family, not a version.
bool namesFamily(std::string_view word) {
    constexpr std::array<std::string_view, 8> kWords{"series", "serie", "reihe", "family", "familie", "type", "typ", "types"};
    return std::find(kWords.begin(), kWords.end(), word) != kWords.end() || std::all_of(word.begin(), word.end(), [](char c) { return c == 'x'; });
}

// "hx20" is no more than the begin of "hx20-g", and all of "hx20-series".
bool isBeginOfCode(std::string_view printed, std::string_view code) {
    auto const at = printed.find(code);
    std::size_t const end = at + code.size();
    if (at == std::string_view::npos || end + 1 >= printed.size() || printed[end] != '-' || !isLetterOrDigit(printed[end + 1])) return false;
    auto const suffix = printed.substr(end + 1);
    return !namesFamily(suffix.substr(0, std::find_if_not(suffix.begin(), suffix.end(), isLetterOrDigit) - suffix.begin()));
}

// The number of a version behind its code, "28" of "hx20-28-tr"; empty: none. From `at` on, which goes behind it.
std::string_view nextNumber(std::string_view printed, std::string_view code, std::size_t& at) {
    std::size_t const behind = at + code.size();
    at = behind;
    if (behind >= printed.size() || printed[behind] != '-') return {};
    auto const digits = printed.substr(behind + 1);
    return digits.substr(0, std::find_if_not(digits.begin(), digits.end(), text::isAsciiDigit) - digits.begin());
}

// "hx20-33" is none of "hx20-28-tr".
bool statesOtherNumber(std::string_view printed, std::string_view chosen, std::string_view code) {
    std::size_t at = chosen.find(code);
    if (at == std::string_view::npos) return false;
    std::string_view const wanted = nextNumber(chosen, code, at);
    if (wanted.empty()) return false;
    for (at = printed.find(code); at != std::string_view::npos; at = printed.find(code, at)) {
        std::string_view const number = nextNumber(printed, code, at);
        if (number.empty() || number == wanted) return false;
    }
    return true;
}

// "hx20" is in "hx20-tr", and not in "hx20a-tr".
bool holdsWhole(std::string_view chosen, std::string_view code) {
    return holdsEnded(chosen, code, [](char c) { return c == '+' || isLetterOrDigit(c); });
}

}  // namespace

bool isOtherVariant(std::string_view printed, std::string_view chosen) {
    if (printed.empty() || chosen.empty()) return false;
    std::string const row = codeKey(printed);
    std::string const wanted = codeKey(chosen);
    if (row.find(wanted) != std::string::npos || wanted.find(row) != std::string::npos) return false;
    // "HX20A, HX20B" of the title of a table that holds for both, "HX20A-TR" chosen.
    auto const codes = variantWords(printed).codes;
    std::string const folded = text::asciiLower(text::foldForComparison(printed));
    std::string const whole = text::asciiLower(text::foldForComparison(chosen));
    return std::none_of(codes.begin(), codes.end(), [&](std::string const& code) {
        if (statesOtherNumber(folded, whole, code)) return false;
        return isBeginOfCode(folded, code) ? holdsWhole(whole, code) : holdsCode(wanted, code);
    });
}

}  // namespace standin::compare
