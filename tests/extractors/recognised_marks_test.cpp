#include "extractors/recognised_marks.h"

#include <gtest/gtest.h>

namespace standin::reading {
namespace {

model::Word word(std::string text, float x, float y, bool recognised) {
    model::Word made;
    made.text = std::move(text);
    made.box = {x, y, x + 20, y + 10};
    made.recognised = recognised;
    return made;
}

// Line 1 "Delay 4.5 ms", of which the value was recognised; line 2 is print.
model::PageLayout page() {
    model::PageLayout made;
    made.page = 2;
    made.words = {word("Delay", 10, 10, false), word("4.5", 40, 10, true), word("ms", 70, 10, true), word("Hysteresis", 10, 30, false)};
    made.lines = {{0, 3, {10, 10, 90, 20}}, {3, 1, {10, 30, 30, 40}}};
    made.unrecognised = {{10, 50, 20, 60}};
    return made;
}

model::Parameter parameter(model::Rect const& box) {
    model::Parameter made;
    made.page = 2;
    made.box = box;
    made.confidence.score = 0.98;
    return made;
}

TEST(MarkRecognised, ListsLinesAndPlaces) {
    model::Datasheet sheet;
    markRecognised(std::vector{page()}, sheet);
    ASSERT_EQ(sheet.coverage.recognised.size(), 1U);
    EXPECT_EQ(sheet.coverage.recognised[0], (model::PlacedText{"4.5 ms", 2, {40, 10, 90, 20}}));
    EXPECT_EQ(sheet.coverage.unrecognised, (std::vector<model::Place>{{2, {10, 50, 20, 60}}}));
}

TEST(MarkRecognised, LowersTheConfidenceOfWhatRestsOnIt) {
    model::Datasheet sheet;
    sheet.parameters = {parameter({10, 10, 90, 20}), parameter({10, 30, 90, 40})};
    sheet.pins.resize(3);
    sheet.pins[0].page = sheet.pins[1].page = 2;
    sheet.pins[2].recognised = true;  // its name is that of a drawing elsewhere
    sheet.pins[0].box = {40, 8, 60, 22};
    sheet.pins[1].box = {40, 28, 60, 42};
    sheet.text.resize(2);
    sheet.text[0].places = {{2, {10, 10, 90, 20}}};
    sheet.text[1].places = {{1, {10, 10, 90, 20}}};
    markRecognised(std::vector{page()}, sheet);
    EXPECT_LT(sheet.parameters[0].confidence.score, 0.9);
    EXPECT_EQ(sheet.parameters[0].confidence.reasons, std::vector<std::string>{"recognised from a picture"});
    EXPECT_EQ(sheet.parameters[1].confidence.score, 0.98);
    EXPECT_TRUE(sheet.parameters[0].recognised);
    EXPECT_FALSE(sheet.parameters[1].recognised);
    EXPECT_TRUE(sheet.pins[0].recognised);
    EXPECT_FALSE(sheet.pins[1].recognised);
    EXPECT_TRUE(sheet.pins[2].recognised);
    EXPECT_TRUE(sheet.text[0].recognised);
    EXPECT_FALSE(sheet.text[1].recognised) << "another page";
}

}  // namespace
}  // namespace standin::reading
