// Sorted by axis, colour and the place across the line, the pieces of one line
// lie together; sorted along the line, neighbours are joined where they touch.
// What is left of a line is then searched for runs of dashes: at least
// kFewestDashes pieces, each short, with gaps that differ little.
//
// Tested by tests/extractors/poppler/rule_merge_test.cpp.
#include "extractors/poppler/rule_merge.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <numeric>

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
constexpr std::size_t kManyKeys = 1024;  // are faster to sort by bytes than by comparing

Points thickness(Rule const& rule) { return rule.axis == Rule::Axis::Horizontal ? rule.box.height() : rule.box.width(); }

// Ordered as the numbers are, and 0 as -0.
std::uint32_t orderedBits(Points value) {
    auto const bits = std::bit_cast<std::uint32_t>(value + 0.0F);
    return (bits & 0x80000000U) != 0 ? ~bits : bits | 0x80000000U;
}

bool isHorizontal(Rule const& rule) { return rule.axis == Rule::Axis::Horizontal; }

}  // namespace

void RuleMerger::join(Piece& piece, Piece const& other) {
    Rect const& a = piece.rule.box;
    Rect const& b = other.rule.box;
    piece.rule.box = {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
    piece.from = std::min(piece.from, other.from);
    piece.to = std::max(piece.to, other.to);
    piece.order = std::min(piece.order, other.order);
}

// By line; those of one line in the order given. Drawings have thousands of pieces on a
// page, which are sorted by one byte of the number after the other.
void RuleMerger::sortKeys() {
    if (m_keys.size() < kManyKeys) {
        std::sort(m_keys.begin(), m_keys.end(), [](Key const& a, Key const& b) { return a.line != b.line ? a.line < b.line : a.order < b.order; });
        return;
    }
    m_sortedKeys.resize(m_keys.size());
    for (unsigned shift = 0; shift < 64; shift += 8) {
        auto const byteOf = [shift](Key const& key) { return static_cast<std::size_t>(key.line >> shift & 0xFFU); };
        std::array<std::uint32_t, 257> starts{};  // of the keys with each byte
        for (Key const& key : m_keys) ++starts[byteOf(key) + 1];
        if (starts[byteOf(m_keys.front()) + 1] == m_keys.size()) continue;  // the same for all
        std::partial_sum(starts.begin(), starts.end(), starts.begin());
        for (Key const& key : m_keys) m_sortedKeys[starts[byteOf(key)]++] = key;
        m_keys.swap(m_sortedKeys);
    }
}

// Appends the pieces of the line, which are sorted along it, joined where they
// touch.
void RuleMerger::joinTouching(std::vector<Rule> const& rules) {
    std::size_t const first = m_out.size();
    for (std::uint64_t const place : m_line) {
        auto const order = static_cast<std::uint32_t>(place);
        Rule const& rule = rules[order];
        Piece const piece = isHorizontal(rule) ? Piece{rule.box.x0, rule.box.x1, order, rule} : Piece{rule.box.y0, rule.box.y1, order, rule};
        bool const joins = m_out.size() > first && piece.from - m_out.back().to <= kTouching &&
                           std::abs(thickness(m_out.back().rule) - thickness(piece.rule)) <= kLikeThickness;
        if (joins) {
            join(m_out.back(), piece);
        } else {
            m_out.push_back(piece);
        }
    }
}

// Joins runs of dashes among the last pieces, from `first` on.
void RuleMerger::joinDashes(std::size_t first) {
    if (m_out.size() - first < kFewestDashes) return;
    std::size_t kept = first;
    std::size_t i = first;
    while (i < m_out.size()) {
        std::size_t end = i;
        Points narrow = kWidestGap;
        Points wide = 0;
        while (end < m_out.size() && m_out[end].to - m_out[end].from <= kLongestDash) {
            if (end > i) {
                Points const gap = m_out[end].from - m_out[end - 1].to;
                Points const low = std::min(narrow, gap);
                Points const high = std::max(wide, gap);
                if (gap > kWidestGap || high > 2 * low + kTouching) break;
                narrow = low;
                wide = high;
            }
            ++end;
        }
        if (end - i >= kFewestDashes) {
            Piece line = m_out[i];
            for (std::size_t k = i + 1; k < end; ++k) join(line, m_out[k]);
            line.rule.dashed = true;
            m_out[kept++] = line;
            i = end;
        } else {
            m_out[kept++] = m_out[i++];
        }
    }
    m_out.resize(kept);
}

void RuleMerger::merge(std::vector<Rule>& rules) {
    if (rules.size() < 2) return;
    m_keys.clear();
    m_out.clear();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        Rule const& rule = rules[i];
        auto const kind = static_cast<std::uint64_t>(rule.axis) << 25U | static_cast<std::uint64_t>(rule.dashed) << 24U | (rule.colour & 0xFFFFFFU);
        Points const across = isHorizontal(rule) ? (rule.box.y0 + rule.box.y1) / 2 : (rule.box.x0 + rule.box.x1) / 2;
        m_keys.push_back({kind << 32U | orderedBits(across), static_cast<std::uint32_t>(i), across});
    }
    sortKeys();
    std::size_t begin = 0;
    while (begin < m_keys.size()) {
        std::size_t end = begin;
        m_line.clear();
        for (; end < m_keys.size() && m_keys[end].line >> 32U == m_keys[begin].line >> 32U && m_keys[end].across - m_keys[begin].across <= kSameLine; ++end) {
            Rule const& rule = rules[m_keys[end].order];
            m_line.push_back(static_cast<std::uint64_t>(orderedBits(isHorizontal(rule) ? rule.box.x0 : rule.box.y0)) << 32U | m_keys[end].order);
        }
        std::sort(m_line.begin(), m_line.end());
        std::size_t const first = m_out.size();
        joinTouching(rules);
        joinDashes(first);
        begin = end;
    }
    // Back in the order of the list: each piece knows its place in it.
    constexpr std::uint32_t kNone = UINT32_MAX;
    m_places.assign(rules.size(), kNone);
    for (std::size_t i = 0; i < m_out.size(); ++i) m_places[m_out[i].order] = static_cast<std::uint32_t>(i);
    rules.clear();
    for (std::uint32_t const place : m_places) {
        if (place != kNone) rules.push_back(m_out[place].rule);
    }
}

}  // namespace standin::poppler
