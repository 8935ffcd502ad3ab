// Headings are taken out of the statement first, then editorial phrases and values;
// the subject is what is left besides fillers.
// Tested by tests/src/compare/change_claims_test.cpp.
#include "compare/change_claims.h"

#include <algorithm>
#include <cstdint>

namespace standin::compare {

enum class ClaimReader::Use : std::uint8_t { Subject, Place, Editorial, Value };

namespace {

using Kind = ClaimToken::Kind;

constexpr std::size_t kNear = 5;  // tokens between a word such as "was" and its value

std::vector<ClaimToken> titleTokens(std::string_view title) {
    auto const bracket = title.find_first_of("(（");
    std::vector<ClaimToken> tokens = claimTokens(title.substr(0, bracket == 0 ? title.size() : bracket));
    auto const isWord = [](ClaimToken const& token) { return token.kind == Kind::Word; };
    auto const first = std::find_if(tokens.begin(), tokens.end(), isWord);
    tokens.erase(tokens.begin(), first);
    while (!tokens.empty() && tokens.back().kind == Kind::Sign) tokens.pop_back();
    return tokens;
}

std::string joined(TokenKeys const& keys) {
    std::string text;
    for (auto const& key : keys) text += (text.empty() ? "" : " ") + key;
    return text;
}

void addOnce(TokenKeys& keys, std::string const& key) {
    if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
}

// The first value behind `at`, the last one before it; the size: none near enough.
std::size_t valueBehind(std::vector<ClaimToken> const& tokens, std::size_t at) {
    for (std::size_t i = at; i < tokens.size() && i < at + kNear; ++i) {
        if (tokens[i].kind == Kind::Quantity) return i;
    }
    return tokens.size();
}

std::size_t valueBefore(std::vector<ClaimToken> const& tokens, std::size_t at) {
    for (std::size_t i = at; i > 0 && i + kNear > at; --i) {
        if (tokens[i - 1].kind == Kind::Quantity) return i - 1;
    }
    return tokens.size();
}

}  // namespace

std::string titleKey(std::string_view title) { return joined(keysOf(titleTokens(title))); }

ClaimReader::ClaimReader(vocabulary::HistoryWords const& words, std::vector<std::string> const& titles)
    : m_editorial(phraseKeys(words.editorial)),
      m_from(phraseKeys(words.from)),
      m_to(phraseKeys(words.to)),
      m_was(phraseKeys(words.was)),
      m_added(phraseKeys(words.added)),
      m_removed(phraseKeys(words.removed)),
      m_place(phraseKeys(words.place)) {
    // Words of change and place are no subject either.
    m_fillers = phraseKeys(words.fillers);
    for (auto const* list : {&m_from, &m_to, &m_was, &m_added, &m_removed, &m_place}) m_fillers.insert(m_fillers.end(), list->begin(), list->end());
    longestFirst(m_fillers);
    for (auto const& title : titles) {
        TokenKeys keys = keysOf(titleTokens(title));
        if (!keys.empty()) m_titles.push_back(std::move(keys));
    }
    longestFirst(m_titles);
}

ClaimedChange ClaimReader::changeOf(std::vector<ClaimToken> const& tokens) const {
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (phraseAt(tokens, i, m_added) > 0) return ClaimedChange::Added;
        if (phraseAt(tokens, i, m_removed) > 0) return ClaimedChange::Removed;
    }
    return ClaimedChange::Changed;
}

bool ClaimReader::isFiller(std::vector<ClaimToken> const& tokens, std::size_t at) const {
    return at >= tokens.size() || tokens[at].kind == Kind::Sign || phraseAt(tokens, at, m_fillers) > 0;
}

void ClaimReader::takeEditorial(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses) const {
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        std::size_t const length = uses[i] == Use::Subject ? phraseAt(tokens, i, m_editorial) : 0;
        for (std::size_t k = i; k < i + length; ++k) uses[k] = Use::Editorial;
        if (length > 0) i += length - 1;
    }
}

// A known heading inside a statement, and whether the words around it make it a place.
struct ClaimReader::Heading {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool introduced = false;  // "in the … section"
    bool listed = false;      // beside a comma
};

