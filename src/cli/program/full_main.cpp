// The program `standin-full`: the command line with the PDF writers, the record and character recognition.
#include "cli/program/start.h"
#include "cli/record_run.h"
#include "extractors/recognition/recognise.h"
#include "record/pdf/record_pdf.h"
#include "report/pdf/pdf_report.h"

int main(int argc, char** argv) {
    return standin::cli::start(argc, argv, {.pdf = standin::report::pdfReport,
                                            .recordPdf = standin::record::recordPdf,
                                            .record = standin::cli::runRecord,
                                            .recogniser = standin::recognition::kRecogniser});
}
