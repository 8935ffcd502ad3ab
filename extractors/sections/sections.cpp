// Lines that stand alone on their row are looked up among the known headings; what
// looks like a heading may hold more than the known words. Then lines set in the same
// size and weight as these are taken as headings of their own. Tested by sections_test.cpp.
#include "extractors/sections/sections.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "extractors/sections/headings.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::sections {

namespace {

using model::Block;
using model::BlockRole;
using model::PageLayout;
using model::Points;
using model::Section;
using model::SectionKind;
using model::TextLine;

constexpr float kHeadingSize = 1.06F;      // times running text
constexpr float kClearSize = 1.15F;        // clearly bigger than running text
constexpr Points kAtMargin = 3.0F;         // font heights from the margin of its column
constexpr float kCentred = 0.04F;          // part of the page width off the middle
constexpr std::size_t kOtherLetters = 6;   // bytes of a heading of one word that is not known
constexpr std::size_t kHeadingWords = 16;
constexpr std::size_t kHeadingBytes = 120;
constexpr int kContentsEntries = 4;        // so many entries make a table of contents
constexpr std::size_t kUncountedPages = 2;  // covers that a table of contents counts
constexpr Points kSameRow = 0.4F;          // font heights
constexpr std::uint32_t kTitleLines = 2;
constexpr float kSameStyle = 0.03F;             // part of the size
constexpr std::size_t kFewestColumnTitles = 2;  // beside the one at hand
constexpr Points kNextRow = 3.0F;               // font heights

struct Heading {
    std::size_t page = 0;  // index
    std::uint32_t line = 0;
    std::uint32_t lineCount = 1;
    std::string title;
    std::optional<SectionKind> kind;
    Points size = 0;
    bool bold = false;
    bool look = false;  // set apart from running text
    bool capitals = false;
};

bool allCapitals(std::string_view text) {
    std::size_t upper = 0;
    for (char c : text) {
        if (text::isAsciiLower(c)) return false;
        upper += text::isAsciiUpper(c) ? 1U : 0U;
    }
    return upper >= 4;
}

class Finder {
public:
    explicit Finder(std::span<PageLayout const> pages) : m_pages(pages) {}

    std::vector<Section> find() {
        for (std::size_t p = 0; p < m_pages.size(); ++p) scanPage(p);
        return sections();
    }

private:
    void scanPage(std::size_t p) {
        PageLayout const& page = m_pages[p];
        markRows(page);
        std::vector<Heading> found;
        int contents = 0;
        for (Block const& block : page.blocks) {
            if (block.role == BlockRole::RunningHead || block.role == BlockRole::PageNumber || block.role == BlockRole::Watermark || block.role == BlockRole::Rotated ||
                block.role == BlockRole::Caption)
                continue;
            for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
                TextLine const& line = page.lines[l];
                if (line.wordCount > kHeadingWords || page.words[line.firstWord].owner == model::Owner::Furniture) continue;
                if (endsInPageReference(page, l)) {
                    ++contents;
                    continue;
                }
                if (auto heading = examine(p, block, l)) {
                    l = heading->line + heading->lineCount - 1;
                    found.push_back(std::move(*heading));
                }
            }
        }
        // Among the entries of a table of contents only what is set apart from them.
        if (contents >= kContentsEntries) std::erase_if(found, [&](Heading const& heading) { return !standsAboveContents(page, heading); });
        for (Heading& heading : found) m_found.push_back(std::move(heading));
    }

    // Larger than the entries, whole on its line: no chapter's entry, nor its first line.
    bool standsAboveContents(PageLayout const& page, Heading const& heading) const {
        TextLine const& line = page.lines[heading.line];
        if (!heading.look || line.size < kClearSize * page.bodySize) return false;
        std::uint32_t const next = heading.line + heading.lineCount;
        return next >= page.lines.size() || page.lines[next].size < line.size || !endsInPageReference(page, next);
    }

    // Lines of one row, in the order of the page; where columns differ lines don't share a row.
    void markRows(PageLayout const& page) {
        m_sharesRow.assign(page.lines.size(), false);
        m_rowMate.assign(page.lines.size(), 0);
        for (std::uint32_t l = 1; l < page.lines.size(); ++l) {
            TextLine const& a = page.lines[l - 1];
            TextLine const& b = page.lines[l];
            if (a.direction != b.direction || std::abs(a.baseline - b.baseline) > kSameRow * std::max(a.size, b.size)) continue;
            m_sharesRow[l] = m_sharesRow[l - 1] = true;
            m_rowMate[l - 1] = l;
        }
    }

