// Each check sets the worst of what the sheet states against the worst of what is
// given. The currents come from the derived quantities of the vocabulary.
// Tested by tests/src/risk/cell_checks_test.cpp.
#include "risk/cell_checks.h"

#include <algorithm>
#include <array>
#include <optional>

#include <fmt/format.h>

#include "risk/cell_texts.h"
#include "risk/check_workings.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

using model::Severity;
using quantity::Decimal;
using quantity::Limits;

constexpr std::array<CheckEntry, 17> kEntries = {{
    {"overcharge-upper", "Overcharge cut-off against the cell's highest voltage", "overcharge-detect-voltage", Severity::Hazard, "C-OC", "the cell may be charged beyond what its maker accepts, even with a protector that works"},
    {"overcharge-nuisance", "Overcharge cut-off above the charger's voltage", "overcharge-detect-voltage", Severity::Function, "C-OC", "charging may be cut before the cell is full"},
    {"class-match", "Overcharge cut-off fits the class of the cell", "overcharge-detect-voltage", Severity::Hazard, "C-CELL", "the thresholds belong to another cell class"},
    {"overcharge-release", "Overcharge release below the cut-off and near the charge voltage", "overcharge-release-voltage", Severity::Function, "C-OCR", "on and off cycling at full charge, or a pack that seems dead to the charger"},
    {"overdischarge-lower", "Overdischarge cut-off against the cell's lowest voltage", "overdischarge-detect-voltage", Severity::Hazard, "C-OD", "the cell may be discharged deeper than its maker accepts"},
    {"overdischarge-nuisance", "Overdischarge cut-off below the system's own", "overdischarge-detect-voltage", Severity::Function, "C-OD", "the protection may act before the system shuts down by itself"},
    {"zero-volt-inhibit", "No charging of a cell below its recharge limit", "zero-volt-charging", Severity::Hazard, "C-0V", "a deeply discharged, possibly damaged cell may be charged"},
    {"discharge-trip-high", "Discharge trip current against what the cell allows", "discharge-overcurrent-1-voltage", Severity::Hazard, "C-OI", "cell, FETs and wires may carry more current than the cell allows"},
    {"discharge-trip-low", "Discharge trip current above the load's peak", "discharge-overcurrent-1-voltage", Severity::Function, "C-OI", "it may trip on a normal peak of the load"},
    {"charge-trip", "Charge trip current between the charger and what the cell allows", "charge-overcurrent-voltage", Severity::Hazard, "C-CI", "a fault of the charger may pass, or the normal charger may trip it"},
    {"short-detectable", "A dead short reaches the short-circuit threshold", "load-short-detect-voltage", Severity::Hazard, "C-SC", "a dead short may be met only by the overcurrent level with its longer delay"},
    {"short-energy", "Energy of a short against what the FETs stand", "load-short-delay", Severity::Hazard, "C-SC", "the FETs may be destroyed before cut-off, and may fail conducting"},
    {"charge-temperature-window", "Charging only within the cell's temperatures", "overtemperature-function", Severity::Hazard, "C-TEMP", "the cell may be charged when too hot or too cold"},
    {"drain", "Storage time after cut-off", "supply-current-power-down", Severity::Margin, "C-DRN", "the cell may fall below its recharge limit in storage"},
    {"charger-withstand", "Charger-side rating against the charger", "amr-vm", Severity::Hazard, "C-CHG", "the protector may be damaged by the charger and then protect no longer"},
    {"series-count", "Thresholds for the number of cells in series", "series-cell-count", Severity::Hazard, "C-CELL", "a cell may be left without protection"},
    {"parallel-cells", "Trip currents shared by cells in parallel", "discharge-overcurrent-1-voltage", Severity::Function, "C-OI", "each of the parallel cells may carry more than it allows"},
}};

constexpr std::string_view kNoVersion = "stated for several versions, none of which was selected";

Decimal decimal(std::string_view text) { return Decimal::parse(text).value_or(Decimal(0)); }

