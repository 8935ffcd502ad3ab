// Tested by tests/src/cli/check_command_test.cpp.
#include "cli/check_command.h"

#include <algorithm>
#include <utility>

#include "cli/compare_pair.h"
#include "cli/pictures.h"
#include "cli/run.h"
#include "cli/surroundings.h"
#include "model/comparison_json.h"
#include "report/csv_report.h"
#include "report/html_report.h"
#include "report/text_report.h"
#include "risk/bench_tests.h"
#include "risk/compare_datasheets.h"

namespace standin::cli {

model::Result<Checked> checkCommand(CheckCommand const& command, model::Recogniser const& recogniser) {
    auto const vocabulary = loadVocabulary(command.vocabularies);
    if (!vocabulary) return tl::unexpected(vocabulary.error());
    // The small files first: a fault in them is told before a long sheet is read.
    risk::CompareOptions options;
    options.candidateVariant = command.variant;
    auto cell = loadCell(command.cell);
    if (!cell) return tl::unexpected(cell.error());
    options.cell = std::move(*cell);
    auto circuit = loadCircuit(command.circuit);
    if (!circuit) return tl::unexpected(circuit.error());
    options.circuit = std::move(*circuit);
    auto password = readPassword(command.passwordFile);
    if (!password) return tl::unexpected(password.error());
    auto corrections = loadCorrections(command.corrections);
    if (!corrections) return tl::unexpected(corrections.error());

    reading::ReadOptions readOptions;
    readOptions.password = std::move(*password);
    readOptions.corrections = std::move(*corrections);
    if (auto const used = useRecogniser(readOptions, command.ocr, recogniser); !used) return tl::unexpected(used.error());
    reading::ReadTrace trace;
    auto const candidate = [&] {
        Progress progress;
        readOptions.progress = progress.callback();
        return reading::readDatasheet(command.candidate, readOptions, *vocabulary, command.html ? &trace : nullptr);
    }();
    if (!candidate) return tl::unexpected(candidate.error());
    auto const comparison = risk::checkCandidate(*candidate, options, *vocabulary);
    if (!comparison) return tl::unexpected(comparison.error());

    model::Datasheet const noReference;
    auto const tests = risk::benchTests(*comparison, *vocabulary);
    Checked checked;
    if (command.json) checked.outputs.add(*command.json, model::toJson(*comparison));
    if (command.html) {
        auto const pictures = openPictures({{}, std::move(trace.bytes)}, readOptions.password);
        report::Cuttings cuttings(pictures.borrowed());
        checked.outputs.add(*command.html, report::htmlReport(*comparison, noReference, *candidate, cuttings, tests));
    }
    if (command.csv) checked.outputs.add(*command.csv, report::pairsCsv(*comparison, noReference, *candidate));
    bool const none = !command.json && !command.html && !command.csv && !command.text;
    if (command.text || none) checked.outputs.add(command.text.value_or("-"), report::textReport(*comparison, noReference, *candidate, tests));
    bool const found = std::any_of(comparison->findings.begin(), comparison->findings.end(), [&](auto const& finding) { return finding.severity >= command.failOn; });
    checked.status = found ? kFindings : kNothingFound;
    return checked;
}

}  // namespace standin::cli
