#include "extractors/picture_text.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace standin::reading {
namespace {

using model::Rect;

// A page with `count` printed letters at the top, one font.
model::PageContent printedPage(std::size_t count) {
    model::PageContent page;
    page.page = 1;
    page.width = 600;
    page.height = 800;
    page.fonts.emplace_back();
    for (std::size_t i = 0; i < count; ++i) {
        model::Glyph glyph;
        glyph.code = U'a';
        auto const x = static_cast<float>(40 + 5 * (i % 100));
        auto const y = static_cast<float>(40 + 12 * (i / 100));
        glyph.box = {x, y, x + 5, y + 10};
        page.glyphs.push_back(glyph);
    }
    return page;
}

model::RecognisedWord word(std::string text, Rect const& box, int line = 0) { return {std::move(text), box, box.y1, 10, line}; }

std::string textOf(model::PageContent const& page) {
    std::string text;
    for (auto const& glyph : page.glyphs) text += static_cast<char>(glyph.code);
    return text;
}

TEST(PlacesToRecognise, TheWholePageWhereItHasNoText) {
    auto page = printedPage(8);
    EXPECT_TRUE(placesToRecognise(page).empty()) << "nothing is drawn";
    page.images.push_back({{0, 0, 600, 800}, 1200, 1600, 0});
    EXPECT_EQ(placesToRecognise(page), (std::vector<Rect>{{0, 0, 600, 800}}));
}

TEST(PlacesToRecognise, ImagesAndRowsOfShapesBesideText) {
    auto page = printedPage(400);
    page.images.push_back({{100, 300, 300, 400}, 400, 200, 0});
    page.images.push_back({{100, 500, 103, 503}, 4, 4, 0});  // an ornament
    for (float const x : {100.0F, 107.0F, 114.0F}) page.drawings.push_back({{x, 600, x + 5, 608}, 1});
    page.drawings.push_back({{300, 600, 305, 608}, 1});  // alone: an arrow
    page.drawings.push_back({{300, 300, 500, 500}, 1});  // large
    EXPECT_EQ(placesToRecognise(page), (std::vector<Rect>{{100, 300, 300, 400}, {96, 596, 123, 612}}));
}

TEST(PlacesToRecognise, RowsBelowEachOtherAndBehindAGapStayApart) {
    // Drawn out of order: 60 rows of two pieces, 10 letters each.
    auto page = printedPage(400);
    for (int letter = 9; letter >= 0; --letter) {
        for (int row = 0; row < 60; ++row) {
            auto const y = static_cast<float>(100 + 10 * row);
            for (float const piece : {50.0F, 300.0F}) {
                auto const x = piece + 7 * static_cast<float>(letter);
                page.drawings.push_back({{x, y, x + 5, y + 8}, 1});
            }
        }
    }
    auto const places = placesToRecognise(page);
    ASSERT_EQ(places.size(), 120U);
    for (auto const& place : places) EXPECT_EQ(place.width(), 9 * 7 + 5 + 8) << "half a height more at each side";
}

TEST(PlacesToRecognise, ManyShapesWithoutARowAreSortedOutSoon) {
    auto page = printedPage(400);
    for (int i = 0; i < 200000; ++i) {
        auto const x = static_cast<float>(i % 2000) * 100;
        auto const y = static_cast<float>(i / 2000) * 10;
        page.drawings.push_back({{x, y, x + 5, y + 8}, 1});
    }
    EXPECT_TRUE(placesToRecognise(page).empty());
}

TEST(PlacesToRecognise, TextInAFontWithoutCharacters) {
    auto page = printedPage(400);
    page.fonts.emplace_back();
    model::Glyph lost;
    lost.font = 1;
    lost.box = {50, 700, 56, 710};
    page.glyphs.push_back(lost);
    EXPECT_EQ(placesToRecognise(page), (std::vector<Rect>{{50, 700, 56, 710}}));
}

// The text layer of a scan is the recognition of others.
model::PageContent hiddenPage(std::size_t count) {
    auto page = printedPage(count);
    for (auto& glyph : page.glyphs) glyph.invisible = true;
    return page;
}

TEST(PlacesToRecognise, InvisibleTextIsNoText) {
    auto page = hiddenPage(400);
    page.images.push_back({{0, 0, 600, 800}, 1200, 1600, 0});
    EXPECT_EQ(placesToRecognise(page), (std::vector<Rect>{{0, 0, 600, 800}}));
    for (auto& glyph : page.glyphs) glyph.code = model::kUnknownCharacter;
    EXPECT_EQ(placesToRecognise(page), (std::vector<Rect>{{0, 0, 600, 800}})) << "nor lost";
    page.images.clear();
    EXPECT_TRUE(placesToRecognise(page).empty()) << "nothing is seen";
}

TEST(PaintOver, LeavesWhatStandsOverInvisibleText) {
    auto page = hiddenPage(1);
    model::Picture picture{100, 100, {0, 0, 100, 100}, std::vector<std::uint8_t>(30000, 7)};
    paintOver(picture, page, {{30, 30, 60, 60}});
    EXPECT_EQ(int{picture.rgb[static_cast<std::size_t>(3 * (100 * 45 + 42))]}, 7);
}

TEST(AddRecognised, WhatIsSeenOverInvisibleTextIsAdded) {
    auto page = hiddenPage(3);
    addRecognised(page, {{word("8.0", {40, 41, 55, 49})}, {}, {}});
    EXPECT_EQ(textOf(page), "aaa8.0") << "the layout drops what is covered";
}

TEST(PaintOver, LeavesOnlyWhatIsAskedForAndNotPrinted) {
    auto page = printedPage(1);
    page.width = 100;
    page.height = 100;
    model::Picture picture{100, 100, {0, 0, 100, 100}, std::vector<std::uint8_t>(30000, 7)};
    paintOver(picture, page, {{30, 30, 60, 60}});
    auto const shade = [&](int x, int y) { return int{picture.rgb[static_cast<std::size_t>(3 * (100 * y + x))]}; };
    EXPECT_EQ(shade(5, 5), 255) << "outside";
    EXPECT_EQ(shade(55, 55), 7);
    EXPECT_EQ(shade(42, 45), 255) << "the printed letter";
}

TEST(AddRecognised, WordsBecomeGlyphsOfAFontThatSaysSo) {
    auto page = printedPage(0);
    addRecognised(page, {{word("VIN", {10, 10, 40, 20}), word("4.2", {46, 10, 70, 20})}, {}, {}});
    EXPECT_EQ(textOf(page), "VIN 4.2");
    auto const& glyph = page.glyphs[1];
    EXPECT_TRUE(page.fonts.at(glyph.font).recognised);
    EXPECT_EQ(glyph.box.x0, 20);
    EXPECT_EQ(glyph.box.x1, 30);
    EXPECT_EQ(glyph.origin, (model::Point{20, 20}));
}

TEST(AddRecognised, WhatIsPrintedIsNotDoubled) {
    auto page = printedPage(3);
    addRecognised(page, {{word("aaa", {40, 41, 55, 49})}, {}, {}});
    EXPECT_EQ(textOf(page), "aaa");
    EXPECT_EQ(page.fonts.size(), 1U);
}

TEST(AddRecognised, TakesAwayWhatTheWordsWereRecognisedFrom) {
    auto page = printedPage(200);
    page.fonts.emplace_back();
    for (float const x : {300.0F, 306.0F}) {
        model::Glyph lost;
        lost.font = 1;
        lost.box = {x, 700, x + 6, 710};
        page.glyphs.push_back(lost);
    }
    page.drawings = {{{100, 600, 105, 608}, 1}, {{90, 500, 300, 650}, 2}};
    page.rules = {{model::Rule::Axis::Vertical, {107, 600, 108, 608}, 0, false}, {model::Rule::Axis::Horizontal, {40, 610, 300, 610}, 0, false}};
    addRecognised(page, {{word("CI", {100, 600, 109, 608}), word("N", {300, 701, 306, 709}, 1)}, {}, {}});
    EXPECT_EQ(page.drawings.size(), 1U);
    EXPECT_EQ(page.rules.size(), 1U);
    // One of the two without characters was not recognised: it stays, to be told.
    EXPECT_EQ(std::count_if(page.glyphs.begin(), page.glyphs.end(), [](auto const& g) { return g.code == model::kUnknownCharacter; }), 1);
}

TEST(AddRecognised, RulesThatAreDrawnAlreadyAreNotDoubled) {
    auto page = printedPage(0);
    model::Rule const drawn{model::Rule::Axis::Horizontal, {20, 100, 200, 100}, 0, false};
    page.rules = {drawn};
    model::Rule const below{model::Rule::Axis::Horizontal, {20, 120, 200, 120}, 0, false};
    addRecognised(page, {{}, {}, {{model::Rule::Axis::Horizontal, {21, 101, 199, 101}, 0, false}, below}});
    ASSERT_EQ(page.rules.size(), 2U);
    EXPECT_EQ(page.rules[1].box, below.box);
}

}  // namespace
}  // namespace standin::reading
