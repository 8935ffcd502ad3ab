// First equal texts by key, then places, then likeness (similarity_pairing.h).
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/reconcile.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <unordered_map>

#include "compare/prose.h"
#include "compare/similarity_pairing.h"
#include "model/crew.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Relation;

constexpr double kOneTextThreshold = 0.55;
constexpr double kTwoTextsThreshold = 0.8;
constexpr std::size_t kMostPlaced = 4000;  // drafts looked at by place

bool isCandidateForMerging(Draft const& draft) {
    if (draft.dropped || draft.cause >= 0) return false;
    switch (draft.rank) {
        case Rank::Parameter:
        case Rank::Pin:
        case Rank::Ordering:
        case Rank::Table:
        case Rank::Wording:
        case Rank::Figure:
        case Rank::Section:
        case Rank::Furniture: break;
        default: return false;
    }
    return draft.finding.relation == Relation::OnlyReference || draft.finding.relation == Relation::OnlyCandidate;
}

std::string plainText(std::string text) {
    std::erase(text, '|');
    return text;
}

bool equalKinds(Draft const& a, Draft const& b) { return a.rank == b.rank && (a.rank == Rank::Parameter || a.rank == Rank::Ordering); }

// `a` has the reference's side, `b` the candidate's.
void merge(Draft& a, Draft& b, SheetPair const& sheets) {
    auto const& before = *a.finding.reference;
    auto const& after = *b.finding.candidate;
    if (isOwnPageNumber(before.text, before.page, sheets.reference.document.pages) && isOwnPageNumber(after.text, after.page, sheets.candidate.document.pages)) {
        a.dropped = b.dropped = true;
        return;
    }
    bool const aLeads = a.rank <= b.rank;
    auto& leader = aLeads ? a : b;
    auto& other = aLeads ? b : a;
    if (aLeads) {
        leader.finding.candidate = other.finding.candidate;
        leader.candidatePlaces = other.candidatePlaces;
    } else {
        leader.finding.reference = other.finding.reference;
        leader.referencePlaces = other.referencePlaces;
        leader.finding.section = other.finding.section;
    }
    if (leader.finding.kind == FindingKind::Parameter) {
        leader.finding.relation = Relation::NotComparable;
        leader.finding.affects.insert(leader.finding.affects.end(), other.finding.affects.begin(), other.finding.affects.end());
    } else {
        Wording wording = wordingOf(sheets, leader.finding.reference->text, leader.finding.candidate->text);
        leader.finding.relation = wording.relation == Relation::Same ? Relation::Reworded : wording.relation;
        leader.finding.classes = std::move(wording.classes);
    }
    other.dropped = true;
}

