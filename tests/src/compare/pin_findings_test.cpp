#include "compare/pin_findings.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Datasheet;
using model::Relation;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

std::vector<Draft> compared(std::vector<std::vector<std::string>> const& reference, std::vector<std::vector<std::string>> const& candidate) {
    Datasheet const r = SheetBuilder("QX17").pinTable(reference).build();
    Datasheet const c = SheetBuilder("ZL99").pinTable(candidate).build();
    AlignOptions const options;
    return findPinDifferences(SheetPair(r, c, options, words()));
}

model::Pin pinOf(char const* number, char const* name, char const* package) { return {number, name, "", package, 1, {}}; }

// Each pin at a place of its own.
Datasheet sheetOf(std::vector<model::Pin> pins) {
    Datasheet sheet = SheetBuilder("QX17").build();
    sheet.pins = std::move(pins);
    for (std::size_t i = 0; i < sheet.pins.size(); ++i) sheet.pins[i].box = {0, static_cast<float>(10 * i), 100, static_cast<float>(10 * i + 10)};
    return sheet;
}

std::vector<Draft> comparedPins(Datasheet const& reference, Datasheet const& candidate) { return findPinDifferences(SheetPair(reference, candidate, AlignOptions{}, words())); }

// "1 | VDD : 1 | VSS", sorted; "-" where a sheet has none.
std::vector<std::string> told(std::vector<Draft> const& drafts) {
    auto const text = [](std::optional<model::Side> const& side) { return side ? side->text : std::string("-"); };
    std::vector<std::string> texts;
    for (auto const& draft : drafts) texts.push_back(text(draft.finding.reference) + " : " + text(draft.finding.candidate));
    std::sort(texts.begin(), texts.end());
    return texts;
}

std::vector<Draft> exchanged(std::vector<Draft> drafts) {
    for (auto& draft : drafts) std::swap(draft.finding.reference, draft.finding.candidate);
    return drafts;
}

Datasheet twoPinsOfOneRow(std::string const& function) {
    Datasheet sheet = SheetBuilder("QX17").sentence("Logger of wind and rain.").build();
    sheet.pins = {{"10", "OUT", function, "", 1, {0, 0, 100, 10}}, {"11", "OUT", function, "", 1, {0, 0, 100, 10}}, {"12", "OUT", function, "", 1, {0, 10, 100, 20}}};
    return sheet;
}

TEST(PinFindings, AChangeInTheRowOfTwoNumbersIsToldOnce) {
    auto const drafts = comparedPins(twoPinsOfOneRow("Output above 3 V"), twoPinsOfOneRow("Output below 3 V"));
    ASSERT_EQ(drafts.size(), 3U);
    EXPECT_EQ(drafts[0].cause, -1);
    EXPECT_EQ(drafts[1].cause, 0);
    EXPECT_EQ(drafts[2].cause, -1);  // printed in a row of its own
}

// Three ordering lines; the first two share the cell of the quantity.
Datasheet orderingSheet(std::string const& shared, std::string const& own) {
    Datasheet sheet = SheetBuilder("QX17").sentence("Logger of wind and rain.").build();
    model::Table table;
    table.id = "t1";
    table.kind = model::TableKind::Ordering;
    table.page = 1;
    table.cells.push_back({.row = 1, .column = 1, .rowSpan = 2, .text = shared, .words = {}, .lineStarts = {}, .box = {50, 10, 100, 30}});
    table.cells.push_back({.row = 3, .column = 1, .text = own, .words = {}, .lineStarts = {}, .box = {50, 30, 100, 40}});
    sheet.tables.push_back(table);
    std::string const texts[] = {shared, shared, own};
    for (int i = 0; i < 3; ++i) {
        auto const y = static_cast<float>(10 + 10 * i);
        sheet.ordering.push_back({"QX17-" + std::to_string(i + 1) + "TR", {{"Quantity", texts[i]}}, "t1", 1, {0, y, 50, y + 10}});
    }
    return sheet;
}

TEST(OrderingFindings, ACellOfSeveralLinesIsToldOnce) {
    Datasheet const reference = orderingSheet("3000 a reel", "3000 a reel");
    Datasheet const candidate = orderingSheet("3006 a reel", "3006 a reel");
    auto const drafts = findOrderingDifferences(SheetPair(reference, candidate, AlignOptions{}, words()));
    ASSERT_EQ(drafts.size(), 3U);
    EXPECT_EQ(drafts[0].cause, -1);
    EXPECT_EQ(drafts[1].cause, 0);
    EXPECT_EQ(drafts[2].cause, -1);
}

