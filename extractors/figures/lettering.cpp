// A block of several long lines is running text; what is short is free for a
// figure near it. Tested by tests/extractors/figures/find_figures_test.cpp.
#include "extractors/figures/lettering.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "text/utf8.h"

namespace standin::figures {

namespace {

// Widths in font heights, lengths in words.
constexpr model::Points kRunningWidth = 16;
constexpr std::uint32_t kRunningWords = 5;     // a line, on average, of a block of several lines
constexpr std::uint32_t kLongSingleLine = 9;   // words of a line that is a sentence by itself
constexpr model::Points kTitleSize = 1.6F;     // of the body's: a title of the sheet, no lettering
constexpr std::uint32_t kWordsBesideTable = 6;
constexpr model::Points kParagraphPitch = 2.2F;
constexpr model::Points kSameEdge = 0.3F;
constexpr std::uint32_t kLongestCaption = 4;   // lines

bool isFurniture(model::BlockRole role) {
    return role == model::BlockRole::RunningHead || role == model::BlockRole::PageNumber || role == model::BlockRole::Watermark;
}

bool isRunning(model::PageLayout const& page, model::Block const& block) {
    if (block.role == model::BlockRole::Rotated) return false;
    std::uint32_t words = 0;
    for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) words += page.lines[l].wordCount;
    auto const size = page.lines[block.firstLine].size > 0 ? page.lines[block.firstLine].size : page.bodySize;
    if (block.lineCount == 1) return words >= kLongSingleLine || (block.role == model::BlockRole::ListEntry && words >= 3);
    return words >= kRunningWords * block.lineCount && block.box.width() >= kRunningWidth * size;
}

bool isOwned(model::PageLayout const& page, model::TextLine const& line) {
    for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
        if (page.words[w].owner != model::Owner::None) return true;
    }
    return false;
}

// Two lines of a paragraph whose blocks hold the rows of a table beside it as well.
bool followEachOther(model::TextLine const& a, model::TextLine const& b) {
    return std::abs(a.box.x0 - b.box.x0) <= kSameEdge * a.size && std::abs(b.baseline - a.baseline) <= kParagraphPitch * a.size && std::abs(a.size - b.size) < kSameEdge * a.size;
}

// Long lines that follow each other beside lines of a table are running text, though their blocks are not.
void findProseBesideTables(model::PageLayout const& page, std::vector<LineUse>& uses) {
    std::vector<std::uint32_t> lines;
    bool sharedAbove = false;
    for (auto const& block : page.blocks) {
        std::uint32_t const end = block.firstLine + block.lineCount;
        bool shared = false;
        for (std::uint32_t l = block.firstLine; l < end; ++l) shared = shared || (uses[l] == LineUse::Owned && page.lines[l].wordCount > 0);
        for (std::uint32_t l = block.firstLine; l < end && (shared || sharedAbove); ++l) {  // the last line may stand below the table
            bool const prose = page.lines[l].direction == model::Direction::Right && page.lines[l].wordCount >= kWordsBesideTable;
            if (prose && (uses[l] == LineUse::Free || uses[l] == LineUse::Running)) lines.push_back(l);
        }
        sharedAbove = shared;
    }
    for (std::size_t i = 1; i < lines.size(); ++i) {
        if (followEachOther(page.lines[lines[i - 1]], page.lines[lines[i]])) uses[lines[i - 1]] = uses[lines[i]] = LineUse::Running;
    }
}

bool isSectionHeading(model::Block const& block, int page, std::span<model::Section const> sections) {
    return std::any_of(sections.begin(), sections.end(), [&](auto const& section) {
        return section.page == page && section.box.intersects(block.box) && model::intersection(section.box, block.box).area() > 0.5F * section.box.area();
    });
}

// A number, and not the sentence "… 2 shows the connection", "…3为连接图。" behind it.
bool isNumberOfCaption(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size() && (text[at] == ' ' || text[at] == '.')) ++at;
    if (text.substr(at).starts_with("\u00A0")) at += 2;
    if (at >= text.size() || !text::isAsciiDigit(text[at])) return false;
    while (at < text.size() && (text::isAsciiDigit(text[at]) || text[at] == '-')) ++at;
    if (at >= text.size()) return true;
    auto const rest = text.substr(at);
    if (rest.front() == ',' || rest.front() == ')') return false;
    if (rest.size() > 1 && rest.front() == ' ' && text::isAsciiLower(rest[1])) return false;
    constexpr std::array<std::string_view, 8> kVerbs{"为", "是", "所", "中", "显", "给", "に", "は"};
    auto const words = text::trimmed(rest);
    return std::none_of(kVerbs.begin(), kVerbs.end(), [words](auto verb) { return words.starts_with(verb); });
}

