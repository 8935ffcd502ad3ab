// Correcting a row of the demo pair, comparing anew, and undoing it.
#include "ui/models/corrections.h"

#include <QDir>
#include <QFile>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using corrections::Field;
using testing::OpenSession;

constexpr int kLongestMs = 60000;

model::Parameter const& rowWithMax(model::Datasheet const& sheet) {
    for (auto const& parameter : sheet.parameters) {
        if (parameter.min && parameter.typ && parameter.max && !parameter.symbol.empty()) return parameter;
    }
    throw std::runtime_error("the demo pair has no such row");
}

RowCorrection newMax(model::Parameter const& row, std::string const& max) {
    RowCorrection correction;
    correction.parameter = row.id;
    correction.texts = {{Field::Max, max}};
    correction.by = "Ida Brandt";
    correction.date = "2031-05-02";
    correction.why = "a stain";
    return correction;
}

bool waitForNext(Session& session, PairPointer const& before) {
    return QTest::qWaitFor([&] { return session.pair() != before && session.state() == Session::State::Ready; }, kLongestMs);
}

model::Parameter const* rowById(Session const& session, std::string const& id) {
    for (auto const& parameter : session.pair()->reference.parameters) {
        if (parameter.id == id) return &parameter;
    }
    return nullptr;
}

std::string bytesOf(std::string const& path) {
    QFile file(QString::fromStdString(path));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string{};
}

TEST(Corrections, ACorrectionIsWrittenComparedAndUndone) {
    OpenSession session;
    auto const before = session->pair();
    auto const& row = rowWithMax(before->reference);
    auto const path = session->corrections().filePath();
    ASSERT_FALSE(path.empty());
    session->corrections().correct(newMax(row, "99.5"));
    ASSERT_TRUE(waitForNext(*session, before));
    ASSERT_NE(rowById(*session, row.id), nullptr);
    EXPECT_EQ(rowById(*session, row.id)->max->text, "99.5");
    ASSERT_EQ(session->pair()->reference.document.corrections.size(), 1U);
    EXPECT_EQ(session->pair()->reference.document.corrections.front().outcome, model::CorrectionOutcome::Applied);
    EXPECT_EQ(session->corrections().keptCount(), 0) << "it is applied";

    auto const corrected = session->pair();
    ASSERT_TRUE(session->decisions().undoStack().canUndo());
    session->decisions().undoStack().undo();
    ASSERT_TRUE(waitForNext(*session, corrected));
    EXPECT_EQ(rowById(*session, row.id)->max->text, row.max->text);
    EXPECT_FALSE(QFile::exists(QString::fromStdString(path)));

    auto const undone = session->pair();
    session->decisions().undoStack().redo();
    ASSERT_TRUE(waitForNext(*session, undone));
    EXPECT_EQ(rowById(*session, row.id)->max->text, "99.5");
}

TEST(Corrections, CorrectingTwiceChangesTheEntry) {
    OpenSession session;
    auto const first = session->pair();
    auto const& row = rowWithMax(first->reference);
    session->corrections().correct(newMax(row, "99.5"));
    ASSERT_TRUE(waitForNext(*session, first));
    auto const second = session->pair();
    session->corrections().correct(newMax(row, "98.5"));
    ASSERT_TRUE(waitForNext(*session, second));
    EXPECT_EQ(rowById(*session, row.id)->max->text, "98.5");
    auto const entries = corrections::parseCorrections(bytesOf(session->corrections().filePath()), "file");
    ASSERT_TRUE(entries);
    EXPECT_EQ(entries->size(), 1U);
}

TEST(Corrections, DecisionsStayWhenTheComparisonFollows) {
    OpenSession session;
    auto const before = session->pair();
    auto const finding = before->comparison.findings.front().id;
    session->decisions().decide(finding, {Disposition::BenchTest, "five"}, "decided");
    session->corrections().correct(newMax(rowWithMax(before->reference), "99.5"));
    ASSERT_TRUE(waitForNext(*session, before));
    EXPECT_EQ(session->decisions().decisionOn(finding).disposition, Disposition::BenchTest);
    EXPECT_EQ(session->decisions().undoStack().count(), 2);
}

