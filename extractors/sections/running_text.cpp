// Units (paragraphs, list entries, headings, rows) are made of the words that nobody
// owns; a paragraph that breaks off goes on in the next column or page. Each unit is
// split into sentences, whose places follow from the words under them. Tested by sections_test.cpp.
#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_set>

#include "extractors/sections/headings.h"
#include "extractors/sections/sections.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

namespace standin::sections {

namespace {

using model::Block;
using model::BlockRole;
using model::Owner;
using model::PageLayout;
using model::Points;
using model::Section;
using model::Sentence;
using model::TextLine;
using model::Word;

constexpr Points kSameRow = 0.25F;   // font heights
constexpr float kSameSize = 0.06F;   // part of the size
constexpr std::size_t kUnitBytesAtMost = 20000;  // a unit never grows beyond

struct Piece {
    std::size_t begin = 0;  // byte in the unit's text
    std::size_t page = 0;   // index
    std::uint32_t block = 0;
    std::uint32_t line = 0;
    std::uint32_t word = 0;
};

enum class UnitKind { Paragraph, ListEntry, Heading, Row };

struct Unit {
    UnitKind kind = UnitKind::Paragraph;
    std::string text;
    std::vector<Piece> pieces;
    Points size = 0;
};

bool isHyphen(char32_t c) { return c == U'-' || c == 0x2010 || c == 0xAD || c == 0x2011; }

class TextReader {
public:
    TextReader(std::span<PageLayout> pages, std::span<Section const> sections, std::string_view language)
        : m_pages(pages), m_index(sections, std::span<PageLayout const>(pages.data(), pages.size())), m_language(language) {
        for (Section const& section : sections) m_titles.insert(placeKey(section.page, section.box));
    }

    std::vector<Sentence> read() {
        for (std::size_t p = 0; p < m_pages.size(); ++p)
            for (std::uint32_t b = 0; b < m_pages[p].blocks.size(); ++b) readBlock(p, b);
        flush();
        return std::move(m_sentences);
    }

private:
    static std::string placeKey(int page, model::Rect const& box) {
        return std::to_string(page) + ' ' + std::to_string(std::lround(box.x0 * 8)) + ' ' + std::to_string(std::lround(box.y0 * 8));
    }

    bool isFree(PageLayout const& page, TextLine const& line) const {
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w)
            if (page.words[w].owner == Owner::None) return true;
        return false;
    }

    void readBlock(std::size_t p, std::uint32_t b) {
        PageLayout const& page = m_pages[p];
        Block const& block = page.blocks[b];
        std::optional<std::uint32_t> last;
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            TextLine const& line = page.lines[l];
            if (!isFree(page, line)) continue;
            bool const title = m_titles.count(placeKey(page.page, line.box)) > 0;
            UnitKind kind = title || block.role == BlockRole::Heading || block.role == BlockRole::Caption ? UnitKind::Heading
                            : block.role == BlockRole::ListEntry                                         ? UnitKind::ListEntry
                                                                                                         : UnitKind::Paragraph;
            bool const sameRow = last && std::abs(page.lines[*last].baseline - line.baseline) < kSameRow * line.size && page.lines[*last].direction == line.direction;
            bool goesOn = false;
            if (last) {
                goesOn = sameRow || (m_unit.kind != UnitKind::Row && !(title && kind == UnitKind::Heading) && !m_titleOpen);
                if (sameRow && kind == UnitKind::Paragraph && m_unit.kind == UnitKind::Paragraph && m_lineOfUnit == *last && m_unit.pieces.front().line == firstOfRow(page, *last))
                    m_unit.kind = UnitKind::Row;
            } else {
                goesOn = continues(page, block, line, kind);
            }
            if (!goesOn || m_unit.text.size() > kUnitBytesAtMost) {
                flush();
                m_unit.kind = kind;
                m_unit.size = line.size;
                m_titleOpen = title;
            }
            addLine(p, b, l);
            m_lineOfUnit = l;
            last = l;
        }
    }

    // The first line of the row that ends in line l.
    static std::uint32_t firstOfRow(PageLayout const& page, std::uint32_t l) {
        while (l > 0 && std::abs(page.lines[l - 1].baseline - page.lines[l].baseline) < kSameRow * page.lines[l].size) --l;
        return l;
    }

    // A paragraph that has not come to an end goes on with a block that begins inside a sentence.
    bool continues(PageLayout const& page, Block const& block, TextLine const& line, UnitKind kind) const {
        if (m_unit.text.empty() || kind != UnitKind::Paragraph || block.role != BlockRole::Paragraph) return false;
        if (m_unit.kind == UnitKind::Heading || m_unit.kind == UnitKind::Row) return false;
        if (std::abs(line.size - m_unit.size) > kSameSize * line.size) return false;
        std::size_t at = m_unit.text.size();
        char32_t const end = text::decodePrevious(m_unit.text, at);
        for (char32_t stop : {U'.', U'!', U'?', U':', U';', U'\u3002', U'\uFF01', U'\uFF1F', U'\uFF1A', U'\uFF1B'})
            if (end == stop) return false;
        std::string const& first = page.words[line.firstWord].text;
        at = 0;
        char32_t const begin = first.empty() ? U' ' : text::decodeNext(first, at);
        if (text::isCjk(begin)) return text::isCjk(end) || end == U',';
        if (begin < 0x80) return text::isAsciiLower(static_cast<char>(begin));
        return text::isLetter(begin) && text::lowerCase(first.substr(0, at)) == first.substr(0, at);
    }

