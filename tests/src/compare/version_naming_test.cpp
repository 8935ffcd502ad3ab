#include "compare/version_naming.h"

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Datasheet;
using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

Datasheet sheetOf(std::string const& part, std::vector<RowText> const& rows) {
    SheetBuilder builder(part);
    builder.specification("", rows);
    return builder.build();
}

RowText row(std::string const& variant) { return {.name = "Offset", .symbol = "VIO", .max = "5", .unit = "mV", .variant = variant}; }
RowText output(std::string const& typ, std::string const& variant) {
    return {.name = "Output voltage", .symbol = "VO", .typ = typ, .unit = "V", .canonical = "output-voltage", .variant = variant};
}

struct Case {
    std::string what;
    std::vector<RowText> reference, candidate;  // the first row of each is related
    VariantRelation relation;
    bool others;
};

TEST(VersionNaming, RelatesByNameByOwnPartAndByWhatTheVersionIsMadeFor) {
    for (auto const& c : std::vector<Case>{
             {"one name", {row("LQ20A"), row("LQ20B")}, {row("LQ20A, LQ21"), row("LQ22")}, VariantRelation::Shares, false},
             {"named in both, but another", {row("LQ20B"), row("LQ20A")}, {row("LQ22"), row("LQ20A")}, VariantRelation::Apart, true},
             {"no name in common", {row("LQ20B")}, {row("RV22")}, VariantRelation::Apart, false},
             {"the part of the sheet", {row("")}, {row("QX17"), row("QX18")}, VariantRelation::Shares, false},
             {"another than the part of the sheet", {row("")}, {row("QX18"), row("QX17")}, VariantRelation::Apart, true},
             {"a column of the part of the sheet", {row("TA = 25 °C")}, {row("QX17 25 °C"), row("QX18 25 °C")}, VariantRelation::Shares, false},
             {"a column of another", {row("TA = 25 °C")}, {row("QX18 25 °C"), row("QX17 25 °C")}, VariantRelation::Apart, true},
             {"packages say nothing of the part", {row("QFN (3 pins)")}, {row("D²PAK"), row("QX17")}, VariantRelation::Apart, false},
             {"no version in either", {row("")}, {row("")}, VariantRelation::Same, false},
             {"made for one voltage", {output("5", "QX7805"), output("12", "QX7812")}, {output("5.0", "5V 10V"), output("12", "12V 19V")}, VariantRelation::Shares, false},
             {"made for two voltages", {output("5", "QX7805"), output("12", "QX7812")}, {output("12", "12V 19V"), output("5", "5V 10V")}, VariantRelation::Apart, true},
             {"no voltage in common", {output("5", "QX7805"), output("6", "QX7806")}, {output("12", "12V 19V")}, VariantRelation::Apart, false},
             {"one voltage each", {output("5", "")}, {output("3.3", "")}, VariantRelation::Same, false}}) {
        Datasheet const r = sheetOf("QX17", c.reference);
        Datasheet const k = sheetOf("ZL99", c.candidate);
        ConditionMemo memo;
        VersionNaming const naming(r, k, words(), memo);
        auto const a = naming.ofReference(r.parameters[0]);
        auto const b = naming.ofCandidate(k.parameters[0]);
        EXPECT_EQ(relateVariants(a, b), c.relation) << c.what;
        EXPECT_EQ(naming.areOthers(a, b), c.others) << c.what;
        VersionNaming const exchanged(k, r, words(), memo);
        EXPECT_EQ(exchanged.areOthers(exchanged.ofReference(k.parameters[0]), exchanged.ofCandidate(r.parameters[0])), c.others) << c.what;
    }
}

}  // namespace
}  // namespace standin::compare
