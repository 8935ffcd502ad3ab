#include "extractors/pins/pin_descriptions.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;
using Lines = std::vector<std::string>;

Lines shown(std::vector<model::Pin> const& pins) {
    Lines lines;
    for (auto const& pin : pins) lines.push_back(pin.number + " " + pin.name + (pin.function.empty() ? "" : ": " + pin.function));
    return lines;
}

TEST(PinDescriptions, NameInFrontOrBehind) {
    PageBuilder page;
    page.line(50, 100, "PROG(Pin 1): Sets the charge current")
        .line(50, 120, "TS (Pin2): Thermistor input")
        .line(50, 140, "(Pin3): Status output")
        .line(50, 160, "Pin 4 (VDD): Supply");
    EXPECT_EQ(shown(pinsOfDescriptions(page.page())), (Lines{"1 PROG: Sets the charge current", "2 TS: Thermistor input", "3 : Status output", "4 VDD: Supply"}));
}

TEST(PinDescriptions, MentionsInRunningTextAreNone) {
    PageBuilder page;
    page.line(50, 100, "Connect pin 1 to ground").line(50, 120, "as pin 2 is open").line(50, 140, "while pin 3 is high");
    EXPECT_TRUE(pinsOfDescriptions(page.page()).empty());
}

TEST(PinDescriptions, InOtherLanguages) {
    PageBuilder page;
    page.line(50, 100, "QOUT（引脚 1）：输出电压检测引脚").line(50, 120, "VCC （管脚 2） ：电源").line(50, 140, "QLX（引脚3）：开关端");
    EXPECT_EQ(shown(pinsOfDescriptions(page.page())), (Lines{"1 QOUT: 输出电压检测引脚", "2 VCC: 电源", "3 QLX: 开关端"}));
}

}  // namespace
