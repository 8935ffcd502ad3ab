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

bool namesALimit(std::string_view cell) {
    using T = vocabulary::ColumnTitle;
    std::string const lower = text::asciiLower(cell);
    T const title = vocabulary::columnTitleOf(vocabulary::columnTitleKey(std::string_view(lower).substr(0, lower.find_first_of(".,("))));
    return title == T::Min || title == T::Typ || title == T::Max || title == T::Value;
}

// "VCU", "tOC", "VOUT(REG)": short, and no plain word.
bool isSymbol(std::string_view cell) {
    constexpr std::size_t kLongest = 10;
    if (cell.empty() || cell.size() > kLongest || !text::isAsciiLetter(cell.front())) return false;
    bool const capital = std::any_of(cell.begin() + 1, cell.end(), text::isAsciiUpper);
    bool const small = std::any_of(cell.begin(), cell.end(), text::isAsciiLower);
    constexpr std::size_t kLongestInCapitals = 5;  // "MARKING" is a word
    return capital && (small || cell.size() <= kLongestInCapitals || cell.find('(') != std::string_view::npos);
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

bool saysWhatItsValuesAre(std::string_view cell) { return !unitOf(cell).empty() || isSymbol(cell); }

}  // namespace

bool differInColumns(std::string_view reference, std::string_view candidate) {
    auto before = cellsOf(reference);
    auto after = cellsOf(candidate);
    removeCommon(before, after);
    if (before.size() == after.size() || std::any_of(before.begin(), before.end(), namesALimit) || std::any_of(after.begin(), after.end(), namesALimit)) return false;
    return std::none_of(before.begin(), before.end(), saysWhatItsValuesAre) || std::none_of(after.begin(), after.end(), saysWhatItsValuesAre);
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
        return units && std::none_of(cells.begin(), cells.end(), [](std::string const& cell) { return text::isAsciiDigit(cell.front()) || cell.front() == '-' || cell.front() == '+'; });
    }
    return false;
}

}  // namespace standin::compare
