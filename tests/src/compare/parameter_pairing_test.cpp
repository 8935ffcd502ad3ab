#include "compare/parameter_pairing.h"

#include <gtest/gtest.h>

#include <chrono>
#include <map>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Datasheet;
using model::ParameterKind;
using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

ParameterPairing paired(SheetPair const& sheets) {
    ConditionMemo memo;
    return pairParameters(sheets, memo);
}

Datasheet sheetOf(std::vector<RowText> const& rows, std::string const& part) {
    SheetBuilder builder(part);
    builder.sentence("Text of " + part + " alone.");
    builder.specification("", rows);
    return builder.build();
}

// Reference id -> candidate id.
std::map<std::string, std::string> partners(std::vector<RowText> const& reference, std::vector<RowText> const& candidate, AlignOptions const& options = {}) {
    Datasheet const r = sheetOf(reference, "QX17");
    Datasheet const c = sheetOf(candidate, "ZL99");
    std::map<std::string, std::string> found;
    for (auto const& pair : paired(SheetPair(r, c, options, words())).pairs) {
        found[r.parameters[static_cast<std::size_t>(pair.reference)].id] = c.parameters[static_cast<std::size_t>(pair.candidate)].id;
    }
    return found;
}

using Partners = std::map<std::string, std::string>;

TEST(ParameterPairing, PutsConditionsFirstAmongEquals) {
    std::vector<RowText> const reference{{.name = "On resistance", .symbol = "RDS", .condition = "VGS=4.5V", .max = "30", .unit = "mΩ"},
                                         {.name = "On resistance", .symbol = "RDS", .condition = "VGS=2.5V", .max = "45", .unit = "mΩ"}};
    std::vector<RowText> const candidate{{.name = "Drain-source on resistance", .symbol = "RDS", .condition = "VGS = 2.5 V", .max = "29", .unit = "mΩ"},
                                         {.name = "Drain-source on resistance", .symbol = "RDS", .condition = "VGS = 4.5 V", .max = "24", .unit = "mΩ"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}, {"p2", "p1"}}));
}

TEST(ParameterPairing, ManyRowsOfOneSymbolMeetAlikeInEitherDirection) {
    auto const rows = [](int count, int step, std::string const& name) {
        std::vector<RowText> list;
        for (int i = 0; i < count; ++i) {
            std::string const load = std::to_string(10 + (i * step) % 97);
            list.push_back({.name = name, .symbol = "tPD", .condition = "CL=" + load + "pF", .max = std::to_string(20 + (i * 7) % 30), .unit = "ns"});
        }
        return list;
    };
    auto const reference = rows(44, 5, "Propagation delay");
    auto const candidate = rows(60, 3, "Delay of propagation");
    Partners const forward = partners(reference, candidate);
    Partners backward;
    for (auto const& [theirs, ours] : partners(candidate, reference)) backward[ours] = theirs;
    EXPECT_EQ(forward, backward);
    EXPECT_EQ(forward.size(), 44U);
}

TEST(ParameterPairing, NeverPairsARatingWithACharacteristic) {
    std::vector<RowText> const reference{{.name = "Input voltage", .symbol = "VIN", .max = "7", .unit = "V", .kind = ParameterKind::Rating}};
    std::vector<RowText> const candidate{{.name = "Input voltage", .symbol = "VIN", .max = "6", .unit = "V", .kind = ParameterKind::OperatingCondition}};
    EXPECT_TRUE(partners(reference, candidate).empty());
}

TEST(ParameterPairing, TheRangeOfOperationStandsAmongRatingsToo) {
    std::vector<RowText> const reference{
        {.name = "Operating temperature", .symbol = "Topr", .min = "-20", .max = "75", .unit = "°C", .canonical = "operating-temp", .kind = ParameterKind::Rating}};
    std::vector<RowText> const candidate{{.name = "Operating free-air temperature",
                                          .symbol = "TA",
                                          .min = "0",
                                          .max = "70",
                                          .unit = "°C",
                                          .canonical = "operating-temp",
                                          .kind = ParameterKind::OperatingCondition}};
    EXPECT_EQ(partners(reference, candidate).size(), 1U);
}

