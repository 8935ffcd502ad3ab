#include "quantity/limits.h"

#include <gtest/gtest.h>

namespace standin::quantity {
namespace {

using Bound = std::optional<Decimal>;

Bound bound(char const* text) { return *text == '\0' ? std::nullopt : Decimal::parse(text); }

Limits limits(char const* lo, char const* typ, char const* hi) { return {.lo = bound(lo), .typ = bound(typ), .hi = bound(hi)}; }

std::string text(Limits const& a) {
    auto const one = [](Bound const& value) { return value ? value->toShortString() : std::string("?"); };
    return one(a.lo) + " " + one(a.typ) + " " + one(a.hi);
}

struct Case {
    char const* what;
    Limits a, b;
    Limits (*operation)(Limits const&, Limits const&);
    char const* expected;
};

TEST(Limits, WorstCasesOfTwoInputs) {
    auto const threshold = limits("0.125", "0.150", "0.175");
    Case const cases[] = {
        {"sum", limits("1", "2", "3"), limits("10", "20", "30"), add, "11 22 33"},
        {"difference takes opposite bounds", limits("4.255", "4.280", "4.305"), limits("4.03", "4.08", "4.13"), subtract, "0.125 0.2 0.275"},
        {"a missing bound stays missing in a sum", limits("", "2", "3"), limits("10", "20", "30"), add, "? 22 33"},
        {"a missing bound moves over in a difference", limits("1", "2", "3"), limits("", "1", "2"), subtract, "-1 1 ?"},
        {"trip current", threshold, limits("0.032", "0.040", "0.050"), divide, "2.5 3.75 5.46875"},
        {"without a least resistance no largest current", threshold, limits("", "0.040", "0.050"), divide, "2.5 3.75 ?"},
        {"without a largest resistance no least current", threshold, limits("0.032", "", ""), divide, "? ? 5.46875"},
        {"down to zero is unbounded", threshold, limits("0", "0.040", "0.050"), divide, "2.5 3.75 ?"},
        {"over zero nothing is bounded", threshold, limits("-1", "0.5", "1"), divide, "? 0.3 ?"},
        {"a negative divisor", limits("6", "", "12"), limits("-3", "", "-2"), divide, "-6 ? -2"},
        {"a dividend over zero", limits("-6", "", "12"), limits("2", "", "3"), divide, "-3 ? 6"},
        {"product of positives", limits("2", "3", "4"), limits("", "0.1", "0.2"), multiply, "? 0.3 0.8"},
        {"product over zero", limits("-2", "", "3"), limits("-5", "", "4"), multiply, "-15 ? 12"},
        {"product over zero with a bound missing", limits("-2", "", "3"), limits("", "", "4"), multiply, "? ? ?"},
        {"product of a negative", limits("-4", "-3", "-2"), limits("1", "2", "3"), multiply, "-12 -6 -2"},
        {"typical alone gives typical alone", limits("", "6", ""), limits("", "2", ""), divide, "? 3 ?"},
    };
    for (auto const& one : cases) EXPECT_EQ(text(one.operation(one.a, one.b)), one.expected) << one.what;
}

TEST(Limits, OfOneInput) {
    EXPECT_EQ(text(negate(limits("1", "2", ""))), "? -2 -1");
    EXPECT_EQ(text(magnitude(limits("-0.12", "-0.10", "-0.08"))), "0.08 0.1 0.12");
    EXPECT_EQ(text(magnitude(limits("-3", "", "2"))), "0 ? 3");
    EXPECT_EQ(text(magnitude(limits("-3", "", ""))), "? ? 3");
    EXPECT_EQ(text(square(limits("-3", "", "2"))), "0 ? 9") << "not -6, as for two independent values";
    EXPECT_EQ(text(plusMinus(limits("", "20", "50"))), "-50 0 50");
    EXPECT_EQ(text(plusMinus(limits("", "20", ""))), "? 0 ?");
}

TEST(Limits, EnclosingKeepsWhatIsOpenOpen) {
    EXPECT_EQ(text(enclosing(limits("1", "2", "3"), limits("0.5", "1", "2"))), "0.5 2 3");
    EXPECT_EQ(text(enclosing(limits("1", "2", "3"), limits("", "", "5"))), "? 2 5");
}

TEST(Limits, RoundsOutward) {
    EXPECT_EQ(text(roundedOutward(limits("3.56435", "4", "4.44444"), 3)), "3.56 4 4.45");
    EXPECT_EQ(text(roundedOutward(limits("-4.44444", "", "-3.56435"), 3)), "-4.45 ? -3.56");
    // A third can be written down in no number of digits: both ends stay outside.
    auto const third = divide(exactly(Decimal(1)), exactly(Decimal(3)));
    EXPECT_LT(*third.lo * Decimal(3), Decimal(1));
    EXPECT_GT(*third.hi * Decimal(3), Decimal(1));
}

}  // namespace
}  // namespace standin::quantity
