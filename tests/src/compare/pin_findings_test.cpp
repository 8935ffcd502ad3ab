#include "compare/pin_findings.h"

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

TEST(PinFindings, TakeSynonymsForTheSamePin) {
    EXPECT_TRUE(compared({{"1", "VDD", "Supply"}, {"2", "VSS", "Ground"}}, {{"1", "VCC", "Cell plus"}, {"2", "GND", "Cell minus"}}).empty());
}

TEST(PinFindings, NeverTakeCellMinusForPackMinus) {
    auto const drafts = compared({{"1", "VDD", "Supply"}, {"2", "VSS", "Ground"}}, {{"1", "VDD", "Cell plus"}, {"2", "VM", "Monitor"}});
    ASSERT_EQ(drafts.size(), 1U);
    EXPECT_EQ(drafts[0].finding.relation, Relation::MeaningChanged);
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

TEST(PinFindings, ListPinsOfOneSheet) {
    auto const drafts = compared({{"1", "VDD", "a"}}, {{"1", "VDD", "b"}, {"2", "TEST", "c"}});
    ASSERT_EQ(drafts.size(), 1U);
    EXPECT_EQ(drafts[0].finding.relation, Relation::OnlyCandidate);
}

TEST(PinFindings, APinWithoutAPackageIsAPinOfEach) {
    auto const sheet = [](std::vector<model::Pin> pins) {
        Datasheet built = SheetBuilder("QX17").build();
        built.pins = std::move(pins);
        return built;
    };
    auto const pin = [](char const* number, char const* name, char const* package) { return model::Pin{number, name, "", package, 1, {}}; };
    Datasheet const r = sheet({pin("1", "ADJUST", ""), pin("3", "INPUT", ""), pin("2", "OUTPUT", "TO-220"), pin("2", "OUTPUT", "SOT-223"), pin("4", "OUTPUT", "SOT-223")});
    Datasheet const c = sheet({pin("1", "Adj", ""), pin("2", "Output", ""), pin("3", "Input", "")});
    auto const drafts = findPinDifferences(SheetPair(r, c, AlignOptions{}, words()));
    for (auto const& draft : drafts) EXPECT_EQ(draft.finding.relation, Relation::OnlyReference) << draft.finding.reference->text;
    EXPECT_EQ(drafts.size(), 2U) << "what only the second package has";
    Datasheet const exchanged = sheet({pin("1", "Input", ""), pin("2", "Output", ""), pin("3", "Adj", "")});
    auto const found = findPinDifferences(SheetPair(r, exchanged, AlignOptions{}, words()));
    EXPECT_EQ(std::count_if(found.begin(), found.end(), [](auto const& draft) { return draft.finding.relation == Relation::MeaningChanged; }), 2);
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
