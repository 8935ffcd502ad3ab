// Figures meet by caption without its number, by lettering and by shape, in order
// and then wherever they moved. Lettering is compared as a sequence of pieces.
//
// Tested by tests/src/compare/figure_findings_test.cpp.
#include "compare/figure_findings.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "compare/similarity_pairing.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::Figure;
using model::FindingKind;
using model::Relation;

constexpr std::size_t kShownText = 420;  // bytes of changed lettering in one finding
constexpr double kFigureThreshold = 0.5;
constexpr model::Points kSamePlace = 3;

Key letteringKey(Figure const& figure) {
    Key key = 0;
    for (auto const& piece : figure.texts) key = combined(key, keyOf(piece.text));
    return key;
}

// "Figure 3. Test circuit" -> the folded "testcircuit".
std::string captionKey(Figure const& figure) {
    std::string key = text::foldKey(figure.caption);
    for (std::string_view const word : {std::string_view("figure"), std::string_view("fig"), std::string_view("图"), std::string_view("図")}) {
        if (key.compare(0, word.size(), word) != 0) continue;
        std::size_t at = word.size();
        while (at < key.size() && text::isAsciiDigit(key[at])) ++at;
        return key.substr(at);
    }
    return key;
}

std::vector<Key> figureTokens(Figure const& figure) {
    std::vector<Key> tokens = tokensOf(figure.caption);
    for (auto const& piece : figure.texts) tokens.push_back(keyOf(piece.text));
    std::sort(tokens.begin(), tokens.end());
    return tokens;
}

bool samePlace(Figure const& a, Figure const& b) {
    return a.page == b.page && std::abs(a.box.x0 - b.box.x0) < kSamePlace && std::abs(a.box.y0 - b.box.y0) < kSamePlace &&
           std::abs(a.box.x1 - b.box.x1) < kSamePlace && std::abs(a.box.y1 - b.box.y1) < kSamePlace;
}

std::string describe(Figure const& figure) {
    if (!figure.caption.empty()) return figure.caption;
    std::string text;
    for (auto const& piece : figure.texts) {
        if (text.size() > kShownText) break;
        if (!text.empty()) text += ' ';
        text += piece.text;
    }
    return text;
}

// Piece by piece; a side may have no piece.
struct LetteringChange {
    model::PlacedText const* reference = nullptr;
    model::PlacedText const* candidate = nullptr;
};

std::vector<LetteringChange> lettering(Figure const& r, Figure const& c) {
    auto keys = [](Figure const& figure) {
        std::vector<Key> list;
        for (auto const& piece : figure.texts) list.push_back(keyOf(piece.text));
        return list;
    };
    auto const referenceKeys = keys(r);
    auto const candidateKeys = keys(c);
    Likeness const likeness = [&](int i, int j) {
        auto const& a = r.texts[static_cast<std::size_t>(i)];
        auto const& b = c.texts[static_cast<std::size_t>(j)];
        bool const place = a.page == b.page && std::abs(a.box.x0 - b.box.x0) < kSamePlace && std::abs(a.box.y0 - b.box.y0) < kSamePlace;
        return std::max(letterSimilarity(a.text, b.text), place ? 0.7 : 0.0);
    };
    auto pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = 0.4});
    // Lettering has no order of reading: what stands elsewhere is the same.
    std::vector<IndexPair> equal;
    std::vector<IndexPair> changed;
    for (auto const pair : pairs) {
        (referenceKeys[static_cast<std::size_t>(pair.reference)] == candidateKeys[static_cast<std::size_t>(pair.candidate)] ? equal : changed).push_back(pair);
    }
    std::vector<IndexPair> moved = equal;
    pairMoved(referenceKeys, candidateKeys, moved);
    auto ofReference = partnersOfReference(moved, r.texts.size());
    auto ofCandidate = partnersOfCandidate(moved, c.texts.size());
    std::vector<LetteringChange> changes;
    for (auto const pair : changed) {
        if (ofReference[static_cast<std::size_t>(pair.reference)] >= 0 || ofCandidate[static_cast<std::size_t>(pair.candidate)] >= 0) continue;
        ofReference[static_cast<std::size_t>(pair.reference)] = pair.candidate;
        ofCandidate[static_cast<std::size_t>(pair.candidate)] = pair.reference;
        changes.push_back({&r.texts[static_cast<std::size_t>(pair.reference)], &c.texts[static_cast<std::size_t>(pair.candidate)]});
    }
    for (std::size_t i = 0; i < r.texts.size(); ++i) {
        if (ofReference[i] < 0) changes.push_back({&r.texts[i], nullptr});
    }
    for (std::size_t j = 0; j < c.texts.size(); ++j) {
        if (ofCandidate[j] < 0) changes.push_back({nullptr, &c.texts[j]});
    }
    return changes;
}

