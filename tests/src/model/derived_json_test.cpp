#include "model/derived_json.h"

#include <gtest/gtest.h>

#include "model/comparison_json.h"

namespace standin::model::json_parts {
namespace {

Input input() { return {.name = "overcharge-detect-voltage", .parameter = "p3", .page = 2, .box = {1, 2, 3, 4}, .text = "4.1 / 4.2 / 4.3 V"}; }

Derived derived() {
    Derived made;
    made.canonical = "overcharge-effective-voltage";
    made.title = "Overcharge detection as the cell sees it";
    made.formula = "V = a + b";
    made.reference = WorkedValue{.min = "4.1", .typ = "", .max = "4.3", .unit = "V", .inputs = {input(), {.name = "circuit.supply_resistor", .parameter = "", .page = 0, .box = {}, .text = "330 Ω"}}, .notes = {"outer bound"}};
    made.relation = Relation::OnlyReference;
    made.judgement = Judgement::Better;
    made.notes = {"a note"};
    return made;
}

CellCheck check() {
    CellCheck made;
    made.check = "overcharge-upper";
    made.title = "Overcharge cut-off against the cell";
    made.limit = "at most 4.30 V";
    made.bounds = CheckBounds{.quantity = "voltage at the cut-off", .min = "4.23", .max = "4.30", .unit = "V", .aboveMin = true, .belowMax = false};
    made.candidate = CheckResult{.value = "at most 4.34 V", .outcome = CheckOutcome::Violated, .why = "above the limit by 40 mV", .inputs = {input()}};
    made.level = 4;
    made.finding = "0123456789ab";
    return made;
}

TEST(DerivedJson, ComesBackAsItWent) {
    EXPECT_EQ(derivedOf(derivedJson({derived()})), std::vector<Derived>{derived()});
    EXPECT_EQ(cellOf(cellJson({check()})), std::vector<CellCheck>{check()});
}

TEST(DerivedJson, InputsAreListedBySide) {
    auto const json = derivedJson({derived()});
    EXPECT_EQ(json[0]["inputs"].dump(), R"(["r:p3","circuit.supply_resistor"])");
    EXPECT_TRUE(json[0]["candidate"].is_null());
    EXPECT_TRUE(json[0]["reference"]["typ"].is_null());
}

TEST(DerivedJson, WhatIsMistypedGivesDefaults) {
    EXPECT_TRUE(derivedOf(nlohmann::ordered_json::parse("3")).empty());
    auto const checks = cellOf(nlohmann::ordered_json::parse(R"([{"candidate": {"outcome": "unheard-of"}, "reference": 3}])"));
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_FALSE(checks[0].reference);
    EXPECT_EQ(checks[0].candidate->outcome, CheckOutcome::Open);
}

TEST(DerivedJson, ACandidateAloneHasNoReference) {
    Comparison comparison;
    comparison.kind = ComparisonKind::CandidateAlone;
    comparison.cell = {check()};
    comparison.cellName = "a cell";
    auto const json = nlohmann::ordered_json::parse(toJson(comparison));
    EXPECT_TRUE(json["reference"].is_null());
    EXPECT_TRUE(json["coverage"]["reference"].is_null());
    EXPECT_EQ(json["cell_name"], "a cell");
    EXPECT_EQ(json["cell"][0]["candidate"]["outcome"], "violated");
}

}  // namespace
}  // namespace standin::model::json_parts
