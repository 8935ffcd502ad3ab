#include "extractors/poppler/glyph_names.h"

#include <gtest/gtest.h>

#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {
namespace {

TEST(GlyphNames, KnowWhatNamesMean) {
    ensureLibrary();
    struct Case {
        char const* name;
        std::u32string text;
    };
    for (Case const& c : {Case{"A", U"A"}, Case{"seven", U"7"}, Case{"degree", U"\u00B0"}, Case{"plusminus", U"\u00B1"}, Case{"lessequal", U"\u2264"},
                          Case{"uni03A9", U"\u03A9"}, Case{"uni00410042", U"AB"}, Case{"u1F50B", U"\U0001F50B"}, Case{"f_i", U"fi"}, Case{"seven.tf", U"7"},
                          Case{"sevenoldstyle", U"7"}, Case{"arrowhorizex", U"\u23AF"}, Case{"two.sub_A", U"2"}}) {
        EXPECT_EQ(charactersOfGlyphName(c.name), c.text) << c.name;
    }
    EXPECT_EQ(charactersOfGlyphName("mu1"), charactersOfGlyphName("mu"));
    EXPECT_EQ(charactersOfGlyphName("Omega2"), charactersOfGlyphName("Omega"));
}

TEST(GlyphNames, NumbersAreNoNames) {
    ensureLibrary();
    for (char const* name : {"g12", "c0050", "C0065", "glyph7", "cid123", "G41", "", ".notdef", "uniD800", "uni12", "x_g12", "a1b2"}) {
        EXPECT_TRUE(charactersOfGlyphName(name).empty()) << name;
    }
}

TEST(GlyphNames, ReadNumbersOfNumberedNames) {
    EXPECT_EQ(numberOfGlyphName("C0065", NumberBase::Decimal), 65);
    EXPECT_EQ(numberOfGlyphName("glyph7", NumberBase::Decimal), 7);
    EXPECT_EQ(numberOfGlyphName("G41", NumberBase::Hexadecimal), 0x41);
    EXPECT_EQ(numberOfGlyphName("G4F", NumberBase::Decimal), -1);
    EXPECT_EQ(numberOfGlyphName("alpha", NumberBase::Decimal), -1);
    EXPECT_EQ(numberOfGlyphName("C123456", NumberBase::Decimal), -1);
    EXPECT_EQ(numberOfGlyphName("", NumberBase::Decimal), -1);
}

TEST(GlyphNames, KnowSymbolFonts) {
    EXPECT_EQ(symbolFamily("SymbolMT"), SymbolFamily::Symbol);
    EXPECT_EQ(symbolFamily("Wingdings-Regular"), SymbolFamily::Wingdings);
    EXPECT_EQ(symbolFamily("Wingdings2"), SymbolFamily::None);
    EXPECT_EQ(symbolFamily("Helvetica"), SymbolFamily::None);
    EXPECT_EQ(symbolCharacter(SymbolFamily::Symbol, 0x57), char32_t{0x03A9});
    EXPECT_EQ(symbolCharacter(SymbolFamily::Symbol, 0x6D), char32_t{0x03BC});
    EXPECT_EQ(symbolCharacter(SymbolFamily::Symbol, 0xB1), char32_t{0x00B1});
    EXPECT_EQ(symbolCharacter(SymbolFamily::Symbol, 0x80), char32_t{0});
    EXPECT_EQ(symbolCharacter(SymbolFamily::Symbol, 0x1000), char32_t{0});
    EXPECT_EQ(symbolCharacter(SymbolFamily::Wingdings, 0xFC), char32_t{0x2713});
}

TEST(GlyphNames, PrivateLettersMeanNothing) {
    for (char32_t code : {U'\u0007', char32_t{0xE001}, char32_t{0xF8FF}, char32_t{0x85}, char32_t{0xD800}, char32_t{0xFFFD}}) EXPECT_TRUE(meansNothing(code));
    for (char32_t code : {U'A', U'\u00B5', U'\u4E2D', char32_t{0x1F50B}}) EXPECT_FALSE(meansNothing(code));
    EXPECT_EQ(withoutPrivateUse(0xF735), U'5');
    EXPECT_EQ(withoutPrivateUse(0xE001), char32_t{0xE001});
}

}  // namespace
}  // namespace standin::poppler
