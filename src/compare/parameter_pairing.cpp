// 1. Identity keys over all printed fields (and the kind), aligned in order, then wherever they
//    stand. 2. Candidates for the rest from buckets (id, symbol, name, name words,
//    corresponding rows), each bucket bounded. 3. Scores. 4. Assignment. 5. Confidence:
//    how surely both name one thing, less where giving two rows each other's partner
//    would lose little (kNearlyAsGood) or the versions and conditions do not meet.
//
// Tested by tests/src/compare/parameter_pairing_test.cpp.
#include "compare/parameter_pairing.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>

#include "compare/assignment.h"
#include "compare/conditions.h"
#include "compare/parameter_profile.h"
#include "compare/printed_rows.h"
#include "compare/proof_by_layout.h"
#include "compare/proof_by_limits.h"
#include "compare/relation.h"
#include "compare/telling_words.h"
#include "compare/variant_choice.h"
#include "compare/version_naming.h"

namespace standin::compare {

namespace {

using model::Parameter;
using model::ParameterKind;
using Profile = ParameterProfile;

constexpr double kPairThreshold = 0.45;
constexpr double kLeastIdentity = 0.3;
constexpr double kNearlyAsGood = 0.04;
constexpr double kNothing = 1e-9;
constexpr double kDoubtfulConfidence = 0.6;
constexpr double kAmbiguousConfidence = 0.78;
constexpr double kUnmetConfidence = 0.75;         // one of several rows, and its versions or conditions do not meet
constexpr double kKnownConfidence = 0.92;         // one id of the vocabulary
constexpr double kNamedConfidence = 0.9;          // one name, and no other symbol
constexpr double kProvenConfidence = 0.86;        // one of several rows, told by the limits
constexpr double kAgreeingConfidence = 0.86;      // one symbol or id, and every printed number agrees
constexpr double kAgreementWeight = 0.12;         // of the printed numbers, two makers
constexpr double kAgreementWeightOneText = 0.05;  // two states of one text: the numbers are what changes
constexpr double kTellingWeight = 0.12;           // of the words that tell a row from its like
constexpr double kGradeWeight = 0.04;             // of the temperatures that both tables are for
constexpr double kMixedKinds = 0.2;               // what a rating against a characteristic costs
constexpr double kUnknownKind = 0.1;              // where one table has no heading that tells
constexpr double kToldApart = 0.5;                // of those words, for sharing what is printed
constexpr double kDepartureWeight = 0.05;         // of a line that is none of what its table is for
constexpr double kAgreeingCondition = 0.005;      // of a quantity that both state alike: among equals it decides
constexpr int kMostAgreeing = 3;
constexpr double kStrandWeight = 0.08;            // where other rows of the name found their partners
constexpr double kClearVote = 0.02;               // what another partner would cost a row that speaks for its name
constexpr int kFewestVotes = 2;
constexpr int kTellingNumbers = 2;  // one number that agrees stands in many a row by chance
constexpr double kClearlyTold = 0.25;  // of those words, for a pair against what else it could be
constexpr std::size_t kLargestBucket = 40;

// A changed heading makes a rating a characteristic in the reading of one sheet: in
// two states of one text the kind does not count, else it keeps ratings apart.
enum class Kinds : std::uint8_t { Count, DoNotCount };

std::vector<Key> identitiesOf(std::vector<Parameter> const& rows, std::vector<int> const& wanted, Kinds kinds) {
    std::vector<Key> identities;
    identities.reserve(wanted.size());
    std::string const* tableCondition = nullptr;  // of the row before; mostly that of the next too
    Key tableKey = 0;
    Key const nothing = keyOf({});
    for (int const i : wanted) {
        Parameter const& p = rows[static_cast<std::size_t>(i)];
        if (tableCondition == nullptr || *tableCondition != p.tableCondition) tableKey = keyOf(p.tableCondition);
        tableCondition = &p.tableCondition;
        Key identity = combined(tableKey, kinds == Kinds::Count ? static_cast<Key>(p.kind) : Key{0});
        for (std::string const* field : {&p.name, &p.symbol, &p.condition, &p.variant, &p.unit}) identity = combined(identity, keyOf(*field));
        for (auto const* value : {&p.min, &p.typ, &p.max}) identity = combined(identity, *value ? keyOf((*value)->text) : nothing);
        identities.push_back(identity);
    }
    return identities;
}

double variantWeight(VariantRelation relation, bool twins) {
    switch (relation) {
        case VariantRelation::Same: return 0.08;
        case VariantRelation::Shares: return 0.06;
        case VariantRelation::Meets: return 0.03;
        case VariantRelation::OneUnstated: return 0;
        case VariantRelation::Apart: return twins ? -0.05 : -0.15;
    }
    return 0;
}

// But for the version: the same values of one parameter under the same conditions.
bool printTheSame(Parameter const& a, Parameter const& b) { return a.canonical == b.canonical && a.kind == b.kind && a.tableCondition == b.tableCondition && printAlike(a, b); }

bool isRatingHereOnly(Parameter const& a, Parameter const& b) { return (a.kind == ParameterKind::Rating) != (b.kind == ParameterKind::Rating); }
// The heading of its table says what the row is.
bool isKnown(Parameter const& p) { return p.kind != ParameterKind::Other; }

int filledColumns(Parameter const& p) { return (p.min ? 1 : 0) | (p.typ ? 2 : 0) | (p.max ? 4 : 0); }

class Pairing {
public:
    Pairing(SheetPair const& sheets, ConditionMemo& conditions)
        : m_sheets(sheets),
          m_naming(sheets.reference, sheets.candidate, sheets.vocabulary, conditions),
          m_conditions(conditions),
          m_referenceProfiles(sheets.reference.parameters.size()),
          m_candidateProfiles(sheets.candidate.parameters.size()) {}

