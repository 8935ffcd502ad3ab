// The statements about one feature are paired by their texts, so that a change in
// one of several places is shown at that place; states are compared pair by pair.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/feature_findings.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "compare/pin_findings.h"
#include "compare/prose.h"

namespace standin::compare {

namespace {

using model::Feature;
using model::FindingKind;
using model::Relation;

using Statements = std::vector<Feature const*>;

std::map<std::string, Statements> statementsOf(model::Datasheet const& sheet) {
    std::map<std::string, Statements> statements;
    for (auto const& feature : sheet.features) {
        if (!feature.state.empty() && feature.state != "unstated") statements[feature.canonical].push_back(&feature);
    }
    return statements;
}

std::set<std::string> statesOf(Statements const& statements) {
    std::set<std::string> states;
    for (auto const* feature : statements) states.insert(feature->state);
    return states;
}

model::Side sideOfFeature(Feature const& feature) { return sideOf(feature.page, feature.box, feature.text); }

Draft featureDraft(std::string const& canonical, Relation relation, Feature const* r, Feature const* c) {
    auto side = [](Feature const* feature) -> std::optional<model::Side> {
        if (feature == nullptr) return std::nullopt;
        return sideOfFeature(*feature);
    };
    Draft draft = makeDraft(FindingKind::Feature, Rank::Feature, relation, side(r), side(c));
    draft.finding.canonical = canonical;
    if (relation == Relation::ConflictInDocument) draft.rank = Rank::Conflict;
    return draft;
}

std::vector<IndexPair> pairStatements(Statements const& reference, Statements const& candidate) {
    auto keys = [](Statements const& statements) {
        std::vector<Key> list;
        for (auto const* feature : statements) list.push_back(combined(keyOf(feature->text), hashOf(feature->state)));
        return list;
    };
    auto tokens = [](Statements const& statements) {
        std::vector<std::vector<Key>> list;
        for (auto const* feature : statements) list.push_back(tokensOf(feature->text));
        return list;
    };
    auto const referenceTokens = tokens(reference);
    auto const candidateTokens = tokens(candidate);
    Likeness const likeness = [&](int i, int j) {
        return similarity(referenceTokens[static_cast<std::size_t>(i)], candidateTokens[static_cast<std::size_t>(j)]);
    };
    return alignSequences(keys(reference), keys(candidate), likeness, {.threshold = 0.3});
}

void compareStatements(std::string const& canonical, Statements const& reference, Statements const& candidate, std::vector<Draft>& drafts) {
    if (statesOf(reference) == statesOf(candidate)) return;
    auto pairs = pairStatements(reference, candidate);
    int first = -1;
    auto add = [&](Draft draft) {
        draft.cause = first;
        if (first < 0) first = static_cast<int>(drafts.size());
        drafts.push_back(std::move(draft));
    };
    for (auto const pair : pairs) {
        auto const& r = *reference[static_cast<std::size_t>(pair.reference)];
        auto const& c = *candidate[static_cast<std::size_t>(pair.candidate)];
        if (r.state != c.state) add(featureDraft(canonical, Relation::ModeDiffers, &r, &c));
    }
    if (first >= 0) return;
    // No statement corresponds to another: the first that differ speak.
    auto const referenceStates = statesOf(reference);
    auto const candidateStates = statesOf(candidate);
    auto strangerTo = [](Statements const& statements, std::set<std::string> const& states) -> Feature const* {
        auto const found = std::find_if(statements.begin(), statements.end(), [&](auto const* feature) { return states.count(feature->state) == 0; });
        return found == statements.end() ? nullptr : *found;
    };
    Feature const* const r = strangerTo(reference, candidateStates);
    Feature const* const c = strangerTo(candidate, referenceStates);
    bool const conflict = r == nullptr || c == nullptr;  // one sheet says what the other says, and the contrary too
    add(featureDraft(canonical, conflict ? Relation::ConflictInDocument : Relation::ModeDiffers, r != nullptr ? r : reference.front(),
                     c != nullptr ? c : candidate.front()));
}

}  // namespace

std::vector<Draft> findFeatureDifferences(SheetPair const& sheets) {
    std::vector<Draft> drafts;
    auto const reference = statementsOf(sheets.reference);
    auto const candidate = statementsOf(sheets.candidate);
    for (auto const& [canonical, statements] : reference) {
        auto const found = candidate.find(canonical);
        if (found == candidate.end()) {
            drafts.push_back(featureDraft(canonical, Relation::ModeUnstated, statements.front(), nullptr));
        } else {
            compareStatements(canonical, statements, found->second, drafts);
        }
    }
    for (auto const& [canonical, statements] : candidate) {
        if (reference.count(canonical) == 0) drafts.push_back(featureDraft(canonical, Relation::ModeUnstated, nullptr, statements.front()));
    }
    return drafts;
}

namespace {

struct Change {
    std::string feature, from, to;
    bool operator==(Change const&) const = default;
};

std::string stateIn(std::vector<vocabulary::FeatureStatement> const& statements, std::string const& feature) {
    for (auto const& statement : statements) {
        if (statement.feature == feature) return statement.state;
    }
    return {};
}

bool statesChange(SheetPair const& sheets, model::Finding const& finding, Change const& change) {
    return stateIn(sheets.vocabulary.statements(finding.reference->text), change.feature) == change.from &&
           stateIn(sheets.vocabulary.statements(finding.candidate->text), change.feature) == change.to;
}

// Every cell that differs gives the feature the two states, and at least one does.
bool cellsChange(SheetPair const& sheets, model::Finding const& finding, Change const& change) {
    auto const* r = orderingLineAt(sheets.reference.ordering, *finding.reference);
    auto const* c = orderingLineAt(sheets.candidate.ordering, *finding.candidate);
    if (r == nullptr || c == nullptr || r->attributes.size() != c->attributes.size()) return false;
    bool any = false;
    for (std::size_t i = 0; i < r->attributes.size(); ++i) {
        auto const& [title, cell] = r->attributes[i];
        auto const& [otherTitle, otherCell] = c->attributes[i];
        if (keyOf(cell) == keyOf(otherCell) || wordingOf(sheets, cell, otherCell).relation == Relation::Same) continue;
        auto const from = sheets.vocabulary.statement(title, cell);
        auto const to = sheets.vocabulary.statement(otherTitle, otherCell);
        if (!from || !to || Change{from->feature, from->state, to->state} != change || to->feature != change.feature) return false;
        any = true;
    }
    return any;
}

std::string stateOf(std::vector<Feature> const& features, std::string const& canonical, model::Side const& side) {
    for (auto const& feature : features) {
        if (feature.canonical == canonical && feature.page == side.page && feature.box == side.box) return feature.state;
    }
    return {};
}

}  // namespace

bool stateTheSame(SheetPair const& sheets, std::pair<std::string, std::string> const& reference, std::pair<std::string, std::string> const& candidate) {
    auto const r = sheets.vocabulary.statement(reference.first, reference.second);
    auto const c = sheets.vocabulary.statement(candidate.first, candidate.second);
    return r && c && r->feature == c->feature && r->state == c->state;
}

void linkStatements(std::vector<Draft>& drafts, SheetPair const& sheets) {
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto const& feature = drafts[i].finding;
        if (drafts[i].rank != Rank::Feature || drafts[i].dropped || drafts[i].cause >= 0 || feature.relation != Relation::ModeDiffers) continue;
        Change const change{feature.canonical, stateOf(sheets.reference.features, feature.canonical, *feature.reference),
                            stateOf(sheets.candidate.features, feature.canonical, *feature.candidate)};
        if (change.from.empty() || change.to.empty()) continue;
        for (auto& draft : drafts) {
            auto const& finding = draft.finding;
            if (draft.dropped || draft.cause >= 0 || !finding.reference || !finding.candidate) continue;
            bool const follows = draft.rank == Rank::Wording ? statesChange(sheets, finding, change) : draft.rank == Rank::Ordering && cellsChange(sheets, finding, change);
            if (follows) draft.cause = static_cast<int>(i);
        }
    }
}

}  // namespace standin::compare
