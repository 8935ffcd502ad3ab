// Ink is what is clearly darker than what is around it. Long thin runs of it are
// rules and taken out, so that letters that touch a frame come free; then what is left
// of the drawings that they belonged to.
//
// Tested by tests/extractors/recognition/recognise_test.cpp.
#include "extractors/recognition/ink.h"

#include <algorithm>
#include <cmath>

#include <leptonica/allheaders.h>

namespace standin::recognition {

namespace {

constexpr double kGroundReach = 5;  // points: of the ground that a spot is seen against
constexpr float kContrast = 0.2F;   // how much darker than it ink is
constexpr int kTile = 600;          // pixels
constexpr int kPlainInk = 170;      // of 255, where a picture is too small for that
constexpr int kDarkShade = 110;     // of 255
constexpr double kBarWidth = 20;    // points: a dark bar with light lettering
constexpr double kBarHeight = 6;
constexpr double kBarFilled = 0.55;     // of its box
constexpr double kLeadShape = 1.8;      // a lead of a part is so many times as wide as high
constexpr double kStraightShare = 0.8;  // of its width
constexpr double kRuleLength = 18;      // points; longer than the strokes of letters
constexpr double kLeadLength = 7;       // points, across, in a drawing
constexpr double kLetterAtMost = 32;    // points high
constexpr double kWordAtMost = 120;     // points wide
constexpr double kRuleThickness = 2.2;  // points
constexpr double kRuleSlant = 0.02;     // of its length: scans lie askew
constexpr int kFootShare = 5;           // of a piece's height
constexpr int kConnectivity = 8;
constexpr int kWhite = 255;

int pixels(double points, double pixelsPerPoint) { return std::max(3, static_cast<int>(std::lround(points * pixelsPerPoint))); }

PixPointer greyOf(model::Picture const& picture) {
    PixPointer grey(pixCreate(picture.width, picture.height, 8));
    auto const words = pixGetWpl(grey.get());
    auto* const data = pixGetData(grey.get());
    auto const* rgb = picture.rgb.data();
    for (int y = 0; y < picture.height; ++y) {
        auto* const row = data + static_cast<std::ptrdiff_t>(y) * words;
        for (int x = 0; x < picture.width; ++x, rgb += 3) SET_DATA_BYTE(row, x, (rgb[0] * 77 + rgb[1] * 151 + rgb[2] * 28) >> 8);
    }
    return grey;
}

PixelBox boxOf(Boxa* boxes, int index) {
    PixelBox box;
    int width = 0;
    int height = 0;
    boxaGetBoxGeometry(boxes, index, &box.left, &box.top, &width, &height);
    box.right = box.left + width;
    box.bottom = box.top + height;
    return box;
}

std::vector<PixelBox> boxesOf(Boxa* boxes) {
    std::vector<PixelBox> found;
    for (int i = 0; i < boxaGetCount(boxes); ++i) found.push_back(boxOf(boxes, i));
    return found;
}

enum class Along { Horizontal, Vertical };

void paint(Pix* ink, Pixa* shapes, int index, PixelBox const& box) {
    PixPointer const shape(pixaGetPix(shapes, index, L_CLONE));
    pixRasterop(ink, box.left, box.top, box.width(), box.height(), PIX_SRC | PIX_DST, shape.get(), 0, 0);
}

void wipe(Pix* ink, Pixa* shapes, int index, PixelBox const& box) {
    PixPointer const shape(pixaGetPix(shapes, index, L_CLONE));
    PixPointer const bordered(pixAddBorder(shape.get(), 1, 0));
    PixPointer const wider(pixDilateBrick(nullptr, bordered.get(), 3, 3));  // with its soft edges
    pixRasterop(ink, box.left - 1, box.top - 1, box.width() + 2, box.height() + 2, PIX_DST & PIX_NOT(PIX_SRC), wider.get(), 0, 0);
}

struct Pieces {
    explicit Pieces(Pix* ink) {
        Pixa* found = nullptr;
        Boxa* places = pixConnComp(ink, &found, kConnectivity);
        shapes.reset(found);
        boxes = boxesOf(places);
        boxaDestroy(&places);
    }
    PixaPointer shapes;
    std::vector<PixelBox> boxes;
};

// Turns the shades of dark bars around, so that what stands on them in light letters is ink.
void turnBars(Pix* grey, double pixelsPerPoint) {
    PixPointer const dark(pixThresholdToBinary(grey, kDarkShade));
    Pieces const pieces(dark.get());
    for (std::size_t i = 0; i < pieces.boxes.size(); ++i) {
        auto const& box = pieces.boxes[i];
        if (box.width() < kBarWidth * pixelsPerPoint || box.height() < kBarHeight * pixelsPerPoint) continue;
        PixPointer const shape(pixaGetPix(pieces.shapes.get(), static_cast<int>(i), L_CLONE));
        int dots = 0;
        pixCountPixels(shape.get(), &dots, nullptr);
        if (dots < kBarFilled * box.width() * box.height()) continue;
        pixRasterop(grey, box.left, box.top, box.width(), box.height(), PIX_NOT(PIX_DST), nullptr, 0, 0);
    }
}

// Ink is darker than the ground around it, be that white or a shaded head of a table.
PixPointer inkOf(Pix* grey, double pixelsPerPoint) {
    PixPointer ink(pixThresholdToBinary(grey, kDarkShade));  // thick strokes are their own ground
    int const reach = pixels(kGroundReach, pixelsPerPoint);
    auto const tiles = [reach](int extent) { return std::max(1, extent / std::max(kTile, 4 * reach)); };
    bool const wide = std::min(pixGetWidth(grey), pixGetHeight(grey)) > 2 * reach + 2;
    Pix* local = nullptr;
    if (wide) pixSauvolaBinarizeTiled(grey, reach, kContrast, tiles(pixGetWidth(grey)), tiles(pixGetHeight(grey)), nullptr, &local);
    PixPointer const faint(local != nullptr ? local : pixThresholdToBinary(grey, kPlainInk));
    pixOr(ink.get(), ink.get(), faint.get());
    return ink;
}

// Takes the thin straight runs of `from` that have at least this length out of `ink`.
std::vector<PixelBox> takeRuns(Pix* from, Pix* ink, Along along, double length, double pixelsPerPoint) {
    bool const across = along == Along::Horizontal;
    int const least = pixels(length, pixelsPerPoint);
    PixPointer const runs(pixOpenBrick(nullptr, from, across ? least : 1, across ? 1 : least));
    Pieces const found(runs.get());
    std::vector<PixelBox> taken;
    for (std::size_t i = 0; i < found.boxes.size(); ++i) {
        auto const& box = found.boxes[i];
        int const extent = across ? box.width() : box.height();
        int const thickness = across ? box.height() : box.width();
        if (thickness > kRuleThickness * pixelsPerPoint + kRuleSlant * extent) continue;
        wipe(ink, found.shapes.get(), static_cast<int>(i), box);
        taken.push_back(box);
    }
    return taken;
}

// What stands alone and is larger than a letter, or a word of touching letters.
PixPointer drawingsOf(Pix* whole, double pixelsPerPoint) {
    Pieces const pieces(whole);
    PixPointer drawings(pixCreateTemplate(whole));
    for (std::size_t i = 0; i < pieces.boxes.size(); ++i) {
        auto const& box = pieces.boxes[i];
        bool const large = box.height() > kLetterAtMost * pixelsPerPoint || box.width() > kWordAtMost * pixelsPerPoint;
        if (large) paint(drawings.get(), pieces.shapes.get(), static_cast<int>(i), box);
    }
    return drawings;
}

// Out of `ink`: leads of a part, ends of wires, ticks of an axis: what is left of a drawing when
// its long lines are gone. A letter that touches a line stays.
void takeStumps(Pix* drawings, Pix* ink, double pixelsPerPoint) {
    takeRuns(drawings, ink, Along::Horizontal, kLeadLength, pixelsPerPoint);
    PixPointer const left(pixAnd(nullptr, drawings, ink));
    Pieces const pieces(left.get());
    for (std::size_t i = 0; i < pieces.boxes.size(); ++i) {
        auto const& box = pieces.boxes[i];
        if (std::min(box.width(), box.height()) <= kRuleThickness * pixelsPerPoint) wipe(ink, pieces.shapes.get(), static_cast<int>(i), box);
    }
}

// Out of `ink`: leads that stand free, wide pieces along one straight line.
void takeLeads(Pix* ink, double pixelsPerPoint) {
    Pieces const pieces(ink);
    for (std::size_t i = 0; i < pieces.boxes.size(); ++i) {
        auto const& box = pieces.boxes[i];
        bool const wide = box.width() >= kLeadShape * box.height() && box.width() >= kLeadLength * pixelsPerPoint;
        if (!wide || box.height() <= kRuleThickness * pixelsPerPoint) continue;
        PixPointer const shape(pixaGetPix(pieces.shapes.get(), static_cast<int>(i), L_CLONE));
        PixPointer const straight(pixOpenBrick(nullptr, shape.get(), std::max(1, static_cast<int>(kStraightShare * box.width())), 1));
        int none = 1;
        pixZero(straight.get(), &none);
        if (none == 0) wipe(ink, pieces.shapes.get(), static_cast<int>(i), box);
    }
}

}  // namespace

void FreePix::operator()(Pix* pix) const { pixDestroy(&pix); }
void FreePix::operator()(Pixa* pixa) const { pixaDestroy(&pixa); }

Ink::Ink(model::Picture const& picture) : m_pixelsPerPoint(picture.width / static_cast<double>(picture.box.width())), m_grey(greyOf(picture)) {
    turnBars(m_grey.get(), m_pixelsPerPoint);
    auto const whole = inkOf(m_grey.get(), m_pixelsPerPoint);
    PixPointer const ink(pixCopy(nullptr, whole.get()));
    for (Along const along : {Along::Horizontal, Along::Vertical}) {
        auto const taken = takeRuns(whole.get(), ink.get(), along, kRuleLength, m_pixelsPerPoint);
        m_rules.insert(m_rules.end(), taken.begin(), taken.end());
    }
    takeStumps(drawingsOf(whole.get(), m_pixelsPerPoint).get(), ink.get(), m_pixelsPerPoint);
    takeLeads(ink.get(), m_pixelsPerPoint);
    Pieces pieces(ink.get());
    m_shapes = std::move(pieces.shapes);
    m_pieces = std::move(pieces.boxes);
}

PixPointer Ink::only(std::span<std::size_t const> pieces, PixelBox const& box) const {
    int const width = box.width() + 2 * kMargin;
    int const height = box.height() + 2 * kMargin;
    int const left = box.left - kMargin;
    int const top = box.top - kMargin;
    PixPointer const mask(pixCreate(width, height, 1));
    for (std::size_t const index : pieces) {
        auto const& piece = m_pieces[index];
        PixPointer const shape(pixaGetPix(m_shapes.get(), static_cast<int>(index), L_CLONE));
        pixRasterop(mask.get(), piece.left - left, piece.top - top, piece.width(), piece.height(), PIX_SRC | PIX_DST, shape.get(), 0, 0);
    }
    PixPointer const soft(pixDilateBrick(nullptr, mask.get(), 5, 5));  // with its soft edges
    PixPointer shades(pixCreate(width, height, 8));
    pixSetAllArbitrary(shades.get(), kWhite);
    PixPointer const cut(pixCreate(width, height, 8));
    pixSetAllArbitrary(cut.get(), kWhite);
    pixRasterop(cut.get(), 0, 0, width, height, PIX_SRC, m_grey.get(), left, top);
    pixCombineMasked(shades.get(), cut.get(), soft.get());
    return shades;
}

double Ink::widthAtFoot(std::size_t piece) const {
    PixPointer const shape(pixaGetPix(m_shapes.get(), static_cast<int>(piece), L_CLONE));
    int const width = pixGetWidth(shape.get());
    int const height = pixGetHeight(shape.get());
    int inked = 0;
    for (int x = 0; x < width; ++x) {
        l_uint32 any = 0;
        for (int y = height - std::max(1, height / kFootShare); y < height && any == 0; ++y) pixGetPixel(shape.get(), x, y, &any);
        inked += any != 0 ? 1 : 0;
    }
    return static_cast<double>(inked) / std::max(1, width);
}

}  // namespace standin::recognition
