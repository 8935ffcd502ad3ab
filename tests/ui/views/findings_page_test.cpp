// The findings page with its ladder, meaning and decision, driven by real events.
#include "ui/views/findings_page.h"

#include <QComboBox>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"
#include "ui/views/main_window.h"
#include "ui/views/pages_view.h"
#include "ui/views/section_ladder.h"
#include "ui/views/title_strip.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

// A whole window: keys and menus belong to it.
class FindingsPageTest : public ::testing::Test {
protected:
    FindingsPageTest() : m_window(*m_session) {
        m_window.resize(1280, 800);
        m_window.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&m_window));
    }
    FindingsPage& page() { return *m_window.findingsPage(); }
    QListView& list() { return *page().list(); }
    [[nodiscard]] std::string idOfCurrent() const {
        auto const* finding = const_cast<FindingsPageTest*>(this)->m_session->currentFinding();
        return finding == nullptr ? std::string{} : finding->id;
    }

    OpenSession m_session;
    MainWindow m_window;
};

TEST_F(FindingsPageTest, StepsThroughFindingsByKeyboard) {
    auto const first = idOfCurrent();
    list().setFocus();
    QTest::keyClick(&list(), Qt::Key_Down);
    auto const second = idOfCurrent();
    EXPECT_NE(first, second);
    QTest::keyClick(&list(), Qt::Key_Up);
    EXPECT_EQ(idOfCurrent(), first);
    QTest::keyClick(&m_window, Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(idOfCurrent(), second) << "from anywhere";
    QTest::keyClick(&m_window, Qt::Key_Up, Qt::ControlModifier);
    QTest::keyClick(&m_window, Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(idOfCurrent(), first) << "stops at the end";
}

TEST_F(FindingsPageTest, EnterGoesToBothPlacesOnThePages) {
    QSignalSpy chosen(&*m_session, &Session::placeChosen);
    list().setFocus();
    QTest::keyClick(&list(), Qt::Key_Return);
    EXPECT_EQ(chosen.count(), 2);
    EXPECT_EQ(m_window.pages()->currentWidget(), static_cast<QWidget*>(m_window.pagesView()));
}

TEST_F(FindingsPageTest, TypingFiltersButKeepsHazards) {
    auto* text = page().findChild<QLineEdit*>();
    ASSERT_NE(text, nullptr);
    int const before = list().model()->rowCount();
    QTest::keyClicks(text, "zzz no such words");
    int const after = list().model()->rowCount();
    EXPECT_LT(after, before);
    EXPECT_GT(after, 0);
    text->clear();
    EXPECT_EQ(list().model()->rowCount(), before);
}

TEST_F(FindingsPageTest, ACountOfTheTitleStripHidesItsSeverity) {
    auto const counts = m_window.findChildren<SeverityCount*>();
    ASSERT_EQ(counts.size(), 5);
    int const before = list().model()->rowCount();
    for (auto* count : counts) {
        if (count->severity() == model::Severity::Note) QTest::mouseClick(count, Qt::LeftButton);
    }
    EXPECT_LT(list().model()->rowCount(), before);
    int const hidden = list().model()->rowCount();
    for (auto* count : counts) {
        if (count->severity() == model::Severity::Hazard) QTest::mouseClick(count, Qt::LeftButton);
    }
    EXPECT_EQ(list().model()->rowCount(), hidden) << "hazard cannot be hidden";
}

TEST_F(FindingsPageTest, ARungOfTheLadderListsItsFindings) {
    auto* ladder = m_window.findChild<SectionLadder*>();
    ASSERT_NE(ladder, nullptr);
    int const before = list().model()->rowCount();
    ladder->list()->setFocus();
    QTest::keyClick(ladder->list(), Qt::Key_Down);
    EXPECT_LT(list().model()->rowCount(), before);
    QTest::keyClick(ladder->list(), Qt::Key_Home);
    EXPECT_EQ(list().model()->rowCount(), before);
}

TEST_F(FindingsPageTest, ADecisionByKeyboardIsKeptAndUndone) {
    auto const id = idOfCurrent();
    QTest::keyClick(&m_window, Qt::Key_D, Qt::ControlModifier);
    auto* decision = page().meaning()->findChild<QComboBox*>();
    auto* remark = page().meaning()->findChild<QPlainTextEdit*>();
    ASSERT_TRUE(decision != nullptr && remark != nullptr);
    decision->setFocus();
    QTest::keyClick(decision, Qt::Key_Down);
    Q_EMIT decision->activated(decision->currentIndex());
    EXPECT_NE(m_session->decisions().decisionOn(id).disposition, Disposition::Open);
    remark->setFocus();
    QTest::keyClicks(remark, "five samples");
    QTest::keyClick(&m_window, Qt::Key_Down, Qt::ControlModifier);  // going on keeps what was typed
    EXPECT_EQ(m_session->decisions().decisionOn(id).remark, "five samples");
    EXPECT_TRUE(remark->toPlainText().isEmpty()) << "the next finding has its own remark";
    m_session->decisions().undoStack().undo();
    m_session->decisions().undoStack().undo();
    EXPECT_EQ(m_session->decisions().decisionOn(id), Decision{});
}

TEST_F(FindingsPageTest, EveryPartHasANameForScreenReaders) {
    for (auto* widget : m_window.findChildren<QWidget*>()) {
        bool const speaks = qobject_cast<QAbstractItemView*>(widget) != nullptr || qobject_cast<QLineEdit*>(widget) != nullptr || qobject_cast<QPlainTextEdit*>(widget) != nullptr;
        bool const ours = speaks && qobject_cast<QComboBox*>(widget->parentWidget()) == nullptr && !widget->objectName().startsWith("qt_") && widget->parentWidget() != nullptr;
        if (!ours || widget->inherits("QComboBoxListView") || widget->inherits("QHeaderView")) continue;
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className() << " in " << widget->parentWidget()->metaObject()->className();
    }
}

TEST_F(FindingsPageTest, RowsGrowWithTheText) {
    auto const small = list().sizeHintForRow(1);
    QFont font = list().font();
    font.setPointSizeF(font.pointSizeF() * 2);
    list().setFont(font);
    EXPECT_GT(list().sizeHintForRow(1), small * 3 / 2);
}

}  // namespace
}  // namespace standin::ui
