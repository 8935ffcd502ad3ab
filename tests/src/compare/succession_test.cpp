#include "compare/succession.h"

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

using Texts = std::vector<std::string>;

std::vector<Texts> upTo(char last) {
    std::vector<Texts> rows{
        {"Revision", "Date", "Change"}, {"A", "2018-02-19", "First issue"}, {"B", "2019-07-08", "Lamp delay added"}, {"C", "2022-03-30", "Lamp current raised"}};
    rows.resize(static_cast<std::size_t>(last - 'A') + 2);
    return rows;
}

TEST(Succession, TheEntriesBeyondTheOlderRevision) {
    auto const succession = successionOf(sheetWith(upTo('A')).build(), sheetWith(upTo('C')).build(), words());
    ASSERT_TRUE(succession);
    EXPECT_EQ(succession->newer, NewerSheet::Candidate);
    EXPECT_EQ(succession->from, "A");
    EXPECT_EQ(succession->to, "C");
    ASSERT_EQ(succession->entries.size(), 2U);
    EXPECT_TRUE(succession->complete);
}

TEST(Succession, ExchangedTheReferenceIsNewer) {
    auto const succession = successionOf(sheetWith(upTo('C')).build(), sheetWith(upTo('B')).build(), words());
    ASSERT_TRUE(succession);
    EXPECT_EQ(succession->newer, NewerSheet::Reference);
    EXPECT_EQ(succession->entries.size(), 1U);
}

TEST(Succession, AnOlderSheetWithoutAHistoryIsPlacedByItsRevisionOrDate) {
    SheetBuilder byRevision = sheetOf("QX17");
    byRevision.sheet().document.revision = "B";
    auto const first = successionOf(byRevision.build(), sheetWith(upTo('C')).build(), words());
    ASSERT_TRUE(first);
    EXPECT_EQ(first->entries.size(), 1U);
    SheetBuilder byDate = sheetOf("QX17");
    byDate.sheet().document.date = "September 2019";
    auto const second = successionOf(byDate.build(), sheetWith(upTo('C')).build(), words());
    ASSERT_TRUE(second);
    EXPECT_EQ(second->entries.size(), 1U);
}

TEST(Succession, AHistoryThatBeginsTooLateIsNotComplete) {
    SheetBuilder older = sheetOf("QX17");
    older.sheet().document.revision = "A";
    auto const succession = successionOf(older.build(), sheetWith({{"Revision", "Change"}, {"C", "Lamp current raised"}}).build(), words());
    ASSERT_TRUE(succession);
    EXPECT_FALSE(succession->complete);
}

TEST(Succession, OtherPartsTheSameRevisionOrNoHistoryAreNone) {
    SheetBuilder other = sheetOf("ZW44");
    other.section(SectionKind::Revision, "Revision history");
    other.table(TableKind::Revision, upTo('C'));
    EXPECT_FALSE(successionOf(sheetWith(upTo('B')).build(), other.build(), words()));
    EXPECT_FALSE(successionOf(sheetWith(upTo('C')).build(), sheetWith(upTo('C')).build(), words()));
    EXPECT_FALSE(successionOf(sheetOf("QX17").build(), sheetOf("QX17").build(), words()));
}

TEST(Succession, TwoMakersSheetsOfOnePartNumberAreNone) {
    SheetBuilder other("QX17");
    other.sentence("This driver feeds three lamps from one cell of any kind.").sentence("Its delay is set by a capacitor at the second pin.");
    other.sheet().document.revision = "B";
    EXPECT_FALSE(successionOf(other.build(), sheetWith(upTo('C')).build(), words()));
}

}  // namespace
}  // namespace standin::compare