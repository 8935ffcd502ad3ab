// Pango breaks a paragraph into lines, Cairo paints them line by line so that a
// page may end between any two. A pass that only counts paints as well, into
// nothing, but leaves pictures out. Cairo would write the time of day into the
// file: the dates are taken out.
//
// Tested by tests/src/report/pdf/paper_test.cpp.
#include "report/pdf/paper.h"

#include <algorithm>
#include <utility>

#include <cairo-pdf.h>
#include <fmt/format.h>
#include <pango/pangocairo.h>

#include "text/visible.h"

namespace standin::report {

namespace {

constexpr double kPageWidth = 595.276;  // A4
constexpr double kPageHeight = 841.89;
constexpr double kSideMargin = 45;
constexpr double kTop = 54;
constexpr double kBottom = 792;  // of what is written; the foot stands below
constexpr double kHeadBaseline = 34;
constexpr double kFootTop = 806;
constexpr double kBarWidth = 2.5;
constexpr double kBarGap = 6;
constexpr char const* kFontFamilies = "DejaVu Sans, Noto Sans, sans-serif";

double pointsOf(TextSize size) {
    switch (size) {
        case TextSize::Small: return 7.2;
        case TextSize::Body: return 8.4;
        case TextSize::Subheading: return 9.4;
        case TextSize::Heading: return 12.5;
        case TextSize::Title: return 16;
    }
    return 8.4;
}

struct Release {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
    void operator()(cairo_t* context) const { cairo_destroy(context); }
    void operator()(PangoLayout* layout) const { g_object_unref(layout); }
    void operator()(PangoContext* context) const { g_object_unref(context); }
    void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
    void operator()(PangoLayoutIter* lines) const { pango_layout_iter_free(lines); }
    void operator()(PangoAttrList* attributes) const { pango_attr_list_unref(attributes); }
};
template <class T>
using Held = std::unique_ptr<T, Release>;

cairo_status_t appendTo(void* bytes, unsigned char const* part, unsigned length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<char const*>(part), length);
    return CAIRO_STATUS_SUCCESS;
}

cairo_status_t throwAway(void*, unsigned char const*, unsigned) { return CAIRO_STATUS_SUCCESS; }

void colour(PangoAttrList* attributes, Run const& run, unsigned start, unsigned end) {
    auto const part = [](double share) { return static_cast<guint16>(share * 65535); };
    auto* ink = pango_attr_foreground_new(part(run.ink.red), part(run.ink.green), part(run.ink.blue));
    ink->start_index = start;
    ink->end_index = end;
    pango_attr_list_insert(attributes, ink);
    if (run.weight == Weight::Normal) return;
    auto* weight = pango_attr_weight_new(PANGO_WEIGHT_BOLD);
    weight->start_index = start;
    weight->end_index = end;
    pango_attr_list_insert(attributes, weight);
}

// Pictures as Cairo wants them: four bytes a pixel in the machine's order.
Held<cairo_surface_t> imageOf(model::Picture const& picture) {
    Held<cairo_surface_t> image(cairo_image_surface_create(CAIRO_FORMAT_RGB24, picture.width, picture.height));
    if (cairo_surface_status(image.get()) != CAIRO_STATUS_SUCCESS) return nullptr;
    cairo_surface_flush(image.get());
    auto* const pixels = cairo_image_surface_get_data(image.get());
    int const stride = cairo_image_surface_get_stride(image.get());
    std::uint8_t const* from = picture.rgb.data();
    for (int row = 0; row < picture.height; ++row) {
        auto* to = reinterpret_cast<std::uint32_t*>(pixels + static_cast<std::ptrdiff_t>(row) * stride);
        for (int column = 0; column < picture.width; ++column, from += 3) *to++ = static_cast<std::uint32_t>(from[0]) << 16 | static_cast<std::uint32_t>(from[1]) << 8 | from[2];
    }
    cairo_surface_mark_dirty(image.get());
    return image;
}

}  // namespace

Paragraph paragraph(std::string text, TextSize size, Ink ink, Weight weight) { return {{{std::move(text), ink, weight}}, size}; }

struct Paper::Surface {
    PaperTexts texts;
    std::string bytes;
    Held<cairo_surface_t> pdf;
    Held<cairo_t> cairo;
    Held<PangoContext> pango;
    double y = kTop;
    int page = 1;
    int lastBookmark = CAIRO_PDF_OUTLINE_ROOT;

    [[nodiscard]] bool counts() const { return texts.pagesInAll == 0; }

