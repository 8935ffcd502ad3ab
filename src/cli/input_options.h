// What every command that compares takes: the two sheets and how to read them.
#pragma once

#include <optional>
#include <string>

#include "cli/arguments.h"
#include "model/result.h"

namespace CLI {
class App;
class Option;
}

namespace standin::cli {

// Adds REFERENCE, CANDIDATE and the options of reading and comparing to `app`;
// parsing fills `command`, which must outlive it.
void addInputOptions(CLI::App& app, CompareCommand& command);

// `languages` must outlive `app`. The option is for checkOcr(), once the words are parsed.
CLI::Option* addOcr(CLI::App& app, std::string& languages);
// Recognition in no language would recognise nothing without a word: Usage.
[[nodiscard]] std::optional<model::Error> checkOcr(CLI::Option const& option, std::string const& languages);

}  // namespace standin::cli
