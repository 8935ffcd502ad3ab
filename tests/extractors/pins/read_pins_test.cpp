#include "extractors/pins/read_pins.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

namespace model = standin::model;
using standin::pins::readPins;
using standin::pins::testing::PageBuilder;

model::Cell cell(int row, int column, char const* text) {
    model::Cell result;
    result.row = row;
    result.column = column;
    result.text = text;
    result.box = {static_cast<float>(column * 50), static_cast<float>(row * 12), static_cast<float>(column * 50 + 50), static_cast<float>(row * 12 + 12)};
    return result;
}

model::Table pinTable() {
    model::Table table;
    table.id = "t1";
    table.kind = model::TableKind::Pins;
    table.page = 1;
    table.headRows = 1;
    table.rows = 3;
    table.columns = 2;
    table.cells = {cell(0, 0, "No."), cell(0, 1, "Name"), cell(1, 0, "1"), cell(1, 1, "IN"), cell(2, 0, "2"), cell(2, 1, "OUT")};
    return table;
}

PageBuilder drawing() {
    PageBuilder page;
    page.line(60, 100, "3").line(80, 100, "IN").line(60, 120, "2").line(80, 120, "OUT").line(60, 140, "1").line(80, 140, "GND");
    return page;
}

TEST(ReadPins, TheTableGoesBeforeTheDrawing) {
    auto const table = pinTable();
    auto const page = drawing();
    auto const pins = readPins(std::span{&table, 1}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 2U);
    EXPECT_EQ(pins[0].name, "IN");
}

TEST(ReadPins, TheDrawingWhereThereIsNoTable) {
    auto const page = drawing();
    auto const pins = readPins({}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 3U);
    EXPECT_EQ(pins[0].name, "GND");
}

// The third name is printed as a picture.
model::Table tableWithoutAName(char const* first) {
    auto table = pinTable();
    table.rows = 4;
    table.columns = 3;
    table.cells = {cell(0, 0, "No."), cell(0, 1, "Name"), cell(0, 2, "Function"), cell(1, 0, "1"), cell(1, 1, first), cell(1, 2, "Ground"),
                   cell(2, 0, "2"),   cell(2, 1, "OUT"),  cell(2, 2, "Output"),   cell(3, 0, "3"), cell(3, 1, ""),    cell(3, 2, "Input")};
    return table;
}

TEST(ReadPins, ANameThatTheTableLacksComesFromTheDrawing) {
    auto const table = tableWithoutAName("GND");
    auto const page = drawing();
    auto const pins = readPins(std::span{&table, 1}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 3U);
    EXPECT_EQ(pins[2].name, "IN");
    EXPECT_EQ(pins[2].function, "Input");
}

TEST(ReadPins, APrintedNameGoesBeforeOneThatWasRecognised) {
    auto table = tableWithoutAName("GND");
    table.cells[10].text = "lN";  // recognised in the picture, and misread
    auto builder = drawing();
    builder.line(70, 37, "lN");
    auto page = builder.page();
    auto const word = std::find_if(page.words.begin(), page.words.end(), [](auto const& w) { return w.text == "lN"; });
    ASSERT_TRUE(word != page.words.end());
    auto const nameOf = [&] { return readPins(std::span{&table, 1}, std::span{&page, 1}, {}).pins.at(2).name; };
    EXPECT_EQ(nameOf(), "lN") << "as long as it is print";
    word->recognised = true;
    EXPECT_EQ(nameOf(), "IN");
    table.cells[4].text = "VSS";  // another pin order
    EXPECT_EQ(nameOf(), "lN") << "nothing better is known";
}

TEST(ReadPins, ANameFromARecognisedDrawingIsMarked) {
    auto const table = tableWithoutAName("GND");
    auto page = drawing().page();
    auto const pin = [&] { return readPins(std::span{&table, 1}, std::span{&page, 1}, {}).pins.at(2); };
    EXPECT_FALSE(pin().recognised);
    for (auto& word : page.words) word.recognised = true;
    EXPECT_EQ(pin().name, "IN");
    EXPECT_TRUE(pin().recognised) << "of the drawing, though the row is print";
}

TEST(ReadPins, ARecognisedLetterTakesNoPrintedNameOut) {
    auto table = tableWithoutAName("GND");
    table.cells[10].text = "VIN";
    auto builder = drawing();
    builder.line(110, 37, "I");  // recognised in the row's last column
    auto page = builder.page();
    for (auto& word : page.words) word.recognised = word.text == "I";
    EXPECT_EQ(readPins(std::span{&table, 1}, std::span{&page, 1}, {}).pins.at(2).name, "VIN");
}

TEST(ReadPins, ARecognisedLetterForTheFirstOfTwoIsADigit) {
    auto table = tableWithoutAName("Al");
    table.cells[7].text = "A2";
    table.cells[10].text = "Bl";
    PageBuilder builder;
    builder.line(60, 18, "Al");
    builder.line(60, 42, "Bl");
    auto page = builder.page();
    auto const names = [&] {
        std::string joined;
        for (auto const& pin : readPins(std::span{&table, 1}, std::span{&page, 1}, {}).pins) joined += pin.name + " ";
        return joined;
    };
    EXPECT_EQ(names(), "Al A2 Bl ") << "print is left as it is";
    for (auto& word : page.words) word.recognised = true;
    EXPECT_EQ(names(), "A1 A2 Bl ") << "nothing says that there is a B2";
}

