// Tested by tests/src/risk/cell_checks_test.cpp: no check says anything but by these.
#include "risk/check_workings.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "risk/cell_texts.h"
#include "risk/texts.h"

namespace standin::risk {

using model::CheckOutcome;
using quantity::Decimal;
using quantity::Limits;

namespace {

constexpr int kBenchDigits = 9;

std::string_view afterDot(std::string_view name) { return name.substr(name.find('.') + 1); }

}  // namespace

PartCheck CheckWorkings::holds(std::string value) {
    return {.limit = {}, .bounds = {}, .result = {.value = std::move(value), .outcome = CheckOutcome::Holds, .why = {}, .inputs = {}}, .level = 0, .missing = MissingIn::Nothing};
}

PartCheck CheckWorkings::violated(std::string value, std::string why, int level) {
    return {.limit = {},
            .bounds = {},
            .result = {.value = std::move(value), .outcome = CheckOutcome::Violated, .why = std::move(why), .inputs = {}},
            .level = level,
            .missing = MissingIn::Nothing};
}

PartCheck CheckWorkings::open(MissingIn where, std::string why, std::string value) {
    return {.limit = {}, .bounds = {}, .result = {.value = std::move(value), .outcome = CheckOutcome::Open, .why = std::move(why), .inputs = {}}, .level = 0, .missing = where};
}

PartCheck CheckWorkings::notInSheet(std::string_view what, std::string_view why) { return open(MissingIn::Sheet, fmt::format("{} is {}", what, why)); }

Bound CheckWorkings::given(std::string_view name, Bound Limits::*bound) {
    auto const* value = m_around.find(name);
    Bound const found = value == nullptr ? std::nullopt : value->limits.*bound;
    if (value != nullptr) addInput({.name = std::string(name), .parameter = {}, .page = 0, .box = {}, .text = value->text});
    if (!found) {
        std::string_view const side = bound == &Limits::lo ? "minimum" : bound == &Limits::hi ? "maximum" : "typical value";
        m_open = texts::givesNo(name.starts_with("cell.") ? "cell" : "circuit", afterDot(name), value == nullptr ? std::string_view() : side);
    }
    return found;
}

bool CheckWorkings::isGiven(std::string_view name) const { return m_around.find(name) != nullptr; }

StatedValue CheckWorkings::stated(std::string_view canonical) {
    auto value = m_values.find(canonical, Scope::OverTemperature);
    for (auto const& input : value.inputs) addInput(input);
    return value;
}

void CheckWorkings::addInput(model::Input input) {
    if (std::find(m_inputs.begin(), m_inputs.end(), input) == m_inputs.end()) m_inputs.push_back(std::move(input));
}

void CheckWorkings::doubtRecognised(PartCheck& check) const {
    bool const recognised = std::any_of(m_inputs.begin(), m_inputs.end(), [this](model::Input const& input) { return m_values.isRecognised(input); });
    if (!recognised || check.result.outcome != CheckOutcome::Holds) return;
    check.result.outcome = CheckOutcome::Open;
    check.result.why = "it " + texts::restsOnRecognised();
    check.missing = MissingIn::Sheet;
}

WorkedOut CheckWorkings::derived(std::string_view id) {
    auto const all = m_vocabulary.derived();
    auto const entry = std::find_if(all.begin(), all.end(), [id](auto const& one) { return one.id == id; });
    if (entry == all.end()) return {};
    auto result = workOut(*entry, m_values, m_around, scopeFor(*entry, m_values));
    for (auto const& input : result.inputs) addInput(input);
    return result;
}

PartCheck CheckWorkings::openFor(WorkedOut const& result, std::string_view what, std::string value) {
    auto const inFiles = [](std::string const& name) { return name.starts_with("circuit.") || name.starts_with("cell."); };
    bool const files = std::any_of(result.missing.begin(), result.missing.end(), inFiles);
    std::string list;
    for (auto const& name : result.missing) {
        if (files && !inFiles(name)) continue;  // what the sheet may state in several ways it need not state in all of them
        list += fmt::format("{}{}", list.empty() ? "" : ", ", texts::inputName(name));
    }
    return open(files ? MissingIn::Files : MissingIn::Sheet, list.empty() ? fmt::format("{} cannot be worked out", what) : fmt::format("{} cannot be worked out; missing, or without a limit: {}", what, list), std::move(value));
}

void CheckWorkings::keepTo(std::string_view quantity, BenchBound least, BenchBound most, std::string_view unit) {
    auto const text = [](Bound const& bound, quantity::Rounding stricter) {
        return bound ? divide(*bound, Decimal(1), kBenchDigits, stricter).value_or(*bound).toShortString() : std::string();
    };
    m_bounds = model::CheckBounds{.quantity = std::string(quantity),
                                  .min = text(least.value, quantity::Rounding::Up),
                                  .max = text(most.value, quantity::Rounding::Down),
                                  .unit = unit == "degC" ? "°C" : std::string(unit),
                                  .aboveMin = least.value && least.edge == Edge::Fails,
                                  .belowMax = most.value && most.edge == Edge::Fails};
}

std::string CheckWorkings::by(Decimal amount, std::string_view unit) { return texts::upper(amount.magnitude(), unit); }

}  // namespace standin::risk
