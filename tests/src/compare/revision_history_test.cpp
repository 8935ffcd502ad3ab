#include "compare/revision_history.h"

#include <gtest/gtest.h>

#include "src/compare/history_sheets.h"

namespace standin::compare {
namespace {

using model::SectionKind;
using model::TableKind;
using support::SheetBuilder;
using testing::sheetOf;
using testing::sheetWith;
using testing::words;

std::vector<std::string> textsOf(HistoryEntry const& entry) {
    std::vector<std::string> texts;
    for (auto const& statement : entry.statements) texts.push_back(statement.text);
    return texts;
}

using Texts = std::vector<std::string>;

TEST(RevisionHistory, RowsOfATableInWhateverOrderOfColumns) {
    for (auto const& rows :
         {std::vector<Texts>{{"Revision", "Date", "Change"}, {"A", "2018-02-19", "First issue"}, {"C", "2022-03-30", "Lamp current 5 mA (was 7 mA). Spelling."}},
          std::vector<Texts>{{"Date", "Change", "Revision"}, {"2018-02-19", "First issue", "A"}, {"2022-03-30", "Lamp current 5 mA (was 7 mA). Spelling.", "C"}}}) {
        auto const entries = readHistory(sheetWith(rows).build(), words());
        ASSERT_EQ(entries.size(), 2U);
        EXPECT_EQ(entries[0].revision, "A");
        EXPECT_TRUE(entries[0].statements.empty());
        EXPECT_EQ(entries[1].revision, "C");
        EXPECT_EQ(entries[1].date, 20220330);
        EXPECT_EQ(textsOf(entries[1]), (Texts{"Lamp current 5 mA (was 7 mA).", "Spelling."}));
    }
}

TEST(RevisionHistory, AColumnOfPagesTellsWhereToLook) {
    auto const entries = readHistory(sheetWith({{"Version", "Date", "Page", "Description"},
                                                {"1.0", "2011/08/29", "ALL", "New release"},
                                                {"1.1", "2011/10/25", "7,10", "Add lamp delay"},
                                                {"", "", "9", "Revise beam text"}})
                                         .build(),
                                     words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[1].revision, "1.1");
    ASSERT_EQ(entries[1].statements.size(), 2U);
    EXPECT_EQ(entries[1].statements[0].page, 7);
    EXPECT_EQ(entries[1].statements[1].text, "Revise beam text");
    EXPECT_EQ(entries[1].statements[1].page, 9);
}

TEST(RevisionHistory, WhatStandsBelowItsTableIsNoStatement) {
    auto sheet = sheetWith({{"Revision", "Date", "Change"}, {"A", "2018-02-19", "First issue"}, {"B", "2022-06-14", "Lamp current 5 mA (was 7 mA)."}});
    sheet.sentence("A later issue of this sheet takes the place of this one.").sentence("Quarry Lamps, Phone 0555 0142.");
    auto const entries = readHistory(sheet.build(), words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(textsOf(entries[1]), (Texts{"Lamp current 5 mA (was 7 mA)."}));
    EXPECT_EQ(entries[1].statements[0].page, 0) << "a date is no page";
}

TEST(RevisionHistory, ARowWithoutARevisionGoesOnWithTheOneBefore) {
    auto const entries = readHistory(sheetWith({{"Document", "Release date", "Status"},
                                                {"QX17 v.4", "20150126", "Product"},
                                                {"Changes:", "• Table 7: lamp delay corrected. • Types QX17N removed."},
                                                {"QX17 v.3", "20111212", "Product"}})
                                         .build(),
                                     words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].revision, "4");
    EXPECT_EQ(textsOf(entries[0]), (Texts{"Table 7: lamp delay corrected.", "Types QX17N removed."}));
    EXPECT_EQ(entries[1].revision, "3");
}

TEST(RevisionHistory, LinesWithLeadersAndPages) {
    SheetBuilder sheet("QX17");
    sheet.section(SectionKind::Revision, "4 Revision History");
    sheet.sentence("NOTE: page numbers of earlier revisions may differ.");
    sheet.sentence("Changes from Revision B (May 2018) to Revision C (June 2020) Page");
    sheet.sentence("• Added lamp delay ..................................................... 7");
    sheet.sentence("• Changed text from: \"The lamp is red.\"");
    sheet.sentence("To: \"The lamp is green.\" in the Lamps section ............................");
    sheet.sentence("12");
    sheet.sentence("Changes from Original (March 2017) to Revision A Page");
    sheet.sentence("• Changed Features ......................1");
    auto const entries = readHistory(sheet.build(), words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].revision, "C");
    EXPECT_EQ(entries[0].earlier, "B");
    EXPECT_EQ(entries[0].date, 20200600);
    ASSERT_EQ(entries[0].statements.size(), 2U);
    EXPECT_EQ(entries[0].statements[0].text, "Added lamp delay");
    EXPECT_EQ(entries[0].statements[0].page, 7);
    EXPECT_EQ(entries[0].statements[1].text, "Changed text from: \"The lamp is red.\" To: \"The lamp is green.\" in the Lamps section");
    EXPECT_EQ(entries[0].statements[1].page, 12);
    EXPECT_EQ(entries[1].revision, "A");
    EXPECT_EQ(textsOf(entries[1]), Texts{"Changed Features"});
}

TEST(RevisionHistory, AListThatWasTakenForATableLosesNoRow) {
    SheetBuilder sheet("QX17");
    sheet.section(SectionKind::Revision, "4 Revision History");
    sheet.sentence("Changes from Revision B (May 2018) to Revision C (June 2020) Page");
    sheet.table(
        TableKind::Revision,
        {{"• Added lamp delay", "7"}, {"• Changed beam text", "12"}, {"Changes from Revision A (March 2017) to Revision B (May 2018)", "Page"}, {"• Deleted case table", "3"}});
    auto const entries = readHistory(sheet.build(), words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(textsOf(entries[0]), (Texts{"Added lamp delay", "Changed beam text"}));
    EXPECT_EQ(entries[0].statements[1].page, 12);
    EXPECT_EQ(entries[1].revision, "B");
    EXPECT_EQ(textsOf(entries[1]), Texts{"Deleted case table"});
}

TEST(RevisionHistory, LinesThatBeginWithTheRevision) {
    SheetBuilder sheet("QX17");
    sheet.section(SectionKind::Revision, "修订历史");
    sheet.sentence("V1.0 2019-01 初版");
    sheet.sentence("V1.1 2020-05 灯电流改为5 mA");
    auto const entries = readHistory(sheet.build(), words());
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[1].revision, "1.1");
    EXPECT_EQ(entries[1].date, 20200500);
    EXPECT_EQ(entries[1].statements.size(), 1U);
}

}  // namespace
}  // namespace standin::compare
