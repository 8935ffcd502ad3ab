// Rows are put in buckets by id, kind and version; a table that has several rows in a
// bucket tells them apart by something that was not read, and speaks of none of them.
// What is left is one row a table, set against the first row of the bucket. Two tables
// that disagree more than once, and no less than they agree, are those of two versions.
//
// Tested by tests/src/compare/document_conflicts_test.cpp.
#include "compare/document_conflicts.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include <fmt/format.h>

#include "compare/conditions.h"
#include "compare/coverage_account.h"
#include "compare/relation.h"
#include "quantity/condition.h"
#include "text/fold.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Parameter;
using model::Relation;

constexpr std::size_t kMostTables = 3;  // of one parameter; more are a series of versions
constexpr std::size_t kShownRow = 240;  // bytes

struct Conflict {
    Parameter const* first = nullptr;
    Parameter const* second = nullptr;
};

struct Votes {
    int agreeing = 0;
    int disagreeing = 0;
};

bool sameNaming(Parameter const& a, Parameter const& b) {
    auto const symbol = quantity::symbolKey(a.symbol);
    if (!symbol.empty() && symbol == quantity::symbolKey(b.symbol)) return true;
    auto const name = text::foldKey(a.name);
    return !name.empty() && name == text::foldKey(b.name);
}

enum class Verdict { Apart, Agree, Disagree };

Verdict relateRows(Parameter const& a, Parameter const& b, ConditionMemo& memo) {
    if (!a.interval || !b.interval || !sameNaming(a, b)) return Verdict::Apart;
    if (relateConditions({a.condition, a.tableCondition}, {b.condition, b.tableCondition}, memo) != model::ConditionRelation::Same) return Verdict::Apart;
    switch (relateIntervals(*a.interval, *b.interval, {Precision::AsPrinted, Precision::AsPrinted})) {
        case Relation::Same:
        case Relation::TypEqual: return Verdict::Agree;
        // A range within a rating is the range to work in, whatever its heading was taken for.
        case Relation::Inside:
        case Relation::Wider: return a.kind == model::ParameterKind::Rating ? Verdict::Apart : Verdict::Disagree;
        case Relation::ReachesHigher:
        case Relation::ReachesLower:
        case Relation::ClearAbove:
        case Relation::ClearBelow:
        case Relation::TypDiffers: return Verdict::Disagree;
        default: return Verdict::Apart;
    }
}

std::vector<Conflict> conflictsOf(model::Datasheet const& sheet, ConditionMemo& memo) {
    std::map<std::tuple<std::string, model::ParameterKind, std::string>, std::vector<Parameter const*>> buckets;
    for (auto const& p : sheet.parameters) {
        if (!p.canonical.empty() && !p.table.empty()) buckets[{p.canonical, p.kind, p.variant.empty() ? std::string() : text::foldKey(p.variant)}].push_back(&p);
    }
    std::map<std::string, std::string> continues;
    for (auto const& table : sheet.tables) {
        auto const found = continues.find(table.continues);
        continues[table.id] = table.continues.empty() ? table.id : found == continues.end() ? table.continues : found->second;
    }
    auto const wholeTable = [&](Parameter const& p) {
        auto const found = continues.find(p.table);
        return found == continues.end() ? p.table : found->second;
    };
    std::vector<Conflict> conflicts;
    std::map<std::pair<std::string, std::string>, Votes> votesOf;  // by tables
    for (auto const& [key, rows] : buckets) {
        if (rows.size() < 2) continue;
        std::map<std::string, std::vector<Parameter const*>> byTable;
        for (auto const* row : rows) byTable[wholeTable(*row)].push_back(row);
        std::vector<Parameter const*> alone;
        for (auto const* row : rows) {
            if (byTable[wholeTable(*row)].size() == 1) alone.push_back(row);
        }
        if (alone.size() > kMostTables) continue;
        bool told = false;  // one finding for one parameter
        for (std::size_t i = 1; i < alone.size(); ++i) {
            Verdict const verdict = relateRows(*alone.front(), *alone[i], memo);
            auto& votes = votesOf[{wholeTable(*alone.front()), wholeTable(*alone[i])}];
            if (verdict == Verdict::Agree) ++votes.agreeing;
            if (verdict != Verdict::Disagree) continue;
            ++votes.disagreeing;
            if (!told) conflicts.push_back({alone.front(), alone[i]});
            told = true;
        }
    }
    std::erase_if(conflicts, [&](Conflict const& conflict) {
        auto const& votes = votesOf[{wholeTable(*conflict.first), wholeTable(*conflict.second)}];
        return votes.disagreeing > 1 && votes.disagreeing >= votes.agreeing;
    });
    std::sort(conflicts.begin(), conflicts.end(), [&](Conflict const& a, Conflict const& b) { return a.first < b.first; });
    return conflicts;
}

