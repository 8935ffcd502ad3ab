// The notations that datasheets print, one line each: as printed, what is known
// beside it, and the interval in the coherent unit.
#include "quantity/bound_words.h"
#include "quantity/cell.h"

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

struct Notation {
    int number;  // of the domain notes
    char const* printed;
    char const* columnUnit;
    char const* expected;
    char const* lo;   // "" where none
    char const* typ;  // the value where only one is printed
    char const* hi;
    char const* unit;
    char const* relativeTo = "";
};

constexpr Notation kNotations[] = {
    {1, "4.28V", "", "V", "", "4.28", "", "V"},
    {2, "4,280 V", "", "V", "", "4.280", "", "V"},  // read with CommaReading::Decimal
    {3, "4280 mV", "", "V", "", "4.280", "", "V"},
    {4, "4280MV", "", "V", "", "4.280", "", "V"},  // read with allCapitals
    {5, "4.28±0.025V", "", "V", "4.255", "4.28", "4.305", "V"},
    {6, "4.28 V ± 25 mV", "", "V", "4.255", "4.28", "4.305", "V"},
    {7, "4.28V±1%", "", "V", "4.2372", "4.28", "4.3228", "V"},
    {9, "VDD+0.3", "V", "V", "", "0.3", "", "V", "VDD"},
    {10, "VSS−0.3 to VSS+12", "V", "V", "-0.3", "", "12", "V", "VSS"},
    {11, "VDD−28～VDD+0.3", "V", "V", "-28", "", "0.3", "V", "VDD"},
    {12, "0.7×VDD", "V", "V", "", "0.7", "", "1", "VDD"},
    {13, "−0.3 to +6.0 V", "", "V", "-0.3", "", "6.0", "V"},
    {14, "-40~85℃", "", "degC", "-40", "", "85", "degC"},
    {15, "–40–+125°C", "", "degC", "-40", "", "125", "degC"},
    {16, "25ºC", "", "degC", "", "25", "", "degC"},
    {17, "250C", "", "degC", "", "25", "", "degC"},
    {18, "298 K", "", "degC", "", "24.85", "", "degC"},
    {19, "150mV", "", "V", "", "0.150", "", "V"},
    {20, "０．１５０Ｖ", "", "V", "", "0.150", "", "V"},
    {21, "−100 mV", "", "V", "", "-0.100", "", "V"},
    {22, "(0.1) V", "", "V", "", "", "", ""},
    {23, "3V3", "", "V", "", "3.3", "", "V"},
    {24, "1V8", "", "", "", "1.8", "", "V"},
    {25, "100mVp-p", "", "V p-p", "", "0.100", "", "V p-p"},
    {26, "30 µVrms", "", "V rms", "", "0.000030", "", "V rms"},
    {27, "8 nV/√Hz", "", "V/√Hz", "", "0.000000008", "", "V/√Hz"},
    {28, "8nV/rtHz", "", "V/√Hz", "", "0.000000008", "", "V/√Hz"},
    {29, "3.0 \u00B5A", "", "A", "", "0.0000030", "", "A"},
    {30, "3.0 \u03BCA", "", "A", "", "0.0000030", "", "A"},
    {31, "3.0uA", "", "A", "", "0.0000030", "", "A"},
    {32, "3.0UA", "", "A", "", "0.0000030", "", "A"},
    {33, "3.0㎂", "", "A", "", "0.0000030", "", "A"},
    {34, "0.1μA以下", "", "A", "", "", "0.0000001", "A"},
    {35, "100nA max.", "", "A", "", "", "0.000000100", "A"},
    {36, "<0.2 uA", "", "A", "", "", "0.0000002", "A"},
    {37, "500 mA", "", "A", "", "0.500", "", "A"},
    {39, "2000mAh", "", "C", "", "7200", "", "C"},
    {40, "2Ah", "", "C", "", "7200", "", "C"},
    {41, "7.4Wh", "", "J", "", "26640", "", "J"},
    {42, "50mΩ", "", "Ω", "", "0.050", "", "Ω"},
    {43, "50mOhm", "", "Ω", "", "0.050", "", "Ω"},
    {44, "50 mohms", "", "Ω", "", "0.050", "", "Ω"},
    {45, "50mW", "", "Ω", "", "0.050", "", "Ω"},
    {46, "0R05", "", "Ω", "", "0.05", "", "Ω"},
    {47, "R050", "", "Ω", "", "0.050", "", "Ω"},
    {48, "4R7", "", "Ω", "", "4.7", "", "Ω"},
    {49, "470R", "", "Ω", "", "470", "", "Ω"},
    {50, "1K", "", "Ω", "", "1000", "", "Ω"},
    {51, "2k2", "", "Ω", "", "2200", "", "Ω"},
    {52, "300 kΩ", "", "Ω", "", "300000", "", "Ω"},
    {53, "300㏀", "", "Ω", "", "300000", "", "Ω"},
    {54, "1MEG", "", "Ω", "", "1000000", "", "Ω"},
    {55, "4M7", "", "Ω", "", "4700000", "", "Ω"},
    {56, "0.1µF", "", "F", "", "0.0000001", "", "F"},
    {57, "100nF", "", "F", "", "0.0000001", "", "F"},
    {58, "0.1uf", "", "F", "", "0.0000001", "", "F"},
    {59, "104", "", "F", "", "0.0000001", "", "F"},
    {60, "4u7", "", "F", "", "0.0000047", "", "F"},
    {61, "4.7 µH", "", "H", "", "0.0000047", "", "H"},
    {62, "1.2s", "", "s", "", "1.2", "", "s"},
    {63, "1.2S", "", "s", "", "1.2", "", "s"},
    {64, "1200msec", "", "s", "", "1.2", "", "s"},
    {65, "144 mS", "", "s", "", "0.144", "", "s"},
    {66, "25 mS", "", "S", "", "0.025", "", "S"},
    {67, "280 µs", "", "s", "", "0.00028", "", "s"},
    {68, "280usec", "", "s", "", "0.00028", "", "s"},
    {69, "280㎲", "", "s", "", "0.00028", "", "s"},
    {70, "1.0 s ±30%", "", "s", "0.7", "1.0", "1.3", "s"},
    {72, "10min", "", "s", "", "600", "", "s"},
    {73, "1.2 MHz", "", "Hz", "", "1200000", "", "Hz"},
    {74, "1200KHz", "", "Hz", "", "1200000", "", "Hz"},
    {75, "250 mW", "", "W", "", "0.25", "", "W"},
    {76, "2.5mW/°C", "", "W/K", "", "0.0025", "", "W/K"},
    {77, "220℃/W", "", "K/W", "", "220", "", "K/W"},
    {78, "50ppm/℃", "", "1/K", "", "0.00005", "", "1/K"},
    {79, "100 ppm", "", "1", "", "0.0001", "", "1"},
    {80, "0.05%/V", "", "1/V", "", "0.0005", "", "1/V"},
    {81, "20 mV/A", "", "Ω", "", "0.020", "", "Ω"},
    {82, "60dB", "", "dB", "", "60", "", "dB"},
    {83, "−60 dB", "", "dB", "", "-60", "", "dB"},
    {84, "120 dB", "", "dB", "", "120", "", "dB"},
    {85, "100 V/mV", "", "1", "", "100000", "", "1"},
    {86, "0.6 V/µs", "", "V/s", "", "600000", "", "V/s"},
    {87, "10 kV/µs", "", "V/s", "", "10000000000", "", "V/s"},
    {88, "2000V (HBM) / 2kV", "", "V", "", "2000", "", "V"},
    {89, "3.5 mT", "", "T", "", "0.0035", "", "T"},
    {90, "35G / 35 Gauss", "", "T", "", "0.0035", "", "T"},
    {91, "30 nC", "", "C", "", "0.00000003", "", "C"},
    {93, "37.4 mil", "", "m", "", "0.00094996", "", "m"},
    {94, "0.0374\"", "", "m", "", "0.00094996", "", "m"},
    {95, "50–600 %", "", "1", "0.5", "", "6.0", "1"},
    {96, "1.5 … 5.5 V", "", "V", "1.5", "", "5.5", "V"},
    {97, "1.5V≤VDD≤5.5V", "", "V", "1.5", "", "5.5", "V"},
    {98, "2×10⁻³ A", "", "A", "", "0.002", "", "A"},
    {98, "2E-3A", "", "A", "", "0.002", "", "A"},
    {98, "2.0e−3", "A", "A", "", "0.002", "", "A"},
    {99, "1 000 000 cycles", "", "1", "", "1000000", "", "1"},
    {100, "±2 µA (input leakage)", "", "A", "-0.000002", "", "0.000002", "A"},
    {101, "Typ. 0.9", "V", "V", "", "0.9", "", "V"},
    {102, "-", "V", "V", "", "", "", ""},
    {102, "—", "V", "V", "", "", "", ""},
    {102, "N.A.", "V", "V", "", "", "", ""},
};

