#include "ui/views/report_file.h"

#include <array>

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTimer>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

constexpr std::array kForms{ReportForm::Html, ReportForm::Pdf};

// What comes of `name` with the filter at `filter` chosen; no name: given up.
std::optional<ReportFile> asked(QString const& name, int filter) {
    bool shown = false;
    QTimer::singleShot(0, qApp, [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        shown = true;
        if (name.isEmpty()) return dialog->reject();
        dialog->selectNameFilter(dialog->nameFilters().at(filter));
        dialog->findChild<QLineEdit*>()->setText(name);  // typing would open the list of completions
        QMetaObject::invokeMethod(dialog, "accept");
    });
    auto const file = askReportFile(nullptr, "Report", "proposal", kForms);
    EXPECT_TRUE(shown);
    return file;
}

TEST(AskReportFile, TheEndingThatWasTypedWinsOverTheFilter) {
    QTemporaryDir const folder;
    auto const file = asked(folder.filePath("report.PDF"), 0);
    ASSERT_TRUE(file);
    EXPECT_EQ(file->form, ReportForm::Pdf);
    EXPECT_EQ(file->path, folder.filePath("report.PDF"));
}

TEST(AskReportFile, AMissingEndingIsThatOfTheFilter) {
    QTemporaryDir const folder;
    auto const pdf = asked(folder.filePath("report"), 1);
    ASSERT_TRUE(pdf);
    EXPECT_EQ(pdf->form, ReportForm::Pdf);
    EXPECT_EQ(pdf->path, folder.filePath("report.pdf"));
    auto const html = asked(folder.filePath("report.2"), 0);
    ASSERT_TRUE(html);
    EXPECT_EQ(html->form, ReportForm::Html);
    EXPECT_EQ(html->path, folder.filePath("report.2.html"));
}

TEST(AskReportFile, NothingWhereItIsGivenUp) { EXPECT_FALSE(asked({}, 0)); }

}  // namespace
}  // namespace standin::ui