TEST(ParameterPairing, AThermalResistanceStandsAmongRatingsToo) {
    RowText thermal{.name = "Maximum junction-to-ambient",
                    .symbol = "RθJA",
                    .condition = "t ≤ 10 s",
                    .typ = "70",
                    .max = "90",
                    .unit = "°C/W",
                    .canonical = "theta-ja",
                    .kind = ParameterKind::Thermal};
    RowText rating{.name = "Thermal resistance, junction to ambient",
                   .symbol = "RthJA",
                   .condition = "t ≤ 10 s",
                   .max = "95",
                   .unit = "°C/W",
                   .canonical = "theta-ja",
                   .kind = ParameterKind::Rating};
    EXPECT_EQ(partners({thermal}, {rating}).size(), 1U);
    EXPECT_EQ(partners({rating}, {thermal}).size(), 1U);
}

// What a supply survives is no wider range to work in.
TEST(ParameterPairing, ARatedSupplyIsNoSupplyToOperateAt) {
    RowText operating{.name = "Supply voltage", .symbol = "VCC", .min = "2", .max = "6", .unit = "V", .canonical = "supply-range", .kind = ParameterKind::OperatingCondition};
    RowText rating{.name = "Supply voltage", .symbol = "VCC", .min = "-0.5", .max = "7", .unit = "V", .canonical = "supply-range", .kind = ParameterKind::Rating};
    EXPECT_TRUE(partners({operating}, {rating}).empty());
    EXPECT_TRUE(partners({rating}, {operating}).empty());
}

TEST(ParameterPairing, NeverPairsWhatTheVocabularyTellsApart) {
    std::vector<RowText> const reference{{.name = "Voltage threshold", .symbol = "VCL", .typ = "4.1", .unit = "V", .canonical = "overcharge-release-voltage"}};
    std::vector<RowText> const candidate{{.name = "Voltage threshold upper", .symbol = "VCL", .typ = "4.3", .unit = "V", .canonical = "overcharge-detect-voltage"}};
    EXPECT_TRUE(partners(reference, candidate).empty());
}

TEST(ParameterPairing, PairsTheUnknownBySymbolAndName) {
    std::vector<RowText> const reference{{.name = "Ripple suppression of the logger", .symbol = "RSL", .typ = "60", .unit = "dB"},
                                         {.name = "Wake time", .symbol = "tWK", .max = "5", .unit = "ms"}};
    std::vector<RowText> const candidate{{.name = "Wake-up time", .symbol = "tWK", .max = "6", .unit = "ms"},
                                         {.name = "Ripple suppression", .symbol = "RSL", .typ = "55", .unit = "dB"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}, {"p2", "p1"}}));
}

// A version that was chosen is meant, whatever the other maker calls his.
TEST(ParameterPairing, AChosenVersionIsNoOtherVersion) {
    Datasheet const reference = sheetOf({{.name = "Lamp voltage", .symbol = "VLA", .min = "4.2", .max = "4.4", .unit = "V", .variant = "QX17-P"}}, "QX17");
    Datasheet const candidate = sheetOf({{.name = "Lamp voltage", .symbol = "VLA", .min = "4.3", .max = "4.5", .unit = "V", .variant = "QX17A-G"},
                                         {.name = "Lamp voltage", .symbol = "VLA", .min = "4.2", .max = "4.4", .unit = "V", .variant = "QX17-G"}},
                                        "ZL99");
    AlignOptions options;
    options.candidateVariant = "QX17A-G";
    auto const pairing = paired(SheetPair(reference, candidate, options, words()));
    ASSERT_EQ(pairing.pairs.size(), 1U);
    EXPECT_EQ(pairing.pairs[0].candidate, 0) << "not the other version, though its values are the same";
    EXPECT_GT(pairing.pairs[0].confidence, 0.8);
}

TEST(ParameterPairing, LeavesOtherVariantsAside) {
    std::vector<RowText> const reference{{.name = "Threshold", .symbol = "VT", .typ = "4.2", .unit = "V", .variant = "QX17A"},
                                         {.name = "Threshold", .symbol = "VT", .typ = "4.3", .unit = "V", .variant = "QX17B"}};
    std::vector<RowText> const candidate{{.name = "Threshold", .symbol = "VT", .typ = "4.3", .unit = "V"}};
    AlignOptions options;
    options.referenceVariant = "QX17B";
    EXPECT_EQ(partners(reference, candidate, options), (Partners{{"p2", "p1"}}));
}