    ParameterPairing run() {
        select(m_sheets.reference, m_sheets.options.referenceVariant, m_reference, m_result.otherVariantReference);
        select(m_sheets.candidate, m_sheets.options.candidateVariant, m_candidate, m_result.otherVariantCandidate);
        m_versionsSettled = areVersionsSettled();
        pairTwins();
        tellApart();
        pairRest();
        std::sort(m_result.pairs.begin(), m_result.pairs.end(), [](auto const& a, auto const& b) { return a.reference < b.reference; });
        return std::move(m_result);
    }

private:
    static void select(model::Datasheet const& sheet, std::string const& chosen, std::vector<int>& selected, std::vector<int>& others) {
        for (std::size_t i = 0; i < sheet.parameters.size(); ++i) {
            (isOtherVariant(sheet.parameters[i].variant, chosen) ? others : selected).push_back(static_cast<int>(i));
        }
    }

    // The rows of the chosen version are compared with those of one other: by whatever name, they are meant.
    [[nodiscard]] bool areVersionsSettled() const {
        auto const isOne = [](std::string const& chosen, std::vector<Parameter> const& all, std::vector<int> const& selected) {
            std::string_view version;
            return !chosen.empty() || std::all_of(selected.begin(), selected.end(), [&](int index) {
                std::string_view const own = all[static_cast<std::size_t>(index)].variant;
                if (version.empty()) version = own;
                return own.empty() || own == version;
            });
        };
        auto const& options = m_sheets.options;
        bool const chosen = !options.referenceVariant.empty() || !options.candidateVariant.empty();
        return chosen && isOne(options.referenceVariant, m_sheets.reference.parameters, m_reference) && isOne(options.candidateVariant, m_sheets.candidate.parameters, m_candidate);
    }

    [[nodiscard]] Parameter const& r(int index) const { return m_sheets.reference.parameters[static_cast<std::size_t>(index)]; }
    [[nodiscard]] Parameter const& c(int index) const { return m_sheets.candidate.parameters[static_cast<std::size_t>(index)]; }

    Profile const& referenceProfile(int index) {
        auto& profile = m_referenceProfiles[static_cast<std::size_t>(index)];
        if (!profile) profile = profileOf(r(index), m_naming.ofReference(r(index)), m_sheets.referenceRows, index, m_conditions);
        return *profile;
    }
    Profile const& candidateProfile(int index) {
        auto& profile = m_candidateProfiles[static_cast<std::size_t>(index)];
        if (!profile) profile = profileOf(c(index), m_naming.ofCandidate(c(index)), m_sheets.candidateRows, index, m_conditions);
        return *profile;
    }

    // How the conditions of two rows meet. Rows share theirs, so that few meetings are many rows'.
    struct Met {
        model::ConditionRelation relation = model::ConditionRelation::Same;
        double likeness = 0;
        bool departs = false;         // see departsAlone(), in either sheet
        std::optional<int> agreeing;  // quantities
        std::optional<int> unmet;
    };
    Met& met(Profile const& reference, Profile const& candidate) {
        auto const [entry, isNew] = m_met[reference.conditions].try_emplace(candidate.conditions);
        if (isNew) {
            entry->second.relation = relateStated(*reference.conditions, *candidate.conditions);
            entry->second.likeness = conditionLikeness(entry->second.relation, *reference.conditions, *candidate.conditions);
            entry->second.departs = departsAlone(*reference.conditions, *candidate.conditions) || departsAlone(*candidate.conditions, *reference.conditions);
        }
        return entry->second;
    }

    // What else could be meant by the rows of a pair.
    struct Rivalry {
        bool several = false;          // it is one of several rows
        bool fitWorse = false;         // every other meets fewer of the conditions
        bool ofOtherVersions = false;  // one of another version fits as well
    };

    [[nodiscard]] bool inTwinRows(Profile const& a, Profile const& b) const {
        return a.row >= 0 && b.row >= 0 && m_sheets.rowPartnerOfReference[static_cast<std::size_t>(a.row)] == b.row;
    }

