// A row is set against every parameter that shares a word or the symbol with it.
//
// name    overlap of concepts, weighted by their rarity; concepts of one group that
//         exclude each other (charge and discharge, detection and release) nearly rule a name out
// symbol  by itself it decides only where it names one parameter of the unit's dimension;
//         else companions, kind and magnitude have to agree
// unit    a dimension that disagrees rules a parameter out
// The best wins; a rival that is nearly as good lowers the score, a twin takes the match away.
// Tested by tests/src/vocabulary/matcher_test.cpp.
#include <algorithm>
#include <bit>
#include <cmath>

#include "quantity/unit.h"
#include "vocabulary/store.h"

namespace standin::vocabulary {

namespace {

constexpr double kLowestName = 0.35;   // a poorer overlap of names says nothing
constexpr double kLowestScore = 0.55;  // below: no match
constexpr double kConflict = 0.3;      // factor for each pair of excluding concepts
constexpr float kUnknownWord = 1.5F;   // weight of a word that no entry uses
constexpr double kOtherSymbol = 0.88;  // of a name whose row has another parameter's symbol
constexpr double kOtherFamily = 0.75;
constexpr double kGeneric = 0.97;
constexpr double kRivalDistance = 0.05;  // a rival this near makes the match doubtful
constexpr double kPlainName = 0.9;
constexpr double kUnusualValue = 0.85;
constexpr std::size_t kMostAliases = 4096;

std::uint32_t groupsOf(Lexicon const& lexicon, std::vector<ConceptId> const& ids, std::vector<ConceptId> const& without) {
    std::uint32_t groups = 0;
    for (ConceptId id : ids) {
        if (!std::binary_search(without.begin(), without.end(), id)) {
            groups |= lexicon.at(id).group == 0 ? 0U : 1U << lexicon.at(id).group;
        }
    }
    return groups;
}

struct Candidate {
    std::uint32_t entry = 0;
    double name = 0;       // 0 … 1
    bool symbol = false;   // its list of symbols holds the row's
    int symbolCount = 0;   // how many of several
    bool indexed = false;  // only without the symbol's index
    bool companionsMissing = false;
    double score = 0;
};

// Dimensions as coherent units; a temperature and a temperature difference go
// together, and peak values with plain ones.
bool dimensionsAgree(std::string_view a, std::string_view b) {
    auto const plain = [](std::string_view unit) {
        unit = unit.substr(0, unit.find(' '));  // "V rms", "V p-p"
        return unit == "K" ? std::string_view("degC") : unit;
    };
    return plain(a) == plain(b);
}

double kindFactor(ParameterEntry const& entry, model::ParameterKind kind) {
    bool const temperature = entry.unit == "degC" || entry.unit == "K" || entry.unit == "K/W";
    using model::ParameterKind;
    switch (entry.role) {
        case Role::Withstand: return kind == ParameterKind::Rating ? 1.0 : temperature ? 0.97 : kind == ParameterKind::Other ? 0.9 : 0.6;
        case Role::OperatingRange: return kind == ParameterKind::Rating ? (temperature ? 0.97 : 0.55) : kind == ParameterKind::OperatingCondition ? 1.0 : 0.92;
        case Role::Floor: return kind == ParameterKind::Rating ? 0.9 : 1.0;
        case Role::Mode: return 0.6;
        default: return kind == ParameterKind::Rating && !temperature ? 0.62 : kind == ParameterKind::OperatingCondition ? 0.85 : 1.0;
    }
}

double rangeFactor(ParameterEntry const& entry, std::optional<double> magnitude) {
    if (!magnitude || !entry.low || !entry.high || *magnitude == 0) {
        return 1.0;
    }
    double const value = std::abs(*magnitude);
    double const low = std::min(std::abs(*entry.low), std::abs(*entry.high));
    double const high = std::max(std::abs(*entry.low), std::abs(*entry.high));
    bool const spansZero = *entry.low <= 0 && *entry.high >= 0;
    if (value > 10 * high || (!spansZero && value < low / 10)) {
        return 0.6;
    }
    if (value > 1.6 * high || (!spansZero && value < low / 1.6)) {
        return 0.85;
    }
    return 1.0;
}

// "VCU1", "VCUn" -> "vcu": an index of the cell or channel; empty where there is none.
std::string_view withoutIndex(std::string_view folded) {
    if (folded.size() < 3) {
        return {};
    }
    char const last = folded.back();
    return (last >= '0' && last <= '9') || last == 'n' ? folded.substr(0, folded.size() - 1) : std::string_view();
}

class Matching {
public:
    Matching(Vocabulary::Store const& store, Query const& query) : m_store(store), m_query(query) {}

