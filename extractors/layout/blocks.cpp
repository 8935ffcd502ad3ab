// Lines are taken in reading order; a new block begins at a change of column, size
// or weight, at a wider step, a rule, a bullet or number, and where the line before
// ended early. Roles follow from the first words and from size and weight against
// running text. Tested by layout_test.cpp.
#include "extractors/layout/blocks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "extractors/layout/characters.h"
#include "text/utf8.h"

namespace standin::layout {

namespace {

using model::Block;
using model::BlockRole;
using model::PageLayout;
using model::Points;
using model::TextLine;
using model::Word;

// In font heights.
constexpr Points kStepAtMost = 1.75F;     // baseline to baseline inside a block
constexpr Points kStepEvenAtMost = 2.2F;  // where the steps are all the same
constexpr float kStepEven = 0.04F;
constexpr float kStepGrowth = 1.25F;      // against the step before
constexpr float kSizeChange = 0.12F;      // part of the size
constexpr Points kEarlyEnd = 1.5F;        // a line that ends this much before the others ends its paragraph
constexpr Points kIndent = 1.2F;
constexpr float kHeadingSize = 1.12F;     // times the size of running text
constexpr float kTitleSize = 1.6F;
constexpr std::size_t kHeadingWords = 14;
constexpr std::uint32_t kValueWords = 8;   // of a value beside a name
constexpr float kSameRow = 0.2F;           // font heights between the baselines of both
constexpr std::size_t kHeadingLines = 3;
constexpr std::size_t kMarkedHeadingWords = 5;  // a heading with a bullet in front
constexpr int kSameBullets = 2;                 // lines that begin with the same sign
constexpr Points kDrawnBulletMost = 0.8F;       // width and height of a drawn bullet
constexpr Points kDrawnBulletGap = 2.5F;        // between it and its text
constexpr std::size_t kMostDrawnBullets = 400;  // more small marks are a drawing

char32_t firstCode(std::string_view s) {
    std::size_t at = 0;
    return s.empty() ? 0 : text::decodeNext(s, at);
}

bool isBulletWord(Word const& word) {
    std::size_t at = 0;
    if (word.text.empty()) return false;
    char32_t const code = text::decodeNext(word.text, at);
    // A lone sign without Unicode in front of text is a bullet of a symbol font.
    return (isBullet(code) || isUnknown(code)) && at == word.text.size();
}

// "1)", "(2)", "a)", "3.", "iv)": a number or letter of a list.
bool isEnumerator(std::string_view s) {
    if (s.size() < 2 || s.size() > 5) return false;
    bool const bracket = s.front() == '(' && s.back() == ')';
    if (bracket)
        s = s.substr(1, s.size() - 2);
    else if (s.back() == ')' || s.back() == '.')
        s.remove_suffix(1);
    else
        return false;
    if (s.empty()) return false;
    if (std::all_of(s.begin(), s.end(), [](char c) { return c >= '0' && c <= '9'; })) return s.size() <= 2;
    return s.size() == 1 && isAsciiLetter(static_cast<unsigned char>(s[0]));
}

// Single characters in a font of their own that begin several lines: bullets of a
// symbol font, whatever letter they stand on.
using Bullets = std::set<std::pair<std::uint16_t, std::string>>;

bool isForeignSign(PageLayout const& layout, TextLine const& line) {
    if (line.wordCount < 2) return false;
    Word const& first = layout.words[line.firstWord];
    Word const& second = layout.words[line.firstWord + 1];
    if (first.font == second.font || first.text.empty() || first.script != model::Script::Normal) return false;
    std::size_t at = 0;
    char32_t const code = text::decodeNext(first.text, at);
    bool const ideograph = code >= 0x4E00 && code <= 0x9FFF;  // "图 5" in a font for ideographs
    return at == first.text.size() && !isDigit(code) && !isAsciiUpper(code) && !ideograph;
}

Bullets findBullets(PageLayout const& layout, std::uint32_t firstLine) {
    std::map<std::pair<std::uint16_t, std::string>, int> counts;
    for (std::uint32_t l = firstLine; l < layout.lines.size(); ++l)
        if (isForeignSign(layout, layout.lines[l])) ++counts[{layout.words[layout.lines[l].firstWord].font, layout.words[layout.lines[l].firstWord].text}];
    Bullets bullets;
    for (auto const& [sign, count] : counts)
        if (count >= kSameBullets) bullets.insert(sign);
    return bullets;
}

// Marks drawn in front of lines (discs, squares) instead of printed ones: small,
// level with the line, the same size and place at several lines. One flag a line.
std::vector<char> findDrawnBullets(PageLayout const& layout, std::uint32_t firstLine) {
    std::vector<char> marked(layout.lines.size() - firstLine, 0);
    std::vector<model::Rect> marks;
    auto const consider = [&](model::Rect const& box) {
        if (box.width() < kDrawnBulletMost * layout.bodySize && box.height() < kDrawnBulletMost * layout.bodySize && box.height() > 0) marks.push_back(box);
    };
    for (auto const& drawing : layout.drawings) consider(drawing.box);
    for (auto const& fill : layout.fills) consider(fill.box);
    for (auto const& image : layout.images) consider(image.box);
    if (marks.empty() || marks.size() > kMostDrawnBullets) return marked;
    std::map<std::pair<int, int>, std::vector<std::size_t>> alike;  // by place from the left and size, in tenths of a point
    for (std::uint32_t l = firstLine; l < layout.lines.size(); ++l) {
        TextLine const& line = layout.lines[l];
        if (line.direction != model::Direction::Right) continue;
        for (auto const& mark : marks) {
            Points const gap = line.box.x0 - mark.x1;
            if (gap < 0 || gap > kDrawnBulletGap * line.size || mark.centre().y < line.box.y0 || mark.centre().y > line.box.y1) continue;
            alike[{static_cast<int>(std::lround(10 * mark.x0)), static_cast<int>(std::lround(10 * mark.height()))}].push_back(l - firstLine);
            break;
        }
    }
    for (auto const& [place, lines] : alike) {
        if (lines.size() < static_cast<std::size_t>(kSameBullets)) continue;
        for (std::size_t const l : lines) marked[l] = 1;
    }
    return marked;
}

bool startsEntry(PageLayout const& layout, TextLine const& line, Bullets const& bullets) {
    Word const& first = layout.words[line.firstWord];
    if (first.text.empty()) return false;
    char32_t const code = firstCode(first.text);
    if (isBulletWord(first)) return line.wordCount > 1;
    if (isForeignSign(layout, line) && bullets.count({first.font, first.text}) > 0) return true;
    if (isBullet(code) && code != 0xB7 && code != 0xA7) return true;
    if (line.wordCount < 2) return false;
    Word const& second = layout.words[line.firstWord + 1];
    bool const dash = first.text == "-" || first.text == "\u2013" || first.text == "\u2014" || first.text == "*";
    if (dash) return isLetterLike(firstCode(second.text));
    return isEnumerator(first.text) && first.script == model::Script::Normal && second.spaceBefore;
}

bool isNumbering(std::string_view s) {
    if (s.empty() || !text::isAsciiDigit(s.front())) return false;
    std::size_t digits = 0;
    for (char c : s) {
        if (c != '.' && !text::isAsciiDigit(c)) return false;
        digits = c == '.' ? 0 : digits + 1;
        if (digits > 2) return false;
    }
    return true;
}

// Characters that follow the number of a figure in a CJK sentence about it ("图3为…", "図3に…").
bool saysSomethingOfIt(char32_t code) { return std::u32string_view(U"\u4E3A\u662F\u793A\u4E2D\u548C\u4E0E\u6240\u7ED9\u53CA\u306B\u306F\u306E\u3092").find(code) != std::u32string_view::npos; }

// "Figure 3", "Fig. 3", "Table 2.", "图3", "表 1", "Bild 4", "Рис. 2"
bool startsCaption(PageLayout const& layout, TextLine const& line) {
    std::string_view const first = layout.words[line.firstWord].text;
    static constexpr std::array<std::string_view, 22> kWords{"Figure", "FIGURE", "Fig.", "FIG.", "Fig", "FIG", "Table", "TABLE", "Tab.", "Abbildung", "Abb.", "Bild",
                                                             "Tabelle", "\u56FE", "\u8868", "\u56F3", "\u5716", "\u0420\u0438\u0441.", "\u0420\u0438\u0441\u0443\u043D\u043E\u043A", "\u0422\u0430\u0431\u043B\u0438\u0446\u0430", "Chart", "Diagram"};
    for (std::string_view word : kWords) {
        if (first.substr(0, word.size()) != word) continue;
        std::string_view rest = first.substr(word.size());
        std::uint32_t next = line.firstWord + 1;
        if (rest.empty() && line.wordCount > 1) rest = layout.words[next++].text;
        if (!rest.empty() && rest.front() == '.') rest.remove_prefix(1);
        if (rest.empty() || !text::isAsciiDigit(rest.front())) continue;
        std::size_t at = 0;
        while (at < rest.size() && (text::isAsciiDigit(rest[at]) || rest[at] == '-' || rest[at] == '.')) ++at;
        if (at < rest.size() && saysSomethingOfIt(firstCode(rest.substr(at)))) return false;
        // "Fig. 2 shows …" is a sentence about the figure.
        bool const goesOn = next < line.firstWord + line.wordCount && text::isAsciiDigit(rest.back());
        return !(goesOn && isAsciiLower(firstCode(layout.words[next].text)));
    }
    return false;
}

class BlockBuilder {
public:
    BlockBuilder(PageLayout& layout, std::uint32_t firstLine, std::span<LinePlace const> places, std::span<model::Rect const> horizontals)
        : m_layout(layout), m_firstLine(firstLine), m_places(places), m_horizontals(horizontals), m_bullets(findBullets(layout, firstLine)), m_drawn(findDrawnBullets(layout, firstLine)) {}

