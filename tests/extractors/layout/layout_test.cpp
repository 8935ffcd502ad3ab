#include "extractors/layout/layout.h"

#include <limits>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/page_maker.h"

namespace standin::layout {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using model::BlockRole;
using model::PageLayout;
using model::Script;
using test::PageMaker;
using test::Spaces;

// Words of a page; '~' in front: no space before it, '^': a superscript standing alone.
std::vector<std::string> shown(PageLayout const& page) {
    std::vector<std::string> words;
    for (model::Word const& word : page.words) {
        std::string text = word.spaceBefore ? "" : "~";
        if (word.script == Script::Superscript) text += "^";
        words.push_back(text + word.text);
    }
    return words;
}

std::vector<std::string> lines(PageLayout const& page) {
    std::vector<std::string> out;
    for (model::TextLine const& line : page.lines) {
        std::string text;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w)
            text += (w > line.firstWord && page.words[w].spaceBefore ? " " : "") + page.words[w].text;
        out.push_back(text);
    }
    return out;
}

void expectContiguous(PageLayout const& page) {
    std::uint32_t word = 0;
    std::uint32_t line = 0;
    for (model::Block const& block : page.blocks) {
        EXPECT_EQ(block.firstLine, line);
        for (; line < block.firstLine + block.lineCount; ++line) {
            EXPECT_EQ(page.lines[line].firstWord, word);
            word += page.lines[line].wordCount;
        }
    }
    EXPECT_EQ(line, page.lines.size());
    EXPECT_EQ(word, page.words.size());
}

struct WordCase {
    char const* what;
    PageMaker page;
    std::vector<std::string> words;
};

TEST(Layout, WordsEndWhereAReaderSeesThemEnd) {
    std::vector<WordCase> const cases{
        {"drawn spaces", PageMaker(1).text(50, 100, "Supply current 3.5 mA"), {"Supply", "current", "3.5", "mA"}},
        {"spaces by movement", PageMaker(1).text(50, 100, "Supply current 3.5 mA", {.spaces = Spaces::Moved}), {"Supply", "current", "3.5", "mA"}},
        {"kerning inside a number", PageMaker(1).text(50, 100, "4.").text(62, 100, "280"), {"4.280"}},
        {"two numbers nearly touching", PageMaker(1).text(50, 100, "4.230").text(76.5F, 100, "4.280"), {"4.230", "4.280"}},
        {"a rule parts cells that touch", PageMaker(1).text(50, 100, "VDD").text(65.5F, 100, "6").vertical(65.3F, 80, 120), {"VDD", "6"}},
        {"fake bold, glyph by glyph", PageMaker(1).text(50, 100, "4").text(50.2F, 100, "4").text(55, 100, ".").text(55.2F, 100, ".").text(60, 100, "2").text(60.2F, 100, "2"), {"4.2"}},
        {"fake bold, word by word", PageMaker(1).text(50, 100, "4.28 V").text(50.3F, 100, "4.28 V"), {"4.28", "V"}},
        {"letter-spaced heading", PageMaker(1).text(50, 100, "F E A T U R E S"), {"FEATURES"}},
        {"letter spacing without spaces", PageMaker(1).text(50, 100, "RATINGS", {.letterSpacing = 3}), {"RATINGS"}},
        {"single letters in a row stay apart", PageMaker(1).text(50, 100, "A B C D E F"), {"A", "B", "C", "D", "E", "F"}},
        {"leader dots", PageMaker(1).text(50, 100, "Input......7V"), {"Input", "~......", "~7V"}},
        {"leaders of hyphens", PageMaker(1).text(50, 100, "Input voltage ---------- 7 V"), {"Input", "voltage", "----------", "7", "V"}},
        {"spaced leader dots", PageMaker(1).text(50, 100, "Input . . . . . 7V"), {"Input", ".....", "7V"}},
        {"writing changes without a gap", PageMaker(1).text(50, 100, "过充电检测电压VCU"), {"过充电检测电压", "~VCU"}},
        {"wide brackets follow the text around them", PageMaker(1).text(50, 100, "VIN（VSS）"), {"VIN（VSS）"}},
        {"sentences of CJK text", PageMaker(1).text(50, 100, "请勿短路。请勿加热。"), {"请勿短路。", "~请勿加热。"}},
    };
    for (WordCase const& c : cases) {
        SCOPED_TRACE(c.what);
        PageLayout const page = layOut(c.page.content());
        EXPECT_EQ(shown(page), c.words);
        expectContiguous(page);
    }
}

