#include "vocabulary/vocabulary.h"

#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace standin::vocabulary {
namespace {

Vocabulary const& builtIn() {
    static Vocabulary const vocabulary = std::move(*Vocabulary::builtIn());
    return vocabulary;
}

struct Case {
    char const* family;
    char const* name;
    char const* symbol;
    char const* unit;
    model::ParameterKind kind;
    std::optional<double> magnitude;
    char const* id;  // empty: no match
};

constexpr auto kCharacteristic = model::ParameterKind::Characteristic;
constexpr auto kRating = model::ParameterKind::Rating;
constexpr auto kTiming = model::ParameterKind::Timing;
constexpr auto kOperating = model::ParameterKind::OperatingCondition;
constexpr char const* kLithium = "lithium-protection";

std::string matched(Case const& row) {
    auto const match = builtIn().match({.name = row.name, .symbol = row.symbol, .unit = row.unit, .kind = row.kind, .family = row.family, .neighbours = {}, .magnitude = row.magnitude});
    return match ? match->id : std::string();
}

// The end of charging is no charge current.
TEST(Matcher, NamesThatWereTakenForOthersOrForNone) {
    for (auto const& row :
         {Case{"lithium-charger", "充電完了電流", "", "mA", kCharacteristic, 0.05, "termination-current"},
          Case{"lithium-charger", "充電電流", "", "mA", kCharacteristic, 0.5, "charge-current"},
          Case{"lithium-charger", "充电完成电流", "", "mA", kCharacteristic, 0.05, "termination-current"},
          Case{"dc-dc-converter", "過電流制限", "", "A", kCharacteristic, 2.5, "switch-limit"},
          Case{kLithium, "Die over-temperature shutdown", "", "°C", kCharacteristic, 150, "thermal-shutdown"},
          Case{"lithium-charger", "贮存温度范围", "", "℃", kRating, 125, "storage-temp"}, Case{"lithium-charger", "贮存温度", "", "℃", kRating, 125, "storage-temp"},
          Case{"lithium-charger", "储存温度范围", "", "℃", kRating, 150, "storage-temp"},
          Case{kLithium, "Charging overcurrent", "", "V", kCharacteristic, -0.1, "charge-overcurrent-voltage"},
          Case{"mosfet", "Thermal resistance junction to mounting base", "Rth j-mb", "K/W", model::ParameterKind::Thermal, 1.5, "theta-jc"},
          Case{kLithium, "VCn pin current", "", "µA", kCharacteristic, 1e-6, "cell-pin-current"}}) {
        EXPECT_EQ(matched(row), row.id) << row.name;
    }
}

TEST(Matcher, OneNameForTwoOutputsIsToldBySymbol) {
    for (auto const& row : {Case{"opamp-comparator", "Output voltage swing", "VOH", "V", kCharacteristic, 27, "output-swing-high"},
                            Case{"opamp-comparator", "Output voltage swing", "VOL", "mV", kCharacteristic, 0.02, "output-swing-low"},
                            Case{"opamp-comparator", "Output voltage swing", "VOPP", "V", kCharacteristic, 20, "output-swing"},
                            Case{"opamp-comparator", "Output voltage swing", "", "V", kCharacteristic, 20, "output-swing"},
                            Case{"opamp-comparator", "Output current", "Source", "mA", kCharacteristic, 0.02, "output-source-current"},
                            Case{"opamp-comparator", "Output current", "Sink", "mA", kCharacteristic, 0.02, "output-sink-current"},
                            Case{"opamp-comparator", "Output current", "Sink", "µA", kCharacteristic, 5e-5, "output-sink-current"}}) {
        EXPECT_EQ(matched(row), row.id) << row.name << " " << row.symbol;
    }
}

TEST(Matcher, TwoSymbolsOfOneParameterNameIt) {
    EXPECT_EQ(matched({"logic", "CLOCK OPERATION Carry out line", "tPHL, tPLH", "ns", kCharacteristic, 2e-7, ""}), "propagation-delay");
    EXPECT_EQ(matched({"logic", "CLOCK OPERATION Carry out line", "tPHL, tXYZ", "ns", kCharacteristic, 2e-7, ""}), "");
    EXPECT_EQ(matched({"logic", "CLOCKED OPERATION (carry out)", "tTHL tTLH", "ns", kCharacteristic, 1e-7, ""}), "transition-time");
    EXPECT_EQ(matched({"mosfet", "Operating Junction and Storage Temperature Range", "Tj9 Tstg", "°C", kRating, {}, ""}), "junction-storage-temp");
}

TEST(Matcher, AnOutputWithAPrimeIsNoLevel) {
    for (auto const* name : {"Q'H", "Q\u2019H", "Q\u2032L"}) {
        EXPECT_EQ(matched({"logic", name, "VOL", "V", kCharacteristic, 0.3, ""}), "output-low") << name;
        EXPECT_EQ(matched({"logic", name, "VOH", "V", kCharacteristic, 4.2, ""}), "output-high") << name;
    }
    EXPECT_EQ(matched({kLithium, "OD Pin Output \u201CH\u201D Voltage", "VDH", "V", kCharacteristic, 3.5, ""}), "do-output-high");
}

TEST(Matcher, SetUpTimesHoweverTheyAreSpelt) {
    for (auto const* name : {"Setup time", "set-up time", "Set-up time D to CK", "Minimum set up time", "Data setup time"}) {
        EXPECT_EQ(matched({"logic", name, "tsu", "ns", kCharacteristic, 1e-8, ""}), "setup-time") << name;
    }
}

TEST(Matcher, NamesInSeveralLanguages) {
    Case const cases[] = {
        {kLithium, "Overcharge detection voltage", "VCU", "V", kCharacteristic, 4.28, "overcharge-detect-voltage"},
        {kLithium, "Over-charge Protection Voltage", "", "V", kCharacteristic, 4.3, "overcharge-detect-voltage"},
        {kLithium, "Overcharge Detection Voltage", "VXX", "V", kCharacteristic, {}, "overcharge-detect-voltage"},
        {kLithium, "过充电检测电压", "VOC", "V", kCharacteristic, 4.3, "overcharge-detect-voltage"},
        {kLithium, "过充保护电压", "", "mV", kCharacteristic, {}, "overcharge-detect-voltage"},
        {kLithium, "過充電検出電圧", "", "V", kCharacteristic, {}, "overcharge-detect-voltage"},
        {kLithium, "Overcharge release voltage", "VCL", "V", kCharacteristic, 4.1, "overcharge-release-voltage"},
        {kLithium, "过充电解除电压", "VOCR", "V", kCharacteristic, 4.1, "overcharge-release-voltage"},
        {kLithium, "Overdischarge detection voltage", "VDL", "V", kCharacteristic, 2.4, "overdischarge-detect-voltage"},
        {kLithium, "过放电检测电压", "VOD", "V", kCharacteristic, 2.4, "overdischarge-detect-voltage"},
        {kLithium, "Overdischarge release voltage", "", "V", kCharacteristic, {}, "overdischarge-release-voltage"},
        {kLithium, "Discharge overcurrent detection voltage", "VDIOV", "mV", kCharacteristic, 0.15, "discharge-overcurrent-1-voltage"},
        {kLithium, "Overcurrent detection voltage 2", "", "V", kCharacteristic, {}, "discharge-overcurrent-2-voltage"},
        {kLithium, "Charge overcurrent detection voltage", "VCIP", "V", kCharacteristic, -0.1, "charge-overcurrent-voltage"},
        {kLithium, "充电过流检测电压", "", "V", kCharacteristic, {}, "charge-overcurrent-voltage"},
        {kLithium, "Load short-circuiting detection voltage", "VSHORT", "V", kCharacteristic, 1.0, "load-short-detect-voltage"},
        {kLithium, "Overcharge detection delay time", "tCU", "s", kTiming, 1.0, "overcharge-detect-delay"},
        {kLithium, "过充电检测延迟时间", "", "ms", kTiming, {}, "overcharge-detect-delay"},
        {kLithium, "Load short circuit detection delay time", "tSHORT", "μs", kTiming, 3e-4, "load-short-delay"},
        {kLithium, "Discharge overcurrent detection delay time", "tDIOV", "ms", kTiming, {}, "discharge-overcurrent-1-delay"},
        {kLithium, "Charger detection voltage", "VCHA", "V", kCharacteristic, -0.7, "charger-detect-voltage"},
        {kLithium, "0 V battery charge starting charger voltage", "V0CHA", "V", kCharacteristic, 1.2, "zero-volt-charge-start-voltage"},
        {kLithium, "0 V battery charge inhibition battery voltage", "V0INH", "V", kCharacteristic, 1.2, "zero-volt-charge-inhibit-voltage"},
        {kLithium, "向0V电池充电的充电器起始电压", "", "V", kCharacteristic, 1.2, "zero-volt-charge-start-voltage"},
        {kLithium, "Current consumption during operation", "IOPE", "μA", kCharacteristic, 3e-6, "supply-current-operating"},
        {kLithium, "Current consumption during power-down", "IPDN", "µA", kCharacteristic, 1e-7, "supply-current-power-down"},
        {kLithium, "Standby current", "ISTB", "uA", kCharacteristic, {}, "supply-current-power-down"},
        {kLithium, "Internal resistance between VM and VDD", "RVMD", "kΩ", kCharacteristic, 3e5, "resistance-vm-vdd"},
        {kLithium, "Internal resistance between VM and VSS", "RVMS", "kΩ", kCharacteristic, 3e4, "resistance-vm-vss"},
        {kLithium, "CO pin resistance \"H\"", "RCOH", "kΩ", kCharacteristic, {}, "co-resistance-high"},
        {kLithium, "DO pin resistance \"L\"", "RDOL", "kΩ", kCharacteristic, {}, "do-resistance-low"},
        {kLithium, "Storage temperature", "TSTG", "℃", kRating, {}, "storage-temp"},
        {kLithium, "Operating ambient temperature", "TOPR", "°C", kRating, {}, "operating-temp"},
        {kLithium, "Power dissipation", "PD", "mW", kRating, {}, "amr-power-dissipation"},
        {kLithium, "VM pin input voltage", "VVM", "V", kRating, {}, "amr-vm"},
        {kLithium, "Operating voltage between VDD and VSS", "VDSOP1", "V", kOperating, {}, "operating-voltage-vdd-vss"},
        {kLithium, "Spannung Überladungserkennung", "", "V", kCharacteristic, {}, "overcharge-detect-voltage"},
        {kLithium, "напряжение обнаружения перезаряда", "", "V", kCharacteristic, {}, "overcharge-detect-voltage"},
    };
    for (auto const& row : cases) {
        EXPECT_EQ(matched(row), row.id) << row.name << " " << row.symbol;
    }
}

TEST(Matcher, CollidingSymbolsAreDecidedByMagnitudeAndNeighbours) {
    EXPECT_EQ(matched({kLithium, "", "VOC", "V", kCharacteristic, 4.3, ""}), "overcharge-detect-voltage");
    EXPECT_EQ(matched({kLithium, "", "VOCP", "mV", kCharacteristic, 4.28, ""}), "overcharge-detect-voltage");
    std::vector<std::string> const neighbours = {"VCU", "VDL", "VDU"};
    auto const match = builtIn().match({.name = "", .symbol = "VCL", .unit = "V", .kind = kCharacteristic, .family = kLithium, .neighbours = neighbours, .magnitude = 4.1});
    ASSERT_TRUE(match);
    EXPECT_EQ(match->id, "overcharge-release-voltage");
    EXPECT_FALSE(builtIn().match({.name = "", .symbol = "VCL", .unit = "V", .kind = kCharacteristic, .family = kLithium, .neighbours = {}, .magnitude = 4.1}));
}

// What charges the cell and what drains it while unpowered flow through one pin.
TEST(Matcher, TheCurrentOfABatteryPinIsDecidedByMagnitude) {
    EXPECT_EQ(matched({"lithium-charger", "BAT pin current", "IBAT", "mA", kCharacteristic, 0.5, ""}), "charge-current");
    EXPECT_EQ(matched({"lithium-charger", "BAT pin current", "IBAT", "µA", kCharacteristic, 2.5e-6, ""}), "battery-leakage");
    EXPECT_EQ(matched({"lithium-charger", "", "IBAT", "mA", kCharacteristic, 0.5, ""}), "charge-current");
    EXPECT_EQ(matched({"lithium-charger", "", "IBAT", "µA", kCharacteristic, 2.5e-6, ""}), "battery-leakage");
}

TEST(Matcher, TheUnitRulesOut) {
    EXPECT_NE(matched({kLithium, "Overcharge detection", "", "ms", kTiming, {}, ""}), "overcharge-detect-voltage");
    EXPECT_EQ(matched({kLithium, "Overcharge detection voltage", "VCU", "kΩ", kCharacteristic, {}, ""}), "");
}

TEST(Matcher, OppositesAreNeverTaken) {
    EXPECT_EQ(matched({kLithium, "Tube heater voltage", "VHX", "V", kCharacteristic, {}, ""}), "");
    EXPECT_NE(matched({kLithium, "Overdischarge release delay time", "", "ms", kTiming, {}, ""}), "overcharge-release-delay");
    EXPECT_NE(matched({kLithium, "Charge release level", "", "V", kCharacteristic, {}, ""}), "overcharge-detect-voltage");
}

}  // namespace
}  // namespace standin::vocabulary
