// Each reading direction is laid out in its own frame: runs, lines, words. The
// prevailing direction goes through columns and blocks; the others follow as
// rotated blocks. Hidden words stay where no visible word stands. Tested by layout_test.cpp.
#include "extractors/layout/layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "extractors/layout/blocks.h"
#include "extractors/layout/characters.h"
#include "extractors/layout/glyph_runs.h"
#include "extractors/layout/line_builder.h"
#include "extractors/layout/reading_order.h"
#include "extractors/layout/rule_index.h"
#include "extractors/layout/word_builder.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::layout {

namespace {

using model::Direction;
using model::PageContent;
using model::PageLayout;
using model::Points;
using model::Rect;

constexpr Points kLineGap = 1.5F;         // font heights: wider gaps end a line
constexpr Points kBulletGap = 4.0F;       // behind a lone bullet
constexpr float kCovered = 0.4F;          // part of a hidden word's area under visible words
constexpr Points kSlantedGap = 0.35F;     // font heights between the glyphs of a slanted word
constexpr Points kSlantedJump = 2.5F;     // further away: another slanted line
constexpr std::size_t kSampleWords = 8;
constexpr Points kUsualSize = 9.0F;

struct Drafts {
    std::vector<WordDraft> words;
    std::vector<std::uint32_t> lineStarts;
};

Points prevailingSize(PageContent const& content) {
    std::array<std::uint32_t, 128> histogram{};  // half points
    Points last = 0;
    std::size_t place = 0;  // of the last glyph's size, which is that of most next ones
    for (model::Glyph const& glyph : content.glyphs) {
        if (glyph.outside || !(glyph.size > 1 && glyph.size < 60) || isSpace(glyph.code)) continue;
        if (glyph.size != last) place = static_cast<std::size_t>(std::lround(glyph.size * 2));
        last = glyph.size;
        ++histogram[place];
    }
    auto const most = std::max_element(histogram.begin(), histogram.end());
    return *most == 0 ? kUsualSize : static_cast<Points>(most - histogram.begin()) / 2;
}

Direction prevailingDirection(std::array<std::size_t, 5> const& counts) {
    std::size_t total = 0;
    for (Direction d : {Direction::Right, Direction::Down, Direction::Left, Direction::Up}) total += counts[static_cast<std::size_t>(d)];
    if (counts[0] * 10 >= total * 3) return Direction::Right;
    Direction best = Direction::Right;
    for (Direction d : {Direction::Down, Direction::Left, Direction::Up})
        if (counts[static_cast<std::size_t>(d)] > counts[static_cast<std::size_t>(best)]) best = d;
    return best;
}

void appendLines(std::vector<RunLine> const& lines, WordBuilder& builder, Drafts& drafts) {
    for (RunLine const& line : lines) {
        drafts.lineStarts.push_back(static_cast<std::uint32_t>(drafts.words.size()));
        builder.appendWords(line, drafts.words);
        if (drafts.lineStarts.back() == drafts.words.size()) drafts.lineStarts.pop_back();
    }
}

// Takes away hidden words that visible ones cover and tells them in a note.
void dropCovered(Drafts& hidden, Drafts const& visible, PageLayout& layout) {
    std::vector<std::uint32_t> byTop(visible.words.size());
    std::iota(byTop.begin(), byTop.end(), 0U);
    std::sort(byTop.begin(), byTop.end(), [&](auto a, auto b) { return visible.words[a].flow.y0 < visible.words[b].flow.y0; });
    Points tallest = 0;
    for (WordDraft const& word : visible.words) tallest = std::max(tallest, word.flow.height());
    Drafts kept;
    std::size_t dropped = 0;
    std::string sample;
    std::size_t line = 0;
    bool open = false;
    for (std::uint32_t w = 0; w < hidden.words.size(); ++w) {
        if (line < hidden.lineStarts.size() && hidden.lineStarts[line] == w) {
            ++line;
            open = false;
        }
        Rect const& flow = hidden.words[w].flow;
        Points covered = 0;
        auto it = std::lower_bound(byTop.begin(), byTop.end(), flow.y0 - tallest, [&](std::uint32_t i, Points y) { return visible.words[i].flow.y0 < y; });
        for (; it != byTop.end() && visible.words[*it].flow.y0 < flow.y1; ++it) {
            Rect const common = model::intersection(flow, visible.words[*it].flow);
            if (!common.empty()) covered += common.area();
        }
        if (covered > kCovered * flow.area()) {
            if (dropped++ < kSampleWords) sample += (sample.empty() ? "" : " ") + hidden.words[w].word.text;
            continue;
        }
        if (!open) kept.lineStarts.push_back(static_cast<std::uint32_t>(kept.words.size()));
        open = true;
        kept.words.push_back(std::move(hidden.words[w]));
    }
    if (dropped > 0)
        layout.notes.push_back({layout.page, fmt::format("{} hidden {} under or over visible text left out: \"{}\"{}", dropped, dropped == 1 ? "word" : "words", sample,
                                                         dropped > kSampleWords ? " ..." : "")});
    hidden = std::move(kept);
}

// Both lists of lines as one, from top to bottom.
Drafts merged(Drafts&& a, Drafts&& b) {
    if (b.words.empty()) return std::move(a);
    if (a.words.empty()) return std::move(b);
    Drafts both;
    std::size_t i = 0;
    std::size_t j = 0;
    auto const take = [&](Drafts& from, std::size_t line) {
        std::uint32_t const end = line + 1 < from.lineStarts.size() ? from.lineStarts[line + 1] : static_cast<std::uint32_t>(from.words.size());
        both.lineStarts.push_back(static_cast<std::uint32_t>(both.words.size()));
        for (std::uint32_t w = from.lineStarts[line]; w < end; ++w) both.words.push_back(std::move(from.words[w]));
    };
    while (i < a.lineStarts.size() || j < b.lineStarts.size()) {
        bool const first = j == b.lineStarts.size() || (i < a.lineStarts.size() && a.words[a.lineStarts[i]].baseline <= b.words[b.lineStarts[j]].baseline);
        if (first)
            take(a, i++);
        else
            take(b, j++);
    }
    return both;
}

class PageBuilder {
public:
    explicit PageBuilder(PageContent const& content) : m_content(content) {}

