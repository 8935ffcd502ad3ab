// The words of a statement about a change, folded so that they can be looked for in
// the rows and sentences that it may be about.
//
//     claimTokens("On-resistance at VGS=4.5 V")  ->  "on" "resistance" "at" "vgs" "=" "4.5 V"
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace standin::compare {

struct ClaimToken {
    enum class Kind : std::uint8_t { Word, Quantity, Sign };
    Kind kind = Kind::Word;
    std::string key;        // a word in lower case and singular, a symbol without brackets, a value in its coherent unit, or the sign
    std::string unit;       // of a quantity, coherent; empty: none
    bool capital = false;   // begins with a capital letter, or with one of another script
    std::size_t begin = 0;  // bytes of the folded text
    std::size_t end = 0;
    bool operator==(ClaimToken const&) const = default;
};

// Hyphenated words are parted, symbols lose brackets and underscores ("RDS(on)" is
// "rdson"), a value and its unit are one token.
[[nodiscard]] std::vector<ClaimToken> claimTokens(std::string_view printed);

// The keys alone.
using TokenKeys = std::vector<std::string>;
[[nodiscard]] TokenKeys keysOf(std::vector<ClaimToken> const& tokens);

// Phrases as keys, the longest first.
[[nodiscard]] std::vector<TokenKeys> phraseKeys(std::vector<std::string> const& phrases);
void longestFirst(std::vector<TokenKeys>& phrases);  // else in their order

// Tokens that a phrase takes from `at` on; 0: none begins there.
[[nodiscard]] std::size_t phraseAt(std::vector<ClaimToken> const& tokens, std::size_t at, std::vector<TokenKeys> const& phrases);

}  // namespace standin::compare
