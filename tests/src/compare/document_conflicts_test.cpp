#include "compare/document_conflicts.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "compare/align.h"
#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Datasheet;
using model::Finding;
using model::FindingKind;
using model::Relation;
using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

RowText detection(std::string const& typ) {
    return {.name = "Overcharge detection voltage", .symbol = "VCU", .min = "4.25", .typ = typ, .max = "4.31", .unit = "V", .canonical = "overcharge-detect-voltage"};
}

// The first table on page 1, the second on page 2.
Datasheet sheetOf(std::vector<RowText> const& first, std::vector<RowText> const& second, std::string const& secondCondition = "Ta=25°C") {
    SheetBuilder sheet;
    sheet.section(model::SectionKind::Characteristics, "Electrical characteristics").sentence("The logger watches one cell.").sentence("It wakes when the lamp is lit.");
    sheet.specification("Ta=25°C", first);
    sheet.nextPage().section(model::SectionKind::Characteristics, "Detection levels");
    sheet.specification(secondCondition, second);
    return sheet.build();
}

std::vector<Finding> conflicts(Datasheet const& reference, Datasheet const& candidate) {
    std::vector<Finding> list;
    for (auto const& finding : align(reference, candidate, {}, words()).findings) {
        if (finding.relation == Relation::ConflictInDocument) list.push_back(finding);
    }
    return list;
}

TEST(DocumentConflicts, NamesBothPlacesOfTheSheetThatContradictsItself) {
    Datasheet const sound = sheetOf({detection("4.28")}, {detection("4.280")});
    Datasheet const torn = sheetOf({detection("4.28")}, {detection("4.26")});
    EXPECT_TRUE(conflicts(sound, sound).empty());
    auto const inCandidate = conflicts(sound, torn);
    ASSERT_EQ(inCandidate.size(), 1U);
    EXPECT_EQ(inCandidate[0].kind, FindingKind::Parameter);
    EXPECT_FALSE(inCandidate[0].reference);
    ASSERT_TRUE(inCandidate[0].candidate);
    EXPECT_NE(inCandidate[0].candidate->text.find("4.28"), std::string::npos);
    EXPECT_NE(inCandidate[0].candidate->text.find("4.26"), std::string::npos);
    EXPECT_NE(inCandidate[0].candidate->text.find("page 2"), std::string::npos);
    // It follows from the one printed change.
    EXPECT_FALSE(inCandidate[0].consequenceOf.empty());
    auto const mirrored = conflicts(torn, sound);
    ASSERT_EQ(mirrored.size(), 1U);
    EXPECT_TRUE(mirrored[0].reference);
    EXPECT_FALSE(mirrored[0].candidate);
}

TEST(DocumentConflicts, AConflictOfBothSheetsIsNoDifference) {
    Datasheet const torn = sheetOf({detection("4.28")}, {detection("4.26")});
    auto const list = conflicts(torn, torn);
    ASSERT_EQ(list.size(), 1U);
    EXPECT_EQ(list[0].kind, FindingKind::Coverage);
}

TEST(DocumentConflicts, OtherConditionsVersionsAndNamesAreNone) {
    Datasheet const sound = sheetOf({detection("4.28")}, {});
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28")}, {detection("4.26")}, "Ta=-20 to 60°C")).empty());
    RowText other = detection("4.26");
    other.variant = "QX18";
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28")}, {other})).empty());
    other = detection("4.26");
    other.name = "Level of the second cell";
    other.symbol = "VC2";
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28")}, {other})).empty());
}

TEST(DocumentConflicts, TablesOfTwoVersionsAreNone) {
    auto level = [](std::string const& typ) { return RowText{.name = "Overdischarge detection voltage", .symbol = "VDL", .typ = typ, .unit = "V", .canonical = "overdischarge-detect-voltage"}; };
    auto delay = [](std::string const& typ) { return RowText{.name = "Overcharge detection delay", .symbol = "tCU", .typ = typ, .unit = "s", .canonical = "overcharge-detect-delay"}; };
    Datasheet const sound = sheetOf({detection("4.28")}, {});
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28"), level("2.4")}, {detection("4.26"), level("2.5")})).empty());
    EXPECT_EQ(conflicts(sound, sheetOf({detection("4.28"), level("2.4"), delay("1")}, {detection("4.26"), level("2.4"), delay("1")})).size(), 1U);
}

TEST(DocumentConflicts, ARangeWithinARatingIsNone) {
    auto supply = [](std::string const& low, std::string const& high) {
        return RowText{.name = "Supply voltage", .symbol = "VDD", .min = low, .max = high, .unit = "V", .canonical = "supply-rating", .kind = model::ParameterKind::Rating};
    };
    Datasheet const sound = sheetOf({supply("-0.5", "18")}, {});
    EXPECT_TRUE(conflicts(sound, sheetOf({supply("-0.5", "18")}, {supply("3", "15")})).empty());
    EXPECT_EQ(conflicts(sound, sheetOf({supply("-0.5", "18")}, {supply("-0.5", "15")})).size(), 0U);
    EXPECT_EQ(conflicts(sound, sheetOf({supply("-0.5", "18")}, {supply("-0.5", "20")})).size(), 1U);
}

// What tells the rows of one table apart may not have been read.
TEST(DocumentConflicts, RowsThatOneTableRepeatsAreNone) {
    Datasheet const sound = sheetOf({detection("4.28")}, {});
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28"), detection("4.26")}, {})).empty());
    EXPECT_TRUE(conflicts(sound, sheetOf({detection("4.28")}, {detection("4.26"), detection("4.27")})).empty());
}

}  // namespace
}  // namespace standin::compare
