// Each painted subpath is judged on its own. A stroke made of horizontal and
// vertical segments gives one rule a segment; a filled rectangle is a rule when
// it is thin and a fill otherwise; a frame of two nested rectangles gives four
// rules; all else is a drawing, known by a hash of its points relative to its
// box. Everything carries the order in which it was painted, so that finish()
// can tell what lies over what.
//
// Tested by tests/extractors/poppler/page_graphics_test.cpp.
#include "extractors/poppler/page_graphics.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace standin::poppler {

using model::Point;
using model::Points;
using model::Rect;
using model::Rule;

namespace {

// Lengths here are absolute points: a hairline is a hairline whatever the size
// of the text beside it.
constexpr Points kThickestRule = 3.0F;    // a thicker bar is a fill
constexpr Points kStraight = 0.3F;        // deviation that still counts as level or upright
constexpr Points kShortestSide = 6.0F;    // straight side of a rounded box that counts as a rule
constexpr Points kShapeGrid = 0.5F;       // points of a drawing are hashed on this grid
constexpr std::uint32_t kLightest = 0xF8;  // each channel at least this: as good as white
constexpr std::size_t kLookBack = 12;     // fills beneath that are searched for a covered box
constexpr std::size_t kMaxCovers = 2000;  // opaque areas that are tested against the glyphs
constexpr std::size_t kMaxItems = 200000;  // of each kind on a page

bool isWhite(std::uint32_t colour) {
    return (colour >> 16U & 0xFFU) >= kLightest && (colour >> 8U & 0xFFU) >= kLightest && (colour & 0xFFU) >= kLightest;
}

struct Mixer {
    std::uint64_t value = 0xcbf29ce484222325U;
    void add(std::uint64_t word) { value = (value ^ word) * 0x100000001b3U; }
};

// Steps of the grid in a length, to the nearest; it is not negative.
std::uint64_t onGrid(Points length) { return static_cast<std::uint64_t>(static_cast<std::int64_t>(static_cast<double>(length / kShapeGrid) + 0.5)); }

Rect boxOf(PagePath const& path, std::size_t begin, std::size_t end) {
    Rect box{path.points[begin].x, path.points[begin].y, path.points[begin].x, path.points[begin].y};
    for (std::size_t i = begin + 1; i < end; ++i) {
        box.x0 = std::min(box.x0, path.points[i].x);
        box.x1 = std::max(box.x1, path.points[i].x);
        box.y0 = std::min(box.y0, path.points[i].y);
        box.y1 = std::max(box.y1, path.points[i].y);
    }
    return box;
}

bool level(PathPoint const& a, PathPoint const& b) { return std::abs(a.y - b.y) <= kStraight; }
bool upright(PathPoint const& a, PathPoint const& b) { return std::abs(a.x - b.x) <= kStraight; }

// The rectangle that the subpath runs around, if it is one.
std::optional<Rect> rectangle(PagePath const& path, std::size_t begin, std::size_t end) {
    while (end - begin > 4 && level(path.points[end - 1], path.points[begin]) && upright(path.points[end - 1], path.points[begin])) --end;
    if (end - begin != 4) return std::nullopt;
    PathPoint const* p = &path.points[begin];
    for (int i = 0; i < 4; ++i) {
        if (p[i].curve) return std::nullopt;
    }
    bool const flatFirst = level(p[0], p[1]) && upright(p[1], p[2]) && level(p[2], p[3]) && upright(p[3], p[0]);
    bool const uprightFirst = upright(p[0], p[1]) && level(p[1], p[2]) && upright(p[2], p[3]) && level(p[3], p[0]);
    if (!flatFirst && !uprightFirst) return std::nullopt;
    return boxOf(path, begin, end);
}

// Common part with the clip; nothing if they do not meet. A box without
// thickness on the clip's inside stays.
std::optional<Rect> shown(Rect const& box, Rect const& clip) {
    Rect const part = model::intersection(box, clip);
    if (part.x1 < part.x0 || part.y1 < part.y0) return std::nullopt;
    return part;
}

std::size_t subpathEnd(PagePath const& path, std::size_t index) {
    return index + 1 < path.starts.size() ? path.starts[index + 1] : path.points.size();
}

// `inner` leaves a thin frame of `outer` on all four sides.
bool isFrame(Rect const& outer, Rect const& inner) {
    Points const left = inner.x0 - outer.x0;
    Points const right = outer.x1 - inner.x1;
    Points const top = inner.y0 - outer.y0;
    Points const bottom = outer.y1 - inner.y1;
    auto const thin = [](Points side) { return side > 0 && side <= kThickestRule; };
    return thin(left) && thin(right) && thin(top) && thin(bottom);
}

}  // namespace

