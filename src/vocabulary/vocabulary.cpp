// The public face over the store; matching proper is in matcher.cpp, reading in load.cpp.
// Tested by tests/src/vocabulary/vocabulary_test.cpp.
#include "vocabulary/vocabulary.h"

#include <algorithm>
#include <array>

#include "vocabulary/archive.h"
#include "vocabulary/embedded_data.h"
#include "vocabulary/store.h"

namespace standin::vocabulary {

namespace {

constexpr std::size_t kLongestHead = 8 * 1024;       // of a sheet's text that tells its family
constexpr std::size_t kLongestSentence = 4 * 1024;
constexpr float kLightestTopic = 8;                  // an alias this heavy in a sentence is what it is about
constexpr float kDenialShare = 0.45F;               // of a sentence's weight that a phrase with "not" must have
constexpr double kFeatureNamed = 0.7;                // overlap of a title with a feature's name

}  // namespace

Vocabulary::Vocabulary(std::unique_ptr<Store> store) : m_store(std::move(store)) {}
Vocabulary::Vocabulary(Vocabulary&&) noexcept = default;
Vocabulary& Vocabulary::operator=(Vocabulary&&) noexcept = default;
Vocabulary::~Vocabulary() = default;

model::Result<Vocabulary> Vocabulary::builtIn() {
    auto store = std::make_unique<Store>();
    if (!unpack(embeddedVocabulary(), *store)) {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Internal, .message = "the vocabulary of the program is damaged", .file = {}, .page = 0});
    }
    return Vocabulary(std::move(store));
}

model::Result<void> Vocabulary::add(std::string_view json) {
    auto copy = std::make_unique<Store>(*m_store);
    auto loaded = copy->load(json);
    if (!loaded) {
        return loaded;
    }
    copy->buildIndices();
    m_store = std::move(copy);
    return {};
}

ParameterEntry const* Vocabulary::find(std::string_view id, std::string_view family) const {
    auto const found = m_store->parametersById.find(id);
    if (found == m_store->parametersById.end() || found->second.empty()) {
        return nullptr;
    }
    for (std::uint32_t index : found->second) {
        if (m_store->parameters[index].family == family) {
            return &m_store->parameters[index];
        }
    }
    return &m_store->parameters[found->second.front()];
}

FeatureEntry const* Vocabulary::feature(std::string_view id) const {
    auto const found = m_store->featuresById.find(id);
    return found == m_store->featuresById.end() ? nullptr : &m_store->features[found->second];
}

CautionEntry const* Vocabulary::caution(std::string_view id) const {
    auto const found = m_store->cautionsById.find(id);
    return found == m_store->cautionsById.end() ? nullptr : &m_store->cautions[found->second];
}

std::string const& Vocabulary::cautionText(std::string_view id) const {
    static std::string const none;
    CautionEntry const* entry = caution(id);
    return entry == nullptr ? none : entry->text;
}

std::vector<std::string> const& Vocabulary::generalStatements() const {
    return m_store->statements;
}

std::span<DerivedEntry const> Vocabulary::derived() const { return m_store->derived; }

std::span<BenchTestEntry const> Vocabulary::benchTests() const { return m_store->benchTests; }

std::vector<std::string> const& Vocabulary::sampleRules() const { return m_store->sampleRules; }

HistoryWords const& Vocabulary::historyWords() const { return m_store->history; }

std::vector<ParameterEntry const*> Vocabulary::parameters() const {
    std::vector<ParameterEntry const*> all;
    all.reserve(m_store->parameters.size());
    for (auto const& entry : m_store->parameters) {
        all.push_back(&entry);
    }
    return all;
}

std::vector<FeatureEntry const*> Vocabulary::features() const {
    std::vector<FeatureEntry const*> all;
    for (auto const& entry : m_store->features) {
        all.push_back(&entry);
    }
    return all;
}

std::vector<std::string> Vocabulary::families() const {
    std::vector<std::string> ids;
    for (auto const& family : m_store->families) {
        if (family.id != "generic") {
            ids.push_back(family.id);
        }
    }
    return ids;
}

std::string Vocabulary::familyTitle(std::string_view family) const {
    for (auto const& known : m_store->families) {
        if (known.id == family) {
            return known.title;
        }
    }
    return {};
}

