// Rows come paired (sheet_pair.h); here differing pairs become drafts. Which of
// them say nothing new is decided later, by the places the other drafts stand at.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/table_findings.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <unordered_set>
#include <utility>

#include "compare/conditions.h"
#include "compare/relation.h"
#include "compare/table_heads.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;

constexpr std::size_t kJoinedText = 480;        // bytes of the texts joined in one finding
constexpr std::size_t kFewestJoined = 3;        // fewer one-sided rows of a table stay apart
constexpr model::Points kCaptionHeight = 12.0F;

Draft rowDraft(SheetPair const& sheets, PrintedRow const* r, PrintedRow const* c) {
    auto side = [](PrintedRow const* row) -> std::optional<model::Side> {
        if (row == nullptr) return std::nullopt;
        return sideOf(row->page, row->box, row->text);
    };
    Relation const relation = r == nullptr ? Relation::OnlyCandidate : (c == nullptr ? Relation::OnlyReference : Relation::Reworded);
    Draft draft = makeDraft(FindingKind::Table, Rank::Table, relation, side(r), side(c));
    auto const& sheet = r != nullptr ? sheets.reference : sheets.candidate;
    draft.finding.section = sheet.tables[static_cast<std::size_t>(r != nullptr ? r->table : c->table)].section;
    return draft;
}

void addOneSided(SheetPair const& sheets, PrintedRows const& rows, std::vector<int> const& partners, PrintedRows const& others, bool isReference,
                 std::vector<Draft>& drafts) {
    std::unordered_set<Key> otherKeys;
    for (auto const& row : others.all()) otherKeys.insert(row.key);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (partners[i] >= 0) continue;
        auto const& row = rows[static_cast<int>(i)];
        if (row.read) continue;
        // Column titles repeated on another page, or of another maker's table.
        if (row.head && (!sheets.oneText() || otherKeys.count(row.key) > 0)) continue;
        drafts.push_back(rowDraft(sheets, isReference ? &row : nullptr, isReference ? nullptr : &row));
    }
}

void addCaptionDifferences(SheetPair const& sheets, std::vector<Draft>& drafts) {
    std::map<std::pair<int, int>, int> votes;
    for (auto const pair : sheets.rowPairs) ++votes[{sheets.referenceRows[pair.reference].table, sheets.candidateRows[pair.candidate].table}];
    std::map<int, std::pair<int, int>> best;  // reference table -> candidate table, votes
    for (auto const& [tables, count] : votes) {
        auto& entry = best[tables.first];
        if (count > entry.second) entry = {tables.second, count};
    }
    std::set<int> used;
    for (auto const& [referenceTable, match] : best) {
        if (!used.insert(match.first).second) continue;
        auto const& r = sheets.reference.tables[static_cast<std::size_t>(referenceTable)];
        auto const& c = sheets.candidate.tables[static_cast<std::size_t>(match.first)];
        using Member = std::string model::Table::*;
        for (Member const member : {&model::Table::caption, &model::Table::lead}) {
            std::string const& before = r.*member;
            std::string const& after = c.*member;
            if (before == after || before.empty() || after.empty() || keyOf(before) == keyOf(after)) continue;
            auto above = [](model::Table const& table) { return model::Rect{table.box.x0, table.box.y0 - kCaptionHeight, table.box.x1, table.box.y0}; };
            Draft draft = makeDraft(FindingKind::Table, Rank::Table, Relation::Reworded, sideOf(r.page, above(r), before), sideOf(c.page, above(c), after));
            draft.finding.section = r.section;
            drafts.push_back(std::move(draft));
        }
    }
}

std::vector<std::string_view> cellsOf(std::string_view row) {
    constexpr std::string_view kJoint = " | ";
    std::vector<std::string_view> cells;
    while (true) {
        auto const at = row.find(kJoint);
        cells.push_back(row.substr(0, at));
        if (at == std::string_view::npos) return cells;
        row.remove_prefix(at + kJoint.size());
    }
}

// What the cells of two rows differ in, as far as their paired parameters explain it.
enum class RowChange { Other, Symbols, Writing };

