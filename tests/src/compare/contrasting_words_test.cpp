#include "compare/contrasting_words.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

using model::WordingClass;

TEST(ContrastingWords, sidesOfOneContrastExcludeEachOther) {
    EXPECT_EQ(contrastOf("permanent", "temporarily"), WordingClass::Trig);
    EXPECT_EQ(contrastOf("temporarily", "permanent"), WordingClass::Trig);
    EXPECT_EQ(contrastOf("dual", "quad"), WordingClass::Num);
    EXPECT_EQ(contrastOf("left", "entered"), WordingClass::Trig) << "left: of to leave";
    EXPECT_EQ(contrastOf("left", "right"), WordingClass::Pin);
}

TEST(ContrastingWords, formsOfOneSideAndOtherWordsDoNot) {
    EXPECT_FALSE(contrastOf("permanent", "permanently"));
    EXPECT_FALSE(contrastOf("permanent", "permanent"));
    EXPECT_FALSE(contrastOf("hot", "temporary"));
    EXPECT_FALSE(contrastOf("lamp", "bell"));
    EXPECT_FALSE(contrastOf("", ""));
}

}  // namespace
}  // namespace standin::compare
