#include <gtest/gtest.h>

#include "model/comparison_json.h"

namespace standin::model {
namespace {

// One of everything, no member at its default.
Comparison full() {
    Comparison comparison;
    comparison.reference.file = "reference.pdf";
    comparison.reference.sha256 = std::string(64, 'a');
    comparison.reference.partNumbers = {"HRN1607"};
    comparison.candidate.file = "candidate.pdf";
    comparison.verdict = {VerdictLevel::BenchTest, true, {"one table was not read"}, "Bench test before use", {"111111111111"}};
    comparison.cautions = {{"C-OC", "text", {"111111111111"}}};
    comparison.statements = {"statement"};
    Finding finding;
    finding.id = "111111111111";
    finding.kind = FindingKind::Feature;
    finding.relation = Relation::ModeDiffers;
    finding.judgement = Judgement::HazardSide;
    finding.classes = {WordingClass::Neg, WordingClass::Num};
    finding.severity = Severity::Hazard;
    finding.hazardSide = HazardSide::Higher;
    finding.level = 4;
    finding.open = true;
    finding.canonical = "zero-volt-charging";
    finding.section = "s2";
    finding.variant = "B";
    finding.title = "title";
    finding.explanation = "explanation";
    finding.caution = "C-0V";
    finding.consequenceOf = "222222222222";
    finding.affects = {"r:p3"};
    Side side;
    side.page = 3;
    side.box = {10, 20, 30.5, 40.25};
    side.text = "row";
    side.min = "4.25";
    side.typ = "4.28";
    side.max = "4.30";
    side.unit = "V";
    side.condition = "Ta = 25 °C";
    finding.candidate = side;
    comparison.findings = {finding};
    comparison.pairs = {{"zero-volt-charging", "p1", "p2", Relation::Inside, Judgement::Better, 0.875}};
    comparison.sections = {{"s1", "s2", 0.5, 3}};
    Derived derived;
    derived.canonical = "discharge-trip-current";
    derived.title = "Trip current";
    derived.reference = WorkedValue{"1", "2", "3", "A", {}, {"note"}};
    comparison.derived = {derived};
    CellCheck check;
    check.check = "overcharge-upper";
    check.candidate = CheckResult{"4.30 V", CheckOutcome::Violated, "why", {}};
    check.level = 4;
    comparison.cell = {check};
    comparison.cellName = "cell";
    comparison.circuitName = "circuit";
    comparison.coverage.reference.numbers = 10;
    comparison.coverage.compared = 9;
    comparison.coverage.listed = 1;
    return comparison;
}

TEST(ComparisonFromJson, GivesBackWhatWasWritten) {
    auto const read = comparisonFromJson(toJson(full()), "c.json");
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(toJson(*read), toJson(full()));
    EXPECT_EQ(read->findings, full().findings);
    EXPECT_EQ(read->verdict, full().verdict);
    EXPECT_EQ(read->pairs, full().pairs);
}

TEST(ComparisonFromJson, ACandidateAloneStaysAlone) {
    Comparison comparison;
    comparison.kind = ComparisonKind::CandidateAlone;
    EXPECT_EQ(comparisonFromJson(toJson(comparison), "c.json")->kind, ComparisonKind::CandidateAlone);
}

TEST(ComparisonFromJson, OtherFilesAreRefused) {
    for (char const* text : {"", "[]", "{}", "{\"schema\":\"standin.datasheet/1\"}", "{\"schema\":1}"}) {
        auto const read = comparisonFromJson(text, "c.json");
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().file, "c.json");
    }
}

TEST(ComparisonFromJson, MistypedMembersGetDefaults) {
    auto const read = comparisonFromJson(R"({"schema":"standin.comparison/1","candidate":3,"verdict":[],"findings":[{"level":"x","reference":7}],"coverage":null})", "c.json");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->findings.size(), 1U);
    EXPECT_EQ(read->findings[0].level, 0);
    EXPECT_FALSE(read->findings[0].reference);
}

}  // namespace
}  // namespace standin::model
