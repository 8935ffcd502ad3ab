// Letters are pieces of a letter's height. Letters side by side make lines; small
// pieces (points, dashes, marks above) go to the line that they stand beside or in;
// then lines that only such a piece parted are joined. Letters one below the other
// without the room that lines have between them are turned text.
//
// Tested by tests/extractors/recognition/lettering_test.cpp.
#include "extractors/recognition/lettering.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace standin::recognition {

namespace {

constexpr double kLeastHeight = 2.2;    // points: lower-case letters of 5 point type
constexpr double kMostHeight = 32;      // points: headlines
constexpr double kLongestPiece = 14;    // heights: letters that touch
constexpr double kWordGap = 1.0;        // heights of the higher neighbour
constexpr double kSharedHeight = 0.35;  // of the lower neighbour: subscripts hang
constexpr double kLowerAtLeast = 0.35;  // of the higher neighbour
constexpr double kPointGap = 0.45;      // heights: from a letter to a point
constexpr double kDashGap = 0.7;        // heights: to a dash, which stands between spaces
constexpr double kDashShape = 1.7;      // times as wide as high
constexpr double kAbove = 0.45;         // heights: how far marks stand above the letters
constexpr double kBelow = 0.3;
constexpr double kSmallAtMost = 1.1;  // heights: longer is a bar over a name, a rule
constexpr double kDashLow = 0.2;      // heights above the baseline: where dashes stand
constexpr double kDashHigh = 0.7;
constexpr double kDashLeast = 0.25;     // heights long
constexpr double kNestedAtLeast = 0.4;  // of the frame's height
constexpr double kSameBand = 0.6;
constexpr double kMostLarge = 96;         // points: higher is no letter
constexpr double kLargeWidth = 1.3;       // heights
constexpr double kTurnedGap = 0.35;       // of the width of turned letters: lines stand further apart
constexpr double kTurnedWordGap = 0.9;    // the same, between words
constexpr double kTurnedEdge = 0.2;       // the same: they stand on one edge
constexpr std::size_t kLeastTurned = 3;   // letters
constexpr std::size_t kHigherAtMost = 8;  // one of so many letters

int overlap(int a0, int a1, int b0, int b1) { return std::min(a1, b1) - std::max(a0, b0); }
int gapBetween(PixelBox const& a, PixelBox const& b) { return std::max(a.left, b.left) - std::min(a.right, b.right); }

class Sets {
public:
    explicit Sets(std::size_t count) : m_parent(count) { std::iota(m_parent.begin(), m_parent.end(), std::size_t{0}); }

    std::size_t find(std::size_t i) {
        while (m_parent[i] != i) i = m_parent[i] = m_parent[m_parent[i]];
        return i;
    }
    void join(std::size_t a, std::size_t b) {
        a = find(a);
        b = find(b);
        m_parent[std::max(a, b)] = std::min(a, b);
    }

private:
    std::vector<std::size_t> m_parent;
};

class Finder {
public:
    Finder(std::span<PixelBox const> pieces, std::span<PixelBox const> rules, LetteringOptions const& options) : m_pieces(pieces), m_options(options) {
        for (auto const& rule : rules) {
            if (rule.height() > rule.width()) m_walls.push_back(rule);
        }
    }

    Lettering find() {
        sortOut();
        joinLetters();
        attachSmall();
        joinLines();
        listLarge();
        takeTurnedOut();
        return {std::move(m_lines), std::move(m_leftOut)};
    }

private:
    void sortOut() {
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            auto const& piece = m_pieces[i];
            double const height = piece.height() / m_options.pixelsPerPoint;
            bool const letter = height >= kLeastHeight && height <= kMostHeight && piece.width() <= kLongestPiece * piece.height();
            if (letter) m_letters.push_back(i);
            else if (height < kLeastHeight) m_small.push_back(i);
            else if (height > kMostHeight) m_large.push_back(i);
        }
        auto const byLeft = [this](std::size_t a, std::size_t b) { return m_pieces[a].left != m_pieces[b].left ? m_pieces[a].left < m_pieces[b].left : a < b; };
        std::sort(m_letters.begin(), m_letters.end(), byLeft);
        if (m_options.frames == Frames::AroundLetters) dropFrames();
    }