    void build() {
        std::size_t const first = m_layout.blocks.size();
        for (std::size_t i = 0; i < m_places.size(); ++i) {
            if (i == 0 || breaksBefore(i)) {
                Block block;
                block.firstLine = m_firstLine + static_cast<std::uint32_t>(i);
                block.column = m_places[i].column;
                m_layout.blocks.push_back(block);
                m_blockStart = i;
                m_step = 0;
                m_right = 0;
            } else if (m_places[i].row != m_places[i - 1].row) {
                m_step = m_places[i].baseline - m_places[i - 1].baseline;
            }
            Block& block = m_layout.blocks.back();
            ++block.lineCount;
            block.box = model::united(block.box, line(i).box);
            m_right = std::max(m_right, m_places[i].flow.x1);
        }
        for (std::size_t b = first; b < m_layout.blocks.size(); ++b) giveRole(m_layout.blocks[b]);
        showBullets();
    }

private:
    TextLine const& line(std::size_t i) const { return m_layout.lines[m_firstLine + i]; }
    bool isEntry(std::size_t i) const { return m_drawn[i] != 0 || startsEntry(m_layout, line(i), m_bullets); }

    // A letter of a symbol font that is a bullet on the page reads as one.
    void showBullets() {
        if (m_bullets.empty()) return;
        for (std::uint32_t l = m_firstLine; l < m_layout.lines.size(); ++l) {
            Word& word = m_layout.words[m_layout.lines[l].firstWord];
            if (isForeignSign(m_layout, m_layout.lines[l]) && m_bullets.count({word.font, word.text}) > 0 && isReplaceable(word.text)) word.text = "\u2022";
        }
    }