void expectNumber(std::optional<Decimal> const& number, char const* wanted, Notation const& row, char const* which) {
    if (*wanted == '\0') {
        EXPECT_FALSE(number.has_value()) << row.number << " " << row.printed << " " << which << " " << (number ? number->toString() : "");
        return;
    }
    ASSERT_TRUE(number.has_value()) << row.number << " " << row.printed << " " << which;
    EXPECT_TRUE(*number == *Decimal::parse(wanted)) << row.number << " " << row.printed << " " << which << ": " << number->toString() << " not " << wanted;
}

TEST(Notation, everyPrintedFormGivesItsInterval) {
    for (Notation const& row : kNotations) {
        ValueContext context{.unit = row.columnUnit, .expected = row.expected};
        context.allCapitals = row.number == 4;
        if (row.number == 2) context.comma = CommaReading::Decimal;
        ParsedValue const value = parseValue(row.printed, context);
        expectNumber(value.lo, row.lo, row, "lo");
        expectNumber(value.typ, row.typ, row, "typ");
        expectNumber(value.hi, row.hi, row, "hi");
        if (*row.lo != '\0' || *row.typ != '\0' || *row.hi != '\0') {
            EXPECT_EQ(value.unit, row.unit) << row.number << " " << row.printed;
            EXPECT_FALSE(value.unitConflict && row.number != 12) << row.number << " " << row.printed;
        }
        EXPECT_EQ(value.relativeTo, row.relativeTo) << row.number << " " << row.printed;
    }
}

