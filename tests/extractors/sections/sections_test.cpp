#include "extractors/sections/sections.h"

#include <algorithm>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "extractors/layout/layout.h"
#include "support/page_maker.h"

namespace standin::sections {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using model::Owner;
using model::PageLayout;
using model::Section;
using model::SectionKind;
using model::Sentence;
using test::PageMaker;
using test::TextStyle;

constexpr TextStyle kTitle{.size = 14, .bold = true};

std::vector<PageLayout> laidOut(std::vector<PageMaker> const& makers) {
    std::vector<PageLayout> pages;
    for (PageMaker const& maker : makers) pages.push_back(layout::layOut(maker.content()));
    layout::markFurniture(pages);
    return pages;
}

std::vector<std::string> titles(std::vector<Section> const& sections) {
    std::vector<std::string> out;
    for (Section const& section : sections) out.push_back(section.title);
    return out;
}

std::vector<std::string> texts(std::vector<Sentence> const& sentences) {
    std::vector<std::string> out;
    for (Sentence const& sentence : sentences) out.push_back(sentence.text);
    return out;
}

void addProse(PageMaker& page, float x, float y, int lines, std::string const& text = "the logger waits until the sun is back and then") {
    for (int i = 0; i < lines; ++i) page.text(x, y + 12 * static_cast<float>(i), text);
}

// Everything printed, without spaces, in order of size: what has to be the same before and after.
std::string sortedLetters(std::string text) {
    std::erase(text, ' ');
    std::sort(text.begin(), text.end());
    return text;
}

TEST(Sections, HeadingsOpenSectionsInReadingOrder) {
    PageMaker first(1);
    first.text(50, 100, "1 Features", kTitle);
    addProse(first, 50, 130, 4);
    first.text(50, 200, "2 Absolute Maximum Ratings", kTitle);
    addProse(first, 50, 230, 4);
    PageMaker second(2);
    second.text(50, 100, "2 Absolute Maximum Ratings (continued)", kTitle);
    addProse(second, 50, 130, 4);
    second.text(50, 200, "3 Rain bucket", kTitle);
    addProse(second, 50, 230, 4);
    auto const pages = laidOut({first, second});
    auto const sections = findSections(pages);
    EXPECT_THAT(titles(sections), ElementsAre("1 Features", "2 Absolute Maximum Ratings", "3 Rain bucket"));
    ASSERT_EQ(sections.size(), 3U);
    EXPECT_EQ(sections[0].kind, SectionKind::Features);
    EXPECT_EQ(sections[1].kind, SectionKind::Ratings);
    EXPECT_EQ(sections[2].kind, SectionKind::Other);
    EXPECT_EQ(sections[1].id, "s2");
    EXPECT_EQ(sections[2].page, 2);
}

TEST(Sections, ATableOfContentsOpensNone) {
    PageMaker first(1);
    char const* const entries[] = {"Features", "Description", "Absolute Maximum Ratings", "Electrical Characteristics", "Package Information"};
    for (int i = 0; i < 5; ++i) {
        auto const y = static_cast<float>(100 + 14 * i);
        first.text(50, y, std::string(entries[i]) + " ........................ " + std::to_string(i / 3 + 1));
    }
    PageMaker second(2);
    second.text(50, 100, "Features", kTitle);
    addProse(second, 50, 130, 4);
    auto const sections = findSections(laidOut({first, second}));
    ASSERT_EQ(sections.size(), 1U);
    EXPECT_EQ(sections[0].page, 2);
}

TEST(Sections, ATitleAmongColumnTitlesIsNoHeading) {
    PageMaker page(1);
    page.text(50, 60, "15. Revision History", kTitle);
    page.text(50, 90, "Version", kTitle).text(150, 90, "Date", kTitle).text(250, 90, "Page", kTitle).text(350, 90, "Description", kTitle);
    for (int i = 0; i < 4; ++i) {
        auto const y = static_cast<float>(110 + 14 * i);
        page.text(50, y, "1." + std::to_string(i)).text(150, y, "2011/08/29").text(250, y, "7").text(350, y, "Lamp delay is longer");
    }
    EXPECT_THAT(titles(findSections(laidOut({page}))), ElementsAre("15. Revision History"));
}

TEST(Sections, ABigTitleBesideOthersIsAHeading) {
    PageMaker page(1);
    page.text(50, 90, "PINNING", kTitle).text(220, 90, "Lamp case", kTitle).text(400, 90, "Beam case", kTitle);
    addProse(page, 50, 120, 6);
    EXPECT_THAT(titles(findSections(laidOut({page}))), ElementsAre("PINNING"));
}

TEST(Sections, HeadingsAroundATableOfContentsStay) {
    PageMaker first(1);
    first.text(50, 60, "Table of Contents", kTitle);
    char const* const entries[] = {"Features", "Description", "Absolute Maximum Ratings", "Electrical Characteristics", "Package Information"};
    for (int i = 0; i < 5; ++i) {
        auto const y = static_cast<float>(100 + 14 * i);
        first.text(50, y, std::string(entries[i]) + " ........................ " + std::to_string(i / 3 + 1));
    }
    first.text(50, 220, "4 Revision History", kTitle);
    addProse(first, 50, 250, 4);
    PageMaker second(2);
    second.text(50, 100, "Features", kTitle);
    addProse(second, 50, 130, 4);
    auto const sections = findSections(laidOut({first, second}));
    EXPECT_THAT(titles(sections), ElementsAre("Table of Contents", "4 Revision History", "Features"));
    EXPECT_EQ(sections[1].kind, SectionKind::Revision);
}

TEST(Sections, ACellOfATableIsNoHeading) {
    PageMaker page(1);
    page.text(50, 100, "Electrical Characteristics", kTitle);
    for (int i = 0; i < 5; ++i) {
        auto const y = static_cast<float>(130 + 14 * i);
        page.text(50, y, i == 0 ? "Description" : "Wake-up delay").text(300, y, i == 0 ? "Package" : "4.25").text(400, y, "V");
    }
    EXPECT_THAT(titles(findSections(laidOut({page}))), ElementsAre("Electrical Characteristics"));
}

TEST(Sections, TheEndOfANameInATableIsNoHeading) {
    PageMaker page(1);
    page.text(50, 80, "3 Characteristics of the bucket", kTitle);
    for (int row = 0; row < 3; ++row) {
        float const y = 120 + 40 * static_cast<float>(row);
        page.text(50, y, "Current that is drawn during");
        page.text(50, y + 12, row == 1 ? "operation" : "the rain");
        for (int column = 0; column < 4; ++column) page.text(260 + 60 * static_cast<float>(column), y + 6, "1.5");
    }
    EXPECT_THAT(titles(findSections(laidOut({page}))), ElementsAre("3 Characteristics of the bucket"));

    PageMaker plain(1);
    plain.text(50, 80, "Operation");
    addProse(plain, 50, 110, 4);
    EXPECT_THAT(titles(findSections(laidOut({plain}))), ElementsAre("Operation")) << "a plain line with a capital may be one";
}

TEST(Sections, PlacesBelongToTheSectionBeforeThemInTheirColumn) {
    PageMaker page(1);
    page.text(50, 100, "Features", kTitle);
    addProse(page, 50, 130, 10, "left text of this column runs on here");
    page.text(320, 100, "Applications", kTitle);
    addProse(page, 320, 133, 10, "right text of that column runs on too");
    auto const pages = laidOut({page});
    auto const sections = findSections(pages);
    ASSERT_EQ(sections.size(), 2U);
    SectionIndex const index(sections, pages);
    EXPECT_EQ(index.ofBox(1, {45, 200, 250, 230}), "s1");
    EXPECT_EQ(index.ofBox(1, {315, 200, 550, 230}), "s2");
    EXPECT_EQ(index.ofBox(1, {45, 400, 250, 450}), "s1") << "no text inside";
    EXPECT_EQ(index.ofBox(1, {45, 10, 250, 50}), "") << "before the first heading";
    EXPECT_EQ(index.ofBox(2, {45, 10, 250, 50}), "s2") << "a page without headings";
    EXPECT_EQ(sectionAt(sections, 1, 80), nullptr);
    EXPECT_EQ(sectionAt(sections, 2, 10), &sections[1]);
}

TEST(RunningText, LinesColumnsAndPagesAreJoined) {
    PageMaker first(1);
    first.text(50, 100, "Description", kTitle);
    first.text(50, 130, "The logger counts the rain. It stops when the cell is").text(50, 142, "empty and begins again when the charger has been");
    PageMaker second(2);
    second.text(50, 100, "connected for a minute.");
    auto pages = laidOut({first, second});
    auto const sections = findSections(pages);
    auto const text = readText(pages, sections);
    EXPECT_THAT(texts(text), ElementsAre("Description", "The logger counts the rain.",
                                         "It stops when the cell is empty and begins again when the charger has been connected for a minute."));
    ASSERT_EQ(text.size(), 3U);
    EXPECT_EQ(text[2].section, "s1");
    ASSERT_EQ(text[2].places.size(), 2U);
    EXPECT_EQ(text[2].places[0].page, 1);
    EXPECT_EQ(text[2].places[1].page, 2);
}

TEST(RunningText, HyphensAtLineEnds) {
    PageMaker page(1);
    page.text(50, 100, "The instru-").text(50, 112, "ment has a weather-").text(50, 124, "proof case; a case that is proof");
    page.text(50, 136, "against weather is used for each light-").text(50, 148, "weight part.");
    auto pages = laidOut({page});
    EXPECT_THAT(texts(readText(pages, {})),
                ElementsAre("The instrument has a weather-proof case; a case that is proof against weather is used for each lightweight part."));
}

TEST(RunningText, ListEntriesAndRowsStandAlone) {
    PageMaker page(1);
    page.text(50, 100, "\u2022 one lithium cell").text(50, 114, "\u2022 rain and wind");
    page.text(50, 160, "Storage").text(300, 160, "12 months").text(50, 174, "Transport").text(300, 174, "2 weeks");
    auto pages = laidOut({page});
    EXPECT_THAT(texts(readText(pages, {})), ElementsAre("\u2022 one lithium cell", "\u2022 rain and wind", "Storage 12 months", "Transport 2 weeks"));
}

TEST(RunningText, ChineseLinesAreJoinedWithoutSpaces) {
    PageMaker page(1);
    page.text(50, 100, "\u8BB0\u5F55\u4EEA\u4F7F\u7528\u4E00\u8282\u9502").text(50, 112, "\u7535\u6C60\u3002\u8BF7\u52FF\u77ED\u8DEF\u3002");
    auto pages = laidOut({page});
    EXPECT_THAT(texts(readText(pages, {})), ElementsAre("\u8BB0\u5F55\u4EEA\u4F7F\u7528\u4E00\u8282\u9502\u7535\u6C60\u3002", "\u8BF7\u52FF\u77ED\u8DEF\u3002"));
}

TEST(RunningText, NothingIsLostAndNothingIsTakenFromOthers) {
    std::vector<PageMaker> makers;
    for (int p = 1; p <= 3; ++p) {
        PageMaker page(p);
        page.text(50, 100, "Function", kTitle);
        addProse(page, 50, 130, 5);
        page.text(50, 220, "V").text(55, 222, "CU", {.size = 6}).text(61, 220, " is 4.25").text(98, 216, "1", {.size = 6}).text(105, 220, "V.");
        page.text(50, 260, "Low").text(200, 260, "0.3").text(300, 260, "V").text(20, 500, "sideways", {.direction = model::Direction::Up});
        makers.push_back(page);
    }
    auto pages = laidOut(makers);
    // Something else owns a word of each page.
    std::string free;
    for (PageLayout& page : pages) {
        for (model::Word& word : page.words) {
            if (word.text == "0.3") word.owner = Owner::Parameter;
            if (word.owner == Owner::None) free += word.text;
        }
    }
    std::string read;
    for (Sentence const& sentence : readText(pages, findSections(pages))) {
        EXPECT_FALSE(sentence.places.empty());
        read += sentence.text;
    }
    EXPECT_EQ(sortedLetters(read), sortedLetters(free));
    for (PageLayout const& page : pages)
        for (model::Word const& word : page.words)
            if (word.owner != Owner::Furniture) {
                EXPECT_EQ(word.owner, word.text == "0.3" ? Owner::Parameter : Owner::Text) << word.text;
            }
    EXPECT_THAT(readText(pages, {}), IsEmpty()) << "read once only";
}

}  // namespace
}  // namespace standin::sections
