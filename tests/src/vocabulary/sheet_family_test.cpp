#include "vocabulary/sheet_family.h"

#include <gtest/gtest.h>

namespace standin::vocabulary {
namespace {

TEST(FamilyOf, TakesNamesSymbolsAndText) {
    auto const vocabulary = Vocabulary::builtIn();
    ASSERT_TRUE(vocabulary);
    model::Datasheet sheet;
    EXPECT_EQ(familyOf(sheet, *vocabulary), "");
    for (auto const* name : {"Overcharge detection voltage", "Overdischarge detection voltage", "Overcharge release voltage"}) {
        model::Parameter parameter;
        parameter.name = name;
        sheet.parameters.push_back(parameter);
    }
    sheet.text.push_back({"x1", "", "The VQ7 is a battery protection IC.", {}});
    EXPECT_EQ(familyOf(sheet, *vocabulary), "lithium-protection");
}

}  // namespace
}  // namespace standin::vocabulary
