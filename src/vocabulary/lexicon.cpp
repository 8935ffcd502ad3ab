// The text is folded once, then read from left to right: at each word the longest
// phrase that starts there wins; inside Chinese and Japanese, where no spaces
// divide words, the longest phrase at each character.
// Tested by tests/src/vocabulary/matcher_test.cpp.
#include "vocabulary/lexicon.h"

#include <algorithm>
#include <array>

namespace standin::vocabulary {

namespace {

constexpr int kLongestCjkPhrase = 16;  // characters
constexpr int kLongestPhrase = 5;      // words
constexpr std::size_t kLongestText = 64 * 1024;

// One code point from `text` at `position`, which moves on; a broken byte is U+FFFD.
char32_t nextCodePoint(std::string_view text, std::size_t& position) {
    auto const lead = static_cast<unsigned char>(text[position++]);
    if (lead < 0x80) {
        return lead;
    }
    int const more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : lead >= 0xC0 ? 1 : 0;
    if (more == 0 || position + static_cast<std::size_t>(more) > text.size()) {
        return 0xFFFD;
    }
    char32_t point = lead & (0x3F >> more);
    for (int i = 0; i < more; ++i) {
        auto const byte = static_cast<unsigned char>(text[position]);
        if ((byte & 0xC0) != 0x80) {
            return 0xFFFD;
        }
        point = (point << 6) | (byte & 0x3F);
        ++position;
    }
    return point;
}

void append(std::string& out, char32_t point) {
    if (point < 0x80) {
        out += static_cast<char>(point);
    } else if (point < 0x800) {
        out += static_cast<char>(0xC0 | (point >> 6));
        out += static_cast<char>(0x80 | (point & 0x3F));
    } else if (point < 0x10000) {
        out += static_cast<char>(0xE0 | (point >> 12));
        out += static_cast<char>(0x80 | ((point >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (point & 0x3F));
    } else {
        out += static_cast<char>(0xF0 | (point >> 18));
        out += static_cast<char>(0x80 | ((point >> 12) & 0x3F));
        out += static_cast<char>(0x80 | ((point >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (point & 0x3F));
    }
}

bool isCjk(char32_t point) {
    return (point >= 0x3040 && point <= 0x30FF && point != 0x30FB) || (point >= 0x3400 && point <= 0x9FFF) ||
           (point >= 0xF900 && point <= 0xFAFF) || (point >= 0xFF66 && point <= 0xFF9F);
}

// One form for characters that are drawn alike, lower case.
char32_t foldPoint(char32_t point) {
    if (point >= 'A' && point <= 'Z') {
        return point + 0x20;
    }
    if (point < 0x80) {
        return point;
    }
    if (point >= 0xFF01 && point <= 0xFF5E) {
        return foldPoint(point - 0xFEE0);
    }
    if ((point >= 0xC0 && point <= 0xDE && point != 0xD7) || (point >= 0x410 && point <= 0x42F)) {
        return point + 0x20;
    }
    if (point >= 0x391 && point <= 0x3A9) {
        return point + 0x20;  // Greek capitals: θ and Θ name one symbol
    }
    if (point >= 0x2080 && point <= 0x2089) {
        return point - 0x2080 + '0';
    }
    if (point >= 0x2460 && point <= 0x2468) {
        return point - 0x2460 + '1';  // circled digits
    }
    switch (point) {
        case 0x2010: case 0x2011: case 0x2012: case 0x2013: case 0x2014: case 0x2212: case 0xFE63: return '-';
        case 0xB5: return 0x3BC;
        case 0x2206: case 0x25B3: return 0x3B4;  // increment, triangle: delta
        case 0x401: return 0x451;
        case 0x2160: return '1';  // Roman numerals
        case 0x2161: return '2';
        case 0x2162: return '3';
        default: return point;
    }
}

bool isWordPoint(char32_t point) {
    if (point < 0x80) {
        return (point >= 'a' && point <= 'z') || (point >= '0' && point <= '9');
    }
    return (point >= 0xDF && point <= 0x24F && point != 0xF7) || (point >= 0x3B1 && point <= 0x3C9) ||
           (point >= 0x430 && point <= 0x45F);
}

// "Q'H", the last stage of Q: no "H" in quotation marks, which stands for high. `position`:
// behind the mark.
bool namesOneOutput(char32_t mark, std::string_view text, std::size_t position) {
    bool const apostrophe = mark == '\'' || mark == 0x2019 || mark == 0x2032;
    bool const level = position < text.size() && (text[position] == 'H' || text[position] == 'L');
    return apostrophe && level && (position + 1 == text.size() || text[position + 1] == ' ');
}

// An ASCII letter or digit as foldWords() writes it; 0 for any other byte.
constexpr std::array<char, 256> kPlainWordBytes = [] {
    std::array<char, 256> bytes{};
    for (char digit = '0'; digit <= '9'; ++digit) {
        bytes[static_cast<unsigned char>(digit)] = digit;
    }
    for (char letter = 'a'; letter <= 'z'; ++letter) {
        bytes[static_cast<unsigned char>(letter)] = letter;
        bytes[static_cast<unsigned char>(letter - 'a' + 'A')] = letter;
    }
    return bytes;
}();

char plainWordByte(char byte) { return kPlainWordBytes[static_cast<unsigned char>(byte)]; }

std::size_t lengthAt(std::string_view text, std::size_t position) {
    auto const lead = static_cast<unsigned char>(text[position]);
    std::size_t const length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
    return std::min(length, text.size() - position);
}

bool startsCjk(std::string_view folded, std::size_t position) {
    return static_cast<unsigned char>(folded[position]) >= 0xE3;
}

int countWords(std::string_view folded) {
    return 1 + static_cast<int>(std::count(folded.begin(), folded.end(), ' '));
}

int countCharacters(std::string_view folded) {
    return static_cast<int>(std::count_if(folded.begin(), folded.end(), [](char byte) { return (byte & 0xC0) != 0x80; }));
}

}  // namespace

bool Concepts::has(ConceptId id) const {
    return std::binary_search(ids.begin(), ids.end(), id);
}

bool Concepts::containsAll(std::vector<ConceptId> const& wanted) const {
    return std::includes(ids.begin(), ids.end(), wanted.begin(), wanted.end());
}

std::string foldWords(std::string_view text) {
    text = text.substr(0, kLongestText);
    std::string out;
    out.reserve(text.size() + 8);
    enum class Before { Nothing, Word, Cjk } before = Before::Nothing;
    std::size_t wordStart = 0;
    auto const openWord = [&] {
        if (before == Before::Cjk || (before == Before::Nothing && !out.empty())) {
            out += ' ';
        }
        if (before != Before::Word) {
            wordStart = out.size();
        }
        before = Before::Word;
    };
    for (std::size_t position = 0; position < text.size();) {
        if (plainWordByte(text[position]) != 0) {  // letters and digits up to the next other byte
            openWord();
            do {
                out += plainWordByte(text[position]);
                ++position;
            } while (position < text.size() && plainWordByte(text[position]) != 0);
            continue;
        }
        char32_t const point = foldPoint(nextCodePoint(text, position));
        if (isWordPoint(point)) {
            openWord();
            append(out, point);
        } else if (isCjk(point)) {
            if (before == Before::Word || (before == Before::Nothing && !out.empty())) {
                out += ' ';
            }
            append(out, point);
            before = Before::Cjk;
        } else if ((point == '-' || point == '+') && before == Before::Word && out.size() - wordStart == 1 &&
                   (position >= text.size() || !isWordPoint(foldPoint(static_cast<unsigned char>(text[position]))))) {
            append(out, point);  // "V-", "B+"
            before = Before::Nothing;
        } else if (point == '.' && before == Before::Word && position < text.size() && text[position] >= '0' && text[position] <= '9' &&
                   out.back() >= '0' && out.back() <= '9') {
            out += '.';
        } else if (before == Before::Word && namesOneOutput(point, text, position)) {
            continue;
        } else if (before != Before::Nothing && !(before == Before::Cjk && point == ' ')) {
            before = Before::Nothing;
        }
    }
    return out;
}

std::string foldSymbol(std::string_view symbol) {
    std::string out;
    if (symbol.size() > 64) {
        return out;
    }
    for (std::size_t position = 0; position < symbol.size();) {
        char32_t const point = foldPoint(nextCodePoint(symbol, position));
        if (isWordPoint(point) || isCjk(point)) {
            append(out, point);
        } else if ((point == '-' || point == '+') && !out.empty() && position >= symbol.size()) {
            append(out, point);
        }
    }
    return out;
}

ConceptId Lexicon::intern(std::string_view name) {
    auto const found = m_byName.find(name);
    if (found != m_byName.end()) {
        return found->second;
    }
    if (m_concepts.size() >= 0xFFFF) {
        return 0xFFFE;
    }
    auto const id = static_cast<ConceptId>(m_concepts.size());
    m_concepts.push_back(Concept{.name = std::string(name), .group = 0, .severity = model::Severity::Editorial, .caution = {}, .weight = 0});
    m_byName.emplace(std::string(name), id);
    return id;
}

ConceptId const* Lexicon::findConcept(std::string_view name) const {
    auto const found = m_byName.find(name);
    return found == m_byName.end() ? nullptr : &found->second;
}

void Lexicon::addPhrase(std::string_view phrase, std::vector<ConceptId> ids) {
    std::string folded = foldWords(phrase);
    if (folded.empty()) {
        return;
    }
    bool const cjk = startsCjk(folded, 0);
    std::size_t const firstEnd = cjk ? lengthAt(folded, 0) : std::min(folded.find(' '), folded.size());
    int const length = cjk ? countCharacters(folded) : countWords(folded);
    auto& longest = m_longest[folded.substr(0, firstEnd)];
    longest = std::max(longest, static_cast<std::uint8_t>(std::min(length, cjk ? kLongestCjkPhrase : kLongestPhrase)));
    m_phrases[std::move(folded)] = std::move(ids);
}

std::uint8_t Lexicon::group(std::string_view name) {
    auto const found = std::find(m_groups.begin(), m_groups.end(), name);
    if (found == m_groups.end() && m_groups.size() < 31) {
        m_groups.emplace_back(name);
        return static_cast<std::uint8_t>(m_groups.size());
    }
    return static_cast<std::uint8_t>(std::min<std::ptrdiff_t>(found - m_groups.begin() + 1, 31));
}

template <class OnUnknown>
void Lexicon::scan(std::string_view text, std::vector<ConceptId>& ids, OnUnknown&& onUnknown) const {
    std::string const folded = foldWords(text);
    std::string_view const all = folded;
    for (std::size_t position = 0; position < all.size();) {
        if (all[position] == ' ') {
            ++position;
            continue;
        }
        bool const cjk = startsCjk(all, position);
        std::size_t const firstEnd = cjk ? position + lengthAt(all, position) : std::min(all.find(' ', position), all.size());
        std::string_view const first = all.substr(position, firstEnd - position);
        auto longest = m_longest.find(first);
        std::size_t ends[kLongestCjkPhrase + 1] = {};
        int count = 0;
        if (longest != m_longest.end()) {
            std::size_t end = firstEnd;
            while (true) {
                ends[count++] = end;
                if (count >= longest->second || end >= all.size()) {
                    break;
                }
                if (cjk) {
                    if (all[end] == ' ') {
                        break;  // a run ended
                    }
                    end += lengthAt(all, end);
                } else {
                    std::size_t const next = end + 1;
                    end = std::min(all.find(' ', next), all.size());
                }
            }
        }
        bool found = false;
        for (int i = count - 1; i >= 0 && !found; --i) {
            auto const phrase = m_phrases.find(all.substr(position, ends[i] - position));
            if (phrase != m_phrases.end()) {
                ids.insert(ids.end(), phrase->second.begin(), phrase->second.end());
                position = ends[i];
                found = true;
            }
        }
        if (found) {
            continue;
        }
        if (!cjk && first.size() > 3 && first.back() == 's') {
            auto const phrase = m_phrases.find(first.substr(0, first.size() - 1));
            if (phrase != m_phrases.end()) {
                ids.insert(ids.end(), phrase->second.begin(), phrase->second.end());
                position = firstEnd;
                continue;
            }
        }
        onUnknown(first, ids);
        position = firstEnd;
    }
}

namespace {

void sortOnce(std::vector<ConceptId>& ids) {
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
}

}  // namespace

Concepts Lexicon::read(std::string_view text) const {
    Concepts concepts;
    scan(text, concepts.spoken, [&concepts](std::string_view, std::vector<ConceptId>&) { ++concepts.unknown; });
    concepts.ids = concepts.spoken;
    sortOnce(concepts.ids);
    return concepts;
}

Concepts Lexicon::readAndLearn(std::string_view text) {
    std::vector<std::string> unknown;
    Concepts concepts;
    scan(text, concepts.ids, [&unknown](std::string_view word, std::vector<ConceptId>&) { unknown.emplace_back(word); });
    for (auto const& word : unknown) {
        ConceptId const id = intern(word);
        addPhrase(word, {id});
        concepts.ids.push_back(id);
    }
    sortOnce(concepts.ids);
    return concepts;
}

}  // namespace standin::vocabulary
