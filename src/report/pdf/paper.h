// Paper: pages of a PDF that fill from top to bottom. This folder is the only
// one that includes Pango and Cairo; no type of theirs is visible here.
//
// Defines: Ink, inks, TextSize, Weight, Run, Paragraph, Paper.
//
//     Paper paper({.title = …, .pagesInAll = 0});  // a first pass counts the pages
//     paper.heading(1, "Cautions");
//     paper.write(paragraph("The candidate may …"), paper.left(), paper.width());
//     std::string const bytes = paper.finish();
//
// Lengths are points (1/72 inch), origin at the top left of the page, y down.
// The same calls give the same bytes: nothing holds a time.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "model/page_picture.h"

namespace standin::report {

struct Ink {
    double red = 0;
    double green = 0;
    double blue = 0;
};

namespace inks {
inline constexpr Ink kText{0.114, 0.141, 0.188};
inline constexpr Ink kSoft{0.353, 0.388, 0.447};
inline constexpr Ink kEdge{0.80, 0.79, 0.75};
inline constexpr Ink kGround{0.957, 0.953, 0.937};
inline constexpr Ink kReference{0.184, 0.302, 0.420};  // slate
inline constexpr Ink kCandidate{0.643, 0.384, 0.047};  // ochre
}  // namespace inks

enum class TextSize : std::uint8_t { Small, Body, Subheading, Heading, Title };
enum class Weight : std::uint8_t { Normal, Bold };

// Characters that Pango must not meet in foreign text are shown by number.
struct Run {
    std::string text;
    Ink ink = inks::kText;
    Weight weight = Weight::Normal;
};

struct Paragraph {
    std::vector<Run> runs;
    TextSize size = TextSize::Body;
};

[[nodiscard]] Paragraph paragraph(std::string text, TextSize size = TextSize::Body, Ink ink = inks::kText, Weight weight = Weight::Normal);

struct PlacedPoint {
    double x = 0;
    double y = 0;
};

// What stands on every page and in the document's properties.
struct PaperTexts {
    std::string title;
    std::string subject;
    std::string runningHead;  // from the second page on
    std::string foot;
    int pagesInAll = 0;  // 0: not known yet, this pass only counts
};

class Paper {
public:
    explicit Paper(PaperTexts texts);
    Paper(Paper const&) = delete;
    Paper& operator=(Paper const&) = delete;
    ~Paper();

    [[nodiscard]] double left() const;
    [[nodiscard]] double width() const;   // between the margins
    [[nodiscard]] double y() const;       // where the next thing goes
    [[nodiscard]] double room() const;    // height left on this page
    [[nodiscard]] double pageRoom() const;  // height of an empty page
    [[nodiscard]] int page() const;       // from 1

    void advance(double height);  // leaves room; none at the top of a page
    void moveTo(double y);        // on this page
    void newPage();
    // A new page where less than `height` is left, unless an empty page has no more.
    void keep(double height);

    [[nodiscard]] double heightOf(Paragraph const& paragraph, double width) const;

    // Writes at y() and goes below; lines that do not fit go to the next page.
    void write(Paragraph const& paragraph, double x, double width);

    // The same with an upright bar of colour `bar` at the left of the text.
    void writeWithBar(Paragraph const& paragraph, double x, double width, Ink bar);

    // A heading that stays on one page with the first `keepWith` of what follows,
    // and its entry in the outline.
    void heading(Paragraph const& shown, double keepWith);

    // An entry of the outline for what stands at y(); those of level 2 lie under
    // the last of level 1.
    void bookmark(int level, std::string const& text);

    void line(PlacedPoint from, PlacedPoint to, Ink ink, double thickness);
    void dottedLine(PlacedPoint from, PlacedPoint to, Ink ink, double thickness);
    void polyline(std::vector<PlacedPoint> const& points, Ink ink, double thickness);
    void polygon(std::vector<PlacedPoint> const& points, Ink ink, double opacity);
    void frame(double x, double y, double width, double height, Ink ink, double thickness);
    void picture(model::Picture const& picture, double x, double y, double width, double height);

    // Ends the document. Its bytes, or none where it could not be made or this
    // pass only counts.
    [[nodiscard]] std::string finish();

private:
    struct Surface;
    std::unique_ptr<Surface> m_surface;
};

}  // namespace standin::report
