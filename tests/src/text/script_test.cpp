#include "text/script.h"

#include <gtest/gtest.h>

namespace standin::text {
namespace {

TEST(Script, languagesAreTold) {
    for (auto const& [text, language] : std::initializer_list<std::pair<char const*, char const*>>{
             {"The output is turned off when the voltage of the cell is above the threshold.", "en"},
             {"Der Ausgang wird abgeschaltet und die Spannung ist nicht zulässig.", "de"},
             {"当电池电压超过过充电检测电压时,停止充电", "zh"},
             {"當電池電壓超過過充電檢測電壓時停止充電", "zh-Hant"},
             {"端子はオープンにしてください", "ja"},
             {"Напряжение питания микросхемы", "ru"},
             {"禁止向0V电池充电 VDD VSS", "zh"},
             {"VDD", "en"},
             {"12.5 %", ""},
             {"", ""}}) {
        EXPECT_EQ(detectLanguage(text), language) << text;
    }
}

TEST(Script, writings) {
    EXPECT_EQ(writingOf(U'A'), Writing::Latin);
    EXPECT_EQ(writingOf(U'5'), Writing::Common);
    EXPECT_EQ(writingOf(0x3042), Writing::Kana);
    EXPECT_EQ(writingOf(0x7535), Writing::Han);
    EXPECT_EQ(writingOf(0x0416), Writing::Cyrillic);
    EXPECT_TRUE(isCjk(U'\u3002'));
    EXPECT_FALSE(isCjk(U'\u03A9'));
    EXPECT_TRUE(isCjk(std::string_view("电池电压 V")));
    EXPECT_FALSE(isCjk(std::string_view("voltage of the battery 电")));
}

}  // namespace
}  // namespace standin::text
