#include "extractors/sections/headings.h"

#include <optional>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace standin::sections {
namespace {

using Kind = model::SectionKind;

struct Case {
    std::string_view title;
    Look look;
    std::optional<Kind> kind;
};

TEST(Headings, KindFollowsFromTheWords) {
    std::vector<Case> const cases{
        {"Features", Look::Plain, Kind::Features},
        {"FEATURES:", Look::Plain, Kind::Features},
        {"7.3 Absolute Maximum Ratings", Look::Plain, Kind::Ratings},
        {"\u25A0 ABSOLUTE MAXIMUM RATINGS (Note 1)", Look::Plain, Kind::Ratings},
        {"Absolute Maximum Rating", Look::Plain, Kind::Ratings},
        {"Electrical Characteristics (continued)", Look::Plain, Kind::Characteristics},
        {"DC electrical characteristics of the WL12", Look::Heading, Kind::Characteristics},
        {"DC electrical characteristics of the WL12", Look::Plain, std::nullopt},
        {"Typical Application", Look::Plain, Kind::Application},
        {"Typical Electrical Characteristics", Look::Heading, Kind::Curves},
        {"Package Information", Look::Plain, Kind::Package},
        {"Pin descriptions and typical electrical characteristics curves of the WL12", Look::Heading, Kind::Curves},  // the longest of several
        {"Revision history", Look::Plain, Kind::Revision},
        {"Absolute Maximum Ratings \u7EDD\u5BF9\u6700\u5927\u989D\u5B9A\u503C", Look::Plain, Kind::Ratings},
        {"\u4E00\u3001\u6982\u8FF0", Look::Plain, Kind::Description},
        {"\u30103\u3011\u6781\u9650\u5DE5\u4F5C\u6761\u4EF6", Look::Plain, Kind::Ratings},
        {"\u25C6 \u7535\u6C14\u7279\u6027\uFF1A", Look::Plain, Kind::Characteristics},
        {"\u7D76\u5BFE\u6700\u5927\u5B9A\u683C", Look::Plain, Kind::Ratings},
        {"\u96FB\u6C17\u7684\u7279\u6027", Look::Plain, Kind::Characteristics},
        {"Empfohlene Betriebsbedingungen", Look::Plain, Kind::OperatingConditions},
        {"Gehäuseabmessungen", Look::Plain, Kind::Package},
        {"Электрические параметры", Look::Plain, Kind::Characteristics},
        {"The weather logger runs from one cell", Look::Heading, std::nullopt},
        {"", Look::Heading, std::nullopt},
        {"12", Look::Heading, std::nullopt},
    };
    for (Case const& c : cases) EXPECT_EQ(headingKind(c.title, c.look), c.kind) << c.title;
}

TEST(Headings, NumberingAndSignsAreStripped) {
    EXPECT_EQ(strippedTitle("7.3  Pin Functions:"), "Pin Functions");
    EXPECT_EQ(strippedTitle("\u25A0 FEATURES"), "FEATURES");
    EXPECT_EQ(strippedTitle("a) Timing"), "Timing");
    EXPECT_EQ(strippedTitle("\u4E8C\u3001\u7279\u70B9"), "\u7279\u70B9");
    EXPECT_EQ(strippedTitle("  "), "");
}

TEST(Headings, DepthOfNumbering) {
    EXPECT_EQ(numberingDepth("7 Features"), 1);
    EXPECT_EQ(numberingDepth("7.3 Features"), 2);
    EXPECT_EQ(numberingDepth("7.3.1. Features"), 3);
    EXPECT_EQ(numberingDepth("Features"), 0);
    EXPECT_EQ(numberingDepth("2024 Features"), 0);
    EXPECT_EQ(numberingDepth("5V supply"), 0);
}

TEST(Headings, Continuations) {
    EXPECT_TRUE(isContinuation("Ratings (continued)"));
    EXPECT_TRUE(isContinuation("\u7535\u6C14\u7279\u6027\uFF08\u7EED\uFF09"));
    EXPECT_TRUE(isContinuation("Kennwerte (Fortsetzung)"));
    EXPECT_FALSE(isContinuation("Ratings"));
}

}  // namespace
}  // namespace standin::sections
