// What the trade knows about parameters, features and cautions, as data: the
// files of vocabulary/data/ (compiled in) and the files that users add.
//
// This folder includes model/ and quantity/ only (and nlohmann-json in its .cpp files).
//
// Defines: Role, Bound, ParameterEntry, FeatureState, FeatureConcern, FeatureEntry,
// DerivedEntry, CautionEntry, HistoryWords, Query, Match, FeatureStatement, Topic, Vocabulary.
//
//     auto vocabulary = Vocabulary::builtIn();
//     std::string family = vocabulary->detectFamily(names, symbols, firstPageText);
//     auto match = vocabulary->match({.name = "Overcharge detection voltage", .symbol = "VCU", .unit = "V", .family = family});
//     if (match) { auto const* entry = vocabulary->find(match->id, family); … entry->bound … }
//
// A vocabulary file (schema standin.vocabulary/1; report/schemas/ has its JSON Schema):
//
//     {"schema": "standin.vocabulary/1", "family": "lithium-protection", "title": "Lithium-cell protection",
//      "evidence": ["battery protection", "电池保护"],          phrases by which a sheet is known to be of the family
//      "lexicon":    [{"concept", "group", "words": [..], "severity", "caution"}],   words of all languages that mean one thing;
//                                                               concepts of one group exclude each other
//      "parameters": [{"id", "title", "also": [..], "names": {"en": [..], ..}, "symbols": [..], "companions": {symbol: [..]}, "role", "unit",
//                      "range": [lo, hi], "severity", "hazard_when": [concept ..], "bound", "caution", "higher", "lower",
//                      "essential", "charger_pin", "set_by_circuit", "worst_at_full_load"}],
//      "features":   [{"id", "title", "names", "severity", "other_severity", "caution", "concern",
//                      "states": [{"state", "meaning", "phrases": {..}, "cells": {..}}], "changes": [{"from", "to", "severity", "level", "text"}]}],
//      "derived":    [{"id", "family", "title", "formula", "expression", "unit", "role", "severity", "bound", "caution", "higher", "lower", "least",
//                      "shortfall", "notes": [..]}],                quantities worked out of stated ones (quantity/formula.h)
//      "topics":     [{"concepts": [..], "severity", "caution"}],   what a sentence with all of them is about, instead of each by itself
//      "bench_tests": [{"id", "title", "parameters": [..], "features": [..], "kinds": [..], "cautions": [..], "procedure", "setup", "limits",
//                       "candidate_limits", "fallback"}],
//      "sample_rules": [..],
//      "cautions":   [{"id", "when", "text", "check"}],  "statements": [..],
//      "history": {"revision", "first", "editorial", "from", "to", "was", "added", "removed", "place",
//                  "fillers": [..]}}   what revision histories are written in
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "model/result.h"