class Checking : private CheckWorkings {
public:
    using CheckWorkings::CheckWorkings;

    std::vector<PartCheck> run() {
        using Check = PartCheck (Checking::*)();
        constexpr std::array<Check, kEntries.size()> kChecks = {
            &Checking::overchargeUpper, &Checking::overchargeNuisance, &Checking::classMatch, &Checking::overchargeRelease, &Checking::overdischargeLower,
            &Checking::overdischargeNuisance, &Checking::zeroVoltInhibit, &Checking::dischargeTripHigh, &Checking::dischargeTripLow, &Checking::chargeTrip,
            &Checking::shortDetectable, &Checking::shortEnergy, &Checking::chargeTemperature, &Checking::drain, &Checking::chargerWithstand,
            &Checking::seriesCount, &Checking::parallelCells};
        std::vector<PartCheck> results;
        for (auto const check : kChecks) {
            m_limit.clear();
            m_bounds.reset();
            m_inputs.clear();
            results.push_back((this->*check)());
            results.back().limit = m_limit;
            results.back().bounds = m_bounds;
            results.back().result.inputs = m_inputs;
            doubtRecognised(results.back());
        }
        return results;
    }

private:
    // --- The checks, in order; what they are made of: check_workings.h. ---

    PartCheck overchargeUpper() {
        auto const limit = given("cell.protection_max", &Limits::hi);
        if (!limit) return open(MissingIn::Files, m_open);
        m_limit = "cut off at no more than " + texts::lower(*limit, "V");
        keepTo("voltage of the cell at the overcharge cut-off", {}, {limit}, "V");
        auto const detection = stated("overcharge-detect-voltage");
        if (detection.limits.empty()) return notInSheet("overcharge detection voltage", detection.why);
        if (!detection.limits.hi) {
            auto const least = detection.limits.lo ? detection.limits.lo : detection.limits.typ;
            std::string const value = texts::range(detection.limits, "V");
            if (*least > *limit) return violated(value, "above the limit by " + by(*least - *limit, "V"), 4);
            return notInSheet("the highest overcharge detection voltage", "not stated");
        }
        Limits effective = detection.limits;
        MissingIn unknownDrop = MissingIn::Nothing;
        std::string how = detection.overTemperature ? "over temperature" : "stated at 25 °C only";
        if (auto const* resistor = m_around.find("circuit.supply_resistor")) {
            auto const supply = stated("supply-current-operating");
            auto const drop = quantity::multiply(supply.limits, resistor->limits);
            addInput({.name = "circuit.supply_resistor", .parameter = {}, .page = 0, .box = {}, .text = resistor->text});
            if (drop.hi) effective = quantity::add(effective, drop);
            how += drop.hi ? ", with the drop across the supply resistor" : ", without the drop across the supply resistor";
            if (!drop.hi) unknownDrop = !resistor->limits.hi ? MissingIn::Files : MissingIn::Sheet;
        }
        std::string value = fmt::format("{} ({})", "at most " + texts::upper(*effective.hi, "V"), how);
        if (*effective.hi > *limit) return violated(value, "above the limit by " + by(*effective.hi - *limit, "V"), 4);
        if (unknownDrop == MissingIn::Files) return open(MissingIn::Files, texts::givesNo("circuit", "supply_resistor", "maximum"), std::move(value));
        if (!detection.overTemperature)
            return open(MissingIn::Sheet, "the highest detection voltage is stated at 25 °C only, and the cell is protected at other temperatures too", std::move(value));
        if (unknownDrop == MissingIn::Sheet)
            return open(MissingIn::Sheet, "the highest supply current, which sets the drop across the supply resistor, is not stated", std::move(value));
        return holds(std::move(value));
    }