TEST(OrderingFindings, ACellBesideTwoCodesIsToldOnce) {
    auto const sheet = [](std::string const& package) {
        Datasheet one = orderingSheet("3000 a reel", package);
        one.ordering.push_back(one.ordering.back());  // the same row under its other code
        one.ordering.back().code = "QX17-3 on tape";
        return one;
    };
    Datasheet const reference = sheet("SOT-8");
    Datasheet const candidate = sheet("SOT-4");
    auto const drafts = findOrderingDifferences(SheetPair(reference, candidate, AlignOptions{}, words()));
    ASSERT_EQ(drafts.size(), 2U);
    EXPECT_EQ(drafts[0].cause, -1);
    EXPECT_EQ(drafts[1].cause, 0);
}

// A pin without a draft has its like in the other sheet.
void expectNoneInSilence(Datasheet const& reference, Datasheet const& candidate) {
    auto const drafts = comparedPins(reference, candidate);
    EXPECT_EQ(told(drafts), told(exchanged(comparedPins(candidate, reference))));
    auto const expectOf = [&drafts](Datasheet const& sheet, Datasheet const& other, std::optional<model::Side> model::Finding::*side) {
        for (auto const& pin : sheet.pins) {
            bool const alike = std::any_of(other.pins.begin(), other.pins.end(), [&pin](auto const& theirs) { return theirs.number == pin.number && theirs.name == pin.name; });
            bool const shown = std::any_of(drafts.begin(), drafts.end(), [&](auto const& draft) { return draft.finding.*side && (draft.finding.*side)->box == pin.box; });
            EXPECT_TRUE(alike || shown) << pin.number << " " << pin.name << " of " << pin.package;
        }
    };
    expectOf(reference, candidate, &model::Finding::reference);
    expectOf(candidate, reference, &model::Finding::candidate);
}

TEST(PinFindings, TakeSynonymsForTheSamePin) {
    EXPECT_TRUE(compared({{"1", "VDD", "Supply"}, {"2", "VSS", "Ground"}}, {{"1", "VCC", "Cell plus"}, {"2", "GND", "Cell minus"}}).empty());
}

TEST(PinFindings, NeverTakeCellMinusForPackMinus) {
    auto const drafts = compared({{"1", "VDD", "Supply"}, {"2", "VSS", "Ground"}}, {{"1", "VDD", "Cell plus"}, {"2", "VM", "Monitor"}});
    ASSERT_EQ(drafts.size(), 1U);
    EXPECT_EQ(drafts[0].finding.relation, Relation::MeaningChanged);
}

TEST(PinFindings, TheChargersSideIsToldByItsNeighbours) {
    std::vector<std::vector<std::string>> const ours = {{"1", "DO", ""}, {"2", "VM", ""}, {"3", "CO", ""}, {"5", "VDD", ""}, {"6", "VSS", ""}};
    auto theirs = [](char const* discharge, char const* minus, char const* charge, char const* cell) {
        return std::vector<std::vector<std::string>>{{"1", discharge, ""}, {"2", minus, ""}, {"3", charge, ""}, {"5", "VCC", ""}, {"6", cell, ""}};
    };
    EXPECT_TRUE(compared(ours, theirs("DOUT", "V-", "COUT", "GND")).empty());
    EXPECT_TRUE(compared(ours, theirs("OD", "CS", "OC", "GND")).empty());
    EXPECT_TRUE(compared(theirs("OD", "CS", "OC", "GND"), ours).empty());
    EXPECT_EQ(compared(ours, {{"1", "DO", ""}, {"2", "VSS", ""}, {"3", "CO", ""}, {"5", "VDD", ""}, {"6", "V-", ""}}).size(), 2U) << "exchanged";
    EXPECT_FALSE(compared(ours, theirs("CO", "V-", "DO", "GND")).empty());
    EXPECT_FALSE(compared({{"1", "VM", ""}, {"2", "VDD", ""}}, {{"1", "V-", ""}, {"2", "VDD", ""}}).empty()) << "no protector";
}