    void dropFrames() {
        std::vector<std::size_t> kept;
        for (std::size_t const i : m_letters) {
            auto const& outer = m_pieces[i];
            auto const from = std::lower_bound(m_letters.begin(), m_letters.end(), outer.left, [this](std::size_t l, int left) { return m_pieces[l].left < left; });
            bool const frame = std::any_of(from, m_letters.end(), [&](std::size_t j) {
                auto const& inner = m_pieces[j];
                return inner.left > outer.left && inner.right < outer.right && inner.top > outer.top && inner.bottom < outer.bottom &&
                       inner.height() >= kNestedAtLeast * outer.height();
            });
            if (!frame) kept.push_back(i);
        }
        m_letters = std::move(kept);
    }

    bool walled(PixelBox const& a, PixelBox const& b) const {
        int const from = std::min(a.right, b.right);
        int const to = std::max(a.left, b.left);
        int const top = std::min(a.top, b.top);
        int const bottom = std::max(a.bottom, b.bottom);
        return std::any_of(m_walls.begin(), m_walls.end(), [&](PixelBox const& wall) {
            int const middle = (wall.left + wall.right) / 2;
            return middle >= from && middle <= to && overlap(wall.top, wall.bottom, top, bottom) * 2 > bottom - top;
        });
    }

    bool neighbours(PixelBox const& a, PixelBox const& b, double sharedHeight) const {
        int const higher = std::max(a.height(), b.height());
        int const lower = std::min(a.height(), b.height());
        return gapBetween(a, b) <= kWordGap * higher && lower >= kLowerAtLeast * higher && overlap(a.top, a.bottom, b.top, b.bottom) >= sharedHeight * lower && !walled(a, b);
    }

    void joinLetters() {
        Sets sets(m_letters.size());
        int const reach = static_cast<int>(kWordGap * kMostHeight * m_options.pixelsPerPoint);
        for (std::size_t a = 0; a < m_letters.size(); ++a) {
            auto const& left = m_pieces[m_letters[a]];
            for (std::size_t b = a + 1; b < m_letters.size() && m_pieces[m_letters[b]].left <= left.right + reach; ++b) {
                if (neighbours(left, m_pieces[m_letters[b]], kSharedHeight)) sets.join(a, b);
            }
        }
        std::vector<std::vector<std::size_t>> members(m_letters.size());
        for (std::size_t i = 0; i < m_letters.size(); ++i) members[sets.find(i)].push_back(m_letters[i]);
        for (auto& letters : members) {
            if (!letters.empty()) m_lines.push_back(lineOf(std::move(letters)));
        }
    }

    LetteringLine lineOf(std::vector<std::size_t> pieces) const {
        LetteringLine line;
        line.box = m_pieces[pieces.front()];
        for (std::size_t const i : pieces) line.box = united(line.box, m_pieces[i]);
        line.pieces = std::move(pieces);
        measure(line);
        return line;
    }

    // Baseline and height by its letters; one that stands higher, a superscript, says nothing.
    void measure(LetteringLine& line) const {
        std::vector<int> tops;
        std::vector<int> bottoms;
        for (std::size_t const i : line.pieces) {
            if (m_pieces[i].height() < kLeastHeight * m_options.pixelsPerPoint) continue;
            tops.push_back(m_pieces[i].top);
            bottoms.push_back(m_pieces[i].bottom);
        }
        std::sort(tops.begin(), tops.end());
        std::sort(bottoms.begin(), bottoms.end());
        line.baseline = bottoms[(bottoms.size() - 1) / 2];
        line.capHeight = std::max(1, line.baseline - tops[tops.size() / kHigherAtMost]);
    }