TEST(Corrections, AFileThatSomebodyElseChangedIsLeftAlone) {
    OpenSession session;
    auto const before = session->pair();
    session->corrections().correct(newMax(rowWithMax(before->reference), "99.5"));
    ASSERT_TRUE(waitForNext(*session, before));
    auto const path = session->corrections().filePath();
    QFile file(QString::fromStdString(path));
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("\n");
    file.close();
    auto const changed = bytesOf(path);
    QStringList told;
    QObject::connect(&session->corrections(), &Corrections::troubled, [&](QString const& message) { told += message; });
    session->decisions().undoStack().undo();
    EXPECT_EQ(told.size(), 1);
    EXPECT_EQ(bytesOf(path), changed);
}

TEST(Corrections, AFolderThatCannotBeMadeIsTold) {
    OpenSession session;
    QDir(session.folder() + "/decisions").removeRecursively();
    QFile blocker(session.folder() + "/decisions");
    ASSERT_TRUE(blocker.open(QIODevice::WriteOnly));
    QStringList told;
    QObject::connect(&session->corrections(), &Corrections::troubled, [&](QString const& message) { told += message; });
    auto const before = session->pair();
    session->corrections().correct(newMax(rowWithMax(before->reference), "99.5"));
    EXPECT_EQ(told.size(), 1);
    EXPECT_EQ(session->pair(), before);
    EXPECT_EQ(session->decisions().undoStack().count(), 0);
}

TEST(Corrections, KeptOnesAreOfferedToAPairOpenedWithout) {
    OpenSession session;
    auto const before = session->pair();
    auto const& row = rowWithMax(before->reference);
    session->corrections().correct(newMax(row, "99.5"));
    ASSERT_TRUE(waitForNext(*session, before));
    auto const corrected = session->pair();
    session->open(testing::demoRequest());
    ASSERT_TRUE(waitForNext(*session, corrected));
    EXPECT_EQ(session->corrections().keptCount(), 1);
    auto const plain = session->pair();
    session->corrections().applyKept();
    ASSERT_TRUE(waitForNext(*session, plain));
    EXPECT_EQ(rowById(*session, row.id)->max->text, "99.5");
}

TEST(WithCorrection, KeepsWhatStandsInTheFile) {
    OpenSession session;
    auto const& pair = *session->pair();
    auto const& row = rowWithMax(pair.reference);
    auto const first = withCorrection({}, "file", pair, newMax(row, "99.5"));
    ASSERT_TRUE(first);
    RowCorrection other;
    other.side = DocumentSide::Candidate;
    other.parameter = rowWithMax(pair.candidate).id;
    other.notAParameter = true;
    other.by = "Ida Brandt";
    other.date = "2031-05-02";
    other.why = "a heading";
    auto const both = withCorrection(*first, "file", pair, other);
    ASSERT_TRUE(both);
    auto const entries = corrections::parseCorrections(*both, "file");
    ASSERT_EQ(entries->size(), 2U);
    EXPECT_EQ((*entries)[0].action, corrections::Action::Set);
    EXPECT_EQ((*entries)[1].action, corrections::Action::Remove);
    EXPECT_EQ((*entries)[0].document, pair.reference.document.sha256.substr(0, 16));
}

TEST(WithCorrection, PutsARowIn) {
    OpenSession session;
    RowCorrection added;
    added.page = 2;
    added.box = {70, 300, 500, 312};
    added.texts = {{Field::Name, "Release delay"}, {Field::Typ, "1.0"}, {Field::Unit, "ms"}};
    added.by = "Ida Brandt";
    added.date = "2031-05-02";
    added.why = "not read";
    auto const file = withCorrection({}, "file", *session->pair(), added);
    ASSERT_TRUE(file);
    auto const entries = corrections::parseCorrections(*file, "file");
    ASSERT_EQ(entries->size(), 1U);
    EXPECT_EQ(entries->front().action, corrections::Action::Add);
}

TEST(WithCorrection, RefusesWhatIsNoCorrectionsFileAndWhatLacksAReason) {
    OpenSession session;
    auto correction = newMax(rowWithMax(session->pair()->reference), "99.5");
    EXPECT_FALSE(withCorrection("{\"schema\": \"something/1\"}", "file", *session->pair(), correction));
    correction.why.clear();
    EXPECT_FALSE(withCorrection({}, "file", *session->pair(), correction));
    correction.parameter = "no such row";
    EXPECT_FALSE(withCorrection({}, "file", *session->pair(), correction));
}

}  // namespace
}  // namespace standin::ui
