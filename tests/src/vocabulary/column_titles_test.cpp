#include "vocabulary/column_titles.h"

#include <gtest/gtest.h>

namespace standin::vocabulary {
namespace {

using T = ColumnTitle;

TEST(ColumnTitles, KeysHoldOnlyWhatTellsTitlesApart) {
    EXPECT_EQ(columnTitleKey("test conditions"), "testconditions");
    EXPECT_EQ(columnTitleKey("max. value:"), "maxvalue");
    EXPECT_EQ(columnTitleKey("m i n"), "min");
    EXPECT_EQ(columnTitleKey("pin #"), "pin#");
    EXPECT_EQ(columnTitleKey("单位："), "单位");
    EXPECT_EQ(columnTitleKey("№ п/п"), "№п/п");
    EXPECT_EQ(columnTitleKey("größtwert"), "größtwert");
    EXPECT_EQ(columnTitleKey("xx358a"), "");
    EXPECT_EQ(columnTitleKey("- * -"), "");
}

TEST(ColumnTitles, HoldForEveryLanguage) {
    struct Case {
        char const* key;
        T title;
    };
    for (auto const& [key, title] : {
             Case{"parameter", T::Parameter},  Case{"参数", T::Parameter},  Case{"項目", T::Parameter},     Case{"kenngröße", T::Parameter}, Case{"параметр", T::Parameter},
             Case{"paramètre", T::Parameter},  Case{"항목", T::Parameter},  Case{"обозначение", T::Symbol}, Case{"測定条件", T::Conditions}, Case{"minimo", T::Min},
             Case{"最大値", T::Max},           Case{"типовое", T::Typ},     Case{"einheit", T::Unit},       Case{"단위", T::Unit},           Case{"备注", T::Note},
             Case{"waveform", T::TestCircuit}, Case{"№п/п", T::ItemNumber}, Case{"ピン番号", T::Pin},       Case{"型号", T::PartNumber},     Case{"i/o", T::PinType},
         }) {
        EXPECT_EQ(columnTitleOf(key), title) << key;
    }
}

TEST(ColumnTitles, KnowNothingElse) {
    for (char const* key : {"", "detectionvoltage", "v", "Parameter"}) EXPECT_EQ(columnTitleOf(key), T::None) << key;
}

}  // namespace
}  // namespace standin::vocabulary
