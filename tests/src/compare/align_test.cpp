#include "compare/align.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "compare/conditions.h"
#include "model/names.h"
#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Comparison;
using model::Datasheet;
using model::Finding;
using model::FindingKind;
using model::Relation;
using model::SectionKind;
using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

Comparison compared(Datasheet const& reference, Datasheet const& candidate) { return align(reference, candidate, {}, words()); }

std::vector<RowText> detectionRows() {
    return {
        {.name = "Overcharge detection voltage", .symbol = "VCU", .min = "4.255", .typ = "4.280", .max = "4.305", .unit = "V", .canonical = "overcharge-detect-voltage"},
        {.name = "Overcharge release voltage", .symbol = "VCL", .min = "4.030", .typ = "4.080", .max = "4.130", .unit = "V", .canonical = "overcharge-release-voltage"},
        {.name = "Overcharge delay", .symbol = "tCU", .condition = "VDD=3.5V to 4.5V", .min = "0.96", .typ = "1.2", .max = "1.4", .unit = "s", .canonical = "overcharge-delay"},
        {.name = "Supply current", .symbol = "IOPE", .condition = "VDD=3.5V", .typ = "3.0", .max = "6.0", .unit = "µA", .canonical = "operating-current"},
        {.name = "Resistance between VM and VSS", .symbol = "RVMS", .condition = "VDD=3.5V, VM=1.0V", .min = "10", .typ = "20", .max = "30", .unit = "kΩ"},
        {.name = "Resistance between VM and VDD", .symbol = "RVMD", .condition = "VDD=1.8V, VM=0V", .min = "100", .typ = "300", .max = "900", .unit = "kΩ"},
    };
}

struct Texts {
    std::vector<RowText> rows = detectionRows();
    std::string lead = "Ta=25°C unless otherwise specified";
    std::string release = "The overcurrent state is released automatically when the load is removed.";
    std::string handling = "The NC pin must be left open.";
    std::string zeroVolt = "Charging of a 0 V cell is permitted.";
    std::string zeroVoltState = "permitted";
    std::string figureValue = "R1 330 Ω";
    std::string caption = "Figure 1. Typical circuit of the logger";
    std::string pinName = "VSS";
    std::string pinFunction = "Negative power input";
    std::string partValue = "100 nF";
    std::vector<std::string> partsHead = {"Symbol", "Value", "Purpose"};
    std::string head = "QX17 series Rev. 1.3";
    std::string code = "QX17A-T6";
    std::string heading = "Function";
};

Datasheet sheetOf(Texts const& texts) {
    SheetBuilder sheet;
    sheet.section(SectionKind::Features, "Features");
    sheet.sentence("Supply current of 3.0 µA (typ.) in operation.");
    sheet.feature("zero-volt-charging", texts.zeroVoltState, texts.zeroVolt);
    sheet.section(SectionKind::Ordering, "Ordering");
    sheet.orderingTable({{texts.code, "17A"}, {"QX17B-T6", "17B"}});
    sheet.section(SectionKind::Pins, "Pins");
    sheet.pinTable({{"1", "DO", "Gate of the discharge FET"}, {"2", texts.pinName, texts.pinFunction}, {"3", "VDD", "Supply"}, {"4", "NC", "Not connected"}});
    sheet.nextPage();
    sheet.section(SectionKind::Ratings, "Absolute maximum ratings");
    sheet.specification("Ta=25°C", {{.name = "Input voltage", .symbol = "VDD", .min = "VSS-0.3", .max = "VSS+12", .unit = "V", .kind = model::ParameterKind::Rating},
                                    {.name = "VM pin voltage", .symbol = "VVM", .min = "VDD-28", .max = "VDD+0.3", .unit = "V", .kind = model::ParameterKind::Rating}});
    sheet.section(SectionKind::Characteristics, "Electrical characteristics");
    sheet.specification(texts.lead, texts.rows);
    sheet.nextPage();
    sheet.section(SectionKind::Function, texts.heading);
    sheet.sentence(texts.release);
    sheet.sentence("The discharge FET is turned off after the delay tDL.");
    sheet.sentence(texts.handling);
    sheet.sentence("Place the capacitor close to the part.");
    sheet.section(SectionKind::Application, "Application");
    sheet.figure(texts.caption, {"QX17", texts.figureValue, "C1", "Logger"});
    sheet.table(model::TableKind::Other, {texts.partsHead, {"R1", "330 Ω", "Limits the current"}, {"C1", texts.partValue, "Filter"}}, "Table 3. External parts");
    sheet.runningHead(texts.head, {1, 2, 3});
    for (int page = 1; page <= 3; ++page) sheet.runningHead(std::to_string(page), {page}, model::Furniture::Kind::PageNumber);
    return sheet.build();
}

std::vector<Finding> own(Comparison const& comparison) {
    std::vector<Finding> list;
    for (auto const& finding : comparison.findings) {
        if (finding.kind != FindingKind::Coverage && finding.consequenceOf.empty()) list.push_back(finding);
    }
    return list;
}

std::string listed(Comparison const& comparison) {
    std::string text;
    for (auto const& finding : comparison.findings) {
        text += std::string(model::nameOf(finding.kind)) + " " + std::string(model::nameOf(finding.relation)) + " [" + (finding.reference ? finding.reference->text : "-") + "] [" +
                (finding.candidate ? finding.candidate->text : "-") + "] " + (finding.consequenceOf.empty() ? "" : "<- " + finding.consequenceOf) + "\n";
    }
    return text;
}

std::string shown(std::optional<model::Side> const& side) {
    if (!side) return {};
    return side->text + " " + side->min + " " + side->typ + " " + side->max + " " + side->unit + " " + side->condition;
}

