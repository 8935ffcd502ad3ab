// Text: boxes, directions, spacing, characters, visibility.
#include "extractors/poppler/document_reader.h"

#include <cmath>

#include <gtest/gtest.h>

#include "extractors/poppler/read_helper.h"

namespace standin::poppler {
namespace {

using model::Direction;
using testing::PdfPage;
using testing::PdfWriter;

TEST(PageText, GivesBoxBaselineFontAndColour) {
    auto const page = readPage(PdfPage{"BT 1 0 0 rg /F2 10 Tf 20 150 Td (H) Tj ET"});
    ASSERT_EQ(page.glyphs.size(), 1U);
    auto const& glyph = page.glyphs[0];
    EXPECT_EQ(glyph.code, U'H');
    EXPECT_FLOAT_EQ(glyph.origin.x, 20);
    EXPECT_FLOAT_EQ(glyph.origin.y, 50);
    EXPECT_NEAR(glyph.box.x1, 27.22, 0.01);  // 722 thousandths
    EXPECT_LT(glyph.box.y0, 43);
    EXPECT_GT(glyph.box.y1, 51);
    EXPECT_FLOAT_EQ(glyph.size, 10);
    EXPECT_EQ(glyph.colour, 0xFF0000U);
    EXPECT_EQ(glyph.direction, Direction::Right);
    EXPECT_FALSE(glyph.invisible);
    EXPECT_FALSE(glyph.outside);
    ASSERT_EQ(page.fonts.size(), 1U);
    EXPECT_EQ(page.fonts[0].name, "Helvetica-Bold");
    EXPECT_TRUE(page.fonts[0].bold);
    EXPECT_FALSE(page.fonts[0].embedded);
    EXPECT_TRUE(page.fonts[0].unicodeKnown);
}

// The page is shown turned: places are those of the page as displayed.
TEST(PageText, AppliesRotationAndCropBox) {
    struct Case {
        int rotate;
        Direction direction;
        float x;
        float y;
    };
    // Crop box from (50, 20), 120 by 150; text starts at (60, 100).
    for (Case const& c : {Case{0, Direction::Right, 10, 70}, Case{90, Direction::Down, 80, 10}, Case{180, Direction::Left, 110, 80}, Case{270, Direction::Up, 70, 110}}) {
        PdfPage source;
        source.content = "BT /F1 10 Tf 60 100 Td (7) Tj ET";
        source.entries = fmt::format("/CropBox [50 20 170 170] /Rotate {}", c.rotate);
        auto const page = readPage(source);
        ASSERT_EQ(page.glyphs.size(), 1U) << c.rotate;
        EXPECT_EQ(page.rotation, c.rotate);
        EXPECT_EQ(page.width, c.rotate % 180 == 0 ? 120 : 150);
        EXPECT_EQ(page.glyphs[0].direction, c.direction) << c.rotate;
        EXPECT_NEAR(page.glyphs[0].origin.x, c.x, 0.01) << c.rotate;
        EXPECT_NEAR(page.glyphs[0].origin.y, c.y, 0.01) << c.rotate;
        EXPECT_FLOAT_EQ(page.glyphs[0].size, 10) << c.rotate;
        EXPECT_TRUE(page.glyphs[0].box.contains(page.glyphs[0].origin)) << c.rotate;
    }
}

TEST(PageText, KnowsTurnedAndSlantedText) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 0 1 -1 0 100 50 Tm (A) Tj 0.7071 0.7071 -0.7071 0.7071 50 50 Tm (B) Tj ET"});
    ASSERT_EQ(page.glyphs.size(), 2U);
    EXPECT_EQ(page.glyphs[0].direction, Direction::Up);
    EXPECT_EQ(page.glyphs[1].direction, Direction::Slanted);
    EXPECT_NEAR(page.glyphs[1].size, 10, 0.01);
}

// How glyphs stand is remembered only until something of it changes.
TEST(PageText, FollowsFontAndMatricesFromStringToString) {
    auto const page =
        readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (0) Tj /F1 5 Tf (0) Tj 2 0 0 2 20 50 Tm (0) Tj 50 Tz (0) Tj 0 2 -2 0 60 50 Tm (0) Tj ET "
                         "q 2 0 0 2 0 0 cm BT 1 0 0 1 10 10 Tm (0) Tj ET Q BT 100 Tz (0) Tj ET"});
    struct Expected {
        float size;
        float advance;  // along the text
        Direction direction;
    };
    Expected const expected[] = {{10, 5.56F, Direction::Right}, {5, 2.78F, Direction::Right},  {10, 5.56F, Direction::Right}, {10, 2.78F, Direction::Right},
                                 {10, 2.78F, Direction::Up},    {10, 2.78F, Direction::Right}, {5, 2.78F, Direction::Right}};
    ASSERT_EQ(page.glyphs.size(), std::size(expected));
    for (std::size_t i = 0; i < std::size(expected); ++i) {
        auto const& glyph = page.glyphs[i];
        EXPECT_NEAR(glyph.size, expected[i].size, 0.01) << i;
        EXPECT_EQ(glyph.direction, expected[i].direction) << i;
        EXPECT_NEAR(glyph.direction == Direction::Up ? glyph.box.height() : glyph.box.width(), expected[i].advance, 0.01) << i;
    }
}

