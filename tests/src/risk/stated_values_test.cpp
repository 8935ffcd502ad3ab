#include "risk/stated_values.h"

#include <gtest/gtest.h>

#include "src/risk/invented_protector.h"

namespace standin::risk {
namespace {

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

std::string textOf(StatedValue const& value) {
    auto const one = [](std::optional<quantity::Decimal> const& bound) { return bound ? bound->toShortString() : std::string("?"); };
    return value.limits.empty() ? value.why : one(value.limits.lo) + " " + one(value.limits.typ) + " " + one(value.limits.hi) + " " + value.unit;
}

TEST(StatedValues, TheScopeChoosesTheRow) {
    auto const sheet = sheetOf(protectorRows());
    StatedValues const values(sheet, "", builtIn());
    auto const over = values.find("overcharge-detect-voltage", Scope::OverTemperature);
    EXPECT_EQ(textOf(over), "4.245 4.28 4.315 V");
    EXPECT_TRUE(over.overTemperature);
    EXPECT_EQ(textOf(values.find("overcharge-detect-voltage", Scope::Room)), "4.255 4.28 4.305 V");
    auto const release = values.find("overcharge-release-voltage", Scope::OverTemperature);
    EXPECT_EQ(textOf(release), "4.03 4.08 4.13 V") << "no other row is printed";
    EXPECT_FALSE(release.overTemperature);
    EXPECT_TRUE(values.hasOverTemperature("overcharge-detect-voltage"));
    EXPECT_FALSE(values.hasOverTemperature("overcharge-release-voltage"));
    ASSERT_EQ(release.inputs.size(), 1U);
    EXPECT_EQ(release.inputs[0].parameter, "p3");
    EXPECT_EQ(release.inputs[0].page, 3);
    EXPECT_EQ(release.inputs[0].text, "4.030 / 4.080 / 4.130 V");
}

struct Case {
    char const* what;
    std::vector<StatedRow> rows;
    char const* expected;
};

TEST(StatedValues, RowsAreBroughtTogether) {
    Case const cases[] = {
        {"nothing", {}, "not stated"},
        {"typical rows give way to limits", {{"x", "", "2", ""}, {"x", "1", "2", "3"}}, "1 2 3 V"},
        {"typical alone", {{"x", "", "2", ""}}, "? 2 ? V"},
        {"two conditions give an outer bound", {{"x", "1", "2", "3", "V", "VDD=3 V"}, {"x", "2", "3", "4", "V", "VDD=4 V"}}, "1 2 4 V"},
        {"a bound that one row leaves open", {{"x", "1", "2", "3", "V", "VDD=3 V"}, {"x", "", "3", "4", "V", "VDD=4 V"}}, "? 2 4 V"},
        {"another point of temperature does not count", {{"x", "1", "2", "3"}, {"x", "0", "2", "9", "V", "Ta=85 °C"}}, "1 2 3 V"},
        {"versions are not mixed", {{"x", "1", "2", "3", "V", "", "A"}, {"x", "2", "3", "4", "V", "", "B"}}, "stated for several versions, none of which was selected"},
        {"a range that resistors set is no tolerance", {{"output-voltage", "1.2", "", "37"}}, "stated as a range that the circuit sets"},
        {"a range of another parameter is", {{"overcharge-detect-voltage", "1.2", "", "37"}}, "1.2 ? 37 V"},
        {"a tolerance of an output is one", {{"output-voltage", "4.8", "", "5.2"}, {"output-voltage", "1.2", "", "37"}}, "4.8 ? 5.2 V"},
        {"a wide threshold stays a threshold", {{"charger-detect-voltage", "0.2", "", "1.2"}}, "0.2 ? 1.2 V"},
        {"no unit to compute with", {{"x", "1", "2", "3", "dB"}}, "stated in dB, which cannot be computed with"},
    };
    for (auto const& one : cases) {
        auto const sheet = sheetOf(one.rows);
        EXPECT_EQ(textOf(StatedValues(sheet, "", builtIn()).find(one.rows.empty() ? "x" : one.rows.front().canonical, Scope::Room)), one.expected) << one.what;
    }
}

TEST(StatedValues, TheChosenVersionAlone) {
    auto const sheet = sheetOf({{"x", "1", "2", "3", "V", "", "QX-A"}, {"x", "2", "3", "4", "V", "", "QX-B"}});
    EXPECT_EQ(textOf(StatedValues(sheet, "QXB", builtIn()).find("x", Scope::Room)), "2 3 4 V");
    // Printed once for two of them, and once more with another condition.
    auto const shared = sheetOf({{"x", "1", "2", "3", "V", "", "XQ20A, XQ20B"}, {"x", "2", "3", "4", "V", "VDD=3 V", "XQ20B"}, {"x", "7", "8", "9", "V", "", "XQ20C"}});
    EXPECT_EQ(textOf(StatedValues(shared, "XQ20B", builtIn()).find("x", Scope::Room)), "1 2 4 V");
}

TEST(StatedValues, RelativeValuesAreNoNumbers) {
    auto sheet = sheetOf({});
    sheet.parameters.push_back(chargerRating("-28"));
    StatedValues const values(sheet, "", builtIn());
    EXPECT_EQ(textOf(values.find("amr-vm", Scope::Room)), "stated relative to VDD only");
    ASSERT_EQ(values.rows("amr-vm").size(), 1U);
    EXPECT_TRUE(values.rows("unheard-of").empty());
}

}  // namespace
}  // namespace standin::risk