    void pairTwins() {
        Kinds const kinds = m_sheets.oneText() ? Kinds::DoNotCount : Kinds::Count;
        std::vector<Key> const referenceKeys = identitiesOf(m_sheets.reference.parameters, m_reference, kinds);
        std::vector<Key> const candidateKeys = identitiesOf(m_sheets.candidate.parameters, m_candidate, kinds);
        // Likeness only steers which of several equal rows is whose twin.
        Likeness const likeness = [&](int i, int j) { return score(m_reference[static_cast<std::size_t>(i)], m_candidate[static_cast<std::size_t>(j)]); };
        auto pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = kPairThreshold});
        std::erase_if(pairs, [&](IndexPair p) { return referenceKeys[static_cast<std::size_t>(p.reference)] != candidateKeys[static_cast<std::size_t>(p.candidate)]; });
        pairMoved(referenceKeys, candidateKeys, pairs);
        auto const ofReference = partnersOfReference(pairs, m_reference.size());
        auto const ofCandidate = partnersOfCandidate(pairs, m_candidate.size());
        for (std::size_t i = 0; i < m_reference.size(); ++i) {
            if (ofReference[i] < 0) {
                m_freeReference.push_back(m_reference[i]);
            } else {
                m_result.pairs.push_back({m_reference[i], m_candidate[static_cast<std::size_t>(ofReference[i])], 1.0, false});
            }
        }
        for (std::size_t j = 0; j < m_candidate.size(); ++j) {
            if (ofCandidate[j] < 0) m_freeCandidate.push_back(m_candidate[j]);
        }
    }

    void tellApart() {
        for (int const i : m_freeReference) m_referenceWords.add(i, kinOf(r(i), referenceProfile(i)), wordsOf(r(i)), r(i).tableCondition);
        for (int const j : m_freeCandidate) m_candidateWords.add(j, kinOf(c(j), candidateProfile(j)), wordsOf(c(j)), c(j).tableCondition);
    }
    static std::string wordsOf(Parameter const& p) { return p.name + " " + p.condition; }

    // Where versions of both sheets correspond and none was chosen, rows of two others are no pair.
    [[nodiscard]] bool areOtherVersions(Profile const& a, Profile const& b) const {
        bool const chosen = !m_sheets.options.referenceVariant.empty() || !m_sheets.options.candidateVariant.empty();
        return !chosen && m_naming.areOthers(a.variant, b.variant);
    }

    // A rating is no characteristic; but at what temperatures a part operates stands among the
    // ratings of one maker and among the conditions of the other, and a thermal resistance among the ratings or
    // in a table of its own. A rated supply is none to operate at.
    [[nodiscard]] bool mixesRatings(Parameter const& a, Parameter const& b) const {
        if (!isRatingHereOnly(a, b)) return false;
        auto const* entry = !a.canonical.empty() && a.canonical == b.canonical ? m_sheets.vocabulary.find(a.canonical) : nullptr;
        if (entry == nullptr) return true;
        bool const temperature = entry->unit == "degC" || entry->unit == "K";
        return entry->unit != "K/W" && !(temperature && entry->role == vocabulary::Role::OperatingRange);
    }

    // How much speaks for the pair, 0 … about 1; 0: it cannot be.
    double score(int i, int j) {
        Parameter const& a = r(i);
        Parameter const& b = c(j);
        Profile const& pa = referenceProfile(i);
        Profile const& pb = candidateProfile(j);
        // Rows of two makers' tables correspond by what they say, not by where they stand.
        bool const inTwins = inTwinRows(pa, pb);
        bool const twins = inTwins && m_sheets.oneText();
        if (!twins && (areOtherVersions(pa, pb) || pa.conditionInValues != pb.conditionInValues)) return 0;
        bool const sameSymbol = !pa.symbol.empty() && pa.symbol == pb.symbol;
        bool const otherSymbol = !pa.symbol.empty() && !pb.symbol.empty() && pa.symbol != pb.symbol;
        bool const sameName = !pa.name.empty() && pa.name == pb.name;
        double const nameLikeness = sameName ? 1.0 : (pa.nameTokens.empty() || pb.nameTokens.empty() ? 0.0 : similarity(pa.nameTokens, pb.nameTokens));
        double identity = 0;
        if (!a.canonical.empty() && a.canonical == b.canonical) {
            identity = 0.6 + (sameSymbol ? 0.05 : 0.0) + 0.05 * nameLikeness;
        } else if (!a.canonical.empty() && !b.canonical.empty()) {
            if (!twins) return 0;
            identity = 0.2;
        } else {
            identity = 0.45 * std::max(0.0, (nameLikeness - 0.4) / 0.6) + (sameSymbol ? 0.3 : 0.0) - (otherSymbol ? 0.1 : 0.0);
            if (pa.symbol.empty() && pb.symbol.empty() && sameName) identity = 0.62;
            if (sameSymbol && pa.name.empty() && pb.name.empty()) identity = 0.62;
        }
        if (inTwins) identity += twins ? 0.25 : 0.03;
        identity = std::min(identity, 0.75);
        if (identity < kLeastIdentity) return 0;
        bool const ratingsMix = mixesRatings(a, b);
        if (ratingsMix && !twins && !m_sheets.oneText() && isKnown(a) && isKnown(b)) return 0;
        if (ratingsMix && !twins) identity -= isKnown(a) && isKnown(b) ? kMixedKinds : kUnknownKind;
        double total = identity;
        bool const dimensionsDiffer = !pa.dimension.empty() && !pb.dimension.empty() && pa.dimension != pb.dimension;
        if (dimensionsDiffer && !twins && !(sameSymbol && sameName)) total -= 0.35;
        if (a.kind != b.kind && !twins) total -= 0.02;
        total += 0.2 * met(pa, pb).likeness;
        if (met(pa, pb).departs) total -= kDepartureWeight;
        total += kAgreeingCondition * std::min(agreeingConditions(pa, pb), kMostAgreeing);
        total += variantWeight(relateVersions(pa, pb), twins);
        if (pa.grade && pb.grade) total += pa.grade == pb.grade ? kGradeWeight : -kGradeWeight;
        total += kTellingWeight * tellingLikeness(m_referenceWords, i, m_candidateWords, j);
        if (twins && pa.placeInRow == pb.placeInRow) total += 0.03;
        if (filledColumns(a) == filledColumns(b)) total += 0.02;
        if (pa.dimension == pb.dimension) total += (m_sheets.oneText() ? kAgreementWeightOneText : kAgreementWeight) * agreementOf(pa, pb).share();
        return std::max(total, 0.0);
    }

