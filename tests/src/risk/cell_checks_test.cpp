#include "risk/cell_checks.h"

#include <map>
#include <set>

#include <gtest/gtest.h>

#include "src/risk/invented_protector.h"

namespace standin::risk {
namespace {

using model::CheckOutcome;

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

// A cell and a board that the invented protector suits.
std::map<std::string, std::string> cellMembersGiven() {
    return {{"chemistry", R"("4.2-v")"}, {"charge_voltage", R"("4.20 V ±30 mV")"}, {"protection_max", R"("4.35 V")"}, {"discharge_end", R"("2.75 V")"},
            {"protection_min", R"("2.60 V")"}, {"recharge_min", R"("1.50 V")"}, {"charge_current_max", R"("4 A")"}, {"discharge_current_max", R"("1.0 A")"},
            {"pulse_current_max", R"("6 A")"}, {"pulse_time_max", R"("100 ms")"}, {"charge_temperature", R"("0 to 45 °C")"}, {"capacity", R"("500 mAh")"},
            {"residual_capacity", R"("25 mAh")"}, {"resistance", R"({"min": "60 mΩ", "max": "80 mΩ"})"}};
}
std::map<std::string, std::string> circuitMembersGiven() {
    return {{"fet_on_resistance", R"({"min": "32 mΩ", "typ": "40 mΩ", "max": "50 mΩ"})"}, {"link_resistance", R"({"min": "0 mΩ", "max": "0 mΩ"})"},
            {"wire_resistance", R"({"min": "10 mΩ", "max": "40 mΩ"})"}, {"supply_resistor", R"("330 Ω ±5 %")"}, {"load_peak_current", R"("1.2 A")"},
            {"system_cutoff_voltage", R"({"min": "3.05 V", "max": "3.15 V"})"}, {"charger_float_voltage", R"("4.20 V ±20 mV")"}, {"charger_current", R"("250 mA")"},
            {"charger_open_voltage", R"("14 V")"}, {"storage_time", R"("12 months")"}, {"fet_energy_max", R"("100 mJ")"},
            {"charge_temperature_control", R"("2 to 43 °C")"}, {"series_cells", "1"}, {"parallel_cells", "1"}};
}

std::string json(char const* schema, std::map<std::string, std::string> const& members) {
    std::string text = std::string(R"({"schema": ")") + schema + "\"";
    for (auto const& [name, value] : members) text += ", \"" + name + "\": " + value;
    return text + "}";
}

struct Fixture {
    model::Datasheet sheet;
    std::map<std::string, std::string> cell = cellMembersGiven();
    std::map<std::string, std::string> circuit = circuitMembersGiven();

    Fixture() {
        sheet = sheetOf(protectorRows());
        sheet.parameters.push_back(chargerRating("-28"));
        sheet.parameters.push_back(parameterOf({"zero-volt-charge-inhibit-voltage", "1.6", "1.8", "2.0"}, "inhibit"));
        sheet.features.push_back(featureOf("zero-volt-charging", "inhibited"));
    }

    void set(char const* canonical, StatedRow const& row) {
        std::erase_if(sheet.parameters, [&](auto const& parameter) { return parameter.canonical == canonical; });
        sheet.parameters.push_back(parameterOf(row, std::string("new-") + canonical));
    }

    [[nodiscard]] std::vector<PartCheck> run() const {
        auto const profile = parseCellProfile(json("standin.cell/1", cell));
        auto const board = parseCircuit(json("standin.circuit/1", circuit));
        EXPECT_TRUE(profile) << (profile ? "" : profile.error().message);
        EXPECT_TRUE(board) << (board ? "" : board.error().message);
        StatedValues const values(sheet, "", builtIn());
        return checkPart(values, {.cell = &*profile, .circuit = &*board}, builtIn());
    }

