// The window as a whole: opening, failing, exporting, dropping, closing.
#include "ui/views/main_window.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/models/words.h"
#include "ui/support/desk_test.h"
#include "ui/views/findings_page.h"
#include "ui/views/notice_bar.h"
#include "ui/views/pair_form.h"
#include "ui/views/settings.h"
#include "ui/views/start_page.h"

namespace standin::ui {
namespace {

using testing::demoFile;
using testing::demoRequest;
using testing::OpenSession;
using testing::waitUntilRead;

void drop(QWidget& on, QStringList const& files) {
    QMimeData mime;
    QList<QUrl> urls;
    for (auto const& file : files) urls += QUrl::fromLocalFile(file);
    mime.setUrls(urls);
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&on, &enter);
    QDropEvent event(QPointF(10, 10), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&on, &event);
}

TEST(MainWindow, StartsWithTheFormAndOpensAPair) {
    QTemporaryDir const folder;
    Session session(folder.path());
    MainWindow window(session);
    window.show();
    EXPECT_TRUE(window.startPage()->isVisible());
    session.open(demoRequest());
    ASSERT_TRUE(waitUntilRead(session));
    EXPECT_FALSE(window.startPage()->isVisible());
    EXPECT_TRUE(window.findingsPage()->isVisible());
    EXPECT_TRUE(window.windowTitle().contains(partName(session.pair()->reference.document)));
}

TEST(MainWindow, TellsAFailureInPlaceAndWhatToDo) {
    QTemporaryDir const folder;
    Session session(folder.path());
    MainWindow window(session);
    window.show();
    auto request = demoRequest();
    request.candidate = demoFile("no such file.pdf");
    session.open(request);
    ASSERT_TRUE(waitUntilRead(session));
    EXPECT_TRUE(window.startPage()->isVisible());
    bool told = false;
    for (auto* label : window.startPage()->findChildren<QLabel*>()) told = told || (label->isVisible() && label->text().contains("no such file.pdf"));
    EXPECT_TRUE(told);
    EXPECT_EQ(window.startPage()->form()->request().candidate, request.candidate) << "what was typed stays";
}

TEST(MainWindow, AFailureOverAPairIsANotice) {
    OpenSession session;
    MainWindow window(*session);
    window.show();
    auto request = demoRequest();
    request.candidate = demoFile("no such file.pdf");
    session->open(request);
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_TRUE(window.findingsPage()->isVisible());
    EXPECT_TRUE(window.notices()->textOf("reading").contains("no such file.pdf"));
}

TEST(MainWindow, TakesTwoDroppedFiles) {
    QTemporaryDir const folder;
    Session session(folder.path());
    MainWindow window(session);
    window.show();
    drop(window, {QString::fromStdString(demoFile("reference.pdf")), QString::fromStdString(demoFile("candidate.pdf"))});
    ASSERT_TRUE(waitUntilRead(session));
    EXPECT_EQ(session.request(), demoRequest());
}

TEST(MainWindow, OneDroppedFileGoesIntoTheForm) {
    QTemporaryDir const folder;
    Session session(folder.path());
    MainWindow window(session);
    window.show();
    drop(window, {QString::fromStdString(demoFile("reference.pdf"))});
    QTest::qWait(10);
    EXPECT_EQ(window.startPage()->form()->request().reference, demoFile("reference.pdf"));
    EXPECT_EQ(session.state(), Session::State::Empty);
}

TEST(MainWindow, ExportsAndTellsWhere) {
    OpenSession session;
    MainWindow window(*session);
    window.show();
    auto const path = session.folder() + "/report.txt";
    window.exportTo(path, ReportForm::Text);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path); }, 20000));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.notices()->textOf("export").startsWith("Written"); }, 20000));
}

TEST(MainWindow, AnExportThatFailsIsTold) {
    OpenSession session;
    MainWindow window(*session);
    window.show();
    window.exportTo(session.folder() + "/no/such/folder/report.csv", ReportForm::Csv);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.notices()->textOf("export").startsWith("Not written"); }, 20000));
    EXPECT_TRUE(window.notices()->textOf("export").contains("report.csv"));
}

// A device that is always full: what is written to it fails, and nothing may take its place.
TEST(MainWindow, AFullDiskAtAnExportIsToldWithWhatToDo) {
    QString const full = QStringLiteral("/dev/full");
    if (!QFile::exists(full)) GTEST_SKIP() << "there is no " << full.toStdString();
    OpenSession session;
    MainWindow window(*session);
    window.show();
    for (auto const form : {ReportForm::Text, ReportForm::Pdf}) {
        window.notices()->hide("export");
        window.exportTo(full, form);
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.notices()->textOf("export").startsWith("Not written"); }, 60000));
        auto const told = window.notices()->textOf("export");
        EXPECT_TRUE(told.contains(full)) << told.toStdString();
        EXPECT_TRUE(told.contains("choose another place, or make room")) << told.toStdString();
    }
    EXPECT_FALSE(QFileInfo(full).isFile());
}