    // A number that a page of this document may have.
    bool isPageNumber(std::string_view text) const {
        if (text.empty() || text.size() > 4) return false;
        std::size_t value = 0;
        for (char c : text) {
            if (!text::isAsciiDigit(c)) return false;
            value = value * 10 + static_cast<std::size_t>(c - '0');
        }
        return value >= 1 && value <= m_pages.size() + kUncountedPages;
    }

    bool endsInPageReference(PageLayout const& page, std::uint32_t l) const {
        TextLine const& line = page.lines[l];
        std::string const& last = page.words[line.firstWord + line.wordCount - 1].text;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w)
            if (page.words[w].dotLeader) return isPageNumber(last);
        if (m_sharesRow[l] && m_rowMate[l] == l + 1) {
            TextLine const& mate = page.lines[l + 1];
            return mate.wordCount == 1 && isPageNumber(page.words[mate.firstWord].text) && mate.box.x0 > page.width * 0.4F && line.wordCount <= 10 &&
                   headingKind(model::lineText(page, line), Look::Plain).has_value();
        }
        return false;
    }

    std::optional<Heading> examine(std::size_t p, Block const& block, std::uint32_t l) const {
        PageLayout const& page = m_pages[p];
        TextLine const& line = page.lines[l];
        bool const big = line.size >= kHeadingSize * page.bodySize;
        if (!big && !atMargin(page, block, line)) return std::nullopt;
        // On a row with others only what is clearly set apart: "FEATURES" beside "QUICK REFERENCE DATA".
        bool const alone = !m_sharesRow[l];
        if (!alone && line.size < kClearSize * page.bodySize && !(line.bold && big)) return std::nullopt;
        Heading heading;
        heading.page = p;
        heading.line = l;
        heading.title = model::lineText(page, line);
        if (heading.title.size() > kHeadingBytes) return std::nullopt;
        heading.size = line.size;
        heading.bold = line.bold;
        heading.capitals = allCapitals(heading.title);
        bool const bright = page.words[line.firstWord].colour == 0xFFFFFF && !page.words[line.firstWord].hidden;
        heading.look = line.bold || big || heading.capitals || bright || block.role == BlockRole::Heading;
        bool const firstOfBlock = l == block.firstLine;
        if (!alone) {
            heading.kind = headingKind(heading.title, Look::Plain);
            if (!heading.kind || isColumnTitle(page, l)) return std::nullopt;
            return heading;
        }
        if (!heading.look && (!firstOfBlock || startsSmall(heading.title))) return std::nullopt;
        bool const sentence = !heading.title.empty() && (heading.title.back() == '.' || heading.title.back() == ',' || heading.title.back() == ';');
        heading.kind = headingKind(heading.title, heading.look && !sentence ? Look::Heading : Look::Plain);
        // Not set apart: followed by rows of values it names one of them.
        bool const couldBeParameter = heading.kind && (*heading.kind == SectionKind::Thermal || *heading.kind == SectionKind::Timing ||
                                                       strippedTitle(heading.title).find(' ') == std::string_view::npos);
        if (!heading.look && couldBeParameter && l + 1 < page.lines.size() && m_sharesRow[l + 1]) heading.kind.reset();
        if (!heading.look && heading.kind && block.lineCount > 1 && firstOfBlock && page.lines[l + 1].size == line.size &&
            page.lines[l + 1].box.x1 > line.box.x1 + 4 * line.size)
            heading.kind.reset();  // first line of a paragraph that happens to read so
        if (heading.kind) {
            // A heading over two lines.
            if (block.role == BlockRole::Heading && firstOfBlock && block.lineCount > 1 && block.lineCount <= kTitleLines) takeBlock(page, block, heading);
            return heading;
        }
        if (block.role != BlockRole::Heading || !firstOfBlock || !couldBeTitle(heading.title)) return std::nullopt;
        if (block.lineCount > 1 && block.lineCount <= kTitleLines) {
            takeBlock(page, block, heading);
            heading.kind = headingKind(heading.title, Look::Heading);
        }
        return heading;  // perhaps a heading of another subject
    }

    // In the head of a table: "Description" beside "Version", "Date" and "Page", all set
    // alike, each above a piece of the next row.
    bool isColumnTitle(PageLayout const& page, std::uint32_t l) const {
        TextLine const& line = page.lines[l];
        auto const inRow = [&](std::uint32_t k) {
            return m_sharesRow[k] && std::abs(page.lines[k].baseline - line.baseline) <= kSameRow * std::max(page.lines[k].size, line.size);
        };
        std::vector<std::uint32_t> titles;
        auto const look = [&](std::uint32_t k) {
            TextLine const& mate = page.lines[k];
            bool const alike = mate.bold == line.bold && std::abs(mate.size - line.size) < kSameStyle * line.size;
            if (alike && !headingKind(model::lineText(page, mate), Look::Plain)) titles.push_back(k);
        };
        for (std::uint32_t k = l; k > 0 && inRow(k - 1); --k) look(k - 1);
        for (std::uint32_t k = l + 1; k < page.lines.size() && inRow(k); ++k) look(k);
        if (titles.size() < kFewestColumnTitles) return false;
        auto const below = rowBelow(page, line);
        std::set<std::uint32_t> under;
        for (std::uint32_t const title : titles) {
            for (std::uint32_t const piece : below) {
                if (model::overlap(page.lines[title].box.x0, page.lines[title].box.x1, page.lines[piece].box.x0, page.lines[piece].box.x1) > 0) under.insert(piece);
            }
        }
        return under.size() >= kFewestColumnTitles;
    }

    // The pieces of the nearest row under a line.
    static std::vector<std::uint32_t> rowBelow(PageLayout const& page, TextLine const& line) {
        std::optional<Points> nearest;
        for (TextLine const& other : page.lines) {
            bool const lower = other.direction == line.direction && other.baseline > line.baseline + kSameRow * line.size && other.baseline < line.baseline + kNextRow * line.size;
            if (lower && (!nearest || other.baseline < *nearest)) nearest = other.baseline;
        }
        std::vector<std::uint32_t> pieces;
        for (std::uint32_t k = 0; nearest && k < page.lines.size(); ++k) {
            if (page.lines[k].direction == line.direction && std::abs(page.lines[k].baseline - *nearest) <= kSameRow * line.size) pieces.push_back(k);
        }
        return pieces;
    }

    // At the left margin of its column, or in the middle of the column or page.
    bool atMargin(PageLayout const& page, Block const& block, TextLine const& line) const {
        if (m_marginPage != page.page) {
            m_marginPage = page.page;
            m_margins.clear();
            for (Block const& each : page.blocks) {
                if (each.role == BlockRole::RunningHead || each.role == BlockRole::PageNumber || each.role == BlockRole::Rotated || each.role == BlockRole::Watermark) continue;
                auto [it, fresh] = m_margins.try_emplace(each.column, std::pair{each.box.x0, each.box.x1});
                if (fresh) continue;
                it->second.first = std::min(it->second.first, each.box.x0);
                it->second.second = std::max(it->second.second, each.box.x1);
            }
        }
        Points const centre = line.box.centre().x;
        if (std::abs(centre - page.width / 2) < kCentred * page.width) return true;
        for (auto const& [column, margin] : m_margins) {
            if (column != block.column && column != 0) continue;
            if (line.box.x0 < margin.first + kAtMargin * line.size || std::abs(centre - (margin.first + margin.second) / 2) < kCentred * page.width) return true;
        }
        return false;
    }

    // A line that goes on from another: the end of a name in a table, of a sentence.
    static bool startsSmall(std::string_view title) {
        std::string_view const stripped = strippedTitle(text::trimmed(title));
        return !stripped.empty() && stripped.front() >= 'a' && stripped.front() <= 'z';
    }

    // Words, not a legend of a figure: "10 ms/div", "VIN = 12 V", "Gnd".
    static bool couldBeTitle(std::string_view title) {
        title = text::trimmed(title);
        std::string_view const stripped = strippedTitle(title);
        if (stripped.empty()) return false;
        std::size_t at = 0;
        bool const bullet = static_cast<unsigned char>(title.front()) >= 0x80 && stripped.data() != title.data() && numberingDepth(title) == 0;
        if (bullet || title.find('=') != std::string_view::npos) return false;
        char32_t const first = text::decodeNext(stripped, at);
        if (first < 0x80 && !text::isAsciiUpper(static_cast<char>(first))) return false;
        if (text::isAsciiDigit(title.front()) && numberingDepth(title) == 0) return false;
        bool const several = stripped.find(' ') != std::string_view::npos || first >= 0x80;
        return several || stripped.size() >= kOtherLetters;
    }

    static void takeBlock(PageLayout const& page, Block const& block, Heading& heading) {
        heading.title.clear();
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            if (!heading.title.empty()) heading.title += ' ';
            heading.title += model::lineText(page, page.lines[l]);
        }
        heading.lineCount = block.lineCount;
    }

    using Style = std::pair<long, bool>;  // size in half points, bold
    Style styleOf(Heading const& heading) const { return {std::lround(heading.size * 2), heading.bold}; }

    std::vector<Section> sections() const {
        std::set<Style> styles;
        Points biggest = 0;
        for (Heading const& heading : m_found) {
            if (!heading.kind || !heading.look) continue;
            bool const apart = heading.size >= 1.12F * m_pages[heading.page].bodySize;
            if (apart) styles.insert(styleOf(heading));
            if (heading.page > 0 || m_pages.size() == 1) biggest = std::max(biggest, heading.size);
        }
        std::vector<Section> sections;
        std::string lastKey;
        for (Heading const& heading : m_found) {
            int const depth = numberingDepth(heading.title);
            bool const numbered = depth > 0 && heading.look && (heading.bold || heading.size >= kHeadingSize * m_pages[heading.page].bodySize);
            bool const like = styles.count(styleOf(heading)) > 0;
            if (!heading.kind && !numbered && !like) continue;
            std::string const key = text::foldKey(strippedTitle(heading.title));
            if (!sections.empty()) {
                bool const sameKind = heading.kind && sections.back().kind == *heading.kind;
                if (key == lastKey || (sameKind && isContinuation(heading.title))) continue;
            }
            lastKey = key;
            Section section;
            section.id = "s" + std::to_string(sections.size() + 1);
            section.kind = heading.kind.value_or(SectionKind::Other);
            section.title = heading.title;
            section.level = depth > 0 ? depth : heading.size >= 0.97F * biggest ? 1 : 2;
            PageLayout const& page = m_pages[heading.page];
            section.page = page.page;
            for (std::uint32_t l = heading.line; l < heading.line + heading.lineCount; ++l) section.box = model::united(section.box, page.lines[l].box);
            sections.push_back(std::move(section));
        }
        return sections;
    }

    std::span<PageLayout const> m_pages;
    std::vector<Heading> m_found;
    std::vector<bool> m_sharesRow;
    std::vector<std::uint32_t> m_rowMate;
    mutable int m_marginPage = -1;
    mutable std::map<int, std::pair<Points, Points>> m_margins;  // by column
};

}  // namespace