    [[nodiscard]] PartCheck check(std::string_view id) const {
        auto const all = run();
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (checkEntries()[i].id == id) return all[i];
        }
        ADD_FAILURE() << id;
        return {};
    }
};

std::string told(PartCheck const& check) { return std::string(check.result.outcome == CheckOutcome::Holds ? "holds" : check.result.outcome == CheckOutcome::Violated ? "violated" : "open") + " " + check.result.value + " | " + check.result.why; }

TEST(CellChecks, NothingHoldsByARecognisedValue) {
    Fixture fixture;
    auto& row = *std::find_if(fixture.sheet.parameters.begin(), fixture.sheet.parameters.end(), [](auto const& p) { return p.condition.empty() == false; });
    row.box = {10, 500, 300, 510};
    fixture.sheet.coverage.recognised = {{"4.315", row.page, {200, 500, 220, 510}}};
    auto const check = fixture.check("overcharge-upper");
    EXPECT_EQ(check.result.outcome, CheckOutcome::Open) << told(check);
    EXPECT_NE(check.result.why.find("recognised in a picture"), std::string::npos) << told(check);
    EXPECT_FALSE(check.result.value.empty());
}

TEST(CellChecks, AllHoldForAPartThatSuits) {
    auto const all = Fixture().run();
    ASSERT_EQ(all.size(), 17U);
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(all[i].result.outcome, CheckOutcome::Holds) << checkEntries()[i].id << ": " << told(all[i]);
        EXPECT_FALSE(all[i].limit.empty()) << checkEntries()[i].id;
        EXPECT_FALSE(all[i].result.value.empty()) << checkEntries()[i].id;
    }
}

// What a bench result is held against, in numbers; the words say the same.
TEST(CellChecks, WhatABenchCanMeasureHasItsLimitsInNumbers) {
    struct Case {
        char const *check, *min, *max, *unit;
        bool aboveMin, belowMax;
    };
    Case const cases[] = {
        {"overcharge-upper", "", "4.35", "V", false, false},
        {"overcharge-nuisance", "4.22", "", "V", true, false},
        {"overcharge-release", "3.85", "4.2", "V", false, true},
        {"overdischarge-lower", "2.6", "", "V", false, false},
        {"overdischarge-nuisance", "", "3.05", "V", false, true},
        {"zero-volt-inhibit", "1.5", "", "V", false, false},
        {"discharge-trip-high", "", "6", "A", false, false},
        {"discharge-trip-low", "1.2", "", "A", true, false},
        {"charge-trip", "0.25", "4", "A", true, false},
        {"short-energy", "", "0.1", "J", false, false},
        {"charge-temperature-window", "0", "45", "°C", false, false},
    };
    Fixture const fixture;
    for (auto const& [check, min, max, unit, aboveMin, belowMax] : cases) {
        auto const bounds = fixture.check(check).bounds;
        ASSERT_TRUE(bounds) << check;
        EXPECT_FALSE(bounds->quantity.empty()) << check;
        EXPECT_EQ(bounds->min, min) << check;
        if (std::string_view(check) != "overcharge-release") {
            EXPECT_EQ(bounds->max, max) << check;
        }
        EXPECT_EQ(bounds->unit, unit) << check;
        EXPECT_EQ(bounds->aboveMin, aboveMin) << check;
        EXPECT_EQ(bounds->belowMax, belowMax) << check;
    }
    for (char const* check : {"class-match", "drain", "charger-withstand", "series-count", "parallel-cells"}) EXPECT_FALSE(fixture.check(check).bounds) << check;
}

// A third of an ampere has no end: the bound is rounded to the stricter side.
TEST(CellChecks, LongBoundsAreRoundedToTheStricterSide) {
    Fixture fixture;
    fixture.circuit["parallel_cells"] = "2";
    EXPECT_EQ(fixture.check("parallel-cells").bounds->max, "1");
    EXPECT_EQ(fixture.check("discharge-trip-high").bounds->max, "12");
    auto const bounds = fixture.check("short-detectable").bounds;
    ASSERT_TRUE(bounds);
    EXPECT_LE(bounds->max.size(), 12U);
    EXPECT_TRUE(bounds->belowMax);
    fixture.cell.erase("protection_max");
    EXPECT_FALSE(fixture.check("overcharge-upper").bounds) << "nothing asks for anything";
}

TEST(CellChecks, EntriesAreWhole) {
    std::set<std::string_view> ids;
    for (auto const& entry : checkEntries()) {
        EXPECT_TRUE(ids.insert(entry.id).second);
        EXPECT_FALSE(entry.title.empty() || entry.violation.empty());
        EXPECT_NE(builtIn().caution(entry.caution), nullptr) << entry.id;
        bool const known = builtIn().find(entry.canonical, "lithium-protection") != nullptr || builtIn().feature(entry.canonical) != nullptr;
        EXPECT_TRUE(known) << entry.canonical;
    }
}

struct Change {
    char const* check;
    char const* cellMember;     // changed, or null
    char const* circuitMember;
    char const* value;          // empty: taken out
    CheckOutcome outcome;
    int level;
    char const* why;  // a part of it
};