namespace standin::vocabulary {

// How a parameter's interval is judged.
enum class Role : std::uint8_t { Window, Setpoint, Cap, Floor, Withstand, OperatingRange, Mode };

// Which bound of the interval governs safety; Magnitude: the larger absolute value.
enum class Bound : std::uint8_t { None, Max, Min, Magnitude, Both };

struct ParameterEntry {
    std::string id;      // "overcharge-detect-voltage"
    std::string family;  // "lithium-protection"; "generic"
    std::string title;   // "Overcharge detection voltage"
    Role role = Role::Window;
    std::string unit;    // coherent SI ("V", "s", "degC", "K/W", "1"); empty: none
    std::optional<double> low, high;  // generic range in `unit`: for plausibility, never a limit
    model::Severity severity = model::Severity::Note;
    std::vector<std::string> hazardWhen;  // concepts that make it a hazard when the row or its condition names them
    Bound bound = Bound::Both;
    std::string caution;  // caution id, or empty
    std::string higher;   // what a higher candidate means; empty: no concern by itself
    std::string lower;
    std::string essential;    // "overcharge detection": a pair of sheets that states no parameter of this group is incomplete
    bool chargerPin = false;  // a rating that a charger stresses
    bool setByCircuit = false;  // parts of the board set it within the range that is printed
    bool worstAtFullLoad = false;  // a limit that holds at a load holds at any lighter one (levels of an output, not its leakage)
    std::vector<std::string> symbols;  // as met in print, without subscript formatting
};

struct FeatureState {
    std::string token;    // "inhibited"
    std::string meaning;  // "charging of a 0 V cell is inhibited"
};

// A change from one state to another (empty: any) that matters.
struct FeatureConcern {
    std::string from, to;
    model::Severity severity = model::Severity::Function;
    int level = 3;     // DOMAIN 5.9
    std::string text;  // what it could do
};

struct FeatureEntry {
    std::string id;
    std::string family;
    std::string title;
    model::Severity severity = model::Severity::Function;       // the worst of its changes
    model::Severity otherSeverity = model::Severity::Function;  // of a change that no concern lists
    std::string caution;
    std::string concern;  // what a difference could do, for changes without a text of their own
    std::vector<FeatureState> states;
    std::vector<FeatureConcern> concerns;
};

// A quantity that is not printed but worked out of what is (DOMAIN 4).
struct DerivedEntry {
    std::string id;      // "discharge-trip-current"
    std::string family;  // "generic": of any sheet that states the inputs
    std::string title;
    std::string formula;     // as people write it
    std::string expression;  // as quantity::Formula reads it; names are parameter ids, "circuit.…" and "cell.…"
    std::string unit;        // that results are shown in
    Role role = Role::Window;
    model::Severity severity = model::Severity::Note;
    Bound bound = Bound::Both;
    std::string caution;
    std::string higher;  // what a higher candidate means; empty: no concern by itself
    std::string lower;
    std::string least;      // a decimal in `unit` that the lower bound must not fall below; empty: none
    std::string shortfall;  // what it means where it does
    std::vector<std::string> notes;
};

// A test at the bench that open findings call for (DOMAIN 10.4).
struct BenchTestEntry {
    std::string id;  // "overcharge-threshold"
    std::string title;
    std::vector<std::string> parameters;  // ids, worked-out quantities too, whose findings call for it
    std::vector<std::string> features;
    std::vector<std::string> kinds;     // kinds of findings ("pin", "package") that do
    std::vector<std::string> cautions;  // for findings that name neither: by their caution
    std::string procedure;
    std::string setup;
    std::string limits;     // where its limits come from
    bool candidateLimits = false;  // those of the candidate (its ratings), not of the reference
    bool fallback = false;  // for findings about values that nothing else covers
};

struct CautionEntry {
    std::string id;     // "C-OC"
    std::string when;   // when it is shown
    std::string text;   // what the user reads, word for word
    std::string check;  // one action, for explanations: "Check … ."
};

// Words and phrases that revision histories are written in, of all languages together.
struct HistoryWords {
    std::vector<std::string> revision;        // in front of a revision's letter or number: "Rev", "版本"
    std::vector<std::string> first;           // "first issue": nothing was changed
    std::vector<std::string> editorial;       // "spelling": changes that the sheet itself calls no change of content
    std::vector<std::string> from, to;        // "from 40 A to 32 A"
    std::vector<std::string> was;             // "32 A (was 40 A)"
    std::vector<std::string> added, removed;  // "added the layout section": what only one of the two revisions has
    std::vector<std::string> place;           // stand beside a heading that says where: "in", "section"
    std::vector<std::string> fillers;         // say nothing about what was changed: "changed", "the", "table"
};

// One printed row to be recognised. Views must live during the call only.
struct Query {
    std::string_view name;    // empty: none printed
    std::string_view symbol;  // empty: none printed
    std::string_view unit;    // as printed or SI; empty: not known
    model::ParameterKind kind = model::ParameterKind::Other;
    std::string_view family;  // of detectFamily, or empty
    std::span<std::string const> neighbours;  // other symbols of the same table or sheet
    std::optional<double> magnitude;  // a typical or limit value in the coherent SI unit
};

struct Match {
    std::string id;
    double score = 0;  // 0 … 1; 0.9 and more: name and dimension agree without a rival
    std::string why;   // "name and symbol", "symbol, neighbours" …
};

// What a sentence or a table cell says about a feature.
struct FeatureStatement {
    std::string feature;
    std::string state;
    double score = 0;
};

// What a sentence is about; the gravest first.
struct Topic {
    std::string subject;  // a concept of the lexicon ("overcharge"), a parameter id or a feature id
    model::Severity severity = model::Severity::Note;
    std::string caution;  // may be empty
};

class Vocabulary {
public:
    // Everything in vocabulary/data/. Fails only by a fault of ours (Internal).
    [[nodiscard]] static model::Result<Vocabulary> builtIn();

