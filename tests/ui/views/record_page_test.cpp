#include "ui/views/record_page.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTest>

#include <gtest/gtest.h>

#include "record/store.h"
#include "ui/support/desk_test.h"
#include "ui/views/file_line.h"
#include "ui/views/record_dialogs.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

constexpr int kLongestMs = 60000;

template <typename Widget>
Widget* named(QWidget const& root, char const* name) {
    for (auto* widget : root.findChildren<Widget*>()) {
        if (widget->accessibleName() == QLatin1String(name)) return widget;
    }
    ADD_FAILURE() << "no widget is called " << name;
    return nullptr;
}

QPushButton* button(QWidget const& root, char const* text) {
    for (auto* candidate : root.findChildren<QPushButton*>()) {
        if (candidate->text().remove('&') == QLatin1String(text)) return candidate;
    }
    ADD_FAILURE() << "no button says " << text;
    return nullptr;
}

class RecordPageOfDemoPair : public ::testing::Test {
protected:
    void SetUp() override {
        QSettings().clear();
        page.resize(1100, 640);
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        book.makeKey(path("author.key"), "R. Ashdown", {});
        ASSERT_TRUE(idle());
        book.open({path("demo.record").toStdString(), "", {}});
        ASSERT_TRUE(idle());
        ASSERT_GT(lines.rowCount(), 0);
    }
    void TearDown() override { QSettings().clear(); }

    [[nodiscard]] bool idle() const {
        return QTest::qWaitFor([&] { return !book.isBusy(); }, kLongestMs);
    }
    [[nodiscard]] QString path(char const* name) { return session.folder() + "/" + name; }
    void press(char const* text) {
        auto* pressed = button(page, text);
        ASSERT_TRUE(pressed->isEnabled()) << text;
        pressed->setFocus();
        QTest::keyClick(pressed, Qt::Key_Space);
        ASSERT_TRUE(idle());
    }
    void signAs(char const* key, record::Role role) {
        named<QLineEdit>(page, "Your key")->setText(path(key));
        named<QComboBox>(page, "Role in which you sign")->setCurrentIndex(static_cast<int>(role));
        press("Sign");
    }

    OpenSession session;
    RecordBook book{*session};
    RecordModel lines{book};
    RecordPage page{*session, book, lines};
};

TEST_F(RecordPageOfDemoPair, DecidesAndSignsUntilTheRecordHolds) {
    auto* disposition = named<QComboBox>(page, "Decision on the line");
    auto* reason = named<QPlainTextEdit>(page, "Reason of the decision");
    page.table()->setCurrentIndex(lines.index(0, RecordModel::Title));
    disposition->setFocus();
    QTest::keyClick(disposition, Qt::Key_End);  // rejected
    reason->setFocus();
    QTest::keyClicks(reason, "The logger may meet a cell at 0 V.");
    press("Enter the decision");
    EXPECT_EQ(book.record()->overview.lines[lines.rowAt(0).line].standing, record::Standing::SecondPerson);
    EXPECT_EQ(reason->toPlainText(), "The logger may meet a cell at 0 V.") << "what was typed stays";

    book.makeKey(path("second.key"), "T. Belmonte", {});
    ASSERT_TRUE(idle());
    press("Confirm");
    EXPECT_EQ(book.record()->overview.lines[lines.rowAt(0).line].standing, record::Standing::Rejected);

    signAs("author.key", record::Role::Author);
    signAs("author.key", record::Role::Approver);
    EXPECT_TRUE(page.outcome().contains("another person")) << page.outcome().toStdString();
    signAs("second.key", record::Role::Approver);
    press("Check");
    EXPECT_TRUE(page.outcome().contains("holds, rejected; every entry and signature holds")) << page.outcome().toStdString();

    auto const kept = record::loadRecord(path("demo.record").toStdString());
    ASSERT_TRUE(kept) << kept.error().message;
    EXPECT_EQ(record::stateOf(*kept).state, record::RecordState::Rejected);
    EXPECT_EQ(kept->entries.size(), 5U);
}

