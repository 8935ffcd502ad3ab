// CLI11 does the parsing; what it reports is folded into one line of our own.
// Tested by tests/src/cli/arguments_test.cpp.
#include "cli/arguments.h"

#include <algorithm>
#include <charconv>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "cli/input_options.h"
#include "model/names.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;

Error usage(std::string message) { return {ErrorKind::Usage, std::move(message), {}, 0}; }

model::Result<reading::PageRange> parsePages(std::string const& text) {
    auto const wrong = tl::unexpected(usage(fmt::format("--pages wants A-B, for example 2-5, not '{}'", text)));
    reading::PageRange range;
    char const* const end = text.data() + text.size();
    auto const first = std::from_chars(text.data(), end, range.first);
    if (first.ec != std::errc{} || range.first < 1) return wrong;
    range.last = range.first;
    if (first.ptr != end) {
        if (*first.ptr != '-') return wrong;
        auto const last = std::from_chars(first.ptr + 1, end, range.last);
        if (last.ec != std::errc{} || last.ptr != end || range.last < range.first) return wrong;
    }
    return range;
}

// An output given as the empty string would write nowhere without a word.
std::optional<Error> checkOutputs(std::initializer_list<std::pair<char const*, Output const*>> outputs) {
    int toStandardOutput = 0;
    std::vector<std::string> seen;
    for (auto const& [name, output] : outputs) {
        if (!*output) continue;
        auto const& path = **output;
        if (path.empty()) return usage(fmt::format("{} wants a path, or - for standard output", name));
        if (path == "-") ++toStandardOutput;
        else if (std::find(seen.begin(), seen.end(), path) != seen.end()) return usage(fmt::format("two outputs go to {}; give each its own file", path));
        seen.push_back(path);
    }
    if (toStandardOutput > 1) return usage("only one output can go to standard output; give the others a path");
    return std::nullopt;
}

std::string oneLine(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text + "; see 'standin --help'";
}

}  // namespace