// What holds at 25 °C may not hold over temperature; what does not is violated all the same.
TEST(CellChecks, AnUpperLimitAtRoomTemperatureDoesNotHold) {
    Fixture fixture;
    fixture.set("overcharge-detect-voltage", {"overcharge-detect-voltage", "4.255", "4.280", "4.305"});
    auto const open = fixture.check("overcharge-upper");
    EXPECT_EQ(open.result.outcome, CheckOutcome::Open) << told(open);
    EXPECT_EQ(open.missing, MissingIn::Sheet);
    EXPECT_NE(open.result.why.find("25 °C only"), std::string::npos) << told(open);
    EXPECT_NE(open.result.value.find("at most 4.307 V"), std::string::npos) << told(open);
    fixture.cell["protection_max"] = R"("4.30 V")";
    EXPECT_EQ(fixture.check("overcharge-upper").result.outcome, CheckOutcome::Violated);
}

// One value in the user's files at a time.
TEST(CellChecks, AgainstWhatIsGiven) {
    constexpr auto kViolated = CheckOutcome::Violated;
    constexpr auto kOpen = CheckOutcome::Open;
    constexpr auto kHolds = CheckOutcome::Holds;
    Change const changes[] = {
        {"overcharge-upper", "protection_max", nullptr, R"("4.32 V")", kHolds, 0, ""},
        // 4.315 V over temperature alone would pass: 4 µA in 346.5 Ω lift it over.
        {"overcharge-upper", "protection_max", nullptr, R"("4.316 V")", kViolated, 4, "above the limit by 386 µV"},
        {"overcharge-upper", "protection_max", nullptr, "", kOpen, 0, "the cell file gives no protection_max"},
        {"overcharge-nuisance", nullptr, "charger_float_voltage", R"("4.20 V ±50 mV")", kViolated, 2, "short by 5 mV"},
        {"overcharge-nuisance", nullptr, "charger_float_voltage", R"("4.20 V")", kOpen, 0, "no maximum of charger_float_voltage"},
        {"overcharge-nuisance", nullptr, "charger_float_voltage", "", kHolds, 0, ""},
        {"class-match", "charge_voltage", nullptr, R"("4.35 V ±20 mV")", kViolated, 4, "another class is suspected"},
        {"class-match", "charge_voltage", nullptr, R"("3.65 V ±20 mV")", kViolated, 4, "above the charge voltage by 630 mV"},
        {"overcharge-release", "charge_voltage", nullptr, R"("4.40 V")", kViolated, 2, "lower than 4.05 V"},
        {"overdischarge-lower", "protection_min", nullptr, R"("2.74 V")", kViolated, 4, "below the limit by 10 mV"},
        {"overdischarge-lower", "protection_min", nullptr, "", kViolated, 3, "below the limit by 20 mV"},
        {"overdischarge-nuisance", nullptr, "system_cutoff_voltage", R"({"min": "2.85 V"})", kViolated, 2, "not below it, by 20 mV"},
        {"zero-volt-inhibit", "recharge_min", nullptr, R"("1.70 V")", kViolated, 3, "by 100 mV"},
        {"discharge-trip-high", "pulse_current_max", nullptr, R"("5 A")", kViolated, 3, "up to 468.8 mA"},
        {"discharge-trip-high", "pulse_current_max", nullptr, R"("2 A")", kViolated, 4, "every device"},
        {"discharge-trip-high", "pulse_time_max", nullptr, R"("10 ms")", kViolated, 4, "every device"},
        {"discharge-trip-high", nullptr, "fet_on_resistance", R"({"typ": "40 mΩ", "max": "50 mΩ"})", kOpen, 0, "fet_on_resistance"},
        {"discharge-trip-low", nullptr, "load_peak_current", R"("2.6 A")", kViolated, 2, "short by 100 mA"},
        {"discharge-trip-low", nullptr, "link_resistance", "", kOpen, 0, "link_resistance"},
        {"charge-trip", "charge_current_max", nullptr, R"("3 A")", kViolated, 3, "up to 750 mA"},
        {"charge-trip", nullptr, "charger_current", R"("1.7 A")", kViolated, 2, "reached by the charger"},
        {"short-detectable", "resistance", nullptr, R"({"min": "90 mΩ", "max": "320 mΩ"})", kViolated, 4, "may not be reached"},
        {"short-detectable", "resistance", nullptr, R"("120 mΩ")", kOpen, 0, "no maximum of resistance"},
        {"short-energy", nullptr, "fet_energy_max", R"("20 mJ")", kViolated, 3, "above it by up to"},
        {"charge-temperature-window", nullptr, "charge_temperature_control", R"("-2 to 43 °C")", kViolated, 3, "wider"},
        {"charge-temperature-window", nullptr, "charge_temperature_control", "", kOpen, 0, "names no other device"},
        {"drain", nullptr, "storage_time", R"("400 months")", kViolated, 1, "shorter than needed"},
        {"drain", nullptr, "storage_time", R"("1000 months")", kViolated, 2, "shorter than needed"},
        {"charger-withstand", nullptr, "charger_open_voltage", R"("30 V")", kViolated, 4, "too little by 2 V"},
        {"charger-withstand", nullptr, "charger_reverse_voltage", R"("6 V")", kOpen, 0, "in reverse"},
        {"series-count", nullptr, "series_cells", "2", kOpen, 0, "not stated"},
        {"parallel-cells", nullptr, "parallel_cells", "2", kViolated, 2, "continuous limit"},
    };
    for (auto const& change : changes) {
        Fixture fixture;
        auto& members = change.cellMember != nullptr ? fixture.cell : fixture.circuit;
        std::string const member = change.cellMember != nullptr ? change.cellMember : change.circuitMember;
        if (*change.value == '\0') members.erase(member);
        else members[member] = change.value;
        auto const check = fixture.check(change.check);
        EXPECT_EQ(check.result.outcome, change.outcome) << change.check << ", " << member << ": " << told(check);
        EXPECT_EQ(check.level, change.level) << change.check << ", " << member << ": " << told(check);
        EXPECT_NE(check.result.why.find(change.why), std::string::npos) << change.check << ", " << member << ": " << told(check);
        EXPECT_EQ(check.missing != MissingIn::Nothing, change.outcome == CheckOutcome::Open) << change.check;
    }
}

