#include "record/bench_result.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;

risk::BenchTest testWith(std::string min, std::string max, std::string unit) {
    return {"threshold", "Threshold", "", "", "", {id('1'), id('2')}, {{id('1'), "Threshold", "reference", "", std::move(min), std::move(max), std::move(unit)}}};
}

BenchResult measured(std::vector<std::string> values, std::string unit) {
    BenchResult result;
    result.test = "threshold";
    result.values = std::move(values);
    result.unit = std::move(unit);
    return result;
}

TEST(JudgeResult, AgainstTheLimits) {
    struct Case {
        char const *min, *max, *unit;
        std::vector<std::string> values;
        char const* in;
        Outcome outcome;
    };
    Case const cases[] = {
        {"4.25", "4.30", "V", {"4.25"}, "V", Outcome::Within},
        {"4.25", "4.30", "V", {"4.30"}, "V", Outcome::Within},
        {"4.25", "4.30", "V", {"4.3001"}, "V", Outcome::Outside},
        {"4.25", "4.30", "V", {"4.2499"}, "V", Outcome::Outside},
        {"4.25", "4.30", "V", {"4275"}, "mV", Outcome::Within},
        {"4.25", "4.30", "V", {"4.26", "4.29", "4.31"}, "V", Outcome::Outside},
        {"", "4.30", "V", {"1"}, "V", Outcome::Within},
        {"96", "", "ms", {"0.1"}, "s", Outcome::Within},
        {"96", "", "ms", {"0.09"}, "s", Outcome::Outside},
        {"-0.35", "-0.25", "V", {"-300"}, "mV", Outcome::Within},
        {"VDD-28", "VDD+0.3", "V", {"1"}, "V", Outcome::NotJudged},
        {"4.25", "VDD+0.3", "V", {"1"}, "V", Outcome::NotJudged},
        {"", "", "V", {"1"}, "V", Outcome::NotJudged},
        {"3", "5", "", {"4"}, "", Outcome::Within},
    };
    for (auto const& [min, max, unit, values, in, outcome] : cases) {
        auto const judged = judgeResult({testWith(min, max, unit)}, measured(values, in));
        ASSERT_TRUE(judged) << judged.error().message;
        EXPECT_EQ(judged->outcome, outcome) << min << " … " << max << ": " << values.front() << " " << in;
        EXPECT_EQ(judged->finding, id('1'));
    }
}

TEST(JudgeResult, WhatCannotBeJudgedIsRefused) {
    struct Case {
        BenchResult result;
        char const* message;
    };
    auto other = measured({"4.26"}, "V");
    other.test = "another";
    auto foreign = measured({"4.26"}, "V");
    foreign.finding = id('9');
    Case const cases[] = {
        {other, "it has threshold"},
        {foreign, "does not belong"},
        {measured({"4.26"}, "A"), "does not fit"},
        {measured({"4.26"}, ""), "does not fit"},
        {measured({"4,26"}, "V"), "no plain number"},
        {measured({"4.26 V"}, "V"), "no plain number"},
        {measured({}, "V"), "at least one"},
    };
    for (auto const& [result, message] : cases) {
        auto const judged = judgeResult({testWith("4.25", "4.30", "V")}, result);
        ASSERT_FALSE(judged) << message;
        EXPECT_THAT(judged.error().message, HasSubstr(message));
    }
    EXPECT_THAT(judgeResult({}, other).error().message, HasSubstr("no bench tests"));
}

TEST(JudgeResult, SeveralLimitsNeedTheFindingsName) {
    auto test = testWith("4.25", "4.30", "V");
    auto second = test.limits.front();
    second.finding = id('2');
    second.max = "4.40";
    test.limits.push_back(second);
    auto result = measured({"4.35"}, "V");
    EXPECT_THAT(judgeResult({test}, result).error().message, HasSubstr("several limits"));
    result.finding = id('2');
    EXPECT_EQ(judgeResult({test}, result)->outcome, Outcome::Within);
    result.finding = id('1');
    EXPECT_EQ(judgeResult({test}, result)->outcome, Outcome::Outside);
}

// The printed limits of a finding, and beside them those of the cell.
TEST(JudgeResult, AgainstTheLimitOfACellCheck) {
    auto test = testWith("4.25", "4.30", "V");
    auto cell = test.limits.front();
    cell.check = "overcharge-upper";
    cell.min.clear();
    cell.max = "4.28";
    test.limits.push_back(cell);
    auto charger = cell;
    charger.check = "overcharge-nuisance";
    charger.min = "4.23";
    charger.max.clear();
    charger.aboveMin = true;
    test.limits.push_back(charger);
    struct Case {
        char const *check, *value;
        Outcome outcome;
    };
    Case const cases[] = {
        {"", "4.29", Outcome::Within},
        {"overcharge-upper", "4.29", Outcome::Outside},
        {"overcharge-upper", "4.28", Outcome::Within},
        {"overcharge-nuisance", "4.23", Outcome::Outside},
        {"overcharge-nuisance", "4.231", Outcome::Within},
    };
    for (auto const& [check, value, outcome] : cases) {
        auto result = measured({value}, "V");
        result.finding = id('1');
        result.check = check;
        auto const judged = judgeResult({test}, result);
        ASSERT_TRUE(judged) << judged.error().message;
        EXPECT_EQ(judged->outcome, outcome) << check << " " << value;
        EXPECT_EQ(judged->check, check);
    }
    auto result = measured({"4.29"}, "V");
    EXPECT_THAT(judgeResult({test}, result).error().message, HasSubstr(id('1') + " with --check overcharge-upper"));
    result.check = "overcharge-upper";  // names its finding by itself
    EXPECT_EQ(judgeResult({test}, result)->finding, id('1'));
    result.check = "drain";
    EXPECT_THAT(judgeResult({test}, result).error().message, HasSubstr("no limit of the check drain"));
}

TEST(JudgeResult, ABoundThatDoesNotHoldItself) {
    auto test = testWith("", "2.9", "V");
    test.limits.front().belowMax = true;
    EXPECT_EQ(judgeResult({test}, measured({"2.9"}, "V"))->outcome, Outcome::Outside);
    EXPECT_EQ(judgeResult({test}, measured({"2899"}, "mV"))->outcome, Outcome::Within);
}

TEST(JudgeResult, ATestWithoutLimitsTakesAnyValue) {
    auto test = testWith("", "", "");
    test.limits.clear();
    auto const judged = judgeResult({test}, measured({"0.02"}, "A"));
    ASSERT_TRUE(judged);
    EXPECT_EQ(judged->outcome, Outcome::NotJudged);
    EXPECT_TRUE(judged->finding.empty());
}

}  // namespace
}  // namespace standin::record