TEST(PinFindings, TwoMakersAskOtherThingsOfTheBoard) {
    EXPECT_EQ(compared({{"1", "VDD", "Plus"}, {"4", "TEST", "Tie this to VSS"}}, {{"1", "VDD", "Supply"}, {"4", "TEST", "To be left open in use"}}).size(), 1U);
    EXPECT_TRUE(compared({{"1", "VDD", "Plus"}, {"4", "TEST", "Tie this to VSS"}}, {{"1", "VDD", "Supply"}, {"4", "TEST", "Has to be wired to GND"}}).empty());
}

TEST(PinFindings, ATerminalInALetterIsTheTerminalInAWord) {
    EXPECT_TRUE(compared({{"1", "K", ""}, {"2", "A", ""}, {"3", "G", ""}}, {{"1", "Cathode", ""}, {"2", "Anode", ""}, {"3", "Gate", ""}}).empty());
    auto const exchanged = compared({{"1", "K", ""}, {"2", "A", ""}, {"3", "G", ""}}, {{"1", "Gate", ""}, {"2", "Anode", ""}, {"3", "Cathode", ""}});
    EXPECT_EQ(exchanged.size(), 2U);
    // Inputs called by letters are no terminals.
    EXPECT_FALSE(compared({{"1", "A", ""}, {"2", "B", ""}, {"3", "Y", ""}}, {{"1", "Anode", ""}, {"2", "Base", ""}, {"3", "Y", ""}}).empty());
}

TEST(PinFindings, TheNegativeSupplyOfAnAmplifierIsVMinus) {
    std::vector<std::vector<std::string>> const words{{"2", "-INPUT", ""}, {"3", "+INPUT", ""}, {"4", "V-", ""}, {"6", "OUTPUT", ""}, {"7", "V+", ""}};
    EXPECT_TRUE(compared(words, {{"2", "IN-", ""}, {"3", "IN+", ""}, {"4", "VCC-", ""}, {"6", "OUT", ""}, {"7", "VCC+", ""}}).empty());
    EXPECT_EQ(compared(words, {{"2", "IN+", ""}, {"3", "IN-", ""}, {"4", "VCC-", ""}, {"6", "OUT", ""}, {"7", "VCC+", ""}}).size(), 2U);
    EXPECT_EQ(compared({{"1", "V-", ""}}, {{"1", "VCC-", ""}}).size(), 1U) << "of what, nothing says";
}

TEST(PinFindings, ANameOfTwoPinsTogetherIsLessExact) {
    std::vector<std::vector<std::string>> const together{{"1", "Output 1", ""}, {"2", "Inputs 1", ""}, {"3", "Inputs 1", ""}};
    std::vector<std::vector<std::string>> const apart{{"1", "Output 1", ""}, {"2", "Inverting Input 1", ""}, {"3", "Non-inverting Input 1", ""}};
    for (auto const& drafts : {compared(together, apart), compared(apart, together)}) {
        ASSERT_EQ(drafts.size(), 2U);
        for (auto const& draft : drafts) EXPECT_TRUE(isNamedLessExactly(draft.finding));
    }
    // Another amplifier's input, and a name that one pin alone has.
    auto const other = compared(together, {{"1", "Output 1", ""}, {"2", "Inverting Input 2", ""}, {"3", "Non-inverting Input 2", ""}});
    ASSERT_EQ(other.size(), 2U);
    EXPECT_EQ(other[0].finding.relation, Relation::MeaningChanged);
    auto const lone = compared({{"1", "Output 1", ""}, {"2", "Input 1", ""}}, {{"1", "Output 1", ""}, {"2", "Inverting Input 1", ""}});
    ASSERT_EQ(lone.size(), 1U);
    EXPECT_EQ(lone[0].finding.relation, Relation::MeaningChanged);
}

TEST(PinFindings, APinWithoutANumberMeetsItself) { EXPECT_TRUE(compared({{"", "Thermal pad", "tied to VSS"}}, {{"", "Thermal pad", "tied to VSS"}}).empty()); }

TEST(PinFindings, ANameThatWasNotReadIsNoDifference) {
    // the coverage account lists it
    EXPECT_TRUE(compared({{"1", "VDD", "Supply"}, {"2", "", "Status"}}, {{"1", "VDD", "Supply"}, {"2", "RDY", "Ready"}}).empty());
}

TEST(PinFindings, FindExchangedPins) {
    auto const drafts = compared({{"1", "DO", "a"}, {"3", "CO", "b"}}, {{"1", "CO", "c"}, {"3", "DO", "d"}});
    ASSERT_EQ(drafts.size(), 2U);
    for (auto const& draft : drafts) EXPECT_EQ(draft.finding.relation, Relation::MeaningChanged);
}

