#include "extractors/recognition/lettering.h"

#include <gtest/gtest.h>

namespace standin::recognition {
namespace {

// One pixel a point. A letter of 8 points stands on `baseline`.
PixelBox letter(int left, int baseline, int width = 5, int height = 8) { return {left, baseline - height, left + width, baseline}; }

std::vector<std::vector<std::size_t>> linesOf(std::vector<PixelBox> const& pieces, std::vector<PixelBox> const& rules = {}, Frames frames = Frames::AroundLetters) {
    std::vector<std::vector<std::size_t>> lines;
    for (auto const& line : findLettering(pieces, rules, {.pixelsPerPoint = 1, .frames = frames}).lines) lines.push_back(line.pieces);
    return lines;
}
using Lines = std::vector<std::vector<std::size_t>>;

TEST(Lettering, LettersSideBySideAreALineAndAWideGapEndsIt) {
    EXPECT_EQ(linesOf({letter(10, 50), letter(16, 50), letter(27, 50), letter(60, 50), letter(66, 50)}), (Lines{{0, 1, 2}, {3, 4}}));
}

TEST(Lettering, LinesBelowEachOtherStayApart) { EXPECT_EQ(linesOf({letter(10, 50), letter(10, 60), letter(16, 50), letter(16, 60)}), (Lines{{0, 2}, {1, 3}})); }

TEST(Lettering, PointsAndDashesGoToTheirLine) {
    // "1.5" and "-3": without the point two digits far apart, the minus before the digit.
    PixelBox const point{16, 48, 18, 50};
    PixelBox const minus{40, 45, 44, 46};
    EXPECT_EQ(linesOf({letter(10, 50), point, letter(20, 50), minus, letter(46, 50)}), (Lines{{0, 1, 2}, {3, 4}}));
    // A dot far from letters is no lettering.
    EXPECT_EQ(linesOf({letter(10, 50), {90, 48, 92, 50}}), (Lines{{0}}));
}

TEST(Lettering, ASubscriptHangsOnItsLetter) {
    auto const lines = findLettering(std::vector{letter(10, 50, 6, 9), letter(17, 52, 4, 5), letter(22, 52, 4, 5)}, {}, {.pixelsPerPoint = 1}).lines;
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].pieces.size(), 3U);
    EXPECT_EQ(lines[0].box, (PixelBox{10, 41, 26, 52}));
}

TEST(Lettering, AVerticalRuleParts) { EXPECT_EQ(linesOf({letter(10, 50), letter(20, 50)}, {{17, 30, 18, 60}}), (Lines{{0}, {1}})); }

TEST(Lettering, AFrameAroundANumberIsNoLetter) {
    std::vector const framed{PixelBox{8, 38, 20, 54}, letter(11, 50)};
    EXPECT_EQ(linesOf(framed), (Lines{{1}}));
    EXPECT_EQ(linesOf(framed, {}, Frames::PartOfLetters), (Lines{{0, 1}}));
}

TEST(Lettering, WhatIsTooLargeIsADrawing) { EXPECT_TRUE(linesOf({{10, 10, 90, 90}, {10, 100, 11, 101}}).empty()); }

std::vector<PixelBox> leftOutOf(std::vector<PixelBox> const& pieces) { return findLettering(pieces, {}, {.pixelsPerPoint = 1}).leftOut; }

TEST(Lettering, ADashInAColumnOfItsOwnIsLeftOutNotLost) {
    PixelBox const dash{100, 45, 105, 46};
    EXPECT_EQ(leftOutOf({letter(10, 50), letter(16, 50), dash}), (std::vector{dash}));
    EXPECT_TRUE(leftOutOf({letter(10, 50), {100, 80, 105, 81}}).empty()) << "level with nothing";
    EXPECT_TRUE(leftOutOf({letter(10, 50), {100, 45, 130, 46}}).empty()) << "a rule";
}

TEST(Lettering, ALetterHigherThanAHeadlineIsLeftOutNotLost) {
    PixelBox const large{100, 10, 125, 53};
    EXPECT_EQ(leftOutOf({letter(10, 50), large}), (std::vector{large}));
    EXPECT_TRUE(leftOutOf({letter(110, 50), large}).empty()) << "a drawing around a letter";
}

TEST(Lettering, LettersOfTurnedTextAreLeftOut) {
    // Two words of letters 8 wide, on one edge; one beside them upright, a column of numbers with the pitch of lines.
    std::vector<PixelBox> const turned{{20, 10, 28, 15}, {22, 16, 28, 20}, {20, 21, 28, 26}, {20, 32, 28, 37}};
    std::vector<PixelBox> pieces = turned;
    for (int const baseline : {20, 31, 42}) pieces.push_back(letter(100, baseline));
    EXPECT_EQ(linesOf(pieces), (Lines{{4}, {5}, {6}}));
    EXPECT_EQ(leftOutOf(pieces), turned);
}

TEST(Lettering, TheBaselineIsThatOfMostLetters) {
    auto const lines = findLettering(std::vector{letter(10, 50), letter(16, 50), letter(22, 53, 5, 8), letter(28, 50, 5, 6)}, {}, {.pixelsPerPoint = 1}).lines;
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].baseline, 50);
    EXPECT_EQ(lines[0].capHeight, 8);
}

}  // namespace
}  // namespace standin::recognition