    PartCheck overchargeNuisance() {
        bool const charger = isGiven("circuit.charger_float_voltage");
        auto const top = given(charger ? "circuit.charger_float_voltage" : "cell.charge_voltage", &Limits::hi);
        if (!top) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("cut off above {} ({})", texts::upper(*top, "V"), charger ? "the charger's highest voltage" : "the charge voltage with its tolerance");
        keepTo("voltage of the cell at the overcharge cut-off", {top, Edge::Fails}, {}, "V");
        auto const detection = stated("overcharge-detect-voltage");
        if (!detection.limits.lo) return notInSheet("the lowest overcharge detection voltage", detection.why.empty() ? "not stated" : detection.why);
        std::string const value = "at least " + texts::lower(*detection.limits.lo, "V");
        if (*detection.limits.lo <= *top) return violated(value, "reached by the charger, short by " + by(*top - *detection.limits.lo, "V"), 2);
        return holds(value);
    }

    PartCheck classMatch() {
        std::string const chemistry = m_around.cell->word("chemistry");
        bool const byVersion = m_values.differsByVersion("chemistry-option");
        auto const* option = byVersion ? nullptr : m_values.feature("chemistry-option");
        if (option != nullptr && !chemistry.empty() && option->state != chemistry) {
            m_limit = "a part for the class " + chemistry;
            m_inputs.push_back({.name = "chemistry-option", .parameter = {}, .page = option->page, .box = option->box, .text = option->text});
            return violated("made for the class " + option->state, "another class than the cell's", 4);
        }
        auto const charge = given("cell.charge_voltage", &Limits::typ);
        if (!charge) return open(MissingIn::Files, m_open);
        Decimal const most = decimal(chemistry == "lfp" ? "0.30" : "0.20");
        m_limit = fmt::format("a typical cut-off up to {} above the charge voltage of {}", texts::lower(most, "V"), texts::lower(*charge, "V"));
        auto const detection = m_values.find("overcharge-detect-voltage", Scope::Room);
        for (auto const& input : detection.inputs) addInput(input);
        auto typical = detection.limits.typ;
        if (!typical && detection.limits.lo && detection.limits.hi) typical = (*detection.limits.lo + *detection.limits.hi) * decimal("0.5");
        if (!typical) return notInSheet("the typical overcharge detection voltage", detection.why.empty() ? "not stated" : detection.why);
        std::string const value = texts::range({.lo = {}, .typ = typical, .hi = {}}, "V");
        Decimal const above = *typical - *charge;
        if (above.sign() < 0) return violated(value, "below the charge voltage by " + by(above, "V") + ": another class is suspected", 4);
        if (above > most) return violated(value, "above the charge voltage by " + by(above, "V") + ": another class is suspected", 4);
        return holds(value);
    }

    PartCheck overchargeRelease() {
        auto const charge = given("cell.charge_voltage", &Limits::typ);
        if (!charge) return open(MissingIn::Files, m_open);
        Decimal const least = *charge - decimal("0.35");
        m_limit = fmt::format("release below the cut-off, and at {} or above", texts::lower(least, "V"));
        auto const detection = m_values.find("overcharge-detect-voltage", Scope::Room);
        auto const release = m_values.find("overcharge-release-voltage", Scope::Room);
        keepTo("voltage of the cell at which charging is permitted again", {least}, release.limits.empty() ? BenchBound{} : BenchBound{detection.limits.lo, Edge::Fails}, "V");
        for (auto const* one : {&detection, &release}) {
            for (auto const& input : one->inputs) addInput(input);
        }
        Limits limits = release.limits;
        if (limits.empty()) limits = derived("overcharge-release-computed").limits;
        if (!limits.lo || !limits.hi) return notInSheet("the overcharge release voltage with its limits", release.why.empty() || release.limits.limited() ? "not stated" : release.why);
        if (!detection.limits.lo) return notInSheet("the lowest overcharge detection voltage", detection.why.empty() ? "not stated" : detection.why);
        std::string const value = texts::range(limits, "V");
        bool const ofTwo = !release.version.empty() && !detection.version.empty() && release.version != detection.version;
        if (ofTwo) return notInSheet("the overcharge release voltage", "stated for another version than the detection");
        if (!release.limits.empty() && *limits.hi >= *detection.limits.lo) return violated(value, "may reach the lowest cut-off of " + texts::lower(*detection.limits.lo, "V"), 2);
        if (*limits.lo < least) return violated(value, "lower than " + texts::lower(least, "V"), 2);
        return holds(value);
    }

