// Merging: rules are sorted by axis, place and start; a piece joins one of the
// last few lines when it lies on it and begins where that ends. Looking up: bars
// are spread over horizontal bands, sorted by x in each. Tested by rule_index_test.cpp.
#include "extractors/layout/rule_index.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace standin::layout {

namespace {

using model::Points;
using model::Rule;

// In font heights.
constexpr Points kCollinear = 0.07F;     // pieces of one line differ across by at most
constexpr Points kTouch = 0.12F;         // gap along the line that is no gap
constexpr Points kDashGap = 0.6F;        // gap between dashes
constexpr Points kDoubleLine = 0.25F;    // two lines this close are one double line
constexpr Points kThickness = 0.5F;      // thicker than this: not merged across

constexpr Points kBand = 16;             // points
constexpr std::size_t kBandsAtMost = 1024;

struct Piece {
    Points across0, across1, from, to;
    std::uint32_t colour;
    bool dashed;
};

void mergeAxis(std::vector<Piece>& pieces, Points fontSize) {
    // Along each line.
    std::sort(pieces.begin(), pieces.end(), [](Piece const& a, Piece const& b) {
        Points const ca = a.across0 + a.across1;
        Points const cb = b.across0 + b.across1;
        return ca != cb ? ca < cb : a.from < b.from;
    });
    // Lines within kCollinear get one place, then pieces follow each other along it.
    std::vector<Piece> merged;
    merged.reserve(pieces.size());
    std::size_t first = 0;
    while (first < pieces.size()) {
        Points const start = (pieces[first].across0 + pieces[first].across1) / 2;
        std::size_t last = first + 1;
        while (last < pieces.size() && (pieces[last].across0 + pieces[last].across1) / 2 - start <= kCollinear * fontSize) ++last;
        std::sort(pieces.begin() + static_cast<std::ptrdiff_t>(first), pieces.begin() + static_cast<std::ptrdiff_t>(last),
                  [](Piece const& a, Piece const& b) { return a.from != b.from ? a.from < b.from : a.to < b.to; });
        for (std::size_t i = first; i < last; ++i) {
            Piece const& piece = pieces[i];
            bool joined = false;
            if (i > first) {
                Piece& line = merged.back();
                Points const gap = piece.from - line.to;
                Points const allowed = (piece.dashed && line.dashed ? kDashGap : kTouch) * fontSize;
                if (gap <= allowed) {
                    line.across0 = std::min(line.across0, piece.across0);
                    line.across1 = std::max(line.across1, piece.across1);
                    if (piece.to - piece.from > line.to - line.from) line.colour = piece.colour;
                    line.to = std::max(line.to, piece.to);
                    line.dashed = line.dashed && piece.dashed;
                    joined = true;
                }
            }
            if (!joined) merged.push_back(piece);
        }
        first = last;
    }
    // Double lines: near parallels that cover the same stretch.
    std::sort(merged.begin(), merged.end(), [](Piece const& a, Piece const& b) { return a.across0 != b.across0 ? a.across0 < b.across0 : a.from < b.from; });
    std::vector<Piece> lines;
    lines.reserve(merged.size());
    constexpr std::size_t kBack = 16;
    for (Piece const& piece : merged) {
        bool joined = false;
        for (std::size_t back = 1; back <= std::min(lines.size(), kBack) && !joined; ++back) {
            Piece& line = lines[lines.size() - back];
            if (piece.across0 - line.across1 > kDoubleLine * fontSize) continue;
            if (std::max(piece.across1, line.across1) - line.across0 > kThickness * fontSize) continue;
            Points const common = std::min(piece.to, line.to) - std::max(piece.from, line.from);
            Points const longer = std::max(piece.to - piece.from, line.to - line.from);
            Points const shorter = std::min(piece.to - piece.from, line.to - line.from);
            bool const sameStretch = common >= longer - 2 * kDoubleLine * fontSize;
            bool const onTop = piece.across0 <= line.across1 && common >= shorter - kTouch * fontSize;
            if (!sameStretch && !onTop) continue;
            line.across1 = std::max(line.across1, piece.across1);
            line.from = std::min(line.from, piece.from);
            line.to = std::max(line.to, piece.to);
            line.dashed = line.dashed && piece.dashed;
            joined = true;
        }
        if (!joined) lines.push_back(piece);
    }
    pieces = std::move(lines);
}

}  // namespace

