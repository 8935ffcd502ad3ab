// Places meet when they are on the same page and one covers a fair part of the
// smaller. Drafts are looked up by bands of a page, so the work is linear in the
// findings, also on a page of many.
//
// Tested by tests/src/compare/drafts_test.cpp.
#include "compare/drafts.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <string>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "compare/finding_id.h"
#include "compare/text_keys.h"
#include "text/leaders.h"

namespace standin::compare {

namespace {

constexpr std::string_view kBetweenParts = " | ";  // of a row
constexpr std::size_t kLongestText = 590;  // of a side, in bytes: a row or a sentence, not the page
constexpr float kSharedPart = 0.4F;        // of the smaller of two boxes

bool meet(model::Place const& a, model::Place const& b) {
    if (a.page != b.page) return false;
    model::Rect const common = model::intersection(a.box.grown(0.1F), b.box.grown(0.1F));
    if (common.empty()) return false;
    float const smaller = std::min(a.box.grown(0.1F).area(), b.box.grown(0.1F).area());
    return common.area() >= kSharedPart * smaller;
}

bool meet(std::vector<model::Place> const& a, std::vector<model::Place> const& b) {
    return std::any_of(a.begin(), a.end(), [&](auto const& x) { return std::any_of(b.begin(), b.end(), [&](auto const& y) { return meet(x, y); }); });
}

bool contains(std::optional<model::Side> const& whole, std::optional<model::Side> const& part) {
    if (!part) return true;
    if (!whole) return false;
    std::string const text = spaceless(part->text);
    return spaceless(whole->text).find(text) != std::string::npos;
}

// Does `higher` stand at every place of `lower` that it has a side for?
bool covers(Draft const& higher, Draft const& lower) {
    bool const reference = shareReferencePlace(higher, lower);
    bool const candidate = shareCandidatePlace(higher, lower);
    if (lower.finding.reference && lower.finding.candidate) {
        if (higher.finding.reference && higher.finding.candidate) return reference && candidate;
        return reference || candidate;
    }
    return lower.finding.reference ? reference : candidate;
}

// Pins meet by number and name. A sentence or lettering at the place of one says nothing of
// what the other sheet has there.
bool isNoPin(Draft const& higher, Draft const& lower) {
    bool const half = !higher.finding.reference || !higher.finding.candidate;
    return higher.rank == Rank::Pin && half && lower.finding.reference && lower.finding.candidate && (lower.rank == Rank::Wording || lower.rank == Rank::Figure);
}

bool isDerived(Rank rank) { return rank == Rank::Conflict || rank == Rank::Package || rank == Rank::Document; }

// The lower draft shows both sides of a change of which the higher one saw only
// one: the higher becomes two-sided. A feature stays unstated in the other sheet,
// with the text that stands there instead.
void complete(Draft& higher, Draft const& lower) {
    auto& finding = higher.finding;
    bool const half = !finding.reference || !finding.candidate;
    if (!finding.reference && lower.finding.reference) {
        finding.reference = lower.finding.reference;
        higher.referencePlaces = lower.referencePlaces;
    }
    if (!finding.candidate && lower.finding.candidate) {
        finding.candidate = lower.finding.candidate;
        higher.candidatePlaces = lower.candidatePlaces;
    }
    if (half && finding.reference && finding.candidate && higher.rank != Rank::Feature) finding.relation = model::Relation::NotComparable;
}

// Of the values that a parameter's side states, does the text print every one?
bool printsValues(model::Side const& side, std::string const& text) {
    std::string const printed = spaceless(text);
    std::array<std::string const*, 3> const values{&side.min, &side.typ, &side.max};
    return std::all_of(values.begin(), values.end(), [&](std::string const* value) { return value->empty() || printed.find(spaceless(*value)) != std::string::npos; });
}

// Drafts by the bands of the pages that their places touch, so that a draft meets those
// near it and not all of a long page.
class DraftsByPlace {
public:
    void add(std::vector<model::Place> const& places, int draft) {
        forEachBand(places, [&](std::vector<int>& list) {
            if (list.empty() || list.back() != draft) list.push_back(draft);
        });
    }

    template <class Wanted>
    void collect(std::vector<model::Place> const& places, Wanted const& wanted, std::vector<int>& found) {
        forEachBand(places, [&](std::vector<int> const& list) { std::copy_if(list.begin(), list.end(), std::back_inserter(found), wanted); });
    }

private:
    static constexpr model::Points kBand = 48;
    static constexpr model::Points kMargin = 2;  // more than meet() allows boxes to lie apart
    static constexpr int kMostBands = 64;        // a box beyond all pages

