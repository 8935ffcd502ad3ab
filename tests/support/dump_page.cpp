// Prints what the reader finds on a page, one thing a line:
//
//     dump_page FILE [PAGE] [PASSWORD]
//
// Without a page, one summary line for each page.
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "extractors/poppler/document_reader.h"

namespace {

std::string shown(char32_t code) {
    if (code == U' ') return "' '";
    if (code < 0x21) return fmt::format("U+{:04X}", static_cast<unsigned>(code));
    std::string out;
    if (code < 0x80) {
        out += static_cast<char>(code);
    } else if (code < 0x800) {
        out += {static_cast<char>(0xC0 | (code >> 6)), static_cast<char>(0x80 | (code & 0x3F))};
    } else if (code < 0x10000) {
        out += {static_cast<char>(0xE0 | (code >> 12)), static_cast<char>(0x80 | ((code >> 6) & 0x3F)), static_cast<char>(0x80 | (code & 0x3F))};
    } else {
        out = fmt::format("U+{:04X}", static_cast<unsigned>(code));
    }
    return out;
}

std::string shown(standin::model::Rect const& box) { return fmt::format("[{:.2f} {:.2f} {:.2f} {:.2f}]", box.x0, box.y0, box.x1, box.y1); }

char const* shown(standin::model::Direction direction) {
    static constexpr char const* kNames[] = {"right", "down", "left", "up", "slanted"};
    return kNames[static_cast<int>(direction)];
}

void dump(standin::model::PageContent const& page) {
    fmt::print("page {} {:.2f} x {:.2f} rotation {}\n", page.page, page.width, page.height, page.rotation);
    for (std::size_t i = 0; i < page.fonts.size(); ++i) {
        auto const& font = page.fonts[i];
        fmt::print("font {} {}{}{}{}{}{}{}{}\n", i, font.name, font.bold ? " bold" : "", font.italic ? " italic" : "", font.monospaced ? " mono" : "",
                   font.symbolic ? " symbolic" : "", font.type3 ? " type3" : "", font.embedded ? "" : " not-embedded", font.unicodeKnown ? "" : " unicode-unknown");
    }
    for (auto const& glyph : page.glyphs) {
        fmt::print("glyph {} {} base {:.2f} {:.2f} size {:.2f} font {} #{:06X} {}{}{}{}{}\n", shown(glyph.code), shown(glyph.box), glyph.origin.x, glyph.origin.y, glyph.size,
                   glyph.font, glyph.colour, shown(glyph.direction), glyph.invisible ? " invisible" : "", glyph.outside ? " outside" : "",
                   glyph.fromActualText ? " actual-text" : "", glyph.vertical ? " vertical" : "");
    }
    for (auto const& rule : page.rules) {
        fmt::print("rule {} {} #{:06X}{}\n", rule.axis == standin::model::Rule::Axis::Horizontal ? "horizontal" : "vertical", shown(rule.box), rule.colour, rule.dashed ? " dashed" : "");
    }
    for (auto const& fill : page.fills) fmt::print("fill {} #{:06X}\n", shown(fill.box), fill.colour);
    for (auto const& image : page.images) fmt::print("image {} {}x{}\n", shown(image.box), image.pixelWidth, image.pixelHeight);
    for (auto const& drawing : page.drawings) fmt::print("drawing {} {:016x}\n", shown(drawing.box), drawing.shape);
    for (auto const& note : page.notes) fmt::print("note {}\n", note.text);
}

void summarise(standin::model::PageContent const& page) {
    std::size_t unknown = 0;
    std::size_t invisible = 0;
    std::size_t outside = 0;
    for (auto const& glyph : page.glyphs) {
        unknown += glyph.code == standin::model::kUnknownCharacter ? 1 : 0;
        invisible += glyph.invisible ? 1 : 0;
        outside += glyph.outside ? 1 : 0;
    }
    fmt::print("page {}: {} glyphs ({} unknown, {} invisible, {} outside), {} rules, {} fills, {} images, {} drawings, {} fonts\n", page.page, page.glyphs.size(), unknown,
               invisible, outside, page.rules.size(), page.fills.size(), page.images.size(), page.drawings.size(), page.fonts.size());
    for (auto const& note : page.notes) fmt::print("  note {}\n", note.text);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        fmt::print(stderr, "usage: dump_page FILE [PAGE] [PASSWORD]\n");
        return 2;
    }
    std::ifstream file(argv[1], std::ios::binary);
    std::string const bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    standin::poppler::OpenOptions options;
    if (argc > 3) options.password = argv[3];
    auto reader = standin::poppler::DocumentReader::open(std::as_bytes(std::span(bytes)), options);
    if (!reader) {
        fmt::print(stderr, "{}: {}\n", argv[1], reader.error().message);
        return 2;
    }
    for (auto const& note : reader->notes()) fmt::print("note {}\n", note.text);
    int const only = argc > 2 ? std::stoi(argv[2]) : 0;
    for (int number = 1; number <= reader->pageCount(); ++number) {
        if (only > 0 && number != only) continue;
        auto const page = reader->readPage(number);
        if (!page) {
            fmt::print(stderr, "{}\n", page.error().message);
            return 2;
        }
        only > 0 ? dump(*page) : summarise(*page);
    }
    return 0;
}
