// Asks where a report is to be written, and in which form.
#pragma once

#include <optional>
#include <span>

#include <QString>
#include <QWidget>

#include "ui/models/exports.h"

namespace standin::ui {

struct ReportFile {
    QString path;
    ReportForm form = ReportForm::Html;
};

// `baseName` is what is proposed, without folder and ending, in the first of `forms`.
// Nothing: given up. An ending that was typed wins over the filter; a missing one is
// added. The folder is remembered.
[[nodiscard]] std::optional<ReportFile> askReportFile(QWidget* parent, QString const& title, QString const& baseName, std::span<ReportForm const> forms);

}  // namespace standin::ui
