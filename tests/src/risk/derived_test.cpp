#include "risk/derived.h"

#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "quantity/formula.h"
#include "risk/cell_texts.h"
#include "risk/compare_datasheets.h"
#include "src/risk/invented_protector.h"

namespace standin::risk {
namespace {

using model::Finding;
using model::FindingKind;
using model::Severity;

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

// Every name of the data is a member or has a unit, and the units fit together:
// with one of each the result has the unit that is promised.
TEST(Derived, UnitsOfTheDataFit) {
    std::map<std::string, std::string, std::less<>> units;
    for (auto const& member : cellMembers()) units.emplace("cell." + std::string(member.name), member.unit);
    for (auto const& member : circuitMembers()) units.emplace("circuit." + std::string(member.name), member.unit);
    // Printed in units of their own, or as a ratio of another quantity.
    std::map<std::string, std::string, std::less<>> const printed = {{"temperature-coefficient", "1/K"}, {"termination-current", "1"}, {"precharge-current", "1"}};
    for (auto const& entry : builtIn().derived()) {
        std::string unknown;
        auto const formula = quantity::Formula::parse(entry.expression);
        auto const result = formula->evaluate([&](std::string_view name) -> quantity::Operand {
            std::string unit;
            if (auto const known = units.find(name); known != units.end()) unit = known->second;
            else if (auto const own = printed.find(name); own != printed.end()) unit = own->second;
            else if (auto const* parameter = builtIn().find(name, entry.family)) unit = parameter->unit;
            auto const dimension = quantity::dimensionOf(unit);
            if (!dimension) unknown += std::string(name) + " ";
            return {quantity::exactly(quantity::Decimal(2)), dimension ? dimension->dimension : quantity::Dimension{}};
        });
        EXPECT_EQ(unknown, "") << entry.id;
        EXPECT_EQ(result.refused, "") << entry.id;
        EXPECT_EQ(result.dimension, quantity::dimensionOf(entry.unit)->dimension) << entry.id;
    }
}

Circuit circuitWith(std::string const& members) { return *parseCircuit(R"({"schema": "standin.circuit/1", "name": "a board", )" + members + "}"); }

WorkedOut workedOut(std::string_view id, model::Datasheet const& sheet, Surroundings const& around) {
    auto const all = builtIn().derived();
    auto const entry = std::find_if(all.begin(), all.end(), [id](auto const& one) { return one.id == id; });
    StatedValues const values(sheet, "", builtIn());
    return workOut(*entry, values, around, scopeFor(*entry, values));
}

std::string textOf(WorkedOut const& result, char const* unit) {
    auto const value = shown(result, unit);
    auto const one = [](std::string const& bound) { return bound.empty() ? std::string("?") : bound; };
    return one(value.min) + " " + one(value.typ) + " " + one(value.max);
}

TEST(WorkOut, TripCurrentOfTheTextbook) {
    auto const sheet = sheetOf(protectorRows());
    auto const circuit = circuitWith(R"("fet_on_resistance": {"min": "32 mΩ", "typ": "40 mΩ", "max": "50 mΩ"}, "link_resistance": {"min": "0 Ω", "typ": "0 Ω", "max": "0 Ω"})");
    auto const result = workedOut("discharge-trip-current", sheet, {.circuit = &circuit});
    EXPECT_EQ(textOf(result, "A"), "2.5 3.75 5.469");
    ASSERT_EQ(result.inputs.size(), 3U);
    EXPECT_EQ(result.inputs[0].parameter, "p5");
    EXPECT_EQ(result.inputs[1].name, "circuit.fet_on_resistance");
}

TEST(WorkOut, AMissingMinimumLeavesTheLargestCurrentOpen) {
    auto const sheet = sheetOf(protectorRows());
    auto const circuit = circuitWith(R"("fet_on_resistance": {"typ": "40 mΩ", "max": "50 mΩ"}, "link_resistance": "0 Ω")");
    auto const result = workedOut("discharge-trip-current", sheet, {.circuit = &circuit});
    EXPECT_EQ(textOf(result, "A"), "? 3.75 ?") << "a nominal link promises no limits either";
    EXPECT_NE(std::find(result.missing.begin(), result.missing.end(), "circuit.fet_on_resistance"), result.missing.end());
}

TEST(WorkOut, OverAShunt) {
    auto const sheet = sheetOf({{"discharge-overcurrent-1-voltage", "0.018", "0.020", "0.022"}});
    auto const circuit = circuitWith(R"("sense_resistor": "5 mΩ ±1 %")");
    EXPECT_EQ(textOf(workedOut("discharge-trip-current", sheet, {.circuit = &circuit}), "A"), "3.564 4 4.445");
}

TEST(WorkOut, HysteresisIsAnOuterBoundInOneScope) {
    auto const sheet = sheetOf(protectorRows());
    auto const result = workedOut("overcharge-hysteresis-computed", sheet, {});
    EXPECT_EQ(textOf(result, "V"), "0.125 0.2 0.275") << "both at 25 °C, though the detection is printed over temperature too";
    EXPECT_NE(std::find(result.notes.begin(), result.notes.end(), texts::scopeNote(false)), result.notes.end());
}

// Detection of one version and release of another are no hysteresis of a part.
TEST(WorkOut, NothingAcrossVersions) {
    auto sheet = sheetOf({{"overcharge-detect-voltage", "4.255", "4.280", "4.305", "V", "", "XQ20A"}, {"overcharge-release-voltage", "4.030", "4.080", "4.130", "V", "", "XQ20B"}});
    EXPECT_FALSE(workedOut("overcharge-hysteresis-computed", sheet, {}).computed());
    sheet.parameters[1].variant = "XQ20A";
    EXPECT_EQ(textOf(workedOut("overcharge-hysteresis-computed", sheet, {}), "V"), "0.125 0.2 0.275");
    sheet.parameters[1].variant.clear();
    EXPECT_EQ(textOf(workedOut("overcharge-hysteresis-computed", sheet, {}), "V"), "0.125 0.2 0.275");
}

// A table for each version, and no title that names it.
TEST(WorkOut, NothingAcrossTablesOfUnnamedVersions) {
    auto sheet = sheetOf({{"overcharge-detect-voltage", "4.255", "4.280", "4.305"},
                          {"overcharge-release-voltage", "4.030", "4.080", "4.130"},
                          {"overcharge-detect-voltage", "4.355", "4.380", "4.405"},
                          {"overcharge-release-voltage", "4.130", "4.180", "4.230"}});
    for (std::size_t i = 0; i < 4; ++i) sheet.parameters[i].table = i < 2 ? "t1" : "t2";
    EXPECT_FALSE(workedOut("overcharge-hysteresis-computed", sheet, {}).computed());
    for (std::size_t i = 2; i < 4; ++i) sheet.parameters[i].interval = sheet.parameters[i - 2].interval;
    EXPECT_EQ(textOf(workedOut("overcharge-hysteresis-computed", sheet, {}), "V"), "0.125 0.2 0.275") << "printed twice";
}

TEST(WorkOut, MonthsInStorage) {
    auto const sheet = sheetOf({{"supply-current-power-down", "", "", "0.000003", "A"}});
    auto const cell = *parseCellProfile(R"({"schema": "standin.cell/1", "capacity": "500 mAh", "residual_capacity": "25 mAh"})");
    auto const result = workedOut("storage-time-after-cut-off", sheet, {.cell = &cell});
    EXPECT_EQ(textOf(result, "month"), "11.4 ? ?");
    EXPECT_NE(std::find(result.notes.begin(), result.notes.end(), texts::notGiven("circuit.other_drain_current")), result.notes.end());
}

TEST(WorkOut, NothingWithoutTheCircuit) {
    auto const sheet = sheetOf(protectorRows());
    EXPECT_FALSE(workedOut("discharge-trip-current", sheet, {}).computed());
}

model::Comparison compared(std::vector<StatedRow> const& reference, std::vector<StatedRow> const& candidate, std::optional<Circuit> circuit = {}) {
    auto const named = [](std::vector<StatedRow> const& rows) {
        auto sheet = sheetOf(rows);
        for (auto& row : sheet.parameters) {
            if (auto const* entry = builtIn().find(row.canonical, "lithium-protection")) row.name = entry->title;
            row.printed = row.name + " " + printedValues(row);
        }
        return sheet;
    };
    CompareOptions options;
    options.circuit = std::move(circuit);
    return *compareDatasheets(named(reference), named(candidate), options, builtIn());
}

std::vector<Finding> derivedFindings(model::Comparison const& comparison) {
    std::vector<Finding> found;
    for (auto const& finding : comparison.findings) {
        if (finding.kind == FindingKind::Derived) found.push_back(finding);
    }
    return found;
}

TEST(Derived, WhatIsAlikeGivesNoFinding) {
    auto const comparison = compared(protectorRows(), protectorRows(), circuitWith(R"("fet_on_resistance": "40 mΩ ±20 %")"));
    EXPECT_TRUE(derivedFindings(comparison).empty());
    EXPECT_FALSE(comparison.derived.empty()) << "it is listed all the same";
    for (auto const& derived : comparison.derived) EXPECT_EQ(derived.relation == model::Relation::Same || derived.relation == model::Relation::TypEqual, true) << derived.canonical;
}

TEST(Derived, HangsUnderTheParameterThatMovesIt) {
    auto rows = protectorRows();
    rows[4] = {"discharge-overcurrent-1-voltage", "0.145", "0.170", "0.195"};
    auto const comparison = compared(protectorRows(), rows, circuitWith(R"("fet_on_resistance": "40 mΩ ±20 %", "link_resistance": "2 mΩ ±1 mΩ")"));
    auto const derived = derivedFindings(comparison);
    ASSERT_EQ(derived.size(), 1U);
    EXPECT_EQ(derived[0].canonical, "discharge-trip-current");
    EXPECT_EQ(derived[0].relation, model::Relation::ReachesHigher);
    auto const cause = std::find_if(comparison.findings.begin(), comparison.findings.end(), [&](auto const& finding) { return finding.id == derived[0].consequenceOf; });
    ASSERT_NE(cause, comparison.findings.end());
    EXPECT_EQ(cause->canonical, "discharge-overcurrent-1-voltage");
    EXPECT_LE(derived[0].severity, cause->severity);
    EXPECT_EQ(derived[0].caution, "C-OI");
    EXPECT_NE(derived[0].explanation.find("I = V_det / R"), std::string::npos) << derived[0].explanation;
    EXPECT_EQ(derived[0].id.size(), 12U);
}

TEST(Derived, ExchangeMirrorsIt) {
    auto rows = protectorRows();
    rows[2] = {"overcharge-release-voltage", "4.00", "4.10", "4.16"};
    auto const there = compared(protectorRows(), rows);
    auto const back = compared(rows, protectorRows());
    ASSERT_EQ(there.derived.size(), back.derived.size());
    bool any = false;
    for (std::size_t i = 0; i < there.derived.size(); ++i) {
        EXPECT_EQ(there.derived[i].relation, model::mirrored(back.derived[i].relation)) << there.derived[i].canonical;
        any = any || there.derived[i].relation == model::Relation::Wider;
    }
    EXPECT_TRUE(any);
}

TEST(Derived, PossibleChatterIsSaid) {
    auto rows = protectorRows();
    rows[2] = {"overcharge-release-voltage", "4.15", "4.20", "4.26"};
    auto const derived = derivedFindings(compared(protectorRows(), rows));
    ASSERT_EQ(derived.size(), 1U);
    EXPECT_NE(derived[0].explanation.find("possible chatter at full charge"), std::string::npos) << derived[0].explanation;
}

}  // namespace
}  // namespace standin::risk
