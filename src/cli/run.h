// The commands of the program, from its arguments to its exit status. This
// folder sits on top: it may include every other one but ui/.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "model/recognition.h"
#include "report/cuttings.h"
#include "risk/bench_tests.h"

namespace standin::record {
struct Record;
}

namespace standin::cli {

// Exit status, as POSIX diff has it.
inline constexpr int kNothingFound = 0;  // nothing at or above --fail-on
inline constexpr int kFindings = 1;
inline constexpr int kTrouble = 2;  // usage, unreadable input, a write that failed

using PdfWriter = std::string (*)(model::Comparison const&, model::Datasheet const&, model::Datasheet const&, report::Cuttings&,
                                  std::span<risk::BenchTest const>);
using RecordPdfWriter = std::string (*)(record::Record const&);

struct Program;
using RecordCommands = int (*)(int argc, char const* const* argv, Program const& program);  // record_run.h

[[nodiscard]] inline bool isRecordCommand(int argc, char const* const* argv) { return argc > 1 && std::string_view(argv[1]) == "record"; }

inline constexpr char const* kNoPdfWriter = "cannot be written: the part of the program that writes PDFs is missing; install it again";
inline constexpr char const* kNoRecordCommands = "cannot be run: the part of the program that keeps records is missing; install it again";

inline constexpr char const* kNoRecogniser = "--ocr: the part of the program that recognises characters is missing; install it again";

enum class Ending {
    Return,  // to the caller
    Leave,   // end the process as soon as everything is written, and let the system take back the memory at once
};

// What the calling program brings. The PDF writers and the recogniser come with some
// libraries each that take longer to load than a usual comparison takes, and the keys of
// records with a large part of one more: only a program that is started for them has them (program/).
struct Program {
    PdfWriter pdf = nullptr;  // null: --pdf is trouble
    RecordPdfWriter recordPdf = nullptr;
    RecordCommands record = nullptr;  // null: the record commands are trouble
    model::Recogniser recogniser = {};  // none: --ocr is trouble
    Ending ending = Ending::Return;
};

// Runs one command line. Writes to standard output and standard error and to
// the files that it names; all or none of them.
[[nodiscard]] int run(int argc, char const* const* argv, Program const& program);

}  // namespace standin::cli
