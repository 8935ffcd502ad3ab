// One page as words, lines and blocks in reading order. Made by
// extractors/layout/ from PageContent, read by every later extractor.
//
// words[] is the page's whole visible text; every glyph of PageContent that a
// reader can see is in exactly one word. Words are sorted in reading order:
// block by block, line by line, left to right; a line's words are contiguous,
// and so are a block's lines. Each word gets exactly one owner in the end.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "model/page_content.h"

namespace standin::model {

// Who accounts for a word (and the numbers in it).
enum class Owner : std::uint8_t { None, Parameter, Table, Text, Figure, Furniture };

// How a word stands to the line's baseline.
enum class Script : std::uint8_t { Normal, Superscript, Subscript };

struct Word {
    std::string text;     // UTF-8, NFC; sub- and superscripts that belong to a symbol are joined ("VCU", "RDS(on)")
    Rect box;
    Points baseline = 0;  // y of the baseline (x for Direction::Up and Down)
    Points size = 0;      // font size of its main part
    std::uint16_t font = 0;   // index into PageLayout::fonts, of its first character
    std::uint32_t colour = 0;
    Direction direction = Direction::Right;
    Script script = Script::Normal;  // Superscript: a footnote mark or exponent standing alone
    bool bold = false;
    bool italic = false;
    bool hidden = false;      // invisible or the colour of its background
    bool spaceBefore = true;  // false: touches the word before it on its line ("4.25" + superscript "1")
    bool unknown = false;     // holds characters without usable Unicode
    bool dotLeader = false;   // a run of leader dots or a drawn leader
    bool recognised = false;  // some of it by character recognition, nothing that is believed like print
    Owner owner = Owner::None;
};

// A run of words on one baseline without a column-wide gap in it.
struct TextLine {
    std::uint32_t firstWord = 0;
    std::uint32_t wordCount = 0;
    Rect box;
    Points baseline = 0;
    Points size = 0;  // prevailing font size
    bool bold = false;
    Direction direction = Direction::Right;
};

enum class BlockRole : std::uint8_t { Paragraph, ListEntry, Heading, Caption, RunningHead, PageNumber, Watermark, Rotated };

struct Block {
    std::uint32_t firstLine = 0;
    std::uint32_t lineCount = 0;
    Rect box;
    BlockRole role = BlockRole::Paragraph;
    int column = 0;        // 0: spans the page or the only column; 1, 2 …: text columns left to right
    int headingLevel = 0;  // 1 is the highest; 0 where role is not Heading
};

struct PageLayout {
    int page = 0;
    Points width = 0;
    Points height = 0;
    Points bodySize = 0;  // prevailing font size of running text on the page
    std::vector<Font> fonts;
    std::vector<Word> words;
    std::vector<TextLine> lines;
    std::vector<Block> blocks;
    std::vector<Rule> rules;   // as in PageContent, merged where pieces touch
    std::vector<Fill> fills;
    std::vector<Image> images;
    std::vector<Drawing> drawings;
    std::vector<Note> notes;
    std::vector<Rect> unrecognised;  // lettering in pictures that was looked at and not made out
};

// The words of a line as printed, with the gaps that part them. Words that the page
// does not have are left out.
[[nodiscard]] std::string lineText(PageLayout const& page, TextLine const& line);

}  // namespace standin::model
