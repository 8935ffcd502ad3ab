// Invented sheets with a revision history, and the words that histories are written in.
#pragma once

#include <string>
#include <vector>

#include "support/datasheet_builder.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare::testing {

inline vocabulary::HistoryWords const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary.historyWords();
}

inline support::SheetBuilder sheetOf(std::string const& part) {
    support::SheetBuilder sheet(part);
    sheet.sentence("The lamp is lit while the beam is broken.").sentence("A green case protects it from rain and snow.");
    return sheet;
}

inline support::SheetBuilder sheetWith(std::vector<std::vector<std::string>> const& rows) {
    support::SheetBuilder sheet = sheetOf("QX17");
    sheet.section(model::SectionKind::Revision, "Revision history");
    sheet.table(model::TableKind::Revision, rows);
    return sheet;
}

}  // namespace standin::compare::testing