// Symbols of one vocabulary id; or the same quantities in other units.
RowChange changeOf(SheetPair const& sheets, std::vector<int> const& partnerOf, PrintedRow const& r, PrintedRow const& c, ConditionMemo& memo) {
    auto const before = cellsOf(r.text);
    auto const after = cellsOf(c.text);
    if (before.size() != after.size()) return RowChange::Other;
    RowChange change = RowChange::Other;
    auto const holds = [](std::optional<model::Value> const& value, std::string_view cell) { return value && (keyOf(value->text) == keyOf(cell) || keyOf(value->printed) == keyOf(cell)); };
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (keyOf(before[i]) == keyOf(after[i])) continue;
        RowChange explained = RowChange::Other;
        for (int const index : r.parameters) {
            int const partner = partnerOf[static_cast<std::size_t>(index)];
            if (partner < 0) continue;
            auto const& a = sheets.reference.parameters[static_cast<std::size_t>(index)];
            auto const& b = sheets.candidate.parameters[static_cast<std::size_t>(partner)];
            bool const oneId = !a.canonical.empty() && a.canonical == b.canonical;
            if (oneId && keyOf(a.symbol) == keyOf(before[i]) && keyOf(b.symbol) == keyOf(after[i])) explained = RowChange::Symbols;
            bool const inCells = (holds(a.min, before[i]) && holds(b.min, after[i])) || (holds(a.typ, before[i]) && holds(b.typ, after[i])) || (holds(a.max, before[i]) && holds(b.max, after[i])) ||
                                 (keyOf(a.unit) == keyOf(before[i]) && keyOf(b.unit) == keyOf(after[i])) || (keyOf(a.condition) == keyOf(before[i]) && keyOf(b.condition) == keyOf(after[i]));
            if (!inCells || !isEqual(relateValues(a, b), a, b)) continue;
            bool const sameConditions = relateConditions({a.condition, a.tableCondition}, {b.condition, b.tableCondition}, memo) == model::ConditionRelation::Same;
            if (sameConditions && explained == RowChange::Other) explained = RowChange::Writing;
        }
        if (explained == RowChange::Other) return RowChange::Other;
        if (change != RowChange::Symbols) change = explained;
    }
    return change;
}

}  // namespace

std::vector<Draft> findRowDifferences(SheetPair const& sheets, ParameterPairing const& pairing, ConditionMemo& memo) {
    std::vector<Draft> drafts;
    std::vector<int> partnerOf(sheets.reference.parameters.size(), -1);
    for (auto const& pair : pairing.pairs) partnerOf[static_cast<std::size_t>(pair.reference)] = pair.candidate;
    for (auto const pair : sheets.rowPairs) {
        auto const& r = sheets.referenceRows[pair.reference];
        auto const& c = sheets.candidateRows[pair.candidate];
        if (r.key == c.key) continue;
        bool const heads = (r.head || c.head) && namesColumns(sheets.referenceRows, pair.reference) && namesColumns(sheets.candidateRows, pair.candidate);
        if (!sheets.oneText() && ((r.read && c.read) || heads)) continue;
        if (!sheets.oneText() && !sheets.sameLanguage) continue;
        drafts.push_back(rowDraft(sheets, &r, &c));
        if (heads && differInColumns(r.text, c.text)) drafts.back().finding.classes = {model::WordingClass::Style};
        RowChange const change = r.read && c.read ? changeOf(sheets, partnerOf, r, c, memo) : RowChange::Other;
        if (change == RowChange::Symbols) drafts.back().finding.classes = {model::WordingClass::Style};
        if (change == RowChange::Writing) drafts.back().finding.classes = {model::WordingClass::Edit};
    }
    // Rows in another language are counted by the coverage account.
    if (sheets.sameLanguage) {
        addOneSided(sheets, sheets.referenceRows, sheets.rowPartnerOfReference, sheets.candidateRows, true, drafts);
        addOneSided(sheets, sheets.candidateRows, sheets.rowPartnerOfCandidate, sheets.referenceRows, false, drafts);
    }
    if (sheets.oneText()) addCaptionDifferences(sheets, drafts);
    return drafts;
}

void joinOneSidedRows(std::vector<Draft>& drafts) {
    auto sideOfDraft = [](Draft& draft) -> model::Side* {
        auto& finding = draft.finding;
        if (finding.reference && finding.candidate) return nullptr;
        return finding.reference ? &*finding.reference : (finding.candidate ? &*finding.candidate : nullptr);
    };
    std::map<std::tuple<Relation, int, std::string>, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto& draft = drafts[i];
        auto const* side = sideOfDraft(draft);
        if (draft.dropped || draft.cause >= 0 || draft.rank != Rank::Table || side == nullptr) continue;
        groups[{draft.finding.relation, side->page, draft.finding.section}].push_back(i);
    }
    for (auto const& [where, members] : groups) {
        if (members.size() < kFewestJoined) continue;
        Draft* head = nullptr;
        for (std::size_t const index : members) {
            model::Side* side = sideOfDraft(drafts[index]);
            model::Side* joined = head != nullptr ? sideOfDraft(*head) : nullptr;
            if (joined == nullptr || joined->text.size() + side->text.size() > kJoinedText) {
                head = &drafts[index];
                continue;
            }
            joined->text += " / " + side->text;
            joined->box = model::united(joined->box, side->box);
            head->numberBearers += drafts[index].numberBearers;
            drafts[index].dropped = true;
        }
    }
}

}  // namespace standin::compare
