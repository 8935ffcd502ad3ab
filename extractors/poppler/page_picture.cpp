// Splash draws only the wanted slice of the page, in the displayed coordinates
// that everything else uses: Poppler applies crop box and rotation to a slice as
// it does to the page that is read. The slice is the box widened to whole pixels.
//
// Tested by tests/extractors/poppler/page_picture_test.cpp.
#include "extractors/poppler/page_picture.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <span>
#include <vector>

#include <fmt/format.h>

#include <PDFDoc.h>
#include <Page.h>
#include <SplashOutputDev.h>
#include <splash/SplashBitmap.h>

#include "extractors/poppler/open_document.h"
#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {

using model::Error;
using model::ErrorKind;
using model::Picture;
using model::Rect;

namespace {

constexpr double kPointsAnInch = 72;
constexpr double kMostPixels = 24e6;            // 72 MB of picture
constexpr double kLongestEdge = 16000;          // of the picture
constexpr double kLongestPageEdge = 1e6;        // of the whole page at the same scale; Splash counts in int
constexpr double kLeastScale = 1e-3;            // pixels a point
constexpr double kRounding = 1e-3;              // of a pixel: an edge that close to a whole pixel lies on it
constexpr std::uint64_t kMostChecks = 1000000;  // calls of the abort hook on one page, each some ten operators

bool shouldStop(void* checks) { return ++*static_cast<std::uint64_t*>(checks) > kMostChecks; }

Error noSuchPage(int page, int pages) { return {ErrorKind::Usage, fmt::format("page {} does not exist; the document has {}", page, pages), {}, page}; }

// Whole pixels of the page, left and top counted from its corner.
struct Slice {
    int left, top, width, height;
};

Slice sliceOf(Rect const& box, double scale) {
    auto const first = [scale](double edge) { return static_cast<int>(std::floor(edge * scale + kRounding)); };
    auto const last = [scale](double edge) { return static_cast<int>(std::ceil(edge * scale - kRounding)); };
    int const left = first(box.x0);
    int const top = first(box.y0);
    return {left, top, std::max(1, last(box.x1) - left), std::max(1, last(box.y1) - top)};
}

// The wanted scale, or a smaller one with which the picture keeps its bounds.
double boundedScale(double wanted, Rect const& box, Rect const& page) {
    auto const longer = [](Rect const& r) { return static_cast<double>(std::max(r.width(), r.height())); };
    double scale = std::min({wanted, kLongestEdge / longer(box), kLongestPageEdge / longer(page)});
    double const pixels = static_cast<double>(box.area()) * scale * scale;
    if (pixels > kMostPixels) scale *= std::sqrt(kMostPixels / pixels);
    return scale;
}

Picture pictureOf(SplashBitmap const& bitmap, Slice const& slice, double scale) {
    Picture picture;
    picture.width = std::min(bitmap.getWidth(), slice.width);
    picture.height = std::min(bitmap.getHeight(), slice.height);
    auto const points = [scale](int pixels) { return static_cast<model::Points>(pixels / scale); };
    picture.box = {points(slice.left), points(slice.top), points(slice.left + picture.width), points(slice.top + picture.height)};
    auto const rowBytes = static_cast<std::size_t>(picture.width) * 3;
    picture.rgb.reserve(rowBytes * static_cast<std::size_t>(picture.height));
    for (int row = 0; row < picture.height; ++row) {
        auto const* start = bitmap.getDataPtr() + static_cast<std::ptrdiff_t>(row) * bitmap.getRowSize();
        picture.rgb.insert(picture.rgb.end(), start, start + rowBytes);
    }
    return picture;
}

}  // namespace

struct PagePicture::Document {
    std::string bytes;  // before `pdf`, which reads in them to its end
    std::unique_ptr<PDFDoc> pdf;
    std::unique_ptr<SplashOutputDev> device;  // keeps the fonts of the document from picture to picture
};

PagePicture::PagePicture(std::unique_ptr<Document> document) : m_document(std::move(document)) {}
PagePicture::~PagePicture() = default;

model::Result<std::unique_ptr<PagePicture>> PagePicture::open(std::string bytes, std::optional<std::string> const& password) {
    auto document = std::make_unique<Document>();
    document->bytes = std::move(bytes);
    std::vector<std::string> messages;
    auto pdf = openDocument(std::as_bytes(std::span(document->bytes)), password, messages);
    if (!pdf) return tl::unexpected(pdf.error());
    document->pdf = std::move(*pdf);
    SplashColor white = {255, 255, 255};
    constexpr int kRowPad = 1;
    document->device = std::make_unique<SplashOutputDev>(splashModeRGB8, kRowPad, false, white);
    document->device->setFontAntialias(true);
    document->device->setVectorAntialias(true);
    MessageSink const sink(messages);
    document->device->startDoc(document->pdf.get());
    return std::unique_ptr<PagePicture>(new PagePicture(std::move(document)));
}

int PagePicture::pageCount() const { return m_document->pdf->getNumPages(); }

model::Result<Rect> PagePicture::pageBox(int page) const {
    if (page < 1 || page > pageCount()) return tl::unexpected(noSuchPage(page, pageCount()));
    std::vector<std::string> messages;
    MessageSink const sink(messages);
    Page const* source = m_document->pdf->getPage(page);
    Error const damaged{ErrorKind::Damaged, "this page is damaged and cannot be shown", {}, page};
    if (source == nullptr || !source->isOk()) return tl::unexpected(damaged);
    auto width = static_cast<model::Points>(source->getCropWidth());
    auto height = static_cast<model::Points>(source->getCropHeight());
    if (source->getRotate() % 180 != 0) std::swap(width, height);
    if (!(width > 0 && height > 0)) return tl::unexpected(damaged);
    return Rect{0, 0, width, height};
}

model::Result<Picture> PagePicture::render(int page, Rect const& box, double pixelsPerPoint) {
    auto const whole = pageBox(page);
    if (!whole) return tl::unexpected(whole.error());
    if (!std::isfinite(pixelsPerPoint) || pixelsPerPoint < kLeastScale) return tl::unexpected(Error{ErrorKind::Usage, "the scale of a picture has to be a positive number", {}, page});
    Rect const shown = model::intersection(box, *whole);
    if (!(shown.width() > 0 && shown.height() > 0)) return tl::unexpected(Error{ErrorKind::Usage, "the place lies outside the page", {}, page});
    double const scale = boundedScale(pixelsPerPoint, shown, *whole);
    Slice const slice = sliceOf(shown, scale);
    std::vector<std::string> messages;
    MessageSink const sink(messages);
    std::uint64_t checks = 0;
    double const dpi = kPointsAnInch * scale;
    m_document->pdf->displayPageSlice(m_document->device.get(), page, dpi, dpi, 0, false, true, false, slice.left, slice.top, slice.width, slice.height, shouldStop, &checks,
                                      isShown, nullptr);
    SplashBitmap const* bitmap = m_document->device->getBitmap();
    if (bitmap == nullptr || bitmap->getDataPtr() == nullptr) return tl::unexpected(Error{ErrorKind::Damaged, "this page is damaged and cannot be shown", {}, page});
    return pictureOf(*bitmap, slice, scale);
}

}  // namespace standin::poppler
