#include "risk/bench_tests.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace standin::risk {
namespace {

using model::Comparison;
using model::Finding;
using model::FindingKind;
using model::Severity;
using ::testing::ElementsAre;

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

model::Side sideWith(std::string min, std::string max) {
    model::Side side;
    side.page = 3;
    side.min = std::move(min);
    side.max = std::move(max);
    side.unit = "V";
    side.condition = "Ta = 25 °C";
    return side;
}

Finding finding(FindingKind kind, std::string canonical, int level, std::string caution = {}) {
    Finding made;
    made.id = canonical.empty() ? std::string(12, 'f') : canonical;
    made.kind = kind;
    made.canonical = std::move(canonical);
    made.level = level;
    made.severity = level >= 3 ? Severity::Hazard : level == 2 ? Severity::Function : level == 1 ? Severity::Margin : Severity::Editorial;
    made.caution = std::move(caution);
    return made;
}

TEST(BenchTests, EachFindingGoesToItsTest) {
    struct Case {
        Finding finding;
        char const* test;  // null: none
    };
    Case const cases[] = {
        {finding(FindingKind::Parameter, "overcharge-detect-voltage", 3), "overcharge-threshold"},
        {finding(FindingKind::Parameter, "overcharge-release-voltage", 2), "overcharge-release"},
        {finding(FindingKind::Parameter, "overdischarge-detect-voltage", 3), "overdischarge-threshold"},
        {finding(FindingKind::Parameter, "overcharge-detect-delay", 3), "delays"},
        {finding(FindingKind::Derived, "discharge-trip-current", 3), "overcurrent-trip"},
        {finding(FindingKind::Parameter, "load-short-delay", 4), "short-circuit"},
        {finding(FindingKind::Feature, "zero-volt-charging", 4), "zero-volt-charging"},
        {finding(FindingKind::Parameter, "amr-vm", 4), "charger-stress"},
        {finding(FindingKind::Pin, "", 4, "C-PIN"), "pin-handling"},
        {finding(FindingKind::Package, "", 4), "fit"},
        {finding(FindingKind::Parameter, "esd-hbm", 2), "hot-plug"},
        {finding(FindingKind::Feature, "start-up-state", 2), "activation"},
        {finding(FindingKind::Wording, "", 3, "C-SC"), "short-circuit"},
        {finding(FindingKind::Parameter, "slew-rate", 2), "as-stated"},
        {finding(FindingKind::Parameter, "", 2), "as-stated"},
        {finding(FindingKind::Derived, "logic-noise-margin-high", 3), nullptr},  // its inputs have findings of their own
        {finding(FindingKind::Parameter, "overcharge-detect-voltage", 1), nullptr},
        {finding(FindingKind::Wording, "", 1, "C-SC"), nullptr},
        {finding(FindingKind::Coverage, "", 3), nullptr},
    };
    for (auto const& [one, test] : cases) {
        Comparison comparison;
        comparison.findings.push_back(one);
        auto const tests = benchTests(comparison, builtIn());
        SCOPED_TRACE(one.canonical + " " + std::string(test == nullptr ? "none" : test));
        if (test == nullptr) {
            EXPECT_TRUE(tests.empty());
            continue;
        }
        ASSERT_EQ(tests.size(), 1U);
        EXPECT_EQ(tests[0].id, test);
        EXPECT_THAT(tests[0].findings, ElementsAre(one.id));
        EXPECT_FALSE(tests[0].procedure.empty());
        EXPECT_FALSE(tests[0].limitsFrom.empty());
    }
}

TEST(BenchTests, LimitsAreTheReferencesButForRatings) {
    Comparison comparison;
    for (char const* canonical : {"overcharge-detect-voltage", "amr-vm"}) {
        auto one = finding(FindingKind::Parameter, canonical, 3);
        one.reference = sideWith("4.255", "4.305");
        one.candidate = sideWith("4.300", "4.350");
        comparison.findings.push_back(one);
    }
    auto open = finding(FindingKind::Parameter, "overcharge-release-voltage", 3);
    open.candidate = sideWith("4.0", "4.1");  // the reference states nothing
    comparison.findings.push_back(open);
    auto const tests = benchTests(comparison, builtIn());
    ASSERT_EQ(tests.size(), 3U);
    EXPECT_THAT(tests[0].limits, ElementsAre(BenchLimit{"overcharge-detect-voltage", "", "reference", "Ta = 25 °C", "4.255", "4.305", "V"}));
    EXPECT_TRUE(tests[1].limits.empty());
    EXPECT_THAT(tests[2].limits, ElementsAre(BenchLimit{"amr-vm", "", "candidate", "Ta = 25 °C", "4.300", "4.350", "V"}));
}

model::CellCheck check(std::string id, std::string title, model::CheckBounds bounds, std::string ofFinding = {}) {
    model::CellCheck made;
    made.check = std::move(id);
    made.title = std::move(title);
    made.bounds = std::move(bounds);
    made.finding = std::move(ofFinding);
    return made;
}

TEST(BenchTests, ACellCheckGivesItsLimitToTheTestOfItsFinding) {
    Comparison comparison;
    comparison.findings.push_back(finding(FindingKind::Cell, "discharge-trip-high", 3, "C-OI"));
    comparison.cell.push_back(check("discharge-trip-high", "Discharge trip current", {"current", "", "5", "A", false, false}, "discharge-trip-high"));
    comparison.cell.push_back(check("overcharge-upper", "Overcharge cut-off", {"voltage", "", "4.28", "V", false, false}));  // holds, and nothing asks for its test
    auto const tests = benchTests(comparison, builtIn());
    ASSERT_EQ(tests.size(), 1U);
    EXPECT_EQ(tests[0].id, "overcurrent-trip");
    EXPECT_THAT(tests[0].limits,
                ElementsAre(BenchLimit{"discharge-trip-high", "Discharge trip current", "cell and circuit", "current", "", "5", "A", "discharge-trip-high", false, false}));
}

// The part changed in what the check is about: paper says that the check holds, the
// bench has to say it too.
TEST(BenchTests, ACheckThatHoldsGivesItsLimitToTheTestOfWhatItChecks) {
    Comparison comparison;
    comparison.findings.push_back(finding(FindingKind::Wording, "", 3, "C-OC"));
    auto changed = finding(FindingKind::Parameter, "overcharge-detect-voltage", 3);
    changed.reference = sideWith("4.255", "4.305");
    comparison.findings.push_back(changed);
    comparison.cell.push_back(check("overcharge-nuisance", "Above the charger", {"voltage", "4.22", "", "V", true, false}));
    auto without = check("class-match", "Class", {});
    without.bounds.reset();
    comparison.cell.push_back(without);
    auto const tests = benchTests(comparison, builtIn());
    ASSERT_EQ(tests.size(), 1U);
    EXPECT_THAT(tests[0].limits,
                ElementsAre(BenchLimit{"overcharge-detect-voltage", "", "reference", "Ta = 25 °C", "4.255", "4.305", "V"},
                            BenchLimit{"overcharge-detect-voltage", "Above the charger", "cell and circuit", "voltage", "4.22", "", "V", "overcharge-nuisance", true, false}));
}

TEST(BenchTests, WhatCouldNotBeComparedNeedsOneToo) {
    auto one = finding(FindingKind::Parameter, "overcharge-detect-voltage", 1);
    EXPECT_FALSE(needsBenchTest(one));
    one.open = true;
    EXPECT_TRUE(needsBenchTest(one));
    one.severity = Severity::Note;
    EXPECT_FALSE(needsBenchTest(one));
}

// A test that names an id which no entry has would never be called for.
TEST(BenchTests, DataNamesKnownIdsOnly) {
    std::vector<std::string> known;
    for (auto const* entry : builtIn().parameters()) known.push_back(entry->id);
    for (auto const& entry : builtIn().derived()) known.push_back(entry.id);
    int fallbacks = 0;
    for (auto const& test : builtIn().benchTests()) {
        fallbacks += test.fallback ? 1 : 0;
        for (auto const& id : test.parameters) EXPECT_THAT(known, ::testing::Contains(id)) << test.id;
        for (auto const& id : test.features) EXPECT_NE(builtIn().feature(id), nullptr) << test.id << " " << id;
        for (auto const& id : test.cautions) EXPECT_NE(builtIn().caution(id), nullptr) << test.id << " " << id;
        for (auto const& kind : test.kinds) EXPECT_TRUE(kind == "pin" || kind == "package") << kind;
    }
    EXPECT_EQ(fallbacks, 1);
    EXPECT_EQ(builtIn().sampleRules().size(), 3U);
}

}  // namespace
}  // namespace standin::risk
