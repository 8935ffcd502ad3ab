// A protector of the demo's kind as a plain value, for tests of what is worked
// out and checked.
#pragma once

#include <string>
#include <vector>

#include "model/datasheet.h"

namespace standin::risk {

struct StatedRow {
    char const* canonical;
    char const* lo;  // empty: not stated
    char const* typ;
    char const* hi;
    char const* unit = "V";
    char const* condition = "";
    char const* variant = "";
};

[[nodiscard]] inline model::Parameter parameterOf(StatedRow const& row, std::string id) {
    auto const bound = [](char const* text) { return *text == '\0' ? std::nullopt : std::optional<std::string>(text); };
    auto const value = [](char const* text) { return *text == '\0' ? std::nullopt : std::optional(model::Value{text, text, text, {}}); };
    model::Parameter made;
    made.id = std::move(id);
    made.kind = model::ParameterKind::Characteristic;
    made.name = row.canonical;
    made.canonical = row.canonical;
    made.condition = row.condition;
    made.variant = row.variant;
    made.min = value(row.lo);
    made.typ = value(row.typ);
    made.max = value(row.hi);
    made.unit = row.unit;
    made.page = 3;
    made.interval = model::Interval{.lo = bound(row.lo), .typ = bound(row.typ), .hi = bound(row.hi), .loOpen = false, .hiOpen = false, .unit = row.unit, .relativeTo = {}, .factor = {}};
    return made;
}

[[nodiscard]] inline model::Datasheet sheetOf(std::vector<StatedRow> const& rows) {
    model::Datasheet sheet;
    sheet.document.file = "sheet.pdf";
    sheet.document.pages = 6;
    for (auto const& row : rows) sheet.parameters.push_back(parameterOf(row, "p" + std::to_string(sheet.parameters.size() + 1)));
    return sheet;
}

[[nodiscard]] inline std::vector<StatedRow> protectorRows() {
    return {{"overcharge-detect-voltage", "4.255", "4.280", "4.305"},
            {"overcharge-detect-voltage", "4.245", "4.280", "4.315", "V", "Ta=-20 °C to 60 °C"},
            {"overcharge-release-voltage", "4.030", "4.080", "4.130"},
            {"overdischarge-detect-voltage", "2.730", "2.800", "2.870"},
            {"discharge-overcurrent-1-voltage", "0.125", "0.150", "0.175"},
            {"discharge-overcurrent-1-delay", "0.009", "0.012", "0.015", "s"},
            {"load-short-detect-voltage", "0.400", "0.500", "0.600"},
            {"load-short-delay", "0.000180", "0.000280", "0.000380", "s"},
            {"charge-overcurrent-voltage", "-0.120", "-0.100", "-0.080"},
            {"supply-current-operating", "0.000001", "0.0000022", "0.000004", "A"},
            {"supply-current-power-down", "", "", "0.0000001", "A"}};
}

// The rating of the charger-side pin, relative to the supply: "VDD-28".
[[nodiscard]] inline model::Parameter chargerRating(char const* lowest) {
    auto made = parameterOf({"amr-vm", lowest, "", "0.3"}, "rating");
    made.kind = model::ParameterKind::Rating;
    made.interval->relativeTo = "VDD";
    return made;
}

[[nodiscard]] inline model::Feature featureOf(char const* canonical, char const* state) {
    model::Feature made;
    made.canonical = canonical;
    made.state = state;
    made.page = 1;
    made.text = canonical;
    return made;
}

}  // namespace standin::risk