    // How surely an assigned pair is one parameter, 0 … 1.
    double certainty(Edge const& edge, Rivalry const& rivals) {
        bool const several = rivals.several;
        Parameter const& a = r(edge.reference);
        Parameter const& b = c(edge.candidate);
        Profile const& pa = referenceProfile(edge.reference);
        Profile const& pb = candidateProfile(edge.candidate);
        bool const otherSymbol = !pa.symbol.empty() && !pb.symbol.empty() && pa.symbol != pb.symbol;
        double identity = edge.weight;
        if (!a.canonical.empty() && a.canonical == b.canonical) identity = std::max(identity, kKnownConfidence);
        else if (!pa.name.empty() && pa.name == pb.name && !otherSymbol) identity = std::max(identity, kNamedConfidence);
        bool const dimensionsDiffer = !pa.dimension.empty() && !pb.dimension.empty() && pa.dimension != pb.dimension;
        bool const ratingsMix = mixesRatings(a, b);
        VariantRelation const related = relateVersions(pa, pb);
        VariantRelation const variants = m_versionsSettled && related == VariantRelation::Apart ? VariantRelation::OneUnstated : related;
        auto const conditions = met(pa, pb).relation;
        Agreement const numbers = agreementOf(pa, pb);
        bool const sameSymbol = !pa.symbol.empty() && pa.symbol == pb.symbol;
        // The conditions of two makers seldom read alike: numbers that all agree speak louder, unless one symbol has two values.
        bool const oneThing = sameSymbol || (!a.canonical.empty() && a.canonical == b.canonical);
        bool const opposed = contradict(*pa.conditions, *pb.conditions);
        // Both print one version for the row, or one supply, load or temperature: it is no other of the several.
        bool const sameVersion = variants == VariantRelation::Shares || (variants == VariantRelation::Same && pa.namesVariant && pb.namesVariant);
        bool const sameCase = sameVersion || (!opposed && agreeingConditions(pa, pb) > 0);
        bool const agree = oneThing && !dimensionsDiffer && !opposed && (numbers.full() || (sameVersion && numbers.agreeing > 0));
        if (agree) identity = std::max(identity, kAgreeingConfidence);
        // One of several rows of a table whose versions only one sheet names: a lone number may be another version's.
        bool const likeConditions = conditions == model::ConditionRelation::Same || conditions == model::ConditionRelation::OneUnstated;
        int const telling = likeConditions ? 1 : kTellingNumbers;
        bool const anyVersion = rivals.ofOtherVersions && variants == VariantRelation::OneUnstated && numbers.agreeing < telling;
        // What the better pairs left over shares an id and nothing that is printed.
        bool const told = tellingLikeness(m_referenceWords, edge.reference, m_candidateWords, edge.candidate) >= kToldApart;
        bool const leftOver = several && numbers.agreeing == 0 && !sameSymbol && pa.name != pb.name && !told && !sameCase && !m_sheets.oneText();
        bool const unmet =
            variants == VariantRelation::Apart || leftOver || anyVersion || (several && !rivals.fitWorse && !told && conditions == model::ConditionRelation::Unordered && !agree);
        if (unmet || (ratingsMix && !m_sheets.oneText())) identity = std::min(identity, kUnmetConfidence);
        if (dimensionsDiffer) identity = std::min(identity, kDoubtfulConfidence);
        return std::min(identity, 1.0);
    }

    int unmetConditions(Edge const& edge) {
        Profile const& reference = referenceProfile(edge.reference);
        Profile const& candidate = candidateProfile(edge.candidate);
        auto& unmet = met(reference, candidate).unmet;
        if (!unmet) unmet = unmetQuantities(*reference.conditions, *candidate.conditions);
        return *unmet;
    }

    // The row of `other` could be meant as well as that of `own`: its conditions fit its partner no
    // worse, it is of another version, and it does not print the same numbers.
    bool isOfOtherVersion(Edge const& own, Edge const& other) {
        if (met(referenceProfile(other.reference), candidateProfile(other.candidate)).likeness < met(referenceProfile(own.reference), candidateProfile(own.candidate)).likeness)
            return false;
        if (own.candidate == other.candidate) return r(own.reference).variant != r(other.reference).variant && !printAlike(r(own.reference), r(other.reference));
        return c(own.candidate).variant != c(other.candidate).variant && !printAlike(c(own.candidate), c(other.candidate));
    }

