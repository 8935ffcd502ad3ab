// Finds the tables of a page and joins those that go on over pages.
//
// May include: src/model, src/vocabulary, src/quantity. No Poppler, no ICU.
//
// All evidence is used together: ruling lines (also where some are missing),
// white gaps over the whole table, known column titles, baselines of the
// values. What a Table means is said in model/table.h; in short:
//
//   a row      one printed line of values; a name or condition wrapped over
//              several printed lines is one cell of the row of its values
//   a span     a cell printed once for several rows or columns
//   a heading  inside the table is one cell over all columns
//
//     std::vector<model::Table> all;
//     for (auto const& page : pages)
//         for (auto& table : findTables(page)) all.push_back(std::move(table));
//     joinContinued(all, pages);
#pragma once

#include <span>
#include <vector>

#include "model/page_layout.h"
#include "model/table.h"

namespace standin::tables {

// All tables of one page, top to bottom (then left to right), never
// overlapping. Table::page is page.page, `id`, `continues`, `section` and
// `kind` are left for later stages. Words that are hidden or page furniture
// are in no cell. Never fails: a page without tables gives an empty vector.
// About linear in words and rules; drawings of thousands of rules are bounded.
[[nodiscard]] std::vector<model::Table> findTables(model::PageLayout const& page);

// Gives `tables` (document order) their ids "t1", "t2" … and sets `continues`
// where a table goes on from the last one of the page before: the same columns,
// the last of its page and the first of the next, a repeated head or none, or a
// caption that says so. A continuation without a head of its own takes over the
// column meaning of the table it continues: headRows stays 0 and readers follow
// `continues`. `pages` are the pages of the document, pages[i].page in order.
void joinContinued(std::vector<model::Table>& tables, std::span<model::PageLayout const> pages);

}  // namespace standin::tables