model::Result<Command> parseArguments(int argc, char const* const* argv) {
    CLI::App app{"Compares the datasheets of two suspected-equivalent parts: every difference in numbers and wording, with its place on the page "
                 "and what it could mean.", "standin"};
    app.set_version_flag("--version", "standin " STANDIN_VERSION);
    app.require_subcommand(1);
    app.footer("Exit status: 0 nothing found at or above --fail-on, 1 findings, 2 trouble.");

    ReadCommand read;
    std::string pages;
    auto* const readApp = app.add_subcommand("read", "Read one datasheet and print what was understood");
    readApp->add_option("FILE", read.file, "the datasheet, a PDF")->required();
    readApp->add_option("--text", read.text, "write the readable form to OUT (a path, or - for standard output)")->type_name("OUT");
    readApp->add_option("--json", read.json, "write standin.datasheet/1 to OUT")->type_name("OUT");
    readApp->add_option("--csv", read.csv, "write the parameters as CSV to OUT")->type_name("OUT");
    readApp->add_option("--overlay", read.overlay, "write the pages with what was understood drawn over them to OUT (HTML, for developers)")->type_name("OUT");
    readApp->add_option("--variant", read.variant, "only the orderable version CODE where the sheet covers several")->type_name("CODE");
    readApp->add_option("--pages", pages, "only these pages, counted from 1")->type_name("A-B");
    readApp->add_option("--corrections", read.corrections, "put misread values right (standin.corrections/1)")->type_name("FILE.json")->expected(1)->take_all();
    auto const* const readOcr = addOcr(*readApp, read.ocr);
    readApp->add_option("--password-file", read.passwordFile, "the first line of F is the document's password")->type_name("F");

    CompareCommand compare;
    std::string failOn = "note";
    auto* const compareApp = app.add_subcommand("compare", "Compare a candidate's datasheet with the reference's");
    addInputOptions(*compareApp, compare);
    compareApp->add_option("--text", compare.text, "write the readable summary to OUT (a path, or - for standard output)")->type_name("OUT");
    compareApp->add_option("--json", compare.json, "write standin.comparison/1 to OUT")->type_name("OUT");
    compareApp->add_option("--html", compare.html, "write the report as one HTML file to OUT")->type_name("OUT");
    compareApp->add_option("--pdf", compare.pdf, "write the report as a PDF to OUT")->type_name("OUT");
    compareApp->add_option("--csv", compare.csv, "write all parameter pairs as CSV to OUT")->type_name("OUT");
    auto const* const compareOcr = addOcr(*compareApp, compare.ocr);
    compareApp->add_option("--fail-on", failOn, "exit with 1 from this severity on: hazard, function, margin, note, editorial")->type_name("SEVERITY");
    app.add_subcommand("record", "Keep what people decide on a comparison, signed; see 'standin record --help'");

    CheckCommand check;
    std::string checkFailOn = "note";
    auto* const checkApp = app.add_subcommand("check", "Check a candidate against a cell alone, where the failed part has no datasheet");
    checkApp->add_option("CANDIDATE", check.candidate, "the suspected equivalent: a PDF, or a file that read --json wrote")->required();
    checkApp->add_option("--cell", check.cell, "the limits of the cell (standin.cell/1)")->type_name("FILE.json")->required();
    checkApp->add_option("--circuit", check.circuit, "values around the part on the board (standin.circuit/1)")->type_name("FILE.json");
    checkApp->add_option("--text", check.text, "write the readable summary to OUT (a path, or - for standard output)")->type_name("OUT");
    checkApp->add_option("--json", check.json, "write standin.comparison/1 with no reference to OUT")->type_name("OUT");
    checkApp->add_option("--html", check.html, "write the report as one HTML file to OUT")->type_name("OUT");
    checkApp->add_option("--csv", check.csv, "write all parameters as CSV to OUT")->type_name("OUT");
    checkApp->add_option("--candidate-variant,--variant", check.variant, "the orderable version of the candidate")->type_name("CODE");
    checkApp->add_option("--corrections", check.corrections, "put misread values right (standin.corrections/1)")->type_name("FILE.json")->expected(1)->take_all();
    checkApp->add_option("--vocabulary", check.vocabularies, "add parameters and features of your own (standin.vocabulary/1)")->type_name("FILE.json")->expected(1)->take_all();
    auto const* const checkOcrOption = addOcr(*checkApp, check.ocr);
    checkApp->add_option("--fail-on", checkFailOn, "exit with 1 from this severity on: hazard, function, margin, note, editorial")->type_name("SEVERITY");
    checkApp->add_option("--password-file", check.passwordFile, "the first line of F is the document's password")->type_name("F");

    try {
        app.parse(argc, argv);
    } catch (CLI::CallForHelp const&) {
        return Command{Information{app.help()}};
    } catch (CLI::CallForAllHelp const&) {
        return Command{Information{app.help("", CLI::AppFormatMode::All)}};
    } catch (CLI::CallForVersion const&) {
        return Command{Information{"standin " STANDIN_VERSION "\n"}};
    } catch (CLI::ParseError const& error) {
        return tl::unexpected(usage(oneLine(error.what())));
    }

    for (auto const& [option, languages] : {std::pair{readOcr, &read.ocr}, {compareOcr, &compare.ocr}, {checkOcrOption, &check.ocr}}) {
        if (auto const error = checkOcr(*option, *languages)) return tl::unexpected(*error);
    }
    if (*readApp) {
        if (auto const error = checkOutputs({{"--text", &read.text}, {"--json", &read.json}, {"--csv", &read.csv}, {"--overlay", &read.overlay}})) return tl::unexpected(*error);
        if (!pages.empty()) {
            auto const range = parsePages(pages);
            if (!range) return tl::unexpected(range.error());
            read.pages = *range;
        }
        return Command{std::move(read)};
    }
    auto const& wanted = *checkApp ? checkFailOn : failOn;
    auto const severity = model::fromName<model::Severity>(wanted);
    if (!severity) return tl::unexpected(usage(fmt::format("--fail-on knows hazard, function, margin, note and editorial, not '{}'", wanted)));
    if (*checkApp) {
        check.failOn = *severity;
        if (auto const error = checkOutputs({{"--text", &check.text}, {"--json", &check.json}, {"--html", &check.html}, {"--csv", &check.csv}})) return tl::unexpected(*error);
        return Command{std::move(check)};
    }
    compare.failOn = *severity;
    if (auto const error = checkOutputs({{"--text", &compare.text}, {"--json", &compare.json}, {"--html", &compare.html}, {"--pdf", &compare.pdf}, {"--csv", &compare.csv}})) {
        return tl::unexpected(*error);
    }
    return Command{std::move(compare)};
}

}  // namespace standin::cli