// Clones of one sheet name a level otherwise; the parameter is the same one.
TEST(Align, AnotherSymbolOfTheSameParameterIsNoOtherNumber) {
    Texts renamed;
    renamed.rows[0].symbol = "VOCP";
    auto const comparison = compared(sheetOf({}), sheetOf(renamed));
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(findings[0].kind, FindingKind::Table);
    EXPECT_EQ(findings[0].relation, Relation::Reworded);
    EXPECT_EQ(findings[0].classes, std::vector{model::WordingClass::Style});
    Texts changed = renamed;
    changed.rows[0].name = "Overcharge detection voltage 2";
    auto const more = own(compared(sheetOf({}), sheetOf(changed)));
    ASSERT_EQ(more.size(), 1U);
    EXPECT_NE(more[0].classes, std::vector{model::WordingClass::Style});
}

// The head of one state has a column more; what stands in it is told by its rows.
TEST(Align, AColumnMoreIsNoOtherNumber) {
    auto const changed = [](char const* head) {
        Texts texts;
        texts.partsHead = {"Symbol", "Value [Ω]", "Purpose"};
        Texts other;
        other.partsHead = {"Symbol", head, "Purpose", "TS method"};
        return own(compared(sheetOf(texts), sheetOf(other)));
    };
    auto const more = changed("Value [Ω]");
    ASSERT_EQ(more.size(), 1U);
    EXPECT_EQ(more[0].classes, std::vector{model::WordingClass::Style});
    auto const unit = changed("Value [kΩ]");
    ASSERT_EQ(unit.size(), 1U);
    EXPECT_NE(unit[0].classes, std::vector{model::WordingClass::Style});
}

TEST(Align, AnotherCountOfPagesIsNoChangeOfAPageNumber) {
    auto numbered = [](int pages, std::string const& of) {
        SheetBuilder sheet;
        sheet.section(SectionKind::Function, "Function");
        for (int page = 1; page <= pages; ++page) {
            if (page > 1) sheet.nextPage();
            sheet.sentence("The logger sleeps in state " + std::to_string(page) + " until the lamp is lit.");
            sheet.runningHead(std::to_string(page) + of + std::to_string(pages), {page}, model::Furniture::Kind::PageNumber);
        }
        return sheet;
    };
    SheetBuilder longer = numbered(3, " / ");
    SheetBuilder shorter = numbered(2, "/");
    longer.sheet().text.pop_back();  // only the page itself is left over
    Comparison const comparison = compared(longer.build(), shorter.build());
    EXPECT_TRUE(own(comparison).empty()) << listed(comparison);
    shorter.sheet().furniture.front().text = "7/2";
    EXPECT_EQ(own(compared(longer.build(), shorter.build())).size(), 1U);
}

// A cell of a condition that spans rows which have conditions of their own as well.
TEST(Align, AChangedPartOfACommonConditionIsOneFinding) {
    auto sheet = [](std::string const& load) {
        SheetBuilder builder;
        builder.section(SectionKind::Characteristics, "Electrical characteristics");
        builder.specification("", {{.name = "Load regulation", .condition = "IO=10 mA to " + load + ", TJ=25°C", .max = "25", .unit = "mV"},
                                   {.name = "Load regulation", .condition = "IO=10 mA to " + load + ", TJ=0°C to 125°C", .max = "70", .unit = "mV"},
                                   {.name = "Load regulation", .condition = "IO=10 mA to " + load + ", VO=5V", .max = "30", .unit = "mV"}});
        return builder.build();
    };
    auto const comparison = compared(sheet("1500 mA"), sheet("1500 uA"));
    EXPECT_EQ(own(comparison).size(), 1U) << listed(comparison);
    EXPECT_EQ(std::count_if(comparison.findings.begin(), comparison.findings.end(), [](Finding const& finding) { return finding.kind == FindingKind::Parameter; }), 3);
}

TEST(Align, ASentenceThatWasRecognisedIsMarkedOnItsSide) {
    SheetBuilder reference("QX17");
    reference.sentence("The output is turned off after 20 ms.");
    SheetBuilder candidate("QX17");
    candidate.sentence("The output is turned off after 30 ms.");
    candidate.sheet().text.back().recognised = true;
    auto const comparison = align(reference.build(), candidate.build(), {}, words());
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [](auto const& finding) { return finding.kind == model::FindingKind::Wording; });
    ASSERT_TRUE(found != comparison.findings.end() && found->reference && found->candidate);
    EXPECT_FALSE(found->reference->recognised);
    EXPECT_TRUE(found->candidate->recognised);
}

TEST(Align, FindsNothingInASheetAgainstItself) {
    Datasheet const sheet = sheetOf({});
    Comparison const comparison = compared(sheet, sheet);
    EXPECT_TRUE(comparison.findings.empty()) << listed(comparison);
    ASSERT_EQ(comparison.pairs.size(), sheet.parameters.size());
    for (auto const& pair : comparison.pairs) {
        EXPECT_EQ(pair.reference, pair.candidate);
        EXPECT_EQ(pair.confidence, 1.0);
    }
    EXPECT_EQ(comparison.coverage.compared, 2 * (sheet.coverage.numbers + sheet.coverage.sentences));
    EXPECT_EQ(comparison.coverage.listed, 0);
    for (auto const& section : comparison.sections) EXPECT_EQ(section.similarity, 1.0) << section.reference;
}

// A program that saves a file again may write a title into it that no page prints.
TEST(Align, ATitleThatOneFileLacksIsNoDifference) {
    Datasheet const sheet = sheetOf({});
    Datasheet titled = sheet;
    titled.document.title = sheet.document.title.empty() ? "Logger" : "";
    Comparison const comparison = compared(sheet, titled);
    EXPECT_TRUE(comparison.findings.empty()) << listed(comparison);
}

