// Where many segments begin at the same x there may be a right-hand column. Such a
// gutter is tried from top to bottom: what crosses it (a wide heading, a rule over
// both sides) ends a zone; a zone is two columns when both sides hold prose of
// their own, not the cells of common rows. Each side is cut again in the same way.
// Tested by layout_test.cpp and reading_order_test.cpp.
#include "extractors/layout/reading_order.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "extractors/layout/characters.h"
#include "text/utf8.h"

namespace standin::layout {

namespace {

using model::Points;
using model::Rect;

// In font heights of running text.
constexpr Points kSegmentGap = 0.9F;
constexpr Points kGutter = 0.7F;
constexpr Points kSameStart = 0.5F;
constexpr Points kCrossing = 1.0F;      // a rule reaches this far over both sides of the gutter

constexpr std::uint32_t kProseLetters = 15;
constexpr Points kProseWidth = 0.5F;    // of its column
constexpr Points kFilledWidth = 0.72F;
constexpr int kProseLines = 3;
constexpr float kProseShare = 0.3F;     // of the letters of a side
constexpr float kCommonRows = 0.7F;     // more shared lines: rows of a table
constexpr int kTextLines = 5;           // one side alone has to hold so much running text
constexpr float kTextShare = 0.6F;
constexpr float kFewCommonRows = 0.45F;
constexpr Points kSetOff = 2.0F;  // a step to the next line that starts something new
constexpr Points kBelow = 0.5F;
constexpr std::size_t kHeadingLines = 3;
constexpr std::uint32_t kFullLineLetters = 40;  // a heading has fewer
constexpr int kDepth = 3;

struct Side {
    std::vector<std::uint32_t> segments;
    Points left = 0;
    Points right = 0;
    int lines = 0;
    int prose = 0;   // segments long enough for running text
    int filled = 0;  // those that fill the column
    int bulleted = 0;
    std::uint32_t letters = 0;
    std::uint32_t proseLetters = 0;

    // Keeps the memory.
    void clear() {
        std::vector<std::uint32_t> memory = std::move(segments);
        memory.clear();
        *this = {};
        segments = std::move(memory);
    }
};

struct Gutter {
    Points clear = 0;  // what stands left of the gutter ends before this
    Points x = 0;      // what starts before this stands left of it
};

class Orderer {
public:
    Orderer(std::span<Segment const> segments, std::span<Rect const> horizontals, Points bodySize)
        : m_segments(segments), m_horizontals(horizontals), m_body(std::max(bodySize, 1.0F)) {}

    std::vector<Group> order() {
        std::vector<std::uint32_t> all(m_segments.size());
        std::iota(all.begin(), all.end(), 0U);
        sortByRows(all);
        cut(std::move(all), 0, 0);
        return std::move(m_groups);
    }

private:
    Segment const& segment(std::uint32_t i) const { return m_segments[i]; }

    void sortByRows(std::vector<std::uint32_t>& list) const {
        std::sort(list.begin(), list.end(), [&](std::uint32_t a, std::uint32_t b) {
            Segment const& x = segment(a);
            Segment const& y = segment(b);
            if (x.line != y.line) return x.line < y.line;
            return x.firstWord < y.firstWord;
        });
    }

