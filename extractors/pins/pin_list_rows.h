// The numbered entries of one printed line: "1. Adj 2. Output 3. Input",
// "1 3 Anode". Private to this folder.
#pragma once

#include <string>
#include <vector>

#include "model/page_layout.h"

namespace standin::pins {

struct ListEntry {
    int number = 0;
    std::string name;
    model::Rect box;
};

// Entries that stand together on one line.
struct ListRow {
    std::vector<ListEntry> entries;  // never empty
    bool bare = false;               // numbers without a sign behind them, all before one name
    bool saysPins = false;           // a word such as "Pins:" opened it
    model::Rect box;
};

// Of all lines of the page, in no order. Lists that stand side by side give a row
// each: a wide gap before a number parts them. Pieces of one line that layout kept
// apart (numbers in circles, set smaller) are read as one.
[[nodiscard]] std::vector<ListRow> listRowsOf(model::PageLayout const& page);

// "pin", "terminals", "引脚", "вывод" … alone, with or without a colon or dot.
[[nodiscard]] bool isPinWord(std::string_view word);

}  // namespace standin::pins
