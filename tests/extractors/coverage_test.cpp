#include "extractors/coverage.h"

#include <gtest/gtest.h>

namespace standin::reading {
namespace {

model::Word word(std::string text, model::Owner owner) {
    model::Word w;
    w.text = std::move(text);
    w.owner = owner;
    return w;
}

TEST(AccountFor, EveryNumberGoesToItsWordsOwner) {
    model::PageLayout page;
    page.page = 3;
    page.words = {word("4.28", model::Owner::Parameter), word("-0.3", model::Owner::Table),     word("Fig.2", model::Owner::Text), word("R12", model::Owner::Figure),
                  word("7", model::Owner::Furniture),    word("9.5V/10mA", model::Owner::None), word("words", model::Owner::None)};
    model::Datasheet sheet;
    sheet.text.resize(5);
    sheet.figures = {{"f1", "", "", 3, {}, model::FigureReading::Image, {}, ""}, {"f2", "", "", 3, {}, model::FigureReading::Vector, {}, ""}};
    auto const coverage = accountFor(std::vector{page}, sheet);
    EXPECT_EQ(coverage.numbers, 7);
    EXPECT_EQ(coverage.inParameters, 1);
    EXPECT_EQ(coverage.inTables, 1);
    EXPECT_EQ(coverage.inText, 1);
    EXPECT_EQ(coverage.inFigures, 1);
    EXPECT_EQ(coverage.inFurniture, 1);
    ASSERT_EQ(coverage.unaccounted.size(), 2U);
    EXPECT_EQ(coverage.unaccounted[0].text, "9.5");
    EXPECT_EQ(coverage.unaccounted[0].page, 3);
    EXPECT_EQ(coverage.sentences, 5);
    EXPECT_EQ(coverage.unreadFigures, std::vector<std::string>{"f1"});
}

TEST(AccountFor, AStampOverAScanDoesNotMakeItReadable) {
    model::PageLayout scan;
    scan.page = 1;
    scan.width = 600;
    scan.height = 800;
    scan.images = {{{0, 0, 600, 800}, 1200, 1600}};
    scan.words = {word("Copy", model::Owner::Text), word("5", model::Owner::Text)};
    model::PageLayout blank;
    blank.page = 2;
    auto const coverage = accountFor(std::vector{scan, blank}, {});
    EXPECT_EQ(coverage.pagesWithoutText, std::vector<int>{1});
}

}  // namespace
}  // namespace standin::reading
