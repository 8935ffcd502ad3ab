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

// One is the other, or the family that it belongs to: "74xc" and "74xc20", not "xc2" and "xc20".
bool areOneCode(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (isWithMakersLetters(b, a)) return true;
    if (b.substr(0, a.size()) != a) return false;
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
        while (end < all.size() && !isDegreeSign(all, end) && (isLetter(all[end]) || text::isAsciiDigit(all[end]) || isPointInNumber(all, end))) {
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
        if (digit && letter) words.codes.emplace_back(all.substr(at, end - at));
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
