// Sections of a document by its headings, and its running text as sentences.
//
// This folder includes model/, text/, quantity/ and vocabulary/ only.
//
//     std::vector<model::Section> sections = findSections(pages);
//     SectionIndex const index(sections, pages);
//     table.section = index.ofBox(table.page, table.box);
//     ... tables, figures and parameters take their words ...
//     std::vector<model::Sentence> text = readText(pages, sections);
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::sections {

// Headings in reading order, each opening a section that lasts until the next.
// Known headings (DOMAIN: en, zh, ja, de, ru) get their kind; others that are set
// like the known ones get SectionKind::Other. Entries of a table of contents, running
// heads and repeated headings of a continued section are passed over. Ids "s1", "s2" …
[[nodiscard]] std::vector<model::Section> findSections(std::span<model::PageLayout const> pages);

// Which section a place belongs to, by reading order (so that columns are right).
class SectionIndex {
public:
    // `pages` have to be those of findSections; nothing is kept of them but numbers.
    SectionIndex(std::span<model::Section const> sections, std::span<model::PageLayout const> pages);

    // Id of the section that the line (index into PageLayout::lines) belongs to; empty before the first heading.
    [[nodiscard]] std::string ofLine(int page, std::uint32_t line) const;
    // The same for the first line inside a box; where no text lies in it, for the
    // nearest heading above it in its column. Logarithmic in sections, linear in the page's lines.
    [[nodiscard]] std::string ofBox(int page, model::Rect const& box) const;

private:
    struct Start {
        int page = 0;
        std::uint32_t line = 0;
        std::string id;
        model::Rect box;
    };
    std::vector<Start> m_starts;
    std::vector<int> m_pageNumbers;
    std::vector<std::vector<model::Rect>> m_lines;  // boxes by page, in reading order
};

// The last section in reading order that begins at or above y on the page, or on a
// page before; null: none. For single-column documents; SectionIndex is exact.
[[nodiscard]] model::Section const* sectionAt(std::span<model::Section const> sections, int page, model::Points y);

// Everything that has no owner yet, as sentences and list entries in reading order.
// Lines, columns and pages are joined, hyphens at line ends closed where the document
// writes the word without them. Every word with Owner::None becomes part of a sentence
// (a CJK word may hold the end of one and the start of the next) and gets Owner::Text.
// `language` as for text::splitSentences. Ids "x1", "x2" …
[[nodiscard]] std::vector<model::Sentence> readText(std::span<model::PageLayout> pages, std::span<model::Section const> sections, std::string_view language = {});

}  // namespace standin::sections
