// Words of several languages -> concepts, so that "over-charge protection
// voltage" and "过充电检测电压" are seen to say the same.
//
// Defines: ConceptId, Concept, Concepts, Lexicon; foldWords, foldSymbol.
//
//     lexicon.read("Over-charge detection delay").ids  ->  {overcharge, detect, delay}, sorted
#pragma once

#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/comparison.h"

namespace standin::vocabulary {

using ConceptId = std::uint16_t;

// Hashing that finds a std::string key by a string_view. Words and phrases are told by their
// beginning, middle and end, which costs less than the look-up itself.
struct ViewHash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const noexcept {
        std::uint64_t hash = text.size();
        if (text.size() >= 8) hash = mixed(mixed(mixed(hash, read<8>(text, 0)), read<8>(text, text.size() / 2 - 4)), read<8>(text, text.size() - 8));
        else if (text.size() >= 4) hash = mixed(hash, read<4>(text, 0) << 32 | read<4>(text, text.size() - 4));
        else if (!text.empty()) hash = mixed(hash, read<1>(text, 0) << 16 | read<1>(text, text.size() / 2) << 8 | read<1>(text, text.size() - 1));
        return static_cast<std::size_t>(hash ^ hash >> 32);
    }

private:
    static std::uint64_t mixed(std::uint64_t hash, std::uint64_t more) { return (hash ^ more) * 0x9E3779B97F4A7C15U; }
    template <std::size_t Bytes>
    static std::uint64_t read(std::string_view text, std::size_t at) {
        std::uint64_t bytes = 0;
        std::memcpy(&bytes, text.data() + at, Bytes);
        return bytes;
    }
};
template <class T>
using ViewMap = std::unordered_map<std::string, T, ViewHash, std::equal_to<>>;

struct Concept {
    std::string name;
    std::uint8_t group = 0;  // concepts of one group exclude each other; 0: none
    model::Severity severity = model::Severity::Editorial;  // what a sentence about it is worth; Editorial: nothing by itself
    std::string caution;
    float weight = 0;  // the rarer in names, the heavier
};

// What a text says, word order given up.
struct Concepts {
    std::vector<ConceptId> ids;  // sorted, each once
    std::vector<ConceptId> spoken;  // in the order of the text; repeated where said again
    int unknown = 0;             // words that no entry uses
    [[nodiscard]] bool has(ConceptId id) const;
    [[nodiscard]] bool containsAll(std::vector<ConceptId> const& wanted) const;  // wanted is sorted
};

// Lower case, full-width forms made narrow, hyphens and punctuation made spaces;
// "V-" and "B+" keep their sign. Runs of Chinese and Japanese are words of their own.
[[nodiscard]] std::string foldWords(std::string_view text);

// "V_CU", "V(CU)", "VCU " -> "vcu"; "V−" -> "v-"; subscript digits become digits.
[[nodiscard]] std::string foldSymbol(std::string_view symbol);

class Lexicon {
public:
    // The id of a concept, made where it is new.
    ConceptId intern(std::string_view name);
    [[nodiscard]] ConceptId const* findConcept(std::string_view name) const;
    Concept& at(ConceptId id) { return m_concepts[id]; }
    [[nodiscard]] Concept const& at(ConceptId id) const { return m_concepts[id]; }
    [[nodiscard]] std::size_t size() const { return m_concepts.size(); }

    // `phrase` (any language) means `ids`, all of them. An empty list: the phrase says nothing.
    void addPhrase(std::string_view phrase, std::vector<ConceptId> ids);
    // 1 … 31 for a name of a group; further groups share the last.
    std::uint8_t group(std::string_view name);

    [[nodiscard]] Concepts read(std::string_view text) const;
    // The same; words that are not known become concepts of their own.
    [[nodiscard]] Concepts readAndLearn(std::string_view text);

    // References to all that it holds, for archive.h.
    struct Parts {
        std::vector<Concept>& concepts;
        ViewMap<ConceptId>& byName;
        ViewMap<std::vector<ConceptId>>& phrases;
        ViewMap<std::uint8_t>& longest;
        std::vector<std::string>& groups;
    };
    [[nodiscard]] Parts parts() { return {m_concepts, m_byName, m_phrases, m_longest, m_groups}; }

private:
    template <class OnUnknown>
    void scan(std::string_view text, std::vector<ConceptId>& ids, OnUnknown&& onUnknown) const;

    std::vector<Concept> m_concepts;
    ViewMap<ConceptId> m_byName;
    ViewMap<std::vector<ConceptId>> m_phrases;   // folded
    ViewMap<std::uint8_t> m_longest;             // first word or first CJK character -> words or characters of the longest phrase
    std::vector<std::string> m_groups;
};

}  // namespace standin::vocabulary