void PageGraphics::addRule(Rect const& box, Rule::Axis axis, Paint const& paint, Dashes dashes) {
    if (m_rules.size() >= kMaxItems) return;
    auto const part = shown(box, paint.clip);
    if (!part) return;
    m_watched = united(m_watched, *part);
    m_rules.push_back({Rule{axis, *part, paint.colour, dashes == Dashes::Some}, painted(paint)});
}

// A rectangle of paint: a rule if it is thin, a fill otherwise.
void PageGraphics::addBox(Rect const& box, Paint const& paint, Dashes dashes) {
    Points const thickness = std::min(box.width(), box.height());
    Points const length = std::max(box.width(), box.height());
    if (thickness <= kThickestRule && length > thickness) {
        addRule(box, box.width() >= box.height() ? Rule::Axis::Horizontal : Rule::Axis::Vertical, paint, dashes);
        return;
    }
    if (m_fills.size() >= kMaxItems) return;
    auto const part = shown(box, paint.clip);
    if (!part) return;
    m_watched = united(m_watched, *part);
    m_fills.push_back({{*part, paint.colour}, painted(paint)});
}

void PageGraphics::addDrawing(PagePath const& path, std::size_t begin, std::size_t end, Points grow, Paint const& paint) {
    if (m_drawings.size() >= kMaxItems || begin == end) return;
    Rect const box = boxOf(path, begin, end);
    auto const part = shown(box.grown(grow), paint.clip);
    if (!part) return;
    Mixer mixer;
    for (std::size_t i = begin; i < end; ++i) {
        PathPoint const& p = path.points[i];
        mixer.add(onGrid(p.x - box.x0) << 32U | onGrid(p.y - box.y0) << 1U | (p.curve ? 1U : 0U));
    }
    m_watched = united(m_watched, *part);
    m_drawings.push_back({*part, mixer.value});
}

void PageGraphics::strokeSubpath(PagePath const& path, std::size_t begin, std::size_t end, Pen const& pen, Paint const& paint) {
    std::size_t curves = 0;
    bool straight = true;
    for (std::size_t i = begin; i < end; ++i) {
        curves += path.points[i].curve ? 1 : 0;
        if (i > begin && !path.points[i].curve && !level(path.points[i - 1], path.points[i]) && !upright(path.points[i - 1], path.points[i])) {
            straight = false;
        }
    }
    // Four corners of three control points each: a rounded box, whose straight
    // sides are rules as well.
    bool const rounded = straight && curves == 12;
    if (curves > 0 || !straight) addDrawing(path, begin, end, std::max(pen.horizontalWidth, pen.verticalWidth) / 2, paint);
    if (!straight || (curves > 0 && !rounded)) return;
    for (std::size_t i = begin + 1; i < end; ++i) {
        PathPoint const& a = path.points[i - 1];
        PathPoint const& b = path.points[i];
        if (b.curve) continue;
        Points const dx = std::abs(a.x - b.x);
        Points const dy = std::abs(a.y - b.y);
        if (rounded && std::max(dx, dy) < kShortestSide) continue;
        bool const horizontal = dx != dy ? dx > dy : level(a, b);
        Points const width = horizontal ? pen.horizontalWidth : pen.verticalWidth;
        if (dx == 0 && dy == 0 && pen.caps == Caps::Butt) continue;
        Points const along = pen.caps == Caps::Projecting ? width / 2 : 0;
        Points const x = horizontal ? along : width / 2;
        Points const y = horizontal ? width / 2 : along;
        Points const middle = horizontal ? (a.y + b.y) / 2 : (a.x + b.x) / 2;
        Rect const box = horizontal ? Rect{std::min(a.x, b.x) - x, middle - y, std::max(a.x, b.x) + x, middle + y}
                                    : Rect{middle - x, std::min(a.y, b.y) - y, middle + x, std::max(a.y, b.y) + y};
        if (width > kThickestRule) {
            addBox(box, paint, pen.dashes);
        } else {
            addRule(box, horizontal ? Rule::Axis::Horizontal : Rule::Axis::Vertical, paint, pen.dashes);
        }
    }
}

