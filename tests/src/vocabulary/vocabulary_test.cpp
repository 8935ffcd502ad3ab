#include "vocabulary/vocabulary.h"

#include <algorithm>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace standin::vocabulary {
namespace {

Vocabulary const& builtIn() {
    static Vocabulary const vocabulary = std::move(*Vocabulary::builtIn());
    return vocabulary;
}

std::string stateOf(char const* sentence, char const* feature) {
    for (auto const& stated : builtIn().statements(sentence, "lithium-protection")) {
        if (stated.feature == feature) return stated.state;
    }
    return {};
}

TEST(Vocabulary, StatesSaidInSentences) {
    struct Case {
        char const* sentence;
        char const* feature;
        char const* state;
    };
    Case const cases[] = {
        {"Charging of a 0 V cell is permitted.", "zero-volt-charging", "allowed"},
        {"Charging of a 0 V cell is prohibited.", "zero-volt-charging", "inhibited"},
        {"The 0 V battery charge function is available.", "zero-volt-charging", "allowed"},
        {"The 0 V battery charge function is unavailable.", "zero-volt-charging", "inhibited"},
        {"0 V battery charging is not allowed.", "zero-volt-charging", "inhibited"},
        {"禁止向0V电池充电", "zero-volt-charging", "inhibited"},
        {"允许向0V电池充电", "zero-volt-charging", "allowed"},
        {"0V電池への充電は禁止です。", "zero-volt-charging", "inhibited"},
        {"The overcurrent state is released automatically when the load is removed.", "overcurrent-release", "load-removal"},
        {"The overcurrent state is released when a charger is connected.", "overcurrent-release", "charger-attach"},
        {"The overdischarge state is released when a charger is connected or the cell voltage rises to VDU or higher.", "overdischarge-release-condition", "charger-or-voltage"},
        {"The overdischarge state is released when a charger is connected and the cell voltage rises to VDU or higher.", "overdischarge-release-condition", "charger-and-voltage"},
        {"After overdischarge the device enters power-down.", "overdischarge-sleep", "power-down"},
        {"After overdischarge the device does not enter power-down.", "overdischarge-sleep", "auto-wake"},
        {"The load short-circuit detection is not disabled in the overcharge state.", "load-short-function", ""},
        {"过充电状态下不停用负载短路检测。", "load-short-function", ""},
        {"No short-circuit protection function.", "load-short-function", "absent"},
        {"A cell at 0 V cannot be charged.", "zero-volt-charging", "inhibited"},
        {"A cell at 0 V can be charged.", "zero-volt-charging", "allowed"},
        {"不进入休眠状态", "overdischarge-sleep", "auto-wake"},
        {"The logger integrates the power MOSFETs.", "fet-integration", "integrated-pair"},
        {"Current is sensed across an external shunt resistor.", "current-sense-element", "shunt"},
        {"The PS pin is active low.", "power-saving-input-polarity", "active-low"},
        {"The output is reset automatically after overcharge release.", "latch-after-second-level", "resettable"},
        {"Discharge is blocked in the overcharge state.", "discharge-in-overcharge", "blocked"},
        {"After cell attachment the outputs stay off until a charger is connected.", "start-up-state", "activation-needed"},
        {"The outputs turn on when the cell is attached.", "start-up-state", "on"},
        // Items of a list: a title and a word or two.
        {"Load short-circuit detection: available", "load-short-function", "present"},
        {"• Load short-circuit detection: not available", "load-short-function", "absent"},
        {"Charge overcurrent detection: none", "charge-overcurrent-function", "absent"},
        {"Discharge overcurrent detection 2: available", "discharge-overcurrent-2-function", "present"},
        {"短路保护：无", "load-short-function", "absent"},
        {"Charge overcurrent detection: no longer than 12 ms", "charge-overcurrent-function", ""},
        {"Load short-circuit detection: no later than the delay", "load-short-function", ""},
        {"Charging stops when the cell is full.", "zero-volt-charging", ""},
        {"The charger is checked before the FETs are turned on.", "overcurrent-release", ""},
    };
    for (auto const& expected : cases) {
        EXPECT_EQ(stateOf(expected.sentence, expected.feature), expected.state) << expected.sentence;
    }
}

TEST(Vocabulary, StatesSaidInTableCells) {
    auto const state = [](char const* title, char const* cell) {
        auto const stated = builtIn().statement(title, cell, "lithium-protection");
        return stated ? stated->feature + "=" + stated->state : std::string();
    };
    EXPECT_EQ(state("0 V battery charge function", "Available"), "zero-volt-charging=allowed");
    EXPECT_EQ(state("0 V battery charge function", "Unavailable"), "zero-volt-charging=inhibited");
    EXPECT_EQ(state("向0V电池充电功能", "禁止"), "zero-volt-charging=inhibited");
    EXPECT_EQ(state("Power-down function", "Yes"), "overdischarge-sleep=power-down");
    EXPECT_EQ(state("Power-down function", "No"), "overdischarge-sleep=auto-wake");
    EXPECT_EQ(state("休眠功能", "有"), "overdischarge-sleep=power-down");
    EXPECT_EQ(state("Package", "Available"), "");
}

TEST(Vocabulary, TopicsOfSentences) {
    auto const first = [](char const* sentence, char const* family) {
        auto const topics = builtIn().topics(sentence, family);
        return topics.empty() ? Topic{} : topics.front();
    };
    EXPECT_EQ(first("The load short-circuit detection is disabled in this state.", "lithium-protection").severity, model::Severity::Hazard);
    EXPECT_EQ(first("Release from the overdischarge state is shown in the chart.", "lithium-protection").caution, "C-ODR");
    EXPECT_EQ(first("Charging is stopped when the voltage exceeds VCU.", "lithium-protection").severity, model::Severity::Hazard);
    EXPECT_LT(first("Colour of the reel label.", "lithium-protection").severity, model::Severity::Hazard);
    EXPECT_EQ(first("The load short-circuit detection is not disabled in the overcharge state.", "lithium-protection").caution, "C-SC");
    EXPECT_EQ(first("RDS(ON), VGS@1.8V, ID@2.0A = 75mΩ", "mosfet").subject, "on-resistance") << "what is named first, not its condition";
    EXPECT_EQ(first("The gate (VGS) stands 9 V.", "mosfet").subject, "gate-source-rating");
    EXPECT_EQ(first("The loop of VIN lowers the current of the lamp.", "lithium-charger").severity, model::Severity::Function) << "a voltage, not what the input withstands";
    EXPECT_EQ(first("VIN must never exceed 9 V.", "lithium-charger").subject, "input-rating");
    EXPECT_EQ(first("VIN stands 9 V without damage.", "lithium-charger").caution, "C-CHG");
    EXPECT_EQ(first("VIN 超过 9 V 会损坏", "lithium-charger").caution, "C-CHG");
    for (char const* const sentence : {"VIN tolerates 9 V.", "VIN is 9 V tolerant.", "VIN survives 9 V.", "VIN is rated for 9 V.", "VIN must stay below 9 V.", "VIN shall be kept below 9 V.",
                                       "VIN shall not be higher than 9 V.", "Never apply more than 9 V to VIN.", "VIN 不得高于 9 V", "VIN 不能超过 9 V"}) {
        EXPECT_EQ(first(sentence, "lithium-charger").subject, "input-rating") << sentence;
    }
    EXPECT_TRUE(builtIn().topics("", "lithium-protection").empty());
}

TEST(Vocabulary, FamiliesAreTold) {
    auto const family = [](std::vector<std::string> const& names, std::vector<std::string> const& symbols, char const* text) {
        return builtIn().detectFamily(names, symbols, text);
    };
    EXPECT_EQ(family({"Overcharge detection voltage", "Overdischarge detection voltage", "Overcharge release voltage"}, {"VCU", "VDL", "VCL"}, ""), "lithium-protection");
    EXPECT_EQ(family({"Drain-source voltage", "Gate threshold voltage", "Input capacitance"}, {"VDSS", "VGS(th)", "Ciss"}, ""), "mosfet");
    EXPECT_EQ(family({"Dropout voltage", "Output voltage", "Ripple rejection"}, {"VOUT", "IQ"}, "Low dropout regulator for small equipment"), "regulator");
    EXPECT_EQ(family({"过充电检测电压", "过放电检测电压"}, {}, "单节锂电池保护电路"), "lithium-protection");
    EXPECT_EQ(family({}, {}, "A garden bench of oak."), "");
}

TEST(Vocabulary, UserFilesAddAndReplace) {
    auto vocabulary = std::move(*Vocabulary::builtIn());
    auto const added = vocabulary.add(R"({"schema": "standin.vocabulary/1", "family": "kite-sensor", "title": "Kite sensors",
        "parameters": [{"id": "line-pull-limit", "title": "Line pull limit", "names": {"en": ["line pull limit"]}, "symbols": ["FPULL"],
                        "role": "cap", "unit": "N", "severity": "function", "bound": "max"}]})");
    ASSERT_TRUE(added) << added.error().message;
    auto const match = vocabulary.match({.name = "Line pull limit", .symbol = "FPULL", .unit = "", .kind = model::ParameterKind::Characteristic, .family = "kite-sensor", .neighbours = {}, .magnitude = {}});
    ASSERT_TRUE(match);
    EXPECT_EQ(match->id, "line-pull-limit");
    EXPECT_EQ(vocabulary.familyTitle("kite-sensor"), "Kite sensors");
    ASSERT_TRUE(vocabulary.add(R"({"schema": "standin.vocabulary/1", "family": "kite-sensor",
        "parameters": [{"id": "line-pull-limit", "names": {"en": ["greatest pull"]}, "severity": "note"}]})"));
    EXPECT_EQ(vocabulary.find("line-pull-limit")->severity, model::Severity::Note);
    EXPECT_NE(builtIn().find("overcharge-detect-voltage"), nullptr);
}

