// Poppler runs the page's program at 72 dots an inch with y down, so that its
// device space is our page space. drawChar() is the hot path: it does nothing
// but arithmetic and one table look-up; colours, clips, fonts and how their glyphs
// stand are remembered until the state changes. The advance that Poppler gives contains character and word
// spacing, which is taken off. Content of soft masks is not part of the page.
//
// Tested by tests/extractors/poppler/page_text_test.cpp and page_paint_test.cpp.
#include "extractors/poppler/page_device.h"

#include <algorithm>
#include <cmath>

#include <Gfx.h>
#include <GfxState.h>
#include <Stream.h>

#ifdef STANDIN_HAS_LCMS
#include <lcms2.h>
#endif

namespace standin::poppler {

using model::Direction;
using model::Glyph;
using model::Points;
using model::Rect;

namespace {

constexpr std::size_t kMaxGlyphs = 300000;       // of a page; a full one has 10 000
constexpr std::size_t kMaxPainted = 300000;       // strokes, fills, drawings, images of a page
constexpr std::size_t kMaxPathPoints = 2000000;   // of one path
constexpr double kFarAway = 1e6;                  // coordinates are kept within
constexpr double kSlant = 0.06;                   // tangent that still counts as along an axis
constexpr double kClipSlack = 0.5;                // of a point, at the edge of a clip

Points near(double value) {
    if (!(value > -kFarAway)) return static_cast<Points>(-kFarAway);  // NaN as well
    return static_cast<Points>(std::min(value, kFarAway));
}

// A vector of text space on the page.
template <class Vector, class TextMatrix, class Ctm>
Vector onPage(TextMatrix const& text, Ctm const& ctm, double x, double y) {
    double const ux = text[0] * x + text[2] * y;
    double const uy = text[1] * x + text[3] * y;
    return {ctm[0] * ux + ctm[2] * uy, ctm[1] * ux + ctm[3] * uy};
}

template <class Vector>
Direction directionOf(Vector along) {
    double const x = std::abs(along.x);
    double const y = std::abs(along.y);
    if (y <= kSlant * x) return along.x >= 0 ? Direction::Right : Direction::Left;
    if (x <= kSlant * y) return along.y >= 0 ? Direction::Down : Direction::Up;
    return Direction::Slanted;
}

Rect spanOf(double x0, double y0, double x1, double y1) {
    return {near(std::min(x0, x1)), near(std::min(y0, y1)), near(std::max(x0, x1)), near(std::max(y0, y1))};
}

// Colour as it shows on white paper.
std::uint32_t packed(GfxRGB const& rgb, double opacity) {
    auto const channel = [opacity](GfxColorComp value) {
        double const part = colToDbl(value) * opacity + (1 - opacity);
        return static_cast<std::uint32_t>(std::clamp(std::lround(part * 255), 0L, 255L));
    };
    return channel(rgb.r) << 16U | channel(rgb.g) << 8U | channel(rgb.b);
}

enum ShapeSeed : std::uint64_t { kShadingSeed = 0x51, kPatternSeed = 0x52 };

}  // namespace

PageDevice::PageDevice(FontTable& fonts, [[maybe_unused]] Profiles profiles) : m_fonts(fonts) {
#if defined(STANDIN_HAS_LCMS) && defined(USE_CMS)
    // Building a colour transform for each embedded profile of each page costs
    // up to a fifth of a pass. A profile without colours makes Poppler use the
    // plain colour space that stands beside the profile, which is near enough
    // to tell black from grey from red. For a display, though, Poppler builds four
    // transforms for each page, so that there is none where nothing asks for it.
    if (profiles == Profiles::Some) setDisplayProfile(make_GfxLCMSProfilePtr(cmsCreateNULLProfile()));
#endif
}

void PageDevice::begin(model::PageContent& page) {
    m_page = &page;
    m_page->glyphs.reserve(4096);
    m_graphics.clear();
    m_actualText.reset();
    m_groups.clear();
    m_softMaskDepth = 0;
    m_full = false;
    m_contradicted = false;
    m_textIsPaintedLater = false;
    m_stamp = m_fonts.nextStamp();
    forgetState();
}

void PageDevice::finish() {
    for (Glyph const& glyph : m_page->glyphs) {
        if (glyph.code == model::kUnknownCharacter && glyph.font < m_page->fonts.size()) m_page->fonts[glyph.font].unicodeKnown = false;
    }
    if (m_contradicted) {
        m_page->notes.push_back({m_page->page, "The file calls some printed digits by other digits; the printed ones are used."});
    }
    m_graphics.finish(*m_page);
    m_page = nullptr;
}

void PageDevice::forgetState() {
    m_current = nullptr;
    m_letteringKnown = false;
    m_clipKnown = false;
    m_fillColourKnown = false;
    m_strokeColourKnown = false;
}

void PageDevice::startPage(int, GfxState* state, XRef*) {
    if (state == nullptr) return;
    m_page->width = near(state->getPageWidth());
    m_page->height = near(state->getPageHeight());
}

FontEntry& PageDevice::currentFont(GfxState* state) {
    GfxFont* const font = state->getFont().get();
    if (m_current == nullptr || font != m_currentGfxFont) takeFont(font);
    return *m_current;
}

void PageDevice::takeFont(GfxFont* font) {
    m_currentGfxFont = font;
    m_current = &m_fonts.entry(*font);
    m_letteringKnown = false;
    if (m_current->pageStamp == m_stamp) return;
    m_current->pageStamp = m_stamp;
    m_current->pageIndex = static_cast<std::uint16_t>(std::min<std::size_t>(m_page->fonts.size(), 0xFFFF));
    if (m_page->fonts.size() <= 0xFFFF) m_page->fonts.push_back(m_current->font());
}

std::uint32_t PageDevice::fillColour(GfxState* state) {
    if (!m_fillColourKnown) {
        GfxRGB rgb{};
        state->getFillRGB(&rgb);
        m_fillColour = packed(rgb, std::clamp(state->getFillOpacity(), 0.0, 1.0));
        m_fillColourKnown = true;
    }
    return m_fillColour;
}

std::uint32_t PageDevice::strokeColour(GfxState* state) {
    if (!m_strokeColourKnown) {
        GfxRGB rgb{};
        state->getStrokeRGB(&rgb);
        m_strokeColour = packed(rgb, std::clamp(state->getStrokeOpacity(), 0.0, 1.0));
        m_strokeColourKnown = true;
    }
    return m_strokeColour;
}

Rect const& PageDevice::clipOf(GfxState const* state) {
    if (m_clipKnown) return m_clip;
    double x0 = 0;
    double y0 = 0;
    double x1 = 0;
    double y1 = 0;
    state->getClipBBox(&x0, &y0, &x1, &y1);
    m_clipKnown = true;
    // Not sorted on purpose: an inverted box is an empty clip.
    return m_clip = {near(std::max(x0, 0.0)), near(std::max(y0, 0.0)), near(std::min(x1, static_cast<double>(m_page->width))),
                     near(std::min(y1, static_cast<double>(m_page->height)))};
}

Paint PageDevice::paintOf(GfxState* state, std::uint32_t colour, double opacity) {
    bool const opaque = opacity >= 1 && state->getBlendMode() == gfxBlendNormal && m_groups.empty();
    return {colour, opaque ? Opacity::Opaque : Opacity::SeeThrough, clipOf(state), static_cast<std::uint32_t>(m_page->glyphs.size())};
}

void PageDevice::takePath(GfxState const* state) {
    m_path.clear();
    auto const& ctm = state->getCTM();
    GfxPath const* path = state->getPath();
    for (int s = 0; s < path->getNumSubpaths(); ++s) {
        GfxSubpath const* part = path->getSubpath(s);
        int const count = part->getNumPoints();
        if (m_path.points.size() + static_cast<std::size_t>(count) > kMaxPathPoints) return;
        m_path.starts.push_back(m_path.points.size());
        for (int i = 0; i < count; ++i) {
            double const x = part->getX(i);
            double const y = part->getY(i);
            // A curve's end is not marked by Poppler: it follows two control points.
            bool const curve = part->getCurve(i) || (i > 0 && part->getCurve(i - 1));
            m_path.points.push_back({near(ctm[0] * x + ctm[2] * y + ctm[4]), near(ctm[1] * x + ctm[3] * y + ctm[5]), curve});
        }
    }
}

void PageDevice::stroke(GfxState* state) {
    m_textIsPaintedLater = false;
    double const opacity = state->getStrokeOpacity();
    if (ignoring() || m_full || opacity <= 0) return;
    if (m_graphics.count() > kMaxPainted) {
        m_full = true;
        return;
    }
    takePath(state);
    auto const& ctm = state->getCTM();
    double const width = std::abs(state->getLineWidth());
    double dashStart = 0;
    auto const& dash = state->getLineDash(&dashStart);
    bool const dashed = std::any_of(dash.begin(), dash.end(), [](double length) { return length > 0; });
    Pen pen;
    pen.horizontalWidth = near(width * std::hypot(ctm[1], ctm[3]));
    pen.verticalWidth = near(width * std::hypot(ctm[0], ctm[2]));
    pen.dashes = dashed ? Dashes::Some : Dashes::None;
    pen.caps = state->getLineCap() == 0 ? Caps::Butt : Caps::Projecting;
    m_graphics.stroke(m_path, pen, paintOf(state, strokeColour(state), opacity));
}

void PageDevice::fillPath(GfxState* state) {
    m_textIsPaintedLater = false;
    double const opacity = state->getFillOpacity();
    if (ignoring() || m_full || opacity <= 0) return;
    if (m_graphics.count() > kMaxPainted) {
        m_full = true;
        return;
    }
    takePath(state);
    m_graphics.fill(m_path, paintOf(state, fillColour(state), opacity));
}

void PageDevice::fill(GfxState* state) { fillPath(state); }
void PageDevice::eoFill(GfxState* state) { fillPath(state); }

// Patterns and shadings fill the clip, which Poppler has set to the path.
void PageDevice::paintClip(GfxState* state, std::uint32_t colour, bool colourKnown, std::uint64_t shape) {
    if (ignoring() || m_full) return;
    if (m_textIsPaintedLater) {
        m_textIsPaintedLater = false;  // this is the paint of the text just shown
        return;
    }
    Paint const paint = paintOf(state, colour, state->getFillOpacity());
    if (paint.clip.x1 < paint.clip.x0 || paint.clip.y1 < paint.clip.y0) return;
    if (colourKnown) {
        m_graphics.area(paint.clip, paint);
    } else {
        m_graphics.drawing(paint.clip, shape, paint);
    }
}

bool PageDevice::tilingPatternFill(GfxState* state, Gfx*, Catalog*, GfxTilingPattern* pattern, double const*, int, int, int, int, double, double) {
    double const* box = pattern->getBBox();
    auto const shape = static_cast<std::uint64_t>(std::lround(std::clamp(box[2] - box[0], 0.0, kFarAway) * 16)) << 20U ^
                       static_cast<std::uint64_t>(std::lround(std::clamp(box[3] - box[1], 0.0, kFarAway) * 16)) ^ kPatternSeed;
    paintClip(state, 0, false, shape);
    return true;
}

bool PageDevice::functionShadedFill(GfxState* state, GfxFunctionShading*) {
    paintClip(state, 0, false, kShadingSeed);
    return true;
}

// The colour half way along the shading stands for all of it.
static std::uint32_t middleColour(GfxUnivariateShading& shading, double from, double to, double opacity) {
    GfxColor colour{};
    shading.getColor((from + to) / 2, &colour);
    GfxRGB rgb{};
    shading.getColorSpace()->getRGB(&colour, &rgb);
    return packed(rgb, std::clamp(opacity, 0.0, 1.0));
}

bool PageDevice::axialShadedFill(GfxState* state, GfxAxialShading* shading, double, double) {
    paintClip(state, middleColour(*shading, shading->getDomain0(), shading->getDomain1(), state->getFillOpacity()), true, kShadingSeed);
    return true;
}

bool PageDevice::radialShadedFill(GfxState* state, GfxRadialShading* shading, double, double) {
    paintClip(state, middleColour(*shading, shading->getDomain0(), shading->getDomain1(), state->getFillOpacity()), true, kShadingSeed);
    return true;
}

bool PageDevice::gouraudTriangleShadedFill(GfxState* state, GfxGouraudTriangleShading*) {
    paintClip(state, 0, false, kShadingSeed);
    return true;
}

bool PageDevice::patchMeshShadedFill(GfxState* state, GfxPatchMeshShading*) {
    paintClip(state, 0, false, kShadingSeed);
    return true;
}

// A glyph of several characters, as a glyph for each.
void PageDevice::addParts(Glyph const& glyph, Decoded const& text) {
    auto const count = static_cast<Points>(text.count);
    Points const width = glyph.box.width();
    Points const height = glyph.box.height();
    for (std::uint8_t i = 0; i < text.count; ++i) {
        Glyph part = glyph;
        part.code = text.codes[i];
        auto const from = static_cast<Points>(i) / count;
        auto const to = static_cast<Points>(i + 1) / count;
        switch (glyph.direction) {
            case Direction::Down:
                part.box.y0 = glyph.box.y0 + from * height;
                part.box.y1 = glyph.box.y0 + to * height;
                part.origin.y += from * height;
                break;
            case Direction::Up:
                part.box.y0 = glyph.box.y1 - to * height;
                part.box.y1 = glyph.box.y1 - from * height;
                part.origin.y -= from * height;
                break;
            case Direction::Left:
                part.box.x0 = glyph.box.x1 - to * width;
                part.box.x1 = glyph.box.x1 - from * width;
                part.origin.x -= from * width;
                break;
            case Direction::Right:
            case Direction::Slanted:
                part.box.x0 = glyph.box.x0 + from * width;
                part.box.x1 = glyph.box.x0 + to * width;
                part.origin.x += from * width;
                break;
        }
        m_page->glyphs.push_back(part);
    }
}

PageDevice::Lettering const& PageDevice::lettering(GfxState* state, FontEntry const& font) {
    if (m_letteringKnown) return m_lettering;
    m_letteringKnown = true;
    auto const& ctm = state->getCTM();
    auto const& matrix = state->getTextMat();
    Lettering& look = m_lettering;
    double const size = state->getFontSize() * font.scale();
    auto const up = onPage<Vector>(matrix, ctm, 0, size);
    look.vertical = !font.font().type3 && state->getFont()->getWMode() != 0;
    look.direction = directionOf(look.vertical ? Vector{-up.x, -up.y} : onPage<Vector>(matrix, ctm, state->getFontSize() * state->getHorizScaling(), 0));
    look.top = {up.x * font.ascent(), up.y * font.ascent()};
    look.bottom = {up.x * font.descent(), up.y * font.descent()};
    look.half = onPage<Vector>(matrix, ctm, size / 2, 0);
    bool const level = !look.vertical && (look.direction == Direction::Right || look.direction == Direction::Left);
    bool const upright = !look.vertical && (look.direction == Direction::Up || look.direction == Direction::Down);
    look.size = near(level ? std::abs(up.y) : upright ? std::abs(up.x) : std::hypot(up.x, up.y));
    return look;
}

// The box of a glyph whose origin is `start`.
void PageDevice::placeGlyph(Glyph& glyph, Lettering const& lettering, Vector start, Vector along) const {
    Vector const top = lettering.top;
    Vector const bottom = lettering.bottom;
    switch (lettering.direction) {
        case Direction::Right:
        case Direction::Left: glyph.box = spanOf(start.x, start.y + top.y, start.x + along.x, start.y + bottom.y); break;
        case Direction::Up:
        case Direction::Down: glyph.box = spanOf(start.x + top.x, start.y, start.x + bottom.x, start.y + along.y); break;
        case Direction::Slanted: {
            Rect const low = spanOf(start.x + bottom.x, start.y + bottom.y, start.x + bottom.x + along.x, start.y + bottom.y + along.y);
            Rect const high = spanOf(start.x + top.x, start.y + top.y, start.x + top.x + along.x, start.y + top.y + along.y);
            glyph.box = {std::min(low.x0, high.x0), std::min(low.y0, high.y0), std::max(low.x1, high.x1), std::max(low.y1, high.y1)};
            break;
        }
    }
}

// The middle band of the glyph decides: boxes of fonts reach into their neighbours.
bool PageDevice::liesOutside(Glyph const& glyph, Rect const& clip) {
    Points const bandX = glyph.direction == Direction::Up || glyph.direction == Direction::Down ? glyph.box.width() / 4 : 0;
    Points const bandY = bandX == 0 ? glyph.box.height() / 4 : 0;
    auto const slack = static_cast<Points>(kClipSlack);
    return glyph.box.x1 - bandX < clip.x0 - slack || glyph.box.x0 + bandX > clip.x1 + slack || glyph.box.y1 - bandY < clip.y0 - slack || glyph.box.y0 + bandY > clip.y1 + slack;
}

void PageDevice::drawChar(GfxState* state, double x, double y, double dx, double dy, double originX, double originY, CharCode code, int nBytes,
                          Unicode const* u, int uLen) {
    if (ignoring() || m_full) return;
    if (m_page->glyphs.size() >= kMaxGlyphs) {
        m_full = true;
        return;
    }
    FontEntry& font = currentFont(state);
    Decoded const& text = font.decode(code, u, uLen);
    if (text.contradicted) m_contradicted = true;
    Lettering const& look = lettering(state, font);
    auto const& ctm = state->getCTM();

    // Spacing belongs to the gap, not to the glyph.
    double spacing = state->getCharSpace();
    if (nBytes == 1 && (code == 0x20 || text.codes[0] == U' ')) spacing += state->getWordSpace();
    if (spacing != 0) {
        auto const& matrix = state->getTextMat();
        if (look.vertical) {
            dx -= matrix[2] * spacing;
            dy -= matrix[3] * spacing;
        } else {
            spacing *= state->getHorizScaling();
            dx -= matrix[0] * spacing;
            dy -= matrix[1] * spacing;
        }
    }

    Vector const along{ctm[0] * dx + ctm[2] * dy, ctm[1] * dx + ctm[3] * dy};
    Vector const start{ctm[0] * x + ctm[2] * y + ctm[4], ctm[1] * x + ctm[3] * y + ctm[5]};

    Glyph glyph;
    glyph.vertical = look.vertical;
    glyph.direction = look.direction;
    glyph.font = font.pageIndex;
    glyph.size = look.size;
    if (look.vertical) {
        // The origin of vertical writing is at the top, in the middle of the glyph.
        Vector const origin{ctm[0] * originX + ctm[2] * originY, ctm[1] * originX + ctm[3] * originY};
        Vector const half = look.half;
        glyph.origin = {near(start.x - origin.x), near(start.y - origin.y)};
        bool const upright = std::abs(half.x) >= std::abs(half.y);
        glyph.box = upright ? spanOf(start.x - half.x, start.y, start.x + half.x, start.y + along.y) : spanOf(start.x, start.y - half.y, start.x + along.x, start.y + half.y);
    } else {
        glyph.origin = {near(start.x), near(start.y)};
        placeGlyph(glyph, look, start, along);
    }

    int const mode = state->getRender() & 7;
    bool const strokes = mode == 1 || mode == 5;
    glyph.colour = strokes ? strokeColour(state) : fillColour(state);
    // Text filled with a pattern comes as a clip; the pattern follows.
    bool const patterned = mode == 7 && state->getFillColorSpace()->getMode() == csPattern;
    if (patterned) m_textIsPaintedLater = true;
    glyph.invisible = mode == 3 || (mode == 7 && !patterned) || (strokes ? state->getStrokeOpacity() : state->getFillOpacity()) <= 0;

    Rect const& clip = clipOf(state);
    if (!clip.contains(glyph.box)) glyph.outside = liesOutside(glyph, clip);
    if (text.count == 1) {
        glyph.code = text.codes[0];
        m_page->glyphs.push_back(glyph);
    } else {
        addParts(glyph, text);
    }
}

void PageDevice::takeImage(GfxState* state, int width, int height, std::uint64_t content, std::uint32_t colour, Opacity opacity) {
    m_textIsPaintedLater = false;
    if (ignoring() || m_full) return;
    if (m_graphics.count() > kMaxPainted) {
        m_full = true;
        return;
    }
    auto const& ctm = state->getCTM();
    Rect const box = {near(ctm[4] + std::min(ctm[0], 0.0) + std::min(ctm[2], 0.0)), near(ctm[5] + std::min(ctm[1], 0.0) + std::min(ctm[3], 0.0)),
                      near(ctm[4] + std::max(ctm[0], 0.0) + std::max(ctm[2], 0.0)), near(ctm[5] + std::max(ctm[1], 0.0) + std::max(ctm[3], 0.0))};
    Paint paint = paintOf(state, colour, state->getFillOpacity());
    if (opacity == Opacity::SeeThrough) paint.opacity = Opacity::SeeThrough;
    m_graphics.image({box, width, height, content}, paint);
}

// The data of an inline image has to be read off the page's program.
void PageDevice::drawImageMask(GfxState* state, Object* ref, Stream* str, int width, int height, bool, bool, bool inlineImg) {
    auto const length = (static_cast<std::uint64_t>(std::max(0, width)) + 7) / 8 * static_cast<std::uint64_t>(std::max(0, height));
    std::uint64_t const content = inlineImg ? ImageContents::takeInline(*str, length) : m_imageContents.of(ref, *str);
    takeImage(state, width, height, content, fillColour(state), Opacity::SeeThrough);
}

void PageDevice::drawImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap* colorMap, bool, int const* maskColors, bool inlineImg) {
    std::uint64_t content = 0;
    if (inlineImg) {
        auto const bits = static_cast<std::uint64_t>(std::max(0, width)) * static_cast<std::uint64_t>(colorMap->getNumPixelComps()) * static_cast<std::uint64_t>(colorMap->getBits());
        content = ImageContents::takeInline(*str, (bits + 7) / 8 * static_cast<std::uint64_t>(std::max(0, height)));
    } else {
        content = m_imageContents.of(ref, *str);
    }
    takeImage(state, width, height, content, 0, maskColors != nullptr ? Opacity::SeeThrough : Opacity::Opaque);
}