// Spacing is a gap beside the glyph and not a part of it, or cells would glue.
TEST(PageText, TakesSpacingOffTheAdvance) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 3 Tc 20 Tw 50 Tz 20 150 Td (1 2) Tj ET"});
    ASSERT_EQ(page.glyphs.size(), 3U);
    EXPECT_NEAR(page.glyphs[0].box.width(), 2.78, 0.01);
    EXPECT_NEAR(page.glyphs[1].box.width(), 1.39, 0.01);
    EXPECT_NEAR(page.glyphs[1].origin.x, 20 + 2.78 + 1.5, 0.01);
    EXPECT_NEAR(page.glyphs[2].origin.x, 20 + 2.78 + 1.5 + 1.39 + 1.5 + 10, 0.01);
}

TEST(PageText, MarksInvisibleText) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (a) Tj 3 Tr (b) Tj 7 Tr (c) Tj 0 Tr (d) Tj /G gs (e) Tj ET", "/ExtGState << /G << /ca 0 >> >>"});
    ASSERT_EQ(textOf(page), "abcde");
    bool const expected[] = {false, true, true, false, true};
    for (std::size_t i = 0; i < 5; ++i) EXPECT_EQ(page.glyphs[i].invisible, expected[i]) << i;
}

// A half transparent text shows lighter.
TEST(PageText, BlendsColourWithPaper) {
    auto const page = readPage(PdfPage{"BT /G gs /F1 10 Tf 20 150 Td (w) Tj ET", "/ExtGState << /G << /ca 0.2 >> >>"});
    ASSERT_EQ(page.glyphs.size(), 1U);
    EXPECT_EQ(page.glyphs[0].colour, 0xCCCCCCU);
}

TEST(PageText, TextUnderLaterOpaquePaintIsInvisible) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (5) Tj ET 1 g 10 140 60 30 re f 0 g BT /F1 10 Tf 20 150 Td (6) Tj ET"});
    ASSERT_EQ(textOf(page), "56");
    EXPECT_TRUE(page.glyphs[0].invisible);
    EXPECT_FALSE(page.glyphs[1].invisible);
}

// A highlighter that is multiplied onto the page hides nothing.
TEST(PageText, TextUnderSeeThroughPaintStaysVisible) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (5) Tj ET /G gs 1 1 0 rg 10 140 60 30 re f", "/ExtGState << /G << /BM /Multiply >> >>"});
    ASSERT_EQ(page.glyphs.size(), 1U);
    EXPECT_FALSE(page.glyphs[0].invisible);
}

