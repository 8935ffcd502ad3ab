#include "text/visible.h"

#include <gtest/gtest.h>

#include "text/utf8.h"

namespace standin::text {
namespace {

TEST(Visible, harmfulCharactersAreShownByNumber) {
    EXPECT_EQ(visible("a\u202Eb"), "a⟨U+202E⟩b");
    EXPECT_EQ(visible("a\x1B[31m"), "a⟨U+001B⟩[31m");
    EXPECT_EQ(visible("zero\u200Bwidth"), "zero⟨U+200B⟩width");
    EXPECT_EQ(visible("tab\tline\n"), "tab line ");
    EXPECT_EQ(visible("bad\xFF"), "bad\uFFFD");
    EXPECT_EQ(visible("4.28 V µΩ°C 电压"), "4.28 V µΩ°C 电压");
}

TEST(Visible, widthCountsCells) {
    EXPECT_EQ(columnWidth("abc"), 3);
    EXPECT_EQ(columnWidth("电压"), 4);
    EXPECT_EQ(columnWidth("e\u0301"), 1);
    EXPECT_EQ(clippedTo("abcdef", 4), "abc…");
    EXPECT_EQ(clippedTo("abc", 4), "abc");
    EXPECT_EQ(clippedTo("电压电压", 4), "电…");
    EXPECT_EQ(clippedTo("abc", 0), "");
}

TEST(Utf8, everyCallMakesProgress) {
    for (char const* text : {"\xFF\xFE", "\xE2\x82", "\xF0\x9F\x98", "a\xC0\x80", "\xED\xA0\x80", "ok \u20AC"}) {
        std::string_view const view(text);
        for (std::size_t at = 0; at < view.size();) {
            std::size_t const before = at;
            (void)decodeNext(view, at);
            ASSERT_GT(at, before);
            ASSERT_LE(at, view.size());
        }
        for (std::size_t at = view.size(); at > 0;) {
            std::size_t const before = at;
            (void)decodePrevious(view, at);
            ASSERT_LT(at, before);
        }
    }
    EXPECT_EQ(toUtf8(toUtf32("µΩ 电 \U0001F600")), "µΩ 电 \U0001F600");
    EXPECT_EQ(cleaned("a\xE2z"), "a\uFFFDz");
    EXPECT_EQ(trimmed(" \u3000 x \u00A0"), "x");
}

}  // namespace
}  // namespace standin::text
