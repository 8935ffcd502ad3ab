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
#include "ui/worker/pair_worker.h"

namespace standin::ui {
namespace {

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

// What was compared is what is written, also when a file changed or went since.
TEST(Exports, HoldWhatWasReadWhateverBecomesOfTheFiles) {
    QTemporaryDir const folder;
    auto request = demoRequest();
    auto const reference = folder.filePath("reference.pdf");
    auto const candidate = folder.filePath("candidate.pdf");
    ASSERT_TRUE(QFile::copy(QString::fromStdString(request.reference), reference));
    ASSERT_TRUE(QFile::copy(QString::fromStdString(request.candidate), candidate));
    request.reference = reference.toStdString();
    request.candidate = candidate.toStdString();
    auto const read = readAndCompare(request, {});
    ASSERT_TRUE(read);
    std::vector<std::string> before;
    for (auto const form : kReportForms) before.push_back(*reportBytes(**read, form));

    ASSERT_TRUE(QFile::remove(reference));
    std::ofstream(candidate.toStdString(), std::ios::binary | std::ios::trunc) << "%PDF-1.4 of somebody else";
    for (std::size_t i = 0; i < kReportForms.size(); ++i) {
        auto const after = reportBytes(**read, kReportForms[i]);
        ASSERT_TRUE(after) << formEnding(kReportForms[i]).toStdString();
        EXPECT_TRUE(*after == before[i]) << formEnding(kReportForms[i]).toStdString();
    }
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