    // By reference, of the chosen pairs.
    std::unordered_map<int, Rivalry> rivalriesOf(std::vector<Edge> const& edges, std::vector<Edge> const& chosen, std::unordered_map<int, double> const& losses) {
        std::unordered_map<int, Edge const*> ofReference, ofCandidate;
        std::unordered_map<int, Rivalry> found;
        for (Edge const& edge : chosen) {
            ofReference[edge.reference] = ofCandidate[edge.candidate] = &edge;
            found[edge.reference] = {.several = losses.find(edge.reference) != losses.end(), .fitWorse = true, .ofOtherVersions = false};
        }
        for (Edge const& edge : edges) {
            auto const r = ofReference.find(edge.reference);
            auto const c = ofCandidate.find(edge.candidate);
            for (Edge const* own : {r == ofReference.end() ? nullptr : r->second, c == ofCandidate.end() ? nullptr : c->second}) {
                if (own == nullptr || (own->reference == edge.reference && own->candidate == edge.candidate)) continue;
                Rivalry& rivalry = found[own->reference];
                rivalry.fitWorse = rivalry.fitWorse && unmetConditions(edge) > unmetConditions(*own);
                rivalry.ofOtherVersions = rivalry.ofOtherVersions || isOfOtherVersion(*own, edge);
            }
        }
        return found;
    }

    [[nodiscard]] double told(int reference, int candidate) const { return tellingLikeness(m_referenceWords, reference, m_candidateWords, candidate); }

    static long long edgeId(int i, int j) { return static_cast<long long>(i) << 32 | static_cast<unsigned>(j); }

    std::vector<Edge> possibleEdges() {
        std::vector<Edge> edges;
        std::vector<int> lastMet(m_sheets.candidate.parameters.size(), -1);  // by candidate, the reference that was set against it last
        auto consider = [&](int i, int j) {
            if (std::exchange(lastMet[static_cast<std::size_t>(j)], i) == i) return;
            double const weight = score(i, j);
            if (weight >= kPairThreshold) edges.push_back({i, j, weight});
        };
        std::unordered_map<std::string, std::vector<int>> bySymbol;
        std::unordered_map<std::string, std::vector<int>> byName;
        std::unordered_map<std::string, std::vector<int>> byCanonical;
        std::unordered_map<Key, std::vector<int>> byWord;
        std::unordered_map<int, std::vector<int>> byRow;
        for (int const j : m_freeCandidate) {
            Profile const& profile = candidateProfile(j);
            if (!profile.symbol.empty()) bySymbol[profile.symbol].push_back(j);
            if (!profile.name.empty()) byName[profile.name].push_back(j);
            if (!c(j).canonical.empty()) byCanonical[c(j).canonical].push_back(j);
            if (profile.row >= 0) byRow[profile.row].push_back(j);
            for (Key const word : profile.nameTokens) byWord[word].push_back(j);
        }
        std::unordered_map<Key, std::size_t> rowsOfWord;  // of the reference
        for (int const i : m_freeReference) {
            for (Key const word : referenceProfile(i).nameTokens) ++rowsOfWord[word];
        }
        // The first rows of one key meet all of the other sheet, the rest of either sheet only those.
        std::unordered_map<std::vector<int> const*, std::size_t> looked;  // rows of the reference, by bucket
        auto look = [&](auto const& index, auto const& key, int i) {
            auto const found = index.find(key);
            if (found == index.end()) return;
            bool const first = found->second.size() <= kLargestBucket || looked[&found->second]++ < kLargestBucket;
            std::size_t const count = first ? found->second.size() : kLargestBucket;
            for (std::size_t k = 0; k < count; ++k) consider(i, found->second[k]);
        };
        for (int const i : m_freeReference) {
            Profile const& profile = referenceProfile(i);
            if (profile.row >= 0) look(byRow, m_sheets.rowPartnerOfReference[static_cast<std::size_t>(profile.row)], i);
            if (!r(i).canonical.empty()) look(byCanonical, r(i).canonical, i);
            if (!profile.symbol.empty()) look(bySymbol, profile.symbol, i);
            if (!profile.name.empty()) look(byName, profile.name, i);
            for (Key const word : profile.nameTokens) {
                auto const found = byWord.find(word);
                if (found != byWord.end() && std::min(found->second.size(), rowsOfWord[word]) <= kLargestBucket / 2) look(byWord, word, i);
            }
        }
        return edges;
    }

