// What differences that are no parameter mean: features, wording, tables, pins,
// packages, ordering lines, figures, sections, document lines, coverage.
#pragma once

#include <string>

#include "model/comparison.h"
#include "risk/levels.h"
#include "risk/sheet_view.h"

namespace standin::risk {

struct TextJudgement {
    Level level;
    model::Severity severity = model::Severity::Function;  // of what it is about, before the level limits it
    model::Judgement judgement = model::Judgement::Open;
    std::string caution;  // id, or empty
    std::string title;
    std::string explanation;
};

// For every kind but Parameter, Derived and Cell.
[[nodiscard]] TextJudgement judgeText(model::Finding const& finding, SheetView const& sheets);

// The level of a wording class by itself; `grave`: it is about something hazardous.
enum class Subject : std::uint8_t { Ordinary, Hazardous };
[[nodiscard]] int levelOfClass(model::WordingClass wordingClass, Subject subject);

}  // namespace standin::risk
