// JSON text -> Store. Members that are missing take their defaults; members of a
// wrong type and unknown words (roles, bounds, severities) are errors that name the place.
// Tested by tests/src/vocabulary/data_test.cpp.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "quantity/dimension.h"
#include "quantity/formula.h"
#include "vocabulary/store.h"

namespace standin::vocabulary {

namespace {

using nlohmann::json;

constexpr int kDeepestNesting = 16;
constexpr std::size_t kLongestFile = 4 * 1024 * 1024;

// What is wrong, thrown inside this file only and turned into a Result at its border.
struct Wrong {
    std::string message;
};

// Brackets outside of strings: the parser must not meet a million of them.
int deepestNesting(std::string_view text) {
    int depth = 0;
    int deepest = 0;
    bool inString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        char const byte = text[i];
        if (inString) {
            if (byte == '\\') {
                ++i;
            } else if (byte == '"') {
                inString = false;
            }
        } else if (byte == '"') {
            inString = true;
        } else if (byte == '{' || byte == '[') {
            deepest = std::max(deepest, ++depth);
        } else if (byte == '}' || byte == ']') {
            --depth;
        }
    }
    return deepest;
}

std::string const& stringOf(json const& value, std::string_view where) {
    if (!value.is_string()) {
        throw Wrong{fmt::format("{} must be a text", where)};
    }
    return value.get_ref<std::string const&>();
}

json const* member(json const& object, char const* key) {
    auto const found = object.find(key);
    return found == object.end() || found->is_null() ? nullptr : &*found;
}

std::string textMember(json const& object, char const* key) {
    json const* value = member(object, key);
    return value == nullptr ? std::string() : stringOf(*value, key);
}

json const& listMember(json const& object, char const* key) {
    static json const empty = json::array();
    json const* value = member(object, key);
    if (value == nullptr) {
        return empty;
    }
    if (!value->is_array()) {
        throw Wrong{fmt::format("\"{}\" must be a list", key)};
    }
    return *value;
}

template <class Take>
void eachText(json const& list, std::string_view where, Take&& take) {
    for (auto const& value : list) {
        take(stringOf(value, where));
    }
}

// {"en": [..], "zh": [..]} or a plain list.
template <class Take>
void eachName(json const* names, char const* key, Take&& take) {
    if (names == nullptr) {
        return;
    }
    if (names->is_array()) {
        eachText(*names, key, take);
        return;
    }
    if (!names->is_object()) {
        throw Wrong{fmt::format("\"{}\" must be an object of languages", key)};
    }
    for (auto const& [language, list] : names->items()) {
        if (!list.is_array()) {
            throw Wrong{fmt::format("\"{}\" of language {} must be a list", key, language)};
        }
        eachText(list, key, take);
    }
}

template <class Value>
Value wordOf(std::string const& word, std::initializer_list<std::pair<char const*, Value>> words, char const* what) {
    for (auto const& [name, value] : words) {
        if (word == name) {
            return value;
        }
    }
    throw Wrong{fmt::format("\"{}\" is no {}", word, what)};
}

model::Severity severityOf(json const& object, char const* key, model::Severity otherwise) {
    json const* value = member(object, key);
    if (value == nullptr) {
        return otherwise;
    }
    return wordOf<model::Severity>(stringOf(*value, key),
                                   {{"hazard", model::Severity::Hazard}, {"function", model::Severity::Function},
                                    {"margin", model::Severity::Margin}, {"note", model::Severity::Note},
                                    {"editorial", model::Severity::Editorial}},
                                   "severity");
}

Role roleOf(json const& object) {
    json const* value = member(object, "role");
    if (value == nullptr) {
        return Role::Window;
    }
    return wordOf<Role>(stringOf(*value, "role"),
                        {{"window", Role::Window}, {"setpoint", Role::Setpoint}, {"cap", Role::Cap}, {"floor", Role::Floor},
                         {"withstand", Role::Withstand}, {"operating-range", Role::OperatingRange}, {"mode", Role::Mode}},
                        "role");
}

Bound boundOf(json const& object, Role role) {
    json const* value = member(object, "bound");
    if (value == nullptr) {
        return role == Role::Cap ? Bound::Max : role == Role::Floor ? Bound::Min : role == Role::Mode ? Bound::None : Bound::Both;
    }
    return wordOf<Bound>(stringOf(*value, "bound"),
                         {{"none", Bound::None}, {"max", Bound::Max}, {"min", Bound::Min}, {"magnitude", Bound::Magnitude}, {"both", Bound::Both}},
                         "bound");
}

bool flagOf(json const& object, char const* key) {
    json const* value = member(object, key);
    if (value != nullptr && !value->is_boolean()) {
        throw Wrong{fmt::format("\"{}\" must be true or false", key)};
    }
    return value != nullptr && value->get<bool>();
}

std::string idOf(json const& object, char const* what) {
    if (!object.is_object()) {
        throw Wrong{fmt::format("each of the {} must be an object", what)};
    }
    std::string id = textMember(object, "id");
    if (id.empty()) {
        throw Wrong{fmt::format("one of the {} has no \"id\"", what)};
    }
    return id;
}

void readLexicon(json const& list, Lexicon& lexicon) {
    for (auto const& object : list) {
        if (!object.is_object()) {
            throw Wrong{"each entry of the lexicon must be an object"};
        }
        eachText(listMember(object, "ignore"), "ignore", [&](std::string const& word) { lexicon.addPhrase(word, {}); });
        std::vector<ConceptId> ids;
        if (json const* name = member(object, "concept")) {
            ids.push_back(lexicon.intern(stringOf(*name, "concept")));
        }
        eachText(listMember(object, "concepts"), "concepts", [&](std::string const& name) { ids.push_back(lexicon.intern(name)); });
        if (ids.size() == 1) {
            Concept& entry = lexicon.at(ids.front());
            if (json const* group = member(object, "group")) {
                entry.group = lexicon.group(stringOf(*group, "group"));
            }
            entry.severity = severityOf(object, "severity", entry.severity);
            if (member(object, "caution") != nullptr) {
                entry.caution = textMember(object, "caution");
            }
        }
        std::sort(ids.begin(), ids.end());
        eachText(listMember(object, "words"), "words", [&](std::string const& word) { lexicon.addPhrase(word, ids); });
    }
}

template <class Entries>
void forget(Entries& entries, std::uint32_t index) {
    entries.erase(std::remove_if(entries.begin(), entries.end(), [index](auto const& entry) { return entry.entry == index; }), entries.end());
}

void readParameter(json const& object, std::string const& family, Vocabulary::Store& store) {
    ParameterEntry entry;
    entry.id = idOf(object, "parameters");
    try {
        entry.family = family;
        entry.title = textMember(object, "title");
        if (entry.title.empty()) {
            entry.title = entry.id;
            std::replace(entry.title.begin(), entry.title.end(), '-', ' ');
            entry.title[0] = entry.title[0] >= 'a' && entry.title[0] <= 'z' ? static_cast<char>(entry.title[0] - 'a' + 'A') : entry.title[0];
        }
        entry.role = roleOf(object);
        entry.unit = textMember(object, "unit");
        entry.severity = severityOf(object, "severity", model::Severity::Function);
        entry.bound = boundOf(object, entry.role);
        entry.caution = textMember(object, "caution");
        entry.higher = textMember(object, "higher");
        entry.lower = textMember(object, "lower");
        entry.essential = textMember(object, "essential");
        entry.chargerPin = flagOf(object, "charger_pin");
        entry.setByCircuit = flagOf(object, "set_by_circuit");
        entry.worstAtFullLoad = flagOf(object, "worst_at_full_load");
        json const& range = listMember(object, "range");
        if (!range.empty()) {
            if (range.size() != 2 || !range[0].is_number() || !range[1].is_number()) {
                throw Wrong{"\"range\" must be two numbers"};
            }
            entry.low = range[0].get<double>();
            entry.high = range[1].get<double>();
        }
        eachText(listMember(object, "hazard_when"), "hazard_when", [&](std::string const& word) { entry.hazardWhen.push_back(word); });
        eachText(listMember(object, "symbols"), "symbols", [&](std::string const& word) { entry.symbols.push_back(word); });

        auto index = static_cast<std::uint32_t>(store.parameters.size());
        auto& sameId = store.parametersById[entry.id];
        for (std::uint32_t earlier : sameId) {
            if (store.parameters[earlier].family == family && store.parameters[earlier].id == entry.id) {
                index = earlier;  // replaced: its names and symbols go as well
                forget(store.aliases, index);
                for (auto& [symbol, uses] : store.symbols) {
                    forget(uses, index);
                }
            }
        }
        if (index == store.parameters.size()) {
            sameId.push_back(index);
            eachText(listMember(object, "also"), "also", [&](std::string const& id) { store.parametersById[id].push_back(index); });
            store.parameters.push_back(entry);
        } else {
            store.parameters[index] = entry;
        }
        std::size_t const firstAlias = store.aliases.size();
        eachName(member(object, "names"), "names", [&](std::string const& name) {
            Concepts concepts = store.lexicon.readAndLearn(name);
            bool const known = std::any_of(store.aliases.begin() + static_cast<std::ptrdiff_t>(firstAlias), store.aliases.end(),
                                           [&](Alias const& alias) { return alias.concepts == concepts.ids; });
            if (!concepts.ids.empty() && !known) {
                store.aliases.push_back(Alias{.concepts = std::move(concepts.ids), .weight = 0, .entry = index});
            }
        });
        json const* companions = member(object, "companions");
        for (auto const& symbol : entry.symbols) {
            SymbolUse use{.entry = index, .companions = {}};
            if (companions != nullptr && companions->is_object()) {
                eachText(listMember(*companions, symbol.c_str()), "companions", [&](std::string const& word) { use.companions.push_back(foldSymbol(word)); });
            }
            auto& uses = store.symbols[foldSymbol(symbol)];
            if (std::none_of(uses.begin(), uses.end(), [index](SymbolUse const& other) { return other.entry == index; })) {
                uses.push_back(std::move(use));
            }
        }
    } catch (Wrong const& wrong) {
        throw Wrong{fmt::format("parameter \"{}\": {}", entry.id, wrong.message)};
    }
}

void readFeature(json const& object, std::string const& family, Vocabulary::Store& store) {
    FeatureEntry entry;
    entry.id = idOf(object, "features");
    try {
        entry.family = family;
        entry.title = textMember(object, "title").empty() ? entry.id : textMember(object, "title");
        entry.severity = severityOf(object, "severity", model::Severity::Function);
        entry.otherSeverity = severityOf(object, "other_severity", entry.severity);
        entry.caution = textMember(object, "caution");
        entry.concern = textMember(object, "concern");
        auto index = static_cast<std::uint32_t>(store.features.size());
        if (auto const earlier = store.featuresById.find(entry.id); earlier != store.featuresById.end()) {
            index = earlier->second;
            auto const drop = [index](std::vector<Statement>& list) {
                list.erase(std::remove_if(list.begin(), list.end(), [index](Statement const& statement) { return statement.feature == index; }), list.end());
            };
            drop(store.phrases);
            drop(store.cells);
            drop(store.featureNames);
        } else {
            store.features.emplace_back();
            store.featuresById.emplace(entry.id, index);
        }
        auto const addTo = [&](std::vector<Statement>& list, std::string const& phrase, std::int32_t state) {
            Concepts concepts = store.lexicon.readAndLearn(phrase);
            if (!concepts.ids.empty()) {
                list.push_back(Statement{.concepts = std::move(concepts.ids), .weight = 0, .feature = index, .state = state});
            }
        };
        eachName(member(object, "names"), "names", [&](std::string const& name) { addTo(store.featureNames, name, -1); });
        for (auto const& state : listMember(object, "states")) {
            if (!state.is_object() || textMember(state, "state").empty()) {
                throw Wrong{"each of \"states\" needs a \"state\""};
            }
            auto const number = static_cast<std::int32_t>(entry.states.size());
            entry.states.push_back(FeatureState{.token = textMember(state, "state"), .meaning = textMember(state, "meaning")});
            eachName(member(state, "phrases"), "phrases", [&](std::string const& phrase) { addTo(store.phrases, phrase, number); });
            eachName(member(state, "cells"), "cells", [&](std::string const& phrase) { addTo(store.cells, phrase, number); });
        }
        for (auto const& change : listMember(object, "changes")) {
            if (!change.is_object()) {
                throw Wrong{"each of \"changes\" must be an object"};
            }
            FeatureConcern concern;
            concern.from = textMember(change, "from");
            concern.to = textMember(change, "to");
            concern.severity = severityOf(change, "severity", entry.severity);
            if (json const* level = member(change, "level")) {
                if (!level->is_number_integer() || *level < 0 || *level > 4) {
                    throw Wrong{"\"level\" must be 0 to 4"};
                }
                concern.level = level->get<int>();
            }
            concern.text = textMember(change, "text");
            entry.concerns.push_back(std::move(concern));
        }
        store.features[index] = std::move(entry);
    } catch (Wrong const& wrong) {
        throw Wrong{fmt::format("feature \"{}\": {}", entry.id, wrong.message)};
    }
}

// The formula is read here for its faults only; whoever works it out reads it again.
void readDerived(json const& object, std::string const& family, std::vector<DerivedEntry>& list) {
    DerivedEntry entry;
    entry.id = idOf(object, "derived");
    try {
        entry.family = textMember(object, "family").empty() ? family : textMember(object, "family");
        entry.title = textMember(object, "title").empty() ? entry.id : textMember(object, "title");
        entry.formula = textMember(object, "formula");
        entry.expression = textMember(object, "expression");
        entry.unit = textMember(object, "unit");
        entry.role = roleOf(object);
        entry.severity = severityOf(object, "severity", model::Severity::Note);
        entry.bound = boundOf(object, entry.role);
        entry.caution = textMember(object, "caution");
        entry.higher = textMember(object, "higher");
        entry.lower = textMember(object, "lower");
        entry.least = textMember(object, "least");
        entry.shortfall = textMember(object, "shortfall");
        eachText(listMember(object, "notes"), "notes", [&](std::string const& note) { entry.notes.push_back(note); });
        if (auto const formula = quantity::Formula::parse(entry.expression); !formula) {
            throw Wrong{formula.error().message};
        }
        if (!quantity::dimensionOf(entry.unit)) {
            throw Wrong{fmt::format("\"unit\" \"{}\" is no unit to compute with", entry.unit)};
        }
        if (!entry.least.empty() && !quantity::Decimal::parse(entry.least)) {
            throw Wrong{"\"least\" must be a number in quotes"};
        }
    } catch (Wrong const& wrong) {
        throw Wrong{fmt::format("derived \"{}\": {}", entry.id, wrong.message)};
    }
    auto const earlier = std::find_if(list.begin(), list.end(), [&](DerivedEntry const& known) { return known.id == entry.id && known.family == entry.family; });
    if (earlier != list.end()) {
        *earlier = std::move(entry);
    } else {
        list.push_back(std::move(entry));
    }
}

void readBenchTest(json const& object, std::vector<BenchTestEntry>& list) {
    BenchTestEntry entry;
    entry.id = idOf(object, "bench tests");
    try {
        entry.title = textMember(object, "title").empty() ? entry.id : textMember(object, "title");
        eachText(listMember(object, "parameters"), "parameters", [&](std::string const& id) { entry.parameters.push_back(id); });
        eachText(listMember(object, "features"), "features", [&](std::string const& id) { entry.features.push_back(id); });
        eachText(listMember(object, "kinds"), "kinds", [&](std::string const& kind) { entry.kinds.push_back(kind); });
        eachText(listMember(object, "cautions"), "cautions", [&](std::string const& id) { entry.cautions.push_back(id); });
        entry.procedure = textMember(object, "procedure");
        entry.setup = textMember(object, "setup");
        entry.limits = textMember(object, "limits");
        entry.candidateLimits = flagOf(object, "candidate_limits");
        entry.fallback = flagOf(object, "fallback");
    } catch (Wrong const& wrong) {
        throw Wrong{fmt::format("bench test \"{}\": {}", entry.id, wrong.message)};
    }
    auto const earlier = std::find_if(list.begin(), list.end(), [&](BenchTestEntry const& known) { return known.id == entry.id; });
    if (earlier != list.end()) {
        *earlier = std::move(entry);
    } else {
        list.push_back(std::move(entry));
    }
}

void readHistory(json const& file, HistoryWords& words) {
    json const* object = member(file, "history");
    if (object == nullptr) {
        return;
    }
    if (!object->is_object()) {
        throw Wrong{"\"history\" must be an object"};
    }
    for (auto const& [key, list] : {std::pair{"revision", &words.revision},
                                    {"first", &words.first},
                                    {"editorial", &words.editorial},
                                    {"from", &words.from},
                                    {"to", &words.to},
                                    {"was", &words.was},
                                    {"added", &words.added},
                                    {"removed", &words.removed},
                                    {"place", &words.place},
                                    {"fillers", &words.fillers}}) {
        eachText(listMember(*object, key), key, [&known = *list](std::string const& word) {
            if (std::find(known.begin(), known.end(), word) == known.end()) {
                known.push_back(word);
            }
        });
    }
}

void readFile(json const& file, Vocabulary::Store& store) {
    if (!file.is_object() || textMember(file, "schema") != "standin.vocabulary/1") {
        throw Wrong{"\"schema\" must be \"standin.vocabulary/1\""};
    }
    std::string const family = textMember(file, "family").empty() ? "generic" : textMember(file, "family");
    auto place = std::find_if(store.families.begin(), store.families.end(), [&](Family const& known) { return known.id == family; });
    if (place == store.families.end()) {
        store.families.push_back(Family{.id = family, .title = {}});
        place = store.families.end() - 1;
    }
    if (std::string title = textMember(file, "title"); !title.empty()) {
        place->title = std::move(title);
    }
    auto const familyIndex = static_cast<std::uint32_t>(place - store.families.begin());
    eachText(listMember(file, "evidence"), "evidence", [&](std::string const& phrase) {
        store.evidence.push_back(Evidence{.phrase = foldWords(phrase), .family = familyIndex});
    });
    readLexicon(listMember(file, "lexicon"), store.lexicon);
    for (auto const& object : listMember(file, "topics")) {
        if (!object.is_object()) {
            throw Wrong{"each of \"topics\" must be an object"};
        }
        CombinedTopic topic;
        eachText(listMember(object, "concepts"), "concepts", [&](std::string const& name) {
            topic.name += (topic.name.empty() ? "" : "+") + name;
            topic.concepts.push_back(store.lexicon.intern(name));
        });
        std::sort(topic.concepts.begin(), topic.concepts.end());
        topic.severity = severityOf(object, "severity", model::Severity::Function);
        topic.caution = textMember(object, "caution");
        store.topics.push_back(std::move(topic));
    }
    for (auto const& object : listMember(file, "parameters")) {
        readParameter(object, family, store);
    }
    for (auto const& object : listMember(file, "features")) {
        readFeature(object, family, store);
    }
    for (auto const& object : listMember(file, "derived")) {
        readDerived(object, family, store.derived);
    }
    for (auto const& object : listMember(file, "cautions")) {
        CautionEntry entry{.id = idOf(object, "cautions"), .when = textMember(object, "when"), .text = textMember(object, "text"), .check = textMember(object, "check")};
        auto const known = store.cautionsById.find(entry.id);
        if (known != store.cautionsById.end()) {
            store.cautions[known->second] = std::move(entry);
        } else {
            store.cautionsById.emplace(entry.id, static_cast<std::uint32_t>(store.cautions.size()));
            store.cautions.push_back(std::move(entry));
        }
    }
    for (auto const& object : listMember(file, "bench_tests")) {
        readBenchTest(object, store.benchTests);
    }
    eachText(listMember(file, "sample_rules"), "sample_rules", [&](std::string const& text) { store.sampleRules.push_back(text); });
    eachText(listMember(file, "statements"), "statements", [&](std::string const& text) { store.statements.push_back(text); });
    readHistory(file, store.history);
}

}  // namespace

