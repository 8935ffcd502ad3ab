#include "risk/finding_groups.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "src/risk/compared_sheets.h"
#include "support/datasheet_builder.h"

namespace standin::risk {
namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;
using support::RowText;
using support::SheetBuilder;
using testing::compared;

SheetBuilder commonSheet(std::string const& part) {
    SheetBuilder sheet(part);
    sheet.section(model::SectionKind::Description, "Description");
    sheet.sentence("The logger keeps its clock through a long winter.").sentence("A green lamp shows that it listens.");
    sheet.section(model::SectionKind::Characteristics, "Electrical characteristics");
    sheet.specification("Ta = 25 °C", {{.name = "Supply current", .symbol = "ICC", .max = "3", .unit = "µA"}});
    return sheet;
}

void addMounting(SheetBuilder& sheet) {
    sheet.section(model::SectionKind::Other, "Mounting notes");
    sheet.sentence("Keep the lid dry while the glue sets.").sentence("Turn each screw by hand first.").sentence("The strap goes around the mast twice.");
    sheet.figure("Figure 4. Lid and strap", {"LID", "STRAP"}, "lid");
}

std::vector<Finding const*> own(model::Comparison const& comparison) {
    std::vector<Finding const*> list;
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty() && finding.kind != FindingKind::Coverage) list.push_back(&finding);
    }
    return list;
}

TEST(FindingGroups, AChapterOfOneSheetIsOneFindingThatListsItsContent) {
    SheetBuilder reference = commonSheet("QX17");
    addMounting(reference);
    model::Datasheet const r = reference.build();
    model::Datasheet const c = commonSheet("QX17").build();
    auto const comparison = compared(r, c);
    auto const heads = own(comparison);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_EQ(heads[0]->kind, FindingKind::Section);
    EXPECT_EQ(heads[0]->relation, Relation::OnlyReference);
    ASSERT_TRUE(heads[0]->reference);
    EXPECT_EQ(heads[0]->reference->text, "Mounting notes");
    EXPECT_NE(heads[0]->title.find("3 sentences"), std::string::npos) << heads[0]->title;
    EXPECT_NE(heads[0]->title.find("1 figure"), std::string::npos) << heads[0]->title;
    std::set<std::string> listed;
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf == heads[0]->id && finding.reference) listed.insert(finding.reference->text);
    }
    EXPECT_EQ(listed.count("Keep the lid dry while the glue sets."), 1U);
    EXPECT_EQ(listed.count("Turn each screw by hand first."), 1U);
    EXPECT_EQ(listed.count("The strap goes around the mast twice."), 1U);
    EXPECT_EQ(listed.count("Figure 4. Lid and strap"), 1U);
}

TEST(FindingGroups, ExchangeGivesTheSameGroup) {
    SheetBuilder reference = commonSheet("QX17");
    addMounting(reference);
    auto const comparison = compared(commonSheet("QX17").build(), reference.build());
    auto const heads = own(comparison);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_EQ(heads[0]->relation, Relation::OnlyCandidate);
    EXPECT_NE(heads[0]->title.find("in the candidate only"), std::string::npos) << heads[0]->title;
}

// What could hurt somebody is told by itself.
TEST(FindingGroups, AGraveSentenceStandsApart) {
    SheetBuilder reference = commonSheet("QX17");
    addMounting(reference);
    reference.sentence("Charging of a 0 V cell is prohibited.");
    auto const comparison = compared(reference.build(), commonSheet("QX17").build());
    auto const heads = own(comparison);
    ASSERT_EQ(heads.size(), 2U);
    EXPECT_GT(heads[0]->severity, Severity::Note);
    EXPECT_EQ(heads[0]->reference->text, "Charging of a 0 V cell is prohibited.");
}

TEST(FindingGroups, TwoSentencesStayApart) {
    SheetBuilder reference = commonSheet("QX17");
    reference.sentence("Keep the lid dry while the glue sets.").sentence("Turn each screw by hand first.");
    auto const comparison = compared(reference.build(), commonSheet("QX17").build());
    EXPECT_EQ(own(comparison).size(), 2U);
}

TEST(FindingGroups, RowsOfOneParameterHangUnderTheFirst) {
    auto sheet = [](int rows) {
        SheetBuilder builder = commonSheet("QX17");
        std::vector<RowText> list;
        for (int i = 1; i <= rows; ++i) list.push_back({.name = "Wake time", .symbol = "tWK", .condition = "VDD=" + std::to_string(i) + "V", .max = std::to_string(9 - i), .unit = "ms"});
        if (rows > 0) builder.specification("Ta = 25 °C", list);
        return builder.build();
    };
    auto const comparison = compared(sheet(4), sheet(0));
    auto const heads = own(comparison);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_EQ(heads[0]->kind, FindingKind::Parameter);
    EXPECT_NE(heads[0]->title.find("3 more rows"), std::string::npos) << heads[0]->title;
    EXPECT_EQ(std::count_if(comparison.findings.begin(), comparison.findings.end(), [&](Finding const& f) { return f.consequenceOf == heads[0]->id; }), 3);
}