// Whichever sheet comes first, and in whichever order it prints them.
TEST(PinFindings, AreToldByNumber) {
    std::vector<std::vector<std::string>> const rising{{"5", "EN2", "Lamp"}, {"6", "EN1", "Bell"}, {"10", "TST", "Fan"}};
    std::vector<std::vector<std::string>> const falling{{"10", "OUT", "Fan"}, {"6", "EN7", "Bell"}, {"5", "EN9", "Lamp"}};
    for (auto const& drafts : {compared(rising, falling), compared(falling, rising)}) {
        ASSERT_EQ(drafts.size(), 3U);
        EXPECT_TRUE(drafts[0].finding.reference->text.starts_with("5 |")) << drafts[0].finding.reference->text;
        EXPECT_TRUE(drafts[1].finding.reference->text.starts_with("6 |")) << drafts[1].finding.reference->text;
    }
}

TEST(PinFindings, ListPinsOfOneSheet) {
    auto const drafts = compared({{"1", "VDD", "a"}}, {{"1", "VDD", "b"}, {"2", "TEST", "c"}});
    ASSERT_EQ(drafts.size(), 1U);
    EXPECT_EQ(drafts[0].finding.relation, Relation::OnlyCandidate);
}

TEST(PinFindings, APinWithoutAPackageIsAPinOfEach) {
    Datasheet const r =
        sheetOf({pinOf("1", "ADJUST", ""), pinOf("3", "INPUT", ""), pinOf("2", "OUTPUT", "TO-220"), pinOf("2", "OUTPUT", "SOT-223"), pinOf("4", "OUTPUT", "SOT-223")});
    Datasheet const c = sheetOf({pinOf("1", "Adj", ""), pinOf("2", "Output", ""), pinOf("3", "Input", "")});
    auto const drafts = comparedPins(r, c);
    for (auto const& draft : drafts) EXPECT_EQ(draft.finding.relation, Relation::OnlyReference) << draft.finding.reference->text;
    EXPECT_EQ(drafts.size(), 2U) << "what only the second package has";
    Datasheet const exchanged = sheetOf({pinOf("1", "Input", ""), pinOf("2", "Output", ""), pinOf("3", "Adj", "")});
    auto const found = comparedPins(r, exchanged);
    EXPECT_EQ(std::count_if(found.begin(), found.end(), [](auto const& draft) { return draft.finding.relation == Relation::MeaningChanged; }), 2);
}

Datasheet sheetOf(std::vector<model::Pin> first, std::vector<model::Pin> const& second) {
    first.insert(first.end(), second.begin(), second.end());
    return sheetOf(std::move(first));
}

std::vector<model::Pin> const kGeneral{pinOf("1", "VDD", ""), pinOf("2", "VSS", ""), pinOf("3", "OUT", "")};
std::vector<model::Pin> const kExchanged{pinOf("1", "VSS", ""), pinOf("2", "VDD", ""), pinOf("3", "OUT", "")};
std::vector<model::Pin> const kPackages{pinOf("1", "OUT", "SOT-89"), pinOf("2", "VDD", "SOT-89"), pinOf("3", "VSS", "SOT-89"),
                                        pinOf("1", "VSS", "TO-92"),  pinOf("2", "OUT", "TO-92"),  pinOf("3", "VDD", "TO-92")};

TEST(PinFindings, ATableWithoutAPackageBesideOneOfPackagesIsComparedToo) {
    EXPECT_TRUE(comparedPins(sheetOf(kGeneral, kPackages), sheetOf(kGeneral, kPackages)).empty());
    std::vector<std::string> const exchanged{"1 | VDD : 1 | VSS", "2 | VSS : 2 | VDD"};
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral, kPackages), sheetOf(kExchanged, kPackages))), exchanged);
    EXPECT_EQ(told(comparedPins(sheetOf(kPackages, kGeneral), sheetOf(kExchanged, kPackages))), exchanged) << "wherever it stands";
}