std::vector<Section> findSections(std::span<PageLayout const> pages) { return Finder(pages).find(); }

SectionIndex::SectionIndex(std::span<Section const> sections, std::span<PageLayout const> pages) {
    for (PageLayout const& page : pages) {
        m_pageNumbers.push_back(page.page);
        auto& boxes = m_lines.emplace_back();
        boxes.reserve(page.lines.size());
        for (TextLine const& line : page.lines) boxes.push_back(line.box);
    }
    for (Section const& section : sections) {
        Start start{section.page, 0, section.id, section.box};
        for (std::size_t p = 0; p < m_pageNumbers.size(); ++p) {
            if (m_pageNumbers[p] != section.page) continue;
            for (std::uint32_t l = 0; l < m_lines[p].size(); ++l)
                if (section.box.grown(0.01F).contains(m_lines[p][l])) {
                    start.line = l;
                    break;
                }
        }
        m_starts.push_back(std::move(start));
    }
    std::stable_sort(m_starts.begin(), m_starts.end(), [](Start const& a, Start const& b) { return a.page != b.page ? a.page < b.page : a.line < b.line; });
}

std::string SectionIndex::ofLine(int page, std::uint32_t line) const {
    auto const it = std::upper_bound(m_starts.begin(), m_starts.end(), std::pair{page, line},
                                     [](auto const& at, Start const& s) { return at.first != s.page ? at.first < s.page : at.second < s.line; });
    return it == m_starts.begin() ? std::string{} : std::prev(it)->id;
}