void PageGraphics::stroke(PagePath const& path, Pen const& pen, Paint const& paint) {
    for (std::size_t s = 0; s < path.starts.size(); ++s) {
        std::size_t const begin = path.starts[s];
        std::size_t const end = subpathEnd(path, s);
        if (end > begin) strokeSubpath(path, begin, end, pen, paint);
    }
}

void PageGraphics::fill(PagePath const& path, Paint const& paint) {
    std::size_t s = 0;
    while (s < path.starts.size()) {
        std::size_t const begin = path.starts[s];
        std::size_t const end = subpathEnd(path, s);
        ++s;
        if (end - begin < 2) continue;
        auto const box = rectangle(path, begin, end);
        if (!box) {
            // A line filled without its way back has no area but is drawn by some viewers as a hairline.
            Rect const hull = boxOf(path, begin, end);
            if (std::min(hull.width(), hull.height()) <= kStraight) {
                addBox(hull, paint, Dashes::None);
            } else {
                addDrawing(path, begin, end, 0, paint);
            }
            continue;
        }
        // A second rectangle just inside this one is its hole.
        if (s < path.starts.size()) {
            auto const inner = rectangle(path, path.starts[s], subpathEnd(path, s));
            if (inner && isFrame(*box, *inner)) {
                addRule({box->x0, box->y0, box->x1, inner->y0}, Rule::Axis::Horizontal, paint, Dashes::None);
                addRule({box->x0, inner->y1, box->x1, box->y1}, Rule::Axis::Horizontal, paint, Dashes::None);
                addRule({box->x0, box->y0, inner->x0, box->y1}, Rule::Axis::Vertical, paint, Dashes::None);
                addRule({inner->x1, box->y0, box->x1, box->y1}, Rule::Axis::Vertical, paint, Dashes::None);
                ++s;
                continue;
            }
        }
        addBox(*box, paint, Dashes::None);
    }
}

void PageGraphics::area(Rect const& box, Paint const& paint) { addBox(box, paint, Dashes::None); }

void PageGraphics::drawing(Rect const& box, std::uint64_t shape, Paint const& paint) {
    auto const part = shown(box, paint.clip);
    if (!part || m_drawings.size() >= kMaxItems) return;
    if (std::min(part->width(), part->height()) <= kThickestRule) {
        addBox(*part, paint, Dashes::None);
        return;
    }
    Mixer mixer;
    mixer.add(shape);
    mixer.add(onGrid(box.width()));
    mixer.add(onGrid(box.height()));
    m_watched = united(m_watched, *part);
    m_drawings.push_back({*part, mixer.value});
}

// A picture stretched to a thin bar is a ruling line.
void PageGraphics::image(model::Image const& image, Paint const& paint) {
    if (std::min(image.box.width(), image.box.height()) <= kThickestRule && std::min(image.pixelWidth, image.pixelHeight) <= 4) {
        addBox(image.box, paint, Dashes::None);
        return;
    }
    auto const part = shown(image.box, paint.clip);
    if (!part || m_images.size() >= kMaxItems) return;
    m_watched = united(m_watched, *part);
    m_images.push_back({{*part, image.pixelWidth, image.pixelHeight, image.content}, painted(paint)});
}

// A box painted over another one leaves a thin edge of the lower one: what the
// reader sees is lines. The lower box is then no area of its own.
void PageGraphics::edgesOfCoveredBoxes() {
    std::vector<bool> consumed(m_fills.size(), false);
    for (std::size_t i = 1; i < m_fills.size(); ++i) {
        if (m_fills[i].painted.opacity != Opacity::Opaque) continue;
        Rect const over = m_fills[i].fill.box;
        std::size_t const first = i > kLookBack ? i - kLookBack : 0;
        for (std::size_t k = i; k-- > first;) {
            Rect const under = m_fills[k].fill.box;
            if (consumed[k] || m_fills[k].fill.colour == m_fills[i].fill.colour || !under.grown(kStraight).contains(over)) continue;
            Points const sides[4] = {over.x0 - under.x0, under.x1 - over.x1, over.y0 - under.y0, under.y1 - over.y1};
            if (std::any_of(std::begin(sides), std::end(sides), [](Points side) { return side > kThickestRule; })) continue;
            Painted const below = m_fills[k].painted;
            std::uint32_t const colour = m_fills[k].fill.colour;
            auto const edge = [&](Rect const& box, Rule::Axis axis, Points side) {
                if (side > kStraight / 2 && m_rules.size() < kMaxItems) m_rules.push_back({Rule{axis, box, colour, false}, {m_fills[i].painted.order, below.glyphsBefore, below.opacity}});
            };
            edge({under.x0, under.y0, over.x0, under.y1}, Rule::Axis::Vertical, sides[0]);
            edge({over.x1, under.y0, under.x1, under.y1}, Rule::Axis::Vertical, sides[1]);
            edge({under.x0, under.y0, under.x1, over.y0}, Rule::Axis::Horizontal, sides[2]);
            edge({under.x0, over.y1, under.x1, under.y1}, Rule::Axis::Horizontal, sides[3]);
            consumed[k] = true;
            break;
        }
    }
    std::size_t kept = 0;
    for (std::size_t i = 0; i < m_fills.size(); ++i) {
        if (!consumed[i]) m_fills[kept++] = m_fills[i];
    }
    m_fills.resize(kept);
}

