// Prints the tables found on each page (or one page), one row a line with H where it
// is head; each cell as "column+2r+1c/3:text|": spans over two more rows and one more
// column, three printed lines.
//
//     dump_tables FILE [PAGE] [--time]
#include <chrono>
#include <cstring>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "extractors/layout/layout.h"
#include "extractors/poppler/document_reader.h"
#include "extractors/tables/find_tables.h"

namespace {

void dump(standin::model::Table const& table) {
    fmt::print("table {} page {} [{:.0f} {:.0f} {:.0f} {:.0f}] {} rows {} columns, head {}, confidence {:.2f}{}{}{}{}{}{}\n", table.id, table.page, table.box.x0, table.box.y0,
               table.box.x1, table.box.y1, table.rows, table.columns, table.headRows, table.confidence, table.evidence.ruledRows ? " ruled-rows" : "",
               table.evidence.ruledColumns ? " ruled-columns" : "", table.evidence.aligned ? " aligned" : "", table.evidence.headWords ? " head-words" : "",
               table.evidence.leaders ? " leaders" : "", table.continues.empty() ? "" : " continues " + table.continues);
    if (!table.caption.empty()) fmt::print("  caption: {}\n", table.caption);
    if (!table.lead.empty()) fmt::print("  lead: {}\n", table.lead);
    int row = -1;
    for (auto const& cell : table.cells) {
        if (cell.row != row) {
            fmt::print("{}  {:3}{} ", row < 0 ? "" : "\n", cell.row, cell.header ? "H" : " ");
            row = cell.row;
        }
        std::string span;
        if (cell.rowSpan > 1) span += fmt::format("+{}r", cell.rowSpan - 1);
        if (cell.columnSpan > 1) span += fmt::format("+{}c", cell.columnSpan - 1);
        fmt::print(" {}{}{}:{}|", cell.column, span, cell.lineStarts.empty() ? "" : fmt::format("/{}", cell.lineStarts.size() + 1), cell.text);
    }
    fmt::print("\n\n");
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        fmt::print(stderr, "usage: dump_tables FILE [PAGE] [--time]\n");
        return 2;
    }
    bool const timed = std::strcmp(argv[argc - 1], "--time") == 0;
    int only = 0;
    if (argc > 2 && argv[2][0] != '-') {
        for (char const* p = argv[2]; *p >= '0' && *p <= '9'; ++p) only = only * 10 + (*p - '0');
    }
    std::ifstream file(argv[1], std::ios::binary);
    std::vector<char> const raw{std::istreambuf_iterator<char>(file), {}};
    auto const* bytes = reinterpret_cast<std::byte const*>(raw.data());
    auto reader = standin::poppler::DocumentReader::open({bytes, raw.size()}, {});
    if (!reader) {
        fmt::print(stderr, "{}\n", reader.error().message);
        return 2;
    }
    std::vector<standin::model::PageLayout> pages;
    for (int number = 1; number <= reader->pageCount(); ++number) {
        auto content = reader->readPage(number);
        if (content) pages.push_back(standin::layout::layOut(*content));
    }
    std::vector<standin::model::Table> tables;
    using Clock = std::chrono::steady_clock;
    double milliseconds = 0;
    double slowest = 0;
    int slowestPage = 0;
    for (auto const& page : pages) {
        auto const start = Clock::now();
        auto found = standin::tables::findTables(page);
        double const spent = std::chrono::duration<double, std::milli>(Clock::now() - start).count();
        milliseconds += spent;
        if (spent > slowest) {
            slowest = spent;
            slowestPage = page.page;
        }
        for (auto& table : found) tables.push_back(std::move(table));
    }
    standin::tables::joinContinued(tables, pages);
    if (timed) {
        fmt::print("{} pages {} tables {:.2f} ms, {:.3f} ms a page, slowest page {} {:.3f} ms\n", pages.size(), tables.size(), milliseconds,
                   milliseconds / static_cast<double>(std::max<std::size_t>(pages.size(), 1)), slowestPage, slowest);
        return 0;
    }
    for (auto const& table : tables) {
        if (only == 0 || table.page == only) dump(table);
    }
    return 0;
}
