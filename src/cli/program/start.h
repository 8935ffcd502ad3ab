// How both programs start. `standin` is the one that users call; it hands a command
// line that asks for a PDF to `standin-pdf` beside it, which is the same program
// with the PDF writer and the libraries of that.
#pragma once

#include "cli/run.h"

namespace standin::cli {

// Runs the command line; whatever still throws (a fault of ours, no memory) ends
// here, on one line. The exit status.
[[nodiscard]] int start(int argc, char** argv, PdfWriter pdf, RecordPdfWriter recordPdf);

}  // namespace standin::cli
