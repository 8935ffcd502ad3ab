#include "compare/version_titles.h"

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::SectionKind;
using support::SheetBuilder;

std::vector<std::string> versionsOf(std::vector<std::string> const& captions) {
    SheetBuilder builder("QX7800");
    for (std::string const& caption : captions) {
        builder.specification("", {{.name = "Output voltage", .symbol = "VO", .typ = "5", .unit = "V"}});
        builder.sheet().tables.back().caption = caption;
    }
    return versionsInTitles(builder.build());
}

using Versions = std::vector<std::string>;

TEST(VersionTitles, NameTheVersionOfATable) {
    EXPECT_EQ(versionsOf({"Table 4: Electrical characteristics of QX7805 (VI = 10 V)", "Table 5: Electrical characteristics of QX7812 (VI = 19 V)"}),
              (Versions{"QX7805", "QX7812"}));
    EXPECT_EQ(versionsOf({"Characteristics, QX7805 and QX7806", "Characteristics, QX7812"}), (Versions{"QX7805, QX7806", "QX7812"}));
}

TEST(VersionTitles, NameNoneWhereEveryTableHasTheSame) { EXPECT_EQ(versionsOf({"Ratings of QX7800", "Characteristics of QX7800"}), (Versions{"", ""})); }

TEST(VersionTitles, TakeNoStandardPackageOrConditionForAVersion) {
    EXPECT_EQ(versionsOf({"Limiting values (IEC 60134)", "Thermal data, RV20", "Characteristics (QX7805 at VI = 10 V)", "Table 12"}), (Versions{"", "", "", ""}));
    EXPECT_EQ(versionsOf({"Limits SOT-23", "Limits SOT-89", "Surge IEC61000-4-2", "Surge IEC61000-4-5"}), (Versions{"", "", "", ""}));
}

TEST(VersionTitles, MayStandInTheHeadingOfTheSection) {
    SheetBuilder builder("74XC20");
    builder.section(SectionKind::Characteristics, "AC CHARACTERISTICS FOR 74XC");
    builder.specification("", {{.name = "Delay", .symbol = "tD", .max = "9", .unit = "ns", .variant = "25 °C"}});
    builder.section(SectionKind::Characteristics, "AC CHARACTERISTICS FOR 74XCT");
    builder.specification("", {{.name = "Delay", .symbol = "tD", .max = "11", .unit = "ns"}});
    auto sheet = builder.build();
    EXPECT_TRUE(takeVersionsFromTitles(sheet));
    EXPECT_EQ(sheet.parameters[0].variant, "74XC 25 °C");
    EXPECT_EQ(sheet.parameters[1].variant, "74XCT");
    EXPECT_FALSE(takeVersionsFromTitles(sheet));
}

// The table goes on by its form, but the line above it names another version.
TEST(VersionTitles, MayStandInALineAboveTheTable) {
    auto const versions = [](std::vector<std::string> const& lines) {
        SheetBuilder builder("QX78");
        builder.orderingTable({{"QX78+G", "A"}, {"QX78-G", "B"}, {"QX78A-G", "C"}});
        for (std::string const& line : lines) {
            builder.nextPage().sentence(line);
            builder.specification("", {{.name = "Threshold", .symbol = "VT", .typ = "5", .unit = "V"}});
            auto& tables = builder.sheet().tables;
            if (tables.size() > 2) tables.back().continues = tables[tables.size() - 2].id;
        }
        return versionsInTitles(builder.build());
    };
    EXPECT_EQ(versions({"1. QX78+G", "(2)QX78-G", "[3] QX78A-G"}), (Versions{"QX78+G", "QX78-G", "QX78A-G"}));
    EXPECT_EQ(versions({"1. QX78+G", "It goes on.", "(3) QX78A-G"}), (Versions{"QX78+G", "QX78+G", "QX78A-G"}));
    EXPECT_EQ(versions({"(1) QX78+G is tested.", "(2) QX78-G is not."}), (Versions{"", ""})) << "a sentence";
}

TEST(VersionTitles, HoldForTheTableThatGoesOn) {
    SheetBuilder builder("QX7800");
    for (std::string const caption : {"Characteristics of QX7805", "", "Characteristics of QX7812"}) {
        builder.specification("", {{.name = "Output voltage", .symbol = "VO", .typ = "5", .unit = "V"}});
        builder.sheet().tables.back().caption = caption;
        if (caption.empty()) builder.sheet().tables.back().continues = builder.sheet().tables.front().id;
    }
    EXPECT_EQ(versionsInTitles(builder.build()), (Versions{"QX7805", "QX7805", "QX7812"}));
}

}  // namespace
}  // namespace standin::compare