TEST(Align, PairsEachOfSeveralEqualRowsWithItsOwnTwin) {
    SheetBuilder builder;
    builder.section(SectionKind::Characteristics, "Electrical characteristics");
    std::vector<RowText> rows(12, RowText{.name = "Leakage current", .symbol = "IL", .max = "1", .unit = "µA"});
    builder.specification("Ta=25°C", rows);
    Datasheet const sheet = builder.build();
    Comparison const comparison = compared(sheet, sheet);
    EXPECT_TRUE(comparison.findings.empty()) << listed(comparison);
    for (auto const& pair : comparison.pairs) EXPECT_EQ(pair.reference, pair.candidate);
}

struct OneChange {
    char const* what;
    void (*apply)(Texts&);
    FindingKind kind;
    char const* before;
    char const* after;
};

class AlignOneChange : public testing::TestWithParam<OneChange> {};

TEST_P(AlignOneChange, GivesOneFindingThatShowsBothSides) {
    auto const& change = GetParam();
    Texts texts;
    Datasheet const reference = sheetOf(texts);
    change.apply(texts);
    Datasheet const candidate = sheetOf(texts);
    Comparison const comparison = compared(reference, candidate);
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << change.what << "\n" << listed(comparison);
    EXPECT_EQ(findings[0].kind, change.kind) << change.what;
    EXPECT_NE(shown(findings[0].reference).find(change.before), std::string::npos) << shown(findings[0].reference);
    EXPECT_NE(shown(findings[0].candidate).find(change.after), std::string::npos) << shown(findings[0].candidate);
    EXPECT_EQ(findings[0].reference->page, findings[0].candidate->page);
}

OneChange const kChanges[] = {
    {"maximum", [](Texts& x) { x.rows[0].max = "4.355"; }, FindingKind::Parameter, "4.305", "4.355"},
    {"typical", [](Texts& x) { x.rows[3].typ = "3.5"; }, FindingKind::Parameter, "3.0", "3.5"},
    {"unit", [](Texts& x) { x.rows[3].unit = "mA"; }, FindingKind::Parameter, "µA", "mA"},
    {"unit of an unknown parameter", [](Texts& x) { x.rows[4].unit = "MΩ"; }, FindingKind::Parameter, "kΩ", "MΩ"},
    {"condition", [](Texts& x) { x.rows[3].condition = "VDD=3.9V"; }, FindingKind::Parameter, "3.5V", "3.9V"},
    {"name", [](Texts& x) { x.rows[4].name = "Resistance between VM and VSB"; }, FindingKind::Table, "VSS", "VSB"},
    {"condition of the table", [](Texts& x) { x.lead = "Ta=85°C unless otherwise specified"; }, FindingKind::Table, "25", "85"},
    {"sentence", [](Texts& x) { x.release = "The overcurrent state is released automatically when the load is applied."; }, FindingKind::Wording, "removed", "applied"},
    {"one word", [](Texts& x) { x.handling = "The NC pin may be left open."; }, FindingKind::Wording, "must", "may"},
    {"feature",
     [](Texts& x) {
         x.zeroVolt = "Charging of a 0 V cell is prohibited.";
         x.zeroVoltState = "prohibited";
     },
     FindingKind::Feature, "permitted", "prohibited"},
    {"lettering", [](Texts& x) { x.figureValue = "R1 470 Ω"; }, FindingKind::Figure, "330", "470"},
    {"caption", [](Texts& x) { x.caption = "Figure 1. Typical circuit of the camera"; }, FindingKind::Figure, "logger", "camera"},
    {"pin name", [](Texts& x) { x.pinName = "VM"; }, FindingKind::Pin, "VSS", "VM"},
    {"pin function", [](Texts& x) { x.pinFunction = "Positive power input"; }, FindingKind::Pin, "Negative", "Positive"},
    {"cell of another table", [](Texts& x) { x.partValue = "470 nF"; }, FindingKind::Table, "100 nF", "470 nF"},
    {"running head", [](Texts& x) { x.head = "QX17 series Rev. 1.4"; }, FindingKind::Document, "1.3", "1.4"},
    {"ordering code", [](Texts& x) { x.code = "QX17C-T6"; }, FindingKind::Ordering, "QX17A-T6", "QX17C-T6"},
    {"heading", [](Texts& x) { x.heading = "Functions"; }, FindingKind::Section, "Function", "Functions"},
};

INSTANTIATE_TEST_SUITE_P(Cases, AlignOneChange, testing::ValuesIn(kChanges));

TEST(Align, HangsEqualValuesUnderTheirChangedTableCondition) {
    Texts texts;
    Datasheet const reference = sheetOf(texts);
    texts.lead = "Ta=-20 to 60°C unless otherwise specified";
    Comparison const comparison = compared(reference, sheetOf(texts));
    std::string primary;
    int consequences = 0;
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty()) primary = finding.id;
    }
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty()) continue;
        EXPECT_EQ(finding.consequenceOf, primary);
        EXPECT_EQ(finding.relation, Relation::ConditionsDiffer);
        EXPECT_EQ(finding.conditions, model::ConditionRelation::Harsher);
        ++consequences;
    }
    EXPECT_EQ(consequences, 6) << listed(comparison);
}

// The caption stands in brackets; a heading within the table follows it in the rows' condition.
TEST(Align, HangsThemUnderACaptionInBracketsToo) {
    auto sheet = [](std::string const& power) {
        std::string const condition = "VDD = 3.5 V, PMAX = " + power + ", unless otherwise noted";
        SheetBuilder made("QX17");
        made.section(SectionKind::Characteristics, "Characteristics");
        for (char const* text : {"The lamp is lit.", "It keeps its clock.", "A case protects it."}) made.sentence(text);
        made.specification("(" + condition + ")", detectionRows());
        for (auto& p : made.sheet().parameters) p.tableCondition = condition + " Ta = 25 °C";
        return made.build();
    };
    auto const comparison = compared(sheet("20 W"), sheet("50 W"));
    EXPECT_EQ(own(comparison).size(), 1U) << listed(comparison);
}