    // By reference: the least that another partner would cost; no entry: there is none.
    std::unordered_map<int, double> lossesOf(std::vector<Edge> const& edges, std::vector<Edge> const& chosen) {
        constexpr int kNone = -1;
        std::vector<int> partnerOfReference(m_sheets.reference.parameters.size(), kNone);
        std::vector<int> partnerOfCandidate(m_sheets.candidate.parameters.size(), kNone);
        std::unordered_map<int, double> loss;
        std::unordered_map<long long, double> weightOf;
        weightOf.reserve(edges.size());
        for (Edge const& edge : chosen) {
            partnerOfReference[static_cast<std::size_t>(edge.reference)] = edge.candidate;
            partnerOfCandidate[static_cast<std::size_t>(edge.candidate)] = edge.reference;
        }
        for (Edge const& edge : edges) weightOf[edgeId(edge.reference, edge.candidate)] = edge.weight;
        auto weightAt = [&](int i, int j) {
            auto const found = weightOf.find(edgeId(i, j));
            return found == weightOf.end() ? 0.0 : found->second;
        };
        auto lower = [&](int reference, double value) {
            auto const [found, isNew] = loss.try_emplace(reference, value);
            if (!isNew) found->second = std::min(found->second, value);
        };
        for (Edge const& edge : edges) {
            int const own = partnerOfReference[static_cast<std::size_t>(edge.reference)];
            int const other = partnerOfCandidate[static_cast<std::size_t>(edge.candidate)];
            if (own != kNone && own == edge.candidate) continue;
            // Rows of two versions that print the same: whichever is meant, it says the same.
            bool const likeOwn = own != kNone && printTheSame(c(own), c(edge.candidate));
            bool const likeOther = other != kNone && printTheSame(r(other), r(edge.reference));
            double const now = (own == kNone ? 0.0 : weightAt(edge.reference, own)) + (other == kNone ? 0.0 : weightAt(other, edge.candidate));
            bool const exchange = own != kNone && other != kNone;
            double const then = edge.weight + (exchange ? weightAt(other, own) : 0.0);
            double lost = (now - then) / (exchange ? 2 : 1);
            int const metNow = (own == kNone ? 0 : agreeingConditions({edge.reference, own})) + (other == kNone ? 0 : agreeingConditions({other, edge.candidate}));
            int const metThen = agreeingConditions(edge) + (exchange ? agreeingConditions({other, own}) : 0);
            // As good by little, and the rows state fewer of one another's conditions: no doubt.
            if (lost >= 0 && metNow > metThen) lost = std::max(lost, kNearlyAsGood);
            // Nor where the words that tell rows apart ("carry out", "decode out") would meet less.
            if (lost > kNothing && lost < kNearlyAsGood && own != kNone) {
                double const toldNow = told(edge.reference, own) + (exchange ? told(other, edge.candidate) : 0.0);
                double const toldThen = told(edge.reference, edge.candidate) + (exchange ? told(other, own) : 0.0);
                if (toldNow - toldThen >= kClearlyTold * (exchange ? 2 : 1)) lost = kNearlyAsGood;
            }
            if (own != kNone && !likeOwn) lower(edge.reference, lost);
            if (other != kNone && !likeOther) lower(other, lost);
        }
        return loss;
    }

    // The rows of one name (with what tells it from its like), whatever their conditions.
    static Key strandOf(TellingWords const& words, int row, std::string const& kin, Profile const& profile) {
        Key strand = hashOf(kin);
        for (Key const word : words.telling(row)) strand = combined(strand, word);
        return combined(strand, hashOf(profile.name));
    }

    // Rows of one name in several conditions go together: where the numbers of some of them
    // found their partners under one other name and nowhere else, the rest is looked for
    // there too.
    bool followStrands(std::vector<Edge>& edges, std::vector<Edge> const& chosen, std::unordered_map<int, double> const& losses) {
        std::vector<std::optional<Key>> ofReference(m_sheets.reference.parameters.size());
        std::vector<std::optional<Key>> ofCandidate(m_sheets.candidate.parameters.size());
        auto strands = [&](Edge const& edge) {
            auto& reference = ofReference[static_cast<std::size_t>(edge.reference)];
            auto& candidate = ofCandidate[static_cast<std::size_t>(edge.candidate)];
            if (!reference) reference = strandOf(m_referenceWords, edge.reference, kinOf(r(edge.reference), referenceProfile(edge.reference)), referenceProfile(edge.reference));
            if (!candidate) candidate = strandOf(m_candidateWords, edge.candidate, kinOf(c(edge.candidate), candidateProfile(edge.candidate)), candidateProfile(edge.candidate));
            return std::pair{*reference, *candidate};
        };
        std::map<std::pair<Key, Key>, int> votes;
        std::unordered_map<Key, int> all;  // of a strand of either sheet
        for (Edge const& edge : chosen) {
            auto const found = losses.find(edge.reference);
            if (found != losses.end() && found->second < kClearVote) continue;
            if (agreementOf(referenceProfile(edge.reference), candidateProfile(edge.candidate)).agreeing < kTellingNumbers) continue;
            auto const pair = strands(edge);
            ++votes[pair];
            ++all[pair.first];
            ++all[~pair.second];
        }
        bool changed = false;
        for (Edge& edge : edges) {
            auto const pair = strands(edge);
            auto const found = votes.find(pair);
            if (found == votes.end() || found->second < kFewestVotes) continue;
            if (found->second != all[pair.first] || found->second != all[~pair.second]) continue;
            edge.weight += kStrandWeight;
            changed = true;
        }
        return changed;
    }

    void pairRest() {
        std::vector<Edge> edges = possibleEdges();
        auto chosen = assign(edges);
        auto losses = lossesOf(edges, chosen);
        bool const anyDoubt = std::any_of(losses.begin(), losses.end(), [](auto const& loss) { return loss.second < kNearlyAsGood; });
        if (anyDoubt && !m_sheets.oneText() && followStrands(edges, chosen, losses)) {
            chosen = assign(edges);
            losses = lossesOf(edges, chosen);
        }
        conclude(edges, chosen, losses);
    }

    int agreeingConditions(Profile const& reference, Profile const& candidate) {
        auto& agreeing = met(reference, candidate).agreeing;
        if (!agreeing) agreeing = agreeingQuantities(*reference.conditions, *candidate.conditions);
        return *agreeing;
    }
    int agreeingConditions(Edge const& edge) { return agreeingConditions(referenceProfile(edge.reference), candidateProfile(edge.candidate)); }