TEST(PageText, MarksTextOutsideThePageAndTheClip) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (a) Tj 400 0 Td (b) Tj ET q 0 0 50 50 re W n BT /F1 10 Tf 20 150 Td (c) Tj 0 -130 Td (d) Tj ET Q"});
    ASSERT_EQ(textOf(page), "abcd");
    bool const expected[] = {false, true, true, false};
    for (std::size_t i = 0; i < 4; ++i) EXPECT_EQ(page.glyphs[i].outside, expected[i]) << i;
}

TEST(PageText, FollowsClipsFromStringToString) {
    auto const page =
        readPage(PdfPage{"BT /F1 10 Tf 20 150 Td (a) Tj ET q BT 20 150 Td (b) Tj ET 0 0 100 50 re W n BT 20 150 Td (c) Tj 0 -130 Td (d) Tj ET "
                         "0 0 10 10 re W* n BT 20 20 Td (e) Tj ET Q BT 20 150 Td (f) Tj ET"});
    ASSERT_EQ(textOf(page), "abcdef");
    bool const expected[] = {false, false, true, false, true, false};
    for (std::size_t i = 0; i < std::size(expected); ++i) EXPECT_EQ(page.glyphs[i].outside, expected[i]) << i;
}

TEST(PageText, ReadsSymbolFonts) {
    auto const page = readPage(PdfPage{"BT /FS 10 Tf 20 150 Td (W m \\260\\261\\243\\263) Tj ET"});
    std::u32string codes;
    for (auto const& glyph : page.glyphs) codes += glyph.code == 0x2126 ? char32_t{0x03A9} : glyph.code == 0x00B5 ? char32_t{0x03BC} : glyph.code;
    EXPECT_EQ(codes, U"\u03A9 \u03BC \u00B0\u00B1\u2264\u2265");
    EXPECT_TRUE(page.fonts.at(0).symbolic);
}

TEST(PageText, SplitsLigatures) {
    PdfPage source;
    source.content = "BT /FD 10 Tf 20 150 Td (\\001) Tj ET";
    source.fonts = "/FD << /Type /Font /Subtype /Type1 /BaseFont /Times-Roman /Encoding << /Differences [1 /fi] >> >>";
    auto const page = readPage(source);
    ASSERT_EQ(textOf(page), "fi");
    EXPECT_NEAR(page.glyphs[0].box.x1, page.glyphs[1].box.x0, 0.001);
    EXPECT_NEAR(page.glyphs[0].box.width(), page.glyphs[1].box.width(), 0.001);
    EXPECT_NEAR(page.glyphs[1].origin.x, page.glyphs[1].box.x0, 0.001);
}

// A number is no character: what it stands for is not known.
TEST(PageText, NumberedGlyphsAreUnknown) {
    PdfPage source;
    source.content = "BT /FD 10 Tf 20 150 Td (\\001AB) Tj ET";
    source.fonts =
        "/FD << /Type /Font /Subtype /Type1 /BaseFont /Plain /FirstChar 1 /LastChar 1 /Widths [500] "
        "/Encoding << /Differences [1 /g123 65 /uni03A9 /mu1] >> >>";
    auto const page = readPage(source);
    ASSERT_EQ(page.glyphs.size(), 3U);
    EXPECT_EQ(page.glyphs[0].code, model::kUnknownCharacter);
    EXPECT_EQ(page.glyphs[1].code, char32_t{0x03A9});
    EXPECT_TRUE(page.glyphs[2].code == 0x00B5 || page.glyphs[2].code == 0x03BC);
    EXPECT_FALSE(page.fonts.at(0).unicodeKnown);
}

