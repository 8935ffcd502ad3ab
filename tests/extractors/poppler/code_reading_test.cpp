#include "extractors/poppler/code_reading.h"

#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace standin::poppler {
namespace {

struct Letter {
    char byte;
    double width;  // of an upright sans, in ems
};
constexpr Letter kWords[] = {{'A', 0.667}, {'C', 0.722}, {'I', 0.278}, {'M', 0.833}, {'W', 0.944}, {'a', 0.556}, {'e', 0.556}, {'i', 0.222},
                             {'l', 0.222}, {'m', 0.833}, {'n', 0.556}, {'o', 0.556}, {'r', 0.333}, {'s', 0.5},   {'t', 0.278}, {'7', 0.556}};

std::vector<CodeWidth> shifted(int offset, double stretch = 1) {
    std::vector<CodeWidth> widths;
    for (Letter const& letter : kWords) widths.push_back({static_cast<std::uint32_t>(letter.byte - offset), letter.width * stretch});
    return widths;
}

TEST(CodeReading, TellsCharactersFromGlyphOrder) {
    EXPECT_EQ(bestReading(shifted(0), Proportions::Absolute), CodeReading::Characters);
    EXPECT_EQ(bestReading(shifted(29), Proportions::Absolute), CodeReading::GlyphOrder);
    EXPECT_EQ(characterOf(CodeReading::GlyphOrder, 'A' - 29), U'A');
    EXPECT_EQ(characterOf(CodeReading::GlyphOrder, 3), U' ');
    EXPECT_EQ(characterOf(CodeReading::GlyphOrder, 131), char32_t{0x00B0});
}

TEST(CodeReading, WidthsMayBeOfAnyUnitWhereThereAreManyLetters) {
    EXPECT_EQ(bestReading(shifted(0, 80), Proportions::Relative), CodeReading::Characters);
    EXPECT_EQ(bestReading(shifted(0, 0.82), Proportions::Absolute), CodeReading::Characters);
}

// Glyphs numbered as they came: no reading fits.
TEST(CodeReading, ShuffledGlyphsStayUnknown) {
    std::vector<CodeWidth> widths;
    std::uint32_t code = 65;
    for (std::size_t i : {7U, 3U, 12U, 0U, 9U, 14U, 5U, 2U, 8U, 13U, 4U, 11U}) widths.push_back({code++, kWords[i].width});
    EXPECT_EQ(bestReading(widths, Proportions::Absolute), CodeReading::Unknown);
}

// Digits are all equally wide, and so is a typewriter's alphabet.
TEST(CodeReading, EqualWidthsTellNothing) {
    std::vector<CodeWidth> digits;
    for (std::uint32_t code = '0'; code <= '9'; ++code) digits.push_back({code, 0.556});
    EXPECT_EQ(bestReading(digits, Proportions::Absolute), CodeReading::Unknown);
    std::vector<CodeWidth> typewriter;
    for (std::uint32_t code = 'A'; code <= 'z'; ++code) typewriter.push_back({code, 0.6});
    EXPECT_EQ(bestReading(typewriter, Proportions::Absolute), CodeReading::Unknown);
    EXPECT_EQ(bestReading({}, Proportions::Absolute), CodeReading::Unknown);
}

// An "m" as narrow as a mu beside a "W" as narrow as an ohm.
TEST(CodeReading, TellsGreekFromLatinByAFewLetters) {
    std::vector<CodeWidth> const greek = {{'m', 0.577}, {'W', 0.769}};
    EXPECT_EQ(bestReading(greek, Proportions::Absolute), CodeReading::SymbolFont);
    EXPECT_EQ(characterOf(CodeReading::SymbolFont, 'm'), char32_t{0x03BC});
    EXPECT_EQ(characterOf(CodeReading::SymbolFont, 'W'), char32_t{0x03A9});
    std::vector<CodeWidth> const latin = {{'m', 0.833}, {'W', 0.944}, {'i', 0.222}};
    EXPECT_EQ(bestReading(latin, Proportions::Absolute), CodeReading::Characters);
    EXPECT_EQ(bestReading(greek, Proportions::Relative), CodeReading::Unknown);
}

TEST(CodeReading, UnfoldsWhatLiesBelowTheLetters) {
    auto widths = shifted(29);
    widths.erase(widths.end() - 1);  // the digit, which a folded font has elsewhere
    for (CodeWidth const& entry : {CodeWidth{253, 0.278}, CodeWidth{237, 0.556}, CodeWidth{236, 0.556}, CodeWidth{245, 0.333}, CodeWidth{244, 0.333}, CodeWidth{242, 0.584},
                                   CodeWidth{239, 0.278}}) {
        widths.push_back(entry);
    }
    ASSERT_EQ(bestReading(widths, Proportions::Absolute), CodeReading::FoldedGlyphOrder);
    EXPECT_EQ(characterOf(CodeReading::FoldedGlyphOrder, 237), U'0');
    EXPECT_EQ(characterOf(CodeReading::FoldedGlyphOrder, 228), U'9');
    EXPECT_EQ(characterOf(CodeReading::FoldedGlyphOrder, 253), U' ');
    EXPECT_EQ(characterOf(CodeReading::FoldedGlyphOrder, 'A' - 29), U'A');
    EXPECT_EQ(characterOf(CodeReading::FoldedGlyphOrder, 5), char32_t{0});
}

TEST(CodeReading, SurvivesOddWidths) {
    std::vector<CodeWidth> widths;
    for (std::uint32_t code = 0; code < 300; ++code) widths.push_back({code * 40000000U, code % 3 == 0 ? -1.0 : 1e300});
    EXPECT_EQ(bestReading(widths, Proportions::Absolute), CodeReading::Unknown);
    EXPECT_EQ(characterOf(CodeReading::SymbolGlyphOrder, 4000000000U), char32_t{0});
    EXPECT_EQ(characterOf(CodeReading::Unknown, 65), char32_t{0});
}

}  // namespace
}  // namespace standin::poppler
