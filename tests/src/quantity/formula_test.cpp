#include "quantity/formula.h"

#include <map>

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

struct Stated {
    char const* lo;
    char const* typ;
    char const* hi;
    char const* unit;
};

using Values = std::map<std::string, Stated, std::less<>>;

Evaluated evaluate(char const* text, Values const& values) {
    auto const formula = Formula::parse(text);
    EXPECT_TRUE(formula) << text;
    if (!formula) return {};
    return formula->evaluate([&](std::string_view name) -> Operand {
        auto const found = values.find(name);
        if (found == values.end()) return {};
        auto const bound = [](char const* value) { return *value == '\0' ? std::nullopt : Decimal::parse(value); };
        return {{.lo = bound(found->second.lo), .typ = bound(found->second.typ), .hi = bound(found->second.hi)}, dimensionOf(found->second.unit)->dimension};
    });
}

std::string text(Evaluated const& result) {
    auto const one = [](std::optional<Decimal> const& value) { return value ? value->toShortString() : std::string("?"); };
    return one(result.limits.lo) + " " + one(result.limits.typ) + " " + one(result.limits.hi);
}

TEST(Formula, TripCurrentOverFetsAndLink) {
    Values values = {{"detect-voltage", {"0.125", "0.150", "0.175", "V"}}, {"circuit.fet_on_resistance", {"0.032", "0.040", "0.050", "Ω"}}};
    char const* const formula = "abs(detect-voltage) / (first(circuit.sense_resistor, circuit.fet_on_resistance) + atleast(circuit.link, 0 Ω))";
    auto result = evaluate(formula, values);
    EXPECT_EQ(text(result), "? 3.75 5.46875") << "an unknown link bounds the current from above only";
    EXPECT_EQ(result.assumed, std::vector<std::string>{"circuit.link"});
    EXPECT_EQ(result.missing, std::vector<std::string>{"circuit.link"});
    EXPECT_EQ(result.dimension, dimensionOf("A")->dimension);

    values.emplace("circuit.link", Stated{"0.001", "0.002", "0.003", "Ω"});
    result = evaluate(formula, values);
    EXPECT_EQ(*result.limits.lo, *divide(*Decimal::parse("0.125"), *Decimal::parse("0.053"), 17, Rounding::Down));
    EXPECT_EQ((std::vector<std::string>{"detect-voltage", "circuit.fet_on_resistance", "circuit.link"}), result.used);
}

TEST(Formula, SaysWhatIsMissing) {
    auto const result = evaluate("a / first(circuit.x, circuit.y)", {{"a", {"1", "2", "3", "V"}}});
    EXPECT_TRUE(result.limits.empty());
    EXPECT_EQ((std::vector<std::string>{"circuit.x", "circuit.y"}), result.missing);
}

TEST(Formula, RefusesWhatDoesNotFit) {
    auto const result = evaluate("a + b", {{"a", {"1", "2", "3", "V"}}, {"b", {"1", "2", "3", "A"}}});
    EXPECT_TRUE(result.limits.empty());
    EXPECT_FALSE(result.refused.empty());
}

TEST(Formula, KnowsAnOuterBound) {
    Values const values = {{"a", {"1", "2", "3", "V"}}};
    EXPECT_TRUE(evaluate("a - a", values).repeated);
    EXPECT_FALSE(evaluate("square(a)", values).repeated);
}

TEST(Formula, NumbersCarryUnits) {
    EXPECT_EQ(text(evaluate("a * (1 + 100 kΩ / 25 kΩ)", {{"a", {"0.588", "0.6", "0.612", "V"}}})), "2.94 3 3.06");
    EXPECT_EQ(text(evaluate("a - 20 mV", {{"a", {"1", "2", "3", "V"}}})), "0.98 1.98 2.98");
    EXPECT_EQ(text(evaluate("or(x, 0 A) + 2 mA", {})), "0.002 0.002 0.002");
    EXPECT_EQ(text(evaluate("lower(a) - upper(a)", {{"a", {"1", "2", "3", "V"}}})), "-2 -2 -2");
}

TEST(Formula, WhatIsTooSmallCountsAsNotStated) {
    Values const values = {{"constant", {"950", "1000", "1050", "V"}}, {"pin", {"", "2", "", "V"}}, {"r", {"", "2000", "", "Ω"}}};
    EXPECT_EQ(text(evaluate("ifover(constant, 100 V) / r", values)), "? 0.5 ?");
    auto const small = evaluate("ifover(pin, 100 V) / r", values);
    EXPECT_TRUE(small.limits.empty());
    EXPECT_EQ(small.missing, std::vector<std::string>{"pin"});
    EXPECT_EQ(small.used, std::vector<std::string>{"r"});
}

TEST(Formula, NamesHoldHyphens) {
    auto const formula = Formula::parse("over-charge-2 - circuit.r_1");
    ASSERT_TRUE(formula);
    EXPECT_EQ((std::vector<std::string>{"over-charge-2", "circuit.r_1"}), formula->names());
}

TEST(Formula, FaultsAreSaid) {
    for (char const* text : {"", "a +", "(a", "a b", "unknown(a)", "abs(a, b)", "or(a, b)", "first(a)", "1.2.3", "a $ b"}) {
        auto const formula = Formula::parse(text);
        ASSERT_FALSE(formula) << text;
        EXPECT_EQ(formula.error().kind, model::ErrorKind::Usage);
        EXPECT_NE(formula.error().message.find("formula"), std::string::npos);
    }
    EXPECT_FALSE(Formula::parse(std::string(100, '(') + "a" + std::string(100, ')')));
}

}  // namespace
}  // namespace standin::quantity
