// Figures meet by caption without its number, by lettering and by shape, in order
// and then wherever they moved. Lettering is compared word by word.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/figure_findings.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "compare/drawing_match.h"
#include "compare/similarity_pairing.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::Figure;
using model::FindingKind;
using model::Furniture;
using model::Relation;

constexpr std::size_t kShownText = 420;  // bytes of changed lettering in one finding
constexpr std::size_t kShownPiece = 60;
constexpr double kFigureThreshold = 0.5;
constexpr model::Points kSamePlace = 3;

// Word by word: how words are grouped into pieces depends on the program that drew them.
struct FigureWord {
    std::string text;
    model::PlacedText const* piece = nullptr;
};

// Between two languages only words with digits can be compared.
enum class Words { All, WithDigits };

std::vector<FigureWord> letteringWords(Figure const& figure, Words which = Words::All) {
    std::vector<FigureWord> words;
    for (auto const& piece : figure.texts) {
        std::string_view rest = piece.text;
        while (!rest.empty()) {
            auto const end = std::min(rest.find(' '), rest.size());
            auto const word = rest.substr(0, end);
            bool const counts = which == Words::All || word.find_first_of("0123456789") != std::string_view::npos;
            if (end > 0 && counts) words.push_back({std::string(word), &piece});
            rest.remove_prefix(std::min(end + 1, rest.size()));
        }
    }
    return words;
}

// A changed word with what is lettered around it, where that is short: the rest of its
// piece, and pieces that touch it on its line (an exponent, an index, a unit).
std::string inContext(FigureWord const& word, Figure const& figure) {
    constexpr float kTouching = 0.25F;  // of the height of a letter
    constexpr int kMostTouching = 4;    // pieces on either side
    std::string text = word.piece->text.size() <= kShownPiece ? word.piece->text : word.text;
    model::Rect box = word.piece->box;
    model::PlacedText const* last = word.piece;
    for (int step = 0; step < 2 * kMostTouching && text.size() <= kShownPiece; ++step) {
        auto const touches = [&](model::PlacedText const& piece) {
            if (&piece == last || piece.page != word.piece->page || piece.text.size() > kShownPiece) return false;
            float const gap = kTouching * std::min(box.height(), piece.box.height());
            bool const beside = std::abs(piece.box.x0 - box.x1) < gap || std::abs(box.x0 - piece.box.x1) < gap;
            return beside && piece.box.y0 < box.y1 && piece.box.y1 > box.y0;
        };
        auto const found = std::find_if(figure.texts.begin(), figure.texts.end(), touches);
        if (found == figure.texts.end()) break;
        text = found->box.x0 < box.x0 ? found->text + text : text + found->text;
        box = model::united(box, found->box);
        last = &*found;
    }
    return text;
}

Key letteringKey(Figure const& figure) {
    Key key = 0;
    for (auto const& word : letteringWords(figure)) key = combined(key, keyOf(word.text));
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
    for (auto const& word : letteringWords(figure)) tokens.push_back(keyOf(word.text));
    std::sort(tokens.begin(), tokens.end());
    return tokens;
}

// What a figure is told by.
struct Contents {
    std::vector<Key> tokens;
    std::string caption;
};

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

// Word by word; a side may have none.
struct LetteringChange {
    std::string reference;
    std::string candidate;
    model::PlacedText const* alone = nullptr;  // the piece, where one side has none
};

// A running foot that the other sheet took for lettering, or the other way round.
Furniture const* furnitureAt(model::Datasheet const& sheet, model::PlacedText const& piece) {
    auto const stands = [&](Furniture const& furniture) {
        return std::any_of(furniture.places.begin(), furniture.places.end(), [&](auto const& place) { return place.page == piece.page && place.box.contains(piece.box.centre()); });
    };
    auto const found = std::find_if(sheet.furniture.begin(), sheet.furniture.end(), stands);
    return found == sheet.furniture.end() ? nullptr : &*found;
}