    // Signs that are bullets already, dashes and brackets stay as they are.
    static bool isReplaceable(std::string const& sign) {
        char32_t const code = firstCode(sign);
        return isLetterLike(code) || isUnknown(code);
    }

    bool sharesRow(std::size_t i) const {
        return (i > 0 && m_places[i - 1].row == m_places[i].row && m_places[i - 1].group == m_places[i].group) ||
               (i + 1 < m_places.size() && m_places[i + 1].row == m_places[i].row && m_places[i + 1].group == m_places[i].group);
    }

    bool ruleBetween(model::Rect const& above, model::Rect const& below, Points from, Points to) const {
        Points const left = std::max(above.x0, below.x0);
        Points const right = std::min(above.x1, below.x1);
        auto it = std::lower_bound(m_horizontals.begin(), m_horizontals.end(), from, [](model::Rect const& r, Points y) { return r.y0 < y; });
        for (; it != m_horizontals.end() && it->y0 < to; ++it)
            if (it->x0 <= left + 2 && it->x1 >= right - 2) return true;
        return false;
    }

    bool breaksBefore(std::size_t i) {
        LinePlace const& now = m_places[i];
        LinePlace const& last = m_places[i - 1];
        if (now.group != last.group) return true;
        if (now.row == last.row) return false;
        TextLine const& text = line(i);
        TextLine const& above = line(i - 1);
        Points const size = std::max(text.size, above.size);
        Points const step = now.baseline - last.baseline;
        if (step < 0 || step > kStepEvenAtMost * size) return true;
        if (step > kStepAtMost * size) {
            // Wide but even spacing, as in sheets set with one and a half lines.
            bool const evenBefore = std::abs(step - m_step) < kStepEven * step;
            bool const evenAfter = i + 1 < m_places.size() && m_places[i + 1].group == now.group && std::abs(m_places[i + 1].baseline - now.baseline - step) < kStepEven * step &&
                                   std::abs(line(i + 1).size - text.size) < kSizeChange * size;
            if (!evenBefore && !evenAfter) return true;
        }
        if (m_step > 0 && step > kStepGrowth * m_step + 0.1F * size) return true;
        if (std::abs(text.size - above.size) > kSizeChange * size || text.bold != above.bold) return true;
        bool const rowNow = sharesRow(i);
        if (rowNow != sharesRow(i - 1)) return true;
        if (ruleBetween(last.flow, now.flow, last.baseline, now.baseline - 0.3F * text.size)) return true;
        if (rowNow) return false;
        if (isEntry(i) || startsCaption(m_layout, text)) return true;
        if (isNumbering(m_layout.words[text.firstWord].text) && text.wordCount > 1 && text.bold) return true;
        // The first word would have found room on the line above: a new paragraph.
        Points const right = std::max(m_right, now.flow.x1);
        Points const word = m_layout.words[text.firstWord].box.width() + (text.direction == model::Direction::Right ? 0 : m_layout.words[text.firstWord].box.height());
        bool const entry = isEntry(m_blockStart);
        bool const indented = now.flow.x0 > last.flow.x0 + kIndent * size && !(entry && i == m_blockStart + 1);
        bool const endedEarly = last.flow.x1 + word + kEarlyEnd * size < right;
        if (endedEarly) return true;
        return indented && last.flow.x1 + kEarlyEnd * size < right;
    }

