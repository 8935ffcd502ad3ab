#include "extractors/tables/text_shape.h"

#include <gtest/gtest.h>

namespace standin::tables {
namespace {

TEST(TextShape, tellsValuesFromWords) {
    struct Case { char const* text; Shape shape; };
    Case const cases[] = {
        {"", Shape::Empty},          {"-", Shape::Dash},           {"\u2014", Shape::Dash},      {"N/A", Shape::Dash},
        {"4.25", Shape::Number},     {"\u00B120", Shape::Number},  {"\u22120.3 to +12", Shape::Number},
        {"130 ms", Shape::Number},   {"<0.2", Shape::Number},      {"VDD-0.3", Shape::Expression},
        {"VDD/2", Shape::Expression},{"continuous", Shape::Expression}, {"P8: 500", Shape::Number},
        {"QX12A/QX12B/QX13A", Shape::Words}, {"(SO-8)", Shape::Words}, {"VDD = 3 V", Shape::Words},
        {"25 January issue", Shape::Words}, {"Supply voltage", Shape::Words}, {"(2.5 \u2264 VI \u2264 20)", Shape::Words},
    };
    for (auto const& c : cases) EXPECT_EQ(shapeOf(c.text), c.shape) << c.text;
}

TEST(TextShape, knowsWhatWantsASequel) {
    for (auto const* text : {"VDD -", "-0.3 to", "(2 \u2264 VI \u2264", "10 mA,"}) EXPECT_TRUE(endsOpen(text)) << text;
    for (auto const* text : {"-", "4.2", "VDD-0.3"}) EXPECT_FALSE(endsOpen(text)) << text;
    for (auto const* text : {"to 12", ") V", "\u00D7 0.8"}) EXPECT_TRUE(startsOpen(text)) << text;
    for (auto const* text : {"+85", "-0.3", "12"}) EXPECT_FALSE(startsOpen(text)) << text;
}

TEST(TextShape, knowsStatedConditions) {
    for (auto const* text : {"Ta = 25", "unless otherwise noted", "除非另有说明", "at 25 \u00B0C"}) EXPECT_TRUE(statesConditions(text)) << text;
    EXPECT_FALSE(statesConditions("Detection voltage"));
}

}  // namespace
}  // namespace standin::tables
