// What a sheet tells of its own changes.
//
//     auto const entries = readHistory(sheet, vocabulary.historyWords());
//     // "C | 2022-03-30 | Drain current 32 A (was 40 A). Spelling."
//     //   -> {C: "Drain current 32 A (was 40 A).", "Spelling."}
#pragma once

#include <string>
#include <vector>

#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

// One thing that the history says was changed.
struct HistoryStatement {
    std::string text;  // as printed, without dot leaders and page
    int page = 0;      // where the history says it stands; 0: it does not say
    model::Place place;
};

// One revision.
struct HistoryEntry {
    std::string revision;  // "C", "1.4", as printed; empty: none
    std::string earlier;   // of "Changes from Revision B to Revision C"; empty: not said
    int date = 0;          // 20220330; 20220300 without a day; 0: none printed
    std::vector<HistoryStatement> statements;
    model::Place place;
};

// In the order in which the sheet prints them; empty where it has no history.
[[nodiscard]] std::vector<HistoryEntry> readHistory(model::Datasheet const& sheet, vocabulary::HistoryWords const& words);

// Of both sheets; the words are made ready once.
struct Histories {
    std::vector<HistoryEntry> reference, candidate;
};
[[nodiscard]] Histories readHistories(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::HistoryWords const& words);

}  // namespace standin::compare
