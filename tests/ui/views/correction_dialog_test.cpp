// The dialog for a correction, and the ways to it.
#include "ui/views/correction_dialog.h"

#include <stdexcept>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"
#include "ui/views/main_window.h"
#include "ui/views/notice_bar.h"
#include "ui/views/parameters_page.h"

namespace standin::ui {
namespace {

using corrections::Field;
using testing::OpenSession;

model::Parameter const& rowWithMax(model::Datasheet const& sheet) {
    for (auto const& parameter : sheet.parameters) {
        if (parameter.max && !parameter.symbol.empty()) return parameter;
    }
    throw std::runtime_error("the demo pair has no such row");
}

void type(QLineEdit* field, QString const& text) {
    field->selectAll();
    QTest::keyClicks(field, text);
}

TEST(CorrectionDialog, AsksUntilAllIsThere) {
    OpenSession session;
    RowCorrection start;
    start.parameter = rowWithMax(session->pair()->reference).id;
    CorrectionDialog dialog(*session->pair(), start, "file.json");
    dialog.author()->clear();
    EXPECT_FALSE(dialog.trouble().isEmpty()) << "nothing is changed yet";
    type(dialog.field(Field::Max), "99.5");
    EXPECT_FALSE(dialog.trouble().isEmpty()) << "by whom";
    type(dialog.author(), "Ida Brandt");
    EXPECT_FALSE(dialog.trouble().isEmpty()) << "why";
    type(dialog.reason(), "a stain");
    EXPECT_TRUE(dialog.trouble().isEmpty());
    auto const said = dialog.correction();
    ASSERT_EQ(said.texts.size(), 1U);
    EXPECT_EQ(said.texts.front(), (corrections::FieldText{Field::Max, "99.5"}));
    EXPECT_EQ(said.date.size(), 10U);
}

TEST(CorrectionDialog, ARowThatIsNoneNeedsNoTexts) {
    OpenSession session;
    RowCorrection start;
    start.parameter = rowWithMax(session->pair()->reference).id;
    CorrectionDialog dialog(*session->pair(), start, "file.json");
    type(dialog.author(), "Ida Brandt");
    type(dialog.reason(), "a heading");
    dialog.notAParameter()->setChecked(true);
    EXPECT_TRUE(dialog.trouble().isEmpty());
    EXPECT_FALSE(dialog.field(Field::Max)->isEnabled());
}

TEST(CorrectionDialog, ANewRowNeedsANameAndAValue) {
    OpenSession session;
    RowCorrection start;
    start.page = 2;
    start.box = {70, 300, 500, 312};
    CorrectionDialog dialog(*session->pair(), start, "file.json");
    type(dialog.author(), "Ida Brandt");
    type(dialog.reason(), "not read");
    type(dialog.field(Field::Typ), "1.0");
    EXPECT_FALSE(dialog.trouble().isEmpty());
    type(dialog.field(Field::Name), "Release delay");
    EXPECT_TRUE(dialog.trouble().isEmpty());
}

TEST(Correcting, FromARowOfTheParametersToANewComparison) {
    OpenSession session;
    MainWindow window(*session);
    window.show();
    auto* page = window.findChild<ParametersPage*>();
    ASSERT_NE(page, nullptr);
    window.pages()->setCurrentWidget(page);
    auto* table = page->tablePage()->table();
    int row = 0;
    while (row < table->model()->rowCount() && !table->model()->index(row, ParametersModel::Reference).data().toString().contains(QStringLiteral(" / "))) ++row;
    ASSERT_LT(row, table->model()->rowCount());
    table->setCurrentIndex(table->model()->index(row, 0));
    auto const before = session->pair();
    bool filled = false;
    QTimer::singleShot(50, &window, [&] {
        auto* dialog = qobject_cast<CorrectionDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        type(dialog->field(Field::Symbol), "QQQ");
        type(dialog->author(), "Ida Brandt");
        type(dialog->reason(), "a stain");
        filled = true;
        dialog->accept();
    });
    ASSERT_EQ(table->actions().size(), 2);
    table->actions().front()->trigger();
    ASSERT_TRUE(filled);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session->pair() != before && session->state() == Session::State::Ready; }, 60000));
    ASSERT_FALSE(session->pair()->reference.document.corrections.empty());
    EXPECT_EQ(session->pair()->reference.document.corrections.front().corrected, "QQQ");
    EXPECT_FALSE(window.notices()->textOf("corrections").isEmpty());
}

}  // namespace
}  // namespace standin::ui