TEST(ParameterPairing, LowersItsConfidenceWhereTwoFitAlike) {
    Datasheet const r = sheetOf({{.name = "Delay", .symbol = "tD", .typ = "10", .unit = "ms"}}, "QX17");
    Datasheet const c = sheetOf({{.name = "Delay", .symbol = "tD", .condition = "state A", .typ = "11", .unit = "ms"},
                                 {.name = "Delay", .symbol = "tD", .condition = "state B", .typ = "12", .unit = "ms"}},
                                "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 1U);
    EXPECT_TRUE(pairing.pairs[0].doubtful);
    EXPECT_LT(pairing.pairs[0].confidence, 0.8);
    EXPECT_EQ(pairing.onlyCandidate.size(), 1U);
}

// Each row has a neighbour that is nearly the same; exchanging partners would be worse for both.
TEST(ParameterPairing, IsSureWhereOnlyOneArrangementFits) {
    auto rows = [](std::string const& name, std::string const& unit) {
        std::vector<RowText> list;
        for (std::string const level : {"2", "4.5", "6"})
            list.push_back({.name = name, .symbol = "tPD", .condition = "VCC=" + level + unit, .max = level == "2" ? "60" : "2" + level, .unit = "ns"});
        return list;
    };
    Datasheet const r = sheetOf(rows("Propagation delay", " V"), "QX17");
    Datasheet const c = sheetOf(rows("Propagation delay clock to output", ""), "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 3U);
    for (auto const& pair : pairing.pairs) {
        EXPECT_EQ(pair.reference, pair.candidate);
        EXPECT_FALSE(pair.doubtful);
    }
}

TEST(ParameterPairing, PairsOneVersionWithItself) {
    std::vector<RowText> const reference{{.name = "Offset", .symbol = "VIO", .max = "5", .unit = "mV", .variant = "LQ20A"},
                                         {.name = "Offset", .symbol = "VIO", .max = "7", .unit = "mV", .variant = "LQ20, LQ20E"}};
    std::vector<RowText> const candidate{{.name = "Offset", .symbol = "VIO", .max = "7", .unit = "mV", .variant = "LQ22A"},
                                         {.name = "Offset", .symbol = "VIO", .max = "5", .unit = "mV", .variant = "LQ20/LQ21"},
                                         {.name = "Offset", .symbol = "VIO", .max = "4", .unit = "mV", .variant = "LQ20A"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p3"}, {"p2", "p2"}}));
}

// 4.5 V against 10 V of the same parameter: shown side by side, but not surely one row.
TEST(ParameterPairing, IsNotSureOfOneOfSeveralRowsUnderOtherConditions) {
    Datasheet const r = sheetOf({{.name = "On resistance", .symbol = "RDS", .condition = "VGS=4.5V", .max = "30", .unit = "mΩ", .canonical = "on-resistance"}}, "QX17");
    Datasheet const c = sheetOf({{.name = "On resistance", .symbol = "RDS", .condition = "VGS=10V", .max = "24", .unit = "mΩ", .canonical = "on-resistance"},
                                 {.name = "On resistance", .symbol = "RDS", .condition = "VGS=6V", .max = "28", .unit = "mΩ", .canonical = "on-resistance"}},
                                "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 1U);
    EXPECT_LT(pairing.pairs[0].confidence, 0.8);
}

TEST(ParameterPairing, IsSureOfTheOnlyRowOfItsIdWhateverItsConditions) {
    Datasheet const r = sheetOf({{.name = "On resistance", .symbol = "RDS", .condition = "VGS=4.5V", .max = "30", .unit = "mΩ", .canonical = "on-resistance"}}, "QX17");
    Datasheet const c = sheetOf({{.name = "Drain-source resistance", .symbol = "RON", .condition = "VGS=10V", .max = "24", .unit = "mΩ", .canonical = "on-resistance"}}, "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 1U);
    EXPECT_GT(pairing.pairs[0].confidence, 0.8);
}

double confidenceOf(std::vector<RowText> const& reference, std::vector<RowText> const& candidate, std::size_t index = 0) {
    Datasheet const r = sheetOf(reference, "QX17");
    Datasheet const c = sheetOf(candidate, "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    return index < pairing.pairs.size() ? pairing.pairs[index].confidence : -1;
}

// Conditions that contradict each other: the values are shown beside each other all the same,
// in doubt, for the candidate's may be the hazard ("conditions differ", on the hazard side).
TEST(ParameterPairing, RowsThatContradictEachOtherAndFitAlikeAreADoubtfulPair) {
    auto const sheet = [](std::string const& part, std::vector<RowText> rows) {
        SheetBuilder made(part);
        for (RowText& row : rows) {
            row.name = "Overcharge detection voltage";
            row.symbol = "VCU";
            row.unit = "V";
            row.canonical = "overcharge-detect-voltage";
        }
        made.specification("", rows);
        Datasheet listed = made.build();  // outside of tables: no place speaks for either
        listed.tables.clear();
        return listed;
    };
    Datasheet const r = sheet("QX17", {{.condition = "TA = 25 °C", .min = "4.2", .max = "4.25"}, {.condition = "TA = 30 °C", .min = "4.2", .max = "4.25"}});
    Datasheet const c = sheet("ZL99", {{.condition = "TA = 60 °C", .min = "4.4", .max = "4.5"}});
    auto const pairs = paired(SheetPair(r, c, {}, words())).pairs;
    ASSERT_EQ(pairs.size(), 1U);
    EXPECT_TRUE(pairs[0].doubtful);
    EXPECT_LE(pairs[0].confidence, 0.6);
}

// The names are in two languages, and only one is known.
TEST(ParameterPairing, IsSureOfOneSymbolWhoseNumbersAllAgree) {
    RowText const reference{.name = "升压启动电平", .symbol = "VBTL", .condition = "负载断开", .min = "2.9", .typ = "3", .max = "3.1", .unit = "V"};
    RowText candidate{.name = "Boost start level", .symbol = "VBTL", .condition = "load off", .min = "2.9", .typ = "3.0", .max = "3.1", .unit = "V"};
    EXPECT_GT(confidenceOf({reference}, {candidate}), 0.8);
    candidate.max = "3.2";
    EXPECT_LT(confidenceOf({reference}, {candidate}), 0.8);
}

TEST(ParameterPairing, TakesTheRowWhoseNumbersAgreeWhereConditionsReadUnlike) {
    std::vector<RowText> const reference{
        {.name = "Offset current", .symbol = "IIO", .typ = "3", .max = "30", .unit = "nA", .canonical = "input-offset-current"},
        {.name = "Offset current", .symbol = "IIO", .condition = "Thot to Tcold", .max = "100", .unit = "nA", .canonical = "input-offset-current"}};
    std::vector<RowText> const candidate{
        {.name = "Offset current", .condition = "over the whole range, plus to minus", .max = "-100", .unit = "nA", .canonical = "input-offset-current"},
        {.name = "Offset current", .condition = "plus to minus", .typ = "3", .max = "30", .unit = "nA", .canonical = "input-offset-current"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}, {"p2", "p1"}}));
    EXPECT_GT(confidenceOf(reference, candidate, 0), 0.8);
    EXPECT_GT(confidenceOf(reference, candidate, 1), 0.8);
}

// The better pair is gone; what is left shares an id and nothing printed.
TEST(ParameterPairing, IsNotSureOfWhatIsLeftOver) {
    std::vector<RowText> const reference{{.name = "Single supply", .symbol = "VCC", .max = "32", .unit = "V", .canonical = "supply-rating"},
                                         {.name = "Split supplies", .symbol = "VCC, VEE", .max = "16", .unit = "V", .canonical = "supply-rating"}};
    std::vector<RowText> const candidate{{.name = "Supply voltage", .symbol = "V+", .max = "32", .unit = "V", .canonical = "supply-rating"},
                                         {.name = "Supply voltage", .symbol = "V+", .max = "26", .unit = "V", .canonical = "supply-rating", .variant = "ZL98"}};
    EXPECT_LT(confidenceOf(reference, candidate, 1), 0.8);
}

// 100 mV stands in the rows of several versions.
TEST(ParameterPairing, IsNotSureOfALoneNumberWhereVersionsAreNamedInOneSheetOnly) {
    std::vector<RowText> const reference{{.name = "Load regulation", .symbol = "LR", .condition = "IO=20mA to 50mA", .max = "100", .unit = "mV", .canonical = "load-regulation"}};
    std::vector<RowText> const candidate{
        {.name = "Load regulation", .symbol = "LR", .condition = "IO=5mA to 90mA", .max = "100", .unit = "mV", .canonical = "load-regulation", .variant = "5V"},
        {.name = "Load regulation", .symbol = "LR", .condition = "IO=5mA to 90mA", .max = "240", .unit = "mV", .canonical = "load-regulation", .variant = "12V"}};
    EXPECT_LT(confidenceOf(reference, candidate), 0.8);
}

// Whichever version is meant, its row says the same.
TEST(ParameterPairing, IsSureWhereTheVersionsOfTheOtherSheetPrintTheSame) {
    std::vector<RowText> const reference{{.name = "Slew rate", .symbol = "SR", .condition = "CC = 0", .typ = "14", .unit = "V/µs", .canonical = "slew-rate"}};
    std::vector<RowText> candidate{{.name = "Slew rate", .symbol = "SR", .condition = "CC = 0", .typ = "12", .unit = "V/µs", .canonical = "slew-rate", .variant = "ZL99"},
                                   {.name = "Slew rate", .symbol = "SR", .condition = "CC = 0", .typ = "12", .unit = "V/µs", .canonical = "slew-rate", .variant = "ZL99A"}};
    EXPECT_GT(confidenceOf(reference, candidate), 0.8);
    candidate[1].typ = "11";
    EXPECT_LT(confidenceOf(reference, candidate), 0.8);
}

// Another version is there, but under a condition that this row does not hold for.
TEST(ParameterPairing, IsSureWhereTheRowsOfOtherVersionsHoldUnderOtherConditions) {
    std::vector<RowText> const reference{{.name = "Rise time", .symbol = "tr", .condition = "RL=600Ω, CL=100pF", .typ = "35", .unit = "ns", .canonical = "transient-rise-time"}};
    std::vector<RowText> candidate{
        {.name = "Rise time", .symbol = "tr", .condition = "RL=600Ω, CL=100pF", .typ = "20", .unit = "ns", .canonical = "transient-rise-time", .variant = "ZL98"},
        {.name = "Rise time", .symbol = "tr", .condition = "RL=600Ω, CL=500pF", .typ = "50", .unit = "ns", .canonical = "transient-rise-time", .variant = "ZL98"},
        {.name = "Rise time", .symbol = "tr", .condition = "RL=600Ω, CL=100pF", .typ = "20", .unit = "ns", .canonical = "transient-rise-time", .variant = "ZL98A"}};
    EXPECT_GT(confidenceOf(reference, candidate), 0.8);
    candidate[2].typ = "25";
    EXPECT_LT(confidenceOf(reference, candidate), 0.8);
}

// The test current differs between makers; no other row fits as well.
TEST(ParameterPairing, IsSureOfTheRowWhoseConditionsFitBest) {
    std::vector<RowText> const reference{
        {.name = "Gate threshold", .symbol = "VGS(TH)", .condition = "ID=250µA", .min = "2", .max = "4", .unit = "V", .canonical = "gate-threshold"}};
    std::vector<RowText> const candidate{
        {.name = "Gate threshold", .symbol = "VGS(TO)", .condition = "ID=1mA, Tj=175°C", .min = "1", .unit = "V", .canonical = "gate-threshold"},
        {.name = "Gate threshold", .symbol = "VGS(TO)", .condition = "ID=1mA", .min = "2", .typ = "3", .max = "4", .unit = "V", .canonical = "gate-threshold"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}}));
    EXPECT_GT(confidenceOf(reference, candidate), 0.8);
}

// The other sheet has one delay, at the load that its table is for.
TEST(ParameterPairing, ALineBesideItsTableIsNotTheFirstChoice) {
    SheetBuilder builder("QX17");
    builder.sentence("Text of QX17 alone.");
    builder.specification("CL = 50 pF unless otherwise specified",
                          {{.name = "Delay", .symbol = "tpd", .condition = "CL = 50 pF, VCC = 2 V", .max = "175", .unit = "ns", .canonical = "propagation-delay"},
                           {.name = "Delay", .symbol = "tpd", .condition = "CL = 150 pF, VCC = 2 V", .max = "245", .unit = "ns", .canonical = "propagation-delay"}});
    Datasheet const r = builder.build();
    Datasheet const c = sheetOf({{.name = "Delay", .symbol = "tpd", .condition = "VCC = 2 V", .max = "150", .unit = "ns", .canonical = "propagation-delay"}}, "ZL99");
    AlignOptions const options;
    auto const pairs = paired(SheetPair(r, c, options, words())).pairs;
    ASSERT_EQ(pairs.size(), 1U);
    EXPECT_EQ(pairs[0].reference, 0);
    EXPECT_GT(pairs[0].confidence, 0.8);
}

// What tells the rows apart stands in the name here and in a heading there.
TEST(ParameterPairing, FindsTheRowThatSharesTheTellingWords) {
    std::vector<RowText> const reference{{.name = "pulse width", .symbol = "tW", .condition = "CK HIGH or LOW, VCC = 2 V", .min = "75", .unit = "ns", .canonical = "pulse-width"},
                                         {.name = "pulse width", .symbol = "tW", .condition = "RST LOW, VCC = 2 V", .min = "75", .unit = "ns", .canonical = "pulse-width"}};
    std::vector<RowText> const candidate{
        {.name = "reset RST pulse width LOW", .symbol = "tW", .condition = "VCC = 2.0", .min = "75", .unit = "ns", .canonical = "pulse-width"},
        {.name = "clock CK pulse width HIGH or LOW", .symbol = "tW", .condition = "VCC = 2.0", .min = "75", .unit = "ns", .canonical = "pulse-width"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}, {"p2", "p1"}}));
    EXPECT_GT(confidenceOf(reference, candidate, 0), 0.8);
    EXPECT_GT(confidenceOf(reference, candidate, 1), 0.8);
}

// The typical values at 25 °C tell which name is which; the rows over temperature follow.
TEST(ParameterPairing, RowsOfOneNameGoWhereOthersOfItWent) {
    auto rows = [](std::vector<std::string> const& names, std::vector<std::string> const& typical) {
        std::vector<RowText> list;
        for (std::size_t n = 0; n < names.size(); ++n) {
            for (std::string const supply : {"2", "4.5", "6"}) {
                list.push_back({.name = names[n],
                                .symbol = "tW",
                                .condition = "VCC=" + supply + "V",
                                .min = "7" + supply,
                                .typ = typical[n] + supply,
                                .unit = "ns",
                                .canonical = "pulse-width",
                                .variant = "25 °C"});
                list.push_back({.name = names[n],
                                .symbol = "tW",
                                .condition = "VCC=" + supply + "V",
                                .min = "9" + supply,
                                .unit = "ns",
                                .canonical = "pulse-width",
                                .variant = "-40 to 85 °C"});
            }
        }
        return list;
    };
    auto const reference = rows({"ACP pulse width", "BCP pulse width"}, {"1", "2"});
    auto const candidate = rows({"storing clock pulse width", "moving clock pulse width"}, {"2", "1"});
    Datasheet const r = sheetOf(reference, "QX17");
    Datasheet const c = sheetOf(candidate, "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 12U);
    for (auto const& pair : pairing.pairs) {
        EXPECT_EQ(pair.candidate, (pair.reference + 6) % 12);
        EXPECT_GT(pair.confidence, 0.8);
    }
}

TEST(ParameterPairing, LeavesVersionsApartThatTheOtherSheetNamesToo) {
    std::vector<RowText> const reference{{.name = "Offset", .symbol = "VIO", .max = "5", .unit = "mV", .variant = "LQ20A"},
                                         {.name = "Offset", .symbol = "VIO", .max = "7", .unit = "mV", .variant = "LQ20V"}};
    std::vector<RowText> const candidate{{.name = "Input offset", .symbol = "VIO", .max = "7", .unit = "mV", .variant = "LQ10A"},
                                         {.name = "Input offset", .symbol = "VIO", .max = "5", .unit = "mV", .variant = "LQ20A, LQ30A"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}}));
    AlignOptions chosen;
    chosen.referenceVariant = "LQ20V";
    chosen.candidateVariant = "LQ10A";
    EXPECT_EQ(partners(reference, candidate, chosen), (Partners{{"p2", "p1"}}));
}