    void addLine(std::size_t p, std::uint32_t b, std::uint32_t l) {
        PageLayout& page = m_pages[p];
        TextLine const& line = page.lines[l];
        bool firstWord = true;
        bool gap = false;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
            Word& word = page.words[w];
            if (word.owner != Owner::None) {
                gap = true;
                continue;
            }
            word.owner = Owner::Text;
            if (!m_unit.text.empty()) {
                if (firstWord)
                    joinLine(word.text);
                else if (word.spaceBefore || gap)
                    m_unit.text += ' ';
            }
            m_unit.pieces.push_back({m_unit.text.size(), p, b, l, w});
            m_unit.text += word.text;
            firstWord = gap = false;
        }
    }

    // Between the end of the unit so far and a new line: a space, nothing between CJK
    // characters, and a hyphen closed where it only divides a word.
    void joinLine(std::string const& next) {
        std::size_t at = m_unit.text.size();
        std::size_t const before = at;
        char32_t const end = text::decodePrevious(m_unit.text, at);
        std::size_t n = 0;
        char32_t const begin = next.empty() ? U' ' : text::decodeNext(next, n);
        if (isHyphen(end) && at > 0 && begin < 0x80 && text::isAsciiLetter(static_cast<char>(begin))) {
            std::size_t letter = at;
            bool const behindLetter = text::isLetter(text::decodePrevious(m_unit.text, letter));
            if (behindLetter) {
                if (text::isAsciiLower(static_cast<char>(begin)) && (end == 0xAD || divides(at, next))) m_unit.text.erase(at, before - at);
                return;
            }
        }
        if (text::isCjk(end) && text::isCjk(begin)) return;
        m_unit.text += ' ';
    }

    // The hyphen at byte `at` only divides a word: neither part is a word of this document by itself.
    bool divides(std::size_t at, std::string const& next) {
        if (m_words.empty()) gatherWords();
        std::size_t from = at;
        while (from > 0 && text::isAsciiLetter(m_unit.text[from - 1])) --from;
        std::string const left = text::asciiLower(std::string_view(m_unit.text).substr(from, at - from));
        std::size_t end = 0;
        while (end < next.size() && text::isAsciiLetter(next[end])) ++end;
        std::string const right = text::asciiLower(std::string_view(next).substr(0, end));
        if (m_words.count(left + right) > 0) return true;
        if (m_words.count(left + '-' + right) > 0) return false;
        return m_words.count(left) == 0 || m_words.count(right) == 0;
    }

    // Every word of the document, without the halves at line ends.
    void gatherWords() {
        m_words.insert(std::string{});
        for (PageLayout const& page : m_pages)
            for (TextLine const& line : page.lines)
                for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                    std::string_view text = page.words[w].text;
                    while (!text.empty() && !text::isAsciiLetter(text.back()) && text.back() != '-') text.remove_suffix(1);
                    while (!text.empty() && !text::isAsciiLetter(text.front())) text.remove_prefix(1);
                    if (!text.empty() && text.back() != '-') m_words.insert(text::asciiLower(text));
                }
    }

    void flush() {
        if (m_unit.text.empty()) {
            m_unit = {};
            return;
        }
        std::string_view const all = m_unit.text;
        std::vector<std::string_view> parts;
        if (m_unit.kind == UnitKind::Paragraph || m_unit.kind == UnitKind::ListEntry)
            parts = text::splitSentences(all, m_language);
        else
            parts.push_back(all);
        std::size_t piece = 0;
        for (std::string_view part : parts) {
            if (part.empty()) continue;
            std::size_t const begin = static_cast<std::size_t>(part.data() - all.data());
            addSentence(part, begin, piece);
        }
        m_unit = {};
    }

    // `piece`: the first piece that may lie in it; moves on.
    void addSentence(std::string_view part, std::size_t begin, std::size_t& piece) {
        auto const& pieces = m_unit.pieces;
        while (piece + 1 < pieces.size() && pieces[piece + 1].begin <= begin) ++piece;
        Sentence sentence;
        sentence.id = "x" + std::to_string(m_sentences.size() + 1);
        sentence.section = m_index.ofLine(m_pages[pieces[piece].page].page, pieces[piece].line);
        sentence.text = std::string(part);
        std::size_t at = piece;
        std::size_t lastPage = m_pages.size();
        std::uint32_t lastBlock = 0;
        for (; at < pieces.size() && pieces[at].begin < begin + part.size(); ++at) {
            Piece const& here = pieces[at];
            model::Rect const& box = m_pages[here.page].words[here.word].box;
            if (here.page == lastPage && here.block == lastBlock) {
                sentence.places.back().box = model::united(sentence.places.back().box, box);
            } else {
                sentence.places.push_back({m_pages[here.page].page, box});
                lastPage = here.page;
                lastBlock = here.block;
            }
        }
        if (at > piece) piece = at - 1;
        m_sentences.push_back(std::move(sentence));
    }

    std::span<PageLayout> m_pages;
    SectionIndex m_index;
    std::string_view m_language;
    std::unordered_set<std::string> m_titles;
    std::unordered_set<std::string> m_words;
    Unit m_unit;
    std::uint32_t m_lineOfUnit = 0;
    bool m_titleOpen = false;
    std::vector<Sentence> m_sentences;
};

}  // namespace

std::vector<Sentence> readText(std::span<PageLayout> pages, std::span<Section const> sections, std::string_view language) {
    return TextReader(pages, sections, language).read();
}

}  // namespace standin::sections
