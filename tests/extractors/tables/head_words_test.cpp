#include "extractors/tables/head_words.h"

#include <gtest/gtest.h>

namespace standin::tables {
namespace {

TEST(HeadWords, knowsTitlesInAllLanguages) {
    using T = ColumnTitle;
    struct Case { char const* text; T title; };
    Case const cases[] = {
        {"Parameter", T::Parameter},
        {"PARAMETER", T::Parameter},
        {"参数", T::Parameter},
        {"項目", T::Parameter},
        {"Kenngröße", T::Parameter},
        {"Наименование параметра", T::Parameter},
        {"Sym.", T::Symbol},
        {"Test Conditions", T::Conditions},
        {"测试条件", T::Conditions},
        {"Min.", T::Min},
        {"最小值 Min", T::Min},
        {"не менее", T::Min},
        {"Typ", T::Typ},
        {"标准值", T::Typ},
        {"MAX", T::Max},
        {"Größtwert", T::Max},
        {"Rating", T::Value},
        {"Unit (V)", T::Unit},
        {"单位：", T::Unit},
        {"Pin No.", T::Pin},
        {"Paramètre", T::Parameter},
        {"항목", T::Parameter},
        {"측정 조건", T::Conditions},
        {"Minimal", T::Min},
        {"Típ.", T::Typ},
        {"최대", T::Max},
        {"Unité", T::Unit},
        {"단위", T::Unit},
        {"UNI TS", T::Unit},
        {"Min 最小值", T::Min},
        {"参数 Kenngröße", T::Parameter},
        {"Größe 最大值", T::Max},
        {"ＭＡＸ", T::Max},
        {"[最大] I/O", T::PinType},
        {"Unit (4)", T::Unit},
        {"4 PINS", T::None},
        {"最大 4", T::None},
        {"Detection voltage", T::None},
        {"Range", T::None},
        {"", T::None},
    };
    for (auto const& c : cases) EXPECT_EQ(columnTitle(c.text), c.title) << c.text;
}

}  // namespace
}  // namespace standin::tables
