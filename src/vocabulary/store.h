// The loaded vocabulary: entries and the indices that matching uses. Private to
// this folder.
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "vocabulary/lexicon.h"
#include "vocabulary/vocabulary.h"

namespace standin::vocabulary {

// One name of a parameter.
struct Alias {
    std::vector<ConceptId> concepts;
    float weight = 0;  // sum over its concepts
    std::uint32_t entry = 0;
};

struct SymbolUse {
    std::uint32_t entry = 0;
    std::vector<std::string> companions;  // folded; not empty: one of them must stand beside it
};

// One way to say a state, or one name of a feature.
struct Statement {
    std::vector<ConceptId> concepts;
    float weight = 0;
    std::uint32_t feature = 0;
    std::int32_t state = -1;  // index; -1: a name of the feature
};

// What a sentence that says all of `concepts` is about.
struct CombinedTopic {
    std::string name;
    std::vector<ConceptId> concepts;
    model::Severity severity = model::Severity::Note;
    std::string caution;
};

struct Evidence {
    std::string phrase;  // folded
    std::uint32_t family = 0;
};

struct Family {
    std::string id;
    std::string title;
};

struct Vocabulary::Store {
    Lexicon lexicon;
    std::deque<ParameterEntry> parameters;
    std::deque<FeatureEntry> features;
    std::vector<DerivedEntry> derived;
    std::vector<BenchTestEntry> benchTests;
    std::vector<std::string> sampleRules;
    HistoryWords history;
    std::deque<CautionEntry> cautions;
    std::vector<std::string> statements;
    std::vector<Family> families;
    std::vector<Evidence> evidence;
    std::vector<CombinedTopic> topics;

    ViewMap<std::vector<std::uint32_t>> parametersById;  // also by the ids of "also"
    ViewMap<std::uint32_t> featuresById;
    ViewMap<std::uint32_t> cautionsById;

    std::vector<Alias> aliases;
    ViewMap<std::vector<SymbolUse>> symbols;                       // folded symbol
    std::vector<std::vector<std::uint32_t>> aliasesByConcept;      // concept -> aliases that name it
    std::vector<Statement> phrases;                                // states said in prose
    std::vector<std::vector<std::uint32_t>> phrasesByConcept;      // rarest concept -> phrases
    std::vector<Statement> cells;                                  // states said by a cell under the feature's title
    std::vector<Statement> featureNames;

    // Weights and inverted indices, after entries were added.
    void buildIndices();
    [[nodiscard]] float weightOf(std::vector<ConceptId> const& concepts) const;
    // Reads one file into this store. The store is spoilt after an error.
    [[nodiscard]] model::Result<void> load(std::string_view json);
};

// Below: pieces of matching, each in its .cpp.

// The coherent unit of a printed or coherent one; empty: unknown. `expected`
// decides spellings with two readings ("mS").
[[nodiscard]] std::string coherentUnit(std::string_view unit, std::string_view expected);

[[nodiscard]] std::optional<Match> matchParameter(Vocabulary::Store const& store, Query const& query);

}  // namespace standin::vocabulary