// A white line is a line only on something that is not white. A line wholly
// under a later area is not seen.
void PageGraphics::dropHiddenRules() {
    // Bounded: on a page of very many lines and areas, which is a picture, the
    // search would cost more than it is worth.
    constexpr std::size_t kMaxComparisons = 1500000;
    if (m_rules.size() * (m_fills.size() + 1) > kMaxComparisons) return;
    // Around the opaque fills from each one on: most rules lie beside all that comes later.
    std::vector<Rect> coverFrom(m_fills.size() + 1);
    for (std::size_t i = m_fills.size(); i-- > 0;) {
        coverFrom[i] = m_fills[i].painted.opacity == Opacity::Opaque ? united(coverFrom[i + 1], m_fills[i].fill.box) : coverFrom[i + 1];
    }
    auto const later = [](std::uint32_t order, PaintedFill const& fill) { return order < fill.painted.order; };
    auto const hidden = [&](PaintedRule const& entry) {
        auto const above = std::upper_bound(m_fills.begin(), m_fills.end(), entry.painted.order, later);
        bool const mayBe = coverFrom[static_cast<std::size_t>(above - m_fills.begin())].contains(entry.rule.box);
        for (auto fill = above; mayBe && fill != m_fills.end(); ++fill) {
            if (fill->painted.opacity == Opacity::Opaque && fill->fill.box.contains(entry.rule.box)) return true;
        }
        if (!isWhite(entry.rule.colour)) return false;
        Rect const around = entry.rule.box.grown(kStraight);
        for (auto fill = m_fills.begin(); fill != above; ++fill) {
            if (!isWhite(fill->fill.colour) && fill->fill.box.intersects(around)) return false;
        }
        return std::none_of(m_images.begin(), m_images.end(), [&](PaintedImage const& image) { return image.image.box.intersects(around); });
    };
    m_rules.erase(std::remove_if(m_rules.begin(), m_rules.end(), hidden), m_rules.end());
}

void PageGraphics::hideCoveredGlyphs(model::PageContent& page) const {
    auto const cover = [&](Rect const& box, Painted const& over) {
        if (over.opacity != Opacity::Opaque) return;
        std::size_t const end = std::min<std::size_t>(over.glyphsBefore, page.glyphs.size());
        for (std::size_t i = 0; i < end; ++i) {
            model::Glyph& glyph = page.glyphs[i];
            if (box.contains(glyph.box)) glyph.invisible = true;
        }
    };
    std::size_t tests = 0;
    for (PaintedFill const& fill : m_fills) {
        if (fill.painted.glyphsBefore == 0) continue;
        if (++tests > kMaxCovers) return;
        cover(fill.fill.box, fill.painted);
    }
    for (PaintedImage const& image : m_images) {
        if (image.painted.glyphsBefore == 0) continue;
        if (++tests > kMaxCovers) return;
        cover(image.image.box, image.painted);
    }
}

void PageGraphics::finish(model::PageContent& page) {
    hideCoveredGlyphs(page);
    edgesOfCoveredBoxes();
    dropHiddenRules();
    page.rules.reserve(m_rules.size());
    for (PaintedRule const& entry : m_rules) page.rules.push_back(entry.rule);
    m_merger.merge(page.rules);
    page.fills.reserve(m_fills.size());
    for (PaintedFill const& entry : m_fills) page.fills.push_back(entry.fill);
    page.images.reserve(m_images.size());
    for (PaintedImage const& entry : m_images) page.images.push_back(entry.image);
    page.drawings.assign(m_drawings.begin(), m_drawings.end());
    clear();
}

void PageGraphics::clear() {
    m_rules.clear();
    m_fills.clear();
    m_images.clear();
    m_drawings.clear();
    m_order = 0;
    m_watched = {};
}

}  // namespace standin::poppler
