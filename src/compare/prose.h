// Findings about sentences and list entries.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

struct ProseFindings {
    std::vector<Draft> drafts;
    // Indices into Datasheet::text, equal ones included; a sentence that the other
    // sheet divides is named once for each part.
    std::vector<IndexPair> pairs;
};

// Sheets in two languages: nothing is paired, the coverage account says so.
[[nodiscard]] ProseFindings findProseDifferences(SheetPair const& sheets);

// Relation and classes (wording_classes.h) of a changed text, for findings of any kind that show two
// texts. Relation::Same: the texts mean the same to a reader, letter by letter.
struct Wording {
    model::Relation relation = model::Relation::Reworded;
    std::vector<model::WordingClass> classes;
};
[[nodiscard]] Wording wordingOf(SheetPair const& sheets, std::string const& reference, std::string const& candidate);

// Classes of a text that only one sheet has, by what it says.
enum class InSheet : std::uint8_t { Reference, Candidate };
[[nodiscard]] std::vector<model::WordingClass> classesAlone(SheetPair const& sheets, std::string const& printed, InSheet sheet);

}  // namespace standin::compare