    template <class Visit>
    void forEachBand(std::vector<model::Place> const& places, Visit const& visit) {
        for (auto const& place : places) {
            int const first = bandOf(place.box.y0 - kMargin);
            int const last = std::min(bandOf(place.box.y1 + kMargin), first + kMostBands);
            for (int band = first; band <= last; ++band) visit(m_bands[{place.page, band}]);
        }
    }
    static int bandOf(model::Points y) { return y > 0 ? static_cast<int>(std::min(y, 1e6F) / kBand) : 0; }

    std::map<std::pair<int, int>, std::vector<int>> m_bands;  // by page and band
};

// All that a pin's text says stands in the other text, the name behind its number as a cell.
bool tellsPin(std::optional<model::Side> const& other, std::optional<model::Side> const& pin) {
    if (!pin || !other) return true;
    std::string const row = fmt::format("|{}|", spaceless(other->text));
    std::string_view rest = pin->text;
    for (int part = 0; !rest.empty(); ++part) {
        auto const end = std::min(rest.find(kBetweenParts), rest.size());
        std::string const text = spaceless(rest.substr(0, end));
        if (row.find(part == 1 ? fmt::format("|{}|", text) : text) == std::string::npos) return false;
        rest.remove_prefix(std::min(end + kBetweenParts.size(), rest.size()));
    }
    return true;
}

// What the lower draft shows and the higher does not is shown by the higher too.
void show(Draft& higher, Draft const& lower) {
    auto& finding = higher.finding;
    if (!contains(finding.reference, lower.finding.reference) || !contains(finding.candidate, lower.finding.candidate)) {
        // A row of several pins, of another one or in part does not replace what the pin says.
        bool const beside = higher.rank == Rank::Pin && !(tellsPin(lower.finding.reference, finding.reference) && tellsPin(lower.finding.candidate, finding.candidate));
        // A text that only lies over the row is not the row.
        auto const take = [beside](std::optional<model::Side>& mine, std::optional<model::Side> const& other) {
            if (!mine || !other || !printsValues(*mine, other->text)) return;
            mine->text = beside && mine->text != other->text ? mine->text + " / " + other->text : other->text;
        };
        take(finding.reference, lower.finding.reference);
        take(finding.candidate, lower.finding.candidate);
    }
}

// Leader dots join the cells beside them, as printed.
std::string withoutJointsBehindLeaders(std::string text) {
    for (auto at = text.find(kBetweenParts); at != std::string::npos; at = text.find(kBetweenParts, at + 1)) {
        if (text::leaderBefore(text, at) < at) text.replace(at, kBetweenParts.size(), " ");
    }
    return text;
}

}  // namespace

model::Side sideOf(int page, model::Rect const& box, std::string text) {
    model::Side side;
    side.page = page;
    side.box = box;
    side.text = std::move(text);
    return side;
}

Draft makeDraft(model::FindingKind kind, Rank rank, model::Relation relation, std::optional<model::Side> reference,
                std::optional<model::Side> candidate) {
    Draft draft;
    draft.rank = rank;
    draft.finding.kind = kind;
    draft.finding.relation = relation;
    if (reference) draft.referencePlaces.push_back({reference->page, reference->box});
    if (candidate) draft.candidatePlaces.push_back({candidate->page, candidate->box});
    draft.finding.reference = std::move(reference);
    draft.finding.candidate = std::move(candidate);
    return draft;
}

bool shareReferencePlace(Draft const& a, Draft const& b) { return meet(a.referencePlaces, b.referencePlaces); }
bool shareCandidatePlace(Draft const& a, Draft const& b) { return meet(a.candidatePlaces, b.candidatePlaces); }

void absorb(std::vector<Draft>& drafts) {
    DraftsByPlace byReference;
    DraftsByPlace byCandidate;
    std::vector<int> order;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        if (drafts[i].dropped || drafts[i].rank == Rank::Coverage) continue;
        order.push_back(static_cast<int>(i));
    }
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return drafts[static_cast<std::size_t>(a)].rank < drafts[static_cast<std::size_t>(b)].rank; });
    auto const enlist = [&](int i) {
        byReference.add(drafts[static_cast<std::size_t>(i)].referencePlaces, i);
        byCandidate.add(drafts[static_cast<std::size_t>(i)].candidatePlaces, i);
    };
    for (int const index : order) {
        auto& draft = drafts[static_cast<std::size_t>(index)];
        std::vector<int> rivals;
        auto const ofHigherRank = [&](int i) {
            auto const& higher = drafts[static_cast<std::size_t>(i)];
            return !higher.dropped && higher.rank != draft.rank;
        };
        byReference.collect(draft.referencePlaces, ofHigherRank, rivals);
        byCandidate.collect(draft.candidatePlaces, ofHigherRank, rivals);
        std::sort(rivals.begin(), rivals.end());
        rivals.erase(std::unique(rivals.begin(), rivals.end()), rivals.end());
        // Several readings of one row: a two-sided one speaks for it before a one-sided one.
        std::stable_sort(rivals.begin(), rivals.end(), [&](int a, int b) {
            auto twoSided = [&](int i) {
                auto const& finding = drafts[static_cast<std::size_t>(i)].finding;
                return finding.reference && finding.candidate;
            };
            return twoSided(a) > twoSided(b);
        });
        int partial = -1;
        for (int const rival : rivals) {
            auto& higher = drafts[static_cast<std::size_t>(rival)];
            if (higher.dropped || higher.rank == draft.rank || isNoPin(higher, draft)) continue;
            bool const derived = isDerived(draft.rank);
            if (derived ? !(shareReferencePlace(higher, draft) || shareCandidatePlace(higher, draft)) : !covers(higher, draft)) continue;
            if (derived || higher.rank == Rank::Feature) {
                if (draft.cause < 0) draft.cause = rival;
                if (derived) break;
                complete(higher, draft);
                show(higher, draft);
                enlist(rival);
                break;
            }
            if (partial >= 0) {
                // A second one-sided reading of the same row: one change, already told.
                higher.dropped = true;
                continue;
            }
            bool const higherTwoSided = higher.finding.reference && higher.finding.candidate;
            complete(higher, draft);
            show(higher, draft);
            enlist(rival);
            draft.dropped = true;
            if (higherTwoSided) break;
            partial = rival;
        }
        if (draft.dropped) continue;
        enlist(index);
    }
    // Causes lead to findings that stand on their own.
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        int cause = drafts[i].cause;
        for (int steps = 0; cause >= 0 && steps < 16; ++steps) {
            auto const& other = drafts[static_cast<std::size_t>(cause)];
            if (other.cause < 0 || other.cause == static_cast<int>(i)) break;
            cause = other.cause;
        }
        if (cause == static_cast<int>(i) || (cause >= 0 && drafts[static_cast<std::size_t>(cause)].dropped)) cause = -1;
        drafts[i].cause = cause;
    }
}

