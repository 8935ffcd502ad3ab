#include "extractors/parameters/table_text.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

TEST(TableText, TakesReferencesOut) {
    struct Case {
        char const* in;
        char const* out;
        std::vector<std::string> marks;
    };
    for (Case const& c : {
             Case{"Supply current (Note 4)", "Supply current", {"4"}},
             Case{"TA = 25 °C (Notes 4 and 6)", "TA = 25 °C", {"4", "6"}},
             Case{"ID = 17A, VGS = 10V (Figures 8, 9)", "ID = 17A, VGS = 10V", {}},
             Case{"Soldering *1", "Soldering", {"1"}},
             Case{"Leakage*", "Leakage", {"*"}},
             Case{"漏极电流（注1）", "漏极电流", {"1"}},
             Case{"Offset ※2", "Offset", {"2"}},
             Case{"Rise time①", "Rise time", {"1"}},
             Case{"Supply voltage ●", "Supply voltage", {"●"}},
             Case{"Body for 10s, see Figure 3", "Body for 10s", {}},
             Case{"0.7*VDD", "0.7*VDD", {}},
             Case{"Supply voltage - note 1", "Supply voltage", {"1"}},
             Case{"Data (refer to the test circuit, TJ = 0 to 90 °C)", "Data (refer to the test circuit, TJ = 0 to 90 °C)", {}},
             Case{"Delay time (1)", "Delay time (1)", {}},
             Case{"XQ96 (Note 1, Test Circuit Figure 15)", "XQ96", {"1"}},
             Case{"Current limit (peak, Notes 2 and 3)", "Current limit (peak)", {"2", "3"}},
             Case{"Gain (VO = 1 V, see Figure 3)", "Gain (VO = 1 V)", {}},
             Case{"Gain (VO = 1 V, noted as A)", "Gain (VO = 1 V, noted as A)", {}},
             Case{"Gain (VO = 1 V)", "Gain (VO = 1 V)", {}},
         }) {
        std::vector<std::string> marks;
        EXPECT_EQ(withoutReferences(c.in, marks), c.out) << c.in;
        EXPECT_EQ(marks, c.marks) << c.in;
    }
}

TEST(TableText, RaisedMarksAreNotText) {
    for (char const* mark : {"1", "(2)", "*", "a", "A,B", "†", "Note"}) EXPECT_TRUE(isFootnoteMark(mark)) << mark;
    for (char const* text : {"+", "-", "°", "-3", "V1x2", ""}) EXPECT_FALSE(isFootnoteMark(text)) << text;
    model::Table table = handMade({{"1.5"}}, 0);
    model::PageLayout page;
    page.page = 1;
    model::Word number;
    number.text = "1.5";
    model::Word raised;
    raised.text = "2";
    raised.script = model::Script::Superscript;
    raised.spaceBefore = false;
    page.words = {number, raised};
    table.cells[0].words = {0, 1};
    TableText const text(table, &page);
    EXPECT_EQ(text.cells[0].text, "1.5");
    EXPECT_EQ(text.cells[0].marks, std::vector<std::string>{"2"});
}

TEST(TableText, WhatIsRaisedBehindATenIsAnExponent) {
    model::Table table = handMade({{"10-7"}}, 0);
    model::PageLayout page;
    page.page = 1;
    model::Word ten;
    ten.text = "10−";
    model::Word raised;
    raised.text = "7";
    raised.script = model::Script::Superscript;
    raised.spaceBefore = false;
    page.words = {ten, raised};
    table.cells[0].words = {0, 1};
    EXPECT_EQ(TableText(table, &page).cells[0].text, "10^-7");
}

TEST(TableText, AReferenceThatIsEverythingStays) {
    TableText const text(handMade({{"(Note 8)"}}, 0), nullptr);
    EXPECT_TRUE(text.cells[0].onlyReference);
    EXPECT_EQ(text.cells[0].text, "(Note 8)");
}

TEST(TableText, TheGridKnowsSpans) {
    TableText const text(handMade({{">2 a", "", "b"}, {"c", "d", "e"}}, 0), nullptr);
    EXPECT_EQ(text.at(0, 1), text.at(0, 0));
    EXPECT_EQ(text.cells[static_cast<std::size_t>(text.at(1, 2))].text, "e");
    EXPECT_EQ(text.at(2, 0), -1);
    EXPECT_EQ(text.at(0, -1), -1);
}

TEST(TableText, NotedIsNoNote) {
    std::vector<std::string> marks;
    EXPECT_EQ(withoutReferences("TA=25°C unless otherwise noted", marks), "TA=25°C unless otherwise noted");
    EXPECT_TRUE(marks.empty());
    EXPECT_EQ(withoutReferences("Supply voltage note 1", marks), "Supply voltage");
    EXPECT_EQ(withoutReferences("Supply voltage NOTE 2", marks), "Supply voltage");
    EXPECT_EQ(withoutReferences("Supply  voltage,", marks), "Supply voltage");
    EXPECT_EQ(withoutReferences("Does not oversee", marks), "Does not oversee");
    EXPECT_EQ(marks, (std::vector<std::string>{"1", "2"}));
}

TEST(TableText, RaisedCapitalsAreNoMark) {
    EXPECT_FALSE(isFootnoteMark("DM"));
    EXPECT_TRUE(isFootnoteMark("a"));
    EXPECT_TRUE(isFootnoteMark("NOTE1"));
}

TEST(TableText, ARaisedNegativeDigitBehindTenIsAnExponent) {
    model::Table table = handMade({{"±10-5"}}, 0);
    model::PageLayout page;
    page.page = 1;
    model::Word ten;
    ten.text = "±10";
    model::Word raised;
    raised.text = "–5";
    raised.script = model::Script::Superscript;
    raised.spaceBefore = false;
    page.words = {ten, raised};
    table.cells[0].words = {0, 1};
    EXPECT_EQ(TableText(table, &page).cells[0].text, "±10^-5");
}

}  // namespace
}  // namespace standin::parameters
