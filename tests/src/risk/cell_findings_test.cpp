#include "risk/cell_findings.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "risk/compare_datasheets.h"
#include "src/risk/invented_protector.h"

namespace standin::risk {
namespace {

using model::CheckOutcome;
using model::Finding;
using model::FindingKind;
using model::Severity;
using model::VerdictLevel;

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

model::Datasheet sheetWith(char const* highest) {
    auto rows = protectorRows();
    rows[0].hi = highest;
    rows[1].hi = highest;
    auto sheet = sheetOf(rows);
    sheet.parameters.push_back(chargerRating("-28"));
    for (auto& row : sheet.parameters) {
        if (auto const* entry = builtIn().find(row.canonical, "lithium-protection")) row.name = entry->title;
        row.printed = row.name + " " + printedValues(row);
    }
    return sheet;
}

CompareOptions against(char const* members) {
    CompareOptions options;
    options.cell = *parseCellProfile(std::string(R"({"schema": "standin.cell/1", "name": "a small cell", )") + members + "}");
    return options;
}

Finding const* cellFinding(model::Comparison const& comparison, char const* check) {
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [check](auto const& finding) { return finding.kind == FindingKind::Cell && finding.canonical == check; });
    return found == comparison.findings.end() ? nullptr : &*found;
}

model::CellCheck const& checkOf(model::Comparison const& comparison, char const* check) {
    return *std::find_if(comparison.cell.begin(), comparison.cell.end(), [check](auto const& one) { return one.check == check; });
}

constexpr char const* kCell = R"("charge_voltage": "4.20 V ±30 mV", "protection_max": "4.33 V")";

TEST(CellFindings, WithoutACellThereAreNone) {
    auto const comparison = *compareDatasheets(sheetWith("4.315"), sheetWith("4.315"), {}, builtIn());
    EXPECT_TRUE(comparison.cell.empty());
    EXPECT_EQ(cellFinding(comparison, "overcharge-upper"), nullptr);
}

TEST(CellFindings, ANewViolationHangsUnderTheChangeAndLiftsIt) {
    auto const comparison = *compareDatasheets(sheetWith("4.315"), sheetWith("4.335"), against(kCell), builtIn());
    auto const* finding = cellFinding(comparison, "overcharge-upper");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->level, 4);
    EXPECT_EQ(finding->severity, Severity::Hazard);
    EXPECT_EQ(finding->caution, "C-OC");
    auto const cause = std::find_if(comparison.findings.begin(), comparison.findings.end(), [&](auto const& one) { return one.id == finding->consequenceOf; });
    ASSERT_NE(cause, comparison.findings.end());
    EXPECT_EQ(cause->canonical, "overcharge-detect-voltage");
    EXPECT_EQ(cause->level, 4) << "beyond the cell's own limit";
    EXPECT_EQ(comparison.verdict.level, VerdictLevel::DoNotSubstitute);
    auto const& check = checkOf(comparison, "overcharge-upper");
    EXPECT_EQ(check.reference->outcome, CheckOutcome::Holds);
    EXPECT_EQ(check.candidate->outcome, CheckOutcome::Violated);
    EXPECT_EQ(check.finding, finding->id);
    EXPECT_EQ(check.level, 4);
    EXPECT_EQ(comparison.cellName, "a small cell");
}

TEST(CellFindings, WhatTheReferenceFailsTooIsNoJustification) {
    auto const comparison = *compareDatasheets(sheetWith("4.335"), sheetWith("4.335"), against(kCell), builtIn());
    auto const* finding = cellFinding(comparison, "overcharge-upper");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->consequenceOf, "");
    EXPECT_EQ(finding->relation, model::Relation::Same);
    EXPECT_NE(finding->explanation.find("The reference does not meet this either"), std::string::npos);
    EXPECT_EQ(comparison.verdict.level, VerdictLevel::DoNotSubstitute);
}

TEST(CellFindings, OnlyTheReferenceFails) {
    auto const comparison = *compareDatasheets(sheetWith("4.335"), sheetWith("4.315"), against(kCell), builtIn());
    auto const* finding = cellFinding(comparison, "overcharge-upper");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::Note);
    EXPECT_EQ(finding->judgement, model::Judgement::Better);
    EXPECT_EQ(checkOf(comparison, "overcharge-upper").level, 0);
}

