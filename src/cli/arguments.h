// The command line as a plain value.
//
//     auto arguments = parseArguments(argc, argv);
//     if (!arguments) { … arguments.error().message … }
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "extractors/read_datasheet.h"
#include "model/comparison.h"
#include "model/result.h"

namespace standin::cli {

// Where an output goes: a path, "-" for standard output, or not wanted.
using Output = std::optional<std::string>;

struct ReadCommand {
    std::string file;
    Output text, json, csv, overlay;
    std::string variant;
    std::optional<reading::PageRange> pages;
    std::vector<std::string> corrections;
    std::string passwordFile;
    std::string ocr;  // languages of character recognition; empty: none
};

struct CompareCommand {
    std::string reference, candidate;
    Output text, json, html, pdf, csv;
    std::string referenceVariant, candidateVariant;
    std::string cell, circuit;  // files; empty: not given
    std::vector<std::string> corrections;
    std::vector<std::string> vocabularies;
    model::Severity failOn = model::Severity::Note;
    std::string passwordFile;
    std::string ocr;  // as ReadCommand has it
};

// The candidate against a cell alone.
struct CheckCommand {
    std::string candidate;
    Output text, json, html, csv;
    std::string variant;
    std::string cell, circuit;  // files; the circuit's may be empty
    std::vector<std::string> corrections;
    std::vector<std::string> vocabularies;
    model::Severity failOn = model::Severity::Note;
    std::string passwordFile;
    std::string ocr;  // as ReadCommand has it
};

// --help and --version: what to print.
struct Information {
    std::string text;
};

using Command = std::variant<ReadCommand, CompareCommand, CheckCommand, Information>;

// Errors (Usage): one line that says what is wrong and what to do.
[[nodiscard]] model::Result<Command> parseArguments(int argc, char const* const* argv);

}  // namespace standin::cli