model::Result<void> Vocabulary::Store::load(std::string_view text) {
    auto const refuse = [](std::string message) {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = std::move(message), .file = {}, .page = 0});
    };
    if (text.size() > kLongestFile) {
        return refuse("the vocabulary is too long (4 MB at most)");
    }
    if (deepestNesting(text) > kDeepestNesting) {
        return refuse("the vocabulary is nested too deeply");
    }
    json const file = json::parse(text.begin(), text.end(), nullptr, false);
    if (file.is_discarded()) {
        return refuse("the vocabulary is not valid JSON");
    }
    try {
        readFile(file, *this);
    } catch (Wrong const& wrong) {
        return refuse(fmt::format("vocabulary: {}", wrong.message));
    }
    return {};
}

float Vocabulary::Store::weightOf(std::vector<ConceptId> const& concepts) const {
    float sum = 0;
    for (ConceptId id : concepts) {
        sum += lexicon.at(id).weight;
    }
    return sum;
}

void Vocabulary::Store::buildIndices() {
    constexpr float kHeaviest = 6;
    aliasesByConcept.assign(lexicon.size(), {});
    for (std::uint32_t i = 0; i < aliases.size(); ++i) {
        for (ConceptId id : aliases[i].concepts) {
            aliasesByConcept[id].push_back(i);
        }
    }
    auto const total = static_cast<float>(aliases.size());
    for (std::size_t i = 0; i < lexicon.size(); ++i) {
        auto const uses = static_cast<float>(std::max<std::size_t>(aliasesByConcept[i].size(), 1));
        lexicon.at(static_cast<ConceptId>(i)).weight = std::min(std::log2(1 + total / uses), kHeaviest);
    }
    for (auto& alias : aliases) {
        alias.weight = weightOf(alias.concepts);
    }
    phrasesByConcept.assign(lexicon.size(), {});
    for (auto* list : {&phrases, &cells, &featureNames}) {
        for (auto& statement : *list) {
            statement.weight = weightOf(statement.concepts);
        }
    }
    std::vector<std::uint32_t> uses(lexicon.size(), 0);
    for (auto const& statement : phrases) {
        for (ConceptId id : statement.concepts) {
            ++uses[id];
        }
    }
    for (std::uint32_t i = 0; i < phrases.size(); ++i) {
        auto const& ids = phrases[i].concepts;
        auto const rarest = std::min_element(ids.begin(), ids.end(), [&](ConceptId a, ConceptId b) { return uses[a] < uses[b]; });
        phrasesByConcept[*rarest].push_back(i);
    }
}

}  // namespace standin::vocabulary
