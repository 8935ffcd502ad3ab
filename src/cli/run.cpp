// One function a command: read the inputs, compute, make every output in
// memory, write them together. Tested by tests/src/cli/run_test.cpp.
#include "cli/run.h"

#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "cli/arguments.h"
#include "cli/check_command.h"
#include "cli/compare_pair.h"
#include "cli/outputs.h"
#include "cli/pictures.h"
#include "cli/trouble.h"
#include "compare/variant_choice.h"
#include "model/comparison_json.h"
#include "model/datasheet_json.h"
#include "report/csv_report.h"
#include "report/datasheet_report.h"
#include "report/html_report.h"
#include "report/overlay.h"
#include "report/text_report.h"
#include "risk/compare_datasheets.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;
using model::Result;

int finish(Outputs const& outputs, int status, Program const& program) {
    if (auto const written = outputs.write(); !written) return trouble(written.error());
    if (program.ending == Ending::Leave) {
        std::fflush(nullptr);
        std::_Exit(status);
    }
    return status;
}

// Keeps the chosen version's rows and those that hold for every version.
Result<void> keepVariant(model::Datasheet& sheet, std::string const& variant) {
    if (variant.empty()) return {};
    auto const chosen = risk::chosenVariant(sheet, variant);
    if (!chosen) return tl::unexpected(chosen.error());
    std::erase_if(sheet.parameters, [&](auto const& p) { return compare::isOtherVariant(p.variant, *chosen); });
    std::erase_if(sheet.ordering, [&](auto const& o) { return o.code != *chosen; });
    return {};
}

int runRead(ReadCommand const& command, Program const& program) {
    auto const vocabulary = loadVocabulary({});
    if (!vocabulary) return trouble(vocabulary.error());
    auto password = readPassword(command.passwordFile);
    if (!password) return trouble(password.error());
    reading::ReadOptions options;
    options.password = std::move(*password);
    options.pages = command.pages;
    auto corrections = loadCorrections(command.corrections);
    if (!corrections) return trouble(corrections.error());
    options.corrections = std::move(*corrections);
    if (auto const used = useRecogniser(options, command.ocr, program.recogniser); !used) return trouble(used.error());
    reading::ReadTrace trace;
    auto sheet = [&] {
        Progress progress;
        options.progress = progress.callback();
        return reading::readDatasheet(command.file, options, *vocabulary, command.overlay ? &trace : nullptr);
    }();
    if (!sheet) return trouble(sheet.error());
    if (auto const kept = keepVariant(*sheet, command.variant); !kept) return trouble(kept.error());

    Outputs outputs;
    if (command.json) outputs.add(*command.json, model::toJson(*sheet));
    if (command.csv) outputs.add(*command.csv, report::parametersCsv(*sheet));
    if (command.text) outputs.add(*command.text, report::datasheetText(*sheet));
    if (command.overlay) {
        if (trace.pages.empty()) return trouble(Error{ErrorKind::Usage, "has no pages to draw on; --overlay wants the PDF", command.file});
        auto const pictures = openPictures({std::move(trace.bytes), {}}, options.password);
        outputs.add(*command.overlay, report::overlayHtml(*sheet, trace.pages, pictures.reference.get()));
    }
    if (!command.json && !command.csv && !command.text && !command.overlay) outputs.add("-", report::datasheetText(*sheet));
    return finish(outputs, kNothingFound, program);
}

int runCompare(CompareCommand const& command, Program const& program) {
    if (command.pdf && program.pdf == nullptr) return trouble(Error{ErrorKind::Usage, kNoPdfWriter, *command.pdf});
    auto compared = comparePair(command, command.html || command.pdf ? PageBytes::Keep : PageBytes::Drop, program.recogniser);
    if (!compared) return trouble(compared.error());
    auto const& [reference, candidate, comparison, tests] = compared->result;

    auto const pictures = openPictures(std::move(compared->bytes), compared->password);
    report::Cuttings cuttings(pictures.borrowed());
    Outputs outputs;
    if (command.json) outputs.add(*command.json, model::toJson(comparison));
    if (command.html) outputs.add(*command.html, report::htmlReport(comparison, reference, candidate, cuttings, tests));
    if (command.pdf) outputs.add(*command.pdf, program.pdf(comparison, reference, candidate, cuttings, tests));
    if (command.csv) outputs.add(*command.csv, report::pairsCsv(comparison, reference, candidate));
    if (command.text) outputs.add(*command.text, report::textReport(comparison, reference, candidate, tests));
    bool const none = !command.json && !command.html && !command.pdf && !command.csv && !command.text;
    if (none) outputs.add("-", report::textReport(comparison, reference, candidate, tests));

    bool found = false;
    for (auto const& finding : comparison.findings) found = found || finding.severity >= command.failOn;
    return finish(outputs, found ? kFindings : kNothingFound, program);
}

}  // namespace

int run(int argc, char const* const* argv, Program const& program) {
    if (isRecordCommand(argc, argv)) {
        if (program.record == nullptr) return trouble(Error{ErrorKind::Usage, kNoRecordCommands, argv[1]});
        return program.record(argc - 1, argv + 1, program);
    }
    auto const command = parseArguments(argc, argv);
    if (!command) return trouble(command.error());
    if (auto const* information = std::get_if<Information>(&*command)) {
        Outputs outputs;
        outputs.add("-", information->text);
        return finish(outputs, kNothingFound, program);
    }
    if (auto const* read = std::get_if<ReadCommand>(&*command)) return runRead(*read, program);
    if (auto const* check = std::get_if<CheckCommand>(&*command)) {
        auto const checked = checkCommand(*check, program.recogniser);
        return checked ? finish(checked->outputs, checked->status, program) : trouble(checked.error());
    }
    return runCompare(std::get<CompareCommand>(*command), program);
}

}  // namespace standin::cli
