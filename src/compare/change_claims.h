// One statement of a revision history as something that can be looked for: what it is
// about, where it says that stands, and from which to which value.
//
//     ClaimReader reader(vocabulary.historyWords(), titles);
//     reader.read("On-resistance at VGS=4.5 V, maximum 32 mΩ (was 27 mΩ)")
//     //   subject {resistance, vgs, "4.5 V"}, from {"0.027 Ω"}, to {"0.032 Ω"}
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "compare/claim_words.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

enum class ClaimedChange : std::uint8_t { Changed, Added, Removed };

struct ChangeClaim {
    ClaimedChange change = ClaimedChange::Changed;  // by the first word that says so
    // It names nothing that could be looked for, or calls itself editorial.
    bool unspecific = false;
    TokenKeys subject;                // words, symbols and condition values, each once; empty: a place as a whole
    TokenKeys from, to;               // values
    std::vector<std::string> places;  // titles of sections as titleKey() gives them
};

// A heading without its number and without what stands in brackets behind it.
[[nodiscard]] std::string titleKey(std::string_view title);

class ClaimReader {
public:
    // `titles`: headings of both sheets that a claim may name, as printed.
    ClaimReader(vocabulary::HistoryWords const& words, std::vector<std::string> const& titles);

    [[nodiscard]] ChangeClaim read(std::string_view statement) const;

private:
    enum class Use : std::uint8_t;
    [[nodiscard]] ClaimedChange changeOf(std::vector<ClaimToken> const& tokens) const;
    [[nodiscard]] bool isFiller(std::vector<ClaimToken> const& tokens, std::size_t at) const;
    void takeEditorial(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses) const;
    struct Heading;
    [[nodiscard]] std::vector<Heading> headings(std::vector<ClaimToken> const& tokens) const;
    void takePlaces(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses, ChangeClaim& claim) const;
    void takeValues(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses, ChangeClaim& claim) const;

    std::vector<TokenKeys> m_titles, m_fillers, m_editorial, m_from, m_to, m_was, m_added, m_removed, m_place;
};

}  // namespace standin::compare
