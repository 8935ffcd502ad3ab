#include "ui/models/session.h"

#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::demoFile;
using testing::demoRequest;
using testing::OpenSession;
using testing::waitUntilRead;

TEST(Session, OpensAPairAndLooksAtTheGravestFinding) {
    OpenSession session;
    EXPECT_EQ(session->state(), Session::State::Ready);
    ASSERT_NE(session->currentFinding(), nullptr);
    EXPECT_EQ(session->currentFinding()->id, session->pair()->comparison.findings.front().id);
}

TEST(Session, ExchangeTurnsThePairRound) {
    OpenSession session;
    auto const before = session->pair();
    session->exchange();
    EXPECT_EQ(session->state(), Session::State::Reading);
    EXPECT_EQ(session->pair(), before) << "what is shown stays until the new one is there";
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_EQ(session->pair()->reference.document.sha256, before->candidate.document.sha256);
}

TEST(Session, AFailureKeepsThePairThatIsShown) {
    OpenSession session;
    auto const before = session->pair();
    auto request = demoRequest();
    request.reference = demoFile("no-such-file.pdf");
    session->open(request);
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_EQ(session->state(), Session::State::Failed);
    ASSERT_TRUE(session->error());
    EXPECT_EQ(session->error()->file, request.reference);
    EXPECT_EQ(session->pair(), before);
}

TEST(Session, CancelGoesBack) {
    OpenSession session;
    auto const before = session->pair();
    session->exchange();
    session->cancel();
    EXPECT_EQ(session->state(), Session::State::Ready);
    EXPECT_EQ(session->request(), before->request);
    QTest::qWait(300);
    EXPECT_EQ(session->pair(), before);
}

TEST(Session, ChoosesOnlyPlacesOnPagesThatExist) {
    OpenSession session;
    QSignalSpy chosen(&*session, &Session::placeChosen);
    session->choosePlace(DocumentSide::Reference, 1, {10, 10, 20, 20});
    session->choosePlace(DocumentSide::Reference, 0, {});
    session->choosePlace(DocumentSide::Candidate, 1000, {});
    EXPECT_EQ(chosen.count(), 1);
}

TEST(Session, NoticesAFileThatChangesOrGoes) {
    QTemporaryDir const folder;
    auto const copy = folder.filePath("copy.pdf");
    ASSERT_TRUE(QFile::copy(QString::fromStdString(demoFile("candidate.pdf")), copy));
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    Session session(folder.filePath("decisions"));
    auto request = demoRequest();
    request.candidate = copy.toStdString();
    session.open(request);
    ASSERT_TRUE(waitUntilRead(session));
    std::vector<DocumentSide> sides;
    QObject::connect(&session, &Session::fileChangedOnDisk, &session, [&](DocumentSide side) { sides.push_back(side); });
    ASSERT_TRUE(QFile::remove(copy));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !sides.empty(); }, 10000));
    EXPECT_EQ(sides.front(), DocumentSide::Candidate);
    EXPECT_TRUE(session.pair()) << "what was read stays";
    session.readAgain();
    ASSERT_TRUE(waitUntilRead(session));
    EXPECT_EQ(session.state(), Session::State::Failed);
}

// The watch begins when the pair is there; what happened before is noticed too.
TEST(Session, NoticesAFileThatWentWhileItWasRead) {
    QTemporaryDir const folder;
    auto const copy = folder.filePath("copy.pdf");
    ASSERT_TRUE(QFile::copy(QString::fromStdString(demoFile("candidate.pdf")), copy));
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    Session session(folder.filePath("decisions"));
    auto request = demoRequest();
    request.candidate = copy.toStdString();
    std::vector<DocumentSide> sides;
    QObject::connect(&session, &Session::progressed, &session, [&] { QFile::remove(copy); });  // both files are read before the first page
    QObject::connect(&session, &Session::fileChangedOnDisk, &session, [&](DocumentSide side) { sides.push_back(side); });
    session.open(request);
    ASSERT_TRUE(waitUntilRead(session));
    ASSERT_TRUE(session.pair());
    EXPECT_FALSE(QFile::exists(copy));
    EXPECT_EQ(sides, std::vector{DocumentSide::Candidate});
}

TEST(Session, KeepsDecisionsWithThePair) {
    OpenSession session;
    auto const id = session->currentFinding()->id;
    session->decisions().decide(id, {Disposition::Rejected, "no"}, "decision");
    session->exchange();
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_EQ(session->decisions().decisionOn(id), Decision{}) << "the exchanged pair is another one";
    session->exchange();
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_EQ(session->decisions().decisionOn(id).disposition, Disposition::Rejected);
}

}  // namespace
}  // namespace standin::ui
