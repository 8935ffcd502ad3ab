#include "extractors/parameters/name_parts.h"

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

struct Case {
    char const* in;
    char const* name;
    char const* taken;
};

TEST(NameParts, TakesConditionsBehindTheName) {
    for (Case const& c : {
             Case{"Drain to gate voltage (RGS = 20 kΩ)", "Drain to gate voltage", "RGS = 20 kΩ"},
             Case{"Lead temperature (Soldering, 10 seconds)", "Lead temperature", "Soldering, 10 seconds"},
             Case{"Drain current VGS = 10 V, TC = 25 °C", "Drain current", "VGS = 10 V, TC = 25 °C"},
             Case{"漏极电流，VGS =4.5V，@Ta=25°C", "漏极电流", "VGS =4.5V，@Ta=25°C"},
             Case{"Power dissipation @Ta=25°C", "Power dissipation", "Ta=25°C"},
             Case{"Lead temperature 1.6 mm from case for 10 s", "Lead temperature", "1.6 mm from case for 10 s"},
             Case{"Junction to ambient t ≤ 10s", "Junction to ambient", "t ≤ 10s"},
             Case{"Supply current (power-down)", "Supply current (power-down)", ""},
             Case{"Lead temperature(Soldering)", "Lead temperature(Soldering)", ""},
             Case{"Short detection, VA - VB > VC indicates a short", "Short detection, VA - VB > VC indicates a short", ""},
             Case{"Leads at 1.6 mm from case for 10s", "Leads at 1.6 mm from case for 10s", ""},
             Case{"Feedback voltage (VIN = 12 V, )", "Feedback voltage", "VIN = 12 V"},
             Case{"Offset voltage (RS = 50 Ω) Tamb = +25 °C", "Offset voltage", "RS = 50 Ω, Tamb = +25 °C"},
             Case{"Offset voltage (trimmed) Tamb = +25 °C", "Offset voltage (trimmed)", "Tamb = +25 °C"},
             Case{"On-resistance VGS = 4.5 V", "On-resistance", "VGS = 4.5 V"},
         }) {
        std::string name = c.in;
        EXPECT_EQ(takeCondition(name), c.taken) << c.in;
        EXPECT_EQ(name, c.name) << c.in;
    }
}

TEST(NameParts, FindsSymbolsBesideTheName) {
    EXPECT_EQ(symbolPlace("Supply voltage, VDD"), SymbolPlace::BehindSet);
    EXPECT_EQ(symbolPlace("Supply voltage (VDD)"), SymbolPlace::BehindSet);
    EXPECT_EQ(symbolPlace("Overcharge detection voltage VCU"), SymbolPlace::Behind);
    EXPECT_EQ(symbolPlace("VCU Overcharge detection voltage"), SymbolPlace::InFront);
    EXPECT_EQ(symbolPlace("Supply voltage"), SymbolPlace::None);
    EXPECT_EQ(symbolPlace("Thermal resistance (DFN-8)"), SymbolPlace::None);
    std::string name = "Input supply voltage(VDD)";
    EXPECT_EQ(takeSymbol(name, symbolPlace(name)), "VDD");
    EXPECT_EQ(name, "Input supply voltage");
    name = "Clamp diode current (IIK, IOK)";
    EXPECT_EQ(takeSymbol(name, symbolPlace(name)), "IIK, IOK");
    EXPECT_EQ(name, "Clamp diode current");
    name = "Supply voltage, V+";
    EXPECT_EQ(takeSymbol(name, symbolPlace(name)), "V+");
    EXPECT_EQ(name, "Supply voltage");
    name = "VCU Overcharge detection voltage";
    EXPECT_EQ(takeSymbol(name, SymbolPlace::InFront), "VCU");
    EXPECT_EQ(name, "Overcharge detection voltage");
}

TEST(NameParts, StrongSymbols) {
    for (char const* word : {"VCU", "RDS(on)", "tPHL", "V+", "TA", "θJA", "IDD"}) EXPECT_TRUE(isStrongSymbol(word)) << word;
    for (char const* word : {"IN", "TEMP", "ESD", "Test", "Current", "DFN-8", "VCC2 and", "x"}) EXPECT_FALSE(isStrongSymbol(word)) << word;
}

