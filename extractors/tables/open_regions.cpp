// The lines outside ruled tables are grouped into printed rows of segments. A row
// is a seed when it holds column titles, leaders, or values beside words; from a
// seed the region grows downwards over rows that go on in the same columns.
// Prose, headings, captions, notes, wide gaps and the next seed head end it.
// Horizontal rules over most of its width become the bands of its lattice.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/open_regions.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "extractors/tables/columns.h"
#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/text_shape.h"
#include "text/utf8.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Rect;

namespace {

// In font heights.
constexpr float kSegmentGap = 0.9F;  // parts segments of a row
constexpr float kSameLine = 0.45F;
constexpr float kRowGap = 3.2F;       // from row to row inside a table
constexpr float kWideRowGap = 4.5F;   // the same where the row plainly goes on below the titles
constexpr float kRuledRowGap = 7.0F;  // the same where rules go on below
constexpr float kAligned = 0.7F;
constexpr float kWordSpace = 0.5F;     // at most, between words of one text
constexpr float kCaptionPitch = 1.4F;  // from a caption to the titles, at least
constexpr float kOwnLine = 0.8F;       // nearer to the line below, a heading is none
constexpr float kHeadingPitch = 1.9F;  // from a line of a list to the indented one below it
constexpr float kIndentFrom = 0.6F;
constexpr float kIndentTo = 3.0F;
constexpr float kRuleExtent = 0.6F;  // rules whose ends differ less belong together

constexpr float kBandRule = 0.6F;  // share of the width that a row rule covers
constexpr float kWholeRule = 0.93F;
constexpr float kProse = 0.62F;    // share of the width: a longer lone segment of many words is prose
constexpr int kProseWords = 9;
constexpr std::size_t kProseBeside = 6;     // words of a line of prose beside a list
constexpr std::size_t kLeastProseRows = 3;  // lines of it
constexpr float kProsePitch = 2.2F;
constexpr float kMiddleFrom = 0.38F;  // of the page's width: where the strip between two sides may lie
constexpr float kMiddleTo = 0.62F;
constexpr std::size_t kLeastSideRows = 5;
constexpr std::size_t kLeastLedRows = 2;  // the same where leaders run on both sides
constexpr int kLeftSide = 901;            // text columns of our own making
constexpr int kRightSide = 902;
constexpr std::size_t kMostTitleRows = 3;
constexpr int kLoneRows = 3;  // rows of one segment that a table may hold in a run

struct SegmentOfRow {
    Piece piece;
    std::uint32_t line = 0;
    Shape shape = Shape::Words;
    ColumnTitle title = ColumnTitle::None;
    bool bare = false;  // a number without a unit: a value, where "25 °C" may be a title
    int column = 0;     // text column of its block
    bool used = false;
};

struct PrintedRow {
    Points baseline = 0;
    Points size = 0;
    Rect box;
    std::vector<SegmentOfRow> segments;
    bool leaders = false;
    std::vector<Rect> leaderBoxes;  // one for each run of leader dots
    bool heading = false;           // a heading or caption block
    bool partlyHeading = false;     // beside what is none
};

struct Subset {  // the segments of a row that stand in one text column (0: all)
    std::vector<SegmentOfRow const*> segments;
    int titles = 0;
    int valueTitles = 0;
    int values = 0;
    int bare = 0;
    model::Rect box;
};

bool isNoteStart(std::string const& text) {
    auto const lower = text::asciiLower(text::trimmed(text));
    return lower.compare(0, 4, "note") == 0 || lower.compare(0, 7, "caution") == 0 || lower.compare(0, 3, "注") == 0 || lower.compare(0, 3, "※") == 0 ||
           lower.compare(0, 6, "figure") == 0 || lower.compare(0, 4, "fig.") == 0;
}

bool beginsSmall(std::string const& text) { return !text.empty() && text[0] >= 'a' && text[0] <= 'z'; }

class Finder {
public:
    Finder(PageLayout const& page, RuleNetworks const& rules, std::vector<model::Table> const& tables, std::vector<char> const& taken)
        : m_page(page), m_tables(tables), m_taken(taken), m_font(page.bodySize > 1 ? page.bodySize : 10) {
        collectRules(rules);
        collectRows();
        partSides();
        partProse();
    }

