// Puts right what a person found misread: after reading, before comparing.
//
//     auto entries = parseCorrections(text, "mine.json");
//     auto done = applyCorrections(*entries, sheets, vocabulary);
//     sheets[0].document.corrections   // what became of each that names it
//
// This folder (corrections/) may include model/, quantity/, text/, vocabulary/
// and extractors/parameters/, whose rules for intervals, grades and names it uses.
#pragma once

#include <span>
#include <vector>

#include "extractors/corrections/correction_file.h"
#include "model/datasheet.h"
#include "model/result.h"
#include "vocabulary/vocabulary.h"

namespace standin::corrections {

// How a row is found: an entry's texts are held against the rows of its page, read
// so or already as the entry wants them. Where no row has all of them, the one
// that stands at the entry's box is taken. None or several: nothing is changed.
//
// Every field of every entry leaves a model::Correction in the document that its
// hash names; entries for no document at hand leave a warning in the first sheet.
// A sheet that was corrected before (read again from JSON) stays as it is.
//
// Error (Usage): two entries that put one field right in two ways.
[[nodiscard]] model::Result<void> applyCorrections(std::span<Entry const> entries, std::span<model::Datasheet> sheets, vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::corrections