    std::optional<Match> best() {
        readName();
        readSymbol();
        if (m_candidates.empty()) {
            return std::nullopt;
        }
        for (auto& candidate : m_candidates) {
            candidate.score = scoreOf(candidate);
        }
        auto const better = [](Candidate const& a, Candidate const& b) { return a.score > b.score; };
        std::stable_sort(m_candidates.begin(), m_candidates.end(), better);
        Candidate const& first = m_candidates.front();
        if (first.score < kLowestScore) {
            return std::nullopt;
        }
        ParameterEntry const& entry = m_store.parameters[first.entry];
        double score = first.score;
        for (std::size_t i = 1; i < m_candidates.size(); ++i) {
            ParameterEntry const& rival = m_store.parameters[m_candidates[i].entry];
            if (rival.id == entry.id || (familyRank(entry) > familyRank(rival))) {
                continue;
            }
            double const distance = first.score - m_candidates[i].score;
            if (distance < kRivalDistance) {
                score *= 0.5 + 0.4 * distance / kRivalDistance;
            }
            break;
        }
        if (score < kLowestScore) {
            return std::nullopt;
        }
        return Match{.id = entry.id, .score = std::min(score, 1.0), .why = reason(first)};
    }

private:
    int familyRank(ParameterEntry const& entry) const {
        if (m_query.family.empty()) {
            return 1;
        }
        return entry.family == m_query.family ? 2 : entry.family == "generic" ? 1 : 0;
    }

    Candidate& candidateOf(std::uint32_t entry) {
        auto const found = std::find_if(m_candidates.begin(), m_candidates.end(), [entry](Candidate const& known) { return known.entry == entry; });
        if (found != m_candidates.end()) {
            return *found;
        }
        m_candidates.push_back(Candidate{});
        m_candidates.back().entry = entry;
        return m_candidates.back();
    }

    void readName() {
        if (m_query.name.empty()) {
            return;
        }
        m_said = m_store.lexicon.read(m_query.name);
        if (m_said.ids.empty()) {
            return;
        }
        float const saidWeight = m_store.weightOf(m_said.ids) + kUnknownWord * static_cast<float>(m_said.unknown);
        // Shared weight of every alias that shares a word.
        std::vector<float> shared(m_store.aliases.size(), 0.0F);
        std::vector<std::uint32_t> touched;
        for (ConceptId id : m_said.ids) {
            float const weight = m_store.lexicon.at(id).weight;
            for (std::uint32_t alias : m_store.aliasesByConcept[id]) {
                if (shared[alias] == 0) {
                    touched.push_back(alias);
                }
                shared[alias] += weight;
            }
        }
        auto const overlap = [&](std::uint32_t index) -> double { return shared[index] / (0.6F * m_store.aliases[index].weight + 0.4F * saidWeight); };
        if (touched.size() > kMostAliases) {
            std::nth_element(touched.begin(), touched.begin() + kMostAliases, touched.end());
            touched.resize(kMostAliases);
        }
        std::erase_if(touched, [&](std::uint32_t index) { return overlap(index) < kLowestName; });
        std::sort(touched.begin(), touched.end());
        for (std::uint32_t const index : touched) {
            Alias const& alias = m_store.aliases[index];
            double score = overlap(index);
            std::uint32_t const clash = groupsOf(m_store.lexicon, m_said.ids, alias.concepts) & groupsOf(m_store.lexicon, alias.concepts, m_said.ids);
            if (clash != 0) {
                score *= std::pow(kConflict, std::popcount(clash));
            }
            if (score >= kLowestName) {
                Candidate& candidate = candidateOf(alias.entry);
                candidate.name = std::max(candidate.name, score);
            }
        }
    }

    void readSymbol() {
        if (m_query.symbol.empty()) {
            return;
        }
        std::string const folded = foldSymbol(m_query.symbol);
        if (useSymbol(folded, false)) {
            return;
        }
        if (useSymbol(withoutIndex(folded), true)) {
            return;
        }
        // "IDD / ICC": each for itself; "tPLH, tPHL" and "tPLH tPHL", two symbols of one parameter, name it as one does.
        bool const divided = m_query.symbol.find_first_of("/,") != std::string_view::npos;
        if (!divided && !areAllSymbols(m_query.symbol)) {
            return;
        }
        std::string_view const separators = divided ? "/," : " ";
        std::size_t start = 0;
        int known = 0;
        int parts = 0;
        while (start < m_query.symbol.size()) {
            std::size_t const end = std::min(m_query.symbol.find_first_of(separators, start), m_query.symbol.size());
            if (end > start && end - start < m_query.symbol.size()) {
                ++parts;
                known += useSymbol(foldSymbol(m_query.symbol.substr(start, end - start)), true) ? 1 : 0;
            }
            start = end + 1;
        }
        if (parts < 2 || known < parts) {
            return;
        }
        for (auto& candidate : m_candidates) {
            candidate.indexed = candidate.indexed && candidate.symbolCount < parts;
        }
    }

