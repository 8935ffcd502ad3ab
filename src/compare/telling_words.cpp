// Tested by tests/src/compare/telling_words_test.cpp.
#include "compare/telling_words.h"

#include <algorithm>
#include <iterator>

#include "compare/node_names.h"
#include "quantity/unit.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

bool isWordSign(char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c) || static_cast<unsigned char>(c) >= 0x80U; }

// "clocked" and "clock", "decoded" and "decode", "lines" and "line" tell the same.
std::string_view rootOf(std::string_view word) {
    constexpr std::size_t kShortest = 4;  // of what is left; shorter words are symbols
    for (std::string_view const end : {std::string_view("s"), std::string_view("ed"), std::string_view("e")}) {
        if (word.size() >= kShortest + end.size() && word.ends_with(end) && !word.ends_with("ss")) word.remove_suffix(end.size());
    }
    return word;
}

// "f" and "Hz" of "f = 120 Hz": quantities are compared as values elsewhere.
bool isOfAQuantity(std::string_view folded, std::size_t begin, std::size_t end) {
    std::size_t const next = folded.find_first_not_of(' ', end);
    if (next != std::string_view::npos && (std::string_view("=<>").find(folded[next]) != std::string_view::npos || folded.substr(next, 3) == "≤" || folded.substr(next, 3) == "≥"))
        return true;
    std::size_t const before = begin == 0 ? std::string_view::npos : folded.find_last_not_of(' ', begin - 1);
    return before != std::string_view::npos && text::isAsciiDigit(folded[before]) && quantity::parseUnit(folded.substr(begin, end - begin)).has_value();
}

std::vector<Key> wordsOf(std::string_view printed) {
    std::string const folded = text::asciiLower(text::foldForComparison(printed));
    std::vector<Key> words;
    for (std::size_t at = 0; at < folded.size();) {
        std::size_t const begin = at;
        while (at < folded.size() && isWordSign(folded[at])) ++at;
        if (at == begin) {
            ++at;
        } else if (!text::isAsciiDigit(folded[begin]) && !isOfAQuantity(folded, begin, at)) {
            words.push_back(hashOf(signalKey(rootOf(std::string_view(folded).substr(begin, at - begin)))));
        }
    }
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    return words;
}

std::vector<Key> united(std::vector<Key> const& a, std::vector<Key> const& b) {
    std::vector<Key> all;
    all.reserve(a.size() + b.size());
    std::set_union(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(all));
    return all;
}

std::size_t countIn(std::vector<Key> const& words, std::vector<Key> const& others) {
    return static_cast<std::size_t>(std::count_if(words.begin(), words.end(), [&](Key word) { return std::binary_search(others.begin(), others.end(), word); }));
}

std::vector<Key> const kNone;

}  // namespace

void TellingWords::add(int row, std::string const& kin, std::string_view text, std::string const& common) {
    auto const [entry, isNew] = m_rows.try_emplace(row);
    if (!isNew) return;
    entry->second = {kin, wordsOf(text), {}, false};
    if (!common.empty()) {
        auto const [shared, isFirst] = m_common.try_emplace(common);
        if (isFirst) shared->second = wordsOf(common);
        entry->second.words = united(entry->second.words, shared->second);
    }
    Kin& group = m_kin[kin];
    ++group.rows;
    for (Key const word : entry->second.words) ++group.count[word];
}

std::vector<Key> const& TellingWords::of(int row) const {
    auto const found = m_rows.find(row);
    return found == m_rows.end() ? kNone : found->second.words;
}

std::vector<Key> const& TellingWords::telling(int row) const {
    auto const found = m_rows.find(row);
    if (found == m_rows.end()) return kNone;
    Row const& entry = found->second;
    if (!entry.told) {
        Kin const& kin = m_kin.at(entry.kin);
        std::copy_if(entry.words.begin(), entry.words.end(), std::back_inserter(entry.telling), [&](Key word) { return kin.count.at(word) < kin.rows; });
        entry.told = true;
    }
    return entry.telling;
}

bool TellingWords::isSaidBeside(int row, Key word) const {
    auto const found = m_rows.find(row);
    return found != m_rows.end() && m_kin.at(found->second.kin).count.count(word) > 0;
}

double tellingLikeness(TellingWords const& reference, int i, TellingWords const& candidate, int j) {
    std::size_t met = 0, said = 0;
    auto const weigh = [&](std::vector<Key> const& telling, TellingWords const& other, int partner) {
        met += countIn(telling, other.of(partner));
        said += static_cast<std::size_t>(std::count_if(telling.begin(), telling.end(), [&](Key word) { return other.isSaidBeside(partner, word); }));
    };
    weigh(reference.telling(i), candidate, j);
    weigh(candidate.telling(j), reference, i);
    return said == 0 ? 0 : static_cast<double>(met) / static_cast<double>(said);
}

}  // namespace standin::compare