TEST_F(RecordPageOfDemoPair, AsksForWhatTheDispositionNeeds) {
    auto* disposition = named<QComboBox>(page, "Decision on the line");
    auto* condition = named<QLineEdit>(page, "Condition");
    auto* due = named<QLineEdit>(page, "Due");
    disposition->setCurrentIndex(static_cast<int>(Disposition::AcceptedWithCondition));
    EXPECT_TRUE(condition->isVisibleTo(&page));
    EXPECT_FALSE(due->isVisibleTo(&page));
    disposition->setCurrentIndex(static_cast<int>(Disposition::SupplierStatement));
    EXPECT_FALSE(condition->isVisibleTo(&page));
    named<QPlainTextEdit>(page, "Reason of the decision")->setPlainText("Not stated.");
    due->setText("soon");
    press("Enter the decision");
    EXPECT_TRUE(page.outcome().contains("no date"));
    EXPECT_EQ(book.record()->record.entries.size(), 1U);
}

TEST_F(RecordPageOfDemoPair, BeginsWithWhatWasNotedOnTheFindingsPage) {
    auto const finding = lines.rowAt(1).finding;
    session->decisions().decide(finding, {Disposition::BenchTest, "five samples"}, "noted");
    page.table()->setCurrentIndex(lines.index(1, RecordModel::Title));
    EXPECT_EQ(named<QComboBox>(page, "Decision on the line")->currentIndex(), static_cast<int>(Disposition::BenchTest));
    EXPECT_EQ(named<QPlainTextEdit>(page, "Reason of the decision")->toPlainText(), "five samples");
    EXPECT_EQ(session->currentFinding()->id, finding);
}

TEST_F(RecordPageOfDemoPair, ABenchResultIsHeldAgainstItsLimit) {
    ResultDialog dialog(book.record());
    auto const& tests = book.record()->record.opened().tests;
    auto const withLimit = std::find_if(tests.begin(), tests.end(), [](risk::BenchTest const& test) { return !test.limits.empty(); });
    ASSERT_NE(withLimit, tests.end());
    named<QComboBox>(dialog, "Test")->setCurrentIndex(static_cast<int>(withLimit - tests.begin()));
    EXPECT_EQ(dialog.result().finding, withLimit->limits.front().finding);
    EXPECT_EQ(dialog.result().unit, withLimit->limits.front().unit);
    named<QLineEdit>(dialog, "Values")->setText(" 4.1  4.2 ");
    EXPECT_EQ(dialog.result().values, (std::vector<std::string>{"4.1", "4.2"}));
    book.enter(dialog.result(), {});
    ASSERT_TRUE(idle());
    EXPECT_EQ(record::kindOf(book.record()->record.head().body), "result");
}

TEST_F(RecordPageOfDemoPair, ALimitOfTheCellIsChosenWithItsUnit) {
    auto read = *book.record();
    auto& test = std::get<record::Opened>(read.record.entries.front().body).tests.front();
    auto const finding = test.findings.front();
    test.limits = {{finding, "Printed", "reference", "", "1", "2", "V"}, {finding, "Energy", "cell and circuit", "", "", "0.06", "J", "short-energy"}};
    ResultDialog dialog(std::make_shared<ReadRecord const>(read));
    auto* limit = named<QComboBox>(dialog, "Limit that the values are held against");
    EXPECT_EQ(dialog.result().check, "");
    EXPECT_EQ(dialog.result().unit, "V");
    limit->setCurrentIndex(1);
    EXPECT_EQ(dialog.result().finding, finding);
    EXPECT_EQ(dialog.result().check, "short-energy");
    EXPECT_EQ(dialog.result().unit, "J");
    named<QLineEdit>(dialog, "Unit")->setText("mJ");
    limit->setCurrentIndex(0);
    EXPECT_EQ(dialog.result().unit, "mJ") << "what was typed stays";
    dialog.show();
    EXPECT_GE(limit->width(), named<QLineEdit>(dialog, "Values")->width()) << "a limit that nobody can read is none";
    for (auto* label : dialog.findChildren<QLabel*>()) {
        if (label->text() != limit->currentText()) continue;
        EXPECT_TRUE(label->isVisible());
        EXPECT_GE(label->width(), limit->width());
        EXPECT_GE(label->height(), label->heightForWidth(label->width()));
        return;
    }
    ADD_FAILURE() << "the limit does not stand whole anywhere";
}

