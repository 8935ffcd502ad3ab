// Tested by tests/src/record/bench_result_test.cpp.
#include "record/bench_result.h"

#include <algorithm>

#include <fmt/format.h>

#include "quantity/decimal.h"
#include "quantity/unit.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;
using quantity::Decimal;
using quantity::Unit;

namespace {

auto refuse(std::string message) { return tl::unexpected(Error{ErrorKind::Usage, std::move(message), {}, 0}); }

std::string list(std::vector<std::string> const& words) {
    std::string text;
    for (auto const& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string nameOf(risk::BenchLimit const& limit) { return limit.check.empty() ? limit.finding : fmt::format("{} with --check {}", limit.finding, limit.check); }

// The limit that a result is held against; null: its test has none.
Result<risk::BenchLimit const*> limitFor(risk::BenchTest const& test, std::string const& finding, std::string const& check) {
    if (test.limits.empty() && check.empty()) return nullptr;
    std::vector<risk::BenchLimit const*> fitting;
    std::vector<std::string> names;
    for (auto const& limit : test.limits) {
        names.push_back(nameOf(limit));
        if ((finding.empty() || limit.finding == finding) && (check.empty() || limit.check == check)) fitting.push_back(&limit);
    }
    if (fitting.empty() && !check.empty())
        return refuse(fmt::format("the test {} has no limit of the check {}{}{}", test.id, check, names.empty() ? "" : "; it has ", list(names)));
    bool const known = std::find(test.findings.begin(), test.findings.end(), finding) != test.findings.end();
    if (fitting.empty()) return known ? Result<risk::BenchLimit const*>(nullptr) : refuse(fmt::format("finding {} does not belong to the test {}", finding, test.id));
    if (fitting.size() == 1) return fitting.front();
    auto const printed = std::find_if(fitting.begin(), fitting.end(), [](risk::BenchLimit const* limit) { return limit->check.empty(); });
    if (!finding.empty() && printed != fitting.end()) return *printed;
    return refuse(fmt::format("the test {} has several limits; name one with --finding: {}", test.id, list(names)));
}

// Whether a value in the unit of the bounds keeps to them.
bool keepsTo(risk::BenchLimit const& limit, std::optional<Decimal> const& lowest, std::optional<Decimal> const& highest, Decimal value) {
    bool const lowEnough = !highest || value < *highest || (value == *highest && !limit.belowMax);
    bool const highEnough = !lowest || value > *lowest || (value == *lowest && !limit.aboveMin);
    return lowEnough && highEnough;
}

// Nullopt: not given. A bound that is no plain number sets `plain` to false.
std::optional<Decimal> boundOf(std::string const& text, std::optional<Unit> const& unit, bool& plain) {
    if (text.empty()) return std::nullopt;
    auto const number = Decimal::parse(text);
    if (!number) plain = false;
    return number && unit ? std::optional<Decimal>(quantity::toCoherent(*number, *unit)) : number;
}

}  // namespace

Result<BenchResult> judgeResult(std::vector<risk::BenchTest> const& tests, BenchResult result) {
    auto const test = std::find_if(tests.begin(), tests.end(), [&](risk::BenchTest const& one) { return one.id == result.test; });
    if (test == tests.end()) {
        std::vector<std::string> known;
        for (auto const& one : tests) known.push_back(one.id);
        return refuse(known.empty() ? "the record asks for no bench tests" : fmt::format("has no bench test '{}'; it has {}", result.test, list(known)));
    }
    if (result.values.empty()) return refuse("a result needs at least one --value");
    std::vector<Decimal> values;
    for (auto const& text : result.values) {
        auto const value = Decimal::parse(text);
        if (!value) return refuse(fmt::format("'{}' is no plain number; give it like 4.275, its unit with --unit", text));
        values.push_back(*value);
    }
    auto const limit = limitFor(*test, result.finding, result.check);
    if (!limit) return tl::unexpected(limit.error());
    result.outcome = Outcome::NotJudged;
    if (*limit == nullptr) return result;

    result.finding = (*limit)->finding;
    result.check = (*limit)->check;
    auto const limitUnit = quantity::parseUnit((*limit)->unit);
    auto const resultUnit = quantity::parseUnit(result.unit);
    bool const sameText = (*limit)->unit == result.unit;
    if (!sameText && (!limitUnit || !resultUnit || !quantity::sameDimension(*limitUnit, *resultUnit))) {
        return refuse(fmt::format("the unit '{}' does not fit the limit, which is in '{}'", result.unit, (*limit)->unit));
    }
    bool plain = true;
    auto const lowest = boundOf((*limit)->min, limitUnit, plain);
    auto const highest = boundOf((*limit)->max, limitUnit, plain);
    if (!plain || (!lowest && !highest)) return result;
    bool const within = std::all_of(values.begin(), values.end(), [&](Decimal const& printed) {
        return keepsTo(**limit, lowest, highest, resultUnit && limitUnit ? quantity::toCoherent(printed, *resultUnit) : printed);
    });
    result.outcome = within ? Outcome::Within : Outcome::Outside;
    return result;
}

}  // namespace standin::record