TEST(Layout, HyphensLeadBehindANameAndAreNoneInACell) {
    EXPECT_TRUE(layOut(PageMaker(1).text(50, 100, "Input voltage ---------- 7 V").content()).words.at(2).dotLeader);
    EXPECT_FALSE(layOut(PageMaker(1).text(50, 100, "IDD").text(120, 100, "----------").text(220, 100, "7").content()).words.at(1).dotLeader);
}

TEST(Layout, ScriptsJoinTheirSymbolAndMarksDoNot) {
    std::vector<WordCase> const cases{
        {"subscript", PageMaker(1).text(50, 100, "V").text(55, 102, "CU", {.size = 6}), {"VCU"}},
        {"subscript drawn after the line", PageMaker(1).text(50, 100, "V  = 4.2").text(55, 102.5F, "x", {.size = 4}), {"Vx", "=", "4.2"}},
        {"subscript, then an expression", PageMaker(1).text(50, 100, "V").text(55, 102, "DD", {.size = 6}).text(61, 100, "-0.3"), {"VDD-0.3"}},
        {"subscript with brackets", PageMaker(1).text(50, 100, "R").text(55, 102, "DS(on)", {.size = 6}), {"RDS(on)"}},
        {"subscript of the same size", PageMaker(1).text(50, 100, "V").text(55, 102, "CC"), {"VCC"}},
        {"footnote mark behind a number", PageMaker(1).text(50, 100, "4.25").text(70, 96, "1", {.size = 6}), {"4.25", "~^1"}},
        {"footnote mark in brackets behind a word", PageMaker(1).text(50, 100, "Ratings").text(85, 96, "(1)", {.size = 6}), {"Ratings", "~^(1)"}},
        {"mark in brackets behind a space", PageMaker(1).text(50, 100, "V").text(55, 102, "IN", {.size = 6}).text(64.5F, 96, "(2)", {.size = 6}), {"VIN", "^(2)"}},
        {"mark behind a subscript", PageMaker(1).text(50, 100, "V").text(55, 102, "IN", {.size = 6}).text(61, 96, "(2)", {.size = 6}), {"VIN", "~^(2)"}},
        {"mark in front of a note", PageMaker(1).text(50, 96, "1", {.size = 6}).text(53.5F, 100, "Not tested"), {"^1", "~Not", "tested"}},
        {"exponent", PageMaker(1).text(50, 100, "10").text(60, 96, "-3", {.size = 6}), {"10\u207B\u00B3"}},
        {"exponent drawn in pieces", PageMaker(1).text(50, 100, "10").text(60, 96, "-", {.size = 6}).text(63.6F, 96, "7", {.size = 6}), {"10\u207B\u2077"}},
        {"area", PageMaker(1).text(50, 100, "cm").text(60, 96, "2", {.size = 6}), {"cm\u00B2"}},
        {"degree drawn as a raised o", PageMaker(1).text(50, 100, "25").text(60, 96, "o", {.size = 6}).text(63, 100, "C"), {"25\u00B0C"}},
        {"degree drawn as a raised zero", PageMaker(1).text(50, 100, "25").text(60, 96, "0", {.size = 6}).text(63, 100, "C"), {"25\u00B0C"}},
        {"degree after a space", PageMaker(1).text(50, 100, "25").text(63, 96, "o", {.size = 6}).text(66, 100, "C"), {"25", "\u00B0C"}},
        {"raised sign of a pin", PageMaker(1).text(50, 100, "V").text(55, 96, "+", {.size = 6}), {"V+"}},
        {"package name", PageMaker(1).text(50, 100, "D").text(55, 96, "2", {.size = 6}).text(58, 100, "PAK"), {"D\u00B2PAK"}},
    };
    for (WordCase const& c : cases) {
        SCOPED_TRACE(c.what);
        PageLayout const page = layOut(c.page.content());
        EXPECT_EQ(shown(page), c.words);
        EXPECT_EQ(page.lines.size(), 1U);
    }
}