void PageDevice::drawMaskedImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap*, bool, Stream*, int, int, bool, bool) {
    takeImage(state, width, height, m_imageContents.of(ref, *str), 0, Opacity::SeeThrough);
}

void PageDevice::drawSoftMaskedImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap*, bool, Stream*, int, int,
                                     GfxImageColorMap*, bool) {
    takeImage(state, width, height, m_imageContents.of(ref, *str), 0, Opacity::SeeThrough);
}

void PageDevice::setSoftMaskFromImageMask(GfxState* state, Object* ref, Stream* str, int width, int height, bool invert, bool inlineImg, double*) {
    drawImageMask(state, ref, str, width, height, invert, false, inlineImg);
}

void PageDevice::beginTransparencyGroup(GfxState*, GroupBox, GfxColorSpace*, bool, bool, bool forSoftMask) {
    m_groups.push_back(forSoftMask);
    if (forSoftMask) ++m_softMaskDepth;
    forgetState();
}

void PageDevice::endTransparencyGroup(GfxState*) {
    if (m_groups.empty()) return;
    if (m_groups.back()) --m_softMaskDepth;
    m_groups.pop_back();
    forgetState();
}

void PageDevice::beginActualText(GfxState*, ActualTextString text) {
    if (ignoring()) return;
#if STANDIN_POPPLER_VERSION >= 2604
    std::string const& bytes = text;
#else
    std::string const bytes = text != nullptr ? text->toStr() : std::string{};
#endif
    if (!m_actualText.active()) m_graphics.startWatching();
    m_actualText.begin(charactersOfTextString(bytes), *m_page);
}

void PageDevice::endActualText(GfxState*) {
    if (ignoring()) return;
    m_actualText.end(*m_page, m_graphics.watched());
}

}  // namespace standin::poppler
