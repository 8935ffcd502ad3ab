// What a printed row is worth: its interval in coherent units, its grade, and
// how sure the reading is.
#pragma once

#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "extractors/parameters/column_plan.h"
#include "extractors/parameters/table_rows.h"
#include "model/datasheet.h"

namespace standin::parameters {

// Sets interval and the numbers of min, typ and max from their texts and the unit.
void fillInterval(model::Parameter& parameter);

// True where the typical column is headed "Nom." or the like.
[[nodiscard]] bool headedNominal(ColumnPlan const& plan);

// Whether a text says that a value is assured by design instead of by test. Rows of
// a table share their notes: each text is read once.
class ByDesign {
public:
    [[nodiscard]] bool isSaidIn(std::string const& text);

private:
    std::unordered_map<std::string, bool> m_known;
};

// From the kind, the filled columns, the conditions and the notes (DOMAIN grades).
// `nominal`: the typical column is headed as nominal.
[[nodiscard]] model::Grade gradeOf(model::Parameter const& parameter, bool nominal);
[[nodiscard]] model::Grade gradeOf(model::Parameter const& parameter, bool nominal, ByDesign& byDesign);

// Score 0 … 1 with reasons; 0.9 and more is meant to be right in 99 of 100 rows.
[[nodiscard]] model::Confidence confidenceOf(model::Parameter const& parameter, PrintedRow const& row, ColumnPlan const& plan, model::Table const& table);

// Rows that a sign stands in which is a drawing and was not read ("±8" reads "8"), across the whole width of
// their table: their score falls to what is listed as doubtful, with the reason. A sign for which the table has no
// text (a unit over several rows) makes the rows without a unit next to it doubtful.
void doubtRowsWithDrawnSigns(std::span<model::Parameter> parameters, std::span<model::PlacedText const> signs, std::span<model::Table const> tables);

}  // namespace standin::parameters