    void giveRole(Block& block) const {
        TextLine const& first = m_layout.lines[block.firstLine];
        std::size_t const index = block.firstLine - m_firstLine;
        if (startsCaption(m_layout, first)) {
            block.role = BlockRole::Caption;
            return;
        }
        bool const rows = sharesRow(index);
        if (!rows && isHeading(block)) {
            block.role = BlockRole::Heading;
            Word const& word = m_layout.words[first.firstWord];
            if (isNumbering(word.text) && first.wordCount > 1)
                block.headingLevel = static_cast<int>(std::count(word.text.begin(), word.text.end() - 1, '.')) + 1;
            else
                block.headingLevel = first.size >= kTitleSize * m_layout.bodySize ? 1 : first.size >= kHeadingSize * m_layout.bodySize ? 2 : 3;
            return;
        }
        if (isEntry(index)) block.role = BlockRole::ListEntry;
    }

    bool isHeading(Block const& block) const {
        if (block.lineCount > kHeadingLines) return false;
        std::size_t words = 0;
        std::size_t letters = 0;
        std::size_t others = 0;
        bool capitals = true;
        bool bold = true;
        bool big = true;
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            TextLine const& text = m_layout.lines[l];
            words += text.wordCount;
            bold = bold && text.bold;
            big = big && text.size >= kHeadingSize * m_layout.bodySize;
            for (std::uint32_t w = text.firstWord; w < text.firstWord + text.wordCount; ++w) {
                std::string const& s = m_layout.words[w].text;
                for (std::size_t at = 0; at < s.size();) {
                    char32_t const code = text::decodeNext(s, at);
                    if (isLetterLike(code))
                        letters += isCjkText(code) ? 2U : 1U;
                    else
                        ++others;
                    if (isAsciiLower(code) || isCjkText(code)) capitals = false;
                }
            }
        }
        if (letters < 3 || others > letters || words > kHeadingWords) return false;
        TextLine const& last = m_layout.lines[block.firstLine + block.lineCount - 1];
        std::string const& end = m_layout.words[last.firstWord + last.wordCount - 1].text;
        std::size_t at = end.size();
        char32_t const stop = text::decodePrevious(end, at);
        if (stop == U'.' || stop == U',' || stop == U';' || stop == 0x3002 || stop == 0xFF0C || stop == 0xFF1B || stop == 0x3001) return false;
        TextLine const& first = m_layout.lines[block.firstLine];
        bool const entry = isEntry(block.firstLine - m_firstLine);
        bool const numbered = isNumbering(m_layout.words[first.firstWord].text) && first.wordCount > 1;
        if (big && !bold && !numbered && standsBesideValue(block)) return false;
        if (big || bold) return !entry || numbered || isEnumerator(m_layout.words[first.firstWord].text) || words <= kMarkedHeadingWords;
        return capitals && letters >= 6 && block.lineCount == 1 && !entry && words <= 6;
    }