std::vector<ClaimReader::Heading> ClaimReader::headings(std::vector<ClaimToken> const& tokens) const {
    auto const isComma = [&](std::size_t at) { return at < tokens.size() && tokens[at].kind == Kind::Sign && (tokens[at].key == "," || tokens[at].key == "、"); };
    std::vector<Heading> found;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        std::size_t const length = phraseAt(tokens, i, m_titles);
        if (length == 0) continue;
        // One word is a heading where it is written like one and stands by itself.
        bool const alone = length > 1 || (tokens[i].capital && (i == 0 || isFiller(tokens, i - 1)) && isFiller(tokens, i + 1));
        if (!alone) continue;
        Heading heading{.begin = i, .end = i + length};
        for (std::size_t back = 1; back <= 2 && back <= i; ++back) heading.introduced = heading.introduced || (isFiller(tokens, i - 1) && phraseAt(tokens, i - back, m_place) > 0);
        heading.introduced = heading.introduced || (heading.end < tokens.size() && phraseAt(tokens, heading.end, m_place) > 0);
        heading.listed = (i > 0 && isComma(i - 1)) || isComma(heading.end);
        found.push_back(heading);
        i += length - 1;
    }
    return found;
}

// A heading that nothing makes a place may be what was changed: "overcharge detection
// voltage" where a section is called "Overcharge detection".
void ClaimReader::takePlaces(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses, ChangeClaim& claim) const {
    auto const found = headings(tokens);
    bool const any = std::any_of(found.begin(), found.end(), [](Heading const& heading) { return heading.introduced; });
    std::vector<bool> inside(tokens.size(), false);
    for (auto const& heading : found) std::fill(inside.begin() + static_cast<std::ptrdiff_t>(heading.begin), inside.begin() + static_cast<std::ptrdiff_t>(heading.end), true);
    bool nothingElse = true;
    for (std::size_t i = 0; i < tokens.size(); ++i) nothingElse = nothingElse && (inside[i] || isFiller(tokens, i));
    for (auto const& heading : found) {
        if (!nothingElse && !heading.introduced && !(any && heading.listed)) continue;
        TokenKeys title;
        for (std::size_t k = heading.begin; k < heading.end; ++k) {
            title.push_back(tokens[k].key);
            uses[k] = Use::Place;
        }
        addOnce(claim.places, joined(title));
    }
}

void ClaimReader::takeValues(std::vector<ClaimToken> const& tokens, std::vector<Use>& uses, ChangeClaim& claim) const {
    auto const take = [&](std::size_t at, TokenKeys& values) {
        if (at >= tokens.size()) return;
        addOnce(values, tokens[at].key);
        uses[at] = Use::Value;
    };
    auto const takeWords = [&uses](std::size_t at, std::size_t count) { std::fill_n(uses.begin() + static_cast<std::ptrdiff_t>(at), count, Use::Value); };
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (std::size_t const was = phraseAt(tokens, i, m_was)) {
            std::size_t const earlier = valueBehind(tokens, i + was);
            if (earlier == tokens.size()) continue;
            take(valueBefore(tokens, i), claim.to);
            take(earlier, claim.from);
            takeWords(i, was);
        } else if (std::size_t const from = phraseAt(tokens, i, m_from)) {
            take(valueBehind(tokens, i + from), claim.from);
        } else if (std::size_t const to = phraseAt(tokens, i, m_to)) {
            std::size_t const later = valueBehind(tokens, i + to);
            if (later == tokens.size()) continue;
            std::size_t const earlier = valueBefore(tokens, i);
            bool const pair = earlier < tokens.size() && tokens[earlier].unit == tokens[later].unit;
            bool const known = earlier < tokens.size() && uses[earlier] == Use::Value;
            if (!pair && !known && claim.from.empty()) continue;
            take(later, claim.to);
            if (pair) take(earlier, claim.from);
        }
    }
}

ChangeClaim ClaimReader::read(std::string_view statement) const {
    ChangeClaim claim;
    auto const tokens = claimTokens(statement);
    claim.change = changeOf(tokens);
    std::vector<Use> uses(tokens.size(), Use::Subject);
    takePlaces(tokens, uses, claim);
    takeEditorial(tokens, uses);
    takeValues(tokens, uses, claim);
    bool editorial = false;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        editorial = editorial || uses[i] == Use::Editorial;
        if (uses[i] != Use::Subject || tokens[i].kind == Kind::Sign) continue;
        if (std::size_t const filler = phraseAt(tokens, i, m_fillers)) {
            i += filler - 1;
            continue;
        }
        // A number alone counts something or numbers a table.
        if (tokens[i].kind == Kind::Quantity && tokens[i].unit.empty()) continue;
        addOnce(claim.subject, tokens[i].key);
    }
    bool const nothing = claim.subject.empty() && claim.from.empty() && claim.to.empty();
    claim.unspecific = nothing && (editorial || claim.places.empty());
    return claim;
}

}  // namespace standin::compare
