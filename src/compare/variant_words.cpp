// Words are split at anything that is neither letter nor digit; a sign stays with a
// number that stands alone.
//
// Tested by tests/src/compare/variant_words_test.cpp.
#include "compare/variant_words.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include "quantity/unit.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

bool isLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

bool isPointInNumber(std::string_view text, std::size_t at) {
    return text[at] == '.' && at > 0 && at + 1 < text.size() && text::isAsciiDigit(text[at - 1]) && text::isAsciiDigit(text[at + 1]);
}

constexpr std::string_view kDegreeSign = "°";

bool isDegreeSign(std::string_view text, std::size_t at) { return text.substr(at, kDegreeSign.size()) == kDegreeSign; }

// "mm74xc20": a maker's letters before the number of the trade, "74xc20".
bool isWithMakersLetters(std::string_view a, std::string_view b) {
    constexpr std::size_t kFewest = 5;
    if (b.size() < kFewest || a.size() <= b.size() || !text::isAsciiDigit(b.front()) || a.substr(a.size() - b.size()) != b) return false;
    std::string_view const before = a.substr(0, a.size() - b.size());
    return std::all_of(before.begin(), before.end(), isLetter);
}

bool isLetterOrDigit(char c) { return isLetter(c) || text::isAsciiDigit(c); }

// A place of a family's code where any of its members goes on otherwise: "_", and behind a figure "x" for another figure.
bool isOpenFor(std::string_view code, std::size_t at, char member) {
    if (code[at] == '_') return isLetterOrDigit(member);
    std::size_t const figures = code.find_last_not_of('x', at);
    return code[at] == 'x' && figures != std::string_view::npos && (text::isAsciiDigit(code[figures]) || code[figures] == '_') && text::isAsciiDigit(member);
}

// The longer one begins with the shorter, but for open places of either.
bool beginAlike(std::string_view shorter, std::string_view longer) {
    for (std::size_t at = 0; at < shorter.size(); ++at) {
        if (shorter[at] != longer[at] && !isOpenFor(shorter, at, longer[at]) && !isOpenFor(longer, at, shorter[at])) return false;
    }
    return true;
}

// One is the other, or the family that it belongs to: "74xc" and "74xc20", "xc2_" and "xc20", not "xc2" and "xc20".
bool areOneCode(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (isWithMakersLetters(b, a)) return true;
    if (!beginAlike(a, b)) return false;
    if (a.size() == b.size()) return true;
    return isLetter(a.back()) && std::all_of(b.begin() + static_cast<std::ptrdiff_t>(a.size()), b.end(), text::isAsciiDigit);
}

// Whole degrees in the order in which they are printed, of a text that is headed by them.
std::optional<VariantWords::Temperatures> temperaturesOf(std::string_view folded, std::vector<std::string> const& numbers) {
    if (folded.find(kDegreeSign) == std::string_view::npos || numbers.empty() || numbers.size() > 2) return std::nullopt;
    VariantWords::Temperatures found;
    for (auto const* end : {&found.lo, &found.hi}) {
        std::string const& number = end == &found.lo ? numbers.front() : numbers.back();
        auto const [stop, error] = std::from_chars(number.data(), number.data() + number.size(), end == &found.lo ? found.lo : found.hi);
        if (error != std::errc() || stop != number.data() + number.size()) return std::nullopt;
    }
    return found.lo <= found.hi ? std::optional(found) : std::nullopt;
}

// "_" behind a figure, with more of the word behind it or the word's end: "xc2_", "xc2_a".
bool isOpenPlace(std::string_view text, std::size_t at) {
    std::size_t const figure = text.find_last_not_of('_', at);
    return figure != std::string_view::npos && text::isAsciiDigit(text[figure]);
}

// "lq20a, b, ac" and "lq20a/b": the ends of further codes, one or two letters each.
void addFurtherEnds(std::vector<std::string>& codes, std::string_view code, std::string_view behind) {
    constexpr std::size_t kLongestEnd = 2;
    std::string_view const family = code.substr(0, code.find_last_of("0123456789_") + 1);
    while (!behind.empty() && (behind.front() == ',' || behind.front() == '/')) {
        behind.remove_prefix(std::min(behind.find_first_not_of(" ", 1), behind.size()));
        auto const end = static_cast<std::size_t>(std::find_if_not(behind.begin(), behind.end(), isLetterOrDigit) - behind.begin());
        std::string_view const letters = behind.substr(0, end);
        if (letters.empty() || letters.size() > kLongestEnd || !std::all_of(letters.begin(), letters.end(), text::isAsciiLower)) return;
        behind.remove_prefix(end);
        std::size_t const next = behind.find_first_not_of(' ');
        if (next != std::string_view::npos && std::string_view(",/;()").find(behind[next]) == std::string_view::npos) return;  // "c = 1 µf"
        codes.push_back(std::string(family) + std::string(letters));
    }
}

