// Tested by tests/src/risk/given_values_test.cpp.
#include "risk/cell_profile.h"

#include <array>

namespace standin::risk {

namespace {

using enum MemberKind;

constexpr std::array<Member, 17> kMembers = {{
    {.name = "chemistry", .kind = Word, .meaning = "class of the cell", .example = "\"4.2-v\"", .words = "4.2-v high-voltage lfp lto"},
    {.name = "charge_voltage", .kind = Limit, .unit = "V", .meaning = "charge limit voltage with its tolerance", .example = "\"4.20 V ±50 mV\"", .most = "10"},
    {.name = "protection_max", .kind = Limit, .unit = "V", .meaning = "highest voltage at which the cell maker accepts the cut-off", .example = "\"4.30 V\"", .most = "10"},
    {.name = "second_protection_max", .kind = Limit, .unit = "V", .meaning = "the same for a second, independent protection", .example = "\"4.45 V\"", .most = "10"},
    {.name = "discharge_end", .kind = Limit, .unit = "V", .meaning = "discharge end voltage", .example = "\"2.75 V\"", .most = "10"},
    {.name = "protection_min", .kind = Limit, .unit = "V", .meaning = "lowest voltage at which the cell maker accepts the cut-off", .example = "\"2.40 V\"", .most = "10"},
    {.name = "recharge_min", .kind = Limit, .unit = "V", .meaning = "below it the cell must not be charged again", .example = "\"1.50 V\"", .most = "10"},
    {.name = "charge_current_max", .kind = Limit, .unit = "A", .meaning = "highest continuous charge current", .example = "\"500 mA\""},
    {.name = "fault_charge_current_max", .kind = Limit, .unit = "A", .meaning = "highest charge current that is accepted in a fault", .example = "\"1.0 A\""},
    {.name = "discharge_current_max", .kind = Limit, .unit = "A", .meaning = "highest continuous discharge current", .example = "\"1.0 A\""},
    {.name = "pulse_current_max", .kind = Limit, .unit = "A", .meaning = "highest pulse current", .example = "\"2 A\""},
    {.name = "pulse_time_max", .kind = Limit, .unit = "s", .meaning = "how long the pulse may last", .example = "\"1 s\""},
    {.name = "charge_temperature", .kind = Limit, .unit = "degC", .meaning = "temperatures at which charging is allowed", .example = "\"0 to 45 °C\"", .signedValue = true},
    {.name = "capacity", .kind = Nominal, .unit = "C", .meaning = "capacity", .example = "\"500 mAh\""},
    {.name = "residual_capacity", .kind = Limit, .unit = "C", .meaning = "charge left at the cut-off, or its share of the capacity", .example = "\"5 %\"", .share = "capacity"},
    {.name = "self_discharge_current", .kind = Limit, .unit = "A", .meaning = "the cell's own discharge as a current", .example = "\"14 µA\""},
    {.name = "resistance", .kind = Nominal, .unit = "Ω", .meaning = "direct-current resistance of the cell", .example = "{\"typ\": \"120 mΩ\", \"max\": \"160 mΩ\"}"},
}};

}  // namespace

std::span<Member const> cellMembers() { return kMembers; }

model::Result<CellProfile> parseCellProfile(std::string_view json) {
    auto given = GivenValues::parse(json, "standin.cell/1", kMembers);
    if (!given) return tl::unexpected(given.error());
    return CellProfile{std::move(*given)};
}

}  // namespace standin::risk