TEST(ReadPins, ACapitalLetterBesideTheFirstOfTwoIsALetter) {
    auto const names = [](char const* first, char const* second, char const* third, bool secondIsPrint) {
        auto table = tableWithoutAName(first);
        table.cells[7].text = second;
        table.cells[10].text = third;
        PageBuilder builder;
        builder.line(60, 18, first).line(60, 30, second).line(60, 42, third);
        auto page = builder.page();
        for (auto& word : page.words) word.recognised = !secondIsPrint || word.text != second;
        std::string joined;
        for (auto const& pin : readPins(std::span{&table, 1}, std::span{&page, 1}, {}).pins) joined += pin.name + " ";
        return joined;
    };
    for (bool const secondIsPrint : {false, true}) {
        EXPECT_EQ(names("AI", "A1", "A2", secondIsPrint), "AI A1 A2 ");
        EXPECT_EQ(names("A|", "A1", "A2", secondIsPrint), "A| A1 A2 ");
        EXPECT_EQ(names("Al", "A1", "A2", secondIsPrint), "A1 A1 A2 ") << "two pins of one name";
    }
    EXPECT_EQ(names("AI", "Ai", "A2", false), "A1 A1 A2 ");
    EXPECT_EQ(names("Ai", "AI", "A2", false), "A1 A1 A2 ") << "in either order";
    EXPECT_EQ(names("AI", "AI", "A2", false), "A1 A1 A2 ");
}

TEST(ReadPins, ADrawingOfAnotherPinOrderNamesNothing) {
    auto const table = tableWithoutAName("VSS");
    auto const page = drawing();
    auto const pins = readPins(std::span{&table, 1}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 3U);
    EXPECT_EQ(pins[2].name, "");
}

TEST(ReadPins, ATableOfNamesGivesItsFunctionsToTheDrawing) {
    auto table = pinTable();
    table.cells = {cell(0, 0, "Pin"), cell(0, 1, "Function"), cell(1, 0, "IN"), cell(1, 1, "Input voltage"), cell(2, 0, "OUT"), cell(2, 1, "Output voltage")};
    auto const page = drawing();
    auto const pins = readPins(std::span{&table, 1}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 3U);
    EXPECT_EQ(pins[1].name, "OUT");
    EXPECT_EQ(pins[1].function, "Output voltage");
}

TEST(ReadPins, AContinuationFollowsTheHeadOfTheTableBefore) {
    std::vector<model::Table> tables{pinTable(), pinTable()};
    tables[1].id = "t2";
    tables[1].continues = "t1";
    tables[1].headRows = 0;
    tables[1].rows = 1;
    tables[1].cells = {cell(0, 0, "3"), cell(0, 1, "EN")};
    auto const pins = readPins(tables, {}, {}).pins;
    ASSERT_EQ(pins.size(), 3U);
    EXPECT_EQ(pins[2].number, "3");
    EXPECT_EQ(pins[2].name, "EN");
}

TEST(ReadPins, AListOfOtherThingsBesideThePinTableIsLeftOut) {
    std::vector<model::Table> tables{pinTable(), pinTable()};
    tables[0].caption = "Pin description";
    tables[1].id = "t2";
    tables[1].cells[3].text = "Norvik Parts";
    tables[1].cells[5].text = "Ostrand";
    auto const pins = readPins(tables, {}, {}).pins;
    ASSERT_EQ(pins.size(), 2U);
    EXPECT_EQ(pins[0].name, "IN");
}

TEST(ReadPins, PinsThatTwoVersionsShareAreOfBoth) {
    auto page = drawing();
    page.line(70, 155, "QX1").line(60, 200, "3").line(80, 200, "EN").line(60, 220, "2").line(80, 220, "OUT").line(60, 240, "1").line(80, 240, "GND").line(70, 255, "QX2");
    auto const pins = readPins({}, std::span{&page.page(), 1}, {}).pins;
    ASSERT_EQ(pins.size(), 6U);
    EXPECT_EQ(pins[3].package, "QX2");
    EXPECT_EQ(pins[3].name, "GND");
}

TEST(ReadPins, ACaptionTellsOfADrawingBehindTheFirstPages) {
    auto page = drawing();
    auto far = page.page();
    far.page = 9;
    EXPECT_TRUE(readPins({}, std::span{&far, 1}, {}).pins.empty());
    page.line(60, 80, "Pin configuration");
    far = page.page();
    far.page = 9;
    EXPECT_EQ(readPins({}, std::span{&far, 1}, {}).pins.size(), 3U);
}

TEST(ReadPins, ListsWhatItCouldNotRead) {
    auto const table = tableWithoutAName("VSS");
    auto const reading = readPins(std::span{&table, 1}, {}, {});
    ASSERT_EQ(reading.unread.size(), 1U);
    EXPECT_EQ(reading.unread[0].text, "pin 3");
    PageBuilder page;
    page.line(110, 100, "1").line(150, 100, "6").line(110, 120, "2").line(150, 120, "5").line(110, 140, "3").line(150, 140, "4");
    auto const drawn = readPins({}, std::span{&page.page(), 1}, {});
    EXPECT_TRUE(drawn.pins.empty());
    ASSERT_EQ(drawn.unread.size(), 1U);
    EXPECT_EQ(drawn.unread[0].text, "pins 1 to 6");
}

TEST(ReadPins, OtherTablesGiveNoPins) {
    auto table = pinTable();
    table.kind = model::TableKind::Other;
    EXPECT_TRUE(readPins(std::span{&table, 1}, {}, {}).pins.empty());
}

}  // namespace
