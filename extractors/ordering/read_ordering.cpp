// The grid is opened out (a merged cell counts for every place it covers), each
// column gets its title, and the column of the codes is found by its title or by
// its content. A table whose columns are all codes (one package a column) gives
// a line for each code. Tested by tests/extractors/ordering/read_ordering_test.cpp.
#include "extractors/ordering/read_ordering.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include <fmt/format.h>

#include "text/script.h"
#include "text/utf8.h"

namespace standin::ordering {

namespace {

constexpr int kMostPlaces = 200'000;  // rows × columns of a table that is read

struct Grid {
    int rows = 0;
    int columns = 0;
    std::vector<int> cells;  // index into Table::cells, or -1
    [[nodiscard]] int at(int row, int column) const { return cells[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(column)]; }
};

Grid openedOut(model::Table const& table) {
    Grid grid{table.rows, table.columns, {}};
    if (table.rows <= 0 || table.columns <= 0 || table.rows > kMostPlaces / table.columns) return {};
    grid.cells.assign(static_cast<std::size_t>(table.rows) * static_cast<std::size_t>(table.columns), -1);
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        auto const& cell = table.cells[i];
        for (int row = std::max(0, cell.row); row < std::min(table.rows, cell.row + cell.rowSpan); ++row) {
            for (int column = std::max(0, cell.column); column < std::min(table.columns, cell.column + cell.columnSpan); ++column) {
                grid.cells[static_cast<std::size_t>(row) * static_cast<std::size_t>(table.columns) + static_cast<std::size_t>(column)] = static_cast<int>(i);
            }
        }
    }
    return grid;
}

// A cell's text where its line breaks don't show: "Over- discharge" and ideographs
// parted by a blank are closed.
std::string tidied(std::string_view cell) {
    std::string out;
    out.reserve(cell.size());
    for (std::size_t at = 0; at < cell.size(); ++at) {
        if (cell[at] == ' ' && at > 0 && at + 1 < cell.size()) {
            std::size_t before = at;
            std::size_t behind = at + 1;
            bool const hyphen = cell[at - 1] == '-' && at > 1 && text::isAsciiLower(cell[at - 2]) && text::isAsciiLower(cell[at + 1]);
            if (hyphen || (text::isCjk(text::decodePrevious(cell, before)) && text::isCjk(text::decodeNext(cell, behind)))) continue;
        }
        out += cell[at];
    }
    return out;
}

// The head's lines of each column, joined; a title merged over several columns
// stands in front of each. Titles that repeat are numbered.
std::vector<std::string> titlesOf(model::Table const& table, Grid const& grid) {
    std::vector<std::string> titles(static_cast<std::size_t>(std::max(0, table.columns)));
    for (int column = 0; column < grid.columns; ++column) {
        int last = -1;
        for (int row = 0; row < std::min(table.headRows, grid.rows); ++row) {
            int const index = grid.at(row, column);
            if (index < 0 || index == last) continue;
            last = index;
            auto const text = tidied(table.cells[static_cast<std::size_t>(index)].text);
            auto& title = titles[static_cast<std::size_t>(column)];
            if (!title.empty() && !text.empty()) title += ' ';
            title += text;
        }
    }
    return titles;
}

void numberRepeated(std::vector<std::string>& titles) {
    auto const printed = titles;
    for (std::size_t i = 0; i < titles.size(); ++i) {
        if (printed[i].empty()) {
            titles[i] = fmt::format("column {}", i + 1);
            continue;
        }
        auto const before = std::count(printed.begin(), printed.begin() + static_cast<std::ptrdiff_t>(i), printed[i]);
        if (before > 0) titles[i] = fmt::format("{} ({})", printed[i], before + 1);
    }
}

bool saysCode(std::string_view title) {
    auto const lower = text::asciiLower(title);
    constexpr std::array<std::string_view, 24> kWords{"part n",  "part-n", "order",  "device", "product", "type n",   "model", "orderable", "part",  "type",  "item name", "型号",
                                                     "料号",    "订购",   "订货",   "产品名", "品名",    "製品名", "型番",  "型名",      "bestell", "typ", "обозначение", "тип"};
    return std::any_of(kWords.begin(), kWords.end(), [&lower](auto word) { return lower.find(word) != std::string::npos; });
}

bool saysOther(std::string_view title) {
    auto const lower = text::asciiLower(title);
    constexpr std::array<std::string_view, 14> kWords{"package", "marking", "temperature", "voltage", "packing", "quantity", "封装", "丝印", "打标", "description", "status", "delay", "current", "包装"};
    return std::any_of(kWords.begin(), kWords.end(), [&lower](auto word) { return lower.find(word) != std::string::npos; });
}

// Letters and digits in one word, in capitals mostly: "NX41-33T", "XQ104A(TR)".
bool looksLikeCode(std::string_view words) {
    auto code = words.substr(0, words.find(' '));
    if (code.size() < 4 || code.size() > 40) return false;
    int letters = 0;
    int digits = 0;
    for (char const c : code) {
        if (text::isAsciiUpper(c)) ++letters;
        else if (text::isAsciiDigit(c)) ++digits;
        else if (!text::isAsciiLower(c) && std::string_view("-/()+.#_,*").find(c) == std::string_view::npos) return false;
    }
    return letters >= 1 && digits >= 1 && letters + digits >= 4 && text::isAsciiUpper(code.front()) + text::isAsciiDigit(code.front()) > 0;
}

struct Content {
    int filled = 0;
    int codes = 0;
    int different = 0;
};

Content contentOf(model::Table const& table, Grid const& grid, int column) {
    Content content;
    std::vector<std::string_view> seen;
    int last = -1;
    for (int row = table.headRows; row < grid.rows; ++row) {
        int const index = grid.at(row, column);
        if (index < 0 || index == last) continue;
        last = index;
        auto const& text = table.cells[static_cast<std::size_t>(index)].text;
        if (text.empty()) continue;
        ++content.filled;
        if (looksLikeCode(text)) ++content.codes;
        seen.push_back(text);
    }
    std::sort(seen.begin(), seen.end());
    content.different = static_cast<int>(std::unique(seen.begin(), seen.end()) - seen.begin());
    return content;
}

struct Columns {
    std::vector<std::string> titles;
    std::vector<int> codes;  // usually one
};

Columns columnsOf(model::Table const& table, Grid const& grid) {
    Columns columns;
    columns.titles = titlesOf(table, grid);
    std::vector<int> byContent;
    int best = -1;
    double bestScore = 0;
    for (int column = 0; column < grid.columns; ++column) {
        auto const content = contentOf(table, grid, column);
        if (content.filled == 0) continue;
        bool const mostlyCodes = content.codes * 10 >= content.filled * 6;
        auto const& title = columns.titles[static_cast<std::size_t>(column)];
        if (mostlyCodes && !saysOther(title)) byContent.push_back(column);
        double const score = (saysCode(title) && !saysOther(title) ? 3.0 : 0.0) + (mostlyCodes ? 1.0 : 0.0) + static_cast<double>(content.different) / content.filled - column * 0.01;
        if ((saysCode(title) || mostlyCodes) && score > bestScore) {
            bestScore = score;
            best = column;
        }
    }
    // Codes in several columns whose titles don't say "part number": one package,
    // one grade … a column.
    auto const titled = std::count_if(byContent.begin(), byContent.end(), [&columns](int column) { return saysCode(columns.titles[static_cast<std::size_t>(column)]); });
    if (byContent.size() > 1 && titled == 0) columns.codes = byContent;
    else if (best >= 0) columns.codes = {best};
    else if (grid.columns > 0 && (table.headRows > 0 || contentOf(table, grid, 0).codes > 0)) columns.codes = {0};
    numberRepeated(columns.titles);
    return columns;
}

model::Rect boxOfRow(model::Table const& table, Grid const& grid, int row) {
    model::Rect box;
    for (int column = 0; column < grid.columns; ++column) {
        int const index = grid.at(row, column);
        if (index < 0) continue;
        auto const& cell = table.cells[static_cast<std::size_t>(index)];
        if (cell.rowSpan == 1) box = model::united(box, cell.box);
    }
    return box;
}

void addLines(std::vector<model::OrderingLine>& lines, model::Table const& table, Grid const& grid, Columns const& columns) {
    for (int row = std::max(0, table.headRows); row < grid.rows; ++row) {
        for (int const codeColumn : columns.codes) {
            int const codeIndex = codeColumn < grid.columns ? grid.at(row, codeColumn) : -1;
            if (codeIndex < 0) continue;
            auto const& codeCell = table.cells[static_cast<std::size_t>(codeIndex)];
            if (codeCell.text.empty()) continue;
            if (codeCell.columnSpan >= grid.columns && grid.columns > 1) continue;  // a heading line inside the table
            model::OrderingLine line{codeCell.text, {}, table.id, table.page, boxOfRow(table, grid, row)};
            if (line.box.empty()) line.box = codeCell.box;
            for (int column = 0; column < grid.columns; ++column) {
                if (std::find(columns.codes.begin(), columns.codes.end(), column) != columns.codes.end()) continue;
                int const index = grid.at(row, column);
                if (index < 0 || table.cells[static_cast<std::size_t>(index)].text.empty()) continue;
                line.attributes.emplace_back(columns.titles[static_cast<std::size_t>(column)], tidied(table.cells[static_cast<std::size_t>(index)].text));
            }
            if (columns.codes.size() > 1) line.attributes.emplace_back("column", columns.titles[static_cast<std::size_t>(codeColumn)]);
            lines.push_back(std::move(line));
        }
    }
}

}  // namespace

std::vector<model::OrderingLine> readOrdering(std::span<model::Table const> tables) {
    std::vector<model::OrderingLine> lines;
    Columns before;  // of the table that the next one may go on from
    std::string beforeId;
    for (auto const& table : tables) {
        if (table.kind != model::TableKind::Ordering) continue;
        auto const grid = openedOut(table);
        if (grid.rows == 0) continue;
        bool const goesOn = table.headRows == 0 && !table.continues.empty() && table.continues == beforeId && before.titles.size() == static_cast<std::size_t>(grid.columns);
        auto columns = goesOn ? before : columnsOf(table, grid);
        addLines(lines, table, grid, columns);
        before = std::move(columns);
        beforeId = table.id;
    }
    return lines;
}

}  // namespace standin::ordering