void joinHalves(std::vector<Draft>& drafts, SheetPair const& sheets) {
    std::vector<int> reference;
    std::vector<int> candidate;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        if (!isCandidateForMerging(drafts[i])) continue;
        (drafts[i].finding.reference ? reference : candidate).push_back(static_cast<int>(i));
    }
    if (reference.empty() || candidate.empty()) return;
    auto at = [&](int index) -> Draft& { return drafts[static_cast<std::size_t>(index)]; };
    auto textOf = [&](int index) -> std::string const& {
        auto const& finding = at(index).finding;
        return finding.reference ? finding.reference->text : finding.candidate->text;
    };
    // By draft: what `make` gives for the text of each of both lists, joints of cells left out.
    auto const ofBoth = [&](auto const& make) {
        std::vector<std::decay_t<decltype(make(std::string_view()))>> made(drafts.size());
        std::vector<int> both = reference;
        both.insert(both.end(), candidate.begin(), candidate.end());
        model::inParts(both.size(), [&](std::size_t first, std::size_t last) {
            for (std::size_t k = first; k < last; ++k) {
                std::string const& text = textOf(both[k]);
                made[static_cast<std::size_t>(both[k])] = text.find('|') == std::string::npos ? make(text) : make(plainText(text));
            }
        });
        return made;
    };
    auto const keys = ofBoth([](std::string_view text) { return keyOf(text); });
    std::unordered_map<Key, std::vector<int>> byText;
    for (auto j = candidate.rbegin(); j != candidate.rend(); ++j) byText[keys[static_cast<std::size_t>(*j)]].push_back(*j);
    for (int const i : reference) {
        auto const found = byText.find(keys[static_cast<std::size_t>(i)]);
        if (found == byText.end() || found->second.empty() || equalKinds(at(i), at(found->second.back()))) continue;
        at(i).dropped = at(found->second.back()).dropped = true;
        found->second.pop_back();
    }
    auto dropDone = [&](std::vector<int>& list) {
        std::erase_if(list, [&](int index) { return at(index).dropped || (at(index).finding.reference && at(index).finding.candidate); });
    };
    dropDone(reference);
    dropDone(candidate);
    if (sheets.oneText() && reference.size() + candidate.size() < kMostPlaced) {
        std::unordered_map<int, std::vector<int>> onPage;
        for (int const j : candidate) {
            for (auto const& place : at(j).candidatePlaces) onPage[place.page].push_back(j);
        }
        for (int const i : reference) {
            Draft probe = at(i);
            probe.candidatePlaces = probe.referencePlaces;
            for (auto const& place : at(i).referencePlaces) {
                if (!sheets.inPlace(place.page)) continue;
                auto const found = onPage.find(place.page);
                if (found == onPage.end()) continue;
                for (int const j : found->second) {
                    if (at(j).dropped || (at(j).finding.reference && at(j).finding.candidate) || !shareCandidatePlace(probe, at(j))) continue;
                    merge(at(i), at(j), sheets);
                    break;
                }
                if (at(i).dropped || (at(i).finding.reference && at(i).finding.candidate)) break;
            }
        }
        dropDone(reference);
        dropDone(candidate);
    }
    if (reference.empty() || candidate.empty()) return;
    auto const tokens = ofBoth([](std::string_view text) { return tokensOf(text); });
    auto tokensOfDraft = [&](int index) -> std::vector<Key> const& { return tokens[static_cast<std::size_t>(index)]; };
    SimilaritySettings settings;
    settings.threshold = sheets.oneText() ? kOneTextThreshold : kTwoTextsThreshold;
    for (Edge const& edge : pairSimilar(reference, tokensOfDraft, candidate, tokensOfDraft, settings)) {
        // Two parameters or ordering lines that pairing kept apart stay apart.
        if (equalKinds(at(edge.reference), at(edge.candidate))) continue;
        merge(at(edge.reference), at(edge.candidate), sheets);
    }
}

// Without the dots that lead from a name to its value, and joints of cells.
std::string withoutLeaders(std::string_view printed) {
    std::string const text = plainText(spaceless(printed));
    std::string plain;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && text[end] == '.') ++end;
        if (end - i > 1) {
            i = end;
        } else {
            plain += text[i++];
        }
    }
    return plain;
}

bool holds(std::vector<model::Place> const& places, model::Side const& piece) {
    return std::any_of(places.begin(), places.end(), [&](auto const& place) { return place.page == piece.page && place.box.grown(1).contains(piece.box.centre()); });
}

