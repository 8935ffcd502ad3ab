// One list of members serves both directions: each visit() names them once, and
// Writer or Reader moves them.
// Tested by tests/src/vocabulary/data_test.cpp.
#include "vocabulary/archive.h"

#include <cstring>
#include <type_traits>

namespace standin::vocabulary {

namespace {

constexpr std::uint32_t kLongestList = 1U << 20;

class Writer {
public:
    static constexpr bool kReads = false;
    template <class Number>
    void number(Number const& value) {
        m_bytes.append(reinterpret_cast<char const*>(&value), sizeof value);
    }
    void text(std::string const& value) {
        number(static_cast<std::uint32_t>(value.size()));
        m_bytes += value;
    }
    template <class Numbers>
    void numbers(Numbers const& values) {
        number(static_cast<std::uint32_t>(values.size()));
        m_bytes.append(reinterpret_cast<char const*>(values.data()), values.size() * sizeof values[0]);
    }
    std::string m_bytes;
};

class Reader {
public:
    static constexpr bool kReads = true;
    explicit Reader(std::string_view bytes) : m_rest(bytes) {}
    template <class Number>
    void number(Number& value) {
        if (m_rest.size() < sizeof value) {
            fail();
            return;
        }
        std::memcpy(&value, m_rest.data(), sizeof value);
        m_rest.remove_prefix(sizeof value);
    }
    void text(std::string& value) {
        std::uint32_t const size = length();
        if (size > m_rest.size()) {
            fail();
            return;
        }
        value.assign(m_rest.substr(0, size));
        m_rest.remove_prefix(size);
    }
    template <class Numbers>
    void numbers(Numbers& values) {
        std::size_t const size = length();
        if (size * sizeof values[0] > m_rest.size()) {
            fail();
            return;
        }
        values.resize(size);
        if (size != 0) {
            std::memcpy(values.data(), m_rest.data(), size * sizeof values[0]);
        }
        m_rest.remove_prefix(size * sizeof values[0]);
    }
    std::uint32_t length() {
        std::uint32_t size = 0;
        number(size);
        if (size > kLongestList) {
            fail();
            return 0;
        }
        return size;
    }
    void fail() {
        m_good = false;
        m_rest = {};
    }
    [[nodiscard]] bool complete() const { return m_good && m_rest.empty(); }

private:
    std::string_view m_rest;
    bool m_good = true;
};

template <class Archive, class Number>
    requires std::is_arithmetic_v<Number> || std::is_enum_v<Number>
void visit(Archive& archive, Number& value) {
    archive.number(value);
}

template <class Archive>
void visit(Archive& archive, std::string& value) {
    archive.text(value);
}

template <class Archive>
void visit(Archive& archive, std::optional<double>& value) {
    bool has = value.has_value();
    archive.number(has);
    double number = value.value_or(0);
    archive.number(number);
    if (has) {
        value = number;
    }
}

template <class Archive>
void visit(Archive& archive, std::vector<ConceptId>& values) {
    archive.numbers(values);
}

template <class Archive>
void visit(Archive& archive, std::vector<std::uint32_t>& values) {
    archive.numbers(values);
}

template <class Archive, class List>
void visitList(Archive& archive, List& list) {
    if constexpr (Archive::kReads) {
        list.resize(archive.length());
    } else {
        archive.number(static_cast<std::uint32_t>(list.size()));
    }
    for (auto& entry : list) {
        visit(archive, entry);
    }
}

template <class Archive, class Value>
void visitMap(Archive& archive, ViewMap<Value>& map) {
    if constexpr (Archive::kReads) {
        std::uint32_t const size = archive.length();
        map.reserve(size);
        for (std::uint32_t i = 0; i < size; ++i) {
            std::string key;
            Value value{};
            visit(archive, key);
            if constexpr (std::is_class_v<Value>) {
                visitValue(archive, value);
            } else {
                visit(archive, value);
            }
            map.emplace(std::move(key), std::move(value));
        }
    } else {
        archive.number(static_cast<std::uint32_t>(map.size()));
        for (auto& [key, value] : map) {
            archive.text(key);
            if constexpr (std::is_class_v<Value>) {
                visitValue(archive, value);
            } else {
                visit(archive, value);
            }
        }
    }
}

template <class Archive>
void visit(Archive& archive, Concept& entry) {
    visit(archive, entry.name);
    visit(archive, entry.group);
    visit(archive, entry.severity);
    visit(archive, entry.caution);
    visit(archive, entry.weight);
}

template <class Archive>
void visit(Archive& archive, ParameterEntry& entry) {
    for (std::string* text : {&entry.id, &entry.family, &entry.title, &entry.unit, &entry.caution, &entry.higher, &entry.lower, &entry.essential}) {
        visit(archive, *text);
    }
    visit(archive, entry.role);
    visit(archive, entry.low);
    visit(archive, entry.high);
    visit(archive, entry.severity);
    visit(archive, entry.bound);
    visit(archive, entry.chargerPin);
    visit(archive, entry.setByCircuit);
    visit(archive, entry.worstAtFullLoad);
    visitList(archive, entry.hazardWhen);
    visitList(archive, entry.symbols);
}

template <class Archive>
void visit(Archive& archive, FeatureState& state) {
    visit(archive, state.token);
    visit(archive, state.meaning);
}

template <class Archive>
void visit(Archive& archive, FeatureConcern& concern) {
    visit(archive, concern.from);
    visit(archive, concern.to);
    visit(archive, concern.severity);
    visit(archive, concern.level);
    visit(archive, concern.text);
}

template <class Archive>
void visit(Archive& archive, FeatureEntry& entry) {
    for (std::string* text : {&entry.id, &entry.family, &entry.title, &entry.caution, &entry.concern}) {
        visit(archive, *text);
    }
    visit(archive, entry.severity);
    visit(archive, entry.otherSeverity);
    visitList(archive, entry.states);
    visitList(archive, entry.concerns);
}

template <class Archive>
void visit(Archive& archive, DerivedEntry& entry) {
    for (std::string* text : {&entry.id, &entry.family, &entry.title, &entry.formula, &entry.expression, &entry.unit, &entry.caution, &entry.higher, &entry.lower,
                              &entry.least, &entry.shortfall}) {
        visit(archive, *text);
    }
    visit(archive, entry.role);
    visit(archive, entry.severity);
    visit(archive, entry.bound);
    visitList(archive, entry.notes);
}

template <class Archive>
void visit(Archive& archive, BenchTestEntry& entry) {
    for (std::string* text : {&entry.id, &entry.title, &entry.procedure, &entry.setup, &entry.limits}) {
        visit(archive, *text);
    }
    for (auto* list : {&entry.parameters, &entry.features, &entry.kinds, &entry.cautions}) {
        visitList(archive, *list);
    }
    visit(archive, entry.candidateLimits);
    visit(archive, entry.fallback);
}

template <class Archive>
void visit(Archive& archive, CautionEntry& entry) {
    for (std::string* text : {&entry.id, &entry.when, &entry.text, &entry.check}) {
        visit(archive, *text);
    }
}

template <class Archive>
void visit(Archive& archive, HistoryWords& words) {
    for (auto* list : {&words.revision, &words.first, &words.editorial, &words.from, &words.to, &words.was, &words.added, &words.removed, &words.place, &words.fillers}) {
        visitList(archive, *list);
    }
}

template <class Archive>
void visit(Archive& archive, Family& family) {
    visit(archive, family.id);
    visit(archive, family.title);
}

template <class Archive>
void visit(Archive& archive, Evidence& evidence) {
    visit(archive, evidence.phrase);
    visit(archive, evidence.family);
}

template <class Archive>
void visit(Archive& archive, CombinedTopic& topic) {
    visit(archive, topic.name);
    visit(archive, topic.concepts);
    visit(archive, topic.severity);
    visit(archive, topic.caution);
}

template <class Archive>
void visit(Archive& archive, Alias& alias) {
    visit(archive, alias.concepts);
    visit(archive, alias.weight);
    visit(archive, alias.entry);
}

template <class Archive>
void visit(Archive& archive, SymbolUse& use) {
    visit(archive, use.entry);
    visitList(archive, use.companions);
}

template <class Archive>
void visit(Archive& archive, Statement& statement) {
    visit(archive, statement.concepts);
    visit(archive, statement.weight);
    visit(archive, statement.feature);
    visit(archive, statement.state);
}

template <class Archive>
void visitValue(Archive& archive, std::vector<ConceptId>& values) {
    visit(archive, values);
}

template <class Archive>
void visitValue(Archive& archive, std::vector<std::uint32_t>& values) {
    visit(archive, values);
}

template <class Archive>
void visitValue(Archive& archive, std::vector<SymbolUse>& uses) {
    visitList(archive, uses);
}

template <class Archive>
void visitStore(Archive& archive, Vocabulary::Store& store) {
    auto parts = store.lexicon.parts();
    visitList(archive, parts.concepts);
    visitMap(archive, parts.byName);
    visitMap(archive, parts.phrases);
    visitMap(archive, parts.longest);
    visitList(archive, parts.groups);
    visitList(archive, store.parameters);
    visitList(archive, store.features);
    visitList(archive, store.derived);
    visitList(archive, store.benchTests);
    visitList(archive, store.sampleRules);
    visit(archive, store.history);
    visitList(archive, store.cautions);
    visitList(archive, store.statements);
    visitList(archive, store.families);
    visitList(archive, store.evidence);
    visitList(archive, store.topics);
    visitMap(archive, store.parametersById);
    visitMap(archive, store.featuresById);
    visitMap(archive, store.cautionsById);
    visitList(archive, store.aliases);
    visitMap(archive, store.symbols);
    visitList(archive, store.aliasesByConcept);
    visitList(archive, store.phrases);
    visitList(archive, store.phrasesByConcept);
    visitList(archive, store.cells);
    visitList(archive, store.featureNames);
}

}  // namespace

std::string pack(Vocabulary::Store& store) {
    Writer writer;
    visitStore(writer, store);
    return std::move(writer.m_bytes);
}

bool unpack(std::string_view bytes, Vocabulary::Store& store) {
    Reader reader(bytes);
    visitStore(reader, store);
    return reader.complete();
}

}  // namespace standin::vocabulary
