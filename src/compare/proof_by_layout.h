// Rows of one parameter that a table lays out by one quantity: on-resistance at 10 V, 4.5 V
// and 2.5 V at the gate. Where both sheets do, the rows that print one value of it are
// each other's, whatever else their conditions state.
#pragma once

#include <string>
#include <vector>

#include "compare/conditions.h"

namespace standin::compare {

struct LaidOutRow {
    std::string kin;  // what rows of one parameter and dimension have in common; empty: none
    StatedConditions const* conditions = nullptr;
    int partner = -1;  // position in the rows of the other sheet; -1: none
};

// For every row of the reference, whether its pair is told so: some quantity has a value of its
// own in each row of the kin that states it, in either sheet, and all pairs of the kin, two or more,
// state it and agree in it.
[[nodiscard]] std::vector<char> toldByLayout(std::vector<LaidOutRow> const& reference, std::vector<LaidOutRow> const& candidate);

}  // namespace standin::compare
