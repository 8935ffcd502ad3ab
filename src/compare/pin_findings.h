// Findings about pins, packages and ordering lines.
#pragma once

#include <vector>

#include "compare/drafts.h"
#include "compare/sheet_pair.h"

namespace standin::compare {

// Pin by pin in corresponding packages: MeaningChanged where a number carries
// another function (names that are synonyms are the same; cell minus and pack
// minus never are), Reworded with the class PIN where one sheet has one name for several
// pins ("Inputs 1") that the other tells apart, one-sided where only one sheet has it; in two states of one
// text also where name, number or description read differently.
[[nodiscard]] std::vector<Draft> findPinDifferences(SheetPair const& sheets);

[[nodiscard]] inline bool isNamedLessExactly(model::Finding const& pin) {
    return pin.relation == model::Relation::Reworded && pin.classes == std::vector{model::WordingClass::Pin};
}

// Packages that only one sheet names; where each names a single one, both sides.
[[nodiscard]] std::vector<Draft> findPackageDifferences(SheetPair const& sheets);

// Ordering lines by code; attributes that differ. Two makers' codes do not
// correspond: each sheet's lines are listed, joined.
[[nodiscard]] std::vector<Draft> findOrderingDifferences(SheetPair const& sheets);

// The line that a side of a finding shows; null: none stands there.
[[nodiscard]] model::OrderingLine const* orderingLineAt(std::vector<model::OrderingLine> const& lines, model::Side const& side);

}  // namespace standin::compare
