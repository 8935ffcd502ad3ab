#include "compare/coverage_account.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Comparison;
using model::Datasheet;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

std::vector<std::string> causes(Comparison const& comparison) {
    std::vector<std::string> list;
    for (auto const& finding : comparison.findings) {
        if (finding.kind == model::FindingKind::Coverage) list.push_back(finding.title);
    }
    return list;
}

TEST(CoverageAccount, CountsEveryNumberAndSentenceOnce) {
    SheetBuilder reference;
    reference.sentence("The delay is 10 ms at 3.5 V.").sentence("Only here: 7 V.").specification("", {{.name = "Delay", .symbol = "tD", .max = "10", .unit = "ms"}});
    SheetBuilder candidate;
    candidate.sentence("The delay is 10 ms at 3.5 V.").specification("", {{.name = "Delay", .symbol = "tD", .max = "10", .unit = "ms"}});
    Datasheet const r = reference.build();
    Datasheet const c = candidate.build();
    auto const coverage = align(r, c, {}, words()).coverage;
    EXPECT_EQ(coverage.compared + coverage.listed + coverage.unaccounted, r.coverage.numbers + r.coverage.sentences + c.coverage.numbers + c.coverage.sentences);
    EXPECT_EQ(coverage.listed, 2);  // the sentence and its number
    EXPECT_EQ(coverage.unaccounted, 0);
}

TEST(CoverageAccount, NamesWhatWasNotReadAndWhatWasNotChosen) {
    SheetBuilder reference("QX17");
    reference.pinTable({{"1", "VDD", "Supply"}});
    reference.sheet().coverage.unreadTables = {"page 3"};
    reference.sheet().coverage.unreadFigures = {"f9"};
    SheetBuilder candidate("ZL99");
    candidate.specification("", {{.name = "Threshold", .symbol = "VT", .typ = "4.2", .unit = "V", .variant = "ZL99A"}, {.name = "Threshold", .symbol = "VT", .typ = "4.3", .unit = "V", .variant = "ZL99B"}});
    auto const list = causes(align(reference.build(), candidate.build(), {}, words()));
    for (auto const& cause : {kTablesUnread, kFiguresUnread, kVariantsNotChosen, kPinsInOneSheet, kNoParameters}) {
        EXPECT_NE(std::find(list.begin(), list.end(), cause), list.end()) << cause;
    }
}

}  // namespace
}  // namespace standin::compare
