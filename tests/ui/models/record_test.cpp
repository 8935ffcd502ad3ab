// The record in hand and its lines, on the demo pair.
#include "ui/models/record_model.h"

#include <QAbstractItemModelTester>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

constexpr int kLongestMs = 60000;

class RecordOfDemoPair : public ::testing::Test {
protected:
    void SetUp() override { QSettings().clear(); }
    void TearDown() override { QSettings().clear(); }

    [[nodiscard]] bool idle() const {
        return QTest::qWaitFor([&] { return !book.isBusy(); }, kLongestMs);
    }
    [[nodiscard]] QString path(char const* name) { return session.folder() + "/" + name; }
    void open() {
        book.makeKey(path("author.key"), "R. Ashdown", {});
        ASSERT_TRUE(idle());
        book.open({path("demo.record").toStdString(), "", {}});
        ASSERT_TRUE(idle());
        ASSERT_NE(book.record(), nullptr);
    }

    OpenSession session;
    RecordBook book{*session};
};

TEST_F(RecordOfDemoPair, ListsEveryLineThatNeedsADecisionGravestFirst) {
    RecordModel model(book);
    QAbstractItemModelTester const tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 0);
    open();
    ASSERT_GT(model.rowCount(), 0);
    auto const& lines = book.record()->overview.lines;
    int mustClose = 0;
    for (auto const& line : lines) mustClose += line.mustClose ? 1 : 0;
    int listed = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        listed += lines[model.rowAt(row).line].mustClose ? 1 : 0;
        if (row > 0) {
            EXPECT_GE(lines[model.rowAt(row - 1).line].severity, lines[model.rowAt(row).line].severity);
        }
        EXPECT_EQ(model.rowOf(model.rowAt(row).finding), row);
    }
    EXPECT_EQ(listed, mustClose);
    EXPECT_TRUE(book.isOfPair());
    EXPECT_TRUE(model.stateLine().startsWith("demo.record: draft")) << model.stateLine().toStdString();
}

TEST_F(RecordOfDemoPair, AHazardThatOnePersonDecidedWaitsForTheSecond) {
    RecordModel model(book);
    open();
    NewDecision decision;
    decision.decided.finding = model.rowAt(0).finding;
    decision.decided.disposition = record::Disposition::Rejected;
    decision.decided.reason = "The logger may meet it.";
    book.decide(decision);
    ASSERT_TRUE(idle());
    EXPECT_TRUE(model.rowAt(0).standing.startsWith("second person missing")) << model.rowAt(0).standing.toStdString();
    EXPECT_FALSE(model.rowAt(0).closed);
    book.makeKey(path("second.key"), "T. Belmonte", "larch");
    ASSERT_TRUE(idle());
    decision.stance = record::Stance::Confirm;
    book.decide(decision);
    ASSERT_TRUE(idle());
    EXPECT_TRUE(model.rowAt(0).closed);
    EXPECT_TRUE(model.lineText(0).contains("T. Belmonte"));
}

TEST_F(RecordOfDemoPair, WhatARuleRefusesIsSaidAndNotEntered) {
    open();
    QSignalSpy refused(&book, &RecordBook::refused);
    NewDecision decision;
    decision.decided.finding = book.record()->overview.lines.front().finding;
    decision.decided.disposition = record::Disposition::BenchTest;
    book.decide(decision);
    ASSERT_TRUE(idle());
    ASSERT_EQ(refused.count(), 1);
    EXPECT_TRUE(refused.first().first().toString().contains("a reason is required"));
    EXPECT_EQ(book.record()->record.entries.size(), 1U);
}

TEST_F(RecordOfDemoPair, SaysWhoWasGivenItAndWhoIsToLearnOfItsEnd) {
    RecordModel model(book);
    open();
    EXPECT_TRUE(model.distributionLines().isEmpty());
    for (auto const* to : {"Purchasing", "Stores", "Purchasing"}) book.distribute({to, "a copy of the record", "", ""});
    ASSERT_TRUE(idle());
    EXPECT_EQ(model.distributionLines(), "Given to: Purchasing, Stores");
    auto const first = QString::fromStdString(book.record()->file);
    book.open({path("next.record").toStdString(), "", {"S-18", "", "", "", "", "", {}}});
    ASSERT_TRUE(idle());
    book.take(first);
    ASSERT_TRUE(idle());
    book.supersede(path("next.record"), "A new revision.");
    ASSERT_TRUE(idle());
    EXPECT_TRUE(model.stateLine().startsWith("demo.record: superseded")) << model.stateLine().toStdString();
    EXPECT_TRUE(model.distributionLines().contains("by the record S-18: A new revision. R. Ashdown")) << model.distributionLines().toStdString();
    EXPECT_TRUE(model.distributionLines().contains("Not yet told that it is superseded: Purchasing, Stores"));
}

TEST_F(RecordOfDemoPair, IsTakenUpAgainWithItsPair) {
    open();
    RecordBook again(*session);
    EXPECT_TRUE(QTest::qWaitFor([&] { return again.record() != nullptr; }, kLongestMs));
    EXPECT_EQ(again.record()->record.head().hash, book.record()->record.head().hash);
    EXPECT_EQ(again.signer().keyFile, path("author.key").toStdString());
}

TEST_F(RecordOfDemoPair, ARecordOfOtherDocumentsIsNotThisPairs) {
    open();
    session->exchange();
    ASSERT_TRUE(testing::waitUntilRead(*session));
    EXPECT_EQ(book.record(), nullptr) << "the exchanged pair has no record yet";
    book.take(path("demo.record"));
    ASSERT_TRUE(idle());
    RecordModel const model(book);
    EXPECT_FALSE(book.isOfPair());
    EXPECT_TRUE(model.stateLine().contains("other documents"));
}

}  // namespace
}  // namespace standin::ui