TEST(ParameterPairing, ListsTheRowsOfVersionsThatTheOtherSheetDoesNotCover) {
    auto row = [](std::string const& variant, std::string const& name) { return RowText{.name = name, .symbol = "VIO", .max = "5", .unit = "mV", .variant = variant}; };
    RowText const forAll{.name = "Slew rate", .symbol = "SR", .typ = "3", .unit = "V/µs"};
    Datasheet const r = sheetOf({row("LQ20A", "Offset"), row("LQ20V", "Offset"), forAll}, "QX17");
    Datasheet const c = sheetOf({row("LQ10A", "Input offset"), row("LQ20A", "Input offset")}, "ZL99");
    auto const pairing = paired(SheetPair(r, c, {}, words()));
    ASSERT_EQ(pairing.pairs.size(), 1U);
    EXPECT_EQ(pairing.otherVariantReference, (std::vector<int>{1}));
    EXPECT_EQ(pairing.otherVariantCandidate, (std::vector<int>{0}));
    EXPECT_EQ(pairing.onlyReference, (std::vector<int>{2}));
    EXPECT_TRUE(pairing.onlyCandidate.empty());
}

// The sheet of one part against a sheet of several.
TEST(ParameterPairing, ARowWithoutAVersionIsOfTheSheetsOwnPart) {
    std::vector<RowText> const reference{{.name = "Adjust pin current", .symbol = "IADJ", .typ = "46", .max = "100", .unit = "µA", .canonical = "adjust-pin-current"}};
    std::vector<RowText> const candidate{
        {.name = "Adjustment pin current", .symbol = "IADJ", .typ = "50", .max = "100", .unit = "µA", .canonical = "adjust-pin-current", .variant = "QX11"},
        {.name = "Adjustment pin current", .symbol = "IADJ", .typ = "50", .max = "100", .unit = "µA", .canonical = "adjust-pin-current", .variant = "QX17"}};
    EXPECT_EQ(partners(reference, candidate), (Partners{{"p1", "p2"}}));
    EXPECT_GT(confidenceOf(reference, candidate), 0.8);
}