namespace {

// The head of a sheet's text, in which the beginnings of words are at hand.
class Head {
public:
    explicit Head(std::string_view text) : m_folded(" " + foldWords(text) + " ") {
        for (std::size_t i = 0; i + 1 < m_folded.size(); ++i) {
            if (m_folded[i] == ' ') m_spaces[static_cast<unsigned char>(m_folded[i + 1])].push_back(i);
        }
    }

    [[nodiscard]] std::size_t size() const { return m_folded.size(); }

    // Where the folded phrase stands first, npos: nowhere. At the beginning of a
    // word, whose place is that of the space in front; CJK phrases stand anywhere.
    [[nodiscard]] std::size_t find(std::string_view phrase) const {
        if (phrase.empty()) return m_folded.find(' ');
        auto const first = static_cast<unsigned char>(phrase.front());
        if (first >= kFirstOfCjk) return m_folded.find(phrase);
        for (std::size_t const space : m_spaces[first]) {
            if (m_folded.compare(space + 1, phrase.size(), phrase) == 0) return space;
        }
        return std::string::npos;
    }

private:
    static constexpr unsigned char kFirstOfCjk = 0xE3;

    std::string m_folded;
    std::array<std::vector<std::size_t>, 256> m_spaces;  // by the byte behind the space
};

}  // namespace

std::string Vocabulary::detectFamily(std::span<std::string const> names, std::span<std::string const> symbols, std::string_view text) const {
    constexpr double kPhrase = 3;      // a phrase of the head counts as much as three rows
    constexpr double kEnough = 2.5;
    constexpr double kLead = 1.25;     // over the second
    std::vector<double> points(m_store->families.size(), 0);
    auto const familyIndex = [this](std::string const& id) -> std::size_t {
        for (std::size_t i = 0; i < m_store->families.size(); ++i) {
            if (m_store->families[i].id == id) {
                return i;
            }
        }
        return 0;
    };
    Head const head(text.substr(0, kLongestHead));
    for (auto const& evidence : m_store->evidence) {
        auto const place = head.find(evidence.phrase);
        if (place != std::string::npos) {
            points[evidence.family] += place < head.size() / 4 ? kPhrase : kPhrase / 2;
        }
    }
    // A symbol or name is worth the more, the fewer families use it.
    auto const spread = [&](std::vector<std::size_t>& of, double worth) {
        std::sort(of.begin(), of.end());
        of.erase(std::unique(of.begin(), of.end()), of.end());
        for (std::size_t index : of) {
            points[index] += worth / static_cast<double>(of.size() * of.size());
        }
    };
    std::vector<std::string> seen;
    for (auto const& symbol : symbols) {
        std::string folded = foldSymbol(symbol);
        if (folded.size() < 3 || std::find(seen.begin(), seen.end(), folded) != seen.end() || seen.size() > 200) {
            continue;
        }
        auto const found = m_store->symbols.find(folded);
        seen.push_back(std::move(folded));
        if (found == m_store->symbols.end()) {
            continue;
        }
        std::vector<std::size_t> of;
        for (auto const& use : found->second) {
            if (m_store->parameters[use.entry].family != "generic") {
                of.push_back(familyIndex(m_store->parameters[use.entry].family));
            }
        }
        spread(of, 0.5);
    }
    std::size_t looked = 0;
    for (auto const& name : names) {
        if (++looked > 200) {
            break;
        }
        Concepts const said = m_store->lexicon.read(name);
        if (said.ids.empty()) {
            continue;
        }
        ConceptId const rarest = *std::max_element(said.ids.begin(), said.ids.end(), [&](ConceptId a, ConceptId b) {
            return m_store->lexicon.at(a).weight < m_store->lexicon.at(b).weight;
        });
        std::vector<std::size_t> of;
        for (std::uint32_t index : m_store->aliasesByConcept[rarest]) {
            Alias const& alias = m_store->aliases[index];
            if (alias.concepts.size() > 1 && m_store->parameters[alias.entry].family != "generic" && said.containsAll(alias.concepts)) {
                of.push_back(familyIndex(m_store->parameters[alias.entry].family));
            }
        }
        spread(of, 1.0);
    }
    std::size_t first = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i] > points[first]) {
            first = i;
        }
    }
    double second = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (i != first) {
            second = std::max(second, points[i]);
        }
    }
    if (points.empty() || points[first] < kEnough || points[first] < kLead * second || m_store->families[first].id == "generic") {
        return {};
    }
    return m_store->families[first].id;
}

