// The reports of `standin compare`, byte for byte, written from the desk.
#pragma once

#include <array>
#include <string>

#include <QString>

#include "model/result.h"
#include "ui/worker/read_pair.h"

namespace standin::ui {

enum class ReportForm { Html, Pdf, Text, Json, Csv };

inline constexpr std::array kReportForms{ReportForm::Html, ReportForm::Pdf, ReportForm::Text, ReportForm::Json, ReportForm::Csv};

// "HTML report", translated; and the ending of its files, "html".
[[nodiscard]] QString formName(ReportForm form);
[[nodiscard]] QString formEnding(ReportForm form);

// What the command line wrote for the two documents as they were read; their files
// are not looked at again. Long work: page cuttings are drawn for it. May be called
// from any thread. Error: Internal for what a library threw.
[[nodiscard]] model::Result<std::string> reportBytes(ReadPair const& pair, ReportForm form);

// Writes the file whole or not at all, as the command line does. Error
// (Unreadable): no room, no permission; the file that was there before stays. One
// call at a time.
[[nodiscard]] model::Result<void> writeWhole(QString const& path, std::string bytes);

}  // namespace standin::ui
