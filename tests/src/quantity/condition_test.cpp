#include "quantity/condition.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace standin::quantity {
namespace {

std::string shown(std::vector<ConditionPart> const& parts) {
    std::string text;
    for (ConditionPart const& part : parts) {
        if (!text.empty()) text += "; ";
        if (!part.understood) {
            text += "?" + part.text;
            continue;
        }
        auto const& interval = part.interval;
        if (interval.typ) text += fmt::format("{}={}", part.symbol, *interval.typ);
        else text += fmt::format("{} {}..{}{}{}", part.symbol, interval.lo.value_or(""), interval.hi.value_or(""), interval.loOpen ? " >" : "", interval.hiOpen ? " <" : "");
        text += interval.unit;
        if (!interval.relativeTo.empty()) text += " rel " + interval.relativeTo;
    }
    return text;
}

TEST(Condition, printedFormsGiveSymbolAndInterval) {
    for (auto const& [printed, wanted] :
         std::initializer_list<std::pair<char const*, char const*>>{{"Ta=25°C", "Ta=25degC"},
                                                                    {"VDD = 3.5 V", "VDD=3.5V"},
                                                                    {"VIN=3V to 5.5V, IOUT=10mA", "VIN 3..5.5V; IOUT=0.010A"},
                                                                    {"1.5V≤VDD≤5.5V", "VDD 1.5..5.5V"},
                                                                    {"-20°C to 60°C", "Ta -20..60degC"},
                                                                    {"25 °C", "Ta=25degC"},
                                                                    {"VDD>2.0V", "VDD 2.0.. >V"},
                                                                    {"VGS = ±12 V; VDS = 0 V", "VGS -12..12V; VDS=0V"},
                                                                    {"VDD=VCE=3.5V", "VDD=3.5V"},
                                                                    {"VM = VDD-1.0V", "VM=-1.0V rel VDD"},
                                                                    {"f=1kHz", "f=1000Hz"},
                                                                    {"RL = 10kΩ, CL=100 pF", "RL=10000Ω; CL=0.000000000100F"},
                                                                    {"VDD: 3.0 V", "VDD=3.0V"},
                                                                    {"Ta = 25 °C and VDD = 3 V", "Ta=25degC; VDD=3V"},
                                                                    {"no load", "?no load"},
                                                                    {"VDD = 3 V, Ta = 25 °C unless otherwise noted", "VDD=3V; Ta=25degC"},
                                                                    {"VDD = 3 V, unless otherwise specified.", "VDD=3V"},
                                                                    {"除非另有注明，Ta=25℃", "Ta=25degC"},
                                                                    {"IO = 40 mA f = 120 Hz TJ = 25 °C", "IO=0.040A; f=120Hz; TJ=25degC"},
                                                                    {"IO = 10 mA to IMAX, VI = 9 V", "?IO = 10 mA to IMAX; VI=9V"},
                                                                    {"VI = 0/5 VDD = 5", "?VI = 0/5; VDD=5V"},
                                                                    {"VO = 4.5/0.5 |IO| = <1 µA VDD = 5", "?VO = 4.5/0.5; |IO| ..0.000001 <A; VDD=5V"},
                                                                    {"VX=60%VXRM RGX=1kΩ Tj=110", "VX=0.601; RGX=1000Ω; Tj=110degC"},
                                                                    {"Ta = 25 °C 30 ms pulse", "Ta=25degC; ?30 ms pulse"},
                                                                    {"4V ≤ VI - VO ≤ 30V 5mA ≤ IO ≤ IMAX PD ≤ PMAX", "VI - VO 4..30V; ?5mA ≤ IO ≤ IMAX; ?PD ≤ PMAX"},
                                                                    {"4 V ≤ VI ≤ 30 V 5 mA ≤ IO ≤ 20 mA", "VI 4..30V; IO 0.005..0.020A"},
                                                                    {"PD < PMAX VI - VO = 30 V TJ = 25 °C", "?PD < PMAX; VI - VO=30V; TJ=25degC"},
                                                                    {"VDS ≥ 5 V Pulse Width ≤ 300 µs", "VDS 5..V; Pulse Width ..0.000300s"},
                                                                    {"VEE = GND", "VEE=0V rel GND"},
                                                                    {"V+ = 5 V to 30 V (other grade, V+ = 26 V), Ta = 25 °C", "V+ 5..30V; Ta=25degC"},
                                                                    {"over the 0 °C to 125 °C operating temperature range", "Ta 0..125degC"},
                                                                    {"over junction temperature range (0° ≤ TJ ≤ 125 °C)", "Tj 0..125degC"},
                                                                    {"VCM = 0 V to V+ - 1.5 V", "VCM 0..-1.5V rel ,V+"},
                                                                    {"ID ≈ 28 A", "ID=28A"},
                                                                    {"VO = -0.5 V to (VCC + 0.5 V)", "VO -0.5..0.5V rel ,VCC"},
                                                                    {"VI = VIH or VIL", "?VI = VIH or VIL"},
                                                                    {"VI = VIH or VIL |IO| ≤ 20 µA VDD = 5 V", "?VI = VIH or VIL; |IO| ..0.000020A; VDD=5V"},
                                                                    {"all voltages are referenced to ground (GND = 0 V)", "?all voltages are referenced to ground (GND = 0 V)"},
                                                                    {"V+ = 15 V, (VO = 1 V to 11 V)", "V+=15V; VO 1..11V"},
                                                                    {"VGS = 3.5 V, @Ta = 70 °C", "VGS=3.5V; Ta=70degC"},
                                                                    {"@ VCC = 5 V @ Ta = 25 °C", "VCC=5V; Ta=25degC"},
                                                                    {"VCC = 5 V @25°C", "VCC=5V; Ta=25degC"},
                                                                    {"at VCC = 5 V", "VCC=5V"},
                                                                    {"For VCC > 2 V", "VCC 2.. >V"},
                                                                    {"with RL = 2 kΩ, when VIN = 3 V", "RL=2000Ω; VIN=3V"},
                                                                    {"at IO = 10 mA at TJ = 25 °C", "IO=0.010A; TJ=25degC"},
                                                                    {"at rest", "?at rest"},
                                                                    {"VINrise", "?VINrise"},
                                                                    {"IO = 10 mA至IMAX, VI = 9 V", "?IO = 10 mA 至 IMAX; VI=9V"},
                                                                    {"IO = 0 至 IO = 900V/RSET", "?IO = 0 至; ?IO = 900V/RSET"},
                                                                    {"IO=10 mA负载", "IO=0.010A; ?负载"},
                                                                    {"当VDD=3V时", "VDD=3V"},
                                                                    {"VDD=3Vのとき, Ta=25℃", "VDD=3V; Ta=25degC"},
                                                                    {"延时30秒", "?延时 30 秒"},
                                                                    {"", ""}}) {
        EXPECT_EQ(shown(parseCondition(printed)), wanted) << printed;
    }
}

TEST(Condition, symbolsMatchInEverySpelling) {
    EXPECT_EQ(symbolKey("T_A"), symbolKey("Ta"));
    EXPECT_EQ(symbolKey("V DD"), symbolKey("VDD"));
    EXPECT_EQ(symbolKey("RDS(on)"), symbolKey("R_DS(ON)"));
}

}  // namespace
}  // namespace standin::quantity
