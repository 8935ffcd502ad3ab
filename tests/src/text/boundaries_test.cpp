#include "text/boundaries.h"

#include <string>

#include <gtest/gtest.h>

#include "text/utf8.h"

namespace standin::text {
namespace {

std::string joined(std::vector<std::string_view> const& parts) {
    std::string text;
    for (std::string_view const part : parts) {
        if (!text.empty()) text += "|";
        text += part;
    }
    return text;
}

struct Row {
    char const* text;
    char const* parts;
};

TEST(Words, numbersUnitsPinsAndCodesStayWhole) {
    for (Row const& row : std::initializer_list<Row>{
             {"VDD=3.5V at 25 °C", "VDD|=|3.5V|at|25|°C"},
             {"from −40 to +85 °C.", "from|−40|to|+85|°C|."},
             {"RDS(on) of 50 mΩ", "RDS(on)|of|50|mΩ"},
             {"the V- pin and P+", "the|V-|pin|and|P+"},
             {"SOT-23-6 package", "SOT-23-6|package"},
             {"VDD-0.3 V", "VDD|-|0.3|V"},
             {"low-side, e.g. this", "low-side|,|e.g.|this"},
             {"the cell's pole", "the|cell's|pole"},
             {"2.5mW/°C or 0.5 %", "2.5mW/°C|or|0.5|%"},
             {"(min. 2E-3A)", "(|min|.|2E-3A|)"},
             {"pin(s)", "pin(s)"},
             {"", ""},
             {"   ", ""},
         }) {
        EXPECT_EQ(joined(words(row.text)), row.parts) << row.text;
    }
}

TEST(Words, everyVisibleByteIsInExactlyOneWord) {
    for (char const* text : {"Ta=25°C, VDD≤5.5V; 禁止向0V电池充电。", "端子はオープンにしてください (V−)", "a\xFF\xFEz .5 +. -- 3.", "x\u200By e.g", "((("}) {
        std::string_view const whole(text);
        std::size_t at = 0;
        for (std::string_view const word : words(whole)) {
            auto const begin = static_cast<std::size_t>(word.data() - whole.data());
            EXPECT_GE(begin, at);
            EXPECT_TRUE(trimmed(whole.substr(at, begin - at)).empty()) << text;
            EXPECT_FALSE(word.empty());
            at = begin + word.size();
        }
        EXPECT_TRUE(trimmed(whole.substr(at)).empty()) << text;
    }
}

TEST(Words, cjkIsSplitByDictionary) {
    auto const parts = words("禁止向0V电池充电");
    EXPECT_EQ(parts.front(), "禁止");
    EXPECT_GE(parts.size(), 4U);
}

TEST(Sentences, abbreviationsAndDecimalsDoNotEndThem) {
    for (Row const& row : std::initializer_list<Row>{
             {"Max. 4.3 V is allowed. See Fig. 3 for the circuit.", "Max. 4.3 V is allowed.|See Fig. 3 for the circuit."},
             {"It takes approx. 5 ms. Then it stops.", "It takes approx. 5 ms.|Then it stops."},
             {"Use a capacitor (typ. 0.1 µF. Not less) here. Next.", "Use a capacitor (typ. 0.1 µF. Not less) here.|Next."},
             {"Current is 0.1 µA max. The delay is fixed.", "Current is 0.1 µA max.|The delay is fixed."},
             {"1. Overview of pins. 2 are free.", "1. Overview of pins.|2 are free."},
             {"e.g. A and i.e. B. Done!", "e.g. A and i.e. B.|Done!"},
             {"Connect it to pin 3. The rest is open.", "Connect it to pin 3.|The rest is open."},
             {"one\ntwo. Three", "one\ntwo.|Three"},
             {"禁止充电。允许放电。", "禁止充电。|允许放电。"},
             {"1．支持充电；2．支持放电．电压为 4．2 V ； 13．灯亮", "1．支持充电；|2．支持放电．|电压为 4．2 V ；|13．灯亮"},
             {"• first • second", "• first|• second"},
             {"• Lamp delay is longer ........ 12", "• Lamp delay is longer ........ 12"},
             {"It waits... 12 are lit.", "It waits...|12 are lit."},
             {"", ""},
         }) {
        EXPECT_EQ(joined(splitSentences(row.text, "en")), row.parts) << row.text;
    }
    EXPECT_EQ(joined(splitSentences("Siehe z.B. Abb. 3. Der Pin ist frei.", "de")), "Siehe z.B. Abb. 3.|Der Pin ist frei.");
}

TEST(Sentences, nothingIsLost) {
    for (char const* text : {"A. B) c.) D. (e", "。。 x .", "No. 5. No. 6. ((( never closed. Next one. And more."}) {
        std::string all;
        for (std::string_view const part : splitSentences(text, "")) all += part;
        std::string expected;
        for (char const c : std::string(text)) {
            if (c != ' ') expected += c;
        }
        std::string got;
        for (char const c : all) {
            if (c != ' ') got += c;
        }
        EXPECT_EQ(got, expected);
    }
}

}  // namespace
}  // namespace standin::text
