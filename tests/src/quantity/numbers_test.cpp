#include "quantity/numbers.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace standin::quantity {
namespace {

std::string spansOf(std::string_view text) {
    std::string joined;
    for (NumberSpan const& span : findNumbers(text)) {
        if (!joined.empty()) joined += "|";
        joined += text.substr(span.begin, span.end - span.begin);
    }
    return joined;
}

TEST(Numbers, everyRunOfDigitsIsOneNumber) {
    for (auto const& [text, spans] : std::initializer_list<std::pair<char const*, char const*>>{{"VDD=-0.3 to 6.0V, type A12", "-0.3|6.0|12"},
                                                                                                {"SOT-23-6", "23|6"},
                                                                                                {"1-2", "1|2"},
                                                                                                {"4.255 4.280", "4.255|4.280"},
                                                                                                {"1,000.5 pcs", "1,000.5"},
                                                                                                {"no digits", ""},
                                                                                                {"-40~85", "-40|85"},
                                                                                                {"2E-3A", "2E-3"},
                                                                                                {".5 V", ".5"},
                                                                                                {"end 3.", "3"},
                                                                                                {"−40 °C", "−40"},
                                                                                                {"０．１Ｖ", "０．１"},
                                                                                                {"RDS(on)+3", "3"},
                                                                                                {"x+3", "3"},
                                                                                                {"(+3)", "+3"},
                                                                                                {"V1.2.3", "1.2.3"},
                                                                                                {"3V3", "3|3"},
                                                                                                {"±0.025", "0.025"},
                                                                                                {"12E", "12"}}) {
        EXPECT_EQ(spansOf(text), spans) << text;
        EXPECT_EQ(countNumbers(text), findNumbers(text).size()) << text;
    }
}

TEST(Numbers, spansCoverEveryDigitOnce) {
    std::string const text = "a1b22-3.4,5e-6 ７８ 9..10 +-11 e12";
    std::size_t digits = 0;
    std::size_t covered = 0;
    auto const count = [](std::string_view part) {
        std::size_t found = 0;
        for (std::size_t i = 0; i < part.size(); ++i) {
            if (part[i] >= '0' && part[i] <= '9') ++found;
            if (part.substr(i, 2) == "\xEF\xBC" && i + 2 < part.size() && static_cast<unsigned char>(part[i + 2]) >= 0x90 && static_cast<unsigned char>(part[i + 2]) <= 0x99)
                ++found;
        }
        return found;
    };
    digits = count(text);
    std::size_t last = 0;
    for (NumberSpan const& span : findNumbers(text)) {
        EXPECT_GE(span.begin, last);
        last = span.end;
        covered += count(std::string_view(text).substr(span.begin, span.end - span.begin));
    }
    EXPECT_EQ(digits, covered);
    EXPECT_EQ(digits, 16U);
}

TEST(Numbers, readsCommasAndGroups) {
    struct Row {
        char const* text;
        CommaReading comma;
        char const* value;
    };
    for (Row const& row : std::initializer_list<Row>{{"4,25", CommaReading::Auto, "4.25"},
                                                     {"4,275", CommaReading::Decimal, "4.275"},
                                                     {"0,275", CommaReading::Auto, "0.275"},
                                                     {"1,000", CommaReading::Auto, "1000"},
                                                     {"1,000.5", CommaReading::Auto, "1000.5"},
                                                     {"1.000,5", CommaReading::Auto, "1000.5"},
                                                     {"1 000", CommaReading::Auto, "1000"},
                                                     {"1'000", CommaReading::Auto, "1000"},
                                                     {"1’000", CommaReading::Auto, "1000"},
                                                     {"2×10⁻³", CommaReading::Auto, "0.002"},
                                                     {"2×10^-3", CommaReading::Auto, "0.002"},
                                                     {"− 5", CommaReading::Auto, "-5"},
                                                     {"10^-7", CommaReading::Auto, "0.0000001"},
                                                     {"10⁻⁷", CommaReading::Auto, "0.0000001"},
                                                     {"10^11", CommaReading::Auto, "100000000000"}}) {
        auto const number = parseNumber(row.text, row.comma);
        ASSERT_TRUE(number) << row.text;
        EXPECT_TRUE(number->value == *Decimal::parse(row.value)) << row.text << " " << number->value.toString();
    }
    for (char const* text : {"1,0,0", "12 34", "1.2.3", "4.25¹", "VDD", "--1", ""}) EXPECT_FALSE(parseNumber(text)) << text;
}

TEST(Numbers, quantitiesInProse) {
    auto const found = findQuantities("A 0.1 µF capacitor (100nF) with 470 Ω at −40 to 85 °C, type SX-12, pin 5, 3 in series.");
    std::string joined;
    for (QuantitySpan const& span : found) joined += fmt::format("{}{};", span.value.toShortString(), span.unit ? span.unit->coherent : "");
    EXPECT_EQ(joined, "0.0000001F;0.0000001F;470Ω;-40;85degC;5;3;");
}

TEST(Numbers, HyphensAndQuotationMarksAtUnitsOfProse) {
    auto const shown = [](std::string_view text) {
        std::string joined;
        for (QuantitySpan const& span : findQuantities(text)) joined += fmt::format("{}{};", span.value.toShortString(), span.unit ? span.unit->coherent : "");
        return joined;
    };
    EXPECT_EQ(shown("a 470-Ω to 6.8-kΩ resistor"), "470Ω;6800Ω;");
    EXPECT_EQ(shown("a 30-ms pulse on the 6-V rail"), "0.03s;6V;");
    EXPECT_EQ(shown("\"470 Ω\" to \"6.8 kΩ\""), "470Ω;6800Ω;");
    EXPECT_EQ(shown("in table 5-A, type 7-V2, an 8-pin case"), "5;7;8;");
}

}  // namespace
}  // namespace standin::quantity
