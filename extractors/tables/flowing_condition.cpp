// One text is told by its punctuation and by what it is about. Tested by
// tests/extractors/tables/rows_test.cpp.
#include "extractors/tables/flowing_condition.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>

#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::PageLayout;

namespace {

constexpr int kMostFlowing = 6;  // rows that one condition goes on beside

// What the relations of a condition are about: "VDD" and "RD" in "VDD = 50 V; RD = 2 Ω".
void addSubjects(std::string const& text, std::vector<std::string>& subjects) {
    for (std::string_view sign : {"=", "≤", "≥", "<", ">"}) {
        for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign, at + 1)) {
            std::size_t const end = at == 0 ? std::string::npos : text.find_last_not_of(' ', at - 1);
            if (end == std::string::npos) continue;
            std::size_t const before = text.find_last_of(" ;,(", end);
            std::size_t const begin = before == std::string::npos ? 0 : before + 1;
            subjects.push_back(text.substr(begin, end + 1 - begin));
        }
    }
}

// The units of the rows, a text each.
std::vector<std::string> unitsOf(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int rows) {
    std::vector<std::string> units(static_cast<std::size_t>(rows));
    for (auto const* p : pieces) {
        if (columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Unit) continue;
        for (int row = std::max(p->row0, 0); row <= std::min(p->row1, rows - 1); ++row) units[static_cast<std::size_t>(row)] += textOf(page, p->piece);
    }
    return units;
}

// The last line in front of the row stops at a comma.
bool stopsBefore(PageLayout const& page, std::vector<PlacedPiece*> const& conditions, int row) {
    PlacedPiece const* last = nullptr;
    for (auto const* p : conditions) last = p->row0 == row - 1 ? p : last;
    return last != nullptr && stopsAtComma(textOf(page, last->piece));
}

// The lines are one text: the first stops at a comma, and so does each in front of a line that states something;
// one stands beside each row from the first on, and nothing is stated twice. `own`: from top to bottom.
bool flows(PageLayout const& page, std::vector<PlacedPiece*> const& own) {
    std::vector<std::string> subjects;
    for (std::size_t i = 0; i < own.size(); ++i) {
        if (own[i]->row0 != own[i]->row1) return false;
        std::size_t const known = subjects.size();
        addSubjects(textOf(page, own[i]->piece), subjects);
        if (i == 0 || own[i]->row0 == own[i - 1]->row0) continue;
        bool const stops = stopsAtComma(textOf(page, own[i - 1]->piece));
        bool const first = own[i - 1]->row0 == own[0]->row0;
        if (own[i]->row0 > own[i - 1]->row0 + 1 || (!stops && (first || subjects.size() > known))) return false;
    }
    std::sort(subjects.begin(), subjects.end());
    return subjects.size() > 1 && std::adjacent_find(subjects.begin(), subjects.end()) == subjects.end();
}

}  // namespace

bool eachIsNamed(std::vector<PlacedPiece*> const& pieces, int rows) {
    std::vector<char> named(static_cast<std::size_t>(rows), 0);
    for (auto const* p : pieces) {
        if (p->column0 == 0 && p->row0 >= 0 && p->row0 < rows) named[static_cast<std::size_t>(p->row0)] = 1;
    }
    return std::all_of(named.begin(), named.end(), [](char n) { return n != 0; });
}

void spreadFlowingCondition(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int rows) {
    if (rows < 2 || !eachIsNamed(pieces, rows)) return;
    std::vector<PlacedPiece*> conditions;
    for (auto* p : pieces) {
        if (columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Conditions) continue;
        if (p->column0 != p->column1 || (!conditions.empty() && p->column0 != conditions[0]->column0)) return;
        conditions.push_back(p);
    }
    std::sort(conditions.begin(), conditions.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    auto const units = unitsOf(page, pieces, columns, rows);
    for (int first = 0, end = 0; first < rows; first = end) {
        auto const goesOn = [&](int row) { return units[static_cast<std::size_t>(row)] == units[static_cast<std::size_t>(row) - 1] || stopsBefore(page, conditions, row); };
        end = first + 1;
        while (end < rows && goesOn(end)) ++end;
        std::vector<PlacedPiece*> own;
        std::copy_if(conditions.begin(), conditions.end(), std::back_inserter(own), [&](auto* p) { return p->row0 >= first && p->row0 < end; });
        bool const more = !own.empty() && own.front()->row0 == first && own.back()->row0 > first;
        if (end - first > kMostFlowing || !more || !flows(page, own)) continue;
        for (auto* p : own) {
            p->row0 = first;
            p->row1 = end - 1;
        }
    }
}

}  // namespace standin::tables