TEST(PageText, ReadsType3Fonts) {
    PdfWriter pdf;
    int const program = pdf.stream("", "500 0 0 0 500 700 d1 0 0 500 700 re f");
    int const font = pdf.object(fmt::format("<< /Type /Font /Subtype /Type3 /FontBBox [0 -200 500 800] /FontMatrix [0.001 0 0 0.001 0 0] /FirstChar 65 /LastChar 65 /Widths [500] "
                                            "/Encoding << /Differences [65 /seven] >> /CharProcs << /seven {} 0 R >> >>",
                                            program));
    PdfPage source;
    source.content = "BT /T3 10 Tf 20 150 Td (A) Tj ET";
    source.fonts = fmt::format("/T3 {} 0 R", font);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    ASSERT_EQ(textOf(page), "7");
    EXPECT_TRUE(page.fonts.at(0).type3);
    EXPECT_NEAR(page.glyphs[0].size, 10, 0.01);
    EXPECT_NEAR(page.glyphs[0].box.width(), 5, 0.01);
    EXPECT_TRUE(page.fills.empty());  // the glyph's own drawing is no drawing of the page
    EXPECT_TRUE(page.drawings.empty());
}

// Bitmap fonts carry a box without meaning; the size is that of the letters, not a multiple of it.
TEST(PageText, MeasuresType3FontsWithoutABox) {
    PdfWriter pdf;
    int const program = pdf.stream("", "88 0 0 0 80 80 d1 0 0 80 80 re f");
    int const font = pdf.object(fmt::format("<< /Type /Font /Subtype /Type3 /FontBBox [0 0 1 -1] /FontMatrix [0.0125 0 0 -0.0125 0 0] /FirstChar 65 /LastChar 65 /Widths [80] "
                                            "/Encoding << /Differences [65 /seven] >> /CharProcs << /seven {} 0 R >> >>",
                                            program));
    PdfPage source;
    source.content = "BT /T3 10 Tf 20 150 Td (A) Tj ET";
    source.fonts = fmt::format("/T3 {} 0 R", font);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    ASSERT_EQ(textOf(page), "7");
    EXPECT_NEAR(page.glyphs[0].size, 10, 0.01);
    EXPECT_LT(page.glyphs[0].box.height(), 15);
}

TEST(PageText, ReadsTextInForms) {
    PdfWriter pdf;
    int const form = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 100 100] /Matrix [2 0 0 2 10 10] /Resources << /Font << /F1 3 0 R >> >>", "BT /F1 5 Tf 0 0 Td (9) Tj ET");
    PdfPage source;
    source.content = fmt::format("q /X Do Q");
    source.resources = fmt::format("/XObject << /X {} 0 R >>", form);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    ASSERT_EQ(textOf(page), "9");
    EXPECT_NEAR(page.glyphs[0].size, 10, 0.01);
    EXPECT_NEAR(page.glyphs[0].origin.x, 10, 0.01);
}

// A form that draws itself ends.
TEST(PageText, EndsFormsThatDrawThemselves) {
    PdfWriter pdf;
    int const form = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 100 100] /Resources << /Font << /F1 3 0 R >> /XObject << /X 7 0 R >> >>", "BT /F1 5 Tf 0 0 Td (9) Tj ET /X Do");
    ASSERT_EQ(form, 7);
    PdfPage source;
    source.content = "/X Do";
    source.resources = "/XObject << /X 7 0 R >>";
    pdf.page(source);
    EXPECT_FALSE(readPage(pdf.bytes()).glyphs.empty());
}

TEST(PageText, ReadsVerticalWriting) {
    PdfWriter pdf;
    int const map = pdf.stream("", "1 beginbfchar <0041> <0035> endbfchar");
    int const below = pdf.object("<< /Type /Font /Subtype /CIDFontType2 /BaseFont /Upright /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /DW 1000 >>");
    int const font = pdf.object(fmt::format("<< /Type /Font /Subtype /Type0 /BaseFont /Upright /Encoding /Identity-V /DescendantFonts [{} 0 R] /ToUnicode {} 0 R >>", below, map));
    PdfPage source;
    source.content = "BT /V 10 Tf 100 150 Td <00410041> Tj ET";
    source.fonts = fmt::format("/V {} 0 R", font);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    ASSERT_EQ(textOf(page), "55");
    EXPECT_TRUE(page.glyphs[0].vertical);
    EXPECT_EQ(page.glyphs[0].direction, Direction::Down);
    EXPECT_TRUE(near(page.glyphs[0].box, {95, 50, 105, 60}));
    EXPECT_TRUE(near(page.glyphs[1].box, {95, 60, 105, 70}));
}