    // Distance of a small piece from the letters of a line; none where it does not belong there.
    std::optional<int> distance(PixelBox const& small, LetteringLine const& line) const {
        int const height = line.capHeight;
        if (small.bottom < line.box.top - kAbove * height || small.top > line.box.bottom + kBelow * height || small.width() > kSmallAtMost * height) return std::nullopt;
        bool const above = small.bottom <= line.box.top;
        if (above && small.width() > kDashShape * small.height() && small.width() > height / 2) return std::nullopt;  // a bar over a name
        int nearest = std::numeric_limits<int>::max();
        for (std::size_t const i : line.pieces) {
            if (!walled(m_pieces[i], small)) nearest = std::min(nearest, std::max(0, gapBetween(m_pieces[i], small)));
        }
        double const allowed = small.width() > kDashShape * small.height() ? kDashGap : kPointGap;
        return nearest <= allowed * height ? std::optional(nearest) : std::nullopt;
    }

    void attachSmall() {
        std::vector<std::pair<std::size_t, std::size_t>> found;  // line, piece
        for (std::size_t const piece : m_small) {
            auto const& small = m_pieces[piece];
            std::optional<std::pair<int, std::size_t>> best;
            for (std::size_t l = 0; l < m_lines.size(); ++l) {
                auto const& box = m_lines[l].box;
                int const reach = box.height();
                if (small.left > box.right + reach || small.right < box.left - reach || small.top > box.bottom + reach || small.bottom < box.top - reach) continue;
                auto const far = distance(small, m_lines[l]);
                if (!far) continue;
                int const vertical = std::max(0, -overlap(small.top, small.bottom, box.top, box.bottom));
                if (!best || *far + vertical < best->first) best = {*far + vertical, l};
            }
            if (best) found.emplace_back(best->second, piece);
            else if (isLoneDash(small)) m_leftOut.push_back(small);
        }
        for (auto const& [line, piece] : found) {
            m_lines[line].pieces.push_back(piece);
            m_lines[line].box = united(m_lines[line].box, m_pieces[piece]);
        }
    }

    // A dash as long as those of a line and level with its letters, at whatever distance: a cell of a table.
    bool isLoneDash(PixelBox const& small) const {
        if (small.width() <= kDashShape * small.height()) return false;
        return std::any_of(m_lines.begin(), m_lines.end(), [&small](LetteringLine const& line) {
            double const height = line.capHeight;
            double const middle = line.baseline - (small.top + small.bottom) / 2.0;
            return middle >= kDashLow * height && middle <= kDashHigh * height && small.width() >= kDashLeast * height && small.width() <= kSmallAtMost * height;
        });
    }

    // Letters of a size that no text has are told, drawings around lettering are none.
    void listLarge() {
        for (std::size_t const i : m_large) {
            auto const& piece = m_pieces[i];
            if (piece.height() > kMostLarge * m_options.pixelsPerPoint || piece.width() > kLargeWidth * piece.height()) continue;
            bool const around = std::any_of(m_lines.begin(), m_lines.end(), [&piece](LetteringLine const& line) { return contains(piece, line.box); });
            if (!around) m_leftOut.push_back(piece);
        }
    }

    static bool contains(PixelBox const& outer, PixelBox const& inner) {
        return inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;
    }

    // Next to nothing but one letter.
    bool isSingle(LetteringLine const& line) const {
        auto const height = [this](std::size_t piece) { return m_pieces[piece].height(); };
        return std::count_if(line.pieces.begin(), line.pieces.end(), [&](std::size_t piece) { return 2 * height(piece) >= line.box.height(); }) == 1;
    }

    // One below the other, on one edge, `gap` of their width apart at most.
    static bool areTurnedNeighbours(PixelBox const& above, PixelBox const& below, double gap) {
        int const width = std::max(above.width(), below.width());
        bool const edge = std::min(std::abs(above.left - below.left), std::abs(above.right - below.right)) <= kTurnedEdge * width;
        bool const beside = overlap(above.left, above.right, below.left, below.right) * 2 > std::min(above.width(), below.width());
        return edge && beside && below.top >= above.top && below.top - above.bottom <= gap * width;
    }

