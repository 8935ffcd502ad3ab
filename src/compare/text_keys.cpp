// Folding is text/fold.h's; here the folded bytes are hashed (FNV-1a) and cut
// into tokens: runs of ASCII letters, whole numbers, every other sign alone, so
// that CJK text gives one token a character.
//
// Tested by tests/src/compare/text_keys_test.cpp.
#include "compare/text_keys.h"

#include <algorithm>
#include <charconv>

#include "text/fold.h"
#include "text/leaders.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

constexpr Key kOffset = 14695981039346656037ULL;
constexpr Key kPrime = 1099511628211ULL;
constexpr std::string_view kEllipsis = "…";

Key with(Key hash, char c) { return (hash ^ static_cast<unsigned char>(c)) * kPrime; }

Key mixed(Key hash) {
    hash ^= hash >> 33U;
    hash *= 0xff51afd7ed558ccdULL;
    hash ^= hash >> 33U;
    return hash;
}

bool isContinuation(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

std::size_t characterStart(std::string_view text, std::size_t at) {
    while (at > 0 && at < text.size() && isContinuation(text[at])) --at;
    return at;
}

}  // namespace

Key hashOf(std::string_view bytes, Key seed) {
    Key hash = kOffset ^ seed;
    for (char const c : bytes) hash = with(hash, c);
    return mixed(hash);
}

Key combined(Key a, Key b) { return mixed(a * kPrime + b + 0x9e3779b97f4a7c15ULL); }

std::string foldedText(std::string_view printed) { return text::leadersReplaced(text::foldForComparison(printed), " "); }

std::string spaceless(std::string_view printed) {
    std::string folded = foldedText(printed);
    std::erase(folded, ' ');
    return folded;
}

Key keyOf(std::string_view printed) {
    Key hash = kOffset;
    for (char const c : foldedText(printed)) {
        if (c != ' ') hash = with(hash, c);
    }
    return mixed(hash);
}

std::vector<Key> tokensOf(std::string_view printed) {
    std::string const folded = foldedText(printed);
    std::vector<Key> tokens;
    tokens.reserve(folded.size() / 4 + 1);
    std::size_t at = 0;
    while (at < folded.size()) {
        char const c = folded[at];
        if (c == ' ') {
            ++at;
            continue;
        }
        std::size_t const start = at;
        if (text::isAsciiLetter(c)) {
            Key hash = kOffset;  // as hashOf() of the letters in lower case
            for (; at < folded.size() && text::isAsciiLetter(folded[at]); ++at) hash = with(hash, static_cast<char>(folded[at] | 0x20));
            tokens.push_back(mixed(hash));
            continue;
        }
        if (text::isAsciiDigit(c)) {
            while (at < folded.size() &&
                   (text::isAsciiDigit(folded[at]) || (folded[at] == '.' && at + 1 < folded.size() && text::isAsciiDigit(folded[at + 1])))) {
                ++at;
            }
        } else {
            ++at;
            while (at < folded.size() && isContinuation(folded[at])) ++at;
        }
        tokens.push_back(hashOf(std::string_view(folded).substr(start, at - start)));
    }
    std::sort(tokens.begin(), tokens.end());
    return tokens;
}

double similarity(std::span<Key const> a, std::span<Key const> b) {
    if (a.empty() && b.empty()) return 1;
    std::size_t common = 0;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() && j < b.size()) {
        if (a[i] == b[j]) {
            ++common;
            ++i;
            ++j;
        } else if (a[i] < b[j]) {
            ++i;
        } else {
            ++j;
        }
    }
    return 2.0 * static_cast<double>(common) / static_cast<double>(a.size() + b.size());
}

double mostSimilarity(std::size_t a, std::size_t b) { return a + b == 0 ? 1 : 2.0 * static_cast<double>(std::min(a, b)) / static_cast<double>(a + b); }

LetterPairs::LetterPairs(std::string_view text) : m_text(text.substr(0, kLettersCompared)) {
    for (std::size_t i = 0; i + 1 < m_text.size(); ++i) {
        m_pairs[m_count++] = static_cast<std::uint16_t>((static_cast<unsigned char>(m_text[i]) << 8U) | static_cast<unsigned char>(m_text[i + 1]));
    }
    std::sort(m_pairs.begin(), m_pairs.begin() + static_cast<std::ptrdiff_t>(m_count));
}

double letterSimilarity(LetterPairs const& a, LetterPairs const& b) {
    if (a.m_text == b.m_text) return 1;
    if (a.m_count == 0 || b.m_count == 0) return 0;
    std::size_t common = 0;
    for (std::size_t i = 0, j = 0; i < a.m_count && j < b.m_count;) {
        if (a.m_pairs[i] == b.m_pairs[j]) {
            ++common;
            ++i;
            ++j;
        } else if (a.m_pairs[i] < b.m_pairs[j]) {
            ++i;
        } else {
            ++j;
        }
    }
    return 2.0 * static_cast<double>(common) / static_cast<double>(a.m_count + b.m_count);
}

double letterSimilarity(std::string_view a, std::string_view b) {
    a = a.substr(0, LetterPairs::kLettersCompared);
    b = b.substr(0, LetterPairs::kLettersCompared);
    if (a == b) return 1;
    if (a.size() < 2 || b.size() < 2) return 0;
    return letterSimilarity(LetterPairs(a), LetterPairs(b));
}

bool isOwnPageNumber(std::string_view printed, int page, int pages) {
    constexpr std::size_t kLongest = 32;
    if (printed.size() > kLongest) return false;
    std::string const text = text::asciiLower(spaceless(printed));
    std::vector<int> numbers;
    std::string rest;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && text::isAsciiDigit(text[end])) ++end;
        if (end == i) {
            rest += text[i++];
            continue;
        }
        int value = -1;
        auto const read = std::from_chars(text.data() + i, text.data() + end, value);
        if (read.ec != std::errc()) return false;
        numbers.push_back(value);
        i = end;
    }
    for (std::string_view const word : {"page", "of", "seite", "von", "第", "页", "頁", "共", "/", "-", "(", ")", "|"}) {
        for (auto at = rest.find(word); at != std::string::npos; at = rest.find(word)) rest.erase(at, word.size());
    }
    return rest.empty() && !numbers.empty() && numbers.size() <= 2 && numbers[0] == page && (numbers.size() == 1 || numbers[1] == pages);
}

std::string clipped(std::string_view text, std::size_t limit) {
    if (text.size() <= limit) return std::string(text);
    std::size_t const room = limit > kEllipsis.size() ? limit - kEllipsis.size() : 0;
    std::string cut(text.substr(0, characterStart(text, room)));
    cut += kEllipsis;
    return cut;
}

Excerpts excerpts(std::string_view reference, std::string_view candidate, std::size_t limit) {
    if (reference.size() <= limit && candidate.size() <= limit) return {std::string(reference), std::string(candidate)};
    std::size_t const shortest = std::min(reference.size(), candidate.size());
    std::size_t same = 0;
    while (same < shortest && reference[same] == candidate[same]) ++same;
    // A third of the room for what stands before the change.
    std::size_t const lead = limit / 3;
    std::size_t const from = same > lead ? characterStart(reference, same - lead) : 0;
    auto cut = [&](std::string_view text) {
        if (text.size() <= limit) return std::string(text);
        std::string shown = from > 0 ? std::string(kEllipsis) : std::string();
        shown += text.substr(std::min(from, text.size()));
        return clipped(shown, limit);
    };
    return {cut(reference), cut(candidate)};
}

}  // namespace standin::compare
