// Sentences of two sheets paired by what they say, whatever their order.
//
//     for (WordingPair const& pair : pairSentences(reference.text, candidate.text)) …
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "compare/text_keys.h"
#include "model/datasheet.h"

namespace standin::compare {

// Sentences [reference, reference + referenceCount) of the one sheet against
// [candidate, candidate + candidateCount) of the other. At least one of the counts
// is 1; the other is more where a sentence was split or several were joined.
struct WordingPair {
    int reference = 0;
    int candidate = 0;
    int referenceCount = 1;
    int candidateCount = 1;
    bool equal = false;  // the same text to a reader
    bool operator==(WordingPair const&) const = default;
};

// Copies and revisions of one text, or two makers' own words: there neighbours say
// different things in like words, so more has to agree.
enum class Origin : std::uint8_t { OneText, TwoTexts };

// Every sentence is in at most one pair; ascending by reference. Equal texts are
// paired first (in order, then wherever they moved), then texts that were only
// divided otherwise, then nearly equal ones anywhere, then likely ones between
// neighbours that are paired, then likely ones anywhere. Linear but for bounded
// windows, also where a sheet repeats one sentence thousands of times. Exchanging
// the sheets exchanges the pairs, but for ties.
[[nodiscard]] std::vector<WordingPair> pairSentences(std::span<model::Sentence const> reference, std::span<model::Sentence const> candidate, Origin origin = Origin::OneText);

// The same for sentences whose keys are known already.
struct KeyedSentences {
    std::span<model::Sentence const> sentences;
    std::vector<Key> const& keys;  // as sentenceKeys() gives them
};
[[nodiscard]] std::vector<Key> sentenceKeys(std::span<model::Sentence const> sentences);
[[nodiscard]] std::vector<WordingPair> pairSentences(KeyedSentences const& reference, KeyedSentences const& candidate, Origin origin);

// The printed texts of a side of a pair, joined by one space.
[[nodiscard]] std::string joinedText(std::span<model::Sentence const> sentences, int first, int count);

}  // namespace standin::compare