TEST(CellFindings, WhatTheUsersFilesLeaveOutIsANoteAndIncomplete) {
    auto const comparison = *compareDatasheets(sheetWith("4.315"), sheetWith("4.315"), against(kCell), builtIn());
    auto const* finding = cellFinding(comparison, "drain");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::Note);
    EXPECT_TRUE(finding->open);
    EXPECT_EQ(finding->caution, "");
    EXPECT_NE(finding->title.find("the circuit file gives no storage_time"), std::string::npos) << finding->title;
    EXPECT_TRUE(comparison.verdict.incomplete);
    EXPECT_LE(comparison.verdict.level, VerdictLevel::SmallDifferences);
}

TEST(CellFindings, WhatTheSheetDoesNotStateIsOpenAtItsOwnLevel) {
    auto sheet = sheetWith("4.315");
    std::erase_if(sheet.parameters, [](auto const& row) { return row.canonical == "overdischarge-detect-voltage"; });
    auto const comparison = *compareDatasheets(sheet, sheet, against(R"("charge_voltage": "4.20 V", "protection_min": "2.5 V")"), builtIn());
    auto const* finding = cellFinding(comparison, "overdischarge-lower");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->level, 3);
    EXPECT_TRUE(finding->open);
    EXPECT_EQ(finding->caution, "C-OD");
}

TEST(CellFindings, NotMadeForAnotherKindOfPart) {
    auto sheet = sheetOf({{"float-voltage", "4.158", "4.20", "4.242"}, {"termination-current", "0.045", "0.05", "0.055", "A"}, {"recharge-threshold", "4.0", "4.05", "4.1"}});
    for (auto& row : sheet.parameters) row.name = builtIn().find(row.canonical, "lithium-charger")->title;
    sheet.document.title = "Linear Li-ion battery charger";
    auto const comparison = *compareDatasheets(sheet, sheet, against(kCell), builtIn());
    EXPECT_TRUE(comparison.cell.empty());
    auto const* finding = cellFinding(comparison, "not-made");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::Note);
    EXPECT_TRUE(finding->open);
    EXPECT_TRUE(std::any_of(comparison.derived.begin(), comparison.derived.end(), [](auto const& derived) { return derived.canonical == "float-to-cell-margin"; }));
}

TEST(CheckCandidate, TheCandidateAlone) {
    auto const checked = *checkCandidate(sheetWith("4.335"), against(kCell), builtIn());
    EXPECT_FALSE(checked.hasReference());
    EXPECT_EQ(checked.verdict.level, VerdictLevel::DoNotSubstitute);
    EXPECT_NE(checked.verdict.sentence.find("Of 17 checks against the cell"), std::string::npos) << checked.verdict.sentence;
    ASSERT_EQ(checked.cell.size(), 17U);
    for (auto const& check : checked.cell) EXPECT_FALSE(check.reference);
    for (auto const& finding : checked.findings) {
        EXPECT_FALSE(finding.reference) << finding.title;
        EXPECT_TRUE(finding.kind == FindingKind::Cell || finding.kind == FindingKind::Coverage) << finding.title;
    }
    EXPECT_EQ(checked.pairs.size(), sheetWith("4.335").parameters.size());
    EXPECT_GT(checked.coverage.compared, 0);
    EXPECT_EQ(checked.coverage.compared + checked.coverage.listed, static_cast<int>(checked.pairs.size()));
}

TEST(CheckCandidate, WantsACellAndAKnownVersion) {
    EXPECT_FALSE(checkCandidate(sheetWith("4.335"), {}, builtIn()));
    auto options = against(kCell);
    options.candidateVariant = "NO-SUCH";
    EXPECT_FALSE(checkCandidate(sheetWith("4.335"), options, builtIn()));
}

TEST(CheckCandidate, PagesThatWereNotReadAreFindings) {
    auto sheet = sheetWith("4.315");
    sheet.coverage.pagesWithoutText = {2};
    auto const checked = *checkCandidate(sheet, against(kCell), builtIn());
    EXPECT_TRUE(std::any_of(checked.findings.begin(), checked.findings.end(), [](auto const& finding) { return finding.kind == FindingKind::Coverage; }));
    EXPECT_TRUE(checked.verdict.incomplete);
}

}  // namespace
}  // namespace standin::risk