TEST(Align, LeaderDotsOfOneSheetAreNoFinding) {
    auto sheet = [](std::string const& end) {
        SheetBuilder made("QX17");
        made.section(SectionKind::Characteristics, "Characteristics");
        for (char const* text : {"The lamp is lit.", "It keeps its clock.", "A case protects it."}) made.sentence(text);
        if (!end.empty()) made.sentence(end);
        return made.build();
    };
    EXPECT_TRUE(own(compared(sheet(""), sheet("..........................."))).empty());
    EXPECT_TRUE(own(compared(sheet("..........................."), sheet(""))).empty());
}

// A heading names the version besides, and the rows' condition goes on behind what it states.
TEST(Align, HangsThemUnderATextThatShowsTheChangedPart) {
    auto sheet = [](std::string const& current) {
        SheetBuilder made("QX17");
        made.section(SectionKind::Characteristics, "Characteristics");
        for (char const* text : {"The lamp is lit.", "It keeps its clock.", "A case protects it."}) made.sentence(text);
        made.sentence("Logger for 9 V (QX17-9): VIN=15V, IO=" + current);
        made.specification("", detectionRows());
        for (auto& p : made.sheet().parameters) p.tableCondition = "VIN=15V, IO=" + current + " 25±10";
        return made.build();
    };
    auto const comparison = compared(sheet("500mA"), sheet("509mA"));
    ASSERT_EQ(own(comparison).size(), 1U) << listed(comparison);
    EXPECT_EQ(own(comparison)[0].kind, FindingKind::Wording);
}

TEST(Align, PairsTwoMakersSheetsByVocabularyAndConditions) {
    SheetBuilder reference("QX17");
    reference.section(SectionKind::Characteristics, "Electrical characteristics");
    reference.specification("Ta=25°C", detectionRows());
    reference.sentence("The part monitors one cell.");
    SheetBuilder candidate("ZL99");
    candidate.section(SectionKind::Characteristics, "Characteristics");
    candidate.specification(
        "TA = 25 °C",
        {{.name = "Operating current", .symbol = "ICC", .condition = "VCC = 3.5 V", .typ = "2.5", .max = "5.0", .unit = "µA", .canonical = "operating-current"},
         {.name = "Over-charge release threshold", .symbol = "VOCR", .min = "4030", .typ = "4080", .max = "4130", .unit = "mV", .canonical = "overcharge-release-voltage"},
         {.name = "Over-charge threshold", .symbol = "VOC", .min = "4.25", .typ = "4.30", .max = "4.35", .unit = "V", .canonical = "overcharge-detect-voltage"}});
    candidate.sentence("One lithium cell is watched.");
    Datasheet const r = reference.build();
    Datasheet const c = candidate.build();
    Comparison const comparison = compared(r, c);
    std::map<std::string, std::string> partner;
    std::map<std::string, Relation> relation;
    for (auto const& pair : comparison.pairs) {
        partner[pair.reference] = pair.candidate;
        relation[pair.reference] = pair.relation;
        if (!pair.reference.empty() && !pair.candidate.empty()) {
            EXPECT_GT(pair.confidence, 0.8) << pair.canonical;
        }
    }
    EXPECT_EQ(partner["p1"], "p3");
    EXPECT_EQ(relation["p1"], Relation::Wider);
    EXPECT_EQ(partner["p2"], "p2");
    EXPECT_EQ(relation["p2"], Relation::Same);
    EXPECT_EQ(partner["p4"], "p1");
    EXPECT_EQ(relation["p4"], Relation::Inside);
    EXPECT_EQ(relation["p3"], Relation::OnlyReference);
}

TEST(Align, AFeatureThatRepeatsARowFollowsFromIt) {
    auto sheet = [](std::string const& part, std::string const& max, std::string const& feature, std::string const& name) {
        SheetBuilder made(part);
        made.section(SectionKind::Features, "Features").sentence("Text of " + part + " alone.").sentence(feature);
        made.specification("", {{.name = name, .symbol = "RDS(on)", .condition = "VGS=4.5V", .max = max, .unit = "mΩ", .canonical = "on-resistance"}});
        return made.build();
    };
    auto const consequences = [&](std::string const& feature, std::string const& ours = "RDS(ON) at VGS = 4.5 V below 60 mΩ") {
        auto const comparison = compared(sheet("QX17", "60", ours, "On-resistance"), sheet("ZL99", "65", feature, "Static drain-source resistance"));
        return std::count_if(comparison.findings.begin(), comparison.findings.end(),
                             [](auto const& finding) { return finding.kind == FindingKind::Wording && !finding.consequenceOf.empty(); });
    };
    EXPECT_EQ(consequences("RDS(ON) at VGS = 4.5 V below 65mΩ"), 1);
    EXPECT_EQ(consequences("RDS(ON) at VGS = 4.5 V below 165 mΩ"), 0) << "another value than the row's";
    EXPECT_EQ(consequences("RDS(ON) at VGS = 2.5 V below 65 mΩ"), 0) << "another condition";
    EXPECT_EQ(consequences("RDS(ON) at VGS = 4.5 V below 65 mΩh"), 0) << "another unit";
    EXPECT_EQ(consequences("RDS(ON) is 65 mΩ and the gate must not be left open.", "RDS(ON) is 60 mΩ and the gate may be left open."), 0) << "it says more";
    EXPECT_EQ(consequences("RDS(ON) is 65 mΩ high.", "RDS(ON) is 60 mΩ high."), 1) << "a word behind the unit";
}