    PageLayout build() {
        m_layout.page = m_content.page;
        m_layout.width = m_content.width;
        m_layout.height = m_content.height;
        m_layout.fonts = m_content.fonts;
        m_layout.fills = m_content.fills;
        m_layout.images = m_content.images;
        m_layout.drawings = m_content.drawings;
        m_layout.notes = m_content.notes;
        m_layout.bodySize = prevailingSize(m_content);
        m_layout.rules = mergeRules(m_content.rules, m_layout.bodySize);
        std::array<std::size_t, 5> counts{};
        for (model::Glyph const& glyph : m_content.glyphs)
            if (!glyph.outside) ++counts[static_cast<std::size_t>(glyph.direction)];
        Direction const main = prevailingDirection(counts);
        if (counts[static_cast<std::size_t>(main)] > 0) layOutDirection(main, Part::Main);
        for (Direction d : {Direction::Right, Direction::Down, Direction::Left, Direction::Up})
            if (d != main && counts[static_cast<std::size_t>(d)] > 0) layOutDirection(d, Part::Rotated);
        if (counts[static_cast<std::size_t>(Direction::Slanted)] > 0) layOutSlanted();
        return std::move(m_layout);
    }

private:
    enum class Part { Main, Rotated };

    void layOutDirection(Direction direction, Part part) {
        Frame const frame{direction};
        RuleIndex const bars(m_layout.rules, frame);
        GlyphRuns found = findRuns(m_content, direction, bars);
        WordBuilder builder(m_content, found, frame, bars);
        Drafts drafts;
        drafts.words.reserve(found.runs.size());
        appendLines(buildLines(m_content, found, Layer::Visible), builder, drafts);
        bool const anyHidden = std::any_of(found.runs.begin(), found.runs.end(), [](GlyphRun const& run) { return run.hidden; });
        if (anyHidden) {
            Drafts hidden;
            appendLines(buildLines(m_content, found, Layer::Hidden), builder, hidden);
            dropCovered(hidden, drafts, m_layout);
            drafts = merged(std::move(drafts), std::move(hidden));
        }
        if (drafts.words.empty()) return;

        std::vector<Rect> horizontals;
        model::Rule::Axis const along = frame.sideways() ? model::Rule::Axis::Vertical : model::Rule::Axis::Horizontal;
        for (model::Rule const& rule : m_layout.rules)
            if (rule.axis == along) horizontals.push_back(frame.toFlow(rule.box));
        std::sort(horizontals.begin(), horizontals.end(), [](Rect const& a, Rect const& b) { return a.y0 < b.y0; });

        std::vector<Segment> const segments = cutSegments(drafts.words, drafts.lineStarts);
        std::vector<Group> const groups = orderSegments(segments, horizontals, m_layout.bodySize);
        auto const firstLine = static_cast<std::uint32_t>(m_layout.lines.size());
        std::size_t const firstBlock = m_layout.blocks.size();
        std::vector<LinePlace> places;
        places.reserve(segments.size());
        m_layout.words.reserve(m_layout.words.size() + drafts.words.size());
        for (std::uint32_t g = 0; g < groups.size(); ++g) {
            Segment const* last = nullptr;
            for (std::uint32_t s : groups[g].segments) {
                Segment const& segment = segments[s];
                bool const neighbours = last != nullptr && last->line == segment.line && !segment.barBefore && last->firstWord + last->wordCount == segment.firstWord;
                Points const allowed = neighbours && last->bullet ? kBulletGap : kLineGap;
                bool const goesOn = neighbours && segment.flow.x0 - last->flow.x1 <= allowed * std::max(segment.size, last->size);
                if (!goesOn) {
                    model::TextLine line;
                    line.firstWord = static_cast<std::uint32_t>(m_layout.words.size());
                    line.direction = direction;
                    line.size = segment.size;
                    m_layout.lines.push_back(line);
                    places.push_back({segment.line, g, groups[g].column, {}, segment.baseline});
                }
                appendSegment(segment, drafts, places.back());
                last = &segment;
            }
        }
        for (std::uint32_t l = firstLine; l < m_layout.lines.size(); ++l) finishLine(m_layout.lines[l]);
        buildBlocks(m_layout, firstLine, places, horizontals);
        if (part == Part::Rotated)
            for (std::size_t b = firstBlock; b < m_layout.blocks.size(); ++b) m_layout.blocks[b].role = model::BlockRole::Rotated;
    }

