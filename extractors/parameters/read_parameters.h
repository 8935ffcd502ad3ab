// Parameters out of the specification tables (and lists of ratings) of a sheet.
//
// Defines: Reading, readParameters().
//
//     auto reading = parameters::readParameters(tables, pages, sections, &vocabulary);
//     for (model::Parameter const& parameter : reading.parameters) …
//
// Sets Table::kind of every table, Table::section where it is empty, Word::owner of the words it accounts for
// (Parameter: in a row that became a parameter; Table: every other word of a
// table), nothing else.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"
#include "vocabulary/vocabulary.h"

namespace standin::parameters {

struct Reading {
    std::vector<model::Parameter> parameters;  // document order, ids "p1" …
    std::string family;                        // of the vocabulary, or empty
};

// `tables` in document order with their ids; `pages` in order of page number.
// Works for any input; what is not understood becomes no parameter and its table
// stays Other. `vocabulary` may be null: canonical stays empty then.
[[nodiscard]] Reading readParameters(std::vector<model::Table>& tables, std::span<model::PageLayout> pages, std::vector<model::Section> const& sections,
                                     vocabulary::Vocabulary const* vocabulary);

}  // namespace standin::parameters
