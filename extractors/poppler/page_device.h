// The device that Poppler draws a page on: takes down glyphs and painted paths
// as plain values. Private to extractors/poppler/; includes Poppler.
//
//     PageDevice device(fonts, PageDevice::Profiles::Some);  // kept for many pages
//     device.begin(page);
//     document.displayPage(&device, number, 72, 72, 0, false, true, false, ...);
//     device.finish();
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <OutputDev.h>

#include "extractors/poppler/actual_text.h"
#include "extractors/poppler/font_table.h"
#include "extractors/poppler/image_content.h"
#include "extractors/poppler/page_graphics.h"
#include "extractors/poppler/poppler_compat.h"
#include "model/page_content.h"

namespace standin::poppler {

class PageDevice final : public OutputDev {
public:
    // Whether the document may have colours that come with a profile.
    enum class Profiles : std::uint8_t { None, Some };
    PageDevice(FontTable& fonts, Profiles profiles);

    // Collects into `page` until finish().
    void begin(model::PageContent& page);
    void finish();

    // True once the page has drawn more than is taken down; the rest is lost
    // and a note says so.
    [[nodiscard]] bool full() const { return m_full; }

    bool upsideDown() override { return true; }
    bool useDrawChar() override { return true; }
    bool useTilingPatternFill() override { return true; }
    bool useShadedFills(int) override { return true; }
    bool interpretType3Chars() override { return false; }

    void startPage(int pageNum, GfxState* state, XRef* xref) override;
    void saveState(GfxState*) override {}
    void restoreState(GfxState*) override { forgetState(); }
    void updateFont(GfxState*) override { m_current = nullptr; }
    void updateTextMat(GfxState*) override { m_letteringKnown = false; }
    void updateHorizScaling(GfxState*) override { m_letteringKnown = false; }
    void updateCTM(GfxState*, double, double, double, double, double, double) override { m_letteringKnown = false; }
    void updateFillColor(GfxState*) override { m_fillColourKnown = false; }
    void updateFillColorSpace(GfxState*) override { m_fillColourKnown = false; }
    void updateStrokeColor(GfxState*) override { m_strokeColourKnown = false; }
    void updateStrokeColorSpace(GfxState*) override { m_strokeColourKnown = false; }
    void updateFillOpacity(GfxState*) override { m_fillColourKnown = false; }
    void updateStrokeOpacity(GfxState*) override { m_strokeColourKnown = false; }

    void clip(GfxState*) override { m_clipKnown = false; }
    void eoClip(GfxState*) override { m_clipKnown = false; }
    void clipToStrokePath(GfxState*) override { m_clipKnown = false; }

    void stroke(GfxState* state) override;
    void fill(GfxState* state) override;
    void eoFill(GfxState* state) override;
    bool tilingPatternFill(GfxState* state, Gfx* gfx, Catalog* catalog, GfxTilingPattern* pattern, double const* matrix, int x0, int y0, int x1,
                           int y1, double xStep, double yStep) override;
    bool functionShadedFill(GfxState* state, GfxFunctionShading* shading) override;
    bool axialShadedFill(GfxState* state, GfxAxialShading* shading, double tMin, double tMax) override;
    bool radialShadedFill(GfxState* state, GfxRadialShading* shading, double sMin, double sMax) override;
    bool gouraudTriangleShadedFill(GfxState* state, GfxGouraudTriangleShading* shading) override;
    bool patchMeshShadedFill(GfxState* state, GfxPatchMeshShading* shading) override;

    void beginString(GfxState*, GooString const*) override { m_textIsPaintedLater = false; }
    void drawChar(GfxState* state, double x, double y, double dx, double dy, double originX, double originY, CharCode code, int nBytes,
                  Unicode const* u, int uLen) override;
    void beginActualText(GfxState* state, ActualTextString text) override;
    void endActualText(GfxState* state) override;

    void drawImageMask(GfxState* state, Object* ref, Stream* str, int width, int height, bool invert, bool interpolate, bool inlineImg) override;
    void drawImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap* colorMap, bool interpolate,
                   int const* maskColors, bool inlineImg) override;
    void drawMaskedImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap* colorMap, bool interpolate,
                         Stream* maskStr, int maskWidth, int maskHeight, bool maskInvert, bool maskInterpolate) override;
    void drawSoftMaskedImage(GfxState* state, Object* ref, Stream* str, int width, int height, GfxImageColorMap* colorMap, bool interpolate,
                             Stream* maskStr, int maskWidth, int maskHeight, GfxImageColorMap* maskColorMap, bool maskInterpolate) override;
    void setSoftMaskFromImageMask(GfxState* state, Object* ref, Stream* str, int width, int height, bool invert, bool inlineImg,
                                  double* baseMatrix) override;

    void beginTransparencyGroup(GfxState* state, GroupBox box, GfxColorSpace* blendingColorSpace, bool isolated, bool knockout,
                                bool forSoftMask) override;
    void endTransparencyGroup(GfxState* state) override;

private:
    struct Vector {
        double x = 0;
        double y = 0;
    };
    // How the glyphs of one font stand on the page until the font or a matrix changes.
    struct Lettering {
        bool vertical = false;
        model::Direction direction = model::Direction::Right;
        model::Points size = 0;
        Vector top;     // from the baseline to the top of the font's box
        Vector bottom;  // and to the bottom of it
        Vector half;    // of vertical writing: half a glyph's width
    };

    void forgetState();
    [[nodiscard]] Lettering const& lettering(GfxState* state, FontEntry const& font);
    void placeGlyph(model::Glyph& glyph, Lettering const& lettering, Vector start, Vector along) const;
    [[nodiscard]] FontEntry& currentFont(GfxState* state);
    void takeFont(GfxFont* font);
    [[nodiscard]] std::uint32_t fillColour(GfxState* state);
    [[nodiscard]] std::uint32_t strokeColour(GfxState* state);
    [[nodiscard]] Paint paintOf(GfxState* state, std::uint32_t colour, double opacity);
    [[nodiscard]] model::Rect const& clipOf(GfxState const* state);
    [[nodiscard]] bool ignoring() const { return m_softMaskDepth > 0; }
    void takePath(GfxState const* state);
    void fillPath(GfxState* state);
    void paintClip(GfxState* state, std::uint32_t colour, bool colourKnown, std::uint64_t shape);
    void takeImage(GfxState* state, int width, int height, std::uint64_t content, std::uint32_t colour, Opacity opacity);
    [[nodiscard]] static bool liesOutside(model::Glyph const& glyph, model::Rect const& clip);
    void addParts(model::Glyph const& glyph, Decoded const& text);

    FontTable& m_fonts;
    model::PageContent* m_page = nullptr;
    PageGraphics m_graphics;
    PagePath m_path;
    ActualTextSpan m_actualText;
    ImageContents m_imageContents;
    GfxFont* m_currentGfxFont = nullptr;
    FontEntry* m_current = nullptr;
    Lettering m_lettering;
    model::Rect m_clip;
    int m_stamp = 0;
    bool m_letteringKnown = false;  // for m_current
    bool m_clipKnown = false;
    std::uint32_t m_fillColour = 0;
    std::uint32_t m_strokeColour = 0;
    bool m_fillColourKnown = false;
    bool m_strokeColourKnown = false;
    bool m_textIsPaintedLater = false;  // text as a clip for a pattern, which follows
    bool m_full = false;
    bool m_contradicted = false;  // digits and their names disagree
    int m_softMaskDepth = 0;
    std::vector<bool> m_groups;  // true: the group is a soft mask
};

}  // namespace standin::poppler
