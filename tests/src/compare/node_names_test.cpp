#include "compare/node_names.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(NodeNames, KnowSynonymsOfOneFunction) {
    EXPECT_EQ(nodeKey("VDD"), nodeKey("Vcc"));
    EXPECT_EQ(nodeKey("V_DD"), nodeKey("VDD"));
    EXPECT_EQ(nodeKey("VSS"), nodeKey("GND"));
    EXPECT_EQ(nodeKey("DO"), nodeKey("DOUT"));
    EXPECT_EQ(nodeKey("N.C."), nodeKey("NC"));
    EXPECT_EQ(nodeKey("-INPUT"), nodeKey("IN−"));
    EXPECT_EQ(nodeKey("+INPUT"), nodeKey("IN+"));
    EXPECT_EQ(nodeKey("V+"), nodeKey("VCC+"));
    EXPECT_EQ(nodeKey("COMP/BAL"), nodeKey("BALANCE/COMPENSATION"));
}

TEST(NodeNames, KeepApartWhatIsNeverTheSame) {
    EXPECT_NE(nodeKey("VSS"), nodeKey("VM"));
    EXPECT_NE(nodeKey("GND"), nodeKey("VM"));
    EXPECT_NE(nodeKey("DO"), nodeKey("CO"));
    EXPECT_NE(nodeKey("IN+"), nodeKey("IN-"));
    EXPECT_NE(nodeKey("V-"), nodeKey("VCC-")) << "of a protection circuit it is the pack's";
    EXPECT_NE(nodeKey("NC"), nodeKey("DNC"));
    EXPECT_NE(nodeKey("VIN"), nodeKey("VINI"));
    EXPECT_NE(nodeKey("TEST"), nodeKey("CDLY"));
    EXPECT_EQ(nodeKey("Q7"), nodeKey("q7"));
}

TEST(NodeNames, ATerminalInALetterIsTheTerminalInAWord) {
    EXPECT_EQ(terminalKey("G"), "gate");
    EXPECT_EQ(terminalKey("Gate"), "gate");
    EXPECT_NE(terminalKey("S"), terminalKey("D"));
    EXPECT_EQ(terminalKey("VDD"), "");
}

TEST(NodeNames, SpellConditionSymbolsAlike) {
    EXPECT_EQ(conditionSymbolKey("Ta"), conditionSymbolKey("T_A"));
    EXPECT_EQ(conditionSymbolKey("VDD"), conditionSymbolKey("VCC"));
    EXPECT_NE(conditionSymbolKey("Ta"), conditionSymbolKey("Tj"));
    EXPECT_NE(conditionSymbolKey("VGS"), conditionSymbolKey("VDS"));
    EXPECT_EQ(conditionSymbolKey("V+/V-"), conditionSymbolKey("VCC ±"));
    EXPECT_NE(conditionSymbolKey("V+/V-"), conditionSymbolKey("V+"));
    EXPECT_EQ(conditionSymbolKey("Tmb"), conditionSymbolKey("TC"));
    EXPECT_EQ(conditionSymbolKey("VI - VO"), conditionSymbolKey("Vin-Vout"));
    EXPECT_NE(conditionSymbolKey("VI - VO"), conditionSymbolKey("VO - VI"));
    EXPECT_EQ(conditionSymbolKey("V-"), "v-");
}

}  // namespace
}  // namespace standin::compare