TEST_F(RecordPageOfDemoPair, NothingIsDecidedInASupersededRecord) {
    page.table()->setCurrentIndex(lines.index(0, RecordModel::Title));
    EXPECT_TRUE(button(page, "Enter the decision")->isEnabled());
    book.distribute({"Purchasing", "a copy of the record", "", ""});
    book.open({path("next.record").toStdString(), "", {"S-18", "", "", "", "", "", {}}});
    book.take(path("demo.record"));
    ASSERT_TRUE(idle());
    book.supersede(path("next.record"), "A new revision.");
    ASSERT_TRUE(idle());
    EXPECT_FALSE(button(page, "Enter the decision")->isEnabled());
    EXPECT_FALSE(button(page, "Sign")->isEnabled());
    EXPECT_TRUE(named<QLabel>(page, "Signatures and distribution")->text().contains("Not yet told that it is superseded: Purchasing"));
    press("Check");
    EXPECT_TRUE(page.outcome().contains("lapsed: superseded by the record S-18")) << page.outcome().toStdString();
}

TEST_F(RecordPageOfDemoPair, LinesThatComeInLaterFillTheWidthBesideTheirBar) {
    page.resize(1000, 480);  // too low for all lines
    auto* table = page.table();
    EXPECT_TRUE(QTest::qWaitFor([&] { return table->verticalScrollBar()->isVisible() && !table->horizontalScrollBar()->isVisible(); }));
}

TEST(NewRecordDialog, WaitsForAFileAndARealDate) {
    NewRecordDialog dialog({});
    auto* ok = button(dialog, "OK");
    EXPECT_FALSE(ok->isEnabled());
    dialog.findChild<FileLine*>()->setPath("demo.record");
    EXPECT_TRUE(ok->isEnabled());
    auto* until = named<QLineEdit>(dialog, "Valid until");
    until->setText("2032-02-30");
    EXPECT_FALSE(ok->isEnabled());
    until->setText("2032-02-29");
    EXPECT_TRUE(ok->isEnabled());
    EXPECT_EQ(dialog.wanted().identification.validUntil, "2032-02-29");
}

TEST(SupersedeDialog, WantsTheOtherRecordAndAReason) {
    SupersedeDialog dialog;
    auto* ok = button(dialog, "OK");
    dialog.findChild<FileLine*>()->setPath("next.record");
    EXPECT_FALSE(ok->isEnabled());
    named<QPlainTextEdit>(dialog, "Reason")->setPlainText(" A new revision. ");
    EXPECT_TRUE(ok->isEnabled());
    EXPECT_EQ(dialog.by(), "next.record");
    EXPECT_EQ(dialog.reason(), "A new revision.");
}

TEST(DistributeDialog, WantsARecipientAndARealDate) {
    DistributeDialog dialog;
    auto* ok = button(dialog, "OK");
    EXPECT_FALSE(ok->isEnabled());
    named<QLineEdit>(dialog, "To")->setText("Purchasing");
    EXPECT_TRUE(ok->isEnabled());
    named<QLineEdit>(dialog, "Date")->setText("2031-02-30");
    EXPECT_FALSE(ok->isEnabled());
    named<QLineEdit>(dialog, "Date")->setText("2031-05-06");
    EXPECT_TRUE(ok->isEnabled());
    EXPECT_EQ(dialog.distributed(), (record::Distributed{"Purchasing", "a copy of the record", "", "2031-05-06"}));
    named<QLineEdit>(dialog, "What")->clear();
    EXPECT_FALSE(ok->isEnabled());
}

TEST(KeyDialog, WantsANameAndTheSamePassphraseTwice) {
    KeyDialog dialog;
    auto* ok = button(dialog, "OK");
    named<QLineEdit>(dialog, "Name")->setText("R. Ashdown");
    dialog.findChild<FileLine*>()->setPath("ashdown.key");
    EXPECT_TRUE(ok->isEnabled());
    named<QLineEdit>(dialog, "Passphrase")->setText("larch");
    EXPECT_FALSE(ok->isEnabled());
    named<QLineEdit>(dialog, "The same again")->setText("larch");
    EXPECT_TRUE(ok->isEnabled());
}

}  // namespace
}  // namespace standin::ui
