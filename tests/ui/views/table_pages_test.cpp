// The further pages: tables that open places, wording, help, printing.
#include "ui/views/table_page.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QPrinter>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/models/exports.h"
#include "ui/support/desk_test.h"
#include "ui/views/cell_page.h"
#include "ui/views/coverage_page.h"
#include "ui/views/help.h"
#include "ui/views/parameters_page.h"
#include "ui/views/pins_page.h"
#include "ui/views/printing.h"
#include "ui/views/wording_page.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

TEST(ParametersPage, ARowGoesToItsPlaceInBothDocuments) {
    OpenSession session;
    ParametersModel model(*session);
    ParametersPage page(*session, model);
    page.resize(1000, 600);
    page.show();
    QSignalSpy chosen(&*session, &Session::placeChosen);
    QSignalSpy wanted(&page, &ParametersPage::placeWanted);
    auto* table = page.tablePage()->table();
    table->setCurrentIndex(table->model()->index(0, 0));
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(chosen.count(), 2);
    EXPECT_EQ(wanted.count(), 1);
}

TEST(TablePage, CopiesRowsPartedByTabs) {
    OpenSession session;
    PinsModel model(*session);
    PinsPage page(*session, model);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    auto* table = page.tablePage()->table();
    table->selectRow(0);
    table->setFocus();
    QTest::keyClick(table, Qt::Key_C, Qt::ControlModifier);
    auto const copied = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(copied.startsWith("1\t")) << copied.toStdString();
    EXPECT_EQ(copied.count('\t'), PinsModel::ColumnCount - 1);
}

TEST(TablePage, ColumnsFillTheWidth) {
    OpenSession session;
    CoverageModel model(*session);
    CoveragePage page(*session, model);
    page.resize(1400, 500);
    page.show();
    QTest::qWait(10);
    int width = 0;
    for (int column = 0; column < CoverageModel::ColumnCount; ++column) width += page.table()->columnWidth(column);
    EXPECT_NEAR(width, page.table()->viewport()->width(), 4);
}

TEST(WordingPage, ShowsChosenSentencesAsFindings) {
    OpenSession session;
    WordingModel model(*session);
    WordingPage page(*session, model);
    page.resize(900, 500);
    page.show();
    page.list()->setCurrentIndex(model.index(model.rowCount() - 1));
    ASSERT_NE(session->currentFinding(), nullptr);
    EXPECT_EQ(session->currentFinding()->id, model.rowAt(model.rowCount() - 1).finding);
    EXPECT_GT(page.list()->sizeHintForRow(0), QFontMetrics(page.list()->font()).height() * 3) << "both sentences have room";
}

TEST(Help, NamesEveryShape) {
    auto const text = helpText();
    for (auto const* shape : {"▲", "■", "●", "▬"}) EXPECT_TRUE(text.contains(QString::fromUtf8(shape)));
    EXPECT_TRUE(text.contains("Ctrl+D"));
    EXPECT_TRUE(aboutText().contains("GPL-3.0-or-later"));
}

TEST(Printing, PutsTheReportOnPaper) {
    OpenSession session;
    auto bytes = reportBytes(*session->pair(), ReportForm::Pdf);
    ASSERT_TRUE(bytes);
    QTemporaryDir const folder;
    QPrinter printer(QPrinter::ScreenResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath("printed.pdf"));
    ASSERT_TRUE(printPages(*bytes, printer));
    EXPECT_GT(QFileInfo(folder.filePath("printed.pdf")).size(), 10000);
    EXPECT_FALSE(printPages("no pdf", printer));
}

}  // namespace
}  // namespace standin::ui