    PartCheck overdischargeLower() {
        bool const accepted = isGiven("cell.protection_min");
        auto const limit = given(accepted ? "cell.protection_min" : "cell.discharge_end", &Limits::lo);
        if (!limit) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("cut off at {} or above ({})", texts::upper(*limit, "V"), accepted ? "the lowest that the cell maker accepts" : "the discharge end voltage");
        keepTo("voltage of the cell at the overdischarge cut-off", {limit}, {}, "V");
        auto const detection = stated("overdischarge-detect-voltage");
        if (detection.limits.empty()) return notInSheet("overdischarge detection voltage", detection.why);
        std::string const value = texts::range(detection.limits, "V");
        auto const low = detection.limits.lo;
        if (!low) {
            auto const most = detection.limits.hi ? detection.limits.hi : detection.limits.typ;
            if (*most < *limit) return violated(value, "below the limit by " + by(*limit - *most, "V"), accepted ? 4 : 3);
            return notInSheet("the lowest overdischarge detection voltage", "not stated");
        }
        if (*low < *limit) return violated("at least " + texts::lower(*low, "V"), "below the limit by " + by(*limit - *low, "V"), accepted ? 4 : 3);
        return holds("at least " + texts::lower(*low, "V"));
    }

    PartCheck overdischargeNuisance() {
        auto limit = given("circuit.system_cutoff_voltage", &Limits::lo);
        if (!limit) return open(MissingIn::Files, m_open);
        std::string_view whose = "the system's lowest cut-off";
        if (isGiven("circuit.cell_voltage_at_peak")) {
            auto const peak = given("circuit.cell_voltage_at_peak", &Limits::lo);
            if (peak && *peak < *limit) {
                limit = peak;
                whose = "the cell at the peak of the load, cold";
            }
        }
        m_limit = fmt::format("cut off below {} ({})", texts::lower(*limit, "V"), whose);
        keepTo("voltage of the cell at the overdischarge cut-off", {}, {limit, Edge::Fails}, "V");
        auto const detection = stated("overdischarge-detect-voltage");
        if (!detection.limits.hi) return notInSheet("the highest overdischarge detection voltage", detection.why.empty() ? "not stated" : detection.why);
        std::string const value = "at most " + texts::upper(*detection.limits.hi, "V");
        if (*detection.limits.hi >= *limit) return violated(value, "not below it, by " + by(*detection.limits.hi - *limit, "V"), 2);
        return holds(value);
    }

    PartCheck zeroVoltInhibit() {
        auto const limit = given("cell.recharge_min", &Limits::hi);
        if (!limit) return open(MissingIn::Files, m_open);
        m_limit = "no charging below " + texts::upper(*limit, "V");
        keepTo("lowest voltage of the cell at which charging current flows", {limit}, {}, "V");
        if (m_values.differsByVersion("zero-volt-charging")) return notInSheet("what happens to a 0 V cell", kNoVersion);
        auto const* mode = m_values.feature("zero-volt-charging", "allowed");
        if (mode != nullptr) m_inputs.push_back({.name = "zero-volt-charging", .parameter = {}, .page = mode->page, .box = mode->box, .text = mode->text});
        if (mode != nullptr && mode->state == "allowed") return violated("charging of a 0 V cell is allowed", "charging below the recharge limit is allowed", 4);
        auto const level = stated("zero-volt-charge-inhibit-voltage");
        if (level.limits.lo) {
            std::string const value = "inhibited below " + texts::range(level.limits, "V");
            if (*level.limits.lo < *limit) return violated(value, "charging may begin below the recharge limit by " + by(*limit - *level.limits.lo, "V"), 3);
            return holds(value);
        }
        if (mode == nullptr && level.limits.empty()) return notInSheet("what happens to a 0 V cell", "not stated");
        return open(MissingIn::Sheet, "the cell voltage below which charging is inhibited is not stated", "charging of a 0 V cell is inhibited");
    }

