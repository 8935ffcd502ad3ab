#include "ui/models/exports.h"

#include <fstream>
#include <sstream>

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "cli/run.h"
#include "report/pdf/pdf_report.h"
#include "report/pdf/pdf_report.h"
#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::demoFile;
using testing::demoRequest;
using testing::OpenSession;

std::string contentOf(std::string const& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

TEST(Exports, AreByteForByteWhatTheCommandLineWrites) {
    OpenSession session;
    QTemporaryDir const folder;
    auto const path = [&](char const* name) { return folder.filePath(name).toStdString(); };
    auto const request = demoRequest();
    std::vector<std::string> const words{"standin", "compare", request.reference, request.candidate, "--html", path("r.html"), "--pdf", path("r.pdf"),
                                         "--text",  path("r.txt"), "--json", path("r.json"), "--csv", path("r.csv")};
    std::vector<char const*> arguments;
    for (auto const& word : words) arguments.push_back(word.c_str());
    ASSERT_EQ(cli::run(static_cast<int>(arguments.size()), arguments.data(), {.pdf = report::pdfReport}), cli::kFindings);
    for (auto const form : kReportForms) {
        auto const bytes = reportBytes(*session->pair(), form);
        ASSERT_TRUE(bytes) << formEnding(form).toStdString();
        auto const file = contentOf(folder.filePath("r." + formEnding(form)).toStdString());
        EXPECT_FALSE(file.empty());
        EXPECT_TRUE(*bytes == file) << formEnding(form).toStdString();
    }
}

TEST(Exports, RefuseADocumentThatChangedOnDisk) {
    OpenSession session;
    QTemporaryDir const folder;
    auto const copy = folder.filePath("copy.pdf");
    ASSERT_TRUE(QFile::copy(QString::fromStdString(demoFile("candidate.pdf")), copy));
    ReadPair pair = *session->pair();
    pair.reference.document.file = copy.toStdString();  // another document's bytes
    auto const html = reportBytes(pair, ReportForm::Html);
    ASSERT_FALSE(html);
    EXPECT_EQ(html.error().file, copy.toStdString());
    pair.reference.document.file = folder.filePath("gone.pdf").toStdString();
    EXPECT_FALSE(reportBytes(pair, ReportForm::Pdf));
    EXPECT_TRUE(reportBytes(pair, ReportForm::Text)) << "text needs no page";
}

TEST(WriteWhole, WritesOrLeavesWhatWasThere) {
    QTemporaryDir const folder;
    auto const path = folder.filePath("report.txt");
    ASSERT_TRUE(writeWhole(path, "first"));
    EXPECT_EQ(contentOf(path.toStdString()), "first");
    auto const failed = writeWhole(folder.filePath("no/such/folder/report.txt"), "second");
    ASSERT_FALSE(failed);
    EXPECT_NE(failed.error().message.find("choose another place"), std::string::npos);
    // A device that is always full, and must not be replaced by a file.
    EXPECT_FALSE(writeWhole(QStringLiteral("/dev/full"), std::string(1 << 20, 'x')));
    EXPECT_FALSE(QFileInfo(QStringLiteral("/dev/full")).isFile());
}

}  // namespace
}  // namespace standin::ui