    std::vector<Region> find() {
        std::vector<Region> regions;
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            if (m_rows[i].segments.size() < 2) continue;  // heads and rows of values have two
            // Columns of the seed: all together where they are one, or where only all make a head.
            std::vector<int> columns;
            for (auto const& s : m_rows[i].segments) {
                if (std::find(columns.begin(), columns.end(), s.column) == columns.end()) columns.push_back(s.column);
            }
            bool const mixed = columns.size() > 1 && std::count(columns.begin(), columns.end(), 0) == 0;
            // Names in one text column and values in the next are one head all the same.
            bool const named = std::any_of(columns.begin(), columns.end(), [&](int c) { return namesOnly(subsetOf(m_rows[i], c)); });
            bool const parts = mixed && std::any_of(columns.begin(), columns.end(), [&](int c) {
                                   auto const own = subsetOf(m_rows[i], c);
                                   return isHead(own) && !(named && !hasNames(own));
                               });
            if (isHead(subsetOf(m_rows[i], 0)) && !parts) {
                grow(i, mixed || columns.size() > 1 ? 0 : columns[0], true, regions);
                continue;
            }
            if (!mixed) columns.assign(1, columns.size() == 1 ? columns[0] : 0);
            for (int const column : columns) {
                auto const own = subsetOf(m_rows[i], column);
                if (isHead(own)) {
                    grow(i, column, true, regions);
                } else if ((m_rows[i].leaders && own.segments.size() >= 2) || isValueRow(m_rows[i], own)) {
                    grow(i, column, false, regions);
                }
            }
        }
        return regions;
    }

private:
    PageLayout const& m_page;
    std::vector<model::Table> const& m_tables;
    std::vector<char> const& m_taken;
    Points m_font;
    std::vector<Segment> m_rules;  // horizontal, by `at`
    std::vector<PrintedRow> m_rows;

    void collectRules(RuleNetworks const& rules) {
        m_rules = rules.looseHorizontal;
        for (auto const& network : rules.networks) {
            bool const inTable = std::any_of(m_tables.begin(), m_tables.end(), [&](auto const& t) { return t.box.grown(3).intersects(network.box); });
            if (!inTable) m_rules.insert(m_rules.end(), network.horizontal.begin(), network.horizontal.end());
        }
        std::sort(m_rules.begin(), m_rules.end(), [](Segment const& a, Segment const& b) { return a.at < b.at; });
    }

    void collectRows() {
        std::vector<char> skip(m_page.lines.size(), 0);
        std::vector<char> heading(m_page.lines.size(), 0);
        std::vector<int> column(m_page.lines.size(), 0);
        for (auto const& block : m_page.blocks) {
            bool const furniture = block.role == model::BlockRole::PageNumber || block.role == model::BlockRole::RunningHead || block.role == model::BlockRole::Watermark ||
                                   block.role == model::BlockRole::Rotated;
            bool const head = block.role == model::BlockRole::Heading || block.role == model::BlockRole::Caption;
            for (std::uint32_t i = block.firstLine; i < block.firstLine + block.lineCount && i < skip.size(); ++i) {
                skip[i] = furniture ? 1 : 0;
                heading[i] = head ? 1 : 0;
                column[i] = block.column;
            }
        }
        std::vector<Piece> pieces;
        std::vector<std::uint32_t> lineOf;
        std::vector<Piece> coarse;
        std::vector<Piece> cut;
        for (std::uint32_t i = 0; i < m_page.lines.size(); ++i) {
            auto const& line = m_page.lines[i];
            if (skip[i] != 0 || line.direction != model::Direction::Right || line.wordCount == 0) continue;
            bool used = false;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount && !used; ++w) used = m_taken[w] != 0;
            if (used) continue;
            auto const piece = makePiece(m_page, line, line.firstWord, line.wordCount);
            if (piece.count == 0) continue;
            coarse.clear();
            cut.clear();
            cutAtGaps(m_page, piece, kSegmentGap * std::max(piece.size, 4.0F), coarse);
            for (auto const& part : coarse) cutAtTitles(m_page, part, cut);
            for (auto const& part : cut) {
                pieces.push_back(part);
                lineOf.push_back(i);
            }
        }
        for (auto const& line : groupByBaseline(pieces, kSameLine * m_font)) {
            PrintedRow row;
            row.baseline = line.baseline;
            row.segments.reserve(line.pieces.size());
            std::size_t headings = 0;
            for (auto const p : line.pieces) {
                SegmentOfRow segment;
                segment.piece = pieces[p];
                segment.line = lineOf[p];
                segment.column = column[lineOf[p]];
                auto const text = textOf(m_page, pieces[p]);
                segment.shape = shapeOf(text);
                segment.title = columnTitle(text);
                segment.bare = segment.shape == Shape::Number && text.find("°") == std::string::npos &&
                               std::none_of(text.begin(), text.end(), [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
                headings += heading[lineOf[p]] != 0 ? 1 : 0;
                row.size = std::max(row.size, pieces[p].size);
                row.box = united(row.box, pieces[p].box);
                row.segments.push_back(segment);
            }
            row.heading = headings > 0;
            row.partlyHeading = headings > 0 && headings < row.segments.size();
            for (auto const p : line.pieces) {
                auto const& whole = m_page.lines[lineOf[p]];
                for (std::uint32_t w = whole.firstWord; w < whole.firstWord + whole.wordCount; ++w) row.leaders = row.leaders || m_page.words[w].dotLeader;
            }
            if (row.leaders) row.leaderBoxes = leadersOf(line, lineOf);
            m_rows.push_back(std::move(row));
        }
    }

    // Runs of leader dots in the lines that the pieces of one printed line come from.
    [[nodiscard]] std::vector<Rect> leadersOf(PrintedLine const& row, std::vector<std::uint32_t> const& lineOf) const {
        std::vector<Rect> boxes;
        for (std::size_t k = 0; k < row.pieces.size(); ++k) {
            if (k > 0 && lineOf[row.pieces[k]] == lineOf[row.pieces[k - 1]]) continue;
            auto const& line = m_page.lines[lineOf[row.pieces[k]]];
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                if (!m_page.words[w].dotLeader) continue;
                if (w == line.firstWord || !m_page.words[w - 1].dotLeader) boxes.emplace_back();
                boxes.back() = united(boxes.back(), m_page.words[w].box);
            }
        }
        return boxes;
    }

