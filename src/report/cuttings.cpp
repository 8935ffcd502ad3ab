// The place is widened to a strip that a reader recognises: some lines above and
// below, and at least a usual column's width. A large place (a figure) is drawn
// smaller instead of cut.
//
// Tested by tests/src/report/cuttings_test.cpp.
#include "report/cuttings.h"

#include <algorithm>
#include <cmath>

namespace standin::report {

using model::Points;
using model::Rect;

namespace {

constexpr Points kAround = 6;          // what is framed never touches the edge
constexpr Points kLinesAround = 15;    // above and below: a line or two
constexpr Points kLeastWidth = 300;
constexpr double kScale = 2;           // pixels a point of a usual cutting
constexpr double kWidest = 1100;       // pixels
constexpr double kHighest = 640;       // pixels
constexpr std::size_t kMostPixels = 30000000;  // in one report
constexpr int kMostCuttings = 200;

// `least` wide, without leaving 0 … `whole` where that is possible.
void widen(Points& low, Points& high, Points least, Points whole) {
    Points const missing = least - (high - low);
    if (missing > 0) {
        low -= missing / 2;
        high += missing / 2;
    }
    if (low < 0) {
        high = std::min(whole, high - low);
        low = 0;
    }
    if (high > whole) {
        low = std::max(Points{0}, low - (high - whole));
        high = whole;
    }
}

std::optional<Cutting> cut(model::PagePictures& pictures, model::Side const& side) {
    auto const page = pictures.pageBox(side.page);
    if (!page) return std::nullopt;
    Rect const place = model::intersection(side.box, *page);
    if (!(place.width() > 0 && place.height() > 0)) return std::nullopt;
    Rect box{place.x0 - kAround, place.y0 - kLinesAround, place.x1 + kAround, place.y1 + kLinesAround};
    widen(box.x0, box.x1, kLeastWidth, page->width());
    widen(box.y0, box.y1, 0, page->height());
    double const scale = std::min({kScale, kWidest / static_cast<double>(box.width()), kHighest / static_cast<double>(box.height())});
    auto picture = pictures.render(side.page, box, scale);
    if (!picture) return std::nullopt;
    Rect const framed = model::intersection(place.grown(2), picture->box);
    return Cutting{0, side.page, std::move(*picture), framed};
}

int whole(Points value) { return static_cast<int>(std::lround(std::clamp(value, Points{-100000}, Points{100000}))); }

}  // namespace

bool showsCuttings(model::Finding const& finding) {
    return finding.severity >= model::Severity::Function || finding.kind == model::FindingKind::Figure;
}

Cutting const* Cuttings::of(DocumentSide document, model::Side const& side) {
    auto* const pictures = document == DocumentSide::Reference ? m_pictures.reference : m_pictures.candidate;
    if (pictures == nullptr || side.page < 1) return nullptr;
    auto const& box = side.box;
    Key const key{document, side.page, whole(box.x0), whole(box.y0), whole(box.x1), whole(box.y1)};
    auto const known = m_cuttings.find(key);
    if (known != m_cuttings.end()) return known->second ? &*known->second : nullptr;
    if (m_pixels >= kMostPixels || m_count >= kMostCuttings) {
        m_full = true;
        return nullptr;
    }
    auto& cutting = m_cuttings.emplace(key, cut(*pictures, side)).first->second;
    if (!cutting) return nullptr;
    cutting->number = m_count++;
    m_pixels += cutting->picture.rgb.size() / 3;
    return &*cutting;
}

}  // namespace standin::report