    // For one cell; the delay decides between pulse and continuous current.
    Bound allowedDischarge(std::string& words) {
        auto const delay = stated("discharge-overcurrent-1-delay");
        auto const time = isGiven("cell.pulse_time_max") ? given("cell.pulse_time_max", &Limits::hi) : std::nullopt;
        bool const pulse = time && delay.limits.hi && *delay.limits.hi <= *time && isGiven("cell.pulse_current_max");
        auto const limit = given(pulse ? "cell.pulse_current_max" : "cell.discharge_current_max", &Limits::hi);
        if (limit) words = pulse ? fmt::format("the cell's pulse limit, for a delay of at most {}", texts::upper(*delay.limits.hi, "s")) : std::string("the cell's continuous limit");
        return limit;
    }

    Decimal parallel() {
        auto const* cells = m_around.find("circuit.parallel_cells");
        return cells == nullptr ? Decimal(1) : *cells->limits.hi;
    }

    PartCheck dischargeTripHigh() {
        std::string words;
        auto const one = allowedDischarge(words);
        if (!one) return open(MissingIn::Files, m_open);
        Decimal const limit = *one * parallel();
        m_limit = fmt::format("trip at no more than {} ({})", texts::lower(limit, "A"), words);
        keepTo("current at which discharging is cut off", {}, {limit}, "A");
        auto const current = derived("discharge-trip-current");
        std::string const value = texts::range(current.limits, "A");
        if (current.limits.lo && *current.limits.lo > limit) return violated(value, "every device lies above the limit", 4);
        if (!current.limits.hi) return openFor(current, "the highest trip current", value);
        if (*current.limits.hi > limit) return violated(value, "above the limit by up to " + by(*current.limits.hi - limit, "A"), 3);
        return holds(value);
    }

    PartCheck dischargeTripLow() {
        auto const peak = given("circuit.load_peak_current", &Limits::hi);
        if (!peak) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("trip above the load's peak of {}", texts::upper(*peak, "A"));
        keepTo("current at which discharging is cut off", {peak, Edge::Fails}, {}, "A");
        auto const current = derived("discharge-trip-current");
        std::string const value = texts::range(current.limits, "A");
        if (!current.limits.lo) return openFor(current, "the lowest trip current", value);
        if (*current.limits.lo <= *peak) return violated(value, "reached by the load's peak, short by " + by(*peak - *current.limits.lo, "A"), 2);
        return holds(value);
    }

    PartCheck chargeTrip() {
        auto const fault = given(isGiven("cell.fault_charge_current_max") ? "cell.fault_charge_current_max" : "cell.charge_current_max", &Limits::hi);
        if (!fault) return open(MissingIn::Files, m_open);
        Decimal const limit = *fault * parallel();
        auto const charger = given("circuit.charger_current", &Limits::hi);
        std::string const chargerOpen = charger ? std::string() : m_open;
        m_limit = fmt::format("trip at no more than {}", texts::lower(limit, "A"));
        if (charger) m_limit += fmt::format(", and above the charger's {}", texts::upper(*charger, "A"));
        keepTo("current at which charging is cut off", {charger, Edge::Fails}, {limit}, "A");
        auto const current = derived("charge-trip-current-computed");
        std::string const value = texts::range(current.limits, "A");
        if (current.limits.lo && *current.limits.lo > limit) return violated(value, "every device lies above what the cell allows", 3);
        if (current.limits.hi && *current.limits.hi > limit) return violated(value, "above what the cell allows by up to " + by(*current.limits.hi - limit, "A"), 3);
        if (charger && current.limits.lo && *current.limits.lo <= *charger) return violated(value, "reached by the charger, short by " + by(*charger - *current.limits.lo, "A"), 2);
        if (current.limits.empty() || !current.limits.hi || !current.limits.lo) return openFor(current, "the charge trip current", value);
        if (!charger) return open(MissingIn::Files, chargerOpen, value);
        return holds(value);
    }

