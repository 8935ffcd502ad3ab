#include "extractors/parameters/head_words.h"

#include <gtest/gtest.h>

namespace standin::parameters {
namespace {

using enum ColumnRole;

struct Case {
    char const* title;
    ColumnRole role;
};

TEST(HeadWords, KnowsTitlesOfFiveLanguages) {
    for (auto const& [title, role] : {
             Case{"Parameter", Name},     Case{"参数", Name},         Case{"項目", Name},     Case{"Kenngröße", Name},       Case{"Параметр", Name},
             Case{"Symbol", Symbol},      Case{"符号", Symbol},       Case{"記号", Symbol},   Case{"Formelzeichen", Symbol}, Case{"Обозначение", Symbol},
             Case{"Test Conditions", Condition}, Case{"测试条件", Condition}, Case{"測定条件", Condition}, Case{"Bedingungen", Condition},
             Case{"Min.", Min},           Case{"最小值", Min},        Case{"最小", Min},      Case{"не менее", Min},
             Case{"TYP", Typ},            Case{"典型值", Typ},        Case{"標準", Typ},      Case{"Nom.", Typ},
             Case{"Max", Max},            Case{"最大值", Max},        Case{"Größtwert", Max}, Case{"не более", Max},
             Case{"Unit", Unit},          Case{"单位", Unit},         Case{"単位", Unit},     Case{"Einheit", Unit},
             Case{"Ratings", Value},      Case{"额定值", Value},      Case{"定格", Value},    Case{"Grenzwert", Value},
             Case{"Note", Note},          Case{"备注", Note},         Case{"Part Number", Part}, Case{"型号", Part},
             Case{"Pin No.", Pin},        Case{"Test circuit", Ignored},  Case{"WAVEFORMS", Ignored},
         }) {
        EXPECT_EQ(columnRoleOf(title), role) << title;
    }
}

TEST(HeadWords, KnowsTitlesOfOtherLanguagesOfTheTrade) {
    for (auto const& [title, role] : {
             Case{"Paramètre", Name},  Case{"Parámetro", Name}, Case{"항목", Name},          Case{"Symbole", Symbol},      Case{"기호", Symbol},
             Case{"조건", Condition},  Case{"측정 조건", Condition}, Case{"Messbedingung", Condition}, Case{"Minimal", Min}, Case{"Mín.", Min},
             Case{"최소", Min},        Case{"Typisch", Typ},    Case{"Típico", Typ},        Case{"표준", Typ},            Case{"Maximal", Max},
             Case{"Máximo", Max},      Case{"최대값", Max},     Case{"Unité", Unit},        Case{"Unidades", Unit},       Case{"단위", Unit},
         }) {
        EXPECT_EQ(columnRoleOf(title), role) << title;
    }
}

TEST(HeadWords, ReadsBilingualSpacedAndBrokenTitles) {
    EXPECT_EQ(columnRoleOf("参数 Parameter"), Name);
    EXPECT_EQ(columnRoleOf("最小值Min."), Min);
    EXPECT_EQ(columnRoleOf("m i n"), Min);
    EXPECT_EQ(columnRoleOf("UNI TS"), Unit);
    EXPECT_EQ(columnRoleOf("Max. (mA)"), Max);
    EXPECT_EQ(columnRoleOf("(Unit)"), Unit);
    EXPECT_EQ(columnRoleOf("Темпера- тура, Tj,°C"), Condition);
    EXPECT_EQ(columnRoleOf("Temperature"), Condition);
    EXPECT_EQ(columnRoleOf("Typical extrapolation formula"), Note);
    EXPECT_EQ(columnRoleOf("№ п/п"), Ignored);
    EXPECT_EQ(columnRoleOf("Num"), Ignored);
    EXPECT_EQ(columnRoleOf("Number"), Ignored);
    EXPECT_EQ(columnRoleOf("Range"), Value);
    EXPECT_EQ(columnRoleOf("说明"), Note);
}

TEST(HeadWords, LeavesVariantsAndProseUnknown) {
    for (char const* title : {"XX358A", "TA ≤ 25°C", "", "The device is offered in two grades of accuracy and three packages", "SOT-23"}) {
        EXPECT_EQ(columnRoleOf(title), Unknown) << title;
    }
}

TEST(HeadWords, FromInputToOutputAreConditions) {
    EXPECT_EQ(columnRoleOf("FROM (INPUT)"), ColumnRole::Condition);
    EXPECT_EQ(columnRoleOf("To output"), ColumnRole::Condition);
    EXPECT_EQ(columnRoleOf("TA = -40 to 85"), ColumnRole::Unknown);
    EXPECT_EQ(wayOf("FROM (INPUT)"), "from");
    EXPECT_EQ(wayOf("TO (OUTPUT)"), "to");
    EXPECT_EQ(wayOf("Conditions"), "");
}

TEST(HeadWords, NeutralTitlesGroupOnly) {
    for (char const* title : {"Limits", "Value", "Ratings", "规格", "(V)"}) EXPECT_TRUE(isNeutralGroupTitle(title)) << title;
    for (char const* title : {"XX358A", "(SOT-223)", "Ta = 25 °C", "-40 °C to +85 °C"}) EXPECT_FALSE(isNeutralGroupTitle(title)) << title;
}

}  // namespace
}  // namespace standin::parameters