class MainWindowOverACopy : public ::testing::Test {
protected:
    void SetUp() override {
        auto request = demoRequest();
        ASSERT_TRUE(QFile::copy(QString::fromStdString(request.candidate), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        request.candidate = copy.toStdString();
        session.open(request);
        ASSERT_TRUE(waitUntilRead(session));
        window.show();
    }
    // What the window tells of the file on disk, once it does.
    [[nodiscard]] QString told() {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !window.notices()->textOf("disk").isEmpty(); }, 20000));
        return window.notices()->textOf("disk");
    }

    QTemporaryDir folder;
    QString copy = folder.filePath("sheet.pdf");
    Session session{folder.filePath("decisions")};
    MainWindow window{session};
};

TEST_F(MainWindowOverACopy, AFileThatIsGoneIsToldAndStaysOnView) {
    ASSERT_TRUE(QFile::remove(copy));
    auto const text = told();
    EXPECT_TRUE(text.contains("candidate is gone from disk; what is shown is as it was read")) << text.toStdString();
    EXPECT_TRUE(text.contains(copy));
    EXPECT_TRUE(session.pair());
}

TEST_F(MainWindowOverACopy, AFileThatChangedIsToldAndReadAgainWhenAsked) {
    QFile file(copy);
    ASSERT_TRUE(file.open(QFile::Append));
    file.write("\n% one more line\n");
    file.close();
    auto const text = told();
    EXPECT_TRUE(text.contains("candidate changed on disk; what is shown is as it was read")) << text.toStdString();
    auto const before = session.pair();
    QPushButton* again = nullptr;
    for (auto* button : window.notices()->findChildren<QPushButton*>()) {
        if (button->text() == "Read again") again = button;
    }
    ASSERT_NE(again, nullptr);
    again->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.pair() != before; }, 60000));
    EXPECT_NE(session.pair()->candidate.document.sha256, before->candidate.document.sha256);
}

TEST(MainWindow, KeysGoToEveryPage) {
    OpenSession session;
    MainWindow window(*session);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    for (int page = window.pages()->count(); page >= 1; --page) {
        QTest::keyClick(&window, static_cast<Qt::Key>(Qt::Key_0 + page), Qt::AltModifier);
        EXPECT_EQ(window.pages()->currentIndex(), page - 1);
    }
}

TEST(MainWindow, RemembersItsSizeAndThePair) {
    {
        OpenSession session;
        MainWindow window(*session);
        window.resize(1111, 777);
        window.show();
        session->readAgain();
        ASSERT_TRUE(waitUntilRead(*session));
        window.close();
    }
    QTemporaryDir const folder;
    Session session(folder.path());
    MainWindow again(session);
    EXPECT_EQ(again.size(), QSize(1111, 777));
    QSettings settings;
    ASSERT_FALSE(recentPairs(settings).empty());
    EXPECT_EQ(recentPairs(settings).front().reference, QString::fromStdString(demoFile("reference.pdf")));
}

TEST(MainWindow, MayBeClosedWhileItReads) {
    QTemporaryDir const folder;
    Session session(folder.path());
    {
        MainWindow window(session);
        window.show();
        session.open(demoRequest());
        window.close();
    }
    QTest::qWait(50);
    EXPECT_EQ(session.state(), Session::State::Empty);
}

// Nothing may be cut off where the window is small or the text is large.
TEST(MainWindow, FitsASmallScreenInBothAppearancesAndLargeText) {
    OpenSession session;
    for (auto const appearance : {Appearance::Light, Appearance::Dark}) {
        for (int const percent : {100, 150}) {
            applySettings({appearance, percent, {}});
            MainWindow window(*session);
            window.resize(1024, 700);
            window.show();
            QTest::qWait(20);
            EXPECT_LE(window.minimumSizeHint().width(), 1024) << percent;
            EXPECT_LE(window.minimumSizeHint().height(), 700) << percent;
            EXPECT_EQ(window.size(), QSize(1024, 700));
        }
    }
    applySettings({});
}

TEST(PairForm, GivesWhatStandsInIt) {
    PairForm form;
    auto request = demoRequest();
    request.cell = "/tmp/cell.json";
    request.password = "swordfish";
    form.setRequest(request, {});
    EXPECT_EQ(form.request(), request);
    drop(*form.findChildren<FileSlot*>().at(1), {"/tmp/other.pdf"});
    EXPECT_EQ(form.request().candidate, "/tmp/other.pdf");
}

TEST(PairForm, OffersTheVariantsOfFilesThatWereRead) {
    OpenSession session;
    PairForm form;
    form.setRequest(session->request(), session->pair());
    auto const slots = form.findChildren<FileSlot*>();
    ASSERT_EQ(slots.size(), 2);
    auto const* variants = slots[0]->findChild<QComboBox*>();
    EXPECT_EQ(variants->count(), static_cast<int>(session->pair()->referenceVariants.size()) + 1);
}

TEST(Settings, AreKept) {
    DeskSettings const settings{Appearance::Dark, 130, "de"};
    saveSettings(settings);
    EXPECT_EQ(loadSettings(), settings);
    SettingsDialog const dialog(settings, "/somewhere");
    EXPECT_EQ(dialog.settings(), settings);
    saveSettings({});
    EXPECT_EQ(loadSettings(), DeskSettings{});
}

}  // namespace
}  // namespace standin::ui
