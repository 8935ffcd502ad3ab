// At the end of a stretch its glyphs are compared with the replacement. Equal
// apart from spaces: nothing to do. Else, if the digits agree or the glyphs are
// not known, the replacement is laid over the glyphs: one by one where the
// numbers of characters agree, in equal parts of the whole box otherwise (only
// within one line).
//
// Tested by tests/extractors/poppler/actual_text_test.cpp.
#include "extractors/poppler/actual_text.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace standin::poppler {

using model::Glyph;
using model::PageContent;
using model::Points;
using model::Rect;

namespace {

constexpr std::size_t kLongest = 4000;
constexpr std::size_t kQuoted = 24;      // characters quoted in a note
constexpr Points kSameBaseline = 0.3F;   // of the size
constexpr std::size_t kMostNotes = 50;

// PDFDocEncoding where it differs from Latin 1.
constexpr char16_t kDocLow[8] = {0x02D8, 0x02C7, 0x02C6, 0x02D9, 0x02DD, 0x02DB, 0x02DA, 0x02DC};  // 0x18 to 0x1F
constexpr char16_t kDocHigh[33] = {0x2022, 0x2020, 0x2021, 0x2026, 0x2014, 0x2013, 0x0192, 0x2044, 0x2039, 0x203A, 0x2212,
                                   0x2030, 0x201E, 0x201C, 0x201D, 0x2018, 0x2019, 0x201A, 0x2122, 0xFB01, 0xFB02, 0x0141,
                                   0x0152, 0x0160, 0x0178, 0x017D, 0x0131, 0x0142, 0x0153, 0x0161, 0x017E, 0xFFFD, 0x20AC};  // 0x80 to 0xA0

char32_t ofDocEncoding(unsigned char byte) {
    if (byte >= 0x18 && byte <= 0x1F) return kDocLow[byte - 0x18];
    if (byte >= 0x80 && byte <= 0xA0) return kDocHigh[byte - 0x80];
    return byte;
}

std::u32string ofUtf16(std::string_view bytes, bool bigEndian) {
    std::u32string out;
    auto const unit = [&](std::size_t i) -> char32_t {
        auto const a = static_cast<unsigned char>(bytes[i]);
        auto const b = static_cast<unsigned char>(bytes[i + 1]);
        return bigEndian ? a * 256U + b : b * 256U + a;
    };
    for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
        char32_t const high = unit(i);
        if (high >= 0xD800 && high < 0xDC00 && i + 3 < bytes.size()) {
            char32_t const low = unit(i + 2);
            if (low >= 0xDC00 && low < 0xE000) {
                out += 0x10000 + (high - 0xD800) * 0x400 + (low - 0xDC00);
                i += 2;
                continue;
            }
        }
        out += high >= 0xD800 && high < 0xE000 ? model::kUnknownCharacter : high;
    }
    return out;
}

std::u32string ofUtf8(std::string_view bytes) {
    std::u32string out;
    std::size_t i = 0;
    while (i < bytes.size()) {
        auto const lead = static_cast<unsigned char>(bytes[i]);
        std::size_t const length = lead < 0x80 ? 1 : lead >= 0xC2 && lead < 0xE0 ? 2 : lead >= 0xE0 && lead < 0xF0 ? 3 : lead >= 0xF0 && lead < 0xF5 ? 4 : 0;
        char32_t code = length == 1 ? lead : lead & (0x7FU >> length);
        bool good = length > 0 && i + length <= bytes.size();
        for (std::size_t k = 1; good && k < length; ++k) {
            auto const next = static_cast<unsigned char>(bytes[i + k]);
            good = (next & 0xC0U) == 0x80;
            code = code << 6U | (next & 0x3FU);
        }
        good = good && (length != 3 || code >= 0x800) && (length != 4 || (code >= 0x10000 && code < 0x110000)) && (code < 0xD800 || code > 0xDFFF);
        out += good ? code : model::kUnknownCharacter;
        i += good ? length : 1;
    }
    return out;
}

// A language mark (ESC, code, ESC) inside a UTF-16 string is no text.
std::u32string withoutEscapes(std::u32string const& text) {
    std::u32string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == 0x1B) {
            std::size_t const end = text.find(char32_t{0x1B}, i + 1);
            if (end == std::u32string::npos || end - i > 8) continue;
            i = end;
            continue;
        }
        out += text[i];
    }
    return out;
}

bool isGap(char32_t c) { return c <= 0x20 || c == 0xA0 || (c >= 0x2000 && c <= 0x200B) || c == 0x3000 || c == 0xFEFF; }
bool isDigit(char32_t c) { return c >= U'0' && c <= U'9'; }

std::u32string withoutGaps(std::u32string_view text) {
    std::u32string out;
    for (char32_t c : text) {
        if (!isGap(c)) out += c;
    }
    return out;
}

std::u32string digitsOf(std::u32string_view text) {
    std::u32string out;
    for (char32_t c : text) {
        if (isDigit(c)) out += c;
    }
    return out;
}

bool onOneLine(PageContent const& page, std::size_t first) {
    Glyph const& lead = page.glyphs[first];
    for (std::size_t i = first; i < page.glyphs.size(); ++i) {
        Glyph const& glyph = page.glyphs[i];
        bool const sideways = lead.direction == model::Direction::Up || lead.direction == model::Direction::Down;
        Points const off = sideways ? glyph.origin.x - lead.origin.x : glyph.origin.y - lead.origin.y;
        if (glyph.direction != lead.direction || std::abs(off) > kSameBaseline * std::max(lead.size, 1.0F)) return false;
    }
    return true;
}