// Ambient 85 °C here, up to 85 °C there; what is for 125 °C is another thing.
TEST(ParameterPairing, TheHotEndStandsForTheRange) {
    auto row = [](std::string const& variant, std::string const& max, std::string const& name = "Quiescent current") {
        return RowText{.name = name, .symbol = "IDD", .condition = "VDD=5V", .max = max, .unit = "µA", .canonical = "supply-current", .variant = variant};
    };
    std::vector<RowText> const reference{row("-40°C", "20"), row("+25°", "20"), row("+85°C", "150")};
    std::vector<RowText> const candidate{row("TA = 25°C", "5", "Quiescent device current"), row("-40 to 85°C", "150", "Quiescent device current"),
                                         row("-55 to 125°C", "150", "Quiescent device current")};
    auto const found = partners(reference, candidate);
    EXPECT_EQ(found.at("p2"), "p1");
    EXPECT_EQ(found.at("p3"), "p2");
    EXPECT_LT(confidenceOf(reference, candidate, 0), 0.8);
    EXPECT_GT(confidenceOf(reference, candidate, 1), 0.8);
    EXPECT_GT(confidenceOf(reference, candidate, 2), 0.8);
}

TEST(ParameterPairing, AConditionInTheValueColumnsIsNoPartnerForAValue) {
    std::vector<RowText> const reference{{.name = "Line regulation", .symbol = "LR", .max = "50", .unit = "mV", .canonical = "line-regulation"}};
    std::vector<RowText> const candidate{{.name = "Line regulation", .symbol = "LR", .max = "(7 ≤ VIN ≤ 25)", .unit = "V", .canonical = "line-regulation"}};
    EXPECT_TRUE(partners(reference, candidate).empty());
}

TEST(ParameterPairing, StaysBoundedOnRepetitiveTables) {
    std::vector<RowText> reference;
    std::vector<RowText> candidate;
    for (int i = 0; i < 600; ++i) {
        reference.push_back({.name = "Delay", .symbol = "tD", .typ = std::to_string(i), .unit = "ms"});
        candidate.push_back({.name = "Delay", .symbol = "tD", .typ = std::to_string(i + 1000), .unit = "ms"});
    }
    auto const start = std::chrono::steady_clock::now();
    partners(reference, candidate);
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(4));
}

}  // namespace
}  // namespace standin::compare
