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
    reference.sheet().coverage.unreadPins = {{"pin 6", 2, {10, 20, 30, 40}}, {"pin 7", 2, {10, 50, 30, 70}}};
    reference.sheet().coverage.drawnSigns = {{"before \"8\"", 2, {50, 60, 55, 65}}};
    SheetBuilder candidate("ZL99");
    candidate.specification("", {{.name = "Threshold", .symbol = "VT", .typ = "4.2", .unit = "V", .variant = "ZL99A"},
                                 {.name = "Threshold", .symbol = "VT", .typ = "4.3", .unit = "V", .variant = "ZL99B"}});
    auto const comparison = align(reference.build(), candidate.build(), {}, words());
    auto const list = causes(comparison);
    for (auto const& cause : {kTablesUnread, kFiguresUnread, kPinsUnread, kSignsDrawn, kVariantsNotChosen, kPinsInOneSheet, kNoParameters}) {
        EXPECT_NE(std::find(list.begin(), list.end(), cause), list.end()) << cause;
    }
    auto const pins = std::find_if(comparison.findings.begin(), comparison.findings.end(), [](auto const& finding) { return finding.title == kPinsUnread; });
    ASSERT_TRUE(pins != comparison.findings.end() && pins->reference);
    EXPECT_TRUE(pins->open);
    EXPECT_EQ(pins->reference->text, "pin 6 (page 2), pin 7 (page 2)");
    EXPECT_EQ(pins->reference->box, (model::Rect{10, 20, 30, 40}));
    EXPECT_FALSE(pins->candidate);
}

// They are part of "n of m parameters were compared".
TEST(CoverageAccount, RowsOfVersionsThatTheOtherSheetLacksCountAsNotCompared) {
    auto row = [](std::string const& name, std::string const& typ, std::string const& variant) {
        return support::RowText{.name = name, .symbol = "VO", .typ = typ, .unit = "V", .canonical = "output-voltage", .variant = variant};
    };
    SheetBuilder reference("QX17");
    reference.sentence("Text of one maker.").specification("", {row("Output voltage", "5", "QX7805"), row("Output voltage", "12", "QX7812")});
    SheetBuilder candidate("ZL99");
    candidate.sentence("Other words.").specification("", {row("Output", "5", "5V 10V"), row("Output", "9", "9V 14V"), row("Output", "12", "12V 19V")});
    Datasheet const r = reference.build();
    Datasheet const c = candidate.build();
    auto const listed = [](Comparison const& comparison) {
        return std::count_if(comparison.pairs.begin(), comparison.pairs.end(), [](auto const& pair) { return pair.relation == model::Relation::OnlyCandidate; });
    };
    auto const comparison = align(r, c, {}, words());
    EXPECT_EQ(comparison.pairs.size(), 3U);
    EXPECT_EQ(listed(comparison), 1);
    EXPECT_TRUE(std::none_of(comparison.findings.begin(), comparison.findings.end(), [](auto const& f) {
        return f.kind == model::FindingKind::Parameter && f.relation == model::Relation::OnlyCandidate;
    })) << "named once, among what was not compared";
    AlignOptions chosen;
    chosen.candidateVariant = "12V 19V";
    EXPECT_EQ(listed(align(r, c, chosen, words())), 0) << "what was not asked for is no part of it";
}

TEST(CoverageAccount, NamesWhatWasRecognisedFromPictures) {
    SheetBuilder scan("QX17");
    scan.sheet().document.textLayer = model::TextLayer::None;
    scan.sheet().coverage.recognised = {{"Delay 4.5 ms", 2, {10, 20, 30, 40}}, {"VIN", 2, {10, 50, 30, 70}}, {"GND", 3, {10, 20, 30, 40}}};
    scan.sheet().coverage.unrecognised = {{3, {50, 50, 60, 60}}};
    auto const comparison = align(scan.build(), SheetBuilder("ZL99").build(), {}, words());
    auto const find = [&](std::string_view cause) {
        auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [cause](auto const& finding) { return finding.title == cause; });
        return found == comparison.findings.end() ? nullptr : &*found;
    };
    auto const* recognised = find(kRecognised);
    ASSERT_TRUE(recognised != nullptr && recognised->reference);
    EXPECT_EQ(recognised->reference->text, "page 2 (4 words), page 3 (1 word)");
    EXPECT_EQ(recognised->reference->box, (model::Rect{10, 20, 30, 40}));
    EXPECT_TRUE(recognised->open);
    auto const* lettering = find(kLetteringUnread);
    ASSERT_TRUE(lettering != nullptr && lettering->reference);
    EXPECT_EQ(lettering->reference->text, "page 3 (1 place)");
    EXPECT_EQ(find(kPagesWithoutText), nullptr) << "they were recognised";
}

TEST(CoverageAccount, NamesRowsAndTablesReadWithDoubt) {
    SheetBuilder builder("QX17");
    builder.specification("", {{.name = "Threshold", .symbol = "VT", .typ = "4.2", .unit = "V"}, {.name = "Delay", .symbol = "tD", .typ = "9", .unit = "ms"}});
    builder.table(model::TableKind::Other, {{"Code", "Mode"}, {"1", "auto"}}, "Table 4");
    auto const sure = builder.build();
    auto const none = causes(align(sure, sure, {}, words()));
    EXPECT_EQ(std::find(none.begin(), none.end(), kReadWithDoubt), none.end());

    auto doubted = sure;
    doubted.parameters[0].confidence.score = 0.95;
    doubted.parameters[1].confidence.score = 0.55;
    doubted.tables[1].confidence = 0.5;
    auto const comparison = align(sure, doubted, {}, words());
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [](auto const& finding) { return finding.title == kReadWithDoubt; });
    ASSERT_NE(found, comparison.findings.end());
    EXPECT_TRUE(found->open);
    EXPECT_FALSE(found->reference);
    ASSERT_TRUE(found->candidate);
    EXPECT_EQ(found->candidate->text, "Delay (page 1), Table 4 (page 1)");
    EXPECT_EQ(found->candidate->box, doubted.parameters[1].box);
}

TEST(CoverageAccount, NamesCorrectionsThatFitNoRow) {
    SheetBuilder builder("QX17");
    builder.specification("", {{.name = "Threshold", .symbol = "VT", .typ = "4.2", .unit = "V"}});
    auto const plain = builder.build();
    auto corrected = plain;
    model::Correction correction;
    correction.row = "Threshold VT";
    correction.field = "typ";
    correction.page = 1;
    corrected.document.corrections = {correction};
    auto const applied = causes(align(plain, corrected, {}, words()));
    EXPECT_EQ(std::find(applied.begin(), applied.end(), kCorrectionsNotApplied), applied.end());
    for (auto const outcome : {model::CorrectionOutcome::NotFound, model::CorrectionOutcome::Ambiguous}) {
        corrected.document.corrections[0].outcome = outcome;
        auto const list = causes(align(corrected, plain, {}, words()));
        EXPECT_NE(std::find(list.begin(), list.end(), kCorrectionsNotApplied), list.end());
    }
}

}  // namespace
}  // namespace standin::compare