// Without a map the codes of such a font are numbers of glyphs.
TEST(PageText, BareGlyphNumbersAreUnknown) {
    PdfWriter pdf;
    int const below = pdf.object("<< /Type /Font /Subtype /CIDFontType2 /BaseFont /Bare /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /DW 500 >>");
    int const font = pdf.object(fmt::format("<< /Type /Font /Subtype /Type0 /BaseFont /Bare /Encoding /Identity-H /DescendantFonts [{} 0 R] >>", below));
    PdfPage source;
    source.content = "BT /B 10 Tf 100 150 Td <00410042> Tj ET";
    source.fonts = fmt::format("/B {} 0 R", font);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    ASSERT_EQ(page.glyphs.size(), 2U);
    EXPECT_EQ(page.glyphs[0].code, model::kUnknownCharacter);
    EXPECT_EQ(page.glyphs[1].code, model::kUnknownCharacter);
}

// The glyph drawn is the one named; a map that tells another digit is wrong.
TEST(PageText, TrustsTheNameOfADigitAgainstTheMap) {
    PdfWriter pdf;
    int const map = pdf.stream("", "1 beginbfchar <33> <0038> endbfchar");
    PdfPage source;
    source.content = "BT /FD 10 Tf 20 150 Td (3) Tj ET";
    source.fonts = fmt::format("/FD << /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding /ToUnicode {} 0 R >>", map);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    EXPECT_EQ(textOf(page), "3");
    EXPECT_EQ(page.notes.size(), 1U);
}

// A micro sign whose map tells the letter m would be a silent factor of a thousand.
TEST(PageText, TheSymbolFontHasNoLatinLettersWhateverItsMapSays) {
    PdfWriter pdf;
    int const map = pdf.stream("", "1 beginbfrange <57> <6D> <0057> endbfrange");
    PdfPage source;
    source.content = "BT /FS 10 Tf 20 150 Td (mW) Tj ET";
    source.fonts = fmt::format("/FS << /Type /Font /Subtype /TrueType /BaseFont /ABCDEF+SymbolMT /Encoding /WinAnsiEncoding /ToUnicode {} 0 R >>", map);
    pdf.page(source);
    EXPECT_EQ(textOf(readPage(pdf.bytes())), "\u00B5\u2126");
}

TEST(PageText, ReplacementTextGivesWayToPrintedDigits) {
    auto const page = readPage(PdfPage{"BT /F1 10 Tf 20 150 Td /Span << /ActualText (4.35) >> BDC (4.25) Tj EMC ET"});
    EXPECT_EQ(textOf(page), "4.25");
    ASSERT_EQ(page.notes.size(), 1U);
    EXPECT_NE(page.notes[0].text.find("4.35"), std::string::npos);
}

TEST(PageText, ReplacementTextTellsUnknownCharacters) {
    PdfPage source;
    source.content = "BT /FD 10 Tf 20 150 Td /Span << /ActualText <FEFF03A9> >> BDC (\\001) Tj EMC ET";
    source.fonts = "/FD << /Type /Font /Subtype /Type1 /BaseFont /Plain /FirstChar 1 /LastChar 1 /Widths [500] /Encoding << /Differences [1 /g123] >> >>";
    auto const page = readPage(source);
    ASSERT_EQ(page.glyphs.size(), 1U);
    EXPECT_EQ(page.glyphs[0].code, char32_t{0x03A9});
    EXPECT_TRUE(page.glyphs[0].fromActualText);
    EXPECT_TRUE(page.notes.empty());
}

