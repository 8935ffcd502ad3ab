// Findings about sentences and list entries.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

struct ProseFindings {
    std::vector<Draft> drafts;
    std::vector<IndexPair> pairs;  // indices into Datasheet::text, equal ones included
};

// Sheets in two languages: nothing is paired, the coverage account says so.
[[nodiscard]] ProseFindings findProseDifferences(SheetPair const& sheets);

// Relation and classes of a changed text, for findings of any kind that show two
// texts. Relation::Same: the texts mean the same to a reader, letter by letter.
struct Wording {
    model::Relation relation = model::Relation::Reworded;
    std::vector<model::WordingClass> classes;
};
[[nodiscard]] Wording wordingOf(SheetPair const& sheets, std::string const& reference, std::string const& candidate);

}  // namespace standin::compare