    [[nodiscard]] Held<PangoLayout> layoutOf(Paragraph const& paragraph, double width) const {
        Held<PangoLayout> layout(pango_layout_new(pango.get()));
        Held<PangoFontDescription> const font(pango_font_description_from_string(kFontFamilies));
        pango_font_description_set_absolute_size(font.get(), pointsOf(paragraph.size) * PANGO_SCALE);
        pango_layout_set_font_description(layout.get(), font.get());
        pango_layout_set_width(layout.get(), static_cast<int>(std::max(1.0, width) * PANGO_SCALE));
        pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
        pango_layout_set_auto_dir(layout.get(), FALSE);
        Held<PangoAttrList> const attributes(pango_attr_list_new());
        std::string text;
        for (auto const& run : paragraph.runs) {
            auto const start = static_cast<unsigned>(text.size());
            text += text::visible(run.text);
            colour(attributes.get(), run, start, static_cast<unsigned>(text.size()));
        }
        pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
        pango_layout_set_attributes(layout.get(), attributes.get());
        return layout;
    }

    void ink(Ink const& ink, double opacity = 1) const { cairo_set_source_rgba(cairo.get(), ink.red, ink.green, ink.blue, opacity); }

    void writeAt(Paragraph const& paragraph, double x, double top, double width, PangoAlignment alignment) const {
        auto const layout = layoutOf(paragraph, width);
        pango_layout_set_alignment(layout.get(), alignment);
        pango_layout_set_height(layout.get(), -1);  // one line
        pango_layout_set_ellipsize(layout.get(), PANGO_ELLIPSIZE_END);
        cairo_move_to(cairo.get(), x, top);
        pango_cairo_show_layout(cairo.get(), layout.get());
    }

    void headAndFoot() const {
        double const width = kPageWidth - 2 * kSideMargin;
        if (page > 1) writeAt(paragraph(texts.runningHead, TextSize::Small, inks::kSoft), kSideMargin, kHeadBaseline - 10, width, PANGO_ALIGN_LEFT);
        ink(inks::kEdge);
        cairo_set_line_width(cairo.get(), 0.5);
        for (double const at : {kHeadBaseline + 4, kFootTop - 4}) {
            if (page == 1 && at < kTop) continue;
            cairo_move_to(cairo.get(), kSideMargin, at);
            cairo_line_to(cairo.get(), kPageWidth - kSideMargin, at);
            cairo_stroke(cairo.get());
        }
        constexpr double kNumberWidth = 90;
        writeAt(paragraph(texts.foot, TextSize::Small, inks::kSoft), kSideMargin, kFootTop, width - kNumberWidth, PANGO_ALIGN_LEFT);
        writeAt(paragraph(fmt::format("page {} of {}", page, texts.pagesInAll), TextSize::Small, inks::kSoft), kPageWidth - kSideMargin - kNumberWidth, kFootTop, kNumberWidth, PANGO_ALIGN_RIGHT);
    }

    void trace(std::vector<PlacedPoint> const& points) const {
        cairo_new_path(cairo.get());
        for (auto const& point : points) cairo_line_to(cairo.get(), point.x, point.y);
    }
};

