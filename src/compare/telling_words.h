// Which words of a row tell it from the other rows of its parameter in the same sheet.
// One sheet has them in the name ("pulse width, reset LOW"), another in a heading
// or in the condition ("RST LOW"): a word counts wherever it stands, in either number and
// by whatever name a maker calls the signal.
//
//     TellingWords words;
//     words.add(3, "pulse-width", "pulse width VCC = 2 V; RST LOW");
//     words.add(4, "pulse-width", "pulse width VCC = 2 V; CK HIGH");
//     tellingLikeness(words, 3, other, 7)       // 1 where row 7 is told by "RST" and "LOW" too
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "compare/text_keys.h"

namespace standin::compare {

class TellingWords {
public:
    // `kin`: what the rows of one parameter have in common (its id, its symbol).
    // Words begin with a letter; numbers are compared as values elsewhere.
    // `common`: a text that is printed once for several rows; its words are the row's too.
    void add(int row, std::string const& kin, std::string_view text, std::string const& common = {});

    // All words of the row, sorted, each once; none for a row that was not added.
    [[nodiscard]] std::vector<Key> const& of(int row) const;
    // Those that not every row of its kin has; to be asked once all rows are added.
    [[nodiscard]] std::vector<Key> const& telling(int row) const;
    // Some row of the parameter of `row` has the word.
    [[nodiscard]] bool isSaidBeside(int row, Key word) const;

private:
    struct Kin {
        int rows = 0;
        std::unordered_map<Key, int> count;  // rows that have the word
    };
    struct Row {
        std::string kin;
        std::vector<Key> words;
        mutable std::vector<Key> telling;
        mutable bool told = false;
    };
    std::unordered_map<std::string, Kin> m_kin;
    std::unordered_map<int, Row> m_rows;
    std::unordered_map<std::string, std::vector<Key>> m_common;  // words of the common texts
};

// 0 … 1: the share of both rows' telling words that the other row has; 0 where neither
// has any. A word that no row of the parameter has in the other sheet is a maker's own, and tells nothing.
[[nodiscard]] double tellingLikeness(TellingWords const& reference, int i, TellingWords const& candidate, int j);

}  // namespace standin::compare
