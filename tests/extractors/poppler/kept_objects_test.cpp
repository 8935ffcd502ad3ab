// Pages and fonts out of compressed streams, one reader over many pages: the
// same text and the same notes as out of plain ones.
#include "extractors/poppler/kept_objects.h"

#include <gtest/gtest.h>

#include "extractors/poppler/read_helper.h"
#include "support/deflate.h"

namespace standin::poppler {
namespace {

using testing::deflated;
using testing::PdfWriter;

constexpr char const* kFlate = "/Filter /FlateDecode";

std::string line(std::string const& text, int y = 100) { return fmt::format("BT /F1 10 Tf 20 {} Td ({}) Tj ET\n", y, text); }

std::string reference(int object) { return fmt::format("{} 0 R", object); }

std::vector<model::PageContent> pagesOf(PdfWriter const& pdf) {
    std::string const bytes = pdf.bytes();
    auto reader = DocumentReader::open(std::as_bytes(std::span(bytes)), {});
    std::vector<model::PageContent> pages;
    for (int page = 1; reader && page <= reader->pageCount(); ++page) pages.push_back(reader->readPage(page).value_or(model::PageContent{}));
    return pages;
}

TEST(KeptObjects, ReadsCompressedPages) {
    PdfWriter pdf;
    int const first = pdf.stream(kFlate, deflated(line("one 1", 150)));
    int const second = pdf.stream(kFlate, deflated(line("two 2")));
    int const plain = pdf.stream("", line("three 3", 50));
    std::string const all = fmt::format("[{} {} {}]", reference(first), reference(plain), reference(second));
    pdf.page({.contents = reference(first)});
    pdf.page({.contents = all});
    pdf.page({.contents = reference(pdf.object(all))});
    pdf.page({.contents = fmt::format("[{0} {0}]", reference(second))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 4U);
    EXPECT_EQ(textOf(pages[0]), "one 1");
    EXPECT_EQ(textOf(pages[1]), "one 1three 3two 2");
    EXPECT_EQ(textOf(pages[2]), "one 1three 3two 2");
    EXPECT_EQ(textOf(pages[3]), "two 2two 2");
    for (auto const& page : pages) EXPECT_TRUE(page.notes.empty());
}

TEST(KeptObjects, LeavesDamagedAndPredictedPagesToPoppler) {
    std::string const whole = deflated(line("42 mV"));
    std::string rows;  // a PNG predictor that predicts nothing: a zero before each row
    std::string const content = line("17 mV") + std::string(20, ' ');
    for (std::size_t i = 0; i + 8 <= content.size(); i += 8) rows += '\0' + content.substr(i, 8);
    PdfWriter pdf;
    pdf.page({.contents = reference(pdf.stream(kFlate, whole.substr(0, whole.size() - 4)))});
    pdf.page({.contents = reference(pdf.stream("/Filter /FlateDecode /DecodeParms << /Predictor 12 /Columns 8 >>", deflated(rows)))});
    pdf.page({.contents = reference(pdf.stream(kFlate, "no such thing"))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 3U);
    EXPECT_EQ(textOf(pages[0]), "42 mV");
    EXPECT_EQ(textOf(pages[1]), "17 mV");
    EXPECT_EQ(textOf(pages[2]), "");
    EXPECT_FALSE(pages[2].notes.empty());
}

TEST(KeptObjects, ReadsTheFontsOfEveryPageAlike) {
    PdfWriter pdf;
    int const map = pdf.stream(kFlate, deflated("1 beginbfchar <41> <0035> endbfchar"));
    int const font = pdf.object(
        fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /ToUnicode {} /Widths {} /FirstChar 65 /LastChar 65 >>", reference(map), reference(pdf.object("[600]"))));
    for (int page = 0; page < 3; ++page) pdf.page({.content = "BT /F9 10 Tf 20 100 Td (AA) Tj ET", .fonts = "/F9 " + reference(font)});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 3U);
    for (auto const& page : pages) {
        EXPECT_EQ(textOf(page), "55");
        EXPECT_TRUE(near(page.glyphs[1].box, {26, 90.5, 32, 103.5}));
    }
}

TEST(KeptObjects, EndsWithFontsThatNameThemselvesOrEachOther) {
    PdfWriter pdf;
    // "font N" of the file: numbers are given in order, so the next one is known.
    int const one = pdf.object("null") + 1;
    pdf.object(fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /DescendantFonts [{}] >>", reference(one)));
    pdf.object(fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /DescendantFonts [{}] >>", reference(one + 2)));
    pdf.object(fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /DescendantFonts [{}] >>", reference(one + 1)));
    pdf.page({.content = "BT /F8 10 Tf 20 100 Td (A) Tj /F9 10 Tf (B) Tj ET", .fonts = fmt::format("/F8 {} /F9 {}", reference(one), reference(one + 1))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(textOf(pages[0]), "AB");
}

TEST(KeptObjects, LeavesStackedFiltersToPoppler) {
    PdfWriter pdf;
    std::string const inner = deflated(line("8 V"));
    pdf.page({.contents = reference(pdf.stream("/Filter [/FlateDecode /FlateDecode]", deflated(inner)))});
    pdf.page({.contents = reference(pdf.stream("/Filter [/FlateDecode]", inner))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(textOf(pages[0]), "8 V");
    EXPECT_EQ(textOf(pages[1]), "8 V");
}

TEST(KeptObjects, TellsOfADamagedFontOnEachPage) {
    PdfWriter pdf;
    int const encoding = pdf.object("<< /Type /Encoding /Differences [65 /five ) ] >>");
    int const font = pdf.object(fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /Encoding {} >>", reference(encoding)));
    for (int page = 0; page < 3; ++page) pdf.page({.content = "BT /F9 10 Tf 20 100 Td (A) Tj ET", .fonts = "/F9 " + reference(font)});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 3U);
    for (auto const& page : pages) {
        EXPECT_EQ(textOf(page), "5");
        EXPECT_FALSE(page.notes.empty());
        EXPECT_EQ(page.notes.size(), pages[0].notes.size());
    }
}

}  // namespace
}  // namespace standin::poppler