model::Datasheet ratingsOf(std::string const& part, std::vector<std::string> const& versions, std::string const& most, std::string const& lastMost) {
    SheetBuilder builder = commonSheet(part);
    std::vector<RowText> rows;
    for (auto const& version : versions) {
        rows.push_back({.name = "Wake time", .symbol = "tWK", .max = &version == &versions.back() ? lastMost : most, .unit = "ms", .variant = version});
    }
    builder.specification("Ta = 25 °C", rows);
    return builder.build();
}

std::vector<Finding const*> ofWakeTime(model::Comparison const& comparison) {
    auto list = own(comparison);
    std::erase_if(list, [](Finding const* finding) { return finding->kind != FindingKind::Parameter || finding->title.find("Wake time") == std::string::npos; });
    return list;
}

TEST(FindingGroups, VersionsWithTheSameValuesAreToldOnce) {
    auto const comparison = compared(ratingsOf("QX17", {"A", "B", "C"}, "8", "8"), ratingsOf("QX18", {"A", "B", "C"}, "9", "9"));
    auto const heads = ofWakeTime(comparison);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_NE(heads[0]->title.find("(the same for B and C)"), std::string::npos) << heads[0]->title;
    EXPECT_EQ(std::count_if(comparison.findings.begin(), comparison.findings.end(), [&](Finding const& f) { return f.consequenceOf == heads[0]->id; }), 2);
}

TEST(FindingGroups, RowsOfTwoTablesAreToldApart) {
    auto const sheet = [](char const* most) {
        SheetBuilder builder = commonSheet("QX17");
        for (char const* mode : {"Active mode characteristics", "Standby mode characteristics"}) {
            builder.section(model::SectionKind::Characteristics, mode);
            builder.specification("Ta = 25 °C", {{.name = "Wake time", .symbol = "tWK", .max = most, .unit = "ms"}});
        }
        return builder.build();
    };
    EXPECT_EQ(ofWakeTime(compared(sheet("8"), sheet("9"))).size(), 2U) << "two modes, no versions";
    auto const versions = [](char const* most) {
        SheetBuilder builder = commonSheet("QX17");
        std::vector<RowText> const rows{{.name = "Wake time", .symbol = "tWK", .max = most, .unit = "ms", .variant = "A"}, {.name = "Wake time", .symbol = "tWK", .max = most, .unit = "ms", .variant = "B"}};
        for (char const* mode : {"Active mode characteristics", "Standby mode characteristics"}) {
            builder.section(model::SectionKind::Characteristics, mode);
            builder.specification("Ta = 25 °C", rows);
        }
        return builder.build();
    };
    EXPECT_EQ(ofWakeTime(compared(versions("8"), versions("9"))).size(), 2U) << "one a mode";
}

TEST(FindingGroups, AVersionWithAValueOfItsOwnIsToldApart) {
    auto const comparison = compared(ratingsOf("QX17", {"A", "B", "C"}, "8", "8"), ratingsOf("QX18", {"A", "B", "C"}, "9", "12"));
    EXPECT_EQ(ofWakeTime(comparison).size(), 2U);
}

// Counting in groups takes nothing out of the account, and no cause is a consequence itself.
TEST(FindingGroups, NothingIsDroppedAndCausesStandOnTheirOwn) {
    SheetBuilder reference = commonSheet("QX17");
    addMounting(reference);
    model::Datasheet const r = reference.build();
    model::Datasheet const c = commonSheet("QX17").build();
    auto const comparison = compared(r, c);
    EXPECT_EQ(comparison.coverage.compared + comparison.coverage.listed + comparison.coverage.unaccounted,
              r.coverage.numbers + r.coverage.sentences + c.coverage.numbers + c.coverage.sentences);
    EXPECT_GE(comparison.coverage.listed, 3);
    std::set<std::string> ids;
    for (auto const& finding : comparison.findings) EXPECT_TRUE(ids.insert(finding.id).second) << finding.title;
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty()) continue;
        auto const cause = std::find_if(comparison.findings.begin(), comparison.findings.end(), [&](Finding const& f) { return f.id == finding.consequenceOf; });
        ASSERT_NE(cause, comparison.findings.end());
        EXPECT_TRUE(cause->consequenceOf.empty());
    }
}

}  // namespace
}  // namespace standin::risk