    // A heading among the rows of a table looks like them; one that ends it does not.
    [[nodiscard]] static bool standsOut(Subset const& start, Subset const& row) {
        auto const& a = start.segments[0]->piece;
        auto const& b = row.segments[0]->piece;
        return b.size > 1.08F * a.size || (b.bold && !a.bold);
    }

    // Segments not yet in a table.
    [[nodiscard]] static Subset subsetOf(PrintedRow const& row, int column) {
        Subset subset;
        for (auto const& s : row.segments) {
            if (s.used || (column != 0 && s.column != column && s.column != 0)) continue;
            subset.segments.push_back(&s);
            subset.titles += s.title != ColumnTitle::None ? 1 : 0;
            subset.valueTitles += isValueTitle(s.title) || s.title == ColumnTitle::Unit ? 1 : 0;
            subset.bare += s.bare ? 1 : 0;
            subset.values += s.shape == Shape::Number || s.shape == Shape::Expression ? 1 : 0;
            subset.box = united(subset.box, s.piece.box);
        }
        return subset;
    }

    [[nodiscard]] static bool isHead(Subset const& row) {
        // "IO | Output current | Max | 35 | 50": words that read like titles beside values
        if (row.bare > 0 && row.bare >= row.titles) return false;
        return row.segments.size() >= 2 && (row.titles >= 3 || (row.titles >= 2 && (row.valueTitles >= 1 || row.segments.size() == 2)));
    }

    // "25 °C" and "-40 °C to 85 °C" right of the first titles group the limits below them.
    [[nodiscard]] static bool groupsOver(Subset const& above, Subset const& titles) {
        if (above.bare > 0 || titles.segments.size() < 2) return false;
        Points const from = titles.segments[1]->piece.box.x0;
        return std::all_of(above.segments.begin(), above.segments.end(), [&](auto const* s) { return s->piece.box.x0 > from; });
    }

    // "Typical at VDD" in the print of the titles, right of the first of them: a title over several, not a heading.
    // "Test | XX1A | XX2A" may begin over the gap behind the first: a heading is one.
    [[nodiscard]] static bool overTheRight(Subset const& above, Subset const& titles) {
        if (titles.segments.size() < 3) return false;
        auto const& first = *titles.segments[1];
        Points const from = above.segments.size() > 1 ? titles.segments[0]->piece.box.x1 : first.piece.box.x0;
        return above.box.x0 > from && above.box.x1 < titles.box.x1 &&
               std::all_of(above.segments.begin(), above.segments.end(), [&](auto const* s) { return s->piece.size <= 1.05F * first.piece.size; });
    }

    // "Pin functions", one line from the left or over the middle, above titles of which one is "Function": a caption.
    [[nodiscard]] bool captionOver(Subset const& above, Subset const& titles, Rect const& head, Points pitch) const {
        if (above.titles == 0 || pitch < kCaptionPitch * m_font) return false;
        bool const left = above.box.x0 <= head.x0 + kAligned * m_font;
        if (!left && std::abs(above.box.centre().x - head.centre().x) > m_font) return false;
        std::uint32_t words = 0;
        for (std::size_t k = 0; k < above.segments.size(); ++k) {
            auto const& piece = above.segments[k]->piece;
            if (k > 0 && piece.box.x0 - above.segments[k - 1]->piece.box.x1 > kWordSpace * piece.size) return false;
            words += piece.count;
        }
        if (words < 2) return false;
        return std::any_of(above.segments.begin(), above.segments.end(), [&](auto const* a) {
            return a->title != ColumnTitle::None && std::any_of(titles.segments.begin(), titles.segments.end(), [&](auto const* t) { return t->title == a->title; });
        });
    }

    // The titles stand in one of the next rows.
    [[nodiscard]] bool isCaption(std::size_t seed, int column) const {
        auto const own = subsetOf(m_rows[seed], column);
        for (std::size_t i = seed + 1; i < m_rows.size() && i <= seed + kMostTitleRows; ++i) {
            Points const pitch = m_rows[i].baseline - m_rows[seed].baseline;
            if (pitch > kRowGap * m_font) return false;
            auto const below = subsetOf(m_rows[i], column);
            if (isHead(below) && captionOver(own, below, united(own.box, below.box), pitch)) return true;
        }
        return false;
    }