    // The lowest voltage between the sense points in a dead short.
    PartCheck shortDetectable() {
        auto const voltage = given("cell.discharge_end", &Limits::lo);
        if (!voltage) return open(MissingIn::Files, m_open);
        auto const cell = given("cell.resistance", &Limits::hi);
        if (!cell) return open(MissingIn::Files, m_open);
        bool const shunt = isGiven("circuit.sense_resistor");
        auto const fets = isGiven("circuit.fet_on_resistance") ? m_around.find("circuit.fet_on_resistance")->limits : stated("fet-on-resistance").limits;
        auto const path = shunt ? given("circuit.sense_resistor", &Limits::lo) : fets.lo;
        if (!path) return open(MissingIn::Files, shunt ? m_open : texts::givesNo("circuit", "fet_on_resistance", isGiven("circuit.fet_on_resistance") ? "minimum" : ""));
        // The FETs of a shunt-sensed path take their share of the voltage.
        if (shunt && !fets.hi) return open(MissingIn::Files, texts::givesNo("circuit", "fet_on_resistance", isGiven("circuit.fet_on_resistance") ? "maximum" : ""));
        Decimal const others = shunt ? *cell + *fets.hi : *cell;
        auto const share = divide(*path, *path + others, 17, quantity::Rounding::Down);
        if (!share) return open(MissingIn::Files, "the sensed path has no resistance");
        Decimal const sensed = *voltage * *share;
        auto const threshold = stated("load-short-detect-voltage");
        if (threshold.limits.empty()) {
            if (m_values.states("load-short-current")) return shortCurrentReached(*voltage, *path + others);
            return notInSheet("load short-circuit detection voltage", threshold.why);
        }
        if (!threshold.limits.hi) return notInSheet("the highest load short-circuit detection voltage", "not stated");
        m_limit = fmt::format("a threshold below {}, what a dead short gives with the cell at {}", texts::lower(sensed, "V"), texts::lower(*voltage, "V"));
        keepTo("voltage between the sense points at which the short-circuit level acts", {}, {sensed, Edge::Fails}, "V");
        std::string const value = "at most " + texts::upper(*threshold.limits.hi, "V");
        if (*threshold.limits.hi >= sensed) return violated(value, "may not be reached in a dead short, by " + by(*threshold.limits.hi - sensed, "V"), 4);
        return holds(value);
    }

    PartCheck shortCurrentReached(Decimal voltage, Decimal resistance) {
        auto const threshold = stated("load-short-current");
        auto const current = divide(voltage, resistance, 17, quantity::Rounding::Down);
        if (!threshold.limits.hi || !current) return notInSheet("the highest load short-circuit current", "not stated");
        m_limit = fmt::format("a threshold below {}, what flows in a dead short with the cell at {}", texts::lower(*current, "A"), texts::lower(voltage, "V"));
        keepTo("current at which the short-circuit level acts", {}, {current, Edge::Fails}, "A");
        std::string const value = "at most " + texts::upper(*threshold.limits.hi, "A");
        if (*threshold.limits.hi >= *current) return violated(value, "may not be reached in a dead short, by " + by(*threshold.limits.hi - *current, "A"), 4);
        return holds(value);
    }

    PartCheck shortEnergy() {
        auto const limit = given("circuit.fet_energy_max", &Limits::lo);
        if (!limit) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("no more than {} in one short", texts::lower(*limit, "J"));
        keepTo("energy that the FETs take in one short", {}, {limit}, "J");
        auto const energy = derived("short-circuit-energy");
        std::string const value = texts::range(energy.limits, "J");
        if (energy.limits.lo && *energy.limits.lo > *limit) return violated(value, "every device lies above it", 3);
        if (!energy.limits.hi) return openFor(energy, "the energy of a short", value);
        if (*energy.limits.hi > *limit) return violated(value, "above it by up to " + by(*energy.limits.hi - *limit, "J"), 3);
        return holds(value);
    }

