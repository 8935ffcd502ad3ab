// Prints what layout makes of a document, one thing a line:
//
//     dump_layout FILE [PAGE] [words]     blocks and lines (and words with their boxes)
//     dump_layout FILE time               how long laying out takes, page by page
//     dump_layout FILE text               sections and sentences (without tables being taken out)
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "extractors/layout/layout.h"
#include "extractors/poppler/document_reader.h"
#include "extractors/sections/sections.h"

namespace {

using namespace standin;

// Processor time, so that a busy machine does not matter.
double milliseconds() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

std::string shown(model::Rect const& box) { return fmt::format("[{:.1f} {:.1f} {:.1f} {:.1f}]", box.x0, box.y0, box.x1, box.y1); }

char const* shown(model::BlockRole role) {
    static constexpr char const* kNames[] = {"paragraph", "list-entry", "heading", "caption", "running-head", "page-number", "watermark", "rotated"};
    return kNames[static_cast<int>(role)];
}

void dump(model::PageLayout const& page, bool words) {
    fmt::print("page {} {:.0f}x{:.0f} body {} words {} lines {} blocks {} rules {}\n", page.page, page.width, page.height, page.bodySize, page.words.size(), page.lines.size(),
               page.blocks.size(), page.rules.size());
    for (auto const& note : page.notes) fmt::print("note {}\n", note.text);
    for (auto const& block : page.blocks) {
        fmt::print("-- {}{} column {} {}\n", shown(block.role), block.headingLevel > 0 ? fmt::format(" {}", block.headingLevel) : "", block.column, shown(block.box));
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
            auto const& line = page.lines[l];
            std::string text;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                auto const& word = page.words[w];
                if (w > line.firstWord) text += word.spaceBefore ? " " : "~";
                if (word.script != model::Script::Normal) text += word.script == model::Script::Superscript ? "^" : "_";
                if (word.hidden) text += "?";
                text += word.text;
            }
            fmt::print("   {:.1f} {:.1f}{} x {:.1f}-{:.1f} | {}\n", line.baseline, line.size, line.bold ? "b" : "", line.box.x0, line.box.x1, text);
            if (!words) continue;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w)
                fmt::print("        {} {} size {:.1f}\n", page.words[w].text, shown(page.words[w].box), page.words[w].size);
        }
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        fmt::print(stderr, "usage: dump_layout FILE [PAGE|time] [words]\n");
        return 2;
    }
    std::ifstream file(argv[1], std::ios::binary);
    std::string const bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    auto reader = poppler::DocumentReader::open(std::as_bytes(std::span(bytes)), {});
    if (!reader) {
        fmt::print(stderr, "{}: {}\n", argv[1], reader.error().message);
        return 2;
    }
    std::string_view const what = argc > 2 ? argv[2] : "";
    std::vector<model::PageLayout> pages;
    double total = 0;
    for (int number = 1; number <= reader->pageCount(); ++number) {
        auto const content = reader->readPage(number);
        if (!content) {
            fmt::print(stderr, "{}\n", content.error().message);
            return 2;
        }
        double const begin = milliseconds();
        pages.push_back(layout::layOut(*content));
        double const spent = milliseconds() - begin;
        total += spent;
        if (what == "time") fmt::print("page {} {} glyphs {} rules {} drawings: {:.3f} ms\n", number, content->glyphs.size(), content->rules.size(), content->drawings.size(), spent);
    }
    double const begin = milliseconds();
    layout::markFurniture(pages);
    double const spent = milliseconds() - begin;
    if (what == "time") {
        fmt::print("furniture {:.3f} ms, layout {:.3f} ms over {} pages\n", spent, total, pages.size());
        return 0;
    }
    if (what == "text") {
        double const start = milliseconds();
        auto const sections = sections::findSections(pages);
        double const finding = milliseconds() - start;
        auto const text = sections::readText(pages, sections);
        double const reading = milliseconds() - start - finding;
        for (auto const& section : sections)
            fmt::print("{} page {} kind {} level {} {} {}\n", section.id, section.page, static_cast<int>(section.kind), section.level, shown(section.box), section.title);
        for (auto const& sentence : text)
            fmt::print("{} {} p{}{} | {}\n", sentence.id, sentence.section, sentence.places.front().page, sentence.places.size() > 1 ? "+" : "", sentence.text);
        fmt::print("sections {:.3f} ms, text {:.3f} ms\n", finding, reading);
        return 0;
    }
    int const only = what.empty() ? 0 : std::atoi(argv[2]);
    for (auto const& page : pages)
        if (only == 0 || page.page == only) dump(page, argc > 3);
    return 0;
}
