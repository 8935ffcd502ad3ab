// One walk over the glyphs as drawn. A run ends at a gap, a change of font, size,
// colour, baseline or kind of writing, and at white space. A glyph drawn again
// where it just was (fake bold) is left out at once; words drawn again as a whole
// are found later, line by line. Hidden runs: invisible ones and those in the
// colour of the topmost fill below them. Tested by layout_test.cpp.
#include "extractors/layout/glyph_runs.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "extractors/layout/characters.h"

namespace standin::layout {

namespace {

using model::Points;

// In font heights.
constexpr Points kUnseenSize = 2.0F;      // points: smaller characters without width are left out
constexpr Points kRunGap = 0.12F;         // wider: another run
constexpr Points kRunOverlap = 0.35F;     // further back: another run
constexpr Points kRunBaseline = 0.03F;    // baselines of one run agree within
constexpr Points kDoubleOffset = 0.12F;   // fake bold is drawn at most this far off
constexpr Points kBarRoom = 0.02F;
constexpr Points kBarHeight = 0.6F;
constexpr Points kAscentAtMost = 1.1F;    // fonts that declare more are cut
constexpr Points kDescentAtMost = 0.4F;
constexpr Points kSpaceFrom = 0.15F;      // gaps counted when judging whether spaces are drawn
constexpr Points kSpaceTo = 0.6F;
constexpr Points kBackgroundSide = 4.0F;  // points: smaller fills are no background
constexpr std::size_t kBackgroundsAtMost = 4000;
constexpr int kLeaderDots = 4;
constexpr std::uint32_t kNearlyWhite = 0xF4;

bool nearlyWhite(std::uint32_t colour) {
    return (colour >> 16 & 0xFF) >= kNearlyWhite && (colour >> 8 & 0xFF) >= kNearlyWhite && (colour & 0xFF) >= kNearlyWhite;
}

bool sameShade(std::uint32_t a, std::uint32_t b) {
    auto const part = [&](int shift) { return std::abs(int(a >> shift & 0xFF) - int(b >> shift & 0xFF)); };
    return part(0) <= 8 && part(8) <= 8 && part(16) <= 8;
}

class Backgrounds {
public:
    explicit Backgrounds(model::PageContent const& content) : m_content(content) {
        for (model::Fill const& fill : content.fills) {
            if (fill.box.width() >= kBackgroundSide && fill.box.height() >= kBackgroundSide) m_fills.push_back(&fill);
            if (m_fills.size() >= kBackgroundsAtMost) break;
        }
    }

    // The colour that the text stands on is the colour of the text.
    bool hides(std::uint32_t colour, model::Rect const& box) {
        bool const white = nearlyWhite(colour);
        if (!white && !occurs(colour)) return false;
        model::Point const centre = box.centre();
        for (auto it = m_fills.rbegin(); it != m_fills.rend(); ++it)
            if ((*it)->box.contains(centre)) return sameShade((*it)->colour, colour);
        if (!white) return false;
        // White on the bare page; a picture or a drawing below may make it readable.
        for (model::Image const& image : m_content.images)
            if (image.box.contains(centre)) return false;
        for (model::Drawing const& drawing : m_content.drawings)
            if (drawing.box.contains(centre)) return false;
        return true;
    }

private:
    bool occurs(std::uint32_t colour) {
        if (m_lastColour != colour) {
            m_lastColour = colour;
            m_lastOccurs = std::any_of(m_fills.begin(), m_fills.end(), [&](auto const* fill) { return sameShade(fill->colour, colour); });
        }
        return *m_lastOccurs;
    }

    model::PageContent const& m_content;
    std::vector<model::Fill const*> m_fills;
    std::optional<std::uint32_t> m_lastColour;
    std::optional<bool> m_lastOccurs;
};

class Builder {
public:
    Builder(model::PageContent const& content, model::Direction direction, RuleIndex const& bars)
        : m_content(content), m_frame{direction}, m_bars(bars), m_backgrounds(content) {
        m_found.glyphs.reserve(content.glyphs.size());
        m_found.runs.reserve(content.glyphs.size() / 4 + 8);
    }