    [[nodiscard]] static bool hasNames(Subset const& row) {
        return std::any_of(row.segments.begin(), row.segments.end(), [](auto const* s) { return s->title == ColumnTitle::Parameter || s->title == ColumnTitle::Symbol; });
    }
    // Titles of names, symbols or conditions without any of values.
    [[nodiscard]] static bool namesOnly(Subset const& row) {
        return row.titles > 0 && row.valueTitles == 0 && hasNames(row) && row.titles == static_cast<int>(row.segments.size());
    }

    [[nodiscard]] static bool isValueRow(PrintedRow const& row, Subset const& own) {
        return own.segments.size() >= 2 && own.values >= 1 && own.segments[0]->shape == Shape::Words && !row.heading;
    }

    // Rows of tables that reach over the middle of the page: below a head that has its names on the left side and
    // nothing but other titles on the right.
    [[nodiscard]] std::vector<char> rowsOverTheMiddle(Points from, Points to) const {
        std::vector<char> over(m_rows.size(), 0);
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            bool names[2] = {false, false};
            bool titled = false;
            bool const parameterLeft = std::any_of(m_rows[i].segments.begin(), m_rows[i].segments.end(),
                                                   [&](auto const& s) { return s.title == ColumnTitle::Parameter && s.piece.box.centre().x < (from + to) / 2; });
            for (auto const& s : m_rows[i].segments) {
                std::size_t const side = s.piece.box.centre().x < (from + to) / 2 ? 0 : 1;
                bool const symbol = s.title == ColumnTitle::Symbol && (side == 0 || !parameterLeft);  // may stand behind the conditions
                names[side] = names[side] || symbol || s.title == ColumnTitle::Parameter || s.title == ColumnTitle::Pin || s.title == ColumnTitle::Name ||
                              s.title == ColumnTitle::PartNumber || s.title == ColumnTitle::Package;
                titled = titled || (side == 1 && s.title != ColumnTitle::None);
            }
            if (!names[0] || names[1] || !titled || !isHead(subsetOf(m_rows[i], 0))) continue;
            over[i] = 1;
            for (std::size_t k = i + 1; k < m_rows.size(); ++k) {
                if (m_rows[k].baseline - m_rows[k - 1].baseline > kRowGap * std::max(m_rows[k].size, 4.0F) || isHead(subsetOf(m_rows[k], 0))) break;
                over[k] = 1;
            }
        }
        return over;
    }

    // A strip around the middle of the page that stays white, with words of their own
    // on both sides, parts the page into two text columns that layout may not know of
    // (two tables side by side).
    void partSides() {
        Points const from = kMiddleFrom * m_page.width;
        Points const to = kMiddleTo * m_page.width;
        auto const slots = static_cast<std::size_t>(std::max(1.0F, to - from)) + 1;
        std::vector<int> cover(slots, 0);
        std::vector<std::size_t> both;
        std::vector<char> const whole = rowsOverTheMiddle(from, to);
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            if (whole[i] != 0) continue;
            auto const& segments = m_rows[i].segments;
            if (segments.front().piece.box.x1 < to && segments.back().piece.box.x0 > from && segments.size() >= 2) both.push_back(i);
        }
        bool const led = both.size() >= kLeastLedRows && std::all_of(both.begin(), both.end(), [&](std::size_t i) { return m_rows[i].leaderBoxes.size() == 2; });
        std::size_t const least = led ? kLeastLedRows : kLeastSideRows;
        if (both.size() < least) return;
        auto const coverBy = [&](Rect const& box) {
            for (auto x = static_cast<std::size_t>(std::max(0.0F, box.x0 - from - 1)); x < slots && from + static_cast<Points>(x) <= box.x1; ++x) {
                if (box.x0 <= from + static_cast<Points>(x)) ++cover[x];
            }
        };
        for (auto const i : both) {
            for (auto const& s : m_rows[i].segments) coverBy(s.piece.box);
            for (Rect const& box : m_rows[i].leaderBoxes) coverBy(box);
        }
        // the widest strip may lie between the names and the values of one side
        std::vector<std::pair<std::size_t, Points>> strips;  // width, middle
        for (std::size_t x = 0; x < slots;) {
            std::size_t end = x;
            while (end < slots && cover[end] * 12 <= static_cast<int>(both.size())) ++end;
            if (static_cast<Points>(end - x) >= 0.7F * m_font) strips.emplace_back(end - x, from + static_cast<Points>(x + end) / 2);
            x = end + 1;
        }
        std::stable_sort(strips.begin(), strips.end(), [](auto const& a, auto const& b) { return a.first > b.first; });
        auto const strip = std::find_if(strips.begin(), strips.end(), [&](auto const& s) { return namedOnBothSides(both, s.second, least); });
        if (strip == strips.end()) return;
        Points const middle = strip->second;
        bool const mistaken = columnsLieOnBothSides(both, middle);
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            if (whole[i] != 0) continue;
            bool const own = mistaken && i >= both.front() && i <= both.back();
            for (auto& s : m_rows[i].segments) {
                if ((own || s.column == 0) && (s.piece.box.x1 <= middle + m_font || s.piece.box.x0 >= middle - m_font)) {
                    s.column = s.piece.box.centre().x < middle ? kLeftSide : kRightSide;
                }
            }
        }
    }

    // A paragraph beside a list ("General description" beside "Product summary") is no column of names.
    void partProse() {
        for (std::size_t first = 0; first < m_rows.size();) {
            std::size_t const end = endOfProse(first);
            Points const beside = end > first ? m_rows[first].segments[1].piece.box.x0 - kAligned * m_font : 0;
            for (std::size_t i = first; i < end; ++i) {
                for (auto& s : m_rows[i].segments) s.column = s.piece.box.x0 < beside ? kLeftSide : kRightSide;
            }
            first = std::max(end, first + 1);
        }
    }

    [[nodiscard]] static bool isLineOfProse(SegmentOfRow const& s) { return s.shape == Shape::Words && s.piece.count >= kProseBeside && s.title == ColumnTitle::None; }

    // One past the last row of a paragraph that begins in row `first` with something beside it; `first`: there is none.
    [[nodiscard]] std::size_t endOfProse(std::size_t first) const {
        auto const& start = m_rows[first].segments;
        if (start.size() < 2 || !isLineOfProse(start[0])) return first;
        Points const left = start[0].piece.box.x0;
        Points const beside = start[1].piece.box.x0;
        auto const at = [&](SegmentOfRow const& s, Points x) { return std::abs(s.piece.box.x0 - x) <= kAligned * m_font; };
        std::size_t lines = 1;
        std::size_t longs = 1;  // names of a table are short but for one or two
        std::size_t lower = 0;  // lines that go on with a small letter
        std::size_t both = 1;
        std::size_t end = first + 1;
        for (; end < m_rows.size(); ++end) {
            auto const& segments = m_rows[end].segments;
            if (m_rows[end].heading || m_rows[end].baseline - m_rows[end - 1].baseline > kProsePitch * m_rows[end].size) break;
            bool const prose = at(segments[0], left) && segments[0].piece.box.x1 < beside;
            std::size_t const next = prose ? 1 : 0;
            if ((!prose && !at(segments[0], beside)) || (next < segments.size() && !at(segments[next], beside))) break;
            lines += prose ? 1 : 0;
            longs += prose && segments[0].piece.count >= kProseBeside ? 1 : 0;
            lower += prose && beginsSmall(textOf(m_page, segments[0].piece)) ? 1 : 0;
            both += prose && segments.size() > 1 ? 1 : 0;
        }
        return both >= kLeastProseRows && longs * 3 >= lines * 2 && lower * 2 >= lines - 1 ? end : first;
    }

    // At least half of the rows begin with words of their own on either side of the strip.
    [[nodiscard]] bool namedOnBothSides(std::vector<std::size_t> const& both, Points middle, std::size_t least) const {
        std::size_t named[2] = {0, 0};
        std::size_t rows = 0;
        for (auto const i : both) {
            bool seen[2] = {false, false};
            for (auto const& s : m_rows[i].segments) {
                std::size_t const side = s.piece.box.centre().x < middle ? 0 : 1;
                if (!seen[side] && s.shape == Shape::Words && s.piece.count >= 2) ++named[side];
                seen[side] = true;
            }
            rows += seen[0] && seen[1] ? 1 : 0;
        }
        return rows >= least && named[0] * 2 >= rows && named[1] * 2 >= rows;
    }

    // One text column with words on both sides of the strip is none.
    [[nodiscard]] bool columnsLieOnBothSides(std::vector<std::size_t> const& rows, Points middle) const {
        std::vector<std::pair<int, bool>> seen;  // column, left
        for (auto const i : rows) {
            for (auto const& s : m_rows[i].segments) {
                if (s.column == 0 || (s.piece.box.x0 < middle && s.piece.box.x1 > middle)) continue;
                std::pair<int, bool> const place{s.column, s.piece.box.x1 <= middle};
                if (std::find(seen.begin(), seen.end(), std::pair{place.first, !place.second}) != seen.end()) return true;
                if (std::find(seen.begin(), seen.end(), place) == seen.end()) seen.push_back(place);
            }
        }
        return false;
    }

    [[nodiscard]] bool ruledTableBetween(Points y0, Points y1, Points x0, Points x1) const {
        return std::any_of(m_tables.begin(), m_tables.end(), [&](auto const& t) { return t.box.y0 < y1 && t.box.y1 > y0 && model::overlap(t.box.x0, t.box.x1, x0, x1) > m_font; });
    }

    // The last rule below y that starts and ends where a rule near the head does.
    [[nodiscard]] Points lastRuleOf(Points headTop, Points headBottom, Points x0, Points x1) const {
        Points last = -1;
        for (auto const& head : m_rules) {
            if (head.at < headTop - 1.6F * m_font || head.at > headBottom + 1.6F * m_font) continue;
            if (model::overlap(head.from, head.to, x0, x1) < 0.7F * (x1 - x0)) continue;
            for (auto const& rule : m_rules) {
                if (rule.at <= headBottom) continue;
                bool const same = std::abs(rule.from - head.from) <= kRuleExtent * m_font && std::abs(rule.to - head.to) <= kRuleExtent * m_font;
                if (same) last = std::max(last, rule.at);
            }
        }
        return last;
    }

    // The rule right below the titles closes the head, not the table.
    [[nodiscard]] bool holdsValues(std::size_t seed, Points to, int column) const {
        for (std::size_t i = seed + 1; i < m_rows.size() && m_rows[i].baseline < to; ++i) {
            if (subsetOf(m_rows[i], column).bare > 0) return true;
        }
        return false;
    }

    void grow(std::size_t seed, int column, bool head, std::vector<Region>& out) {
        std::size_t first = seed;
        auto const start = subsetOf(m_rows[seed], column);
        if (start.segments.empty() || (head && isCaption(seed, column))) return;
        Rect box = start.box;
        if (head) {
            // Group titles and wrapped titles right above.
            while (first > 0 && seed - first < 2) {
                auto const above = subsetOf(m_rows[first - 1], column);
                Points const pitch = m_rows[first].baseline - m_rows[first - 1].baseline;
                bool const beside = pitch < kOwnLine * m_rows[first].size;  // half a line higher: no line of its own
                if (above.segments.empty() || (m_rows[first - 1].heading && !m_rows[first - 1].partlyHeading && !beside && !overTheRight(above, start)) || pitch > 1.9F * m_font)
                    break;
                if (!beside && above.segments.size() < 2 && above.titles == 0 && above.box.x0 < box.x0 + 0.25F * box.width()) break;
                if (captionOver(above, start, box, pitch)) break;
                if (above.values > 0 && above.titles == 0 && !groupsOver(above, start)) break;
                if (std::any_of(above.segments.begin(), above.segments.end(), [](auto const* s) { return s->piece.count > kProseWords; })) break;
                --first;
                box = united(box, above.box);
            }
        }
        Points ruledTo = head ? lastRuleOf(m_rows[first].box.y0, m_rows[seed].box.y1, box.x0, box.x1) : -1;
        if (ruledTo > 0 && !holdsValues(seed, ruledTo, column)) ruledTo = -1;
        std::size_t last = seed;
        std::size_t before = seed;  // the last row with segments of this column
        Subset lastGood = start;
        Subset fullest;  // the row with the most cells
        int lone = 0;
        int good = head ? 0 : 1;
        int named = good;  // of these, rows of more than numbers: temperatures may stand over "Min" and "Max"
        int leaders = m_rows[seed].leaders ? 1 : 0;
        for (std::size_t i = seed + 1; i < m_rows.size(); ++i) {
            auto const& row = m_rows[i];
            auto const own = subsetOf(row, column);
            if (own.segments.empty()) continue;
            Points const font = std::max(row.size, 4.0F);
            bool const ruled = row.baseline < ruledTo;
            Points const gap = row.baseline - m_rows[before].baseline;
            // rows set wide apart show by their values below the titles, or below the values above
            bool const wide = head && gap > kRowGap * font && own.values > 0 && own.segments.size() > 2 && (alignedWith(start, own) || alignedWith(fullest, own));
            if (gap > (ruled ? kRuledRowGap : wide ? kWideRowGap : kRowGap) * font) break;
            if (ruledTableBetween(m_rows[before].box.y1, row.box.y0, box.x0, box.x1)) break;
            // below the last rule only what stands under the titles, or under the values above, line by line goes on
            bool const below = ruledTo > 0 && row.baseline > ruledTo + 0.3F * font && good >= 2;
            bool const rowOfIt = (own.values > 0 || own.segments.size() > 2) && (alignedWith(start, own) || alignedWith(fullest, own));
            if (below && own.segments.size() > 1 && !rowOfIt) break;
            if (isHead(own) && named >= 1) break;
            before = i;
            auto const text = textOf(m_page, own.segments[0]->piece);
            bool const single = own.segments.size() == 1;
            bool const note = isNoteStart(text) && !isHead(own);  // "figure", below "Test", beside "Min" and "Max"
            if (!ruled && (note || (single && row.heading && standsOut(start, own)))) break;
            if (single) {
                bool const prose = own.box.width() > kProse * std::max(box.width(), 10 * font) && static_cast<int>(own.segments[0]->piece.count) >= kProseWords;
                if (prose && !ruled) break;
                bool const value = own.bare > 0 && alignedWith(fullest, own);  // of a row whose texts wrap around it
                if (!value && ++lone > (ruled ? kLoneRows * 4 : kLoneRows)) break;
                continue;
            }
            // Several segments: values, leaders, or pieces that stand under the columns.
            bool const fits = row.leaders || own.values > 0 || (head && alignedWith(start, own)) || (good > 0 && continuesColumns(lastGood, own)) ||
                              std::any_of(own.segments.begin(), own.segments.end(), [](auto* s) { return s->shape == Shape::Dash; });
            if (!fits) {
                if (!head) break;
                if (++lone > kLoneRows) break;
                continue;
            }
            lone = 0;
            ++good;
            named += std::all_of(own.segments.begin(), own.segments.end(), [](auto* s) { return s->shape == Shape::Number; }) ? 0 : 1;
            leaders += row.leaders ? 1 : 0;
            last = i;
            if (own.segments.size() > fullest.segments.size()) fullest = own;
            lastGood = own;
            box = united(box, own.box);
        }
        // Lone lines right below the last row that wrap its text.
        while (last + 1 < m_rows.size()) {
            auto const& row = m_rows[last + 1];
            auto const own = subsetOf(row, column);
            if (own.segments.empty() || row.heading || isHead(own) || row.baseline - m_rows[last].baseline > 1.45F * std::max(row.size, 4.0F)) break;
            if (ruledTo > 0 ? row.baseline > ruledTo : own.segments.size() != 1 || own.box.x0 < box.x0 - m_font) break;
            if (own.box.width() > 0.5F * box.width() && ruledTo <= 0) break;
            if (isNoteStart(textOf(m_page, own.segments[0]->piece))) break;
            ++last;
            box = united(box, own.box);
        }
        if (!head) {
            // Titles that no list knows: rows of words right above, over the value columns.
            for (int lines = 0; lines < 2 && first > 0; ++lines) {
                auto const above = subsetOf(m_rows[first - 1], column);
                if (above.segments.empty() || m_rows[first - 1].heading || m_rows[first].baseline - m_rows[first - 1].baseline > 2.2F * m_font) break;
                bool const fits = above.values == 0 &&
                                  std::all_of(above.segments.begin(), above.segments.end(), [&](SegmentOfRow const* s) { return s->piece.count <= 4 && overValues(start, *s); });
                if (!fits) break;
                --first;
                box = united(box, above.box);
            }
        }
        bool const titled = first < seed;
        if (!head && !titled && headsIndented(first, column, start)) --first;
        if (good < (head ? 1 : leaders >= 2 ? 2 : 3)) return;
        if (!head && leaders < 2 && !lookTabular(seed, last, column)) return;
        if (!head && leaders >= 2 && isContents(seed, last)) return;
        emit(first, last, column, out);
        if (!head && titled) out.back().headBottom = m_rows[seed - 1].baseline;
    }

    // A lone line right above a list whose first row is indented below it: "Junction temperature" over "(K package)".
    [[nodiscard]] bool headsIndented(std::size_t first, int column, Subset const& start) const {
        if (first == 0) return false;
        auto const& row = m_rows[first - 1];
        auto const above = subsetOf(row, column);
        if (above.segments.size() != 1 || row.heading || m_rows[first].baseline - row.baseline > kHeadingPitch * m_font) return false;
        auto const& piece = above.segments[0]->piece;
        Points const indent = start.segments[0]->piece.box.x0 - piece.box.x0;
        bool const words = above.segments[0]->shape == Shape::Words && piece.count < kProseWords && piece.box.x1 < start.box.x1;
        return words && !piece.bold && indent >= kIndentFrom * m_font && indent <= kIndentTo * m_font && !isNoteStart(textOf(m_page, piece));
    }

    [[nodiscard]] static bool overValues(Subset const& row, SegmentOfRow const& segment) {
        return std::any_of(row.segments.begin() + 1, row.segments.end(),
                           [&](SegmentOfRow const* s) { return model::overlap(s->piece.box.x0, s->piece.box.x1, segment.piece.box.x0, segment.piece.box.x1) > 0; });
    }

    [[nodiscard]] bool sameColumn(Rect const& a, Rect const& b) const {
        Points const near = kAligned * m_font;
        return std::abs(a.x0 - b.x0) < near || std::abs(a.x1 - b.x1) < near || std::abs(a.centre().x - b.centre().x) < near;
    }

    // A segment behind the first stands below one of the row before.
    [[nodiscard]] bool continuesColumns(Subset const& before, Subset const& own) const {
        for (std::size_t k = 1; k < own.segments.size(); ++k) {
            for (std::size_t j = 1; j < before.segments.size(); ++j) {
                if (sameColumn(own.segments[k]->piece.box, before.segments[j]->piece.box)) return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool alignedWith(Subset const& head, Subset const& own) const {
        auto const aligned = std::count_if(own.segments.begin(), own.segments.end(), [&](auto const* s) {
            return std::any_of(head.segments.begin(), head.segments.end(), [&](auto const* h) { return sameColumn(s->piece.box, h->piece.box); });
        });
        return aligned * 2 >= static_cast<std::ptrdiff_t>(own.segments.size());
    }

    // Without a head: most rows begin with words and hold values, and the values stand below each other.
    [[nodiscard]] bool lookTabular(std::size_t seed, std::size_t last, int column) const {
        int rows = 0;
        int valueRows = 0;
        int aligned = 0;
        Subset before;
        Rect box;
        auto const holdsValue = [](SegmentOfRow const* s) { return s->shape == Shape::Number || s->shape == Shape::Expression; };
        for (std::size_t i = seed; i <= last; ++i) {
            auto own = subsetOf(m_rows[i], column);
            box = united(box, own.box);
            if (own.segments.size() < 2) continue;
            ++rows;
            if (!isValueRow(m_rows[i], own)) continue;
            ++valueRows;
            bool match = false;
            for (auto const* s : own.segments) {
                for (auto const* o : before.segments) match = match || (holdsValue(s) && holdsValue(o) && sameColumn(s->piece.box, o->piece.box));
            }
            aligned += match ? 1 : 0;
            before = std::move(own);
        }
        if (rows < 3 || valueRows * 10 < rows * 7 || aligned * 10 < (valueRows - 1) * 7) return false;
        // Labels of a diagram stand among curves.
        auto const upright = std::count_if(m_page.rules.begin(), m_page.rules.end(),
                                           [&](auto const& r) { return r.axis == model::Rule::Axis::Vertical && r.box.height() > 0.5F * m_font && box.contains(r.box.centre()); });
        if (upright >= 3) return false;
        auto const drawn = std::count_if(m_page.drawings.begin(), m_page.drawings.end(), [&](auto const& d) { return d.box.intersects(box); });
        return drawn <= 2;
    }

    // A table of contents: leaders to page numbers that never fall.
    [[nodiscard]] bool isContents(std::size_t seed, std::size_t last) const {
        int rows = 0;
        int rising = 0;
        int before = 0;
        for (std::size_t i = seed; i <= last; ++i) {
            auto const& row = m_rows[i];
            if (!row.leaders) continue;
            ++rows;
            auto const text = textOf(m_page, row.segments.back().piece);
            if (text.empty() || text.size() > 4 || text.find_first_not_of("0123456789") != std::string::npos) continue;
            int number = 0;
            for (char const c : text) number = number * 10 + (c - '0');
            if (number >= before) ++rising;
            before = number;
        }
        return rows > 0 && rising * 10 >= rows * 8;
    }

    // How much of the width the rules at that height cover: pieces of one printed line count together.
    [[nodiscard]] Points coveredAt(Points at, Rect const& box) const {
        Points covered = 0;
        for (auto const& rule : m_rules) {
            if (std::abs(rule.at - at) < 1.0F) covered += std::max(0.0F, model::overlap(rule.from, rule.to, box.x0, box.x1));
        }
        return covered;
    }

    // The top of the body and its row rules. Where some go over the whole width, those with a gap leave out cells
    // that go on over them, and part no band.
    [[nodiscard]] std::vector<Points> bandsOf(Rect const& box) const {
        struct Level {
            Points at;
            Points covered;
        };
        std::vector<Level> levels;
        for (auto const& rule : m_rules) {
            if (rule.at < box.y0 + 0.5F * m_font || rule.at > box.y1 - 0.5F * m_font) continue;
            Points const covered = coveredAt(rule.at, box);
            if (covered < kBandRule * box.width()) continue;
            bool const apart = levels.empty() || rule.at - levels.back().at >= 0.5F * m_font;
            if (apart) levels.push_back({rule.at, covered});
            else if (covered > levels.back().covered) levels.back() = {rule.at, covered};
        }
        auto const isWhole = [&](Level const& level) { return level.covered >= kWholeRule * box.width(); };
        bool const whole = std::count_if(levels.begin(), levels.end(), isWhole) >= 2;
        std::vector<Points> ys{box.y0};
        for (auto const& level : levels) {
            if ((isWhole(level) || !whole) && level.at - ys.back() >= 0.5F * m_font) ys.push_back(level.at);
        }
        return ys;
    }

    void emit(std::size_t first, std::size_t last, int column, std::vector<Region>& out) {
        Region region;
        Rect area;
        for (std::size_t i = first; i <= last; ++i) {
            for (auto& s : m_rows[i].segments) {
                if (s.used || (column != 0 && s.column != column && s.column != 0)) continue;
                s.used = true;
                region.lines.push_back(s.line);
                area = united(area, s.piece.box);
            }
        }
        std::sort(region.lines.begin(), region.lines.end());
        region.lines.erase(std::unique(region.lines.begin(), region.lines.end()), region.lines.end());
        Rect const box = area.grown(0.2F * m_font);
        auto& lattice = region.lattice;
        lattice.xs = {box.x0 - 1, box.x1 + 1};
        lattice.ys = bandsOf(box);
        lattice.ys.push_back(box.y1);
        for (int row = 0; row < lattice.rows(); ++row) {
            lattice.areas.push_back({row, row, 0, 0});
            lattice.areaOf.push_back(row);
        }
        region.ruledRows = lattice.rows() > 2;
        out.push_back(std::move(region));
    }
};

}  // namespace

std::vector<Region> findOpenRegions(PageLayout const& page, RuleNetworks const& rules, std::vector<model::Table> const& tables, std::vector<char> const& taken) {
    return Finder(page, rules, tables, taken).find();
}

}  // namespace standin::tables