// The one limit of a row decides, whichever column it stands in: it counts below the
// printed resolution too. Of two limits only the one on the hazard side does.
// Makers differ in the sign of a current that flows out: no other load, and not passed over in silence.
TEST(Align, TheSignOfALoadCurrentIsToldOnce) {
    auto const made = [](std::string const& sign, std::string const& voltage) {
        SheetBuilder sheet;
        sheet.section(SectionKind::Characteristics, "Electrical characteristics");
        sheet.specification("", {{.name = "Lamp level", .symbol = "VLA", .condition = "IO=" + sign + "5 mA, VDD=" + voltage + " V", .min = "4.1", .unit = "V"},
                                 {.name = "Bell level", .symbol = "VBE", .condition = "IO=" + sign + "7 mA, VDD=" + voltage + " V", .min = "3.1", .unit = "V"}});
        return sheet.build();
    };
    for (auto const& [reference, candidate] : {std::pair("-", ""), std::pair("", "-")}) {
        auto const comparison = compared(made(reference, "5"), made(candidate, "5"));
        auto const findings = own(comparison);
        ASSERT_EQ(findings.size(), 1U) << listed(comparison);
        EXPECT_TRUE(saysOnlyDirection(findings[0]));
        for (auto const& pair : comparison.pairs) EXPECT_EQ(pair.relation, Relation::Same);
    }
    EXPECT_TRUE(own(compared(made("-", "5"), made("-", "5"))).empty());
    // A voltage of the other sign is another condition.
    for (auto const& finding : own(compared(made("", "-5"), made("", "5")))) EXPECT_FALSE(saysOnlyDirection(finding));
    EXPECT_FALSE(own(compared(made("", "-5"), made("", "5"))).empty());
}

TEST(Align, TheValueOfOneFetIsNotThatOfTwo) {
    auto const sheet = [](std::string const& part, std::string const& name, std::string const& high) {
        SheetBuilder builder(part);
        builder.section(SectionKind::Characteristics, "Electrical characteristics");
        builder.specification("", {{.name = name, .symbol = "RON", .max = high, .unit = "mΩ", .canonical = "fet-on-resistance"}});
        return builder.build();
    };
    for (char const* high : {"30", "60"}) {
        auto const comparison = compared(sheet("QX17", "On-resistance of two FETs in series", "60"), sheet("ZL99", "On-resistance per FET", high));
        ASSERT_EQ(comparison.pairs.size(), 1U);
        EXPECT_EQ(comparison.pairs[0].relation, Relation::NotComparable) << high;
        EXPECT_FALSE(comparison.findings.empty());
    }
}

TEST(Align, ASingleLimitIsComparedExactly) {
    auto const relation = [](RowText row, std::string const& min, std::string const& max) {
        auto sheet = [](std::string const& part, RowText const& one) {
            SheetBuilder made(part);
            made.section(SectionKind::Characteristics, "Characteristics").sentence("Text of " + part + " alone.");
            made.specification("", {one});
            return made.build();
        };
        auto const r = sheet("QX17", row);
        row.min = min;
        row.max = max;
        return compared(r, sheet("ZL99", row)).pairs.front().relation;
    };
    RowText const setUp{.name = "set-up time", .symbol = "tsu", .min = "20", .unit = "ns", .canonical = "setup-time"};
    RowText const low{.name = "LOW-level input voltage", .symbol = "VIL", .max = "0.8", .unit = "V", .canonical = "input-low"};
    RowText const drain{.name = "Quiescent current", .symbol = "IQ", .min = "20", .max = "60", .unit = "mA", .canonical = "supply-current"};
    EXPECT_EQ(relation(setUp, "20.4", ""), Relation::Inside);
    EXPECT_EQ(relation(low, "", "0.75"), Relation::Inside);
    EXPECT_EQ(relation(drain, "20.4", "60"), Relation::Same);
    EXPECT_EQ(relation(drain, "20", "60.4"), Relation::ReachesHigher);
}

// A caption with the conditions of a table, against that of the other sheet: what becomes of it.
struct Caption {
    std::string reference, candidate;          // the tables' own conditions
    std::string referenceText, candidateText;  // printed
    bool pairs = true;                         // the two rows are one parameter
};

std::string causeOfCaption(Caption const& caption) {
    auto sheet = [](std::string const& part, std::string const& condition, std::string const& text, std::string const& name, std::string const& canonical) {
        SheetBuilder made(part);
        made.section(SectionKind::Characteristics, "Characteristics").sentence("Text of " + part + " alone.").sentence(text);
        made.specification(condition, {{.name = name, .symbol = "VCU", .min = "4.25", .typ = "4.30", .max = "4.35", .unit = "V", .canonical = canonical}});
        return made.build();
    };
    auto const comparison =
        compared(sheet("QX17", caption.reference, caption.referenceText, "Overcharge detection", "overcharge-detect-voltage"),
                 sheet("ZL99", caption.candidate, caption.candidateText, "Threshold", caption.pairs ? "overcharge-detect-voltage" : "overdischarge-detect-voltage"));
    for (auto const& finding : comparison.findings) {
        if (finding.kind == FindingKind::Parameter || !finding.reference || finding.reference->text != caption.referenceText) continue;
        for (auto const& cause : comparison.findings) {
            if (cause.id == finding.consequenceOf) return std::string(model::nameOf(cause.relation));
        }
        return "none";
    }
    return "lost";
}