model::Side sideOfConflict(Conflict const& conflict) {
    auto const shown = [](Parameter const& p) { return fmt::format("{} (page {})", clipped(p.printed, kShownRow), p.page); };
    return sideOf(conflict.first->page, conflict.first->box, shown(*conflict.first) + " / " + shown(*conflict.second));
}

Key keyOfConflict(Conflict const& conflict) {
    return combined(combined(keyOf(conflict.first->canonical), keyOf(conflict.first->printed)), keyOf(conflict.second->printed));
}

}  // namespace

std::vector<Draft> findParameterConflicts(SheetPair const& sheets, ConditionMemo& memo) {
    std::vector<Draft> drafts;
    auto const reference = conflictsOf(sheets.reference, memo);
    auto const candidate = conflictsOf(sheets.candidate, memo);
    std::vector<char> met(candidate.size(), 0);
    auto add = [&](Conflict const* r, Conflict const* c) {
        bool const shared = r != nullptr && c != nullptr;
        auto const side = [](Conflict const* conflict) { return conflict == nullptr ? std::nullopt : std::optional(sideOfConflict(*conflict)); };
        Draft draft = makeDraft(shared ? FindingKind::Coverage : FindingKind::Parameter, shared ? Rank::Coverage : Rank::Conflict, Relation::ConflictInDocument, side(r), side(c));
        auto const& shownBy = r != nullptr ? *r : *c;
        if (shared) {
            draft.finding.title = kConflictInBoth;
            draft.finding.open = true;
        }
        draft.finding.canonical = shownBy.first->canonical;
        draft.finding.section = shownBy.first->section;
        draft.finding.variant = shownBy.first->variant;
        if (r != nullptr) draft.finding.affects = {"r:" + r->first->id, "r:" + r->second->id};
        if (c != nullptr) draft.finding.affects.insert(draft.finding.affects.end(), {"c:" + c->first->id, "c:" + c->second->id});
        drafts.push_back(std::move(draft));
    };
    for (auto const& r : reference) {
        auto const twin = std::find_if(candidate.begin(), candidate.end(), [&](Conflict const& c) { return keyOfConflict(r) == keyOfConflict(c); });
        if (twin != candidate.end()) met[static_cast<std::size_t>(twin - candidate.begin())] = 1;
        add(&r, twin == candidate.end() ? nullptr : &*twin);
    }
    for (std::size_t j = 0; j < candidate.size(); ++j) {
        if (met[j] == 0) add(nullptr, &candidate[j]);
    }
    return drafts;
}

void linkConflicts(std::vector<Draft>& drafts) {
    std::map<std::string, int> findingOf;  // parameter -> the draft about it
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto const& draft = drafts[i];
        if (draft.dropped || draft.rank != Rank::Parameter) continue;
        for (auto const& parameter : draft.finding.affects) findingOf.emplace(parameter, static_cast<int>(i));
    }
    for (auto& draft : drafts) {
        if (draft.dropped || draft.rank != Rank::Conflict || draft.finding.kind != FindingKind::Parameter || draft.cause >= 0) continue;
        for (auto const& parameter : draft.finding.affects) {
            auto const found = findingOf.find(parameter);
            if (found == findingOf.end()) continue;
            draft.cause = found->second;
            break;
        }
    }
}

}  // namespace standin::compare
