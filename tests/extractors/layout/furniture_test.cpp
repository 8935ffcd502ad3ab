#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "extractors/layout/layout.h"
#include "support/page_maker.h"

namespace standin::layout {
namespace {

using model::BlockRole;
using model::Owner;
using model::PageLayout;
using test::PageMaker;

std::vector<PageLayout> document(int pages, void (*draw)(PageMaker&, int)) {
    std::vector<PageLayout> layouts;
    for (int p = 1; p <= pages; ++p) {
        PageMaker maker(p);
        for (int i = 0; i < 6; ++i) maker.text(50, static_cast<float>(300 + 12 * i), "Text of page " + std::to_string(p) + " line " + std::to_string(i));
        draw(maker, p);
        layouts.push_back(layOut(maker.content()));
    }
    markFurniture(layouts);
    return layouts;
}

std::string furniture(PageLayout const& page) {
    std::string text;
    for (model::Word const& word : page.words)
        if (word.owner == Owner::Furniture) text += (text.empty() ? "" : " ") + word.text;
    return text;
}

BlockRole roleOf(PageLayout const& page, std::string const& word) {
    for (model::Block const& block : page.blocks)
        for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l)
            for (std::uint32_t w = page.lines[l].firstWord; w < page.lines[l].firstWord + page.lines[l].wordCount; ++w)
                if (page.words[w].text == word) return block.role;
    ADD_FAILURE() << word;
    return BlockRole::Paragraph;
}

TEST(Furniture, RunningHeadsAndPageNumbers) {
    auto const pages = document(4, [](PageMaker& page, int p) {
        page.text(50, 40, "Kestrel Works WL12").text(500, 770, "Page " + std::to_string(p) + " of 4");
    });
    for (PageLayout const& page : pages) {
        EXPECT_EQ(furniture(page), "Kestrel Works WL12 Page " + std::to_string(page.page) + " of 4");
        EXPECT_EQ(roleOf(page, "Kestrel"), BlockRole::RunningHead);
        EXPECT_EQ(roleOf(page, "Page"), BlockRole::PageNumber);
        EXPECT_EQ(roleOf(page, "Text"), BlockRole::Paragraph);
    }
}

TEST(Furniture, ADriftingFootIsFoundAndAValueThatDiffersIsNot) {
    auto const pages = document(5, [](PageMaker& page, int p) {
        page.text(50, p == 1 ? 781.0F : 770.0F, "Kestrel Works datasheet");
        page.text(50, 60, "Limit " + std::to_string(p * p + 3) + " V");
    });
    for (PageLayout const& page : pages) EXPECT_EQ(furniture(page), "Kestrel Works datasheet");
}

TEST(Furniture, ARunningHeadWithOneWordChangedIsOneAllTheSame) {
    auto const pages = document(4, [](PageMaker& page, int p) {
        page.text(50, 40, p == 3 ? "Wind logger of 27 V for boats" : "Wind logger of 20 V for boats").text(500, 40, "WL12");
        page.text(50, 70, p == 2 ? "Rain" : "Storm");
    });
    for (PageLayout const& page : pages) {
        std::string const volts = page.page == 3 ? "27" : "20";
        EXPECT_EQ(furniture(page), "Wind logger of " + volts + " V for boats WL12" + (page.page == 2 ? "" : " Storm"));
    }
}

TEST(Furniture, ALineThatGoesOnFromTextIsText) {
    auto const pages = document(4, [](PageMaker& page, int p) {
        page.text(50, 40, "Table " + std::to_string(p * p) + ": values of the logger (supply 3 V,").text(50, 52, "load of 10 uF unless otherwise said).");
    });
    for (PageLayout const& page : pages) EXPECT_EQ(furniture(page), "");
}

TEST(Furniture, AChangedWordBesideTheRestOfItsRunningHeadIsPartOfIt) {
    auto const pages = document(5, [](PageMaker& page, int p) {
        page.text(50, 40, "Kestrel Works logger").text(500, 40, p == 3 ? "WL13" : "WL12");
        page.text(300, 60, p == 3 ? "4.35" : "draft");  // the rest of no running head
    });
    EXPECT_EQ(furniture(pages[2]), "Kestrel Works logger WL13");
    EXPECT_EQ(roleOf(pages[2], "WL13"), BlockRole::RunningHead);
    EXPECT_EQ(roleOf(pages[2], "4.35"), BlockRole::Paragraph);
}

TEST(Furniture, ANumberThatIsTheSameOnEveryPageIsNoPageNumber) {
    auto const pages = document(4, [](PageMaker& page, int p) { page.text(50, 770, "277 69 16").text(500, 770, std::to_string(p) + " / 4"); });
    for (PageLayout const& page : pages) {
        EXPECT_EQ(roleOf(page, "277"), BlockRole::RunningHead);
        EXPECT_EQ(roleOf(page, "/"), BlockRole::PageNumber);
    }
}

TEST(Furniture, TheHeadOfAContinuedTableIsNoRunningHead) {
    auto const pages = document(4, [](PageMaker& page, int) {
        page.text(50, 60, "Parameter").text(200, 60, "Min").text(260, 60, "Max");  // by its words
        page.text(50, 80, "Left").text(200, 80, "Right").vertical(150, 70, 400);   // by its rules
    });
    for (PageLayout const& page : pages) EXPECT_EQ(furniture(page), "");
}

TEST(Furniture, SlantedTextOverSeveralPagesIsAWatermark) {
    auto const pages = document(3, [](PageMaker& page, int) { page.text(200, 400, "DRAFT", {.size = 60, .colour = 0xD0D0D0, .direction = model::Direction::Slanted}); });
    for (PageLayout const& page : pages) {
        EXPECT_EQ(furniture(page), "DRAFT");
        EXPECT_EQ(roleOf(page, "DRAFT"), BlockRole::Watermark);
    }
}

TEST(Furniture, OfOnePageOnlyAnUnmistakablePageNumber) {
    auto const pages = document(1, [](PageMaker& page, int) { page.text(50, 40, "Kestrel Works").text(300, 780, "Page 1 of 1").text(50, 780, "1"); });
    EXPECT_EQ(furniture(pages[0]), "Page 1 of 1");
}

TEST(Furniture, NothingInNoPages) {
    std::vector<PageLayout> none;
    markFurniture(none);
    EXPECT_TRUE(none.empty());
}

}  // namespace
}  // namespace standin::layout
