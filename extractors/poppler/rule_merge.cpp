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
    std::uint64_t line = 0;  // axis, dashes and colour in one number
    Points from = 0;         // along the line
    Points to = 0;
    Points across = 0;       // centre, across the line
    std::uint32_t order = 0;  // index in the list given
    Rule rule;
};

Piece pieceOf(Rule const& rule, std::uint32_t order) {
    bool const horizontal = rule.axis == Rule::Axis::Horizontal;
    Piece piece;
    piece.line = static_cast<std::uint64_t>(rule.axis) << 33U | static_cast<std::uint64_t>(rule.dashed) << 32U | rule.colour;
    piece.from = horizontal ? rule.box.x0 : rule.box.y0;
    piece.to = horizontal ? rule.box.x1 : rule.box.y1;
    piece.across = horizontal ? (rule.box.y0 + rule.box.y1) / 2 : (rule.box.x0 + rule.box.x1) / 2;
    piece.order = order;
    piece.rule = rule;
    return piece;
}

// What the first sort looks at, kept small.
struct Key {
    std::uint64_t line = 0;
    Points across = 0;
    std::uint32_t order = 0;
};

Points thickness(Rule const& rule) { return rule.axis == Rule::Axis::Horizontal ? rule.box.height() : rule.box.width(); }

void join(Piece& piece, Piece const& other) {
    Rect const& a = piece.rule.box;
    Rect const& b = other.rule.box;
    piece.rule.box = {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
    piece.from = std::min(piece.from, other.from);
    piece.to = std::max(piece.to, other.to);
    piece.order = std::min(piece.order, other.order);
}

// Appends the pieces of one line, which are sorted along it, to `out`, joined
// where they touch.
void joinTouching(std::vector<Piece> const& pieces, std::vector<Piece>& out) {
    std::size_t const first = out.size();
    for (Piece const& piece : pieces) {
        bool const joins = out.size() > first && piece.from - out.back().to <= kTouching &&
                           std::abs(thickness(out.back().rule) - thickness(piece.rule)) <= kLikeThickness;
        if (joins) {
            join(out.back(), piece);
        } else {
            out.push_back(piece);
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
    if (rules.size() < 2) return;
    std::vector<Piece> all;
    std::vector<Key> keys;
    all.reserve(rules.size());
    keys.reserve(rules.size());
    for (std::size_t i = 0; i < rules.size(); ++i) {
        all.push_back(pieceOf(rules[i], static_cast<std::uint32_t>(i)));
        keys.push_back({all.back().line, all.back().across, all.back().order});
    }
    std::sort(keys.begin(), keys.end(), [](Key const& a, Key const& b) { return std::tie(a.line, a.across, a.order) < std::tie(b.line, b.across, b.order); });
    std::vector<Piece> pieces;
    std::vector<Piece> out;
    out.reserve(rules.size());
    std::size_t begin = 0;
    while (begin < keys.size()) {
        std::size_t end = begin;
        pieces.clear();
        while (end < keys.size() && keys[end].line == keys[begin].line && keys[end].across - keys[begin].across <= kSameLine) pieces.push_back(all[keys[end++].order]);
        std::sort(pieces.begin(), pieces.end(), [](Piece const& a, Piece const& b) { return std::tie(a.from, a.order) < std::tie(b.from, b.order); });
        std::size_t const first = out.size();
        joinTouching(pieces, out);
        joinDashes(out, first);
        begin = end;
    }
    for (std::size_t i = 0; i < out.size(); ++i) keys[i] = {out[i].order, 0, static_cast<std::uint32_t>(i)};
    std::sort(keys.begin(), keys.begin() + static_cast<std::ptrdiff_t>(out.size()), [](Key const& a, Key const& b) { return a.line < b.line; });
    rules.clear();
    for (std::size_t i = 0; i < out.size(); ++i) rules.push_back(out[keys[i].order].rule);
}

}  // namespace standin::poppler
