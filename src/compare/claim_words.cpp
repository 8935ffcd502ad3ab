// Quantities first, since "4.5 V" would be two words; what is left is parted at
// hyphens between letters and folded.
// Tested by tests/src/compare/claim_words_test.cpp.
#include "compare/claim_words.h"

#include <algorithm>

#include "quantity/numbers.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

bool isAsciiWord(char byte) { return text::isAsciiLetter(byte) || text::isAsciiDigit(byte); }

bool saysSomething(std::string_view word) {
    return std::any_of(word.begin(), word.end(), [](char byte) { return isAsciiWord(byte) || static_cast<unsigned char>(byte) >= 0xC3; });
}

// "V_{BAT(REG)}" and "VBAT(REG)" are one symbol.
std::string keyOfWord(std::string_view word) {
    std::string kept;
    kept.reserve(word.size());
    bool ascii = true;
    for (char const byte : word) {
        bool const bare = isAsciiWord(byte) || static_cast<unsigned char>(byte) >= 0x80;
        if (bare || byte == '+' || byte == '.' || byte == '/') kept.push_back(text::isAsciiUpper(byte) ? static_cast<char>(byte | ' ') : byte);
        ascii = ascii && static_cast<unsigned char>(byte) < 0x80;
    }
    while (!kept.empty() && (kept.back() == '.' || kept.back() == '/')) kept.pop_back();
    std::string key = text::unifiedSpelling(ascii ? kept : text::lowerCase(kept));
    key.resize(text::singular(key).size());  // which takes off an ending
    return key;
}

bool isSign(std::string_view word) { return !saysSomething(word); }

// Calls take(part) for each: "on-resistance" -> "on", "resistance"; "SOT-23" stays.
template <class Take>
void forEachPart(std::string_view word, Take const& take) {
    std::size_t start = 0;
    for (std::size_t i = 1; i + 1 < word.size(); ++i) {
        bool const joins = (word[i] == '-' || word[i] == '/') && text::isAsciiLetter(word[i - 1]) && text::isAsciiLetter(word[i + 1]);
        if (!joins) continue;
        take(word.substr(start, i - start));
        start = i + 1;
    }
    take(word.substr(start));
}

std::string keyOfQuantity(quantity::QuantitySpan const& span) {
    std::string key = span.value.toString();
    if (span.unit) key += " " + span.unit->coherent;
    return key;
}

}  // namespace

std::vector<ClaimToken> claimTokens(std::string_view printed) {
    using Kind = ClaimToken::Kind;
    std::string const folded = text::foldForComparison(printed);
    auto const quantities = quantity::findQuantities(folded);
    auto const words = text::words(folded);
    std::vector<ClaimToken> tokens;
    tokens.reserve(words.size() + quantities.size());
    auto next = quantities.begin();
    std::size_t after = 0;  // what the last quantity took
    auto const takeQuantities = [&](std::size_t before) {
        for (; next != quantities.end() && next->begin < before; ++next) {
            tokens.push_back({.kind = Kind::Quantity,
                              .key = keyOfQuantity(*next),
                              .unit = next->unit ? next->unit->coherent : std::string(),
                              .capital = false,
                              .begin = next->begin,
                              .end = next->end});
            after = next->end;
        }
    };
    for (auto const word : words) {
        forEachPart(word, [&](std::string_view part) {
            auto const begin = static_cast<std::size_t>(part.data() - folded.data());
            auto const end = begin + part.size();
            // The digits that a code begins with are no value: "74XKT595".
            bool const code = next != quantities.end() && next->begin == begin && next->end < end;
            if (code) ++next;
            takeQuantities(end);
            if (begin < after || part.empty()) return;
            bool const sign = isSign(part);
            ClaimToken token{.kind = sign ? Kind::Sign : Kind::Word,
                             .key = sign ? std::string(part) : keyOfWord(part),
                             .unit = {},
                             .capital = text::isAsciiUpper(part.front()) || static_cast<unsigned char>(part.front()) >= 0x80,
                             .begin = begin,
                             .end = end};
            if (!token.key.empty()) tokens.push_back(std::move(token));
        });
    }
    takeQuantities(folded.size() + 1);
    return tokens;
}

TokenKeys keysOf(std::vector<ClaimToken> const& tokens) {
    TokenKeys keys;
    keys.reserve(tokens.size());
    for (auto const& token : tokens) keys.push_back(token.key);
    return keys;
}

std::vector<TokenKeys> phraseKeys(std::vector<std::string> const& phrases) {
    std::vector<TokenKeys> list;
    for (auto const& phrase : phrases) {
        TokenKeys keys = keysOf(claimTokens(phrase));
        if (!keys.empty()) list.push_back(std::move(keys));
    }
    longestFirst(list);
    return list;
}

void longestFirst(std::vector<TokenKeys>& phrases) {
    std::stable_sort(phrases.begin(), phrases.end(), [](auto const& a, auto const& b) { return a.size() > b.size(); });
}

std::size_t phraseAt(std::vector<ClaimToken> const& tokens, std::size_t at, std::vector<TokenKeys> const& phrases) {
    for (auto const& phrase : phrases) {
        if (at + phrase.size() > tokens.size()) continue;
        bool const here = std::equal(phrase.begin(), phrase.end(), tokens.begin() + static_cast<std::ptrdiff_t>(at),
                                     [](std::string const& key, ClaimToken const& token) { return key == token.key; });
        if (here) return phrase.size();
    }
    return 0;
}

}  // namespace standin::compare