std::vector<Rule> mergeRules(std::span<Rule const> rules, Points fontSize) {
    std::vector<Piece> horizontal;
    std::vector<Piece> vertical;
    for (Rule const& rule : rules) {
        if (!std::isfinite(rule.box.x0 + rule.box.x1 + rule.box.y0 + rule.box.y1)) continue;
        if (rule.axis == Rule::Axis::Horizontal)
            horizontal.push_back({rule.box.y0, rule.box.y1, rule.box.x0, rule.box.x1, rule.colour, rule.dashed});
        else
            vertical.push_back({rule.box.x0, rule.box.x1, rule.box.y0, rule.box.y1, rule.colour, rule.dashed});
    }
    mergeAxis(horizontal, fontSize);
    mergeAxis(vertical, fontSize);
    std::vector<Rule> merged;
    merged.reserve(horizontal.size() + vertical.size());
    for (Piece const& p : horizontal) merged.push_back({Rule::Axis::Horizontal, {p.from, p.across0, p.to, p.across1}, p.colour, p.dashed});
    for (Piece const& p : vertical) merged.push_back({Rule::Axis::Vertical, {p.across0, p.from, p.across1, p.to}, p.colour, p.dashed});
    return merged;
}

RuleIndex::RuleIndex(std::span<Rule const> rules, Frame frame) {
    Rule::Axis const crossing = frame.sideways() ? Rule::Axis::Horizontal : Rule::Axis::Vertical;
    for (Rule const& rule : rules) {
        if (rule.axis != crossing) continue;
        model::Rect const flow = frame.toFlow(rule.box);
        m_bars.push_back({(flow.x0 + flow.x1) / 2, flow.y0, flow.y1});
    }
    if (m_bars.empty()) return;
    std::sort(m_bars.begin(), m_bars.end(), [](Bar const& a, Bar const& b) { return a.x < b.x; });
    Points top = m_bars.front().top;
    Points bottom = m_bars.front().bottom;
    for (Bar const& bar : m_bars) {
        top = std::min(top, bar.top);
        bottom = std::max(bottom, bar.bottom);
    }
    m_bandTop = top;
    auto const bandOf = [&](Points y) { return static_cast<std::size_t>(std::clamp((y - top) / kBand, 0.0F, Points(kBandsAtMost - 1))); };
    // Counted first, so that each band has its place in one list.
    m_bandStarts.assign(bandOf(bottom) + 2, 0);
    for (Bar const& bar : m_bars)
        for (std::size_t b = bandOf(bar.top); b <= bandOf(bar.bottom); ++b) ++m_bandStarts[b + 1];
    std::partial_sum(m_bandStarts.begin(), m_bandStarts.end(), m_bandStarts.begin());
    m_inBands.resize(m_bandStarts.back());
    std::vector<std::size_t> next = m_bandStarts;
    for (Bar const& bar : m_bars)
        for (std::size_t b = bandOf(bar.top); b <= bandOf(bar.bottom); ++b) m_inBands[next[b]++] = bar;
}

bool RuleIndex::between(Points x0, Points x1, Points top, Points bottom) const {
    Points const middle = (top + bottom) / 2;
    if (m_bandStarts.empty() || middle < m_bandTop) return false;
    auto const band = static_cast<std::size_t>(std::min((middle - m_bandTop) / kBand, Points(kBandsAtMost)));
    if (band + 1 >= m_bandStarts.size()) return false;
    std::span const bars(m_inBands.data() + m_bandStarts[band], m_bandStarts[band + 1] - m_bandStarts[band]);
    Points const needed = 0.6F * (bottom - top);
    for (auto it = std::lower_bound(bars.begin(), bars.end(), x0, [](Bar const& bar, Points x) { return bar.x < x; }); it != bars.end() && it->x <= x1; ++it)
        if (std::min(bottom, it->bottom) - std::max(top, it->top) >= needed) return true;
    return false;
}

}  // namespace standin::layout