std::vector<LetteringChange> lettering(Figure const& r, Figure const& c, Words which) {
    auto keys = [](std::vector<FigureWord> const& words) {
        std::vector<Key> list;
        for (auto const& word : words) list.push_back(keyOf(word.text));
        return list;
    };
    auto const referenceWords = letteringWords(r, which);
    auto const candidateWords = letteringWords(c, which);
    auto const referenceKeys = keys(referenceWords);
    auto const candidateKeys = keys(candidateWords);
    Likeness const likeness = [&](int i, int j) {
        auto const& a = referenceWords[static_cast<std::size_t>(i)];
        auto const& b = candidateWords[static_cast<std::size_t>(j)];
        auto const& boxA = a.piece->box;
        auto const& boxB = b.piece->box;
        bool const place = a.piece->page == b.piece->page && std::abs(boxA.x0 - boxB.x0) < kSamePlace && std::abs(boxA.y0 - boxB.y0) < kSamePlace;
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
    auto ofReference = partnersOfReference(moved, referenceWords.size());
    auto ofCandidate = partnersOfCandidate(moved, candidateWords.size());
    std::vector<LetteringChange> changes;
    for (auto const pair : changed) {
        if (ofReference[static_cast<std::size_t>(pair.reference)] >= 0 || ofCandidate[static_cast<std::size_t>(pair.candidate)] >= 0) continue;
        ofReference[static_cast<std::size_t>(pair.reference)] = pair.candidate;
        ofCandidate[static_cast<std::size_t>(pair.candidate)] = pair.reference;
        changes.push_back({inContext(referenceWords[static_cast<std::size_t>(pair.reference)], r), inContext(candidateWords[static_cast<std::size_t>(pair.candidate)], c), nullptr});
    }
    for (std::size_t i = 0; i < referenceWords.size(); ++i) {
        if (ofReference[i] < 0) changes.push_back({inContext(referenceWords[i], r), {}, referenceWords[i].piece});
    }
    for (std::size_t j = 0; j < candidateWords.size(); ++j) {
        if (ofCandidate[j] < 0) changes.push_back({{}, inContext(candidateWords[j], c), candidateWords[j].piece});
    }
    return changes;
}

// Two makers draw the same thing each in his own way, and nothing follows from it:
// only where one drawing went into both sheets does a change of it mean something.
bool isOneDrawing(Figure const& r, Figure const& c, SheetPair const& sheets) {
    if (sheets.inPlace(r.page) && samePlace(r, c)) return true;
    auto const& reference = sheets.reference.document;
    auto const& candidate = sheets.candidate.document;
    bool const sameMaker = !reference.maker.empty() && reference.maker == candidate.maker;
    bool const samePart = std::find_first_of(reference.partNumbers.begin(), reference.partNumbers.end(), candidate.partNumbers.begin(), candidate.partNumbers.end()) != reference.partNumbers.end();
    return sheets.oneText() && (sameMaker || samePart);
}

// Looks at drawings; only at so many, for each costs a page.
class DrawingMatches {
public:
    explicit DrawingMatches(AlignOptions const& options) : m_options(options) {}

    DrawingMatch match(Figure const& r, Figure const& c) {
        if (m_looked >= kMostLooked) return DrawingMatch::Unknown;
        ++m_looked;
        return matchDrawings({m_options.referencePictures, r.page, r.box, boxesOf(r)}, {m_options.candidatePictures, c.page, c.box, boxesOf(c)});
    }

private:
    static constexpr int kMostLooked = 40;
    static std::vector<model::Rect> boxesOf(Figure const& figure) {
        std::vector<model::Rect> boxes;
        for (auto const& piece : figure.texts) boxes.push_back(piece.box);
        return boxes;
    }
    AlignOptions const& m_options;
    int m_looked = 0;
};

void compareFigures(Figure const& r, Figure const& c, SheetPair const& sheets, DrawingMatches& matches, std::vector<Draft>& drafts) {
    auto add = [&](std::string before, std::string after, Relation relation) {
        Draft draft = makeDraft(FindingKind::Figure, Rank::Figure, relation, sideOf(r.page, r.box, std::move(before)), sideOf(c.page, c.box, std::move(after)));
        draft.finding.section = r.section;
        drafts.push_back(std::move(draft));
    };
    // A caption that only one sheet sets as such is compared with the text.
    bool const bothCaptioned = sheets.sameLanguage && !r.caption.empty() && !c.caption.empty();
    bool const captionsDiffer = bothCaptioned && captionKey(r) != captionKey(c);
    std::vector<LetteringChange> changes = letteringKey(r) == letteringKey(c) ? std::vector<LetteringChange>{} : lettering(r, c, sheets.sameLanguage ? Words::All : Words::WithDigits);
    for (auto& change : changes) {
        if (change.alone == nullptr || !sheets.inPlace(change.alone->page)) continue;
        auto const* furniture = furnitureAt(change.reference.empty() ? sheets.reference : sheets.candidate, *change.alone);
        if (furniture != nullptr) (change.reference.empty() ? change.reference : change.candidate) = furniture->text;
    }
    std::erase_if(changes, [](LetteringChange const& change) { return keyOf(change.reference) == keyOf(change.candidate); });
    // A page number ("3/12") that one of them took for lettering; a lone "3" may be an axis.
    auto const countsItsPage = [](std::string const& text, Figure const& figure, model::Datasheet const& sheet) {
        return text.find_first_not_of("0123456789 ") != std::string::npos && isOwnPageNumber(text, figure.page, sheet.document.pages);
    };
    std::erase_if(changes, [&](LetteringChange const& change) {
        return (change.candidate.empty() && countsItsPage(change.reference, r, sheets.reference)) || (change.reference.empty() && countsItsPage(change.candidate, c, sheets.candidate));
    });
    if (changes.empty()) {
        if (captionsDiffer || (bothCaptioned && sheets.oneText() && keyOf(r.caption) != keyOf(c.caption))) {
            add(describe(r), describe(c), Relation::Reworded);
        } else if (!r.shape.empty() && !c.shape.empty() && r.shape != c.shape && isOneDrawing(r, c, sheets)) {
            auto const match = matches.match(r, c);
            if (match == DrawingMatch::Same) return;  // stored otherwise
            add(describe(r), describe(c), match == DrawingMatch::Different ? Relation::MeaningChanged : Relation::Reworded);
            drafts.back().finding.classes = {model::WordingClass::Style};
        }
        return;
    }
    std::string before = captionsDiffer ? r.caption : std::string();
    std::string after = captionsDiffer ? c.caption : std::string();
    auto append = [](std::string& text, std::string const& word) {
        if (word.empty() || text == word || text.ends_with(" / " + word)) return;  // two words of one piece
        if (!text.empty()) text += " / ";
        text += clipped(word, kShownText);
    };
    for (auto const& change : changes) {
        std::size_t const next = change.reference.size() + change.candidate.size();
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
    std::vector<std::optional<Contents>> ofReference(reference.size());
    std::vector<std::optional<Contents>> ofCandidate(candidate.size());
    auto contents = [](std::vector<std::optional<Contents>>& cache, std::vector<Figure> const& figures, int index) -> Contents const& {
        auto& known = cache[static_cast<std::size_t>(index)];
        auto const& figure = figures[static_cast<std::size_t>(index)];
        if (!known) known = {.tokens = figureTokens(figure), .caption = captionKey(figure)};
        return *known;
    };
    Likeness const likeness = [&](int i, int j) {
        auto const& r = reference[static_cast<std::size_t>(i)];
        auto const& c = candidate[static_cast<std::size_t>(j)];
        if (sheets.inPlace(r.page) && samePlace(r, c)) return 1.0;
        auto const& a = contents(ofReference, reference, i);
        auto const& b = contents(ofCandidate, candidate, j);
        if (a.tokens.empty() || b.tokens.empty()) return !r.shape.empty() && r.shape == c.shape ? 1.0 : 0.0;
        if (!a.caption.empty() && a.caption == b.caption) return 0.9;
        return similarity(a.tokens, b.tokens) + (!r.shape.empty() && r.shape == c.shape ? 0.3 : 0.0);
    };
    result.pairs = alignSequences(referenceKeys, candidateKeys, likeness, {.threshold = kFigureThreshold});
    pairMoved(referenceKeys, candidateKeys, result.pairs);
    DrawingMatches matches(sheets.options);
    for (auto const pair : result.pairs) {
        auto const r = static_cast<std::size_t>(pair.reference);
        auto const c = static_cast<std::size_t>(pair.candidate);
        if (referenceKeys[r] != candidateKeys[c]) compareFigures(reference[r], candidate[c], sheets, matches, result.drafts);
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