// A row of the two tables is compared by it, and says so.
TEST(Align, TheCaptionWithTheConditionsOfATableFollowsFromARowComparedByIt) {
    std::string const r = "Electrical characteristics (VDD = 3.5 V, Ta = 25 °C, unless otherwise noted)";
    std::string const c = "Electrical characteristics (VDD = 4.0 V, Ta = 25 °C, unless otherwise noted)";
    EXPECT_EQ(causeOfCaption({r, c, r, c}), "conditions-differ");
    EXPECT_EQ(causeOfCaption({r, c, r, c, false}), "none") << "no row is compared by it";
    EXPECT_EQ(causeOfCaption({"VDD = 25 V", "VDD = 25 V", "VDD = 2.5 V", "VDD = 25 V"}), "none");
    EXPECT_EQ(causeOfCaption({"VDD = 25 V", "VDD = 12 V", "VDD = 2.5 V", "VDD = 12 V"}), "none");
    EXPECT_EQ(causeOfCaption({"VDD = 5 V", "VDD = 12 V", "VDD = ±5 V", "VDD = 12 V"}), "none");
    EXPECT_EQ(causeOfCaption({"VDD < 25 V", "VDD < 12 V", "VDD > 25 V", "VDD < 12 V"}), "none");
    EXPECT_EQ(causeOfCaption({"VDD ≤ 25 V", "VDD ≤ 12 V", "VDD ≥ 25 V", "VDD ≤ 12 V"}), "none");
    EXPECT_EQ(causeOfCaption({"VDD = 15 V", "VDD = 12 V", "VDD = 1", "VDD = 12 V"}), "none");
}

// What the title of a table says, put otherwise by another maker.
TEST(Align, ATitleThatStatesTheSameConditionsIsPutOtherwise) {
    auto const classOf = [](std::string const& reference, std::string const& candidate) {
        auto sheet = [](std::string const& part, std::string const& title, std::string const& row) {
            SheetBuilder made(part);
            made.section(SectionKind::Characteristics, "Characteristics").sentence("Text of " + part + " alone.").sentence(title);
            made.specification(title, {{.name = row, .symbol = "VIO", .typ = "3", .unit = "mV", .canonical = "input-offset-voltage"}});
            return made.build();
        };
        auto const comparison = compared(sheet("QX17", reference, "Offset voltage"), sheet("ZL99", candidate, "Input offset"));
        for (auto const& finding : comparison.findings) {
            if (finding.reference && finding.candidate && finding.reference->text == reference && !finding.classes.empty())
                return std::string(model::nameOf(finding.classes.front()));
        }
        return std::string("none");
    };
    std::string const r = "Electrical characteristics, VCC± = ±15 V, TA = 25 °C";
    EXPECT_EQ(classOf(r, "Electrical characteristics (V+/V-=±15V, Ta=25°C, unless otherwise noted)"), "STYLE");
    EXPECT_EQ(classOf(r, "Electrical characteristics (grade B (Note 2), V+/V-=±15V, Ta=25°C)"), "STYLE");
    EXPECT_EQ(classOf(r, "■ Electrical characteristics (V+/V-=±15V, Ta=25°C)"), "STYLE");
    EXPECT_EQ(classOf(r, "Electrical characteristics (V+/V-=±12V, Ta=25°C)"), "NUM");
    EXPECT_EQ(classOf(r, "Electrical characteristics (V+/V-=±15V, Ta=25°C, 4/8 channels)"), "NUM");
    EXPECT_EQ(classOf("Characteristics at TJ = 25 °C", "Characteristics Ta = 25 °C"), "STYLE") << "nothing is heated";
    EXPECT_EQ(classOf("Characteristics at TJ = 25 °C", "Characteristics Ta = 85 °C"), "TEMP");
}

// A running head whose text was changed on one page is no running head to the reader of that sheet.
TEST(Align, JoinsARunningHeadWithTheSentenceItBecame) {
    auto sheet = [](std::vector<int> const& pages) {
        SheetBuilder builder;
        builder.sentence("The part monitors one cell of the logger.").sentence("It switches the discharge FET.").sentence("It switches the charge FET.");
        builder.nextPage().sentence("The delay is set inside.").nextPage().sentence("The supply current is low.");
        builder.runningHead("QX17 Rev. 1.1 Dec 2015", pages);
        return builder;
    };
    Datasheet const reference = sheet({1, 2, 3}).build();
    SheetBuilder changed = sheet({1, 3});
    model::Sentence stray;
    stray.id = "x99";
    stray.text = "QX17 Rev. 1.1 Dec 2016";
    stray.places = {{2, reference.furniture[0].places[1].box}};
    changed.sheet().text.push_back(stray);
    Comparison const comparison = compared(reference, changed.build());
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(shown(findings[0].reference).substr(0, 22), "QX17 Rev. 1.1 Dec 2015");
    EXPECT_EQ(shown(findings[0].candidate).substr(0, 22), "QX17 Rev. 1.1 Dec 2016");
}

TEST(Align, GathersARunningHeadThatIsReadInPieces) {
    auto sheet = [](std::vector<int> const& pages) {
        SheetBuilder builder;
        builder.sentence("The part monitors one cell of the logger.").sentence("It switches the discharge FET.").sentence("It switches the charge FET.");
        builder.nextPage().sentence("The delay is set inside.").nextPage().sentence("The supply current is low.");
        builder.runningHead("Rev 6: Feb. 2011", pages);
        return builder;
    };
    Datasheet const reference = sheet({1, 2, 3}).build();
    SheetBuilder changed = sheet({1, 3});
    model::Rect const place = reference.furniture[0].places[1].box;
    changed.sheet().text.push_back({"x98", {}, "Rev 1: Feb.", {{2, {place.x0, place.y0, place.x0 + 60, place.y1}}}});
    changed.sheet().text.push_back({"x99", {}, "2011", {{2, {place.x0 + 70, place.y0, place.x0 + 99, place.y1}}}});
    Comparison const comparison = compared(reference, changed.build());
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(findings[0].reference->text, "Rev 6: Feb. 2011");
    EXPECT_EQ(findings[0].candidate->text, "Rev 1: Feb. 2011");
    EXPECT_EQ(findings[0].candidate->page, 2);
}

