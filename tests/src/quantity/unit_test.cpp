#include "quantity/unit.h"

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

struct Row {
    char const* printed;
    char const* expected;
    char const* coherent;  // "" where it is no unit
    char const* factor;
};

TEST(Unit, spellingsGiveTheCoherentUnit) {
    for (Row const& row : std::initializer_list<Row>{
             {"V", "", "V", "1"}, {"mV", "", "V", "0.001"}, {"MV", "V", "V", "0.001"}, {"kV", "", "V", "1000"}, {"µA", "", "A", "0.000001"}, {"uA", "", "A", "0.000001"},
             {"MA", "A", "A", "0.001"}, {"MΩ", "", "Ω", "1000000"}, {"mΩ", "", "Ω", "0.001"}, {"MHz", "", "Hz", "1000000"}, {"KHz", "", "Hz", "1000"}, {"mS", "s", "s", "0.001"},
             {"mS", "S", "S", "0.001"}, {"mS", "", "S", "0.001"}, {"MS", "s", "s", "0.001"}, {"ms", "", "s", "0.001"}, {"S", "s", "s", "1"}, {"W", "Ω", "Ω", "1"},
             {"kW", "Ω", "Ω", "1000"}, {"kW", "W", "W", "1000"}, {"°C", "", "degC", "1"}, {"℃", "", "degC", "1"}, {"º C", "", "degC", "1"}, {"C", "degC", "degC", "1"},
             {"°C/W", "", "K/W", "1"}, {"K/W", "", "K/W", "1"}, {"℃ / W", "", "K/W", "1"}, {"mW/°C", "", "W/K", "0.001"}, {"ppm/°C", "", "1/K", "0.000001"}, {"%/V", "", "1/V", "0.01"}, {"%VO", "", "1", "0.01"}, {"%/VO", "", "1", "0.01"}, {"%/VO/W", "", "", ""},
             {"V/us", "", "V/s", "1000000"}, {"V/mV", "", "1", "1000"}, {"mA/V", "", "S", "0.001"}, {"nV/√Hz", "", "V/√Hz", "0.000000001"}, {"pA/√Hz", "", "A/√Hz", "0.000000000001"},
             {"mAh", "", "C", "3.6"}, {"mm", "", "m", "0.001"}, {"mm²", "", "m²", "0.000001"}, {"(mV)", "", "V", "0.001"}, {"[V]", "", "V", "1"}, {"秒", "", "s", "1"},
             {"毫安", "", "A", "0.001"}, {"VRMS", "", "V rms", "1"}, {"mVP-P", "", "V p-p", "0.001"}, {"VDC", "", "V", "1"}, {"Ohm", "", "Ω", "1"}, {"kohm", "", "Ω", "1000"},
             {"\u2126", "", "Ω", "1"}, {"k", "Ω", "Ω", "1000"}, {"m", "V", "V", "0.001"}, {"dB", "", "dB", "1"}, {"Hz", "", "Hz", "1"},
             {"pin", "", "", ""}, {"", "", "", ""}, {"the", "", "", ""}, {"VDD", "", "", ""}, {"/", "", "", ""}, {"V/", "", "", ""}}) {
        auto const unit = parseUnit(row.printed, {.expected = row.expected});
        if (*row.coherent == '\0') {
            EXPECT_FALSE(unit) << row.printed << " " << (unit ? unit->coherent : "");
            continue;
        }
        ASSERT_TRUE(unit) << row.printed;
        EXPECT_EQ(unit->coherent, row.coherent) << row.printed;
        EXPECT_TRUE(unit->factor == *Decimal::parse(row.factor)) << row.printed << " " << unit->factor.toString();
    }
}

TEST(Unit, temperaturePointsHaveAnOffset) {
    auto const kelvin = parseUnit("K", {.expected = "degC"});
    ASSERT_TRUE(kelvin);
    EXPECT_EQ(toCoherent(298, *kelvin).toShortString(), "24.85");
    auto const fahrenheit = parseUnit("°F");
    ASSERT_TRUE(fahrenheit);
    EXPECT_EQ(toCoherent(77, *fahrenheit).rounded(3, Rounding::Nearest).toShortString(), "25");
}

TEST(Unit, bentCaseLeavesANote) {
    EXPECT_FALSE(parseUnit("MV", {.expected = "V", .allCapitals = true})->note.empty());
    EXPECT_FALSE(parseUnit("UA")->note.empty());
    EXPECT_TRUE(parseUnit("mV")->note.empty());
}

TEST(Unit, inProseTheUnitEndsAtItsWord) {
    for (auto const& [text, length] : std::initializer_list<std::pair<char const*, std::size_t>>{
             {"V between VDD", 1}, {"mA, then", 2}, {"°C", 3}, {"kΩ.", 3}, {"versions", 0}, {"V3", 0}, {"秒以上", 3}, {"ms or longer", 2}, {"V/µs slew", 5}, {"Vp-p noise", 4}}) {
        std::size_t found = 0;
        (void)parseUnitPrefix(text, {}, found);
        EXPECT_EQ(found, length) << text;
    }
}

}  // namespace
}  // namespace standin::quantity
