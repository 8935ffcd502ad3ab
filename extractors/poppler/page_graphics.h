// Turns painted paths into what a reader sees: ruling lines, fills, images and
// other drawings. Knows nothing of Poppler; private to extractors/poppler/.
// Coordinates: model/geometry.h.
//
//     PageGraphics graphics;
//     graphics.stroke(path, {0.5F, 0.5F, colour, Dashes::None, Caps::Butt}, paint);
//     graphics.finish(page);
#pragma once

#include <cstdint>
#include <vector>

#include "extractors/poppler/rule_merge.h"
#include "model/page_content.h"

namespace standin::poppler {

struct PathPoint {
    model::Points x = 0;
    model::Points y = 0;
    bool curve = false;  // a control point or the end of a curve
};

// A path on the page. Subpath i is points[starts[i]] up to the next start.
struct PagePath {
    std::vector<PathPoint> points;
    std::vector<std::size_t> starts;

    void clear() {
        points.clear();
        starts.clear();
    }
};

enum class Dashes : std::uint8_t { None, Some };
enum class Caps : std::uint8_t { Butt, Projecting };
enum class Opacity : std::uint8_t { Opaque, SeeThrough };

// How and where something is painted.
struct Paint {
    std::uint32_t colour = 0;
    Opacity opacity = Opacity::Opaque;
    model::Rect clip;              // nothing shows outside
    std::uint32_t glyphsBefore = 0;  // how many glyphs lie beneath
};

struct Pen {
    model::Points horizontalWidth = 0;  // thickness of a horizontal line
    model::Points verticalWidth = 0;    // thickness of a vertical line
    Dashes dashes = Dashes::None;
    Caps caps = Caps::Butt;
};

class PageGraphics {
public:
    void stroke(PagePath const& path, Pen const& pen, Paint const& paint);
    void fill(PagePath const& path, Paint const& paint);

    // An area known only by its box: a shading, a pattern.
    void area(model::Rect const& box, Paint const& paint);

    // A shading or pattern whose colour is not known, as a drawing.
    void drawing(model::Rect const& box, std::uint64_t shape, Paint const& paint);

    void image(model::Image const& image, Paint const& paint);

    // Everything painted so far lies in here; empty: nothing was painted.
    [[nodiscard]] std::size_t count() const { return m_rules.size() + m_fills.size() + m_drawings.size() + m_images.size(); }

    // Bounding box of what was painted since `startWatching`.
    void startWatching() { m_watched = {}; }
    [[nodiscard]] model::Rect watched() const { return m_watched; }

    // Moves everything into `page`: joins rules that touch, joins dashes, drops
    // what later paint hides, turns box edges into rules, and marks glyphs that
    // opaque paint covers as invisible. O(n log n) apart from bounded searches.
    void finish(model::PageContent& page);

    // Forgets everything but keeps the memory for the next page.
    void clear();

private:
    struct Painted {
        std::uint32_t order = 0;
        std::uint32_t glyphsBefore = 0;
        Opacity opacity = Opacity::Opaque;
    };
    struct PaintedRule {
        model::Rule rule;
        Painted painted;
    };
    struct PaintedFill {
        model::Fill fill;
        Painted painted;
    };
    struct PaintedImage {
        model::Image image;
        Painted painted;
    };

    void addBox(model::Rect const& box, Paint const& paint, Dashes dashes);
    void addRule(model::Rect const& box, model::Rule::Axis axis, Paint const& paint, Dashes dashes);
    void addDrawing(PagePath const& path, std::size_t begin, std::size_t end, model::Points grow, Paint const& paint);
    void strokeSubpath(PagePath const& path, std::size_t begin, std::size_t end, Pen const& pen, Paint const& paint);
    void edgesOfCoveredBoxes();
    void dropHiddenRules();
    void hideCoveredGlyphs(model::PageContent& page) const;
    [[nodiscard]] Painted painted(Paint const& paint) { return {m_order++, paint.glyphsBefore, paint.opacity}; }

    std::vector<PaintedRule> m_rules;
    std::vector<PaintedFill> m_fills;
    std::vector<PaintedImage> m_images;
    std::vector<model::Drawing> m_drawings;
    RuleMerger m_merger;
    std::uint32_t m_order = 0;
    model::Rect m_watched;
};

}  // namespace standin::poppler
