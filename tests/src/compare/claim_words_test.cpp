#include "compare/claim_words.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TokenKeys keys(std::string_view text) { return keysOf(claimTokens(text)); }

TEST(ClaimWords, PartsHyphensAndKeepsAValueWithItsUnit) { EXPECT_EQ(keys("On-resistance at VGS=4.5 V"), (TokenKeys{"on", "resistance", "at", "vgs", "=", "4.5 V"})); }

TEST(ClaimWords, ValuesAreTheSameInWhateverPrefix) {
    EXPECT_EQ(keys("32 mΩ"), keys("0.032 Ω"));
    EXPECT_NE(keys("32 mΩ"), keys("32 Ω"));
}

TEST(ClaimWords, ACodeThatBeginsWithDigitsIsOneWord) { EXPECT_EQ(keys("for 74XKT595 at 5V"), (TokenKeys{"for", "74xkt595", "at", "5 V"})); }

TEST(ClaimWords, SymbolsLoseBracketsAndUnderscores) {
    EXPECT_EQ(keys("RDS(on)"), TokenKeys{"rdson"});
    EXPECT_EQ(keys("V_BAT(REG)"), keys("VBAT(REG)"));
}

TEST(ClaimWords, PluralsAndSpellingsAreOne) { EXPECT_EQ(keys("Colours of the thresholds"), keys("color of the threshold")); }

TEST(ClaimWords, TellsCapitals) {
    auto const tokens = claimTokens("Changed features");
    ASSERT_EQ(tokens.size(), 2U);
    EXPECT_TRUE(tokens[0].capital);
    EXPECT_FALSE(tokens[1].capital);
}

TEST(ClaimWords, TheLongestPhraseIsFound) {
    auto const phrases = phraseKeys({"change", "editorial changes"});
    auto const tokens = claimTokens("Some editorial changes");
    EXPECT_EQ(phraseAt(tokens, 1, phrases), 2U);
    EXPECT_EQ(phraseAt(tokens, 2, phrases), 1U);
    EXPECT_EQ(phraseAt(tokens, 0, phrases), 0U);
}

}  // namespace
}  // namespace standin::compare
