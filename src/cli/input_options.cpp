// Tested by tests/src/cli/arguments_test.cpp.
#include "cli/input_options.h"

#include <CLI/CLI.hpp>

namespace standin::cli {

void addInputOptions(CLI::App& app, CompareCommand& command) {
    app.add_option("REFERENCE", command.reference, "the part fitted or specified today: a PDF, or a file that read --json wrote")->required();
    app.add_option("CANDIDATE", command.candidate, "the suspected equivalent: a PDF, or a file that read --json wrote")->required();
    app.add_option("--reference-variant", command.referenceVariant, "the orderable version of the reference")->type_name("CODE");
    app.add_option("--candidate-variant", command.candidateVariant, "the orderable version of the candidate")->type_name("CODE");
    app.add_option("--cell", command.cell, "check both parts against the limits of the cell (standin.cell/1)")->type_name("FILE.json");
    app.add_option("--circuit", command.circuit, "values around the part on the board (standin.circuit/1)")->type_name("FILE.json");
    app.add_option("--corrections", command.corrections, "put misread values of either sheet right (standin.corrections/1)")->type_name("FILE.json")->expected(1)->take_all();
    app.add_option("--vocabulary", command.vocabularies, "add parameters and features of your own (standin.vocabulary/1)")->type_name("FILE.json")->expected(1)->take_all();
    app.add_option("--password-file", command.passwordFile, "the first line of F is the documents' password")->type_name("F");
}

CLI::Option* addOcr(CLI::App& app, std::string& languages) {
    return app.add_option("--ocr", languages, "recognise what is a picture, in these languages (eng, eng+chi_sim …)")->type_name("LANGS");
}

std::optional<model::Error> checkOcr(CLI::Option const& option, std::string const& languages) {
    if (option.count() == 0 || !languages.empty()) return std::nullopt;
    return model::Error{model::ErrorKind::Usage, "--ocr wants language codes joined by '+', for example eng or eng+chi_sim", {}, 0};
}

}  // namespace standin::cli
