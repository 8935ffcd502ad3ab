// Words are split at anything that is neither letter nor digit; a sign stays with a
// number that stands alone.
//
// Tested by tests/src/compare/variant_words_test.cpp.
#include "compare/variant_words.h"

#include <algorithm>
#include <iterator>

#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

bool isLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

bool isPointInNumber(std::string_view text, std::size_t at) {
    return text[at] == '.' && at > 0 && at + 1 < text.size() && text::isAsciiDigit(text[at - 1]) && text::isAsciiDigit(text[at + 1]);
}

bool meet(std::vector<std::string> const& a, std::vector<std::string> const& b) {
    std::vector<std::string> common;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(common));
    return !common.empty();
}

}  // namespace

VariantWords variantWords(std::string_view printed) {
    VariantWords words;
    if (printed.empty()) return words;
    words.key = text::foldKey(printed);
    std::string const folded = text::asciiLower(text::foldForComparison(printed));
    std::string_view const all = folded;
    for (std::size_t at = 0; at < all.size();) {
        if (!isLetter(all[at]) && !text::isAsciiDigit(all[at])) {
            ++at;
            continue;
        }
        std::size_t end = at;
        bool letter = false;
        bool digit = false;
        while (end < all.size() && (isLetter(all[end]) || text::isAsciiDigit(all[end]) || isPointInNumber(all, end))) {
            letter = letter || isLetter(all[end]);
            digit = digit || text::isAsciiDigit(all[end]);
            ++end;
        }
        if (digit && letter) words.codes.emplace_back(all.substr(at, end - at));
        if (digit && !letter) words.numbers.push_back((at > 0 && all[at - 1] == '-' ? "-" : "") + std::string(all.substr(at, end - at)));
        at = end;
    }
    for (auto* list : {&words.codes, &words.numbers}) {
        std::sort(list->begin(), list->end());
        list->erase(std::unique(list->begin(), list->end()), list->end());
    }
    return words;
}

VariantRelation relateVariants(VariantWords const& reference, VariantWords const& candidate) {
    if (reference.key == candidate.key) return VariantRelation::Same;
    if (reference.key.empty() || candidate.key.empty()) return VariantRelation::OneUnstated;
    bool const numbered = !reference.numbers.empty() && !candidate.numbers.empty();
    if (numbered && reference.numbers != candidate.numbers) return VariantRelation::Apart;
    if (!reference.codes.empty() && !candidate.codes.empty()) return meet(reference.codes, candidate.codes) ? VariantRelation::Shares : VariantRelation::Apart;
    return numbered ? VariantRelation::Shares : VariantRelation::Apart;
}

}  // namespace standin::compare
