// One text is told by its punctuation and by what it is about. Tested by
// tests/extractors/tables/rows_test.cpp.
#include "extractors/tables/flowing_condition.h"

#include <algorithm>
#include <string>
#include <string_view>

#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"

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

// Every row begins with a symbol or name of its own.
bool eachIsNamed(std::vector<PlacedPiece*> const& pieces, int rows) {
    std::vector<char> named(static_cast<std::size_t>(rows), 0);
    for (auto const* p : pieces) {
        if (p->column0 == 0 && p->row0 >= 0 && p->row0 < rows) named[static_cast<std::size_t>(p->row0)] = 1;
    }
    return std::all_of(named.begin(), named.end(), [](char n) { return n != 0; });
}

}  // namespace

void spreadFlowingCondition(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, int rows) {
    if (rows < 2 || rows > kMostFlowing || !eachIsNamed(pieces, rows)) return;
    std::vector<PlacedPiece*> own;
    int column = -1;
    for (auto* p : pieces) {
        if (columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Conditions) continue;
        if (p->column0 != p->column1 || (column >= 0 && p->column0 != column)) return;
        column = p->column0;
        own.push_back(p);
    }
    if (own.size() < 2) return;
    std::sort(own.begin(), own.end(), [](auto* a, auto* b) { return a->piece.baseline < b->piece.baseline; });
    auto const second = std::find_if(own.begin(), own.end(), [](auto* p) { return p->row0 != 0; });
    if (second == own.begin() || second == own.end() || (*second)->row0 != 1) return;
    auto const first = textOf(page, (*(second - 1))->piece);
    if (!first.ends_with(',') && !first.ends_with(';')) return;
    std::vector<std::string> subjects;
    for (std::size_t i = 0; i < own.size(); ++i) {
        if (own[i]->row0 != own[i]->row1 || (i > 0 && own[i]->row0 > own[i - 1]->row0 + 1)) return;
        addSubjects(textOf(page, own[i]->piece), subjects);
    }
    std::sort(subjects.begin(), subjects.end());
    if (subjects.size() < 2 || std::adjacent_find(subjects.begin(), subjects.end()) != subjects.end()) return;
    for (auto* p : own) {
        p->row0 = 0;
        p->row1 = rows - 1;
    }
}

}  // namespace standin::tables
