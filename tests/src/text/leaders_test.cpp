#include "text/leaders.h"

#include <gtest/gtest.h>

namespace standin::text {
namespace {

struct Row {
    char const* text;
    char const* replaced;
};

TEST(Leaders, aRunOfFourDotsOrMoreIsReplaced) {
    for (Row const& row : std::initializer_list<Row>{
             {"Storage temperature ........ 150 °C", "Storage temperature _ 150 °C"},
             {"Temperature……...…-65 °C", "Temperature_-65 °C"},
             {"Name…. 5", "Name_ 5"},
             {"A....1 B......2", "A_1 B_2"},
             {"0...70 °C", "0...70 °C"},
             {"0…70 °C", "0…70 °C"},
             {"4.25 V", "4.25 V"},
             {"", ""},
         }) {
        EXPECT_EQ(leadersReplaced(row.text, "_"), row.replaced) << row.text;
    }
}

TEST(Leaders, aRunIsFoundBeforeAPlace) {
    EXPECT_EQ(leaderBefore("Name ....", 9), 5U);
    EXPECT_EQ(leaderBefore("Name……", 10), 4U);
    EXPECT_EQ(leaderBefore("Name...", 7), 7U);
    EXPECT_EQ(leaderBefore("Name", 4), 4U);
    EXPECT_EQ(leaderBefore("", 0), 0U);
}

}  // namespace
}  // namespace standin::text
