// What a difference between two sentences means: the class of a wording finding.
//
//     WordingContext context(reference, candidate);
//     auto wording = classify("It must be tied to VSS.", "It should be tied to VSS.", context);
//     wording.classes.front();   // WordingClass::Mod
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "compare/wording_tokens.h"
#include "model/comparison.h"
#include "model/datasheet.h"

namespace standin::compare {

// Names that each sheet calls itself by (they count as the same word), pins of
// both, and the language of the prose.
struct WordingContext {
    WordingContext() = default;
    WordingContext(model::Datasheet const& reference, model::Datasheet const& candidate);

    SheetNames reference;
    SheetNames candidate;
    std::string language;  // BCP 47; empty: told from each sentence
};

struct WordingOutcome {
    model::Relation relation = model::Relation::Same;  // Same, Reworded or MeaningChanged
    std::vector<model::WordingClass> classes;          // the gravest first; empty for Same
    bool editorial = false;                            // nothing but editorial noise differs
    bool operator==(WordingOutcome const&) const = default;
};

// Same: a reader sees the same text (fold, white space). Reworded: Edit where only
// noise differs, else Style. MeaningChanged: every class that a negation, modal,
// connective, quantifier, number, symbol, pin … found on one side only gives.
// Exchanging the texts gives the same outcome.
[[nodiscard]] WordingOutcome classify(std::string_view reference, std::string_view candidate, WordingContext const& context);

// A number, symbol or temperature is all that differs.
[[nodiscard]] bool differsInNumbersOnly(std::vector<model::WordingClass> const& classes);

// Classes of a sentence that only one sheet has, by what it says; Style where it
// says nothing that matters.
[[nodiscard]] std::vector<model::WordingClass> classifyAlone(std::string_view printed, SheetNames const& names, std::string_view language);

}  // namespace standin::compare