TEST(PageText, ReplacementTextOfOutlinesIsLaidOverThem) {
    auto const page = readPage(PdfPage{"/Span << /ActualText (12) >> BDC 20 100 m 30 110 l 40 100 l 40 90 l h f EMC"});
    ASSERT_EQ(textOf(page), "12");
    EXPECT_TRUE(near(page.glyphs[0].box, {20, 90, 30, 110}));
    EXPECT_TRUE(near(page.glyphs[1].box, {30, 90, 40, 110}));
    EXPECT_LT(page.glyphs[1].font, page.fonts.size());
}

// What a soft mask is made of is not printed.
TEST(PageText, LeavesOutSoftMasks) {
    PdfWriter pdf;
    int const mask = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 200 200] /Group << /S /Transparency /CS /DeviceGray >> /Resources << /Font << /F1 3 0 R >> >>", "1 g BT /F1 10 Tf 20 100 Td (mask) Tj ET");
    PdfPage source;
    source.content = "/G gs BT /F1 10 Tf 20 150 Td (page) Tj ET";
    source.resources = fmt::format("/ExtGState << /G << /SMask << /S /Luminosity /G {} 0 R >> >> >>", mask);
    pdf.page(source);
    EXPECT_EQ(textOf(readPage(pdf.bytes())), "page");
}

// Text painted with a shading comes as a clip, but it is seen.
TEST(PageText, TextFilledWithAPatternIsVisible) {
    PdfPage source;
    source.content = "/Pattern cs /P scn BT /F1 10 Tf 20 150 Td (8) Tj ET";
    source.resources =
        "/Pattern << /P << /PatternType 2 /Shading << /ShadingType 2 /ColorSpace /DeviceRGB /Coords [0 0 200 0] /Function << /FunctionType 2 /Domain [0 1] /C0 [1 0 0] "
        "/C1 [0 0 1] /N 1 >> >> >> >>";
    auto const page = readPage(source);
    ASSERT_EQ(textOf(page), "8");
    EXPECT_FALSE(page.glyphs[0].invisible);
    EXPECT_TRUE(page.fills.empty());
    EXPECT_TRUE(page.drawings.empty());
}

TEST(PageText, SurvivesAbsurdCoordinates) {
    auto const page = readPage(PdfPage{"BT /F1 1e30 Tf 1e30 0 0 1e-30 1e38 -1e38 Tm (a) Tj ET 1e30 0 0 1e30 0 0 cm 1e30 1e30 m 1e38 1e38 l S BT /F1 0 Tf (b) Tj ET"});
    for (auto const& glyph : page.glyphs) {
        for (float value : {glyph.box.x0, glyph.box.y0, glyph.box.x1, glyph.box.y1, glyph.size, glyph.origin.x, glyph.origin.y}) EXPECT_TRUE(std::isfinite(value));
        EXPECT_LE(glyph.box.x0, glyph.box.x1);
        EXPECT_LE(glyph.box.y0, glyph.box.y1);
    }
}

TEST(PageText, ReadsAnnotationsButNoLinkBorders) {
    PdfWriter pdf;
    int const look = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 100 20] /Resources << /Font << /F1 3 0 R >> >>", "BT /F1 10 Tf 2 5 Td (stamp) Tj ET");
    PdfPage source;
    source.entries = fmt::format(
        "/Annots [<< /Type /Annot /Subtype /Stamp /Rect [20 100 120 120] /AP << /N {} 0 R >> >> << /Type /Annot /Subtype /Link /Rect [20 20 60 40] /Border [0 0 1] >>]", look);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    EXPECT_EQ(textOf(page), "stamp");
    EXPECT_TRUE(page.rules.empty());
}

}  // namespace
}  // namespace standin::poppler
