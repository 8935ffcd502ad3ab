// Folded texts as numbers, so that long lists of printed things are paired
// without comparing strings again and again. This folder (compare/) may include
// model/, quantity/, text/ and vocabulary/.
//
//     keyOf("4.28\u00A0V") == keyOf("4.28 V")                 // true: spaces do not count
//     similarity(tokensOf("Delay 10 ms"), tokensOf("Delay 12 ms"))   // 0.67
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace standin::compare {

using Key = std::uint64_t;

// FNV-1a with a final mix; the same bytes give the same key on every machine.
[[nodiscard]] Key hashOf(std::string_view bytes, Key seed = 0);
[[nodiscard]] Key combined(Key a, Key b);

// Of the text folded for comparison, white space left out: two texts that a
// reader sees as the same have the same key.
[[nodiscard]] Key keyOf(std::string_view printed);

// The text folded for comparison, a space for leader dots.
[[nodiscard]] std::string foldedText(std::string_view printed);

// The folded text itself without white space.
[[nodiscard]] std::string spaceless(std::string_view printed);

// Hashes of the words, numbers (whole) and single signs of the folded text,
// letters in lower case, sorted, equal ones kept.
[[nodiscard]] std::vector<Key> tokensOf(std::string_view printed);

// Dice's measure over two sorted lists: 1 the same, 0 nothing in common; two
// empty lists are the same.
[[nodiscard]] double similarity(std::span<Key const> a, std::span<Key const> b);
[[nodiscard]] double mostSimilarity(std::size_t a, std::size_t b);  // that lists of such lengths could have

// The pairs of neighbouring bytes of a short text: of a word or two. Bounded: only the
// first 64 bytes count. Made once for a text that is compared with many.
class LetterPairs {
public:
    static constexpr std::size_t kLettersCompared = 64;

    LetterPairs() = default;
    explicit LetterPairs(std::string_view text);

private:
    friend double letterSimilarity(LetterPairs const& a, LetterPairs const& b);

    std::string m_text;
    std::array<std::uint16_t, kLettersCompared> m_pairs{};  // sorted
    std::size_t m_count = 0;
};

// How alike two short texts are letter by letter.
[[nodiscard]] double letterSimilarity(LetterPairs const& a, LetterPairs const& b);
[[nodiscard]] double letterSimilarity(std::string_view a, std::string_view b);

// Both texts cut to at most `limit` bytes each so that the place where they
// first differ and what follows stays in view; "…" marks what is left out.
struct Excerpts {
    std::string reference;
    std::string candidate;
};
[[nodiscard]] Excerpts excerpts(std::string_view reference, std::string_view candidate, std::size_t limit);

// Says the text only which page it stands on ("3", "Page 3 of 12", "- 3 -", "3/12")?
[[nodiscard]] bool isOwnPageNumber(std::string_view printed, int page, int pages);

// The first `limit` bytes at most, never inside a character; "…" where cut.
[[nodiscard]] std::string clipped(std::string_view text, std::size_t limit);

}  // namespace standin::compare