    // "Storage temperature      -40 °C to 90 °C": a row of a list, though in larger print than the page.
    bool standsBesideValue(Block const& block) const {
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            TextLine const& own = m_layout.lines[l];
            bool const beside = std::any_of(m_layout.lines.begin(), m_layout.lines.end(), [&](TextLine const& other) {
                if (std::abs(other.baseline - own.baseline) > kSameRow * own.size || other.box.x0 <= own.box.x1 || other.wordCount == 0 || other.wordCount > kValueWords) return false;
                if (std::abs(other.size - own.size) > kSizeChange * own.size) return false;
                std::size_t at = 0;
                char32_t const first = text::decodeNext(m_layout.words[other.firstWord].text, at);
                return (first >= U'0' && first <= U'9') || first == U'+' || first == U'-' || first == 0x00B1 || first == 0x2212 || first == 0x2013;
            });
            if (beside) return true;
        }
        return false;
    }

    PageLayout& m_layout;
    std::uint32_t m_firstLine;
    std::span<LinePlace const> m_places;
    std::span<model::Rect const> m_horizontals;
    Bullets m_bullets;
    std::vector<char> m_drawn;  // by place
    std::size_t m_blockStart = 0;
    Points m_step = 0;
    Points m_right = 0;
};

}  // namespace

void buildBlocks(PageLayout& layout, std::uint32_t firstLine, std::span<LinePlace const> places, std::span<model::Rect const> horizontals) {
    BlockBuilder(layout, firstLine, places, horizontals).build();
}

}  // namespace standin::layout
