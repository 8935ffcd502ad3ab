#include "extractors/poppler/rule_merge.h"

#include <gtest/gtest.h>

namespace standin::poppler {
namespace {

using model::Rule;

Rule across(float x0, float x1, float y, std::uint32_t colour = 0, float thickness = 0.5F) { return {Rule::Axis::Horizontal, {x0, y - thickness / 2, x1, y + thickness / 2}, colour, false}; }
Rule down(float x, float y0, float y1) { return {Rule::Axis::Vertical, {x - 0.25F, y0, x + 0.25F, y1}, 0, false}; }

std::vector<Rule> merged(std::vector<Rule> rules) {
    RuleMerger merger;
    merger.merge(rules);
    return rules;
}

TEST(RuleMerge, JoinsPiecesThatTouch) {
    auto const rules = merged({across(50, 80, 10), down(5, 0, 20), across(20, 50.3F, 10.1F), across(80, 90, 10), down(5, 20, 40)});
    ASSERT_EQ(rules.size(), 2U);
    EXPECT_FLOAT_EQ(rules[0].box.x0, 20);  // the order is that of the first pieces
    EXPECT_FLOAT_EQ(rules[0].box.x1, 90);
    EXPECT_FALSE(rules[0].dashed);
    EXPECT_FLOAT_EQ(rules[1].box.y1, 40);
}

TEST(RuleMerge, KeepsApartWhatIsApart) {
    EXPECT_EQ(merged({across(0, 10, 10), across(12, 22, 10)}).size(), 2U);              // a gap
    EXPECT_EQ(merged({across(0, 10, 10), across(10, 20, 12)}).size(), 2U);              // another line
    EXPECT_EQ(merged({across(0, 10, 10), across(10, 20, 10, 0xFF0000)}).size(), 2U);    // another colour
    EXPECT_EQ(merged({across(0, 10, 10), across(10, 20, 10, 0, 2.5F)}).size(), 2U);     // another thickness
    EXPECT_EQ(merged({across(0, 10, 10), down(10, 10, 20)}).size(), 2U);                // a corner
}

TEST(RuleMerge, ADoubleLineIsTwoLines) {
    EXPECT_EQ(merged({across(0, 100, 10), across(0, 100, 11.5F)}).size(), 2U);
    EXPECT_EQ(merged({across(0, 100, 10), across(0, 100, 10)}).size(), 1U);
}

TEST(RuleMerge, MakesOneDashedRuleOfARowOfDashes) {
    std::vector<Rule> dashes;
    for (int i = 0; i < 20; ++i) dashes.push_back(across(static_cast<float>(i) * 4, static_cast<float>(i) * 4 + 2.5F, 10));
    auto const rules = merged(dashes);
    ASSERT_EQ(rules.size(), 1U);
    EXPECT_TRUE(rules[0].dashed);
    EXPECT_FLOAT_EQ(rules[0].box.x1, 78.5F);
}

// Four short lines may be anything; so may lines at uneven distances.
TEST(RuleMerge, FewOrUnevenPiecesAreNoDashes) {
    std::vector<Rule> few;
    for (int i = 0; i < 4; ++i) few.push_back(across(static_cast<float>(i) * 4, static_cast<float>(i) * 4 + 2.5F, 10));
    EXPECT_EQ(merged(few).size(), 4U);
    std::vector<Rule> uneven;
    float x = 0;
    for (float gap : {1.0F, 5.0F, 1.0F, 5.5F, 1.0F, 5.0F}) {
        uneven.push_back(across(x, x + 3, 10));
        x += 3 + gap;
    }
    EXPECT_EQ(merged(uneven).size(), 6U);
}

// A page of many pieces is sorted in another way.
TEST(RuleMerge, ManyPiecesAreJoinedAsFewAre) {
    constexpr int kLines = 600;
    std::vector<Rule> pieces;
    std::vector<Rule> expected;
    auto const heightOf = [](int line) { return static_cast<float>(line * 7 % kLines) * 1.5F - 20; };
    auto const colourOf = [](int line) { return line % 3 == 0 ? 0xFF8000U : 0x000010U; };
    for (int line = 0; line < kLines; ++line) {
        pieces.push_back(across(40, 60, heightOf(line), colourOf(line)));
        expected.push_back(across(-15, 60, heightOf(line), colourOf(line)));
    }
    for (int line = kLines; line-- > 0;) pieces.push_back(across(-15, 40, heightOf(line), colourOf(line)));
    for (int i = 0; i < kLines; ++i) pieces.push_back(down(static_cast<float>(i) * 2 - 100, -5, 30));
    auto const rules = merged(pieces);
    expected.insert(expected.end(), pieces.end() - kLines, pieces.end());
    ASSERT_EQ(rules.size(), expected.size());
    for (std::size_t i = 0; i < rules.size(); ++i) {
        EXPECT_EQ(rules[i].box, expected[i].box) << i;
        EXPECT_EQ(rules[i].colour, expected[i].colour) << i;
    }
}

TEST(RuleMerge, AMergerCanBeUsedAgain) {
    RuleMerger merger;
    std::vector<Rule> rules = {across(0, 10, 10), across(10, 20, 10)};
    merger.merge(rules);
    EXPECT_EQ(rules.size(), 1U);
    std::vector<Rule> others = {down(5, 0, 20), down(9, 0, 20)};
    merger.merge(others);
    EXPECT_EQ(others.size(), 2U);
}

}  // namespace
}  // namespace standin::poppler
