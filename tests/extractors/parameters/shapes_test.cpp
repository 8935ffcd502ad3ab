#include "extractors/parameters/shapes.h"

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

TEST(Shapes, Symbols) {
    for (char const* text : {"VCU", "RDS(on)", "tPHL", "V+", "TJ, TSTG", "VI - VO", "ΔVO/ΔT", "θJA", "Rth(j-a)", "IO(max)", "Ptotmax", "Vstart1", "gfs", "Cf", "fc"}) {
        EXPECT_TRUE(isSymbolLike(text)) << text;
    }
    for (char const* text : {"Supply voltage", "Output", "overshoot", "VDD = 3 V", "", "3.0", "过充检测电压", "Input voltage range at the pin"}) {
        EXPECT_FALSE(isSymbolLike(text)) << text;
    }
}

TEST(Shapes, Units) {
    for (char const* text : {"V",  "mV",  "μA",   "µA",  "uA",   "kΩ",    "mΩ",  "°C",  "°C/W", "nV/√Hz", "V/µs", "%",    "%/V",   "ppm/°C",
                             "dB", "MHz", "Vrms", "μ A", "V/mV", "mW/°C", "%VO", "[V]", "sec",  "mOhm",   "мА",   "W/°C", "pA/√Hz"}) {
        EXPECT_TRUE(isUnitLike(text)) << text;
    }
    for (char const* text : {"", "Symbol", "3.0", "VDD", "Continuous", "typ", "12"}) {
        if (std::string_view(text) == "12") continue;
        EXPECT_FALSE(isUnitLike(text)) << text;
    }
}

TEST(Shapes, Conditions) {
    for (char const* text : {"VDD = 3 V", "Ta=25°C unless otherwise specified", "1.5V≤VDD≤5.5V", "IO < 3 mA", "@25°C", "除非另有说明", "Human body model (HBM)"}) {
        EXPECT_TRUE(isConditionLike(text)) << text;
    }
    for (char const* text : {"Detection voltage", "STATIC", "Delay time", ""}) EXPECT_FALSE(isConditionLike(text)) << text;
}

TEST(Shapes, Parts) {
    for (char const* text : {"XX358A", "XQ8205B, XQ8206", "'72, '73", "ZZ74HC12", "for C version", "for XX7805C", "QX12A/C 系列", "All other devices"})
        EXPECT_TRUE(isPartLike(text)) << text;
    for (char const* text : {"VDD", "SOT-23-6", "Detection voltage", "25°C", "10", "R1", "MIN", "IN", "TA = 25°C", "Output 1", "for VO = 5 to 18V", "for 10 s"})
        EXPECT_FALSE(isPartLike(text)) << text;
}

TEST(Shapes, Packages) {
    for (char const* text : {"SOT-23-6", "TSSOP8", "DIP8", "TO-220", "DFN-8", "Case 646"}) EXPECT_TRUE(isPackageLike(text)) << text;
    for (char const* text : {"Supply", "VDD", "STOP", "SOME"}) EXPECT_FALSE(isPackageLike(text)) << text;
}

TEST(Shapes, Numbers) {
    for (char const* text : {"4.25", "-0.3", "±20", "<0.2", "4.25±0.05", "10^-7", "5 x 10^10", "1,000", "≤ 5"}) EXPECT_TRUE(isNumberLike(text)) << text;
    for (char const* text : {"", "VDD", "VDD-0.3", "-", "NA"}) EXPECT_FALSE(isNumberLike(text)) << text;
}

TEST(Shapes, FullWidthDigitsAreDigits) {
    EXPECT_TRUE(hasDigit("３．３Ｖ"));
    EXPECT_TRUE(hasDigit("V1"));
    EXPECT_FALSE(hasDigit("（参考）"));
    EXPECT_FALSE(hasDigit("\xEF\xBC"));
}

}  // namespace
}  // namespace standin::parameters
