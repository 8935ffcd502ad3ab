// Tested by tests/src/risk/derived_test.cpp.
#include "risk/work_out.h"

#include <algorithm>
#include <set>
#include <string_view>

#include <fmt/format.h>

#include "quantity/formula.h"
#include "risk/cell_texts.h"

namespace standin::risk {

namespace {

using quantity::Decimal;
using quantity::Limits;

constexpr std::string_view kCell = "cell.";
constexpr std::string_view kCircuit = "circuit.";
constexpr int kShownDigits = 4;

bool isGiven(std::string_view name) { return name.starts_with(kCell) || name.starts_with(kCircuit); }

// Which inputs leave a bound of the result open: those that lack one themselves.
void noteOpenBounds(WorkedOut& result, std::vector<std::string> const& halfStated) {
    if (result.limits.lo && result.limits.hi) return;
    for (auto const& name : halfStated) {
        if (std::find(result.missing.begin(), result.missing.end(), name) == result.missing.end()) result.missing.push_back(name);
    }
    if (result.limits.limited()) {
        result.notes.push_back(texts::boundOpen(result.limits.hi ? "lower" : "upper", result.missing));
    } else if (!result.limits.empty()) {
        result.notes.push_back(texts::estimateOnly(result.missing));
    }
}

// Detection of one version and release of another; or values that several tables print differently, of versions
// that are not named.
bool mixesParts(std::vector<std::pair<std::string, StatedValue>> const& stated) {
    if (stated.size() < 2) return false;
    std::set<std::string_view> versions;
    bool several = false;
    for (auto const& [name, value] : stated) {
        if (value.limits.empty()) continue;
        if (!value.version.empty()) versions.insert(value.version);
        several = several || value.ofSeveralParts;
    }
    return several || versions.size() > 1;
}

}  // namespace

GivenValue const* Surroundings::find(std::string_view name) const {
    if (name.starts_with(kCell)) return cell == nullptr ? nullptr : cell->find(name.substr(kCell.size()));
    if (name.starts_with(kCircuit)) return circuit == nullptr ? nullptr : circuit->find(name.substr(kCircuit.size()));
    return nullptr;
}

Scope scopeFor(vocabulary::DerivedEntry const& entry, StatedValues const& values) {
    auto const formula = quantity::Formula::parse(entry.expression);
    bool any = false;
    for (auto const& name : formula ? formula->names() : std::vector<std::string>{}) {
        if (isGiven(name) || !values.states(name)) continue;
        any = true;
        if (!values.hasOverTemperature(name)) return Scope::Room;
    }
    return any ? Scope::OverTemperature : Scope::Room;
}

WorkedOut workOut(vocabulary::DerivedEntry const& entry, StatedValues const& values, Surroundings const& around, Scope scope) {
    WorkedOut result;
    auto const formula = quantity::Formula::parse(entry.expression);
    auto const unit = quantity::dimensionOf(entry.unit);
    if (!formula || !unit) return result;  // refused when the vocabulary was loaded

    std::vector<std::pair<std::string, StatedValue>> stated;
    auto const lookup = [&](std::string_view name) -> quantity::Operand {
        if (isGiven(name)) {
            auto const* given = around.find(name);
            return given == nullptr ? quantity::Operand{} : quantity::Operand{given->limits, given->dimension};
        }
        auto known = std::find_if(stated.begin(), stated.end(), [name](auto const& one) { return one.first == name; });
        if (known == stated.end()) known = stated.emplace(known, std::string(name), values.find(name, scope));
        auto const& value = known->second;
        return {value.limits, value.dimension};
    };
    auto evaluated = formula->evaluate(lookup);
    result.missing = std::move(evaluated.missing);
    if (!evaluated.refused.empty() || !(evaluated.dimension == unit->dimension)) return result;
    result.limits = unit->factor == Decimal(1) ? evaluated.limits : divide(evaluated.limits, quantity::exactly(unit->factor));

    // The quantities of two parts are none of one.
    if (mixesParts(stated)) {
        result.limits = {};
        for (auto const& [name, value] : stated) result.missing.push_back(name);
        return result;
    }

    std::vector<std::string> halfStated;
    bool outer = evaluated.repeated;
    for (auto const& name : evaluated.used) {
        Limits limits;
        if (auto const* given = around.find(name)) {
            limits = given->limits;
            result.inputs.push_back({.name = name, .parameter = {}, .page = 0, .box = {}, .text = given->text});
        } else {
            auto const& value = std::find_if(stated.begin(), stated.end(), [&](auto const& one) { return one.first == name; })->second;
            limits = value.limits;
            result.fromSheet = true;
            result.overTemperature = result.overTemperature || value.overTemperature;
            outer = outer || value.rows > 1;
            result.inputs.insert(result.inputs.end(), value.inputs.begin(), value.inputs.end());
        }
        if (!limits.lo || !limits.hi) halfStated.push_back(name);
    }
    if (!result.limits.empty()) {
        noteOpenBounds(result, halfStated);
        for (auto const& name : evaluated.assumed) result.notes.push_back(texts::notGiven(name));
        if (outer) result.notes.push_back(texts::outerBound());
        if (result.fromSheet) result.notes.push_back(texts::scopeNote(result.overTemperature));
    }
    return result;
}

model::WorkedValue shown(WorkedOut const& result, std::string const& unit) {
    auto const rounded = quantity::roundedOutward(result.limits, kShownDigits);
    auto const text = [](std::optional<Decimal> const& value) { return value ? value->toShortString() : std::string(); };
    return {.min = text(rounded.lo), .typ = text(rounded.typ), .max = text(rounded.hi), .unit = unit, .inputs = result.inputs, .notes = result.notes};
}

}  // namespace standin::risk