std::optional<Match> Vocabulary::match(Query const& query) const {
    return matchParameter(*m_store, query);
}

namespace {

// The states of features that a sentence states, of which `said` is what it says.
std::vector<FeatureStatement> statedBy(Concepts const& said, std::string_view family, Vocabulary::Store const& store) {
    std::vector<FeatureStatement> found;
    ConceptId const* const negation = store.lexicon.findConcept("not");
    ConceptId const* const inhibition = store.lexicon.findConcept("inhibit");
    bool const negated = negation != nullptr && said.has(*negation);
    bool const inhibited = inhibition != nullptr && said.has(*inhibition);
    float const saidWeight = store.weightOf(said.ids) + static_cast<float>(said.unknown);
    struct Best {
        std::uint32_t feature;
        std::int32_t state;
        float weight;
        bool tied;
    };
    std::vector<Best> best;
    for (ConceptId id : said.ids) {
        for (std::uint32_t index : store.phrasesByConcept[id]) {
            Statement const& phrase = store.phrases[index];
            FeatureEntry const& entry = store.features[phrase.feature];
            if (!family.empty() && entry.family != family && entry.family != "generic") {
                continue;
            }
            if (!said.containsAll(phrase.concepts)) {
                continue;
            }
            bool const phraseNegated = negation != nullptr && std::binary_search(phrase.concepts.begin(), phrase.concepts.end(), *negation);
            if (negated && !phraseNegated) {
                continue;  // what is denied is not stated
            }
            if (phraseNegated) {
                // "is not disabled" denies nothing; in a long sentence "not" may belong to something else.
                bool const phraseInhibits = inhibition != nullptr && std::binary_search(phrase.concepts.begin(), phrase.concepts.end(), *inhibition);
                if ((inhibited && !phraseInhibits) || phrase.weight < kDenialShare * saidWeight) {
                    continue;
                }
            }
            auto place = std::find_if(best.begin(), best.end(), [&](Best const& known) { return known.feature == phrase.feature; });
            if (place == best.end()) {
                best.push_back(Best{phrase.feature, phrase.state, phrase.weight, false});
            } else if (phrase.weight > place->weight + 0.01F) {
                *place = Best{phrase.feature, phrase.state, phrase.weight, false};
            } else if (phrase.weight > place->weight - 0.01F && phrase.state != place->state) {
                place->tied = true;
            }
        }
    }
    for (auto const& one : best) {
        if (!one.tied) {
            FeatureEntry const& entry = store.features[one.feature];
            found.push_back(FeatureStatement{.feature = entry.id, .state = entry.states[static_cast<std::size_t>(one.state)].token,
                                             .score = std::min(1.0, 0.5 + 0.5 * one.weight / std::max(saidWeight, 1.0F))});
        }
    }
    return found;
}

}  // namespace

namespace {

// "• Charger detection: yes", "短路保护：有": a title and what stands for a table cell, a few
// words without a number.
std::optional<std::pair<std::string_view, std::string_view>> listedItem(std::string_view sentence) {
    constexpr std::size_t kLongestItem = 100;
    constexpr std::size_t kLongestCell = 24;
    constexpr std::string_view kWideColon = "：";
    if (sentence.size() > kLongestItem) return std::nullopt;
    std::size_t const wide = sentence.find(kWideColon);
    std::size_t const at = wide != std::string_view::npos ? wide : sentence.find(':');
    if (at == std::string_view::npos) return std::nullopt;
    std::string_view cell = sentence.substr(at + (at == wide ? kWideColon.size() : 1));
    while (!cell.empty() && cell.front() == ' ') cell.remove_prefix(1);
    bool const numbers = cell.find_first_of("0123456789") != std::string_view::npos;
    auto const words = std::count(cell.begin(), cell.end(), ' ') + 1;
    if (cell.empty() || cell.size() > kLongestCell || numbers || words > 2) return std::nullopt;
    return std::pair{sentence.substr(0, at), cell};
}

}  // namespace