    // "tTHL tTLH"; where one of the words is no symbol the other may be a part of it ("Tj1 Tstg").
    [[nodiscard]] bool areAllSymbols(std::string_view words) const {
        while (!words.empty()) {
            std::size_t const end = std::min(words.find(' '), words.size());
            if (end > 0 && m_store.symbols.find(foldSymbol(words.substr(0, end))) == m_store.symbols.end()) {
                return false;
            }
            words.remove_prefix(std::min(words.size(), end + 1));
        }
        return true;
    }

    bool useSymbol(std::string_view folded, bool indexed) {
        auto const found = m_store.symbols.find(folded);
        if (folded.empty() || found == m_store.symbols.end()) {
            return false;
        }
        for (SymbolUse const& use : found->second) {
            Candidate& candidate = candidateOf(use.entry);
            candidate.symbol = true;
            ++candidate.symbolCount;
            candidate.indexed = indexed;
            candidate.companionsMissing = !use.companions.empty() && !companionsPresent(use.companions);
            m_symbolKnown = m_symbolKnown || (agreesInDimension(use.entry) && familyRank(m_store.parameters[use.entry]) > 0);
        }
        return true;
    }

    bool companionsPresent(std::vector<std::string> const& companions) {
        if (m_neighbours.empty()) {
            for (auto const& neighbour : m_query.neighbours) {
                m_neighbours.push_back(foldSymbol(neighbour));
            }
        }
        return std::any_of(companions.begin(), companions.end(),
                           [this](std::string const& companion) { return std::find(m_neighbours.begin(), m_neighbours.end(), companion) != m_neighbours.end(); });
    }

    // Unknown dimensions agree with all.
    bool agreesInDimension(std::uint32_t index) {
        ParameterEntry const& entry = m_store.parameters[index];
        if (entry.unit.empty() || m_query.unit.empty()) {
            return true;
        }
        std::string const unit = coherentUnit(m_query.unit, entry.unit);
        return unit.empty() || dimensionsAgree(unit, entry.unit);
    }

    // How many parameters besides this one the symbol could name here.
    int symbolRivals(Candidate const& candidate) {
        int rivals = 0;
        ParameterEntry const& own = m_store.parameters[candidate.entry];
        for (auto const& other : m_candidates) {
            ParameterEntry const& entry = m_store.parameters[other.entry];
            if (other.symbol && entry.id != own.id && !other.companionsMissing && familyRank(entry) >= familyRank(own) && agreesInDimension(other.entry) &&
                rangeFactor(entry, m_query.magnitude) > 0.8 && kindFactor(entry, m_query.kind) > 0.8) {
                ++rivals;
            }
        }
        return rivals;
    }

    double scoreOf(Candidate const& candidate) {
        ParameterEntry const& entry = m_store.parameters[candidate.entry];
        if (!agreesInDimension(candidate.entry)) {
            return 0;
        }
        double score = 0;
        if (candidate.name > 0) {
            score = candidate.symbol ? 1 - (1 - candidate.name) * 0.4 : m_symbolKnown ? candidate.name * kOtherSymbol : candidate.name;
        } else if (candidate.symbol) {
            // Words that say something else speak against the symbol.
            score = candidate.companionsMissing ? 0.4 : symbolRivals(candidate) > 0 ? 0.6 : candidate.indexed ? 0.75 : 0.85;
            if (!m_said.ids.empty()) {
                score *= candidate.symbolCount > 1 ? 0.7 : 0.62;
            }
        }
        // A name that says it outright stands against an unusual value.
        double const plausible = rangeFactor(entry, m_query.magnitude);
        score *= kindFactor(entry, m_query.kind) * (candidate.name > kPlainName ? std::max(plausible, kUnusualValue) : plausible);
        switch (familyRank(entry)) {
            case 0: return candidate.name > 0 ? score * kOtherFamily : 0;  // a symbol of another family says nothing here
            case 1: return m_query.family.empty() ? score : score * kGeneric;
            default: return score;
        }
    }

    std::string reason(Candidate const& candidate) const {
        std::string why = candidate.name > 0 && candidate.symbol ? "name and symbol" : candidate.name > 0 ? "name" : "symbol";
        if (!m_query.unit.empty() && !m_store.parameters[candidate.entry].unit.empty()) {
            why += ", dimension";
        }
        return why;
    }

    Vocabulary::Store const& m_store;
    Query const& m_query;
    Concepts m_said;
    bool m_symbolKnown = false;
    std::vector<Candidate> m_candidates;
    std::vector<std::string> m_neighbours;
};

}  // namespace

std::string coherentUnit(std::string_view unit, std::string_view expected) {
    if (unit == expected) {
        return std::string(unit);
    }
    auto const parsed = quantity::parseUnit(unit, {.expected = expected, .allCapitals = false});
    return parsed ? parsed->coherent : std::string();
}

std::optional<Match> matchParameter(Vocabulary::Store const& store, Query const& query) { return Matching(store, query).best(); }

}  // namespace standin::vocabulary