std::vector<model::Finding> finish(std::vector<Draft>& drafts) {
    std::vector<int> order;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        if (!drafts[i].dropped) order.push_back(static_cast<int>(i));
    }
    auto placeKey = [&](int index) {
        auto const& finding = drafts[static_cast<std::size_t>(index)].finding;
        auto key = [](std::optional<model::Side> const& side) {
            return side ? std::make_tuple(0, side->page, side->box.y0, side->box.x0) : std::make_tuple(1, 0, 0.0F, 0.0F);
        };
        return std::make_pair(key(finding.reference), key(finding.candidate));
    };
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return placeKey(a) < placeKey(b); });
    std::vector<model::Finding> findings;
    findings.reserve(order.size());
    std::vector<int> positionOf(drafts.size(), -1);
    for (int const index : order) {
        auto& draft = drafts[static_cast<std::size_t>(index)];
        auto& finding = draft.finding;
        for (auto* side : {&finding.reference, &finding.candidate}) {
            if (*side) (*side)->text = withoutJointsBehindLeaders(std::move((*side)->text));
        }
        if (finding.reference && finding.candidate) {
            auto shown = excerpts(finding.reference->text, finding.candidate->text, kLongestText);
            finding.reference->text = std::move(shown.reference);
            finding.candidate->text = std::move(shown.candidate);
        } else {
            for (auto* side : {&finding.reference, &finding.candidate}) {
                if (*side) (*side)->text = clipped((*side)->text, kLongestText);
            }
        }
        positionOf[static_cast<std::size_t>(index)] = static_cast<int>(findings.size());
        findings.push_back(std::move(finding));
    }
    nameFindings(findings);
    for (int const index : order) {
        int const cause = drafts[static_cast<std::size_t>(index)].cause;
        if (cause < 0) continue;
        int const at = positionOf[static_cast<std::size_t>(cause)];
        if (at < 0) continue;
        findings[static_cast<std::size_t>(positionOf[static_cast<std::size_t>(index)])].consequenceOf = findings[static_cast<std::size_t>(at)].id;
    }
    return findings;
}

}  // namespace standin::compare
