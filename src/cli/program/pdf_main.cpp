// The program `standin-pdf`: the command line with the PDF writers.
#include "cli/program/start.h"
#include "record/pdf/record_pdf.h"
#include "report/pdf/pdf_report.h"

int main(int argc, char** argv) { return standin::cli::start(argc, argv, standin::report::pdfReport, standin::record::recordPdf); }