    // Lines are sorted from the top.
    void takeTurnedOut() {
        std::vector<std::size_t> singles;
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            if (isSingle(m_lines[i])) singles.push_back(i);
        }
        Sets letters(singles.size());
        Sets words(singles.size());
        int const reach = static_cast<int>(2 * kMostHeight * m_options.pixelsPerPoint);
        for (std::size_t a = 0; a < singles.size(); ++a) {
            auto const& above = m_lines[singles[a]].box;
            for (std::size_t b = a + 1; b < singles.size() && m_lines[singles[b]].box.top <= above.bottom + reach; ++b) {
                auto const& below = m_lines[singles[b]].box;
                if (areTurnedNeighbours(above, below, kTurnedGap)) letters.join(a, b);
                if (areTurnedNeighbours(above, below, kTurnedWordGap)) words.join(a, b);
            }
        }
        std::vector<std::size_t> together(singles.size());
        for (std::size_t i = 0; i < singles.size(); ++i) ++together[letters.find(i)];
        std::vector<bool> turned(singles.size());  // by set of words
        for (std::size_t i = 0; i < singles.size(); ++i) {
            if (together[letters.find(i)] >= kLeastTurned) turned[words.find(i)] = true;
        }
        std::vector<bool> out(m_lines.size());
        for (std::size_t i = 0; i < singles.size(); ++i) out[singles[i]] = turned[words.find(i)];
        std::vector<LetteringLine> kept;
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            if (out[i]) m_leftOut.push_back(m_lines[i].box);
            else kept.push_back(std::move(m_lines[i]));
        }
        m_lines = std::move(kept);
    }

    // What a dash or a point stands between is one line again.
    void joinLines() {
        std::sort(m_lines.begin(), m_lines.end(), [](auto const& a, auto const& b) { return a.box.left != b.box.left ? a.box.left < b.box.left : a.box.top < b.box.top; });
        Sets sets(m_lines.size());
        for (std::size_t a = 0; a < m_lines.size(); ++a) {
            for (std::size_t b = a + 1; b < m_lines.size(); ++b) {
                auto const& left = m_lines[a].box;
                auto const& right = m_lines[b].box;
                if (right.left > left.right + left.height() + right.height()) break;
                int const higher = std::max(m_lines[a].capHeight, m_lines[b].capHeight);
                bool const near = gapBetween(left, right) <= kWordGap * higher && std::min(m_lines[a].capHeight, m_lines[b].capHeight) >= kSameBand * higher;
                if (near && std::abs(m_lines[a].baseline - m_lines[b].baseline) < (1 - kSameBand) * higher && !walled(left, right)) sets.join(a, b);
            }
        }
        std::vector<LetteringLine> joined;
        std::vector<std::size_t> place(m_lines.size());
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            std::size_t const root = sets.find(i);
            if (root == i) {
                place[i] = joined.size();
                joined.push_back(std::move(m_lines[i]));
                continue;
            }
            auto& line = joined[place[root]];
            line.pieces.insert(line.pieces.end(), m_lines[i].pieces.begin(), m_lines[i].pieces.end());
            line.box = united(line.box, m_lines[i].box);
            measure(line);
        }
        for (auto& line : joined) std::sort(line.pieces.begin(), line.pieces.end());
        std::sort(joined.begin(), joined.end(), [](auto const& a, auto const& b) { return a.box.top != b.box.top ? a.box.top < b.box.top : a.box.left < b.box.left; });
        m_lines = std::move(joined);
    }

    std::span<PixelBox const> m_pieces;
    LetteringOptions m_options;
    std::vector<PixelBox> m_walls;
    std::vector<std::size_t> m_letters, m_small, m_large;
    std::vector<LetteringLine> m_lines;
    std::vector<PixelBox> m_leftOut;
};

}  // namespace

PixelBox united(PixelBox const& a, PixelBox const& b) { return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right), std::max(a.bottom, b.bottom)}; }

Lettering findLettering(std::span<PixelBox const> pieces, std::span<PixelBox const> rules, LetteringOptions const& options) { return Finder(pieces, rules, options).find(); }

}  // namespace standin::recognition
