// Hand-made page contents for tests of layout and what follows it. Every character
// is half a font size wide and a space a quarter, so that places are easy to foresee.
//
//     PageMaker page(1);
//     page.text(50, 100, "V").text(55, 102, "CU", {.size = 6});
//     model::PageLayout const layout = layout::layOut(page.content());
#pragma once

#include <cstdint>
#include <string_view>

#include "model/page_content.h"
#include "text/utf8.h"

namespace standin::test {

enum class Spaces { Drawn, Moved };  // white space as glyphs, or as movement only

struct TextStyle {
    model::Points size = 10;
    bool bold = false;
    std::uint32_t colour = 0;
    bool invisible = false;
    model::Direction direction = model::Direction::Right;
    model::Points letterSpacing = 0;
    Spaces spaces = Spaces::Drawn;
    std::uint16_t font = 0;  // 0: by `bold`; else index of a font added by the test
};

class PageMaker {
public:
    explicit PageMaker(int page, model::Points width = 600, model::Points height = 800) {
        m_content.page = page;
        m_content.width = width;
        m_content.height = height;
        model::Font plain;
        plain.name = "Plain";
        model::Font bold;
        bold.name = "Plain-Bold";
        bold.bold = true;
        model::Font signs;
        signs.name = "Signs";
        m_content.fonts = {plain, bold, signs};
    }

    // Text whose baseline starts at x, y. Directions Right, Down and Up.
    PageMaker& text(model::Points x, model::Points y, std::string_view utf8, TextStyle style = {}) {
        model::Points at = 0;
        for (std::size_t i = 0; i < utf8.size();) {
            char32_t const code = text::decodeNext(utf8, i);
            model::Points const wide = code == U' ' ? 0.25F * style.size : code >= 0x2E80 ? style.size : 0.5F * style.size;
            if (code != U' ' || style.spaces == Spaces::Drawn) glyph(x, y, at, wide, code, style);
            at += wide + style.letterSpacing;
        }
        return *this;
    }

    PageMaker& horizontal(model::Points x0, model::Points x1, model::Points y) {
        m_content.rules.push_back({model::Rule::Axis::Horizontal, {x0, y, x1, y}, 0, false});
        return *this;
    }
    PageMaker& vertical(model::Points x, model::Points y0, model::Points y1) {
        m_content.rules.push_back({model::Rule::Axis::Vertical, {x, y0, x, y1}, 0, false});
        return *this;
    }
    PageMaker& fill(model::Rect box, std::uint32_t colour) {
        m_content.fills.push_back({box, colour});
        return *this;
    }

    [[nodiscard]] model::PageContent const& content() const { return m_content; }

private:
    void glyph(model::Points x, model::Points y, model::Points at, model::Points wide, char32_t code, TextStyle const& style) {
        model::Points const up = 0.75F * style.size;
        model::Points const down = 0.25F * style.size;
        model::Glyph g;
        g.code = code;
        g.size = style.size;
        g.colour = style.colour;
        g.invisible = style.invisible;
        g.direction = style.direction;
        g.font = style.font != 0 ? style.font : style.bold ? 1 : 0;
        switch (style.direction) {
            case model::Direction::Down:
                g.box = {x - down, y + at, x + up, y + at + wide};
                g.origin = {x, y + at};
                break;
            case model::Direction::Up:
                g.box = {x - up, y - at - wide, x + down, y - at};
                g.origin = {x, y - at};
                break;
            default:
                g.box = {x + at, y - up, x + at + wide, y + down};
                g.origin = {x + at, y};
        }
        m_content.glyphs.push_back(g);
    }

    model::PageContent m_content;
};

}  // namespace standin::test