// A list of values under a heading that one sheet's reader knows and the other's does not.
TEST(Align, FindsNothingInAListThatIsReadAsValuesHereAndAsTextThere) {
    auto sheet = [] {
        SheetBuilder builder;
        builder.sentence("The part monitors one cell of the logger.").sentence("It switches the discharge FET.").sentence("It switches the charge FET.");
        return builder;
    };
    SheetBuilder reference = sheet();
    reference.specification("", {{.name = "Junction temperature", .max = "150", .unit = "°C"}, {.name = "Operating temperature", .min = "-40", .max = "85", .unit = "°C"}});
    for (auto& parameter : reference.sheet().parameters) parameter.table.clear();
    reference.sheet().parameters[0].printed = "Junction temperature ... 150°C";
    reference.sheet().parameters[1].printed = "Operating temperature ... -40°C to 85°C";
    reference.sheet().tables.clear();
    SheetBuilder candidate = sheet();
    model::Rect const place = model::united(reference.sheet().parameters[0].box, reference.sheet().parameters[1].box);
    candidate.sheet().text.push_back({"x9", {}, "Junction temperature…..150℃ Operating temperature……-40℃ to 85℃", {{1, place}}});
    Comparison const comparison = compared(reference.build(), candidate.build());
    EXPECT_TRUE(own(comparison).empty()) << listed(comparison);
}

TEST(Align, TellsALeadLineThatIsASentenceTooOnce) {
    auto sheet = [](std::string const& temperature) {
        SheetBuilder builder;
        builder.sentence("The part monitors one cell of the logger.").sentence("It switches the discharge FET.");
        builder.sentence("Electrical characteristics (Ta=" + temperature + ", unless otherwise noted)");
        builder.specification("QX17 Electrical characteristics (Ta=" + temperature + ", unless otherwise noted)", detectionRows());
        return builder.build();
    };
    Comparison const comparison = compared(sheet("25°C"), sheet("28°C"));
    EXPECT_EQ(own(comparison).size(), 1U) << listed(comparison);
}

TEST(Align, TellsAUnitPrintedOnceForSeveralRowsOnce) {
    auto sheet = [](std::string const& unit) {
        SheetBuilder builder;
        builder.section(SectionKind::Characteristics, "Electrical characteristics");
        builder.specification("Ta=25°C", {{.name = "Output current source", .symbol = "IO1", .typ = "20", .max = "40", .unit = unit},
                                          {.name = "Output current sink", .symbol = "IO2", .typ = "10", .max = "15", .unit = unit},
                                          {.name = "Voltage", .symbol = "VO", .typ = "3", .unit = "V"}});
        return builder.build();
    };
    Comparison const comparison = compared(sheet("mA"), sheet("µA"));
    EXPECT_EQ(own(comparison).size(), 1U) << listed(comparison);
    EXPECT_EQ(comparison.findings.size(), 2U);
}

// Two makers print the load of an output in two ways; a change within one text is one.
TEST(Align, ALoadThatIsABoundInOneSheetIsSaid) {
    auto sheet = [](std::vector<std::string> const& sentences, char const* load, char const* least, char const* canonical) {
        SheetBuilder builder;
        builder.section(SectionKind::Characteristics, "Characteristics");
        for (auto const& sentence : sentences) builder.sentence(sentence);
        builder.specification("", {{.name = "Output voltage, high", .symbol = "VOH", .condition = load, .min = least, .unit = "V", .canonical = canonical}});
        return builder.build();
    };
    std::vector<std::string> const texts = {"The lamp is lit at night.", "A bell rings at dawn.", "Masts are made of wood."};
    std::vector<std::string> const other = {"Timers count the hours.", "No horn is fitted.", "It comes in a small box."};
    auto const rowOf = [](Comparison const& comparison) {
        auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [](Finding const& finding) { return finding.kind == FindingKind::Parameter; });
        return found == comparison.findings.end() ? Finding{} : *found;
    };
    auto const bound = compared(sheet(texts, "IO ≤ 4 mA", "3.9", "output-high"), sheet(other, "IO = 4 mA", "3.9", "output-high"));
    EXPECT_EQ(rowOf(bound).conditions, model::ConditionRelation::AtBound) << listed(bound);
    ASSERT_EQ(bound.pairs.size(), 1U);
    EXPECT_EQ(bound.pairs[0].relation, Relation::Same);
    EXPECT_EQ(rowOf(compared(sheet(texts, "IO ≤ 4 mA", "3.9", "output-high"), sheet(other, "IO = 4 mA", "3.5", "output-high"))).relation, Relation::ReachesLower);
    EXPECT_EQ(rowOf(compared(sheet(texts, "IO ≤ 4 mA", "3.9", "output-high"), sheet(texts, "IO = 4 mA", "3.9", "output-high"))).conditions, model::ConditionRelation::Milder);
    EXPECT_EQ(rowOf(compared(sheet(texts, "IO ≤ 4 mA", "3.9", "supply-current"), sheet(other, "IO = 4 mA", "3.9", "supply-current"))).conditions, model::ConditionRelation::Milder);
}

TEST(Align, PairsRatingsThoughTheirHeadingChanged) {
    auto sheet = [](std::string const& heading, model::ParameterKind kind) {
        SheetBuilder builder;
        builder.section(SectionKind::Ratings, heading).sentence("The part monitors one cell.").sentence("It has a delay.").sentence("It is small.");
        builder.specification("", {{.name = "Input voltage", .symbol = "VIN", .max = "7", .unit = "V", .kind = kind}});
        return builder.build();
    };
    Comparison const comparison = compared(sheet("Absolute maximum ratings", model::ParameterKind::Rating), sheet("Absolute minimum ratings", model::ParameterKind::Other));
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(findings[0].kind, FindingKind::Section);
}

