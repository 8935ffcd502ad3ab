#include "risk/compare_datasheets.h"

#include <gtest/gtest.h>

namespace standin::risk {
namespace {

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

model::Datasheet sheet(char const* high) {
    model::Datasheet made;
    made.document.file = "fw1.pdf";
    made.document.languages = {"en"};
    made.ordering.push_back({"FW-1 AB", {}, {}, 1, {}});
    made.ordering.push_back({"FW-1 CD", {}, {}, 1, {}});
    model::Parameter parameter;
    parameter.id = "p1";
    parameter.name = "Overcharge detection voltage";
    parameter.symbol = "VCU";
    parameter.canonical = "overcharge-detect-voltage";
    parameter.kind = model::ParameterKind::Characteristic;
    parameter.page = 3;
    parameter.unit = "V";
    parameter.min = model::Value{.text = "4.255", .printed = "4.255", .value = "4.255", .box = {}};
    parameter.max = model::Value{.text = high, .printed = high, .value = high, .box = {}};
    parameter.interval = model::Interval{.lo = "4.255", .typ = std::nullopt, .hi = high, .loOpen = false, .hiOpen = false, .unit = "V", .relativeTo = {}, .factor = {}};
    parameter.printed = std::string("Overcharge detection voltage | VCU | 4.255 | ") + high + " | V";
    made.parameters.push_back(parameter);
    return made;
}

TEST(CompareDatasheets, AlignsAndJudges) {
    auto const comparison = compareDatasheets(sheet("4.305"), sheet("4.340"), {}, builtIn());
    ASSERT_TRUE(comparison);
    ASSERT_FALSE(comparison->findings.empty());
    EXPECT_EQ(comparison->findings[0].severity, model::Severity::Hazard);
    EXPECT_EQ(comparison->findings[0].title, "Overcharge detection voltage reaches higher by 35 mV");
    EXPECT_EQ(comparison->verdict.level, model::VerdictLevel::BenchTest);
}

TEST(CompareDatasheets, AnUnknownVariantIsAUsageErrorThatListsThoseThatExist) {
    auto const comparison = compareDatasheets(sheet("4.305"), sheet("4.305"), {.referenceVariant = "FW-9", .candidateVariant = {}}, builtIn());
    ASSERT_FALSE(comparison);
    EXPECT_EQ(comparison.error().kind, model::ErrorKind::Usage);
    EXPECT_EQ(comparison.error().file, "fw1.pdf");
    EXPECT_EQ(comparison.error().message, "variant \"FW-9\" was not found; the sheet has FW-1 AB, FW-1 CD");
}

// "Characteristics of FW-21", then a table of FW-22: no column names them.
TEST(CompareDatasheets, AVersionMayBeNamedInTheTitleOfItsTableOnly) {
    auto made = sheet("4.305");
    made.document.partNumbers = {"FW-20"};
    made.ordering.clear();
    made.parameters.push_back(made.parameters.front());
    made.parameters.back().id = "p2";
    for (std::string const number : {"1", "2"}) {
        model::Table table;
        table.id = "t" + number;
        table.page = 3;
        table.kind = model::TableKind::Specification;
        table.caption = "Characteristics of FW-2" + number;
        made.tables.push_back(table);
        made.parameters[number == "1" ? 0 : 1].table = table.id;
    }
    EXPECT_EQ(knownVariants(made), (std::vector<std::string>{"FW-21", "FW-22"}));
    auto const comparison = compareDatasheets(made, sheet("4.305"), {.referenceVariant = "FW-22", .candidateVariant = {}}, builtIn());
    ASSERT_TRUE(comparison);
    for (auto const& pair : comparison->pairs) EXPECT_NE(pair.reference, "p1");
}

// One row for all versions, and what VCU is in the lines of the ordering table.
model::Datasheet familySheet() {
    auto made = sheet("4.305");
    auto& row = made.parameters.front();
    row.min = model::Value{.text = "VCU-0.025", .printed = "VCU-0.025", .value = {}, .box = {}};
    row.max = model::Value{.text = "VCU+0.025", .printed = "VCU+0.025", .value = {}, .box = {}};
    row.interval = model::Interval{.lo = "-0.025", .typ = std::nullopt, .hi = "0.025", .loOpen = false, .hiOpen = false, .unit = "V", .relativeTo = "VCU", .factor = {}};
    row.printed = "Overcharge detection voltage | VCU | VCU-0.025 | VCU+0.025 | V";
    made.ordering[0].attributes = {{"Overcharge detection voltage VCU", "4.280 V"}, {"0 V battery charge", "inhibited"}};
    made.ordering[1].attributes = {{"Overcharge detection voltage VCU", "4.425 V"}, {"0 V battery charge", "allowed"}};
    made.ordering[0].box = {50, 40, 400, 50};
    made.ordering[1].box = {50, 52, 400, 62};
    made.features = {{.canonical = "zero-volt-charging", .state = "inhibited", .page = 1, .box = made.ordering[0].box, .text = "0 V battery charge: inhibited"},
                     {.canonical = "zero-volt-charging", .state = "allowed", .page = 1, .box = made.ordering[1].box, .text = "0 V battery charge: allowed"}};
    return made;
}

TEST(CompareDatasheets, TwoVersionsOfOneSheetDifferByTheirLines) {
    auto const same = compareDatasheets(familySheet(), familySheet(), {.referenceVariant = "FW-1 CD", .candidateVariant = "FW-1 CD"}, builtIn());
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->findings.empty());
    auto const compared = compareDatasheets(familySheet(), familySheet(), {.referenceVariant = "FW-1 AB", .candidateVariant = "FW-1 CD"}, builtIn());
    ASSERT_TRUE(compared);
    std::vector<std::string> titles;
    for (auto const& finding : compared->findings) {
        if (finding.consequenceOf.empty()) titles.push_back(finding.title);
    }
    EXPECT_EQ(titles, (std::vector<std::string>{"0 V battery charging: inhibited in the reference, allowed in the candidate",
                                                "Overcharge detection voltage lies clear above the reference's range (maximum higher by 145 mV)"}));
    EXPECT_EQ(compared->verdict.level, model::VerdictLevel::DoNotSubstitute);
}

TEST(CompareDatasheets, LinesOfVersionsThatWereNotChosenWeighNothing) {
    auto candidate = familySheet();
    candidate.ordering[0].attributes[0].second = "4.600 V";
    auto const compared = compareDatasheets(familySheet(), candidate, {.referenceVariant = "FW-1 CD", .candidateVariant = "FW-1 CD"}, builtIn());
    ASSERT_TRUE(compared);
    ASSERT_EQ(compared->findings.size(), 1U);
    EXPECT_EQ(compared->findings[0].kind, model::FindingKind::Ordering);
    EXPECT_EQ(compared->findings[0].severity, model::Severity::Note);
}

TEST(CompareDatasheets, VersionsOfTwoFamiliesHaveToBeChosen) {
    auto candidate = familySheet();
    candidate.ordering[0].code = "LM-1 AB";
    candidate.ordering[1].code = "LM-1 CD";
    auto const compared = compareDatasheets(familySheet(), candidate, {}, builtIn());
    ASSERT_TRUE(compared);
    auto const told = [](model::Finding const& finding) { return finding.caution == "C-VAR"; };
    EXPECT_TRUE(std::any_of(compared->findings.begin(), compared->findings.end(), told));
    EXPECT_TRUE(compared->verdict.incomplete);
}

TEST(CompareDatasheets, VariantsAreFoundAsPrintedOrFolded) {
    std::vector<std::string> const known = {"FW-1 AB", "FW-1 CD"};
    EXPECT_EQ(findVariant(known, "FW-1 CD"), "FW-1 CD");
    EXPECT_EQ(findVariant(known, "fw1cd"), "FW-1 CD");
    EXPECT_EQ(findVariant({"FW-1S", "FW-1+"}, "fw1"), std::nullopt) << "other versions";
    EXPECT_FALSE(findVariant(known, "FW-1"));
    EXPECT_EQ(knownVariants(sheet("4.3")), known);
}

}  // namespace
}  // namespace standin::risk
