// What is drawn on one page, as one pass over the PDF gives it: glyphs, ruling
// lines, fills, images and other drawings. Made by extractors/poppler/, read by
// extractors/layout/ and extractors/tables/. Nothing here knows of words.
//
// Coordinates: geometry.h (points, top left, y down, crop box and rotation
// applied). Order of every list: as drawn.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "model/geometry.h"

namespace standin::model {

// Reading direction of a glyph's baseline on the displayed page.
enum class Direction : std::uint8_t { Right, Down, Left, Up, Slanted };

// A glyph whose Unicode is not known carries this code point.
inline constexpr char32_t kUnknownCharacter = U'\uFFFD';

// One character as drawn. A glyph that stands for several characters (a
// ligature) is given as several entries that share its box in equal parts.
struct Glyph {
    char32_t code = kUnknownCharacter;  // after ToUnicode, glyph names, ActualText
    Rect box;                           // advance width (spacing taken off) by ascent and descent of the font
    Point origin;                       // on the baseline, at the start of the glyph
    Points size = 0;                    // font size as displayed
    std::uint32_t colour = 0;           // fill colour, 0xRRGGBB
    std::uint16_t font = 0;             // index into PageContent::fonts
    Direction direction = Direction::Right;
    bool invisible : 1 = false;   // render mode 3 or 7: an OCR layer, or hidden text
    bool outside : 1 = false;     // outside the crop box or clipped away entirely
    bool fromActualText : 1 = false;
    bool vertical : 1 = false;    // vertical writing mode
};

struct Font {
    std::string name;       // without the subset prefix; may be empty (Type 3)
    bool bold = false;
    bool italic = false;
    bool monospaced = false;
    bool symbolic = false;  // a symbol font: letters may stand for signs
    bool type3 = false;
    bool embedded = true;
    bool unicodeKnown = true;  // false: no ToUnicode, no usable encoding or glyph names
    bool recognised = false;   // no font of the page: its glyphs were recognised in a picture (model/recognition.h)
};

// A straight horizontal or vertical line as a reader sees it: a stroke, a thin
// fill, or the visible edge of one box over another.
struct Rule {
    enum class Axis : std::uint8_t { Horizontal, Vertical };
    Axis axis = Axis::Horizontal;
    Rect box;  // its thickness is the thin side; may be zero
    std::uint32_t colour = 0;
    bool dashed = false;
};

// An area filled with one colour (a shaded head row, a background, a bar).
struct Fill {
    Rect box;
    std::uint32_t colour = 0xFFFFFF;
};

struct Image {
    Rect box;
    int pixelWidth = 0;
    int pixelHeight = 0;
    std::uint64_t content = 0;  // a number for its stored bytes, for comparing
};

// Any drawing that is neither a rule nor a plain fill: curves, slanted lines,
// shadings. `shape` is a hash of the path relative to its box, for comparing.
struct Drawing {
    Rect box;
    std::uint64_t shape = 0;
};

// Trouble met while reading, for the user: one sentence.
struct Note {
    int page = 0;  // 0: the whole document
    std::string text;
    bool operator==(Note const&) const = default;
};

struct PageContent {
    int page = 0;  // from 1
    Points width = 0;
    Points height = 0;
    int rotation = 0;  // the page's /Rotate, already applied
    std::vector<Font> fonts;
    std::vector<Glyph> glyphs;
    std::vector<Rule> rules;
    std::vector<Fill> fills;
    std::vector<Image> images;
    std::vector<Drawing> drawings;
    std::vector<Note> notes;
};

}  // namespace standin::model