TEST(PinFindings, ATableWithoutAPackageMeetsTheOneOfTheOtherSheet) {
    std::vector<model::Pin> const sot{pinOf("1", "OUT", "SOT-89"), pinOf("2", "VSS", "SOT-89"), pinOf("3", "VDD", "SOT-89")};
    std::vector<std::string> const listed{"- : 1 | OUT", "- : 2 | VSS", "- : 3 | VDD"};
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral), sheetOf(kGeneral, sot))), listed);
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral), sheetOf(sot, kGeneral))), listed);
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral, sot), sheetOf(kGeneral))), (std::vector<std::string>{"1 | OUT : -", "2 | VSS : -", "3 | VDD : -"}));
    std::vector<model::Pin> const like{pinOf("1", "VDD", "SOT-89"), pinOf("2", "VSS", "SOT-89"), pinOf("3", "OUT", "SOT-89")};
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral), sheetOf(kExchanged, like))),
              (std::vector<std::string>{"- : 1 | VDD", "- : 2 | VSS", "- : 3 | OUT", "1 | VDD : 1 | VSS", "2 | VSS : 2 | VDD"}));
    // Pins of packages with other numbers say nothing of the table of all.
    std::vector<model::Pin> const pads{pinOf("4", "NC", "SOT-89"), pinOf("5", "NC", "TO-92")};
    EXPECT_EQ(told(comparedPins(sheetOf(kGeneral), sheetOf(kGeneral, pads))), (std::vector<std::string>{"- : 4 | NC", "- : 5 | NC"}));
}

TEST(PinFindings, APinOfSeveralPackagesIsToldOnce) {
    std::vector<model::Pin> const r{pinOf("1", "EN", ""), pinOf("2", "VSS", "SOT-89"), pinOf("3", "OUT", "SOT-89"), pinOf("2", "OUT", "TO-92"), pinOf("3", "VSS", "TO-92")};
    std::vector<model::Pin> c = r;
    c[0].name = "CE";
    EXPECT_EQ(told(comparedPins(sheetOf(r), sheetOf(c))), std::vector<std::string>{"1 | EN : 1 | CE"});
    // Pin 2 is the same in all packages of the candidate.
    std::vector<model::Pin> const alike{pinOf("1", "CE", ""), pinOf("2", "VSS", ""), pinOf("3", "OUT", "SOT-89"), pinOf("4", "OUT", "TO-92")};
    auto const texts = told(comparedPins(sheetOf(r), sheetOf(alike)));
    EXPECT_EQ(std::count(texts.begin(), texts.end(), "1 | EN : 1 | CE"), 1);
    auto without = r;
    without.erase(without.begin());
    EXPECT_EQ(told(comparedPins(sheetOf(r), sheetOf(without))), std::vector<std::string>{"1 | EN : -"});
}

// All ways to leave pins out of two tables of packages and one of all.
TEST(PinFindings, NoPinIsPassedOverInSilence) {
    std::vector<model::Pin> const all{pinOf("1", "VDD", ""),       pinOf("2", "VSS", ""),     pinOf("1", "OUT", "SOT-89"),
                                      pinOf("3", "VDD", "SOT-89"), pinOf("2", "VM", "TO-92"), pinOf("3", "VSS", "TO-92")};
    std::vector<model::Pin> const other{pinOf("1", "VSS", ""),      pinOf("2", "OUT", ""),     pinOf("1", "VDD", "SOT-89"),
                                        pinOf("2", "CO", "SOT-89"), pinOf("3", "DO", "TO-92"), pinOf("4", "VM", "TO-92")};
    auto const someOf = [](std::vector<model::Pin> const& pins, unsigned chosen) {
        std::vector<model::Pin> some;
        for (std::size_t i = 0; i < pins.size(); ++i) {
            if ((chosen >> i) % 2 == 1) some.push_back(pins[i]);
        }
        return sheetOf(std::move(some));
    };
    std::vector<Datasheet> references, candidates;
    for (unsigned chosen = 1; chosen < 64; ++chosen) {
        references.push_back(someOf(all, chosen));
        candidates.push_back(someOf(other, chosen));
    }
    for (auto const& reference : references) {
        for (auto const& candidate : candidates) expectNoneInSilence(reference, candidate);
    }
}

TEST(PinFindings, NamePackagesThatOneSheetHas) {
    Datasheet const r = SheetBuilder("QX17").package("SOT-23-6").build();
    Datasheet const c = SheetBuilder("ZL99").package("SOT-23-5").build();
    AlignOptions const options;
    auto const drafts = findPackageDifferences(SheetPair(r, c, options, words()));
    ASSERT_EQ(drafts.size(), 1U);
    EXPECT_EQ(drafts[0].finding.relation, Relation::MeaningChanged);
    EXPECT_EQ(drafts[0].finding.reference->text, "SOT-23-6");
}

}  // namespace
}  // namespace standin::compare
