// A table goes on from the last table of the page before when their columns
// agree, and it repeats that table's head or has none.
// Tested by tests/extractors/tables/continued_test.cpp.
#include <algorithm>
#include <cmath>
#include <string>

#include "extractors/tables/find_tables.h"

#include "text/utf8.h"

namespace standin::tables {

using model::PageLayout;
using model::Table;

namespace {

constexpr float kAlignedShare = 0.03F;  // of the page's width: columns this near stand one below the other

constexpr float kTopPart = 0.35F;       // of the page's height: a continuation starts above
constexpr float kBottomPart = 0.6F;     // … and its beginning ends below

bool saysContinued(std::string const& text) {
    auto const lower = text::asciiLower(text);
    return lower.find("continued") != std::string::npos || lower.find("cont.") != std::string::npos || lower.find("cont'd") != std::string::npos ||
           lower.find("续") != std::string::npos || lower.find("続") != std::string::npos || lower.find("fortsetzung") != std::string::npos;
}

std::string headText(Table const& table) {
    std::string text;
    for (auto const& cell : table.cells) {
        if (cell.row < table.headRows) text += cell.text + '|';
    }
    return text;
}

}  // namespace

void joinContinued(std::vector<Table>& tables, std::span<PageLayout const> pages) {
    for (std::size_t i = 0; i < tables.size(); ++i) tables[i].id = "t" + std::to_string(i + 1);
    auto pageOf = [&](int number) -> PageLayout const* {
        auto const it = std::find_if(pages.begin(), pages.end(), [number](PageLayout const& p) { return p.page == number; });
        return it == pages.end() ? nullptr : &*it;
    };
    for (std::size_t i = 1; i < tables.size(); ++i) {
        auto& table = tables[i];
        auto const& before = tables[i - 1];
        table.continues.clear();
        bool const nextPage = table.page == before.page + 1;
        if (!nextPage) continue;
        auto const* page = pageOf(table.page);
        if (page == nullptr || page->width <= 0) continue;
        // A caption of its own, or a place in the middle of the page, starts another table.
        bool const says = saysContinued(table.caption) || saysContinued(table.lead);
        if (!says && !table.caption.empty() && table.caption != before.caption) continue;
        auto const* pageBefore = pageOf(before.page);
        if (!says && (table.box.y0 > kTopPart * page->height || (pageBefore != nullptr && before.box.y1 < kBottomPart * pageBefore->height))) continue;
        // The widths agree, and so does the number of columns (a column blank on one page may be missing).
        float const near = kAlignedShare * page->width;
        if (std::abs(table.box.x0 - before.box.x0) > near * 2 || std::abs(table.box.x1 - before.box.x1) > near * 2) continue;
        if (table.headRows > 0) {
            if (headText(table) != headText(before)) continue;
            table.continues = before.id;
        } else if (table.columns == before.columns) {
            table.continues = before.id;
        }
    }
}

}  // namespace standin::tables