    PartCheck chargeTemperature() {
        auto const low = given("cell.charge_temperature", &Limits::lo);
        auto const high = given("cell.charge_temperature", &Limits::hi);
        if (!low || !high) return open(MissingIn::Files, m_open);
        m_limit = "charging only from " + texts::range({.lo = low, .typ = {}, .hi = high}, "degC");
        keepTo("temperature of the cell at which charging is permitted", {low}, {high}, "degC");
        if (isGiven("circuit.charge_temperature_control")) {
            auto const least = given("circuit.charge_temperature_control", &Limits::lo);
            auto const most = given("circuit.charge_temperature_control", &Limits::hi);
            if (!least || !most) return open(MissingIn::Files, m_open);
            std::string const value = "another device permits it from " + texts::range({.lo = least, .typ = {}, .hi = most}, "degC");
            if (*least < *low || *most > *high) return violated(value, "wider than the cell's window", 3);
            return holds(value);
        }
        auto const hot = stated("charge-overtemp-detect");
        auto const cold = stated("charge-undertemp-detect");
        if (hot.limits.hi && cold.limits.lo) {
            std::string const value = "stops at " + texts::range({.lo = cold.limits.lo, .typ = {}, .hi = hot.limits.hi}, "degC");
            if (*cold.limits.lo < *low || *hot.limits.hi > *high) return violated(value, "wider than the cell's window", 3);
            return holds(value);
        }
        if (hot.limits.hi && *hot.limits.hi > *high) return violated("stops at up to " + texts::upper(*hot.limits.hi, "degC"), "wider than the cell's window", 3);
        if (cold.limits.lo && *cold.limits.lo < *low) return violated("stops at down to " + texts::lower(*cold.limits.lo, "degC"), "wider than the cell's window", 3);
        return open(MissingIn::Files, "the part states no such limits, and the circuit file names no other device (charge_temperature_control)");
    }

    PartCheck drain() {
        auto const need = given("circuit.storage_time", &Limits::hi);
        if (!need) return open(MissingIn::Files, m_open);
        Decimal const months = divide(*need, quantity::dimensionOf("month")->factor, 17, quantity::Rounding::Up).value_or(Decimal(0));
        m_limit = fmt::format("at least {} in storage after a cut-off", texts::upper(months, "month"));
        auto const time = derived("storage-time-after-cut-off");
        std::string const value = texts::range(time.limits, "month");
        if (!time.limits.lo) return openFor(time, "the storage time", value);
        if (*time.limits.lo < months) return violated(value, "shorter than needed", *time.limits.lo * Decimal(2) < months ? 2 : 1);
        return holds(value);
    }

    PartCheck chargerWithstand() {
        auto const charger = given("circuit.charger_open_voltage", &Limits::hi);
        if (!charger) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("withstand a charger of {} without a battery", texts::upper(*charger, "V"));
        auto const& rows = m_values.rows("amr-vm");
        auto const row = std::find_if(rows.begin(), rows.end(), [](auto const* one) { return one->interval && one->interval->lo; });
        if (row == rows.end()) return notInSheet("the rating of the charger-side pin", "not stated");
        addInput({.name = "amr-vm", .parameter = (*row)->id, .page = (*row)->page, .box = (*row)->box, .text = printedValues(**row)});
        auto const rating = Decimal::parse(*(*row)->interval->lo);
        // With the cell empty the pin lies below the supply by the whole charger voltage, whatever the rating refers to.
        if (!rating || !(*row)->interval->factor.empty() || (*row)->interval->unit != "V") return notInSheet("the rating of the charger-side pin", "printed without a number that could be used");
        Decimal const below = rating->negated();
        std::string value = fmt::format("{} below {}", below.sign() > 0 ? texts::lower(below, "V") : std::string("0 V"), (*row)->interval->relativeTo.empty() ? "the cell's negative" : "the supply pin");
        if (below < *charger) return violated(value, "too little by " + by(*charger - below, "V"), 4);
        return reverseCharger(std::move(value));
    }