TEST(NameParts, WithoutBrackets) {
    EXPECT_EQ(withoutBrackets("(Ta=25°C)"), "Ta=25°C");
    EXPECT_EQ(withoutBrackets("（注）"), "注");
    EXPECT_EQ(withoutBrackets("a (b)"), "a (b)");
    EXPECT_EQ(withoutBrackets("(a) (b)"), "(a) (b)");
}

TEST(NameParts, TellsConditionsFromNamesByTheirSubject) {
    EXPECT_TRUE(startsWithCondition("RL ≥ 2 kΩ, VO = 1 V"));
    EXPECT_TRUE(startsWithCondition("(VCE = 2.0 V, IC = 350 mA)"));
    EXPECT_TRUE(startsWithCondition("Output = 0 V"));
    EXPECT_TRUE(startsWithCondition("ON/OFF Pin = 5.0 V (off)"));
    EXPECT_FALSE(startsWithCondition("Slew Rate VI = 10 V, RL = 2 kΩ"));
    EXPECT_FALSE(startsWithCondition("漏极电流，VGS =4.5V"));
    EXPECT_FALSE(startsWithCondition("Derate above TA = 25 °C"));
    EXPECT_FALSE(startsWithCondition("Supply current"));
    EXPECT_EQ(subjectOf("TA = 25 °C"), "TA");
    EXPECT_EQ(subjectOf("25 °C"), "");
}

TEST(NameParts, FindsTheConditionBehindASymbol) {
    std::string symbol = "ID @ TC = 25\u00B0C";
    EXPECT_TRUE(isSymbolAtCondition(symbol));
    EXPECT_EQ(takeConditionAt(symbol), "TC = 25\u00B0C");
    EXPECT_EQ(symbol, "ID");
    std::string address = "sales@maker = us";
    EXPECT_EQ(takeConditionAt(address), "");
    EXPECT_EQ(address, "sales@maker = us");
}

TEST(NameParts, FromOneTemperatureToAnotherIsACondition) {
    EXPECT_TRUE(startsWithCondition("TMIN to TMAX"));
    EXPECT_TRUE(startsWithCondition("TL to TH"));
    EXPECT_FALSE(startsWithCondition("Turn-on to Turn-off"));
    EXPECT_FALSE(startsWithCondition("TX to RX"));
}

TEST(NameParts, ARaisedLetterInAUnitIsADegreeSign) {
    for (char const* text : {"oC", "o C", "оС", "(оС)", "°C"}) EXPECT_EQ(unitAsWritten(text), "°C") << text;
    EXPECT_EQ(unitAsWritten("оС/Вт"), "°C/Вт");
    EXPECT_EQ(unitAsWritten("мВ/оС"), "мВ/°C");
    EXPECT_EQ(unitAsWritten("Ом"), "Ом");
}

TEST(NameParts, FindsASymbolBehindAColon) {
    std::string name = "Supply voltage: VCC+";
    EXPECT_EQ(symbolPlace(name), SymbolPlace::BehindSet);
    EXPECT_EQ(takeSymbol(name, SymbolPlace::BehindSet), "VCC+");
    EXPECT_EQ(name, "Supply voltage");
}

TEST(NameParts, AnArrowBetweenTerminalsIsNoCondition) {
    std::string path = "Propagation delays CP, CQ → O0 to O9 HIGH to LOW";
    EXPECT_EQ(takeCondition(path), "");
    EXPECT_FALSE(startsWithCondition("MR → O1 to O9"));
    EXPECT_FALSE(startsWithCondition("On-resistance VGS = 4.5 V"));
    std::string step = "Overvoltage threshold VIN: 5 V → 7 V";
    EXPECT_NE(subjectOf(step), "");
}

TEST(NameParts, ABracketThatBelongsToTheSymbolIsNotTheSymbol) {
    std::string name = "Gate threshold voltage, VGS(th)";
    EXPECT_EQ(symbolPlace(name), SymbolPlace::BehindSet);
    EXPECT_EQ(takeSymbol(name, SymbolPlace::BehindSet), "VGS(th)");
    EXPECT_EQ(name, "Gate threshold voltage");
    std::string glued = "Collector current(ICM)";
    EXPECT_EQ(takeSymbol(glued, symbolPlace(glued)), "ICM");
    std::string two = "Clamp current (IIK, IOK)";
    EXPECT_EQ(takeSymbol(two, symbolPlace(two)), "IIK, IOK");
}

}  // namespace
}  // namespace standin::parameters
