#include "compare/ordered_version.h"

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

using Cells = std::vector<std::pair<std::string, std::string>>;

void addLine(model::Datasheet& sheet, std::string const& code, Cells const& cells) {
    float const y = 40.0F + 12.0F * static_cast<float>(sheet.ordering.size());
    model::Rect const box{50, y, 400, y + 10};
    sheet.ordering.push_back({code, cells, "t9", 1, box});
    for (auto const& [title, cell] : cells) {
        auto const stated = words().statement(title, cell);
        if (stated) sheet.features.push_back({.canonical = stated->feature, .state = stated->state, .page = 1, .box = box, .text = title + ": " + cell});
    }
}

model::Datasheet family() {
    SheetBuilder builder("FW20");
    builder.section(model::SectionKind::Characteristics, "Electrical characteristics");
    builder.specification("Ta = 25 °C", {{.name = "Overcharge detection voltage", .symbol = "VCU", .min = "VCU-0.025", .typ = "VCU", .max = "VCU+0.025", .unit = "V",
                                          .canonical = "overcharge-detect-voltage"},
                                         {.name = "Overcharge detection delay", .symbol = "tCU", .min = "tCU×0.8", .typ = "tCU", .max = "tCU×1.2", .unit = "s",
                                          .canonical = "overcharge-detect-delay"},
                                         {.name = "CO pin output voltage, high", .symbol = "VCOH", .min = "VDD-0.5", .unit = "V", .canonical = "co-output-high"}});
    auto sheet = builder.build();
    addLine(sheet, "FW20-AA", {{"Overcharge detection voltage VCU", "4.280 V"}, {"Overcharge detection delay [ms]", "1200"}, {"0 V battery charge", "inhibited"}});
    addLine(sheet, "FW20-AB", {{"Overcharge detection voltage VCU", "4.325 V"}, {"Overcharge detection delay [ms]", "1200"}, {"0 V battery charge", "allowed"}});
    return sheet;
}

std::string limitsOf(model::Parameter const& row) {
    auto const& interval = *row.interval;
    return interval.lo.value_or("-") + " " + interval.typ.value_or("-") + " " + interval.hi.value_or("-") + " " + interval.unit + " " + interval.relativeTo + interval.factor;
}

TEST(OrderedVersion, RowsGetTheValuesOfTheChosenLine) {
    auto sheet = family();
    ASSERT_EQ(sheet.parameters[0].interval->relativeTo, "VCU");
    ASSERT_TRUE(takeOrderedVersion(sheet, "FW20-AB", words()));
    EXPECT_EQ(limitsOf(sheet.parameters[0]), "4.300 4.325 4.350 V ");
    EXPECT_EQ(limitsOf(sheet.parameters[1]), "0.9600 1.200 1.4400 s ") << "by the title's name and unit";
    EXPECT_EQ(sheet.parameters[2].interval->relativeTo, "VDD") << "no row of the sheet";
    EXPECT_EQ(sheet.parameters[0].min->text, "VCU-0.025") << "as printed";
    ASSERT_FALSE(sheet.parameters[0].notes.empty());
    EXPECT_EQ(sheet.parameters[0].notes.back(), "VCU = 4.325 V, FW20-AB");
}

TEST(OrderedVersion, WithoutAChoiceOnlyWhatAllLinesAgreeOnIsTaken) {
    auto sheet = family();
    ASSERT_TRUE(takeOrderedVersion(sheet, {}, words()));
    EXPECT_EQ(sheet.parameters[0].interval->relativeTo, "VCU");
    EXPECT_EQ(limitsOf(sheet.parameters[1]), "0.9600 1.200 1.4400 s ");
    EXPECT_EQ(sheet.features.size(), 2U);
    EXPECT_EQ(undecidedVersions(family(), words()), (std::vector<std::string>{"FW20-AA", "FW20-AB"}));
}

TEST(OrderedVersion, OnlyTheModesOfTheChosenLineAreLeft) {
    auto sheet = family();
    sheet.features.push_back({.canonical = "fet-integration", .state = "external", .page = 1, .box = {}, .text = "two external FETs"});
    ASSERT_TRUE(takeOrderedVersion(sheet, "FW20-AB", words()));
    ASSERT_EQ(sheet.features.size(), 2U);
    EXPECT_EQ(sheet.features[0].canonical, "fet-integration") << "stands in no line";
    EXPECT_EQ(sheet.features[1].state, "allowed");
}

TEST(OrderedVersion, LinesThatAgreeLeaveNothingUndecided) {
    auto sheet = family();
    sheet.ordering.pop_back();
    EXPECT_TRUE(undecidedVersions(sheet, words()).empty());
    ASSERT_TRUE(takeOrderedVersion(sheet, {}, words()));
    EXPECT_EQ(limitsOf(sheet.parameters[0]), "4.255 4.280 4.305 V ");
    auto second = family();
    second.ordering[1].attributes = second.ordering[0].attributes;
    EXPECT_TRUE(undecidedVersions(second, words()).empty());
}

TEST(OrderedVersion, WhatCannotBeReadStaysAsItIs) {
    auto sheet = family();
    sheet.ordering[1].attributes[0].second = "on request";
    auto const before = sheet.parameters[0];
    takeOrderedVersion(sheet, "FW20-AB", words());
    EXPECT_EQ(sheet.parameters[0], before);
    auto twice = family();
    twice.ordering[0].attributes.push_back({"VCU", "4.5 V"});
    takeOrderedVersion(twice, "FW20-AA", words());
    EXPECT_EQ(twice.parameters[0].interval->relativeTo, "VCU") << "two columns that disagree";
    EXPECT_FALSE(takeOrderedVersion(sheet, "ZZ9", words())) << "no such line";
    model::Datasheet nothing;
    EXPECT_FALSE(takeOrderedVersion(nothing, "FW20-AB", words()));
}

TEST(OrderedVersion, TheLineIsFoundByItsCode) {
    auto const sheet = family();
    ASSERT_NE(lineOfVersion(sheet, "fw20-ab"), nullptr);
    EXPECT_EQ(lineOfVersion(sheet, "fw20-ab")->code, "FW20-AB");
    EXPECT_EQ(lineOfVersion(sheet, "FW20"), nullptr) << "of the whole family";
    EXPECT_EQ(lineOfVersion(sheet, ""), nullptr);
}

}  // namespace
}  // namespace standin::compare
