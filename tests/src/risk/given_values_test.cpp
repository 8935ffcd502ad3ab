// Cell profiles and circuits: what users write, and what they are told.
#include "risk/given_values.h"

#include <fstream>
#include <iterator>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "risk/cell_profile.h"
#include "risk/circuit.h"

namespace standin::risk {
namespace {

std::string textOf(GivenValue const* value) {
    if (value == nullptr) return "not given";
    auto const one = [](std::optional<quantity::Decimal> const& bound) { return bound ? bound->toShortString() : std::string("?"); };
    return one(value->limits.lo) + " " + one(value->limits.typ) + " " + one(value->limits.hi) + " " + value->unit;
}

std::string cellValue(std::string const& members, char const* name) {
    auto const cell = parseCellProfile(R"({"schema": "standin.cell/1", )" + members + "}");
    return cell ? textOf(cell->find(name)) : cell.error().message;
}

std::string circuitValue(std::string const& members, char const* name) {
    auto const circuit = parseCircuit(R"({"schema": "standin.circuit/1", )" + members + "}");
    return circuit ? textOf(circuit->find(name)) : circuit.error().message;
}

TEST(GivenValues, FormsOfAValue) {
    EXPECT_EQ(cellValue(R"("protection_max": "4.30 V")", "protection_max"), "4.3 4.3 4.3 V") << "a limit alone holds exactly";
    EXPECT_EQ(cellValue(R"("capacity": "500 mAh")", "capacity"), "? 1800 ? C") << "a nominal value alone promises no limits";
    EXPECT_EQ(cellValue(R"("charge_voltage": "4.20 V ±50 mV")", "charge_voltage"), "4.15 4.2 4.25 V");
    EXPECT_EQ(cellValue(R"("charge_voltage": {"typ": "4.2 V", "max": "4230 mV"})", "charge_voltage"), "? 4.2 4.23 V");
    EXPECT_EQ(cellValue(R"("charge_temperature": "-5 to 45 °C")", "charge_temperature"), "-5 ? 45 degC");
    EXPECT_EQ(cellValue(R"("capacity": {"min": "480 mAh", "typ": "500 mAh"}, "residual_capacity": "5 %")", "residual_capacity"), "86.4 90 ? C");
    EXPECT_EQ(cellValue(R"("residual_capacity": "5 %", "capacity": "500 mAh")", "residual_capacity"), "? 90 ? C") << "whatever the order";
    EXPECT_EQ(circuitValue(R"("sense_resistor": "5 mΩ ±1 %")", "sense_resistor"), "0.00495 0.005 0.00505 Ω");
    EXPECT_EQ(circuitValue(R"("storage_time": "12 months")", "storage_time"), "31557600 31557600 31557600 s");
    EXPECT_EQ(circuitValue(R"("series_cells": 2)", "series_cells"), "2 2 2 1");
    EXPECT_EQ(circuitValue(R"("noise_gain": "11")", "noise_gain"), "? 11 ? 1");
    EXPECT_EQ(circuitValue(R"("temperature_span": "35 K")", "temperature_span"), "35 35 35 K");
    EXPECT_EQ(circuitValue(R"("detection_voltage": "-0.1 V")", "detection_voltage"), "? -0.1 ? V");
}

// A limit that is a thousand times too high would let every check hold.
TEST(GivenValues, SlipsOfThePenAreRefused) {
    EXPECT_EQ(cellValue(R"("protection_max": "4,300 V")", "protection_max"),
              "member \"protection_max\": \"4,300 V\" may be read in two ways; write a decimal point and no other comma; write it like \"4.30 V\"");
    EXPECT_EQ(cellValue(R"("protection_max": "4,30 V")", "protection_max"), "4.3 4.3 4.3 V") << "can be read in one way";
    EXPECT_EQ(cellValue(R"("recharge_min": "0,300 V")", "recharge_min"), "0.3 0.3 0.3 V") << "no thousands begin with 0";
    EXPECT_EQ(cellValue(R"("protection_max": "4.3 kV")", "protection_max"), "member \"protection_max\": \"4.3 kV\" is more than a single cell has; write it like \"4.30 V\"");
    EXPECT_EQ(cellValue(R"("charge_voltage": {"typ": "4.2 V", "max": "43 V"})", "charge_voltage"),
              "member \"charge_voltage\": \"43 V\" is more than a single cell has; write it like \"4.20 V ±50 mV\"");
    EXPECT_EQ(cellValue(R"("protection_max": "4.3 V", "protection_max": "4.5 V")", "protection_max"), "has the member \"protection_max\" twice in one place; keep one");
    EXPECT_EQ(cellValue(R"("resistance": {"max": "90 mΩ", "max": "160 mΩ"})", "resistance"), "has the member \"max\" twice in one place; keep one");
    EXPECT_EQ(circuitValue(R"("charger_open_voltage": "14 V", "fet_on_resistance": {"min": "3 mΩ", "max": "5 mΩ"}, "sense_resistor": {"max": "5 mΩ"})", "charger_open_voltage"),
              "14 14 14 V");
}

TEST(GivenValues, EveryExampleCanBeRead) {
    for (auto const& member : cellMembers()) {
        std::string const members = "\"" + std::string(member.name) + "\": " + std::string(member.example) + (member.share.empty() ? "" : R"(, "capacity": "1 Ah")");
        auto const cell = parseCellProfile(R"({"schema": "standin.cell/1", )" + members + "}");
        EXPECT_TRUE(cell) << members << ": " << (cell ? "" : cell.error().message);
    }
    for (auto const& member : circuitMembers()) {
        std::string const members = "\"" + std::string(member.name) + "\": " + std::string(member.example);
        auto const circuit = parseCircuit(R"({"schema": "standin.circuit/1", )" + members + "}");
        EXPECT_TRUE(circuit) << members << ": " << (circuit ? "" : circuit.error().message);
        EXPECT_TRUE(quantity::dimensionOf(member.unit)) << member.name;
    }
}

TEST(GivenValues, TheSchemasListTheMembers) {
    auto const expectListed = [](char const* schema, std::span<Member const> members) {
        std::ifstream file(std::string(STANDIN_SOURCE) + "/src/report/schemas/" + schema, std::ios::binary);
        auto const properties = nlohmann::json::parse(file).at("properties");
        EXPECT_EQ(properties.size(), members.size() + 2) << "and \"schema\" and \"name\"";
        for (auto const& member : members) EXPECT_TRUE(properties.contains(std::string(member.name))) << member.name;
    };
    expectListed("standin.cell.1.schema.json", cellMembers());
    expectListed("standin.circuit.1.schema.json", circuitMembers());
}

struct Fault {
    char const* members;
    char const* said;
};

TEST(GivenValues, FaultsNameTheMember) {
    constexpr Fault kFaults[] = {
        {R"("protecton_max": "4.30 V")", "unknown member \"protecton_max\"; did you mean \"protection_max\"?"},
        {R"("colour": "blue")", "unknown member \"colour\"; known are \"name\", \"chemistry\""},
        {R"("protection_max": "4.30")", "\"protection_max\": \"4.30\" has no unit; write it like \"4.30 V\""},
        {R"("protection_max": "4.30 A")", "has a unit that does not fit"},
        {R"("protection_max": "high")", "is no value that can be read"},
        {R"("protection_max": "VDD+0.3 V")", "is no value that can be read"},
        {R"("protection_max": 4.3)", "is no text with a unit"},
        {R"("protection_max": {})", "is no text with a unit"},
        {R"("protection_max": {"most": "4.3 V"})", "min, typ and max only"},
        {R"("protection_max": {"min": "4.3 V", "max": "4.2 V"})", "is not in ascending order"},
        {R"("protection_max": "-4.3 V")", "lies below zero"},
        {R"("residual_capacity": "5 %")", "is a percentage of \"capacity\", which is not given"},
        {R"("chemistry": "zinc")", "\"zinc\" is none of: 4.2-v high-voltage lfp lto"},
        {R"("name": 3)", "\"name\" must be a text"},
    };
    for (auto const& fault : kFaults) {
        auto const cell = parseCellProfile(std::string(R"({"schema": "standin.cell/1", )") + fault.members + "}");
        ASSERT_FALSE(cell) << fault.members;
        EXPECT_EQ(cell.error().kind, model::ErrorKind::Usage);
        EXPECT_NE(cell.error().message.find(fault.said), std::string::npos) << cell.error().message;
    }
    EXPECT_NE(circuitValue(R"("series_cells": 0)", "series_cells").find("is no whole number from 1"), std::string::npos);
    EXPECT_NE(circuitValue(R"("series_cells": "2")", "series_cells").find("is no whole number from 1"), std::string::npos);
}

TEST(GivenValues, OtherFilesAreRefused) {
    EXPECT_FALSE(parseCellProfile("{"));
    EXPECT_FALSE(parseCellProfile("[]"));
    EXPECT_FALSE(parseCellProfile("{}"));
    EXPECT_FALSE(parseCellProfile(R"({"schema": "standin.circuit/1"})"));
    EXPECT_FALSE(parseCellProfile(std::string(100000, '[')));
    EXPECT_TRUE(parseCellProfile(R"({"schema": "standin.cell/1"})"));
}

TEST(GivenValues, TheExamplesOfTheDemoAreRead) {
    auto const contentOf = [](char const* name) {
        std::ifstream file(std::string(STANDIN_TESTDATA) + "/protection/" + name, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(file), {});
    };
    auto const cell = parseCellProfile(contentOf("cell.json"));
    ASSERT_TRUE(cell) << cell.error().message;
    EXPECT_EQ(cell->word("chemistry"), "4.2-v");
    auto const circuit = parseCircuit(contentOf("circuit.json"));
    ASSERT_TRUE(circuit) << circuit.error().message;
    EXPECT_EQ(textOf(circuit->find("link_resistance")), "0.001 0.002 0.003 Ω");
}

}  // namespace
}  // namespace standin::risk