void compareFigures(Figure const& r, Figure const& c, Kinship kinship, std::vector<Draft>& drafts) {
    auto add = [&](std::string before, std::string after, Relation relation) {
        Draft draft = makeDraft(FindingKind::Figure, Rank::Figure, relation, sideOf(r.page, r.box, std::move(before)), sideOf(c.page, c.box, std::move(after)));
        draft.finding.section = r.section;
        drafts.push_back(std::move(draft));
    };
    bool const captionsDiffer = captionKey(r) != captionKey(c);
    std::vector<LetteringChange> const changes = letteringKey(r) == letteringKey(c) ? std::vector<LetteringChange>{} : lettering(r, c);
    if (changes.empty()) {
        if (captionsDiffer || (kinship == Kinship::OneText && keyOf(r.caption) != keyOf(c.caption))) {
            add(describe(r), describe(c), Relation::Reworded);
        } else if (!r.shape.empty() && !c.shape.empty() && r.shape != c.shape) {
            add(describe(r), describe(c), kinship == Kinship::OneText ? Relation::MeaningChanged : Relation::Reworded);
        }
        return;
    }
    std::string before = captionsDiffer ? r.caption : std::string();
    std::string after = captionsDiffer ? c.caption : std::string();
    auto append = [](std::string& text, model::PlacedText const* piece) {
        if (piece == nullptr) return;
        if (!text.empty()) text += " / ";
        text += clipped(piece->text, kShownText);
    };
    for (auto const& change : changes) {
        std::size_t const next = (change.reference != nullptr ? change.reference->text.size() : 0) + (change.candidate != nullptr ? change.candidate->text.size() : 0);
        if (before.size() + after.size() > 0 && std::max(before.size(), after.size()) + next > kShownText) {
            add(std::move(before), std::move(after), Relation::Reworded);
            before.clear();
            after.clear();
        }
        append(before, change.reference);
        append(after, change.candidate);
    }
    if (!before.empty() || !after.empty()) add(std::move(before), std::move(after), Relation::Reworded);
}

}  // namespace

FigureFindings findFigureDifferences(SheetPair const& sheets) {
    FigureFindings result;
    auto const& reference = sheets.reference.figures;
    auto const& candidate = sheets.candidate.figures;
    auto keys = [](std::vector<Figure> const& figures) {
        std::vector<Key> list;
        for (auto const& figure : figures) list.push_back(combined(combined(keyOf(figure.caption), letteringKey(figure)), hashOf(figure.shape)));
        return list;
    };
    auto const referenceKeys = keys(reference);
    auto const candidateKeys = keys(candidate);
    std::vector<std::vector<Key>> referenceTokens(reference.size());
    std::vector<std::vector<Key>> candidateTokens(candidate.size());
    auto tokens = [](std::vector<std::vector<Key>>& cache, std::vector<Figure> const& figures, int index) -> std::vector<Key> const& {
        auto& list = cache[static_cast<std::size_t>(index)];
        if (list.empty()) list = figureTokens(figures[static_cast<std::size_t>(index)]);
        return list;
    };
    Likeness const likeness = [&](int i, int j) {
        auto const& r = reference[static_cast<std::size_t>(i)];
        auto const& c = candidate[static_cast<std::size_t>(j)];
        if (samePlace(r, c)) return 1.0;
        auto const& a = tokens(referenceTokens, reference, i);
        auto const& b = tokens(candidateTokens, candidate, j);
        if (a.empty() || b.empty()) return !r.shape.empty() && r.shape == c.shape ? 1.0 : 0.0;
        std::string const caption = captionKey(r);
        if (!caption.empty() && caption == captionKey(c)) return 0.9;
        return similarity(a, b) + (!r.shape.empty() && r.shape == c.shape ? 0.3 : 0.0);
    };
    result.pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = kFigureThreshold});
    pairMoved(referenceKeys, candidateKeys, result.pairs);
    for (auto const pair : result.pairs) {
        auto const r = static_cast<std::size_t>(pair.reference);
        auto const c = static_cast<std::size_t>(pair.candidate);
        if (referenceKeys[r] != candidateKeys[c]) compareFigures(reference[r], candidate[c], sheets.kinship, result.drafts);
    }
    auto addOnly = [&](std::vector<Figure> const& figures, std::vector<int> const& partners, Relation relation) {
        for (std::size_t i = 0; i < figures.size(); ++i) {
            if (partners[i] >= 0) continue;
            bool const inReference = relation == Relation::OnlyReference;
            std::optional<model::Side> side = sideOf(figures[i].page, figures[i].box, describe(figures[i]));
            Draft draft = makeDraft(FindingKind::Figure, Rank::Figure, relation, inReference ? side : std::nullopt, inReference ? std::nullopt : side);
            draft.finding.section = figures[i].section;
            result.drafts.push_back(std::move(draft));
        }
    };
    addOnly(reference, partnersOfReference(result.pairs, reference.size()), Relation::OnlyReference);
    addOnly(candidate, partnersOfCandidate(result.pairs, candidate.size()), Relation::OnlyCandidate);
    return result;
}

}  // namespace standin::compare
