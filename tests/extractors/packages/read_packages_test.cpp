#include "extractors/packages/read_packages.h"

#include <initializer_list>

#include <gtest/gtest.h>

namespace {

namespace model = standin::model;
using standin::packages::readPackages;

void addLine(model::PageLayout& page, model::Points y, std::initializer_list<char const*> words) {
    model::TextLine line;
    line.firstWord = static_cast<std::uint32_t>(page.words.size());
    model::Points x = 50;
    for (auto const* text : words) {
        model::Word word;
        word.text = text;
        word.box = {x, y, x + 40, y + 10};
        page.words.push_back(word);
        x += 45;
    }
    line.wordCount = static_cast<std::uint32_t>(page.words.size()) - line.firstWord;
    line.box = {50, y, x, y + 10};
    page.lines.push_back(line);
}

model::PageLayout page(int number) {
    model::PageLayout result;
    result.page = number;
    return result;
}

TEST(ReadPackages, OneEntryForEachPackageAtItsMostTellingPlace) {
    std::vector<model::PageLayout> pages{page(1), page(2)};
    addLine(pages[0], 100, {"Small", "SOT-26", "or", "8-lead", "SOIC", "package"});
    addLine(pages[1], 300, {"Outline", "of", "SOT", "-", "23-6"});
    std::vector<model::Section> sections(2);
    sections[0] = {"s1", model::SectionKind::Features, "Features", 1, 1, {50, 80, 200, 95}};
    sections[1] = {"s2", model::SectionKind::Package, "Package outline", 1, 2, {50, 80, 200, 95}};
    auto const packages = readPackages(pages, sections);
    ASSERT_EQ(packages.size(), 2U);
    EXPECT_EQ(packages[0].canonical, "SOT-23-6");
    EXPECT_EQ(packages[0].name, "SOT - 23-6");
    EXPECT_EQ(packages[0].page, 2);
    EXPECT_EQ(packages[0].box, (model::Rect{140, 300, 270, 310}));
    EXPECT_EQ(packages[1].canonical, "SO-8");
    EXPECT_EQ(packages[1].name, "8-lead SOIC");
    EXPECT_EQ(packages[1].pins, 8);
}

TEST(ReadPackages, RunningHeadsAndHiddenWordsDoNotCount) {
    std::vector<model::PageLayout> pages{page(1)};
    addLine(pages[0], 20, {"SOT-23-5", "QFN-16"});
    pages[0].words[0].owner = model::Owner::Furniture;
    pages[0].words[1].hidden = true;
    EXPECT_TRUE(readPackages(pages, {}).empty());
}

TEST(ReadPackages, NamesThatBeginWithTheirCount) {
    std::vector<model::PageLayout> pages{page(1)};
    addLine(pages[0], 100, {"in", "8", "-", "lead", "SOIC"});
    addLine(pages[0], 120, {"and", "14", "Pin", "TSSOP"});
    auto const packages = readPackages(pages, {});
    ASSERT_EQ(packages.size(), 2U);
    EXPECT_EQ(packages[0].name, "8 - lead SOIC");
    EXPECT_EQ(packages[1].name, "14 Pin TSSOP");
}

}  // namespace
