// A sentence as tokens that compare equal where only editorial noise differs, and
// the count of what it says that matters. Private to the wording files.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "compare/text_keys.h"
#include "compare/wording_phrases.h"

namespace standin::compare {

// What the sentences of one sheet are read with.
struct SheetNames {
    std::vector<std::string> parts;                // lower case, hyphens and spaces taken out, at least 4 characters with a digit
    std::vector<std::string> told;                 // of them, those that both sheets have, where that is several: which one is named matters
    std::vector<std::vector<std::string>> makers;  // words in lower case
    std::vector<std::string> pins;                 // lower case
    std::string revision;                          // of the sheet itself, in lower case; empty: none printed
    std::vector<std::string> titles;               // of numbered sections, as printed
    // What the parts are a "series" or "family" of, as `parts`: "qx17" of QX17-P and QX17x.
    std::vector<std::string> families;
    // Symbols that the other sheet writes otherwise, as quantity::symbolKey() has them: by the
    // sheet's own, the other's.
    std::map<std::string, std::string> symbols;
};

// Keys of tokens: a part of the sheet, with what stands behind its name ("-TR"), then "=" and which one if that is told; its maker.
inline const std::string kOwnPart = "\u00A7part";
inline constexpr std::string_view kOwnMaker = "\u00A7maker";

struct Token {
    enum class Kind : std::uint8_t { Word, Number, Symbol, Pin, Sign, OwnName, Reference };
    Kind kind = Kind::Word;
    std::string key;   // equal keys: the same but for editorial noise
    std::string unit;  // of a number: coherent, or empty
    bool operator==(Token const&) const = default;
};

struct ReadSentence {
    // What stands between a token and the one before it. Slash: so does the "、" of Chinese, which only enumerates.
    enum class Joint : std::uint8_t { None, Comma, Slash };

    std::vector<Token> tokens;                    // fillers and punctuation left out
    std::vector<Joint> joints;                    // by token
    std::array<std::uint16_t, kMeanings> said{};  // by Meaning
    bool speaksOfPins = false;                    // "pin", "terminal", "pad" or a pin's name
    bool speaksOfOutput = false;
    bool isOfOnePart = false;   // its sheet has one part, so that its name says no more than "the part"
    bool usesNickname = false;  // "the “595”": all of the sheet's parts, that end with the number

    [[nodiscard]] int count(Meaning meaning) const { return said[static_cast<std::size_t>(meaning)]; }
    [[nodiscard]] bool has(Meaning meaning) const { return count(meaning) > 0; }
    [[nodiscard]] bool hasToken(Token::Kind kind) const {
        return std::any_of(tokens.begin(), tokens.end(), [kind](Token const& token) { return token.kind == kind; });
    }
};

// `language`: BCP 47, empty: told from the text.
[[nodiscard]] ReadSentence readSentence(std::string_view printed, SheetNames const& names, std::string_view language);

}  // namespace standin::compare
