#include "extractors/recognition/letter_case.h"

#include <vector>

#include <gtest/gtest.h>

namespace standin::recognition {
namespace {

TEST(LetterCase, SomeLettersHaveOneShape) {
    EXPECT_TRUE(hasOneShape('V') && hasOneShape('v') && hasOneShape('s'));
    EXPECT_FALSE(hasOneShape('A') || hasOneShape('n') || hasOneShape('0'));
}

TEST(LetterCase, TheRowTellsHowHighCapitalsAre) {
    PixelBox const letter{500, 70, 520, 100};  // 30 high
    std::vector<MeasuredLine> lines{{{10, 70, 200, 100}, 100, 30}, {{480, 100, 540, 140}, 140, 40}};
    ASSERT_EQ(capHeightAt(letter, lines), 30) << "the row before the line below, though that is nearer";
    EXPECT_TRUE(isCapital(letter, 30));
    EXPECT_FALSE(isCapital({500, 78, 520, 100}, 30));
    lines.erase(lines.begin());
    EXPECT_EQ(capHeightAt(letter, lines), 40);
    EXPECT_FALSE(isCapital(letter, 40));
    EXPECT_FALSE(capHeightAt(letter, {}));
    EXPECT_FALSE(capHeightAt(letter, std::vector<MeasuredLine>{{{0, 0, 200, 90}, 90, 90}})) << "another size";
}

}  // namespace
}  // namespace standin::recognition
