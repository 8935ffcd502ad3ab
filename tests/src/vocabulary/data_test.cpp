// The data that is compiled in: complete, consistent, every reference resolves.
#include <map>
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "vocabulary/vocabulary.h"

namespace standin::vocabulary {
namespace {

Vocabulary const& builtIn() {
    static Vocabulary const vocabulary = std::move(*Vocabulary::builtIn());
    return vocabulary;
}

TEST(VocabularyData, LithiumProtectionIsComplete) {
    char const* const ids[] = {
        "overcharge-detect-voltage", "overcharge-release-voltage", "overcharge-hysteresis", "overdischarge-detect-voltage", "overdischarge-release-voltage",
        "overdischarge-hysteresis", "discharge-overcurrent-1-voltage", "discharge-overcurrent-2-voltage", "load-short-detect-voltage",
        "charge-overcurrent-voltage", "charge-overcurrent-release-voltage", "discharge-overcurrent-release-voltage", "charger-detect-voltage",
        "charger-abnormal-detect-voltage", "zero-volt-charge-start-voltage", "zero-volt-charge-inhibit-voltage", "power-down-release-voltage",
        "load-detect-voltage", "shipping-mode-threshold", "threshold-temp-coefficient", "detect-accuracy", "discharge-trip-current-1", "load-short-current",
        "charge-trip-current", "overcharge-detect-delay", "overcharge-release-delay", "overdischarge-detect-delay", "overdischarge-release-delay",
        "discharge-overcurrent-1-delay", "discharge-overcurrent-2-delay", "load-short-delay", "charge-overcurrent-delay", "overcurrent-release-delay",
        "charge-overcurrent-release-delay", "charge-inhibit-delay", "delay-capacitor", "delay-shortening", "wakeup-delay", "supply-current-operating",
        "supply-current-power-down", "supply-current-overdischarge", "supply-current-shipping", "supply-current-overcharge", "vm-pin-current",
        "cell-pin-current", "output-leakage", "output-sink-source-current", "fet-off-leakage", "fet-continuous-current", "fet-pulse-current",
        "resistance-vm-vdd", "resistance-vm-vss", "co-resistance-high", "co-resistance-low", "do-resistance-high", "do-resistance-low", "co-output-high",
        "do-output-high", "co-output-low", "do-output-low", "fet-on-resistance", "sense-resistor", "ctl-pin-resistance", "fet-breakdown-voltage",
        "charge-overtemp-detect", "discharge-overtemp-detect", "charge-undertemp-detect", "discharge-undertemp-detect", "thermal-shutdown",
        "charge-overtemp-detect-release", "discharge-overtemp-detect-release", "charge-undertemp-detect-release", "discharge-undertemp-detect-release",
        "thermal-shutdown-release", "ntc-value", "temp-detect-delay", "operating-voltage-vdd-vss", "operating-voltage-vdd-vm", "amr-vdd", "amr-vm", "amr-co",
        "amr-do", "amr-other-pin", "amr-power-dissipation", "amr-junction-temp", "operating-temp", "storage-temp", "esd-hbm", "esd-cdm", "theta-ja",
        "supply-resistor", "supply-capacitor", "vm-resistor", "series-cell-count", "balance-start-voltage", "balance-current", "open-wire-detect",
        "second-level-detect-voltage", "second-level-output-form", "ctl-threshold", "cascade-support", "cell-unbalance-detect"};
    for (char const* id : ids) {
        EXPECT_NE(builtIn().find(id, "lithium-protection"), nullptr) << id;
    }
    char const* const features[] = {
        "zero-volt-charging", "overdischarge-sleep", "overdischarge-release-condition", "overcurrent-release", "overcharge-release-condition", "charger-detection",
        "charge-overcurrent-function", "discharge-overcurrent-2-function", "load-short-function", "fet-integration", "current-sense-element", "switch-side",
        "reverse-charger-protection", "overtemperature-function", "shipping-mode", "power-saving-input-polarity", "output-polarity", "delay-source", "balancing",
        "latch-after-second-level", "chemistry-option", "discharge-in-overcharge", "charge-in-overdischarge", "start-up-state", "latch-up-note",
        "qualification-grade"};
    for (char const* id : features) {
        EXPECT_NE(builtIn().feature(id), nullptr) << id;
    }
}

TEST(VocabularyData, JudgingOfTheGravestParameters) {
    struct Case {
        char const* id;
        Role role;
        Bound bound;
        model::Severity severity;
        char const* caution;
    };
    using model::Severity;
    Case const cases[] = {
        {"overcharge-detect-voltage", Role::Window, Bound::Max, Severity::Hazard, "C-OC"},
        {"overdischarge-detect-voltage", Role::Window, Bound::Min, Severity::Hazard, "C-OD"},
        {"overcharge-release-voltage", Role::Window, Bound::Max, Severity::Function, "C-OCR"},
        {"charge-overcurrent-voltage", Role::Window, Bound::Magnitude, Severity::Hazard, "C-CI"},
        {"load-short-delay", Role::Window, Bound::Max, Severity::Hazard, "C-SC"},
        {"zero-volt-charge-inhibit-voltage", Role::Window, Bound::Min, Severity::Hazard, "C-0V"},
        {"zero-volt-charge-start-voltage", Role::Cap, Bound::Max, Severity::Function, "C-0V"},
        {"amr-vm", Role::Withstand, Bound::Both, Severity::Hazard, "C-CHG"},
        {"fet-on-resistance", Role::Window, Bound::Both, Severity::Hazard, "C-FET"},
        {"supply-current-power-down", Role::Cap, Bound::Max, Severity::Hazard, "C-DRN"},
        {"supply-current-operating", Role::Cap, Bound::Max, Severity::Margin, "C-DRN"},
    };
    for (auto const& expected : cases) {
        auto const* entry = builtIn().find(expected.id);
        ASSERT_NE(entry, nullptr) << expected.id;
        EXPECT_EQ(entry->role, expected.role) << expected.id;
        EXPECT_EQ(entry->bound, expected.bound) << expected.id;
        EXPECT_EQ(entry->severity, expected.severity) << expected.id;
        EXPECT_EQ(entry->caution, expected.caution) << expected.id;
    }
}

TEST(VocabularyData, OneIdHasOneRoleInAllFamilies) {
    std::map<std::string, Role> roles;
    for (auto const* entry : builtIn().parameters()) {
        auto const [known, isNew] = roles.emplace(entry->id, entry->role);
        EXPECT_EQ(known->second, entry->role) << entry->id << " in " << entry->family;
    }
}

TEST(VocabularyData, ReferencesResolve) {
    for (auto const* entry : builtIn().parameters()) {
        EXPECT_FALSE(entry->title.empty()) << entry->id;
        EXPECT_TRUE(entry->caution.empty() || builtIn().caution(entry->caution) != nullptr) << entry->id;
        EXPECT_TRUE(!entry->low || *entry->low < *entry->high) << entry->id;
    }
    for (auto const* feature : builtIn().features()) {
        EXPECT_TRUE(feature->caution.empty() || builtIn().caution(feature->caution) != nullptr) << feature->id;
        std::set<std::string> states;
        for (auto const& state : feature->states) {
            EXPECT_TRUE(states.insert(state.token).second) << feature->id << " " << state.token;
            EXPECT_FALSE(state.meaning.empty()) << feature->id << " " << state.token;
        }
        for (auto const& concern : feature->concerns) {
            EXPECT_TRUE(concern.from.empty() || states.count(concern.from) == 1) << feature->id << " " << concern.from;
            EXPECT_TRUE(concern.to.empty() || states.count(concern.to) == 1) << feature->id << " " << concern.to;
        }
    }
    EXPECT_EQ(builtIn().generalStatements().size(), 9U);
    EXPECT_NE(builtIn().cautionText("C-OC").find("Overcharge can lead to gas, fire or explosion."), std::string::npos);
    EXPECT_TRUE(builtIn().cautionText("C-NONE").empty());
    EXPECT_GE(builtIn().families().size(), 11U);
}

TEST(VocabularyData, RevisionHistoriesHaveTheirWords) {
    auto const& words = builtIn().historyWords();
    for (auto const* list : {&words.revision, &words.first, &words.editorial, &words.from, &words.to, &words.was, &words.added, &words.removed, &words.place, &words.fillers}) {
        EXPECT_FALSE(list->empty());
        EXPECT_EQ(std::set<std::string>(list->begin(), list->end()).size(), list->size());
    }
}

}  // namespace
}  // namespace standin::vocabulary
