// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/pieces.h"

#include <string_view>

#include "text/utf8.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::TextLine;

namespace {

// Digits, signs and brackets as Unicode superscripts; empty where one has none.
std::string raised(std::string_view text) {
    std::string out;
    for (char const c : text) {
        switch (c) {
            case '0': out += "⁰"; break;
            case '1': out += "¹"; break;
            case '2': out += "²"; break;
            case '3': out += "³"; break;
            case '4': case '5': case '6': case '7': case '8': case '9':
                text::append(out, U'\u2070' + static_cast<char32_t>(c - '0'));
                break;
            default: return {};
        }
    }
    return out;
}

}  // namespace

Piece makePiece(PageLayout const& page, TextLine const& line, std::uint32_t first, std::uint32_t count) {
    Piece piece;
    while (count > 0 && !isTableWord(page.words[first])) {
        ++first;
        --count;
    }
    while (count > 0 && !isTableWord(page.words[first + count - 1])) --count;
    piece.first = first;
    piece.count = count;
    if (count == 0) return piece;
    piece.bold = true;
    for (std::uint32_t i = first; i < first + count; ++i) {
        piece.box = united(piece.box, page.words[i].box);
        piece.bold = piece.bold && page.words[i].bold;
    }
    piece.size = line.size;
    piece.turned = line.direction != model::Direction::Right;
    piece.baseline = piece.turned ? piece.box.centre().y : line.baseline;
    return piece;
}

std::string textOf(PageLayout const& page, Piece const& piece) {
    std::string text;
    for (std::uint32_t i = piece.first; i < piece.first + piece.count; ++i) {
        auto const& word = page.words[i];
        if (!isTableWord(word) || word.dotLeader) continue;
        if (!text.empty() && word.spaceBefore) text += ' ';
        if (word.script == model::Script::Superscript && !text.empty()) {
            auto const high = raised(word.text);
            text += high.empty() ? word.text : high;
        } else {
            text += word.text;
        }
    }
    return text;
}

std::string textOf(PageLayout const& page, std::vector<Piece> const& pieces) {
    std::string text;
    for (auto const& piece : pieces) {
        auto const part = textOf(page, piece);
        if (part.empty()) continue;
        if (!text.empty()) text += ' ';
        text += part;
    }
    return text;
}

void cutAtGaps(PageLayout const& page, Piece const& piece, Points gap, std::vector<Piece>& out) {
    if (piece.turned) {
        out.push_back(piece);
        return;
    }
    TextLine line;
    line.baseline = piece.baseline;
    line.size = piece.size;
    auto flush = [&](std::uint32_t first, std::uint32_t end) {
        auto part = makePiece(page, line, first, end - first);
        if (part.count > 0) out.push_back(part);
    };
    std::uint32_t start = piece.first;
    std::uint32_t const end = piece.first + piece.count;
    for (std::uint32_t i = piece.first; i < end; ++i) {
        bool const leader = page.words[i].dotLeader;
        if (leader || (i > start && page.words[i].box.x0 - page.words[i - 1].box.x1 >= gap)) {
            if (i > start) flush(start, i);
            start = leader ? i + 1 : i;
        }
    }
    if (start < end) flush(start, end);
}

}  // namespace standin::tables