// What is left of the relation once no code decides.
VariantRelation relateTemperatures(VariantWords::Temperatures const& a, VariantWords::Temperatures const& b) {
    if (a == b) return VariantRelation::Shares;
    return a.hi == b.hi ? VariantRelation::Meets : VariantRelation::Apart;
}

}  // namespace

std::string codeKey(std::string_view printed) {
    std::string key = text::asciiLower(text::foldForComparison(printed));
    std::erase_if(key, [](char c) { return std::string_view(" -_/()[],;:*").find(c) != std::string_view::npos; });
    return key;
}

VariantWords variantWords(std::string_view printed) {
    VariantWords words;
    if (printed.empty()) return words;
    words.key = codeKey(printed);
    std::string const folded = text::asciiLower(text::foldForComparison(printed));
    std::string_view const all = folded;
    for (std::size_t at = 0; at < all.size();) {
        if (!isLetter(all[at]) && !text::isAsciiDigit(all[at])) {
            ++at;
            continue;
        }
        if (isDegreeSign(all, at)) {
            at += kDegreeSign.size();
            continue;
        }
        std::size_t end = at;
        bool letter = false;
        bool digit = false;
        while (end < all.size() && !isDegreeSign(all, end) && (isLetterOrDigit(all[end]) || isPointInNumber(all, end) || (all[end] == '_' && digit && isOpenPlace(all, end)))) {
            letter = letter || isLetter(all[end]);
            digit = digit || text::isAsciiDigit(all[end]);
            ++end;
        }
        // "QX01+" is another part than "QX01".
        if (digit && letter && end < all.size() && all[end] == '+') ++end;
        // "5V", "3.3V" is how much of something, as "5 V" is.
        std::string_view const word = all.substr(at, end - at);
        std::size_t const figures = std::min(word.find_first_not_of("0123456789."), word.size());
        if (digit && letter && figures > 0 && quantity::parseUnit(word.substr(figures))) {
            words.numbers.emplace_back(word.substr(0, figures));
            at = end;
            continue;
        }
        if (digit && letter) {
            words.codes.emplace_back(word);
            addFurtherEnds(words.codes, word, all.substr(end));
        }
        if (digit && !letter) words.numbers.push_back((at > 0 && all[at - 1] == '-' ? "-" : "") + std::string(all.substr(at, end - at)));
        at = end;
    }
    words.temperatures = temperaturesOf(all, words.numbers);
    for (auto* list : {&words.codes, &words.numbers}) {
        std::sort(list->begin(), list->end());
        list->erase(std::unique(list->begin(), list->end()), list->end());
    }
    return words;
}

bool codesMeet(std::vector<std::string> const& reference, std::vector<std::string> const& candidate) {
    return std::any_of(reference.begin(), reference.end(),
                       [&](std::string const& a) { return std::any_of(candidate.begin(), candidate.end(), [&](std::string const& b) { return areOneCode(a, b); }); });
}

bool standsForCode(std::string_view family, std::string_view code) { return family.size() <= code.size() && code.substr(0, family.size()) != family && beginAlike(family, code); }

VariantRelation relateVariants(VariantWords const& reference, VariantWords const& candidate) {
    if (reference.key == candidate.key) return VariantRelation::Same;
    bool const coded = !reference.codes.empty() && !candidate.codes.empty();
    bool const met = coded && codesMeet(reference.codes, candidate.codes);
    bool const made = !reference.nominals.empty() && !candidate.nominals.empty();
    if (made && !met) return reference.nominals == candidate.nominals ? VariantRelation::Shares : VariantRelation::Apart;
    if (reference.key.empty() || candidate.key.empty()) return VariantRelation::OneUnstated;
    if (coded && !met) return VariantRelation::Apart;
    if (reference.temperatures && candidate.temperatures) return relateTemperatures(*reference.temperatures, *candidate.temperatures);
    bool const numbered = !reference.numbers.empty() && !candidate.numbers.empty();
    if (numbered && reference.numbers != candidate.numbers) return VariantRelation::Apart;
    return numbered || coded ? VariantRelation::Shares : VariantRelation::Apart;
}

}  // namespace standin::compare