// Told by the first word, before the text is put together: most lines begin with another letter or a figure.
bool lineBeginsCaption(model::PageLayout const& page, model::TextLine const& line) {
    if (line.wordCount == 0) return false;
    std::string_view const word = page.words[line.firstWord].text;
    bool const plain = !word.empty() && (text::isAsciiLetter(word.front()) || text::isAsciiDigit(word.front()));
    if (plain && std::string_view("FfAaBb").find(word.front()) == std::string_view::npos) return false;
    return beginsCaption(model::lineText(page, line));
}

}  // namespace

bool beginsCaption(std::string_view text) {
    text = text::trimmed(text);
    if (text.starts_with('<')) text.remove_prefix(1);
    constexpr std::array<std::string_view, 9> kWords{"figure", "fig.", "fig", "abbildung", "abb.", "bild", "Рис", "РИС", "рис"};
    constexpr std::array<std::string_view, 3> kIdeographs{"图", "圖", "図"};
    auto const start = text::asciiLower(text.substr(0, 24));
    for (auto const word : kIdeographs) {
        if (text.starts_with(word)) return isNumberOfCaption(text.substr(word.size()));
    }
    for (auto const word : kWords) {
        if (std::string_view(start).starts_with(word) || text.starts_with(word)) {
            auto rest = text.substr(word.size());
            if (rest.starts_with("унок") || rest.starts_with("УНОК")) rest.remove_prefix(8);
            return isNumberOfCaption(rest);
        }
    }
    return false;
}

std::vector<LineUse> usesOfLines(model::PageLayout const& page, std::span<model::Section const> sections) {
    std::vector<LineUse> uses(page.lines.size(), LineUse::Free);
    for (auto const& block : page.blocks) {
        if (block.lineCount == 0) continue;
        LineUse use = LineUse::Free;
        if (isFurniture(block.role)) use = LineUse::Owned;
        else if (block.role == model::BlockRole::Caption) use = LineUse::Caption;
        else if (isSectionHeading(block, page.page, sections)) use = LineUse::Heading;
        else if (isRunning(page, block)) use = LineUse::Running;
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) uses[l] = use;
    }
    for (std::size_t l = 0; l < page.lines.size(); ++l) {
        auto const& line = page.lines[l];
        bool const taken = line.wordCount == 0 || isOwned(page, line);
        bool const title = page.bodySize > 0 && line.size >= kTitleSize * page.bodySize && line.direction == model::Direction::Right;
        if (taken) uses[l] = LineUse::Owned;
        else if (title && uses[l] == LineUse::Free) uses[l] = LineUse::Running;
        else if (uses[l] != LineUse::Heading && lineBeginsCaption(page, line)) uses[l] = LineUse::Caption;
    }
    findProseBesideTables(page, uses);
    return uses;
}

std::vector<Caption> captionsOf(model::PageLayout const& page) {
    std::vector<Caption> captions;
    for (auto const& block : page.blocks) {
        if (isFurniture(block.role)) continue;
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            auto const& line = page.lines[l];
            if (line.wordCount == 0 || page.words[line.firstWord].owner != model::Owner::None) continue;
            if (!lineBeginsCaption(page, line)) continue;
            Caption caption{model::lineText(page, line), line.box};
            // The rest of its block belongs to it, unless that is a paragraph
            // that only begins with "Figure 3 shows".
            std::uint32_t const end = block.firstLine + block.lineCount;
            if (end - l <= kLongestCaption) {
                for (++l; l < end && !lineBeginsCaption(page, page.lines[l]); ++l) {
                    caption.text += ' ';
                    caption.text += model::lineText(page, page.lines[l]);
                    caption.box = model::united(caption.box, page.lines[l].box);
                }
                --l;
            } else if (block.role != model::BlockRole::Caption) {
                continue;
            }
            captions.push_back(std::move(caption));
        }
    }
    return captions;
}

}  // namespace standin::figures