    // Where a gutter may be: left of starts and right of ends that many segments share, most first.
    std::vector<Gutter> candidates(std::vector<std::uint32_t> const& list) const {
        Points left = segment(list.front()).flow.x0;
        Points right = segment(list.front()).flow.x1;
        for (std::uint32_t i : list) {
            left = std::min(left, segment(i).flow.x0);
            right = std::max(right, segment(i).flow.x1);
        }
        std::vector<std::pair<int, Gutter>> clusters;
        std::vector<Points> places;
        places.reserve(list.size());
        auto const collect = [&](auto place, auto gutterAt) {
            places.clear();
            for (std::uint32_t i : list) {
                Points const x = place(segment(i));
                if (x > left + 0.2F * (right - left) && x < left + 0.8F * (right - left)) places.push_back(x);
            }
            std::sort(places.begin(), places.end());
            for (std::size_t i = 0; i < places.size();) {
                std::size_t last = i;
                while (last < places.size() && places[last] - places[i] <= kSameStart * m_body) ++last;
                if (last - i >= static_cast<std::size_t>(kProseLines)) clusters.emplace_back(static_cast<int>(last - i), gutterAt(places[i], places[last - 1]));
                i = last;
            }
        };
        Points const width = kGutter * m_body;
        collect([](Segment const& s) { return s.flow.x0; }, [&](Points first, Points) { return Gutter{first - width, first - 0.1F * m_body}; });
        collect([](Segment const& s) { return s.flow.x1; }, [&](Points, Points last) { return Gutter{last + 0.1F * m_body, last + 0.3F * m_body}; });
        std::stable_sort(clusters.begin(), clusters.end(), [](auto const& a, auto const& b) { return a.first > b.first; });
        std::vector<Gutter> found;
        found.reserve(clusters.size());
        for (auto const& [shared, gutter] : clusters) found.push_back(gutter);
        return found;
    }

    // What a gutter can be worth at most: counts only, which spares cutting the zones of most gutters.
    int mostWorthAt(std::vector<std::uint32_t> const& list, Gutter gutter) const {
        int counts[2] = {0, 0};
        int longOnes[2] = {0, 0};
        int worth = 0;
        auto const close = [&] {
            int const less = std::min(longOnes[0], longOnes[1]);
            bool const text = std::max(longOnes[0], longOnes[1]) >= kTextLines && std::min(counts[0], counts[1]) >= kProseLines;
            worth += less >= kProseLines ? less : text ? 1 : 0;
            counts[0] = counts[1] = longOnes[0] = longOnes[1] = 0;
        };
        for (std::uint32_t i : list) {
            Segment const& s = segment(i);
            bool const right = s.flow.x0 >= gutter.x;
            if (!right && s.flow.x1 > gutter.clear) {
                close();
                continue;
            }
            ++counts[right];
            if (s.letters >= kProseLetters) ++longOnes[right];
        }
        close();
        return worth;
    }

    void measure(Side& side) const {
        side.left = segment(side.segments.front()).flow.x0;
        side.right = segment(side.segments.front()).flow.x1;
        std::uint32_t line = 0xFFFFFFFF;
        for (std::uint32_t i : side.segments) {
            side.left = std::min(side.left, segment(i).flow.x0);
            side.right = std::max(side.right, segment(i).flow.x1);
            side.letters += segment(i).letters;
            if (segment(i).line != line) ++side.lines;
            if (segment(i).bulleted) ++side.bulleted;
            line = segment(i).line;
        }
        for (std::uint32_t i : side.segments) {
            Segment const& s = segment(i);
            if (s.letters < kProseLetters) continue;
            if (s.flow.width() < kProseWidth * (side.right - side.left)) continue;
            ++side.prose;
            side.proseLetters += s.letters;
            if (s.flow.width() >= kFilledWidth * (side.right - side.left)) ++side.filled;
        }
    }

    // How many printed lines both sides have in common.
    int commonLines(Side const& left, Side const& right) const {
        int common = 0;
        std::size_t r = 0;
        std::uint32_t line = 0xFFFFFFFF;
        for (std::uint32_t i : left.segments) {
            if (segment(i).line == line) continue;
            line = segment(i).line;
            while (r < right.segments.size() && segment(right.segments[r]).line < line) ++r;
            if (r < right.segments.size() && segment(right.segments[r]).line == line) ++common;
        }
        return common;
    }

