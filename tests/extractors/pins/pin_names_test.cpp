#include "extractors/pins/pin_names.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace standin::pins;
using testing::ElementsAre;
using testing::IsEmpty;
using Texts = std::vector<std::string>;

TEST(PinNumbers, ListsRangesAndPads) {
    struct Case {
        char const* cell;
        Texts numbers;
    };
    Case const kCases[] = {
        {"1", {"1"}}, {"1, 2", {"1", "2"}}, {"3,4", {"3", "4"}}, {"1 2", {"1", "2"}}, {"1/8", {"1", "8"}}, {"4-6", {"4", "5", "6"}},
        {"4 \u2013 6", {"4", "5", "6"}}, {"1~3", {"1", "2", "3"}}, {"2 to 4", {"2", "3", "4"}}, {"1 and 2", {"1", "2"}}, {"7, 9-11", {"7", "9", "10", "11"}},
        {"2, TAB", {"2", "TAB"}}, {"EP", {"EP"}}, {"Exposed Pad", {"Exposed Pad"}}, {"\u886c\u5e95", {"\u886c\u5e95"}}, {"A1", {"A1"}}, {"B2, C3", {"B2", "C3"}},
        {"\uFF13", {"3"}}, {"\u2462", {"3"}}, {"5, 5", {"5"}}, {"Pin 4", {"4"}},
        {"", {}}, {"-", {}}, {"\u2014", {}}, {"VDD", {}}, {"3.3 V", {}}, {"Supply pin", {}},
    };
    for (auto const& [cell, numbers] : kCases) EXPECT_EQ(pinNumbers(cell), numbers) << cell;
}

TEST(PinNumbers, AHostileCellStaysShort) {
    EXPECT_LE(pinNumbers("1-999").size(), 2U);
    EXPECT_THAT(pinNumbers(std::string(5000, '1')), IsEmpty());
    EXPECT_THAT(pinNumbers("\xFF\xFE,\x80"), IsEmpty());
}

TEST(PinNames, OneNameForEachNumberWhereAsManyAreListed) {
    EXPECT_THAT(pinNamesFor("Q0, Q1, Q2", 3), ElementsAre("Q0", "Q1", "Q2"));
    EXPECT_THAT(pinNamesFor("D0 to D2", 3), ElementsAre("D0", "D1", "D2"));
    EXPECT_THAT(pinNamesFor("0 to 2", 3), ElementsAre("0", "1", "2"));
    EXPECT_THAT(pinNamesFor("A3-A1", 3), ElementsAre("A3", "A2", "A1"));
    EXPECT_THAT(pinNamesFor("VSS", 2), ElementsAre("VSS", "VSS"));
    EXPECT_THAT(pinNamesFor("P, Q", 3), ElementsAre("P, Q", "P, Q", "P, Q"));
    EXPECT_THAT(pinNamesFor("V-", 1), ElementsAre("V-"));
}

TEST(PinNames, NamesAndOtherWords) {
    for (char const* name : {"VDD", "V-", "+INPUT", "Output 1", "Adj", "N.C.", "1Y", "nRST", "CTL C", "\u7535\u6c60"}) EXPECT_TRUE(looksLikePinName(name)) << name;
    for (char const* other : {"", "12", "-", "connects to the cell", "Note:", "VDD = 5 V", "25\u00B0C", "The supply pin of the device part"}) EXPECT_FALSE(looksLikePinName(other)) << other;
}

}  // namespace
