#include "ui/models/decisions.h"

#include <QFile>
#include <QFileInfo>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace standin::ui {
namespace {

std::string const kReference(64, 'a');
std::string const kCandidate(64, 'b');
std::string const kFinding = "0123456789ab";

TEST(Decisions, WordsGoBothWays) {
    for (auto const disposition : kDispositions) EXPECT_EQ(dispositionOf(wordOf(disposition)), disposition);
    EXPECT_EQ(wordOf(Disposition::AcceptedWithCondition), "accepted-with-condition");
    EXPECT_EQ(dispositionOf("perhaps"), std::nullopt);
}

TEST(Decisions, AreKeptWithTheirPair) {
    QTemporaryDir const folder;
    Decision const decision{Disposition::BenchTest, "five samples at −20 °C"};
    {
        Decisions decisions(folder.filePath("kept"));
        decisions.load(kReference, kCandidate);
        decisions.decide(kFinding, decision, "decision");
    }
    Decisions again(folder.filePath("kept"));
    again.load(kReference, kCandidate);
    EXPECT_EQ(again.decisionOn(kFinding), decision);
    EXPECT_EQ(again.decidedCount(), 1);
    again.load(kReference, std::string(64, 'c'));
    EXPECT_EQ(again.decisionOn(kFinding), Decision{}) << "another document starts without decisions";
}

TEST(Decisions, CanBeTakenBackAndMadeAgain) {
    QTemporaryDir const folder;
    Decisions decisions(folder.path());
    decisions.load(kReference, kCandidate);
    QSignalSpy changed(&decisions, &Decisions::changed);
    decisions.decide(kFinding, {Disposition::Rejected, ""}, "decision");
    decisions.decide(kFinding, {Disposition::Rejected, ""}, "the same again");
    EXPECT_EQ(decisions.undoStack().count(), 1);
    decisions.undoStack().undo();
    EXPECT_EQ(decisions.decisionOn(kFinding).disposition, Disposition::Open);
    decisions.undoStack().redo();
    EXPECT_EQ(decisions.decisionOn(kFinding).disposition, Disposition::Rejected);
    EXPECT_EQ(changed.count(), 3);
}

TEST(Decisions, TypingOneRemarkIsOneStepOfUndo) {
    QTemporaryDir const folder;
    Decisions decisions(folder.path());
    decisions.load(kReference, kCandidate);
    decisions.decide(kFinding, {Disposition::Open, "lo"}, "remark");
    decisions.decide(kFinding, {Disposition::Open, "load"}, "remark");
    decisions.decide("other", {Disposition::Open, "x"}, "remark");
    EXPECT_EQ(decisions.undoStack().count(), 2);
    decisions.undoStack().undo();
    decisions.undoStack().undo();
    EXPECT_EQ(decisions.decisionOn(kFinding), Decision{});
}

TEST(Decisions, AFileThatCannotBeReadIsSetAsideAndTold) {
    QTemporaryDir const folder;
    Decisions decisions(folder.path());
    decisions.load(kReference, kCandidate);
    auto const path = decisions.filePath();
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("half of a fi");
    }
    QSignalSpy troubled(&decisions, &Decisions::troubled);
    decisions.load(kReference, kCandidate);
    EXPECT_EQ(troubled.count(), 1);
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_TRUE(QFile::exists(path + ".unread"));
}

TEST(Decisions, AFolderThatCannotBeWrittenIsToldAndTheDecisionStays) {
    Decisions decisions(QStringLiteral("/proc/no-such-folder"));
    decisions.load(kReference, kCandidate);
    QSignalSpy troubled(&decisions, &Decisions::troubled);
    decisions.decide(kFinding, {Disposition::Accepted, "why"}, "decision");
    EXPECT_EQ(troubled.count(), 1);
    EXPECT_EQ(decisions.decisionOn(kFinding).disposition, Disposition::Accepted);
}

}  // namespace
}  // namespace standin::ui
