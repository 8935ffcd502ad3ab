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

std::string big(std::uint32_t value, int bytes) {
    std::string out;
    while (bytes-- > 0) out += static_cast<char>(value >> (8 * bytes) & 0xFFU);
    return out;
}

// A table of one code, for `code`.
std::string characterTable(std::uint32_t code) { return big(6, 2) + big(12, 2) + big(0, 2) + big(code, 2) + big(1, 2) + big(1, 2); }

// A font of two glyphs: byte 0x41 shows the second, which is the digit 5. What tells that stands at the end.
std::string trueTypeProgram() {
    std::string const characters = big(0, 2) + big(2, 2) + big(1, 2) + big(0, 2) + big(20, 4) + big(3, 2) + big(1, 2) + big(32, 4) + characterTable(0x41) + characterTable(0x35);
    std::pair<std::string, std::string> const tables[] = {{"glyf", std::string(4000, '\0')},
                                                          {"head", std::string(54, '\0')},
                                                          {"hhea", std::string(34, '\0') + big(2, 2)},
                                                          {"hmtx", std::string(8, '\0')},
                                                          {"loca", std::string(6, '\0')},
                                                          {"maxp", big(0x5000, 4) + big(2, 2)},
                                                          {"cmap", characters}};
    std::string directory = big(0x10000, 4) + big(std::size(tables), 2) + std::string(6, '\0');
    std::string data;
    std::size_t const start = directory.size() + 16 * std::size(tables);
    for (auto const& [tag, content] : tables) {
        directory += tag + big(0, 4) + big(static_cast<std::uint32_t>(start + data.size()), 4) + big(static_cast<std::uint32_t>(content.size()), 4);
        data += content;
    }
    return directory + data;
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

// The program alone tells what the byte shows; for the pages behind the first its beginning is enough.
TEST(KeptObjects, ReadsAWholeTrueTypeProgramWhereItIsNeeded) {
    PdfWriter pdf;
    int const program = pdf.stream(kFlate, deflated(trueTypeProgram()));
    int const descriptor = pdf.object(fmt::format("<< /Type /FontDescriptor /FontName /ABCDEF+Lathe /Flags 4 /FontBBox [0 0 600 700] /FontFile2 {} >>", reference(program)));
    auto const font = [&] {
        return reference(pdf.object(
            fmt::format("<< /Type /Font /Subtype /TrueType /BaseFont /ABCDEF+Lathe /FirstChar 65 /LastChar 65 /Widths [600] /FontDescriptor {} >>", reference(descriptor))));
    };
    std::string const fonts[] = {font(), font()};
    for (int page = 0; page < 4; ++page) pdf.page({.content = "BT /F9 10 Tf 20 100 Td (A) Tj ET", .fonts = "/F9 " + fonts[page / 2]});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 4U);
    for (auto const& page : pages) {
        EXPECT_EQ(textOf(page), "5");
        EXPECT_TRUE(page.fonts.at(0).embedded);
        EXPECT_TRUE(page.notes.empty());
    }
}

// Forms are drawn within pages and within each other; what is drawn on further pages is read alike.
TEST(KeptObjects, ReadsCompressedFormsWithFontsOfTheirOwn) {
    PdfWriter pdf;
    int const map = pdf.stream(kFlate, deflated("1 beginbfchar <41> <0035> endbfchar"));
    std::string const fonts =
        fmt::format("/Font << /F9 {} >>", reference(pdf.object(fmt::format("<< /Type /Font /Subtype /Type1 /BaseFont /Lathe /ToUnicode {} >>", reference(map)))));
    std::string const form = "/Type /XObject /Subtype /Form /BBox [0 0 200 200] /Filter /FlateDecode";
    int const inner = pdf.stream(fmt::format("{} /Resources << {} >>", form, fonts), deflated("BT /F9 10 Tf 20 100 Td (AA) Tj ET"));
    int const outer =
        pdf.stream(fmt::format("{} /Resources << {} /XObject << /In.1 {} >> >>", form, fonts, reference(inner)), deflated("BT /F9 10 Tf 20 50 Td (A) Tj ET /In.1 Do"));
    std::string const forms = fmt::format("/XObject << /Out {} /In {} >>", reference(outer), reference(inner));
    for (int page = 0; page < 3; ++page) {
        pdf.page({.resources = forms, .contents = reference(pdf.stream(kFlate, deflated(line("3 V") + "q 1 0 0 1 5 0 cm\n/Out\nDo Q /In Do /P << /T (/None Do) >> DP")))});
    }
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 3U);
    for (auto const& page : pages) {
        EXPECT_EQ(textOf(page), "3 V55555");
        EXPECT_TRUE(page.notes.empty());
    }
}

TEST(KeptObjects, EndsWithFormsThatDrawThemselvesOrEachOther) {
    PdfWriter pdf;
    int const one = pdf.object("null") + 1;  // numbers are given in order
    auto const form = [&](int drawn, std::string const& text) {
        std::string const entries = fmt::format("/Type /XObject /Subtype /Form /BBox [0 0 200 200] /Filter /FlateDecode /Resources << /XObject << /Fm {} >> >>", reference(drawn));
        return pdf.stream(entries, deflated(line(text) + "/Fm Do"));
    };
    form(one, "1");
    form(one + 2, "2");
    form(one + 1, "3");
    std::string const forms = fmt::format("/XObject << /Own {} /Each {} >>", reference(one), reference(one + 1));
    pdf.page({.resources = forms, .contents = reference(pdf.stream(kFlate, deflated("/Own Do /Each Do " + line("4"))))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(textOf(pages[0]).back(), '4');
}

TEST(KeptObjects, LeavesDamagedFormsAndPicturesToPoppler) {
    PdfWriter pdf;
    std::string const form = "/Type /XObject /Subtype /Form /BBox [0 0 200 200] /Resources << /Font << /F1 3 0 R >> >>";
    int const damaged = pdf.stream(form + " /Filter /FlateDecode", "no such thing");
    int const plain = pdf.stream(form, line("5 V"));
    int const picture = pdf.stream("/Type /XObject /Subtype /Image /Width 1 /Height 1 /BitsPerComponent 8 /ColorSpace /DeviceGray /Filter /FlateDecode", deflated("a"));
    std::string const drawn = fmt::format("/XObject << /Bad {} /Good {} /Im {} /Gone 900 0 R >>", reference(damaged), reference(plain), reference(picture));
    pdf.page({.resources = drawn, .contents = reference(pdf.stream(kFlate, deflated("/Bad Do q 40 0 0 40 50 50 cm /Im Do Q /Gone Do /Good Do")))});
    auto const pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(textOf(pages[0]), "5 V");
    EXPECT_EQ(pages[0].images.size(), 1U);
    EXPECT_FALSE(pages[0].notes.empty());
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
