// The same functions in the same order as src/cli/run.cpp. The documents are read
// again for their page cuttings, and only used while they are what was compared.
//
// Tested by tests/ui/models/exports_test.cpp.
#include "ui/models/exports.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "cli/outputs.h"
#include "cli/pictures.h"
#include "model/comparison_json.h"
#include "model/digest.h"
#include "model/file.h"
#include "report/csv_report.h"
#include "report/cuttings.h"
#include "report/html_report.h"
#include "report/pdf/pdf_report.h"
#include "report/text_report.h"
#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

QString translated(char const* text) { return QCoreApplication::translate("exports", text); }

// The bytes that were compared; empty for a file that is no PDF.
model::Result<std::string> comparedBytes(model::DocumentInfo const& document) {
    auto bytes = model::readFile(document.file, model::kLongestDocument);
    if (!bytes) return bytes;
    if (bytes->find("%PDF-") == std::string::npos) return std::string{};  // a datasheet that was saved as JSON
    if (model::sha256Hex(*bytes) == document.sha256) return bytes;
    auto const message = translated(QT_TRANSLATE_NOOP("exports", "changed on disk since it was compared; read the pair again, then export"));
    return tl::unexpected(model::Error{model::ErrorKind::Unreadable, fromQt(message), document.file, 0});
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
    if (form == ReportForm::Json) return model::toJson(pair.comparison);
    if (form == ReportForm::Csv) return report::pairsCsv(pair.comparison, pair.reference, pair.candidate);
    if (form == ReportForm::Text) return report::textReport(pair.comparison, pair.reference, pair.candidate, pair.tests);
    auto reference = comparedBytes(pair.reference.document);
    if (!reference) return reference;
    auto candidate = comparedBytes(pair.candidate.document);
    if (!candidate) return candidate;
    auto const pictures = cli::openPictures({std::move(*reference), std::move(*candidate)}, pair.request.password);
    report::Cuttings cuttings(pictures.borrowed());
    if (form == ReportForm::Pdf) return report::pdfReport(pair.comparison, pair.reference, pair.candidate, cuttings, pair.tests);
    return report::htmlReport(pair.comparison, pair.reference, pair.candidate, cuttings, pair.tests);
}

model::Result<void> writeWhole(QString const& path, std::string bytes) {
    cli::Outputs outputs;
    outputs.add(fromQt(QFileInfo(path).absoluteFilePath()), std::move(bytes));  // never "-", which means standard output there
    auto written = outputs.write();
    if (!written) written.error().message += fromQt(translated(QT_TRANSLATE_NOOP("exports", "; choose another place, or make room")));
    return written;
}

}  // namespace standin::ui
