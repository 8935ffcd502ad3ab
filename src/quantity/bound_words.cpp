#include "quantity/bound_words.h"

#include "text/utf8.h"

// A table of spellings, the longer before the shorter; letters must end at a word.
// Tested by tests/src/quantity/notation_test.cpp.

namespace standin::quantity {

namespace {

struct BoundSpelling {
    std::string_view word;
    BoundWord meaning;
    enum class Where { Front, Back, Both } where;
};

// Longer spellings first.
constexpr BoundSpelling kBounds[] = {
    {"not more than", BoundWord::AtMost, BoundSpelling::Where::Front}, {"not less than", BoundWord::AtLeast, BoundSpelling::Where::Front},
    {"less than", BoundWord::Below, BoundSpelling::Where::Front}, {"more than", BoundWord::Above, BoundSpelling::Where::Front},
    {"or less", BoundWord::AtMost, BoundSpelling::Where::Back}, {"or more", BoundWord::AtLeast, BoundSpelling::Where::Back},
    {"or higher", BoundWord::AtLeast, BoundSpelling::Where::Back}, {"or lower", BoundWord::AtMost, BoundSpelling::Where::Back},
    {"at least", BoundWord::AtLeast, BoundSpelling::Where::Front}, {"at most", BoundWord::AtMost, BoundSpelling::Where::Front},
    {"up to", BoundWord::AtMost, BoundSpelling::Where::Front}, {"bis zu", BoundWord::AtMost, BoundSpelling::Where::Front},
    {"mindestens", BoundWord::AtLeast, BoundSpelling::Where::Front}, {"höchstens", BoundWord::AtMost, BoundSpelling::Where::Front},
    {"maximum", BoundWord::AtMost, BoundSpelling::Where::Both}, {"minimum", BoundWord::AtLeast, BoundSpelling::Where::Both},
    {"typical", BoundWord::About, BoundSpelling::Where::Both}, {"approximately", BoundWord::About, BoundSpelling::Where::Front},
    {"approx.", BoundWord::About, BoundSpelling::Where::Both}, {"approx", BoundWord::About, BoundSpelling::Where::Both},
    {"about", BoundWord::About, BoundSpelling::Where::Front}, {"ca.", BoundWord::About, BoundSpelling::Where::Front},
    {"max.", BoundWord::AtMost, BoundSpelling::Where::Both}, {"max", BoundWord::AtMost, BoundSpelling::Where::Both},
    {"min.", BoundWord::AtLeast, BoundSpelling::Where::Both}, {"min", BoundWord::AtLeast, BoundSpelling::Where::Front},
    {"typ.", BoundWord::About, BoundSpelling::Where::Both}, {"typ", BoundWord::About, BoundSpelling::Where::Both},
    {"以下", BoundWord::AtMost, BoundSpelling::Where::Back}, {"以上", BoundWord::AtLeast, BoundSpelling::Where::Back},
    {"未満", BoundWord::Below, BoundSpelling::Where::Back}, {"小于", BoundWord::Below, BoundSpelling::Where::Front},
    {"大于", BoundWord::Above, BoundSpelling::Where::Front}, {"超过", BoundWord::Above, BoundSpelling::Where::Front},
    {"を超える", BoundWord::Above, BoundSpelling::Where::Back}, {"不大于", BoundWord::AtMost, BoundSpelling::Where::Front},
    {"约", BoundWord::About, BoundSpelling::Where::Front}, {"約", BoundWord::About, BoundSpelling::Where::Front},
    {"最大", BoundWord::AtMost, BoundSpelling::Where::Both}, {"最小", BoundWord::AtLeast, BoundSpelling::Where::Both},
    {"≤", BoundWord::AtMost, BoundSpelling::Where::Front}, {"≥", BoundWord::AtLeast, BoundSpelling::Where::Front},
    {"<", BoundWord::Below, BoundSpelling::Where::Front}, {">", BoundWord::Above, BoundSpelling::Where::Front},
    {"~", BoundWord::About, BoundSpelling::Where::Front}, {"≈", BoundWord::About, BoundSpelling::Where::Front},
};

char lower(char c) { return text::isAsciiUpper(c) ? static_cast<char>(c + ('a' - 'A')) : c; }

// `word` is in lower case.
bool equalsNoCase(std::string_view text, std::string_view word) {
    for (std::size_t i = 0; i < word.size(); ++i) {
        if (lower(text[i]) != word[i]) return false;
    }
    return true;
}

bool startsWithNoCase(std::string_view text, std::string_view word) { return text.size() >= word.size() && equalsNoCase(text.substr(0, word.size()), word); }

bool endsWithNoCase(std::string_view text, std::string_view word) {
    return text.size() >= word.size() && lower(text.back()) == word.back() && equalsNoCase(text.substr(text.size() - word.size()), word);
}

}  // namespace

BoundWord takeBoundWord(std::string_view& text) {
    if (text.empty()) return BoundWord::None;
    char const first = lower(text.front());
    char const last = lower(text.back());
    for (BoundSpelling const& bound : kBounds) {
        // The text stays as it is until a spelling is taken, so its two ends rule out nearly all of them.
        bool const front = bound.where != BoundSpelling::Where::Back && first == bound.word.front();
        bool const back = bound.where != BoundSpelling::Where::Front && last == bound.word.back();
        if (!front && !back) continue;
        bool const letters = text::isAsciiLetter(bound.word.front());
        if (front && startsWithNoCase(text, bound.word)) {
            std::string_view rest = text.substr(bound.word.size());
            if (letters && !rest.empty() && text::isAsciiLetter(rest.front())) continue;
            while (!rest.empty() && (rest.front() == ' ' || rest.front() == ':' || rest.front() == '=')) rest.remove_prefix(1);
            if (rest.empty()) continue;
            text = rest;
            return bound.meaning;
        }
        if (back && endsWithNoCase(text, bound.word)) {
            std::string_view const rest = text.substr(0, text.size() - bound.word.size());
            if (rest.empty() || (letters && text::isAsciiLetter(rest.back()))) continue;
            text = text::trimmed(rest);
            while (!text.empty() && (text.back() == ',' || text.back() == ' ')) text.remove_suffix(1);
            return bound.meaning;
        }
    }
    return BoundWord::None;
}

}  // namespace standin::quantity
