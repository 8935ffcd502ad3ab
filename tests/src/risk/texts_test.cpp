#include "risk/texts.h"

#include <array>

#include <gtest/gtest.h>

namespace standin::risk {
namespace {

TEST(Texts, AmountsTakeTheHandyPrefix) {
    auto const amount = [](char const* value, char const* unit) { return texts::amount(*quantity::Decimal::parse(value), unit); };
    EXPECT_EQ(amount("0.035", "V"), "35 mV");
    EXPECT_EQ(amount("0.00018", "s"), "180 µs");
    EXPECT_EQ(amount("0.000000002", "A"), "2 nA");
    EXPECT_EQ(amount("16", "V"), "16 V");
    EXPECT_EQ(amount("4700", "Ω"), "4.7 kΩ");
    EXPECT_EQ(amount("5", "degC"), "5 K");
    EXPECT_EQ(amount("0.5", "1"), "0.5");
    EXPECT_EQ(amount("0", "V"), "0 V");
    EXPECT_EQ(amount("12", "K/W"), "12 K/W");
}

TEST(Texts, ValuesShowTheirColumns) {
    model::Side side;
    side.min = "4.255";
    side.max = "4.305";
    side.unit = "V";
    EXPECT_EQ(texts::values(side), "min 4.255, max 4.305 V");
    model::Side words;
    words.text = "Output short circuit | continuous";
    EXPECT_EQ(texts::values(words), "Output short circuit | continuous");
}

TEST(Texts, AConflictInsideOneSheetNamesTheSheet) {
    model::Finding finding;
    finding.relation = model::Relation::ConflictInDocument;
    finding.candidate.emplace();
    finding.candidate->text = "VCU | 4.28 | V (page 3) / VCU | 4.26 | V (page 7)";
    EXPECT_EQ(texts::parameterExplanation(finding, {}, {}, {}), "The candidate prints it twice, with other values: VCU | 4.28 | V (page 3) / VCU | 4.26 | V (page 7). Look at both pages.");
}

model::Finding insideOf(char const* referenceMin, char const* referenceMax, char const* candidateMin, char const* candidateMax) {
    model::Finding finding;
    finding.relation = model::Relation::Inside;
    finding.reference.emplace();
    finding.reference->min = referenceMin;
    finding.reference->max = referenceMax;
    finding.candidate.emplace();
    finding.candidate->min = candidateMin;
    finding.candidate->max = candidateMax;
    return finding;
}

TEST(Texts, ALoneLimitThatMovedInwardsIsLowerOrHigher) {
    ParameterJudgement judged;
    judged.distance = Distance{.of = Bounding::Maximum, .higher = false, .amount = *quantity::Decimal::parse("0.05")};
    EXPECT_EQ(texts::parameterTitle("Low-level input voltage", insideOf("", "0.8", "", "0.75"), judged, vocabulary::Role::Cap, "V"), "Low-level input voltage is lower by 50 mV");
    judged.distance = Distance{.of = Bounding::Minimum, .higher = true, .amount = *quantity::Decimal::parse("2")};
    EXPECT_EQ(texts::parameterTitle("Clock frequency", insideOf("3", "", "5", ""), judged, vocabulary::Role::Floor, "Hz"), "Clock frequency is higher by 2 Hz");
    EXPECT_EQ(texts::parameterTitle("Delay", insideOf("1", "4", "2", "3"), judged, vocabulary::Role::Window, "s"), "Delay lies inside the reference's range");
    judged.distance = Distance{.of = Bounding::Maximum, .higher = false, .amount = *quantity::Decimal::parse("2")};
    for (auto const& [reference, candidate] :
         {std::pair{"±5", "±3"}, {"± 5", "± 3"}, {"+/-5", "+/-3"}, {"2 to 7", "3 to 5"}, {"2~7", "3~5"}, {"5±2", "5±1"}, {"±5%", "±3%"}, {"-5 mV to 5 mV", "±3 mV"}}) {
        EXPECT_EQ(texts::parameterTitle("Offset voltage", insideOf("", reference, "", candidate), judged, vocabulary::Role::Window, "V"),
                  "Offset voltage lies inside the reference's range")
            << reference;
    }
    EXPECT_EQ(texts::parameterTitle("Delay", insideOf("", "<7", "", "5"), judged, vocabulary::Role::Cap, "s"), "Delay is lower by 2 s");
    EXPECT_EQ(texts::parameterTitle("Slope", insideOf("", "-3", "", "-5"), judged, vocabulary::Role::Cap, "V"), "Slope is lower by 2 V");
}

// "-4.2 A" is the larger current, though the lower number.
TEST(Texts, NegativeValuesAreSetAgainstEachOtherByMagnitude) {
    using model::Relation;
    auto const titled = [](Relation relation, std::array<char const*, 4> printed, Bounding of, bool larger) {
        model::Finding finding = insideOf(printed[0], printed[1], printed[2], printed[3]);
        finding.relation = relation;
        ParameterJudgement judged;
        judged.outcome = larger ? Outcome::Better : Outcome::NotEnclosing;
        judged.turned = true;
        judged.distance = Distance{.of = of, .higher = larger, .amount = quantity::Decimal(2)};
        return texts::parameterTitle("Drain current", finding, judged, vocabulary::Role::Withstand, "A");
    };
    EXPECT_EQ(titled(Relation::Inside, {"", "-4", "", "-6"}, Bounding::Maximum, true), "Drain current is larger in magnitude by 2 A");
    EXPECT_EQ(titled(Relation::Wider, {"", "-6", "", "-4"}, Bounding::Maximum, false), "Drain current is smaller in magnitude by 2 A");
    EXPECT_EQ(titled(Relation::ReachesLower, {"-4", "", "-6", ""}, Bounding::Minimum, true), "Drain current is larger in magnitude by 2 A");
    EXPECT_EQ(titled(Relation::ReachesLower, {"-4", "-1", "-6", "-1"}, Bounding::Maximum, true), "Drain current reaches higher in magnitude by 2 A");
    EXPECT_EQ(titled(Relation::ClearBelow, {"-4", "-3", "-6", "-5"}, Bounding::Maximum, true), "Drain current lies clear of the reference's range, larger in magnitude by 2 A");
    EXPECT_EQ(titled(Relation::TypDiffers, {"", "", "", ""}, Bounding::Typical, false), "Drain current: typical value smaller in magnitude by 2 A");
}

TEST(Texts, OneValueUnderTwoConditionsIsSaidOnce) {
    model::Finding finding = insideOf("", "90", "", "90");
    finding.relation = model::Relation::ConditionsDiffer;
    finding.reference->unit = finding.candidate->unit = "V";
    finding.reference->condition = "Tj = 25 °C";
    finding.candidate->condition = "Tc = 25 °C";
    EXPECT_EQ(texts::parameterExplanation(finding, {}, {}, {}), "Both state max 90 V, but the candidate's value holds under Tc = 25 °C and the reference's under Tj = 25 °C.");
    finding.candidate->max = "80";
    EXPECT_EQ(texts::parameterExplanation(finding, {}, {}, {}),
              "The candidate states max 80 V where the reference states max 90 V, but the candidate's value holds under Tc = 25 °C and the reference's under Tj = 25 °C.");
    finding.candidate->condition.clear();
    EXPECT_EQ(texts::parameterExplanation(finding, {}, {}, {}),
              "The candidate states max 80 V where the reference states max 90 V, but the reference's value holds under Tj = 25 °C and the candidate states no condition.");
}

TEST(Texts, ShorteningKeepsCharactersWhole) {
    EXPECT_EQ(texts::shortened("abc", 3), "abc");
    EXPECT_EQ(texts::shortened("Name ............ 5 V", 14), "Name … 5 V");
    EXPECT_EQ(texts::shortened("ab过充", 4), "ab…");
    EXPECT_EQ(texts::shortened("ab过充", 5), "ab过…");
}

TEST(Texts, VerdictSentences) {
    EXPECT_EQ(texts::verdictSentence(model::VerdictLevel::NoDifference, {.compared = 6, .all = 31}, {}, 0, false),
              "No difference found in the compared parameters (6 of 31 compared).");
    EXPECT_EQ(texts::verdictSentence(model::VerdictLevel::BenchTest, {.compared = 30, .all = 31}, "Delay reaches higher by 1 ms", 2, true),
              "Bench test before use: Delay reaches higher by 1 ms, and 2 more findings of this level. 30 of 31 parameters were compared. "
              "Not enough information to say more: what is open is listed.");
}

}  // namespace
}  // namespace standin::risk
