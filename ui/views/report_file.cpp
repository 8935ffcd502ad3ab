// Tested by tests/ui/views/report_file_test.cpp.
#include "ui/views/report_file.h"

#include <algorithm>

#include <QFileDialog>
#include <QFileInfo>
#include <QStringList>

#include "ui/views/pair_form.h"

namespace standin::ui {

std::optional<ReportFile> askReportFile(QWidget* parent, QString const& title, QString const& baseName, std::span<ReportForm const> forms) {
    QStringList filters;
    for (auto const form : forms) filters += QStringLiteral("%1 (*.%2)").arg(formName(form), formEnding(form));
    QString chosen;
    auto path = QFileDialog::getSaveFileName(parent, title, QStringLiteral("%1/%2.%3").arg(lastFolder(), baseName, formEnding(forms.front())), filters.join(QStringLiteral(";;")), &chosen);
    if (path.isEmpty()) return std::nullopt;
    auto const ending = QFileInfo(path).suffix().toLower();
    auto const typed = std::find_if(forms.begin(), forms.end(), [&](ReportForm form) { return formEnding(form) == ending; });
    auto const form = typed != forms.end() ? *typed : forms[static_cast<std::size_t>(std::max<qsizetype>(0, filters.indexOf(chosen)))];
    if (typed == forms.end()) path += QLatin1Char('.') + formEnding(form);
    rememberFolder(path);
    return ReportFile{path, form};
}

}  // namespace standin::ui