    // What the zone is worth as two columns: lines of prose; 0: it is not two columns.
    int worthAsColumns(Side& left, Side& right) const {
        if (left.segments.empty() || right.segments.empty()) return 0;
        measure(left);
        measure(right);
        if (right.left - left.right < kGutter * m_body) return 0;
        float const common = static_cast<float>(commonLines(left, right)) / static_cast<float>(std::min(left.lines, right.lines));
        auto const isProse = [](Side const& side) { return side.prose >= kProseLines && static_cast<float>(side.proseLetters) >= kProseShare * static_cast<float>(side.letters); };
        if (isProse(left) && isProse(right)) {
            bool const filled = left.filled >= kProseLines && right.filled >= kProseLines;
            bool const list = std::max(left.bulleted, right.bulleted) >= kProseLines;
            return common < kCommonRows || filled || list ? std::min(left.prose, right.prose) : 0;
        }
        // Running text beside a figure or a list that keeps its own lines.
        auto const isText = [](Side const& side) { return side.filled >= kTextLines && static_cast<float>(side.proseLetters) >= kTextShare * static_cast<float>(side.letters); };
        if ((isText(left) || isText(right)) && common < kFewCommonRows && std::min(left.lines, right.lines) >= kProseLines) return 1;
        return 0;
    }

    struct Zone {
        std::size_t first = 0, last = 0;  // in the list
        Side left, right;
    };

    // The heading of what ends the zone stays with it: short last lines of the left side, set off and below the end
    // of the right one.
    void leaveHeading(Zone& zone) const {
        std::vector<std::uint32_t>& left = zone.left.segments;
        Points const end = segment(zone.right.segments.back()).baseline + kBelow * m_body;
        for (std::size_t i = left.size() - 1; i > 0 && left.size() - i <= kHeadingLines; --i) {
            Segment const& s = segment(left[i]);
            if (s.baseline <= end || s.letters >= kFullLineLetters) return;
            if (s.baseline - segment(left[i - 1]).baseline <= kSetOff * m_body) continue;
            zone.last -= left.size() - i;
            left.resize(i);
            return;
        }
    }

    // The two-column zones of `list` for a gutter, and what they are worth together.
    std::vector<Zone> zonesAt(std::vector<std::uint32_t> const& list, Gutter gutter, int& worth) const {
        std::vector<Points> barriers;
        for (Rect const& rule : m_horizontals)
            if (rule.x0 < gutter.x - kCrossing * m_body && rule.x1 > gutter.x + kCrossing * m_body) barriers.push_back((rule.y0 + rule.y1) / 2);
        std::sort(barriers.begin(), barriers.end());
        std::vector<Zone> zones;
        worth = 0;
        std::size_t barrier = 0;
        Zone zone;
        auto const close = [&](std::size_t at) {
            zone.last = at;
            if (int const here = worthAsColumns(zone.left, zone.right); here > 0) {
                worth += here;
                if (at < list.size()) leaveHeading(zone);
                zones.push_back(zone);
            }
            zone.left.clear();
            zone.right.clear();
            zone.first = at;
        };
        for (std::size_t i = 0; i < list.size(); ++i) {
            Segment const& s = segment(list[i]);
            bool crossed = false;
            while (barrier < barriers.size() && barriers[barrier] < s.baseline - 0.3F * s.size) {
                crossed = true;
                ++barrier;
            }
            if (crossed) close(i);
            if (s.flow.x0 < gutter.x && s.flow.x1 > gutter.clear) {
                close(i);
                zone.first = i + 1;
                continue;
            }
            (s.flow.x0 < gutter.x ? zone.left : zone.right).segments.push_back(list[i]);
        }
        close(list.size());
        return zones;
    }

    // The zones of the gutter that is worth most; of equals the one that most segments share.
    std::vector<Zone> bestZones(std::vector<std::uint32_t> const& list) const {
        std::vector<Zone> best;
        int bestWorth = 0;
        for (Gutter gutter : candidates(list)) {
            if (mostWorthAt(list, gutter) <= bestWorth) continue;
            int worth = 0;
            std::vector<Zone> zones = zonesAt(list, gutter, worth);
            if (worth <= bestWorth) continue;
            bestWorth = worth;
            best = std::move(zones);
        }
        return best;
    }

