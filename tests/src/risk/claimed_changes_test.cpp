#include "risk/claimed_changes.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "src/risk/compared_sheets.h"
#include "support/datasheet_builder.h"

namespace standin::risk {
namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;
using model::SectionKind;
using model::Severity;
using model::TableKind;
using support::RowText;
using support::SheetBuilder;
using testing::compared;

struct Values {
    std::string lampCurrent = "40";
    std::string pulsedLampCurrent = "70";
    std::string delay = "12";
    std::string description = "The lamp is lit while the beam is broken.";
};

// `change`: of revision C; empty: the sheet is revision B.
std::vector<std::vector<std::string>> historyWith(std::string const& change) {
    std::vector<std::vector<std::string>> rows{{"Revision", "Date", "Change"}, {"A", "2018-02-19", "First issue"}, {"B", "2019-07-08", "Case added"}};
    if (!change.empty()) rows.push_back({"C", "2022-03-30", change});
    return rows;
}

model::Datasheet sheet(Values const& values, std::string const& change, std::string const& part = "QX17") {
    SheetBuilder made(part);
    made.section(SectionKind::Description, "Description");
    made.sentence(values.description).sentence("It keeps its clock through a long winter.").sentence("A green case protects it from rain and snow.");
    made.section(SectionKind::Characteristics, "Electrical characteristics");
    made.specification("Ta = 25 °C", {{.name = "Lamp current", .symbol = "ILA", .max = values.lampCurrent, .unit = "mA"},
                                      {.name = "Pulsed lamp current", .symbol = "ILP", .max = values.pulsedLampCurrent, .unit = "mA"},
                                      {.name = "Beam delay", .symbol = "tBD", .max = values.delay, .unit = "ms"}});
    made.section(SectionKind::Revision, "Revision history");
    made.table(TableKind::Revision, historyWith(change));
    return made.build();
}

Finding const* unmentioned(model::Comparison const& comparison) {
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [](Finding const& f) { return !f.regarding.empty(); });
    return found == comparison.findings.end() ? nullptr : &*found;
}

std::vector<Finding const*> unanswered(model::Comparison const& comparison) {
    std::vector<Finding const*> list;
    for (auto const& f : comparison.findings) {
        if (f.title.find("was not found") != std::string::npos) list.push_back(&f);
    }
    return list;
}

std::vector<std::string> titlesOf(model::Comparison const& comparison, Finding const& group) {
    std::vector<std::string> titles;
    for (auto const& id : group.regarding) {
        for (auto const& f : comparison.findings) {
            if (f.id == id) titles.push_back(f.title);
        }
    }
    EXPECT_EQ(titles.size(), group.regarding.size());
    return titles;
}

TEST(ClaimedChanges, WhatTheHistoryStatesIsAnsweredByItsFinding) {
    auto const comparison = compared(sheet({}, ""), sheet({.delay = "15"}, "Beam delay 15 ms (was 12 ms)."));
    EXPECT_EQ(unmentioned(comparison), nullptr);
    EXPECT_TRUE(unanswered(comparison).empty());
}

TEST(ClaimedChanges, WhatTheHistoryDoesNotMentionIsOneNoteThatNamesIt) {
    auto const comparison = compared(sheet({}, ""), sheet({.pulsedLampCurrent = "60", .delay = "15"}, "Beam delay 15 ms (was 12 ms). Spelling."));
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->kind, FindingKind::Document);
    EXPECT_EQ(group->relation, Relation::OnlyCandidate);
    EXPECT_EQ(group->severity, Severity::Note);
    EXPECT_EQ(group->level, 1);
    EXPECT_EQ(group->id.size(), 12U);
    auto const titles = titlesOf(comparison, *group);
    ASSERT_EQ(titles.size(), 1U);
    EXPECT_NE(titles[0].find("Pulsed lamp current"), std::string::npos) << titles[0];
    EXPECT_NE(group->explanation.find("Pulsed lamp current"), std::string::npos) << group->explanation;
    for (auto const& f : comparison.findings) {
        bool const says = f.explanation.find("does not mention it") != std::string::npos;
        EXPECT_EQ(says, f.id == group->regarding.front()) << f.title;
    }
}

