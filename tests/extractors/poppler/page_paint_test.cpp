// Paint as Poppler delivers it: lines, areas, images, patterns.
#include "extractors/poppler/document_reader.h"

#include <gtest/gtest.h>

#include "extractors/poppler/read_helper.h"

namespace standin::poppler {
namespace {

using model::Rule;
using testing::PdfPage;
using testing::PdfWriter;

TEST(PagePaint, StrokesAreRules) {
    auto const page = readPage(PdfPage{"0.5 w 0 0 1 RG 20 150 m 120 150 l S 2 w 50 20 m 50 100 l S"});
    ASSERT_EQ(page.rules.size(), 2U);
    EXPECT_EQ(page.rules[0].axis, Rule::Axis::Horizontal);
    EXPECT_TRUE(near(page.rules[0].box, {20, 49.75F, 120, 50.25F}));
    EXPECT_EQ(page.rules[0].colour, 0x0000FFU);
    EXPECT_EQ(page.rules[1].axis, Rule::Axis::Vertical);
    EXPECT_TRUE(near(page.rules[1].box, {49, 100, 51, 180}));
    EXPECT_FALSE(page.rules[0].dashed);
}

TEST(PagePaint, AStrokedBoxHasFourRules) {
    auto const page = readPage(PdfPage{"1 w 20 100 100 50 re S"});
    ASSERT_EQ(page.rules.size(), 4U);
    EXPECT_TRUE(page.fills.empty());
    EXPECT_TRUE(page.drawings.empty());
}

TEST(PagePaint, ThinFillsAreRulesAndOthersFills) {
    auto const page = readPage(PdfPage{"20 150 100 0.6 re f 0.8 g 20 100 100 30 re f"});
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_TRUE(near(page.rules[0].box, {20, 49.4F, 120, 50}));
    ASSERT_EQ(page.fills.size(), 1U);
    EXPECT_TRUE(near(page.fills[0].box, {20, 70, 120, 100}));
    EXPECT_EQ(page.fills[0].colour, 0xCCCCCCU);
}

TEST(PagePaint, ABoxOverABoxLeavesItsEdges) {
    auto const page = readPage(PdfPage{"0 g 20 100 100 50 re f 1 g 20.5 100.5 99 49 re f"});
    EXPECT_EQ(page.rules.size(), 4U);
    ASSERT_EQ(page.fills.size(), 1U);
    EXPECT_EQ(page.fills[0].colour, 0xFFFFFFU);
    for (auto const& rule : page.rules) EXPECT_EQ(rule.colour, 0U);
}

TEST(PagePaint, DashesAreMarkedAndJoined) {
    std::string content = "[3 2] 0 d 20 150 m 120 150 l S [] 0 d ";
    for (int x = 20; x < 120; x += 5) content += fmt::format("{} 50 m {} 50 l S ", x, x + 3);
    auto const page = readPage(PdfPage{content});
    ASSERT_EQ(page.rules.size(), 2U);
    for (auto const& rule : page.rules) EXPECT_TRUE(rule.dashed);
    EXPECT_NEAR(page.rules[1].box.x0, 20, 0.01);
    EXPECT_NEAR(page.rules[1].box.x1, 118, 0.01);
}

TEST(PagePaint, ClipsHide) {
    auto const page = readPage(PdfPage{"q 50 0 50 200 re W n 1 w 20 150 m 120 150 l S 20 20 m 20 100 l S 0.5 g 0 20 200 40 re f Q"});
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_TRUE(near(page.rules[0].box, {50, 49.5F, 100, 50.5F}));
    ASSERT_EQ(page.fills.size(), 1U);
    EXPECT_TRUE(near(page.fills[0].box, {50, 140, 100, 180}));
}

TEST(PagePaint, WhiteLinesShowOnlyOnColour) {
    auto const page = readPage(PdfPage{"1 G 1 w 20 190 m 120 190 l S 0.5 g 20 100 100 50 re f 20 120 m 120 120 l S"});
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_NEAR(page.rules[0].box.y0, 79.5, 0.01);
}

TEST(PagePaint, CurvesAndSlantsAreDrawingsKnownByShape) {
    auto const page = readPage(PdfPage{"20 20 m 40 60 60 60 80 20 c S 100 100 m 130 140 l S q 1 0 0 1 40 90 cm 20 20 m 40 60 60 60 80 20 c S Q"});
    EXPECT_TRUE(page.rules.empty());
    ASSERT_EQ(page.drawings.size(), 3U);
    EXPECT_EQ(page.drawings[0].shape, page.drawings[2].shape);
    EXPECT_NE(page.drawings[0].shape, page.drawings[1].shape);
}

TEST(PagePaint, ShadingsAndPatternsArriveOnce) {
    PdfWriter pdf;
    int const tile = pdf.stream("/PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 4 4] /XStep 4 /YStep 4 /Resources << /Font << /F1 3 0 R >> >>", "BT /F1 4 Tf (x) Tj ET");
    PdfPage source;
    source.content = "/Pattern cs /T scn 20 100 100 50 re f 20 80 100 0.5 re f /S scn 20 20 100 40 re f";
    source.resources = fmt::format(
        "/Pattern << /T {} 0 R /S << /PatternType 2 /Shading << /ShadingType 2 /ColorSpace /DeviceGray /Coords [20 0 120 0] /Function << /FunctionType 2 /Domain [0 1] /C0 [0.8] "
        "/C1 [0.8] /N 1 >> >> >> >>",
        tile);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    EXPECT_TRUE(page.glyphs.empty());
    ASSERT_EQ(page.drawings.size(), 1U);
    EXPECT_TRUE(near(page.drawings[0].box, {20, 50, 120, 100}));
    ASSERT_EQ(page.rules.size(), 1U);  // a rule filled with the pattern
    EXPECT_NEAR(page.rules[0].box.width(), 100, 1.1);
    ASSERT_EQ(page.fills.size(), 1U);
    EXPECT_TRUE(near(page.fills[0].box, {20, 140, 120, 180}));
    EXPECT_EQ(page.fills[0].colour, 0xCCCCCCU);
}

TEST(PagePaint, ImagesHaveBoxesAndThinOnesAreRules) {
    auto const page = readPage(PdfPage{"q 60 0 0 40 20 100 cm BI /W 2 /H 2 /BPC 8 /CS /G ID abcd EI Q q 100 0 0 0.5 20 50 cm BI /W 1 /H 1 /IM true ID x EI Q BT /F1 10 Tf 20 20 Td (k) Tj ET"});
    ASSERT_EQ(page.images.size(), 1U);
    EXPECT_TRUE(near(page.images[0].box, {20, 60, 80, 100}));
    EXPECT_EQ(page.images[0].pixelWidth, 2);
    ASSERT_EQ(page.rules.size(), 1U);
    EXPECT_EQ(textOf(page), "k");  // the image's data was not taken for text
}

TEST(PagePaint, ImagesAreToldApartByWhatTheyHold) {
    auto const inlineImage = [](std::string const& data) {
        auto const page = readPage(PdfPage{"q 60 0 0 40 20 100 cm BI /W 2 /H 2 /BPC 8 /CS /G ID " + data + " EI Q"});
        return page.images.empty() ? 0 : page.images[0].content;
    };
    EXPECT_EQ(inlineImage("abcd"), inlineImage("abcd"));
    EXPECT_NE(inlineImage("abcd"), inlineImage("abce"));
    auto const objectImage = [](std::string const& data) {
        PdfWriter pdf;
        int const image = pdf.stream("/Type /XObject /Subtype /Image /Width 20 /Height 20 /BitsPerComponent 8 /ColorSpace /DeviceGray", data);
        pdf.page({.content = "q 60 0 0 40 20 100 cm /I Do Q q 60 0 0 40 20 20 cm /I Do Q", .resources = fmt::format("/XObject << /I {} 0 R >>", image)});
        auto const page = readPage(pdf.bytes());
        EXPECT_EQ(page.images.size(), 2U);
        EXPECT_EQ(page.images.at(0).content, page.images.at(1).content);
        return page.images.at(0).content;
    };
    std::string pixels(400, 'a');
    auto const first = objectImage(pixels);
    EXPECT_EQ(first, objectImage(pixels));
    pixels[399] = 'b';
    EXPECT_NE(first, objectImage(pixels));
}

// Recognised text of a scan lies under its picture.
TEST(PagePaint, TextUnderAPictureIsInvisible) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (5) Tj ET q 200 0 0 200 0 0 cm BI /W 1 /H 1 /BPC 8 /CS /G ID a EI Q"});
    ASSERT_EQ(page.glyphs.size(), 1U);
    EXPECT_TRUE(page.glyphs[0].invisible);
}

}  // namespace
}  // namespace standin::poppler