    GlyphRuns build() {
        for (std::uint32_t i = 0; i < m_content.glyphs.size(); ++i) {
            model::Glyph const& glyph = m_content.glyphs[i];
            if (glyph.direction != m_frame.direction || glyph.outside) continue;
            if (isZeroWidth(glyph.code)) continue;
            if (isSpace(glyph.code)) {
                m_spacePending = true;
                continue;
            }
            // without any width and a hair high: nobody can see it
            if (glyph.size <= kUnseenSize && glyph.box.x1 <= glyph.box.x0) continue;
            if (!(glyph.size > 0) || !std::isfinite(glyph.box.x0 + glyph.box.x1 + glyph.box.y0 + glyph.box.y1)) continue;
            add(i, glyph);
        }
        closeRun();
        judgeSpaces();
        return std::move(m_found);
    }

private:
    void add(std::uint32_t index, model::Glyph const& glyph) {
        model::Rect flow = m_frame.toFlow(glyph.box);
        Points const baseline = glyph.vertical ? flow.centre().y + glyph.size / 3 : m_frame.toFlow(glyph.origin).y;
        flow.y0 = std::clamp(flow.y0, baseline - kAscentAtMost * glyph.size, baseline);
        flow.y1 = std::clamp(flow.y1, baseline, baseline + kDescentAtMost * glyph.size);
        if (m_open) {
            GlyphRun& run = m_found.runs.back();
            model::Glyph const& last = m_content.glyphs[m_found.glyphs.back()];
            auto const samePlace = [&] { return std::abs(flow.x0 - m_lastStart) < kDoubleOffset * glyph.size && std::abs(baseline - run.baseline) < kDoubleOffset * glyph.size; };
            if (last.code == glyph.code && samePlace() && std::abs(glyph.size - run.size) < kDoubleOffset * run.size) {
                run.doubled = true;
                m_spacePending = false;
                return;
            }
            if (isCombining(glyph.code) && flow.x0 < run.flow.x1 + kRunGap * run.size) {
                append(index, glyph, run.flow);
                return;
            }
            bool const neutral = isWidePunctuation(glyph.code);
            bool const goesOn = !m_spacePending && glyph.font == run.font && glyph.colour == run.colour && std::abs(glyph.size - run.size) < 0.02F * run.size &&
                                std::abs(baseline - run.baseline) < kRunBaseline * run.size && flow.x0 - run.flow.x1 < kRunGap * run.size &&
                                flow.x0 - run.flow.x1 > -kRunOverlap * run.size && glyph.invisible == last.invisible &&
                                (neutral || run.neutral || isCjkText(glyph.code) == run.cjk) && !(run.leader && !isLeaderDot(glyph.code)) &&
                                (!isSentenceEnd(last.code) || isSentenceEnd(glyph.code)) && !barBetween(run, flow, baseline);
            if (goesOn) {
                if (run.neutral && !neutral) {
                    run.neutral = false;
                    run.cjk = isCjkText(glyph.code);
                }
                append(index, glyph, flow);
                if (isLeaderDot(glyph.code))
                    splitLeader();
                else
                    m_dots = 0;
                return;
            }
        }
        closeRun();
        GlyphRun run;
        run.flow = flow;
        run.baseline = baseline;
        run.size = glyph.size;
        run.first = static_cast<std::uint32_t>(m_found.glyphs.size());
        run.count = 1;
        run.order = static_cast<std::uint32_t>(m_found.runs.size());
        run.colour = glyph.colour;
        run.font = glyph.font;
        run.hidden = glyph.invisible;
        run.spaceBefore = m_spacePending;
        run.neutral = isWidePunctuation(glyph.code);
        run.cjk = !run.neutral && isCjkText(glyph.code);
        if (m_spacePending && !m_found.runs.empty()) m_found.runs.back().spaceAfter = true;
        m_spacePending = false;
        m_found.glyphs.push_back(index);
        m_found.runs.push_back(run);
        m_lastStart = flow.x0;
        m_dots = isLeaderDot(glyph.code) ? 1 : 0;
        m_open = true;
    }

    // Letters that touch are never parted: a bar needs some room.
    bool barBetween(GlyphRun const& run, model::Rect const& next, Points baseline) const {
        return next.x0 - run.flow.x1 > kBarRoom * run.size && !m_bars.empty() && m_bars.between(run.flow.x1, next.x0, baseline - kBarHeight * run.size, baseline);
    }

    void append(std::uint32_t index, model::Glyph const&, model::Rect const& flow) {
        GlyphRun& run = m_found.runs.back();
        run.flow = model::united(run.flow, flow);
        ++run.count;
        m_found.glyphs.push_back(index);
        m_lastStart = flow.x0;
    }

    // The fourth dot in a row makes the dots a run of their own.
    void splitLeader() {
        GlyphRun& run = m_found.runs.back();
        if (run.leader || ++m_dots < kLeaderDots) return;
        if (run.count == static_cast<std::uint32_t>(m_dots)) {
            run.leader = true;
            return;
        }
        GlyphRun dots = run;
        dots.first = run.first + run.count - static_cast<std::uint32_t>(m_dots);
        dots.count = static_cast<std::uint32_t>(m_dots);
        dots.leader = true;
        dots.spaceBefore = false;
        dots.order = static_cast<std::uint32_t>(m_found.runs.size());
        dots.flow.x0 = m_frame.toFlow(m_content.glyphs[m_found.glyphs[dots.first]].box).x0;
        run.count -= dots.count;
        run.flow.x1 = dots.flow.x0;
        closeRun();
        m_found.runs.push_back(dots);
        m_open = true;
    }

    void closeRun() {
        if (!m_open) return;
        GlyphRun& run = m_found.runs.back();
        if (!run.hidden && m_backgrounds.hides(run.colour, m_frame.toPage(run.flow))) run.hidden = true;
        m_open = false;
        m_dots = 0;
    }

    void judgeSpaces() {
        int drawn = 0;
        int moved = 0;
        auto const& runs = m_found.runs;
        for (std::size_t i = 1; i < runs.size(); ++i) {
            if (std::abs(runs[i].baseline - runs[i - 1].baseline) > kRunBaseline * runs[i].size) continue;
            Points const gap = (runs[i].flow.x0 - runs[i - 1].flow.x1) / runs[i].size;
            if (gap < kSpaceFrom || gap > kSpaceTo) continue;
            ++(runs[i].spaceBefore ? drawn : moved);
        }
        m_found.spacesDrawn = drawn >= 10 && drawn >= 4 * moved;
    }

    model::PageContent const& m_content;
    Frame m_frame;
    RuleIndex const& m_bars;
    Backgrounds m_backgrounds;
    GlyphRuns m_found;
    Points m_lastStart = 0;
    int m_dots = 0;
    bool m_open = false;
    bool m_spacePending = false;
};

}  // namespace

GlyphRuns findRuns(model::PageContent const& content, model::Direction direction, RuleIndex const& bars) { return Builder(content, direction, bars).build(); }

}  // namespace standin::layout
