// One function a command: read the inputs, compute, make every output in
// memory, write them together. Tested by tests/src/cli/run_test.cpp.
#include "cli/run.h"

#include <atomic>
#include <cstdio>
#include <iterator>
#include <unistd.h>

#include <fmt/format.h>

#include "cli/arguments.h"
#include "cli/outputs.h"
#include "cli/pictures.h"
#include "model/comparison_json.h"
#include "model/datasheet_json.h"
#include "model/file.h"
#include "report/csv_report.h"
#include "report/datasheet_report.h"
#include "report/html_report.h"
#include "report/pdf/pdf_report.h"
#include "report/text_report.h"
#include "risk/bench_tests.h"
#include "risk/compare_datasheets.h"
#include "text/visible.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;
using model::Result;

Result<std::optional<std::string>> readPassword(std::string const& path) {
    if (path.empty()) return std::optional<std::string>{};
    auto content = model::readFile(path, model::kLongestUserFile);
    if (!content) return tl::unexpected(content.error());
    auto end = content->find('\n');
    if (end == std::string::npos) end = content->size();
    if (end > 0 && (*content)[end - 1] == '\r') --end;
    return std::optional<std::string>{content->substr(0, end)};
}

Result<vocabulary::Vocabulary> loadVocabulary(std::vector<std::string> const& files) {
    auto vocabulary = vocabulary::Vocabulary::builtIn();
    for (auto const& file : files) {
        if (!vocabulary) break;
        auto const content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        if (auto added = vocabulary->add(*content); !added) {
            auto error = added.error();
            error.file = file;
            return tl::unexpected(std::move(error));
        }
    }
    return vocabulary;
}

Result<std::vector<corrections::Entry>> loadCorrections(std::vector<std::string> const& files) {
    std::vector<corrections::Entry> entries;
    for (auto const& file : files) {
        auto const content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        auto added = corrections::parseCorrections(*content, file);
        if (!added) return tl::unexpected(added.error());
        std::move(added->begin(), added->end(), std::back_inserter(entries));
    }
    return entries;
}

// "reading 12 of 40 pages" on a terminal, wiped at the end.
class Progress {
public:
    Progress() : m_shown(isatty(STDERR_FILENO) == 1) {}
    ~Progress() {
        if (m_shown && m_any) std::fputs("\r\033[K", stderr);
    }
    Progress(Progress const&) = delete;
    Progress& operator=(Progress const&) = delete;

    std::function<bool(int, int)> callback() {
        if (!m_shown) return {};
        return [this](int done, int total) {
            m_any = true;
            fmt::print(stderr, "\rreading {} of {} pages", done, total);
            return true;
        };
    }

private:
    bool m_shown;
    std::atomic<bool> m_any{false};
};

int finish(Outputs const& outputs, int status) {
    if (auto const written = outputs.write(); !written) {
        fmt::print(stderr, "standin: {}\n", text::visible(model::describe(written.error())));
        return kTrouble;
    }
    return status;
}

int trouble(Error const& error) {
    fmt::print(stderr, "standin: {}\n", text::visible(model::describe(error)));
    return kTrouble;
}

// Keeps the chosen version's rows and those that hold for every version.
Result<void> keepVariant(model::Datasheet& sheet, std::string const& variant) {
    if (variant.empty()) return {};
    auto const known = risk::knownVariants(sheet);
    auto const chosen = risk::findVariant(known, variant);
    if (!chosen) {
        std::string list;
        for (auto const& name : known) list += (list.empty() ? "" : ", ") + name;
        auto const message = list.empty() ? fmt::format("covers no versions; leave '{}' out", variant) : fmt::format("has no version '{}'; it has {}", variant, list);
        return tl::unexpected(Error{ErrorKind::Usage, message, sheet.document.file});
    }
    std::erase_if(sheet.parameters, [&](auto const& p) { return !p.variant.empty() && p.variant != *chosen; });
    std::erase_if(sheet.ordering, [&](auto const& o) { return o.code != *chosen; });
    return {};
}

int runRead(ReadCommand const& command) {
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
    auto sheet = [&] {
        Progress progress;
        options.progress = progress.callback();
        return reading::readDatasheet(command.file, options, *vocabulary);
    }();
    if (!sheet) return trouble(sheet.error());
    if (auto const kept = keepVariant(*sheet, command.variant); !kept) return trouble(kept.error());

    Outputs outputs;
    if (command.json) outputs.add(*command.json, model::toJson(*sheet));
    if (command.csv) outputs.add(*command.csv, report::parametersCsv(*sheet));
    if (command.text) outputs.add(*command.text, report::datasheetText(*sheet));
    if (!command.json && !command.csv && !command.text) outputs.add("-", report::datasheetText(*sheet));
    return finish(outputs, kNothingFound);
}

int runCompare(CompareCommand const& command) {
    auto const vocabulary = loadVocabulary(command.vocabularies);
    if (!vocabulary) return trouble(vocabulary.error());
    auto password = readPassword(command.passwordFile);
    if (!password) return trouble(password.error());
    reading::ReadOptions readOptions;
    readOptions.password = std::move(*password);
    auto corrections = loadCorrections(command.corrections);
    if (!corrections) return trouble(corrections.error());
    readOptions.corrections = std::move(*corrections);
    reading::PairBytes bytes;
    bool const showsPages = command.html || command.pdf;
    auto const sheets = [&] {
        Progress progress;
        readOptions.progress = progress.callback();
        return reading::readPair(command.reference, command.candidate, readOptions, *vocabulary, showsPages ? &bytes : nullptr);
    }();
    if (!sheets) return trouble(sheets.error());
    auto const& [reference, candidate] = *sheets;

    risk::CompareOptions options;
    options.referenceVariant = command.referenceVariant;
    options.candidateVariant = command.candidateVariant;
    auto const comparison = risk::compareDatasheets(reference, candidate, options, *vocabulary);
    if (!comparison) return trouble(comparison.error());

    auto const pictures = openPictures(std::move(bytes), readOptions.password);
    report::Cuttings cuttings(pictures.borrowed());
    auto const tests = risk::benchTests(*comparison, *vocabulary);
    Outputs outputs;
    if (command.json) outputs.add(*command.json, model::toJson(*comparison));
    if (command.html) outputs.add(*command.html, report::htmlReport(*comparison, reference, candidate, cuttings, tests));
    if (command.pdf) outputs.add(*command.pdf, report::pdfReport(*comparison, reference, candidate, cuttings, tests));
    if (command.csv) outputs.add(*command.csv, report::pairsCsv(*comparison, reference, candidate));
    if (command.text) outputs.add(*command.text, report::textReport(*comparison, reference, candidate, tests));
    bool const none = !command.json && !command.html && !command.pdf && !command.csv && !command.text;
    if (none) outputs.add("-", report::textReport(*comparison, reference, candidate, tests));

    bool found = false;
    for (auto const& finding : comparison->findings) found = found || finding.severity >= command.failOn;
    return finish(outputs, found ? kFindings : kNothingFound);
}

}  // namespace

int run(int argc, char const* const* argv) {
    auto const command = parseArguments(argc, argv);
    if (!command) return trouble(command.error());
    if (auto const* information = std::get_if<Information>(&*command)) {
        Outputs outputs;
        outputs.add("-", information->text);
        return finish(outputs, kNothingFound);
    }
    if (auto const* read = std::get_if<ReadCommand>(&*command)) return runRead(*read);
    return runCompare(std::get<CompareCommand>(*command));
}

}  // namespace standin::cli
