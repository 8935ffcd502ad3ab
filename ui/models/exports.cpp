// The same functions in the same order as src/cli/run.cpp. Page cuttings are drawn
// from the documents as they were read, whatever became of their files.
//
// Tested by tests/ui/models/exports_test.cpp.
#include "ui/models/exports.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "cli/outputs.h"
#include "cli/pictures.h"
#include "model/comparison_json.h"
#include "report/csv_report.h"
#include "report/cuttings.h"
#include "report/html_report.h"
#include "report/pdf/pdf_report.h"
#include "report/text_report.h"
#include "ui/models/qt_text.h"
#include "ui/worker/guarded.h"

namespace standin::ui {

namespace {

QString translated(char const* text) { return QCoreApplication::translate("exports", text); }

std::string written(ReadPair const& pair, ReportForm form) {
    if (form == ReportForm::Json) return model::toJson(pair.comparison);
    if (form == ReportForm::Csv) return report::pairsCsv(pair.comparison, pair.reference, pair.candidate);
    if (form == ReportForm::Text) return report::textReport(pair.comparison, pair.reference, pair.candidate, pair.tests);
    auto const pictures = cli::openPictures({pair.referenceBytes, pair.candidateBytes}, pair.request.password);
    report::Cuttings cuttings(pictures.borrowed());
    if (form == ReportForm::Pdf) return report::pdfReport(pair.comparison, pair.reference, pair.candidate, cuttings, pair.tests);
    return report::htmlReport(pair.comparison, pair.reference, pair.candidate, cuttings, pair.tests);
}

}  // namespace

QString formName(ReportForm form) {
    switch (form) {
        case ReportForm::Html: return translated(QT_TRANSLATE_NOOP("exports", "HTML report"));
        case ReportForm::Pdf: return translated(QT_TRANSLATE_NOOP("exports", "PDF report"));
        case ReportForm::Text: return translated(QT_TRANSLATE_NOOP("exports", "Text summary"));
        case ReportForm::Json: return translated(QT_TRANSLATE_NOOP("exports", "All findings as JSON"));
        case ReportForm::Csv: return translated(QT_TRANSLATE_NOOP("exports", "All parameters as CSV"));
    }
    return {};
}

QString formEnding(ReportForm form) {
    switch (form) {
        case ReportForm::Html: return QStringLiteral("html");
        case ReportForm::Pdf: return QStringLiteral("pdf");
        case ReportForm::Text: return QStringLiteral("txt");
        case ReportForm::Json: return QStringLiteral("json");
        case ReportForm::Csv: return QStringLiteral("csv");
    }
    return {};
}

model::Result<std::string> reportBytes(ReadPair const& pair, ReportForm form) {
    return guarded({}, [&]() -> model::Result<std::string> { return written(pair, form); });
}

model::Result<void> writeWhole(QString const& path, std::string bytes) {
    cli::Outputs outputs;
    outputs.add(fromQt(QFileInfo(path).absoluteFilePath()), std::move(bytes));  // never "-", which means standard output there
    auto written = outputs.write();
    if (!written) written.error().message += fromQt(translated(QT_TRANSLATE_NOOP("exports", "; choose another place, or make room")));
    return written;
}

}  // namespace standin::ui
