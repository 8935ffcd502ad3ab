// Keys for the commands that sign: where their passphrase comes from.
#pragma once

#include <optional>
#include <string>

#include "cli/record_arguments.h"
#include "model/result.h"
#include "record/key.h"

namespace standin::cli {

// Loads the key of `command.key`; its passphrase from the file that is named, else
// from the terminal, unseen.
[[nodiscard]] model::Result<record::SigningKey> loadKey(std::string const& path, std::string const& passphraseFile);

// Makes a key file. The passphrase is read from a file or asked twice.
[[nodiscard]] model::Result<record::Person> makeKey(RecordCommand const& command);

}  // namespace standin::cli
