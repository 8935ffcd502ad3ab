// Tested by tests/src/risk/given_values_test.cpp.
#include "risk/circuit.h"

#include <array>

namespace standin::risk {

namespace {

using enum MemberKind;

constexpr std::array<Member, 39> kMembers = {{
    // Of a protected cell.
    {.name = "fet_on_resistance", .kind = Nominal, .unit = "Ω", .meaning = "both FETs of the path in series, over gate drive and temperature", .example = "{\"min\": \"32 mΩ\", \"typ\": \"40 mΩ\", \"max\": \"65 mΩ\"}"},
    {.name = "link_resistance", .kind = Nominal, .unit = "Ω", .meaning = "traces and bonds between the two sense points, FETs left out", .example = "{\"min\": \"1 mΩ\", \"max\": \"3 mΩ\"}"},
    {.name = "sense_resistor", .kind = Nominal, .unit = "Ω", .meaning = "shunt, where the current is sensed on one", .example = "\"5 mΩ ±1 %\""},
    {.name = "supply_resistor", .kind = Nominal, .unit = "Ω", .meaning = "resistor in the supply of the part", .example = "\"330 Ω ±5 %\""},
    {.name = "supply_capacitor", .kind = Nominal, .unit = "F", .meaning = "capacitor at the supply of the part", .example = "\"0.1 µF ±20 %\""},
    {.name = "vm_resistor", .kind = Nominal, .unit = "Ω", .meaning = "resistor at the monitor pin", .example = "\"2.2 kΩ ±5 %\""},
    {.name = "wire_resistance", .kind = Nominal, .unit = "Ω", .meaning = "wires and contacts outside the sensed path", .example = "{\"min\": \"10 mΩ\", \"max\": \"40 mΩ\"}"},
    {.name = "load_current", .kind = Limit, .unit = "A", .meaning = "current in normal use", .example = "{\"typ\": \"80 mA\", \"max\": \"200 mA\"}"},
    {.name = "load_peak_current", .kind = Limit, .unit = "A", .meaning = "highest peak of the load", .example = "\"1.2 A\""},
    {.name = "system_cutoff_voltage", .kind = Limit, .unit = "V", .meaning = "cell voltage at which the system shuts itself down", .example = "{\"min\": \"3.10 V\", \"max\": \"3.20 V\"}"},
    {.name = "charger_float_voltage", .kind = Nominal, .unit = "V", .meaning = "what the charger holds at the cell", .example = "\"4.20 V ±1 %\""},
    {.name = "charger_current", .kind = Limit, .unit = "A", .meaning = "highest current of the charger", .example = "\"300 mA\""},
    {.name = "charger_open_voltage", .kind = Limit, .unit = "V", .meaning = "highest voltage of the charger without a battery, overshoot included", .example = "\"6.5 V\""},
    {.name = "charger_reverse_voltage", .kind = Limit, .unit = "V", .meaning = "magnitude of a charger connected in reverse", .example = "\"6 V\""},
    {.name = "other_drain_current", .kind = Limit, .unit = "A", .meaning = "what else drains the cell in storage", .example = "\"1 µA\""},
    {.name = "storage_time", .kind = Limit, .unit = "s", .meaning = "how long the device must be stored after a cut-off", .example = "\"12 months\""},
    {.name = "fet_energy_max", .kind = Limit, .unit = "J", .meaning = "energy that the FETs stand in one short", .example = "\"150 mJ\""},
    {.name = "charge_temperature_control", .kind = Limit, .unit = "degC", .meaning = "temperatures at which another device permits charging", .example = "\"2 to 43 °C\"", .signedValue = true},
    {.name = "series_cells", .kind = Count, .unit = "1", .meaning = "cells in series", .example = "1"},
    {.name = "parallel_cells", .kind = Count, .unit = "1", .meaning = "cells in parallel", .example = "1"},
    // Of other parts.
    {.name = "program_resistor", .kind = Nominal, .unit = "Ω", .meaning = "resistor that sets the charge current", .example = "\"2.0 kΩ ±1 %\""},
    {.name = "protector_detection_voltage", .kind = Nominal, .unit = "V", .meaning = "overcharge detection of the protector behind a charger", .example = "\"4.28 V ±25 mV\""},
    {.name = "detection_voltage", .kind = Nominal, .unit = "V", .meaning = "overcurrent detection of the protector that senses over a FET", .example = "\"150 mV ±15 mV\"", .signedValue = true},
    {.name = "input_voltage", .kind = Limit, .unit = "V", .meaning = "supply of the part", .example = "{\"min\": \"3.6 V\", \"max\": \"5.25 V\"}"},
    {.name = "output_voltage", .kind = Nominal, .unit = "V", .meaning = "output of a converter", .example = "\"1.8 V ±2 %\""},
    {.name = "feedback_upper_resistor", .kind = Nominal, .unit = "Ω", .meaning = "divider, from the output to the feedback pin", .example = "\"100 kΩ ±1 %\""},
    {.name = "feedback_lower_resistor", .kind = Nominal, .unit = "Ω", .meaning = "divider, from the feedback pin to ground", .example = "\"22.1 kΩ ±1 %\""},
    {.name = "series_resistor", .kind = Nominal, .unit = "Ω", .meaning = "resistor in front of a shunt reference", .example = "\"1.0 kΩ ±1 %\""},
    {.name = "inductance", .kind = Nominal, .unit = "H", .meaning = "inductor of a converter", .example = "\"4.7 µH ±20 %\""},
    {.name = "switching_frequency", .kind = Nominal, .unit = "Hz", .meaning = "frequency at which a FET is switched", .example = "\"100 kHz\""},
    {.name = "gate_voltage", .kind = Nominal, .unit = "V", .meaning = "gate drive of a FET", .example = "\"4.5 V\""},
    {.name = "led_current", .kind = Limit, .unit = "A", .meaning = "current of an optocoupler's LED", .example = "{\"min\": \"4 mA\", \"max\": \"6 mA\"}"},
    {.name = "source_resistance", .kind = Nominal, .unit = "Ω", .meaning = "resistance in front of an amplifier's input", .example = "\"10 kΩ ±1 %\""},
    {.name = "noise_gain", .kind = Nominal, .unit = "1", .meaning = "noise gain of an amplifier stage", .example = "\"11\""},
    {.name = "collector_current", .kind = Limit, .unit = "A", .meaning = "collector current of a transistor that is to saturate", .example = "\"50 mA\""},
    {.name = "ambient_temperature", .kind = Limit, .unit = "degC", .meaning = "ambient of the part in use", .example = "\"-10 to 50 °C\"", .signedValue = true},
    {.name = "temperature_span", .kind = Limit, .unit = "K", .meaning = "largest departure from 25 °C", .example = "\"35 K\""},
    {.name = "thermal_resistance", .kind = Nominal, .unit = "K/W", .meaning = "junction to ambient on this board", .example = "\"180 K/W\""},
    {.name = "cell_voltage_at_peak", .kind = Limit, .unit = "V", .meaning = "lowest cell voltage at the peak of the load, cold", .example = "\"3.0 V\""},
}};

}  // namespace

std::span<Member const> circuitMembers() { return kMembers; }

model::Result<Circuit> parseCircuit(std::string_view json) {
    auto given = GivenValues::parse(json, "standin.circuit/1", kMembers);
    if (!given) return tl::unexpected(given.error());
    return Circuit{std::move(*given)};
}

}  // namespace standin::risk
