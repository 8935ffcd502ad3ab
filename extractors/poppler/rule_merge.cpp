// Sorted by axis, colour and the place across the line, the pieces of one line
// lie together; sorted along the line, neighbours are joined where they touch.
// What is left of a line is then searched for runs of dashes: at least
// kFewestDashes pieces, each short, with gaps that differ little.
//
// Tested by tests/extractors/poppler/rule_merge_test.cpp.
#include "extractors/poppler/rule_merge.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <tuple>

namespace standin::poppler {

using model::Points;
using model::Rect;
using model::Rule;

namespace {

// Absolute points: see page_graphics.cpp.
constexpr Points kSameLine = 0.35F;     // centres across the line
constexpr Points kTouching = 0.6F;      // gap that a reader does not see
constexpr Points kLikeThickness = 0.8F;
constexpr Points kLongestDash = 9.0F;
constexpr Points kWidestGap = 6.0F;
constexpr std::size_t kFewestDashes = 5;

struct Piece {
    Rule rule;
    std::size_t order = 0;
    Points from = 0;    // along the line
    Points to = 0;
    Points across = 0;  // centre, across the line
};

Piece pieceOf(Rule const& rule, std::size_t order) {
    bool const horizontal = rule.axis == Rule::Axis::Horizontal;
    return {rule, order, horizontal ? rule.box.x0 : rule.box.y0, horizontal ? rule.box.x1 : rule.box.y1,
            horizontal ? (rule.box.y0 + rule.box.y1) / 2 : (rule.box.x0 + rule.box.x1) / 2};
}

Points thickness(Rule const& rule) { return rule.axis == Rule::Axis::Horizontal ? rule.box.height() : rule.box.width(); }

void join(Piece& piece, Piece const& other) {
    Rect const& a = piece.rule.box;
    Rect const& b = other.rule.box;
    piece.rule.box = {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
    piece.from = std::min(piece.from, other.from);
    piece.to = std::max(piece.to, other.to);
    piece.order = std::min(piece.order, other.order);
}

// Appends the line's pieces [begin, end), which are sorted along it, to `out`,
// joined where they touch.
void joinTouching(std::vector<Piece> const& pieces, std::size_t begin, std::size_t end, std::vector<Piece>& out) {
    std::size_t const first = out.size();
    for (std::size_t i = begin; i < end; ++i) {
        bool const joins = out.size() > first && pieces[i].from - out.back().to <= kTouching &&
                           std::abs(thickness(out.back().rule) - thickness(pieces[i].rule)) <= kLikeThickness;
        if (joins) {
            join(out.back(), pieces[i]);
        } else {
            out.push_back(pieces[i]);
        }
    }
}

// Joins runs of dashes within out[first, end).
void joinDashes(std::vector<Piece>& out, std::size_t first) {
    std::size_t kept = first;
    std::size_t i = first;
    while (i < out.size()) {
        std::size_t end = i;
        Points narrow = kWidestGap;
        Points wide = 0;
        while (end < out.size() && out[end].to - out[end].from <= kLongestDash) {
            if (end > i) {
                Points const gap = out[end].from - out[end - 1].to;
                Points const low = std::min(narrow, gap);
                Points const high = std::max(wide, gap);
                if (gap > kWidestGap || high > 2 * low + kTouching) break;
                narrow = low;
                wide = high;
            }
            ++end;
        }
        if (end - i >= kFewestDashes) {
            Piece line = out[i];
            for (std::size_t k = i + 1; k < end; ++k) join(line, out[k]);
            line.rule.dashed = true;
            out[kept++] = line;
            i = end;
        } else {
            out[kept++] = out[i++];
        }
    }
    out.resize(kept);
}

}  // namespace

void mergeRules(std::vector<Rule>& rules) {
    std::vector<Piece> pieces;
    pieces.reserve(rules.size());
    for (std::size_t i = 0; i < rules.size(); ++i) pieces.push_back(pieceOf(rules[i], i));
    std::sort(pieces.begin(), pieces.end(), [](Piece const& a, Piece const& b) {
        return std::tie(a.rule.axis, a.rule.colour, a.rule.dashed, a.across, a.from, a.order) <
               std::tie(b.rule.axis, b.rule.colour, b.rule.dashed, b.across, b.from, b.order);
    });
    std::vector<Piece> out;
    out.reserve(pieces.size());
    std::size_t begin = 0;
    while (begin < pieces.size()) {
        Piece const& lead = pieces[begin];
        std::size_t end = begin + 1;
        while (end < pieces.size() && pieces[end].rule.axis == lead.rule.axis && pieces[end].rule.colour == lead.rule.colour &&
               pieces[end].rule.dashed == lead.rule.dashed && pieces[end].across - lead.across <= kSameLine) {
            ++end;
        }
        std::sort(pieces.begin() + static_cast<std::ptrdiff_t>(begin), pieces.begin() + static_cast<std::ptrdiff_t>(end),
                  [](Piece const& a, Piece const& b) { return std::tie(a.from, a.order) < std::tie(b.from, b.order); });
        std::size_t const first = out.size();
        joinTouching(pieces, begin, end, out);
        joinDashes(out, first);
        begin = end;
    }
    std::sort(out.begin(), out.end(), [](Piece const& a, Piece const& b) { return a.order < b.order; });
    rules.clear();
    for (Piece const& piece : out) rules.push_back(piece.rule);
}

}  // namespace standin::poppler
