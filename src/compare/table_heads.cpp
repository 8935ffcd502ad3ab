// Tested by tests/src/compare/table_heads_test.cpp.
#include "compare/table_heads.h"

#include <algorithm>
#include <string>
#include <vector>

#include "compare/text_keys.h"
#include "quantity/unit.h"
#include "text/fold.h"
#include "text/utf8.h"
#include "vocabulary/column_titles.h"

namespace standin::compare {

namespace {

constexpr std::string_view kJoint = " | ";

std::vector<std::string> cellsOf(std::string_view row) {
    std::vector<std::string> cells;
    while (true) {
        auto const at = row.find(kJoint);
        cells.push_back(spaceless(row.substr(0, at)));
        if (at == std::string_view::npos) return cells;
        row.remove_prefix(at + kJoint.size());
    }
}

// "V" of "VCU[V]" and of "V"; empty: none.
std::string_view unitOf(std::string_view cell) {
    if (quantity::parseUnit(cell)) return cell;
    if (cell.size() < 3 || (cell.back() != ')' && cell.back() != ']')) return {};
    std::size_t const open = cell.rfind(cell.back() == ')' ? '(' : '[');
    if (open == std::string_view::npos) return {};
    std::string_view const inside = cell.substr(open + 1, cell.size() - open - 2);
    return quantity::parseUnit(inside) ? inside : std::string_view();
}

vocabulary::ColumnTitle titleOf(std::string_view cell) {
    std::string const lower = text::asciiLower(cell);
    return vocabulary::columnTitleOf(vocabulary::columnTitleKey(std::string_view(lower).substr(0, lower.find_first_of(".,("))));
}

bool namesALimit(std::string_view cell) {
    using T = vocabulary::ColumnTitle;
    T const title = titleOf(cell);
    return title == T::Min || title == T::Typ || title == T::Max || title == T::Value;
}

// "SOT-23-6"
bool isCode(std::string_view cell) {
    bool const signs = std::all_of(cell.begin(), cell.end(), [](char c) { return c == '-' || text::isAsciiUpper(c) || text::isAsciiDigit(c); });
    return signs && !cell.empty() && text::isAsciiUpper(cell.front()) && cell.find('-') != std::string_view::npos && cell.find_first_of("0123456789") != std::string_view::npos;
}

// "Part", "Marking", "SOT-23-6": of the whole line, whatever its values are.
bool namesTheLine(std::string_view cell) {
    using T = vocabulary::ColumnTitle;
    T const title = titleOf(cell);
    return title == T::PartNumber || title == T::Type || title == T::Package || title == T::Marking || title == T::Name || title == T::Note || title == T::ItemNumber ||
           isCode(cell);
}

// "4.25", "±5", "TA=25°C"; not "SOT-23-6".
bool statesAValue(std::string_view cell) {
    auto const sign = std::find_if(cell.begin(), cell.end(), [](char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c); });
    bool const number = sign != cell.end() && text::isAsciiDigit(*sign);
    return number || (cell.find_first_of("=<>") != std::string_view::npos && cell.find_first_of("0123456789") != std::string_view::npos);
}

bool isPartOfWord(char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c); }

// "[VCU](V)" in "Detectionvoltage[VCU](V)".
bool holds(std::string_view cell, std::string_view part) {
    if (unitOf(part).empty() || part.size() == unitOf(part).size() || part.size() >= cell.size() || !cell.ends_with(part)) return false;
    return !isPartOfWord(part.front()) || !isPartOfWord(cell[cell.size() - part.size() - 1]);
}

// Takes away what is in both.
void removeCommon(std::vector<std::string>& reference, std::vector<std::string>& candidate) {
    auto const take = [&](auto const& meet) {
        std::erase_if(reference, [&](std::string const& cell) {
            auto const other = std::find_if(candidate.begin(), candidate.end(), [&](std::string const& one) { return meet(cell, one); });
            if (other == candidate.end()) return false;
            candidate.erase(other);
            return true;
        });
    };
    take([](std::string const& a, std::string const& b) { return a == b; });
    take([](std::string const& a, std::string const& b) { return holds(a, b) || holds(b, a); });
}

}  // namespace

bool differInColumns(std::string_view reference, std::string_view candidate) {
    auto before = cellsOf(reference);
    auto after = cellsOf(candidate);
    removeCommon(before, after);
    if (before.size() == after.size() || std::any_of(before.begin(), before.end(), namesALimit) || std::any_of(after.begin(), after.end(), namesALimit)) return false;
    // What the longer head has more may stand for a column of the other only where that is of the line.
    auto const& shorter = before.size() < after.size() ? before : after;
    return std::all_of(shorter.begin(), shorter.end(), namesTheLine);
}

bool namesColumns(PrintedRows const& rows, int index) {
    PrintedRow const& row = rows[index];
    if (row.head) return true;
    if (row.read || std::none_of(row.text.begin(), row.text.end(), text::isAsciiLetter)) return false;
    for (int above = index - 1; above >= 0 && rows[above].table == row.table; --above) {
        if (rows[above].read) return false;
        if (!rows[above].head) continue;
        auto const cells = cellsOf(row.text);
        bool const units = std::any_of(cells.begin(), cells.end(), [](std::string const& cell) { return !unitOf(cell).empty(); });
        return units && std::none_of(cells.begin(), cells.end(), statesAValue);
    }
    return false;
}

}  // namespace standin::compare
