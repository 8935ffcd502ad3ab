// Cell checks and worked-out quantities on paper. Private to report/pdf/.
#pragma once

#include "model/comparison.h"
#include "report/pdf/paper.h"

namespace standin::report {

// Every check with what is asked for and what each part gives; nothing where no
// cell was given.
void writeCellChecks(Paper& paper, model::Comparison const& comparison);

// Every quantity with its formula, results, inputs and notes.
void writeDerived(Paper& paper, model::Comparison const& comparison);

}  // namespace standin::report
