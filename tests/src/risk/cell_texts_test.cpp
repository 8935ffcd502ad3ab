#include "risk/cell_texts.h"

#include <gtest/gtest.h>

namespace standin::risk::texts {
namespace {

quantity::Limits limits(char const* lo, char const* typ, char const* hi) {
    auto const bound = [](char const* text) { return *text == '\0' ? std::nullopt : quantity::Decimal::parse(text); };
    return {.lo = bound(lo), .typ = bound(typ), .hi = bound(hi)};
}

TEST(CellTexts, RangesAreRoundedOutward) {
    EXPECT_EQ(range(limits("3.564356", "4", "4.444444"), "A"), "3.564 A to 4.445 A");
    EXPECT_EQ(range(limits("", "", "0.0000001"), "A"), "at most 100 nA");
    EXPECT_EQ(range(limits("11.4077", "", ""), "month"), "at least 11.4 months");
    EXPECT_EQ(range(limits("", "4.28", ""), "V"), "typically 4.28 V");
    EXPECT_EQ(range(limits("0", "", "45"), "degC"), "0 °C to 45 °C");
    EXPECT_EQ(range(limits("4.3", "4.3", "4.3"), "V"), "4.3 V");
    EXPECT_EQ(range({}, "V"), "");
}

TEST(CellTexts, NamesSayWhereAValueComesFrom) {
    EXPECT_EQ(inputName("circuit.fet_on_resistance"), "fet_on_resistance of the circuit file");
    EXPECT_EQ(inputName("cell.capacity"), "capacity of the cell file");
    EXPECT_EQ(inputName("overcharge-detect-voltage"), "overcharge detect voltage");
    EXPECT_EQ(givesNo("cell", "resistance", "maximum"), "the cell file gives no maximum of resistance");
    EXPECT_EQ(inputList({{.name = "cell.capacity", .parameter = "", .page = 0, .box = {}, .text = "500 mAh"}, {.name = "a-b", .parameter = "p1", .page = 3, .box = {}, .text = "1 / 2 / 3 V"}}),
              "capacity of the cell file 500 mAh; a b 1 / 2 / 3 V (page 3)");
}

TEST(CellTexts, AnOpenCheckSaysWhatIsMissing) {
    model::CellCheck check;
    check.title = "Storage time after cut-off";
    check.candidate = model::CheckResult{.value = "", .outcome = model::CheckOutcome::Open, .why = "the circuit file gives no storage_time", .inputs = {}};
    EXPECT_EQ(checkTitle(check), "Storage time after cut-off: open, the circuit file gives no storage_time");
    check.limit = "at least 12 months";
    check.candidate->value = "at least 3 months";
    check.candidate->outcome = model::CheckOutcome::Violated;
    EXPECT_EQ(checkExplanation(check, "it may run empty", "Check the storage time"), "Asked for: at least 12 months. The candidate has: at least 3 months. Possible effect: it may run empty. Check the storage time.");
}

}  // namespace
}  // namespace standin::risk::texts
