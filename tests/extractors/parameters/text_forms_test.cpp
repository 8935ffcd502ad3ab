#include "extractors/parameters/text_forms.h"

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

struct Case {
    char const* in;
    char const* out;
};

TEST(TextForms, ACyrillicCBehindADegreeSignIsThatOfCelsius) {
    EXPECT_EQ(tidied("от −45 °С до +85 ° С"), "от -45 °C до +85 °C");
    EXPECT_EQ(tidied("Схема"), "Схема");
}

TEST(TextForms, TidiedUnifiesDashesDegreesAndSpaces) {
    for (auto const& [in, out] : {Case{"  a \t b ", "a b"}, Case{"−40 to 85 ℃", "-40 to 85 °C"}, Case{"25º C", "25°C"}, Case{"2.0～4.5", "2.0~4.5"},
                                  Case{"a – b", "a - b"}, Case{"", ""}, Case{"3.0 \u00A0V", "3.0 V"}, Case{"10\u2126", "10Ω"}}) {
        EXPECT_EQ(tidied(in), out) << in;
    }
}

TEST(TextForms, FoldedIsLowerAndNarrow) {
    EXPECT_EQ(folded("Test Ｃondition"), "test condition");
    EXPECT_EQ(folded("ПАРАМЕТР"), "параметр");
    EXPECT_EQ(folded("VDD"), "vdd");
}

TEST(TextForms, ClosedNumbersClosesOnlyInsideNumbers) {
    for (auto const& [in, out] : {Case{"5 000", "5000"}, Case{"0. 1", "0.1"}, Case{"- 30 to + 100", "-30 to +100"}, Case{"VDD - 5", "VDD - 5"}, Case{"12 34", "12 34"},
                                  Case{"± 20", "±20"}, Case{"1 000 000", "1000000"}, Case{"3.5 100", "3.5 100"}}) {
        EXPECT_EQ(closedNumbers(in), out) << in;
    }
}

TEST(TextForms, SuperscriptsBecomeExponents) {
    EXPECT_EQ(plainExponents("10⁻⁷"), "10^-7");
    EXPECT_EQ(plainExponents("5 x 10¹⁰"), "5 x 10^10");
    EXPECT_EQ(plainExponents("10"), "10");
}

TEST(TextForms, DashesAndDotsSayNothing) {
    for (char const* text : {"", "-", "—", "--", "...", "…", "/", " – "}) EXPECT_TRUE(saysNothing(text)) << text;
    for (char const* text : {"0", "-1", "NA", "∞", "无限"}) EXPECT_FALSE(saysNothing(text)) << text;
}

TEST(TextForms, JoinedPutsNoSpaceBetweenCjk) {
    EXPECT_EQ(joined("过充", "检测"), "过充检测");
    EXPECT_EQ(joined("Supply", "current"), "Supply current");
    EXPECT_EQ(joined("", "current"), "current");
    EXPECT_EQ(joined("电压", "VDD"), "电压 VDD");
}

TEST(TextForms, JoinedWithAGapButBetweenCjk) {
    EXPECT_EQ(joined("Supply", "voltage"), "Supply voltage");
    EXPECT_EQ(joined("电源", "电压"), "电源电压");
    EXPECT_EQ(joined("电源", "V"), "电源 V");
    EXPECT_EQ(joined("10 µ", "电"), "10 µ 电");
    EXPECT_EQ(joined("", "V"), "V");
    EXPECT_EQ(joined("电", ""), "电");
}

TEST(TextForms, DegreesAndDashesAreMadeOne) {
    EXPECT_EQ(tidied("\u2013 40 \u00BA  C \u2026 85 \u2103"), "- 40 °C \u2026 85 °C");
    EXPECT_EQ(tidied("25 \u2070C 10\u2070"), "25 °C 10\u2070");
    EXPECT_EQ(tidied("\u200B 10\u00A0\u00A0k\u2126 "), "10 kΩ");
    EXPECT_EQ(folded("\u2018\uFF36\u2019 ÄÖ \u201CТок\u201D"), "'v' äö \"ток\"");
}

TEST(TextForms, TrimmedOfGapsOfAllKinds) {
    for (auto const& [in, out] :
         {Case{" a b\t", "a b"}, Case{"\u3000 \u200B电压 \u00A0", "电压"}, Case{"\u00A0", ""}, Case{"µ", "µ"}, Case{" \u2009 ", ""}, Case{"V\u3000", "V"}}) {
        EXPECT_EQ(trimmed(in), out) << in;
    }
}

TEST(TextForms, TidyIsOnlyWhatStaysAsItIs) {
    for (char const* tidy : {"", "Supply voltage", "电源电压", "ток, мА", "Äöß 5", "电 源", "ﾊ"}) {
        if (isTidy(tidy)) {
            EXPECT_EQ(tidied(tidy), tidy);
        }
    }
    for (char const* tidy : {"Supply voltage", "电源电压", "ток, мА", "スイッチ"}) EXPECT_TRUE(isTidy(tidy)) << tidy;
    for (char const* untidy :
         {" a", "a ", "a  b", "a\tb", "电\u3000源", "2\u301C5", "a\u2013b", "25\u00BAC", "a\u00A0b", "25\u2103", "10\u2126", "1\uFF5E2", "5\u02DA", "\uFEFFa", "3\uFE633"}) {
        EXPECT_FALSE(isTidy(untidy)) << untidy;
        EXPECT_NE(tidied(untidy), untidy);
    }
}

}  // namespace
}  // namespace standin::parameters
