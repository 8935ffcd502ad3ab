#include "quantity/decimal.h"

#include <random>

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace standin::quantity {
namespace {

Decimal of(char const* text) { return Decimal::parse(text).value(); }

TEST(Decimal, readsAndWritesWhatWasPrinted) {
    for (auto const& [text, written] : std::initializer_list<std::pair<char const*, char const*>>{
             {"4.250", "4.250"}, {"-0.3", "-0.3"}, {"+12", "12"}, {".5", "0.5"}, {"2E-3", "0.002"}, {"2e3", "2000"}, {"0", "0"}, {"-0", "0"}, {"0.000", "0.000"},
             {"7.", "7"}, {"123456789012345678901234567890.123456", "123456789012345678901234567890.123456"}}) {
        auto const value = Decimal::parse(text);
        ASSERT_TRUE(value) << text;
        EXPECT_EQ(value->toString(), written);
    }
    for (char const* text : {"", "-", ".", "1.2.3", "1,2", "abc", "1e", "1e+", "1 2", "0x1", "1e9999", "1234567890123456789012345678901234567"}) {
        EXPECT_FALSE(Decimal::parse(text)) << text;
    }
}

TEST(Decimal, comparesByValueAtAnyMagnitude) {
    EXPECT_TRUE(of("4.250") == of("4.25"));
    EXPECT_TRUE(of("4.2501") > of("4.25"));
    EXPECT_TRUE(of("-1") < of("0"));
    EXPECT_TRUE(of("1e300") > of("9e299"));
    EXPECT_TRUE(of("1e-300") < of("1e300"));
    EXPECT_TRUE(of("-1e300") < of("-1e-300"));
    EXPECT_TRUE(of("999999999999999999999999999999999999") < of("1e36"));
}

TEST(Decimal, calculatesExactly) {
    EXPECT_EQ((of("0.1") + of("0.2")).toString(), "0.3");
    EXPECT_EQ((of("4.28") - of("0.025")).toString(), "4.255");
    EXPECT_EQ((of("4.28") * of("0.01")).toString(), "0.0428");
    EXPECT_EQ(of("4280").scaledByPowerOfTen(-3).toString(), "4.280");
    EXPECT_EQ(divide(1, 3, 4, Rounding::Down)->toString(), "0.3333");
    EXPECT_EQ(divide(1, 3, 4, Rounding::Up)->toString(), "0.3334");
    EXPECT_EQ(divide(-1, 3, 4, Rounding::Down)->toString(), "-0.3334");
    EXPECT_EQ(divide(2, 3, 4, Rounding::Nearest)->toString(), "0.6667");
    EXPECT_EQ(divide(of("0.150"), of("0.050"), 6, Rounding::Nearest)->toString(), "3");
    EXPECT_FALSE(divide(1, 0, 4, Rounding::Nearest));
}

TEST(Decimal, roundsInTheDirectionAskedFor) {
    EXPECT_EQ(of("1.25").rounded(1, Rounding::Nearest).toString(), "1.2");
    EXPECT_EQ(of("1.35").rounded(1, Rounding::Nearest).toString(), "1.4");
    EXPECT_EQ(of("-1.21").rounded(1, Rounding::Down).toString(), "-1.3");
    EXPECT_EQ(of("-1.29").rounded(1, Rounding::Up).toString(), "-1.2");
    EXPECT_EQ(of("1234").rounded(-2, Rounding::Nearest).toString(), "1200");
}

TEST(Decimal, equalAsPrintedLooksAtTheCoarserSheet) {
    EXPECT_TRUE(equalAsPrinted(of("1.2"), of("1.200")));
    EXPECT_TRUE(equalAsPrinted(of("4.3"), of("4.325")));
    EXPECT_FALSE(equalAsPrinted(of("4.3"), of("4.375")));
}

TEST(Decimal, sumsAgreeWithWholeNumbers) {
    std::mt19937 random(20240607);
    std::uniform_int_distribution<long long> number(-1000000000, 1000000000);
    for (int i = 0; i < 2000; ++i) {
        long long const a = number(random);
        long long const b = number(random);
        int const scale = static_cast<int>(random() % 7);
        Decimal const left = Decimal(a).scaledByPowerOfTen(-scale);
        Decimal const right = Decimal(b).scaledByPowerOfTen(-scale);
        EXPECT_TRUE(left + right == Decimal(a + b).scaledByPowerOfTen(-scale));
        EXPECT_TRUE(left * right == Decimal(a).scaledByPowerOfTen(-scale) * Decimal(b).scaledByPowerOfTen(-scale));
        EXPECT_EQ(left < right, a < b);
        EXPECT_TRUE(*Decimal::parse(left.toString()) == left);
    }
}

TEST(Decimal, shortNumberOfText) {
    EXPECT_EQ(shortNumber("4.500"), "4.5");
    EXPECT_EQ(shortNumber("-5.00"), "-5");
    EXPECT_EQ(shortNumber("100"), "100");
    EXPECT_EQ(shortNumber("VDD"), "VDD");
}

TEST(Decimal, extremesDoNotOverflow) {
    Decimal const big = of("999999999999999999999999999999999999");
    EXPECT_TRUE(big + big > big);
    EXPECT_TRUE(big * big > big);
    EXPECT_TRUE(of("1e-300") + big == big);
    EXPECT_TRUE(divide(big, of("1e-300"), 10, Rounding::Up).has_value());
    EXPECT_TRUE(divide(of("1e-300"), big, 10, Rounding::Up).has_value());
}

TEST(Decimal, OrderHoldsForEveryScale) {
    // rising; equal ones stand side by side in one entry
    std::vector<std::vector<char const*>> const rising{{"-1e30"},
                                                       {"-4.26", "-4.260"},
                                                       {"-4.25"},
                                                       {"-1e-30"},
                                                       {"0", "0.000", "0e20"},
                                                       {"1e-30", "0.1e-29"},
                                                       {"0.0000000000000000001"},
                                                       {"4.249999999999999999999"},
                                                       {"4.25", "4.2500000000000000000000", "425e-2"},
                                                       {"1000000000000000000", "1e18"},
                                                       {"1000000000000000000.5"},
                                                       {"1e30", "10e29"}};
    for (std::size_t i = 0; i < rising.size(); ++i) {
        for (std::size_t k = 0; k < rising.size(); ++k) {
            for (char const* left : rising[i]) {
                for (char const* right : rising[k]) EXPECT_EQ(*Decimal::parse(left) <=> *Decimal::parse(right), i <=> k) << left << ' ' << right;
            }
        }
    }
}

}  // namespace
}  // namespace standin::quantity
