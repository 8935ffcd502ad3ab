// Lines are gathered over the pages by their text and place. Text is compared with
// its numbers taken out; numbers that differ have to follow the page number. What
// is found on enough pages, near an edge and not parted from it by other text, is
// furniture, and so is a line there that differs from it in one word.
// Tested by furniture_test.cpp.
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "extractors/layout/blocks.h"
#include "extractors/layout/layout.h"
#include "text/utf8.h"

namespace standin::layout {

namespace {

using model::Block;
using model::BlockRole;
using model::Direction;
using model::PageLayout;
using model::Points;
using model::TextLine;
using model::Word;

constexpr float kEdgeZone = 0.17F;       // part of the page height
constexpr Points kGridHeight = 6.0F;     // font heights: a shorter rule parts the pieces of a running head
constexpr float kGridPart = 0.12F;       // part of the page height
constexpr float kSideZone = 0.1F;        // part of the page width, for rotated text
constexpr Points kSamePlace = 4.0F;      // points: drift of a running head from page to page
constexpr Points kSamePlaceOfText = 24.0F;  // the same where the text itself is unmistakable
constexpr std::size_t kUnmistakable = 12;   // bytes of such a text
constexpr std::size_t kPagesEnough = 3;
constexpr float kPageNumbersInStep = 0.7F;
constexpr std::size_t kFewestWords = 3;  // of a line that may differ from a running head in one of them
constexpr Points kWatermarkSize = 1.8F;  // times running text
constexpr int kPageNumberWords = 6;

struct Candidate {
    std::uint32_t page = 0;  // index into pages
    std::uint32_t line = 0;
    bool atSide = false;  // rotated text beside the page's own
    std::vector<int> numbers;
    std::string text;
};

// Text with each run of digits replaced by '#', and the runs as numbers.
std::string pattern(std::string_view text, std::vector<int>& numbers) {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        if (!text::isAsciiDigit(text[i])) {
            if (text[i] != ' ') out += text[i];
            ++i;
            continue;
        }
        std::size_t end = i;
        while (end < text.size() && text::isAsciiDigit(text[end])) ++end;
        int value = -1;
        if (end - i <= 8) std::from_chars(text.data() + i, text.data() + end, value);
        numbers.push_back(value);
        out += '#';
        i = end;
    }
    return out;
}

// Only a number and the words that go with it: "3", "- 3 -", "Page 3 of 12", "3/12", "第3页", "共 12 页".
bool looksLikePageNumber(std::string_view text) {
    std::string rest;
    bool digits = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        char const c = text[i];
        if (text::isAsciiDigit(c))
            digits = true;
        else if (c != ' ' && c != '-' && c != '/' && c != '|' && c != '.' && c != ':')
            rest += c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    }
    if (!digits) return false;
    for (std::string_view word : {"page", "of", "seite", "von", "\u7B2C", "\u9875", "\u5171", "\u9801", "\u0441\u0442\u0440", "\u0438\u0437", "p", "\u2013", "\u2014", "\u30DA\u30FC\u30B8"}) {
        std::size_t const at = rest.find(word);
        if (at != std::string::npos) rest.erase(at, word.size());
    }
    return rest.empty();
}