    // Adds a user's file; entries with an id of the same family replace the
    // earlier ones. Usage errors say which member is wrong; nothing is added then.
    [[nodiscard]] model::Result<void> add(std::string_view json);

    // The entry of an id; the family's own where several families share it. Null: not known.
    [[nodiscard]] ParameterEntry const* find(std::string_view id, std::string_view family = {}) const;
    [[nodiscard]] FeatureEntry const* feature(std::string_view id) const;
    [[nodiscard]] CautionEntry const* caution(std::string_view id) const;
    // The text of a caution; empty for an unknown id.
    [[nodiscard]] std::string const& cautionText(std::string_view id) const;
    // General statements that every summary carries, in order.
    [[nodiscard]] std::vector<std::string> const& generalStatements() const;

    [[nodiscard]] std::vector<ParameterEntry const*> parameters() const;
    [[nodiscard]] std::vector<FeatureEntry const*> features() const;
    // Quantities to be worked out, in the order of the data.
    [[nodiscard]] std::span<DerivedEntry const> derived() const;
    // In the order in which they are listed, and the rules for samples.
    [[nodiscard]] std::span<BenchTestEntry const> benchTests() const;
    [[nodiscard]] std::vector<std::string> const& sampleRules() const;
    // Words of every file that was added, each once in the order of the data.
    [[nodiscard]] HistoryWords const& historyWords() const;
    [[nodiscard]] std::vector<std::string> families() const;  // ids, without "generic"
    [[nodiscard]] std::string familyTitle(std::string_view family) const;

    // Which family a whole sheet belongs to: by its parameter names and symbols, and by
    // the text of its head or first page (only the first 8 KB are looked at). Empty: undecided.
    [[nodiscard]] std::string detectFamily(std::span<std::string const> names, std::span<std::string const> symbols,
                                           std::string_view text) const;

    // The parameter that a row states. None where nothing fits or two fit nearly as well.
    [[nodiscard]] std::optional<Match> match(Query const& query) const;

    // Every feature state that a sentence states, at most one a feature.
    [[nodiscard]] std::vector<FeatureStatement> statements(std::string_view sentence, std::string_view family = {}) const;
    // The state that a table cell gives to the feature named by its row or column
    // title ("0 V battery charge function" | "Unavailable"). None: not a feature.
    [[nodiscard]] std::optional<FeatureStatement> statement(std::string_view title, std::string_view cell,
                                                            std::string_view family = {}) const;

    // What a sentence is about, gravest first; empty: nothing known.
    [[nodiscard]] std::vector<Topic> topics(std::string_view sentence, std::string_view family = {}) const;

    // Whether a text names a concept of the lexicon, in whatever language.
    [[nodiscard]] bool names(std::string_view text, std::string_view wantedConcept) const;

    Vocabulary(Vocabulary&&) noexcept;
    Vocabulary& operator=(Vocabulary&&) noexcept;
    ~Vocabulary();

    struct Store;  // store.h, private to this folder

private:
    explicit Vocabulary(std::unique_ptr<Store> store);
    std::unique_ptr<Store> m_store;
};

[[nodiscard]] std::string_view toString(Role role);
[[nodiscard]] std::string_view toString(Bound bound);

}  // namespace standin::vocabulary
