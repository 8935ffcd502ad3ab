#include "extractors/parameters/row_reader.h"

// What stands in name cells beside the name: conditions in lines of their own,
// the first of several cases, the part that a line is for; and names wrapped
// beside lines of values. Tested by tests/extractors/parameters/row_names_test.cpp.

#include <algorithm>
#include <cmath>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"

namespace standin::parameters {

using enum ColumnRole;

namespace {

constexpr float kTightPitch = 1.45F;  // font heights between the lines of one name

bool startsLower(std::string const& text) {
    std::u32string const codes = decoded(text);
    if (codes.empty()) return false;
    return (codes[0] >= U'a' && codes[0] <= U'z') || (codes[0] >= U'\u0430' && codes[0] <= U'\u044F');
}

std::string firstWord(std::string const& text) { return text.substr(0, text.find(' ')); }

// A line below a condition that only goes on from it.
bool goesOnFrom(std::string const& above, std::string const& line) {
    if (hasRelation(line) || above.ends_with(",") || above.ends_with(";") || folded(above).ends_with(" to")) return true;
    return !line.empty() && (line.front() == '(' || (line.front() >= '0' && line.front() <= '9'));
}

// The first line of the cell that states a condition, with nothing but conditions from there on; npos: none.
std::size_t conditionLine(CellText const& cell) {
    for (std::size_t k = 1; k < cell.lines.size(); ++k) {
        if (!startsWithCondition(cell.lines[k].text)) continue;
        for (std::size_t i = k + 1; i < cell.lines.size(); ++i) {
            if (!goesOnFrom(cell.lines[i - 1].text, cell.lines[i].text)) return std::string::npos;
        }
        return k;
    }
    return std::string::npos;
}

std::string cleaned(std::string const& line) {
    std::vector<std::string> marks;
    return withoutReferences(line, marks);
}

}  // namespace

// The row's name is a further line of the name above it: "Drain-source on-state | 4 mΩ" above "resistance | 9 mΩ".
bool RowReader::continuesName(int row) const {
    RowCells const above = printedCells(row - 1);
    RowCells const now = printedCells(row);
    if (now.names.size() != 1 || above.names.size() != 1) return false;
    model::Cell const& line = cellOf(now.names[0]);
    model::Cell const& before = cellOf(above.names[0]);
    if (line.row != row || line.rowSpan != 1 || before.row + before.rowSpan != row || line.column != before.column || line.columnSpan != 1) return false;
    if (!hasValues(row, now) || !hasValues(row - 1, above)) return false;
    CellText const& words = textOf(now.names[0]);
    CellText const& wordsAbove = textOf(above.names[0]);
    std::string const& text = words.text;
    if (isConditionLike(text) || isPartLike(text) || isPackageLike(withoutBrackets(text)) || !hasOrdinaryWord(wordsAbove.text)) return false;
    if (std::abs(words.left - wordsAbove.left) > indentOf(now)) return false;
    auto unitAt = [&](RowCells const& cells) { return cells.units.empty() ? -1 : cells.units.front(); };
    int const unit = unitAt(now);
    int const unitAbove = unitAt(above);
    bool const sameUnit = unit < 0 || unitAbove < 0 || unit == unitAbove || textOf(unit).text == textOf(unitAbove).text;
    if (!sameUnit) return false;
    bool const ownSymbol = std::ranges::any_of(now.symbols, [&](int index) { return cellOf(index).row == row; });
    if (ownSymbol) return false;
    // "on-resistance," above a symbol alone
    if (!m_plan.has(Symbol) && wordsAbove.text.ends_with(",") && isStrongSymbol(text)) return true;
    if (startsLower(text)) return m_plan.has(Symbol) ? !above.symbols.empty() || m_wrapFirst[static_cast<std::size_t>(row) - 1] >= 0 : !startsLower(wordsAbove.text);
    if (!m_plan.has(Symbol) || !m_symbolsUsual || firstWord(text) == firstWord(wordsAbove.text)) return false;
    bool const shared = !now.symbols.empty() && unit >= 0 && unit == unitAbove;
    bool const tight =
        !words.lines.empty() && !wordsAbove.lines.empty() && words.size > 0 && words.lines.front().baseline - wordsAbove.lines.back().baseline <= kTightPitch * words.size;
    bool const follows = !above.symbols.empty() || m_wrapFirst[static_cast<std::size_t>(row) - 1] >= 0;
    return shared || (tight && follows && now.symbols.empty());
}

void RowReader::findWrappedNames() {
    m_wrapFirst.assign(static_cast<std::size_t>(std::max(m_table.rows, 0)), -1);
    m_wrapLast = m_wrapFirst;
    if (m_plan.transposed) return;
    int named = 0;
    int withSymbol = 0;
    for (int row = m_segment.bodyFirst; row < m_segment.bodyEnd; ++row) {
        RowCells const cells = printedCells(row);
        if (cells.names.empty() || !hasValues(row, cells)) continue;
        ++named;
        withSymbol += cells.symbols.empty() ? 0 : 1;
    }
    m_symbolsUsual = withSymbol * 10 >= named * 7;
    for (int row = m_segment.bodyFirst + 1; row < m_segment.bodyEnd; ++row) {
        if (!continuesName(row)) continue;
        int const first = m_wrapFirst[static_cast<std::size_t>(row) - 1] >= 0 ? m_wrapFirst[static_cast<std::size_t>(row) - 1] : row - 1;
        for (int r = first; r <= row; ++r) {
            m_wrapFirst[static_cast<std::size_t>(r)] = first;
            m_wrapLast[static_cast<std::size_t>(r)] = row;
        }
    }
}

// Name of the row below where that is a mere case of this one ("TA = 70 °C"), else empty.
std::string RowReader::caseBelow(int row) const {
    if (row + 1 >= m_segment.bodyEnd) return {};
    RowCells const below = cellsOf(row + 1);
    if (below.names.empty() || cellOf(below.names.front()).row != row + 1 || !hasValues(row + 1, below)) return {};
    if (std::ranges::any_of(below.symbols, [&](int index) { return cellOf(index).row == row + 1; })) return {};
    std::string const& text = textOf(below.names.front()).text;
    return startsWithCondition(text) ? text : std::string{};
}

// Parts the words of a name from the conditions behind or below them. Where the
// last line is the first of several cases, what stands before it holds for all.
std::string RowReader::splitName(int row, RowCells const& cells, std::string& name) {
    std::string lines;
    std::string last;
    if (cells.names.size() == 1) {
        CellText const& cell = textOf(cells.names[0]);
        std::size_t const k = cell.text == name ? conditionLine(cell) : std::string::npos;
        std::size_t const at = k == std::string::npos ? k : name.find(cleaned(cell.lines[k].text));
        if (at != std::string::npos && at > 0) {
            lines = withoutBrackets(std::string_view(name).substr(at));
            name = trimmed(std::string_view(name).substr(0, at));
            last = withoutBrackets(cleaned(cell.lines.back().text));
        }
    }
    std::string const behind = takeCondition(name);
    std::string const below = lines.empty() ? std::string{} : caseBelow(row);
    bool const severalCases = !below.empty() && lines.ends_with(last) && startsWithCondition(last) && contains(below, subjectOf(last));
    if (!severalCases) {
        m_nameCondition = joined(behind, lines);
        return m_nameCondition;
    }
    std::string shared = joined(behind, trimmed(std::string_view(lines).substr(0, lines.size() - last.size())));
    while (shared.ends_with(",") || shared.ends_with(";")) shared.pop_back();
    if (!shared.empty()) m_context.parameterCondition = shared;
    m_nameCondition.clear();
    return last;
}

// "TA = 25 °C" / "VO = 5 V" in one cell above "VO = 9 V" in the next row: what
// stands before the line that the next row varies holds for both. Empty: nothing.
std::string RowReader::takeSharedCondition(int row, RowCells const& cells) const {
    if (cells.conditions.size() != 1 || row + 1 >= m_segment.bodyEnd) return {};
    CellText const& cell = textOf(cells.conditions[0]);
    if (cell.lines.size() < 2 || cellOf(cells.conditions[0]).row != row || cellOf(cells.conditions[0]).rowSpan != 1) return {};
    RowCells const below = cellsOf(row + 1);
    if (below.conditions.size() != 1 || cellOf(below.conditions[0]).row != row + 1 || !hasValues(row + 1, below)) return {};
    bool const sameName = below.names.empty() || below.names == cells.names;
    bool const sameSymbol = below.symbols.empty() || below.symbols == cells.symbols;
    if (!sameName || !sameSymbol) return {};
    std::string const last = cleaned(cell.lines.back().text);
    std::string const varied = subjectOf(last);
    if (varied.empty() || subjectOf(textOf(below.conditions[0]).text) != varied || !cell.text.ends_with(last)) return {};
    std::string shared = trimmed(std::string_view(cell.text).substr(0, cell.text.size() - last.size()));
    if (subjectOf(shared).empty() || subjectOf(shared) == varied) return {};
    while (shared.ends_with(",") || shared.ends_with(";")) shared.pop_back();
    return shared;
}

// "Output current, IOL Min.": which limit a line states, behind its symbol.
std::optional<Slot> RowReader::takeLimit(std::string& name) {
    std::size_t const space = name.rfind(' ');
    if (space == std::string::npos || space == 0) return std::nullopt;
    std::string const last = folded(std::string_view(name).substr(space + 1));
    std::string const front = trimmed(std::string_view(name).substr(0, space));
    std::size_t const before = front.rfind(' ');
    if (before == std::string::npos || !isStrongSymbol(std::string_view(front).substr(before + 1))) return std::nullopt;
    std::optional<Slot> limit;
    if (last == "min" || last == "min.") limit = Slot::Min;
    if (last == "typ" || last == "typ.") limit = Slot::Typ;
    if (last == "max" || last == "max.") limit = Slot::Max;
    if (limit) name = front;
    return limit;
}

// "(25 °C)" and "(100 mA)" are conditions; a letter in round brackets may be a level or a
// case ("(H)", "(K)"), and is a unit only where it is one that columns are headed with.
bool mayBeBracketedUnit(std::string const& unit, char bracket) {
    constexpr std::string_view kLoneUnits = "VAW";
    bool const value = unit.find_first_of("0123456789") != std::string::npos && !unit.starts_with("10⁻");
    if (!isUnitLike(unit) || unit == "1" || value) return false;
    if (bracket == '[') return true;
    return !isStrongSymbol(unit) && (unit.size() > 1 || kLoneUnits.find(unit.front()) != std::string_view::npos);
}

// "Output voltage, V" and "Output voltage [V]": a unit behind the name, where no column holds units.
std::string RowReader::takeNameUnit(std::string& name) const {
    if (m_plan.has(Unit)) return {};
    std::size_t const open = name.find_last_of("([");
    if (open != std::string::npos && open > 1 && name[open - 1] == ' ' && (name.ends_with("]") || name.ends_with(")"))) {
        std::string unit = unitAsWritten(name.substr(open + 1, name.size() - open - 2));
        if (mayBeBracketedUnit(unit, name[open])) {
            name = trimmed(std::string_view(name).substr(0, open));
            return unit;
        }
    }
    std::size_t const comma = name.rfind(", ");
    if (comma == std::string::npos || comma == 0) return {};
    std::string unit = unitAsWritten(name.substr(comma + 2));
    if (!isUnitLike(unit) || unit == "1") return {};
    name.resize(comma);
    return unit;
}

// "Ambient temperature XX224" above lines "XX324", "XX2902": the first of several
// selecting lines may have run into the name.
void RowReader::takeTrailingChild(int row, std::string& name, std::string& variant, std::string& condition) const {
    if (row + 1 >= m_segment.bodyEnd || name.empty() || isPartLike(name)) return;
    RowCells const below = cellsOf(row + 1);
    if (below.names.empty() || cellOf(below.names.front()).row != row + 1 || !hasValues(row + 1, below)) return;
    std::string const next = withoutBrackets(textOf(below.names.front()).text);
    auto isCase = [](std::string const& text) { return folded(text).starts_with("case ") && isPackageLike(text); };
    bool const parts = isPartLike(next) && !isPackageLike(next);
    if (!parts && !isCase(next)) return;
    std::vector<std::string> const words = splitAtSpaces(name);
    for (std::size_t count = std::min<std::size_t>(words.size() - 1, 6); count >= 1; --count) {
        std::string tail;
        for (std::size_t i = words.size() - count; i < words.size(); ++i) tail = joined(tail, words[i]);
        bool const fits = parts ? isPartLike(tail) && !isPackageLike(tail) : isCase(tail);
        if (!fits) continue;
        if (parts) {
            variant = joined(variant, tail);
        } else {
            condition = joined(condition, tail);
        }
        name = trimmed(std::string_view(name).substr(0, name.size() - tail.size()));
        while (!name.empty() && name.back() == ',') name.pop_back();
        return;
    }
}

// "Thermal impedance, θJA: D package" above "P package" that starts where "D package"
// does: a heading, and the first of its cases. Gives where the cases start.
std::optional<model::Points> RowReader::splitAtChild(int row, RowCells const& cells, std::string& name) {
    if (m_page == nullptr || m_plan.has(Symbol) || m_table.evidence.ruledRows || cells.names.size() != 1 || cellOf(cells.names[0]).row != row || row + 1 >= m_segment.bodyEnd)
        return std::nullopt;
    RowCells const below = cellsOf(row + 1);
    if (below.names.size() != 1 || cellOf(below.names[0]).row != row + 1 || !hasValues(row + 1, below)) return std::nullopt;
    model::Points const left = textOf(below.names[0]).left;
    model::Points const indent = indentOf(cells);
    model::Cell const& cell = cellOf(cells.names[0]);
    if (left <= textOf(cells.names[0]).left + indent || !cell.lineStarts.empty()) return std::nullopt;
    std::string tail;
    for (std::uint32_t index : cell.words) {
        model::Word const& word = m_page->words[index];
        if (tail.empty() && std::abs(word.box.x0 - left) > indent / 2) continue;
        tail += (word.spaceBefore && !tail.empty() ? " " : "") + word.text;
    }
    tail = cleaned(tidied(tail));
    if (tail.empty() || isStrongSymbol(tail) || !name.ends_with(tail) || name.size() <= tail.size() + 1) return std::nullopt;
    std::string heading = trimmed(std::string_view(name).substr(0, name.size() - tail.size()));
    while (heading.ends_with(":") || heading.ends_with(",")) heading.pop_back();
    popHeadings(textOf(cells.names[0]).left, indent);
    bool const goesOn = heading.starts_with("(") && !m_context.headings.empty();
    if (goesOn) {
        m_context.headings.back().text = joined(m_context.headings.back().text, heading);
    } else {
        m_context.headings.push_back({textOf(cells.names[0]).left, heading});
    }
    name = tail;
    return left;
}

// "Power dissipation (PD)" over its cases: the symbol is theirs.
std::string RowReader::symbolOfHeading(std::string& carriedPrefix) const {
    if (m_plan.has(Symbol) || m_context.headings.empty()) return {};
    std::string const& heading = m_context.headings.back().text;
    std::string words = heading;
    if (symbolPlace(words) != SymbolPlace::BehindSet || !carriedPrefix.ends_with(heading)) return {};
    std::string const symbol = takeSymbol(words, SymbolPlace::BehindSet);
    carriedPrefix.replace(carriedPrefix.size() - heading.size(), heading.size(), words);
    return symbol;
}

// "Leakage current (VO = 50 V) All types": what stands behind a condition in
// brackets selects the part.
void RowReader::takeSelected(std::string& name, std::string& variant) {
    std::size_t const close = name.rfind(')');
    if (close == std::string::npos || close + 1 >= name.size()) return;
    std::size_t const open = name.find('(');
    std::string const tail = trimmed(std::string_view(name).substr(close + 1));
    if (open == std::string::npos || !hasRelation(name.substr(open, close - open)) || !isPartLike(tail)) return;
    variant = joined(variant, tail);
    name.resize(close + 1);
}

}  // namespace standin::parameters