TEST(Layout, TheBaselineOfAWordIsThatOfItsMainPart) {
    PageLayout const page = layOut(PageMaker(1).text(50, 100, "t").text(55, 102, "d(off)", {.size = 6}).content());
    ASSERT_EQ(page.words.size(), 1U);
    EXPECT_FLOAT_EQ(page.words[0].baseline, 100);
    EXPECT_FLOAT_EQ(page.words[0].size, 10);
    EXPECT_EQ(page.words[0].box, (model::Rect{50, 92.5F, 73, 103.5F}));
}

TEST(Layout, LinesEndAtWideGapsAndAtRules) {
    PageMaker maker(1);
    maker.text(50, 100, "Detection voltage").text(300, 100, "4.25").text(322, 100, "4.30").vertical(321, 80, 120);
    EXPECT_THAT(lines(layOut(maker.content())), ElementsAre("Detection voltage", "4.25", "4.30"));
}

TEST(Layout, TwoColumnsAreReadOneAfterTheOther) {
    PageMaker maker(1);
    maker.text(50, 60, "A wide heading that goes over both of the columns of this page", {.size = 14});
    for (int i = 0; i < 8; ++i) {
        auto const y = static_cast<float>(100 + 12 * i);
        maker.text(50, y, "left column with running text of its own").text(320, y + 3, "right column with text that differs a bit");
    }
    PageLayout const page = layOut(maker.content());
    std::vector<std::string> const found = lines(page);
    ASSERT_EQ(found.size(), 17U);
    EXPECT_THAT(found[0], HasSubstr("wide heading"));
    for (std::size_t i = 1; i <= 8; ++i) EXPECT_THAT(found[i], HasSubstr("left"));
    for (std::size_t i = 9; i <= 16; ++i) EXPECT_THAT(found[i], HasSubstr("right"));
    EXPECT_EQ(page.blocks.front().column, 0);
    EXPECT_EQ(page.blocks.back().column, 2);
}

TEST(Layout, ATableStaysRowByRow) {
    PageMaker maker(1);
    for (int i = 0; i < 8; ++i) {
        auto const y = static_cast<float>(100 + 14 * i);
        maker.text(50, y, "Overcharge detection voltage").text(300, y, "4.25").text(360, y, "4.30").text(420, y, "V");
    }
    std::vector<std::string> const found = lines(layOut(maker.content()));
    ASSERT_EQ(found.size(), 32U);
    EXPECT_EQ(found[0], "Overcharge detection voltage");
    EXPECT_EQ(found[1], "4.25");
    EXPECT_EQ(found[3], "V");
}

TEST(Layout, BlocksHaveTheirRoles) {
    PageMaker maker(1);
    maker.text(50, 100, "2.1 Release conditions", {.size = 12, .bold = true});
    for (int i = 0; i < 3; ++i) maker.text(50, static_cast<float>(120 + 12 * i), "The logger stops and waits until the charger has been removed");
    maker.text(50, 170, "\u2022 runs from one cell").text(50, 184, "\u2022 counts the rain");
    maker.text(50, 210, "Figure 3. Wind sensor");
    PageLayout const page = layOut(maker.content());
    std::vector<BlockRole> roles;
    for (model::Block const& block : page.blocks) roles.push_back(block.role);
    EXPECT_THAT(roles, ElementsAre(BlockRole::Heading, BlockRole::Paragraph, BlockRole::ListEntry, BlockRole::ListEntry, BlockRole::Caption));
    EXPECT_EQ(page.blocks[0].headingLevel, 2);
    EXPECT_EQ(page.blocks[1].lineCount, 3U);
}

