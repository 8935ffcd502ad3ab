#include "ui/models/read_places.h"

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

model::Datasheet smallSheet() {
    model::Datasheet sheet;
    model::Parameter row;
    row.id = "p1";
    row.page = 2;
    row.box = {50, 100, 300, 112};
    row.printed = "Release voltage | 4.10 | V";
    sheet.parameters.push_back(row);
    model::Table table;
    table.id = "t1";
    table.page = 2;
    auto const cell = [](float x0, float x1, float y0, std::string text) {
        model::Cell made;
        made.box = {x0, y0, x1, y0 + 12};
        made.text = std::move(text);
        return made;
    };
    table.cells = {cell(50, 150, 100, "Release voltage"), cell(200, 230, 100, "4.10"), cell(50, 150, 115, "Idle current")};
    sheet.tables.push_back(table);
    model::Sentence sentence;
    sentence.id = "x1";
    sentence.text = "The pin is left open.";
    sentence.places = {{1, {50, 700, 300, 712}}, {2, {50, 50, 120, 62}}};
    sheet.text.push_back(sentence);
    return sheet;
}

TEST(ReadPlaces, ARowStandsOverItsCells) {
    ReadPlaces const places(smallSheet());
    auto const at = places.at(2, {210, 106});
    ASSERT_EQ(at.size(), 2U);
    EXPECT_EQ(places[at[0]].kind, PlaceKind::Parameter);
    EXPECT_EQ(places[at[1]].text, "4.10");
    EXPECT_TRUE(places.at(2, {500, 106}).empty());
    EXPECT_TRUE(places.at(9, {210, 106}).empty());
}

TEST(ReadPlaces, FindsWhateverTheCaseOnceASentence) {
    ReadPlaces const places(smallSheet());
    EXPECT_EQ(places.find("PIN  is").size(), 1U) << "not again where it goes on";
    EXPECT_EQ(places.find("release").size(), 1U) << "as a cell, not as a row too";
    EXPECT_TRUE(places.find("  ").empty());
    EXPECT_TRUE(places.find("not printed").empty());
}

TEST(ReadPlaces, JoinsCellsOfALineByTabs) {
    ReadPlaces const places(smallSheet());
    EXPECT_EQ(places.joined(places.within(2, {0, 95, 600, 130})), "Release voltage\t4.10\nIdle current");
    EXPECT_EQ(places.joined(places.within(2, {0, 40, 600, 70})), "The pin is left open.");
}

TEST(ReadPlaces, EveryParameterOfTheDemoHasAPlace) {
    testing::OpenSession session;
    ReadPlaces const places(session->pair()->reference);
    for (auto const& parameter : session->pair()->reference.parameters) {
        int const at = places.parameterPlace(parameter.id);
        ASSERT_GE(at, 0) << parameter.id;
        EXPECT_EQ(places[static_cast<std::size_t>(at)].page, parameter.page);
    }
    EXPECT_EQ(places.parameterPlace("none"), -1);
}

TEST(ReadPlaces, FindsTheFindingAtItsPlace) {
    testing::OpenSession session;
    auto const& finding = testing::firstFinding(*session, model::FindingKind::Parameter);
    ASSERT_TRUE(finding.reference);
    auto const* found = findingAt(*session->pair(), DocumentSide::Reference, finding.reference->page, finding.reference->box.centre());
    ASSERT_NE(found, nullptr);
    EXPECT_TRUE(found->reference->box.grown(2).contains(finding.reference->box.centre()));
    EXPECT_GE(found->severity, finding.severity);
    EXPECT_EQ(findingAt(*session->pair(), DocumentSide::Reference, 1, {-50, -50}), nullptr);
}

}  // namespace
}  // namespace standin::ui