struct SheetChange {
    char const* check;
    StatedRow row;
    CheckOutcome outcome;
    int level;
    char const* why;
};

TEST(CellChecks, AgainstWhatTheSheetStates) {
    constexpr auto kViolated = CheckOutcome::Violated;
    constexpr auto kOpen = CheckOutcome::Open;
    SheetChange const changes[] = {
        {"overcharge-upper", {"overcharge-detect-voltage", "4.255", "4.280", ""}, kOpen, 0, "the highest overcharge detection voltage is not stated"},
        {"overcharge-upper", {"overcharge-detect-voltage", "", "4.40", ""}, kViolated, 4, "above the limit by 50 mV"},
        {"overdischarge-lower", {"overdischarge-detect-voltage", "", "2.5", ""}, kViolated, 4, "below the limit by 100 mV"},
        {"overdischarge-lower", {"overdischarge-detect-voltage", "", "2.8", ""}, kOpen, 0, "not stated"},
        {"overcharge-release", {"overcharge-release-voltage", "4.20", "4.23", "4.26"}, kViolated, 2, "may reach the lowest cut-off of 4.255 V"},
        {"short-detectable", {"load-short-detect-voltage", "0.8", "1.0", "1.2"}, kViolated, 4, "may not be reached in a dead short"},
        {"discharge-trip-high", {"discharge-overcurrent-1-voltage", "0.180", "0.200", "0.220"}, kViolated, 3, "up to 875 mA"},
        {"drain", {"supply-current-power-down", "", "", "0.000004", "A"}, kViolated, 1, "shorter than needed"},
        {"drain", {"supply-current-power-down", "", "0.0000001", "", "A"}, kOpen, 0, "supply current power down"},
    };
    for (auto const& change : changes) {
        Fixture fixture;
        fixture.set(change.row.canonical, change.row);
        auto const check = fixture.check(change.check);
        EXPECT_EQ(check.result.outcome, change.outcome) << change.check << ": " << told(check);
        EXPECT_EQ(check.level, change.level) << change.check << ": " << told(check);
        EXPECT_NE(check.result.why.find(change.why), std::string::npos) << change.check << ": " << told(check);
        EXPECT_EQ(check.missing, change.outcome == CheckOutcome::Open ? MissingIn::Sheet : MissingIn::Nothing) << change.check << ": " << told(check);
    }
}

TEST(CellChecks, ZeroVoltCharging) {
    Fixture fixture;
    fixture.sheet.features = {featureOf("zero-volt-charging", "allowed")};
    EXPECT_EQ(fixture.check("zero-volt-inhibit").level, 4);
    fixture.sheet.features.clear();
    std::erase_if(fixture.sheet.parameters, [](auto const& p) { return p.canonical == "zero-volt-charge-inhibit-voltage"; });
    EXPECT_EQ(fixture.check("zero-volt-inhibit").result.outcome, CheckOutcome::Open);
    EXPECT_EQ(fixture.check("zero-volt-inhibit").missing, MissingIn::Sheet);
}

