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

std::string_view wordAt(std::string_view text, std::size_t at) {
    auto const rest = text.substr(at);
    return rest.substr(0, std::find_if_not(rest.begin(), rest.end(), isLetterOrDigit) - rest.begin());
}

// Is it a number, a letter, or letters with a number? More letters may be how the part is packed ("tr").
bool namesVersion(std::string_view suffix) {
    if (suffix.empty() || namesFamily(suffix)) return false;
    return suffix.size() == 1 || std::any_of(suffix.begin(), suffix.end(), text::isAsciiDigit);
}

bool areOfOneKind(std::string_view a, std::string_view b) {
    if (text::isAsciiDigit(a.front()) && text::isAsciiDigit(b.front())) return true;
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char one, char other) { return text::isAsciiDigit(one) == text::isAsciiDigit(other); });
}

// What names the version behind its code, "28" of "hx20-28tr", "b" of "hx20-b-tr"; empty: none. From `at` on, which goes behind it.
std::string_view nextSuffix(std::string_view printed, std::string_view code, std::size_t& at) {
    std::size_t const behind = at + code.size();
    at = behind;
    if (behind >= printed.size() || printed[behind] != '-') return {};
    auto suffix = wordAt(printed, behind + 1);
    if (!suffix.empty() && text::isAsciiDigit(suffix.front())) suffix = suffix.substr(0, std::find_if_not(suffix.begin(), suffix.end(), text::isAsciiDigit) - suffix.begin());
    if (!namesVersion(suffix)) return {};
    at = behind + 1 + suffix.size();
    return suffix;
}

bool holdsWord(std::string_view text, std::string_view word) {
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        if ((at == 0 || !isLetterOrDigit(text[at - 1])) && wordAt(text, at) == word) return true;
    }
    return false;
}

// " to hx20-50", "~d" behind a version: those between are meant too.
bool goesOnToAnother(std::string_view behind) {
    constexpr std::array<std::string_view, 9> kTo{"to ", "thru ", "through ", "bis ", "~", "...", "…", "至", "到"};
    behind.remove_prefix(std::min(behind.find_first_not_of(' '), behind.size()));
    return std::any_of(kTo.begin(), kTo.end(), [&](std::string_view to) { return behind.substr(0, to.size()) == to; });
}

// "hx20-33" is none of "hx20-28-tr", "hx20-a" none of "hx20-b"; "hx20-28/33" and "hx20-a to d" are of theirs.
bool statesOtherSuffix(std::string_view printed, std::string_view chosen, std::string_view code) {
    std::size_t at = chosen.find(code);
    if (at == std::string_view::npos) return false;
    std::string_view const wanted = nextSuffix(chosen, code, at);
    if (wanted.empty() || holdsWord(printed, wanted)) return false;
    for (at = printed.find(code); at != std::string_view::npos; at = printed.find(code, at)) {
        std::string_view const suffix = nextSuffix(printed, code, at);
        if (suffix.empty() || suffix == wanted || !areOfOneKind(suffix, wanted) || goesOnToAnother(printed.substr(at))) return false;
    }
    return true;
}

// "hx20b" of "hx20a/b", and of "hx20a to hx20d": the ends of further codes are printed alone, or those between not at all.
bool meansFurther(std::string_view printed, std::string_view wanted, std::string_view code) {
    std::size_t const behind = printed.find(code) + code.size();
    if (behind > printed.size() || code.size() < 2) return false;
    if (goesOnToAnother(printed.substr(behind))) return wanted.substr(0, code.size() - 1) == code.substr(0, code.size() - 1);
    for (std::size_t at = behind; at < printed.size(); ++at) {
        if (isLetterOrDigit(printed[at - 1]) || printed[at - 1] == '-' || !isLetterOrDigit(printed[at])) continue;
        auto const end = wordAt(printed, at);
        if (end.size() >= code.size() || code.back() == '+' || !areOfOneKind(code.substr(code.size() - end.size()), end)) continue;
        if (holdsCode(wanted, std::string(code.substr(0, code.size() - end.size())) + std::string(end))) return true;
    }
    return false;
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
        if (statesOtherSuffix(folded, whole, code)) return false;
        return (isBeginOfCode(folded, code) ? holdsWhole(whole, code) : holdsCode(wanted, code)) || meansFurther(folded, wanted, code);
    });
}

}  // namespace standin::compare