    PartCheck reverseCharger(std::string value) {
        if (!isGiven("circuit.charger_reverse_voltage")) return holds(std::move(value));
        auto const* protection = m_values.feature("reverse-charger-protection", "no");
        m_limit += ", and one connected in reverse";
        if (protection == nullptr) return open(MissingIn::Sheet, "what a charger in reverse does is not stated", std::move(value));
        if (protection->state == "no") return violated(std::move(value), "no protection against a charger in reverse", 4);
        return holds(value + "; reversed charger: " + (protection->state == "yes" ? "withstood as stated" : "withstood with its resistor"));
    }

    PartCheck seriesCount() {
        auto const cells = given("circuit.series_cells", &Limits::hi);
        if (!cells) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("thresholds for {} in series", *cells == Decimal(1) ? std::string("one cell") : cells->toShortString() + " cells");
        auto const count = stated("series-cell-count");
        if (!count.limits.empty()) {
            auto const low = count.limits.lo ? count.limits.lo : count.limits.typ;
            auto const high = count.limits.hi ? count.limits.hi : count.limits.typ;
            std::string const value = fmt::format("made for {} cells", low && high && *low != *high ? low->toShortString() + " to " + high->toShortString() : (high ? *high : *low).toShortString());
            if ((low && *cells < *low) || (high && *cells > *high)) return violated(value, "made for another number of cells", 4);
            return holds(value);
        }
        auto const charge = m_around.find("cell.charge_voltage");
        auto const detection = m_values.find("overcharge-detect-voltage", Scope::Room);
        auto const typical = detection.limits.typ ? detection.limits.typ : detection.limits.hi;
        if (!typical || charge == nullptr || !charge->limits.typ) return notInSheet("the number of cells in series", "not stated");
        for (auto const& input : detection.inputs) addInput(input);
        std::string const value = fmt::format("one threshold of {}", texts::range({.lo = {}, .typ = typical, .hi = {}}, "V"));
        // A threshold for several cells together lies a whole cell higher.
        bool const oneCell = *typical < *charge->limits.typ * decimal("1.5");
        if (*cells == Decimal(1) && !oneCell) return violated(value, "too high for one cell", 4);
        if (*cells == Decimal(1)) return holds(value);
        return open(MissingIn::Sheet, "the number of cells in series is not stated", value);
    }

    PartCheck parallelCells() {
        auto const cells = given("circuit.parallel_cells", &Limits::hi);
        if (!cells) return open(MissingIn::Files, m_open);
        if (*cells == Decimal(1)) {
            m_limit = "one cell carries all of the current";
            return holds("see the trip currents above");
        }
        auto const limit = given("cell.discharge_current_max", &Limits::hi);
        if (!limit) return open(MissingIn::Files, m_open);
        m_limit = fmt::format("no more than {} through each of {} cells", texts::lower(*limit, "A"), cells->toShortString());
        keepTo("current through each cell at which discharging is cut off", {}, {limit}, "A");
        auto const current = derived("discharge-trip-current");
        auto const each = divide(current.limits, quantity::exactly(*cells));
        std::string const value = texts::range(each, "A") + (each.empty() ? "" : " through each before it trips");
        if (!each.hi) return openFor(current, "the highest trip current", value);
        if (*each.hi > *limit) return violated(value, "above each cell's continuous limit by up to " + by(*each.hi - *limit, "A"), 2);
        return holds(value);
    }
};

}  // namespace

std::span<CheckEntry const> checkEntries() { return kEntries; }

std::string_view checkedBy(model::CellCheck const& check) {
    auto const entry = std::find_if(kEntries.begin(), kEntries.end(), [&](CheckEntry const& one) { return one.id == check.check; });
    return entry == kEntries.end() ? std::string_view() : entry->canonical;
}

std::vector<PartCheck> checkPart(StatedValues const& values, Surroundings const& around, vocabulary::Vocabulary const& vocabulary) {
    return Checking(values, around, vocabulary).run();
}

}  // namespace standin::risk