TEST(CellChecks, AnUnknownDropAcrossTheSupplyResistorIsNoPass) {
    Fixture fixture;
    fixture.set("supply-current-operating", {"supply-current-operating", "", "0.0000022", "", "A"});
    auto check = fixture.check("overcharge-upper");
    EXPECT_EQ(check.result.outcome, CheckOutcome::Open) << told(check);
    EXPECT_EQ(check.missing, MissingIn::Sheet);
    EXPECT_NE(check.result.value.find("without the drop"), std::string::npos) << told(check);
    fixture.cell["protection_max"] = R"("4.31 V")";
    EXPECT_EQ(fixture.check("overcharge-upper").result.outcome, CheckOutcome::Violated) << "without any drop";
    Fixture typical;
    typical.circuit["supply_resistor"] = R"("330 Ω")";
    check = typical.check("overcharge-upper");
    EXPECT_EQ(check.result.outcome, CheckOutcome::Open) << told(check);
    EXPECT_EQ(check.missing, MissingIn::Files);
    typical.circuit.erase("supply_resistor");
    EXPECT_EQ(typical.check("overcharge-upper").result.outcome, CheckOutcome::Holds) << "no resistor is given";
}

// Two places of one sheet: the worse one counts. Lines of an ordering table: versions.
TEST(CellChecks, OfContraryStatementsTheWorseCounts) {
    Fixture fixture;
    fixture.sheet.features.push_back(featureOf("zero-volt-charging", "allowed"));
    EXPECT_EQ(fixture.check("zero-volt-inhibit").result.outcome, CheckOutcome::Violated);
    fixture.circuit["charger_reverse_voltage"] = R"("6 V")";
    fixture.sheet.features.push_back(featureOf("reverse-charger-protection", "yes"));
    fixture.sheet.features.push_back(featureOf("reverse-charger-protection", "no"));
    EXPECT_EQ(fixture.check("charger-withstand").result.outcome, CheckOutcome::Violated);

    Fixture versions;
    versions.sheet.features.clear();
    for (char const* state : {"inhibited", "allowed"}) {
        float const y = 40.0F + 12.0F * static_cast<float>(versions.sheet.ordering.size());
        versions.sheet.ordering.push_back({std::string("FW-") + state, {}, {}, 1, {50, y, 400, y + 10}});
        versions.sheet.features.push_back(featureOf("zero-volt-charging", state));
        versions.sheet.features.back().box = versions.sheet.ordering.back().box;
    }
    auto const check = versions.check("zero-volt-inhibit");
    EXPECT_EQ(check.result.outcome, CheckOutcome::Open);
    EXPECT_EQ(check.result.why, "what happens to a 0 V cell is stated for several versions, none of which was selected");
}

TEST(CellChecks, OneTemperatureBeyondTheWindowIsEnough) {
    Fixture fixture;
    fixture.circuit.erase("charge_temperature_control");
    fixture.set("charge-overtemp-detect", {"charge-overtemp-detect", "46", "48", "50", "degC"});
    EXPECT_EQ(fixture.check("charge-temperature-window").result.outcome, CheckOutcome::Violated);
    fixture.set("charge-overtemp-detect", {"charge-overtemp-detect", "41", "43", "45", "degC"});
    EXPECT_EQ(fixture.check("charge-temperature-window").result.outcome, CheckOutcome::Open) << "the cold side is not stated";
    fixture.set("charge-undertemp-detect", {"charge-undertemp-detect", "-5", "-2", "1", "degC"});
    EXPECT_EQ(fixture.check("charge-temperature-window").result.outcome, CheckOutcome::Violated);
}

TEST(CellChecks, AnotherClassOfCell) {
    Fixture fixture;
    fixture.sheet.features.push_back(featureOf("chemistry-option", "lfp"));
    auto const check = fixture.check("class-match");
    EXPECT_EQ(check.level, 4) << told(check);
}

TEST(CellChecks, CurrentsStatedInAmperes) {
    Fixture fixture;
    fixture.set("discharge-overcurrent-1-voltage", {"discharge-trip-current-1", "2", "3", "4", "A"});
    fixture.circuit.erase("fet_on_resistance");
    auto const check = fixture.check("discharge-trip-high");
    EXPECT_EQ(check.result.outcome, CheckOutcome::Holds) << told(check);
    EXPECT_EQ(check.result.value, "2 A to 4 A");
}

}  // namespace
}  // namespace standin::risk