    void appendSegment(Segment const& segment, Drafts& drafts, LinePlace& place) {
        model::TextLine& line = m_layout.lines.back();
        for (std::uint32_t w = segment.firstWord; w < segment.firstWord + segment.wordCount; ++w) {
            line.box = model::united(line.box, drafts.words[w].word.box);
            m_layout.words.push_back(std::move(drafts.words[w].word));
            ++line.wordCount;
        }
        place.flow = model::united(place.flow, segment.flow);
    }

    void finishLine(model::TextLine& line) {
        std::size_t bold = 0;
        std::size_t all = 0;
        std::size_t longest = 0;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
            model::Word const& word = m_layout.words[w];
            all += word.text.size();
            bold += word.bold ? word.text.size() : 0;
            if (word.text.size() > longest && word.script == model::Script::Normal) {
                longest = word.text.size();
                line.baseline = word.baseline;
                line.size = word.size;
            }
        }
        if (longest == 0) line.baseline = m_layout.words[line.firstWord].baseline;
        line.bold = bold * 10 >= all * 8;
        m_layout.words[line.firstWord].spaceBefore = true;
    }

    // Slanted text (watermarks, mostly) is read as it was drawn.
    void layOutSlanted() {
        model::Glyph const* last = nullptr;
        bool space = false;
        for (model::Glyph const& glyph : m_content.glyphs) {
            if (glyph.direction != Direction::Slanted || glyph.outside || isZeroWidth(glyph.code)) continue;
            if (isSpace(glyph.code)) {
                space = true;
                continue;
            }
            if (!(glyph.size > 0) || !std::isfinite(glyph.box.x0 + glyph.box.x1 + glyph.box.y0 + glyph.box.y1)) continue;
            Points gap = 0;
            if (last != nullptr) {
                // Distance between the boxes, as the nearer of both axes tells it.
                Points const dx = std::max({0.0F, glyph.box.x0 - last->box.x1, last->box.x0 - glyph.box.x1});
                Points const dy = std::max({0.0F, glyph.box.y0 - last->box.y1, last->box.y0 - glyph.box.y1});
                gap = std::hypot(dx, dy) / glyph.size;
                if (last->code == glyph.code && std::hypot(glyph.origin.x - last->origin.x, glyph.origin.y - last->origin.y) < 0.12F * glyph.size) continue;
            }
            bool const sameLook = last != nullptr && last->font == glyph.font && last->colour == glyph.colour && std::abs(last->size - glyph.size) < 0.05F * glyph.size;
            bool const newLine = !sameLook || gap > kSlantedJump;
            bool const newWord = newLine || space || gap > kSlantedGap;
            if (newLine) {
                model::TextLine line;
                line.firstWord = static_cast<std::uint32_t>(m_layout.words.size());
                line.direction = Direction::Slanted;
                line.size = glyph.size;
                line.baseline = glyph.origin.y;
                model::Block block;
                block.firstLine = static_cast<std::uint32_t>(m_layout.lines.size());
                block.lineCount = 1;
                block.role = model::BlockRole::Rotated;
                m_layout.lines.push_back(line);
                m_layout.blocks.push_back(block);
            }
            if (newWord) {
                model::Word word;
                word.baseline = glyph.origin.y;
                word.size = glyph.size;
                word.font = glyph.font;
                word.colour = glyph.colour;
                word.direction = Direction::Slanted;
                word.hidden = glyph.invisible;
                if (glyph.font < m_content.fonts.size()) {
                    word.bold = m_content.fonts[glyph.font].bold;
                    word.italic = m_content.fonts[glyph.font].italic;
                }
                m_layout.words.push_back(std::move(word));
                ++m_layout.lines.back().wordCount;
            }
            model::Word& word = m_layout.words.back();
            word.box = model::united(word.box, glyph.box);
            char32_t const code = glyph.code < 0x20 ? model::kUnknownCharacter : glyph.code;
            word.unknown = word.unknown || isUnknown(code);
            text::append(word.text, code);
            if (needsComposition(code)) word.text = text::toNfc(word.text);
            m_layout.lines.back().box = model::united(m_layout.lines.back().box, glyph.box);
            m_layout.blocks.back().box = m_layout.lines.back().box;
            last = &glyph;
            space = false;
        }
    }

    PageContent const& m_content;
    PageLayout m_layout;
};

}  // namespace

PageLayout layOut(PageContent const& content) { return PageBuilder(content).build(); }

}  // namespace standin::layout