TEST(ClaimedChanges, AClaimOfAnotherParameterWithMostOfTheWordsIsNoAnswer) {
    auto const comparison = compared(sheet({}, ""), sheet({.lampCurrent = "35"}, "Pulsed lamp current changed."));
    ASSERT_NE(unmentioned(comparison), nullptr);
    EXPECT_EQ(unanswered(comparison).size(), 1U);
}

TEST(ClaimedChanges, AClaimOfOtherValuesIsNoAnswer) {
    auto const comparison = compared(sheet({}, ""), sheet({.delay = "25"}, "Beam delay 15 ms (was 14 ms)."));
    EXPECT_NE(unmentioned(comparison), nullptr);
    EXPECT_EQ(unanswered(comparison).size(), 1U);
}

TEST(ClaimedChanges, AClaimOfTwoValuesIsAnsweredByBoth) {
    auto const reference = sheet({}, "");
    EXPECT_TRUE(unanswered(compared(reference, sheet({.delay = "15"}, "Beam delay changed from 12 ms to 15 ms."))).empty());
    EXPECT_EQ(unanswered(compared(reference, sheet({.delay = "25"}, "Beam delay changed from 12 ms to 15 ms."))).size(), 1U) << "the new value is another";
    EXPECT_EQ(unanswered(compared(reference, sheet({.delay = "15"}, "Beam delay changed from 11 ms to 15 ms."))).size(), 1U) << "the old value is another";
}

TEST(ClaimedChanges, AClaimThatWasChangedOnceMoreShowsOneOfItsValues) {
    auto const comparison = compared(sheet({}, ""), sheet({.delay = "15"}, "Beam delay changed from 12 ms to 14 ms. Maximum beam delay changed from 14 ms to 15 ms."));
    EXPECT_TRUE(unanswered(comparison).empty());
    EXPECT_EQ(unmentioned(comparison), nullptr);
}

TEST(ClaimedChanges, AClaimThatNothingShowsIsANoteOfItsOwn) {
    auto const comparison = compared(sheet({}, ""), sheet({}, "Beam delay 15 ms (was 12 ms)."));
    EXPECT_EQ(unmentioned(comparison), nullptr);
    auto const claims = unanswered(comparison);
    ASSERT_EQ(claims.size(), 1U);
    EXPECT_EQ(claims[0]->severity, Severity::Note);
    EXPECT_TRUE(claims[0]->open);
    ASSERT_TRUE(claims[0]->candidate);
    EXPECT_EQ(claims[0]->candidate->text, "Beam delay 15 ms (was 12 ms).");
    EXPECT_EQ(claims[0]->candidate->page, 1);
}

// Of three versions that print the same.
model::Datasheet versions(std::string const& lampCurrent, std::string const& change) {
    SheetBuilder made("QX17");
    made.section(SectionKind::Characteristics, "Electrical characteristics");
    std::vector<RowText> rows;
    for (char const* version : {"QX17A", "QX17B", "QX17C"}) rows.push_back({.name = "Lamp current", .symbol = "ILA", .max = lampCurrent, .unit = "mA", .variant = version});
    made.specification("Ta = 25 °C", rows);
    made.section(SectionKind::Revision, "Revision history");
    return made.table(TableKind::Revision, historyWith(change)).build();
}

TEST(ClaimedChanges, AVersionThatIsToldUnderAnotherIsNotPassedOver) {
    auto const old = versions("40", "");
    auto const of = [&](char const* change) { return compared(old, versions("60", change)); };
    EXPECT_EQ(unmentioned(of("Lamp current changed from 40 mA to 60 mA.")), nullptr) << "of all";
    auto const one = of("Lamp current of QX17A changed from 40 mA to 60 mA.");
    auto const* group = unmentioned(one);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(titlesOf(one, *group).size(), 2U);
    EXPECT_NE(group->explanation.find("(QX17B)"), std::string::npos) << group->explanation;
    EXPECT_NE(group->explanation.find("(QX17C)"), std::string::npos) << group->explanation;
    EXPECT_EQ(group->explanation.find("QX17A"), std::string::npos) << group->explanation;
    auto const another = of("Lamp current of QX17B changed from 40 mA to 60 mA.");
    group = unmentioned(another);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(titlesOf(another, *group).size(), 2U);
    EXPECT_NE(group->explanation.find("(QX17A)"), std::string::npos) << group->explanation;
    EXPECT_NE(group->explanation.find("(QX17C)"), std::string::npos) << group->explanation;
    EXPECT_EQ(group->explanation.find("QX17B"), std::string::npos) << group->explanation;
    auto const none = of("Spelling.");
    ASSERT_NE(unmentioned(none), nullptr);
    EXPECT_EQ(titlesOf(none, *unmentioned(none)).size(), 1U) << "the one that speaks for all";
}

