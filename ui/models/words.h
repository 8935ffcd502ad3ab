// The words of the desk for values of the comparison, translated.
//
//     severityWord(Severity::Hazard)       "hazard"
//     severityMark(Severity::Hazard)       "▲", for places that show text only
#pragma once

#include <QString>

#include "model/comparison.h"
#include "ui/models/decisions.h"
#include "ui/models/document_side.h"

namespace standin::ui {

[[nodiscard]] QString severityWord(model::Severity severity);
[[nodiscard]] QString severityMeaning(model::Severity severity);
// Told by shape as well as by word.
[[nodiscard]] QString severityMark(model::Severity severity);
[[nodiscard]] QString kindWord(model::FindingKind kind);
[[nodiscard]] QString relationWord(model::Relation relation);
[[nodiscard]] QString dispositionWord(Disposition disposition);
[[nodiscard]] QString sideWord(DocumentSide side);

// "TW4104", or the title or the file's name where no part number was read.
[[nodiscard]] QString partName(model::DocumentInfo const& document);
// "rev 1.4 · 11 pages"
[[nodiscard]] QString documentDetail(model::DocumentInfo const& document);
// An error as a person reads it: what is wrong, in which file, what to do.
[[nodiscard]] QString errorText(model::Error const& error);

}  // namespace standin::ui