    // By reference: numbers decided, while another row prints more of the conditions.
    std::unordered_map<int, char> conditionsSpeakForOthers(std::vector<Edge> const& edges, std::vector<Edge> const& chosen) {
        std::unordered_map<int, int> ofReference;  // agreeing conditions of the chosen pair
        std::unordered_map<int, int> ofCandidate;
        std::unordered_map<int, int> partnerOfCandidate;
        for (Edge const& edge : chosen) {
            ofReference[edge.reference] = ofCandidate[edge.candidate] = agreeingConditions(edge);
            partnerOfCandidate[edge.candidate] = edge.reference;
        }
        std::unordered_map<int, char> doubted;
        for (Edge const& edge : edges) {
            auto const r = ofReference.find(edge.reference);
            auto const c = ofCandidate.find(edge.candidate);
            if (r == ofReference.end() && c == ofCandidate.end()) continue;
            int const agreeing = agreeingConditions(edge);
            if (r != ofReference.end() && agreeing > r->second && (c == ofCandidate.end() || agreeing > c->second)) doubted[edge.reference] = 1;
            if (c != ofCandidate.end() && agreeing > c->second && (r == ofReference.end() || agreeing > r->second)) doubted[partnerOfCandidate[edge.candidate]] = 1;
        }
        return doubted;
    }

    // What the rows of one parameter and dimension have in common within a sheet and across.
    static std::string strandName(Parameter const& p, Profile const& profile) {
        std::string const& name = p.canonical.empty() ? profile.name : p.canonical;
        if (name.empty() || profile.dimension.empty()) return {};
        return name + "\n" + profile.dimension + (p.kind == ParameterKind::Rating ? "\nrating" : "");
    }

    // Rows that could be meant, by that name; not those of versions that the other sheet lacks.
    struct Strands {
        std::map<std::string, std::vector<int>> reference, candidate;
    };
    Strands strands() {
        Strands found;
        for (int const i : m_freeReference) {
            if (!m_naming.isOnlyOfReference(referenceProfile(i).variant)) found.reference[strandName(r(i), referenceProfile(i))].push_back(i);
        }
        for (int const j : m_freeCandidate) {
            if (!m_naming.isOnlyOfCandidate(candidateProfile(j).variant)) found.candidate[strandName(c(j), candidateProfile(j))].push_back(j);
        }
        return found;
    }

    double likenessOfConditions(int reference, int candidate) { return met(referenceProfile(reference), candidateProfile(candidate)).likeness; }

    void addRivals(std::vector<Edge> const& edges, std::vector<CandidatePair>& pairs) {
        std::unordered_map<int, CandidatePair*> ofReference, ofCandidate;
        std::unordered_map<int, double> likeness;  // of the pair, by reference
        for (CandidatePair& pair : pairs) {
            ofReference[pair.reference] = ofCandidate[pair.candidate] = &pair;
            likeness[pair.reference] = likenessOfConditions(pair.reference, pair.candidate);
        }
        for (Edge const& edge : edges) {
            auto const own = ofReference.find(edge.reference);
            auto const other = ofCandidate.find(edge.candidate);
            if (own != ofReference.end() && other != ofCandidate.end() && own->second == other->second) continue;
            double const here = likenessOfConditions(edge.reference, edge.candidate);
            if (own != ofReference.end() && here >= likeness[edge.reference]) own->second->rivalCandidates.push_back(edge.candidate);
            if (other != ofCandidate.end() && here >= likeness[other->second->reference]) other->second->rivalReferences.push_back(edge.reference);
        }
    }

    // Both rows are of one version as far as they say.
    bool areOfOneVersion(ParameterPair const& pair) {
        VariantRelation const versions = relateVersions(referenceProfile(pair.reference), candidateProfile(pair.candidate));
        return versions != VariantRelation::OneUnstated && (versions != VariantRelation::Apart || m_versionsSettled);
    }

    static void raise(ParameterPair& pair) {
        pair.confidence = std::max(pair.confidence, kProvenConfidence);
        pair.doubtful = false;
    }

    // Limits tell which of several rows is meant where conditions are put in two ways.
    void raiseByLimits(Strands const& all, std::vector<Edge> const& edges, std::vector<ParameterPair>& pairs) {
        constexpr std::size_t kLargestStrand = 60;
        std::vector<CandidatePair> asked;
        RowNumbers reference, candidate;
        for (ParameterPair const& pair : pairs) {
            Profile const& pr = referenceProfile(pair.reference);
            Profile const& pc = candidateProfile(pair.candidate);
            bool const opposed = !areOfOneVersion(pair) || contradict(*pr.conditions, *pc.conditions);
            CandidatePair& one = asked.emplace_back(CandidatePair{pair.reference, pair.candidate, opposed, pair.confidence > kProvenConfidence});
            std::string const name = strandName(r(pair.reference), pr);
            if (name.empty() || name != strandName(c(pair.candidate), pc)) continue;
            auto const ofReference = all.reference.find(name);
            auto const ofCandidate = all.candidate.find(name);
            if (ofReference == all.reference.end() || ofCandidate == all.candidate.end()) continue;
            if (ofReference->second.size() > kLargestStrand || ofCandidate->second.size() > kLargestStrand) continue;
            for (int const i : ofReference->second) {
                reference.try_emplace(i, referenceProfile(i).numbers);
                if (relateVersions(referenceProfile(i), pc) != VariantRelation::Apart) one.kinReference.push_back(i);
            }
            for (int const j : ofCandidate->second) {
                candidate.try_emplace(j, candidateProfile(j).numbers);
                if (relateVersions(pr, candidateProfile(j)) != VariantRelation::Apart) one.kinCandidate.push_back(j);
            }
        }
        addRivals(edges, asked);
        std::vector<Proof> const found = proofs(reference, candidate, asked);
        for (std::size_t k = 0; k < pairs.size(); ++k) {
            if (found[k] != Proof::None) raise(pairs[k]);
        }
    }