// A list of ratings in larger print than most of the page, in the left of two text columns.
TEST(Layout, NamesBesideTheirValuesAreNoHeadings) {
    PageMaker maker(1);
    maker.text(50, 100, "Storage temperature range", {.size = 9}).text(220, 100, "-40 to 90 \u00B0C", {.size = 9});
    maker.text(50, 125, "Power dissipation", {.size = 9}).text(230, 125, "700 mW", {.size = 9});
    for (int i = 0; i < 12; ++i) maker.text(50, static_cast<float>(200 + 8 * i), "The logger stops and waits until the charger has been removed from the box again", {.size = 6});
    PageLayout const page = layOut(maker.content());
    for (model::Block const& block : page.blocks) EXPECT_NE(block.role, BlockRole::Heading) << page.lines[block.firstLine].box.y0;
}

TEST(Layout, LettersOfASymbolFontInFrontOfEntriesAreBullets) {
    PageMaker maker(1);
    for (int i = 0; i < 3; ++i) {
        auto const y = static_cast<float>(100 + 14 * i);
        maker.text(50, y, "n", {.font = 2}).text(60, y, "counts rain and wind");
    }
    PageLayout const page = layOut(maker.content());
    ASSERT_EQ(page.blocks.size(), 3U);
    for (model::Block const& block : page.blocks) EXPECT_EQ(block.role, BlockRole::ListEntry);
    EXPECT_EQ(page.words[0].text, "\u2022");
}

TEST(Layout, AnIdeographInFrontOfNumbersStaysOne) {
    PageMaker maker(1);
    for (int i = 0; i < 3; ++i) {
        auto const y = static_cast<float>(100 + 60 * i);
        maker.text(50, y, "\u56FE", {.font = 2}).text(60, y, std::to_string(i + 1) + ". Wind over time");
    }
    PageLayout const page = layOut(maker.content());
    EXPECT_EQ(page.words[0].text, "\u56FE");
    for (model::Block const& block : page.blocks) EXPECT_EQ(block.role, BlockRole::Caption);
}

TEST(Layout, ASentenceAboutAFigureIsNoCaption) {
    PageMaker maker(1);
    maker.text(50, 100, "Fig. 2 shows the connection of the logger.").text(50, 140, "Fig. 2. Connection of the logger");
    PageLayout const page = layOut(maker.content());
    ASSERT_EQ(page.blocks.size(), 2U);
    EXPECT_EQ(page.blocks[0].role, BlockRole::Paragraph);
    EXPECT_EQ(page.blocks[1].role, BlockRole::Caption);
}

TEST(Layout, DrawnMarksInFrontOfLinesAreBullets) {
    PageMaker maker(1);
    for (int i = 0; i < 3; ++i) {
        auto const y = static_cast<float>(100 + 14 * i);
        maker.fill({50, y - 5, 53, y - 2}, 0x000000).text(60, y, "counts rain and wind at the same time of day");
    }
    PageLayout const page = layOut(maker.content());
    ASSERT_EQ(page.blocks.size(), 3U);
    for (model::Block const& block : page.blocks) EXPECT_EQ(block.role, BlockRole::ListEntry);
}

TEST(Layout, RotatedTextMakesBlocksOfItsOwn) {
    PageMaker maker(1);
    for (int i = 0; i < 5; ++i) maker.text(50, static_cast<float>(100 + 12 * i), "Plain text that runs to the right");
    maker.text(30, 400, "Group name", {.direction = model::Direction::Up});
    PageLayout const page = layOut(maker.content());
    EXPECT_EQ(page.blocks.back().role, BlockRole::Rotated);
    EXPECT_EQ(lines(page).back(), "Group name");
    EXPECT_EQ(page.words.back().direction, model::Direction::Up);
    EXPECT_FLOAT_EQ(page.words.back().baseline, 30);
    expectContiguous(page);
}

