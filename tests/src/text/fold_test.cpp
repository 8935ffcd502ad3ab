#include "text/fold.h"

#include <gtest/gtest.h>

#include "text/dashes.h"
#include "text/utf8.h"

namespace standin::text {
namespace {

struct Row {
    char const* printed;
    char const* folded;
};

TEST(Fold, whatIsDrawnAlikeBecomesOneSpelling) {
    for (Row const& row : std::initializer_list<Row>{
             {"plain text", "plain text"},
             {"  two   spaces\tand\u00A0more\u2009", "two spaces and more"},
             {"4.28\u00A0V \u2013 4.30\uFF36", "4.28 V - 4.30V"},
             {"\u22120.3", "-0.3"},
             {"3.0 \u03BCA", "3.0 \u00B5A"},
             {"10 k\u2126", "10 k\u03A9"},
             {"25\u2103", "25\u00B0C"},
             {"25\u00BAC", "25\u00B0C"},
             {"25 \u00B0 C", "25 \u00B0C"},
             {"\uFB02ash e\uFB03ciency", "flash efficiency"},
             {"over\u00ADcharge", "overcharge"},
             {"over\u00AD\ncharge", "overcharge"},
             {"detec-\ntion", "detection"},
             {"SOT-\n23", "SOT- 23"},
             {"high- and low-side", "high- and low-side"},
             {"\u201Cquoted\u201D \u2018it\u2019s\u2019", "\"quoted\" 'it's'"},
             {"2.0\uFF5E4.5", "2.0~4.5"},
             {"4.25\u00B9", "4.25\u00B9"},
             {"10\u207B\u00B3", "10\u207B\u00B3"},
             {"m\u03A9", "m\u03A9"},
             {"M\u03A9", "M\u03A9"},
             {"\uFF34\uFF21\uFF1D\uFF12\uFF15", "TA=25"},
             {"a \u2266 b <= c", "a \u2264 b \u2264 c"},
             {"+/-5 %", "\u00B15 %"},
             {"+-5 %", "\u00B15 %"},
             {"V+-1.5", "V+-1.5"},
             {"NAME\u2122 part\u00AE", "NAME part"},
             {"zero\u200Bwidth", "zerowidth"},
             {"3.0\u3383", "3.0mA"},
             {"\u00BD", "0.5"},
             {"25\u00B0\u0421", "25\u00B0C"},  // Cyrillic letter behind the degree sign
             {"\u7535\u538B \u68C0\u6D4B", "\u7535\u538B\u68C0\u6D4B"},
             {"e\u0301", "\u00E9"},
             {"A_ = 5", "A_ = 5"},
             {"x<=5 and y >= 6", "x\u22645 and y \u2265 6"},
             {"a - b / c -d +- e", "a - b / c -d \u00B1 e"},
             {"line one\nline two", "line one line two"},
             {"25 \u00B0\nC", "25 \u00B0C"},
             {"25 \u00B0 K", "25 \u00B0 K"},
             {"soft\u00AD case", "softcase"},
             {"\u00B5A  at  25 \u00B0C, typ.", "\u00B5A at 25 \u00B0C, typ."},
             {"\u2126\u212A\u212B", "\u03A9K\u00C5"},
             {"\u2013= \u2212-", "-= --"},
             {"\u7535 A\u538B", "\u7535 A\u538B"},
             {"tab\tand\x01" "control", "tab andcontrol"},
             {"\u1100\u1161", "\uAC00"},
             {"\uF8F1 a", "\uF8F1 a"},
             {"end \xE2\x82", "end \uFFFD\uFFFD"},
         }) {
        EXPECT_EQ(foldForComparison(row.printed), row.folded) << row.printed;
    }
}

TEST(Fold, foldingTwiceChangesNothing) {
    for (char const* text : {"4.28\u00A0V \u2013 4.30\uFF36", "detec-\ntion  of \u2126", "+/- <= \u2026", "\uFF76\uFF9E half width", "\u0421A x", "- - \n b", "n\u00AD\u0301 o\u200B\u0308", "a\xFF b"}) {
        std::string const once = foldForComparison(text);
        EXPECT_EQ(foldForComparison(once), once) << text;
    }
}

TEST(Fold, keysMatchNames) {
    for (auto const& [a, b] : std::initializer_list<std::pair<char const*, char const*>>{
             {"Over-charge Detection Voltages", "Overcharge detection voltage"}, {"Power-down current", "POWER DOWN CURRENT"}, {"Behaviour", "behavior"},
             {"Thermal resistance (junction to ambient)", "Thermal resistance, junction-to-ambient"}, {"R_DS(ON)", "RDS(on)"}, {"Characterisation", "characterization"}}) {
        EXPECT_EQ(foldKey(a), foldKey(b)) << a << " / " << b;
    }
    EXPECT_NE(foldKey("charge"), foldKey("charger"));
    EXPECT_NE(foldKey("bus"), foldKey("bu"));
}

// Two spellings are told by pairs of letters before any stem is searched for.
TEST(Fold, everyStemOfTwoSpellingsIsFound) {
    for (auto const& [british, american] : std::initializer_list<std::pair<char const*, char const*>>{
             {"colours", "colors"}, {"favourable", "favorable"}, {"neighbouring", "neighboring"}, {"centred", "centerd"}, {"metre", "meter"},
             {"fibre", "fiber"}, {"analogue", "analog"}, {"catalogue", "catalog"}, {"programmed", "programd"}, {"licence", "license"},
             {"defence", "defense"}, {"labelled", "labeled"}, {"cancelled", "canceled"}, {"modelling", "modeling"}, {"travelling", "traveling"},
             {"grey", "gray"}, {"aluminium", "aluminum"}, {"mould", "mold"}, {"reprogrammable", "reprogramable"}, {"tolerancing", "tolerance"},
             {"honour", "honor"}, {"vapour", "vapor"}, {"signalling", "signaling"}, {"initialised", "initialized"}, {"neutralising", "neutralizing"},
             {"noise", "noise"}, {"rise", "rise"}}) {
        EXPECT_EQ(unifiedSpelling(british), american);
    }
}

// What stays as it is without asking for the normal form, and what must not.
TEST(Fold, normalFormsAreFoundWithoutFail) {
    for (char const* normal : {"\u00B5A \u00B1 25 \u00B0C", "\u03A9 \u2264 \u221A", "\u7535\u538B\u3002", "\u041F\u0438\u043D", "\uF061", "\u2022 \u2013"}) EXPECT_EQ(toNfc(normal), normal);
    EXPECT_EQ(toNfc("k\u2126"), "k\u03A9");
    EXPECT_EQ(toNfc("\u212A"), "K");
    EXPECT_EQ(toNfc("\u037E"), ";");
    EXPECT_EQ(toNfc("\u0387"), "\u00B7");
    EXPECT_EQ(toNfc("\u2329"), "\u3008");
    EXPECT_EQ(toNfc("\u304B\u3099"), "\u304C");
    EXPECT_EQ(toNfc("\u0438\u0306"), "\u0439");
    EXPECT_EQ(toNfc("\uF900"), "\u8C48");
    EXPECT_EQ(toNfc("=\u0338"), "\u2260");
}

TEST(Fold, invalidBytesAreReplaced) {
    EXPECT_EQ(toNfc("a\xFFz"), "a\uFFFDz");
    EXPECT_EQ(toNfc("A\u030A"), "\u00C5");
    EXPECT_EQ(toNfc("plain"), "plain");
}

TEST(Fold, LowerCaseOfAllScriptsThatSheetsPrint) {
    struct Case {
        char const* text;
        char const* lower;
    };
    for (auto const& [text, lower] :
         {Case{"VDD µA", "vdd µa"}, Case{"ÄÖÜß × ÷", "äöüß × ÷"}, Case{"ТОК Ёж", "ток ёж"}, Case{"ΘJA Ω", "θja ω"}, Case{"\u2126 \u212A", "ω k"}, Case{"ΟΔΟΣ", "οδος"},
          Case{"ＶＤＤ５", "ｖｄｄ５"}, Case{"电池 VCC ≤ 5", "电池 vcc ≤ 5"}, Case{"\u2160 \u24B6", "\u2170 \u24D0"}, Case{"Ā \uFB01", "ā \uFB01"}, Case{"A\xFFÄ", "a\uFFFDä"}}) {
        EXPECT_EQ(lowerCase(text), lower) << text;
    }
}

TEST(Fold, RunsOfHanAndCyrillicKeepTheirRulesAtBothEnds) {
    struct Case {
        char const* text;
        char const* folded;
    };
    for (auto const& [text, folded] : {Case{"电源 电压 5\u2013 6 V", "电源电压 5- 6 V"}, Case{"电源\n电压\u3000V", "电源电压 V"}, Case{"ток\u2013 В", "ток- В"},
                                       Case{"Р\u00ADток 5", "Рток 5"}, Case{"ВC\u2122 5", "BC 5"}, Case{"то\u00AD\nка", "тока"}, Case{"过充（V）", "过充(V)"}}) {
        EXPECT_EQ(foldForComparison(text), folded) << text;
    }
}

TEST(Fold, EveryDashIsAHyphen) {
    for (char32_t const dash : {U'-', U'\u2010', U'\u2011', U'\u2012', U'\u2013', U'\u2014', U'\u2015', U'\u2212', U'\u23AF', U'\u2500', U'\uF8E7', U'\uFF0D'}) {
        std::string printed;
        append(printed, dash);
        EXPECT_TRUE(isDash(dash)) << printed;
        EXPECT_EQ(foldForComparison("1 " + printed + " 2"), "1 - 2") << printed;
    }
    for (char32_t const other : {U'_', U'~', U'\u2016', U'\u200F', U'\u30FC', U'\u4E00'}) EXPECT_FALSE(isDash(other));
}

TEST(Fold, KeysKeepLettersDigitsAndSignsOfAmounts) {
    struct Case {
        char const* text;
        char const* key;
    };
    for (auto const& [text, key] : {Case{"Supply Voltages (max)", "supplyvoltagemax"}, Case{"Colour, Behaviours", "colorbehavior"}, Case{"电源、电压。", "电源电压"},
                                    Case{"Stromaufnähme der Prüflinge", "stromaufnähmederprüflinge"}, Case{"+5 % <= x", "+5%≤x"}, Case{"V·A•h", "vah"}, Case{"", ""},
                                    Case{"-_()", ""}, Case{"Programmes' licences", "programlicense"}}) {
        EXPECT_EQ(foldKey(text), key) << text;
    }
}

}  // namespace
}  // namespace standin::text