TEST(Vocabulary, UserFilesAddWordsOfRevisionHistories) {
    auto vocabulary = std::move(*Vocabulary::builtIn());
    auto const before = vocabulary.historyWords().editorial.size();
    ASSERT_TRUE(vocabulary.add(R"({"schema": "standin.vocabulary/1", "history": {"editorial": ["commas set right", "spelling"]}})"));
    EXPECT_EQ(vocabulary.historyWords().editorial.size(), before + 1);
    EXPECT_EQ(vocabulary.historyWords().editorial.back(), "commas set right");
}

TEST(Vocabulary, WrongUserFilesAreRefusedWithThePlace) {
    struct Case {
        char const* json;
        char const* expected;
    };
    Case const cases[] = {
        {"{", "not valid JSON"},
        {"[]", "\"schema\""},
        {R"({"schema": "standin.vocabulary/2"})", "\"schema\""},
        {R"({"schema": "standin.vocabulary/1", "parameters": [{"id": "x", "role": "roof"}]})", "parameter \"x\": \"roof\" is no role"},
        {R"({"schema": "standin.vocabulary/1", "parameters": [{"id": "x", "range": [1]}]})", "\"range\""},
        {R"({"schema": "standin.vocabulary/1", "parameters": [{}]})", "no \"id\""},
        {R"({"schema": "standin.vocabulary/1", "features": [{"id": "f", "changes": [{"level": 9}]}]})", "\"level\""},
        {R"({"schema": "standin.vocabulary/1", "parameters": 3})", "\"parameters\" must be a list"},
        {R"({"schema": "standin.vocabulary/1", "history": ["spelling"]})", "\"history\" must be an object"},
        {R"({"schema": "standin.vocabulary/1", "history": {"was": "was"}})", "\"was\" must be a list"},
    };
    for (auto const& wrong : cases) {
        auto vocabulary = std::move(*Vocabulary::builtIn());
        auto const added = vocabulary.add(wrong.json);
        ASSERT_FALSE(added) << wrong.json;
        EXPECT_EQ(added.error().kind, model::ErrorKind::Usage);
        EXPECT_NE(added.error().message.find(wrong.expected), std::string::npos) << added.error().message;
        EXPECT_EQ(vocabulary.find("x"), nullptr);
    }
    std::string const deep(100000, '[');
    auto vocabulary = std::move(*Vocabulary::builtIn());
    EXPECT_FALSE(vocabulary.add(deep));
}

TEST(Vocabulary, HostileQueriesEnd) {
    std::string const lots(200000, 'x');
    std::string cjk;
    for (int i = 0; i < 20000; ++i) cjk += "过充";
    EXPECT_FALSE(builtIn().match({.name = lots, .symbol = lots, .unit = "V", .kind = model::ParameterKind::Other, .family = {}, .neighbours = {}, .magnitude = {}}));
    (void)builtIn().match({.name = cjk, .symbol = "\xFF\xC3", .unit = "\xE2", .kind = model::ParameterKind::Other, .family = {}, .neighbours = {}, .magnitude = {}});
    EXPECT_LE(builtIn().topics(cjk, "lithium-protection").size(), 100U);
    EXPECT_TRUE(builtIn().statements("\xF0\x9F", "lithium-protection").empty());
}

}  // namespace
}  // namespace standin::vocabulary
