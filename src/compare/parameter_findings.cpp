// The relation of the values comes first where they cannot be compared at all;
// then conditions that differ; then the relation of the values.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/parameter_findings.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "compare/conditions.h"
#include "compare/relation.h"
#include "text/fold.h"
#include "text/utf8.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

namespace {

using model::ConditionRelation;
using model::FindingKind;
using model::Parameter;
using model::Relation;

std::string textOf(std::optional<model::Value> const& value) { return value ? value->text : std::string(); }

std::string joinedCondition(Parameter const& p) {
    if (p.condition.empty() || p.tableCondition.empty()) return p.condition + p.tableCondition;
    return p.condition + "; " + p.tableCondition;
}

std::string composedRow(Parameter const& p) {
    std::string row;
    for (std::string const& part : {p.name, p.symbol, p.condition, textOf(p.min), textOf(p.typ), textOf(p.max), p.unit}) {
        if (part.empty()) continue;
        if (!row.empty()) row += " | ";
        row += part;
    }
    return row;
}

model::Side sideOfParameter(Parameter const& p) {
    model::Side side = sideOf(p.page, p.box, p.printed.empty() ? composedRow(p) : p.printed);
    side.min = textOf(p.min);
    side.typ = textOf(p.typ);
    side.max = textOf(p.max);
    side.unit = p.unit;
    side.condition = joinedCondition(p);
    return side;
}

void addRowPlace(std::vector<model::Place>& places, PrintedRows const& rows, int parameter) {
    int const row = rows.ofParameter(parameter);
    if (row >= 0) places.push_back({rows[row].page, rows[row].box});
}

bool hasSingleLimit(Parameter const& p) { return p.interval && p.interval->lo.has_value() != p.interval->hi.has_value(); }

std::vector<std::string_view> spaced(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        auto const end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

Relation decided(Relation values, bool equal, ConditionRelation conditions) {
    if (values == Relation::UnitConflict || values == Relation::NotComparable) return values;
    if (conditions == ConditionRelation::Same) return values;
    if (conditions == ConditionRelation::OneUnstated) return equal ? Relation::ConditionsDiffer : values;
    return Relation::ConditionsDiffer;
}

class Findings {
public:
    Findings(SheetPair const& sheets, ConditionMemo& conditions) : m_sheets(sheets), m_conditions(conditions) {}

    ParameterFindings run(ParameterPairing const& pairing) {
        for (auto const& pair : pairing.pairs) comparePair(pair);
        for (int const i : pairing.onlyReference) addOnly(m_sheets.reference, m_sheets.referenceRows, i, Relation::OnlyReference);
        for (int const j : pairing.onlyCandidate) addOnly(m_sheets.candidate, m_sheets.candidateRows, j, Relation::OnlyCandidate);
        // The coverage findings name them; here each counts as a row that was not compared.
        if (m_sheets.options.referenceVariant.empty()) {
            for (int const i : pairing.otherVariantReference) addPairOfOne(m_sheets.reference, i, Relation::OnlyReference);
        }
        if (m_sheets.options.candidateVariant.empty()) {
            for (int const j : pairing.otherVariantCandidate) addPairOfOne(m_sheets.candidate, j, Relation::OnlyCandidate);
        }
        return std::move(m_result);
    }

private:
    void comparePair(ParameterPair const& pair) {
        Parameter const& r = m_sheets.reference.parameters[static_cast<std::size_t>(pair.reference)];
        Parameter const& c = m_sheets.candidate.parameters[static_cast<std::size_t>(pair.candidate)];
        auto const oneColumn = m_sheets.oneText() ? std::nullopt : inOneColumn(r, c, roleOf(r));
        Parameter const& left = oneColumn ? oneColumn->reference : r;
        Parameter const& right = oneColumn ? oneColumn->candidate : c;
        Relation values = relateValues(left, right, precisionFor(m_sheets, left, right));
        // Of two states of one text the row's name is compared as text.
        bool const apart = countApart(r.name, c.name) || spanApart(r, c);
        if (apart && !(m_sheets.oneText() && isEqual(values, left, right))) values = Relation::NotComparable;
        bool loadBound = false;
        ConditionRelation const conditions = relatedConditions(r, c, loadBound);
        bool const equal = isEqual(values, left, right);
        Relation const relation = decided(values, equal, conditions);
        int const pairIndex = static_cast<int>(m_result.pairs.size());
        m_result.pairs.push_back({r.canonical.empty() ? c.canonical : r.canonical, r.id, c.id, relation, model::Judgement::Open, pair.confidence});
        // The pair is equal, and the finding says what is printed otherwise.
        bool const same = isEqual(relation, left, right) && conditions == ConditionRelation::Same;
        bool const turned = same && !loadBound && differInDirection(r, c);
        bool const noteworthy = turned || (same && loadBound);
        if (isEqual(relation, left, right) && !noteworthy) {
            compareNames(pair, r, c);
            return;
        }
        Draft draft = makeDraft(FindingKind::Parameter, Rank::Parameter, noteworthy ? Relation::ConditionsDiffer : relation, sideOfParameter(r), sideOfParameter(c));
        auto& finding = draft.finding;
        finding.canonical = r.canonical.empty() ? c.canonical : r.canonical;
        finding.section = r.section;
        finding.variant = r.variant.empty() ? c.variant : r.variant;
        finding.conditions = turned ? ConditionRelation::OtherSign : noteworthy ? ConditionRelation::AtBound : conditions;
        finding.affects = {"r:" + r.id, "c:" + c.id};
        finding.pair = pairIndex;
        addRowPlace(draft.referencePlaces, m_sheets.referenceRows, pair.reference);
        addRowPlace(draft.candidatePlaces, m_sheets.candidateRows, pair.candidate);
        if (noteworthy) groupByLoad(draft, turned ? m_firstTurned : m_firstBound);
        else if (relation == Relation::ConditionsDiffer && equal) groupByCondition(draft, r, c);
        if (sameButForUnit(r, c)) groupByUnit(draft, r, c);
        m_result.drafts.push_back(std::move(draft));
    }

    [[nodiscard]] bool differInDirection(Parameter const& r, Parameter const& c) {
        return std::tie(r.condition, r.tableCondition) != std::tie(c.condition, c.tableCondition) &&
               compare::differInDirection(m_conditions.stated({r.condition, r.tableCondition}), m_conditions.stated({c.condition, c.tableCondition}));
    }

    [[nodiscard]] std::optional<vocabulary::Role> roleOf(Parameter const& p) const {
        auto const* entry = p.canonical.empty() ? nullptr : m_sheets.vocabulary.find(p.canonical);
        return entry == nullptr ? std::nullopt : std::optional(entry->role);
    }

    // `loadBound`: they are the same but for a load that is a bound in one of them, which says nothing else there.
    ConditionRelation relatedConditions(Parameter const& r, Parameter const& c, bool& loadBound) {
        ConditionRelation const asPrinted = relateConditions({r.condition, r.tableCondition}, {c.condition, c.tableCondition}, m_conditions);
        bool const ordered = asPrinted == ConditionRelation::Harsher || asPrinted == ConditionRelation::Milder || asPrinted == ConditionRelation::Unordered;
        if (!ordered || m_sheets.oneText()) return asPrinted;
        auto const* entry = r.canonical.empty() ? nullptr : m_sheets.vocabulary.find(r.canonical);
        if (entry == nullptr || !entry->worstAtFullLoad || r.canonical != c.canonical) return asPrinted;
        auto const& reference = m_conditions.stated({r.condition, r.tableCondition});
        auto const& candidate = m_conditions.stated({c.condition, c.tableCondition});
        loadBound = differInLoadBound(reference, candidate);
        return loadBound ? relateStated(reference, candidate, LoadBounds::AsFullLoad) : asPrinted;
    }

    // A sheet prints the loads of all its rows by one convention.
    void groupByLoad(Draft& draft, int& first) {
        int const index = static_cast<int>(m_result.drafts.size());
        if (first >= 0) draft.cause = first;
        else first = index;
    }

    // Equal values whose condition, or a part of it, is printed once for several rows.
    void groupByCondition(Draft& draft, Parameter const& r, Parameter const& c) {
        bool const own = relateConditions({r.condition, {}}, {c.condition, {}}, m_conditions) != ConditionRelation::Same;
        auto const [before, after] = changedPart(r.condition, c.condition);
        auto key = own ? std::make_tuple(r.table, c.table, before, after) : std::make_tuple(std::string(), std::string(), r.tableCondition, c.tableCondition);
        int const index = static_cast<int>(m_result.drafts.size());
        auto const [found, isNew] = m_firstOfCondition.emplace(std::move(key), index);
        if (!isNew) draft.cause = found->second;
    }

    static bool sameButForUnit(Parameter const& r, Parameter const& c) {
        return !r.table.empty() && r.unit != c.unit && textOf(r.min) == textOf(c.min) && textOf(r.typ) == textOf(c.typ) && textOf(r.max) == textOf(c.max) &&
               spaceless(r.condition) == spaceless(c.condition);
    }

    // A unit printed once for several rows, or for several values of one row.
    void groupByUnit(Draft& draft, Parameter const& r, Parameter const& c) {
        int const index = static_cast<int>(m_result.drafts.size());
        auto& last = m_lastOfUnit[{r.table, c.table, r.unit, c.unit}];
        // Rows in between that differ otherwise, or do not, end the common cell.
        if (last.first >= 0 && draft.finding.pair - last.second <= 1) draft.cause = last.first;
        if (draft.cause < 0) last.first = index;
        last.second = draft.finding.pair;
    }

    // Rows of lists outside of tables are seen by no other stage.
    void compareNames(ParameterPair const& pair, Parameter const& r, Parameter const& c) {
        if (!m_sheets.oneText() || m_sheets.referenceRows.ofParameter(pair.reference) >= 0 || m_sheets.candidateRows.ofParameter(pair.candidate) >= 0) return;
        if (spaceless(r.printed) == spaceless(c.printed)) return;
        Draft draft = makeDraft(FindingKind::Table, Rank::Table, Relation::Reworded, sideOfParameter(r), sideOfParameter(c));
        draft.finding.section = r.section;
        draft.finding.canonical = r.canonical;
        m_result.drafts.push_back(std::move(draft));
    }

    void addPairOfOne(model::Datasheet const& sheet, int index, Relation relation) {
        Parameter const& p = sheet.parameters[static_cast<std::size_t>(index)];
        bool const inReference = relation == Relation::OnlyReference;
        m_result.pairs.push_back({p.canonical, inReference ? p.id : std::string(), inReference ? std::string() : p.id, relation, model::Judgement::Open, 0});
    }

    void addOnly(model::Datasheet const& sheet, PrintedRows const& rows, int index, Relation relation) {
        Parameter const& p = sheet.parameters[static_cast<std::size_t>(index)];
        bool const inReference = relation == Relation::OnlyReference;
        addPairOfOne(sheet, index, relation);
        std::optional<model::Side> side = sideOfParameter(p);
        Draft draft = makeDraft(FindingKind::Parameter, Rank::Parameter, relation, inReference ? side : std::nullopt, inReference ? std::nullopt : side);
        draft.finding.canonical = p.canonical;
        draft.finding.section = p.section;
        draft.finding.variant = p.variant;
        draft.finding.affects = {(inReference ? "r:" : "c:") + p.id};
        draft.finding.pair = static_cast<int>(m_result.pairs.size()) - 1;
        addRowPlace(inReference ? draft.referencePlaces : draft.candidatePlaces, rows, index);
        m_result.drafts.push_back(std::move(draft));
    }

    SheetPair const& m_sheets;
    ConditionMemo& m_conditions;
    ParameterFindings m_result;
    std::map<std::tuple<std::string, std::string, std::string, std::string>, int> m_firstOfCondition;
    int m_firstTurned = -1;  // draft
    int m_firstBound = -1;
    struct CommonCell {
        int first = -1;   // draft
        int second = -1;  // pair index of the last row seen
    };
    std::map<std::tuple<std::string, std::string, std::string, std::string>, CommonCell> m_lastOfUnit;
};

}  // namespace

BoundPrecision precisionFor(SheetPair const& sheets, Parameter const& p, Parameter const& candidate) {
    if (hasSingleLimit(p) && hasSingleLimit(candidate)) return {};
    if (sheets.oneText() || p.kind == model::ParameterKind::Rating) return {};
    auto const* entry = p.canonical.empty() ? nullptr : sheets.vocabulary.find(p.canonical);
    if (entry == nullptr) return {Precision::AsPrinted, Precision::AsPrinted};
    switch (entry->bound) {
        case vocabulary::Bound::None: return {Precision::AsPrinted, Precision::AsPrinted};
        case vocabulary::Bound::Max: return {Precision::AsPrinted, Precision::Exact};
        case vocabulary::Bound::Min: return {Precision::Exact, Precision::AsPrinted};
        case vocabulary::Bound::Magnitude:
        case vocabulary::Bound::Both: return {};
    }
    return {};
}

std::pair<std::string, std::string> changedPart(std::string_view before, std::string_view after) {
    auto const a = spaced(before);
    auto const b = spaced(after);
    std::size_t begin = 0;
    while (begin < std::min(a.size(), b.size()) && a[begin] == b[begin]) ++begin;
    std::size_t end = 0;
    while (end < std::min(a.size(), b.size()) - begin && a[a.size() - 1 - end] == b[b.size() - 1 - end]) ++end;
    auto const core = [&](std::vector<std::string_view> const& words) {
        std::string text;
        for (std::size_t i = begin > 0 ? begin - 1 : 0; i < words.size() - end; ++i) text += std::string(words[i]) + " ";
        return text;
    };
    return {core(a), core(b)};
}

ParameterFindings findParameterDifferences(SheetPair const& sheets, ParameterPairing const& pairing, ConditionMemo& conditions) {
    return Findings(sheets, conditions).run(pairing);
}

namespace {

// Letters, digits and what belongs to values, in one spelling.
std::string bareText(std::string_view printed) {
    std::string bare;
    for (char const c : text::asciiLower(text::foldForComparison(printed))) {
        if (text::isAsciiLetter(c) || text::isAsciiDigit(c) || c == '=' || c == '-' || c == '+') bare.push_back(c);
    }
    return bare;
}

// Those of the values under Min, Typ and Max that differ, with their unit, spaceless.
using ColumnValues = std::array<std::string, 3>;

// A row that differs, as a line elsewhere would repeat it.
struct Restated {
    int draft = 0;
    std::vector<std::string> symbols;  // bare
    ColumnValues reference, candidate;
};

// `affected`: "r:" or "c:" and the id of the row.
void addSymbol(Restated& restated, model::Datasheet const& sheet, std::string_view affected) {
    auto const row = std::find_if(sheet.parameters.begin(), sheet.parameters.end(), [&](Parameter const& p) { return affected.substr(2) == p.id; });
    if (row == sheet.parameters.end()) return;
    std::string symbol = bareText(row->symbol);
    if (symbol.size() >= 2) restated.symbols.push_back(std::move(symbol));
}

ColumnValues valuesWithUnit(model::Side const& side, model::Side const& other) {
    ColumnValues values;
    std::size_t column = 0;
    for (auto const& [own, others] : {std::pair{side.min, other.min}, std::pair{side.typ, other.typ}, std::pair{side.max, other.max}}) {
        if (!own.empty() && !others.empty() && own != others && !side.unit.empty()) values[column] = spaceless(own + side.unit);
        ++column;
    }
    return values;
}

// Where the value ends that begins at `at` of the folded text, or npos. "5 A" is not within "1.5 A", "5 Ah" or "5 A/s".
std::size_t endOfValue(std::string const& folded, std::size_t at, std::string const& value) {
    if (at > 0 && (text::isAsciiDigit(folded[at - 1]) || folded[at - 1] == '.' || folded[at - 1] == ',')) return std::string::npos;
    std::size_t end = at;
    for (std::size_t matched = 0; matched < value.size(); ++end) {
        if (end == folded.size()) return std::string::npos;
        if (folded[end] == value[matched]) ++matched;
        else if (matched == 0 || folded[end] != ' ') return std::string::npos;
    }
    if (end == folded.size()) return end;
    char const next = folded[end];
    bool const goesOn = text::isAsciiLetter(next) || text::isAsciiDigit(next) || next == '/' || next == '^' || static_cast<unsigned char>(next) >= 0x80U;
    return goesOn ? std::string::npos : end;
}

// The text without spaces, each of the values replaced by a mark of its column; empty if it holds none.
std::string withoutValues(std::string_view printed, ColumnValues const& values) {
    std::string const folded = text::foldForComparison(printed);
    std::string rest;
    bool any = false;
    for (std::size_t at = 0; at < folded.size();) {
        std::size_t end = std::string::npos;
        for (std::size_t column = 0; column < values.size() && end == std::string::npos; ++column) {
            if (!values[column].empty()) end = endOfValue(folded, at, values[column]);
            if (end != std::string::npos) rest += static_cast<char>('\x01' + static_cast<char>(column));
        }
        any = any || end != std::string::npos;
        if (end == std::string::npos && folded[at] != ' ') rest += folded[at];
        at = end == std::string::npos ? at + 1 : end;
    }
    return any ? rest : std::string();
}

}  // namespace

void linkRestatements(std::vector<Draft>& drafts, SheetPair const& sheets) {
    if (sheets.oneText()) return;
    std::vector<Restated> rows;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto const& finding = drafts[i].finding;
        if (drafts[i].rank != Rank::Parameter || drafts[i].dropped || drafts[i].cause >= 0 || !finding.reference || !finding.candidate || finding.affects.size() != 2) continue;
        Restated restated{static_cast<int>(i), {}, valuesWithUnit(*finding.reference, *finding.candidate), valuesWithUnit(*finding.candidate, *finding.reference)};
        addSymbol(restated, sheets.reference, finding.affects[0]);
        addSymbol(restated, sheets.candidate, finding.affects[1]);
        rows.push_back(std::move(restated));
    }
    if (rows.empty()) return;
    for (Draft& draft : drafts) {
        bool const text = draft.rank == Rank::Wording || draft.rank == Rank::Table;
        if (!text || draft.dropped || draft.cause >= 0 || !draft.finding.reference || !draft.finding.candidate) continue;
        std::string const r = bareText(draft.finding.reference->text);
        std::string const c = bareText(draft.finding.candidate->text);
        for (Restated const& row : rows) {
            bool const named = std::any_of(row.symbols.begin(), row.symbols.end(),
                                           [&](std::string const& symbol) { return r.find(symbol) != std::string::npos && c.find(symbol) != std::string::npos; });
            if (!named) continue;
            std::string const rest = withoutValues(draft.finding.reference->text, row.reference);
            if (rest.empty() || rest != withoutValues(draft.finding.candidate->text, row.candidate)) continue;
            draft.cause = row.draft;
            break;
        }
    }
}

}  // namespace standin::compare