TEST(ClaimedChanges, AClaimOfOneModeIsNoAnswerForTheOther) {
    auto const made = [](std::string const& current, std::string const& change) {
        SheetBuilder sheet("QX17");
        for (char const* mode : {"Active mode characteristics", "Standby mode characteristics"}) {
            sheet.section(SectionKind::Characteristics, mode);
            sheet.specification("Ta = 25 °C", {{.name = "Lamp current", .symbol = "ILA", .max = current, .unit = "mA"}});
        }
        sheet.section(SectionKind::Revision, "Revision history");
        return sheet.table(TableKind::Revision, historyWith(change)).build();
    };
    auto const comparison = compared(made("2.0", ""), made("3.0", "Lamp current in the active mode characteristics changed from 2.0 mA to 3.0 mA."));
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(titlesOf(comparison, *group).size(), 1U);
}

TEST(ClaimedChanges, ASymbolAloneNamesItsRow) {
    auto const comparison = compared(sheet({}, ""), sheet({.delay = "15"}, "Changed tBD MAX value."));
    EXPECT_EQ(unmentioned(comparison), nullptr);
    EXPECT_TRUE(unanswered(comparison).empty());
}

TEST(ClaimedChanges, APlaceAsAWholeAnswersWhatStandsThere) {
    auto const comparison = compared(sheet({}, ""), sheet({.lampCurrent = "35", .description = "The lamp is dark while the beam is broken."}, "Changed Description."));
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    auto const titles = titlesOf(comparison, *group);
    ASSERT_EQ(titles.size(), 1U);
    EXPECT_NE(titles[0].find("Lamp current"), std::string::npos) << titles[0];
    EXPECT_TRUE(unanswered(comparison).empty());
}

TEST(ClaimedChanges, AnAddedSectionExplainsNoChangeOfWhatWasThere) {
    auto const comparison = compared(sheet({}, ""), sheet({.description = "The lamp is dark while the beam is broken."}, "Added Description section."));
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->regarding.size(), 1U);
    EXPECT_EQ(unanswered(comparison).size(), 1U);
}

TEST(ClaimedChanges, AnEditorialClaimCoversNoChangeOfMeaning) {
    auto const comparison = compared(sheet({}, ""), sheet({.delay = "15", .description = "The lamp is not lit while the beam is broken."}, "Editorial changes."));
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->regarding.size(), 2U);
    EXPECT_TRUE(unanswered(comparison).empty());
}

TEST(ClaimedChanges, ExchangeMirrorsThem) {
    auto const older = sheet({}, "");
    auto const newer = sheet({.pulsedLampCurrent = "60", .delay = "12"}, "Beam delay 15 ms (was 12 ms).");
    auto const comparison = compared(newer, older);
    auto const* group = unmentioned(comparison);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->relation, Relation::OnlyReference);
    EXPECT_FALSE(group->candidate);
    EXPECT_EQ(group->regarding.size(), 1U);
    EXPECT_EQ(unanswered(comparison).size(), 1U);
}

TEST(ClaimedChanges, OtherPartsOrNoHistoryGiveNothing) {
    auto const parts = compared(sheet({}, ""), sheet({.delay = "15"}, "Lamp current raised.", "ZW44"));
    EXPECT_EQ(unmentioned(parts), nullptr);
    EXPECT_TRUE(unanswered(parts).empty());
    auto const same = compared(sheet({}, ""), sheet({.delay = "15"}, ""));
    EXPECT_EQ(unmentioned(same), nullptr);
}

TEST(ClaimedChanges, TheVerdictKeepsItsLevel) {
    auto const without = compared(sheet({}, ""), sheet({.delay = "15"}, ""));
    auto const with = compared(sheet({}, ""), sheet({.delay = "15"}, "Case recoloured."));
    EXPECT_EQ(with.verdict.level, without.verdict.level);
}

}  // namespace
}  // namespace standin::risk