std::string SectionIndex::ofBox(int page, model::Rect const& box) const {
    for (std::size_t p = 0; p < m_pageNumbers.size(); ++p) {
        if (m_pageNumbers[p] != page) continue;
        for (std::uint32_t l = 0; l < m_lines[p].size(); ++l)
            if (box.contains(m_lines[p][l].centre())) return ofLine(page, l);
        // No text inside: the last line above it in its column.
        std::optional<std::uint32_t> above;
        for (std::uint32_t l = 0; l < m_lines[p].size(); ++l) {
            model::Rect const& line = m_lines[p][l];
            if (line.y1 > box.y0 + 1 || model::overlap(line.x0, line.x1, box.x0, box.x1) <= 0) continue;
            if (!above || line.y1 > m_lines[p][*above].y1) above = l;
        }
        if (above) return ofLine(page, *above);
    }
    // The last section of the pages before.
    auto const it = std::lower_bound(m_starts.begin(), m_starts.end(), page, [](Start const& s, int at) { return s.page < at; });
    return it == m_starts.begin() ? std::string{} : std::prev(it)->id;
}

Section const* sectionAt(std::span<Section const> sections, int page, Points y) {
    Section const* last = nullptr;
    for (Section const& section : sections) {
        if (section.page > page) break;
        if (section.page < page || section.box.y0 <= y) last = &section;
    }
    return last;
}

}  // namespace standin::sections