    void cut(std::vector<std::uint32_t> list, int depth, int column) {
        if (list.empty()) return;
        std::vector<Zone> best;
        if (depth < kDepth && list.size() >= 2 * static_cast<std::size_t>(kProseLines)) best = bestZones(list);
        std::size_t at = 0;
        auto const rows = [&](std::size_t until) {
            if (until <= at) return;
            m_groups.push_back({column, {list.begin() + static_cast<std::ptrdiff_t>(at), list.begin() + static_cast<std::ptrdiff_t>(until)}});
            at = until;
        };
        for (Zone& zone : best) {
            rows(zone.first);
            // Columns count from left to right: the left side keeps its parent's number.
            int const leftColumn = std::max(column, 1);
            cut(std::move(zone.left.segments), depth + 1, leftColumn);
            cut(std::move(zone.right.segments), depth + 1, leftColumn + 1);
            at = zone.last;
        }
        rows(list.size());
    }

    std::span<Segment const> m_segments;
    std::span<Rect const> m_horizontals;
    Points m_body;
    std::vector<Group> m_groups;
};

}  // namespace

namespace {

bool isBulletText(std::string const& word) {
    if (word.empty() || word.size() > 4) return false;
    std::size_t at = 0;
    char32_t const code = text::decodeNext(word, at);
    return at == word.size() && isBullet(code);
}

}  // namespace

std::vector<Segment> cutSegments(std::span<WordDraft const> words, std::span<std::uint32_t const> lineStarts) {
    std::vector<Segment> segments;
    segments.reserve(lineStarts.size() * 2);
    for (std::size_t l = 0; l < lineStarts.size(); ++l) {
        std::uint32_t const end = l + 1 < lineStarts.size() ? lineStarts[l + 1] : static_cast<std::uint32_t>(words.size());
        std::size_t longest = 0;
        for (std::uint32_t w = lineStarts[l]; w < end; ++w) {
            WordDraft const& draft = words[w];
            bool fresh = w == lineStarts[l] || draft.barBefore;
            if (!fresh) {
                Segment const& s = segments.back();
                fresh = draft.flow.x0 - s.flow.x1 > kSegmentGap * std::max(s.size, draft.word.size);
            }
            if (fresh) {
                segments.emplace_back();
                Segment& s = segments.back();
                s.firstWord = w;
                s.line = static_cast<std::uint32_t>(l);
                s.barBefore = draft.barBefore;
                s.baseline = draft.baseline;
                longest = 0;
            }
            Segment& s = segments.back();
            ++s.wordCount;
            if (s.wordCount == 1) s.bulleted = isBulletText(draft.word.text);
            s.bullet = s.wordCount == 1 && s.bulleted;
            s.flow = model::united(s.flow, draft.flow);
            if (draft.word.text.size() > longest && draft.word.script == model::Script::Normal) {
                longest = draft.word.text.size();
                s.size = draft.word.size;
            }
            if (s.size == 0) s.size = draft.word.size;
            for (std::size_t at = 0; at < draft.word.text.size();) {
                auto const byte = static_cast<unsigned char>(draft.word.text[at]);
                if (byte < 0x80) {
                    s.letters += isAsciiLetter(byte) ? 1U : 0U;
                    ++at;
                } else {
                    char32_t const code = text::decodeNext(draft.word.text, at);
                    s.letters += isCjkText(code) ? 2U : isLetterLike(code) ? 1U : 0U;
                }
            }
        }
    }
    return segments;
}

std::vector<Group> orderSegments(std::span<Segment const> segments, std::span<Rect const> horizontals, Points bodySize) {
    if (segments.empty()) return {};
    return Orderer(segments, horizontals, bodySize).order();
}

}  // namespace standin::layout