// Lays `text` over `box` in equal parts, along the direction of `like`.
void layOver(PageContent& page, std::u32string const& text, Rect const& box, Glyph like) {
    like.fromActualText = true;
    auto const count = static_cast<Points>(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        auto const from = static_cast<Points>(i) / count;
        auto const to = static_cast<Points>(i + 1) / count;
        like.code = text[i];
        like.box = box;
        switch (like.direction) {
            case model::Direction::Down:
                like.box.y0 = box.y0 + from * box.height();
                like.box.y1 = box.y0 + to * box.height();
                like.origin.y = like.box.y0;
                break;
            case model::Direction::Up:
                like.box.y0 = box.y1 - to * box.height();
                like.box.y1 = box.y1 - from * box.height();
                like.origin.y = like.box.y1;
                break;
            case model::Direction::Left:
                like.box.x0 = box.x1 - to * box.width();
                like.box.x1 = box.x1 - from * box.width();
                like.origin.x = like.box.x1;
                break;
            default:
                like.box.x0 = box.x0 + from * box.width();
                like.box.x1 = box.x0 + to * box.width();
                like.origin.x = like.box.x0;
                break;
        }
        page.glyphs.push_back(like);
    }
}

std::string quoted(std::u32string const& text) {
    return text.size() <= kQuoted ? utf8(text) : utf8(text.substr(0, kQuoted)) + "\xE2\x80\xA6";
}

}  // namespace

std::u32string charactersOfTextString(std::string_view bytes) {
    if (bytes.size() >= 2 && bytes[0] == '\xFE' && bytes[1] == '\xFF') return withoutEscapes(ofUtf16(bytes.substr(2), true));
    if (bytes.size() >= 2 && bytes[0] == '\xFF' && bytes[1] == '\xFE') return withoutEscapes(ofUtf16(bytes.substr(2), false));
    if (bytes.size() >= 3 && bytes.substr(0, 3) == "\xEF\xBB\xBF") return ofUtf8(bytes.substr(3));
    std::u32string out;
    for (char c : bytes) out += ofDocEncoding(static_cast<unsigned char>(c));
    return out;
}

std::string utf8(std::u32string_view text) {
    std::string out;
    for (char32_t c : text) {
        if (c >= 0x110000 || (c >= 0xD800 && c < 0xE000)) c = model::kUnknownCharacter;
        auto const low = [c](unsigned shift) { return static_cast<char>(0x80U | (c >> shift & 0x3FU)); };
        if (c < 0x80) {
            out += static_cast<char>(c);
        } else if (c < 0x800) {
            out += {static_cast<char>(0xC0U | c >> 6U), low(0)};
        } else if (c < 0x10000) {
            out += {static_cast<char>(0xE0U | c >> 12U), low(6), low(0)};
        } else {
            out += {static_cast<char>(0xF0U | c >> 18U), low(12), low(6), low(0)};
        }
    }
    return out;
}

std::string utf8OfTextString(std::string_view bytes) {
    std::u32string out;
    for (char32_t c : charactersOfTextString(bytes.substr(0, kLongest))) {
        if (c < 0x20 || (c >= 0x7F && c < 0xA0)) c = U' ';
        out += c;
    }
    while (!out.empty() && out.back() == U' ') out.pop_back();
    return utf8(out.substr(std::min(out.find_first_not_of(U' '), out.size())));
}

void ActualTextSpan::begin(std::u32string text, PageContent const& page) {
    if (m_depth++ > 0) return;
    if (text.size() > kLongest) text.resize(kLongest);
    m_text = std::move(text);
    m_first = page.glyphs.size();
}

void ActualTextSpan::end(PageContent& page, Rect const& drawn) {
    if (m_depth == 0 || --m_depth > 0) return;
    std::u32string wanted;
    for (char32_t c : m_text) wanted += c < 0x20 ? U' ' : c;
    while (!wanted.empty() && isGap(wanted.back())) wanted.pop_back();
    if (wanted.empty() || withoutGaps(wanted).empty()) return;

    if (m_first >= page.glyphs.size()) {
        // Text drawn as outlines. What it reads is known from the replacement alone.
        if (drawn.empty() || page.fonts.size() >= 0xFFFF) return;
        model::Font outlines;
        page.fonts.push_back(outlines);
        Glyph like;
        like.font = static_cast<std::uint16_t>(page.fonts.size() - 1);
        like.size = drawn.height();
        like.origin = {drawn.x0, drawn.y1};
        layOver(page, wanted, drawn, like);
        return;
    }

    std::u32string printed;
    for (std::size_t i = m_first; i < page.glyphs.size(); ++i) printed += page.glyphs[i].code;
    if (withoutGaps(printed) == withoutGaps(wanted)) return;
    bool const known = printed.find(model::kUnknownCharacter) == std::u32string::npos;
    if (known && digitsOf(printed) != digitsOf(wanted)) {
        if (page.notes.size() < kMostNotes) {
            page.notes.push_back({page.page, fmt::format("The printed text \"{}\" is said to read \"{}\" by the file; the printed one is used.",
                                                         quoted(printed), quoted(wanted))});
        }
        return;
    }
    if (!onOneLine(page, m_first)) return;
    if (printed.size() == wanted.size()) {
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            Glyph& glyph = page.glyphs[m_first + i];
            glyph.fromActualText = glyph.fromActualText || glyph.code != wanted[i];
            glyph.code = wanted[i];
        }
        return;
    }
    Rect box = page.glyphs[m_first].box;
    for (std::size_t i = m_first; i < page.glyphs.size(); ++i) box = united(box, page.glyphs[i].box);
    Glyph const like = page.glyphs[m_first];
    page.glyphs.resize(m_first);
    layOver(page, wanted, box, like);
}

}  // namespace standin::poppler