Paper::Paper(PaperTexts texts) : m_surface(std::make_unique<Surface>()) {
    auto& surface = *m_surface;
    surface.texts = std::move(texts);
    surface.pdf.reset(cairo_pdf_surface_create_for_stream(surface.counts() ? throwAway : appendTo, &surface.bytes, kPageWidth, kPageHeight));
    auto const property = [&](cairo_pdf_metadata_t which, char const* value) { cairo_pdf_surface_set_metadata(surface.pdf.get(), which, value); };
    property(CAIRO_PDF_METADATA_TITLE, text::visible(surface.texts.title).c_str());
    property(CAIRO_PDF_METADATA_SUBJECT, text::visible(surface.texts.subject).c_str());
    property(CAIRO_PDF_METADATA_CREATOR, "Standin");
    property(CAIRO_PDF_METADATA_CREATE_DATE, nullptr);
    property(CAIRO_PDF_METADATA_MOD_DATE, nullptr);
    surface.cairo.reset(cairo_create(surface.pdf.get()));
    surface.pango.reset(pango_cairo_create_context(surface.cairo.get()));
    // Glyphs where the design puts them, not where some screen's pixels are.
    auto* const options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(surface.pango.get(), options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(surface.pango.get(), FALSE);
    pango_context_set_language(surface.pango.get(), pango_language_from_string("en"));  // not the user's
}

Paper::~Paper() = default;

double Paper::left() const { return kSideMargin; }
double Paper::width() const { return kPageWidth - 2 * kSideMargin; }
double Paper::y() const { return m_surface->y; }
double Paper::room() const { return kBottom - m_surface->y; }
double Paper::pageRoom() const { return kBottom - kTop; }
int Paper::page() const { return m_surface->page; }

void Paper::advance(double height) {
    if (m_surface->y > kTop) m_surface->y += height;
}

void Paper::moveTo(double y) { m_surface->y = y; }

void Paper::newPage() {
    m_surface->headAndFoot();
    cairo_show_page(m_surface->cairo.get());
    ++m_surface->page;
    m_surface->y = kTop;
}

void Paper::keep(double height) {
    if (height > room() && m_surface->y > kTop) newPage();
}

double Paper::heightOf(Paragraph const& paragraph, double width) const {
    int height = 0;
    pango_layout_get_size(m_surface->layoutOf(paragraph, width).get(), nullptr, &height);
    return static_cast<double>(height) / PANGO_SCALE;
}

void Paper::write(Paragraph const& paragraph, double x, double width) {
    auto const layout = m_surface->layoutOf(paragraph, width);
    Held<PangoLayoutIter> const lines(pango_layout_get_iter(layout.get()));
    do {
        PangoRectangle logical;
        pango_layout_iter_get_line_extents(lines.get(), nullptr, &logical);
        double const height = static_cast<double>(logical.height) / PANGO_SCALE;
        keep(height);
        double const baseline = static_cast<double>(pango_layout_iter_get_baseline(lines.get()) - logical.y) / PANGO_SCALE;
        cairo_move_to(m_surface->cairo.get(), x, m_surface->y + baseline);
        m_surface->ink(inks::kText);
        pango_cairo_show_layout_line(m_surface->cairo.get(), pango_layout_iter_get_line_readonly(lines.get()));
        m_surface->y += height;
    } while (pango_layout_iter_next_line(lines.get()) != FALSE);
}

void Paper::writeWithBar(Paragraph const& paragraph, double x, double width, Ink bar) {
    int const firstPage = page();
    double const firstTop = y();
    write(paragraph, x + kBarWidth + kBarGap, width - kBarWidth - kBarGap);
    // The bar of a text that goes on overleaf stands where it ends.
    double const top = page() == firstPage ? firstTop : kTop;
    line({x + kBarWidth / 2, top}, {x + kBarWidth / 2, y()}, bar, kBarWidth);
}

void Paper::heading(Paragraph const& shown, double keepWith) {
    keep(heightOf(shown, width()) + keepWith);
    std::string text;
    for (auto const& run : shown.runs) text += run.text;
    bookmark(1, text);
    write(shown, left(), width());
    advance(3);
}

void Paper::bookmark(int level, std::string const& text) {
    if (m_surface->counts()) return;
    int const parent = level > 1 ? m_surface->lastBookmark : CAIRO_PDF_OUTLINE_ROOT;
    auto const place = fmt::format("page={} pos=[{:.1f} {:.1f}]", m_surface->page, kSideMargin, m_surface->y);
    int const id = cairo_pdf_surface_add_outline(m_surface->pdf.get(), parent, text::visible(text).c_str(), place.c_str(), static_cast<cairo_pdf_outline_flags_t>(0));
    if (level <= 1) m_surface->lastBookmark = id;
}

void Paper::line(PlacedPoint from, PlacedPoint to, Ink ink, double thickness) { polyline({from, to}, ink, thickness); }

void Paper::dottedLine(PlacedPoint from, PlacedPoint to, Ink ink, double thickness) {
    constexpr double kDots[] = {2, 2};
    cairo_set_dash(m_surface->cairo.get(), kDots, 2, 0);
    polyline({from, to}, ink, thickness);
    cairo_set_dash(m_surface->cairo.get(), nullptr, 0, 0);
}

void Paper::polyline(std::vector<PlacedPoint> const& points, Ink ink, double thickness) {
    m_surface->ink(ink);
    cairo_set_line_width(m_surface->cairo.get(), thickness);
    m_surface->trace(points);
    cairo_stroke(m_surface->cairo.get());
}

void Paper::polygon(std::vector<PlacedPoint> const& points, Ink ink, double opacity) {
    m_surface->ink(ink, opacity);
    m_surface->trace(points);
    cairo_close_path(m_surface->cairo.get());
    cairo_fill(m_surface->cairo.get());
}

void Paper::frame(double x, double y, double width, double height, Ink ink, double thickness) {
    m_surface->ink(ink);
    cairo_set_line_width(m_surface->cairo.get(), thickness);
    cairo_rectangle(m_surface->cairo.get(), x, y, width, height);
    cairo_stroke(m_surface->cairo.get());
}

void Paper::picture(model::Picture const& picture, double x, double y, double width, double height) {
    if (m_surface->counts() || picture.width <= 0 || picture.height <= 0) return;
    auto const image = imageOf(picture);
    if (!image) return;
    auto* const cairo = m_surface->cairo.get();
    cairo_save(cairo);
    cairo_translate(cairo, x, y);
    cairo_scale(cairo, width / picture.width, height / picture.height);
    cairo_set_source_surface(cairo, image.get(), 0, 0);
    cairo_rectangle(cairo, 0, 0, picture.width, picture.height);
    cairo_fill(cairo);
    cairo_restore(cairo);
}

std::string Paper::finish() {
    m_surface->headAndFoot();
    cairo_show_page(m_surface->cairo.get());
    m_surface->pango.reset();
    m_surface->cairo.reset();
    cairo_surface_finish(m_surface->pdf.get());
    if (cairo_surface_status(m_surface->pdf.get()) != CAIRO_STATUS_SUCCESS) return {};
    return std::move(m_surface->bytes);
}

}  // namespace standin::report
