// Joins collinear pieces by sorting, then unites touching horizontal and
// vertical segments with a union-find; for each vertical one only the
// horizontal ones within its reach are looked at.
// Tested by tests/extractors/tables/rule_network_test.cpp.
#include "extractors/tables/rule_network.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace standin::tables {

using model::Points;
using model::Rect;

namespace {

constexpr Points kSameLine = 0.9F;    // points: pieces this near are drawn as one line
constexpr Points kPieceGap = 2.5F;    // points: a gap that a reader does not see as the end of a line
constexpr Points kTouch = 2.6F;       // points: how near a rule's end counts as touching another rule
constexpr Points kShortest = 3.0F;    // points: anything shorter is a tick or a dot

void joinPieces(std::vector<Segment>& segments) {
    std::sort(segments.begin(), segments.end(), [](Segment const& a, Segment const& b) {
        return a.at != b.at ? a.at < b.at : a.from < b.from;
    });
    std::vector<Segment> joined;
    joined.reserve(segments.size());
    for (std::size_t begin = 0; begin < segments.size();) {
        std::size_t end = begin + 1;
        while (end < segments.size() && segments[end].at - segments[begin].at <= kSameLine) ++end;
        auto const first = segments.begin() + static_cast<std::ptrdiff_t>(begin);
        auto const last = segments.begin() + static_cast<std::ptrdiff_t>(end);
        std::sort(first, last, [](Segment const& a, Segment const& b) { return a.from < b.from; });
        std::size_t const start = joined.size();
        for (auto piece = first; piece != last; ++piece) {
            if (joined.size() > start && piece->from <= joined.back().to + kPieceGap) {
                joined.back().to = std::max(joined.back().to, piece->to);
            } else {
                joined.push_back(*piece);
            }
        }
        begin = end;
    }
    segments = std::move(joined);
}

class Sets {
public:
    explicit Sets(std::size_t count) : m_parent(count) { std::iota(m_parent.begin(), m_parent.end(), 0U); }
    std::uint32_t find(std::uint32_t i) {
        while (m_parent[i] != i) {
            m_parent[i] = m_parent[m_parent[i]];
            i = m_parent[i];
        }
        return i;
    }
    void unite(std::uint32_t a, std::uint32_t b) { m_parent[find(a)] = find(b); }

private:
    std::vector<std::uint32_t> m_parent;
};

}  // namespace

RuleNetworks findRuleNetworks(model::PageLayout const& page) {
    RuleNetworks found;
    std::vector<Segment> horizontal;
    std::vector<Segment> vertical;
    Rect const sheet{-1, -1, page.width + 1, page.height + 1};
    auto take = [&](model::Rule const& rule, Points shortest) {
        Rect const box = intersection(rule.box, sheet);
        if (box.x1 < box.x0 || box.y1 < box.y0) return;
        if (rule.axis == model::Rule::Axis::Horizontal) {
            if (box.width() >= shortest) horizontal.push_back({(box.y0 + box.y1) / 2, box.x0, box.x1});
        } else if (box.height() >= shortest) {
            vertical.push_back({(box.x0 + box.x1) / 2, box.y0, box.y1});
        }
    };
    for (auto const& rule : page.rules) take(rule, kShortest);
    joinPieces(horizontal);
    joinPieces(vertical);
    if (horizontal.size() + vertical.size() > kMostRules) {
        std::vector<Points> lengths;
        for (auto const& s : horizontal) lengths.push_back(s.length());
        for (auto const& s : vertical) lengths.push_back(s.length());
        std::nth_element(lengths.begin(), lengths.begin() + kMostRules, lengths.end(), std::greater<>());
        Points const least = lengths[kMostRules];
        auto const shorter = [least](Segment const& s) { return s.length() <= least; };
        horizontal.erase(std::remove_if(horizontal.begin(), horizontal.end(), shorter), horizontal.end());
        vertical.erase(std::remove_if(vertical.begin(), vertical.end(), shorter), vertical.end());
    }

    auto const h = static_cast<std::uint32_t>(horizontal.size());
    auto const v = static_cast<std::uint32_t>(vertical.size());
    Sets sets(h + v);
    std::vector<char> touched(h, 0);
    for (std::uint32_t j = 0; j < v; ++j) {
        auto const& rule = vertical[j];
        auto i = static_cast<std::uint32_t>(
            std::lower_bound(horizontal.begin(), horizontal.end(), rule.from - kTouch,
                             [](Segment const& s, Points y) { return s.at < y; }) - horizontal.begin());
        for (; i < h && horizontal[i].at <= rule.to + kTouch; ++i) {
            if (rule.at >= horizontal[i].from - kTouch && rule.at <= horizontal[i].to + kTouch) {
                sets.unite(i, h + j);
                touched[i] = 1;
            }
        }
    }
    std::vector<std::int32_t> networkOf(h + v, -1);
    auto put = [&](std::uint32_t element, Segment const& segment, bool isHorizontal) {
        std::uint32_t const root = sets.find(element);
        if (networkOf[root] < 0) {
            networkOf[root] = static_cast<std::int32_t>(found.networks.size());
            found.networks.emplace_back();
        }
        auto& network = found.networks[static_cast<std::size_t>(networkOf[root])];
        (isHorizontal ? network.horizontal : network.vertical).push_back(segment);
        Rect const box = isHorizontal ? Rect{segment.from, segment.at, segment.to, segment.at + 0.01F}
                                      : Rect{segment.at, segment.from, segment.at + 0.01F, segment.to};
        network.box = united(network.box, box);
    };
    for (std::uint32_t i = 0; i < h; ++i) {
        if (touched[i] != 0) {
            put(i, horizontal[i], true);
        } else {
            found.looseHorizontal.push_back(horizontal[i]);
        }
    }
    for (std::uint32_t j = 0; j < v; ++j) put(h + j, vertical[j], false);
    for (auto const& network : found.networks) {
        if (network.horizontal.empty()) found.looseVertical.insert(found.looseVertical.end(), network.vertical.begin(), network.vertical.end());
    }
    auto const open = [](Network const& n) { return n.horizontal.empty() || n.vertical.empty(); };
    found.networks.erase(std::remove_if(found.networks.begin(), found.networks.end(), open), found.networks.end());
    std::stable_sort(found.networks.begin(), found.networks.end(),
                     [](Network const& a, Network const& b) { return a.box.area() < b.box.area(); });
    return found;
}

}  // namespace standin::tables