    void raiseByLayout(Strands const& all, std::vector<ParameterPair>& pairs) {
        std::vector<LaidOutRow> reference, candidate;
        std::unordered_map<int, int> atReference, atCandidate;  // position by row
        for (auto const& [name, rows] : all.reference) {
            for (int const i : rows) {
                atReference[i] = static_cast<int>(reference.size());
                reference.push_back({name, referenceProfile(i).conditions});
            }
        }
        for (auto const& [name, rows] : all.candidate) {
            for (int const j : rows) {
                atCandidate[j] = static_cast<int>(candidate.size());
                candidate.push_back({name, candidateProfile(j).conditions});
            }
        }
        for (ParameterPair const& pair : pairs) {
            auto const i = atReference.find(pair.reference);
            auto const j = atCandidate.find(pair.candidate);
            if (i != atReference.end() && j != atCandidate.end()) reference[static_cast<std::size_t>(i->second)].partner = j->second;
        }
        std::vector<char> const told = toldByLayout(reference, candidate);
        for (ParameterPair& pair : pairs) {
            auto const i = atReference.find(pair.reference);
            if (i != atReference.end() && told[static_cast<std::size_t>(i->second)] != 0 && areOfOneVersion(pair)) raise(pair);
        }
    }

    void raiseProven(std::vector<Edge> const& edges, std::vector<ParameterPair>& pairs) {
        Strands const all = strands();
        raiseByLayout(all, pairs);
        raiseByLimits(all, edges, pairs);
    }

    void conclude(std::vector<Edge> const& edges, std::vector<Edge> const& chosen, std::unordered_map<int, double> const& losses) {
        std::unordered_map<int, char> const doubted = m_sheets.oneText() ? std::unordered_map<int, char>() : conditionsSpeakForOthers(edges, chosen);
        std::unordered_map<int, Rivalry> const rivalries = rivalriesOf(edges, chosen, losses);
        std::unordered_map<int, char> pairedReference;
        std::unordered_map<int, char> pairedCandidate;
        std::vector<ParameterPair> pairs;
        for (Edge const& edge : chosen) {
            auto const found = losses.find(edge.reference);
            bool const hasRival = found != losses.end();
            bool const doubtful = hasRival && found->second < kNearlyAsGood;
            double confidence = certainty(edge, rivalries.at(edge.reference));
            if (doubted.count(edge.reference) > 0) confidence = std::min(confidence, kAmbiguousConfidence);
            if (doubtful) confidence = std::min(confidence, found->second <= kNothing ? kDoubtfulConfidence : kAmbiguousConfidence);
            pairs.push_back({edge.reference, edge.candidate, confidence, doubtful});
        }
        if (!m_sheets.oneText()) raiseProven(edges, pairs);
        for (ParameterPair const& pair : pairs) pairedReference[pair.reference] = pairedCandidate[pair.candidate] = 1;
        m_result.pairs.insert(m_result.pairs.end(), pairs.begin(), pairs.end());
        // Rows of versions that the other sheet does not cover: listed, and named for choosing.
        bool const mayList = !m_sheets.oneText() && m_sheets.options.referenceVariant.empty() && m_sheets.options.candidateVariant.empty();
        for (int const i : m_freeReference) {
            if (pairedReference.find(i) != pairedReference.end()) continue;
            bool const other = mayList && m_naming.isOnlyOfReference(referenceProfile(i).variant);
            (other ? m_result.otherVariantReference : m_result.onlyReference).push_back(i);
        }
        for (int const j : m_freeCandidate) {
            if (pairedCandidate.find(j) != pairedCandidate.end()) continue;
            bool const other = mayList && m_naming.isOnlyOfCandidate(candidateProfile(j).variant);
            (other ? m_result.otherVariantCandidate : m_result.onlyCandidate).push_back(j);
        }
    }

    SheetPair const& m_sheets;
    VersionNaming m_naming;
    TellingWords m_referenceWords, m_candidateWords;  // of rows without a twin
    ConditionMemo& m_conditions;
    std::unordered_map<StatedConditions const*, std::unordered_map<StatedConditions const*, Met>> m_met;  // by the reference's, then the candidate's
    ParameterPairing m_result;
    bool m_versionsSettled = false;
    std::vector<int> m_reference, m_candidate;          // of the chosen variants
    std::vector<int> m_freeReference, m_freeCandidate;  // without a twin
    std::vector<std::optional<Profile>> m_referenceProfiles, m_candidateProfiles;  // by row
};

}  // namespace

ParameterPairing pairParameters(SheetPair const& sheets, ConditionMemo& conditions) { return Pairing(sheets, conditions).run(); }

}  // namespace standin::compare