TEST(Align, ShowsWhatStandsInPlaceOfAFeatureThatIsNoLongerStated) {
    SheetBuilder reference;
    reference.sentence("The part monitors one cell.").sentence("It has a delay.");
    reference.feature("zero-volt-charging", "inhibited", "Charging of a 0 V cell is not possible.");
    SheetBuilder candidate;
    candidate.sentence("The part monitors one cell.").sentence("It has a delay.").sentence("Charging of a 0 V cell is now possible.");
    Comparison const comparison = compared(reference.build(), candidate.build());
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(findings[0].kind, FindingKind::Feature);
    EXPECT_EQ(findings[0].relation, Relation::ModeUnstated);
    EXPECT_NE(shown(findings[0].candidate).find("now possible"), std::string::npos);
}

TEST(Align, HangsAContradictionInsideOneSheetUnderTheChangedSentence) {
    SheetBuilder reference;
    reference.feature("fet", "external", "Selection of the external FET.").sentence("The resistance of the external FET counts.").sentence("A third sentence.");
    SheetBuilder candidate;
    candidate.feature("fet", "external", "Selection of the external FET.").feature("fet", "internal", "The resistance of the internal FET counts.").sentence("A third sentence.");
    Comparison const comparison = compared(reference.build(), candidate.build());
    auto const findings = own(comparison);
    ASSERT_EQ(findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(findings[0].kind, FindingKind::Wording);
    ASSERT_EQ(comparison.findings.size(), 2U);
}

TEST(Align, ListsProseOfTwoLanguagesOnce) {
    SheetBuilder reference;
    reference.section(SectionKind::Function, "Function");
    for (int i = 0; i < 5; ++i) reference.sentence("Sentence about state " + std::to_string(i));
    SheetBuilder candidate;
    candidate.section(SectionKind::Function, "功能");
    candidate.sheet().document.languages = {"zh"};
    for (int i = 0; i < 5; ++i) candidate.sentence("关于状态的句子" + std::to_string(i));
    Comparison const comparison = compared(reference.build(), candidate.build());
    ASSERT_EQ(comparison.findings.size(), 1U) << listed(comparison);
    EXPECT_EQ(comparison.findings[0].kind, FindingKind::Coverage);
    EXPECT_TRUE(comparison.findings[0].open);
    EXPECT_EQ(comparison.coverage.compared, 0);
    EXPECT_EQ(comparison.coverage.listed, 20);
}

TEST(Align, SaysWhatCouldNotBeRead) {
    SheetBuilder reference;
    reference.sentence("A sentence.");
    reference.sheet().coverage.unaccounted = {{"4.25", 1, {10, 10, 20, 20}}};
    reference.sheet().coverage.pagesWithoutText = {2};
    Datasheet const sheet = reference.build();
    Comparison const comparison = compared(sheet, sheet);
    ASSERT_EQ(comparison.findings.size(), 2U) << listed(comparison);
    for (auto const& finding : comparison.findings) {
        EXPECT_EQ(finding.kind, FindingKind::Coverage);
        EXPECT_EQ(finding.relation, Relation::Unread);
        EXPECT_TRUE(finding.open);
    }
    EXPECT_EQ(comparison.coverage.unaccounted, 2);
}

TEST(Align, FindsNothingWhereSectionsMoveAndUnitsAreScaled) {
    Texts texts;
    Datasheet const reference = sheetOf(texts);
    SheetBuilder moved;
    moved.section(SectionKind::Function, "Function");
    moved.sentence(texts.release);
    moved.section(SectionKind::Features, "Features");
    moved.sentence("Supply current of 3.0 µA (typ.) in operation.");
    SheetBuilder straight;
    straight.section(SectionKind::Features, "Features");
    straight.sentence("Supply current of 3.0 µA (typ.) in operation.");
    straight.nextPage();
    straight.section(SectionKind::Function, "Function");
    straight.sentence(texts.release);
    Comparison const comparison = compared(straight.build(), moved.build());
    EXPECT_TRUE(comparison.findings.empty()) << listed(comparison);
}

TEST(Align, KeepsIdsWhenThePageChanges) {
    Texts texts;
    Datasheet const reference = sheetOf(texts);
    texts.rows[0].max = "4.355";
    Datasheet candidate = sheetOf(texts);
    auto const before = compared(reference, candidate).findings;
    for (auto& parameter : candidate.parameters) ++parameter.page;
    for (auto& table : candidate.tables) ++table.page;
    auto const after = compared(reference, candidate).findings;
    ASSERT_EQ(before.size(), 1U);
    ASSERT_FALSE(after.empty());
    EXPECT_EQ(before[0].id, after[0].id);
    EXPECT_EQ(before[0].id.size(), 12U);
}

// A small heading inside a table is read as one in this state of the text and not in that.
TEST(Align, AHeadingThatBeginsACellOfTheOtherStateIsNoFinding) {
    auto stateOf = [](bool heading, std::string const& title) {
        Datasheet sheet = sheetOf(Texts{});
        model::Cell cell;
        cell.text = "Solder temperature (10 s at the pin)";
        cell.row = 1;
        sheet.tables.front().cells.push_back(cell);
        if (heading) {
            model::Section section = sheet.sections.front();
            section.id = "s99";
            section.title = title;
            section.kind = SectionKind::Other;
            sheet.sections.push_back(section);
        }
        return sheet;
    };
    auto sectionFindings = [&](std::string const& title) {
        auto const list = own(compared(stateOf(true, title), stateOf(false, title)));
        return std::count_if(list.begin(), list.end(), [](auto const& finding) { return finding.kind == FindingKind::Section; });
    };
    EXPECT_EQ(sectionFindings("Solder temperature"), 0);
    EXPECT_EQ(sectionFindings("Storage"), 1);
}

}  // namespace
}  // namespace standin::compare
