#include "compare/text_keys.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(TextKeys, AreEqualForWhatReadsTheSame) {
    EXPECT_EQ(keyOf("4.28\u00A0V"), keyOf("4.28 V"));
    EXPECT_EQ(keyOf("-40 \u2013 85"), keyOf("-40 - 85"));
    EXPECT_NE(keyOf("mΩ"), keyOf("MΩ"));
    EXPECT_NE(keyOf("4.28 V"), keyOf("4.29 V"));
}

TEST(TextKeys, LeaveLeaderDotsOut) {
    EXPECT_EQ(keyOf("Storage temperature ........ 150 °C"), keyOf("Storage temperature……… 150 °C"));
    EXPECT_EQ(spaceless("Storage temperature....150 °C"), "Storagetemperature150°C");
    EXPECT_EQ(tokensOf("Life 5........10 h"), tokensOf("Life 5 10 h"));
    EXPECT_NE(keyOf("0...70 °C"), keyOf("0 70 °C"));
}

TEST(TextKeys, MeasureLikenessByWords) {
    auto const a = tokensOf("Delay time 10 ms");
    EXPECT_EQ(similarity(a, tokensOf("delay time 10 ms")), 1.0);
    EXPECT_EQ(similarity(a, tokensOf("Delay time 12 ms")), 0.75);
    EXPECT_EQ(similarity(a, tokensOf("Other words")), 0.0);
    EXPECT_EQ(similarity({}, {}), 1.0);
    EXPECT_GT(letterSimilarity("4.255", "4.256"), 0.7);
    EXPECT_EQ(letterSimilarity("a", "b"), 0.0);
}

TEST(TextKeys, CompareLettersTakenOnceAsTheTextsThemselves) {
    std::string const longText(70, 'x');
    std::vector<std::string> const texts = {"", "a", "b", "Delay", "delay", "Delay time", "Détente", longText, longText + "y"};
    for (auto const& a : texts) {
        for (auto const& b : texts) EXPECT_EQ(letterSimilarity(LetterPairs(a), LetterPairs(b)), letterSimilarity(a, b)) << a << " and " << b;
    }
    EXPECT_EQ(letterSimilarity(LetterPairs("a"), LetterPairs("a")), 1.0);
    EXPECT_EQ(letterSimilarity(LetterPairs(longText), LetterPairs(longText + "y")), 1.0);  // alike as far as they count
}

TEST(TextKeys, CutTextsSoThatTheDifferenceStaysInView) {
    std::string const before = std::string(900, 'a') + " 4.25 " + std::string(900, 'b');
    std::string const after = std::string(900, 'a') + " 4.35 " + std::string(900, 'b');
    auto const shown = excerpts(before, after, 300);
    EXPECT_LE(shown.reference.size(), 300U);
    EXPECT_LE(shown.candidate.size(), 300U);
    EXPECT_NE(shown.reference.find("4.25"), std::string::npos);
    EXPECT_NE(shown.candidate.find("4.35"), std::string::npos);
    EXPECT_EQ(excerpts("short", "text", 300).reference, "short");
}

TEST(TextKeys, NeverCutInsideACharacter) {
    std::string text;
    for (int i = 0; i < 50; ++i) text += "电";
    for (std::size_t limit = 4; limit < 20; ++limit) {
        std::string const cut = clipped(text, limit);
        EXPECT_LE(cut.size(), limit);
        EXPECT_EQ(cut.size() % 3, 0U);
    }
}

TEST(TextKeys, knowANumberThatOnlyCountsItsPage) {
    for (char const* text : {"3", "- 3 -", "Page 3 of 12", "3/12", "3 / 12", "第3页 共12页", "(3)"}) EXPECT_TRUE(isOwnPageNumber(text, 3, 12)) << text;
    for (char const* text : {"", "4", "7/12", "3/11", "3 V", "Rev. 3", "3.12", "page", "3 of 12 cells"}) EXPECT_FALSE(isOwnPageNumber(text, 3, 12)) << text;
}

}  // namespace
}  // namespace standin::compare