TEST(Layout, ASidewaysPageIsReadInItsOwnDirection) {
    PageMaker maker(1);
    for (int i = 0; i < 3; ++i) maker.text(static_cast<float>(100 + 12 * i), 700, "line " + std::to_string(i), {.direction = model::Direction::Up});
    PageLayout const page = layOut(maker.content());
    EXPECT_THAT(lines(page), ElementsAre("line 0", "line 1", "line 2"));
    EXPECT_NE(page.blocks.front().role, BlockRole::Rotated);
}

TEST(Layout, HiddenTextStaysWhereNothingVisibleStands) {
    PageMaker maker(1);
    maker.text(50, 100, "Seen").text(50, 100, "Other", {.invisible = true}).text(50, 200, "Scanned", {.invisible = true});
    PageLayout const page = layOut(maker.content());
    EXPECT_EQ(shown(page), (std::vector<std::string>{"Seen", "Scanned"}));
    EXPECT_FALSE(page.words[0].hidden);
    EXPECT_TRUE(page.words[1].hidden);
    ASSERT_EQ(page.notes.size(), 1U);
    EXPECT_THAT(page.notes[0].text, HasSubstr("\"Other\""));
}

TEST(Layout, WhiteTextIsVisibleOnABarOnly) {
    PageMaker maker(1);
    maker.fill({40, 80, 300, 110}, 0x203050).text(50, 100, "Ratings", {.colour = 0xFFFFFF}).text(50, 200, "Secret", {.colour = 0xFFFFFF});
    PageLayout const page = layOut(maker.content());
    ASSERT_EQ(page.words.size(), 2U);
    EXPECT_FALSE(page.words[0].hidden);
    EXPECT_TRUE(page.words[1].hidden);
}

TEST(Layout, GlyphsOutsideThePageAreLeftOut) {
    PageMaker maker(1);
    maker.text(50, 100, "Inside");
    model::PageContent content = maker.content();
    PageMaker beyond(1);
    beyond.text(50, 900, "Beyond");
    for (model::Glyph glyph : beyond.content().glyphs) {
        glyph.outside = true;
        content.glyphs.push_back(glyph);
    }
    EXPECT_EQ(shown(layOut(content)), std::vector<std::string>{"Inside"});
}

TEST(Layout, OddPagesAreSurvived) {
    EXPECT_TRUE(layOut(model::PageContent{}).words.empty());
    model::PageContent content = PageMaker(1).text(50, 100, "ab").content();
    content.glyphs[0].size = 0;
    content.glyphs[1].box.x0 = std::numeric_limits<float>::quiet_NaN();
    EXPECT_TRUE(layOut(content).words.empty());
    // Thousands of runs on one baseline and on one place.
    PageMaker crowded(1);
    for (int i = 0; i < 20000; ++i) crowded.text(static_cast<float>(i % 3) * 40, 100, i % 2 == 0 ? "ab" : "c", {.size = static_cast<float>(5 + i % 7)});
    EXPECT_FALSE(layOut(crowded.content()).words.empty());
}

// Word processors leave letters behind that are a hair high and have no width.
TEST(Layout, LeavesOutLettersThatNobodyCanSee) {
    model::PageContent content = PageMaker(1).text(50, 100, "VDSB 20").content();
    model::Glyph& stray = content.glyphs[3];
    stray.size = 1;
    stray.box.x1 = stray.box.x0;
    PageLayout const page = layOut(content);
    ASSERT_EQ(page.words.size(), 2U);
    EXPECT_EQ(page.words[0].text, "VDS");
}

}  // namespace
}  // namespace standin::layout