// One text of the other sheet may be read in pieces here: a piece that stands where
// a two-sided draft has the other sheet's text belongs to it.
void gatherPieces(std::vector<Draft>& drafts, SheetPair const& sheets) {
    if (!sheets.oneText()) return;
    std::unordered_map<int, std::vector<int>> wholeOnPage;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto const& draft = drafts[i];
        bool const text = draft.rank == Rank::Wording || draft.rank == Rank::Table || draft.rank == Rank::Section || draft.rank == Rank::Furniture ||
                          (draft.rank == Rank::Parameter && draft.finding.relation == Relation::NotComparable);
        if (draft.dropped || !text || !draft.finding.reference || !draft.finding.candidate) continue;
        wholeOnPage[draft.finding.reference->page].push_back(static_cast<int>(i));
        if (draft.finding.candidate->page != draft.finding.reference->page) wholeOnPage[draft.finding.candidate->page].push_back(static_cast<int>(i));
    }
    std::set<int> gathered;
    for (auto& piece : drafts) {
        if (!isCandidateForMerging(piece)) continue;
        bool const inReference = piece.finding.reference.has_value();
        model::Side const& side = inReference ? *piece.finding.reference : *piece.finding.candidate;
        auto const found = sheets.inPlace(side.page) ? wholeOnPage.find(side.page) : wholeOnPage.end();
        if (found == wholeOnPage.end()) continue;
        for (int const index : found->second) {
            auto& whole = drafts[static_cast<std::size_t>(index)];
            if (whole.dropped || !holds(inReference ? whole.candidatePlaces : whole.referencePlaces, side)) continue;
            auto& joined = inReference ? *whole.finding.reference : *whole.finding.candidate;
            bool const before = side.box.y1 < joined.box.y0 + 1 || (side.box.y0 < joined.box.y1 && side.box.x0 < joined.box.x0);
            joined.text = before ? side.text + " " + joined.text : joined.text + " " + side.text;
            joined.box = model::united(joined.box, side.box);
            (inReference ? whole.referencePlaces : whole.candidatePlaces).push_back({side.page, side.box});
            gathered.insert(index);
            piece.dropped = true;
            break;
        }
    }
    for (int const index : gathered) {
        auto& whole = drafts[static_cast<std::size_t>(index)];
        whole.dropped = withoutLeaders(whole.finding.reference->text) == withoutLeaders(whole.finding.candidate->text);
        if (whole.dropped || whole.rank == Rank::Parameter) continue;
        Wording wording = wordingOf(sheets, whole.finding.reference->text, whole.finding.candidate->text);
        whole.finding.relation = wording.relation;
        whole.finding.classes = std::move(wording.classes);
    }
}

}  // namespace

void reconcileOneSided(std::vector<Draft>& drafts, SheetPair const& sheets) {
    joinHalves(drafts, sheets);
    gatherPieces(drafts, sheets);
    for (auto& draft : drafts) {
        if (draft.weak && !(draft.finding.reference && draft.finding.candidate)) draft.dropped = true;
    }
}

void linkProperties(std::vector<Draft>& drafts, SheetPair const& sheets) {
    auto const& r = sheets.reference.document;
    auto const& c = sheets.candidate.document;
    auto first = [](std::vector<std::string> const& list) { return list.empty() ? std::string() : list.front(); };
    std::vector<std::pair<std::string, std::string>> changes;
    for (auto const& [before, after] : {std::pair{first(r.partNumbers), first(c.partNumbers)}, std::pair{r.maker, c.maker}, std::pair{r.revision, c.revision},
                                        std::pair{r.date, c.date}, std::pair{r.title, c.title}}) {
        std::string a = spaceless(before);
        std::string b = spaceless(after);
        if (a != b) changes.emplace_back(std::move(a), std::move(b));
    }
    std::vector<std::optional<std::pair<std::string, std::string>>> plain(drafts.size());  // texts of both sides, where they were looked at
    for (auto& property : drafts) {
        if (property.rank != Rank::Document || property.dropped) continue;
        for (std::size_t i = 0; i < drafts.size() && property.cause < 0; ++i) {
            auto const& draft = drafts[i];
            if (draft.dropped || draft.cause >= 0 || draft.rank == Rank::Document || draft.rank == Rank::Coverage) continue;
            if (!draft.finding.reference || !draft.finding.candidate) continue;
            if (!plain[i]) plain[i].emplace(spaceless(draft.finding.reference->text), spaceless(draft.finding.candidate->text));
            bool const shown = std::any_of(changes.begin(), changes.end(), [&](auto const& change) {
                return (change.first.empty() || plain[i]->first.find(change.first) != std::string::npos) &&
                       (change.second.empty() || plain[i]->second.find(change.second) != std::string::npos);
            });
            if (shown) property.cause = static_cast<int>(i);
        }
    }
}

}  // namespace standin::compare