std::vector<FeatureStatement> Vocabulary::statements(std::string_view sentence, std::string_view family) const {
    auto stated = statedBy(m_store->lexicon.read(sentence.substr(0, kLongestSentence)), family, *m_store);
    auto const listed = listedItem(sentence);
    if (!listed) return stated;
    auto const one = statement(listed->first, listed->second, family);
    bool const known = one && std::any_of(stated.begin(), stated.end(), [&one](FeatureStatement const& other) { return other.feature == one->feature; });
    if (one && !known) stated.push_back(*one);
    return stated;
}

std::optional<FeatureStatement> Vocabulary::statement(std::string_view title, std::string_view cell, std::string_view family) const {
    Concepts const named = m_store->lexicon.read(title.substr(0, 256));
    Concepts const said = m_store->lexicon.read(cell.substr(0, 256));
    if (named.ids.empty() || said.ids.empty()) {
        return std::nullopt;
    }
    float const namedWeight = m_store->weightOf(named.ids) + static_cast<float>(named.unknown);
    double bestName = 0;
    std::uint32_t feature = 0;
    for (auto const& name : m_store->featureNames) {
        FeatureEntry const& entry = m_store->features[name.feature];
        if ((!family.empty() && entry.family != family && entry.family != "generic") || !named.containsAll(name.concepts)) {
            continue;
        }
        double const score = 2.0 * name.weight / (name.weight + namedWeight);
        if (score > bestName) {
            bestName = score;
            feature = name.feature;
        }
    }
    if (bestName < kFeatureNamed) {
        return std::nullopt;
    }
    Statement const* best = nullptr;
    for (auto const* list : {&m_store->cells, &m_store->phrases}) {
        for (auto const& candidate : *list) {
            if (candidate.feature == feature && said.containsAll(candidate.concepts) &&
                (best == nullptr || candidate.concepts.size() > best->concepts.size())) {
                best = &candidate;
            }
        }
    }
    if (best == nullptr) {
        return std::nullopt;
    }
    FeatureEntry const& entry = m_store->features[feature];
    return FeatureStatement{.feature = entry.id, .state = entry.states[static_cast<std::size_t>(best->state)].token, .score = bestName};
}

namespace {

// Between words in which symbols are looked for.
constexpr std::array<bool, 256> kPartsWords = [] {
    std::array<bool, 256> parts{};
    for (char const sign : std::string_view(" ,;:()=<>@")) {
        parts[static_cast<unsigned char>(sign)] = true;
    }
    return parts;
}();

// "Exceeds", "damage", "absolute maximum".
bool speaksOfOverstress(Concepts const& said, Lexicon const& lexicon) {
    return std::any_of(said.ids.begin(), said.ids.end(), [&](ConceptId id) {
        std::string_view const name = lexicon.at(id).name;
        return name == "overstress" || name == "rating" || name == "maximum" || name == "allowable";
    });
}

std::size_t endOfWord(std::string_view sentence, std::size_t at) {
    while (at < sentence.size() && !kPartsWords[static_cast<unsigned char>(sentence[at])]) {
        ++at;
    }
    return at;
}

}  // namespace