// The head of a continued table stands at the same place of several pages too.
bool looksLikeTableHead(std::string_view text) {
    static constexpr std::array<std::string_view, 29> kTitles{"parameter", "symbol", "conditions", "condition", "min", "typ", "max", "unit", "units", "rating", "characteristic", "item",
                                                              "pin", "limits", "value", "\u53C2\u6570", "\u7B26\u53F7", "\u6761\u4EF6", "\u6700\u5C0F", "\u5178\u578B", "\u6700\u5927", "\u5355\u4F4D",
                                                              "\u9805\u76EE", "\u8A18\u53F7", "\u5358\u4F4D", "einheit", "\u043C\u0438\u043D.", "\u043C\u0430\u043A\u0441.", "\u041D\u043E\u0440\u043C\u0430"};
    std::string const lower = text::asciiLower(text);
    int hits = 0;
    for (std::string_view title : kTitles)
        if (lower.find(title) != std::string::npos) ++hits;
    return hits >= 2 || lower.find("continued") != std::string::npos || lower.find("(cont") != std::string::npos || lower.find("\u7EED") != std::string::npos;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        std::size_t const end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// Of three words or more, all but one the same.
bool differInOneWord(std::string_view a, std::string_view b) {
    auto const x = wordsOf(a);
    auto const y = wordsOf(b);
    if (x.size() != y.size() || x.size() < kFewestWords) return false;
    std::size_t different = 0;
    for (std::size_t i = 0; i < x.size() && different < 2; ++i) different += x[i] != y[i] ? 1U : 0U;
    return different == 1;
}

class Marker {
public:
    explicit Marker(std::span<PageLayout> pages) : m_pages(pages) {
        m_marked.resize(pages.size());
        for (std::size_t p = 0; p < pages.size(); ++p) m_marked[p].assign(pages[p].lines.size(), Role::None);
    }

    void mark() {
        markWatermarks();
        if (m_pages.size() >= 2) {
            gather();
            decide();
        }
        markLonePageNumbers();
        for (std::size_t p = 0; p < m_pages.size(); ++p) apply(p);
    }

private:
    enum class Role : std::uint8_t { None, RunningHead, PageNumber, Watermark };

    std::size_t needed() const { return std::min(kPagesEnough, std::max<std::size_t>(2, (m_pages.size() + 1) / 2)); }


    // Distance classes from the top and the bottom edge, so that pages of two sizes agree.
    void gather() {
        for (std::uint32_t p = 0; p < m_pages.size(); ++p) {
            PageLayout const& page = m_pages[p];
            for (std::uint32_t l = 0; l < page.lines.size(); ++l) {
                TextLine const& line = page.lines[l];
                if (line.direction == Direction::Slanted || m_marked[p][l] != Role::None) continue;
                model::Point const centre = line.box.centre();
                bool const top = centre.y < kEdgeZone * page.height;
                bool const bottom = centre.y > (1 - kEdgeZone) * page.height;
                bool const side = line.direction != Direction::Right && (centre.x < kSideZone * page.width || centre.x > (1 - kSideZone) * page.width);
                if (!top && !bottom && !side) continue;
                Candidate candidate{p, l, side, {}, model::lineText(page, line)};
                std::string key = pattern(candidate.text, candidate.numbers);
                if (key.empty()) continue;
                key += top ? "\x01" : bottom ? "\x02" : "\x03";
                m_groups[std::move(key)].push_back(std::move(candidate));
            }
        }
    }

    // Of candidates in the order of their pages.
    static std::size_t countPages(std::vector<Candidate> const& candidates) {
        std::size_t pages = 0;
        for (std::size_t i = 0; i < candidates.size(); ++i) pages += i == 0 || candidates[i].page != candidates[i - 1].page ? 1U : 0U;
        return pages;
    }

    // Asked of what could be furniture only, for it looks at all of a page.
    bool isOfTable(Candidate const& c) const {
        PageLayout const& page = m_pages[c.page];
        TextLine const& line = page.lines[c.line];
        return !c.atSide && (standsInGrid(page, line) || looksLikeTableHead(rowText(page, line)));
    }

    static std::string rowText(PageLayout const& page, TextLine const& line) {
        std::string text;
        for (TextLine const& other : page.lines)
            if (other.direction == line.direction && std::abs(other.box.centre().y - line.box.centre().y) < line.size / 2) text += model::lineText(page, other) + ' ';
        return text;
    }

    // Between vertical rules that reach far beyond the line: a row of a table, not a running head.
    static bool standsInGrid(PageLayout const& page, TextLine const& line) {
        Points const y = line.box.centre().y;
        auto const partsCells = [&](model::Rule const& rule) {
            if (rule.axis != model::Rule::Axis::Vertical || rule.box.y0 > y || rule.box.y1 < y) return false;
            return rule.box.height() >= kGridHeight * line.size && rule.box.height() > kGridPart * page.height;
        };
        if (std::none_of(page.rules.begin(), page.rules.end(), partsCells)) return false;
        Points left = line.box.x0;
        Points right = line.box.x1;
        for (TextLine const& other : page.lines) {
            if (std::abs(other.box.centre().y - y) > line.size) continue;
            left = std::min(left, other.box.x0);
            right = std::max(right, other.box.x1);
        }
        return std::any_of(page.rules.begin(), page.rules.end(), [&](model::Rule const& rule) { return partsCells(rule) && rule.box.x0 > left + 2 && rule.box.x1 < right - 2; });
    }

    Points edgeDistance(Candidate const& c) const {
        PageLayout const& page = m_pages[c.page];
        Points const y = page.lines[c.line].box.centre().y;
        return y < page.height / 2 ? y : page.height - y;
    }

    void decide() {
        for (auto& [key, all] : m_groups) {
            if (countPages(all) < needed()) continue;
            std::erase_if(all, [this](Candidate const& c) { return isOfTable(c); });
            // Same place: neighbours by distance from the edge.
            std::sort(all.begin(), all.end(), [&](Candidate const& a, Candidate const& b) {
                Points const x = edgeDistance(a);
                Points const y = edgeDistance(b);
                return x != y ? x < y : a.page < b.page;
            });
            Points const place = key.size() > kUnmistakable ? kSamePlaceOfText : kSamePlace;
            for (std::size_t first = 0; first < all.size();) {
                std::size_t last = first + 1;
                while (last < all.size() && edgeDistance(all[last]) - edgeDistance(all[last - 1]) <= place) ++last;
                decideGroup({all.begin() + static_cast<std::ptrdiff_t>(first), all.begin() + static_cast<std::ptrdiff_t>(last)});
                first = last;
            }
        }
        releaseSentences();
        markChangedHeads();
        keepContiguous();
    }

    // A line that goes on from text above it is text, at however many places it stands ("Table 3. Values (VDD = 3 V," / "load 10 µF)").
    void releaseSentences() {
        for (std::size_t p = 0; p < m_pages.size(); ++p) {
            for (Block const& block : m_pages[p].blocks) {
                for (std::uint32_t l = block.firstLine + 1; l < block.firstLine + block.lineCount; ++l) {
                    bool const head = m_marked[p][l] == Role::RunningHead && m_marked[p][l - 1] == Role::None;
                    if (head && model::lineText(m_pages[p], m_pages[p].lines[l - 1]).ends_with(',')) m_marked[p][l] = Role::None;
                }
            }
        }
    }

    // A text that is a running head on enough pages.
    struct Head {
        Candidate const* line = nullptr;
        std::set<std::uint32_t> pages;
    };

    // A running head with one word changed on one page ("Rev 2" for "Rev 1", a typing error) is one all the same.
    void markChangedHeads() {
        std::map<std::string_view, Head> heads;
        for (auto const& [key, all] : m_groups) {
            for (Candidate const& c : all) {
                if (m_marked[c.page][c.line] != Role::RunningHead) continue;
                Head& head = heads[c.text];
                head.line = &c;
                head.pages.insert(c.page);
            }
        }
        std::erase_if(heads, [&](auto const& entry) { return entry.second.pages.size() < needed(); });
        for (auto const& [key, all] : m_groups) {
            for (Candidate const& c : all) {
                if (m_marked[c.page][c.line] != Role::None) continue;
                bool const changed =
                    std::any_of(heads.begin(), heads.end(), [&](auto const& entry) { return entry.second.pages.count(c.page) == 0 && isChangedHead(c, *entry.second.line); });
                if (changed && !isOfTable(c)) m_marked[c.page][c.line] = Role::RunningHead;
            }
        }
    }

    bool isChangedHead(Candidate const& c, Candidate const& head) const {
        TextLine const& line = m_pages[c.page].lines[c.line];
        TextLine const& other = m_pages[head.page].lines[head.line];
        bool const samePlace = std::abs(edgeDistance(c) - edgeDistance(head)) <= kSamePlace && std::abs(line.box.x0 - other.box.x0) <= kSamePlace;
        if (!samePlace || line.direction != other.direction) return false;
        return differInOneWord(c.text, head.text) || isChangedPiece(c, head);
    }

    // A single word that stands in the room of another, beside the rest of its running head ("Kestrel Works        WL13").
    bool isChangedPiece(Candidate const& c, Candidate const& head) const {
        PageLayout const& page = m_pages[c.page];
        TextLine const& line = page.lines[c.line];
        TextLine const& other = m_pages[head.page].lines[head.line];
        if (line.wordCount != 1 || other.wordCount != 1 || std::abs(line.box.x1 - other.box.x1) > kSamePlace) return false;
        for (std::size_t l = 0; l < page.lines.size(); ++l) {
            bool const beside = page.lines[l].direction == line.direction && std::abs(page.lines[l].box.centre().y - line.box.centre().y) < line.size / 2;
            if (l != c.line && beside && m_marked[c.page][l] == Role::RunningHead) return true;
        }
        return false;
    }

    void decideGroup(std::vector<Candidate> group) {
        std::set<std::uint32_t> pages;
        for (Candidate const& c : group) pages.insert(c.page);
        if (pages.size() < needed()) return;
        std::size_t const numbers = group.front().numbers.size();
        bool counts = false;
        for (std::size_t n = 0; n < numbers; ++n) {
            bool const same = std::all_of(group.begin(), group.end(), [&](Candidate const& c) { return c.numbers[n] == group.front().numbers[n]; });
            if (same) continue;
            std::map<int, std::size_t> offsets;
            std::size_t most = 0;
            for (Candidate const& c : group) most = std::max(most, ++offsets[c.numbers[n] - m_pages[c.page].page]);
            if (static_cast<float>(most) < kPageNumbersInStep * static_cast<float>(group.size())) {
                keepEqualTexts(group);
                return;
            }
            counts = true;
        }
        // The same number on every page counts nothing ("277 69 16", a telephone).
        bool const pageNumber = counts && looksLikePageNumber(group.front().text);
        for (Candidate const& c : group) m_marked[c.page][c.line] = pageNumber ? Role::PageNumber : Role::RunningHead;
    }

    // Numbers that do not count pages: only lines with the very same text repeat.
    void keepEqualTexts(std::vector<Candidate> const& group) {
        std::map<std::string, std::vector<Candidate const*>> equal;
        for (Candidate const& c : group) equal[c.text].push_back(&c);
        for (auto const& [text, list] : equal) {
            std::set<std::uint32_t> pages;
            for (Candidate const* c : list) pages.insert(c->page);
            if (pages.size() < needed()) continue;
            for (Candidate const* c : list) m_marked[c->page][c->line] = Role::RunningHead;
        }
    }

    // From the edge inwards: a marked line behind an unmarked one is text after all,
    // unless it is a page number or shares its height with marked lines.
    void keepContiguous() {
        for (std::size_t p = 0; p < m_pages.size(); ++p) {
            PageLayout const& page = m_pages[p];
            for (int edge = 0; edge < 2; ++edge) {
                std::vector<std::uint32_t> lines;
                for (std::uint32_t l = 0; l < page.lines.size(); ++l)
                    if (page.lines[l].direction == Direction::Right && (page.lines[l].box.centre().y < page.height / 2) == (edge == 0)) lines.push_back(l);
                auto const distance = [&](std::uint32_t l) { return edge == 0 ? page.lines[l].box.centre().y : page.height - page.lines[l].box.centre().y; };
                std::sort(lines.begin(), lines.end(), [&](auto a, auto b) { return distance(a) < distance(b); });
                std::size_t strangers = 0;
                for (std::uint32_t l : lines) {
                    Role& role = m_marked[p][l];
                    if (role == Role::None)
                        ++strangers;
                    else if (role == Role::RunningHead && strangers > 3 && distance(l) > kEdgeZone * page.height / 2)
                        role = Role::None;
                }
            }
        }
    }

    void markWatermarks() {
        std::map<std::string, std::vector<std::pair<std::uint32_t, std::uint32_t>>> found;
        for (std::uint32_t p = 0; p < m_pages.size(); ++p) {
            PageLayout const& page = m_pages[p];
            for (std::uint32_t l = 0; l < page.lines.size(); ++l) {
                TextLine const& line = page.lines[l];
                bool const slanted = line.direction == Direction::Slanted;
                bool const pale = paleColour(page.words[line.firstWord].colour);
                bool const big = line.size >= kWatermarkSize * page.bodySize;
                Points const y = line.box.centre().y;
                bool const edge = y < kEdgeZone * page.height || y > (1 - kEdgeZone) * page.height;
                if (!(slanted && (big || pale)) && !(pale && big && !edge)) continue;
                found[model::lineText(page, line)].emplace_back(p, l);
            }
        }
        for (auto const& [text, places] : found) {
            std::set<std::uint32_t> pages;
            for (auto const& [p, l] : places) pages.insert(p);
            for (auto const& [p, l] : places) {
                TextLine const& line = m_pages[p].lines[l];
                bool const alone = line.direction == Direction::Slanted && paleColour(m_pages[p].words[line.firstWord].colour) && line.size >= 2 * kWatermarkSize * m_pages[p].bodySize;
                if (pages.size() >= std::min<std::size_t>(needed(), m_pages.size()) ? m_pages.size() > 1 || alone : alone) m_marked[p][l] = Role::Watermark;
            }
        }
    }

    // Light grey or a light tint, but not white (white stands on a dark ground).
    static bool paleColour(std::uint32_t colour) {
        int const r = static_cast<int>(colour >> 16 & 0xFF);
        int const g = static_cast<int>(colour >> 8 & 0xFF);
        int const b = static_cast<int>(colour & 0xFF);
        int const light = (r * 3 + g * 6 + b) / 10;
        return light >= 0xA0 && light < 0xF8;
    }

    // "Page 1 of 1" at the edge of any page, and a bare number that is the page's own.
    void markLonePageNumbers() {
        for (std::size_t p = 0; p < m_pages.size(); ++p) {
            PageLayout const& page = m_pages[p];
            for (std::uint32_t l = 0; l < page.lines.size(); ++l) {
                TextLine const& line = page.lines[l];
                if (m_marked[p][l] != Role::None || line.direction != Direction::Right || line.wordCount > kPageNumberWords) continue;
                Points const y = line.box.centre().y;
                if (y > kEdgeZone / 2 * page.height && y < (1 - kEdgeZone / 2) * page.height) continue;
                std::string const text = model::lineText(page, line);
                if (!looksLikePageNumber(text)) continue;
                std::vector<int> numbers;
                std::string const shape = pattern(text, numbers);
                bool const own = !numbers.empty() && numbers.front() == page.page;
                bool const said = shape.size() > numbers.size() + 2;
                if (own && (said || (m_pages.size() > 1 && numbers.size() == 1))) m_marked[p][l] = Role::PageNumber;
            }
        }
    }

    void apply(std::size_t p) {
        PageLayout& page = m_pages[p];
        auto const& marked = m_marked[p];
        if (std::all_of(marked.begin(), marked.end(), [](Role r) { return r == Role::None; })) return;
        std::vector<Block> blocks;
        blocks.reserve(page.blocks.size() + 4);
        for (Block const& block : page.blocks) {
            std::uint32_t l = block.firstLine;
            std::uint32_t const end = block.firstLine + block.lineCount;
            while (l < end) {
                Block piece = block;
                piece.firstLine = l;
                piece.box = {};
                Role const role = marked[l];
                while (l < end && marked[l] == role) piece.box = model::united(piece.box, page.lines[l++].box);
                piece.lineCount = l - piece.firstLine;
                if (role != Role::None) {
                    piece.role = role == Role::RunningHead ? BlockRole::RunningHead : role == Role::PageNumber ? BlockRole::PageNumber : BlockRole::Watermark;
                    piece.headingLevel = 0;
                    for (std::uint32_t k = piece.firstLine; k < l; ++k)
                        for (std::uint32_t w = page.lines[k].firstWord; w < page.lines[k].firstWord + page.lines[k].wordCount; ++w) page.words[w].owner = model::Owner::Furniture;
                }
                blocks.push_back(piece);
            }
        }
        page.blocks = std::move(blocks);
    }

    std::span<PageLayout> m_pages;
    std::vector<std::vector<Role>> m_marked;
    std::map<std::string, std::vector<Candidate>> m_groups;
};

}  // namespace

void markFurniture(std::span<PageLayout> pages) { Marker(pages).mark(); }

}  // namespace standin::layout
