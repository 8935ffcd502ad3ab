#include "extractors/poppler/actual_text.h"

#include <gtest/gtest.h>

namespace standin::poppler {
namespace {

using model::Glyph;
using model::PageContent;

TEST(ActualText, DecodesTextStrings) {
    EXPECT_EQ(charactersOfTextString("a\x80\xB5"), U"a\u2022\u00B5");
    EXPECT_EQ(charactersOfTextString(std::string_view("\xFE\xFF\x03\xA9\xD8\x3D\xDD\x0B", 8)), U"\u03A9\U0001F50B");
    EXPECT_EQ(charactersOfTextString(std::string_view("\xFF\xFE\xA9\x03", 4)), U"\u03A9");
    EXPECT_EQ(charactersOfTextString("\xEF\xBB\xBF\xCE\xA9"), U"\u03A9");
    EXPECT_EQ(charactersOfTextString(std::string_view("\xFE\xFF\xD8\x3D\x00\x41\x00", 7)), U"\uFFFDA");
    EXPECT_EQ(charactersOfTextString("\xEF\xBB\xBF\xCE\xE2\x82"), U"\uFFFD\uFFFD\uFFFD");
    EXPECT_EQ(charactersOfTextString(std::string_view("\xFE\xFF\x00\x1B\x00\x64\x00\x65\x00\x1B\x00\x41", 12)), U"A");  // a language mark
    EXPECT_EQ(utf8OfTextString("  title\n"), "title");
    EXPECT_EQ(utf8(U"a\u03A9\u20AC\U0001F50B"), "a\xCE\xA9\xE2\x82\xAC\xF0\x9F\x94\x8B");
}

PageContent printed(std::u32string const& text) {
    PageContent page;
    page.page = 3;
    float x = 10;
    for (char32_t c : text) {
        Glyph glyph;
        glyph.code = c;
        glyph.box = {x, 90, x + 6, 100};
        glyph.origin = {x, 98};
        glyph.size = 10;
        page.glyphs.push_back(glyph);
        x += 6;
    }
    return page;
}

PageContent replaced(std::u32string const& glyphs, std::u32string const& wanted) {
    PageContent page;
    ActualTextSpan span;
    span.begin(wanted, page);
    page = printed(glyphs);
    span.end(page, {});
    return page;
}

std::string textOf(PageContent const& page) {
    std::u32string text;
    for (Glyph const& glyph : page.glyphs) text += glyph.code;
    return utf8(text);
}

TEST(ActualText, EqualTextChangesNothing) {
    auto const page = replaced(U"4.25 V", U"4.25V ");
    EXPECT_EQ(textOf(page), "4.25 V");
    EXPECT_FALSE(page.glyphs[0].fromActualText);
}

TEST(ActualText, PrintedDigitsWinWithANote) {
    auto const page = replaced(U"4.25", U"4.52");
    EXPECT_EQ(textOf(page), "4.25");
    ASSERT_EQ(page.notes.size(), 1U);
    EXPECT_EQ(page.notes[0].page, 3);
}

TEST(ActualText, ReplacementWinsForUnknownCharacters) {
    auto const page = replaced(U"4\uFFFD5", U"425");
    EXPECT_EQ(textOf(page), "425");
    EXPECT_FALSE(page.glyphs[0].fromActualText);
    EXPECT_TRUE(page.glyphs[1].fromActualText);
    EXPECT_TRUE(page.notes.empty());
}

TEST(ActualText, SpreadsLongerTextOverTheSameBox) {
    auto const page = replaced(U"x", U"ffi");
    ASSERT_EQ(textOf(page), "ffi");
    EXPECT_FLOAT_EQ(page.glyphs[0].box.x0, 10);
    EXPECT_FLOAT_EQ(page.glyphs[1].box.x0, 12);
    EXPECT_FLOAT_EQ(page.glyphs[2].box.x1, 16);
}

// A hyphen of the line's end is told by a soft hyphen.
TEST(ActualText, KeepsSoftHyphens) { EXPECT_EQ(textOf(replaced(U"-", U"\u00AD")), "\xC2\xAD"); }

TEST(ActualText, EmptyReplacementDoesNotHideWhatIsPrinted) {
    EXPECT_EQ(textOf(replaced(U"kept", U"")), "kept");
    EXPECT_EQ(textOf(replaced(U"kept", U" \n")), "kept");
}

TEST(ActualText, TextOverSeveralLinesIsLeftAsPrinted) {
    PageContent page;
    ActualTextSpan span;
    span.begin(U"longer text than that", page);
    page = printed(U"ab");
    page.glyphs[1].origin.y += 12;
    span.end(page, {});
    EXPECT_EQ(textOf(page), "ab");
}

TEST(ActualText, InnerStretchesBelongToTheOuterOne) {
    PageContent page = printed(U"a");
    ActualTextSpan span;
    span.begin(U"b", page);
    span.begin(U"c", page);
    page.glyphs.push_back(printed(U"\uFFFD").glyphs[0]);
    span.end(page, {});
    EXPECT_TRUE(span.active());
    span.end(page, {});
    EXPECT_FALSE(span.active());
    span.end(page, {});  // one end too many
    EXPECT_EQ(textOf(page), "ab");
}

TEST(ActualText, LaysTextOverOutlines) {
    PageContent page;
    ActualTextSpan span;
    span.begin(U"12", page);
    span.end(page, {10, 20, 30, 40});
    ASSERT_EQ(textOf(page), "12");
    EXPECT_FLOAT_EQ(page.glyphs[1].box.x0, 20);
    EXPECT_EQ(page.fonts.size(), 1U);
}

}  // namespace
}  // namespace standin::poppler
