// Tested by tests/src/compare/variant_choice_test.cpp.
#include "compare/variant_choice.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <iterator>
#include <string>
#include <utility>

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

enum class Joint : std::uint8_t { None, Slash, List, Range };

// What joins two versions (" and ", "~", "/"), taken off the front of `text`.
Joint takeJoint(std::string_view& text) {
    struct Entry {
        std::string_view printed;
        Joint joint;
    };
    using enum Joint;
    constexpr Entry kJoints[] = {{"/", Slash},    {",", List},    {"&", List},      {"and ", List},      {"or ", List},   {"und ", List},
                                 {"oder ", List}, {"to ", Range}, {"thru ", Range}, {"through ", Range}, {"bis ", Range}, {"~", Range},
                                 {"..", Range},   {"…", Range},   {"- ", Range},    {"至", Range},       {"到", Range}};
    auto const rest = text.substr(std::min(text.find_first_not_of(' '), text.size()));
    auto const found = std::find_if(std::begin(kJoints), std::end(kJoints), [&](Entry const& entry) { return rest.starts_with(entry.printed); });
    if (found == std::end(kJoints)) return None;
    text = rest.substr(std::min(rest.find_first_not_of(" .-", found->printed.size()), rest.size()));
    Joint const next = takeJoint(text);  // ", and "
    return next == None ? found->joint : next;
}

bool endsHere(std::string_view text) {
    std::size_t const at = text.find_first_not_of(' ');
    return at == std::string_view::npos || std::string_view("();:").find(text[at]) != std::string_view::npos || takeJoint(text) != Joint::None;
}

bool comesBefore(std::string_view a, std::string_view b) { return a.size() != b.size() ? a.size() < b.size() : a < b; }

// The versions printed behind `first`, to its end the text: is one of them wanted, or does that lie between two? `complete` makes
// a version of what is printed of it; `code` may stand in front again. No version is "5" of "a, 5 v", "85" of "28 to 85 °c".
template <class Complete, class IsWanted>
bool meansFurther(std::string_view behind, std::string first, std::string_view between, std::string_view code, Complete const& complete, IsWanted const& isWanted) {
    while (true) {
        Joint const joint = takeJoint(behind);
        bool const again = behind.starts_with(code);
        if (again && behind.size() > code.size() && behind[code.size()] == '-') behind.remove_prefix(code.size() + 1);
        auto const end = wordAt(behind, 0);
        if (joint == Joint::None || end.empty()) return false;
        behind.remove_prefix(end.size());
        bool const sure = again || joint == Joint::Slash || (joint == Joint::Range && !text::isAsciiDigit(end.front()));
        std::string next = complete(end);
        if (!areOfOneKind(first, next) || !(sure || endsHere(behind))) return false;
        if (isWanted(next) || (joint == Joint::Range && areOfOneKind(first, between) && !comesBefore(between, first) && !comesBefore(next, between))) return true;
        first = std::move(next);
    }
}

// " or later" behind a version.
bool goesOnOpen(std::string_view behind) {
    constexpr std::array<std::string_view, 8> kOpen{"or later", "or higher", "or above", "and later", "and higher", "and above", "and up", "onward"};
    behind.remove_prefix(std::min(behind.find_first_not_of(' '), behind.size()));
    return std::any_of(kOpen.begin(), kOpen.end(), [behind](std::string_view words) { return behind.starts_with(words); });
}

// "hx20-33" is none of "hx20-28-tr", "hx20-a" none of "hx20-b"; "hx20-28/33" and "hx20-a to d" are of theirs.
bool statesOtherSuffix(std::string_view printed, std::string_view chosen, std::string_view code) {
    std::size_t at = chosen.find(code);
    if (at == std::string_view::npos) return false;
    std::string_view const wanted = nextSuffix(chosen, code, at);
    if (wanted.empty()) return false;
    auto const whole = [](std::string_view end) { return std::string(end); };
    auto const isWanted = [wanted](std::string_view version) { return version == wanted; };
    for (at = printed.find(code); at != std::string_view::npos; at = printed.find(code, at)) {
        std::string_view const suffix = nextSuffix(printed, code, at);
        if (suffix.empty() || suffix == wanted || !areOfOneKind(suffix, wanted)) return false;
        if (meansFurther(printed.substr(at), std::string(suffix), wanted, code, whole, isWanted)) return false;
        if (goesOnOpen(printed.substr(at)) && comesBefore(suffix, wanted)) return false;
    }
    return true;
}

// "hx20b" of "hx20a/b", and of "hx20a to hx20d": the ends of further codes are printed alone, or those between not at all.
bool meansFurtherCode(std::string_view printed, std::string_view wanted, std::string_view code) {
    std::size_t const at = printed.find(code);
    if (at == std::string_view::npos || code.back() == '+') return false;
    auto const complete = [code](std::string_view end) {
        return end.size() < code.size() ? std::string(code.substr(0, code.size() - end.size())) + std::string(end) : std::string(end);
    };
    auto const isWanted = [wanted](std::string_view version) { return holdsCode(wanted, version); };
    return meansFurther(printed.substr(at + code.size()), std::string(code), wanted.substr(0, code.size()), code.substr(0, 2), complete, isWanted);
}

// "HX20-A–D" as "HX20-A~D": a long hyphen behind another one.
std::string withRanges(std::string_view printed) {
    constexpr std::string_view kDash = "–";
    std::string text(printed);
    for (auto at = text.find(kDash); at != std::string::npos; at = text.find(kDash, at + 1)) {
        std::string_view const word = std::string_view(text).substr(0, at).substr(text.rfind(' ', at) + 1);
        if (word.find('-') != std::string_view::npos && isLetterOrDigit(word.back())) text.replace(at, kDash.size(), "~");
    }
    return text;
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
    auto const chosenCodes = variantWords(chosen).codes;
    std::string const folded = text::asciiLower(text::foldForComparison(withRanges(printed)));
    std::string const whole = text::asciiLower(text::foldForComparison(chosen));
    return std::none_of(codes.begin(), codes.end(), [&](std::string const& code) {
        if (statesOtherSuffix(folded, whole, code)) return false;
        if (std::any_of(chosenCodes.begin(), chosenCodes.end(), [&](std::string const& one) { return standsForCode(code, one); })) return true;
        return (isBeginOfCode(folded, code) ? holdsWhole(whole, code) : holdsCode(wanted, code)) || meansFurtherCode(folded, wanted, code);
    });
}

}  // namespace standin::compare
