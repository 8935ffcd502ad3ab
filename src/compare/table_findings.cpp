// Rows come paired (sheet_pair.h); here differing pairs become drafts. Which of
// them say nothing new is decided later, by the places the other drafts stand at.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/table_findings.h"

#include <map>
#include <set>
#include <string>
#include <unordered_set>
#include <utility>

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

}  // namespace

std::vector<Draft> findRowDifferences(SheetPair const& sheets) {
    std::vector<Draft> drafts;
    for (auto const pair : sheets.rowPairs) {
        auto const& r = sheets.referenceRows[pair.reference];
        auto const& c = sheets.candidateRows[pair.candidate];
        if (r.key == c.key) continue;
        if (!sheets.oneText() && ((r.read && c.read) || (r.head && c.head))) continue;
        if (!sheets.oneText() && !sheets.sameLanguage) continue;
        drafts.push_back(rowDraft(sheets, &r, &c));
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