TEST(Notation, formulasAreWorkedOutWhereTheNodeIsKnown) {
    std::pair<std::string_view, Decimal> const known[] = {{"VCU", *Decimal::parse("4.28")}, {"tCU", *Decimal::parse("1.2")}};
    auto const voltage = parseValue("VCU−0.025", {.unit = "V", .expected = "V", .known = known});  // 8
    ASSERT_TRUE(voltage.typ);
    EXPECT_EQ(voltage.typ->toString(), "4.255");
    auto const delay = parseValue("tCU×0.8", {.unit = "s", .expected = "s", .known = known});  // 71
    ASSERT_TRUE(delay.typ);
    EXPECT_EQ(delay.typ->toShortString(), "0.96");
}

TEST(Notation, cellRatesNeedTheCapacity) {
    auto const rate = parseValue("0.5C", {.expected = "A", .capacity = Decimal(1800)});  // 38: 500 mAh
    ASSERT_TRUE(rate.typ);
    EXPECT_EQ(rate.typ->toShortString(), "0.25");
    EXPECT_EQ(rate.unit, "A");
    EXPECT_TRUE(parseValue("0.5C", {.expected = "A"}).unitConflict);
}

TEST(Notation, decibelsGiveRatiosOfAmplitude) {
    EXPECT_EQ(amplitudeRatio(60).toString(), "1000");
    EXPECT_EQ(amplitudeRatio(120).toString(), "1000000");
    EXPECT_TRUE(amplitudeRatio(66) > Decimal(1995) && amplitudeRatio(66) < Decimal(1996));
}

TEST(Notation, twoDimensionsInOneCellAreWordsNotANumber) {
    EXPECT_EQ(parseValue("2.9×1.6mm", {.expected = "m"}).kind, ParsedValue::Kind::Words);  // 92
}

TEST(Notation, everyGuessLeavesANote) {
    for (auto const& [printed, unit, expected] : std::initializer_list<std::tuple<char const*, char const*, char const*>>{
             {"4,28 V", "", "V"}, {"3.0UA", "", "A"}, {"50mW", "", "Ω"}, {"250C", "", "degC"}, {"104", "", "F"}, {"2k2", "", "Ω"}, {"7.5", "", "V"}, {"100m", "", "Ω"}}) {
        EXPECT_FALSE(parseValue(printed, {.unit = unit, .expected = expected}).notes.empty()) << printed;
    }
}

TEST(Notation, boundsKeepWhetherTheyIncludeTheNumber) {
    EXPECT_TRUE(parseValue("<0.2 uA").hiOpen);
    EXPECT_FALSE(parseValue("≤0.2 uA").hiOpen);
    EXPECT_TRUE(parseValue("1.5V<VDD≤5.5V").loOpen);
    EXPECT_FALSE(parseValue("1.5V<VDD≤5.5V").hiOpen);
    EXPECT_TRUE(parseValue("3.0V未満").hiOpen);
}

TEST(Notation, boundWordsAreTakenInAnyCaseFromBothEnds) {
    struct Row {
        char const* printed;
        BoundWord meaning;
        char const* rest;
    };
    for (Row const& row : std::initializer_list<Row>{{"Max. 5 V", BoundWord::AtMost, "5 V"},
                                                     {"5 V MAX", BoundWord::AtMost, "5 V"},
                                                     {"Not More Than 3", BoundWord::AtMost, "3"},
                                                     {"3 s, or more", BoundWord::AtLeast, "3 s"},
                                                     {"höchstens 4 V", BoundWord::AtMost, "4 V"},
                                                     {"min: 2", BoundWord::AtLeast, "2"},
                                                     {"5 min", BoundWord::None, "5 min"},
                                                     {"maximal", BoundWord::None, "maximal"},
                                                     {"Max", BoundWord::None, "Max"},
                                                     {"3V以上", BoundWord::AtLeast, "3V"},
                                                     {"~7", BoundWord::About, "7"},
                                                     {"", BoundWord::None, ""}}) {
        std::string_view text = row.printed;
        EXPECT_EQ(takeBoundWord(text), row.meaning) << row.printed;
        EXPECT_EQ(text, row.rest) << row.printed;
    }
}

TEST(Notation, wordsStayWords) {
    for (char const* words : {"Unlimited", "Internally limited", "1-2-3", "see note", "VDD falling"}) {
        ParsedValue const value = parseValue(words, {.unit = "V", .expected = "V"});
        EXPECT_EQ(value.kind, ParsedValue::Kind::Words) << words;
        EXPECT_FALSE(value.lo || value.typ || value.hi) << words;
    }
}

}  // namespace
}  // namespace standin::quantity
