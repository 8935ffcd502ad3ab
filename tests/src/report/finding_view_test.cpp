#include "report/finding_view.h"

#include <gtest/gtest.h>

#include "sample_comparison.h"

namespace standin::report {
namespace {

TEST(GroupBySeverity, ConsequencesHangUnderTheirCause) {
    auto const sample = sampleComparison();
    auto const groups = groupBySeverity(sample.comparison);
    ASSERT_EQ(groups.size(), 3U);
    EXPECT_EQ(groups[0].severity, model::Severity::Hazard);
    ASSERT_EQ(groups[0].findings.size(), 1U);
    ASSERT_EQ(groups[0].findings[0].consequences.size(), 1U);
    EXPECT_EQ(groups[0].findings[0].consequences[0]->title, "Hysteresis is larger");
}

TEST(GroupBySeverity, AConsequenceWithoutItsCauseIsNotLost) {
    auto sample = sampleComparison();
    sample.comparison.findings.erase(sample.comparison.findings.begin());
    auto const groups = groupBySeverity(sample.comparison);
    std::size_t shown = 0;
    for (auto const& group : groups) shown += group.findings.size();
    EXPECT_EQ(shown, 3U);
}

TEST(VerdictDetail, DoesNotRepeatTheLevel) {
    model::Verdict verdict;
    verdict.level = model::VerdictLevel::BenchTest;
    verdict.sentence = "Bench test before use: the delay is longer.";
    EXPECT_EQ(verdictDetail(verdict), "the delay is longer.");
    verdict.sentence = "Bench test before use.";
    EXPECT_EQ(verdictDetail(verdict), "");
    verdict.sentence = "Two limits are open.";
    EXPECT_EQ(verdictDetail(verdict), "Two limits are open.");
}

TEST(ValuesOf, DashesForWhatIsNotPrinted) {
    model::Side side;
    side.max = "0.5";
    side.unit = "µA";
    EXPECT_EQ(valuesOf(side), "– / – / 0.5 µA");
    EXPECT_EQ(valuesOf(model::Side{1, {}, "a sentence", "", "", "", "", ""}), "a sentence");
    side.recognised = true;
    EXPECT_EQ(valuesOf(side), "– / – / 0.5 µA [recognised from a picture]");
    model::Parameter parameter;
    parameter.max = model::Value{"0.5", "0.5", "0.5", {}};
    parameter.unit = "µA";
    EXPECT_EQ(valuesOf(parameter), "– / – / 0.5 µA");
    parameter.recognised = true;
    EXPECT_EQ(valuesOf(parameter), "– / – / 0.5 µA [recognised from a picture]");
}

}  // namespace
}  // namespace standin::report