std::vector<Topic> Vocabulary::topics(std::string_view sentence, std::string_view family) const {
    std::vector<Topic> found;
    auto const add = [&found](std::string const& subject, model::Severity severity, std::string const& caution) {
        auto const known = std::find_if(found.begin(), found.end(), [&](Topic const& topic) { return topic.subject == subject; });
        if (known == found.end()) {
            found.push_back(Topic{.subject = subject, .severity = severity, .caution = caution});
        }
    };
    sentence = sentence.substr(0, kLongestSentence);
    Concepts const said = m_store->lexicon.read(sentence);
    for (auto const& stated : statedBy(said, family, *m_store)) {
        FeatureEntry const* entry = feature(stated.feature);
        add(entry->id, entry->severity, entry->caution);
    }
    std::vector<ConceptId> covered;
    for (auto const& combined : m_store->topics) {
        if (said.containsAll(combined.concepts)) {
            add(combined.name, combined.severity, combined.caution);
            covered.insert(covered.end(), combined.concepts.begin(), combined.concepts.end());
        }
    }
    // Among equals what is named first is the subject.
    for (ConceptId id : said.spoken) {
        if (std::find(covered.begin(), covered.end(), id) != covered.end()) {
            continue;
        }
        Concept const& about = m_store->lexicon.at(id);
        bool const protection = family.empty() || family == "lithium-protection" || family == "generic" || about.severity != model::Severity::Hazard;
        if (about.severity > model::Severity::Editorial && protection) {
            add(about.name, about.severity, about.caution);
        }
    }
    // Names of parameters.
    std::vector<std::uint32_t> touched;
    for (ConceptId id : said.ids) {
        if (m_store->lexicon.at(id).weight > 4) {
            touched.insert(touched.end(), m_store->aliasesByConcept[id].begin(), m_store->aliasesByConcept[id].end());
        }
    }
    std::erase_if(touched, [&](std::uint32_t index) {
        Alias const& alias = m_store->aliases[index];
        return alias.weight < kLightestTopic || alias.concepts.size() < 2 || !said.containsAll(alias.concepts);
    });
    std::sort(touched.begin(), touched.end());
    touched.erase(std::unique(touched.begin(), touched.end()), touched.end());
    for (std::uint32_t index : touched) {
        ParameterEntry const& entry = m_store->parameters[m_store->aliases[index].entry];
        bool const ours = family.empty() ? entry.family == "generic" : entry.family == family || entry.family == "generic";
        if (ours) {
            add(entry.id, entry.severity, entry.caution);
        }
    }
    // Symbols: words with a capital that the family's parameters use.
    if (!family.empty()) {
        bool const ofOverstress = speaksOfOverstress(said, m_store->lexicon);
        std::size_t start = 0;
        while (start < sentence.size()) {
            std::size_t end = endOfWord(sentence, start);
            // "RDS(ON)" is one symbol where one is known by that name, else a bracket parts words.
            if (end < sentence.size() && sentence[end] == '(') {
                constexpr std::size_t kLongestBracket = 8;
                std::size_t const close = sentence.find_first_of(" )", end);
                bool const closes = close != std::string_view::npos && sentence[close] == ')' && close - end <= kLongestBracket;
                if (closes && m_store->symbols.find(foldSymbol(sentence.substr(start, close + 1 - start))) != m_store->symbols.end()) {
                    end = close + 1;
                }
            }
            std::string_view word = sentence.substr(start, end - start);
            while (!word.empty() && word.back() == '.') {
                word.remove_suffix(1);
            }
            start = end + 1;
            bool const symbolLike = word.size() >= 3 && word.size() <= 12 && std::any_of(word.begin(), word.end(), [](char byte) { return byte >= 'A' && byte <= 'Z'; });
            auto const uses = symbolLike ? m_store->symbols.find(foldSymbol(word)) : m_store->symbols.end();
            if (uses == m_store->symbols.end()) {
                continue;
            }
            // "VIN" of a sentence is a voltage; it is about what the input withstands where no other meaning is
            // known or where the sentence speaks of that.
            bool const otherMeaning = std::any_of(uses->second.begin(), uses->second.end(), [&](SymbolUse const& use) {
                ParameterEntry const& entry = m_store->parameters[use.entry];
                return entry.family == family && entry.role != Role::Withstand;
            });
            for (auto const& use : uses->second) {
                ParameterEntry const& entry = m_store->parameters[use.entry];
                bool const meant = entry.role != Role::Withstand || !otherMeaning || ofOverstress;
                if (entry.family == family && meant) {
                    add(entry.id, entry.severity, entry.caution);
                }
            }
        }
    }
    std::stable_sort(found.begin(), found.end(), [](Topic const& a, Topic const& b) { return a.severity > b.severity; });
    return found;
}

bool Vocabulary::names(std::string_view text, std::string_view wantedConcept) const {
    ConceptId const* const id = m_store->lexicon.findConcept(wantedConcept);
    return id != nullptr && m_store->lexicon.read(text.substr(0, kLongestSentence)).has(*id);
}

std::string_view toString(Role role) {
    switch (role) {
        case Role::Window: return "window";
        case Role::Setpoint: return "setpoint";
        case Role::Cap: return "cap";
        case Role::Floor: return "floor";
        case Role::Withstand: return "withstand";
        case Role::OperatingRange: return "operating-range";
        case Role::Mode: return "mode";
    }
    return "window";
}

std::string_view toString(Bound bound) {
    switch (bound) {
        case Bound::None: return "none";
        case Bound::Max: return "max";
        case Bound::Min: return "min";
        case Bound::Magnitude: return "magnitude";
        case Bound::Both: return "both";
    }
    return "none";
}

}  // namespace standin::vocabulary
